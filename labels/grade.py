"""An estimate of print quality after ISO/IEC 15416, from scan reflectance profiles of Code 128 symbols.

A camera is no verifier: its light, angle and focus are not the standard's. So this is an estimate, never a grade of
conformity. Grades are 4 to 0, thresholds those of the 2000 edition.
"""

from bisect import bisect_right
from collections.abc import Sequence
from dataclasses import dataclass
from enum import StrEnum
from itertools import pairwise

import numpy as np

from labels import code128
from labels.reflectance import Decoded, Element, Profile, decode, elements, extreme, non_uniformity

MOST_SCANS = 10
_ROUNDING = 1e-9
_QUIET_TOLERANCE = 0.5  # modules: how well a picture tells where a quiet zone ends


class Parameter(StrEnum):
    """What is measured of a scan, causes before what they bring about."""

    CONTRAST = "symbol contrast"
    MINIMUM = "minimum reflectance"
    DEFECTS = "defects"
    MODULATION = "modulation"
    EDGE_CONTRAST = "minimum edge contrast"
    DECODABILITY = "decodability"
    QUIET_ZONE = "quiet zone"
    DECODE = "decode"


ADVICE = {
    Parameter.CONTRAST: "Print darker on whiter, matt paper: at the printer's best quality, with a full cartridge.",
    Parameter.MINIMUM: "The bars are too pale: print them in full black, without saving ink or toner.",
    Parameter.DEFECTS: "There are specks or gaps in the bars: clean the printer and print on fresh, smooth paper.",
    Parameter.MODULATION: "Narrow bars and spaces run together. If the picture is sharp, print at a finer quality, "
    "with wider bars, on paper that takes ink without bleeding.",
    Parameter.EDGE_CONTRAST: "Some bars hardly differ from the spaces beside them: print darker, on whiter paper.",
    Parameter.DECODABILITY: "The bars have not their widths: print at 100 %, not fitted to the page, "
    "with less ink, on paper that doesn't bleed.",
    Parameter.QUIET_ZONE: "The white beside the bars is too narrow: leave ten of the narrowest bars' widths free.",
    Parameter.DECODE: "The bars don't decode: print this card again.",
}
GOOD = "Nothing to improve: print, laminate and cut the others like this."


@dataclass(frozen=True, slots=True)
class Measure:
    """A parameter's value and grade. Values are shares of 1, but modules for the quiet zone and 0 or 1 for decode."""

    value: float
    grade: int


@dataclass(frozen=True, slots=True)
class GradedScan:
    """One scan: its profile, global threshold, the edges in samples, its measures, the symbol's values if decoded.

    `start` is the place among the edges of the symbol's first one; every sixth from there begins a character.
    """

    profile: tuple[float, ...]
    threshold: float
    edges: tuple[float, ...]
    measures: dict[Parameter, Measure]
    values: tuple[int, ...] | None
    start: int

    @property
    def grade(self) -> int:
        """The lowest of its measures."""
        return min(measure.grade for measure in self.measures.values())


@dataclass(frozen=True, slots=True)
class SymbolGrade:
    """A symbol: mean grade of its scans and their mean values; `weakest` is None where every measure is 4."""

    grade: float
    letter: str
    measures: dict[Parameter, float]
    weakest: Parameter | None
    advice: str
    scans: tuple[GradedScan, ...]


