"""The curve of a sizing as SVG: the risk of finding no free card against the number of cards, in pixels."""

from __future__ import annotations

from collections.abc import Callable
from math import ceil, floor, log10

from scanflow.planning.sizing import Point, Sizing

WIDTH, HEIGHT = 360.0, 250.0
LEFT, RIGHT, TOP, BOTTOM = 92.0, 20.0, 14.0, 46.0  # room for words around the curve
LOWEST = 1e-4  # risks below it are drawn on the floor
TICKS = 60  # so many bins are marked at most
LABEL = 14.0

_Place = Callable[[float], float]


def curve(sizing: Sizing, have: Point | None = None) -> str:
    """Risk on a logarithmic scale; a disc at the cards chosen, a ring at one bin more, a square at those there are."""
    points = [*sizing.curve, *([have] if have else [])]
    least, most = min(point.slots for point in points), max(point.slots for point in points)
    top = ceil(log10(max(LOWEST * 10, *(point.risk for point in points))))
    floor_ = floor(log10(LOWEST))

    def across(slots: float) -> float:
        return LEFT + (slots - least) / max(1, most - least) * (WIDTH - LEFT - RIGHT)

    def down(risk: float) -> float:
        return TOP + (top - log10(max(risk, LOWEST))) / (top - floor_) * (HEIGHT - TOP - BOTTOM)

    drawn = " ".join(f"{across(point.slots):.1f},{down(point.risk):.1f}" for point in sizing.curve)
    body = [
        *_risks(top, floor_, down),
        *_cards(least, most, sizing.slots_per_bin, across),
        f'<polyline class="risk" fill="none" stroke-width="2.5" points="{drawn}"/>',
        _mark(sizing.one_more, "ring", across, down),
        _mark(sizing.chosen, "chosen", across, down),
        *([_mark(have, "have", across, down)] if have else []),
    ]
    return (
        f'<svg xmlns="http://www.w3.org/2000/svg" class="curve" role="img" viewBox="0 0 {WIDTH:g} {HEIGHT:g}" '
        f'stroke="currentColor" font-size="{LABEL:g}"><title>Things that find no free card, by the number of cards'
        f"</title>{''.join(body)}</svg>"
    )


def _risks(top: int, bottom: int, down: _Place) -> list[str]:
    """A line for each power of ten."""
    lines = []
    for power in range(bottom, top + 1):
        y = down(10.0**power)
        words = f"1 in {10**-power:,}" if power < 0 else "all"
        lines.append(
            f'<path class="grid" d="M{LEFT:g} {y:.1f}H{WIDTH - RIGHT:g}"/>{_text(LEFT - 6, y + 5, words, "end")}'
        )
    return lines


def _cards(least: int, most: int, slots_per_bin: int, across: _Place) -> list[str]:
    """A tick for every full bin, and the numbers of cards at both ends and in the middle."""
    y = HEIGHT - BOTTOM
    full = range(ceil(least / slots_per_bin), most // slots_per_bin + 1)
    ticks = "".join(f"M{across(bins * slots_per_bin):.1f} {y:g}v6" for bins in full) if len(full) <= TICKS else ""
    said = [
        _text(across(slots), y + 22, f"{slots:,}", "middle") for slots in sorted({least, (least + most) // 2, most})
    ]
    return [
        f'<path d="M{LEFT:g} {y:g}H{WIDTH - RIGHT:g}{ticks}"/>',
        *said,
        _text(WIDTH - RIGHT, y + 40, "cards", "end"),
    ]


def _mark(point: Point, name: str, across: _Place, down: _Place) -> str:
    x, y = across(point.slots), down(point.risk)
    if name == "have":
        box = f'x="{x - 6:.1f}" y="{y - 6:.1f}" width="12" height="12"'
        return f'<rect class="have" {box} fill="none" stroke-width="2.5"/>'
    fill = "currentColor" if name == "chosen" else "none"
    return f'<circle class="{name}" cx="{x:.1f}" cy="{y:.1f}" r="7" fill="{fill}" stroke-width="2"/>'


def _text(x: float, y: float, words: str, anchor: str) -> str:
    return f'<text x="{x:.1f}" y="{y:.1f}" text-anchor="{anchor}" fill="currentColor" stroke="none">{words}</text>'
