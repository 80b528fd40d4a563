"""From an image file to the grey, upright pixels that decoders take."""

from __future__ import annotations

import contextlib
import functools
import importlib
import io
import warnings
from collections.abc import Iterator
from pathlib import Path

import numpy as np
from numpy.typing import NDArray
from PIL import Image, ImageOps, UnidentifiedImageError

from scanflow.vision.readings import ImageError

# Beyond every phone's usual setting; decoding 100 megapixels takes about 1 GB.
MAX_PIXELS = 100_000_000

_MISSING_HEIC = "This picture is in HEIC, which needs pillow-heif: pip install pillow-heif. Or send the photo as JPEG."

# Pillow's names of all that is opened, with what people and browsers call them. JPEG is also MPO, as phones write it.
# Nothing else: among Pillow's other formats are such as start another program.
_KINDS = {
    "JPEG": ("JPEG", "image/jpeg"),
    "PNG": ("PNG", "image/png"),
    "WEBP": ("WebP", "image/webp"),
    "HEIF": ("HEIC", "image/heic,image/heif"),
    "AVIF": ("AVIF", "image/avif"),
}
MEDIA_TYPES = tuple(each for _, types in _KINDS.values() for each in types.split(","))

# Brands of HEIF files, ISO/IEC 23008-12 and MPEG's registry; heic is what phones write.
_HEIC_BRANDS = {b"heic", b"heix", b"heim", b"heis", b"hevc", b"hevx", b"mif1", b"msf1"}

_DEEP_MODES = ("I", "F")  # and every "I;16…": more than 8 bits a channel


@functools.cache
def taken() -> dict[str, tuple[str, str]]:
    """The formats that are opened here, by Pillow's name: as people call each, and its media types for a file field.

    HEIC and AVIF are there where this machine can open them.
    """
    with contextlib.suppress(ImportError):
        importlib.import_module("pillow_heif").register_heif_opener(thumbnails=False)
    for each in ("Jpeg", "Png", "WebP", "Avif"):
        with contextlib.suppress(ImportError):
            importlib.import_module(f"PIL.{each}ImagePlugin")
    return {name: kind for name, kind in _KINDS.items() if name in Image.OPEN}


def accepted() -> str:
    """What a file field for pictures says that it takes."""
    return ",".join(types for _, types in taken().values())


def upright(image: bytes | Path | NDArray[np.generic]) -> NDArray[np.uint8]:
    """The picture as (height, width) grey levels, turned as its EXIF orientation says.

    An array is (height, width[, 1 grey, 3 RGB or 4 RGBA]) as it stands. Transparency becomes white paper, more than
    8 bits are stretched over the full range, and of several frames the first counts. Raises ImageError.
    """
    with _opened(image) as opened:
        opened.draft("L", opened.size)  # a JPEG then decodes its luminance only
        opened.load()
        return np.asarray(_turned(opened, _grey(opened)), dtype=np.uint8)


def to_look_at(image: bytes | Path, longest: int | None = None) -> Image.Image:
    """The same picture in colour (RGB), its longer side at most ``longest`` pixels. Raises ImageError."""
    with _opened(image) as opened:
        if longest is not None:
            opened.draft("RGB", (longest, longest))  # a JPEG then decodes at half or a quarter of its size
        opened.load()
        shown = _turned(opened, _coloured(opened))
        if longest is not None:
            shown.thumbnail((longest, longest), Image.Resampling.BOX)
        return shown


def resolution(image: bytes | Path) -> float | None:
    """Dots per inch along the rows as the file says them; None where it says none. Raises ImageError."""
    with _opened(image) as opened:
        dpi = float(opened.info.get("dpi", (0, 0))[0])
    return dpi if dpi > 1 else None


