"""From an image file to the grey, upright pixels that decoders take."""

from __future__ import annotations

import io
import warnings
from pathlib import Path

import numpy as np
from numpy.typing import NDArray
from PIL import Image, ImageOps, UnidentifiedImageError

from scanflow.vision.readings import ImageError

# Beyond every phone's usual setting; decoding 100 megapixels takes about 1 GB.
MAX_PIXELS = 100_000_000

_DEEP_MODES = ("I", "F")  # and every "I;16…": more than 8 bits a channel


def upright(image: bytes | Path | NDArray[np.generic]) -> NDArray[np.uint8]:
    """The picture as (height, width) grey levels, turned as its EXIF orientation says.

    An array is (height, width[, 3 RGB or 4 RGBA]) as it stands. Transparency becomes white paper, more than 8 bits
    are stretched over the full range, and of several frames the first counts. Raises ImageError.
    """
    try:
        with _open(image) as opened:
            _refuse_huge(*opened.size)
            opened.draft("L", opened.size)  # a JPEG then decodes its luminance only
            opened.load()
            grey = _grey(opened)
            turned = ImageOps.exif_transpose(grey) if _orientation(opened) != 1 else grey
            return np.asarray(turned, dtype=np.uint8)
    except ImageError:
        raise
    except UnidentifiedImageError:
        raise ImageError("This file is not a picture. Send the photo as JPEG, PNG or WebP.") from None
    except Image.DecompressionBombError:
        raise ImageError(_too_huge("far more")) from None
    except MemoryError:
        raise ImageError("This picture needs more memory than allowed. Send it at a lower resolution.") from None
    except OSError as error:
        raise unopened(error) if error.errno else _damaged(error) from None
    except Exception as error:  # Pillow's plugins raise nearly anything on a damaged file
        raise _damaged(error) from error


def unopened(error: OSError) -> ImageError:
    """What to say of a file that the system doesn't open."""
    return ImageError(f"This file can't be opened ({error.strerror}). Check its name and folder.")


def _damaged(error: Exception) -> ImageError:
    return ImageError(f"This picture is damaged or broken off ({error}). Take or send it again.")


def _open(image: bytes | Path | NDArray[np.generic]) -> Image.Image:
    if isinstance(image, np.ndarray):
        return Image.fromarray(np.ascontiguousarray(image))
    with warnings.catch_warnings():  # our own limit says it better
        warnings.simplefilter("ignore", Image.DecompressionBombWarning)
        return Image.open(io.BytesIO(image) if isinstance(image, bytes) else image)


def _refuse_huge(width: int, height: int) -> None:
    if width * height > MAX_PIXELS:
        raise ImageError(_too_huge(f"{width} × {height}"))


def _too_huge(size: str) -> str:
    return f"This picture has too many pixels ({size}; at most {MAX_PIXELS // 10**6} million). Send it smaller."


def _orientation(image: Image.Image) -> int:
    """EXIF orientation 1 to 8; damaged EXIF counts as 1. Pillow has turned a TIFF already and dropped its tag."""
    try:
        return int(image.getexif().get(0x0112, 1))
    except Exception:
        return 1


def _grey(image: Image.Image) -> Image.Image:
    if image.mode in _DEEP_MODES or image.mode.startswith("I;16"):
        return Image.fromarray(_stretched(np.asarray(image, dtype=np.float32)))
    if image.has_transparency_data:
        white = Image.new("RGBA", image.size, "white")
        return Image.alpha_composite(white, image.convert("RGBA")).convert("L")
    return image if image.mode == "L" else image.convert("L")


def _stretched(levels: NDArray[np.float32]) -> NDArray[np.uint8]:
    """Black is the darkest level and white the lightest: files of 10, 12 and 16 bits don't say which they are."""
    levels = np.nan_to_num(levels)
    low, high = float(levels.min()), float(levels.max())
    scale = 255.0 / (high - low) if high > low else 0.0
    return ((levels - low) * scale).astype(np.uint8)
