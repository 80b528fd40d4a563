"""`scanflow watch` at a running service: films of printed cards, held up, taken away, held up again."""

from __future__ import annotations

import json
import os
import re
import select
import signal
import subprocess
import sys
from collections.abc import Callable, Iterable, Iterator
from dataclasses import dataclass, field, replace
from pathlib import Path
from typing import Any

import filmed
import numpy as np
import psutil
import pytest
from click.testing import CliRunner
from clients import SQLITE_ONLY, new_token
from furnished import furnish
from listening import listening
from paperwork import jpeg
from started import serving

from labels import slot_code
from scanflow.cli import main
from scanflow.cli.opening import data_folder
from scanflow.cli.watch import watching
from scanflow.cli.watch.sending import NoAnswer, ServiceClient
from scanflow.domain.access import Role
from scanflow.domain.life import CardState
from scanflow.domain.things import Scan, Slot, Station, Stay
from scanflow.shop import Shop
from scanflow.vision import photographs
from scanflow.vision.camera.live import Camera, CameraTrouble
from scanflow.vision.workers import Readers
from scanflow.web import create_app
from scanflow.web.watch_page import Watched
from scanflow.workflow.stock import photos

pytestmark = SQLITE_ONLY

BROKEN = Path(__file__).parents[2] / "vision/camera/broken_camera.py"


@dataclass
class Served:
    """A shop, the address of its service, a helper's token, and how many answers to scans get lost on their way."""

    shop: Shop
    address: str
    token: str
    lost: list[int] = field(default_factory=list)

    @property
    def service(self) -> ServiceClient:
        return ServiceClient(self.address, self.token)

    def scans(self) -> list[Scan]:
        with self.shop.looking() as unit:
            return unit.find(Scan, station=Station.TRAY)

    def due(self) -> str:
        """The slot code of a card that is due back in the tray."""
        with self.shop.looking() as unit:
            return unit.find(Slot, card=CardState.DUE)[0].code


@pytest.fixture
def served(shop: Shop) -> Iterator[Served]:
    furnish(shop, 25)
    app = create_app(shop)
    lost: list[int] = []

    def service(environ: dict[str, Any], start_response: Callable[..., Any]) -> Iterable[bytes]:
        if not lost or environ["PATH_INFO"] != "/api/scans":
            return app(environ, start_response)
        b"".join(app(environ, lambda *_: lambda _: None))  # it is done, and nobody hears of it
        start_response(f"{lost.pop()} Lost", [("Content-Length", "0")])
        return []

    with listening(service, shop, threads=4) as server:
        yield Served(shop, f"http://127.0.0.1:{server.effective_port}", new_token(shop, "camera", Role.HELPER), lost)


def film(path: Path, *shown: tuple[str | None, float], seen: filmed.Seen = filmed.light) -> Path:
    """Cards of these slots, or none, each for so many seconds; a few frames of each over and over."""
    frames: list[filmed.Frame] = []
    for code, seconds in shown:
        card = filmed.face(code) if code else None
        shots = [seen(card, number) for number in range(8)]
        frames += [shots[number % 8] for number in range(round(seconds * filmed.RATE))]
    return filmed.avi(path, lambda frame, _: np.asarray(frame), frames)


def command(served: Served, *arguments: object) -> list[str]:
    return [sys.executable, "-m", "scanflow", "watch", "--url", served.address, "--page", "0", *map(str, arguments)]


def watch(
    served: Served, film: Path, *arguments: object, trusts: Path | None = None
) -> tuple[int, list[dict[str, Any]], str]:
    """Exit status, scans and messages of a run over each frame of a film; it trusts the authority of a file."""
    trust = {"SSL_CERT_FILE": str(trusts)} if trusts else {}
    done = subprocess.run(
        command(served, "--video", film, "--fast", "--json", *arguments),
        env=os.environ | {"SCANFLOW_TOKEN": served.token} | trust,
        capture_output=True,
        text=True,
        timeout=120,
    )
    return done.returncode, [json.loads(line) for line in done.stdout.splitlines()], done.stderr


