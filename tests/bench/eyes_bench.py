"""What `read` makes of rendered pictures, beside plain decoders: `python tests/bench eyes`.

    OMP_NUM_THREADS=1 python tests/bench/eyes_bench.py [--rows WORD...] [--pictures N] [--tuning] [--book 20000]
    python tests/bench/eyes_bench.py --negatives 100000     labels of the same grammar that the book does not hold
    python tests/bench/eyes_bench.py --regions 1000000      places without a card, held against the book as labels are
    python tests/bench/eyes_bench.py --draw DIR             each row's first picture with its truth, to look at
    python tests/bench/eyes_bench.py --curves DIR           read rate against one thing at a time, as SVG
    python tests/bench/eyes_bench.py --photos FOLDER...     photographs, their texts beside them in NAME.txt

A card counts as read when its text was given at its place. Wrong is a text that is not at that place in the picture.
Shares are of cards that show at least 12 % of their bars' height in one full-width strip, with 95 % intervals by
Clopper and Pearson (Biometrika 26, 1934). Times are of the processor, file to texts, as ratios to bare decoders on the
same files: the median over pictures. OpenCV's detector reads EAN and UPC alone, so what it *finds* is shown.
"""

from __future__ import annotations

import argparse
from collections import Counter
from collections.abc import Callable, Sequence
from dataclasses import dataclass, field
from functools import cache
from math import dist
from pathlib import Path
from statistics import median
from tempfile import TemporaryDirectory
from time import process_time

import cv2
import numpy as np
from filed_scene import LEAST_VISIBLE, Filed, filed
from flat_scene import Flat, flat
from read_bench import KINDS, bare_zbar, bare_zxing, expected
from scenes import Scene, Truth, book_of, strangers_to
from scipy.stats import beta

from scanflow.vision import Book, ImageError, PictureReadings, read
from scanflow.vision.second_look.locate import Region
from scanflow.vision.second_look.match import LEAST_EXPLAINED, LEAST_MARGIN, likeness, match
from scanflow.vision.second_look.patterns import patterns
from scanflow.vision.second_look.straighten import straighten

TUNING = 10_000  # seeds from here on are for tuning, those below for the figures
BOOK = 20_000
IN_A_PICTURE = 5000  # places without a card
PUBLISHED = "smallest published: 1.05 px/module, UPC-A, deformable templates (Gallo and Manduchi, IEEE TPAMI 33, 2011)"
NEAR_FOCUS = {"distance": 500.0}
SHELF = {"bins": 5, "distance": 1050.0}

ROWS: dict[str, tuple[Flat | Filed, str]] = {
    "flat 2.0, to 12°": (Flat(px=2.0, tilt=12), "99.5"),
    "flat 2.0": (Flat(px=2.0), "99.5"),
    "flat 1.5": (Flat(px=1.5), "99.5"),
    "flat 1.0": (Flat(px=1.0), "99.5"),
    "flat 0.8": (Flat(px=0.8), "99"),
    "flat 0.6": (Flat(px=0.6), "97"),
    "flat 0.5": (Flat(px=0.5), "–"),
    "flat 0.8, blur 0.9": (Flat(px=0.8, blur=0.9), "95"),
    "flat 0.6, blur 0.9": (Flat(px=0.6, blur=0.9), "80"),
    "bin 0.72 mm": (Filed(), "99.5"),
    "bin 0.50 mm": (Filed(module=0.5), "97"),
    "near bin 0.66 mm": (Filed(module=0.66, **NEAR_FOCUS), "97"),
    "near bin 0.50 mm": (Filed(module=0.5, **NEAR_FOCUS), "93"),
    "shelf 0.72 mm": (Filed(**SHELF), "99.5"),
    "shelf 0.50 mm": (Filed(module=0.5, **SHELF), "95"),
    "shelf 0.33 mm": (Filed(module=0.33, **SHELF), "85"),
    "no card, clutter": (Flat(labels=0, foreign=150, stripes=300, marks=400, px=(0.6, 2.0)), "0 wrong"),
}


@dataclass
class Tally:
    """Of one row: what was there, what was read and by whom, and the times' ratios."""

    cards: int = 0
    others: int = 0
    wrong: int = 0
    unread: int = 0
    by: Counter[str] = field(default_factory=Counter)
    off: list[float] = field(default_factory=list)
    to_zbar: list[float] = field(default_factory=list)
    to_both: list[float] = field(default_factory=list)
    sizes: list[float] = field(default_factory=list)


def scene(seed: int, how: Flat | Filed, book: int, share: float = 0.0) -> Scene:
    renderer: Callable[..., Scene] = flat if isinstance(how, Flat) else filed
    return renderer(seed, how, book_of(book), strangers_to(book), share)


