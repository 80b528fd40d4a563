"""Filed bins and shelves: cards on goods one behind the other, as a phone's camera sees them, for a seed.

Lengths in mm: x to the right, y up, z away from the front of the bins. The camera is a pinhole of 26 mm equivalent
focal length (by the diagonal of 43.27 mm) with the defocus of a thin lens; nearer things are painted over farther
ones, each blurred as a whole by its own circle of confusion. Light is linear until the sensor, then sRGB
(IEC 61966-2-1).
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

import cv2
import numpy as np
from flat_scene import Flat, background
from numpy.typing import NDArray
from scenes import (
    FONT,
    Array,
    Box,
    Grey,
    Look,
    Scene,
    Truth,
    bars,
    box_of,
    coverage,
    foreign_code,
    label,
    lens,
    outer,
    patch,
    photographed,
    some,
    through,
    truth_of,
)

from labels import code128

Vectors = NDArray[np.float64]

CARD = (72.0, 46.0)
ABOVE = 1.5  # from the card's top edge to the bars
WIDE, DEEP = 250.0, 450.0  # a bin's inside
RIM = 105.0  # of its front
SHOWN = 110.0  # how much of the goods below their top edge is drawn: the next ones hide the rest
PAPER = 0.75  # of full light, that white paper in good light gives
LEAST_VISIBLE = 0.12


@dataclass(frozen=True)
class Filed:
    """What a filed picture is made of.

    `distance`: of the camera from the middle of the bins. `module` and bar `height`. `aperture`: diameter of the
    lens's opening. `roll`, `turn`, `lean`: spread in degrees of cards sideways, about the upright, and backwards.
    `glare`, `haze`, `foreign`: share of cards, or of goods. `blur`, `noise`, `quality`: of the sensor.
    """

    bins: int = 1
    distance: float = 700.0
    module: float = 0.72
    height: float = 19.0
    items: int = 18
    size: tuple[int, int] = (4032, 3024)
    aperture: float = 4.0
    roll: float = 5.0
    turn: float = 6.0
    lean: float = 4.0
    level: float = 9.0
    glare: float = 0.25
    haze: float = 0.15
    foreign: float = 0.2
    blur: float = 0.6
    noise: float = 4.0
    quality: int = 90


@dataclass(frozen=True)
class Camera:
    place: Vectors
    axes: Vectors  # right, down and ahead, as rows
    focal: float  # pixels
    middle: Vectors  # pixel of the optical axis

    def see(self, points: Vectors) -> tuple[Vectors, Vectors]:
        """Pixels (n, 2) and depths (n) of points (n, 3)."""
        seen = (points - self.place) @ self.axes.T
        return self.middle + self.focal * seen[:, :2] / seen[:, 2:], seen[:, 2]


@dataclass(frozen=True)
class Plane:
    """Points corner + x right + y down in mm."""

    corner: Vectors
    right: Vectors
    down: Vectors

    def at(self, points: Sequence[tuple[float, float]] | Vectors) -> Vectors:
        flat = np.asarray(points, np.float64)
        return self.corner + flat[:, :1] * self.right + flat[:, 1:] * self.down


@dataclass(frozen=True)
class Item:
    text: str
    kind: str
    card: Plane
    goods: Plane
    width: float


def filed(seed: int, how: Filed, texts: Sequence[str], strangers: Sequence[str] = (), share: float = 0.0) -> Scene:
    """Bins of cards of random `texts`; `share` of them of `strangers` instead."""
    rng = np.random.default_rng([seed, 2])
    camera = camera_of(rng, how)
    count = how.bins * how.items
    others = int(np.count_nonzero(rng.random(count) < share))
    chosen = [(text, "card") for text in some(rng, texts, count - others)]
    chosen += [(text, "stranger") for text in some(rng, strangers, others)]
    items = items_of(rng, how, [chosen[int(place)] for place in rng.permutation(count)])
    focus = how.distance * rng.uniform(0.97, 1.03)
    canvas = Canvas(rng, how, camera, focus)
    canvas.room()
    for number, item in enumerate(items):
        canvas.lay(number, item)
    canvas.fronts()
    return Scene(
        photographed(exposed(canvas.light, how.blur, rng), rng, blur=0.0, noise=how.noise, quality=how.quality),
        canvas.truths(),
    )


def camera_of(rng: np.random.Generator, how: Filed) -> Camera:
    """Held a little askew, looking down at the middle of the bins."""
    pitch, yaw, roll = np.radians([rng.normal(42, 2), rng.normal(0, 3), rng.normal(0, 1.2)])
    target = np.array([rng.normal(0, 8), 170.0, DEEP / 2])
    ahead = np.array([np.sin(yaw) * np.cos(pitch), -np.sin(pitch), np.cos(yaw) * np.cos(pitch)])
    right = np.array([np.cos(yaw), 0.0, -np.sin(yaw)])
    down = -np.array([0.0, 1.0, 0.0]) - np.sin(pitch) * ahead
    down /= np.linalg.norm(down)
    turned = (np.cos(roll) * right + np.sin(roll) * down, np.cos(roll) * down - np.sin(roll) * right)
    focal = 26 / 43.27 * float(np.hypot(*how.size))
    return Camera(target - how.distance * ahead, np.stack([*turned, ahead]), focal, (np.array(how.size) - 1) / 2)


def items_of(rng: np.random.Generator, how: Filed, chosen: list[tuple[str, str]]) -> list[Item]:
    """Goods with their cards, the farthest first."""
    items = []
    for place in range(how.bins):
        middle = (place - (how.bins - 1) / 2) * (WIDE + 8)
        lean = np.radians(rng.uniform(8, 22))
        gaps = rng.uniform(0.5, 1.5, how.items + 1)
        depths = (DEEP - 50) * np.cumsum(gaps)[:-1] / gaps.sum()
        for text, kind in chosen[place * how.items : (place + 1) * how.items]:
            depth, depths = depths[0], depths[1:]
            items.append(_item(rng, how, text, kind, middle, depth, lean))
    return sorted(items, key=lambda item: -float(item.goods.corner[2]))


def _item(rng: np.random.Generator, how: Filed, text: str, kind: str, middle: float, depth: float, lean: float) -> Item:
    turn, lean = np.radians(rng.normal(0, how.turn / 2)), lean + np.radians(rng.normal(0, how.lean / 2))
    right, up = _axes(turn, lean)
    width = rng.uniform(120, WIDE - 20)
    x = middle + rng.uniform(-1, 1) * (WIDE - width) / 2
    top = np.array([x, 0.0, depth]) + up * rng.normal(150, how.level)
    goods = Plane(top - right * width / 2, right, -up)
    right, up = _axes(turn + np.radians(rng.normal(0, how.turn)), lean + np.radians(rng.normal(0, how.lean)))
    roll = np.radians(np.clip(rng.normal(0, how.roll), -25, 25))
    right, up = np.cos(roll) * right + np.sin(roll) * up, np.cos(roll) * up - np.sin(roll) * right
    side = rng.uniform(-1, 1) * (width / 2 - 45)
    head = top + goods.right * side - goods.down * (CARD[1] - rng.uniform(2, 14)) - np.array([0, 0, 3.0])
    return Item(text, kind, Plane(head - right * CARD[0] / 2, right, -up), goods, width)


def _axes(turn: float, lean: float) -> tuple[Vectors, Vectors]:
    """Right and up of something upright that was turned, then leant back."""
    right = np.array([np.cos(turn), 0.0, np.sin(turn)])
    back = np.array([-np.sin(turn), 0.0, np.cos(turn)])
    return right, np.cos(lean) * np.array([0.0, 1.0, 0.0]) + np.sin(lean) * back


class Canvas:
    """The light that falls on the sensor, and whose it is, painted from far to near."""

    def __init__(self, rng: np.random.Generator, how: Filed, camera: Camera, focus: float) -> None:
        self.rng, self.how, self.camera, self.focus = rng, how, camera, focus
        self.light: Array = np.zeros(how.size[::-1], np.float32)
        self.owner = np.full(how.size[::-1], -1, np.int16)
        self.codes: list[tuple[int, str, str, int, Vectors, float]] = []

    def disc(self, depth: float) -> float:
        """Diameter of the circle of confusion in pixels: thin lens, focal length far below the distances."""
        return self.how.aperture * self.camera.focal * abs(depth - self.focus) / (depth * self.focus)

    def room(self) -> None:
        """Wall, boards and the insides of the bins."""
        width, height = self.how.size
        wall = background(self.rng, Flat(size=(width // 2, height // 2), stripes=80, marks=600))
        self.light[:] = cv2.resize(wall, (width, height)) ** 2 / 400  # out of focus, and far from the light
        for middle in self.middles():
            for side in (-1, 1):
                x = middle + side * WIDE / 2
                self._quad([(x, RIM, 0), (x, RIM + 40, DEEP), (x, 0, DEEP), (x, 0, 0)], self.rng.uniform(40, 120))
            back, low = middle - WIDE / 2, middle + WIDE / 2
            self._quad([(back, 150, DEEP), (low, 150, DEEP), (low, 0, DEEP), (back, 0, DEEP)], self.rng.uniform(30, 90))
        self.light[:] = cv2.GaussianBlur(self.light, (0, 0), 3)

    def fronts(self) -> None:
        """The bins' front edges, over everything."""
        for middle in self.middles():
            left, right, grey = middle - WIDE / 2 - 3, middle + WIDE / 2 + 3, self.rng.uniform(30, 150)
            self._quad([(left, RIM, 0), (right, RIM, 0), (right, -200, 0), (left, -200, 0)], grey)
            self._quad([(left, RIM, 0), (right, RIM, 0), (right, RIM - 4, 0), (left, RIM - 4, 0)], grey * 1.4)

    def middles(self) -> list[float]:
        return [(place - (self.how.bins - 1) / 2) * (WIDE + 8) for place in range(self.how.bins)]

    def _quad(self, points: list[tuple[float, float, float]], grey: float) -> None:
        seen, _ = self.camera.see(np.array(points, np.float64))
        places = np.round(np.clip(seen, -20000, 20000) * 16).astype(np.int32)
        cv2.fillConvexPoly(self.light, places, grey, cv2.LINE_AA, 4)
        cv2.fillConvexPoly(self.owner, places, -1, shift=4)

    def lay(self, number: int, item: Item) -> None:
        """Goods, a code on them, and their card, blurred together."""
        quad, depths = self.camera.see(item.goods.at(rectangle(item.width, SHOWN)))
        face, face_depths = self.camera.see(item.card.at(rectangle(*CARD)))
        disc = self.disc(float(face_depths.mean()))
        box = box_of(np.concatenate([quad, face]), self.light.shape, int(disc) + 2)
        if box is None:
            return
        grey, share = patch(_goods(self.rng, item.width), quad, box, 1)
        grey *= np.float32(self.rng.uniform(0.5, 1.0))
        if self.rng.random() < self.how.foreign:
            self._foreign(item, number, box, grey, share, float(depths.mean()))
        self._own(number + 1000, box, share)
        self._card(item, number, box, (grey, share), face, float(face_depths.mean()))
        kernel = lens(round(disc, 1))
        if disc > 0.3:
            grey, share = (cv2.filter2D(each, -1, kernel, borderType=cv2.BORDER_REPLICATE) for each in (grey, share))
        x0, y0, x1, y1 = box
        window = self.light[y0:y1, x0:x1]
        window *= 1 - share
        window += grey

    def _own(self, number: int, box: Box, share: Array) -> None:
        self.owner[box[1] : box[3], box[0] : box[2]][share > 0.5] = number

    def _card(self, item: Item, number: int, box: Box, layer: tuple[Array, Array], face: Vectors, depth: float) -> None:
        px = self.camera.focal / depth  # per mm
        fine = 6 if px * self.how.module < 1.5 else 4
        texture = self.drawn(item, px * fine)
        inner = box_of(face, self.light.shape, 2)
        if inner is None:
            return
        grey, share = patch(texture, face, inner, fine)
        shade, shine = _lit(self.rng, self.how)
        matrix = cv2.getPerspectiveTransform(outer(shade).astype(np.float32), (face - inner[:2]).astype(np.float32))
        shade, shine = (
            cv2.warpPerspective(each, matrix, grey.shape[::-1], borderMode=cv2.BORDER_REPLICATE)
            for each in (shade, shine)
        )
        _over(layer, box, inner, grey * shade + shine * share, share)
        self._own(number, inner, share)
        length = code128.modules(item.text) * self.how.module
        left = (CARD[0] - length) / 2
        corners = rectangle(length, self.how.height) + np.array([left, ABOVE])
        self.codes.append((number, item.text, item.kind, code128.modules(item.text), item.card.at(corners), depth))

    def drawn(self, item: Item, scale: float) -> Grey:
        """An item's card in linear light, `scale` texels a mm."""
        return _card(item.text, self.how, scale, self.rng)

    def _foreign(self, item: Item, number: int, box: Box, grey: Array, share: Array, depth: float) -> None:
        text, widths = foreign_code(self.rng)
        module, px = self.rng.uniform(0.25, 0.5), self.camera.focal / depth
        look = Look(self.rng.uniform(8, 25), self.rng.uniform(170, 215), 200, self.rng.uniform(10, 30) / module / 1.6)
        fine = 4
        texture, corners = label(text, widths, look, module * px * fine)
        size = np.array(texture.shape[::-1]) / (px * fine)
        at = np.array([self.rng.uniform(0, max(1.0, item.width - size[0])), self.rng.uniform(1, 12)])
        quad, _ = self.camera.see(item.goods.at(rectangle(*size) + at))
        inner = box_of(quad, self.light.shape)
        if inner is None:
            return
        _over((grey, share), box, inner, *patch(texture, quad, inner, fine))
        places = item.goods.at((corners + 0.5) / (px * fine) + at)
        self.codes.append((number + 1000, text, "foreign", sum(widths), places, depth))

    def truths(self) -> tuple[Truth, ...]:
        return tuple(self._truth(*code) for code in self.codes)

    def _truth(self, number: int, text: str, kind: str, modules: int, corners: Vectors, depth: float) -> Truth:
        seen, _ = self.camera.see(corners)
        shown = visible(self.owner, number, seen)
        return truth_of(text, kind, modules, seen, visible=shown, disc=self.disc(depth))


