"""States of slots and orders, and what has to go back, are told from what is stored."""

from dataclasses import replace
from datetime import UTC, datetime

import pytest

from scanflow.domain.derive import (
    ENDED,
    ForSale,
    ListingState,
    OrderState,
    SlotState,
    listing_state,
    order_state,
    slot_state,
)
from scanflow.domain.life import CardState, Hold, LineState, StayState
from scanflow.domain.things import Line, Listing, Slot, Stay

NOON = datetime(2026, 3, 2, 12, tzinfo=UTC)
OFFER = Listing("1", "i", "fair", "F-1", None, NOON)
SLOT = Slot("D001", "D", 1, "A-1-1", turns=1)
STAY = Stay("1", "i", "D001", 1, datetime(2026, 3, 2, 12, tzinfo=UTC))
GONE = replace(STAY, state=StayState.SHIPPED)
LINE = Line("1", "o", 1, "D001", stay="1", state=LineState.WAITING)


@pytest.mark.parametrize("card", CardState)
def test_a_slot_with_an_open_stay_is_taken(card):
    """Whatever is known of its card, a slot is taken while its thing is in stock."""
    assert SlotState.TAKEN == slot_state(replace(SLOT, card=card), STAY)


@pytest.mark.parametrize("stay", [None, GONE])
@pytest.mark.parametrize(
    ("card", "state"),
    [
        (CardState.TRAY, SlotState.FREE),
        (CardState.DUE, SlotState.DUE),
        (CardState.HAND, SlotState.DUE),
        (CardState.ON_ITEM, SlotState.DUE),
        (CardState.LOST, SlotState.RETIRED),
    ],
)
def test_an_empty_slot_is_what_its_card_is(card, state, stay):
    """Without a thing, a slot is free only while its card is in the tray."""
    assert state == slot_state(replace(SLOT, card=card), stay)


LEAST_FIRST = [
    (LineState.UNBOUND, OrderState.HELD),
    (LineState.WAITING, OrderState.WAITING),
    (LineState.SHORT, OrderState.WAITING),
    (LineState.PICKED, OrderState.PICKING),
    (LineState.PACKED, OrderState.PACKING),
    (LineState.RELEASED, OrderState.RELEASED),
    (LineState.RETURNED, OrderState.RETURNED),
    (LineState.CANCELLED, OrderState.CANCELLED),
]


@pytest.mark.parametrize("place", range(len(LEAST_FIRST)))
@pytest.mark.parametrize("other", range(len(LEAST_FIRST)))
def test_an_order_stands_where_its_least_advanced_line_stands(place, other):
    """Of two lines the one that is further back tells the order's state; returned goes before cancelled."""
    lines = [replace(LINE, state=LEAST_FIRST[each][0]) for each in (place, other)]
    assert LEAST_FIRST[min(place, other)][1] == order_state(lines)


@pytest.mark.parametrize("state", [state for state, _ in LEAST_FIRST if state not in ENDED])
def test_one_held_line_holds_the_order(state):
    """A hold on any line comes before all else."""
    assert OrderState.HELD == order_state([replace(LINE, state=state).held(Hold.SUSPECT, ""), LINE])


def test_an_order_without_lines_counts_as_cancelled():
    """Nothing is wanted, so nothing is left to do."""
    assert OrderState.CANCELLED == order_state([])


@pytest.mark.parametrize("state", sorted(ENDED))
def test_what_nobody_wants_any_more_holds_nothing(state):
    """A cancelled line keeps its holds for when it is wanted after all, and asks nobody meanwhile."""
    assert OrderState.WAITING == order_state([replace(LINE, state=state).held(Hold.SUSPECT, ""), LINE])


SOLD_ELSEWHERE = (("corner", "C-1"),)


@pytest.mark.parametrize(
    ("thing", "state"),
    [
        (ForSale(True), ListingState.UP),
        (ForSale(False), ListingState.TO_TAKE_DOWN),
        (ForSale(True, reserved=True), ListingState.TO_TAKE_DOWN),
        (ForSale(True, missing=True), ListingState.TO_TAKE_DOWN),
        (ForSale(True, had=SOLD_ELSEWHERE), ListingState.TO_TAKE_DOWN),
        (ForSale(True, had=(("", ""),)), ListingState.TO_TAKE_DOWN),
        (ForSale(True, had=(("fair", ""),)), ListingState.ENDED),
        (ForSale(False, had=(("fair", "F-2"),)), ListingState.ENDED),
        (ForSale(True, had=(("corner", "F-1"),)), ListingState.ENDED),
    ],
)
def test_an_offer_is_a_duty_while_its_thing_is_not_for_sale(thing, state):
    """But for the one by which it was sold: its channel ends that itself."""
    assert state == listing_state(OFFER, thing)


@pytest.mark.parametrize("thing", [ForSale(True), ForSale(False), ForSale(True, had=SOLD_ELSEWHERE)])
def test_an_offer_that_was_taken_down_has_ended(thing):
    """Whatever becomes of its thing."""
    assert ListingState.ENDED is listing_state(replace(OFFER, ended=NOON), thing)


def test_an_offer_whose_channel_nobody_said_is_no_channels():
    """An order without a channel has not sold it by that."""
    assert ListingState.TO_TAKE_DOWN is listing_state(replace(OFFER, channel=""), ForSale(True, had=(("", ""),)))
