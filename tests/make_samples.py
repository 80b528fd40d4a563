"""Makes sample_images/: ``PYTHONPATH=tests/bench python tests/make_samples.py [FOLDER]``: each time the same files.

Cards are printed to PDF, rendered and photographed; beside each NAME.jpg stands NAME.txt with the texts in it, one a
line. What lies in no_code/ must read as nothing: goods with retail codes, stripes, grids, type. BOOKED are read with
a book: drawings by the renderers of the bench, with labels too small, or too much covered, for a decoder, and with
labels that the book does not hold.
"""

from __future__ import annotations

import io
import shutil
import sys
from collections.abc import Callable, Iterator
from pathlib import Path
from typing import Any

import numpy as np
import pypdfium2
import zxingcpp
from filed_scene import Filed, filed
from flat_scene import Flat, flat
from numpy.typing import NDArray
from PIL import Image, ImageDraw, ImageFont
from scenes import book_of, strangers_to

from labels import card, draw, sheet, slot_code
from labels.paper import COLOURS
from labels.shape import SheetArea
from scanflow.demo.snapshot import photograph

ROOT = Path(__file__).parents[1] / "sample_images"

Pixels = NDArray[np.uint8]
Sample = tuple[str, list[str], Callable[[], bytes]]

_MODULE_PIXELS = 6
_APART = 8.0  # mm
_CARD = (76.0, 50.0)  # mm: wide enough for the widest bars
_GOODS = {"D": "Derailleurs", "S": "Saddles", "L": "Lamps", "C": "Cranks", "W": "Wheels", "LP": "Lamp parts"}
_COLOURS = dict(zip(_GOODS, ("yellow", "orange", "pink", "green", "blue", "violet"), strict=True))

CONDITIONS: dict[str, list[dict[str, Any]]] = {
    "straight": [{"size": size} for size in (500, 600, 700, 900)],
    "tilted": [{"tilt": tilt} for tilt in (-14, -9, 6, 12, 17)],
    "upside_down": [{"tilt": tilt} for tilt in (180, 176, 185)],
    "sideways": [{"tilt": tilt} for tilt in (90, 268)],
    "perspective": [{"perspective": share, "tilt": tilt} for share, tilt in ((0.1, 0), (0.2, 3), (0.3, -4))],
    "blurred": [{"blur": blur} for blur in (2, 3, 4, 5)],
    "noisy": [{"noise": noise, "quality": 60} for noise in (12, 24, 32, 40)],
    "dim": [{"light": light, "noise": 4} for light in (0.3, 0.2, 0.12, 0.08)],
    "low_contrast": [{"contrast": contrast, "noise": 3} for contrast in (0.4, 0.3, 0.2, 0.12)],
    "bagged": [{"glare": glare, "contrast": 0.8, "blur": 1.0} for glare in (0.5, 0.7, 0.85, 1.0)],
    "far": [{"size": size, "quality": 90} for size in (280, 240, 210, 180)],
}

_FEW = {"labels": 8, "size": (1000, 750), "foreign": 2, "stripes": 5, "marks": 25, "quality": 85}
_BIN = {"size": (2016, 1512), "quality": 75}
BOOK = book_of(2000)
BOOKED: dict[str, list[tuple[str, Flat | Filed]]] = {
    "small_bars": [(f"{px} px a module", Flat(px=px, **_FEW)) for px in (0.6, 0.8, 1.0)],
    "filed": [(f"{module} mm a module", Filed(module=module, **_BIN)) for module in (0.72, 0.5)],
    "not_in_book": [(f"{px} px a module", Flat(px=px, **_FEW)) for px in (0.8, 1.2)],
}
"""What is read with BOOK, by condition and name; of the labels in `not_in_book` BOOK holds none."""


def samples() -> Iterator[Sample]:
    """Path without suffix below sample_images, the texts in the picture, and what makes its JPEG."""
    seed = 0
    for condition, shots in CONDITIONS.items():
        for shot in shots:
            seed += 1
            code = _code(seed)
            yield f"{condition}/{code.lower()}", [slot_code.card_text(code)], _shot(_cards, [code], seed=seed, **shot)
    for seed in range(101, 105):
        pair = [_code(seed), _code(seed + 50)]
        texts = [slot_code.card_text(code) for code in pair]
        yield "two_cards/" + "_".join(pair).lower(), texts, _shot(_cards, pair, seed=seed, size=850, tilt=seed - 103)
    for symbology, text in (("Code39", "BOX-17"), ("Code39", "A0042"), ("ITF", "00123457"), ("ITF", "3600081500")):
        yield f"adopted/{symbology}_{text}".lower(), [text], _shot(_symbol, symbology, text, seed=len(text), tilt=2)
    for seed, (name, (draws, *arguments)) in enumerate(_WITHOUT_CODE.items()):
        yield f"no_code/{name}", [], _shot(draws, *arguments, seed=seed, tilt=seed % 5 - 2)
    for condition, shots in BOOKED.items():
        for seed, (name, how) in enumerate(shots):
            share = float(condition == "not_in_book")
            name = name.replace(" ", "_").replace(".", "_")
            yield f"{condition}/{name}", *_rendered(how, seed, share)


