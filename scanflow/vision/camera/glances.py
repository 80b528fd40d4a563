"""What a live camera's glances come to: two that agree scan a card, once while it is in the picture.

The same rule, with the same figures, as `web/static/js/scanning/glances.js` has for a browser's camera; a test holds
the two to each other. Knows no camera and no clock.
"""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from contextlib import suppress
from dataclasses import dataclass

from labels import slot_code

AGREE = 1000.0
"""Milliseconds from one glance to the other that agrees with it."""
GONE = 1500.0
"""Milliseconds without a glance at a card: it has left the picture, and no blur of a moving hand is that long, …"""
MISSED = 4
"""… if it was looked for so often meanwhile: where glances are slow, time alone says nothing."""


def ours(texts: Iterable[str]) -> tuple[str, ...]:
    """The texts of a glance that are for the shop: its cards and slips, or where there is none whatever was read."""
    different = tuple(dict.fromkeys(texts))
    return tuple(text for text in different if _is_whole(text)) or different


def _is_whole(text: str) -> bool:
    """Whether a text is all of a card's or a slip's, its check right."""
    for parse in (slot_code.parse_card, slot_code.parse_slip):
        with suppress(slot_code.CodeError):
            parse(text)
            return True
    return False


@dataclass(slots=True)
class _Scanned:
    at: float
    missed: int = 0


class Glances:
    """One camera's glances so far."""

    def __init__(self) -> None:
        self._scanned: dict[str, _Scanned] = {}
        self._first: tuple[str, float] | None = None

    def take(self, texts: Sequence[str], at: float, *, shut: bool = False) -> str | None:
        """The text that is scanned by a glance at these, or None; of several nothing is. `at` is in milliseconds.

        `shut`: nothing may be scanned now, and a card that stays is scanned when that is over.
        """
        self._present(texts, at)
        if len(texts) != 1 or texts[0] in self._scanned:
            return None
        (text,) = texts
        before, self._first = self._first, (text, at)
        if shut or before is None or before[0] != text or at - before[1] > AGREE:
            return None
        self._first = None
        self._scanned[text] = _Scanned(at)
        return text

    def scanned(self, text: str) -> bool:
        """Whether this was scanned and has not left the picture since."""
        return text in self._scanned

    def _present(self, texts: Sequence[str], at: float) -> None:
        """These are in the picture: what of them was scanned has not left it."""
        for text, seen in list(self._scanned.items()):
            if at - seen.at > GONE and seen.missed >= MISSED:
                del self._scanned[text]
            elif text in texts:
                self._scanned[text] = _Scanned(at)
            else:
                seen.missed += 1
