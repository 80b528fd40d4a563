"""The two decoders behind one shape: grey pixels in, readings out.

Only the linear symbologies of cards are enabled. zbar can end the process in its decoders of other symbologies (PDF417,
QR, DataBar). Looking for retail codes (EAN, UPC) besides, to know them for what they are, changed no reading on the
pictures below and is left out.

Equal texts are told apart by zxing-cpp where they lie more than half their length apart, by zbar never.

ITF has no check of its own, and a scan line that leaves the code early, or crosses other bars, gives a shorter text.
So texts under 6 digits and readings of fewer than 3 rows are dropped, and one engine alone is believed only where
zxing-cpp read the same over a twentieth of the code's length. Measured on 8,661 pictures (75 photographs and drawings
turned, scaled, blurred, noised, cropped): ITF misreads 17 by zxing-cpp and 147 by zbar alone, none left here.
"""

from __future__ import annotations

import functools
import logging
from dataclasses import replace
from math import dist
from typing import Any

import numpy as np
import zxingcpp
from numpy.typing import NDArray

from scanflow.vision import zbar as _zbar
from scanflow.vision.merge import EngineReading
from scanflow.vision.places import clockwise, extreme_corners, whole
from scanflow.vision.readings import Symbology

ZXING, ZBAR = "zxing-cpp", "zbar"

# Plain Code 39 only: as Code 32, one in ten adopted six-character cards would change its text.
_ZXING_ENABLED = zxingcpp.BarcodeFormats(
    [zxingcpp.BarcodeFormat.Code128, zxingcpp.BarcodeFormat.Code39Std, zxingcpp.BarcodeFormat.ITF]
)
_ZXING_FOREIGN = zxingcpp.BarcodeFormats(
    [
        zxingcpp.BarcodeFormat.EAN13,
        zxingcpp.BarcodeFormat.EAN8,
        zxingcpp.BarcodeFormat.UPCA,
        zxingcpp.BarcodeFormat.UPCE,
    ]
)
_ZXING_SYMBOLOGIES = {
    zxingcpp.BarcodeFormat.Code128: Symbology.CODE128,
    zxingcpp.BarcodeFormat.Code39: Symbology.CODE39,
    zxingcpp.BarcodeFormat.ITF: Symbology.ITF,
}

# Where reading begins, as the place of that corner in (top left, top right, bottom right, bottom left).
_ZBAR_FIRST_CORNER = {"UP": 0, "RIGHT": 1, "DOWN": 2, "LEFT": 3}

_LEAST_LENGTH = 12  # pixels: where zbar gives less, it crossed a part of a symbol, and misreads it

_ITF_LEAST_DIGITS = 6
_ITF_LEAST_ROWS = 3
_ITF_SURE_SHARE = 0.05  # of the code's length, along the bars
_ITF_SURE_ROWS = 5

_ROWS = 8  # of a straightened label's, all alike, that zbar is shown

_log = logging.getLogger(__name__)


def engines() -> tuple[str, ...]:
    """The decoders at work here: ``zxing-cpp`` always, ``zbar`` where its library is found."""
    return (ZXING, ZBAR) if _zbar.pyzbar() else (ZXING,)


@functools.cache
def say_if_alone(at_work: tuple[str, ...]) -> None:
    """Log once per process that the second decoder is missing."""
    if ZBAR not in at_work:
        _log.warning("libzbar is missing: zxing-cpp reads alone. Install libzbar0 (Debian) or zbar (Homebrew).")


def zxing(grey: NDArray[np.uint8], *, only_across: bool = False) -> list[EngineReading]:
    """What zxing-cpp reads in (height, width) grey levels; ``only_across``: in rows alone, at their own size."""
    more = not only_across
    barcodes = zxingcpp.read_barcodes(
        grey,
        formats=_ZXING_ENABLED,
        text_mode=zxingcpp.TextMode.Plain,
        try_rotate=more,
        try_downscale=more,
        try_invert=more,
    )
    return [found for barcode in barcodes if (found := _from_zxing(barcode))]


def _from_zxing(barcode: Any) -> EngineReading | None:
    place = barcode.position
    corners = [
        (float(p.x), float(p.y)) for p in (place.top_left, place.top_right, place.bottom_right, place.bottom_left)
    ]
    symbology = _ZXING_SYMBOLOGIES[barcode.symbology]
    length = max(dist(corners[0], corners[1]), 1.0)
    rows = max(dist(corners[0], corners[3]), dist(corners[1], corners[2]))
    if symbology is Symbology.ITF and _is_stray(barcode.text, rows):
        return None
    sure = symbology is not Symbology.ITF or rows >= max(_ITF_SURE_ROWS, _ITF_SURE_SHARE * length)
    return EngineReading(barcode.text, symbology, ZXING, whole(clockwise(corners)), sure)


def zbar(grey: NDArray[np.uint8], across: int = 1, down: int = 1) -> list[EngineReading]:
    """What zbar reads in (height, width) grey levels, in one line of so many; nothing where its library is missing."""
    return [found for symbol in _zbar.decode(grey, across, down) if (found := _from_zbar(symbol))]


def _from_zbar(symbol: Any) -> EngineReading | None:
    text, symbology = symbol.data.decode("latin-1"), _zbar.SYMBOLOGIES[symbol.type]
    if symbology is Symbology.ITF and _is_stray(text, symbol.quality):
        return None
    corners = extreme_corners([(float(x), float(y)) for x, y in symbol.polygon])
    first = _ZBAR_FIRST_CORNER.get(symbol.orientation, 0)
    quad = whole(clockwise([*corners[first:], *corners[:first]]))
    if max(dist(quad[0], quad[1]), dist(quad[3], quad[2])) < _LEAST_LENGTH:
        return None
    return EngineReading(text, symbology, ZBAR, quad, sure=symbology is not Symbology.ITF)


def strip(grey: NDArray[np.uint8]) -> list[EngineReading]:
    """What the decoders read in one label's straightened rows, corners in pixels of these.

    All rows are alike, so ITF, whose check is that rows agree, is left out, and Code 39 needs both engines.
    """
    found = zxing(grey, only_across=True) + zbar(grey[:_ROWS], down=0)
    found = [one for one in found if one.symbology is not Symbology.ITF]
    return [replace(one, sure=one.symbology is Symbology.CODE128) for one in found]


def foreign(grey: NDArray[np.uint8]) -> bool:
    """Whether straightened rows are a retail code (EAN, UPC) or another that no card carries."""
    return bool(
        zxingcpp.read_barcodes(grey, formats=_ZXING_FOREIGN, try_rotate=False, try_downscale=False, try_invert=False)
    )


def _is_stray(digits: str, rows: float) -> bool:
    return len(digits) < _ITF_LEAST_DIGITS or rows < _ITF_LEAST_ROWS
