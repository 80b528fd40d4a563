"""A small room in memory to work in, with a short word for each thing done there."""

from __future__ import annotations

from datetime import timedelta
from typing import Any

from memory import Memory

from labels import slot_code
from scanflow.domain.orders.incoming import IncomingLine, IncomingOrder
from scanflow.domain.things import Item, Line, Order, Parcel, Round, Slot, Stay
from scanflow.domain.whereabouts import Whereabouts
from scanflow.workflow import parcels, stock
from scanflow.workflow.orders import receiving
from scanflow.workflow.picking import rounds, scans
from scanflow.workflow.picking.reading import ScanBase, StationReading
from scanflow.workflow.ports import Settings
from scanflow.workflow.stock import sightings

LATER = "2026-03-02T11:00:00Z"


class RoomInMemory:
    """Section D with slots D001 … D006, two to a bin: A-1-1, A-1-2, A-1-3. Things are put away as asked."""

    def __init__(self, *codes: str, scan_at_bin: bool = True, auto_close: bool = True) -> None:
        self.unit = Memory(Settings(scan_at_bin=scan_at_bin, auto_close=auto_close))
        stock.add_section(self.unit, stock.AddSection(code="D", name="Derailleurs", slots_per_bin=2, colour="blue"))
        stock.add_slots(self.unit, "D", stock.AddSlots(count=6))
        self.keys = 0
        for code in codes:
            self.put_away(code)

    def put_away(self, code: str, title: str = "") -> Stay:
        """By the card in hand."""
        return stock.put_away(
            self.unit, stock.PutAway(title=title or f"thing of {code}", text=slot_code.card_text(code))
        )

    def order(self, number: str, *references: str | IncomingLine, **more: Any) -> Order:
        """Bare slot codes stand for the reference of their present stay."""
        lines = tuple(self._asked(each) if isinstance(each, str) else each for each in references)
        return receiving.receive(self.unit, IncomingOrder(number, lines=lines, **more))[0]

    def _asked(self, code: str) -> IncomingLine:
        return IncomingLine(slot_code.reference(code, max(self.slot(code).turns, 1)))

    def slot(self, code: str) -> Slot:
        return self.unit.all(Slot)[code]

    def stay(self, code: str) -> Stay:
        """The slot's latest."""
        return self.unit.find(Stay, code=code)[-1]

    def item(self, code: str) -> Item:
        return self.unit.all(Item)[self.stay(code).item]

    def where(self, code: str) -> Whereabouts:
        facts = self.unit.facts(code)
        assert facts is not None
        return sightings.where(self.unit, facts)

    def wait(self, seconds: float) -> None:
        """Time passes."""
        self.unit.at += timedelta(seconds=seconds)

    def line(self, code: str) -> Line:
        """The last line that asks for the slot's latest stay."""
        return self.unit.find(Line, stay=self.stay(code).id)[-1]

    def lines(self, order: Order) -> tuple[Line, ...]:
        return self.unit.find(Line, order=order.id)

    def round(self, *chosen: Order) -> Round:
        return rounds.open_round(self.unit, rounds.OpenRound(orders=[order.id for order in chosen] or None))[0]

    def parcel(self, *chosen: Order, table: str = "main") -> Parcel:
        return parcels.open_parcel(self.unit, parcels.OpenParcel(orders=[order.id for order in chosen], table=table))

    def parcel_now(self, parcel: Parcel) -> Parcel:
        return self.unit.all(Parcel)[parcel.id]

    def read(self, station: str, *texts: str, key: str = "", **more: Any) -> dict[str, Any]:
        """One reading of these texts as they stand."""
        self.keys += 1
        key = key or f"key-{self.keys}"
        body = more.pop("body", f"{station} {texts} {more}")
        known = {name: more.pop(name) for name in ScanBase.model_fields if name in more}
        return scans.scan(self.unit, StationReading(ScanBase(station=station, key=key, **known), texts, body, **more))

    def scan(self, station: str, code: str, **more: Any) -> dict[str, Any]:
        """The card of a slot is scanned."""
        return self.read(station, slot_code.card_text(code), **more)

    def pick(self, *codes: str) -> None:
        """Each from its bin, on one round for all that wait."""
        walk = self.round()
        for code in codes:
            assert self.scan("bin", code, round=walk.id)["verdict"] == "accepted"
        rounds.close_round(self.unit, walk.id)

    def pack(self, *codes: str, table: str = "main") -> None:
        for code in codes:
            assert self.scan("table", code, table=table)["verdict"] == "accepted"

    def release(self, number: str, *codes: str) -> Order:
        """An order of these from receipt to its closed parcel."""
        order = self.order(number, *codes)
        self.pick(*codes)
        self.parcel(order)
        self.pack(*codes)
        return order
