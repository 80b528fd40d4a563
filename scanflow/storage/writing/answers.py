"""What was answered to a call or form that may come again, kept beside what it did, in the same transaction."""

from __future__ import annotations

from typing import Any

from sqlalchemy import Connection, Row, insert, select, update

from scanflow.storage.tables import answers


def find(connection: Connection, key: str) -> Row[Any] | None:
    """Fingerprint (`body`), status, location and answer (JSON) of the call of this key."""
    return connection.execute(select(answers).where(answers.c.key == key)).first()


def add(connection: Connection, key: str, body: str, status: int, location: str, answer: str) -> None:
    """Keep what a call was answered."""
    row = {"key": key, "body": body, "status": status, "location": location, "answer": answer}
    connection.execute(insert(answers), row)


def replace(connection: Connection, key: str, status: int, location: str, answer: str) -> None:
    """The answer of a call that was done while it was not known yet."""
    row = {"status": status, "location": location, "answer": answer}
    connection.execute(update(answers).where(answers.c.key == key).values(row))
