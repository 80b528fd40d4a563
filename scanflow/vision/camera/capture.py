"""The process that holds a camera: ``python -m scanflow.vision.camera.capture SOURCE PACE``, started by ``camera``.

SOURCE is a camera's number or a film's file. PACE is ``live`` for a camera; a film is played at its own pace with
``played``, or as fast as its frames are taken with ``every``. For each frame it sends two messages, as `worker` frames
them: a JSON object and the picture as JPEG. ``at`` is in milliseconds, by the system's steady clock or by the film's
rate; ``dark`` says that there is no light to see anything by. Its end says the rest: ENDED, ABSENT or GONE. It also
ends, even while the driver is frozen, when its input does: whoever started it is no more.
"""

from __future__ import annotations

import json
import os
import signal
import sys
import threading
import time
from collections.abc import Iterator
from pathlib import Path
from typing import Any

os.environ.setdefault("OPENCV_LOG_LEVEL", "SILENT")  # before OpenCV is loaded: we say ourselves what is absent

import cv2
import numpy as np
from numpy.typing import NDArray

from scanflow.vision.worker import send

ENDED, ABSENT, GONE = 0, 3, 4
"""Exit status: the film is over; it can't be opened; it was there and gives no frame any more."""

LIVE, PLAYED, EVERY = "live", "played", "every"

_SIZE = (1280, 720)
"""Pixels that a camera is asked for; it gives what it can."""
_QUALITY = 90
_FILM_RATE = 30.0
"""Frames a second of a film that doesn't say."""
_DARK_MEAN, _DARK_SPREAD = 40.0, 24.0
"""Grey levels: below both nothing is lit, bars not even by a screen."""


def is_dark(picture: NDArray[np.uint8]) -> bool:
    """Whether a picture is dark from end to end: mean level and contrast, between 1 % and 99 % of its pixels."""
    some = picture[::8, ::8]
    low, high = np.percentile(some, (1, 99))
    return bool(some.mean() < _DARK_MEAN and high - low < _DARK_SPREAD)


def main(source: str, pace: str) -> int:
    """Until the end of film or camera; the exit status."""
    answers = os.fdopen(os.dup(1), "wb")
    os.dup2(2, 1)  # whatever a driver prints must not mix with the frames
    signal.signal(signal.SIGINT, signal.SIG_IGN)  # Ctrl+C is for the parent, which then ends us
    threading.Thread(target=_end_with_parent, daemon=True).start()
    camera = _opened(source, pace)
    if not camera.isOpened():
        return ABSENT
    try:
        for at, picture in _frames(camera, pace):
            good, jpeg = cv2.imencode(".jpg", picture, (cv2.IMWRITE_JPEG_QUALITY, _QUALITY))
            if good:
                send(answers, json.dumps({"at": at, "dark": is_dark(picture)}).encode())
                send(answers, jpeg.tobytes())
    except OSError:  # nobody takes frames any more
        return ENDED
    return GONE if pace == LIVE else ENDED


def _end_with_parent() -> None:
    while os.read(0, 1):  # `sys.stdin` would be locked by this thread when the process ends by itself
        pass
    os._exit(ENDED)


def _opened(source: str, pace: str) -> Any:
    if pace != LIVE:
        return cv2.VideoCapture(str(Path(source)))
    camera = cv2.VideoCapture(int(source))
    camera.set(cv2.CAP_PROP_FRAME_WIDTH, _SIZE[0])
    camera.set(cv2.CAP_PROP_FRAME_HEIGHT, _SIZE[1])
    return camera


def _frames(camera: Any, pace: str) -> Iterator[tuple[float, NDArray[np.uint8]]]:
    """Each frame and its time, until there is none."""
    step = 1000 / (camera.get(cv2.CAP_PROP_FPS) or _FILM_RATE)
    begun, number = time.monotonic(), 0
    while True:
        good, picture = camera.read()
        if not good:
            return
        if pace == PLAYED:
            time.sleep(max(0.0, begun + number * step / 1000 - time.monotonic()))
        yield (time.monotonic() * 1000 if pace == LIVE else number * step), picture
        number += 1


if __name__ == "__main__":
    sys.exit(main(*sys.argv[1:]))
