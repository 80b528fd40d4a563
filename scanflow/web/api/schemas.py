"""What the calls take and give, as JSON Schemas (2020-12): checked against, and shown in the OpenAPI document.

Every object that is taken refuses unknown fields. Texts are Unicode without NUL, which no database keeps.
"""

from __future__ import annotations

from collections.abc import Iterable, Mapping
from enum import StrEnum
from typing import Any

from labels import count_sheet
from labels.paper import COLOURS
from labels.slot_code import DEFAULT_DIGITS
from scanflow.domain.derive import OrderState, SlotState
from scanflow.domain.findings import Kind
from scanflow.domain.life import CardState, Hold, LineState, ParcelState, RoundState, StayState, StocktakeState
from scanflow.domain.stocktake import Certainty, Chosen, How
from scanflow.domain.things import Station
from scanflow.domain.verdict import Reason
from scanflow.workflow.resolving import WAYS

Schema = dict[str, Any]

ID = r"^[A-Za-z0-9_-]{1,64}$"
MOST_LINES = 500


def text(most: int, least: int = 0) -> Schema:
    """A text of at most `most` characters; with `least` 1 not of spaces alone."""
    pattern = r"^[^\u0000]*[^\s\u0000][^\u0000]*$" if least else r"^[^\u0000]*$"
    return {"type": "string", "minLength": least, "maxLength": most, "pattern": pattern}


def ref(name: str) -> Schema:
    return {"$ref": f"#/components/schemas/{name}"}


def one_of(kind: type[StrEnum] | Iterable[str]) -> Schema:
    return {"type": "string", "enum": [str(each) for each in kind]}


def maybe(schema: Schema) -> Schema:
    """The same, or null."""
    if "enum" in schema:
        return {**schema, "type": ["string", "null"], "enum": [*schema["enum"], None]}
    return {**schema, "type": [schema["type"], "null"]} if "type" in schema else {"anyOf": [schema, {"type": "null"}]}


def taken(properties: Mapping[str, Schema], required: Iterable[str] = (), **more: Any) -> Schema:
    """An object of a call: unknown fields are refused."""
    return {
        "type": "object",
        "properties": dict(properties),
        "required": list(required),
        "additionalProperties": False,
        **more,
    }


def given(properties: Mapping[str, Schema], **more: Any) -> Schema:
    """An object of an answer: all fields are always there."""
    return taken(properties, properties, **more)


def page(name: str, of: str, following: Schema | None = None) -> Schema:
    """A page of a list. `next` asks for the following page, null at the end."""
    return given({name: {"type": "array", "items": ref(of)}, "next": following or maybe({"type": "string"})})


def many(schema: Schema, **more: Any) -> Schema:
    return {"type": "array", "items": schema, **more}


STRING: Schema = {"type": "string"}
COUNT: Schema = {"type": "integer", "minimum": 0}
IDENTITY: Schema = {"type": "string", "pattern": ID}
SECTION: Schema = {"type": "string", "pattern": r"^[A-Z]{1,2}$"}
CODE: Schema = {"type": "string", "pattern": r"^[A-Z]{1,2}[0-9]{2,6}$"}
PLACE = text(64, least=1)
_DAY = "[0-9]{4}-(0[1-9]|1[0-2])-(0[1-9]|[12][0-9]|3[01])"
_HOUR = r"([01][0-9]|2[0-3]):[0-5][0-9](:[0-5][0-9](\.[0-9]{1,6})?)?"
TIME: Schema = {
    "type": "string",
    "maxLength": 40,
    "pattern": rf"^{_DAY}([T ]{_HOUR}(Z|[+-]([01][0-9]|2[0-3]):[0-5][0-9])?)?$",
    "description": "RFC 3339; without offset in the shop's zone; a date alone is the end of that day.",
    "examples": ["2026-11-03T14:05:00+01:00"],
}
INSTANT: Schema = {"type": "string", "format": "date-time"}
PHOTO: Schema = {
    "type": "string",
    "format": "uri-reference",
    "description": "The address of the thing's picture; another picture has another address.",
}
JPEG = "image/jpeg"
IMAGES = (JPEG, "image/png", "image/webp", "image/heic", "image/heif")
"""Media types of pictures that are taken, HEIC where the service has its library."""

