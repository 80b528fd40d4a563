"""Slips with things and cards, and with what listings and files say of them."""

from __future__ import annotations

from typing import Any

from labels import slot_code
from rehearsal.channels import CHANNELS, EAST, NORTH, ChannelFile
from rehearsal.counting import Counting
from rehearsal.service import Json
from rehearsal.slips import Habit
from rehearsal.told import Reading
from rehearsal.world import Bought, Card, Sale, Thing

YES = {"verdict": "accepted", "reason": None, "changed": True, "line": None, "released": [], "parcel_state": None}


class StockSlips(Counting):
    habit: Habit
    sent_as: dict[str, tuple[str, ...]]

    def slips(self, kind: str, *things: Thing, orders: tuple[Sale, ...] = ()) -> bool:
        chance = self.habit.chances.get(kind, 0.0)
        if not chance or not self.chance(chance):
            return False
        self.habit.note(kind, self.calls.now, things, orders)
        return True

    # storing

    def hang(self, card: Card, thing: Thing) -> None:
        others = [each for each in self.world.in_tray(thing.section) if each is not card]
        if others and self.slips("another card hung than the one read", thing):
            card = self.random.choice(others)
        super().hang(card, thing)

    def bin_for(self, thing: Thing, home: str) -> str:
        others = [name for name in self.world.bins() if name != home]
        return self.random.choice(others) if self.slips("laid into a wrong bin", thing) else home

    def put_away(self) -> Thing | None:
        """Now and then a card is hung and nothing is written down; the listing then says the number alone."""
        if not self.slips("card hung without a scan"):
            return super().put_away()
        thing = self.world.new_thing()
        cards = [each for each in self.world.in_tray() if slot_code.section_of(each.code) == thing.section]
        if cards:
            card = self.random.choice(cards)
            self.world.hang(card, thing)
            self.world.put(thing, self.world.homes[card.code])
            thing.reference = card.code
            self.habit.made[-1].things, self.habit.made[-1].codes = (thing,), frozenset({card.code})
        else:
            self.world.things.remove(thing)
        return thing

    # listings and files

    def offered(self, thing: Thing, channel: str) -> Bought:
        bought = super().offered(thing, channel)
        if thing.code and self.slips("bare slot code in the listing", thing):
            bought.reference = thing.code
        if self.slips("mistyped reference", thing):
            bought.reference = self.mistyped(bought.reference)
        former = [each.reference for each in self.world.things if each.reference and not each.here]
        if former and self.slips("reference of a former thing", thing):
            bought.reference = self.random.choice(former)
        others = [each.reference for each in self.unsold() if each is not thing and each.section == thing.section]
        if others and self.slips("reference of another thing in stock", thing):
            bought.reference = self.random.choice(others)
        return bought

    def mistyped(self, text: str) -> str:
        place = self.random.randrange(len(text))
        return text[:place] + self.random.choice("0123456789") + text[place + 1 :]

    def sell(self) -> Sale | None:
        sale = super().sell()
        if sale is not None and self.slips("sold twice", *(each.thing for each in sale.bought), orders=(sale,)):
            channel = self.random.choice(list(CHANNELS))
            again = Sale(f"{sale.number}0", channel, [self.offered(sale.bought[0].thing, channel)])
            self.habit.made[-1].orders = (sale, again)
            self.world.sales.append(again)
            self.receive([again], by_file=False)
        return sale

    def minds_change(self, chance: float) -> None:
        for sale in self.world.sales:
            there = sale.id and not sale.done
            if there and self.slips("cancelled by the buyer", *(b.thing for b in sale.bought), orders=(sale,)):
                self.cancel(sale, None if self.chance(0.5) else self.random.choice(sale.bought))

    def believes(self, sale: Sale) -> bool:
        return self.slips("believed that it has left", *(each.thing for each in sale.bought), orders=(sale,))

    def in_file(self, sale: Sale) -> list[Bought]:
        """A file that comes again says another title, or lacks a line, which its buyer still wants."""
        bought = sale.bought
        things = tuple(each.thing for each in bought)
        if sale.id and len(bought) > 1 and self.slips("line gone from the order sent again", *things, orders=(sale,)):
            return bought[1:]
        if sale.id and self.slips("line changed and sent again", *things, orders=(sale,)):
            bought[0].title = f"{bought[0].title}, as new"
        return bought

    def chosen(self, channel: ChannelFile, sales: list[Sale], *, part: bool) -> tuple[str, bool]:
        things = tuple(each.thing for sale in sales for each in sale.bought)
        if channel is EAST and self.slips("file loaded under the wrong channel", *things, orders=tuple(sales)):
            return self.random.choice([name for name in CHANNELS if name != EAST.name]), part
        if part and self.slips("part file loaded as whole", *things, orders=tuple(sales)):
            return channel.name, False
        return channel.name, part

    def meanings(self, words: set[str]) -> dict[str, str]:
        """At times what is not paid is taken for paid, until somebody looks at what each status means."""
        aside = NORTH.words["aside"].casefold()
        meant = super().meanings(words)
        if aside not in words:
            return meant
        sales = tuple(sale for sale in self.world.sales if sale.unpaid)
        if self.misread and self.chance(0.5):
            self.misread = False
        elif not self.misread and self.slips("status explained wrongly", orders=sales):
            self.misread = True
        return {**meant, aside: "pack"} if self.misread else meant

    misread = False

    # cards

    def card_off(self, thing: Thing) -> None:
        if self.slips("card left in the box", thing):
            return
        card = self.world.take_off(thing)
        if card is not None and self.slips("card thrown away", thing):
            self.habit.made[-1].codes |= {card.code}
            card.place = "lost"

    def into_tray(self, card: Card) -> bool:
        if self.slips("card laid into the tray without a scan"):
            self.habit.made[-1].codes = frozenset({card.code})
            card.place = "tray"
            return True
        return super().into_tray(card)

    # the floor

    def on_the_floor(self) -> None:
        """What happens in a day beside the work."""
        standing = [each for each in self.world.things if each.place in self.world.bins() and each.card is not None]
        if len(standing) < 2:
            return
        one, other = self.random.sample(standing, 2)
        if self.slips("two cards swapped", one, other):
            one.card, other.card = other.card, one.card
        if self.slips("moved without a scan", one):
            self.world.put(one, self.random.choice(self.world.bins()))
        if one.place != other.place and self.slips("two bins swapped", *standing):
            self.swap_bins(one.place, other.place)
        if self.slips("card fallen off", one):
            self.world.take_off(one, "pile")
        if self.slips("lost card printed again and found", one):
            self.find_after_printing(one)
        if self.slips("borrowed and brought back", one):
            self.world.put(one, "workbench")
        if one.card and self.slips("read at a wrong shelf", one):
            self.scan("shelf", one.card.code, bin=self.random.choice(self.world.bins()))

    def bring_back(self) -> None:
        """What was borrowed the day before is laid where there is room."""
        for thing in self.world.at("workbench"):
            home = self.world.homes.get(thing.code, self.world.bins()[0])
            self.world.put(thing, home if self.chance(0.5) else self.random.choice(self.world.bins()))

    def swap_bins(self, one: str, other: str) -> None:
        first, second = self.world.at(one), self.world.at(other)
        for thing in first:
            self.world.put(thing, other)
        for thing in second:
            self.world.put(thing, one)

    def find_after_printing(self, thing: Thing) -> None:
        """The card can't be found, another is printed; the next day the old one turns up."""
        code = self.code_of(thing)
        old = self.world.take_off(thing, "lost")
        if code is not None:
            self.print_again(thing, code)
        if old is not None:
            old.place = "pile"

    # counts

    def count_with_a_phone(self) -> None:
        if self.slips("count's photos come late"):
            self.photograph()

    def codes_in(self, name: str) -> list[str]:
        """What stands in a bin; at times one is passed over."""
        codes = super().codes_in(name)
        if codes and self.slips("passed over in a count"):
            self.habit.made[-1].codes = frozenset(codes[:1])
            return codes[1:]
        return codes

    def resolve(self, path: str, finding: Json) -> None:
        if finding["ways"] and self.slips("finding resolved without a look"):
            self.habit.made[-1].codes = frozenset({finding["code"] or ""})
            self.calls.post(path, how=self.random.choice(finding["ways"]), reason="So it is.")
            return
        super().resolve(path, finding)

    def at_shelf(self, thing: Thing, code: str) -> Json:
        if self.slips("put back without a scan", thing):
            self.world.put(thing, self.world.homes[code])
            return {"verdict": "accepted", "reason": None}
        answer = super().at_shelf(thing, code)
        if self.slips("put back into a wrong bin", thing):
            self.world.put(thing, self.random.choice(self.world.bins()))
        return answer

    def of_slot(self, code: str) -> list[Thing]:
        return [self.world.record[code]] if code in self.world.record else []

    def scan(self, station: str, code: str, **where: Any) -> Json:
        if self.slips("card text mistyped", *self.of_slot(code)):
            text = self.mistyped(self.text_of(code))
            if self._sent(station, code, text, **where)["verdict"] == "accepted":
                return {**YES, "changed": False}
        if self.adopted and self.slips("adopted card typed wrongly twice", *self.of_slot(code)):
            text = self.mistyped(self.text_of(code))
            answers = [self._sent(station, code, text, **where) for _ in range(2)]
            if answers[1]["verdict"] == "accepted":
                return {**YES, "changed": False}
        answer = super().scan(station, code, **where)
        if station in ("bin", "table") and answer["verdict"] == "accepted" and answer["changed"]:
            thing = self.world.record.get(code)
            if thing is not None and self.slips("right scan undone", thing):
                parcel = self.open_at(where.get("table", ""))
                status, _ = self.calls.post(f"/api/scans/{self.calls.last_key}/undo")
                undone = Reading(self.calls.now, "undo", "", parcel, status == 200, packs=False, takes_out=True)
                self.told.read(code, undone)
        return answer
