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

    def so_far(self) -> Told:
        """What is told by now: what comes later changes it no more."""
        told = Told()
        told.readings.update({code: list(readings) for code, readings in self.readings.items()})
        told.doubted, told.missed = dict(self.doubted), dict(self.missed)
        told.off, told.closed = set(self.off), dict(self.closed)
        return told

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
