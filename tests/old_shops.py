"""Furnished shops of every revision of the tables, kept as SQL: how one is made a database again."""

from __future__ import annotations

import sqlite3
from pathlib import Path
from typing import NamedTuple

import psycopg

FOLDER = Path(__file__).parent / "storage" / "old_shops"
KINDS = ("sqlite", "postgresql")


class OldShop(NamedTuple):
    """A kept shop: the revision of its tables, what tells it from others of that revision, and its database."""

    revision: str
    more: str
    kind: str

    @property
    def path(self) -> Path:
        more = f"_{self.more}" if self.more else ""
        return FOLDER / f"{self.revision}{more}.{self.kind}.sql"

    def __str__(self) -> str:
        return self.path.name.removesuffix(".sql")


def kept() -> list[OldShop]:
    """All that are kept, the oldest first; a file with another kind of name fails."""
    found = []
    for path in sorted(FOLDER.iterdir()):
        name, kind, _ = path.name.split(".")
        revision, _, more = name.partition("_")
        found.append(OldShop(revision, more, kind))
        assert path == found[-1].path
    return found


def load(path: Path, url: str) -> None:
    """Run a kept shop's SQL in an empty database."""
    sql = path.read_text(encoding="utf-8")
    if url.startswith("sqlite"):
        connection = sqlite3.connect(url.removeprefix("sqlite:///"))
        connection.executescript(sql)
        connection.close()
    else:
        with psycopg.connect(url, autocommit=True) as server:
            server.execute(sql.encode())
