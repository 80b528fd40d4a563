"""The glances of a browser's camera and those of this machine's come to the same."""

from __future__ import annotations

import random

from live_shop import Live
from playwright.sync_api import Page

from labels import slot_code
from scanflow.vision.camera.glances import Glances, ours

TEXTS = (slot_code.card_text("D014"), slot_code.card_text("D015"), slot_code.slip_text(7), "2012345678903")
THEIRS = """async (runs) => {
  const { Glances, ours } = await import("/static/js/scanning/glances.js");
  return runs.map((frames) => {
    const glances = new Glances();
    return frames.map(([at, read, shut]) => {
      const texts = ours(read);
      if (texts.length === 1) return glances.take(texts[0], at, shut);
      glances.present(texts, at);
      return null;
    });
  });
}"""


def frames(chance: random.Random) -> list[tuple[int, list[str], bool]]:
    """Times in ms, what is read then, and whether nothing may be scanned: cards that stay for a while and leave."""
    at, texts, glances = 0, [], []
    for _ in range(80):
        at += chance.choice((33, 125, 400, 900))
        if chance.random() < 0.15:
            texts = chance.sample(TEXTS, chance.choice((0, 1, 1, 1, 2)))
        glances.append((at, [] if chance.random() < 0.2 else texts, chance.random() < 0.1))
    return glances


def test_both_trackers_scan_the_same(live: Live, page: Page) -> None:
    """Over two hundred random films each glance scans the same by `glances.js` and by `vision.camera.glances`."""
    chance = random.Random(20)
    runs = [frames(chance) for _ in range(200)]
    here = []
    for run in runs:
        glances = Glances()
        here.append([glances.take(ours(texts), at, shut=shut) for at, texts, shut in run])
    page.goto("/login")

    assert here == page.evaluate(THEIRS, runs)
    assert 200 < sum(text is not None for run in here for text in run)  # there was something to scan