def place(corners: Sequence[tuple[float, float]]) -> tuple[float, float]:
    x, y = np.mean(corners, axis=0)
    return float(x), float(y)


def is_at(truth: Truth, corners: Sequence[tuple[float, float]]) -> bool:
    """Whether a reading's middle lies on a code's bars, a quarter of their length and height about them allowed."""
    middle = np.array(place(truth.corners))
    grown = ((np.array(truth.corners) - middle) * 1.5 + middle).astype(np.float32)
    return cv2.pointPolygonTest(grown, place(corners), False) >= 0


def score(tally: Tally, truths: Sequence[Truth], picture: PictureReadings) -> None:
    """Count one picture's readings against its truth."""
    seen: dict[int, str] = {}
    for reading in picture.readings:
        if reading.text is None:
            tally.unread += 1
            continue
        here = [number for number, one in enumerate(truths) if one.text == reading.text and is_at(one, reading.corners)]
        if not here:
            tally.wrong += 1
            tally.by[f"wrong, {reading.certainty}"] += 1
            continue
        truth = truths[here[0]]
        seen[here[0]] = str(reading.certainty)
        if truth.kind == "card" and truth.visible == 1:
            tally.off.append(max(dist(p, q) for p, q in zip(reading.corners, truth.corners, strict=True)))
    for number, truth in enumerate(truths):
        if truth.kind == "card" and truth.visible >= LEAST_VISIBLE:
            tally.cards += 1
            tally.sizes.append(truth.px_module)
            tally.by[seen.get(number, "missed")] += 1
        elif truth.kind != "card":
            tally.others += 1


def peers(tally: Tally, one: Scene, texts: dict[str, list[str]]) -> None:
    """Count what plain decoders made of it; a text anywhere in the picture is right."""
    wanted = {truth.text for truth in one.of("card") if truth.visible >= LEAST_VISIBLE}
    there = {truth.text for truth in one.truths}
    union: set[str] = set()
    for name, said in texts.items():
        tally.by[name] += len(wanted & set(said))
        tally.by[f"wrong, {name}"] += len(set(said) - there)
        union |= set(said)
    tally.by["union"] += len(wanted & union)


@cache
def detector() -> cv2.barcode.BarcodeDetector:
    return cv2.barcode.BarcodeDetector()


def opencv(tally: Tally, one: Scene) -> list[str]:
    """The texts of OpenCV's detector; counts the cards it finds."""
    _, texts, _, quads = detector().detectAndDecodeWithType(one.pixels)
    quads = [] if quads is None else [[(float(x), float(y)) for x, y in quad] for quad in quads]
    cards = [truth for truth in one.of("card") if truth.visible >= LEAST_VISIBLE]
    tally.by["OpenCV finds"] += sum(any(is_at(truth, quad) for quad in quads) for truth in cards)
    return [text for text in texts if text]


def timed(reader: Callable[[Path], list[str]], file: Path) -> tuple[list[str], float]:
    begun = process_time()
    texts = reader(file)
    return texts, process_time() - begun


def measure(tally: Tally, one: Scene, file: Path, book: Book) -> None:
    file.write_bytes(one.jpeg)
    zxing, zxing_took = timed(bare_zxing, file)
    zbar, zbar_took = timed(bare_zbar, file)
    begun = process_time()
    picture = read(file, book)
    took = process_time() - begun
    score(tally, one.truths, picture)
    peers(tally, one, {"zxing-cpp": zxing, "zbar": zbar, "OpenCV": opencv(tally, one)})
    tally.to_zbar.append(took / zbar_took)
    tally.to_both.append(took / (zbar_took + zxing_took))


def interval(hits: int, of: int) -> tuple[float, float]:
    """Clopper and Pearson's 95 % interval of a share."""
    low = 0.0 if hits == 0 else float(beta.ppf(0.025, hits, of - hits + 1))
    high = 1.0 if hits == of else float(beta.ppf(0.975, hits + 1, of - hits))
    return low, high


HEAD = (
    f"{'picture':20} {'px/module':>14} {'cards':>5} | {'read %':>6} {'95 %':>11} {'goal':>7} {'decoded':>7} "
    f"{'matched':>7} {'wrong':>5} {'unread':>6} {'off px':>6} | {'zxing':>5} {'zbar':>5} {'cv':>4} {'finds':>5} "
    f"{'union':>5} {'wrong':>5} | {'/zbar':>6} {'/both':>6}"
)


