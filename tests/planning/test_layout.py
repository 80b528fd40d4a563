"""Sections on the racks of a room, and the walk of a round, against every order and every round."""

from __future__ import annotations

from itertools import pairwise, permutations, product
from random import Random

import pytest

from scanflow.domain.things import Bin
from scanflow.planning.layout import (
    SectionToPlace,
    alphabetical_room,
    expected_walk,
    from_the_floor,
    ladder,
    plan_room,
    random_room,
    walks_to,
)
from scanflow.planning.room import Shape, next_rack, spot

SMALL = Shape(tiers=2, positions=2, bin_width=0.5, rack_width=1.0, rack_depth=0.5, tier_height=0.4, racks_per_side=1)
KINDS = [SectionToPlace("A", 2, 1), SectionToPlace("B", 1, 6), SectionToPlace("C", 3, 2), SectionToPlace("D", 2, 12)]
SHOP = [
    *(
        SectionToPlace("C", 12, 5, low=True),
        SectionToPlace("D", 30, 40),
        SectionToPlace("L", 20, 8),
        SectionToPlace("P", 25, 20),
    ),
    *(SectionToPlace("S", 18, 30), SectionToPlace("W", 15, 6, low=True), SectionToPlace("X", 30, 2)),
]


def racks_of(count, shape):
    racks = []
    for _ in range(count):
        racks.append(next_rack(racks, shape=shape))
    return racks


def brute_force_walk(racks, bins: list[Bin], kinds: list[SectionToPlace], shape: Shape, stops: int) -> float:
    """Mean over every round, stop by stop, of the shortest of all orders to walk it."""
    aisles = ladder(racks, shape)
    by_name = {rack.name: rack for rack in racks}
    total = sum(kind.visits for kind in kinds)
    chances = {kind.code: kind.visits / total / kind.bins for kind in kinds}
    mean = 0.0
    for choice in product(bins, repeat=stops):
        nodes = [aisles.node(spot(by_name[each.rack], each, shape)) for each in choice]
        table = (0.0, 0.0)
        walks = (
            sum(aisles.distance(a, b) for a, b in pairwise([table, *order, table])) for order in permutations(nodes)
        )
        chance = 1.0
        for each in choice:
            chance *= chances[each.section]
        mean += chance * min(walks)
    return mean


@pytest.mark.parametrize("stops", [1, 2, 3])
def test_the_expected_walk(stops: int) -> None:
    """Where rounds are few the expected walk is exact: every round, by the shortest of all orders."""
    racks = racks_of(3, SMALL)
    bins = random_room(KINDS, racks, SMALL, seed=4)
    walk = expected_walk(racks, bins, KINDS, SMALL, stops=stops)
    assert (pytest.approx(brute_force_walk(racks, list(bins), KINDS, SMALL, stops)), 0.0) == (walk.metres, walk.error)


def test_a_sample_of_rounds() -> None:
    """Where rounds are many a seeded sample is walked: the same every time, and near the exact figure."""
    racks = racks_of(3, SMALL)
    bins = random_room(KINDS, racks, SMALL, seed=4)
    exact = brute_force_walk(racks, list(bins), KINDS, SMALL, 4)
    walk = expected_walk(racks, bins, KINDS, SMALL, stops=4, seed=3)
    assert walk == expected_walk(racks, bins, KINDS, SMALL, stops=4, seed=3)
    assert walk.error > 0
    assert pytest.approx(exact, abs=3 * walk.error) == walk.metres


def test_no_way_to_fill_the_racks_is_much_shorter() -> None:
    """Of all ways to put the sections on the places of a small room, the shortest walk is at most 2 % shorter."""
    plan = plan_room(KINDS, SMALL, stops=2)
    columns = [(rack.name, position) for rack in plan.racks for position in (1, 2)]
    assert 4 == len(columns)
    best = float("inf")
    contents = "AABCCCDD"
    for arrangement in set(permutations(contents)):
        pairs = [arrangement[at : at + 2] for at in range(0, 8, 2)]
        if any(a > b for a, b in pairs):
            continue  # the tier within a column makes no difference to the walk
        bins = [
            Bin(f"{rack}-{tier}-{position}", rack, tier, position, pair[tier - 1])
            for (rack, position), pair in zip(columns, pairs, strict=True)
            for tier in (1, 2)
        ]
        best = min(best, expected_walk(plan.racks, bins, KINDS, SMALL, stops=2).metres)
    assert best <= plan.walk.metres <= 1.02 * best


def test_a_shop() -> None:
    """Every section has its bins, no two on one place, and the walk is shorter than in the two other rooms."""
    plan = plan_room(SHOP)
    assert {kind.code: kind.bins for kind in SHOP} == {
        kind.code: sum(each.section == kind.code for each in plan.bins) for kind in SHOP
    }
    assert 150 == len({(each.rack, each.tier, each.position) for each in plan.bins})
    assert plan.walk.metres + 2 * plan.walk.error < min(plan.random.metres, plan.alphabetical.metres)
    assert plan == plan_room(SHOP)


