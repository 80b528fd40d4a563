"""Frames of a walk along shelves are chosen alike by a browser and by this machine."""

from __future__ import annotations

import base64

import cv2
import numpy as np
import pytest
from live_shop import Live
from numpy.typing import NDArray
from playwright.sync_api import Page

from scanflow.vision.camera.capture import is_dark
from scanflow.vision.camera.sweep import FINE, Sweep

THEIRS = """async ([films, wide]) => {
  const { FINE, Sweep, isDark } = await import("/static/js/counts/sweep.js");
  const bytes = (text) => Uint8Array.from(atob(text), (each) => each.charCodeAt(0));
  return [FINE, films.map((frames) => {
    const sweep = new Sweep();
    return frames.map(bytes).map((levels) => {
      const { ended, best } = sweep.see(levels, wide, levels.length / wide);
      return [ended, best, isDark(levels)];
    });
  })];
}"""

Levels = NDArray[np.uint8]


def shelf(chance: np.random.Generator, high: int) -> Levels:
    """A long picture with detail of all sizes, as goods have; made, not photographed."""
    size = (4 * FINE, high)
    layers = [cv2.resize(chance.normal(128, 60, (high // each, size[0] // each)), size) for each in (4, 12, 40)]
    return np.clip(np.mean(layers, axis=0), 0, 255).astype(np.uint8)


def walk(chance: np.random.Generator, high: int, length: int) -> list[Levels]:
    """On and back in uneven steps, with a smeared frame, a noisy, a dark and a quite other one now and then."""
    goods, frames, at = shelf(chance, high), [], 0
    for number in range(length):
        at = int(np.clip(at + chance.integers(-20, 90), 0, goods.shape[1] - FINE))
        view = goods[:, at : at + FINE]
        match number % 8:
            case 2:
                view = cv2.GaussianBlur(view, (0, 0), 5).astype(np.uint8)
            case 4:
                view = np.clip(view + chance.normal(0, 12, view.shape), 0, 255).astype(np.uint8)
            case 6:
                view = (view // 16).astype(np.uint8)
            case 7:
                at = int(chance.integers(0, goods.shape[1] - FINE))
        frames.append(np.ascontiguousarray(view))
    return frames


@pytest.mark.parametrize(("high", "length"), [(363, 30), (1138, 10)], ids=["landscape", "portrait"])
def test_both_choose_the_same_frames(live: Live, page: Page, high: int, length: int) -> None:
    """Over random walks `sweep.js` says of each frame what `vision.camera.sweep` says, and which are dark."""
    chance = np.random.default_rng(7)
    films = [walk(chance, high, length)]
    here = []
    for frames in films:
        sweep = Sweep()
        here.append([[*sweep.see(levels), is_dark(levels)] for levels in frames])
    page.goto("/login")
    sent = [[base64.b64encode(levels.tobytes()).decode() for levels in frames] for frames in films]

    assert [FINE, here] == page.evaluate(THEIRS, [sent, FINE])
    for told in np.array(here).reshape(-1, 3).T:  # each of them was so, and was not
        assert 0 < told.sum() < len(told)
