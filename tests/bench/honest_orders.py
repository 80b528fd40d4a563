"""Honest people who sell: orders of what is there arrive as files and calls, come again, grow, shrink and revive."""

from __future__ import annotations

import csv
import io
from dataclasses import dataclass, replace
from datetime import datetime

from honest_stock import CHANNELS, COMPLETE, SAYS, StockPeople, Thing

from labels import slot_code
from scanflow.domain.life import DoubtEnd, Hold, LineState
from scanflow.domain.orders.incoming import IncomingLine, IncomingOrder
from scanflow.domain.orders.loaded import Loaded
from scanflow.domain.things import ChannelStatus, Doubt, Line, Order, Parcel, Station, Stay
from scanflow.exchange import mapping, orders_csv
from scanflow.exchange.csv_table import read_table
from scanflow.workflow import orders, parcels
from scanflow.workflow.orders import file as order_file
from scanflow.workflow.orders import receiving
from scanflow.workflow.ports import Unit
from scanflow.workflow.stock import doubts

HEADER = ("number", "channel", "ordered_at", "ship_by", "reference", "title", "listing", "status")
WORDS = {ChannelStatus.PACK: "Green", ChannelStatus.ASIDE: "Amber"}
"""What the north writes into its status column; the south's file lists all of its open orders."""

MEANING = {(SAYS, word): status for status, word in WORDS.items()}
ENDED = (LineState.RELEASED, LineState.CANCELLED)


@dataclass(slots=True, eq=False)
class Sale:
    """An order as its channel knows it: `things` in the order of its lines, `counted` of which are in the tally."""

    incoming: IncomingOrder
    things: list[Thing]
    by_file: bool
    id: str = ""
    counted: int = 0


def load_file(unit: Unit, parsed: orders_csv.Parsed) -> Loaded:
    """A whole file, as the page loads it, and what it lacks."""
    done, _ = order_file.load_part(unit, parsed.orders, parsed.rows, 0, lambda: False, f"load {unit.at}")
    order_file.load(unit, (), {}, parsed.listed)
    return done


