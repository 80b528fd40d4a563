"""Frames per second and time to the first read of a live camera: `python tests/bench camera`.

A printed card is held up in films of three kinds, the same that the tests play: by day, in the dark, in a shaking hand.
`zxing-cpp` is OpenCV's capture and the bare decoder in one process. `watch` is the loop of `scanflow watch`: a process
that captures, one that decodes, and two looks that agree for a scan. Both take each frame as fast as
they can, warm, from the first frame on. `browser` is a station's page in Chromium, which plays the film as its camera
at its pace and asks the service for each look: a look at most every 125 ms, so a scan takes 125 ms at least.
"""

from __future__ import annotations

from collections.abc import Callable, Iterable
from dataclasses import dataclass
from pathlib import Path
from statistics import median
from tempfile import TemporaryDirectory
from time import perf_counter

import cv2
import filmed
import zxingcpp
from actions_bench import at_a_page
from read_bench import FORMATS

from labels import slot_code
from scanflow.cli.watch.watching import Watching
from scanflow.vision.camera.live import Camera
from scanflow.vision.workers import Readers
from scanflow.web.watch_page import Watched

CODE = "D001"
TEXT = slot_code.card_text(CODE)
FRAMES = 120
ROUNDS = 3
BROWSER_MS = 8000
KINDS = {"light": filmed.light, "dark": filmed.dark, "motion": filmed.motion}

MARKS = """
window.looks = [];
window.scans = [];
const ask = window.fetch;
window.fetch = async (path, ...rest) => {
  const begun = performance.now();
  if (path === "/api/scans") scans.push(begun);
  const reply = await ask(path, ...rest);
  if (path === "/api/decode") {
    const ended = performance.now();
    looks.push([begun, ended, (await reply.clone().json()).texts.length]);
  }
  return reply;
};
document.addEventListener("playing", () => { window.begun ??= performance.now(); }, true);
"""


@dataclass(slots=True)
class Measured:
    """Looks a second, the milliseconds of one, and from the beginning to the first read and to a scan (None: none)."""

    rate: float
    look: float
    first: float | None = None
    scan: float | None = None


def bare(film: Path) -> Measured:
    """OpenCV and zxing-cpp alone: one read is all there is."""
    camera = cv2.VideoCapture(str(film))
    good, picture = camera.read()
    begun, count, first = perf_counter(), 0, None
    while good:
        grey = cv2.cvtColor(picture, cv2.COLOR_BGR2GRAY)
        read = zxingcpp.read_barcodes(grey, formats=FORMATS, text_mode=zxingcpp.TextMode.Plain)
        if first is None and TEXT in [each.text for each in read]:
            first = 1000 * (perf_counter() - begun)
        count += 1
        good, picture = camera.read()
    took = perf_counter() - begun
    return Measured(count / took, 1000 * took / count, first)


class Heard:
    """Takes scans as the sender does, and the time."""

    busy = False

    def __init__(self) -> None:
        self.at: float | None = None

    def send(self, text: str) -> None:
        self.at = self.at or perf_counter()


def by_watch(film: Path, readers: Readers) -> Measured:
    """The loop of `scanflow watch`, without a service."""
    watched, heard = Watched("tray"), Heard()
    watching = Watching(readers, watched, heard)  # type: ignore[arg-type]
    begun, count, first = 0.0, 0, None
    with Camera(film, every=True) as camera:
        for each in camera.frames():
            begun = begun or perf_counter()
            watching.see(each)
            count += 1
            if first is None and watched.outlines:
                first = 1000 * (perf_counter() - begun)
    took = perf_counter() - begun
    return Measured(count / took, 1000 * took / count, first, heard.at and 1000 * (heard.at - begun))


def in_browser(film: Path) -> Measured:
    """A station's page: looks by way of the service."""
    fake = ("--use-fake-device-for-media-stream", "--use-fake-ui-for-media-stream")
    with at_a_page(*fake, f"--use-file-for-fake-video-capture={film}") as (person, _, _):
        page = person.page
        page.add_init_script(MARKS)
        page.goto("/tray")
        page.get_by_role("button", name="Camera").click()
        page.wait_for_selector("video")
        page.wait_for_timeout(BROWSER_MS)
        looks, scans, begun = page.evaluate("[looks, scans, begun]")
    first = next((ended - begun for _, ended, read in looks if read), None)
    spent = (looks[-1][1] - looks[0][0]) / 1000
    return Measured(
        len(looks) / spent,
        median(ended - begun for begun, ended, _ in looks),
        first,
        scans[0] - begun if scans else None,
    )


def middle(measure: Callable[[], Measured]) -> Measured:
    """The medians of a few."""
    all_ = [measure() for _ in range(ROUNDS)]

    def of(values: Iterable[float | None]) -> float | None:
        return median(known) if (known := [each for each in values if each is not None]) else None

    rate, look = (median(getattr(each, name) for each in all_) for name in ("rate", "look"))
    return Measured(rate, look, of(each.first for each in all_), of(each.scan for each in all_))


def row(kind: str, name: str, one: Measured, beside: Measured) -> str:
    def ms(value: float | None) -> str:
        return "none" if value is None else f"{value:.0f}"

    ratio = one.first / beside.first if one.first and beside.first else float("nan")
    rates = f"{one.rate:8.1f} {one.rate / beside.rate:6.2f} {one.look:8.1f} {one.look / beside.look:6.2f}"
    return f"{kind:7} {name:10} {rates} {ms(one.first):>14} {ratio:6.1f} {ms(one.scan):>8}"


def main() -> None:
    card = filmed.face(CODE)
    print(f"{FRAMES} frames of {filmed.SIZE[0]} x {filmed.SIZE[1]} pixels; ratios to bare zxing-cpp on the same frames")
    print("film    by          looks/s  ratio  look ms  ratio  first read ms  ratio  scan ms")
    with TemporaryDirectory() as folder, Readers(1) as readers:
        readers.warm()
        for kind, seen in KINDS.items():
            film = filmed.avi(Path(folder, f"{kind}.avi"), seen, [card] * FRAMES)
            alone = middle(lambda film=film: bare(film))  # type: ignore[misc]
            print(row(kind, "zxing-cpp", alone, alone), flush=True)
            watched = middle(lambda film=film: by_watch(film, readers))  # type: ignore[misc]
            print(row(kind, "watch", watched, alone), flush=True)
            played = filmed.film(Path(folder, f"{kind}.mjpeg"), seen, [card] * FRAMES)
            print(row(kind, "browser", in_browser(played), alone), flush=True)
    print("goal: watch keeps up with a camera of 30 frames a second")


if __name__ == "__main__":
    main()
