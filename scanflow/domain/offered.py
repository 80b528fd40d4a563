"""What a channel offers, row by row, and how that may differ from what stands here."""

from __future__ import annotations

from dataclasses import dataclass
from enum import StrEnum


class Differs(StrEnum):
    """How a channel and the room may differ, in the order in which that is told.

    `gone`: it is offered and not for sale, so it is about to be sold twice. `wrong_reference`: its reference names
    nothing, or another thing than its id. `unknown`: neither names a thing. `new_id`: nobody knew the id. `down`: the
    channel does not offer what is kept as up there.
    """

    GONE = "gone"
    NOT_OFFERED = "not_offered"
    WRONG_REFERENCE = "wrong_reference"
    UNKNOWN = "unknown"
    NEW_ID = "new_id"
    DOWN = "down"


@dataclass(frozen=True, slots=True)
class OfferedRow:
    """A row of a channel's file. `number` is its place in the file, 1 for the first; `bad`: why it can't be read."""

    number: int
    reference: str = ""
    listing: str = ""
    title: str = ""
    bad: str = ""


@dataclass(frozen=True, slots=True)
class Difference:
    """One difference, and why, as a sentence. `row` is None for what the file lacks.

    `stay` and `code` are of the thing's latest stay, None where it is not known. `reference` is as in the file,
    `correct` the thing's own.
    """

    kind: Differs
    why: str
    title: str
    row: int | None = None
    reference: str = ""
    listing: str = ""
    stay: str | None = None
    code: str | None = None
    correct: str = ""

    @property
    def name(self) -> str:
        """Tells it from the other differences of the same file."""
        return f"{self.kind}:{self.row or self.stay}:{self.listing}"

    @property
    def settled(self) -> bool:
        """Whether a press settles it: an id is learned, or an offer has ended. Others are put right over there."""
        return bool(self.listing) and self.kind not in (Differs.WRONG_REFERENCE, Differs.UNKNOWN)