@contextlib.contextmanager
def _opened(image: bytes | Path | NDArray[np.generic]) -> Iterator[Image.Image]:
    """The image, not yet loaded; whatever goes wrong until the end of the block is an ImageError."""
    try:
        with _open(image) as opened:
            _refuse_huge(*opened.size)
            yield opened
    except ImageError:
        raise
    except UnidentifiedImageError:
        raise ImageError(_unknown(image)) from None
    except Image.DecompressionBombError:
        raise ImageError(_too_huge("far more")) from None
    except MemoryError:
        raise ImageError("This picture needs more memory than allowed. Send it at a lower resolution.") from None
    except OSError as error:
        raise unopened(error) if error.errno else ImageError(_damaged(error)) from None
    except Exception as error:  # Pillow's plugins raise nearly anything on a damaged file
        raise ImageError(_damaged(error)) from error


def unopened(error: OSError) -> ImageError:
    """What to say of a file that the system doesn't open."""
    return ImageError(f"This file can't be opened ({error.strerror}). Check its name and folder.")


def _damaged(error: Exception | str) -> str:
    return f"This picture is damaged or not whole ({error}). Take it or send it again."


def _open(image: bytes | Path | NDArray[np.generic]) -> Image.Image:
    if isinstance(image, np.ndarray):
        return Image.fromarray(np.ascontiguousarray(image[..., 0] if image.shape[2:] == (1,) else image))
    formats = list(taken())
    with warnings.catch_warnings():  # our own limit says it better
        warnings.simplefilter("ignore", Image.DecompressionBombWarning)
        return Image.open(io.BytesIO(image) if isinstance(image, bytes) else image, formats=formats)


def _unknown(image: bytes | Path | NDArray[np.generic]) -> str:
    """What to say of a file that none of the formats opens."""
    if _is_heic(image):
        return _damaged("no HEIC that can be opened") if "HEIF" in taken() else _MISSING_HEIC
    *others, last = [called for called, _ in taken().values()]
    return f"This file is not a picture that can be opened here. Send the photo as {', '.join(others)} or {last}."


def _is_heic(image: bytes | Path | NDArray[np.generic]) -> bool:
    if isinstance(image, Path):
        with image.open("rb") as file:
            image = file.read(12)
    return isinstance(image, bytes) and image[4:8] == b"ftyp" and image[8:12] in _HEIC_BRANDS


def _refuse_huge(width: int, height: int) -> None:
    if width * height > MAX_PIXELS:
        raise ImageError(_too_huge(f"{width} × {height}"))


def _too_huge(size: str) -> str:
    return f"This picture has too many pixels ({size}; at most {MAX_PIXELS // 10**6} million). Send it smaller."


def _orientation(image: Image.Image) -> int:
    """EXIF orientation 1 to 8; damaged EXIF counts as 1."""
    try:
        return int(image.getexif().get(0x0112, 1))
    except Exception:
        return 1


def _turned(opened: Image.Image, image: Image.Image) -> Image.Image:
    """What was made of an opened image, turned as that one's EXIF orientation says."""
    return ImageOps.exif_transpose(image) if _orientation(opened) != 1 else image


def _grey(image: Image.Image) -> Image.Image:
    if image.mode in _DEEP_MODES or image.mode.startswith("I;16"):
        return Image.fromarray(_stretched(np.asarray(image, dtype=np.float32)))
    if image.has_transparency_data:
        return _on_white(image).convert("L")
    return image if image.mode == "L" else image.convert("L")


def _coloured(image: Image.Image) -> Image.Image:
    if image.mode in _DEEP_MODES or image.mode.startswith("I;16"):
        return _grey(image).convert("RGB")
    return (_on_white(image) if image.has_transparency_data else image).convert("RGB")


def _on_white(image: Image.Image) -> Image.Image:
    return Image.alpha_composite(Image.new("RGBA", image.size, "white"), image.convert("RGBA"))


def _stretched(levels: NDArray[np.float32]) -> NDArray[np.uint8]:
    """Black is the darkest level and white the lightest: files of 10, 12 and 16 bits don't say which they are."""
    levels = np.nan_to_num(levels)
    low, high = float(levels.min()), float(levels.max())
    scale = 255.0 / (high - low) if high > low else 0.0
    return ((levels - low) * scale).astype(np.uint8)
