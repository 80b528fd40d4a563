"""How far a load in parts has come, kept in the transaction of each part, so that it goes on where it was ended.

It stands in the table `answers`: a row on how far it is, and a row for each part that held or refused something.
"""

from __future__ import annotations

import json
from dataclasses import asdict, dataclass
from datetime import datetime, timedelta
from typing import Any

from sqlalchemy import Connection, delete, insert, select

from scanflow.storage.tables import answers
from scanflow.workflow.orders.file import Loaded, RefusedRow

GOOD = timedelta(days=1)
"""For so long a load that was ended goes on; later it begins anew, for the room is another."""


@dataclass(frozen=True, slots=True)
class Far:
    """`done` orders of a load are in, in `parts`; `counts` of new, changed and unchanged ones."""

    at: str
    done: int = 0
    parts: int = 0
    counts: tuple[int, int, int] = (0, 0, 0)


def far(connection: Connection, key: str, at: datetime) -> Far:
    """How far the load of this key has come."""
    row = connection.execute(select(answers.c.answer).where(answers.c.key == _name(key))).scalar()
    kept = Far(**json.loads(row)) if row is not None else None
    if kept is None or at - datetime.fromisoformat(kept.at) > GOOD:
        return Far(at.isoformat())
    return kept


def keep(connection: Connection, key: str, before: Far, done: int, part: Loaded) -> None:
    """A part more is in: `done` orders altogether."""
    told = part.held or part.refused
    now = Far(before.at, done, before.parts + bool(told), _sum(before.counts, part))
    if told:
        rest = {"held": part.held, "refused": [asdict(each) for each in part.refused]}
        _put(connection, f"{_name(key)} {now.parts}", rest)
    _put(connection, _name(key), asdict(now))


def end(connection: Connection, key: str, before: Far, last: Loaded) -> Loaded:
    """All of it, with its last part; how it came about is forgotten."""
    held: list[str] = []
    refused: list[RefusedRow] = []
    for name in _parts(key, before):
        part = json.loads(connection.execute(select(answers.c.answer).where(answers.c.key == name)).scalar_one())
        held += part["held"]
        refused += [RefusedRow(**each) for each in part["refused"]]
    for name in (_name(key), *_parts(key, before)):
        _delete(connection, name)
    return Loaded(*_sum(before.counts, last), (*held, *last.held), (*refused, *last.refused))


def _name(key: str) -> str:
    """No key of a call or form is like it: those of calls have no space, and those of forms begin otherwise."""
    return f"load {key}"


def _parts(key: str, before: Far) -> list[str]:
    return [f"{_name(key)} {number}" for number in range(1, before.parts + 1)]


def _sum(counts: tuple[int, int, int], part: Loaded) -> tuple[int, int, int]:
    new, changed, unchanged = counts
    return new + part.loaded, changed + part.changed, unchanged + part.unchanged


def _put(connection: Connection, name: str, told: Any) -> None:
    _delete(connection, name)
    row = {"key": name, "body": "", "status": 0, "location": "", "answer": json.dumps(told)}
    connection.execute(insert(answers), row)


def _delete(connection: Connection, name: str) -> None:
    connection.execute(delete(answers).where(answers.c.key == name))
