"""Stocktakes: their looks, their findings and how those are resolved, their reports."""

from __future__ import annotations

from labels import count_sheet
from scanflow.domain.counts.findings import Kind
from scanflow.domain.counts.stocktake import Certainty, Chosen, How
from scanflow.domain.life import StocktakeState
from scanflow.web.api.schemas.parts import (
    AGE,
    CODE,
    COUNT,
    IDENTITY,
    INSTANT,
    MOST_LINES,
    PHOTO,
    PLACE,
    STRING,
    Schema,
    given,
    many,
    maybe,
    one_of,
    page,
    ref,
    taken,
    text,
)
from scanflow.workflow.counts.resolving import WAYS

_LOOK = {
    "key": {**IDENTITY, "description": "Made by the client, unique in the shop; a repeat gets the same answer."},
    "place": {
        **PLACE,
        "description": "A bin's name or `tray`. Absent: the bin whose label is in view, or the area's only place.",
    },
    "via": one_of(How),
    "whole": {
        "type": "boolean",
        "default": True,
        "description": "All that stands there was in view, or was held up. What a look by hand lacks is missing; what "
        "photos lack may be hidden.",
    },
    "age_ms": AGE,
    "closer": {**IDENTITY, "description": "The key of an earlier look of which this one shows a part again."},
}

_SAMPLE = maybe(
    given(
        {
            "chosen": {
                **one_of(Chosen),
                "description": "`blind`: by lot. `turn`: due by the plan that shows every bin.",
            },
            "of": {**COUNT, "description": "Bins that it was chosen of: the area's, in the order they were made."},
            "bins": many(STRING, description="What is counted; nothing is said of other bins."),
        },
        description="Null where all of the area is counted. What was drawn blind are those of the `of` bins whose "
        "SHA-256 of the count's `id`, a line feed and the bin's name in UTF-8 is lowest: it can be drawn again.",
    )
)

BODIES: dict[str, Schema] = {
    "NewStocktake": taken(
        {
            "area": {
                **text(64, least=1),
                "description": "`bin:A-2-3`, `shelf:A-2`, `rack:A`, `section:D`, `tray` or `room`.",
            },
            "note": text(500),
            "sample": {
                "type": "integer",
                "minimum": 1,
                "maximum": 100_000,
                "description": "So many bins of the area, drawn blind; the tray is not among them.",
            },
        },
        ("area",),
        examples=[{"area": "shelf:A-2", "note": "After the sale"}, {"area": "room", "sample": 59}],
    ),
    "NewLook": taken(
        {
            **_LOOK,
            "texts": many(text(200, least=1), maxItems=MOST_LINES, description="Of the cards, as scanned or typed."),
            "doubts": many(
                text(200, least=1), maxItems=MOST_LINES, description="Those of the texts that hang on another thing."
            ),
        },
        ("key", "texts"),
        examples=[{"key": "phone-1-000018", "place": "A-2-3", "texts": ["D0145", "D0153"]}],
    ),
    "Resolution": taken(
        {
            "how": one_of(WAYS),
            "reason": {**text(500), "description": "Required for what is withdrawn, held or ignored."},
            "to": {**CODE, "description": "For what is moved: a free slot. Absent: the lowest of that bin."},
            "text": {**text(200, least=1), "description": "Read from the damaged card that is printed again."},
            "sure": {
                "type": "boolean",
                "default": False,
                "description": "Somebody looked: needed for a finding that rests on a matched reading.",
            },
        },
        ("how",),
        examples=[{"how": "ignore", "reason": "On loan"}],
    ),
}

FORMS: dict[str, Schema] = {
    "LookImage": taken(
        {
            **_LOOK,
            "via": one_of((How.PHOTO, How.CAMERA)),
            "image": {"type": "string", "format": "binary", "description": "A photograph of one bin or the tray."},
        },
        ("key", "image"),
    ),
}

