"""A camera made of arithmetic: photographs of a rendered page, for demonstrations and samples."""

from __future__ import annotations

import io
from math import cos, radians, sin

import numpy as np
from numpy.typing import NDArray
from PIL import Image, ImageFilter

Pixels = NDArray[np.uint8]
Floats = NDArray[np.float64]

_FINER = 2  # the scene is drawn so many times finer than the photograph, then averaged down
_TABLE = (148, 128, 106)
_MARGIN = 0.06  # of the page's longer side, on each side of it


def photograph(  # noqa: PLR0913 - each is a fault of pictures by itself
    page: Pixels,
    *,
    seed: int,
    size: int = 1200,
    tilt: float = 0.0,
    perspective: float = 0.0,
    blur: float = 0.6,
    noise: float = 2.0,
    light: float = 1.0,
    contrast: float = 1.0,
    glare: float = 0.0,
    quality: int = 85,
) -> bytes:
    """JPEG bytes of a page (height, width, 3 RGB) on a table. The same arguments give the same bytes.

    ``size`` is the photograph's longer side in pixels, ``tilt`` the turn in degrees clockwise, ``perspective`` the
    share by which the far edge looks shorter, ``blur`` and ``noise`` standard deviations in pixels and grey levels,
    ``light`` and ``contrast`` factors, ``glare`` the share that a bright band reflects, ``quality`` that of the JPEG.
    Render the page at whole pixels per module: bars that are uneven on the page stay so in its photograph.
    """
    random = np.random.default_rng(seed)
    scene = _lay(Image.fromarray(page), size, tilt, perspective).reduce(_FINER)
    levels = np.asarray(scene.filter(ImageFilter.GaussianBlur(blur)), dtype=np.float64)
    height, width = levels.shape[:2]
    levels = 128 + (levels - 128) * contrast
    levels += (255 - levels) * glare * _band(height, width, random)
    levels *= light * _falloff(height, width, random)
    levels += random.normal(0, noise, (height, width, 1))
    out = io.BytesIO()
    Image.fromarray(np.clip(levels, 0, 255).astype(np.uint8)).save(out, "JPEG", quality=quality)
    return out.getvalue()


def _lay(page: Image.Image, size: int, tilt: float, perspective: float) -> Image.Image:
    """The page as the camera sees it, on the table, in the finer pixels."""
    corners = _seen(page.width, page.height, tilt, perspective)
    margin = _MARGIN * max(page.size)
    low = corners.min(axis=0) - margin
    extent = corners.max(axis=0) + margin - low
    scale = size * _FINER / extent.max()
    width, height = (round(side * scale / _FINER) * _FINER for side in extent)
    if scale < 1:  # averaging first keeps every bar's share; the transform below only interpolates
        page = page.resize((round(page.width * scale), round(page.height * scale)), Image.Resampling.BOX)
    flat = np.array([(0, 0), (page.width, 0), (page.width, page.height), (0, page.height)], dtype=np.float64)
    back = _homography((corners - low) * scale, flat)
    laid = page.convert("RGBA").transform((width, height), Image.Transform.PERSPECTIVE, back, Image.Resampling.BICUBIC)
    table = Image.new("RGB", (width, height), _TABLE)
    table.paste(laid, mask=laid.getchannel("A"))
    return table


def _seen(width: int, height: int, tilt: float, perspective: float) -> Floats:
    """Where the page's corners come to lie, clockwise from its top left, in pixels of the page."""
    shift = width * perspective / 2
    corners = np.array([(shift, 0), (width - shift, 0), (width, height), (0, height)], dtype=np.float64)
    turn = radians(tilt)
    return np.asarray(corners @ np.array([(cos(turn), sin(turn)), (-sin(turn), cos(turn))]), dtype=np.float64)


def _homography(source: Floats, target: Floats) -> tuple[float, ...]:
    """The eight coefficients (a … h) of x' = (ax + by + c)/(gx + hy + 1), y' = (dx + ey + f)/(gx + hy + 1)."""
    rows, values = [], []
    for (x, y), (u, v) in zip(source, target, strict=True):
        rows += [[x, y, 1, 0, 0, 0, -x * u, -y * u], [0, 0, 0, x, y, 1, -x * v, -y * v]]
        values += [u, v]
    return tuple(float(value) for value in np.linalg.solve(np.array(rows), np.array(values)))


def _falloff(height: int, width: int, random: np.random.Generator) -> Floats:
    """Uneven light, (height, width, 1): full in one corner, a tenth less in the opposite one."""
    across, down = (np.linspace(0, 0.05, side)[:: random.choice((1, -1))] for side in (width, height))
    return np.asarray(1 - across[None, :, None] - down[:, None, None], dtype=np.float64)


def _band(height: int, width: int, random: np.random.Generator) -> Floats:
    """A soft bright band across the picture, (height, width, 1), as a plastic bag's fold reflects a lamp."""
    slope, middle = random.uniform(-0.6, 0.6), random.uniform(0.35, 0.65)
    y, x = np.mgrid[0:height, 0:width] / max(height, width)
    distance = y - middle * height / max(height, width) - slope * (x - 0.5)
    return np.asarray(np.exp(-((distance / 0.06) ** 2))[..., None], dtype=np.float64)
