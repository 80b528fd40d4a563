"""What the service was told: every reading and every press that names a card, a thing or an order.

What it says of itself is not heard here: whether a parcel may leave is judged by these words alone.
"""

from __future__ import annotations

from collections import defaultdict
from dataclasses import dataclass


@dataclass(frozen=True, slots=True)
class Reading:
    """`place` is the bin, the table, or empty; `parcel` what lay open at that table. `packs`: it put the thing in."""

    at: float
    station: str
    place: str
    parcel: str
    accepted: bool
    packs: bool
    takes_out: bool


class Told:
    def __init__(self) -> None:
        self.readings: dict[str, list[Reading]] = defaultdict(list)
        self.doubted: dict[str, str] = {}
        """By stay: what a person said of its thing, until somebody settled that."""

        self.missed: dict[str, float] = {}
        self.off: set[str] = set()
        """Lines that their buyer wants no more."""

        self.closed: dict[str, float] = {}
        """By parcel: when it was closed last."""

        self.stages: dict[str, str] = {}
        """By line: what its channel said of it last."""

        self.unpaid: set[str] = set()
        """Lines that are not paid, as their channel said, until it says otherwise or a person does."""

        self.absent: set[str] = set()
        """Lines that a file lacks which has all, until a person has looked."""

        self.out_of_file: set[str] = set()
        """Lines that the newest file lacks, whatever a person said since."""

    def so_far(self) -> Told:
        """What is told by now: what comes later changes it no more."""
        told = Told()
        told.readings.update({code: list(readings) for code, readings in self.readings.items()})
        told.doubted, told.missed = dict(self.doubted), dict(self.missed)
        told.off, told.closed = set(self.off), dict(self.closed)
        told.stages, told.unpaid = dict(self.stages), set(self.unpaid)
        told.absent, told.out_of_file = set(self.absent), set(self.out_of_file)
        return told

    def say(self, line: str, stage: str) -> None:
        """A channel says it of a line; the same again changes nothing of what a person said since."""
        self.out_of_file.discard(line)
        if self.stages.get(line) == stage:
            return
        self.stages[line] = stage
        if stage == "aside":
            self.unpaid.add(line)
        elif stage == "pack":
            self.unpaid.discard(line)
            self.off.discard(line)
        elif stage == "cancelled":
            self.off.add(line)

    def lack(self, line: str) -> bool:
        """A file that has all lacks this line, and whether the one before had it."""
        new = line not in self.out_of_file
        self.out_of_file.add(line)
        if new:
            self.absent.add(line)
        return new

    def in_closed(self, code: str) -> bool:
        """Whether a thing was packed last into a parcel that was closed since."""
        packed = [each for each in self.readings[code] if each.packs]
        return bool(packed) and packed[-1].parcel in self.closed

    def by_channel(self, line: str) -> str:
        """What its channel said against this line's leaving, empty if nothing, or if a person has settled it."""
        if line in self.unpaid:
            return "its channel says that it is not paid"
        return "a file that has all lacks it" if line in self.absent else ""

    def read(self, code: str, reading: Reading) -> None:
        self.readings[code].append(reading)

    def in_hand(self, code: str, at: float) -> None:
        """The card was told to be off its thing: it was laid into the tray, or taken for another one."""
        self.read(code, Reading(at, "tray", "", "", True, packs=False, takes_out=False))

    def against(self, code: str, stay: str, line: str, parcel: str) -> str:
        """What was told against this thing's leaving in this parcel now; empty if nothing was."""
        if line in self.off:
            return "its buyer wants it no more"
        if stay in self.doubted:
            return self.doubted[stay]
        since = self._since_packed(code, parcel)
        if stay in self.missed and not any(each.at >= self.missed[stay] for each in self.readings[code]):
            return "it was said to be missing"
        closed = self.closed.get(parcel, 0.0)
        for each in since:
            if each.station == "tray" and each.accepted and each.at >= closed:
                return ""
            if each.takes_out and each.accepted:
                return "it was taken out with a scan"
            if each.station in ("bin", "shelf", "count"):
                return f"its card was read at a {each.station} {each.place}".rstrip()
            if each.station == "table" and each.parcel != parcel and each.at < closed:
                return f"its card was read at table {each.place}, where another parcel was open or none"
        return ""

    def taken_in(self, code: str, parcel: str) -> str:
        """Whether a yes at this parcel's table took in what its buyer did not buy, in words."""
        here = [each for each in self.readings[code] if each.parcel == parcel and (each.packs or each.takes_out)]
        packed = bool(here) and here[-1].packs
        return "its card was read at the table of this very parcel, and accepted" if packed else ""

    def _since_packed(self, code: str, parcel: str) -> list[Reading]:
        """The readings after the last one that showed it at its own parcel, by the time of the readings."""
        readings = sorted(self.readings[code], key=lambda each: each.at)
        last = max((n for n, each in enumerate(readings) if each.packs and each.parcel == parcel), default=-1)
        return readings[last + 1 :] if last >= 0 else []