class OrderPeople(StockPeople):
    sales: list[Sale]
    numbers = 0

    def lines(self, sale: Sale) -> tuple[Line, ...]:
        return self.look(lambda unit: unit.find(Line, order=sale.id))

    def unsold(self) -> list[Thing]:
        sold = {id(thing) for sale in self.sales for thing in sale.things}
        return [thing for thing in self.stocked if id(thing) not in sold]

    def orders_come(self) -> None:
        """New ones; and old ones again, unchanged, paid by now, or with a line more."""
        arriving = self.random.sample(self.sales, min(len(self.sales), self.random.randint(0, 3)))
        arriving += [sale for sale in self.sales if self._pays(sale) and sale not in arriving]
        for sale in arriving:
            if self.chance(0.2):
                self._add_line(sale)
        for _ in range(self.random.randint(0, 3)):
            things = self.unsold()
            if things:
                arriving.append(self._sell(things))
        arriving += self._all_open(arriving)
        for channel in CHANNELS:
            by_file = [sale for sale in arriving if sale.by_file and sale.incoming.channel == channel]
            if by_file:
                self._load_file(by_file)
        for sale in arriving:
            if not sale.by_file:
                self.call(receiving.receive, sale.incoming)
            self._received(sale)

    def _pays(self, sale: Sale) -> bool:
        """Whether an order that was not paid is paid now."""
        paid = sale.incoming.status is ChannelStatus.ASIDE and self.chance(0.4)
        if paid:
            sale.incoming = replace(sale.incoming, status=ChannelStatus.PACK)
        return paid

    def _all_open(self, arriving: list[Sale]) -> list[Sale]:
        """What the complete file has beside these, if it has any of them."""
        if not any(self._is_in_complete(sale) for sale in arriving):
            return []
        there = [sale for sale in self.sales if sale not in arriving and sale.id and self._is_in_complete(sale)]
        return [sale for sale in there if any(line.state not in ENDED for line in self.lines(sale))]

    def _is_in_complete(self, sale: Sale) -> bool:
        return sale.by_file and sale.incoming.channel == COMPLETE

    def _sell(self, unsold: list[Thing]) -> Sale:
        things = self.random.sample(unsold, min(len(unsold), self.random.choice((1, 1, 1, 2, 2, 3, 4))))
        self.numbers += 1
        channel = self.random.choice(CHANNELS)
        when = self._bought(things)
        lines = tuple(self._line(thing, when, channel) for thing in things)
        status = None
        if channel == SAYS:
            status = ChannelStatus.ASIDE if self.chance(0.25) else ChannelStatus.PACK
        incoming = IncomingOrder(f"{1000 + self.numbers}", channel, self._written(when), None, lines, status=status)
        self.sales.append(Sale(incoming, things, self.chance(0.5)))
        return self.sales[-1]

    def _bought(self, things: list[Thing]) -> datetime:
        """After the last of the things was listed, often only minutes after."""
        listed = max(thing.listed_at for thing in things)
        return listed + (self.now - listed) * self.random.choice((self.random.random() * 0.05, self.random.random()))

    def _written(self, when: datetime) -> str | None:
        """As channels write it, or not at all."""
        forms = (None, f"{when:%Y-%m-%d}", when.isoformat(), f"{when:%Y-%m-%dT%H:%M}", f"{when:%Y-%m-%dT%H:%M:%SZ}")
        return self.random.choice(forms)

    def _line(self, thing: Thing, when: datetime, channel: str) -> IncomingLine:
        """What the listing said when it was bought."""
        reference = [each for since, each in thing.references if since <= when][-1]
        title = thing.title if self.chance(0.85) else ""
        listing = thing.listings.get(channel, thing.listings[""])
        return IncomingLine(reference, title, listing if self.chance(0.8) else "")

    def _add_line(self, sale: Sale) -> None:
        things = self.unsold()
        if things:
            sale.things.append(self.random.choice(things))
            lines = (*sale.incoming.lines, self._line(sale.things[-1], self.now, sale.incoming.channel))
            sale.incoming = replace(sale.incoming, lines=lines)

    def _load_file(self, sales: list[Sale]) -> None:
        text = io.StringIO()
        writer = csv.writer(text, delimiter=self.random.choice(",;\t"))
        writer.writerow(HEADER)
        for sale in sales:
            order = sale.incoming
            for line in order.lines:
                head = (order.number, order.channel, order.ordered_at, order.ship_by)
                word = WORDS[order.status] if order.status is not None else ""
                writer.writerow((*head, line.reference, line.title, line.listing, word))
        table = read_table(text.getvalue().encode(self.random.choice(("utf-8", "utf-8-sig"))))
        parsed = orders_csv.orders(table, mapping.guess(table), meaning=lambda *said: MEANING.get(said))
        loaded = self.call(load_file, parsed)
        for refused in (*parsed.refused, *(loaded.refused if loaded else ())):
            self.tally.calls_refused[f"row: {refused.code}"] += 1

    def _received(self, sale: Sale) -> None:
        """Count new lines and false holds, then settle them as a person would."""
        order = sale.incoming
        sale.id = self.look(lambda unit: unit.find(Order, number=order.number, channel=order.channel))[0].id
        lines = self.lines(sale)
        self.tally.lines += len(lines) - sale.counted
        sale.counted = len(lines)
        for line, thing in zip(lines, sale.things, strict=True):
            self.tally.answers.append((order.number, line.position, line.state, line.hold))
            if line.live and line.stay != thing.stay:
                self.tally.misbound += line.hold is None
            unpaid = order.status is ChannelStatus.ASIDE and line.hold is Hold.NOT_CLEARED
            if line.has(Hold.SUSPECT):
                self._find(thing)
            elif line.hold is not None and line.hold is not Hold.CANCELLED_IN_BOX and not unpaid:
                self.tally.held[line.hold] += 1
                said = f"{line.why} The line: {line.reference!r}, “{line.title}”, {line.listing!r}."
                self.tally.examples.setdefault(line.hold, said)
                self.call(orders.settle, line.id, orders.Settle(stay=thing.stay))

    def _find(self, thing: Thing) -> None:
        """What was told to be missing is looked for and found."""
        stay = self.look(lambda unit: unit.get(Stay, thing.stay))
        for doubt in self.look(lambda unit: unit.find(Doubt, item=stay.item, how=None)) if stay else ():
            self.call(
                doubts.settle, doubt.id, doubts.SettleDoubt(how=DoubtEnd.SEEN, text=slot_code.card_text(thing.code))
            )

    def minds_change(self, share: float) -> None:
        """Buyers cancel, or want it after all; what was in hand for a cancelled line is put back."""
        for sale in self.sales:
            for line, thing in zip(self.lines(sale), sale.things, strict=True):
                if line.live and self.chance(share):
                    self._cancel(sale, line, thing)
                elif line.state is LineState.CANCELLED and thing not in self.off_shelf and self.chance(10 * share):
                    self.call(orders.revive, line.id)

    def _cancel(self, sale: Sale, line: Line, thing: Thing) -> None:
        self.call(orders.cancel, sale.id, orders.Cancel(line=line.id))
        if line.state is LineState.PACKED:
            self._take_out(thing, line.parcel or "")
        if line.state in (LineState.PACKED, LineState.PICKED):
            self.off_shelf.append(thing)

    def _take_out(self, thing: Thing, parcel_id: str) -> None:
        """By a scan at the parcel's table; one that was set aside is taken up for it."""
        parcel = self.look(lambda unit: unit.get(Parcel, parcel_id))
        if parcel is None:
            return
        table = parcel.table if parcel.open else "bench"
        if not parcel.open:
            self.call(parcels.open_parcel, parcels.OpenParcel(orders=parcel.orders, table=table))
        self.scan(Station.TABLE, slot_code.card_text(thing.code), table=table, take_out=True)
        if not parcel.open:
            self.call(parcels.set_aside, parcel_id)

    def forget_sales(self) -> None:
        """Channels send old orders again for a while, then no more."""
        self.sales = [
            sale
            for sale in self.sales
            if any(line.state not in ENDED for line in self.lines(sale)) or not self.chance(0.3)
        ]
