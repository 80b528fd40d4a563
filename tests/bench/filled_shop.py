"""A shop's database of any size, filled by bulk inserts into the real tables.

Every slot has had a thing that was shipped, and holds another one. Orders of four picked lines wait for the table.
"""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import asdict
from datetime import UTC, datetime
from typing import Any

from sqlalchemy import Connection, Table, insert, update

from labels import slot_code
from scanflow.domain import events
from scanflow.domain.things import Rack
from scanflow.planning import room
from scanflow.storage import tables
from scanflow.storage.database import Database, tell_all
from scanflow.storage.ledger import FIRST, canonical, entry_hash

AT = datetime(2026, 3, 2, 8, 0, tzinfo=UTC)
LINES, PER_SECTION, PER_BIN = 4, 9000, 10


def fill(database: Database, slots: int, orders: int) -> list[list[str]]:
    """The card texts of each waiting order, whose slips are numbered from 1."""
    codes = [slot_code.make("ABCDEFGHJKLM"[n // PER_SECTION], n % PER_SECTION + 1, 4) for n in range(slots)]
    wanted = [codes[n * LINES : (n + 1) * LINES] for n in range(orders)]
    with database.engine.begin() as connection:
        _fill_room(connection, codes)
        _fill_stays(connection, codes)
        _fill_orders(connection, codes, wanted)
        _fill_history(connection, codes)
    with database.writing(datetime.now(UTC), "bench") as unit:
        tell_all(unit)  # as after an upgrade: what the ledger does not know is amiss
    return [[slot_code.card_text(code) for code in order] for order in wanted]


def _add(connection: Connection, table: Table, rows: Iterable[dict[str, Any]]) -> None:
    connection.execute(insert(table), list(rows))


def _bin(place: int) -> tuple[str, int, int]:
    """Rack, tier and position of the n-th bin."""
    rack, rest = divmod(place, room.DEFAULT.tiers * room.DEFAULT.positions)
    return f"R{rack + 1}", rest // room.DEFAULT.positions + 1, rest % room.DEFAULT.positions + 1


def _racks(names: Iterable[str]) -> list[Rack]:
    racks: list[Rack] = []
    for name in names:
        racks.append(room.next_rack(racks, name))
    return racks


def _fill_room(connection: Connection, codes: list[str]) -> None:
    sections = dict.fromkeys(slot_code.section_of(code) for code in codes)
    last = min(len(codes), PER_SECTION)
    section = {"slots_per_bin": PER_BIN, "colour": "yellow", "digits": 4, "last": last}
    _add(connection, tables.sections, ({"code": code, "name": f"Section {code}", **section} for code in sections))
    bins = [_bin(place) for place in range(-(-len(codes) // PER_BIN))]
    racks = dict.fromkeys(rack for rack, _, _ in bins)
    _add(connection, tables.racks, (asdict(rack) for rack in _racks(racks)))
    _add(
        connection,
        tables.bins,
        (
            {
                "name": f"{rack}-{tier}-{position}",
                "rack": rack,
                "tier": tier,
                "position": position,
                "section": slot_code.section_of(codes[n * PER_BIN]),
            }
            for n, (rack, tier, position) in enumerate(bins)
        ),
    )
    _add(
        connection,
        tables.slots,
        (
            {
                "code": code,
                "section": slot_code.section_of(code),
                "number": slot_code.number_of(code),
                "bin": "-".join(map(str, _bin(n // PER_BIN))),
                "turns": 2,
                "card": "on_item",
                "seen_station": "bin",
                "seen_place": "-".join(map(str, _bin(n // PER_BIN))),
                "seen_accepted": True,
            }
            for n, code in enumerate(codes)
        ),
    )


def _fill_stays(connection: Connection, codes: list[str]) -> None:
    both = [(code, turn) for turn in (1, 2) for code in codes]
    _add(
        connection,
        tables.items,
        ({"id": f"i{turn}{code}", "title": f"Front wheel {code}, 36 holes", "notes": ""} for code, turn in both),
    )
    _add(
        connection,
        tables.stays,
        (
            {
                "id": f"s{turn}{code}",
                "item": f"i{turn}{code}",
                "code": code,
                "turn": turn,
                "began": AT,
                "state": "stored" if turn == 2 else "shipped",
                "ended": None if turn == 2 else AT,
                "reason": "",
            }
            for code, turn in both
        ),
    )


def _fill_orders(connection: Connection, codes: list[str], wanted: list[list[str]]) -> None:
    """The waiting orders first, then one order released for each slot's earlier thing."""
    past = [[code] for code in codes]
    numbers = range(1, len(wanted) + len(past) + 1)
    empty = {"channel": "", "received": AT, "ordered_at": None, "ship_by": None, "parcel": None}
    _add(connection, tables.orders, ({"id": f"o{n}", "number": f"{n}", "slip": n, **empty} for n in numbers))
    line = {"title": "", "listing": "", "parcel": None, "round": None, "scan": None}
    _add(
        connection,
        tables.lines,
        (
            {
                "id": f"l{n}-{position}",
                "order": f"o{n}",
                "position": position,
                "reference": slot_code.reference(code, 2 if n <= len(wanted) else 1),
                "stay": f"s{2 if n <= len(wanted) else 1}{code}",
                "state": "picked" if n <= len(wanted) else "released",
                "basket": 1,
                "in_file": True,
                **line,
            }
            for n, order in zip(numbers, [*wanted, *past], strict=True)
            for position, code in enumerate(order, 1)
        ),
    )


def _fill_history(connection: Connection, codes: list[str]) -> None:
    """A scan and an entry of the ledger for every slot, truly chained."""
    scan = {"body": "", "station": "table", "spot": "old", "take_out": False, "accepted": True, "changed": True}
    rest = {"line": None, "parcel": None, "answer": "{}", "was": "picked"}
    _add(connection, tables.scans, ({"key": f"old-{code}", "code": code, **scan, **rest} for code in codes))
    entries, previous = [], FIRST
    for seq, code in enumerate(codes, 1):
        entry = {"seq": seq, "at": AT.isoformat(timespec="microseconds"), "kind": events.Scanned.kind, "actor": "bench"}
        data = {"station": "table", "code": code, "verdict": "accepted"}
        previous = entry_hash(previous, {**entry, "data": data})
        entries.append({**entry, "data": canonical(data), "hash": previous})
    _add(connection, tables.ledger, entries)
    connection.execute(update(tables.head).values(seq=len(codes), hash=previous))
