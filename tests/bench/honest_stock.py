"""Honest people who store things: what they know is true, and what they are answered is counted."""

from __future__ import annotations

from collections import Counter
from collections.abc import Callable
from dataclasses import dataclass, field
from datetime import datetime, timedelta
from random import Random
from typing import Any, TypeVar

import titles
from rooms import Room

from labels import slot_code
from scanflow.domain.life import LineState, NotAllowed
from scanflow.domain.things import Line, Slot, Station, Stay
from scanflow.workflow import stock
from scanflow.workflow.orders import channels
from scanflow.workflow.picking import scans
from scanflow.workflow.picking.reading import ScanBase, StationReading
from scanflow.workflow.ports import Invalid, Missing, Refused, Unit

T = TypeVar("T")
OPENING = datetime.fromisoformat("2026-03-02T08:00:00+00:00")
SECTIONS = {"D": (12, 4), "LP": (8, 2)}
"""Letters: slots, slots per bin."""
CHANNELS = ("east", "north", "south")
SAYS, COMPLETE = "north", "south"
"""The channel whose file has a status column, and the one whose file lists all of its open orders."""

TOLD = ("verdict", "reason", "changed", "code", "order_number", "line_state", "parcel_state")


@dataclass(frozen=True, slots=True)
class Habits:
    """Shares of honest things or rounds that ask for trouble; the measure itself is without them."""

    bare_in_used_slots: float = 0.0
    bare_relisted: float = 0.0
    bare_after_move: float = 0.0
    packed_before_picks_arrived: float = 0.0


@dataclass(slots=True)
class Tally:
    """Counts by station or kind; `answers` is what was answered, `examples` the first of each false alarm."""

    scans: Counter[str] = field(default_factory=Counter)
    refused: Counter[str] = field(default_factory=Counter)
    held: Counter[str] = field(default_factory=Counter)
    calls_refused: Counter[str] = field(default_factory=Counter)
    lines: int = 0
    misbound: int = 0
    calls: int = 0
    answers: list[tuple[Any, ...]] = field(default_factory=list)
    examples: dict[str, str] = field(default_factory=dict)

    def add(self, other: Tally) -> None:
        for name in ("scans", "refused", "held", "calls_refused"):
            getattr(self, name).update(getattr(other, name))
        for name in ("lines", "misbound", "calls"):
            setattr(self, name, getattr(self, name) + getattr(other, name))
        self.examples = other.examples | self.examples


@dataclass(slots=True, eq=False)
class Thing:
    """One thing: `code` and `stay` follow it through moves. `references` are its listing's, each from a time on.

    `listings`: its listing's id by channel, "" for any other.
    """

    stay: str
    code: str
    references: list[tuple[datetime, str]]
    title: str
    listings: dict[str, str]

    @property
    def exact(self) -> bool:
        return slot_code.parse_reference(self.references[-1][1]).turn is not None

    @property
    def listed_at(self) -> datetime:
        return self.references[0][0]


