"""What the renderers share: a label as a texture, its place in a picture, what a lens and a sensor do to it.

Grey levels 0 to 255; pixel centres lie at whole coordinates, so a picture spans -0.5 to width - 0.5. Corners are
those of the bars, (x, y) clockwise from where reading begins. Everything follows from a random generator handed in.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass, field
from functools import cached_property, lru_cache
from itertools import groupby

import barcode
import cv2
import numpy as np
from numpy.typing import NDArray

from labels import code128, slot_code

Array = NDArray[np.float32]
Grey = NDArray[np.uint8]
Corners = tuple[tuple[float, float], ...]

QUIET = code128.QUIET
LETTERS = "ABCDEFGHIJKLMNOPQRSTUVWXYZ"
FONT = cv2.FONT_HERSHEY_DUPLEX


@dataclass(frozen=True)
class Truth:
    """A code that is in a picture.

    `kind`: "card" of the book, "stranger" (the same grammar, not in the book) or "foreign" (another grammar or
    symbology). `visible`: largest share of the bar height that shows in one full-width strip. `disc`: diameter of the
    circle of confusion in pixels. `tilt`: degrees of the code's rows from the picture's, -180 to 180.
    """

    text: str
    kind: str
    corners: Corners
    px_module: float
    tilt: float
    visible: float = 1.0
    disc: float = 0.0


@dataclass(frozen=True)
class Scene:
    """A picture as a JPEG file and what is in it."""

    jpeg: bytes
    truths: tuple[Truth, ...] = field(repr=False)

    @cached_property
    def pixels(self) -> Grey:
        return cv2.imdecode(np.frombuffer(self.jpeg, np.uint8), cv2.IMREAD_GRAYSCALE)

    def of(self, kind: str) -> list[Truth]:
        return [truth for truth in self.truths if truth.kind == kind]


def texts_of(section: str, count: int = 1000) -> list[str]:
    """The card texts of a section's first numbers."""
    return [slot_code.card_text(slot_code.make(section, number)) for number in range(count)]


@lru_cache
def universe() -> tuple[str, ...]:
    """The 26,000 card texts of the sections of one letter, in an order that no section or number shows."""
    texts = [text for letter in LETTERS for text in texts_of(letter)]
    return tuple(np.random.default_rng(26).permutation(texts).tolist())


def book_of(count: int) -> tuple[str, ...]:
    """The first texts of `universe`; what follows them are strangers with near neighbours in the book."""
    return universe()[:count]


def strangers_to(count: int) -> tuple[str, ...]:
    return universe()[count:]


