"""Orders, and files of them."""

from __future__ import annotations

from scanflow.domain.derive import OrderState
from scanflow.web.api.schemas.parts import (
    COUNT,
    IDENTITY,
    INSTANT,
    MOST_LINES,
    PAGED,
    STRING,
    TIME,
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

BODIES: dict[str, Schema] = {
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
}

FORMS: dict[str, Schema] = {
    "OrderFile": taken(
        {
            "file": {"type": "string", "format": "binary", "description": "CSV (RFC 4180), with a header."},
            "mapping": {**text(100, least=1), "description": "The name of a remembered mapping of columns."},
        },
        ("file",),
    ),
}

QUERIES: dict[str, Schema] = {
    "OrderQuery": taken({"state": one_of(OrderState), **PAGED}),
}

ANSWERS: dict[str, Schema] = {
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
}
