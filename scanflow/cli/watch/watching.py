"""What `scanflow watch` does: frames are looked at, scans are sent one at a time, verdicts are told and shown."""

from __future__ import annotations

import contextlib
import json
import signal
import sys
import threading
import time
from typing import Any
from uuid import uuid4

import click

from scanflow.cli.serve import listening_at
from scanflow.cli.watch.sending import NoAnswer, ServiceAnswer, ServiceClient, ask
from scanflow.vision import ImageError, PictureReadings
from scanflow.vision.camera.glances import Glances, ours
from scanflow.vision.camera.live import Camera, CameraFrame, CameraTrouble, NoFilm
from scanflow.vision.workers import Readers
from scanflow.web.watch_page import Watched, serving

READY = "Hold a card up."
MANY = "More than one card is in view. Show one at a time."
DARK = "It is too dark to see anything. Make light, or uncover the lens."
DARK_MS = 2000.0
"""So long it must be dark before it is said: a hand may pass the lens."""
GRACE = 3.0
"""Seconds for a scan to be answered when the program is told to end."""
BETWEEN_BELLS = 0.25


def run(service: ServiceClient, spot: dict[str, str], camera: Camera, *, page: int = 0, as_json: bool = False) -> int:
    """Until a film is over or Ctrl+C; the exit status."""
    _greet(service, spot)
    watched = Watched(spot["station"], hint="The camera is started.")
    sender = Sender(service, spot, watched, as_json=as_json)
    with contextlib.ExitStack() as stack:
        stack.callback(signal.signal, signal.SIGTERM, signal.signal(signal.SIGTERM, signal.default_int_handler))
        address = stack.enter_context(serving(watched, stack.enter_context(listening_at("127.0.0.1", page, "--page"))))
        say(f"Watching at the {spot['station']}. The picture is at {address}, stop with Ctrl+C.")
        stack.callback(sender.end)
        readers = stack.enter_context(Readers(1, seconds=5.0))
        try:
            readers.warm()
            watching = Watching(readers, watched, sender)
            for each in camera.frames():
                watching.see(each)
                if camera.every:
                    sender.wait()
            sender.wait()
        except KeyboardInterrupt:
            say("")
        except NoFilm as error:
            raise click.ClickException(str(error)) from error
    return sender.status


def say(words: str) -> None:
    """What is no scan, for the person at the terminal."""
    click.echo(words, err=True)


def _greet(service: ServiceClient, spot: dict[str, str]) -> None:
    """An error in one line where the service refuses token or round; a word where there is no service yet."""
    path = f"/api/rounds/{spot['round']}" if "round" in spot else "/api/slots?limit=1"
    try:
        reply = service.call("GET", path)
    except NoAnswer as error:
        say(f"There is no answer from {service.url} ({error}). Scans wait until there is.")
    else:
        if reply.status != 200:
            raise click.ClickException(reply.detail)


class Watching:
    """Looks at frames, says what is in their way, and hands on what they scan."""

    def __init__(self, readers: Readers, watched: Watched, sender: Sender) -> None:
        self._readers, self._watched, self._sender = readers, watched, sender
        self._glances = Glances()
        self._trouble = ""
        self._light: float | None = None  # when there was some last
        self._dark = False

    def see(self, each: CameraFrame | CameraTrouble) -> None:
        """A frame, or why there is none."""
        if isinstance(each, CameraTrouble):
            self._watched.jpeg = b""
            self._light = None  # the first pictures of a camera that was opened again may be black
            self._say(each.words)
            return
        try:
            picture = self._readers.glance(each.jpeg)
        except ImageError as error:
            self._say(str(error))
            return
        if self._trouble:
            say("There is a picture again.")
            self._trouble = ""
        self._light_of(each)
        self._look(each, picture)

    def _say(self, words: str) -> None:
        """Each trouble once, for as long as it lasts."""
        self._watched.hint = words
        if words != self._trouble:
            say(words)
        self._trouble = words

    def _light_of(self, frame: CameraFrame) -> None:
        if not frame.dark or self._light is None:
            self._light, self._dark = frame.at, self._dark and frame.dark
        elif not self._dark and frame.at - self._light > DARK_MS:
            self._dark = True
            say(DARK)

    def _look(self, frame: CameraFrame, picture: PictureReadings) -> None:
        read = [(one.text or "", one.corners) for one in picture.decoded]
        texts = ours(text for text, _ in read)
        text = self._glances.take(texts, frame.at, shut=self._sender.busy)
        if text is not None:
            self._sender.send(text)

        def kind(text: str) -> str:
            return "other" if text not in texts else "scanned" if self._glances.scanned(text) else "seen"

        watched = self._watched
        watched.outlines = [{"text": text, "corners": corners, "kind": kind(text)} for text, corners in read]
        watched.jpeg, watched.size = frame.jpeg, (picture.width, picture.height)
        watched.hint = MANY if len(texts) > 1 else DARK if self._dark else READY


