"""zbar by way of pyzbar, with the one setting that pyzbar.decode keeps to itself: how many lines it looks at."""

from __future__ import annotations

import functools
import importlib
import platform
import shutil
import subprocess
from ctypes import c_char_p, c_void_p, cast
from pathlib import Path
from typing import Any

import numpy as np
from numpy.typing import NDArray

from scanflow.vision.readings import Symbology

SYMBOLOGIES = {"CODE128": Symbology.CODE128, "CODE39": Symbology.CODE39, "I25": Symbology.ITF}
"""Those that are read, by zbar's names."""

# zbar.h, zbar_config_t: one line scanned in so many, of those across and those down the picture; 0 for none.
_DOWN, _ACROSS = 0x100, 0x101
_GREY = int.from_bytes(b"Y800", "little")  # 8 bits a pixel


def decode(grey: NDArray[np.uint8], across: int = 1, down: int = 1) -> list[Any]:
    """pyzbar's ``Decoded`` of what is read in (height, width) grey levels; nothing where libzbar is missing.

    Of the lines across the picture one in ``across`` is looked at, of those down it one in ``down``; 0 for none.
    """
    bindings = pyzbar()
    if bindings is None:
        return []
    wrapper = importlib.import_module("pyzbar.wrapper")
    pixels, (height, width) = grey.tobytes(), grey.shape
    with bindings._image_scanner() as scanner, bindings._image() as image:
        for symbol in wrapper.ZBarSymbol:
            enabled = int(symbol.name in SYMBOLOGIES)
            wrapper.zbar_image_scanner_set_config(scanner, symbol, wrapper.ZBarConfig.CFG_ENABLE, enabled)
        wrapper.zbar_image_scanner_set_config(scanner, wrapper.ZBarSymbol.NONE, _ACROSS, across)
        wrapper.zbar_image_scanner_set_config(scanner, wrapper.ZBarSymbol.NONE, _DOWN, down)
        wrapper.zbar_image_set_format(image, _GREY)
        wrapper.zbar_image_set_size(image, width, height)
        wrapper.zbar_image_set_data(image, cast(c_char_p(pixels), c_void_p), len(pixels), None)
        wrapper.zbar_scan_image(scanner, image)
        return list(bindings._decode_symbols(bindings._symbols_for_image(image)))


@functools.cache
def pyzbar() -> Any | None:
    """pyzbar's module, or None where libzbar can't be loaded."""
    try:
        return importlib.import_module("pyzbar.pyzbar")
    except (ImportError, OSError):
        library = homebrew_library() if platform.system() == "Darwin" else None
    if library is None:
        return None
    try:  # pyzbar asks the loader alone, which on Apple silicon doesn't look into Homebrew's prefix
        loader = importlib.import_module("pyzbar.zbar_library")
        loader.find_library = lambda name: str(library)  # type: ignore[attr-defined]
        return importlib.import_module("pyzbar.pyzbar")
    except (ImportError, OSError):
        return None


def homebrew_library() -> Path | None:
    """libzbar under the prefix that ``brew --prefix zbar`` names."""
    brew = shutil.which("brew") or "/opt/homebrew/bin/brew"
    try:
        done = subprocess.run([brew, "--prefix", "zbar"], capture_output=True, text=True, timeout=20, check=True)
    except (OSError, subprocess.SubprocessError):
        return None
    library = Path(done.stdout.strip(), "lib", "libzbar.dylib")
    return library if library.is_file() else None