def visible(owner: NDArray[np.int16], number: int, corners: Vectors) -> float:
    """Largest share of the height in which whole rows of a quadrilateral belong to `number`, one above the other."""
    unit = np.array([(0, 0), (1, 0), (1, 1), (0, 1)], np.float32)
    matrix = cv2.getPerspectiveTransform(unit, corners.astype(np.float32))
    across, along = np.meshgrid(np.linspace(0.005, 0.995, 150), (np.arange(100) + 0.5) / 100)
    places = np.round(through(matrix, np.column_stack([across.ravel(), along.ravel()]))).astype(int)
    inside = ((places >= 0) & (places < owner.shape[::-1])).all(1)
    mine = np.zeros(len(places), bool)
    mine[inside] = owner[places[inside, 1], places[inside, 0]] == number
    run = best = 0
    for whole in mine.reshape(100, 150).all(1):
        run = run + 1 if whole else 0
        best = max(best, run)
    return best / 100


def _over(layer: tuple[Array, Array], box: Box, inner: Box, grey: Array, share: Array) -> None:
    """A nearer patch onto a layer whose box holds the patch's."""
    for below, above in zip(layer, (grey, share), strict=True):
        window = below[inner[1] - box[1] : inner[3] - box[1], inner[0] - box[0] : inner[2] - box[0]]
        window *= 1 - share
        window += above