def some(rng: np.random.Generator, texts: Sequence[str], count: int) -> list[str]:
    """So many texts, none twice while there are enough."""
    order = np.concatenate([rng.permutation(len(texts)) for _ in range(-(-count // max(1, len(texts))))] or [[]])
    return [texts[int(place)] for place in order[:count]]


def widths_of(bits: str) -> tuple[int, ...]:
    return tuple(len(list(run)) for _, run in groupby(bits.strip("0")))


def foreign_code(rng: np.random.Generator) -> tuple[str, tuple[int, ...]]:
    """Text and widths of a code on goods: EAN-13, UPC-A, or Code 128 of another grammar."""
    digits = "".join(str(digit) for digit in rng.integers(0, 10, 17))
    kind = rng.integers(0, 6)
    if kind == 0:
        made = barcode.get("ean13", "2" + digits[:11])
        return made.get_fullcode(), widths_of(made.build()[0].replace("G", "1"))
    if kind == 1:
        made = barcode.get("upca", digits[:11])
        return made.get_fullcode(), widths_of(made.build()[0].replace("G", "1"))
    text = [f"LOT{digits[:6]}", f"{LETTERS[int(digits[:2]) % 26]}-{digits[2:7]}-{digits[7:9]}", digits[:12], digits[:6]]
    return text[kind - 2], code128.widths(text[kind - 2])


def coverage(edges: Sequence[float] | NDArray[np.float64], count: int, scale: float) -> Array:
    """Share of ink in each of `count` texels of 1/scale, exactly, for ink between edges 0-1, 2-3 and so on."""
    edges = np.asarray(edges, np.float64)
    ink = np.concatenate([[0.0], np.cumsum(np.where(np.arange(edges.size - 1) % 2 == 0, np.diff(edges), 0.0))])
    return (np.diff(np.interp(np.arange(count + 1) / scale, edges, ink)) * scale).astype(np.float32)


def bars(widths: Sequence[int], start: float, count: int, scale: float) -> Array:
    """`coverage` of a symbol whose first bar begins at `start` modules."""
    return coverage(start + np.concatenate([[0], np.cumsum(widths)]), count, scale)


@dataclass(frozen=True)
class Look:
    """Grey levels of ink, paper and the card about it, and lengths in modules."""

    ink: float = 35
    paper: float = 225
    card: float = 150
    height: float = 26
    above: float = 3
    below: float = 14
    edge: float = 4


def label(text: str, widths: Sequence[int], look: Look, scale: float) -> tuple[Grey, NDArray[np.float64]]:
    """A label drawn at `scale` texels a module, and its bars' corners (4, 2) in texels (centres at whole numbers)."""
    length = sum(widths)
    wide, high = length + 2 * (QUIET + look.edge), look.above + look.height + look.below + 2 * look.edge
    columns, rows = int(np.ceil(wide * scale)), int(np.ceil(high * scale))
    left, top = look.edge + QUIET, look.edge + look.above
    panel = np.outer(
        coverage([look.edge, high - look.edge], rows, scale), coverage([look.edge, wide - look.edge], columns, scale)
    )
    ink = np.outer(coverage([top, top + look.height], rows, scale), bars(widths, left, columns, scale))
    drawn = look.card + (look.paper - look.card) * panel - (look.paper - look.ink) * ink
    texture = np.clip(drawn + 0.5, 0, 255).astype(np.uint8)
    if look.below > 6 and text:
        _write(texture, text, look, scale, (left, top + look.height, length))
    corners = np.array([(0, 0), (length, 0), (length, look.height), (0, look.height)], np.float64)
    return texture, (corners + np.array([left, top])) * scale - 0.5


def _write(texture: Grey, text: str, look: Look, scale: float, place: tuple[float, float, float]) -> None:
    left, top, length = place
    size = (look.below - 5) * scale / 21
    thick = max(1, round(size * 2))
    (wide, _), _ = cv2.getTextSize(text, FONT, size, thick)
    size *= min(1.0, length * scale / wide)
    (wide, _), _ = cv2.getTextSize(text, FONT, size, thick)
    at = (round((left + length / 2) * scale - wide / 2), round((top + look.below - 3) * scale))
    cv2.putText(texture, text, at, FONT, size, float(look.ink), thick, cv2.LINE_AA)


def paste(picture: Array, texture: Grey, quad: NDArray[np.float64], fine: int = 6, light: float = 1.0) -> None:
    """Lay a whole texture onto the quadrilateral of its outer corners."""
    box = box_of(quad, picture.shape)
    if box is None:
        return
    grey, share = patch(texture, quad, box, fine)
    x0, y0, x1, y1 = box
    window = picture[y0:y1, x0:x1]
    window *= 1 - share
    window += grey * light


Box = tuple[int, int, int, int]


def box_of(points: NDArray[np.float64], shape: tuple[int, ...], margin: int = 1) -> Box | None:
    """Left, top, right, bottom (the latter two exclusive) of points with a margin, inside the picture."""
    x0, y0 = np.maximum(np.floor(points.min(0)).astype(int) - margin, 0).tolist()
    x1, y1 = np.minimum(np.ceil(points.max(0)).astype(int) + margin + 1, (shape[1], shape[0])).tolist()
    return (x0, y0, x1, y1) if x1 > x0 and y1 > y0 else None


def patch(texture: Grey, quad: NDArray[np.float64], box: Box, fine: int) -> tuple[Array, Array]:
    """Grey times share, and the share covered, of each pixel of a box: `fine` x `fine` samples averaged per pixel.

    The texture should have about `fine` texels a pixel, so that sampling it neither blurs nor skips.
    """
    size = (box[2] - box[0], box[3] - box[1])
    inner = (quad - box[:2]) * fine + (fine - 1) / 2
    matrix = cv2.getPerspectiveTransform(outer(texture).astype(np.float32), inner.astype(np.float32))
    finely = (size[0] * fine, size[1] * fine)
    sampled = cv2.warpPerspective(texture, matrix, finely, flags=cv2.INTER_LINEAR, borderMode=cv2.BORDER_REPLICATE)
    mask = np.zeros(sampled.shape, np.uint8)
    cv2.fillConvexPoly(mask, np.round(inner * 16).astype(np.int32), 255, shift=4)
    sampled = cv2.bitwise_and(sampled, mask)
    if fine > 1:
        sampled, mask = (cv2.resize(each, size, interpolation=cv2.INTER_AREA) for each in (sampled, mask))
    return sampled.astype(np.float32), mask.astype(np.float32) / 255


def outer(texture: Grey) -> NDArray[np.float64]:
    """A texture's own outer corners in texels."""
    rows, columns = texture.shape
    return np.array([(0, 0), (columns, 0), (columns, rows), (0, rows)], np.float64) - 0.5


def through(matrix: NDArray[np.float64], points: NDArray[np.float64]) -> NDArray[np.float64]:
    """Points (n, 2) through a homography."""
    moved = np.column_stack([points, np.ones(len(points))]) @ matrix.T
    return moved[:, :2] / moved[:, 2:]


def truth_of(text: str, kind: str, length: int, corners: NDArray[np.float64], **more: float) -> Truth:
    """A Truth with the scale and tilt of its corners' middle row."""
    across = (corners[1] + corners[2] - corners[0] - corners[3]) / 2
    tilt = float(np.degrees(np.arctan2(across[1], across[0])))
    places = tuple((float(x), float(y)) for x, y in corners)
    return Truth(text, kind, places, float(np.hypot(*across)) / length, tilt, **more)


def photographed(
    picture: Array,
    rng: np.random.Generator,
    blur: float = 0.6,
    disc: float = 0.0,
    motion: tuple[float, float] = (0.0, 0.0),
    noise: float = 4.0,
    quality: int = 90,
) -> bytes:
    """A JPEG file of it: blur of a disc's px and a Gaussian's sigma, motion of (px, degrees), noise of sigma levels."""
    if disc > 0.3:
        picture = cv2.filter2D(picture, -1, lens(disc), borderType=cv2.BORDER_REPLICATE)
    if blur > 0:
        picture = cv2.GaussianBlur(picture, (0, 0), blur, borderType=cv2.BORDER_REPLICATE)
    if motion[0] > 0:
        picture = cv2.filter2D(picture, -1, _streak(*motion), borderType=cv2.BORDER_REPLICATE)
    if noise > 0:
        picture = picture + rng.standard_normal(picture.shape, np.float32) * np.float32(noise)
    levels = np.clip(picture + 0.5, 0, 255).astype(np.uint8)
    return cv2.imencode(".jpg", levels, [cv2.IMWRITE_JPEG_QUALITY, quality])[1].tobytes()


@lru_cache(maxsize=256)
def lens(diameter: float) -> Array:
    """A disc of even light, each pixel's share of it by 16 x 16 samples."""
    half = int(np.ceil(diameter / 2))
    fine = (np.arange((2 * half + 1) * 16) + 0.5) / 16 - half - 0.5
    disc = (fine[:, None] ** 2 + fine**2 <= max(diameter / 2, 0.1) ** 2).astype(np.float32)
    kernel = cv2.resize(disc, (2 * half + 1, 2 * half + 1), interpolation=cv2.INTER_AREA)
    return kernel / kernel.sum()


def _streak(length: float, degrees: float) -> Array:
    """The kernel of a straight movement, its points spread onto their four nearest pixels."""
    half = int(np.ceil(length / 2)) + 1
    kernel = np.zeros((2 * half + 1, 2 * half + 1), np.float32)
    along = np.linspace(-length / 2, length / 2, max(2, int(length * 16)))
    x, y = half + along * np.cos(np.radians(degrees)), half + along * np.sin(np.radians(degrees))
    left, top = np.floor(x).astype(int), np.floor(y).astype(int)
    for right, down in ((0, 0), (1, 0), (0, 1), (1, 1)):
        weight = (1 - abs(x - left - right)) * (1 - abs(y - top - down))
        np.add.at(kernel, (top + down, left + right), weight.astype(np.float32))
    return kernel / kernel.sum()
