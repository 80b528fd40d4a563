"""The rooms that are explored, and what may happen in each.

All have at least three slots, three things, two orders with three lines in all (1: D001 and D002, 2: D003), and
parcels for either order or for both. `DAY` is the whole main job at one table, by people who read no card where
its thing is not, and of buyers who cancel nothing that is closed. Everything at once has too many
states to walk, so each of the others takes one part of the work in full depth, beside a slot that nobody ordered
(D004), one that is free (D005) and one whose card is lost (D006).
"""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import replace
from functools import partial

from explorer import Room
from memory import Memory

from labels import slot_code
from scanflow.domain.orders.incoming import IncomingLine, IncomingOrder
from scanflow.domain.things import Order, Station
from scanflow.workflow import parcels, stock
from scanflow.workflow.orders import receiving
from scanflow.workflow.picking import rounds, scans
from scanflow.workflow.picking.reading import ScanBase, StationReading
from scanflow.workflow.ports import Settings

AT_BIN = Settings()
STRAIGHT = Settings(scan_at_bin=False)


def lines(*references: str, title: str = "") -> tuple[IncomingLine, ...]:
    return tuple(IncomingLine(reference, title) for reference in references)


def ref(code: str) -> str:
    return slot_code.reference(code, 1)


FIRST = IncomingOrder("1", lines=lines(ref("D001"), ref("D002")))
SECOND = IncomingOrder("2", lines=lines(ref("D003")))
FIRST_CHANGED = IncomingOrder("1", lines=(*lines(ref("D001"), title="other"), *lines("D004")))
FIRST_WITHOUT = IncomingOrder("1", lines=lines(ref("D002")))
FIRST_AGAIN = IncomingOrder("3", lines=lines(ref("D001")))
SECOND_TWICE = IncomingOrder("2", lines=lines(ref("D003"), ref("D001")))
NO_CARDS = ((" ",), ("D0015",), ("?",), (slot_code.card_text("D001"), slot_code.card_text("D003")))
"""Nothing readable, a wrong check, no text of the room, two cards in view."""


def scan(unit: Memory, station: Station, code: str, **more: str) -> None:
    key = unit.new_id()
    scans.scan(unit, StationReading(ScanBase(station=station, key=key, **more), (slot_code.card_text(code),), key))


def kinds(names: str) -> frozenset[str]:
    return frozenset(names.split(","))


def empty(slots_per_bin: int = 2) -> Memory:
    """Three slots, their cards in the tray."""
    unit = Memory(AT_BIN)
    derailleurs = stock.AddSection(code="D", name="Derailleurs", slots_per_bin=slots_per_bin, colour="blue")
    stock.add_section(unit, derailleurs)
    stock.add_slots(unit, "D", stock.AddSlots(count=3))
    return unit


def room(
    settings: Settings = AT_BIN,
    ordered: bool = True,
    picked: tuple[str, ...] = (),
    packed: tuple[str, ...] = (),
    spare: bool = True,
) -> Callable[[], Memory]:
    """A start: `picked` on a round that is over; `packed` of them in order 1's open parcel at the main table."""

    def start() -> Memory:
        unit = Memory(settings)
        stock.add_section(unit, stock.AddSection(code="D", name="Derailleurs", slots_per_bin=2, colour="blue"))
        stock.add_slots(unit, "D", stock.AddSlots(count=6 if spare else 3))
        for code in ("D001", "D002", "D003", *(("D004",) if spare else ())):
            stock.put_away(unit, stock.PutAway(title="thing", code=code))
        if spare:
            stock.lose_card(unit, "D006")
        if ordered:
            receiving.receive(unit, FIRST)
            receiving.receive(unit, SECOND)
        if picked:
            walk, _ = rounds.open_round(unit, rounds.OpenRound())
            for code in picked:
                scan(unit, Station.BIN, code, round=walk.id)
            rounds.close_round(unit, walk.id)
        if packed:
            parcels.open_parcel(unit, parcels.OpenParcel(orders=[next(iter(unit.all(Order)))]))
            for code in packed:
                scan(unit, Station.TABLE, code)
        return unit

    return start


ALL = ("D001", "D002", "D003")

DAY = Room(
    room(spare=False),
    kinds(
        "put away,open round,close round,honest bin,table,take out,honest tray,open parcel,set aside,close parcel,"
        "cancel in time,settle"
    ),
    items=4,
    tables=("main",),
    joined=False,
)

SHORT_DAY = replace(DAY, does=DAY.does - {"put away", "cancel in time", "settle"}, items=3)
"""Nothing comes in meanwhile and no order changes."""

