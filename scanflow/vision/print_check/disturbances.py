"""What the picture, and not the print, does to a symbol: found in its profiles, said in a sentence."""

from __future__ import annotations

import math
from collections.abc import Sequence
from enum import StrEnum
from itertools import accumulate, pairwise

import numpy as np
from numpy.typing import NDArray

from labels.grade import GradedScan
from scanflow.vision.print_check.profiles import APERTURE, PER_MODULE, QUIET, SymbolProfiles

Floats = NDArray[np.float64]


class Disturbance(StrEnum):
    """What is wrong with a picture that can't tell how well something is printed."""

    COARSE = "too coarse"
    CROPPED = "cropped"
    BLURRED = "blurred"
    GLARE = "glare"
    OVEREXPOSED = "overexposed"
    SHADOW = "shadow"
    BENT = "bent"


ADVICE = {
    Disturbance.COARSE: "The picture is too coarse to say: scan at 300 dpi or more, or photograph fewer cards, closer.",
    Disturbance.CROPPED: "The white beside the bars is not in the picture: show the whole card.",
    Disturbance.BLURRED: "The picture is not sharp: focus, hold still, come closer, or scan. If a sharp picture says "
    "the same, the ink has bled.",
    Disturbance.GLARE: "A lamp is reflected on the card, the print is not to blame: light it from the side, "
    "or use a matt laminate.",
    Disturbance.OVEREXPOSED: "A part of the bars is washed out by glare or print, and the paper is too bright in the "
    "picture to tell which: expose it darker.",
    Disturbance.SHADOW: "A shadow, fold or stain lies across the bars: flatten the card and light it evenly.",
    Disturbance.BENT: "The card is bent or folded, or was taken at a slant: flatten the laminate, and look straight "
    "down at it.",
}

LEAST_PIXELS = 4.0  # per module; below, decoders read uneven bars and edges say little
_BLUR = 0.15  # modules, standard deviation: more, and a camera's tone curve alone moves edges by a grade
_BRIGHTER, _DARKER = 1.05, 0.7  # than the median paper of the symbol
_LIFTED = 0.15  # of the contrast, above the median bar
_CLIPPED = 0.95  # of what saturates the sensor
_SPOTS = 3  # places of a symbol: fewer are a defect of the print
_BEND = 0.2  # modules off the straight line
_SLANT = 1.15  # of module widths from end to end


def disturbances(sweep: SymbolProfiles, scans: Sequence[GradedScan], widths: Sequence[int]) -> tuple[Disturbance, ...]:
    """What disturbs the picture of a symbol with such element widths in modules; its scans are those of the sweep."""
    light = _light(sweep.profiles, widths)
    found = {
        Disturbance.COARSE: sweep.pixels_per_module < LEAST_PIXELS,
        Disturbance.CROPPED: not sweep.is_whole,
        Disturbance.BLURRED: blur(sweep.profiles, widths) > _BLUR,
        Disturbance.SHADOW: _is_shaded(light),
        Disturbance.BENT: _is_bent(scans),
        **_washed(light, sweep.clipping),
    }
    return tuple(name for name in Disturbance if found[name])


def blur(profiles: Floats, widths: Sequence[int]) -> float:
    """Standard deviation in modules of the blur at edges of wide elements, less the aperture's own; 0 if none are seen.

    An edge blurred by a Gaussian rises from 16 to 84 % within two standard deviations.
    """
    middles = _middles(widths)
    wide = [width >= 2 for width in widths]
    rises = []
    for first, second in pairwise(range(len(widths))):
        if not (wide[first] and wide[second]):
            continue
        for row in profiles[:, middles[first] : middles[second] + 1]:
            low, high = sorted((row[0], row[-1]))
            share = (row - low) / max(high - low, 1e-6)
            rises.append(np.count_nonzero((share > 0.16) & (share < 0.84)) / PER_MODULE)
    deviation = float(np.mean(rises)) / 2 if rises else 0.0
    return math.sqrt(max(deviation**2 - (0.34 * APERTURE) ** 2, 0.0))  # a box aperture alone rises so within 0.68 of it


def _middles(widths: Sequence[int]) -> list[int]:
    """Samples in the middles of the elements."""
    ends = accumulate(widths, initial=0)
    return [round((QUIET + begin + width / 2) * PER_MODULE) for begin, width in zip(ends, widths, strict=False)]


def _light(profiles: Floats, widths: Sequence[int]) -> tuple[Floats, Floats]:
    """Bars and paper, (10, places) each, in the middles of wide elements: there blur does not reach.

    A bar stands beside the next paper along the row.
    """
    middles = _middles(widths)
    bars = [i for i in range(0, len(widths), 2) if widths[i] >= 2]
    spaces = [i for i in range(1, len(widths), 2) if widths[i] >= 2]
    beside = [min(spaces, key=lambda space: abs(space - bar)) for bar in bars]
    return profiles[:, [middles[i] for i in bars]], profiles[:, [middles[i] for i in beside]]


def _washed(light: tuple[Floats, Floats], clipping: float) -> dict[Disturbance, bool]:
    """Glare adds its light to bars and paper alike; missing print never makes paper brighter."""
    bars, paper = light
    black, white = float(np.median(bars)), float(np.median(paper))
    lifted = bars > black + _LIFTED * (white - black)
    glare = lifted & (paper > _BRIGHTER * white)
    blind = white > _CLIPPED * clipping and _spread(lifted)
    return {Disturbance.GLARE: _spread(glare), Disturbance.OVEREXPOSED: bool(blind)}


def _is_shaded(light: tuple[Floats, Floats]) -> bool:
    _, paper = light
    return _spread(paper < _DARKER * np.median(paper))


def _spread(places: NDArray[np.bool_]) -> bool:
    """Whether neighbouring places of a row are concerned, often enough that it is no speck."""
    return int(np.count_nonzero(places[:, 1:] & places[:, :-1])) >= _SPOTS


def _is_bent(scans: Sequence[GradedScan]) -> bool:
    """Whether characters of equal width are not so, beyond what the mean row shows of a flat card seen straight."""
    rows = [
        scan.edges[scan.start : scan.start + 6 * len(scan.values) + 1 : 6] for scan in scans if scan.values is not None
    ]
    if not rows or len({len(row) for row in rows}) > 1:
        return False
    seen = np.mean(rows, axis=0)
    number = np.arange(seen.size, dtype=np.float64)
    scale = (seen[-1] - seen[0]) / (11 * (seen.size - 1))
    seen = (seen - seen[0]) / scale
    # A flat card at a slant: position = (a·n + b)/(c·n + 1), by least squares.
    terms = np.column_stack([number, np.ones_like(number), -number * seen])
    a, b, c = np.linalg.lstsq(terms, seen, rcond=None)[0]
    off = np.abs(seen - (a * number + b) / (c * number + 1)).max()
    slant = (c * number[-1] + 1) ** 2
    return bool(off > _BEND or not 1 / _SLANT < slant < _SLANT)
