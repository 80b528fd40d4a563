"""Racks on their places, and bins on racks."""

from __future__ import annotations

import pytest

from scanflow.domain.things import Bin, Rack
from scanflow.planning.room import Shape, free_places, next_rack, spot

NARROW = Shape(2, 3, 0.3, 1.0, 0.5, 0.4, racks_per_side=1, aisle_pitch=1.8)


def built(count: int, shape: Shape) -> list[Rack]:
    racks: list[Rack] = []
    for _ in range(count):
        racks.append(next_rack(racks, shape=shape))
    return racks


def test_racks_fill_both_sides_of_an_aisle_first() -> None:
    """Four racks share an aisle where two stand in a row, two where one does."""
    assert [("A", 0, 0), ("B", 0, 0), ("C", 0, 1.1), ("D", 0, 1.1), ("E", 1, 0)] == [
        (rack.name, rack.aisle, rack.start) for rack in built(5, Shape())
    ]
    assert [("A", 0), ("B", 0), ("C", 1)] == [(rack.name, rack.aisle) for rack in built(3, NARROW)]


def test_names_go_on_after_z() -> None:
    """After Z comes A2."""
    assert ["Z", "A2"] == [rack.name for rack in built(27, NARROW)[25:]]


def test_free_places_of_a_shape() -> None:
    """The places of a rack are its tiers and positions, less those with a bin."""
    taken = [Bin("A-1-2", "A", 1, 2, "D"), Bin("B-2-1", "B", 2, 1, "D")]
    assert [(1, 1), (1, 3), (2, 1), (2, 2), (2, 3)] == list(free_places("A", taken, NARROW))


def test_the_spot_before_a_bin() -> None:
    """One stands before the middle of a bin; bins stand in the middle of their rack."""
    place = Bin("A-1-1", "A", 1, 1, "D")
    assert (1, pytest.approx(1.05 + 0.15)) == spot(Rack("A", 1, 1.0), place, NARROW)
    assert (0, pytest.approx(0.11)) == spot(Rack("A", 0, 0.0), place)


@pytest.mark.parametrize("changes", [{"tiers": 0}, {"bin_width": 0.3}, {"tier_height": 0}, {"aisle_pitch": 1.0}])
def test_shapes_that_cannot_be(changes: dict[str, float]) -> None:
    """A rack without tiers, with bins wider than itself, or without room to walk is an error."""
    with pytest.raises(ValueError, match=r"rack|bins"):
        Shape(**changes)
