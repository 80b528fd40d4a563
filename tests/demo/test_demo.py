"""The example shop, run as a person runs it: a command in a new folder."""

from __future__ import annotations

import hashlib
import json
import os
import signal
import sqlite3
import subprocess
import sys
from collections.abc import Callable
from dataclasses import dataclass
from datetime import UTC, datetime
from pathlib import Path
from typing import Any

import pytest
import rfc8785
from click.testing import CliRunner

from labels import slot_code
from scanflow import cli
from scanflow import demo as example
from scanflow.demo import goods, room
from scanflow.demo.pictures import Photographer
from scanflow.demo.service import NoService, RunningService
from scanflow.demo.steps import Steps, Unexpected
from scanflow.domain.things import Station
from scanflow.domain.verdict import GUARDS, Reason
from scanflow.storage.program import PROGRAM
from scanflow.vision import read
from scanflow.vision.workers import Readers

SECONDS = 240  # a machine that tests share; the day itself takes a fraction of it
ON_PAGES_ONLY = {Reason.RETIRED}
OF_ANY_CARD = {Reason.UNREADABLE, Reason.MANY_CODES, Reason.BAD_CHECK, Reason.UNKNOWN_CODE}


def demo(*arguments: object) -> subprocess.CompletedProcess[str]:
    command = [sys.executable, "-m", "scanflow", "demo", *map(str, arguments)]
    return subprocess.run(command, capture_output=True, text=True, timeout=SECONDS)


KEEPING = """
import json, os, pathlib
from scanflow import cli, demo
tell = demo.tell
def keep(report, say):
    pathlib.Path(os.environ["REPORT"]).write_text(json.dumps(report.as_dict()))
    tell(report, say)
demo.tell = keep
cli.main(["demo"])
"""
"""The command as it stands, which also keeps the report that it would give as JSON."""


@dataclass(frozen=True, slots=True)
class Told:
    """What a day without options told, in the only folder that it made, how it ended, and its report."""

    folder: Path
    text: str
    status: int
    left_running: bool
    report: dict[str, Any]


@pytest.fixture(scope="module")
def told(tmp_path_factory: pytest.TempPathFactory) -> Told:
    """A day takes half a minute, so all look at this one."""
    home = tmp_path_factory.mktemp("demo")
    (home / "tmp").mkdir()
    environment = {"TMPDIR": str(home / "tmp"), "REPORT": str(home / "report.json")}
    process = start("-c", KEEPING, SCANFLOW_DATABASE_URL="sqlite:////nowhere/of-another-shop.db", **environment)
    text, _ = process.communicate(timeout=SECONDS)
    [folder] = (home / "tmp").glob("scanflow-demo-*")
    report = json.loads((home / "report.json").read_text())
    return Told(folder, text, process.returncode, running(process.pid), report)


@pytest.fixture
def folder(told: Told) -> Path:
    return told.folder


@pytest.fixture
def report(told: Told) -> dict[str, Any]:
    return told.report


@pytest.mark.parametrize("station", [Station.BIN, Station.TABLE])
def test_every_refusal_is_met(report: dict[str, Any], station: Station) -> None:
    """Each reason that bin and table have for refusing is met, but for the one that only a page can lead to."""
    wanted = OF_ANY_CARD | {reason for reason, _ in GUARDS[station]}
    met = {refusal["reason"] for refusal in report["refusals"] if refusal["station"] == station}
    assert wanted - ON_PAGES_ONLY == met


def test_refusals_have_their_sentence(report: dict[str, Any]) -> None:
    """The refusal at the heart of the trade names the card, its own order, and where to put the thing."""
    advice = [refusal["advice"] for refusal in report["refusals"] if refusal["reason"] == "other_order"]
    assert ["Another order's. This is C005, wanted by 1042. Put it in basket 2."] == advice


def test_photographs_read_as_their_names_say(report: dict[str, Any]) -> None:
    """Every photograph is an image whose codes are the card texts in its name, or none where nothing can be read."""
    named, found = {}, {}
    for path in map(Path, report["photographs"]):
        texts = path.stem.split("-")[-1]
        named[path.name] = [] if texts == "nothing" else sorted(texts.split("+"))
        found[path.name] = sorted(reading.text for reading in read(path).decoded)
    assert named == found
    assert (True, {"nothing"}) == (len(named) > 50, {name.split("-")[-1][:-4] for name in named if not named[name]})


def test_readings_are_counted_by_decoder(report: dict[str, Any]) -> None:
    """Each card in a photograph is counted once, under the decoders that read it."""
    cards = sum(len(path.split("+")) for path in report["photographs"] if "nothing" not in path)
    assert cards == sum(report["readings"].values())
    assert set() == set(report["readings"]) - {"zxing-cpp", "zbar", "zxing-cpp+zbar"}


def test_ledger_is_whole(folder: Path, report: dict[str, Any]) -> None:
    """Recomputed with RFC 8785 JSON, each entry's hash follows from the one before, and each scan has its entry."""
    with sqlite3.connect(folder / "scanflow.db") as database:
        names = ("seq", "at", "kind", "actor", "data", "hash")
        rows = database.execute(f"SELECT {', '.join(names)} FROM ledger ORDER BY seq").fetchall()
    entries = [dict(zip(names, row, strict=True)) for row in rows]
    previous = ""
    for entry in entries:
        body = {**entry, "data": json.loads(entry["data"])}
        kept = body.pop("hash")
        previous = hashlib.sha256(previous.encode() + rfc8785.dumps(body)).hexdigest()
        assert previous == kept, entry["seq"]
    assert (report["ledger"], report["scans"]) == (len(entries), [entry["kind"] for entry in entries].count("scan"))


