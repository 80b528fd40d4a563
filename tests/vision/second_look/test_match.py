"""A strip compared with a book: what is sure, and what only looks so."""

from __future__ import annotations

import numpy as np
import pytest

from labels import slot_code
from scanflow.vision.second_look.book import Book
from scanflow.vision.second_look.fit import indicators
from scanflow.vision.second_look.locate import Region
from scanflow.vision.second_look.match import Match, likeness, match
from scanflow.vision.second_look.patterns import pattern, patterns
from scanflow.vision.second_look.straighten import BINS, MARGIN, Lean, Strip

(CODES,) = patterns(Book(slot_code.card_text(slot_code.make("E", number)) for number in range(1, 201)))
PAPER, BARS, NOISE, PIXELS = 250.0, 100.0, 2.0, 40


def compared(text: str, *reflex: float, island: float = 0.0) -> Match | None:
    """The best code for a text's bars with nothing seen in the modules of a `reflex`, but for one module of grey."""
    bits = pattern(text).bits(slice(0, 1))[0]
    at = (np.arange(2 * MARGIN + BINS) + 0.5 - MARGIN) * len(bits) / BINS
    level = PAPER - (PAPER - BARS) * (indicators(at, 0.3, len(bits)) @ bits)
    level += np.random.default_rng(1).normal(0, NOISE, len(level))
    seen = np.full(len(level), PIXELS)
    if reflex:
        first, last = reflex
        spared = (at >= island) & (at < island + 1)
        level[spared] = (PAPER + BARS) / 2
        seen[(at >= first) & (at < last) & ~spared] = 0
    region = Region(0.0, 0.0, 0.0, 0.0, 3.4 * len(bits), -20.0, 20.0, 0.0, 1.0)
    strip = Strip(region, level * seen, seen.astype(float), 0.9, Lean(), -20.0, 20.0)
    return match(strip, CODES, likeness(strip, CODES.mean))


def test_bars_tell_their_code() -> None:
    """Seen whole, or without one symbol character of six, they are one code's alone."""
    assert [("E0425", True)] * 2 == [
        (best.text, best.sure) for best in (compared("E0425"), compared("E0425", 34, 43)) if best
    ]


@pytest.mark.parametrize(("first", "last"), [(35, 54), (37, 57), (38, 59)])
def test_what_is_left_of_a_hidden_symbol_character_tells_nothing(first: float, last: float) -> None:
    """Grey between two reflexes, which would make of E0425 an E1469 or E0450, takes no part: none is sure."""
    assert not compared("E0425", first, last, island=45).sure
