"""A count of an area, and the looks it is made of. What they come to: `findings`."""

from __future__ import annotations

import re
from collections.abc import Iterable
from dataclasses import dataclass, replace
from datetime import datetime
from enum import StrEnum

from scanflow.domain.life import STOCKTAKE, StocktakeState, step
from scanflow.domain.things import Bin

TRAY = "tray"
"""The place of cards that nothing bears, beside the bins; no bin's name is like it."""


class BadArea(ValueError):
    """A text that is no area."""


class AreaKind(StrEnum):
    """What an area is of."""

    BIN = "bin"
    SHELF = "shelf"
    RACK = "rack"
    SECTION = "section"
    TRAY = "tray"
    ROOM = "room"


_NAMES = {
    AreaKind.BIN: "[A-Za-z0-9]+-[0-9]+-[0-9]+",
    AreaKind.SHELF: "[A-Za-z0-9]+-[0-9]+",
    AreaKind.RACK: "[A-Za-z0-9]+",
    AreaKind.SECTION: "[A-Z]{1,2}",
}


@dataclass(frozen=True, slots=True)
class Area:
    """What a count is about: one bin, a shelf (rack-tier), a rack, a section's bins, the tray, or the whole room."""

    kind: AreaKind
    name: str = ""

    @classmethod
    def parse(cls, text: str) -> Area:
        """The area that is written so; BadArea.

        >>> str(Area.parse("shelf:A-2"))
        'shelf:A-2'
        >>> Area.parse("shelf:A-2-3")  # doctest: +ELLIPSIS
        Traceback (most recent call last):
        scanflow.domain.counts.stocktake.BadArea: Write an area as bin:A-2-3, ...
        """
        word, _, name = text.strip().partition(":")
        kind = next((kind for kind in AreaKind if kind == word), None)
        if kind is not None and re.fullmatch(_NAMES.get(kind, ""), name) and not text.strip().endswith(":"):
            return cls(kind, name)
        raise BadArea("Write an area as bin:A-2-3, shelf:A-2, rack:A, section:D, tray or room.")

    def __str__(self) -> str:
        return f"{self.kind}:{self.name}" if self.name else str(self.kind)

    def covers(self, bin_: Bin) -> bool:
        match self.kind:
            case AreaKind.BIN:
                return bin_.name == self.name
            case AreaKind.SHELF:
                return f"{bin_.rack}-{bin_.tier}" == self.name
            case AreaKind.RACK:
                return bin_.rack == self.name
            case AreaKind.SECTION:
                return bin_.section == self.name
        return self.kind is AreaKind.ROOM

    def places(self, bins: Iterable[Bin]) -> tuple[str, ...]:
        """Where to look: the bins of the area, and the tray if it is part of it."""
        tray = (TRAY,) if self.kind in (AreaKind.TRAY, AreaKind.ROOM) else ()
        return (*(each.name for each in bins if self.covers(each)), *tray)


class How(StrEnum):
    """How a look was taken."""

    PHOTO = "photo"
    CAMERA = "camera"
    WEDGE = "wedge"
    TYPED = "typed"


class Certainty(StrEnum):
    """How a text is known. Only what was decoded may move anything in a shop."""

    DECODED = "decoded"
    """Read whole by a symbology decoder, its check valid."""
    MATCHED = "matched"
    """Inferred: the grey profile fits one of all codes that exist, and no other."""
    UNREAD = "unread"
    """There is a label, and nothing is known of its text."""


@dataclass(frozen=True, slots=True)
class Read:
    """One card in view. `code` is the slot that `text` names, None where the shop has no such card.

    `corners`: x, y of the four in pixels of the picture; empty where it was no picture. `doubted`: a person said that
    it hangs on another thing than the account has. `bins`: where it hangs by the labels in the picture, in that bin or
    in one of these; empty where no labels tell.
    """

    text: str
    code: str | None
    certainty: Certainty
    corners: tuple[float, ...] = ()
    doubted: bool = False
    bins: tuple[str, ...] = ()


@dataclass(frozen=True, slots=True)
class Look:
    """One look into a bin or the tray; `key` is the client's, so that a look sent twice is one.

    `whole`: all that stands there was in view, as far as it can be seen. `closer` names an earlier look of which this
    one shows a part again. `size`: width and height of the picture in pixels. `photo` names the picture kept.
    """

    key: str
    body: str
    stocktake: str
    place: str
    at: datetime
    how: How
    reads: tuple[Read, ...]
    whole: bool = True
    closer: str | None = None
    size: tuple[int, ...] = ()
    photo: str | None = None

    @property
    def here(self) -> tuple[Read, ...]:
        """What may hang in the place itself: not what the picture shows of the bins beside it."""
        return tuple(read for read in self.reads if not read.bins or self.place in read.bins)

    @property
    def texts(self) -> frozenset[str]:
        """What was read there, the shop's cards by their codes."""
        return frozenset(read.code or read.text for read in self.here if read.certainty is not Certainty.UNREAD)

    @property
    def by_eye(self) -> bool:
        """By a camera, which does not see what something hides; else each card was held in a hand."""
        return self.how in (How.PHOTO, How.CAMERA)

    @property
    def unread(self) -> int:
        return sum(read.certainty is Certainty.UNREAD for read in self.here)


class Chosen(StrEnum):
    """`blind`: by lot, each bin as likely as another. `turn`: those due by the plan that shows every bin."""

    BLIND = "blind"
    TURN = "turn"


@dataclass(frozen=True, slots=True)
class Sample:
    """The bins that a count goes through, in the room's order, and of how many they were chosen."""

    chosen: Chosen
    of: int
    bins: tuple[str, ...]


@dataclass(frozen=True, slots=True)
class Stocktake:
    """A count. `seq` is the ledger's last entry before it began; `report` is JSON, written when it is closed.

    With a `sample` it is about these bins of the area alone; what was drawn blind was drawn by its `id`.
    """

    id: str
    area: str
    note: str
    opened: datetime
    seq: int
    state: StocktakeState = StocktakeState.OPEN
    closed: datetime | None = None
    report: str = ""
    sample: Sample | None = None

    def places(self, bins: Iterable[Bin]) -> tuple[str, ...]:
        """Where to look."""
        return self.sample.bins if self.sample else Area.parse(self.area).places(bins)

    def after(self, event: str, at: datetime) -> Stocktake:
        return replace(self, state=step(STOCKTAKE, self.state, event), closed=at)


@dataclass(frozen=True, slots=True)
class Resolved:
    """How a finding was put right, by whom and when; `finding` and `undo` are JSON.

    `id` is the count's and the finding's, joined by a dot.
    """

    id: str
    stocktake: str
    finding: str
    how: str
    reason: str
    who: str
    at: datetime
    undo: str
