"""`scanflow serve` as a process: in plain, with HTTPS of its own making, and with a certificate of one's own."""

from __future__ import annotations

import contextlib
import json
import ssl
import time
import urllib.error
import urllib.request
from datetime import UTC, datetime, timedelta
from http.client import HTTPConnection
from pathlib import Path
from urllib.parse import urlsplit

import pytest
from click.testing import CliRunner
from clients import new_token
from damaged_data import DataFolder, write_entries
from shown_counts import opened, shown
from started import serving

from scanflow.cli import main
from scanflow.domain.access import Role
from scanflow.domain.things import Photo
from scanflow.shop import Shop
from scanflow.storage import backups
from scanflow.storage.database import Database
from scanflow.storage.engine import sqlite_url
from scanflow.web.door import certificates
from scanflow.workflow import stock
from scanflow.workflow.counts import stocktakes


def status(url: str, authority: Path | None = None) -> int:
    trust = ssl.create_default_context(cafile=authority) if authority else None
    with urllib.request.urlopen(url, timeout=20, context=trust) as answer:
        return int(answer.status)


def test_https(tmp_path: Path) -> None:
    """A client that trusts the authority in the data folder calls by HTTPS, one that doesn't refuses; this machine
    calls in plain. SIGTERM ends it with status 0; the next start keeps authority and certificate.
    """
    folder = tmp_path / "https"
    kept = []
    for _ in range(2):
        with serving("--https", "--data", tmp_path) as (address, process):
            secure = address.replace("http://", "https://")
            assert address.startswith("http://127.0.0.1:")
            assert 200 == status(f"{secure}/api/health", folder / "authority.pem")
            assert 200 == status(f"{address}/api/health")
            with pytest.raises(urllib.error.URLError, match="CERTIFICATE_VERIFY_FAILED"):
                status(f"{secure}/api/health")
        assert 0 == process.returncode
        kept.append({each.name: each.read_bytes() for each in folder.iterdir()})
    assert kept[0] == kept[1] and {"authority.pem", "server.pem"} == kept[0].keys()


def test_backups_from_the_first_start_on(tmp_path: Path) -> None:
    """The service says where they go, and has made the first one before anybody asks."""
    with serving("--data", tmp_path) as (_, process):
        assert process.stdout is not None
        said = [process.stdout.readline() for _ in range(2)]
        end = time.monotonic() + 30
        while not (made := backups.listed(tmp_path / "backups")):
            assert time.monotonic() < end
            time.sleep(0.1)
    assert f"Backups go to {tmp_path / 'backups'}.\n" in said
    backups.check(tmp_path / "backups", made[0])


@pytest.mark.parametrize("more", [(), ("--https",)], ids=["plain", "https"])
def test_streams_end_with_the_service(tmp_path: Path, more: tuple[str, ...]) -> None:
    """An open stream is no reason to wait: it ends, and the service with it, sooner than the server would give up."""
    shop = Shop(Database(sqlite_url(tmp_path)))
    token = new_token(shop, "station", Role.PROGRAM)
    shop.close()
    with serving("--data", tmp_path, *more) as (address, process):
        call = urllib.request.Request(f"{address}/api/changes", headers={"Authorization": f"Bearer {token}"})
        with urllib.request.urlopen(call, timeout=20) as stream:
            while stream.readline() != b"id: 1\n":
                pass
            begun = time.monotonic()
            process.terminate()
            stream.read()
            assert 0 == process.wait(timeout=30)
            assert time.monotonic() - begun < 5.0, "waitress waits five seconds for its threads"


def test_a_certificate_of_ones_own(tmp_path: Path) -> None:
    """With `--cert` the service shows that, and makes none."""
    now = datetime.now(UTC)
    authority = certificates.make_authority("bench", now)
    (tmp_path / "authority.pem").write_bytes(authority.pem())
    (tmp_path / "own.pem").write_bytes(certificates.issue(authority, ["127.0.0.1"], now).pem())
    with serving("--cert", tmp_path / "own.pem", "--host", "127.0.0.1", "--data", tmp_path / "shop") as (address, _):
        secure = address.replace("http://", "https://")
        assert 200 == status(f"{secure}/api/health", tmp_path / "authority.pem")
    assert not (tmp_path / "shop" / "https").exists()


