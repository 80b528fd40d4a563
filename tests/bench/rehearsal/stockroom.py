"""Honest people with things and cards: they store, bring cards back, put things where they belong, and count.

They know what pages and answers show, what they see with their own eyes, and what is printed on shelves and cards.
"""

from __future__ import annotations

import re
from random import Random
from typing import Any

from labels import slot_code
from rehearsal.service import Calls, Json
from rehearsal.tally import Tally
from rehearsal.told import Reading, Told
from rehearsal.world import SECTIONS, Card, Sale, Thing, World

OWN_TEXT = "BOX-{}-OLD"
"""What an adopted card says whose slot is known by a table alone."""


class Stockroom:
    def __init__(self, calls: Calls, random: Random, tally: Tally) -> None:
        self.calls, self.random, self.tally = calls, random, tally
        self.world, self.told = World(random), Told()

    def chance(self, share: float) -> bool:
        return self.random.random() < share

    def furnish(self) -> None:
        """Sections and their slots; their cards are printed and lie in the tray."""
        for code, (count, per_bin) in SECTIONS.items():
            self.calls.post("/api/sections", code=code, name=f"Section {code}", slots_per_bin=per_bin)
            self.calls.post(f"/api/sections/{code}/slots", count=count)
        for slot in self.calls.get("/api/slots?limit=500")["slots"]:
            self.world.homes[slot["code"]] = slot["bin"]
            self.world.cards.append(Card(slot["code"]))

    def adopt(self) -> None:
        """Those cards whose text says no slot are told, each by two scans on its slot's page."""
        for card in self.world.cards:
            text = self.text_of(card.code)
            if text != card.code:
                status, _ = self.calls.form(f"/slots/{card.code}/adopt", text=text, looked=text)
                assert status == 303, (status, text)

    # readings

    def scan(self, station: str, code: str, **where: Any) -> Json:
        """The verdict on a card that was held before a station; a scanner may beep twice.

        A card without a check is scanned once more, as the page asks.
        """
        text = self.text_of(code)
        answer = self._sent(station, code, text, **where)
        if self.adopted and answer["reason"] == "bad_check":
            answer = self._sent(station, code, text, **where)
        if self.chance(self.beeps_twice):
            self._sent(station, code, text, **where)
        return answer

    beeps_twice = 0.05
    adopted = False
    """Whether the room's cards are of another system, without a check digit."""

    def text_of(self, code: str) -> str:
        """What the bars of a slot's card say; every third adopted card has a text of its own."""
        if not self.adopted:
            return slot_code.card_text(code)
        return OWN_TEXT.format(code) if int(code[-1]) % 3 == 0 else code

    def mine(self, sale: Sale) -> bool:
        """Whether this person does the work of an order: of two who work at a time each has some."""
        return True

    def _sent(self, station: str, code: str, text: str, **where: Any) -> Json:
        body = {"station": station, "key": self.calls.key(), "text": text, "via": "wedge", **where}
        before = self.open_at(where.get("table", "")) if station == "table" else ""
        _, answer = self.calls.post("/api/scans", **body)
        if "verdict" not in answer:
            self.tally.refused_call(f"scan at the {station}: {answer.get('code')}", answer.get("detail", ""))
            return {
                "verdict": "refused",
                "reason": answer.get("code"),
                "advice": "",
                "released": [],
                "parcel_state": None,
            }
        self.heard(station, code, answer, before, **where)
        return answer

    def heard(self, station: str, code: str, answer: Json, parcel: str, **where: Any) -> None:
        accepted = answer["verdict"] == "accepted"
        packs = accepted and station == "table" and not where.get("take_out")
        at = self.calls.now - where.get("age_ms", 0) / 1000
        place = where.get("bin", "") or where.get("table", "")
        told = Reading(at, station, place, parcel, accepted, packs, bool(where.get("take_out")) and answer["changed"])
        self.told.read(answer["code"] or code, told)
        if answer["parcel_state"] == "closed" and packs and answer["parcel"]:
            self.told.closed[answer["parcel"]] = at
        once_more = self.adopted and answer["reason"] == "bad_check"
        self.tally.scanned(station, answer, self.calls.now, code, wanted=self.is_wanted(code) and not once_more)

    def is_wanted(self, code: str) -> bool:
        """Whether no buyer has said that this slot's thing is wanted no more."""
        thing = self.world.record.get(code)
        bought = thing.sale.bought if thing is not None and thing.sale is not None else ()
        unpaid = thing is not None and thing.sale is not None and thing.sale.unpaid
        return not unpaid and not any(each.thing is thing and each.off for each in bought)

    def open_at(self, table: str) -> str:
        """The parcel whose box lies open at this table."""
        return next((box.parcel for box in self.world.boxes if box.table == table and not box.closed), "")

    # storing

    def put_away(self) -> Thing | None:
        """A thing gets a card out of the tray, is written down with its picture, hung and laid into its bin."""
        thing = self.world.new_thing()
        free = self.world.in_tray(thing.section)
        cards = [card for card in free if slot_code.section_of(card.code) == thing.section]
        if not cards:
            self.world.things.remove(thing)
            return None
        named = self.fetched(thing.section) if self.chance(0.5) else ""
        if named and all(card.code != named for card in cards):
            self.missed_in_tray(named)
        card = next((card for card in cards if card.code == named), None) or self.random.choice(cards)
        return thing if self.store(thing, card) else None

    def two_put_away(self) -> None:
        """Two people send for a card of one section at a time, and each stores a thing by the one that was named."""
        things = [self.world.new_thing(), self.world.new_thing()]
        things[1].section = things[0].section
        named = []
        for _ in things:
            named.append(self.fetched(things[0].section))
            self.calls.turn()
        if named[0] and named[0] == named[1]:
            self.tally.refused_call("two people sent for one card", named[0])
        for thing, code in zip(things, named, strict=True):
            card = next((each for each in self.world.in_tray() if each.code == code), None)
            if card is None or not self.store(thing, card):
                self.world.things.remove(thing)
            self.calls.turn()

    def fetched(self, section: str) -> str:
        """The card that the page says to fetch from the tray."""
        status, location = self.calls.form(
            "/put-away", section=section, text="", looked="", code="", title="", listing=""
        )
        found = re.search(r"Fetch card ([A-Z]+[0-9]+)", self.calls.page(location)) if status == 303 else None
        return found[1] if found else ""

    def missed_in_tray(self, code: str) -> None:
        """The card that the page names is not in the tray: it is said to be lost, and another is taken."""
        self.tally.noticed.append((self.calls.now, "tray: card not there", code, ""))
        self.calls.form(f"/slots/{code}/lost")

    def store(self, thing: Thing, card: Card) -> bool:
        """Tell the service; its page then shows what to write into the listing."""
        text = self.text_of(card.code)
        fields = {"text": text, "title": thing.title, "listing": thing.listing, "looked": text if self.adopted else ""}
        status, location = self.calls.form("/put-away", section="", code="", notes="", **fields)
        answer = {"verdict": "accepted" if status == 303 else "refused", "reason": status, "advice": card.code}
        self.tally.scanned("put away", answer, self.calls.now, card.code)
        if status != 303:
            return False
        self.stored(thing, card, location)
        if self.chance(0.3) and thing.card is not None:
            self.confirm(thing, thing.card.code)
        return True

    def stored(self, thing: Thing, card: Card, location: str) -> None:
        """The page at `location` says where it belongs and what to write down; so it is hung and laid."""
        stay = self.calls.get(f"/api/stays/{location.rsplit('/', 1)[1]}")
        thing.stay, thing.code, thing.reference = stay["id"], stay["code"], stay["reference"]
        self.world.record[thing.code] = thing
        self.told.in_hand(thing.code, self.calls.now)
        self.hang(card, thing)
        self.world.put(thing, self.bin_for(thing, stay["bin"]))

    def confirm(self, thing: Thing, code: str) -> None:
        """Scanned where it was laid; what does not belong there is brought where the answer says."""
        answer = self.scan("shelf", code, bin=thing.place)
        if answer["reason"] == "wrong_bin":
            self.at_shelf(thing, code)
        elif answer["verdict"] == "refused":
            self.put_right(thing)

    def hang(self, card: Card, thing: Thing) -> None:
        self.world.hang(card, thing)

    def bin_for(self, thing: Thing, home: str) -> str:
        return home

    # cards

    def cards_back(self) -> None:
        """Each card of the pile is scanned as it is laid into the tray; what is refused belongs on its thing."""
        for card in self.world.pile():
            if card.place != "pile" or self.into_tray(card):
                continue
            thing = self.recorded(card.code)
            if thing is not None:
                self.put_right(thing)

    def into_tray(self, card: Card) -> bool:
        if self.scan("tray", card.code)["verdict"] != "accepted":
            return False
        card.place = "tray"
        return True

    def recorded(self, code: str) -> Thing | None:
        """The thing that by the account stands in this slot, found by its picture; None if there is none."""
        thing = self.world.record.get(code)
        return thing if thing is not None and thing.here and self.code_of(thing) == code else None

    # putting right

    def put_back(self, thing: Thing) -> None:
        """A thing in hand goes to the bin of its card's number, and is scanned there."""
        if thing.card is None:
            self.put_right(thing)
            return
        code = thing.card.code
        answer = self.at_shelf(thing, code)
        if answer["verdict"] == "refused" and answer["reason"] in ("slot_free", "retired"):
            self.put_right(thing)

    def at_shelf(self, thing: Thing, code: str) -> Json:
        home = self.world.homes[code]
        self.world.put(thing, home)
        return self.scan("shelf", code, bin=home)

    def put_right(self, thing: Thing) -> None:
        """Its own card, by the picture, is hung on it, and it is scanned in its own bin; of no account is told so."""
        code = self.code_of(thing)
        if code is None and self.awaited(thing):
            self.world.put(thing, "aside")
            return
        if code is None:
            self.store_again(thing)
            return
        if thing.card is None or thing.card.code != code:
            card = next((card for card in self.world.cards if card.code == code and card.place != "gone"), None)
            if card is None or card.place == "lost":
                self.print_again(thing, code)
                return
            other = self.world.bearing(code)
            self.world.hang(card, thing)
            if other is not None and other is not thing:
                self.put_right_later(other)
        if not thing.boxed:
            self.at_shelf(thing, code)

    def awaited(self, thing: Thing) -> bool:
        """Whether by its story it left in a box that still stands here: then it is kept for that."""
        return any(box.is_for(thing.sale) and not box.gone and thing not in box.things for box in self.world.boxes)

    def put_right_later(self, thing: Thing) -> None:
        if not thing.boxed:
            self.world.put(thing, "table main")

    def code_of(self, thing: Thing) -> str | None:
        """The slot in which the account has this thing, by search of its title and picture; None if it has none."""
        if not thing.stay:
            return None
        stay = self.calls.get(f"/api/stays/{thing.stay}")
        return str(stay["code"]) if stay["state"] == "stored" else None

    def store_again(self, thing: Thing) -> None:
        """A thing of no account is stored as any other, with a card of the tray."""
        self.world.take_off(thing)
        cards = [card for card in self.world.in_tray() if slot_code.section_of(card.code) == thing.section]
        if cards:
            self.store(thing, self.random.choice(cards))

    def print_again(self, thing: Thing, code: str) -> None:
        """The card is given up as lost and printed anew, by the owner alone."""
        if self.calls.helps:
            self.put_right_later(thing)
            return
        self.calls.form(f"/slots/{code}/lost")
        status, _ = self.calls.form(f"/slots/{code}/reprint", text="", lost="It is nowhere.")
        if status != 200:
            self.tally.refused_call(f"reprint: {status}", code)
            return
        card = Card(code, "pile")
        self.world.cards.append(card)
        self.world.hang(card, thing)
        if not thing.boxed:
            self.at_shelf(thing, code)

    def duties(self) -> None:
        """What the list of things to put back has: each is looked for, and brought home."""
        found = re.findall(r'href="/slots/([A-Z]+[0-9]+)"', self.calls.page("/slots?state=away"))
        for code in dict.fromkeys(found):
            self.duty(code)

    def duty(self, code: str) -> None:
        thing = self.recorded(code)
        if thing is not None and not thing.boxed:
            self.put_right(thing)
        elif thing is None:
            stray = next(
                (card for card in self.world.cards if card.code == code and card.place not in ("gone", "lost")), None
            )
            if stray is not None and stray.place == "tray":
                self.into_tray(stray)