QUERIES: dict[str, Schema] = {
    "ReportQuery": taken(
        {
            "format": {
                **one_of(("json", "csv", "pdf")),
                "default": "json",
                "description": "CSV: a row for each finding; what it is, how it was resolved, why, by whom, when.",
            },
            "paper": {**one_of(count_sheet.PAPERS), "default": "letter", "description": "Of the PDF."},
        }
    ),
}

ANSWERS: dict[str, Schema] = {
    "Stocktake": given(
        {
            "id": IDENTITY,
            "area": STRING,
            "note": STRING,
            "sample": _SAMPLE,
            "state": one_of(StocktakeState),
            "opened": INSTANT,
            "closed": maybe(INSTANT),
            "looked": COUNT,
            "to_look": many(STRING, description="The places that nobody has looked at so far."),
        }
    ),
    "Stocktakes": page("stocktakes", "Stocktake"),
    "Look": given(
        {
            "key": IDENTITY,
            "place": STRING,
            "at": INSTANT,
            "via": one_of(How),
            "whole": {"type": "boolean"},
            "closer": maybe(IDENTITY),
            "reads": many(
                given(
                    {
                        "text": maybe(STRING),
                        "code": maybe(CODE),
                        "certainty": one_of(Certainty),
                        "bins": many(STRING, description="Where it hangs, by labels; else at the place."),
                        "unexpected": {"type": "boolean", "description": "By the account it is not there."},
                        "doubted": {"type": "boolean", "description": "A person said that it hangs on another thing."},
                        "corners": {**many(many({"type": "number"})), "description": "x, y in pixels of the picture."},
                    }
                )
            ),
            "unread": COUNT,
            "width": maybe(COUNT),
            "height": maybe(COUNT),
            "photo": maybe(PHOTO),
        }
    ),
    "Looks": given({"looks": many(ref("Look"))}),
    "Finding": given(
        {
            "id": IDENTITY,
            "kind": one_of(Kind),
            "code": maybe(CODE),
            "text": {**maybe(STRING), "description": "Of a card that the shop does not have."},
            "title": maybe(STRING),
            "bin": {**maybe(STRING), "description": "Where it belongs."},
            "places": many(STRING, description="Where it was seen."),
            "certainty": {
                **maybe(one_of(Certainty)),
                "description": "`matched`: take a closer photo before anything is changed.",
            },
            "looks": many(IDENTITY, description="Keys of the looks that show it."),
            "read": maybe(COUNT),
            "unread": maybe(COUNT),
            "expected": {**maybe(COUNT), "description": "How many cards should be there, of what is missing."},
            "ways": {**many(one_of(WAYS)), "description": "How it can be resolved."},
            "resolved": maybe(given({"how": one_of(WAYS), "reason": STRING, "who": STRING, "at": INSTANT})),
        }
    ),
    "Findings": given({"findings": many(ref("Finding"))}),
    "Report": given(
        {
            "stocktake": IDENTITY,
            "area": STRING,
            "note": STRING,
            "sample": _SAMPLE,
            "unfinished": {
                **COUNT,
                "description": "Samples drawn blind of this area before it, since one was closed, and not finished.",
            },
            "opened": INSTANT,
            "closed": INSTANT,
            "places": COUNT,
            "looked": COUNT,
            "not_looked": many(STRING),
            "unclear": many(STRING, description="Places where cards could not be read, or one photo lacked some."),
            "differing": many(STRING, description="Places looked at where account and shelf differ."),
            "looks": COUNT,
            "sections": many(
                given(
                    {
                        "section": STRING,
                        "expected": COUNT,
                        "counted": {**COUNT, "description": "Of these, in places that were looked at."},
                        "agreed": COUNT,
                        "unclear": {**COUNT, "description": "Of those counted: not seen, and not known to be gone."},
                        "agreement": {
                            **maybe(many({"type": "number"})),
                            "description": "The least and the greatest share that agrees, with 95 % certainty, "
                            "whatever became of those that are unclear.",
                        },
                        "record_not_found": COUNT,
                        "found_not_recorded": COUNT,
                    }
                )
            ),
            "findings": many(ref("Finding")),
        }
    ),
}
