"""Honest people with orders: listings sell, files come, buyers change their minds, held lines are settled."""

from __future__ import annotations

import re
from dataclasses import dataclass, field

from rehearsal.channels import CHANNELS, NORTH, PACK, SOUTH, ChannelFile, Loader, stages
from rehearsal.service import DAY, Json
from rehearsal.world import Bought, Box, Sale, Thing

STILL = ("waiting", "picked", "packed", "short")
PATIENCE = 3 * 24 * 3600.0
"""How long a missing thing is looked for before its buyer gets the money back."""


@dataclass(eq=False, slots=True)
class Misfiled:
    """A file that was loaded as another channel's: what it brought, and which lines of that channel it lacked."""

    load: str
    into: str
    sales: list[Sale]
    brought: list[Sale] = field(default_factory=list)
    lacked: set[str] = field(default_factory=set)


class Seller(Loader):
    numbers = 1000
    still_sells = True
    parts = 0.15
    """How many of a complete channel's files were asked for as parts."""

    late = 0.03
    """The chance at each moment that an order is called off by its channel, or not paid after all."""

    sent_again = 0.15
    """The chance that an order of another day is in today's file too."""

    # orders come in

    def unsold(self) -> list[Thing]:
        return [thing for thing in self.world.things if thing.reference and thing.here and thing.sale is None]

    def orders_come(self) -> None:
        self.relist()
        self.file_right(0.5)
        new = [sale for _ in range(self.random.randint(1, 3)) if (sale := self.sell()) is not None]
        old = [sale for sale in self.world.sales if sale.id and not sale.done and self.chance(self.sent_again)]
        pair = len(new) > 1 and self.chance(0.2)
        if pair and self.is_free(new[1].number, new[0].channel):
            new[0].joined, new[1].joined = new[1], new[0]
            new[1].channel = new[0].channel
            new[1].unpaid &= new[1].channel == NORTH.name
        self.money_comes()
        again = [sale for sale in self.news() if sale not in old]
        self.receive([*new, *old, *again], by_file=self.chance(0.6))

    def is_free(self, number: str, channel: str) -> bool:
        """Whether it has no order of this number, nor the account, where a file was loaded as another channel's."""
        return all((number, channel) not in ((sale.number, sale.channel), sale.key) for sale in self.world.sales)

    def relist(self) -> None:
        """What did not sell is listed anew, with an id that nobody writes down."""
        for thing in self.unsold():
            if self.chance(0.05):
                thing.listings[self.random.choice(list(CHANNELS))] = f"R{self.random.randrange(10**9)}"

    def money_comes(self) -> None:
        """Who has not paid does so, or calls it off."""
        for sale in self.world.sales:
            if sale.unpaid and sale.pays_at <= self.calls.now:
                sale.unpaid = False
                if self.chance(0.25):
                    self.off(sale.bought)

    def off(self, those: list[Bought]) -> None:
        for bought in those:
            bought.off |= not bought.delivered

    def news(self) -> list[Sale]:
        """The orders of which their channel says something else by now."""
        known = [sale for sale in self.world.sales if sale.id and sale.channel == NORTH.name]
        return [sale for sale in known if tuple(stages(sale, sale.bought)) != sale.said]

    def tell_news(self) -> None:
        self.money_comes()
        again = self.news()
        if again:
            self.receive(again, by_file=True)

    def called_off(self, chance: float, only: Sale | None = None) -> None:
        """At any moment a channel says that an order, or a thing of it, is wanted no more, or not paid after all.

        What a complete file lacks is called off before it was closed: then its channel has it as sent.
        """
        live = [sale for sale in self.world.sales if sale.id and not sale.done and only in (None, sale)]
        for sale in live:
            if sale.channel == NORTH.name and not sale.unpaid and self.chance(chance):
                self.changes_late(sale)
            elif sale.channel == SOUTH.name and sale.filed and not self.packed_up(sale) and self.chance(chance):
                self.off(sale.bought)
                if not self.receive_file(SOUTH, []):
                    self.cancel(sale, None)  # a file without a row is none: by hand, then

    def packed_up(self, sale: Sale) -> bool:
        """A parcel may have closed by itself before its box is."""
        closed = any(each.is_for(sale) and each.closed for each in self.world.boxes)
        return closed or any(self.told.in_closed(each.thing.code) for each in sale.bought)

    def changes_late(self, sale: Sale) -> None:
        if set(sale.said) != {PACK} or self.chance(0.4):
            self.off(sale.bought)
        elif self.chance(0.5):
            self.off([self.random.choice(sale.bought)])
        else:
            sale.unpaid, sale.pays_at = True, self.calls.now + self.random.choice((0.5, 1, 2)) * DAY
        self.receive([sale], by_file=self.chance(0.7))

    def sell(self) -> Sale | None:
        things = self.unsold()
        if not things:
            return None
        chosen = self.random.sample(things, min(len(things), self.random.choice((1, 1, 1, 2, 2, 3))))
        channel = self.random.choice(list(CHANNELS))
        sale = Sale(self.next_number(channel), channel, [])
        if channel == NORTH.name and self.chance(0.3):
            sale.unpaid, sale.pays_at = True, self.calls.now + self.random.choice((1, 2, 3)) * DAY
        for thing in chosen:
            thing.sale = sale
            sale.bought.append(self.offered(thing, channel))
        self.world.sales.append(sale)
        return sale

    def next_number(self, channel: str) -> str:
        """Each channel counts by itself, and at times two have come to the same number."""
        others = [sale.number for sale in self.world.sales[-6:] if self.is_free(sale.number, channel)]
        if others and self.chance(0.15):
            return others[-1]
        self.numbers += 1
        return f"{self.numbers}"

    def offered(self, thing: Thing, channel: str) -> Bought:
        """What the listing said when it was bought."""
        listing = thing.listings.get(channel, thing.listing)
        return Bought(thing, thing.reference, thing.listed, listing if self.chance(0.8) else "")

    def receive(self, sales: list[Sale], *, by_file: bool) -> None:
        """`by_file`: a file of each channel; else each order by a call of a program."""
        if by_file:
            for channel in CHANNELS.values():
                its = [sale for sale in sales if sale.channel == channel.name]
                if its:
                    self.receive_file(channel, its)
            return
        for sale in sales:
            if sale.account and sale.account != sale.channel:
                continue  # its program knows no other channel
            those = self.in_call(sale)
            _, order = self.calls.post("/api/orders", **self.body(sale, those))
            self.received(sale, order)
            self.tell({sale: those}, {})

    def body(self, sale: Sale, those: list[Bought]) -> Json:
        lines = [{"reference": b.reference, "title": b.title, "listing": b.listing} for b in those]
        said = set(stages(sale, those)) - {"sent"} if sale.channel == NORTH.name else set()
        status = {"status": said.pop()} if len(said) == 1 else {}
        return {"number": sale.number, "channel": sale.channel, "lines": lines, **status}

    def in_call(self, sale: Sale) -> list[Bought]:
        """A call has no status of a line: what is wanted no more is left out, while something else still is."""
        those = self.in_file(sale)
        wanted = [each for each in those if not each.off]
        return wanted if sale.id and sale.channel == NORTH.name and wanted else those

    def in_file(self, sale: Sale) -> list[Bought]:
        return sale.bought

    # files

    def receive_file(self, channel: ChannelFile, sales: list[Sale]) -> bool:
        """A complete file has beside these all that is open; now and then a part is asked for, and loaded so.

        Whether there was anything to load.
        """
        part = channel.complete and bool(sales) and self.chance(self.parts)
        if channel.complete and not part:
            sales = self.all_open(channel, sales)
        if not sales:
            return False
        into, part = self.chosen(channel, sales, part=part)
        rows = {sale: self.in_file(sale) for sale in sales}
        before = {sale for sale in self.world.sales if sale.id}
        self.load(channel, rows, into, part=part)
        known = self.by_number(self.all_orders())
        wrong = Misfiled("", into, sales) if into != channel.name else None
        for sale in sales:
            order = known.get((sale.number, into))
            if order is None:
                self.tally.refused_call("an order of a file is not there", sale.number)
            elif wrong is None or not any(each.id == order["id"] for each in before):
                self.received(sale, order)
                if sale.id == order["id"] and sale not in before:
                    sale.filed, sale.account = True, into
        mine = {sale: those for sale, those in rows.items() if sale.key == (sale.number, into) and sale.id}
        lacked = self.tell(mine, self.explained if channel.words else {})
        lacked |= set() if part else self.lacks(into, {(sale.number, into) for sale in sales})
        if wrong is not None:
            wrong.lacked, wrong.brought = lacked, [sale for sale in sales if sale in mine and sale not in before]
            self.misfiled_now(wrong)
        return True

    def all_open(self, channel: ChannelFile, sales: list[Sale]) -> list[Sale]:
        """All orders of the channel that it has as open: not what was called off, nor all of what is closed."""
        its = [sale for sale in self.world.sales if sale.channel == channel.name and (sale.id or sale in sales)]
        open_ = [sale for sale in its if not all(each.off or each.delivered for each in sale.bought)]
        return [sale for sale in open_ if not self.packed_up(sale) or self.chance(0.5)]

    def chosen(self, channel: ChannelFile, sales: list[Sale], *, part: bool) -> tuple[str, bool]:
        """The channel that a file is loaded as, and whether as a part."""
        return channel.name, part

    def tell(self, rows: dict[Sale, list[Bought]], explained: dict[str, str]) -> set[str]:
        """What the service has been told by these rows, as it was told to take them; the lines that they lack anew."""
        lacked = set()
        for sale, those in rows.items():
            said = stages(sale, those)
            sale.said = tuple(said) if len(those) == len(sale.bought) else ()
            meant = [explained.get(NORTH.words[stage].casefold(), stage) if explained else stage for stage in said]
            if sale.channel == NORTH.name and (explained or len(set(said)) == 1):
                for bought, stage in zip(those, meant, strict=True):
                    aside = "aside" in meant and stage != "cancelled"
                    self.told.say(bought.line, "aside" if aside else stage)
            lacked |= {each.line for each in sale.bought if each not in those and self.told.lack(each.line)}
        return lacked

    def lacks(self, into: str, listed: set[tuple[str, str]]) -> set[str]:
        """The lines not closed yet of orders that a complete channel's file brought, and this one lacks."""
        if into != SOUTH.name:
            return set()
        gone = [sale for sale in self.world.sales if sale.id and sale.filed and sale.key[1] == into]
        lines = [bought for sale in gone if sale.key not in listed for bought in sale.bought if not bought.delivered]
        open_ = [each for each in lines if not self.told.in_closed(each.thing.code)]
        return {each.line for each in open_ if self.told.lack(each.line)}

    misfiled: list[Misfiled]
    doubles: set[str]
    """Orders that came twice, as a file was loaded as another channel's."""

    def misfiled_now(self, wrong: Misfiled) -> None:
        found = re.search(r'action="/orders/loads/([^/"]+)/back"', self.calls.page("/orders/load"))
        wrong.load = found[1] if found else ""
        self.misfiled.append(wrong)

    def file_right(self, chance: float) -> None:
        """Who sees that a file was loaded as another channel's takes it back, and loads it as what it is.

        If something of it has gone on, what it added to the other channel's orders is cancelled by hand.
        """
        for wrong in [each for each in self.misfiled if self.chance(chance)]:
            self.misfiled.remove(wrong)
            for sale in wrong.sales:
                self.tally.noticed.append((self.calls.now, "file: another channel's", "", sale.number))
            status = self.calls.form(f"/orders/loads/{wrong.load}/back")[0] if wrong.load else 409
            if status == 200:
                self.told.absent -= wrong.lacked
                self.told.out_of_file -= wrong.lacked
                for sale in wrong.brought:
                    sale.id, sale.account, sale.filed, sale.said = "", "", False, ()
            else:
                self.cancel_added(wrong)
            self.receive([sale for sale in wrong.sales if not sale.id], by_file=True)

    def cancel_added(self, wrong: Misfiled) -> None:
        numbers = {(sale.number, wrong.into) for sale in wrong.sales if sale not in wrong.brought}
        for order in self.all_orders():
            owner = next((sale for sale in self.world.sales if sale.id == order["id"]), None)
            if (order["number"], order["channel"]) in numbers and owner is not None:
                own = {each.line for each in owner.bought}
                for line in order["lines"]:
                    if line["id"] not in own and line["state"] not in ("cancelled", "returned"):
                        self.calls.form(f"/lines/{line['id']}/cancel")

    def all_orders(self, state: str = "") -> list[Json]:
        orders: list[Json] = []
        cursor = ""
        while True:
            asked = f"&state={state}" if state else ""
            page = self.calls.get(f"/api/orders?limit=500{asked}{f'&cursor={cursor}' if cursor else ''}")
            orders += page["orders"]
            cursor = page["next"]
            if not cursor:
                return orders

    def by_number(self, orders: list[Json]) -> dict[tuple[str, str], Json]:
        return {(each["number"], each["channel"]): each for each in orders}

    def listed(self, *states: str) -> list[Json]:
        """Those that somebody bought."""
        known = {sale.id for sale in self.world.sales}
        return [order for state in states for order in self.all_orders(state) if order["id"] in known]

    def received(self, sale: Sale, order: Json) -> None:
        new = not sale.id
        if not new and sale.id != order["id"]:
            self.doubles.add(order["id"])
            return
        sale.id, sale.slip = order["id"], order["slip"]
        for bought, line in zip(sale.bought, order["lines"], strict=False):
            bought.line = line["id"]
        if new:
            self.tally.lines += len(order["lines"])
            self.tally.received(order, self.calls.now, unpaid=sale.unpaid)

    def sale_of(self, order: Json) -> Sale:
        return next(sale for sale in self.world.sales if sale.id == order["id"])

    def order(self, sale: Sale) -> Json:
        found: Json = self.calls.get(f"/api/orders/{sale.id}")
        return found

    def line(self, sale: Sale, bought: Bought) -> Json:
        return next(line for line in self.order(sale)["lines"] if line["id"] == bought.line)

    # buyers change their minds

    def minds_change(self, chance: float) -> None:
        for sale in self.world.sales:
            if sale.id and not sale.done and self.chance(chance):
                whole = self.chance(0.5)
                self.cancel(sale, None if whole else self.random.choice(sale.bought))

    def cancel(self, sale: Sale, bought: Bought | None) -> None:
        """On the order's page; a closed box that still stands here is opened again first."""
        fields = {"line": bought.line} if bought else {}
        those = [bought] if bought else sale.bought
        for each in those:
            each.off |= not each.delivered
        box = self.box_of(sale, closed=True)
        if box is not None and self.believes(sale):
            return
        status, _ = self.calls.form(f"/orders/{sale.id}/cancel", **fields)
        for each in those:
            self.wants_no_more(each)
        if status != 303 and box is not None and not box.gone:
            if self.open_again(box):
                self.calls.form(f"/orders/{sale.id}/cancel", **fields)
            else:
                self.take_back(sale, those)

    def believes(self, sale: Sale) -> bool:
        """Whether a person thinks that the order has left, and tells nobody, though its box stands here."""
        return False

    def take_back(self, sale: Sale, those: list[Bought]) -> None:
        """Out of a closed box that can't be opened again: each thing gets a free card, and its line is returned."""
        for bought in those:
            free = self.world.in_tray(bought.thing.section) or self.world.in_tray()
            line = self.line(sale, bought)
            if not free or line["state"] != "released" or not bought.thing.here:
                continue
            card = self.random.choice(free)
            text = self.text_of(card.code)
            stay = self.came_back(sale, line["id"], text)
            if not stay:
                self.tally.refused_call("take back", card.code)
                continue
            self.world.take_off(bought.thing)
            self.stored(bought.thing, card, f"/{stay}")
            if not bought.off:
                self.calls.form(f"/lines/{line['id']}/send-again")

    def came_back(self, sale: Sale, line: str, text: str) -> str:
        """A return of one line is expected, arrives and is to be sold again: the stay that it has now, if any."""
        status, back = self.calls.post("/api/returns", order=sale.id, lines=[line], why="Sent back")
        for step, said in (("arrived", {}), ("check", {"line": line, "condition": "resell", "text": text})):
            if status >= 400:
                return ""
            status, back = self.calls.post(f"/api/returns/{back['id']}/{step}", **said)
        return str(next(each["standing"] for each in back["lines"])) if status < 400 else ""

    def wants_no_more(self, bought: Bought) -> None:
        if not bought.delivered:
            bought.off = True
            self.told.off.add(bought.line)

    def offer_again(self) -> None:
        """What was sold and is wanted no more is offered again as soon as it stands in its bin."""
        for sale in self.world.sales:
            for bought in sale.bought:
                thing = bought.thing
                if bought.off and thing.sale is sale and thing.place in self.world.bins():
                    thing.sale = None
            sale.done = bool(sale.id) and all(each.off or each.delivered for each in sale.bought)

    def box_of(self, sale: Sale, *, closed: bool) -> Box | None:
        boxes = self.world.boxes
        return next((each for each in boxes if each.is_for(sale) and each.closed is closed and not each.gone), None)

    # held lines

    def settle_all(self) -> None:
        """The orders page leads to each held line; what can't be settled now is tried again another day."""
        for order in self.all_orders("held"):
            if order["id"] in self.doubles:
                self.calls.form(f"/orders/{order['id']}/cancel")
        for order in self.listed("held"):
            sale = self.sale_of(order)
            for bought in sale.bought:
                line = self.line(sale, bought)
                for _ in range(4):
                    ended = line["state"] in ("cancelled", "returned")
                    if ended or not (line["holds"] or line["state"] == "unbound"):
                        break
                    self.settle(sale, bought, line)
                    line = self.line(sale, bought)

    def settle(self, sale: Sale, bought: Bought, line: Json) -> None:
        match line["hold"]:
            case "suspect":
                self.settle_doubts(sale, bought, line)
            case "misplaced":
                self.look_in_box(sale, line)
            case "cancelled_in_box":
                self.take_out(sale, line)
            case "changed_after_pick" | "not_in_file":
                self.keep_or_cancel(bought, line)
            case "not_cleared":
                self.ask_for_money(sale, bought, line)
            case _:
                self.choose(sale, bought, line)

    def keep_or_cancel(self, bought: Bought, line: Json) -> None:
        if bought.off:
            self.calls.form(f"/lines/{line['id']}/cancel")
        else:
            self.calls.form(f"/lines/{line['id']}/settle", hold=line["hold"])
            self.told.absent.discard(line["id"])

    def ask_for_money(self, sale: Sale, bought: Bought, line: Json) -> None:
        """At times the money is there before a file says so."""
        if bought.off:
            self.calls.form(f"/lines/{line['id']}/cancel")
        elif not sale.unpaid or self.chance(0.1):
            sale.unpaid = False
            status, _ = self.calls.form(f"/lines/{line['id']}/settle", hold="not_cleared")
            if status == 303:
                self.told.unpaid.discard(line["id"])

    def choose(self, sale: Sale, bought: Bought, line: Json) -> None:
        """The thing that the listing showed, if it is there for this buyer; else the buyer gets the money back."""
        thing = bought.thing
        if not thing.stay and thing.card is not None and thing.here and thing.sale is sale:
            self.store(thing, thing.card)  # it was found in the bin of its number, though nobody had told of it
        if bought.off or not thing.here or thing.sale is not sale or not thing.stay:
            self.give_up(bought, line)
        elif line["stay"] == thing.stay:
            self.calls.form(f"/lines/{line['id']}/settle", hold=line["hold"])
        else:
            self.bind(bought, line)

    def bind(self, bought: Bought, line: Json) -> None:
        for words in ("", bought.thing.title):
            shown = self.calls.page(f"/lines/{line['id']}{f'?q={words.replace(chr(32), chr(43))}' if words else ''}")
            if f'name="stay" value="{bought.thing.stay}"' in shown:
                self.calls.form(f"/lines/{line['id']}/settle", stay=bought.thing.stay)
                return

    def give_up(self, bought: Bought, line: Json) -> None:
        status, _ = self.calls.form(f"/lines/{line['id']}/cancel")
        if status == 303:
            self.wants_no_more(bought)

    def settle_doubts(self, sale: Sale, bought: Bought, line: Json) -> None:
        """The thing is looked at beside its picture; if its card hangs on another, that is put right first."""
        thing = self.world.pictured(line["stay"])
        if thing is None or not thing.here:
            self.give_up(bought, line)
            return
        if thing.card is None or thing.card.code != line["code"]:
            self.put_right(thing)
        for doubt in self.calls.get(f"/api/stays/{line['stay']}/doubts")["doubts"]:
            text = self.text_of(line["code"])
            before = self.told.so_far()
            self.told.doubted.pop(line["stay"], None)
            self.told.missed.pop(line["stay"], None)
            status, _ = self.calls.form(f"/lines/{line['id']}/doubts/{doubt['id']}", how="seen", text=text)
            if status != 303:
                self.told.doubted, self.told.missed = before.doubted, before.missed

    def look_in_box(self, sale: Sale, line: Json) -> None:
        """A packed thing whose card was read elsewhere: is it in the box?"""
        thing = self.world.pictured(line["stay"])
        if line["state"] == "released":
            box = self.box_of(sale, closed=True)
            if box is not None and thing in box.things:
                self.seen_in_box(line, box)
                self.calls.form(f"/lines/{line['id']}/settle", hold="misplaced")
            elif box is not None and not self.open_again(box):
                self.take_back(sale, [each for each in sale.bought if each.line == line["id"]])
            return
        box = self.box_of(sale, closed=False)
        if box is None or thing is None or not thing.here or not self.lay_open(box):
            return
        if thing.card is None or thing.card.code != line["code"]:
            self.put_right(thing)
        if self.scan("table", line["code"], table=box.table)["verdict"] == "accepted":
            self.world.put(thing, box.place)
        self.finish(box)

    def seen_in_box(self, line: Json, box: Box) -> None:
        """A person looked: the readings of before say no more."""
        self.told.readings[line["code"]].clear()

    def take_out(self, sale: Sale, line: Json) -> None:
        box = self.box_of(sale, closed=False)
        if box is None or not self.lay_open(box):
            return
        thing = self.world.bearing(line["code"], box.place)
        if thing is not None:
            self.scan("table", line["code"], table=box.table, take_out=True)
            self.world.put(thing, f"table {box.table}")
        self.finish(box)

    def open_again(self, box: Box) -> bool:
        raise NotImplementedError

    def lay_open(self, box: Box) -> bool:
        raise NotImplementedError

    def finish(self, box: Box) -> None:
        raise NotImplementedError