def test_a_certificate_without_its_key_is_told(tmp_path: Path) -> None:
    """Status 1 and one line for a file that is no certificate, 2 for a key without a certificate."""
    (tmp_path / "own.pem").write_text("nothing")
    given = ["serve", "--port", "0", "--data", f"{tmp_path}"]
    result = CliRunner().invoke(main, [*given, "--cert", f"{tmp_path}/own.pem"])
    assert (1, True) == (result.exit_code, "own.pem can't be used" in result.output)
    result = CliRunner().invoke(main, [*given, "--key", f"{tmp_path}/own.pem"])
    assert (2, True) == (result.exit_code, "--key goes with --cert" in result.output)


def test_old_photos_of_counts_go_when_it_starts(tmp_path: Path) -> None:
    """Those of a count that ended longer ago than they are kept; nobody has to begin another for that."""
    old = datetime.now(UTC) - timedelta(days=400)
    at = [old]
    shop = Shop(Database(sqlite_url(tmp_path)), clock=lambda: at[0])
    shop.act(
        "owner",
        lambda unit: stock.add_section(
            unit, stock.AddSection(code="D", name="Derailleurs", slots_per_bin=4, colour="blue")
        ),
    )
    shop.act("owner", lambda unit: stock.add_slots(unit, "D", stock.AddSlots(count=4)))
    count = opened(shop)
    shown(shop, count, "A-1-1", "D001", key="first")
    shop.act("owner", lambda unit: stocktakes.cancel(unit, count.id))
    at[0] = datetime.now(UTC) - timedelta(days=10)
    shop.act("owner", lambda unit: stock.add_slots(unit, "D", stock.AddSlots(count=4)))
    with serving("--data", tmp_path):
        end = time.monotonic() + 20
        while photos(shop) and time.monotonic() < end:
            time.sleep(0.05)
        assert 0 == photos(shop)
    shop.close()


def test_it_starts_where_something_is_amiss(tmp_path: Path) -> None:
    """On an older copy of the database it serves its pages, says why nothing is recorded, and leaves the copy alone."""
    folder = DataFolder(tmp_path)
    with contextlib.closing(folder.open()) as database:
        write_entries(database, 2)
    older = folder.file.read_bytes()
    with contextlib.closing(folder.open()) as database:
        write_entries(database, 2)
    folder.file.write_bytes(older)
    with serving("--data", tmp_path) as (address, process):
        assert process.stdout is not None
        assert "amiss with the data. The database is older than it was" in process.stdout.readline()
        with pytest.raises(urllib.error.HTTPError, match="503") as refused:
            status(f"{address}/api/health")
        assert {"status": "amiss", "ledger": 2}.items() <= json.loads(refused.value.read()).items()
        assert 200 == status(f"{address}/login")
    assert older == folder.file.read_bytes()


def photos(shop: Shop) -> int:
    with shop.looking() as unit:
        return len(unit.find(Photo))


def test_plain_in_a_network_needs_a_word(tmp_path: Path) -> None:
    """Beyond this machine HTTPS is spoken, or `--insecure` says that the network is trusted; else status 2 and why."""
    result = CliRunner().invoke(main, ["serve", "--host", "0.0.0.0", "--port", "0", "--data", f"{tmp_path}"])
    assert (2, True, True) == (result.exit_code, "--https" in result.output, "--insecure" in result.output)


def guessed(address: str, source: str) -> int:
    """What a wrong password from this address of the loopback network is answered."""
    body = "password=wrong"
    parts = urlsplit(address)
    connection = HTTPConnection(parts.hostname or "", parts.port, timeout=20, source_address=(source, 0))
    with contextlib.closing(connection):
        connection.request("POST", "/login", body, {"Content-Type": "application/x-www-form-urlencoded"})
        return connection.getresponse().status


def test_a_neighbour_does_not_lock_out(tmp_path: Path) -> None:
    """A trusted network is told what it sees. Who guesses from one address is stopped there, and nowhere else; a name
    that it was not given is refused, one that it was is not.
    """
    with serving("--host", "0.0.0.0", "--insecure", "--name", "shop.example", "--data", tmp_path) as (address, process):
        assert process.stdout is not None
        assert process.stdout.readline().startswith("This connection is not encrypted")
        assert [401] * 10 + [429] == [guessed(address, "127.0.0.2") for _ in range(11)]
        assert 401 == guessed(address, "127.0.0.3")
        called = [urllib.request.Request(f"{address}/api/health", headers={"Host": each}) for each in HOSTS]
        assert 200 == urllib.request.urlopen(called[0], timeout=20).status
        with pytest.raises(urllib.error.HTTPError, match="421"):
            urllib.request.urlopen(called[1], timeout=20)


HOSTS = ("shop.example:80", "evil.example")
