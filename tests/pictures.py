"""A card drawn with known corners, and image files made of it."""

from __future__ import annotations

import io
import struct
import zlib
from typing import Any

import numpy as np
import zxingcpp
from PIL import Image

from scanflow.vision import PictureReadings

TEXT = "D0145"
LEFT, TOP, MODULE, HEIGHT = 70, 50, 4, 160
LENGTH = 79 * MODULE  # of TEXT, without quiet zones
WIDE, HIGH = 480, 300

# Where the bars lie on the card below, clockwise from where reading begins.
TRUTH = ((LEFT, TOP), (LEFT + LENGTH, TOP), (LEFT + LENGTH, TOP + HEIGHT), (LEFT, TOP + HEIGHT))


def card() -> Image.Image:
    """A white card with the bars of TEXT nearer to its top left, so that no turn of it looks like another."""
    bars = np.asarray(zxingcpp.create_barcode(TEXT, zxingcpp.BarcodeFormat.Code128).to_image(scale=MODULE))
    dark = np.flatnonzero((bars < 128).any(axis=0))
    row = bars[bars.shape[0] // 4, dark[0] : dark[-1] + 1]
    assert LENGTH == row.size
    levels = np.full((HIGH, WIDE), 255, np.uint8)
    levels[TOP : TOP + HEIGHT, LEFT : LEFT + LENGTH] = row
    return Image.fromarray(levels)


def as_file(image: Image.Image, kind: str = "PNG", **settings: Any) -> bytes:
    out = io.BytesIO()
    image.save(out, kind, **settings)
    return out.getvalue()


def texts(picture: PictureReadings) -> list[str]:
    return [one.text for one in picture.decoded if one.text]


def png_header(width: int, height: int) -> bytes:
    """A PNG that promises so many pixels and holds one line of zeros."""

    def chunk(name: bytes, body: bytes) -> bytes:
        return struct.pack(">I", len(body)) + name + body + struct.pack(">I", zlib.crc32(name + body))

    head = struct.pack(">IIBBBBB", width, height, 8, 0, 0, 0, 0)
    lines = chunk(b"IDAT", zlib.compress(bytes(width + 1)))
    return b"\x89PNG\r\n\x1a\n" + chunk(b"IHDR", head) + lines + chunk(b"IEND", b"")