def grade(profile: Profile) -> GradedScan:
    """Measure one profile of reflectances 0 to 1. ValueError for one of fewer than two samples or other dimensions."""
    if profile.ndim != 1 or profile.size < 2:
        raise ValueError("a profile is a row of at least two reflectances")
    high, low = float(profile.max()), float(profile.min())
    contrast = high - low
    threshold = low + contrast / 2
    parts = elements(profile, threshold)
    decoded = decode(parts)
    symbol = parts[max(decoded.first - 1, 0) : decoded.first + decoded.count + 1] if decoded else parts
    extremes = [extreme(profile, part) for part in symbol]
    edge_contrast = min((abs(b - a) for a, b in pairwise(extremes)), default=0.0)
    worst = max(non_uniformity(profile, part, contrast) for part in symbol)
    modulation, defects = (edge_contrast / contrast, worst / contrast) if contrast else (0.0, 0.0)
    quiet = _quiet_zone(parts, decoded)
    decodability = decoded.decodability if decoded else 0.0
    measures = {
        Parameter.CONTRAST: Measure(contrast, _steps(contrast, (0.20, 0.40, 0.55, 0.70))),
        Parameter.MINIMUM: Measure(low, _passes(low <= high / 2)),
        Parameter.DEFECTS: Measure(defects, _steps(-defects, (-0.30, -0.25, -0.20, -0.15))),
        Parameter.MODULATION: Measure(modulation, _steps(modulation, (0.40, 0.50, 0.60, 0.70))),
        Parameter.EDGE_CONTRAST: Measure(edge_contrast, _passes(edge_contrast >= 0.15 - _ROUNDING)),
        Parameter.DECODABILITY: Measure(decodability, _steps(decodability, (0.25, 0.37, 0.50, 0.62))),
        Parameter.QUIET_ZONE: Measure(quiet, _passes(quiet >= code128.QUIET - _QUIET_TOLERANCE)),
        Parameter.DECODE: Measure(float(decoded is not None), _passes(decoded is not None)),
    }
    edges = tuple(part.begin for part in parts[1:])
    values, start = (decoded.values, decoded.first - 1) if decoded else (None, 0)
    return GradedScan(tuple(map(float, profile)), threshold, edges, measures, values, start)


def symbol(scans: Sequence[GradedScan], text: str) -> SymbolGrade:
    """The estimate of a symbol that says `text`, from up to ten scans spread over the height of its bars.

    ValueError for no scans, more than ten, or a text that Code 128 can't hold.
    """
    if not 1 <= len(scans) <= MOST_SCANS:
        raise ValueError(f"a symbol is judged by 1 to {MOST_SCANS} scans, not {len(scans)}")
    mean = sum(scan.grade for scan in scans) / len(scans)
    weakest = _weakest(scans, text)
    means = {name: sum(scan.measures[name].value for scan in scans) / len(scans) for name in Parameter}
    return SymbolGrade(mean, letter(mean), means, weakest, ADVICE[weakest] if weakest else GOOD, tuple(scans))


def letter(mean: float) -> str:
    """A to F of a mean grade.

    >>> letter(2.9)
    'B'
    """
    return "FDCBA"[bisect_right((0.5, 1.5, 2.5, 3.5), mean + _ROUNDING)]


def _steps(value: float, thresholds: tuple[float, float, float, float]) -> int:
    return bisect_right(thresholds, value + _ROUNDING)


def _passes(passed: bool) -> int:
    return 4 if passed else 0


def _quiet_zone(parts: list[Element], decoded: Decoded | None) -> float:
    """Width in modules of the narrower quiet zone, as far as the profile goes; 0 where nothing is decoded."""
    if decoded is None:
        return 0.0
    first, last = decoded.first, decoded.first + decoded.count
    if first == 0 or last == len(parts):
        return 0.0
    module = (parts[last].begin - parts[first].begin) / (11 * len(decoded.values) + 2)
    return min(parts[first - 1].width, parts[last].width) / module


def _weakest(scans: Sequence[GradedScan], text: str) -> Parameter | None:
    """The lowest over all scans; of equals the cause before its effect.

    Where scans don't decode, the count of their edges tells why: more than the symbol's means specks or gaps, fewer
    that bars run together, as many that widths are wrong. Where all contrast is lacking, that comes first.
    """
    totals = {name: sum(scan.measures[name].grade for scan in scans) for name in Parameter}
    failed = [scan for scan in scans if scan.values is None]
    if failed:
        if totals[Parameter.CONTRAST] == 0:
            return Parameter.CONTRAST
        known = next((6 * len(scan.values) + 2 for scan in scans if scan.values), len(code128.widths(text)) + 1)
        surplus = float(np.mean([len(scan.edges) - known for scan in failed]))
        if surplus:
            return Parameter.DEFECTS if surplus > 0 else Parameter.MODULATION
        return Parameter.DECODABILITY
    lowest = min(totals, key=totals.__getitem__)
    return lowest if totals[lowest] < 4 * len(scans) else None
