"""A scan of one printed card, drawn in light as it falls on the sensor, with known faults of print and picture."""

from __future__ import annotations

from collections.abc import Sequence

import cv2
import numpy as np
from numpy.typing import NDArray
from PIL import Image

from labels import code128

Floats = NDArray[np.float64]

TEXT = "D0145"
WIDTHS = code128.widths(TEXT)
PIXELS = 8  # a module
MARGIN = 100  # of white around the quiet zones
HEIGHT = 240


def symbol(
    elements: Sequence[int] = code128.widths(TEXT), *, dark: float = 0.04, growth: float = 0.0, pixels: int = PIXELS
) -> Floats:
    """Reflectances (height, width) of white paper with bars of such widths in modules; each gains `growth` modules."""
    finer = 8
    widths = [10, *elements, 10]
    edges = np.cumsum(widths)[:-1] + np.resize([-growth / 2, growth / 2], len(widths) - 1)
    row = np.ones(sum(widths) * pixels * finer)
    for begin, end in np.round(edges * pixels * finer).astype(int).reshape(-1, 2):
        row[begin:end] = dark
    bars = np.tile(row.reshape(-1, finer).mean(axis=1), (HEIGHT, 1))
    return np.pad(bars, MARGIN, constant_values=1.0)


def bars_of(page: Floats) -> Floats:
    """The part of the page with bars in it, to be written to."""
    return page[MARGIN : MARGIN + HEIGHT, MARGIN + 10 * PIXELS : -MARGIN - 10 * PIXELS]


def picture(page: Floats, *, exposure: float = 0.7, blur: float = 0.0, noise: float = 0.0) -> Image.Image:
    """Grey levels (sRGB) of the page: `blur` in pixels and `noise` in shares of full light come before the levels."""
    light = page * exposure
    seen = np.asarray(cv2.GaussianBlur(light, (0, 0), blur) if blur else light, dtype=np.float64)
    seen = np.clip(seen + np.random.default_rng(7).normal(0, noise, seen.shape), 0, 1)
    encoded = np.where(seen <= 0.0031308, seen * 12.92, 1.055 * seen ** (1 / 2.4) - 0.055)  # IEC 61966-2-1
    return Image.fromarray(np.round(encoded * 255).astype(np.uint8))


def bent(page: Floats, depth: float) -> Floats:
    """The page with its middle nearer to the camera: `depth` is the share by which modules there are wider."""
    width = page.shape[1]
    scale = 1 + depth * np.cos(np.linspace(-np.pi, np.pi, width))
    at = np.cumsum(scale)
    at = (at - at[0]) * (width - 1) / (at[-1] - at[0])
    back = np.interp(np.arange(width), at, np.arange(width))
    return np.array([np.interp(back, np.arange(width), row) for row in page])
