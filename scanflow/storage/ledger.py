"""The append-only account: each entry's hash covers the one before it."""

from __future__ import annotations

import hashlib
import json
from collections.abc import Iterable, Mapping
from typing import Any, TypedDict

FIRST = ""
"""What stands for the hash before the first entry."""


def canonical(value: Any) -> str:
    """RFC 8785 JSON of what the ledger holds: text, whole numbers, true, false, null, lists, objects with ASCII names.

    For these the standard library's sorted, compact JSON is the same byte for byte.
    """
    return json.dumps(value, ensure_ascii=False, sort_keys=True, separators=(",", ":"), allow_nan=False)


def entry_hash(previous: str, entry: Mapping[str, Any]) -> str:
    """SHA-256 (hex) of the previous hash (hex) followed by the entry without its hash as RFC 8785 JSON."""
    body = {name: value for name, value in entry.items() if name != "hash"}
    return hashlib.sha256((previous + canonical(body)).encode()).hexdigest()


class Entry(TypedDict):
    """An entry as it is hashed and shown."""

    seq: int
    at: str
    kind: str
    actor: str
    data: dict[str, Any]
    hash: str


def entry_of(row: Any) -> Entry:
    """The entry of a row of the ledger."""
    return {
        "seq": row.seq,
        "at": row.at,
        "kind": row.kind,
        "actor": row.actor,
        "data": json.loads(row.data),
        "hash": row.hash,
    }


def first_break(entries: Iterable[Mapping[str, Any]], previous: str = FIRST, first: int = 1) -> int | None:
    """The `seq` of the first entry that does not follow from the one before; None when all do.

    They are counted from `first` on; `previous` is the hash of the entry before that.
    """
    for wanted, entry in enumerate(entries, first):
        if entry["seq"] != wanted or entry["hash"] != entry_hash(previous, entry):
            return wanted
        previous = entry["hash"]
    return None
