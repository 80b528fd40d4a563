"""The append-only account and its chain of hashes."""

from __future__ import annotations

import hashlib
import json
from datetime import timedelta
from typing import Any

import pytest
import rfc8785
from hypothesis import given, settings
from hypothesis import strategies as st
from memory import NOON
from sqlalchemy import select, text
from sqlalchemy.exc import DBAPIError

from scanflow.domain import events
from scanflow.storage import tables
from scanflow.storage.database import Database
from scanflow.storage.ledger import FIRST, canonical, entry_hash, entry_of, first_break

WHOLE = st.integers(-(2**53) + 1, 2**53 - 1)
NAMES = st.text(st.characters(max_codepoint=127))
VALUES = st.recursive(
    st.none() | st.booleans() | WHOLE | st.text(),
    lambda inner: st.lists(inner) | st.dictionaries(NAMES, inner),
    max_leaves=20,
)


@settings(max_examples=300)
@given(VALUES)
def test_canonical_is_rfc_8785(value: Any) -> None:
    """For every kind of value the ledger holds, the text is byte for byte that of an independent RFC 8785 library."""
    assert rfc8785.dumps(value) == canonical(value).encode()


@pytest.mark.parametrize("value", [float("nan"), float("inf"), float("-inf")])
def test_what_json_lacks_is_refused(value: float) -> None:
    """Numbers that JSON can't say are refused rather than written in a way of our own."""
    with pytest.raises(ValueError, match="JSON"):
        canonical({"a": value})


def test_entry_hash() -> None:
    """A hash is the SHA-256 of the previous hash's hex digits and the entry without its hash as RFC 8785 JSON."""
    entry = {"seq": 2, "at": "2026-03-02T12:00:00.000000+00:00", "kind": "scan", "actor": "a", "data": {"b": "ü"}}
    previous = "ab" * 32
    wanted = hashlib.sha256(previous.encode() + rfc8785.dumps(entry)).hexdigest()
    assert wanted == entry_hash(previous, entry) == entry_hash(previous, {**entry, "hash": "anything"})
    assert hashlib.sha256(rfc8785.dumps(entry)).hexdigest() == entry_hash(FIRST, entry)


def chain(count: int) -> list[dict[str, Any]]:
    entries: list[dict[str, Any]] = []
    for seq in range(1, count + 1):
        at = (NOON + timedelta(seconds=seq)).isoformat(timespec="microseconds")
        entry: dict[str, Any] = {"seq": seq, "at": at, "kind": "scan", "actor": "tester", "data": {"n": seq, "a": None}}
        entry["hash"] = entry_hash(entries[-1]["hash"] if entries else FIRST, entry)
        entries.append(entry)
    return entries


def test_an_honest_chain_is_whole() -> None:
    """Nothing is found in a chain that was not touched, an empty one too."""
    assert [None, None, None] == [first_break(chain(count)) for count in (0, 1, 12)]


CHANGES: dict[str, Any] = {
    "seq": lambda seq: seq + 1,
    "at": lambda at: at.replace("12:00", "12:01"),
    "kind": lambda kind: kind + "s",
    "actor": lambda _: "somebody",
    "data": lambda data: {**data, "a": 0},
    "hash": lambda _: "0" * 64,
}


@pytest.mark.parametrize("field", CHANGES)
@pytest.mark.parametrize("place", [0, 4, 11])
def test_a_changed_entry_is_found(field: str, place: int) -> None:
    """A change of any field of any entry is found at that entry."""
    entries = chain(12)
    entries[place][field] = CHANGES[field](entries[place][field])
    assert place + 1 == first_break(entries)


@pytest.mark.parametrize("place", [0, 4, 10])
def test_a_removed_entry_is_found(place: int) -> None:
    """A gap is found where it is, even when the numbers after it are closed up."""
    entries = chain(12)
    del entries[place]
    assert place + 1 == first_break(entries)
    for seq, entry in enumerate(entries, 1):
        entry["seq"] = seq
    assert place + 1 == first_break(entries)


