"""Honest people count the room by scans, bin by bin, and put right what the count finds."""

from __future__ import annotations

from dataclasses import dataclass

from rehearsal.people import Person
from rehearsal.service import Json
from rehearsal.told import Reading

HERE = ("tray", "pile", "thing")
STORED = "stored"
"""What was done about a finding is told by another page, and the slot is left out of the count by that."""


@dataclass(frozen=True, slots=True)
class Look:
    """What was seen in a place; `taken` is when, if that was some time before it is sent."""

    place: str
    codes: list[str]
    taken: float = 0.0


class Counting(Person):
    def count(self) -> None:
        """All bins and the tray; what is found amiss is put right with the thing in hand, then the count is closed."""
        count = self.counted or self.begin_count()
        if not self.counted:
            for name in self.world.bins():
                self.look_into(count, Look(name, self.codes_in(name)))
            self.look_into(count, Look("tray", [card.code for card in self.world.in_tray()]))
        self.photos_come(len(self.photos))
        self.counted = ""
        for finding in self.calls.get(f"/api/stocktakes/{count}/findings")["findings"]:
            if finding["resolved"] is None:
                self.tally.noticed.append((self.calls.now, f"count: {finding['kind']}", finding["code"] or "", ""))
                self.resolve(f"/api/stocktakes/{count}/findings/{finding['id']}/resolve", finding)
        self.calls.post(f"/api/stocktakes/{count}/close")

    def begin_count(self) -> str:
        return str(self.calls.post("/api/stocktakes", area="room")[1]["id"])

    counted = ""
    """The count whose bins were photographed already."""

    photos: tuple[Look, ...] = ()
    """What a phone without network keeps of it."""

    def photograph(self) -> None:
        """All bins in the morning, by a phone that has no network until the evening."""
        self.counted = self.begin_count()
        looks = []
        for name in self.world.bins():
            self.calls.now += 20
            looks.append(Look(name, self.codes_in(name), self.calls.now))
        self.photos = tuple(looks)

    def photos_come(self, most: int) -> None:
        """So many of them, the first ones first."""
        sent, self.photos = self.photos[:most], self.photos[most:]
        for look in sent:
            self.look_into(self.counted, look)

    def codes_in(self, name: str) -> list[str]:
        return [thing.card.code for thing in self.world.at(name) if thing.card is not None]

    def look_into(self, count: str, look: Look) -> None:
        place, codes = look.place, look.codes
        texts = [self.text_of(code) for code in codes]
        age = {"age_ms": round((self.calls.now + 20 - look.taken) * 1000)} if look.taken else {}
        path = f"/api/stocktakes/{count}/looks"
        status, answer = self.calls.post(path, key=self.calls.key(), place=place, texts=texts, via="wedge", **age)
        if status != 200:
            self.tally.refused_call(f"look: {status}", answer.get("detail", ""))
            return
        for code in codes if place != "tray" and not self.adopted else ():
            at = look.taken or self.calls.now
            self.told.read(code, Reading(at, "count", place, "", True, packs=False, takes_out=False))

    def resolve(self, path: str, finding: Json) -> None:
        code = finding["code"] or ""
        how, more = self.put_right_found(finding["kind"], code)
        if how == STORED:
            return
        if how not in finding["ways"]:
            how, more = "ignore", {"reason": "It was looked at."}
        status, answer = self.calls.post(path, how=how, **more)
        if status != 200:
            self.tally.refused_call(f"{finding['kind']} {how}: {answer.get('code')}", answer.get("detail", ""))

    def put_right_found(self, kind: str, code: str) -> tuple[str, Json]:
        """What a person does with the thing or the card, and how that is called."""
        match kind:
            case "missing":
                return ("found_later", {}) if self.brought_home(code) else ("ignore", {"reason": "Still looked for."})
            case "elsewhere" | "in_tray" | "suspect":
                return ("put_right", {}) if self.brought_home(code) else ("ignore", {"reason": "Still looked for."})
            case "slot_free" | "card_due":
                return self.card_home(code)
        return "ignore", {"reason": "Looked at."}

    def brought_home(self, code: str) -> bool:
        """The thing of this slot, by its picture, is laid into its bin with its card on it."""
        thing = self.recorded(code)
        if thing is None or thing.boxed:
            return False
        card = next(
            (each for each in self.world.cards if each.code == code and each.place not in ("gone", "lost")), None
        )
        if card is None:
            return False
        if thing.card is not card:
            self.world.hang(card, thing)
        self.world.put(thing, self.world.homes[code])
        return True

    def card_home(self, code: str) -> tuple[str, Json]:
        """A card of an empty slot hangs on a thing, which is stored by it, or it is laid into the tray."""
        thing = self.world.bearing(code)
        if thing is not None and thing.card is not None and self.code_of(thing) is None and not self.awaited(thing):
            self.store(thing, thing.card)
            return STORED, {}
        card = next((each for each in self.world.cards if each.code == code and each.place in ("pile", "tray")), None)
        if card is None:
            return "ignore", {"reason": "It is nowhere."}
        card.place = "tray"
        return "put_right", {"text": self.text_of(code)}