class StockPeople:
    """They put away, confirm at the shelf, move, withdraw, and bring cards back to the tray."""

    def __init__(self, room: Room, seed: int, habits: Habits | None = None) -> None:
        self.room, self.random, self.habits = room, Random(seed), habits or Habits()
        self.tally, self.now = Tally(), OPENING
        self.stocked: list[Thing] = []
        self.off_shelf: list[Thing] = []
        self.tray = {slot_code.make(code, n) for code, (count, _) in SECTIONS.items() for n in range(1, count + 1)}
        self.due: list[str] = []
        self.keys = 0
        self.keeps_listing_ids = self.chance(0.5)
        for code, (count, per_bin) in SECTIONS.items():
            self.call(
                stock.add_section,
                stock.AddSection(code=code, name=f"Section {code}", slots_per_bin=per_bin, colour="yellow"),
            )
            self.call(stock.add_slots, code, stock.AddSlots(count=count))
        self.call(channels.say, channels.SayChannel(name=COMPLETE, complete=True))

    def chance(self, share: float) -> bool:
        return self.random.random() < share

    def wait(self, longest: float = 240) -> None:
        """Time passes, in seconds."""
        self.now += timedelta(seconds=self.random.uniform(2, longest))

    def call(self, work: Callable[..., T], *args: Any, **kwargs: Any) -> T | None:
        """One thing done; None if it was refused, which is counted."""
        self.wait()
        self.tally.calls += 1
        try:
            return self.room.do(self.now, lambda unit: work(unit, *args, **kwargs))
        except (Refused, Invalid, NotAllowed, Missing) as error:
            kind = f"{work.__name__}: {getattr(error, 'code', '') or error}"
            self.tally.calls_refused[kind] += 1
            self.tally.examples.setdefault(kind, str(error))
            return None

    def look(self, work: Callable[[Unit], T]) -> T:
        return self.room.see(self.now, work)

    def scan(self, station: Station, text: str, **where: Any) -> dict[str, Any]:
        """The last answer of one scan, which may beep twice."""
        self.wait(20)
        answer: dict[str, Any] = {}
        released: list[str] = []
        for _ in range(2 if self.chance(0.08) else 1):
            self.keys += 1
            reading = StationReading(ScanBase(station=station, key=f"k{self.keys}", **where), (text,), f"k{self.keys}")
            answer = self.room.do(self.now, lambda unit, reading=reading: scans.scan(unit, reading))
            self._count(station, answer)
            self.now += timedelta(seconds=0.4)
            released += answer["released"] if answer["changed"] else []
        if released:
            self.shipped(released)
        return answer

    def _count(self, station: Station, answer: dict[str, Any]) -> None:
        self.tally.scans[station] += 1
        self.tally.answers.append((station, *(answer[name] for name in TOLD), *answer["released"]))
        if answer["verdict"] == "refused":
            kind = f"{station}: {answer['reason']}"
            self.tally.refused[kind] += 1
            self.tally.examples.setdefault(kind, answer["advice"])

    def shipped(self, codes: list[str] | tuple[str, ...]) -> None:
        """These cards were taken off their things; some go to the tray at once."""
        self.stocked = [thing for thing in self.stocked if thing.code not in codes]
        self.due += codes
        if self.chance(0.3):
            self.cards_back(1.0)

    def cards_back(self, share: float) -> None:
        for code in [code for code in self.due if self.chance(share)]:
            if self.scan(Station.TRAY, slot_code.card_text(code))["verdict"] == "accepted":
                self.due.remove(code)
                self.tray.add(code)

    def put_away(self) -> None:
        """By any of the three ways; a card that is due may go from the table straight onto the next thing."""
        from_due = bool(self.due) and self.chance(0.25)
        if not (from_due or self.tray):
            return
        code = self.random.choice(self.due if from_due else sorted(self.tray))
        ways = [{"text": slot_code.card_text(code)}]
        if not from_due:
            ways += [{"code": code}, {"section": slot_code.section_of(code)}]
        title = titles.stored(self.random)
        listing = self._new_listing()
        known = listing if self.chance(0.7) else ""
        stay = self.call(stock.put_away, stock.PutAway(title=title, listing=known, **self.random.choice(ways)))
        if stay is None:
            return
        self._take_card(stay.code)
        self.wait(1800)
        reference, title = self._reference(stay), titles.listed(self.random, title)
        thing = Thing(stay.id, stay.code, [(self.now, reference)], title, {"": listing})
        if thing.exact and self.chance(0.5):
            thing.listings[self.random.choice(CHANNELS)] = self._new_listing()
        self.stocked.append(thing)
        if self.chance(0.5):
            self.at_shelf(self.stocked[-1])

    def _new_listing(self) -> str:
        return f"L{self.random.randrange(10**9)}" if self.keeps_listing_ids else ""

    def relist(self) -> None:
        """What did not sell is listed anew, with another id; its reference stays, if it is a whole one."""
        for thing in self.stocked:
            if self.chance(0.1) and (thing.exact or self.chance(self.habits.bare_relisted)):
                thing.listings[self.random.choice(list(thing.listings))] = self._new_listing()

    def _take_card(self, code: str) -> None:
        self.tray.discard(code)
        self.due = [each for each in self.due if each != code]

    def _reference(self, stay: Stay) -> str:
        """What goes into the listing; a bare code or card text only while the slot had no other thing."""
        if self.chance(0.3) and (stay.turn == 1 or self.chance(self.habits.bare_in_used_slots)):
            return self.random.choice((stay.code, slot_code.card_text(stay.code)))
        whole = slot_code.reference(stay.code, stay.turn)
        return self.random.choice((whole, whole, whole.lower(), whole.replace("-", ""), f" {whole} "))

    def at_shelf(self, thing: Thing) -> None:
        slot = self.look(lambda unit: unit.get(Slot, thing.code))
        self.scan(Station.SHELF, slot_code.card_text(thing.code), bin=slot.bin if slot else "")

    def put_back(self) -> None:
        """What was pulled and is not wanted any more goes back to its bin."""
        while self.off_shelf:
            self.at_shelf(self.off_shelf.pop())

    def move(self) -> None:
        thing = self.random.choice(self.stocked)
        found = self.look(lambda unit: unit.find(Line, stay=thing.stay))
        touched = any(line.live and line.state is not LineState.WAITING for line in found)
        if touched or thing in self.off_shelf:
            return
        stay = self.call(stock.move, thing.stay, stock.Move(to=self.random.choice(sorted(self.tray))))
        if stay is not None:
            self.due.append(thing.code)
            self._take_card(stay.code)
            thing.stay, thing.code = stay.id, stay.code
            self._renew(thing, stay)

    def _renew(self, thing: Thing, stay: Stay) -> None:
        """A whole reference still finds a thing that moved; a bare code does not, so its listing gets a new one."""
        if not thing.exact and not self.chance(self.habits.bare_after_move):
            self.wait(1800)
            thing.references.append((self.now, slot_code.reference(stay.code, stay.turn)))

    def withdraw(self, thing: Thing) -> None:
        if self.call(stock.withdraw, thing.stay, stock.Withdraw(reason="broken on the shelf")) is not None:
            self.stocked.remove(thing)
            self.due.append(thing.code)