def _rendered(how: Flat | Filed, seed: int, share: float) -> tuple[list[str], Callable[[], bytes]]:
    draws: Callable[..., Any] = flat if isinstance(how, Flat) else filed
    scene = draws(seed, how, BOOK, strangers_to(len(BOOK)), share)
    cards = [truth.text for truth in scene.truths if truth.kind != "foreign" and truth.visible]
    return cards, lambda: scene.jpeg


def _shot(page: Callable[..., Pixels], *arguments: Any, **settings: Any) -> Callable[[], bytes]:
    return lambda: photograph(page(*arguments), **{"size": 640, "quality": 75, **settings})


def _code(seed: int) -> str:
    section = list(_GOODS)[seed % len(_GOODS)]
    return slot_code.make(section, seed * 37 % 100 if len(section) > 1 else seed * 37 % 1000)


def _cards(codes: list[str]) -> Pixels:
    """Cards one above the other as their PDF renders, 6 pixels a module."""
    width, height = _CARD
    cards = []
    for row, code in enumerate(codes):
        section = slot_code.section_of(code)
        look = card.CardDesign(_GOODS[section], COLOURS[_COLOURS[section]])
        cards.append(card.slot_card(code, look, SheetArea(0, row * (height + _APART), width, height)))
    out = io.BytesIO()
    draw.pdf([sheet.SheetPage(width, len(codes) * (height + _APART) - _APART, tuple(cards))], out, title="Cards")
    points = card.module_width(slot_code.card_text(codes[0]), width) * 72 / 25.4
    page = pypdfium2.PdfDocument(out.getvalue())[0].render(scale=_MODULE_PIXELS / points)
    return np.asarray(page.to_pil().convert("RGB"))


def _without_bars() -> Pixels:
    return _cards(["D014"])[300:]


def _symbol(symbology: str, text: str) -> Pixels:
    """A label with one symbol and nothing else, 6 pixels a module."""
    barcode = zxingcpp.create_barcode(text, zxingcpp.BarcodeFormat.__members__[symbology])
    bars = np.asarray(barcode.to_image(scale=_MODULE_PIXELS))
    label = np.full((bars.shape[0] + 120, bars.shape[1] + 160), 255, np.uint8)
    label[60 : 60 + bars.shape[0], 80 : 80 + bars.shape[1]] = bars
    return np.repeat(label[..., None], 3, axis=2)


def _pattern(ink: Any) -> Pixels:
    y, x = np.mgrid[0:500, 0:700]
    return np.where(np.asarray(ink(x, y), dtype=bool)[..., None], np.uint8(240), np.uint8(20)).repeat(3, axis=2)


def _type() -> Pixels:
    page = Image.new("RGB", (700, 500), "white")
    pen, font = ImageDraw.Draw(page), ImageFont.load_default(22)
    for line in range(18):
        pen.text(
            (20, 12 + 27 * line), f"{line + 1:03d}  Saddle, leather, rails straight  IIIlll||| 0101", "black", font
        )
    return np.asarray(page)


def _clutter() -> Pixels:
    random = np.random.default_rng(7)
    page = Image.new("RGB", (700, 500), (120, 110, 100))
    pen = ImageDraw.Draw(page)
    for _ in range(250):
        x, y, width, height, *shade = random.integers(
            (0, 0, 2, 2, 0, 0, 0), (700, 500, 60, 120, 256, 256, 256)
        ).tolist()
        pen.rectangle((x, y, x + width, y + height), fill=tuple(shade))
    return np.asarray(page)


_WITHOUT_CODE: dict[str, tuple[Any, ...]] = {
    "ean13_a": (_symbol, "EAN13", "2000000000015"),
    "ean13_b": (_symbol, "EAN13", "2012345678903"),
    "ean8": (_symbol, "EAN8", "20123451"),
    "upca": (_symbol, "UPCA", "200000000004"),
    "qr": (_symbol, "QRCode", "reclaimed bicycle parts"),
    "stripes": (_pattern, lambda x, y: (x // 9) % 2),
    "stripes_uneven": (_pattern, lambda x, y: np.sin(x / 7.0) + np.sin(x / 3.1) > 0),
    "spokes": (_pattern, lambda x, y: np.sin(36 * np.arctan2(y - 250, x - 350)) > 0),
    "grid": (_pattern, lambda x, y: ((x // 12) % 3 > 0) & ((y // 12) % 3 > 0)),
    "checks": (_pattern, lambda x, y: (x // 25 + y // 25) % 2),
    "type": (_type,),
    "clutter": (_clutter,),
    "card_without_bars": (_without_bars,),
}


def main(root: Path) -> None:
    """Replace every condition's folder below ``root``."""
    made = list(samples())
    for condition in {name.split("/")[0] for name, _, _ in made}:
        shutil.rmtree(root / condition, ignore_errors=True)
        (root / condition).mkdir(parents=True)
    for name, texts, take in made:
        (root / f"{name}.jpg").write_bytes(take())
        (root / f"{name}.txt").write_text("".join(f"{text}\n" for text in texts), encoding="utf-8")
    print(f"{len(made)} pictures in {root}", file=sys.stderr)


if __name__ == "__main__":
    main(Path(sys.argv[1]) if len(sys.argv) > 1 else ROOT)