def rectangle(width: float, height: float) -> Vectors:
    return np.array([(0, 0), (width, 0), (width, height), (0, height)], np.float64)


def _card(text: str, how: Filed, scale: float, rng: np.random.Generator) -> Grey:
    """A laminated card in linear light, `scale` texels a mm: bars along the top edge, text, a coloured foot."""
    columns, rows = round(CARD[0] * scale), round(CARD[1] * scale)
    paper, ink, foot = rng.uniform(195, 225), rng.uniform(7, 16), rng.uniform(30, 190)
    widths = code128.widths(text)
    start = (CARD[0] / how.module - sum(widths)) / 2
    across = bars(widths, start, columns, scale * how.module)
    high = coverage([ABOVE, ABOVE + how.height], rows, scale)
    low = coverage([CARD[1] - 8, CARD[1]], rows, scale)[:, None]
    drawn = (paper - (paper - ink) * np.outer(high, across)) * (1 - low) + foot * low
    texture = (drawn + 0.5).astype(np.uint8)
    size = 12 * scale / 21
    thick = max(1, round(size * 2))
    (wide, _), _ = cv2.getTextSize(text, FONT, size, thick)
    at = (round((columns - wide) / 2), round((CARD[1] - 11) * scale))
    cv2.putText(texture, text, at, FONT, size, float(ink), thick, cv2.LINE_AA)
    return texture


