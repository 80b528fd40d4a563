"""Frames come from films and cameras, whatever the camera's process does. No camera's hardware is tried here."""

from __future__ import annotations

import io
import os
import subprocess
import sys
from collections.abc import Callable, Iterator
from itertools import islice
from pathlib import Path

import filmed
import numpy as np
import psutil
import pytest
from PIL import Image

from scanflow.vision.camera import capture
from scanflow.vision.camera.live import Camera, CameraFrame, CameraTrouble, NoFilm

BROKEN = str(Path(__file__).with_name("broken_camera.py"))
GONE = CameraTrouble("Camera 0 has gone. Connect it: it is tried again and again.")
FROZEN = CameraTrouble("Camera 0 gives no new picture. It is closed and opened again.")
ABSENT = CameraTrouble("Camera 0 does not open. Connect it, or close what uses it. It is tried again and again.")

Broken = Callable[..., Camera]


@pytest.fixture(autouse=True)
def none_left() -> Iterator[None]:
    """No process of a test is left when it ends."""
    before = set(psutil.Process().children())
    yield
    assert set() == set(psutil.Process().children()) - before


@pytest.fixture
def broken(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> Broken:
    """Makes a camera that breaks as a script says."""
    monkeypatch.setenv("PYTHONPATH", str(Path(filmed.__file__).parent))
    command = [sys.executable, BROKEN, str(tmp_path / "opened")]
    return lambda script: Camera(0, starting=20.0, silent=0.5, pause=0.05, command=[*command, script])


def seen(camera: Camera, count: int) -> list[str | CameraTrouble]:
    """The first events of so many different ones; frames that follow each other are one."""
    events: list[str | CameraTrouble] = []
    with camera:
        for each in camera.frames():
            event = each if isinstance(each, CameraTrouble) else "frames"
            if events[-1:] != [event]:
                events.append(event)
            if len(events) == count:
                break
    return events


@pytest.mark.parametrize("wrong", ["gone", "freeze", "same"])
def test_a_camera_that_breaks_comes_back(broken: Broken, wrong: str) -> None:
    """Unplugged, frozen, or with a driver that gives one picture for ever: it is said, and the camera opened again."""
    trouble = GONE if wrong == "gone" else FROZEN
    assert ["frames", trouble, "frames", GONE] == seen(broken(f"6-{wrong},6-gone"), 4)


def test_a_camera_that_is_absent_is_waited_for(broken: Broken) -> None:
    """It is tried until it is there, and said to be absent each time."""
    events = list(islice(broken("absent,absent,3-gone").frames(), 2))
    assert [ABSENT, ABSENT] == events
    assert ["frames", GONE] == seen(broken("3-gone"), 2)


def test_every_frame_of_a_film(tmp_path: Path) -> None:
    """In order, at the times of the film's rate, as a picture of its size; then the film is over."""
    film = filmed.avi(tmp_path / "film.avi", filmed.light, [None] * 10)
    with Camera(film, every=True) as camera:
        frames = [each for each in camera.frames() if isinstance(each, CameraFrame)]

    assert [round(number * 1000 / filmed.RATE) for number in range(10)] == [round(each.at) for each in frames]
    assert {filmed.SIZE} == {Image.open(io.BytesIO(each.jpeg)).size for each in frames}


def test_a_film_at_its_own_pace(tmp_path: Path) -> None:
    """Who looks slowly gets the newest frame; the last one is never lost."""
    film = filmed.avi(tmp_path / "film.avi", filmed.light, [None] * 12)
    with Camera(film) as camera:
        times = [round(each.at) for each in camera.frames() if isinstance(each, CameraFrame)]
    assert (sorted(times), round(11_000 / filmed.RATE)) == (times, times[-1])


def test_a_film_that_can_not_be_played(tmp_path: Path) -> None:
    """A file that is no film is told, and a source that never gives a frame (a pipe that nobody writes) as well."""
    (tmp_path / "film.avi").write_bytes(b"nothing")
    os.mkfifo(tmp_path / "pipe.avi")
    with Camera(tmp_path / "film.avi") as camera, pytest.raises(NoFilm, match="not be opened"):
        list(camera.frames())
    with Camera(tmp_path / "pipe.avi", starting=3.0) as camera, pytest.raises(NoFilm, match="stands still"):
        list(camera.frames())


def test_a_frozen_process_ends_with_its_parent(tmp_path: Path) -> None:
    """When its input is closed, as the system does for who is killed, it ends even while the driver holds it."""
    path = os.pathsep.join([str(Path(filmed.__file__).parent), str(Path(capture.__file__).parents[3])])
    command = [sys.executable, BROKEN, str(tmp_path / "opened"), "0-freeze", "0", "live"]
    pipes = {"stdin": subprocess.PIPE, "stdout": subprocess.DEVNULL}
    process = subprocess.Popen(command, env=os.environ | {"PYTHONPATH": path}, **pipes)  # type: ignore[call-overload]
    process.stdin.close()
    assert capture.ENDED == process.wait(30)


@pytest.mark.parametrize(
    ("picture", "dark"),
    [
        (np.full((480, 640), 0.02, np.float32), True),
        (np.full((480, 640), 0.9, np.float32), False),
        (filmed.light(None, 0), False),
        (filmed.dark(filmed.face("D001"), 0), False),
    ],
    ids=["covered lens", "white wall", "room by day", "card in the evening"],
)
def test_dark(picture: filmed.Frame, dark: bool) -> None:
    """Dark is what has neither light nor contrast; a card that can be read in the evening is not."""
    assert dark is capture.is_dark((255 * picture).astype(np.uint8))
