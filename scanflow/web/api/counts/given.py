"""What the API gives of counts."""

from __future__ import annotations

from typing import Annotated

from pydantic import Field
from typing_extensions import TypedDict

from scanflow.domain.counts.findings import FindingKind
from scanflow.domain.counts.stocktake import Certainty, Chosen, How
from scanflow.domain.life import StocktakeState
from scanflow.web.api.given import Instant
from scanflow.workflow.answers import Count, Photo
from scanflow.workflow.counts.resolving import WAYS
from scanflow.workflow.fields import Code, Identity, OneOf

Way = Annotated[str, OneOf(WAYS)]


class Sample(TypedDict):
    """Null where all of the area is counted. What was drawn blind are those of the `of` bins whose SHA-256 of the
    count's `id`, a line feed and the bin's name in UTF-8 is lowest: it can be drawn again.
    """

    chosen: Annotated[Chosen, Field(description="`blind`: by lot. `turn`: due by the plan that shows every bin.")]
    of: Annotated[Count, Field(description="Bins that it was chosen of: the area's, in the order they were made.")]
    bins: Annotated[list[str], Field(description="What is counted; nothing is said of other bins.")]


class Stocktake(TypedDict):
    id: Identity
    area: str
    note: str
    sample: Sample | None
    state: StocktakeState
    opened: Instant
    closed: Instant | None
    looked: Count
    to_look: Annotated[list[str], Field(description="The places that nobody has looked at so far.")]


class StocktakePage(TypedDict):
    stocktakes: list[Stocktake]
    next: str | None


class Read(TypedDict):
    text: str | None
    code: Code | None
    certainty: Certainty
    bins: Annotated[list[str], Field(description="Where it hangs, by labels; else at the place.")]
    unexpected: Annotated[bool, Field(description="By the account it is not there.")]
    doubted: Annotated[bool, Field(description="A person said that it hangs on another thing.")]
    corners: Annotated[list[list[float]], Field(description="x, y in pixels of the picture.")]


class Look(TypedDict):
    key: Identity
    place: str
    at: Instant
    via: How
    whole: bool
    closer: Identity | None
    reads: list[Read]
    unread: Count
    width: Count | None
    height: Count | None
    photo: Photo | None


class Looks(TypedDict):
    looks: list[Look]


class Resolved(TypedDict):
    how: Way
    reason: str
    who: str
    at: Instant


class Finding(TypedDict):
    id: Identity
    kind: FindingKind
    code: Code | None
    text: Annotated[str | None, Field(description="Of a card that the shop does not have.")]
    title: str | None
    bin: Annotated[str | None, Field(description="Where it belongs.")]
    places: Annotated[list[str], Field(description="Where it was seen.")]
    certainty: Annotated[
        Certainty | None, Field(description="`matched`: take a closer photo before anything is changed.")
    ]
    looks: Annotated[list[Identity], Field(description="Keys of the looks that show it.")]
    read: Count | None
    unread: Count | None
    expected: Annotated[Count | None, Field(description="How many cards should be there, of what is missing.")]
    ways: Annotated[list[Way], Field(description="How it can be resolved.")]
    resolved: Resolved | None


class Findings(TypedDict):
    findings: list[Finding]


class Counted(TypedDict):
    """What a report says of a section."""

    section: str
    expected: Count
    counted: Annotated[Count, Field(description="Of these, in places that were looked at.")]
    agreed: Count
    unclear: Annotated[Count, Field(description="Of those counted: not seen, and not known to be gone.")]
    agreement: Annotated[
        list[float] | None,
        Field(
            description="The least and the greatest share that agrees, with 95 % certainty, whatever became of those "
            "that are unclear."
        ),
    ]
    record_not_found: Count
    found_not_recorded: Count


class Report(TypedDict):
    stocktake: Identity
    area: str
    note: str
    sample: Sample | None
    unfinished: Annotated[
        Count,
        Field(description="Samples drawn blind of this area before it, since one was closed, and not finished."),
    ]
    opened: Instant
    closed: Instant
    places: Count
    looked: Count
    not_looked: list[str]
    unclear: Annotated[list[str], Field(description="Places where cards could not be read, or one photo lacked some.")]
    differing: Annotated[list[str], Field(description="Places looked at where account and shelf differ.")]
    looks: Count
    sections: list[Counted]
    findings: list[Finding]
