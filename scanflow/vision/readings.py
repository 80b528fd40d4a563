"""What reading a picture gives: readings at places, or an error that says what to do."""

from __future__ import annotations

from dataclasses import asdict, dataclass
from enum import StrEnum
from typing import Any

from scanflow.domain.counts.stocktake import Certainty as Certainty

Point = tuple[float, float]
Quad = tuple[Point, Point, Point, Point]


class ImageError(ValueError):
    """This picture gives no answer at all; the message says why and what to do."""


class Symbology(StrEnum):
    """The linear symbologies that a shop's own cards may carry."""

    CODE128 = "code128"
    CODE39 = "code39"
    ITF = "itf"


@dataclass(frozen=True, slots=True)
class Reading:
    """One symbol at a place.

    ``text`` is the symbol's plain content, without symbology identifier, and None where it is unread. ``engine`` is
    ``zxing-cpp``, ``zbar`` or ``zxing-cpp+zbar``, ``match`` for what was matched, ``locate`` for what is unread; these
    two are taken for Code 128. ``corners`` are (x, y) in pixels of the upright image, clockwise, from the corner where
    reading begins.
    """

    text: str | None
    symbology: Symbology
    engine: str
    corners: Quad
    certainty: Certainty = Certainty.DECODED

    @property
    def engines(self) -> int:
        """How many engines read it."""
        return self.engine.count("+") + 1


@dataclass(frozen=True, slots=True)
class PictureReadings:
    """The upright image's width and height in pixels, the milliseconds it took, and what was read, top down."""

    width: int
    height: int
    ms: float
    readings: tuple[Reading, ...]

    @property
    def decoded(self) -> tuple[Reading, ...]:
        """Those that a decoder read whole: all that a scan may believe."""
        return tuple(one for one in self.readings if one.certainty is Certainty.DECODED)

    def as_dict(self) -> dict[str, Any]:
        """Plain JSON values; ``from_dict`` takes them back."""
        return asdict(self)

    @classmethod
    def from_dict(cls, values: dict[str, Any]) -> PictureReadings:
        return cls(values["width"], values["height"], values["ms"], tuple(map(_reading, values["readings"])))


def _reading(values: dict[str, Any]) -> Reading:
    a, b, c, d = ((x, y) for x, y in values["corners"])
    symbology = Symbology(values["symbology"])
    return Reading(values["text"], symbology, values["engine"], (a, b, c, d), Certainty(values["certainty"]))