def test_the_shop_is_large_and_left_alive(folder: Path, report: dict[str, Any]) -> None:
    """At least 6 sections, 120 things and 25 orders of several days; work of each kind is left for whoever opens it."""
    with sqlite3.connect(folder / "scanflow.db") as database:

        def one(query: str) -> Any:
            return database.execute(query).fetchone()[0]

        assert 8 == one("SELECT count(*) FROM sections")
        assert 8 * (goods.STORED + 2) == one("SELECT count(*) FROM stays WHERE turn = 1")
        assert "S003" == one("SELECT code FROM stays WHERE turn = 2")
        assert 25 == sum(report["orders"].values()) == one("SELECT count(*) FROM orders")
        assert 3 <= one("SELECT count(DISTINCT substr(ordered_at, 1, 10)) FROM orders")
        assert 5 <= one("SELECT count(DISTINCT substr(began, 1, 10)) FROM stays")
        assert "site" == one("SELECT channel FROM listings WHERE ended IS NOT NULL")
        assert 1 == one("SELECT count(*) FROM rounds WHERE state = 'open'")
        assert 1 == one("SELECT count(*) FROM parcels WHERE state = 'open'")
        assert 4 <= one("SELECT count(*) FROM slots WHERE card = 'due'")
    assert {"held", "waiting", "picking", "released", "cancelled"} == set(report["orders"])


def start(*arguments: object, **environment: str) -> subprocess.Popen[str]:
    """Python in a process group of its own, so that whatever it leaves running can be seen."""
    command = [sys.executable, *map(str, arguments)]
    environment = {**os.environ, **environment}
    return subprocess.Popen(command, stdout=subprocess.PIPE, text=True, env=environment, start_new_session=True)


def running(group: int) -> bool:
    """Whether any process of a group still runs."""
    try:
        os.killpg(group, 0)
    except ProcessLookupError:
        return False
    return True


def test_the_day_in_plain_words(told: Told) -> None:
    """Without options it chooses a folder, tells the day, each refusal and the way into the shop, and ends whole."""
    assert (0, False) == (told.status, told.left_running)
    folder, lines = told.folder, told.text.splitlines()
    assert (f"The example shop, in {folder}", f"    {PROGRAM} serve --data {folder}") == (
        lines[0],
        lines[-1],
    )
    assert "    table  C005: NO. Another order's. This is C005, wanted by 1042. Put it in basket 2." in lines
    assert {"photos", "cards", "orders"} < {path.name for path in folder.iterdir()}
    assert "Traceback" not in (folder / "service.log").read_text()


def test_the_day_as_one_document(told: Told, tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    """With --json the report comes as JSON in the folder that was named, and the day tells nothing beside it."""

    def run(data: Path, say: Callable[[str], None]) -> example.Report:
        say("a line of the day")
        return example.Report(**told.report | {"data": str(data)})

    monkeypatch.setattr(example, "run", run)
    done = CliRunner().invoke(cli.main, ["demo", "--data", str(tmp_path / "shop"), "--json"])
    assert (0, "") == (done.exit_code, done.stderr)
    assert told.report | {"data": str(tmp_path / "shop")} == json.loads(done.stdout)


def test_a_day_that_is_stopped_leaves_nothing_running(tmp_path: Path) -> None:
    """Told to end while the service runs, it ends the service and its readers too."""
    process = start("-m", "scanflow", "demo", "--data", tmp_path / "shop")
    assert process.stdout is not None
    seen = next(line for line in process.stdout if "    shelf" in line)
    process.send_signal(signal.SIGTERM)
    process.communicate(timeout=SECONDS)
    assert (True, 1, False) == ("S015" in seen, process.returncode, running(process.pid))


def test_a_folder_in_use_is_refused(tmp_path: Path) -> None:
    """A folder that holds something is left as it is; status 1 and a sentence say so."""
    (tmp_path / "letter.txt").write_text("mine")
    done = demo("--data", tmp_path)
    assert (1, "") == (done.returncode, done.stdout)
    assert f"Error: {tmp_path} is not empty. Choose an empty folder or a new one for the example shop.\n" == done.stderr
    assert [tmp_path / "letter.txt"] == list(tmp_path.iterdir())


def test_json_and_serve_are_not_for_one_run(tmp_path: Path) -> None:
    """A document that ends and a service that stays can't both be asked for."""
    done = demo("--data", tmp_path / "shop", "--json", "--serve")
    assert (2, False) == (done.returncode, (tmp_path / "shop").exists())


def test_an_unexpected_verdict_stops_the_day(tmp_path: Path) -> None:
    """A step that comes out differently says what was expected and what came."""
    room.make(tmp_path, datetime(2026, 11, 25, 12, tzinfo=UTC))
    with RunningService(tmp_path) as service, Readers(1) as readers:
        steps = Steps(service, Photographer({}, tmp_path), readers, lambda line: None)
        text = slot_code.card_text("S003")
        with pytest.raises(Unexpected, match="table S0036: expected accepted, got no_parcel: No parcel is open"):
            steps.beep("table", text)
        with pytest.raises(Unexpected, match="expected other_order, got no_parcel"):
            steps.beep("table", text, want="other_order")
        with pytest.raises(Unexpected, match="POST /api/stays: expected taken, got 422"):
            steps.call("POST", "/api/stays", {}, want="taken")


def test_a_service_that_does_not_start_is_told(tmp_path: Path) -> None:
    """Where no database can be made, the reason is in the message."""
    (tmp_path / "scanflow.db").mkdir()
    with (
        pytest.raises(NoService, match=r"(?s)`scanflow token` failed: .*The shop's data can't be reached"),
        RunningService(tmp_path),
    ):
        pass
