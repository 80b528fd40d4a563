"""A picture made ready to be kept: upright, no larger than it is looked at, without what the camera wrote beside it."""

from __future__ import annotations

from io import BytesIO

from PIL import Image

from scanflow.vision.upright import to_look_at

LONGEST = 1600
SMALL = 320
"""Pixels of the longer side, of the picture and of the small one."""


def kept(image: bytes) -> tuple[bytes, bytes]:
    """The picture and a small one, as JPEG; the same file gives the same bytes. Raises ImageError."""
    shown = to_look_at(image, LONGEST)
    # only the pixels: Pillow hands comments and profiles of the file on to what it saves
    picture = Image.frombytes("RGB", shown.size, shown.tobytes())
    small = picture.copy()
    small.thumbnail((SMALL, SMALL), Image.Resampling.LANCZOS)
    return _jpeg(picture, 82), _jpeg(small, 80)


def whole(image: bytes) -> bytes:
    """The picture upright and in colour at its full size, as JPEG. Raises ImageError."""
    return _jpeg(to_look_at(image), 95)


def opened(own: bytes) -> Image.Image:
    """The pixels (RGB) of a JPEG that was made here, as those above are; of nothing else."""
    return Image.open(BytesIO(own), formats=["JPEG"]).convert("RGB")


def _jpeg(image: Image.Image, quality: int) -> bytes:
    out = BytesIO()
    image.save(out, "JPEG", quality=quality, optimize=True)
    return out.getvalue()