def _lit(rng: np.random.Generator, how: Filed) -> tuple[Array, Array]:
    """What a card's light is multiplied by, and what shines on top, in cells of 2 mm."""
    columns, rows = int(CARD[0] / 2), int(CARD[1] / 2)
    x, y = np.meshgrid(np.arange(columns, dtype=np.float32) / columns, np.arange(rows, dtype=np.float32) / rows)
    shade = rng.uniform(0.55, 1.0) * (1 + rng.uniform(-0.15, 0.15) * (x - 0.5) - rng.uniform(0, 0.3) * y)
    if rng.random() < 0.25:  # the shadow of something near
        side = (x - rng.uniform(0.2, 0.8)) * np.cos(turn := rng.uniform(0, 6.3)) + (y - 0.3) * np.sin(turn)
        shade *= 1 - rng.uniform(0.2, 0.55) / (1 + np.exp(-side / rng.uniform(0.02, 0.1)))
    shine = np.zeros_like(x)
    if rng.random() < how.glare:
        turn, length, wide = rng.uniform(0, 3.2), rng.uniform(0.1, 0.4), rng.uniform(0.03, 0.1)
        dx, dy = x - rng.uniform(0, 1), (y - rng.uniform(0, 0.7)) * CARD[1] / CARD[0]
        along, over = dx * np.cos(turn) + dy * np.sin(turn), dy * np.cos(turn) - dx * np.sin(turn)
        shine += rng.uniform(40, 350) * np.exp(-((along / length) ** 4) - (over / wide) ** 2)
    if rng.random() < how.haze:  # a bag about goods and card
        folds = cv2.resize(rng.random((5, 7), np.float32), (columns, rows), interpolation=cv2.INTER_CUBIC)
        haze = rng.uniform(0.1, 0.35) * (0.5 + np.clip(folds, 0, 1))
        shade, shine = shade * (1 - haze), shine + 160 * haze
    return shade.astype(np.float32), shine.astype(np.float32)


