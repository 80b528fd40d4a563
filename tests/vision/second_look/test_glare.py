"""Reflexes on laminate: bars beside and under them still tell the code, and what they hide is not made up."""

from __future__ import annotations

import numpy as np
import pytest
from flat_scene import Flat, flat
from numpy.typing import NDArray
from scenes import Scene, book_of

from scanflow.vision import Book, Certainty, read
from scanflow.vision.second_look.glare import reflexes

TEXTS = book_of(500)
BOOK = Book(TEXTS)
WIDTH = 3.0  # px: standard deviation across a reflex


@pytest.fixture(scope="module")
def scene() -> Scene:
    """Six cards of 1.5 pixels per module at any angle, and nothing else."""
    return flat(5, Flat(px=1.5, labels=6, foreign=0, stripes=0, marks=0, size=(1000, 800)), TEXTS)


def lit(scene: Scene, share: float, slant: float) -> NDArray[np.uint8]:
    """The picture with a blinding streak over each card, at a share of its length, so many radians from its bars."""
    light = np.zeros(scene.pixels.shape)
    y, x = np.indices(light.shape)
    for card in scene.of("card"):
        a, b, c, d = np.array(card.corners)
        middle = (a + d) / 2 + share * (b + c - a - d) / 2
        across, down = (b - a) / np.hypot(*(b - a)), d - a
        off = across * np.cos(slant) + down / np.hypot(*down) * np.sin(slant)
        far = ((x - middle[0]) * off[0] + (y - middle[1]) * off[1]) / WIDTH
        near = np.hypot(x - middle[0], y - middle[1]) < np.hypot(*down)
        light += np.where(near, 400 * np.exp(-0.5 * far * far), 0.0)
    return np.minimum(scene.pixels + light, 255).astype(np.uint8)


@pytest.mark.parametrize(("share", "slant"), [(0.3, 0.0), (0.55, 0.9), (0.7, -0.6)])
def test_cards_under_a_reflex_are_read(scene: Scene, share: float, slant: float) -> None:
    """A streak that hides some bars, straight or slanting, keeps no card from being read."""
    picture = read(lit(scene, share, slant), BOOK)

    assert sorted(card.text for card in scene.of("card")) == sorted(one.text for one in picture.readings if one.text)


def test_what_a_reflex_hides_is_not_decoded(scene: Scene) -> None:
    """Where it covers bars from top to bottom, only the book tells, and the reading says so."""
    picture = read(lit(scene, 0.5, 0.0), BOOK)

    assert {Certainty.MATCHED} == {one.certainty for one in picture.readings if one.text}


def test_without_a_reflex_no_part_is_looked_at_again(scene: Scene) -> None:
    """A picture in even light has none, and neither has white paper in too much of it."""
    blown = scene.pixels.copy()
    blown[100:300, 100:400] = 255

    assert [] == [*reflexes(scene.pixels), *reflexes(blown)]
