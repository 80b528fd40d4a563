"""The ledger, entry by entry."""

from __future__ import annotations

from scanflow.web.api.schemas.parts import COUNT, INSTANT, LIMIT, STRING, Schema, given, maybe, page, taken

QUERIES: dict[str, Schema] = {
    "LedgerQuery": taken({"after": {**COUNT, "maximum": 2**53 - 1, "default": 0}, **LIMIT}),
}

ANSWERS: dict[str, Schema] = {
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
}
