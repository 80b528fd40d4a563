"""Small rooms that are counted, each with a few things amiss, explored as those of `small_rooms`.

D001 belongs in A-1-1, D002 in A-1-2, D003 of A-1-3 is free. All was gone through by hand.
"""

from __future__ import annotations

from collections.abc import Callable, Mapping

from explorer import Room
from memory import Memory
from small_rooms import FIRST, kinds, scan

from labels import slot_code
from scanflow.domain.things import Line, Order, Station
from scanflow.workflow import orders, parcels, stock
from scanflow.workflow.counts import looks, stocktakes
from scanflow.workflow.orders import receiving
from scanflow.workflow.picking import rounds

RIGHT = {"A-1-1": ("D001",), "A-1-2": ("D002",), "A-1-3": (), "tray": ("D003",)}


def counted(amiss: Mapping[str, tuple[str, ...]], before: Callable[[Memory], object] = id) -> Callable[[], Memory]:
    """A count in which these places do not hold what they should; `before` it, something happened."""

    def start() -> Memory:
        unit = Memory()
        stock.add_section(unit, stock.AddSection(code="D", name="Derailleurs", slots_per_bin=1, colour="blue"))
        stock.add_slots(unit, "D", stock.AddSlots(count=3))
        for code in ("D001", "D002"):
            stock.put_away(unit, stock.PutAway(title="thing", code=code))
        before(unit)
        count = stocktakes.open_count(unit, stocktakes.OpenCount(area="room"))
        for place, codes in (RIGHT | dict(amiss)).items():
            texts = tuple(looks.LabelReading(slot_code.card_text(code)) for code in codes)
            looks.look(unit, count.id, looks.IncomingLook(f"first-{place}", "", texts, place=place))
        return unit

    return start


def picked(unit: Memory) -> None:
    """D001 is on a round's basket and D002 short, for one order."""
    receiving.receive(unit, FIRST)
    walk, _ = rounds.open_round(unit, rounds.OpenRound())
    scan(unit, Station.BIN, "D001", round=walk.id)
    orders.short(unit, list(unit.all(Line))[1], orders.Short())
    rounds.close_round(unit, walk.id)


def shipped(unit: Memory) -> None:
    """The order of D001 and D002 has gone; the one card is in the tray, the other due."""
    receiving.receive(unit, FIRST)
    walk, _ = rounds.open_round(unit, rounds.OpenRound())
    for code in ("D001", "D002"):
        scan(unit, Station.BIN, code, round=walk.id)
    parcels.open_parcel(unit, parcels.OpenParcel(orders=[next(iter(unit.all(Order)))]))
    for code in ("D001", "D002"):
        scan(unit, Station.TABLE, code)
    scan(unit, Station.TRAY, "D001")


DOES = "resolve,reopen finding"

COUNTED_ROOMS: dict[str, Room] = {
    # D001 is gone
    "gone": Room(counted({"A-1-1": ()}), kinds(f"{DOES},withdraw,close count")),
    # D002 stands in A-1-3
    "astray": Room(counted({"A-1-2": (), "A-1-3": ("D002",)}), kinds(f"{DOES},tray,move")),
    # the card of D001 lies in the tray, that of D003 hangs on the shelf
    "loose cards": Room(
        counted({"A-1-1": (), "A-1-3": ("D003",), "tray": ("D001",)}), kinds(f"{DOES},tray,put away"), items=3
    ),
    # D001 is in a basket and on its shelf, D002 short and in two bins
    "under way": Room(
        counted({"A-1-3": ("D002",)}, picked), kinds(f"{DOES},found,cancel line,hold,settle"), tables=("main",)
    ),
    # the card of D001, whose thing has gone, hangs on a shelf; that of D002 is not back, till it is found there
    "sent": Room(counted({"A-1-2": ()}, shipped), kinds(f"{DOES},tray,look,reopen"), looks=(("A-1-1", ("D002",)),)),
}
