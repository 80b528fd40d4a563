"""Colours as people, red-light scanners and cameras see them. Colours are sRGB, written #rrggbb."""

RGB = tuple[float, float, float]

INK_REFLECTANCE = 0.02
"""Of printed black; common practice, no source."""

CONTRAST_LEAST = 0.40
"""Symbol contrast under which a symbol has grade 1 or 0 at best, ISO/IEC 15416:2000."""

_LUMINANCE: RGB = (0.2126729, 0.7151522, 0.0721750)  # IEC 61966-2-1, white D65


def linear(colour: str) -> RGB:
    """Linear light of the three channels, 0 to 1 (IEC 61966-2-1).

    >>> linear("#ff0080")
    (1.0, 0.0, 0.21586050011389926)
    """
    red, green, blue = (linear_level(int(colour[at : at + 2], 16)) for at in (1, 3, 5))
    return red, green, blue


def linear_level(level: int) -> float:
    """Linear light, 0 to 1, of a channel's level, 0 to 255."""
    channel = level / 255
    return channel / 12.92 if channel <= 0.04045 else float(((channel + 0.055) / 1.055) ** 2.4)


def luminance(colour: str) -> float:
    """Relative luminance, 0 to 1: what a camera's grey picture is made of."""
    return sum(share * light for share, light in zip(_LUMINANCE, linear(colour), strict=True))


def contrast_under_red(colour: str) -> float:
    """Symbol contrast of black bars on the colour for a scanner of 660 nm, for which the red channel stands in."""
    return max(0.0, linear(colour)[0] - INK_REFLECTANCE)


def contrast_for_camera(colour: str) -> float:
    """Symbol contrast of black bars on the colour by luminance."""
    return max(0.0, luminance(colour) - INK_REFLECTANCE)