_ITEM = {"title": text(500, least=1), "listing": text(200), "notes": text(4000)}
_SCAN = {
    "station": one_of(Station),
    "key": {**IDENTITY, "description": "Made by the client, unique in the shop; a repeat gets the same answer."},
    "via": {**one_of(("wedge", "camera", "typed")), "default": "wedge"},
    "round": {**IDENTITY, "description": "Required at a bin."},
    "table": {**PLACE, "default": "main"},
    "bin": {**PLACE, "description": "Required at a shelf."},
    "take_out": {"type": "boolean", "default": False},
    "at": {**TIME, "description": "The client's clock, for a scan that waited for the network; only recorded."},
}

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
    "NewSection": taken(
        {
            "code": {**SECTION, "description": "One or two letters that no other section has."},
            "name": text(100, least=1),
            "slots_per_bin": {"type": "integer", "minimum": 1, "maximum": 999},
            "colour": {**one_of(COLOURS), "description": "By default the one least used so far."},
            "digits": {
                "type": "integer",
                "minimum": 2,
                "maximum": 6,
                "default": DEFAULT_DIGITS,
                "description": "Width of its numbers, the same for all: 3 in D014.",
            },
        },
        ("code", "name", "slots_per_bin"),
        examples=[{"code": "D", "name": "Derailleurs", "slots_per_bin": 18, "colour": "yellow"}],
    ),
    "NewSlots": taken(
        {
            "count": {"type": "integer", "minimum": 1, "maximum": 999},
            "rack": {"type": "string", "pattern": r"^[A-Za-z0-9]{1,16}$", "description": "Where new bins stand."},
        },
        ("count",),
        examples=[{"count": 18, "rack": "A"}],
    ),
    "NewStay": taken(
        {
            **_ITEM,
            "text": {**text(200, least=1), "description": "The text of the card in hand."},
            "code": {**CODE, "description": "A free slot."},
            "section": {**SECTION, "description": "The lowest free slot of this section."},
        },
        ("title",),
        oneOf=[{"required": [name]} for name in ("text", "code", "section")],
        examples=[{"title": "Rear derailleur, long cage", "section": "D"}],
    ),
    "ItemChange": taken(_ITEM, minProperties=1, examples=[{"title": "Rear derailleur, short cage"}]),
    "Withdrawal": taken({"reason": text(500, least=1)}, ("reason",), examples=[{"reason": "Cracked on inspection"}]),
    "Move": taken({"to": CODE}, ("to",), examples=[{"to": "D015"}]),
    "NewOrder": taken(
        {
            "number": text(100, least=1),
            "channel": text(100),
            "ordered_at": TIME,
            "ship_by": TIME,
            "lines": many(ref("NewLine"), minItems=1, maxItems=MOST_LINES),
        },
        ("number", "lines"),
        examples=[{"number": "1001", "lines": [{"reference": "D014-01K", "title": "Rear derailleur, long cage"}]}],
    ),
    "NewLine": taken(
        {"reference": text(200, least=1), "title": text(500), "listing": text(200)},
        ("reference",),
        examples=[{"reference": "D014-01K"}],
    ),
    "Cancellation": taken({"line": {**IDENTITY, "description": "Absent: all lines."}}, examples=[{}]),
    "Settlement": taken({"stay": {**IDENTITY, "description": "Absent: the one it is bound to."}}, examples=[{}]),
    "Note": taken({"note": text(500)}, examples=[{"note": "Not in its bin"}]),
    "Doubt": taken({"why": text(500, least=1)}, ("why",), examples=[{"why": "The picture shows another saddle"}]),
    "Nothing": taken({}, examples=[{}]),
    "NewRound": taken(
        {"orders": {**many(IDENTITY, maxItems=MOST_LINES), "description": "Absent: all that wait."}}, examples=[{}]
    ),
    "NewParcel": taken(
        {"orders": many(IDENTITY, minItems=1, maxItems=100), "table": {**PLACE, "default": "main"}},
        ("orders",),
        examples=[{"orders": ["4f1c0a9be2d37788"]}],
    ),
    "Closing": taken({"partial": {"type": "boolean", "default": False}}, examples=[{"partial": True}]),
    "NewScan": taken(
        {**_SCAN, "text": {**text(4096), "description": "As the reader gave it; empty where it read nothing."}},
        ("station", "key", "text"),
        examples=[{"station": "table", "key": "phone-1-000017", "text": "D0145"}],
    ),
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
    "ScanImage": taken(
        {**_SCAN, "image": {"type": "string", "format": "binary", "description": "A photograph of the card."}},
        ("station", "key", "image"),
    ),
    "Frame": taken(
        {"image": {"type": "string", "format": "binary", "description": "What a live camera sees: grey will do."}},
        ("image",),
    ),
    "LookImage": taken(
        {
            **_LOOK,
            "image": {"type": "string", "format": "binary", "description": "A photograph of one bin or the tray."},
        },
        ("key", "image"),
    ),
    "OrderFile": taken(
        {
            "file": {"type": "string", "format": "binary", "description": "CSV (RFC 4180), with a header."},
            "mapping": {**text(100, least=1), "description": "The name of a remembered mapping of columns."},
        },
        ("file",),
    ),
}