@pytest.mark.parametrize("place", [0, 4, 10])
def test_swapped_entries_are_found(place: int) -> None:
    """Two neighbours in the wrong order are found, even when they swapped their numbers as well."""
    entries = chain(12)
    entries[place], entries[place + 1] = entries[place + 1], entries[place]
    assert place + 1 == first_break(entries)
    entries[place]["seq"], entries[place + 1]["seq"] = place + 1, place + 2
    assert place + 1 == first_break(entries)


def test_a_rewritten_entry_is_found_at_the_next() -> None:
    """Whoever changes an entry and hashes it anew has broken the link to the next one."""
    entries = chain(12)
    entries[4]["actor"] = "somebody"
    entries[4]["hash"] = entry_hash(entries[3]["hash"], entries[4])
    assert 6 == first_break(entries)


def kept(database: Database) -> list[dict[str, Any]]:
    with database.engine.connect() as connection:
        return [entry_of(row) for row in connection.execute(select(tables.ledger).order_by(tables.ledger.c.seq))]


def write(database: Database, count: int = 3) -> None:
    for number in range(count):
        with database.writing(NOON + timedelta(microseconds=number), "tester") as unit:
            unit.record(events.RackPlaced(rack="“x”\n\u2028", aisle=number, start_mm=0))
            unit.record(events.Changed())


def test_what_is_written_is_a_chain(database: Database) -> None:
    """Entries come back as they were recorded, numbered without gap over units, their chain whole."""
    write(database)
    entries = kept(database)
    assert [1, 2, 3, 4, 5, 6] == [entry["seq"] for entry in entries]
    assert None is first_break(entries)
    told = {"rack": "“x”\n\u2028", "aisle": 2, "start_mm": 0}
    assert ("2026-03-02T12:00:00.000002+00:00", "rack placed", "tester", told) == (
        *(entries[4][name] for name in ("at", "kind", "actor", "data")),
    )


@pytest.mark.parametrize(
    "statement",
    [
        "UPDATE ledger SET actor = 'somebody' WHERE seq = 2",
        "DELETE FROM ledger WHERE seq = 2",
        "DELETE FROM ledger",
    ],
)
def test_the_database_keeps_the_ledger(database: Database, statement: str) -> None:
    """No statement changes or removes an entry, whoever sends it."""
    write(database)
    before = kept(database)
    with pytest.raises(DBAPIError, match="append-only"), database.engine.begin() as connection:
        connection.execute(text(statement))
    assert before == kept(database)


def test_an_entry_is_not_replaced(database: Database) -> None:
    """A second entry of the same number is refused, also where the database knows a way to insert over it."""
    write(database)
    before = kept(database)
    entry = {**before[1], "actor": "somebody", "data": json.dumps(before[1]["data"])}
    names = ", ".join(f":{name}" for name in entry)
    insert = f"INTO ledger (seq, at, kind, actor, data, hash) VALUES ({names})"
    over = (
        f"INSERT OR REPLACE {insert}"
        if database.kind == "sqlite"
        else (f"INSERT {insert} ON CONFLICT (seq) DO UPDATE SET actor = excluded.actor")
    )
    for statement in (f"INSERT {insert}", over):
        with pytest.raises(DBAPIError), database.engine.begin() as connection:
            connection.execute(text(statement), entry)
    assert before == kept(database)


def test_tampering_past_the_guard_is_found(own_database: Database) -> None:
    """Whoever owns the file can take the guards away; the chain tells."""
    write(own_database)
    guard = "DROP TRIGGER ledger_kept_update" if own_database.kind == "sqlite" else "DROP TRIGGER ledger_kept ON ledger"
    with own_database.engine.begin() as connection:
        connection.execute(text(guard))
        connection.execute(text("UPDATE ledger SET actor = 'somebody' WHERE seq = 4"))
    assert 4 == first_break(kept(own_database))