def test_a_card_is_scanned_once_each_time_it_is_held_up(served: Served, tmp_path: Path) -> None:
    """Held up, taken away, held up again: two scans, in the ledger as the camera's."""
    code = served.due()
    seen = film(tmp_path / "film.avi", (None, 0.2), (code, 0.5), (None, 2), (code, 0.5))
    status, scans, told = watch(served, seen, "--station", "tray")

    assert (0, [code] * 2, [True, False]) == (status, [each["code"] for each in scans], [s["changed"] for s in scans])
    assert {each["key"] for each in scans} == {each.key for each in served.scans()}
    assert re.search(r"The picture is at http://127\.0\.0\.1:\d+/", told)


def test_a_wrong_card_is_refused(served: Served, tmp_path: Path) -> None:
    """Status 1, and in the terminal a NO with what to do."""
    seen = film(tmp_path / "film.avi", ("D002", 0.5), seen=filmed.motion)
    token = tmp_path / "token"
    token.write_text(served.token + "\n")
    done = subprocess.run(
        command(served, "--video", seen, "--fast", "--station", "tray", "--token-file", token),
        capture_output=True,
        text=True,
    )
    text = slot_code.card_text("D002")

    assert (1, True) == (done.returncode, done.stdout.startswith(f"{text}: NO. D002 is still in stock, "))