class Sender:
    """Sends one scan at a time, beside the camera's work, and tells its verdict."""

    def __init__(self, service: ServiceClient, spot: dict[str, str], watched: Watched, *, as_json: bool) -> None:
        self._service, self._spot, self._watched, self._as_json = service, spot, watched, as_json
        self._stop = threading.Event()
        self._thread: threading.Thread | None = None
        self._open: dict[str, Any] | None = None  # the scan that has no answer yet
        self.status = 0

    @property
    def busy(self) -> bool:
        """Whether a scan has no answer yet."""
        return self._open is not None

    def send(self, text: str) -> None:
        """Begin to send a scan of this text; not while busy."""
        self._open = {**self._spot, "key": uuid4().hex, "text": text, "via": "camera"}
        self._thread = threading.Thread(target=self._send, args=(self._open,), daemon=True)
        self._thread.start()

    def wait(self) -> None:
        """Until the last scan is answered."""
        if self._thread is not None:
            self._thread.join()

    def end(self) -> None:
        """Give up; a scan without an answer is told."""
        self._stop.set()
        if self._thread is not None:
            self._thread.join(GRACE)
        if (scan := self._open) is not None:
            self._tell(scan, None)

    def _send(self, scan: dict[str, Any]) -> None:
        reply = ask(self._service, scan, self._waits, self._stop)
        if reply is not None:
            self._tell(scan, reply)
            self._open = None
            _ring(self._accepted(reply))

    def _waits(self, words: str) -> None:
        if words and words != self._watched.waits:
            say(words)
        self._watched.waits = words

    @staticmethod
    def _accepted(reply: ServiceAnswer | None) -> bool:
        return reply is not None and reply.status == 200 and reply.body["verdict"] == "accepted"

    def _tell(self, scan: dict[str, Any], reply: ServiceAnswer | None) -> None:
        judged = reply.body if reply is not None and reply.status == 200 else None
        error = None if judged else reply.detail if reply else "No answer came. Scan it again."
        if not self._accepted(reply):
            self.status = 1
        if self._as_json:
            click.echo(json.dumps({"text": scan["text"], "key": scan["key"], "error": error, **(judged or {})}))
        else:
            click.echo(f"{scan['text']}: {in_words(judged) if judged else f'not recorded. {error}'}")
        sys.stdout.flush()
        if judged:
            self._show(judged)

    def _show(self, judged: dict[str, Any]) -> None:
        """The verdict on the page, with the picture of its thing, which the page can't fetch for itself."""
        thing = b""
        if judged["photo"]:
            with contextlib.suppress(NoAnswer):
                thing = self._service.picture(f"{judged['photo']}&size=small")
        self._watched.thing = thing
        number = self._watched.answers + 1
        self._watched.answer = {**judged, "photo": f"/thing?number={number}" if thing else None}
        self._watched.answers = number


def in_words(judged: dict[str, Any]) -> str:
    """A verdict in one line."""
    if judged["verdict"] == "refused":
        return f"NO. {judged['advice']}"
    return f"{'yes' if judged['changed'] else 'yes, as before'}. {judged['advice']}"


def _ring(good: bool) -> None:
    """One bell for yes, three for no; terminals take several at once for one."""
    if not sys.stderr.isatty():
        return
    for number in range(1 if good else 3):
        time.sleep(BETWEEN_BELLS if number else 0)
        sys.stderr.write("\a")
        sys.stderr.flush()