_LIMIT = {"limit": {"type": "integer", "minimum": 1, "maximum": 500, "default": 100}}
_PAGED = {**_LIMIT, "cursor": {"type": "string", "pattern": r"^[A-Za-z0-9_-]{1,200}$"}}
QUERIES: dict[str, Schema] = {
    "NoQuery": taken({}),
    "Page": taken(_PAGED),
    "SlotQuery": taken({"section": SECTION, "state": one_of(SlotState), **_PAGED}),
    "OrderQuery": taken({"state": one_of(OrderState), **_PAGED}),
    "PhotoQuery": taken(
        {
            "size": {**one_of(("whole", "small")), "default": "whole", "description": "At most 1600 or 320 pixels."},
            "hash": {
                "type": "string",
                "pattern": "^[0-9a-f]{64}$",
                "description": "Of the picture expected: if it is that one, it may be kept for ever.",
            },
        }
    ),
    "ReportQuery": taken(
        {
            "format": {**one_of(("json", "csv", "pdf")), "default": "json"},
            "paper": {**one_of(count_sheet.PAPERS), "default": "letter", "description": "Of the PDF."},
        }
    ),
    "LedgerQuery": taken({"after": {**COUNT, "maximum": 2**53 - 1, "default": 0}, **_LIMIT}),
}

