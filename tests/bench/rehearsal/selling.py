"""Honest people with orders: listings sell, files come, buyers change their minds, held lines are settled."""

from __future__ import annotations

import csv
import html
import io
import re
from datetime import UTC, datetime

from rehearsal.service import Json, one_line
from rehearsal.stockroom import Stockroom
from rehearsal.world import Bought, Box, Sale, Thing

HEADER = ("number", "channel", "ordered_at", "ship_by", "reference", "title", "listing")
CHANNELS = ("north", "south")
STILL = ("waiting", "picked", "packed", "short")
PATIENCE = 3 * 24 * 3600.0
"""How long a missing thing is looked for before its buyer gets the money back."""


class Seller(Stockroom):
    numbers = 1000
    sent_again = 0.15
    """The chance that an order of another day is in today's file too."""

    # orders come in

    def unsold(self) -> list[Thing]:
        return [thing for thing in self.world.things if thing.reference and thing.here and thing.sale is None]

    def orders_come(self) -> None:
        new = [sale for _ in range(self.random.randint(1, 3)) if (sale := self.sell()) is not None]
        old = [sale for sale in self.world.sales if sale.id and not sale.done and self.chance(self.sent_again)]
        if len(new) > 1 and self.chance(0.2):
            new[0].joined, new[1].joined = new[1], new[0]
            new[1].channel = new[0].channel
        self.receive([*new, *old], by_file=self.chance(0.6))

    def sell(self) -> Sale | None:
        things = self.unsold()
        if not things:
            return None
        chosen = self.random.sample(things, min(len(things), self.random.choice((1, 1, 1, 2, 2, 3))))
        self.numbers += 1
        sale = Sale(f"{self.numbers}", self.random.choice(CHANNELS), [])
        for thing in chosen:
            thing.sale = sale
            sale.bought.append(self.offered(thing))
        self.world.sales.append(sale)
        return sale

    def offered(self, thing: Thing) -> Bought:
        """What the listing said when it was bought."""
        return Bought(thing, thing.reference, thing.listed, thing.listing if self.chance(0.8) else "")

    def receive(self, sales: list[Sale], *, by_file: bool) -> None:
        if sales and by_file:
            self.load(sales)
            known = {
                (each["number"], each["channel"]): each for each in self.listed("held", "waiting", "picking", "packing")
            }
            if any((sale.number, sale.channel) not in known for sale in sales):
                known = {(each["number"], each["channel"]): each for each in self.all_orders()}
        else:
            known = {(s.number, s.channel): self.calls.post("/api/orders", **self.body(s))[1] for s in sales}
        for sale in sales:
            self.received(sale, known[sale.number, sale.channel])

    def body(self, sale: Sale) -> Json:
        lines = [{"reference": b.reference, "title": b.title, "listing": b.listing} for b in self.in_file(sale)]
        return {"number": sale.number, "channel": sale.channel, "lines": lines}

    def in_file(self, sale: Sale) -> list[Bought]:
        return sale.bought

    def load(self, sales: list[Sale]) -> None:
        """A file is chosen, its columns are looked at, and it is loaded."""
        text = io.StringIO()
        writer = csv.writer(text)
        writer.writerow(HEADER)
        when = datetime.fromtimestamp(self.calls.now, UTC).isoformat()
        for sale in sales:
            for bought in self.in_file(sale):
                writer.writerow((sale.number, sale.channel, when, "", bought.reference, bought.title, bought.listing))
        data = text.getvalue().encode()
        shown = one_line(self.calls.upload("/orders/load", "orders.csv", data)[1])
        columns = {f"column-{name}": name for name in HEADER}
        found = re.search(r'name="shown" value="([^"]*)"', shown)
        assert found is not None, "the page does not show what the columns mean"
        self.calls.upload("/orders/load", "orders.csv", data, step="apply", shown=html.unescape(found[1]), **columns)

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
        return [order for state in states for order in self.all_orders(state)]

    def received(self, sale: Sale, order: Json) -> None:
        new = not sale.id
        sale.id, sale.slip = order["id"], order["slip"]
        for bought, line in zip(sale.bought, order["lines"], strict=False):
            bought.line = line["id"]
        if new:
            self.tally.lines += len(order["lines"])
            self.tally.received(order, self.calls.now)

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
            case _:
                self.choose(sale, bought, line)

    def keep_or_cancel(self, bought: Bought, line: Json) -> None:
        if bought.off:
            self.calls.form(f"/lines/{line['id']}/cancel")
        else:
            self.calls.form(f"/lines/{line['id']}/settle", hold=line["hold"])

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
