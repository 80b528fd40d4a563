"""The service while its storage fails: stations, pages, programs and the log are told what is the matter."""

from __future__ import annotations

import logging
import shutil
from collections.abc import Iterator
from pathlib import Path

import pytest
import small_disk
from calls import Calls
from click.testing import CliRunner
from clients import client_of
from flask.testing import FlaskClient

from labels.slot_code import card_text
from scanflow.cli import main
from scanflow.domain import events
from scanflow.domain.access import Role
from scanflow.domain.things import Slot
from scanflow.house import House, Job, timedelta
from scanflow.shop import Shop
from scanflow.storage.database import Database
from scanflow.storage.writing import failing
from scanflow.vision.workers import Readers
from scanflow.web import create_app, once

FULL = failing.WORDS[failing.FULL]


@pytest.fixture
def kept(tmp_path: Path, sqlite_template: Path, readers: Readers) -> Iterator[Shop]:
    """A shop in a file, where a limit on the process fills its disk."""
    shutil.copy(sqlite_template, tmp_path / "shop.db")
    shop = Shop(Database(f"sqlite:///{tmp_path / 'shop.db'}"), readers)
    yield shop
    shop.database.close()


def signed_in(shop: Shop, client: FlaskClient) -> dict[str, str]:
    """What a form of the owner's pages carries."""
    shop.act("owner", lambda unit: unit.access.set_password("saddle-brown-7"))
    client.post("/login", data={"password": "saddle-brown-7"})
    secret = client.get_cookie("scanflow_session")
    assert secret is not None
    with shop.looking() as unit:
        known = unit.access.visitor("session", secret.value)
    assert known is not None and known.csrf is not None
    return {"csrf": known.csrf}


def test_a_full_disk_is_told_everywhere(
    kept: Shop, caplog: pytest.LogCaptureFixture, monkeypatch: pytest.MonkeyPatch
) -> None:
    """Scans, forms, sign-in and health: 503 with the code or the sentence, one line in the log; then all works again.

    The scan that was not recorded is sent again with its key, and is recorded once.
    """
    monkeypatch.setattr("scanflow.storage.database.PROBED", 0.0)
    app = create_app(kept)
    client, person = client_of(app, kept, Role.OWNER), app.test_client()
    code = Calls(client).section(slots=1)[0]
    form = signed_in(kept, person)
    scan = {"station": "tray", "key": "k1", "text": card_text(code)}
    caplog.clear()
    with small_disk.full(None):
        answers = [client.post("/api/scans", json=scan) for _ in range(3)]
        health = client.get("/api/health")
        page = person.post("/orders/load", data={**form, "channel": "x"})
        changed = person.post("/sections/D/slots", data={**form, "count": "2"})
        enter = app.test_client().post("/login", data={"password": "saddle-brown-7"})
        seen = [person.get("/").status_code, client.get("/api/slots").status_code]
    problem = answers[0].get_json()
    assert 3 * [(503, "10")] == [(each.status_code, each.headers["Retry-After"]) for each in answers]
    assert (failing.FULL, FULL, "application/problem+json") == (
        problem["code"],
        problem["detail"],
        answers[0].mimetype,
    )
    assert (503, failing.FULL, FULL) == (health.status_code, health.get_json()["status"], health.get_json()["detail"])
    for each in (changed, enter):
        assert (503, "10") == (each.status_code, each.headers["Retry-After"])
        assert "The disk of the shop&#39;s data is full" in each.get_data(as_text=True)
    assert ([200, 200], 422) == (seen, page.status_code)
    again = client.post("/api/scans", json=scan)
    assert (200, "ok", False) == (
        again.status_code,
        client.get("/api/health").get_json()["status"],
        again.get_json()["replayed"],
    )
    told = [(each.levelno, each.exc_info) for each in caplog.records if each.name.startswith("scanflow")]
    assert [(logging.ERROR, None), (logging.WARNING, None)] == told


def test_what_was_done_is_not_said_to_have_failed(kept: Shop, monkeypatch: pytest.MonkeyPatch) -> None:
    """The disk fills up between a form's change and keeping its page: the page is shown, the change stands."""
    app = create_app(kept)
    client, person = client_of(app, kept, Role.OWNER), app.test_client()
    Calls(client).section(slots=1)
    form = signed_in(kept, person) | {"key": "form1"}
    answer = once.answer

    def full(shop: Shop, *more: object) -> None:
        with small_disk.full(None):
            answer(shop, *more)  # type: ignore[arg-type]

    monkeypatch.setattr(once, "answer", full)
    said = person.post("/sections/D/slots", data={**form, "count": "2"})
    with kept.looking() as unit:
        slots = len(unit.find(Slot, section="D"))
    assert (303, 3) == (said.status_code, slots)


def test_a_job_of_the_house_tells_in_one_line(kept: Shop, caplog: pytest.LogCaptureFixture) -> None:
    """It could not be done, why, and when it is tried again; no traceback."""

    def work(shop: Shop) -> None:
        with small_disk.full(None):
            shop.act("house", lambda unit: unit.record(events.Changed()))

    caplog.clear()
    job = Job("count", timedelta(hours=1), work)
    House(kept, (job,))._do(job)
    said = [each for each in caplog.records if each.name == "scanflow.house"]
    assert [(f"This could not be done: count. {FULL} It is tried again in 1:00:00.", None)] == [
        (each.getMessage(), each.exc_info) for each in said
    ]


@pytest.mark.parametrize("there", [False, True], ids=["no shop yet", "a shop"])
@pytest.mark.parametrize("how", [failing.FULL, failing.READONLY])
def test_a_start_that_cannot_write(tmp_path: Path, how: str, there: bool) -> None:
    """One line on what is the matter, and status 1."""
    with small_disk.mounted(tmp_path / "disk") as disk:
        if there:
            assert 0 == CliRunner().invoke(main, ["token", "x", "--data", str(disk)]).exit_code
        if how == failing.READONLY:
            small_disk.make_read_only(disk)
            done = CliRunner().invoke(main, ["serve", "--port", "0", "--data", str(disk)])
        else:
            with small_disk.full(disk):
                done = CliRunner().invoke(main, ["serve", "--port", "0", "--data", str(disk)])
    assert (1, f"Error: {failing.WORDS[how]}\n") == (done.exit_code, done.output)


def test_a_command_that_cannot_write(tmp_path: Path) -> None:
    """It ends with the same line, having done nothing."""
    assert 0 == CliRunner().invoke(main, ["token", "x", "--data", str(tmp_path)]).exit_code
    with small_disk.full(None):
        done = CliRunner().invoke(main, ["token", "y", "--data", str(tmp_path)])
    assert (1, f"Error: {FULL}\n") == (done.exit_code, done.output)