def line(name: str, goal: str, tally: Tally) -> str:
    hits = tally.by["decoded"] + tally.by["matched"]
    low, high = interval(hits, tally.cards) if tally.cards else (0.0, 1.0)

    def share(count: int) -> str:
        return f"{100 * count / tally.cards:.1f}" if tally.cards else "–"

    sizes = f"{min(tally.sizes):.2f}/{median(tally.sizes):.2f}/{max(tally.sizes):.2f}" if tally.sizes else "–"
    off = f"{median(tally.off):.1f}" if tally.off else "–"
    wrongs = sum(tally.by[f"wrong, {peer}"] for peer in ("zxing-cpp", "zbar", "OpenCV"))
    mine = (
        f"{share(hits):>6} {100 * low:5.1f}–{100 * high:5.1f} {goal:>7} {share(tally.by['decoded']):>7} "
        f"{share(tally.by['matched']):>7} {tally.wrong:5} {tally.unread:6} {off:>6}"
    )
    theirs = " ".join(
        f"{share(tally.by[peer]):>{width}}"
        for peer, width in (("zxing-cpp", 5), ("zbar", 5), ("OpenCV", 4), ("OpenCV finds", 5), ("union", 5))
    )
    times = f"{median(tally.to_zbar):6.2f} {median(tally.to_both):6.2f}"
    return f"{name:20} {sizes:>14} {tally.cards:5} | {mine} | {theirs} {wrongs:5} | {times}"


def table(words: Sequence[str], pictures: int, first: int, count: int) -> None:
    """The rows whose names hold one of the words."""
    book, total, shown = Book(book_of(count)), Tally(), 0
    print(f"{pictures} pictures a row, seeds from {first}, a book of {count:,}; {PUBLISHED}")
    print(HEAD)
    read(scene(first, Flat(size=(800, 600), labels=4), count).pixels, book)  # whatever is prepared once, is now
    with TemporaryDirectory() as folder:
        for name, (how, goal) in ROWS.items():
            if words and not any(word in name for word in words):
                continue
            tally = Tally()
            for seed in range(first, first + pictures):
                measure(tally, scene(seed, how, count), Path(folder, "picture.jpg"), book)
            print(line(name, goal, tally), flush=True)
            shown += pictures
            total.wrong, total.cards = total.wrong + tally.wrong, total.cards + tally.cards
    low, high = interval(min(total.wrong, shown), max(1, shown))
    print(f"codes that are not there: {total.wrong} in {shown} pictures (95 %: {low:.3%} – {high:.3%} of pictures)")


def books(first: int) -> None:
    """How much longer a book ten times as large takes."""
    small, large = Book(book_of(2000)), Book(book_of(20_000))
    for name in ("flat 0.8", "shelf 0.50 mm"):
        pixels, took = scene(first, ROWS[name][0], 2000).pixels, {}
        for book in (small, large, small, large):  # the first of each may prepare its book
            begun = process_time()
            read(pixels, book)
            took[len(book)] = process_time() - begun
        print(f"{name}: 20,000 texts take {took[20_000] / took[2000]:.2f} times as long as 2,000 (goal ≤ 1.5)")


def draw(folder: Path, words: Sequence[str], first: int, count: int) -> None:
    """Pictures with what is in them: cards red where they show, else blue; all else yellow; a dot begins reading."""
    folder.mkdir(parents=True, exist_ok=True)
    for name, (how, _) in ROWS.items():
        if words and not any(word in name for word in words):
            continue
        one = scene(first, how, count)
        picture = cv2.cvtColor(one.pixels, cv2.COLOR_GRAY2BGR)
        for truth in one.truths:
            shows = (0, 0, 255) if truth.visible >= LEAST_VISIBLE else (255, 64, 0)
            colour = shows if truth.kind == "card" else (0, 200, 200)
            places = np.round(np.array(truth.corners) * 16).astype(np.int32)
            cv2.polylines(picture, [places], True, colour, 1, cv2.LINE_AA, 4)
            cv2.circle(picture, places[0].tolist(), 48, (0, 220, 0), -1, cv2.LINE_AA, 4)
        cv2.imwrite(str(folder / f"{name.replace(' ', '_')}.jpg"), picture)


def negatives(labels: int, first: int, count: int) -> None:
    """Labels of the same grammar that are not in the book, as many to a picture as are looked at, and foreign codes."""
    book, tally, strangers, seed = Book(book_of(count)), Tally(), 0, first
    while strangers < labels:
        px = (0.6, 0.8, 1.0, 1.5, 2.0)[seed % 5]
        how = Flat(px=px, labels=300, tilt=(180.0, 15.0)[seed % 2], blur=(0.6, 0.9, 0.6)[seed % 3], warp=0.006)
        one = scene(seed, how, count, share=1.0)
        picture = read(one.pixels, book)
        score(tally, one.truths, picture)
        named = {truth.text for truth in one.of("stranger")}
        tally.by["decoded rightly"] += sum(reading.text in named for reading in picture.readings)
        strangers += len(one.of("stranger"))
        seed += 1
    low, high = interval(tally.wrong, strangers)
    print(
        f"{strangers:,} labels that are not in a book of {count:,}, {tally.others - strangers:,} foreign codes, "
        f"{seed - first} pictures: {tally.by['wrong, matched']} matched and {tally.by['wrong, decoded']} decoded "
        f"wrongly (95 %: {low:.4%} – {high:.4%}), {tally.by['decoded rightly']:,} decoded rightly, "
        f"{tally.unread:,} reported unread"
    )


