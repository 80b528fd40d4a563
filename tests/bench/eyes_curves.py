"""Read rate against one thing at a time, on flat labels of any angle, drawn as SVG."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass, replace
from pathlib import Path
from tempfile import TemporaryDirectory
from typing import Any

from eyes_bench import PUBLISHED, Tally, interval, peers, score
from flat_scene import Flat, flat
from read_bench import bare_zbar, bare_zxing
from scenes import Scene, book_of

from scanflow.vision import Book, read

BASE = Flat(px=0.8, labels=40, size=(2016, 1512), foreign=5)
STEPS: dict[str, tuple[str, str, Flat, Sequence[Any]]] = {
    "size": ("pixels per module", "px", BASE, (0.4, 0.45, 0.5, 0.55, 0.6, 0.7, 0.8, 1.0, 1.3, 1.6, 2.0, 2.5)),
    "tilt": ("tilt in degrees, 2 px/module", "tilt", replace(BASE, px=2.0), (0, 4, 8, 12, 16, 20, 30, 45, 60, 75, 90)),
    "defocus": (
        "disc of defocus in modules, 2 px/module",
        "disc",
        replace(BASE, px=2.0),
        (0, 0.5, 1, 1.5, 2, 2.5, 3, 4),
    ),
    "noise": ("noise, sigma in grey levels, 0.8 px/module", "noise", BASE, (0, 2, 4, 8, 12, 16, 24, 32)),
    "jpeg": ("JPEG quality, 0.8 px/module", "quality", BASE, (20, 30, 40, 50, 60, 70, 80, 90, 98)),
    "contrast": (
        "contrast of paper and ink, 0.8 px/module",
        "contrast",
        BASE,
        (0.05, 0.1, 0.15, 0.2, 0.3, 0.5, 0.75, 1),
    ),
    "strip": ("height of the bars that show in modules, 0.8 px/module", "height", BASE, (1, 2, 3, 4, 6, 9, 13, 19, 26)),
    "blur": ("blur, sigma in px, 0.8 px/module", "blur", BASE, (0.3, 0.45, 0.6, 0.75, 0.9, 1.05, 1.2, 1.5)),
    "motion": ("motion in px, 1.5 px/module", "motion", replace(BASE, px=1.5), (0, 0.5, 1, 1.5, 2, 3, 4, 5)),
    "tone": ("exponent of the tone curve, 0.8 px/module", "gamma", BASE, (1, 1.4, 1.8, 2.2, 2.6)),
}
WIDE, HIGH, LEFT, TOP = 640, 360, 56, 40
FIGURE, GAP = 7.5, 6  # of a label below: width of a character of 13 px, and what is left free between two


@dataclass(frozen=True)
class Point:
    at: float
    cards: int
    read: int
    decoded: int
    plain: int
    wrong: int


def curves(folder: Path, pictures: int, first: int, count: int) -> None:
    """Write a drawing for each of STEPS, and print its figures."""
    folder.mkdir(parents=True, exist_ok=True)
    book = Book(book_of(count))
    for name, (title, field, base, values) in STEPS.items():
        points = [_point(value, _with(base, field, value), range(first, first + pictures), book) for value in values]
        print(f"{title}\n{'':>8} {'cards':>6} {'read %':>7} {'decoded':>7} {'plain':>6} {'wrong':>5}")
        for one in points:
            shares = [100 * part / one.cards for part in (one.read, one.decoded, one.plain)]
            print(
                f"{one.at:8g} {one.cards:6} {shares[0]:7.1f} {shares[1]:7.1f} {shares[2]:6.1f} {one.wrong:5}",
                flush=True,
            )
        (folder / f"{name}.svg").write_text(
            drawing(title, points, PUBLISHED if name == "size" else ""), encoding="utf-8"
        )


def _with(base: Flat, field: str, value: float) -> Flat:
    if field == "tilt":
        return replace(base, tilt=(float(value), float(value)))
    if field == "motion":
        return replace(base, motion=(float(value), 30.0))
    if field == "disc":
        return replace(base, disc=value * base.px)
    return replace(base, **{field: value})


def _point(value: float, how: Flat, seeds: range, book: Book) -> Point:
    tally = Tally()
    for seed in seeds:
        one = flat(seed, how, book.texts)
        score(tally, one.truths, read(one.pixels, book))
        peers(tally, one, _plain(one))
    hits = tally.by["decoded"] + tally.by["matched"]
    return Point(float(value), tally.cards, hits, tally.by["decoded"], tally.by["union"], tally.wrong)


def _plain(one: Scene) -> dict[str, list[str]]:
    with TemporaryDirectory() as folder:
        file = Path(folder, "picture.jpg")
        file.write_bytes(one.jpeg)
        return {"zxing-cpp": bare_zxing(file), "zbar": bare_zbar(file)}


def drawing(title: str, points: Sequence[Point], below: str) -> str:
    """Shares with their 95 % intervals: `read` whole, plain decoders' union dashed."""
    least, most = points[0].at, points[-1].at

    def place(at: float, share: float) -> str:
        x = LEFT + (at - least) / (most - least) * (WIDE - LEFT - 24)
        return f"{x:.1f},{TOP + (1 - share) * (HIGH - TOP - 64):.1f}"

    def path(part: str) -> str:
        return " ".join(place(one.at, getattr(one, part) / one.cards) for one in points)

    out = [
        f'<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 {WIDE} {HIGH}" font-family="sans-serif" font-size="13">',
        f'<rect width="{WIDE}" height="{HIGH}" fill="#fff"/><text x="{LEFT}" y="24" font-weight="bold">{title}</text>',
    ]
    for share in (0, 0.25, 0.5, 0.75, 1):
        x, y = place(least, share).split(",")
        out.append(f'<path d="M{x} {y}H{WIDE - 24}" stroke="#ddd"/>')
        out.append(f'<text x="{LEFT - 8}" y="{float(y) + 4:.1f}" text-anchor="end">{share:.0%}</text>')
    free = -1.0  # where the next label may begin: of points close together only some are named
    for one in points:
        x, y = place(one.at, 0).split(",")
        half = FIGURE * len(f"{one.at:g}") / 2
        if float(x) - half >= free:
            free = float(x) + half + GAP
            out.append(f'<text x="{x}" y="{float(y) + 18:.1f}" text-anchor="middle">{one.at:g}</text>')
        low, high = interval(one.read, one.cards)
        (x, top), (_, foot) = (place(one.at, share).split(",") for share in (high, low))
        out.append(f'<path d="M{x} {top}V{foot}" stroke="#06c" stroke-width="5" opacity=".25"/>')
    for part, style in (
        ("plain", 'stroke="#555" stroke-dasharray="5 4"'),
        ("decoded", 'stroke="#06c" stroke-dasharray="2 3"'),
        ("read", 'stroke="#06c" stroke-width="2.5"'),
    ):
        out.append(f'<polyline points="{path(part)}" fill="none" {style}/>')
    out.append(f'<text x="{LEFT}" y="{HIGH - 24}">Solid: read, with 95 % intervals. Dotted: of it decoded. ')
    out.append(
        f'Dashed: zxing-cpp or zbar.</text><text x="{LEFT}" y="{HIGH - 8}" font-size="10">{below}</text></svg>\n'
    )
    return "\n".join(out)
