"""What codes look like when bars are not resolved: bars as 0 and 1, blurred, for all codes of a book at once."""

from __future__ import annotations

import re
import string
from collections.abc import Iterator
from dataclasses import dataclass, field
from functools import cached_property, lru_cache
from math import erf, sqrt

import numpy as np
from numpy.typing import NDArray

from labels import code128
from scanflow.vision.second_look.book import Book

Values = NDArray[np.float32]

QUIET = 4  # modules of quiet zone on each side that belong to a pattern
SYMBOL = 11  # modules of a symbol character; the stop has 13
SYMBOLS: Values = np.array([[int(bit) for bit in bits] for bits in code128.PATTERNS[:106]], np.float32)
STOP: Values = np.array([int(bit) for bit in code128.PATTERNS[106]], np.float32)
STARTS = (103, 104, 105)
CHARACTERS = 103  # symbol characters other than starts and stop


@dataclass(frozen=True, eq=False)
class Patterns:
    """Codes of the same length: `texts` (n,), and their symbol characters from start to check, `symbols` (k, n)."""

    texts: tuple[str, ...]
    symbols: NDArray[np.intp]
    _lengths: dict[bytes, Values] = field(default_factory=dict)

    @property
    def modules(self) -> int:
        return len(self.symbols) * SYMBOL + len(STOP)

    @cached_property
    def mean(self) -> Values:
        """What they have in common, (modules,)."""
        shares = [np.bincount(row, minlength=len(SYMBOLS)) / len(row) for row in self.symbols]
        return np.concatenate([*(share @ SYMBOLS for share in shares), STOP]).astype(np.float32)

    def bits(self, codes: NDArray[np.intp] | slice) -> Values:
        """The modules of some codes, bars as 1: (codes, modules)."""
        return _bars(self.symbols[:, codes].T)

    def products(self, rows: Values) -> Values:
        """Of rows (r, modules) with the bars of all codes: (r, n).

        What a symbol character adds at its place is worked out once for all codes that have it there.
        """
        sums = np.repeat(rows[:, -len(STOP) :] @ STOP[:, None], len(self.texts), 1)
        for place, symbol in enumerate(self.symbols):
            sums += (rows[:, SYMBOL * place : SYMBOL * (place + 1)] @ SYMBOLS.T).take(symbol, 1)
        return sums

    def length(self, weights: Values) -> Values:
        """Of each code's blurred bars less their mean, (n,)."""
        key = weights.tobytes()
        if key not in self._lengths:
            parts = (
                blurred(self.bits(slice(first, first + 4096)), weights) for first in range(0, len(self.texts), 4096)
            )
            self._lengths[key] = np.concatenate([part.std(1) for part in parts]) * np.float32(
                sqrt(self.modules + 2 * QUIET)
            )
        return self._lengths[key]


@lru_cache(maxsize=4)
def patterns(book: Book) -> tuple[Patterns, ...]:
    """A book's codes by their length in modules, kept for the books used last."""
    found: dict[int, list[tuple[tuple[str, ...], NDArray[np.intp]]]] = {}
    for texts, symbols in _written(book.texts):
        found.setdefault(symbols.shape[1], []).append((texts, symbols))
    return tuple(
        Patterns(sum((texts for texts, _ in rows), ()), np.concatenate([symbols.T for _, symbols in rows], 1))
        for _, rows in sorted(found.items())
    )


def pattern(text: str) -> Patterns:
    """One text's, of minimal length."""
    return Patterns((text,), np.array([code128.values(text)[:-1]], np.intp).T)


_CARD = re.compile(r"([A-Z]{1,2})([0-9]{4})")


def _written(texts: tuple[str, ...]) -> Iterator[tuple[tuple[str, ...], NDArray[np.intp]]]:
    """Texts of as many symbol characters, and these in rows; cards with four figures, as nearly all have, at once."""
    for letters in (1, 2):
        cards = tuple(text for text in texts if len(text) == letters + 4 and _CARD.fullmatch(text))
        if cards:
            yield cards, _card_symbols(np.array(cards, "S").view(np.uint8).reshape(len(cards), -1), letters)
    for text in texts:
        if not _CARD.fullmatch(text):
            yield (text,), pattern(text).symbols.T


def _card_symbols(characters: NDArray[np.uint8], letters: int) -> NDArray[np.intp]:
    """Start B, letters, Code C, two pairs of figures and the check of each row, as `code128.values` has them."""
    rows = characters.astype(np.intp)
    figures = rows[:, letters:] - ord("0")
    fixed = np.full((len(rows), 1), 104), np.full((len(rows), 1), 99)
    pairs = 10 * figures[:, ::2] + figures[:, 1::2]
    return with_check(np.concatenate([fixed[0], rows[:, :letters] - 32, fixed[1], pairs], 1))


def with_check(symbols: NDArray[np.intp]) -> NDArray[np.intp]:
    """Rows of start and data with their symbol check character (ISO/IEC 15417 Annex A)."""
    weights = np.maximum(np.arange(symbols.shape[1]), 1)
    return np.concatenate([symbols, (symbols @ weights % 103)[:, None]], 1)


def _bars(symbols: NDArray[np.intp]) -> Values:
    """Modules of rows of symbol characters, start to check, with the stop."""
    return with_stop(SYMBOLS[symbols].reshape(len(symbols), -1))


def with_stop(bits: Values) -> Values:
    """The same bits, with the stop pattern behind each row."""
    return np.concatenate([bits, np.repeat(STOP[None], len(bits), 0)], 1)


@lru_cache(maxsize=1)
def grammar() -> tuple[Values, ...]:
    """What all cards with one letter and with two have in common, for telling a label without a book."""
    figures = [f"{number:04}" for number in range(0, 10000, 77)]
    alphabet = string.ascii_uppercase
    shapes = (alphabet, [first + second for first, second in zip(alphabet, reversed(alphabet), strict=True)])
    texts = (Book(letters + digits for letters in shape for digits in figures) for shape in shapes)
    return tuple(found.mean for book in texts for found in patterns.__wrapped__(book))


@lru_cache(maxsize=64)
def kernel(sigma: float) -> Values:
    """Weights of a module and its 6 neighbours each way in a module's mean, blurred by sigma modules."""
    steps = np.arange(-6.0, 7.0)
    offsets = (np.arange(8) + 0.5) / 8 - 0.5
    seen = [_normal(steps + o + 0.5, sigma) - _normal(steps + o - 0.5, sigma) for o in offsets]
    return np.asarray(np.mean(seen, 0, dtype=np.float32))


def _normal(x: NDArray[np.float64], sigma: float) -> NDArray[np.float64]:
    """Cumulative normal distribution."""
    return np.array([0.5 + 0.5 * erf(value / sigma / sqrt(2)) for value in x])


def blurred(bits: Values, weights: Values) -> Values:
    """Rows of modules (n, m) blurred, with quiet zones each side: (n, m + 2 QUIET)."""
    reach = len(weights) // 2
    wide = np.pad(bits, [(0, 0), (QUIET + reach, QUIET + reach)])
    count = bits.shape[1] + 2 * QUIET
    return np.asarray(sum(w * wide[:, k : k + count] for k, w in enumerate(weights)), np.float32)


def standardised(rows: Values) -> Values:
    """Rows of mean 0 and length 1."""
    rows = rows - rows.mean(-1, keepdims=True)
    length = np.sqrt((rows * rows).sum(-1, keepdims=True))
    return np.asarray(rows / np.maximum(length, 1e-6), np.float32)
