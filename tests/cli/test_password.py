"""`scanflow password` lets an owner in who forgot the password."""

from __future__ import annotations

import os
import re
import urllib.error
import urllib.request
from pathlib import Path
from urllib.parse import urlencode, urlsplit

import pytest
from click.testing import CliRunner
from started import serving

from scanflow.cli import main
from scanflow.shop import Shop
from scanflow.storage.database import Database
from scanflow.storage.engine import sqlite_url


def link(*options: object) -> str:
    result = CliRunner().invoke(main, ["password", *map(str, options)])
    assert 0 == result.exit_code
    return result.output


@pytest.mark.parametrize(
    ("options", "wanted"),
    [
        ((), "http://127.0.0.1:8765"),
        (("--port", 9000), "http://127.0.0.1:9000"),
        (("--host", "0.0.0.0", "--https"), "http://127.0.0.1:8765"),
        (("--host", "192.168.1.7", "--https"), "https://192.168.1.7:8765"),
    ],
)
def test_prints_a_link_and_nothing_else(tmp_path: Path, options: tuple[object, ...], wanted: str) -> None:
    """To where the service is for a browser on this machine."""
    assert re.fullmatch(rf"{re.escape(wanted)}/set-up/[\w-]{{43}}\n", link("--data", tmp_path, *options))


def test_while_the_service_runs(tmp_path: Path) -> None:
    """The link opens there at once, and works once. All that the service writes meanwhile is for its account alone."""
    shop = Shop(Database(sqlite_url(tmp_path)))
    shop.act("owner", lambda unit: unit.access.set_password("saddle-brown-7"))
    shop.close()
    sent = urlencode({"password": "another-one-8", "again": "another-one-8"}).encode()
    before = os.umask(0o022)
    try:
        with serving("--https", "--data", tmp_path) as (address, _):
            path = urlsplit(link("--data", tmp_path).strip()).path
            opener = urllib.request.build_opener(urllib.request.HTTPCookieProcessor())
            with opener.open(f"{address}{path}", sent, timeout=20) as answer:
                assert (200, f"{address}/") == (answer.status, answer.url)
            with pytest.raises(urllib.error.HTTPError, match="410"):
                urllib.request.urlopen(f"{address}{path}", sent, timeout=20)
            written = {f"{each.relative_to(tmp_path)}": each.stat().st_mode & 0o077 for each in tmp_path.rglob("*")}
    finally:
        os.umask(before)
    assert {"scanflow.db-wal", "https/authority.pem"} <= written.keys()
    assert {0} == set(written.values())
