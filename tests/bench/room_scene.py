"""A room's bins as they are photographed one by one, with the bins beside them and the cards on their fronts.

What stands in a bin stands there in every picture of one pass: the neighbour's photograph shows it too. Before the
next pass the things are leafed through: they stand in the same order, each a little otherwise. Lengths as in
`filed_scene`.
"""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from dataclasses import dataclass, replace

import numpy as np
from filed_scene import RIM, WIDE, Canvas, Filed, Item, Plane, camera_of, exposed, items_of, rectangle
from scenes import Grey, Look, Scene, box_of, label, patch, photographed

from labels import code128, slot_code

TIDY = Filed(level=2.0, roll=2.0, turn=3.0, lean=2.0)
"""Cards squared up, all tops at nearly one height."""

ACROSS = WIDE + 8
NEAR = (-2, -1, 0, 1, 2)
"""Bins that a picture may show, beside the one that it is taken of."""

FRONT_MODULE = 0.5
DAMAGED = "damaged"
"""Kind of a card whose bars nothing can read."""


@dataclass(frozen=True)
class Card:
    """One card as it hangs in a bin. `kind` as in `scenes.Truth`, or `DAMAGED`."""

    text: str
    kind: str = "card"


def photograph(seed: int, bins: Mapping[str, Sequence[Card]], name: str, turn: int, how: Filed = TIDY) -> Scene:
    """The bin of this name, RACK-TIER-POSITION, in the `turn`th pass through the room of this seed.

    The truth tells of the neighbours' cards too; a bin's own label is of kind "bin".
    """
    shelf, _, position = name.rpartition("-")
    names = [f"{shelf}-{int(position) + step}" for step in NEAR]
    how = replace(how, bins=len(NEAR))
    rng = np.random.default_rng([seed, turn, _number(name), 1])
    canvas = _Shelf(rng, replace(how, items=0), [each if each in bins else "" for each in names], how.distance)
    things = [
        _beside(thing, step * ACROSS)
        for step, each in zip(NEAR, names, strict=True)
        for thing in _things(seed, turn, each, bins.get(each, ()), how)
    ]
    canvas.room()
    for number, thing in enumerate(sorted(things, key=lambda item: -float(item.goods.corner[2]))):
        canvas.lay(number, thing)
    canvas.fronts()
    taken = photographed(exposed(canvas.light, how.blur, rng), rng, blur=0.0, noise=how.noise, quality=how.quality)
    return Scene(taken, canvas.truths())


def _things(seed: int, turn: int, name: str, cards: Sequence[Card], how: Filed) -> list[Item]:
    """What stands in a bin: the same in every picture of one pass."""
    rng = np.random.default_rng([seed, turn, _number(name), 0])
    alone = replace(how, bins=1, items=len(cards))
    return items_of(rng, alone, [(card.text, card.kind) for card in cards]) if cards else []


def _number(name: str) -> int:
    return int.from_bytes(name.encode(), "big")


def _beside(item: Item, right: float) -> Item:
    return replace(item, card=_moved(item.card, right), goods=_moved(item.goods, right))


def _moved(plane: Plane, right: float) -> Plane:
    return replace(plane, corner=plane.corner + np.array([right, 0.0, 0.0]))


class _Shelf(Canvas):
    """Bins side by side, a label on the front of each that has a name."""

    def __init__(self, rng: np.random.Generator, how: Filed, names: Sequence[str], distance: float) -> None:
        super().__init__(rng, how, camera_of(rng, how), distance * rng.uniform(0.97, 1.03))
        self.names = names

    def fronts(self) -> None:
        super().fronts()
        for place, (name, middle) in enumerate(zip(self.names, self.middles(), strict=True)):
            if name:
                self._front(10_000 + place, name, middle)

    def _front(self, number: int, name: str, middle: float) -> None:
        """A bin's label: a white card with its bars, 4 mm below the rim."""
        text = slot_code.bin_text(name)
        widths = code128.widths(text)
        look = Look(ink=12, paper=205, card=205, height=36)
        fine, px = 4, self.camera.focal / self.how.distance
        texture, corners = label(text, widths, look, FRONT_MODULE * px * fine)
        size = np.array(texture.shape[::-1]) / (px * fine)
        front = Plane(np.array([middle - size[0] / 2, RIM - 8, -1.0]), np.array([1.0, 0, 0]), np.array([0, -1.0, 0]))
        quad, depths = self.camera.see(front.at(rectangle(*size)))
        box = box_of(quad, self.light.shape, 2)
        if box is None:
            return
        grey, share = patch(texture, quad, box, fine)
        window = self.light[box[1] : box[3], box[0] : box[2]]
        window *= 1 - share
        window += grey * np.float32(self.rng.uniform(0.5, 0.9))
        self._own(number, box, share)
        bars = front.at((corners + 0.5) / (px * fine))
        self.codes.append((number, text, "bin", sum(widths), bars, float(depths.mean())))

    def drawn(self, item: Item, scale: float) -> Grey:
        texture = super().drawn(item, scale)
        if item.kind == DAMAGED:  # three pieces of tape across the bars
            columns = texture.shape[1]
            for left in (0.2, 0.42, 0.64):
                texture[:, round(left * columns) : round((left + 0.15) * columns)] = 190
        return texture
