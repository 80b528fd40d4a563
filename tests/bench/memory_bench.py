"""Memory that a worker takes at its peak to read one large photograph, in a fresh process for each."""

from __future__ import annotations

import io
import re
from pathlib import Path

import numpy as np
import pillow_heif
from PIL import Image

from labels import code128, slot_code
from scanflow.vision import Book
from scanflow.vision.workers import Readers

GOAL = 600
"""MB, for 48 megapixels."""


def main() -> None:
    """Prints megabytes of resident memory: of a worker that read nothing yet, and at the peak of one picture."""
    print(f"Goal: at most {GOAL} MB for 48 MP")
    print(f"{'picture':12} {'book':>6} {'ready':>6} {'peak':>6} {'decoded':>8} {'s':>5}")
    small, large = crowded(4032, 3024), crowded(8064, 6048)
    for name, data, count in (
        ("12 MP JPEG", as_jpeg(small), 0),
        ("48 MP JPEG", as_jpeg(large), 0),
        ("48 MP JPEG", as_jpeg(large), 20_000),
        ("48 MP HEIC", as_heic(large), 20_000),
    ):
        print(row(name, data, count), flush=True)


def row(name: str, data: bytes, count: int) -> str:
    book = Book(texts(count)) if count else None
    with Readers(1, seconds=600) as readers:
        readers.warm()
        process = readers._all[0]._process
        assert process is not None
        ready = peak(process.pid)
        picture = readers.read(data, book)
        most = peak(process.pid)
    said = "" if most <= GOAL else "   over the goal"
    return f"{name:12} {count:6} {ready:6.0f} {most:6.0f} {len(picture.decoded):8} {picture.ms / 1000:5.1f}{said}"


def peak(pid: int) -> float:
    """Megabytes of resident memory at the peak so far (VmHWM of proc(5))."""
    status = Path(f"/proc/{pid}/status").read_text(encoding="ascii")
    found = re.search(r"VmHWM:\s+(\d+) kB", status)
    assert found is not None
    return int(found[1]) / 1024


def texts(count: int) -> list[str]:
    """So many card texts of four-figure numbers."""
    return [slot_code.card_text(f"{letter}{number:04}") for letter in "CDLSW" for number in range(1, 10_000)][:count]


def crowded(width: int, height: int) -> Image.Image:
    """Many cards, some of them too blurred to read, with the noise of a camera all over."""
    page = Image.new("L", (width, height), 160)
    step = width // 8
    for place, text in enumerate(texts(96)):
        card = bars(text).resize((step * 3 // 4, step // 4), Image.Resampling.BOX)
        if place % 3 == 2:
            card = card.reduce(6).resize(card.size, Image.Resampling.BICUBIC)
        page.paste(
            card.rotate(7 * place % 360, expand=True, fillcolor=160), (place % 8 * step, place // 8 * height // 12)
        )
    noise = np.random.default_rng(1).normal(0, 4, (height // 6, width // 6)).astype(np.int16)
    levels = np.asarray(page, dtype=np.int16) + np.tile(noise, (6, 6))
    return Image.fromarray(np.clip(levels, 0, 255).astype(np.uint8)).convert("RGB")


def bars(text: str) -> Image.Image:
    """A card's bars in black on white, 4 pixels a module, with quiet zones."""
    row = [level for place, width in enumerate(code128.widths(text)) for level in [255 * (place % 2)] * 4 * width]
    quiet = [255] * 4 * code128.QUIET
    return Image.fromarray(np.tile(np.array(quiet + row + quiet, dtype=np.uint8), (150, 1)))


def as_jpeg(image: Image.Image) -> bytes:
    out = io.BytesIO()
    image.save(out, "JPEG", quality=92)
    return out.getvalue()


def as_heic(image: Image.Image) -> bytes:
    out = io.BytesIO()
    pillow_heif.from_pillow(image).save(out, quality=30)
    return out.getvalue()


if __name__ == "__main__":
    main()