ROOMS: dict[str, Room] = {
    "unread": Room(
        room(picked=ALL),
        kinds("unread,open parcel"),
        tables=("main",),
        unread=NO_CARDS,
    ),
    "empty": Room(
        empty,
        kinds("put away,receive,open round,close round"),
        items=3,
        turns=1,
        versions=(FIRST, SECOND),
    ),
    "walk": Room(
        room(picked=("D001",), packed=("D001",)),
        kinds("open round,close round,bin,late,short,found"),
    ),
    "stock": Room(
        room(spare=False),
        kinds("put away,withdraw,tray,cancel order"),
        items=4,
        tables=("main",),
    ),
    "versions": Room(
        room(ordered=False),
        kinds("receive,settle"),
        tables=("main",),
        versions=(FIRST, FIRST_CHANGED, SECOND_TWICE),
        joined=False,
    ),
    "file": Room(
        room(ordered=False),
        kinds("receive,settle,cancel line,revive"),
        tables=("main",),
        versions=(FIRST, SECOND_TWICE),
        joined=False,
    ),
    "reuse": Room(
        room(picked=ALL, packed=("D001",), spare=False),
        kinds("put away,table,tray,close part,lose card,reopen,withdraw"),
        items=4,
        tables=("main",),
    ),
    "parcels": Room(
        room(picked=ALL, packed=("D001",), spare=False),
        kinds("table,slip,close part,set aside,reopen,cancel order"),
        tables=("main",),
    ),
    "doubts": Room(
        room(picked=("D001",), spare=False),
        kinds("open round,close round,bin,hold,cancel line"),
        tables=("main",),
    ),
    "again": Room(
        room(picked=ALL, packed=("D001", "D002"), spare=False),
        kinds("put away,move,withdraw,tray"),
        items=4,
        tables=("main",),
    ),
    "aside": Room(
        room(picked=ALL, packed=("D001",), spare=False),
        kinds("table,shelf,set aside,slip"),
        tables=("main",),
    ),
    "unfound": Room(
        room(picked=("D001",), packed=("D001",), spare=False),
        kinds("open round,bin,short,undo"),
        tables=("main",),
    ),
    "beeps": Room(
        room(picked=ALL, packed=("D001",), spare=False),
        kinds("table,take out,shelf,tray,bin"),
        tables=("main",),
        joined=False,
        beeps=True,
    ),
    "lost": Room(
        room(picked=ALL, packed=("D001",), spare=False),
        kinds("lose card,tray,table,shelf,close part,reopen"),
        tables=("main",),
    ),
    "undo": Room(
        room(picked=("D003",)),
        kinds("open round,bin,table,undo,open parcel"),
        tables=("main",),
        joined=False,
    ),
    "straight": Room(
        room(STRAIGHT),
        kinds("table,short,found,undo,settings,open parcel,close parcel"),
        tables=("main",),
        joined=False,
    ),
    "settle": Room(
        room(picked=("D001", "D002"), packed=("D001",)),
        kinds("settle on,short,cancel line,close part"),
        tables=("main",),
        joined=False,
    ),
    "table": Room(
        room(picked=ALL),
        kinds("table,take out,open parcel,close parcel,cancel order,tray"),
        tables=("main",),
    ),
    "holds": Room(
        room(picked=ALL, packed=("D001",), spare=False),
        kinds("settle,cancel line,revive,table,take out,shelf"),
        tables=("main",),
    ),
    "in doubt": Room(
        room(picked=("D001", "D002"), packed=("D001",), spare=False),
        kinds("hold,settle,settle doubt,cancel line,revive,short,shelf"),
        tables=("main",),
        still=("D003",),
    ),
    "sold again": Room(
        room(picked=("D001",), spare=False),
        kinds("receive,hold,short,cancel order,settle doubt,move"),
        tables=("main",),
        versions=(FIRST_AGAIN,),
        still=("D003",),
    ),
    "read elsewhere": Room(
        room(picked=ALL, packed=("D001",), spare=False),
        kinds("table,take out,shelf,tray,close part,settle,set aside"),
        tables=("main",),
    ),
    "closed too early": Room(
        room(picked=ALL, packed=("D001",), spare=False),
        kinds("close part,shelf,reopen,settle,tray"),
        sights=True,
        tables=("main",),
    ),
    "two tables": Room(
        room(picked=ALL, packed=("D001",), spare=False),
        kinds("table,open parcel,set aside,close part"),
    ),
    "ways back": Room(
        room(picked=("D001", "D002"), packed=("D001",), spare=False),
        kinds("table,take out,close part,reopen,hand over,cancel line,take back,send again,shelf,tray"),
        tables=("main",),
        turns=3,
    ),
    "swapped cards": Room(
        room(picked=("D001",), spare=False),
        kinds("exchange,hold,short,cancel line"),
        tables=("main",),
    ),
    "second reason": Room(
        room(picked=ALL, packed=("D001",), spare=False),
        kinds("receive,settle,table,shelf"),
        tables=("main",),
        versions=(FIRST, FIRST_WITHOUT),
    ),
    "given out": Room(  # in one bin: where else a card was read than in the tray makes no difference here
        partial(empty, 3),
        kinds("put away,shelf,table,tray,withdraw"),
        items=2,
        tables=("main",),
        sights=True,
    ),
    "move": Room(
        room(picked=ALL),
        kinds("move,withdraw,table,open parcel"),
        turns=1,
        tables=("main",),
        joined=False,
    ),
}