_LINE = {
    "id": IDENTITY,
    "reference": STRING,
    "code": maybe(CODE),
    "stay": maybe(IDENTITY),
    "title": STRING,
    "state": one_of(LineState),
    "hold": maybe(one_of(Hold)),
    "why": STRING,
}
ANSWERS: dict[str, Schema] = {
    "Health": given({"status": {"const": "ok"}, "database": one_of(("sqlite", "postgresql")), "ledger": COUNT}),
    "Section": given(
        {
            "code": SECTION,
            "name": STRING,
            "slots_per_bin": COUNT,
            "colour": one_of(COLOURS),
            "digits": COUNT,
            "slots": given({state.value: COUNT for state in SlotState}),
        }
    ),
    "Sections": page("sections", "Section"),
    "Codes": given({"codes": many(CODE)}),
    "Slot": given(
        {
            "code": CODE,
            "section": SECTION,
            "state": one_of(SlotState),
            "bin": STRING,
            "stay": maybe(IDENTITY),
            "card": one_of(CardState),
        }
    ),
    "Slots": page("slots", "Slot"),
    "Stay": given(
        {
            "id": IDENTITY,
            "item": IDENTITY,
            "code": CODE,
            "turn": {"type": "integer", "minimum": 1},
            "reference": STRING,
            "bin": STRING,
            "state": one_of(StayState),
            "title": STRING,
            "listing": STRING,
            "notes": STRING,
            "photo": maybe(PHOTO),
        }
    ),
    "Line": given(_LINE),
    "Order": given(
        {
            "id": IDENTITY,
            "number": STRING,
            "channel": STRING,
            "state": one_of(OrderState),
            "ordered_at": maybe(INSTANT),
            "ship_by": maybe(INSTANT),
            "slip": {"type": "string", "description": "What the bars of its slip say."},
            "lines": many(ref("Line")),
        }
    ),
    "Orders": page("orders", "Order"),
    "Loaded": given(
        {
            "loaded": COUNT,
            "changed": COUNT,
            "unchanged": COUNT,
            "held": many(IDENTITY),
            "refused": many(given({"row": COUNT, "code": STRING, "text": STRING})),
        }
    ),
    "Round": given(
        {
            "id": IDENTITY,
            "state": one_of(RoundState),
            "stops": many(
                given(
                    {
                        "bin": STRING,
                        "code": maybe(CODE),
                        "title": STRING,
                        "photo": maybe(PHOTO),
                        "order": IDENTITY,
                        "line": IDENTITY,
                        "basket": maybe(COUNT),
                        "state": one_of(LineState),
                    }
                )
            ),
            "left_out": {
                "type": "array",
                "items": given({"order": IDENTITY, "why": one_of(("held", "on_round", "not_waiting"))}),
                "description": "Said when the round is opened; empty afterwards.",
            },
        }
    ),
    "Parcel": given(
        {
            "id": IDENTITY,
            "state": one_of(ParcelState),
            "table": STRING,
            "slip": STRING,
            "orders": many(IDENTITY),
            "lines": many(ref("Line")),
        }
    ),
    "Verdict": given(
        {
            "verdict": one_of(("accepted", "refused")),
            "reason": maybe(one_of(Reason)),
            "advice": STRING,
            "replayed": {"type": "boolean"},
            "changed": {"type": "boolean"},
            "code": maybe(CODE),
            "title": maybe(STRING),
            "photo": maybe(PHOTO),
            "order": maybe(IDENTITY),
            "order_number": maybe(STRING),
            "line": maybe(IDENTITY),
            "line_state": maybe(one_of(LineState)),
            "order_state": maybe(one_of(OrderState)),
            "parcel": maybe(IDENTITY),
            "parcel_state": maybe(one_of(ParcelState)),
            "released": {**many(CODE), "description": "The slots whose cards are due back."},
        }
    ),
    "Decoded": given({"texts": many(STRING, description="What was decoded whole, top down; none is matched.")}),
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
            "opened": INSTANT,
            "closed": INSTANT,
            "places": COUNT,
            "looked": COUNT,
            "not_looked": many(STRING),
            "unclear": many(STRING, description="Places where cards could not be read, or one photo lacked some."),
            "differing": many(STRING, description="Places looked at well enough where account and shelf differ."),
            "looks": COUNT,
            "sections": many(
                given(
                    {
                        "section": STRING,
                        "expected": COUNT,
                        "counted": {**COUNT, "description": "Of these, in places that were looked at well enough."},
                        "agreed": COUNT,
                        "agreement": {
                            **maybe(many({"type": "number"})),
                            "description": "The least and the greatest share that agrees, with 95 % certainty.",
                        },
                        "record_not_found": COUNT,
                        "found_not_recorded": COUNT,
                    }
                )
            ),
            "findings": many(ref("Finding")),
        }
    ),
    "Entry": given(
        {
            "seq": {"type": "integer", "minimum": 1},
            "at": INSTANT,
            "kind": STRING,
            "actor": STRING,
            "data": {"type": "object"},
            "hash": {"type": "string", "pattern": "^[0-9a-f]{64}$"},
        },
        description=(
            "`hash` is SHA-256, as lower-case hex text, of the previous entry's `hash` (that hex text; empty before "
            "the first entry) followed by this entry without `hash` as RFC 8785 JSON in UTF-8."
        ),
    ),
    "Ledger": page("entries", "Entry", maybe({"type": "integer", "description": "The last `seq`; null at the end."})),
    "Problem": {
        "type": "object",
        "description": "RFC 9457. `pointer` is a JSON pointer into the body, or `/name` of a parameter or form field.",
        "properties": {
            "type": {"type": "string", "format": "uri"},
            "title": STRING,
            "status": {"type": "integer"},
            "detail": STRING,
            "code": STRING,
            "errors": many(given({"pointer": STRING, "code": STRING})),
        },
        "required": ["type", "title", "status", "detail", "code", "errors"],
    },
    "Document": {"type": "object", "description": "An OpenAPI 3.1 document: this one."},
}

COMPONENTS = {"schemas": {**BODIES, **FORMS, **ANSWERS}}
"""Where references between schemas lead."""
