"""How well the cards in a picture are printed: an estimate per card, its weakest point, and what to do."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import asdict, dataclass, replace
from pathlib import Path
from typing import Any

import numpy as np
from numpy.typing import NDArray

from labels import code128, grade, profile_drawing
from labels.reflectance import widths_of
from scanflow.vision.print_check.disturbances import ADVICE, Disturbance, disturbances
from scanflow.vision.print_check.profiles import SymbolProfiles, sweep
from scanflow.vision.readings import Quad, Reading, Symbology
from scanflow.vision.upright import resolution, upright

_SCALED = 0.02  # by which a scanner's own resolution may be off
_SAME_SHEET = (0.8, 1.25)  # a scale beyond is no printer's: the file's resolution is not that of a scan
_MM_PER_INCH = 25.4


@dataclass(frozen=True, slots=True)
class Check:
    """One card. `estimate` is None where it can't be judged, `module_mm` and `scale` where no resolution is known.

    `drawing` is the profile of its poorest line as SVG, None where nothing was measured; `estimate` holds no profiles.
    """

    text: str
    corners: Quad
    estimate: grade.SymbolGrade | None
    disturbances: tuple[Disturbance, ...]
    pixels_per_module: float | None
    module_mm: float | None
    scale: float | None
    advice: str
    drawing: str | None = None

    @property
    def passed(self) -> bool:
        """Whether the estimate is C or better."""
        return self.estimate is not None and self.estimate.letter in ("A", "B", "C")

    @property
    def verdict(self) -> str:
        """The estimate and its weakest measure, in words."""
        seen = self.estimate
        if seen is None:
            return "not judged."
        named = f" Weakest: {seen.weakest}, {_in_words(seen.weakest, seen.measures)}." if seen.weakest else ""
        return f"estimate {seen.letter} ({seen.grade:.1f} of 4).{named}"

    def as_dict(self) -> dict[str, Any]:
        """Plain JSON values: shares of 1 for the measures, but modules for the quiet zone; no profiles."""
        seen = self.estimate
        return {
            "text": self.text,
            "estimate": seen and {"letter": seen.letter, "grade": round(seen.grade, 1)},
            "measures": seen and {name: round(value, 4) for name, value in seen.measures.items()},
            "weakest": seen and seen.weakest,
            "disturbances": list(self.disturbances),
            "pixels_per_module": self.pixels_per_module and round(self.pixels_per_module, 2),
            "module_mm": self.module_mm and round(self.module_mm, 3),
            "scale": self.scale and round(self.scale, 3),
            "advice": self.advice,
            "corners": [list(corner) for corner in self.corners],
        }

    def sent(self) -> dict[str, Any]:
        """All of it as plain JSON values; ``received`` takes them back."""
        return asdict(self)

    @classmethod
    def received(cls, values: dict[str, Any]) -> Check:
        seen = values["estimate"] and _estimate(values["estimate"])
        a, b, c, d = ((x, y) for x, y in values["corners"])
        found = tuple(map(Disturbance, values["disturbances"]))
        return cls(**values | {"estimate": seen, "corners": (a, b, c, d), "disturbances": found})


def _estimate(values: dict[str, Any]) -> grade.SymbolGrade:
    measures = {grade.Parameter(name): value for name, value in values["measures"].items()}
    weakest = values["weakest"] and grade.Parameter(values["weakest"])
    return grade.SymbolGrade(**values | {"measures": measures, "weakest": weakest, "scans": ()})


def _in_words(name: grade.Parameter, measures: Mapping[grade.Parameter, float]) -> str:
    if name is grade.Parameter.QUIET_ZONE:
        return f"{measures[name]:.1f} modules"
    return f"{measures[name]:.0%} of the lines" if name is grade.Parameter.DECODE else f"{measures[name]:.0%}"


def check(image: bytes | Path, readings: tuple[Reading, ...], module_mm: float | None = None) -> tuple[Check, ...]:
    """Every reading of an image file judged, in their order. ImageError as `read` has it.

    `module_mm` is the width that the narrowest bar was meant to have: with the resolution in a scan's file it tells
    whether the printer has scaled.
    """
    grey = upright(image)
    dpi = resolution(image)
    return tuple(_check(grey, reading, dpi, module_mm) for reading in readings)


def _check(grey: NDArray[np.uint8], reading: Reading, dpi: float | None, nominal: float | None) -> Check:
    text = reading.text
    assert text is not None  # a decoder read it
    if reading.symbology is not Symbology.CODE128 or not text.isascii():
        return _unjudged(text, reading.corners, "Only Code 128 can be judged.")
    widths = code128.widths(text)
    swept = sweep(grey, reading.corners, sum(widths))
    if swept is None:
        return _unjudged(
            text, reading.corners, "The ends of the bars are not found: take the picture again, from straight above."
        )
    scans = _scans(swept)
    said = next((widths_of(scan.values) for scan in scans if scan.values), widths)
    if sum(said) != swept.modules and (again := sweep(grey, reading.corners, sum(said))):  # not of minimal length
        swept, scans = again, _scans(again)
    module, scale = _scale(swept.pixels_per_module, dpi, nominal)
    found = disturbances(swept, scans, said)
    seen = grade.symbol(scans, text)
    coarse = Disturbance.COARSE in found
    advice = " ".join([*_advice(seen, found), *_scale_advice(scale)])
    kept = None if coarse else replace(seen, scans=())
    drawn = None if coarse else _drawing(text, seen)
    return Check(text, reading.corners, kept, found, swept.pixels_per_module, module, scale, advice, drawn)


def _drawing(text: str, judged: grade.SymbolGrade) -> str:
    poorest = min(judged.scans, key=lambda scan: scan.grade)
    title = f"{text}: estimate {judged.letter}, its poorest line {'FDCBA'[poorest.grade]}"
    return profile_drawing.svg(poorest, title)


def _unjudged(text: str, corners: Quad, why: str) -> Check:
    return Check(text, corners, None, (), None, None, None, why)


def _scans(swept: SymbolProfiles) -> list[grade.GradedScan]:
    return [grade.grade(np.clip(profile, 0.0, 1.0)) for profile in swept.profiles]


def _advice(seen: grade.SymbolGrade, found: tuple[Disturbance, ...]) -> list[str]:
    """The picture's faults before the print's: what they leave can't be blamed on the print."""
    if Disturbance.COARSE in found:
        return [ADVICE[Disturbance.COARSE]]
    return [ADVICE[name] for name in found] or [seen.advice]


def _scale(pixels: float, dpi: float | None, nominal: float | None) -> tuple[float | None, float | None]:
    """Module in mm, and its share of the nominal one where the file's resolution can be that of a scan."""
    if dpi is None or nominal is None:
        return None, None
    module = pixels / dpi * _MM_PER_INCH
    scale = module / nominal
    return (module, scale) if _SAME_SHEET[0] <= scale <= _SAME_SHEET[1] else (None, None)


def _scale_advice(scale: float | None) -> list[str]:
    if scale is None or abs(scale - 1) <= _SCALED:
        return []
    return [f"The sheet was printed at {scale:.0%} of its size: print at 100 %, not fitted to the page."]
