"""``read`` beside bare decoders, on the same files: ``python -m tests.bench.read_bench [FOLDER...]``.

For each folder with images (by default those of sample_images/): texts read right, texts that are wrong, and the median
over the images of the time as a ratio to bare zxing-cpp, file to texts. The texts that count as right stand in NAME.txt
beside an image, one a line; without that file, or in a folder whose name says so, any text is wrong.
"""

from __future__ import annotations

import sys
from collections.abc import Callable, Sequence
from pathlib import Path
from statistics import median
from time import perf_counter

import zxingcpp
from PIL import Image, ImageOps
from pyzbar import pyzbar

from scanflow.vision import ImageError, read
from scanflow.vision.workers import Readers

SAMPLES = Path(__file__).parents[2] / "sample_images"
KINDS = {".jpg", ".jpeg", ".png", ".webp"}
FORMATS = zxingcpp.BarcodeFormats(
    [zxingcpp.BarcodeFormat.Code128, zxingcpp.BarcodeFormat.Code39Std, zxingcpp.BarcodeFormat.ITF]
)
SYMBOLS = [pyzbar.ZBarSymbol.CODE128, pyzbar.ZBarSymbol.CODE39, pyzbar.ZBarSymbol.I25]
FOREIGN = ("no_code", "ean", "upc", "falsepositives")
ROUNDS = 5

Reader = Callable[[Path], list[str]]


def bare_zxing(path: Path) -> list[str]:
    grey = ImageOps.exif_transpose(Image.open(path)).convert("L")
    barcodes = zxingcpp.read_barcodes(grey, formats=FORMATS, text_mode=zxingcpp.TextMode.Plain)
    return [barcode.text for barcode in barcodes]


def bare_zbar(path: Path) -> list[str]:
    grey = ImageOps.exif_transpose(Image.open(path)).convert("L")
    return [symbol.data.decode("latin-1") for symbol in pyzbar.decode(grey, symbols=SYMBOLS)]


def here(path: Path) -> list[str]:
    return [one.text for one in read(path).decoded]


def measured(reader: Reader, image: Path) -> tuple[list[str], float]:
    """The texts, and the shortest of a few times in milliseconds."""
    texts: list[str] = []
    times = []
    for _ in range(ROUNDS):
        begun = perf_counter()
        try:
            texts = reader(image)
        except ImageError:
            texts = []
        times.append((perf_counter() - begun) * 1000)
    return texts, min(times)


def expected(image: Path) -> list[str]:
    beside = image.with_suffix(".txt")
    if image.parent.name.startswith(FOREIGN) or not beside.exists():
        return []
    return beside.read_text(encoding="utf-8").rstrip("\n").split("\n")


def row(folder: Path, readers: dict[str, Reader]) -> str:
    images = sorted(path for path in folder.iterdir() if path.suffix.lower() in KINDS)
    right, wrong = dict.fromkeys(readers, 0), dict.fromkeys(readers, 0)
    ratios: dict[str, list[float]] = {name: [] for name in readers}
    for image in images:
        truth, bare = expected(image), 0.0
        for name, reader in readers.items():
            texts, took = measured(reader, image)
            bare = bare or took  # the first reader is what the others are compared with
            right[name] += sum(text in texts for text in truth)
            wrong[name] += sum(text not in truth for text in texts)
            ratios[name].append(took / bare)
    cells = [f"{right[name]:4} {wrong[name]:4} {median(ratios[name]):6.2f}" for name in readers]
    return f"{folder.name:18} {len(images):5} {sum(len(expected(image)) for image in images):5} | " + " | ".join(cells)


def main(folders: Sequence[Path] = ()) -> None:
    with Readers(1) as pool:
        pool.warm()
        readers: dict[str, Reader] = {
            "zxing-cpp": bare_zxing,
            "zbar": bare_zbar,
            "read": here,
            "read, worker": lambda path: [one.text for one in pool.read(path).decoded],
        }
        print(f"{'':18} {'':5} {'':5} | " + " | ".join(f"{name:^16}" for name in readers))
        print(f"{'folder':18} {'files':>5} {'texts':>5} | " + " | ".join(["read wrong  ratio"] * len(readers)))
        for folder in folders or sorted(path for path in SAMPLES.iterdir() if path.is_dir()):
            print(row(folder, readers))


if __name__ == "__main__":
    main([Path(name) for name in sys.argv[1:]])
