"""A picture that shows several bins of a shelf: which of them a card hangs in, by the labels on their fronts.

The labels stand in a row, at equal distances. What is farther away is smaller in the picture, and nearer to its middle:
each card is first moved to where it would be seen at the distance of most others, as its bars' length says. Then the
label nearest to it along the row names its bin. Near the middle between two labels it may be either's.
"""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from math import dist, hypot
from statistics import median

MARGIN, FARTHER = 0.1, 0.1
"""How far off a card's place along the shelf may be, in bins, and how much more for each bin from the middle.

The labels may stand nearer to the camera than the cards, or farther away: tests/bench/counts_bench.py renders such.
"""

Corners = Sequence[float]
Point = tuple[float, float]


def position(name: str) -> tuple[str, int] | None:
    """The shelf of a bin and its place there, None of what is no bin.

    >>> position("A-2-13"), position("tray")
    (('A-2', 13), None)
    """
    shelf, _, place = name.rpartition("-")
    return (shelf, int(place)) if shelf and place.isdigit() else None


def near(one: str, other: str) -> bool:
    """Whether a photograph of one bin may show a part of the other: one or two off on its shelf."""
    here, there = position(one), position(other)
    return here is not None and there is not None and here[0] == there[0] and abs(here[1] - there[1]) in (1, 2)


class LabelRow:
    """The labels of a shelf as they stand in a picture: at least two."""

    def __init__(self, labels: Mapping[int, Point], middle: Point) -> None:
        first, last = min(labels), max(labels)
        self._middle = middle
        self._nearest = min(labels, key=lambda place: dist(labels[place], middle))
        self._origin = labels[self._nearest]
        self._step = tuple((labels[last][axis] - labels[first][axis]) / (last - first) for axis in (0, 1))

    @property
    def width(self) -> float:
        """From label to label in pixels."""
        return hypot(*self._step)

    @property
    def upright(self) -> bool:
        """Whether the labels stand beside each other: those of a shelf do."""
        return abs(self._step[0]) > abs(self._step[1])

    def place(self, point: Point) -> float:
        """How far along the shelf a point is, in bins; the labels are at whole numbers."""
        along = sum((point[axis] - self._origin[axis]) * self._step[axis] for axis in (0, 1))
        return self._nearest + along / self.width**2

    @property
    def looked_at(self) -> int:
        """The place of the bin in the middle of the picture."""
        return round(self.place(self._middle))


def row(labels: Mapping[str, Corners], size: Sequence[int]) -> tuple[str, LabelRow] | None:
    """The shelf that most of the labels are of, and how they stand; None without two of one shelf."""
    shelves: dict[str, dict[int, Point]] = {}
    for name, corners in labels.items():
        where = position(name)
        if where is not None and corners:
            shelves.setdefault(where[0], {})[where[1]] = centre(corners)
    shelf = max(sorted(shelves), key=lambda name: len(shelves[name]), default="")
    if len(shelves.get(shelf, ())) < 2 or len(size) != 2:
        return None
    told = LabelRow(shelves[shelf], (size[0] / 2, size[1] / 2))
    return (shelf, told) if told.upright else None


def centre(corners: Corners) -> Point:
    """The middle of four corners."""
    return sum(corners[::2]) / 4, sum(corners[1::2]) / 4


def bins(cards: Sequence[tuple[Corners, bool]], labels: Mapping[str, Corners], size: Sequence[int]) -> list[list[str]]:
    """The bins that each card may hang in, the likelier first; nothing where the labels don't tell.

    A card is its bars' corners, and whether they are known to go from end to end.
    """
    lengths = [_length(corners) for corners, whole in cards if whole]
    told = row(labels, size)
    if told is None or not lengths:
        return [[] for _ in cards]
    shelf, labelled = told
    usual = median(lengths)
    if labelled.width < usual:  # a bin is wider than a card
        return [[] for _ in cards]
    x, y = size[0] / 2, size[1] / 2
    found = []
    for corners, whole in cards:
        nearer = min(1.5, max(0.67, usual / _length(corners))) if whole else 1.0
        seen = centre(corners)
        at = labelled.place((x + (seen[0] - x) * nearer, y + (seen[1] - y) * nearer))
        off = MARGIN + FARTHER * abs(at - labelled.looked_at)
        found.append([f"{shelf}-{place}" for place in _within(at, off)])
    return found


def _length(corners: Corners) -> float:
    return max(1.0, dist(corners[0:2], corners[2:4]))


def _within(at: float, off: float) -> list[int]:
    """The whole numbers that a number which may be off so far rounds to, the nearest first."""
    return sorted(range(round(at - off), round(at + off) + 1), key=lambda place: abs(place - at))
