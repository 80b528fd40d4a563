"""Section papers: pale, and told apart without colour."""

from labels.paper import COLOURS, INK, PATTERNS, SHEETS, TILE


def luminance(colour):
    """Relative luminance of #rrggbb as WCAG 2 defines it."""
    channels = [int(colour[at : at + 2], 16) / 255 for at in (1, 3, 5)]
    linear = [c / 12.92 if c <= 0.04045 else ((c + 0.055) / 1.055) ** 2.4 for c in channels]
    return 0.2126 * linear[0] + 0.7152 * linear[1] + 0.0722 * linear[2]


def contrast(one, other):
    low, high = sorted((luminance(one), luminance(other)))
    return (high + 0.05) / (low + 0.05)


def test_contrast_formula():
    """The contrast computed here is WCAG's."""
    # WCAG contrast against white, computed independently
    found = [round(contrast(colour, "#ffffff"), 4) for colour in ("#767676", "#777777", "#FF0000", "#0000FF")]
    assert found == [4.5422, 4.4781, 3.9985, 8.5925]


def test_sheet_sizes():
    """Sheets have their published sizes in mm."""
    # ISO 216; ANSI Y14.1; 8.5 x 14 in and 4 x 6 in, common practice, no source
    sizes = {"a4": (210, 297), "letter": (215.9, 279.4), "legal": (215.9, 355.6), "4x6": (101.6, 152.4)}
    assert sizes == SHEETS


def test_every_colour_has_a_pattern_of_its_own():
    """No two papers share a pattern, so that none is known by its colour alone."""
    patterns = [paper.pattern for paper in COLOURS.values()]
    assert len(COLOURS) == len(set(patterns))
    assert len(COLOURS) == len({PATTERNS[name] for name in patterns})


def test_ink_is_readable_on_every_paper():
    """Ink on paper passes WCAG AAA for text."""
    assert [name for name, paper in COLOURS.items() if contrast(INK, paper.hex) < 7] == []


def test_strokes_stay_in_their_tile():
    """Patterns repeat without overlap."""
    points = [point for strokes in PATTERNS.values() for stroke in strokes for point in stroke]
    assert all(0 <= x <= TILE and 0 <= y <= TILE for x, y in points)
