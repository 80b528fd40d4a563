"""What one scan reflectance profile holds: elements, their edges, and Code 128's reference decode.

A profile is a 1-D float array of reflectances 0 to 1, sampled at even steps across the whole symbol and its quiet
zones, in the direction of reading. Terms and symbols are those of ISO/IEC 15416 and ISO/IEC 15417.
"""

from dataclasses import dataclass
from itertools import pairwise

import numpy as np
from numpy.typing import NDArray

from labels import code128

Profile = NDArray[np.float64]

_STOP = 106
_STARTS = (103, 104, 105)
_BAR_TOLERANCE = 1.75  # modules by which the bars of a character may differ from nominal, ISO/IEC 15417
_NOISE = 0.02  # of the symbol contrast: a camera's grain makes peaks that no aperture of a verifier would see


@dataclass(frozen=True, slots=True)
class Element:
    """A bar or space: samples `first` to `last` (exclusive), and the edges at its ends as fractions of a sample."""

    dark: bool
    first: int
    last: int
    begin: float
    end: float

    @property
    def width(self) -> float:
        return self.end - self.begin


@dataclass(frozen=True, slots=True)
class Decoded:
    """A symbol in a profile: index of its first bar among the elements, character values, decodability 0 to 1."""

    first: int
    values: tuple[int, ...]
    decodability: float

    @property
    def count(self) -> int:
        """Bars and spaces of the symbol: six a character, and the last bar of the stop character."""
        return 6 * len(self.values) + 1


def elements(profile: Profile, threshold: float) -> list[Element]:
    """The profile parted where it crosses the global threshold, quiet zones included.

    Edges lie on that crossing too. Midway between each pair of neighbours instead, the blur of a picture would move
    them: 0.4 modules of it took half of the decodability of a flawless symbol, here a twentieth.
    """
    dark = profile < threshold
    before = np.flatnonzero(dark[1:] != dark[:-1])
    crossed = before + (threshold - profile[before]) / (profile[before + 1] - profile[before])
    cuts = [0, *(int(at) + 1 for at in before), len(profile)]
    edges = [0.0, *(float(at) for at in crossed), float(len(profile) - 1)]
    return [
        Element(bool(dark[first]), first, last, begin, end)
        for (first, last), (begin, end) in zip(pairwise(cuts), pairwise(edges), strict=True)
    ]


def extreme(profile: Profile, element: Element) -> float:
    """Rb of a bar, its lowest reflectance; Rs of a space, its highest."""
    samples = profile[element.first : element.last]
    return float(samples.min() if element.dark else samples.max())


def non_uniformity(profile: Profile, element: Element, contrast: float) -> float:
    """ERN: in a bar the highest peak between valleys less the lowest valley, in a space the other way round.

    Peaks that stand out by less than a fiftieth of the symbol contrast count as grain of the picture.
    """
    samples = profile[element.first : element.last]
    if not element.dark:
        samples = -samples
    valley_before = np.minimum.accumulate(samples)
    valley_after = np.minimum.accumulate(samples[::-1])[::-1]
    peaks = samples[samples - np.maximum(valley_before, valley_after) > _NOISE * contrast]
    return float(peaks.max() - samples.min()) if peaks.size else 0.0


def widths_of(values: tuple[int, ...]) -> tuple[int, ...]:
    """Widths in modules of a symbol's elements, from its start character to its stop character."""
    return (*(width for value in values for width in _WIDTHS[value]), 2)


def decode(parts: list[Element]) -> Decoded | None:
    """The first symbol among the elements that is whole: start, data, a check character that is right, stop."""
    for first, element in enumerate(parts):
        if element.dark and (found := _decode_at(parts, first)):
            return found
    return None


def _decode_at(parts: list[Element], first: int) -> Decoded | None:
    values: list[int] = []
    decodability = 1.0
    for at in range(first, len(parts) - 6, 6):
        character = _character([element.width for element in parts[at : at + 6]])
        if character is None or (not values and character[0] not in _STARTS):
            return None
        values.append(character[0])
        decodability = min(decodability, character[1])
        if character[0] == _STOP:
            whole = _is_whole(values) and _ends(parts[at : at + 7])
            return Decoded(first, tuple(values), decodability) if whole else None
    return None


def _is_whole(values: list[int]) -> bool:
    *data, check, _ = values
    return len(data) > 1 and code128.check_value(tuple(data)) == check


def _ends(stop: list[Element]) -> bool:
    """The stop character's last space and bar make three modules."""
    module = sum(element.width for element in stop[:6]) / 11
    return 2.5 <= (stop[5].width + stop[6].width) / module < 3.5


def _character(widths: list[float]) -> tuple[int, float] | None:
    """Value and decodability of six elements: V1 = K·22/S, V2 = (1.75 - |Wb·11/S - M|)/1.75 (from memory)."""
    module = sum(widths) / 11
    similar = [(a + b) / module for a, b in pairwise(widths[:5])]
    value = _VALUES.get(tuple(int(distance) if distance % 1 < 0.5 else int(distance) + 1 for distance in similar))
    if value is None:
        return None
    first = 2 * min(abs(distance % 1 - 0.5) for distance in similar)  # K: how far from a reference threshold
    off = abs(sum(widths[::2]) / module - sum(_WIDTHS[value][::2]))
    second = (_BAR_TOLERANCE - off) / _BAR_TOLERANCE
    return (value, min(first, second)) if second >= 0 else None


_WIDTHS = tuple(code128.runs(pattern)[:6] for pattern in code128.PATTERNS)
_VALUES = {tuple(a + b for a, b in pairwise(widths[:5])): value for value, widths in enumerate(_WIDTHS)}