def test_the_shops_own_authority_is_trusted(
    served: Served, database_url: str, tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    """Where SSL_CERT_FILE names it a scan goes out by HTTPS and is recorded; a program without it is told why not."""
    monkeypatch.setenv("XDG_DATA_HOME", str(tmp_path))
    authority = data_folder(None) / "https" / "authority.pem"
    code = served.due()
    seen = film(tmp_path / "film.avi", (code, 0.5))
    with serving("--https", "--database", database_url) as (address, _):
        secure = replace(served, address=address.replace("http:", "https:"))
        status, scans, told = watch(secure, seen, "--station", "tray", trusts=authority)
        assert (0, [code], [code]) == (status, [each["code"] for each in scans], [each.code for each in served.scans()])
        assert "There is no answer" not in told
        with pytest.raises(NoAnswer, match="CERTIFICATE_VERIFY_FAILED"):
            secure.service.call("GET", "/api/slots")


def test_an_answer_that_is_lost_is_asked_for_again(served: Served, tmp_path: Path) -> None:
    """With the same key: what was recorded is answered as a replay, and is one scan."""
    seen = film(tmp_path / "film.avi", (served.due(), 0.5), seen=filmed.dark)
    served.lost.append(503)
    status, scans, told = watch(served, seen, "--station", "tray")

    assert (0, [True], 1) == (status, [each["replayed"] for each in scans], len(served.scans()))
    assert "Not recorded yet: " in told


def test_a_dark_room_is_told_once(served: Served, tmp_path: Path) -> None:
    """After it has lasted; a hand over the lens is not a dark room."""

    def unlit(card: filmed.Frame | None, number: int) -> filmed.Frame:
        return 0.05 * filmed.light(card, number)

    frames = film(tmp_path / "dark.avi", (None, 3), seen=unlit), film(tmp_path / "short.avi", (None, 1), seen=unlit)
    assert [1, 0] == [watch(served, each, "--station", "tray")[2].count(watching.DARK) for each in frames]


@pytest.mark.parametrize(
    ("arguments", "status"),
    [
        ("--station bin", 2),
        ("--station shelf", 2),
        ("--station tray --bin A-1-1", 2),
        ("--station tray --fast", 2),
        ("--station tray --camera 1 --video .", 2),
        ("--station tray --url file:///etc", 2),
        ("--station tray --token-file EMPTY", 2),
        ("--station bin --round none --token-file TOKEN", 1),
        ("--station tray --token-file WRONG", 1),
        ("--station tray --token-file TOKEN --video EMPTY", 1),
    ],
)
def test_what_makes_no_sense_is_refused(served: Served, tmp_path: Path, arguments: str, status: int) -> None:
    """Wrong usage is status 2; a round, token or film that is none is 1, in one line and at once."""
    files = {"EMPTY": "", "WRONG": "wrong", "TOKEN": served.token}
    for name, content in files.items():
        (tmp_path / name).write_text(content)
    words = [str(tmp_path / word) if word in files else word for word in arguments.split()]
    given = words if "--url" in words else ["--url", served.address, *words]
    result = CliRunner().invoke(main, ["watch", "--page", "0", *given], env={"SCANFLOW_TOKEN": None})
    assert (status, False) == (result.exit_code, "Traceback" in result.output), result.output
    assert "Error: " in result.output


def test_ctrl_c_ends_it_cleanly(served: Served, tmp_path: Path) -> None:
    """While its film plays at its own pace: status 0, no word of an error, neither decoder nor camera is left."""
    code = served.due()
    process = subprocess.Popen(
        command(served, "--station", "tray", "--video", film(tmp_path / "film.avi", (code, 20))),
        env=os.environ | {"SCANFLOW_TOKEN": served.token},
        stdout=subprocess.PIPE,
        stderr=subprocess.PIPE,
        text=True,
    )
    assert process.stdout is not None and process.stderr is not None
    assert "Watching" in process.stderr.readline()
    assert f"{slot_code.card_text(code)}: yes." in process.stdout.readline()
    children = psutil.Process(process.pid).children(recursive=True)
    process.send_signal(signal.SIGINT)
    out, told = process.communicate(timeout=30)

    assert (0, "", "") == (process.returncode, out, told.strip())
    assert (2, []) == (len(children), [child for child in children if child.is_running()])  # camera and decoder


def test_a_camera_that_freezes_and_goes_loses_no_card_and_doubles_none(
    served: Served,
    readers: Readers,
    tmp_path: Path,
    monkeypatch: pytest.MonkeyPatch,
    capsys: pytest.CaptureFixture[str],
) -> None:
    """A card that stays before the camera all the while is one scan. (The camera is a stand-in, its process real.)"""
    monkeypatch.setenv("PYTHONPATH", str(Path(filmed.__file__).parent))
    broken = [sys.executable, str(BROKEN), str(tmp_path / "opened"), "8-freeze,8-gone"]
    sender = watching.Sender(served.service, {"station": "tray"}, Watched("tray"), as_json=True)
    watched = watching.Watching(readers, Watched("tray"), sender)
    troubles = 0
    with Camera(0, silent=0.5, pause=0.05, command=broken) as camera:
        for each in camera.frames():
            watched.see(each)
            troubles += isinstance(each, CameraTrouble)
            if troubles == 3:
                break
    sender.end()
    out, told = capsys.readouterr()

    assert ["D002"] == [json.loads(line)["code"] for line in out.splitlines()]
    assert 1 == len(served.scans())
    assert ["gives no new picture", "There is a picture again", "has gone"] == [
        found[0] for found in re.finditer("gives no new picture|There is a picture again|has gone", told)
    ][:3]


@pytest.mark.parametrize(("right", "bells"), [(True, b"\a"), (False, b"\a\a\a")])
def test_bells_and_the_picture_of_the_thing(
    served: Served, monkeypatch: pytest.MonkeyPatch, right: bool, bells: bytes
) -> None:
    """At a terminal one bell is yes and three are no; the page has the verdict, with the picture of its thing."""
    code = served.due() if right else "D002"
    with served.shop.looking() as unit:
        stay = unit.find(Stay, code=code)[-1]
    served.shop.act("owner", lambda unit: photos.keep(unit, stay.id, photographs.photo(served.shop.readers, jpeg())))
    screen, terminal = os.openpty()
    monkeypatch.setattr(sys, "stderr", os.fdopen(terminal, "w"))
    sender = watching.Sender(served.service, {"station": "tray"}, watched := Watched("tray"), as_json=True)
    sender.send(slot_code.card_text(code))
    sender.wait()

    rung = b""
    while len(rung) < len(bells) and select.select([screen], [], [], 20)[0]:  # they are written one by one
        rung += os.read(screen, 100)
    assert bells == rung
    assert watched.answer is not None
    assert (1, None if right else "not_released") == (watched.answers, watched.answer["reason"])
    pictured = "/thing?number=1" if watched.thing else None
    assert (pictured, right or watched.thing.startswith(b"\xff\xd8")) == (watched.answer["photo"], True)
    os.close(screen)


def test_a_scan_without_an_answer_is_told_at_the_end(served: Served, capsys: pytest.CaptureFixture[str]) -> None:
    """Who ends the program while the network is gone is told which card to scan again: status 1."""
    nowhere = ServiceClient("http://127.0.0.1:9", served.token)
    sender = watching.Sender(nowhere, {"station": "tray"}, watched := Watched("tray"), as_json=False)
    sender.send("D0024")
    while not watched.waits:
        assert sender.busy
    sender.end()

    assert ("D0024: not recorded. No answer came. Scan it again.\n", 1) == (capsys.readouterr().out, sender.status)
