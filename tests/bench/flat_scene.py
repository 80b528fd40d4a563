"""Flat labels of a given size in pixels, at any angle, amid clutter: a picture with its truth for a seed."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass, replace

import cv2
import numpy as np
from numpy.typing import NDArray
from scenes import (
    FONT,
    Array,
    Grey,
    Look,
    Scene,
    Truth,
    bars,
    foreign_code,
    label,
    outer,
    paste,
    photographed,
    some,
    through,
    truth_of,
)

from labels import code128

FINE = 6
WORDS = ["BOX 12", "FRAGILE", "A4", "100 x 70 mm", "SIDE UP", "Nr. 36", "hub", "36 L", "II| |||", "IIII lll"]


@dataclass(frozen=True)
class Flat:
    """What a flat picture is made of.

    `px`: pixels per module, or the least and the most. `tilt`: most degrees either way (180 is any angle), or between
    two. `height`: of the bars in modules. `warp`: most that a corner is off, as a share of the label's length. `blur`:
    sigma of the lens, `disc` its circle of confusion, in px. `motion`: px and degrees. `contrast`: share of the
    difference between paper and ink that is left. `gamma`: of a tone curve after the lens; 1 leaves light as it is.
    `foreign` codes, `stripes` (bars that are no code) and `marks` (texts, edges).
    """

    px: float | tuple[float, float] = 1.0
    labels: int = 80
    tilt: float | tuple[float, float] = 180.0
    size: tuple[int, int] = (4032, 3024)
    height: float = 26.0
    warp: float = 0.012
    blur: float = 0.6
    disc: float = 0.0
    motion: tuple[float, float] = (0.0, 0.0)
    noise: float = 4.0
    quality: int = 90
    contrast: float = 1.0
    gamma: float = 1.0
    foreign: int = 20
    stripes: int = 60
    marks: int = 250


def flat(seed: int, how: Flat, texts: Sequence[str], strangers: Sequence[str] = (), share: float = 0.0) -> Scene:
    """Labels of random `texts`; `share` of them of `strangers` instead. As many as fit when `how.labels` don't."""
    rng = np.random.default_rng([seed, 1])
    picture = background(rng, how)
    most = how.px[1] if isinstance(how.px, tuple) else how.px
    places = _places(rng, how, most)
    foreign = min(how.foreign, len(places) // 4)
    count = min(how.labels, len(places) - foreign)
    others = int(np.count_nonzero(rng.random(count) < share))
    chosen = [(text, "card") for text in some(rng, texts, count - others)]
    chosen += [(text, "stranger") for text in some(rng, strangers, others)]
    truths = [_card(picture, rng, how, text, kind, at) for (text, kind), at in zip(chosen, places, strict=False)]
    truths += [_foreign(picture, rng, how, most, at) for at in places[count : count + foreign]]
    if how.gamma != 1:
        picture = 255 * (np.clip(picture, 0, 255) / 255) ** np.float32(how.gamma)
        encode = np.float32(1 / how.gamma)
        picture = cv2.GaussianBlur(picture, (0, 0), how.blur) if how.blur else picture
        picture, how = 255 * (picture / 255) ** encode, replace(how, blur=0.0)
    return Scene(photographed(picture, rng, how.blur, how.disc, how.motion, how.noise, how.quality), tuple(truths))


def _places(rng: np.random.Generator, how: Flat, px: float) -> list[NDArray[np.float64]]:
    """Middles of labels that cannot touch each other: somewhere in the cells of a grid, in random order."""
    wide, high = (90 + 2 * 10 + 2 * 6) * px * (1 + 4 * how.warp), (how.height + 29) * px * (1 + 4 * how.warp)
    tilt = max(abs(end) for end in _between(how.tilt))
    angle = np.radians(tilt)
    if tilt > 45:
        need = np.array([np.hypot(wide, high)] * 2)
    else:
        need = np.array([wide * np.cos(angle) + high * np.sin(angle), wide * np.sin(angle) + high * np.cos(angle)])
    size = np.array(how.size, np.float64)
    roomy = np.sqrt(size.prod() / need.prod() / (1.5 * (how.labels + how.foreign)))
    cells = np.maximum(np.floor(size / (need * max(1.0, roomy))), 1).astype(int)
    pitch = size / cells
    grid = np.stack(np.meshgrid(np.arange(cells[0]), np.arange(cells[1])), -1).reshape(-1, 2)
    slack = np.maximum(pitch - need - 2, 0)
    middles = (grid + 0.5) * pitch + (rng.random(grid.shape) - 0.5) * slack
    return list(rng.permutation(middles))


def _card(picture: Array, rng: np.random.Generator, how: Flat, text: str, kind: str, at: NDArray[np.float64]) -> Truth:
    ink, paper = rng.uniform(25, 60), rng.uniform(195, 240)
    ink = paper - how.contrast * (paper - ink)
    edge, card = rng.uniform(2, 6), rng.uniform(70, 220)
    look = Look(ink, paper, card, how.height, edge=edge)
    px = float(rng.uniform(*how.px)) if isinstance(how.px, tuple) else how.px
    corners = _lay(picture, rng, how, text, code128.widths(text), look, px, at)
    return truth_of(text, kind, code128.modules(text), corners)


def _foreign(picture: Array, rng: np.random.Generator, how: Flat, px: float, at: NDArray[np.float64]) -> Truth:
    text, widths = foreign_code(rng)
    look = Look(rng.uniform(25, 60), rng.uniform(190, 240), rng.uniform(70, 220), how.height, edge=2)
    px *= min(1.0, 122 / (sum(widths) + 24))
    return truth_of(text, "foreign", sum(widths), _lay(picture, rng, how, text, widths, look, px, at))


def _lay(
    picture: Array,
    rng: np.random.Generator,
    how: Flat,
    text: str,
    widths: Sequence[int],
    look: Look,
    px: float,
    at: NDArray[np.float64],
) -> NDArray[np.float64]:
    """Draw one label about a middle; the corners of its bars in the picture."""
    fine = FINE if px < 1.5 else 4
    texture, corners = label(text, widths, look, fine * px)
    quad = _turned(outer(texture), rng.uniform(*_between(how.tilt)), 1 / fine)
    off = rng.uniform(-how.warp, how.warp, (4, 2)) * np.ptp(outer(texture)[:, 0]) / fine
    quad = quad + off + at
    matrix = cv2.getPerspectiveTransform(outer(texture).astype(np.float32), quad.astype(np.float32))
    paste(picture, texture, quad, fine, float(rng.uniform(0.8, 1.0)))
    return through(matrix, corners)


def _between(tilt: float | tuple[float, float]) -> tuple[float, float]:
    return tilt if isinstance(tilt, tuple) else (-tilt, tilt)


def _turned(points: NDArray[np.float64], degrees: float, scale: float) -> NDArray[np.float64]:
    """Points about their middle, turned clockwise as the picture shows it."""
    c, s = np.cos(np.radians(degrees)), np.sin(np.radians(degrees))
    return (points - points.mean(0)) @ np.array([[c, s], [-s, c]]) * scale


def background(rng: np.random.Generator, how: Flat) -> Array:
    """Light, texture, edges, stripes and texts, and not one code."""
    width, height = how.size
    picture = np.full((height, width), rng.uniform(90, 160), np.float32)
    for cell, depth in ((900, 35), (60, 10), (5, 5)):
        coarse = rng.standard_normal((height // cell + 3, width // cell + 3), np.float32) * np.float32(depth)
        picture += cv2.resize(coarse, (width, height), interpolation=cv2.INTER_LINEAR)
    share = width * height / (4032 * 3024)
    levels = np.clip(picture, 0, 255).astype(np.uint8)
    for turn in (cv2.ROTATE_90_CLOCKWISE, cv2.ROTATE_90_COUNTERCLOCKWISE):
        for _ in range(int(how.marks * share / 8)):
            _edge(levels, rng)
        for _ in range(int(how.marks * share / 2)):
            _mark(levels, rng)
        levels = cv2.rotate(levels, turn)
    picture = levels.astype(np.float32)
    for _ in range(int(how.stripes * share)):
        _stripes(picture, rng)
    return picture


def _edge(levels: Grey, rng: np.random.Generator) -> None:
    """A board or a box: one rectangle of one grey."""
    middle, size = rng.uniform(0, 1, 2) * levels.shape[::-1], rng.uniform(30, 400, 2)
    corners = _turned(np.array([(0, 0), (1, 0), (1, 1), (0, 1)]) * size, rng.uniform(0, 180), 1) + middle
    cv2.fillConvexPoly(levels, np.round(corners * 16).astype(np.int32), rng.uniform(30, 230), cv2.LINE_AA, 4)


def _stripes(picture: Array, rng: np.random.Generator) -> None:
    """Slats, ribs, cables: bars at a random period, even or of random widths, that say nothing."""
    period, count = rng.uniform(1.2, 12), int(rng.integers(8, 60))
    widths = rng.integers(1, 5, 2 * count + 1) if rng.random() < 0.6 else np.ones(2 * count + 1, int)
    px = period / 2 if widths.max() == 1 else period / 4
    high = rng.uniform(8, 70) if px > 0.5 else rng.uniform(20, 90)
    dark, bright = sorted(rng.uniform(20, 240, 2))
    fine = FINE if px < 1 else 3 if px < 2.5 else 2
    columns, rows = int(np.ceil(widths.sum() * px * fine)), int(np.ceil(high * fine))
    line = bright - (bright - dark) * bars(widths.tolist(), 0.0, columns, px * fine)
    texture = np.repeat(line[None].astype(np.uint8), min(rows, 600), 0)
    middle = rng.uniform(0, 1, 2) * picture.shape[::-1]
    paste(picture, texture, _turned(outer(texture), rng.uniform(0, 180), 1 / fine) + middle, fine)


def _mark(levels: Grey, rng: np.random.Generator) -> None:
    """A line, or some words."""
    x, y = (int(v) for v in rng.uniform(0, 1, 2) * levels.shape[::-1])
    grey, size = rng.uniform(10, 245), rng.uniform(0.3, 2.0)
    if rng.random() < 0.25:
        to = (x + int(rng.uniform(-300, 300)), y + int(rng.uniform(-300, 300)))
        cv2.line(levels, (x, y), to, grey, int(rng.integers(1, 5)), cv2.LINE_AA)
        return
    words = " ".join(rng.choice(WORDS, int(rng.integers(1, 5))))
    cv2.putText(levels, words, (x, y), FONT, size, grey, max(1, int(size * 2)), cv2.LINE_AA)
