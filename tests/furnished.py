"""A room with a day's work in it, made by the same functions as everywhere: for tests of pages and browsers."""

from __future__ import annotations

from dataclasses import dataclass, field
from datetime import timedelta

from labels import slot_code
from scanflow.domain.life import LineState
from scanflow.domain.orders.incoming import IncomingLine, IncomingOrder
from scanflow.domain.things import Line, Order, Round, Station, Stay, Stop
from scanflow.shop import Shop
from scanflow.storage.unit import SqlUnit
from scanflow.workflow import orders, parcels, stock
from scanflow.workflow.answers import Answer
from scanflow.workflow.orders import receiving
from scanflow.workflow.picking import rounds, scans
from scanflow.workflow.picking.reading import ScanBase, StationReading

PAPERS = ("yellow", "pink", "green", "blue")
GOODS = (
    ("D", "Derailleurs", "Rear derailleur"),
    ("S", "Saddles", "Leather saddle"),
    ("L", "Lamps", "Dynamo lamp"),
    ("W", "Wheels", "Front wheel"),
)


@dataclass(slots=True)
class Furnished:
    """What stands in the room, by name; `round` is None in a room without orders."""

    stays: list[Stay] = field(default_factory=list)
    orders: list[Order] = field(default_factory=list)
    round: Round | None = None


def reference(stay: Stay) -> str:
    return slot_code.reference(stay.code, stay.turn)


def furnish(shop: Shop, things: int, title: str = "") -> Furnished:
    """`things` in stock over four sections; an order for every second one, with each kind of trouble in turn."""
    room = Furnished()

    def stock_it(unit: SqlUnit) -> None:
        for (code, name, _), paper in zip(GOODS, PAPERS, strict=True):
            stock.add_section(unit, stock.AddSection(code=code, name=name, slots_per_bin=10, colour=paper))
            stock.add_slots(unit, code, stock.AddSlots(count=things + 5))
        for number in range(things):
            code, _, what = GOODS[number % len(GOODS)]
            words = title or f"{what} {number + 1}"
            room.stays.append(
                stock.put_away(
                    unit, stock.PutAway(title=words, listing=f"L{number + 1}", notes="Scratched", section=code)
                )
            )

    def order_it(unit: SqlUnit) -> None:
        for number, stay in enumerate(room.stays[::2]):
            said = "Bell with a crown" if number % 5 == 4 else title
            lines = [IncomingLine(reference(stay), said)]
            if number % 5 == 3:
                lines.append(IncomingLine("Z999", title or "Nothing we have"))
            ship_by = (unit.at + timedelta(days=number - 1)).isoformat()
            order = receiving.receive(unit, IncomingOrder(f"B-{number + 1}", "fair", None, ship_by, tuple(lines)))[0]
            room.orders.append(order)

    shop.act("owner", stock_it)
    shop.act("owner", order_it)
    if room.orders:
        room.round = _walk(shop, room)
    return room


def _walk(shop: Shop, room: Furnished) -> Round:
    """A round half walked, a parcel closed and one open, a picked thing cancelled, another missing."""
    walk, _ = shop.act("owner", lambda unit: rounds.open_round(unit, rounds.OpenRound()))
    with shop.looking() as unit:
        stops = [(stop.line, unit.get(Line, stop.line)) for stop in unit.find(Stop, round=walk.id)]
        codes = [unit.get(Stay, line.stay or "").code for _, line in stops if line]  # type: ignore[union-attr]
    picked = max(1, len(stops) // 2)
    for code in codes[:picked]:
        scan(shop, Station.BIN, code, round=walk.id)
    walked = [line for _, line in stops if line]
    if picked > 3:
        shop.act("owner", lambda unit: parcels.open_parcel(unit, parcels.OpenParcel(orders=[walked[0].order])))
        scan(shop, Station.TABLE, codes[0])
        shop.act("owner", lambda unit: orders.cancel(unit, walked[1].order, orders.Cancel()))
        shop.act("owner", lambda unit: orders.short(unit, walked[2].id, orders.Short(note="Not in its bin")))
        shop.act("owner", lambda unit: parcels.open_parcel(unit, parcels.OpenParcel(orders=[walked[3].order])))
    return walk


def waiting(shop: Shop, room: Furnished) -> list[tuple[str, Line]]:
    """Code and line of each stop of the open round that waits, in the order to walk."""
    assert room.round is not None
    found = []
    with shop.looking() as unit:
        for stop in unit.find(Stop, round=room.round.id):
            line = unit.get(Line, stop.line)
            if line and line.state is LineState.WAITING and not line.hold and line.round == room.round.id:
                stay = unit.get(Stay, line.stay or "")
                assert stay is not None
                found.append((stay.code, line))
    return found


def scan(shop: Shop, station: Station, code: str, key: str = "", **spot: str) -> Answer:
    """Hold the card of a slot before a station, and get the answer. Each needs a key of its own."""
    key = key or f"{station}-{code}"
    reading = StationReading(ScanBase(station=station, key=key, **spot), (slot_code.card_text(code),), key)  # type: ignore[arg-type]
    return shop.act("owner", lambda unit: scans.scan(unit, reading))