def regions(wanted: int, first: int, count: int) -> None:
    """Places in pictures without a card, at any angle and of any length that is sought, as if they had been located."""
    codes = patterns(Book(book_of(count)))
    random, compared, near, wrong = np.random.default_rng(first), 0, 0.0, 0
    for number in range(-(-wanted // IN_A_PICTURE)):
        grey = scene(first + number, ROWS["no card, clutter"][0], count).pixels
        for _ in range(IN_A_PICTURE):
            x, y, angle = random.uniform((0, 0, -np.pi), (grey.shape[1], grey.shape[0], np.pi))
            strip = straighten(grey, Region(x, y, angle, 0.0, random.uniform(33, 146), -6.0, 6.0, 0.0, 0.0))
            for group in codes if strip else ():
                like = likeness(strip, group.mean)
                best = match(strip, group, like) if like.ends else None
                if best and best.explained >= LEAST_EXPLAINED:
                    near = max(near, best.margin)
                compared, wrong = compared + 1, wrong + bool(best and best.sure)
    low, high = interval(wrong, compared)
    print(
        f"{compared:,} places without a card, a book of {count:,}: {wrong} matched (95 %: {low:.5%} – {high:.5%}); "
        f"greatest margin {near:.0f}, of the {LEAST_MARGIN:.0f} that it takes"
    )


def photos(folders: Sequence[Path], count: int) -> None:
    """Photographs: what zxing-cpp reads, what `read` reads of it and at all, and texts that are not theirs."""
    book = Book(book_of(count))
    print(f"{'folder':20} {'files':>5} {'texts':>5} | {'zxing':>5} | {'of it':>5} {'read':>5} {'wrong':>5} {'book':>6}")
    for folder in folders:
        files = sorted(path for path in folder.iterdir() if path.suffix.lower() in KINDS)
        for named, codes in (("none", None), (f"{count:,}", book)):
            tally: Counter[str] = Counter()
            for file in files:
                truth = expected(file)
                plain = set(bare_zxing(file))
                try:
                    ours = {one.text for one in read(file, codes).readings if one.text is not None}
                except ImageError:
                    ours = set()
                plain &= set(truth)
                tally.update(texts=len(truth), zxing=len(plain), kept=len(plain & ours))
                tally.update(read=len(ours & set(truth)), wrong=len(ours - set(truth)))
            print(
                f"{folder.name:20} {len(files):5} {tally['texts']:5} | {tally['zxing']:5} | {tally['kept']:5} "
                f"{tally['read']:5} {tally['wrong']:5} {named:>6}"
            )


def main(options: Sequence[str] = ("--pictures", "1")) -> None:
    parser = argparse.ArgumentParser(prog="eyes_bench")
    parser.add_argument("--rows", nargs="+", default=[], help="words of the rows' names")
    parser.add_argument("--pictures", type=int, default=4)
    parser.add_argument("--tuning", action="store_true", help="other seeds than those of the figures")
    parser.add_argument("--book", type=int, default=BOOK)
    parser.add_argument("--negatives", type=int, metavar="LABELS")
    parser.add_argument("--regions", type=int, metavar="PLACES")
    parser.add_argument("--draw", type=Path, metavar="DIR")
    parser.add_argument("--curves", type=Path, metavar="DIR")
    parser.add_argument("--photos", type=Path, nargs="+", metavar="FOLDER")
    chosen = parser.parse_args(options)
    if chosen.pictures >= TUNING:
        parser.error(f"--pictures must be under {TUNING}")
    cv2.setNumThreads(1)
    first = TUNING if chosen.tuning else 0
    if chosen.photos:
        photos(chosen.photos, chosen.book)
    elif chosen.draw:
        draw(chosen.draw, chosen.rows, first, chosen.book)
    elif chosen.curves:
        from eyes_curves import curves

        curves(chosen.curves, chosen.pictures, first, chosen.book)
    elif chosen.regions:
        regions(chosen.regions, first, chosen.book)
    elif chosen.negatives:
        negatives(chosen.negatives, first, chosen.book)
    else:
        table(chosen.rows, chosen.pictures, first, chosen.book)
        if not chosen.rows:
            books(first)
            negatives(1000, first, chosen.book)
            regions(IN_A_PICTURE, first, chosen.book)


if __name__ == "__main__":
    import sys

    main(sys.argv[1:])