def _goods(rng: np.random.Generator, width: float) -> Grey:
    """Cloth, cardboard, printed boxes, ribs, in linear light, 2 texels a mm."""
    columns, rows = int(width * 2), int(SHOWN * 2)
    base = rng.uniform(10, 150)
    coarse = rng.normal(0, base * 0.15, (rows // 8 + 2, columns // 8 + 2)).astype(np.float32)
    drawn = base + cv2.resize(coarse, (columns, rows), interpolation=cv2.INTER_LINEAR)
    kind = rng.random()
    if kind < 0.25:
        period = rng.uniform(3, 16)
        drawn *= 1 + rng.uniform(0.2, 0.9) * np.sin(np.arange(columns, dtype=np.float32) * np.float32(6.283 / period))
    texture = np.clip(drawn, 2, 255).astype(np.uint8)
    if kind > 0.6:
        for _ in range(int(rng.integers(1, 5))):
            words = str(rng.choice(["HUB 36", "steel", "III lll", "100 x 70", "A-12 |||", "SIDE UP", "36"]))
            at = (int(rng.uniform(0, columns)), int(rng.uniform(0, rows)))
            size = rng.uniform(0.4, 1.5)
            cv2.putText(texture, words, at, FONT, size, rng.uniform(2, 220), max(1, int(2 * size)), cv2.LINE_AA)
    return texture


def exposed(light: Array, blur: float, rng: np.random.Generator) -> Array:
    """Grey levels 0 to 255 of light after the lens's own blur: exposure, darker corners, sRGB."""
    height, width = light.shape
    light = cv2.GaussianBlur(light, (0, 0), blur, borderType=cv2.BORDER_REPLICATE) if blur else light
    x, y = np.linspace(-1, 1, width, dtype=np.float32), np.linspace(-1, 1, height, dtype=np.float32)
    light *= np.float32(PAPER / 215 * rng.uniform(0.85, 1.1) * 4095)
    light *= 1 - np.float32(0.12) * (x**2 + y[:, None] ** 2)
    return _TONE[np.clip(light, 0, 4095).astype(np.uint16)]


def _tone() -> Array:
    share = np.arange(4096) / 4095
    return (255 * np.where(share <= 0.0031308, 12.92 * share, 1.055 * share ** (1 / 2.4) - 0.055)).astype(np.float32)


_TONE = _tone()
