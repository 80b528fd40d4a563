"""Films of a card that is held before a camera, as Motion JPEG: one JPEG after another."""

from __future__ import annotations

import io
from collections.abc import Callable, Iterable
from pathlib import Path

import cv2
import numpy as np
from numpy.typing import NDArray
from PIL import Image

from labels import draw, sheet
from labels.card import CardDesign
from labels.paper import COLOURS

SIZE = (640, 480)
RATE = 30
"""Frames a second, at which Chromium plays such a file, over and over."""

Frame = NDArray[np.float32]
"""Light from 0 to 1, (height, width)."""

Seen = Callable[[Frame | None, int], Frame]
"""What the camera sees of a card, or of nothing, at the frame of this number."""

EXPOSURE = 1 / 40
"""Seconds, indoors."""


def face(code: str) -> Frame:
    """A printed card of 62 mm x 38 mm with its table around it, 6 pixels a mm."""
    layout = sheet.label_layout((68, 44), "1x1", (62, 38), (3, 3), (62, 38), margin=0.1)
    page = sheet.pages([sheet.slot_face(code, CardDesign("Derailleurs", COLOURS["yellow"]))], layout)[0]
    picture = Image.open(io.BytesIO(draw.png(page, title=code, dpi=152.4))).convert("L")
    return np.asarray(picture, np.float32) / 255


def held(card: Frame | None, across: float = 0.0, down: float = 0.0, turn: float = 0.0) -> Frame:
    """The card's bars in the middle of the picture, moved by so many pixels and turned by so many degrees."""
    width, height = SIZE
    behind = np.linspace(0.25, 0.4, width, dtype=np.float32)[None, :].repeat(height, 0)
    if card is None:
        return behind
    high, long = card.shape
    move = cv2.getRotationMatrix2D((long / 2, high / 2), turn, 1.0)
    move[:, 2] += (width / 2 + across - long / 2, height / 2 + 55 + down - high / 2)
    where = cv2.warpAffine(np.ones_like(card), move, SIZE)
    return np.where(where > 0.5, cv2.warpAffine(card, move, SIZE), behind).astype(np.float32)


def _noisy(levels: Frame, noise: float, number: int) -> Frame:
    chance = np.random.default_rng(number)
    return np.clip(levels + chance.normal(0, noise, levels.shape), 0, 1).astype(np.float32)


def light(card: Frame | None, number: int) -> Frame:
    """By a window: bright, the paper nearly white out."""
    return _noisy(0.15 + 0.95 * held(card, across=3 * np.sin(number / 9)), 0.01, number)


def dark(card: Frame | None, number: int) -> Frame:
    """Between the racks in the evening: an eighth of the light, and the noise of a sensor that makes the most of it."""
    return _noisy(0.02 + 0.14 * held(card, across=3 * np.sin(number / 9)), 0.012, number)


def motion(card: Frame | None, number: int) -> Frame:
    """In a shaking hand: a tremor of 7 Hz on a slow sway, smeared by how far it goes while the shutter is open."""
    steps = [number / RATE + part * EXPOSURE for part in np.linspace(0, 1, 7)]
    places = [(9 * np.sin(44 * t) + 25 * np.sin(2 * t), 12 * np.sin(37 * t), 4 * np.sin(3 * t)) for t in steps]
    return _noisy(0.1 + 0.8 * np.mean([held(card, *place) for place in places], axis=0), 0.02, number)


def film(path: Path, seen: Seen, cards: Iterable[Frame | None]) -> Path:
    """A file of what is seen of these cards, a frame each."""
    with path.open("wb") as out:
        for number, card in enumerate(cards):
            levels = Image.fromarray((255 * seen(card, number)).astype(np.uint8)).convert("RGB")
            levels.save(out, "JPEG", quality=85)
    return path


def avi(path: Path, seen: Seen, cards: Iterable[Frame | None]) -> Path:
    """The same in a container that says its rate, as OpenCV writes and plays it."""
    out = cv2.VideoWriter(str(path), cv2.VideoWriter.fourcc(*"MJPG"), RATE, SIZE)
    for number, card in enumerate(cards):
        out.write(cv2.cvtColor((255 * seen(card, number)).astype(np.uint8), cv2.COLOR_GRAY2BGR))
    out.release()
    return path
