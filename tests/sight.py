"""How far apart colours look to most people and to dichromats: the measure that section papers are held to."""

import math
from collections.abc import Mapping
from enum import Enum
from itertools import combinations

from labels.colour import RGB, linear

Lab = tuple[float, float, float]
_Matrix = tuple[RGB, RGB, RGB]


class Sight(Enum):
    """Ways to see colour: as most do, and the three kinds of dichromacy."""

    USUAL = "usual"
    PROTANOPIA = "protanopia"
    DEUTERANOPIA = "deuteranopia"
    TRITANOPIA = "tritanopia"


# Machado, Oliveira, Fernandes: A Physiologically-based Model for Simulation of Color Vision Deficiency, IEEE TVCG
# 15(6), 2009: the tables for severity 1.0, on linear RGB.
_SIMULATED: dict[Sight, _Matrix] = {
    Sight.USUAL: ((1, 0, 0), (0, 1, 0), (0, 0, 1)),
    Sight.PROTANOPIA: (
        (0.152286, 1.052583, -0.204868),
        (0.114503, 0.786281, 0.099216),
        (-0.003882, -0.048116, 1.051998),
    ),
    Sight.DEUTERANOPIA: (
        (0.367322, 0.860646, -0.227968),
        (0.280085, 0.672501, 0.047413),
        (-0.011820, 0.042940, 0.968881),
    ),
    Sight.TRITANOPIA: (
        (1.255528, -0.076749, -0.178779),
        (-0.078411, 0.930809, 0.147602),
        (0.004733, 0.691367, 0.303900),
    ),
}
_TO_XYZ: _Matrix = (  # IEC 61966-2-1, white D65
    (0.4124564, 0.3575761, 0.1804375),
    (0.2126729, 0.7151522, 0.0721750),
    (0.0193339, 0.1191920, 0.9503041),
)
_WHITE: RGB = (0.95047, 1.0, 1.08883)


def lab(colour: str, sight: Sight = Sight.USUAL) -> Lab:
    """CIE L*a*b* of a colour (white D65, 2 degrees) as this sight sees it."""
    seen = tuple(min(1.0, max(0.0, light)) for light in _times(_SIMULATED[sight], linear(colour)))
    x, y, z = (_root(part / white) for part, white in zip(_times(_TO_XYZ, seen), _WHITE, strict=True))
    return 116 * y - 16, 500 * (x - y), 200 * (y - z)


def _times(matrix: _Matrix, vector: tuple[float, ...]) -> RGB:
    x, y, z = (sum(a * b for a, b in zip(row, vector, strict=True)) for row in matrix)
    return x, y, z


def _root(part: float) -> float:
    return part ** (1 / 3) if part > 216 / 24389 else (24389 / 27 * part + 16) / 116


def nearest(colours: Mapping[str, str], sight: Sight) -> tuple[float, str, str]:
    """CIEDE2000 distance and names of the two colours that this sight tells apart worst."""
    seen = {name: lab(colour, sight) for name, colour in colours.items()}
    return min((ciede2000(seen[one], seen[other]), one, other) for one, other in combinations(seen, 2))


def ciede2000(one: Lab, other: Lab) -> float:
    """Colour difference CIEDE2000 with kL = kC = kH = 1.

    Sharma, Wu, Dalal: The CIEDE2000 Color-Difference Formula, Color Research and Application 30(1), 2005; the numbers
    are its equations.
    """
    chroma = (math.hypot(one[1], one[2]) + math.hypot(other[1], other[2])) / 2
    g = 0.5 * (1 - math.sqrt(chroma**7 / (chroma**7 + 25**7)))  # (4)
    (c1, h1), (c2, h2) = (_polar(each[1] * (1 + g), each[2]) for each in (one, other))  # (5)-(7)
    turn = _turn(c1, h1, c2, h2)
    d_lightness, d_chroma = other[0] - one[0], c2 - c1  # (8), (9)
    d_hue = 2 * math.sqrt(c1 * c2) * math.sin(math.radians(turn / 2))  # (11)
    lightness, c_mean = (one[0] + other[0]) / 2, (c1 + c2) / 2  # (12), (13)
    hue = h1 + h2 if c1 * c2 == 0 else (h1 + turn / 2) % 360  # (14)
    t = 1 - 0.17 * _cos(hue - 30) + 0.24 * _cos(2 * hue) + 0.32 * _cos(3 * hue + 6) - 0.20 * _cos(4 * hue - 63)  # (15)
    s_lightness = 1 + 0.015 * (lightness - 50) ** 2 / math.sqrt(20 + (lightness - 50) ** 2)  # (18)
    s_chroma, s_hue = 1 + 0.045 * c_mean, 1 + 0.015 * c_mean * t  # (19), (20)
    rotation = -2 * math.sqrt(c_mean**7 / (c_mean**7 + 25**7))  # (17)
    rotation *= math.sin(math.radians(60 * math.exp(-(((hue - 275) / 25) ** 2))))  # (16), (21)
    lightness_part, chroma_part, hue_part = d_lightness / s_lightness, d_chroma / s_chroma, d_hue / s_hue
    return math.sqrt(lightness_part**2 + chroma_part**2 + hue_part**2 + rotation * chroma_part * hue_part)  # (22)


def _polar(a: float, b: float) -> tuple[float, float]:
    return math.hypot(a, b), math.degrees(math.atan2(b, a)) % 360


def _turn(c1: float, h1: float, c2: float, h2: float) -> float:
    """(10): the way from one hue to the other, in degrees from -180 to 180; no hue, no way."""
    turn = 0.0 if c1 * c2 == 0 else h2 - h1
    return turn - 360 if turn > 180 else turn + 360 if turn < -180 else turn


def _cos(degrees: float) -> float:
    return math.cos(math.radians(degrees))
