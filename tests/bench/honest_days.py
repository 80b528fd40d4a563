"""Honest people's days: they walk rounds, pack, close, and bring the cards back."""

from __future__ import annotations

from dataclasses import dataclass
from datetime import timedelta

from honest_orders import OrderPeople, Sale
from honest_stock import Habits, Thing
from rooms import Room

from labels import slot_code
from scanflow.domain.life import LineState, ParcelState
from scanflow.domain.things import Line, Order, Parcel, Round, Station, Stop
from scanflow.workflow import orders, parcels
from scanflow.workflow.picking import rounds
from scanflow.workflow.ports import Settings


def settings_of(seed: int) -> Settings:
    """Most shops scan at the bin and let parcels close by themselves."""
    return Settings(auto_close=seed % 4 != 1, scan_at_bin=seed % 5 != 2)


@dataclass(slots=True)
class Box:
    """A parcel on a table and the cards still to be scanned there."""

    table: str
    id: str
    things: list[Thing]


class Shop(OrderPeople):
    def __init__(self, room: Room, seed: int, habits: Habits | None = None) -> None:
        super().__init__(room, seed, habits)
        self.settings = settings_of(seed)
        self.sales = []
        self.open_rounds: list[str] = []

    def day(self) -> None:
        self.cards_back(0.7)
        self.relist()
        for _ in range(self.random.randint(2, 7)):
            self.put_away()
        if self.stocked and self.tray and self.chance(0.3):
            self.move()
        if self.unsold() and self.chance(0.05):
            self.withdraw(self.random.choice(self.unsold()))
        for _ in range(self.random.randint(1, 2)):
            self.orders_come()
            self.minds_change(0.01)
            self.walk()
            self.put_back()
            self.pack()
        self.put_back()
        self.cards_back(0.6)
        self.forget_sales()
        self.now = self.now.replace(hour=8, minute=0, second=0) + timedelta(days=1)

    # the round

    def walk(self) -> None:
        """One round, or two at a time; rounds of before are closed first or stay open for a while."""
        self._find_missing()
        if not self.settings.scan_at_bin:
            return
        for name in [name for name in self.open_rounds if self.chance(0.7)]:
            self.open_rounds.remove(name)
            self.call(rounds.close_round, name)
        if self.sales and self.chance(0.2):
            self._round([sale.id for sale in self.random.sample(self.sales, (len(self.sales) + 1) // 2)])
        self._round(None)

    def _find_missing(self) -> None:
        for sale in self.sales:
            for line in self.lines(sale):
                if line.state is LineState.SHORT and self.chance(0.5):
                    self.call(orders.found, line.id)

    def _round(self, order_ids: list[str] | None) -> None:
        opened = self.call(rounds.open_round, rounds.OpenRound(orders=order_ids))
        if opened is None:
            return
        round_: Round = opened[0]
        stops = list(self.look(lambda unit: unit.find(Stop, round=round_.id)))
        if self.chance(0.5):
            self.random.shuffle(stops)
        offline = bool(stops) and self.chance(0.1)
        if offline:
            self.call(rounds.close_round, round_.id)
            if self.chance(self.habits.packed_before_picks_arrived):
                self._pack_first(stops[0])
        for stop in stops:
            self._stop(stop, self.now.isoformat() if offline else None)
            if not offline and self.chance(0.04):
                self.orders_come()
                self.minds_change(0.03)
        if stops and not offline:
            self.open_rounds.append(round_.id)

    def _stop(self, stop: Stop, at: str | None) -> None:
        line = self.look(lambda unit: unit.get(Line, stop.line))
        thing = next((thing for thing in self.stocked if line and thing.stay == line.stay), None)
        if line is None or thing is None or line.state is not LineState.WAITING or self.chance(0.04):
            return
        if self.chance(0.02):
            self.call(orders.short, line.id, orders.Short())
            return
        here = {"bin": stop.bin} if self.chance(0.3) else {}
        self.scan(Station.BIN, slot_code.card_text(thing.code), round=stop.round, at=at, **here)

    def _pack_first(self, stop: Stop) -> None:
        """The thing is on the table before the pick of a phone without network has come in."""
        line = self.look(lambda unit: unit.get(Line, stop.line))
        sale = next(sale for sale in self.sales if line and sale.id == line.order)
        box = self._open([sale], "main")
        if box is not None:
            thing = next(thing for thing in sale.things if line and thing.stay == line.stay)
            self.scan(Station.TABLE, slot_code.card_text(thing.code))
            self._finish(box)

    # the table

    def pack(self) -> None:
        """Each order that has something to pack, alone or joined with another; at one table, or at two at a time."""
        ready = [sale for sale in self.sales if self._ready(sale)]
        self.random.shuffle(ready)
        while ready:
            boxes = []
            for table in ("main", "window") if self.chance(0.2) else ("main",):
                group = [ready.pop() for _ in range(min(len(ready), 2 if self.chance(0.15) else 1))]
                group = [sale for sale in group if self._ready(sale)]
                box = self._open(group, table) if group else None
                boxes += [box] if box else []
            self._fill(boxes)
            for box in boxes:
                self._finish(box)

    def _packable(self, line: Line) -> bool:
        """Where nothing is scanned at the bins, what is not paid yet is not fetched."""
        waiting = line.state is LineState.WAITING and not line.holds and not self.settings.scan_at_bin
        return waiting or line.state is LineState.PICKED

    def _ready(self, sale: Sale) -> bool:
        return any(self._packable(line) for line in self.lines(sale))

    def _open(self, group: list[Sale], table: str) -> Box | None:
        """By the slip, or by choosing; what was set aside for an order is taken up again."""
        order = self.look(lambda unit: unit.get(Order, group[0].id))
        aside = self.look(lambda unit: unit.get(Parcel, order.parcel)) if order and order.parcel else None
        if aside is not None:
            group = [sale for sale in self.sales if sale.id in aside.orders]
        else:
            fresh = [self.look(lambda unit, sale=sale: unit.get(Order, sale.id)) for sale in group]
            group = [sale for sale, now in zip(group, fresh, strict=True) if now and not now.parcel]
        if order is not None and len(group) == 1 and self.chance(0.5):
            parcel_id = self.scan(Station.TABLE, slot_code.slip_text(order.slip), table=table)["parcel"]
        else:
            ids = list(aside.orders) if aside else [sale.id for sale in group]
            opened = self.call(parcels.open_parcel, parcels.OpenParcel(orders=ids, table=table))
            parcel_id = opened.id if opened else None
        if parcel_id is None:
            return None
        pairs = [pair for sale in group for pair in zip(self.lines(sale), sale.things, strict=True)]
        things = [thing for line, thing in pairs if self._packable(line)]
        self.random.shuffle(things)
        return Box(table, parcel_id, things)

    def _fill(self, boxes: list[Box]) -> None:
        """Scan the cards, at both tables in turns; in between a buyer may cancel."""
        while waiting := [box for box in boxes if box.things]:
            box = self.random.choice(waiting)
            thing = box.things.pop()
            if thing in self.off_shelf or not self._still_packable(thing):
                continue
            self.scan(Station.TABLE, slot_code.card_text(thing.code), table=box.table)
            if self.chance(0.02):
                self.minds_change(0.05)

    def _still_packable(self, thing: Thing) -> bool:
        lines = self.look(lambda unit: unit.find(Line, stay=thing.stay))
        return any(line.live and self._packable(line) for line in lines)

    def _finish(self, box: Box) -> None:
        """Close what is complete, close a part, or set it aside."""
        parcel = self.look(lambda unit: unit.get(Parcel, box.id))
        if parcel is None or parcel.state is not ParcelState.OPEN:
            return
        packed = self.look(lambda unit: unit.find(Line, parcel=box.id, state=LineState.PACKED))
        missing = parcels.still_wanted(self.look(lambda unit: parcels.lines_of(unit, parcel.orders)))
        if packed and (not missing or self.chance(0.4)):
            released = self.call(parcels.close_parcel, box.id, partial=bool(missing))
            self.shipped(released or ())
        else:
            self.call(parcels.set_aside, box.id)
