"""The palette can be read: contrast of every pair by WCAG 2.2, and the papers are those of the printed cards."""

from __future__ import annotations

import re
from itertools import pairwise, product
from pathlib import Path

import pytest

import scanflow.web
from labels.paper import COLOURS, INK, PATTERNS
from scanflow.web.pages import edge_styles

CSS = (Path(scanflow.web.__file__).parent / "static" / "style.css").read_text(encoding="utf-8")
ROOTS = re.findall(r":root \{([^}]*)\}", CSS)


def palette(theme: str) -> dict[str, str]:
    """The colours of a theme by name; the dark one changes some of the light one."""
    colours = [dict(re.findall(r"--([a-z-]+): (#[0-9a-f]{6});", root)) for root in ROOTS]
    return colours[0] if theme == "light" else colours[0] | colours[1]


def luminance(colour: str) -> float:
    """Relative luminance, WCAG 2.2."""
    parts = [int(colour[i : i + 2], 16) / 255 for i in (1, 3, 5)]
    red, green, blue = (part / 12.92 if part <= 0.04045 else ((part + 0.055) / 1.055) ** 2.4 for part in parts)
    return 0.2126 * red + 0.7152 * green + 0.0722 * blue


def contrast(one: str, other: str) -> float:
    """Contrast ratio, WCAG 2.2."""
    low, high = sorted((luminance(one), luminance(other)))
    return (high + 0.05) / (low + 0.05)


@pytest.mark.parametrize(
    ("colour", "expected"), [("#767676", 4.5422), ("#777777", 4.4781), ("#ff0000", 3.9985), ("#0000ff", 8.5925)]
)
def test_contrast(colour: str, expected: float) -> None:
    """The ratio against white is the known one."""  # computed with an independent implementation
    assert expected == round(contrast(colour, "#ffffff"), 4)


@pytest.mark.parametrize("theme", ["light", "dark"])
def test_text_can_be_read(theme: str) -> None:
    """Every text colour on every ground it stands on has at least 4.5 to 1."""
    colours = palette(theme)
    pairs = [(text, ground) for text, ground in product(("ink", "soft", "accent"), ("ground", "panel"))]
    pairs += [(name, name.removeprefix("on-")) for name in colours if name.startswith("on-")]
    assert 12 == len(pairs)
    poor = {pair: ratio for pair in pairs if (ratio := contrast(colours[pair[0]], colours[pair[1]])) < 4.5}
    assert {} == poor


@pytest.mark.parametrize("theme", ["light", "dark"])
def test_borders_can_be_seen(theme: str) -> None:
    """What tells a control, a ring or a band from its ground has at least 3 to 1."""
    colours = palette(theme)
    pairs = (("rule", "ground"), ("rule", "panel"), ("ring", "yes"), ("band", "no"), ("accent", "ground"))
    poor = {pair: ratio for pair in pairs if (ratio := contrast(colours[pair[0]], colours[pair[1]])) < 3}
    assert {} == poor


def test_one_palette() -> None:
    """No colour stands outside the palette."""
    assert [] == re.findall(r"#[0-9a-f]{3,8}\b|rgba?\(|hsla?\(", re.sub(r":root \{[^}]*\}", "", CSS))


def test_one_scale_of_type() -> None:
    """Texts have one of five sizes, each about a quarter more than the one before; only plates and verdicts grow."""
    sizes = [float(size) for size in re.findall(r"--s\d: ([0-9.]+)rem;", ROOTS[0])]
    assert 5 == len(sizes)
    assert all(1.14 < larger / smaller < 1.26 for smaller, larger in pairwise(sizes))
    used = set(re.findall(r"font-size: ([^;]+);", CSS)) - {f"var(--s{n})" for n in range(1, 6)}
    plate = {"var(--at)", "0.5em"}
    field = {"max(1rem, 16px)"}  # below 16 px a phone zooms into the field
    assert all(size.startswith("clamp(") for size in used - plate - field)


def test_yes_and_no_differ_in_lightness() -> None:
    """Without any colour a yes is light and a no is dark, far apart, in both themes."""
    for theme in ("light", "dark"):
        assert contrast(palette(theme)["yes"], palette(theme)["no"]) > 12


def test_papers_are_those_of_the_cards() -> None:
    """Each paper of `labels` has its class with its colour and, unless plain, the strokes of its pattern."""
    sheet = edge_styles.stylesheet()
    assert [f".edge-{name}" for name in COLOURS] == re.findall(r"^\.edge-[a-z]+", sheet, re.MULTILINE)
    for name, paper in COLOURS.items():
        rule = next(line for line in sheet.splitlines() if line.startswith(f".edge-{name}{{"))
        assert (True, bool(PATTERNS[paper.pattern])) == (paper.hex in rule, "url(" in rule)
        assert contrast(INK, paper.hex) > 7
        assert len(PATTERNS[paper.pattern]) == edge_styles.tile(paper.pattern).count("<polyline")
