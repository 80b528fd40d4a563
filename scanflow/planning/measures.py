"""Sizes in millimetres, also typed in centimetres or inches."""

from __future__ import annotations

import re
from dataclasses import dataclass
from math import isfinite

MM_OF = {"mm": 1.0, "cm": 10.0, "in": 25.4, '"': 25.4}
_NUMBER = r"\d+(?:[.,]\d+)?(?: \d+/\d+)?|\d+/\d+"
_LENGTH = re.compile(rf'\s*({_NUMBER})(?:\s*(mm|cm|in|"))?\s*', re.IGNORECASE)
_LONGEST = 100  # characters of what anybody types as a size


@dataclass(frozen=True, slots=True)
class Size:
    """Depth (front to back), width (side to side) and height of a thing, in mm."""

    depth: float
    width: float
    height: float

    def __post_init__(self) -> None:
        if not all(isfinite(side) and side > 0 for side in (self.depth, self.width, self.height)):
            raise ValueError("every side of a size must be above zero")


def length(text: str) -> float:
    """A length in mm: `584`, `58.4cm`, `23in`, `8 1/2 in`; without a unit in mm. ValueError for anything else."""
    return _lengths(text, 1)[0]


def size(text: str, usual: str = "mm") -> Size:
    """Depth x width x height like `23x8x6in` or `584 x 203 x 152`; one unit at the end, or each its own, or none for
    the `usual` one.
    """
    return Size(*_lengths(text, 3, usual))


def unit_of(text: str) -> str:
    """The unit at the end of what was typed; empty where none is.

    >>> unit_of("23 x 8 x 6 in"), unit_of("584 x 203 x 152")
    ('in', '')
    """
    found = _LENGTH.fullmatch(re.split(r"[x×*]", text[:_LONGEST].lower())[-1])
    return found[2] or "" if found else ""


def across_down(text: str) -> tuple[float, float]:
    """Two lengths in mm like `63.5x38.1` or `4 x 6 in`; one unit at the end, or each its own."""
    width, height = _lengths(text, 2)
    return width, height


def _lengths(text: str, count: int, usual: str = "mm") -> list[float]:
    parts = re.split(r"[x×*]", text[: _LONGEST + 1].lower())
    found = [_LENGTH.fullmatch(part) for part in parts]
    if len(parts) != count or len(text) > _LONGEST or not all(found):
        what = {1: "length like 23in", 2: "pair of measures like 63.5x38.1 or 4x6in", 3: "size like 23x8x6in"}[count]
        raise ValueError(f"{text[:_LONGEST]!r} is no {what}, in mm, cm or in")
    matches = [match for match in found if match]
    last = matches[-1][2] or usual
    units = [match[2] or last for match in matches]
    if any(match[2] for match in matches[:-1]) and not all(match[2] for match in matches):
        raise ValueError(f"{text!r} names a unit for some sides only")
    lengths = [_number(match[1]) * MM_OF[unit] for match, unit in zip(matches, units, strict=True)]
    if min(lengths) <= 0:
        raise ValueError(f"{text!r} has a side of zero")
    return lengths


def _number(text: str) -> float:
    whole, _, fraction = text.rpartition(" ") if "/" in text else (text, "", "")
    value = float(whole.replace(",", ".")) if whole else 0.0
    if fraction:
        over, under = fraction.split("/")
        if int(under) == 0:
            raise ValueError("a fraction has a number below its bar")
        value += int(over) / int(under)
    return value
