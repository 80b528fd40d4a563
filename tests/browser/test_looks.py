"""The looks of a browser's camera and those of this machine's come to the same."""

from __future__ import annotations

import random

from live_shop import Live
from playwright.sync_api import Page

from labels import slot_code
from scanflow.vision.camera.looks import Looks, ours

TEXTS = (slot_code.card_text("D014"), slot_code.card_text("D015"), slot_code.slip_text(7), "4006381333931")
THEIRS = """async (runs) => {
  const { Looks, ours } = await import("/static/js/scanning/looks.js");
  return runs.map((frames) => {
    const looks = new Looks();
    return frames.map(([at, read, shut]) => {
      const texts = ours(read);
      if (texts.length === 1) return looks.look(texts[0], at, shut);
      looks.present(texts, at);
      return null;
    });
  });
}"""


def frames(chance: random.Random) -> list[tuple[int, list[str], bool]]:
    """Times in ms, what is read then, and whether nothing may be scanned: cards that stay for a while and leave."""
    at, texts, looks = 0, [], []
    for _ in range(80):
        at += chance.choice((33, 125, 400, 900))
        if chance.random() < 0.15:
            texts = chance.sample(TEXTS, chance.choice((0, 1, 1, 1, 2)))
        looks.append((at, [] if chance.random() < 0.2 else texts, chance.random() < 0.1))
    return looks


def test_both_trackers_scan_the_same(live: Live, page: Page) -> None:
    """Over two hundred random films each look scans the same by `looks.js` and by `vision.looks`."""
    chance = random.Random(20)
    runs = [frames(chance) for _ in range(200)]
    here = []
    for run in runs:
        looks = Looks()
        here.append([looks.look(ours(texts), at, shut=shut) for at, texts, shut in run])
    page.goto("/login")

    assert here == page.evaluate(THEIRS, runs)
    assert 200 < sum(text is not None for run in here for text in run)  # there was something to scan