@pytest.mark.parametrize("seed", range(10))
def test_heavy_bins_stand_low(seed: int) -> None:
    """Heavy bins stand on the low tiers, never above another section's bin that is not heavy."""
    random = Random(seed)
    kinds = [SectionToPlace(c, random.randint(1, 20), random.uniform(0, 9), random.random() < 0.4) for c in "ABCDEF"]
    plan = plan_room(kinds, low_tiers=2, stops=4)
    low = {kind.code for kind in kinds if kind.low}
    heavy = [each for each in plan.bins if each.section in low]
    assert sum(kind.bins for kind in kinds if kind.low) == len(heavy)
    assert all(each.tier <= 2 for each in heavy)
    under = {(e.rack, e.position, e.tier) for e in plan.bins if e.section not in low}
    assert not [each for each in heavy if any((each.rack, each.position, t) in under for t in range(1, each.tier))]


def test_bins_stand_from_the_floor_up() -> None:
    """No bin stands above an empty place; a single one stands on the floor's tier, not on the top one."""
    assert ["A-1-1"] == [each.name for each in plan_room([SectionToPlace("A", 1, 1)]).bins]
    plan = plan_room([SectionToPlace("A", 7, 3), SectionToPlace("B", 9, 1), SectionToPlace("W", 4, 1, low=True)])
    standing = {(each.rack, each.position, each.tier) for each in plan.bins}
    assert [] == [place for place in standing if place[2] > 1 and (*place[:2], place[2] - 1) not in standing]


@pytest.mark.parametrize(("bins", "on_a_step"), [(20, 0), (25, 0), (26, 1), (52, 2), (60, 10)])
def test_as_few_bins_as_can_be_need_a_step(bins: int, on_a_step: int) -> None:
    """The sixth tier takes only what five tiers of as few racks as hold all can't: 5 x 5 and 2 x 5 x 5 bins."""
    plan = plan_room([SectionToPlace("A", bins - 10, 1), SectionToPlace("B", 10, 9)], easy_tiers=5, stops=2)
    assert -(-bins // 30) == len(plan.racks)
    assert (bins, on_a_step) == (len(plan.bins), sum(each.tier > 5 for each in plan.bins))


def test_what_is_visited_often_stands_below() -> None:
    """Of the bins above each other heavy ones stand lowest, then those visited most often."""
    bins = [Bin(f"A-{tier}-1", "A", tier, 1, section) for tier, section in ((6, "X"), (5, "D"), (3, "W"), (2, "D"))]
    kinds = [SectionToPlace("D", 2, 8), SectionToPlace("W", 1, 1, low=True), SectionToPlace("X", 1, 2)]
    assert ["A-1-1 W", "A-2-1 D", "A-3-1 D", "A-4-1 X"] == [
        f"{each.name} {each.section}" for each in from_the_floor(bins, kinds)
    ]


def test_racks_enough_for_the_heavy_bins() -> None:
    """Where all is heavy there are as many racks as its low tiers need."""
    assert 4 == len(plan_room([SectionToPlace("W", 40, 1, low=True)], low_tiers=2, stops=2).racks)


def test_the_alphabetical_room() -> None:
    """Sections follow each other by their letters, tier by tier from the floor."""
    bins = alphabetical_room(reversed(KINDS), racks_of(2, SMALL), SMALL)
    assert ["A-1-1 A", "A-1-2 A", "A-2-1 B", "A-2-2 C", "B-1-1 C", "B-1-2 C", "B-2-1 D", "B-2-2 D"] == [
        f"{each.name} {each.section}" for each in bins
    ]


@pytest.mark.parametrize(
    "wrong",
    [
        lambda: SectionToPlace("A", 0, 1),
        lambda: SectionToPlace("A", 1, -1),
        lambda: plan_room([]),
        lambda: plan_room([SectionToPlace("A", 1, 1)] * 2),
        lambda: plan_room([SectionToPlace("A", 1, 0)]),
        lambda: plan_room([SectionToPlace("A", 1, 1)], stops=0),
    ],
)
def test_numbers_without_sense(wrong) -> None:
    """No bins, no visits, no stops or a section named twice is an error."""
    with pytest.raises(ValueError):
        wrong()


def test_the_walk_to_a_bin() -> None:
    """One way to a bin is along the front to its aisle, and along that to its middle."""
    racks = racks_of(3, SMALL)
    bins = [Bin("A-1-1", "A", 1, 1, "D"), Bin("C-2-2", "C", 2, 2, "D")]
    assert (0.25, pytest.approx(2.0 + 0.75)) == walks_to(bins, racks, SMALL)
