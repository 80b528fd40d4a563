"""The real capture process, with a camera that breaks: `broken_camera.py STATE SCRIPT SOURCE PACE`.

It is no hardware. SCRIPT says for each opening how many frames it gives and what then: `3-freeze,absent,5-gone`.
`same` is a driver that gives one picture over and over; the file STATE counts the openings.
"""

import sys
import time
from pathlib import Path
from typing import Any

import cv2
import filmed
import numpy as np

from scanflow.vision.camera import capture


class Breaking:
    """Stands in for OpenCV's VideoCapture."""

    def __init__(self, _: int) -> None:
        state, script = Path(sys.argv[1]), sys.argv[2].split(",")
        opened = int(state.read_text()) if state.exists() else 0
        state.write_text(str(opened + 1))
        frames, _, self._then = script[min(opened, len(script) - 1)].rpartition("-")
        self._left = int(frames or 0)
        self._card = filmed.face("D002")

    def isOpened(self) -> bool:
        return self._then != "absent"

    def set(self, *_: Any) -> bool:
        return False

    def get(self, _: int) -> float:
        return 0.0

    def read(self) -> tuple[bool, Any]:
        time.sleep(1 / filmed.RATE)
        self._left -= self._then != "same" or self._left > 1
        if self._left < 0 and self._then == "freeze":
            time.sleep(3600)
        levels = filmed.light(self._card, self._left)
        return self._left >= 0, cv2.cvtColor((255 * levels).astype(np.uint8), cv2.COLOR_GRAY2BGR)


cv2.VideoCapture = Breaking
sys.exit(capture.main(*sys.argv[3:]))
