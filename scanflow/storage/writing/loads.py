"""How far a load in parts has come, kept in the transaction of each part, so that it goes on where it was ended.

It stands in the table `answers`: a row on how far it is, and a row for each part that held or refused something.
"""

from __future__ import annotations

import json
from dataclasses import asdict
from datetime import datetime, timedelta
from typing import Any

from sqlalchemy import Connection, delete, insert, select

from scanflow.domain.orders.loaded import Far, Loaded, RefusedRow
from scanflow.storage.tables import answers

GOOD = timedelta(days=1)
"""For so long a load that was ended goes on; later it begins anew, for the room is another."""


class SqlLoads:
    """A `workflow.ports.Loads` on one connection, at one time."""

    def __init__(self, connection: Connection, at: datetime) -> None:
        self._connection, self._at = connection, at

    def far(self, key: str) -> Far:
        row = self._connection.execute(select(answers.c.answer).where(answers.c.key == _name(key))).scalar()
        kept = Far(**json.loads(row)) if row is not None else None
        if kept is None or self._at - datetime.fromisoformat(kept.at) > GOOD:
            return Far(self._at.isoformat())
        return kept

    def keep(self, key: str, before: Far, done: int, part: Loaded) -> None:
        told = part.held or part.refused
        now = Far(before.at, done, before.parts + bool(told), _sum(before.counts, part))
        if told:
            rest = {"held": part.held, "refused": [asdict(each) for each in part.refused]}
            self._put(f"{_name(key)} {now.parts}", rest)
        self._put(_name(key), asdict(now))

    def end(self, key: str, before: Far, last: Loaded) -> Loaded:
        held: list[str] = []
        refused: list[RefusedRow] = []
        for name in _parts(key, before):
            query = select(answers.c.answer).where(answers.c.key == name)
            part = json.loads(self._connection.execute(query).scalar_one())
            held += part["held"]
            refused += [RefusedRow(**each) for each in part["refused"]]
        for name in (_name(key), *_parts(key, before)):
            self._delete(name)
        return Loaded(*_sum(before.counts, last), (*held, *last.held), (*refused, *last.refused))

    def _put(self, name: str, told: Any) -> None:
        self._delete(name)
        row = {"key": name, "body": "", "status": 0, "location": "", "answer": json.dumps(told)}
        self._connection.execute(insert(answers), row)

    def _delete(self, name: str) -> None:
        self._connection.execute(delete(answers).where(answers.c.key == name))


def _name(key: str) -> str:
    """No key of a call or form is like it: those of calls have no space, and those of forms begin otherwise."""
    return f"load {key}"


def _parts(key: str, before: Far) -> list[str]:
    return [f"{_name(key)} {number}" for number in range(1, before.parts + 1)]


def _sum(counts: tuple[int, int, int], part: Loaded) -> tuple[int, int, int]:
    new, changed, unchanged = counts
    return new + part.loaded, changed + part.changed, unchanged + part.unchanged
