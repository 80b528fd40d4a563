"""Where a card and its thing are: by the account's last step, and misplaced where a later reading contradicts it."""

from dataclasses import replace
from datetime import UTC, datetime, timedelta

import pytest

from scanflow.domain.life import CardState, LineState
from scanflow.domain.things import Out, Sighting, Slot, Station
from scanflow.domain.whereabouts import Account, PlaceKind, bin_of_stop, free_to_give, whereabouts, words

NOON = datetime(2026, 3, 2, 12, tzinfo=UTC)
SLOT = Slot("D001", "D", 1, "A-1-1", turns=1, card=CardState.ON_ITEM)
FREE = replace(SLOT, card=CardState.TRAY)
BASKET = Out(Station.BIN, "A-1-1", "r", 3)
TABLE = Out(Station.TABLE, "main")
HOME = Sighting(Station.SHELF, "A-1-1", True, NOON)
COUNTED = Sighting(Station.SHELF, "A-1-1", False, NOON)
ASTRAY = Sighting(Station.SHELF, "A-1-2", False, NOON)
PULLED = Sighting(Station.BIN, "A-1-1", True, NOON)
REFUSED = Sighting(Station.BIN, "", False, NOON)
AT_TABLE = Sighting(Station.TABLE, "main", False, NOON)
IN_TRAY = Sighting(Station.TRAY, "", True, NOON)
REFUSED_AT_TRAY = Sighting(Station.TRAY, "", False, NOON)


def of(slot=SLOT, **more):
    return whereabouts(Account(slot, True, **more))


@pytest.mark.parametrize(
    ("seen", "out", "line", "place", "misplaced"),
    [
        (None, None, None, "bin", False),
        (HOME, None, None, "bin", False),
        (COUNTED, None, None, "bin", False),
        (ASTRAY, None, None, "bin", True),
        (REFUSED, None, LineState.WAITING, "bin", False),
        (AT_TABLE, None, None, "bin", True),
        (AT_TABLE, None, LineState.WAITING, "bin", True),
        (REFUSED_AT_TRAY, None, None, "bin", True),
        (PULLED, BASKET, LineState.PICKED, "basket", False),
        (PULLED, BASKET, None, "basket", False),
        (PULLED, BASKET, LineState.WAITING, "basket", False),
        (AT_TABLE, BASKET, LineState.PICKED, "basket", False),
        (ASTRAY, BASKET, LineState.PICKED, "basket", True),
        (COUNTED, BASKET, LineState.PICKED, "basket", True),
        (REFUSED_AT_TRAY, BASKET, None, "basket", True),
        (Sighting(Station.TABLE, "main", True, NOON), TABLE, LineState.PICKED, "table", False),
        (ASTRAY, TABLE, None, "table", True),
        (None, None, LineState.PICKED, "basket", False),
    ],
)
def test_a_thing_in_stock_is_where_its_last_step_has_it(seen, out, line, place, misplaced):
    """In its bin, its basket or on a table; misplaced once its card is read elsewhere."""
    where = of(replace(SLOT, seen=seen, out=out), line=line)
    assert (place, misplaced) == (where.place, where.misplaced)


@pytest.mark.parametrize(
    ("seen", "misplaced"),
    [
        (None, False),
        (Sighting(Station.TABLE, "main", True, NOON, "p"), False),
        (Sighting(Station.TABLE, "main", False, NOON, "p"), False),
        (Sighting(Station.TABLE, "main", False, NOON, None), True),
        (Sighting(Station.TABLE, "side", False, NOON, "q"), True),
        (IN_TRAY, False),
        (HOME, True),
        (ASTRAY, True),
        (REFUSED, True),
    ],
)
def test_a_packed_thing_is_misplaced_where_its_own_parcel_is_not(seen, misplaced):
    """Its own parcel's table and the tray contradict nothing; any shelf, bin or other parcel does."""
    where = of(replace(SLOT, seen=seen), line=LineState.PACKED, parcel="p", table="main", order="1001")
    assert (PlaceKind.PARCEL, misplaced) == (where.place, where.misplaced)


@pytest.mark.parametrize(
    ("card", "seen", "place", "misplaced"),
    [
        (CardState.TRAY, None, "tray", False),
        (CardState.TRAY, IN_TRAY, "tray", False),
        (CardState.TRAY, ASTRAY, "tray", True),
        (CardState.TRAY, REFUSED, "tray", True),
        (CardState.TRAY, AT_TABLE, "tray", True),
        (CardState.TRAY, REFUSED_AT_TRAY, "tray", True),
        (CardState.DUE, Sighting(Station.TABLE, "main", True, NOON, "p"), "due", False),
        (CardState.DUE, ASTRAY, "due", True),
        (CardState.LOST, None, "lost", False),
        (CardState.LOST, AT_TABLE, "lost", True),
        (CardState.HAND, None, "hand", False),
    ],
)
def test_a_card_without_a_thing(card, seen, place, misplaced):
    """In the tray, due or lost; misplaced where it was read, or looked for and missed."""
    slot = replace(FREE, card=card, seen=seen)
    where = whereabouts(Account(slot, False))
    assert (place, misplaced) == (where.place, where.misplaced)
    assert free_to_give(slot, taken=False) is (card is CardState.TRAY and not misplaced)


def test_a_taken_number_is_never_free_to_give():
    """Whatever its card says, a slot with a thing has no number to give."""
    assert not free_to_give(FREE, taken=True)


@pytest.mark.parametrize(
    ("slot", "line", "bin_"),
    [
        (SLOT, None, "A-1-1"),
        (replace(SLOT, seen=ASTRAY), LineState.WAITING, "A-1-2"),
        (replace(SLOT, out=BASKET, seen=PULLED), LineState.WAITING, None),
        (replace(SLOT, out=BASKET, seen=ASTRAY), LineState.WAITING, "A-1-2"),
        (replace(SLOT, seen=AT_TABLE), LineState.WAITING, None),
    ],
)
def test_the_bin_to_walk_to(slot, line, bin_):
    """Where its card was seen last, else its own; none while it lies elsewhere."""
    assert bin_ == of(slot, line=line).bin


@pytest.mark.parametrize(
    ("line", "bin_"),
    [(LineState.WAITING, "A-1-2"), (LineState.PICKED, "B-1-1"), (LineState.RELEASED, "B-1-1")],
)
def test_the_bin_of_a_stop(line, bin_):
    """Where the thing is while its line waits, then where it was walked to."""
    assert bin_ == bin_of_stop("B-1-1", line, of(replace(SLOT, seen=ASTRAY)))
    assert "B-1-1" == bin_of_stop("B-1-1", line, None)


def test_a_thing_in_a_basket_has_its_own_bin_as_its_stop():
    """The walk leads past there; what the stop says leads to the basket."""
    assert "A-1-1" == bin_of_stop("B-1-1", LineState.WAITING, of(replace(SLOT, out=BASKET)))


@pytest.mark.parametrize(
    ("slot", "line", "duty"),
    [
        (SLOT, None, False),
        (replace(SLOT, out=BASKET), None, True),
        (replace(SLOT, out=BASKET), LineState.WAITING, True),
        (replace(SLOT, out=BASKET), LineState.PICKED, False),
        (replace(SLOT, out=BASKET, seen=ASTRAY), LineState.PICKED, True),
        (replace(SLOT, out=TABLE), None, True),
        (replace(SLOT, seen=ASTRAY), LineState.WAITING, True),
        (replace(SLOT, seen=ASTRAY), LineState.PACKED, False),
    ],
)
def test_what_is_to_be_put_back(slot, line, duty):
    """What is off its shelf and not under way to the table; what is packed has its line held instead."""
    assert duty is of(slot, line=line, parcel="p").to_put_back


def test_a_missing_thing_that_was_read_since_is_misplaced():
    """A reading after it was missed is news, wherever it was; one before says nothing."""
    seen = replace(SLOT, seen=COUNTED)
    before, after = NOON - timedelta(minutes=1), NOON + timedelta(minutes=1)
    found = [of(seen, line=LineState.SHORT, missed=when).misplaced for when in (before, after)]
    assert [True, False] == found


@pytest.mark.parametrize(
    ("where", "said"),
    [
        (of(), "in bin A-1-1"),
        (of(replace(SLOT, out=BASKET)), "in basket 3"),
        (of(replace(SLOT, out=TABLE)), "on table main"),
        (of(line=LineState.PACKED, table="main", order="1001"), "in the parcel of 1001 at table main"),
        (of(line=LineState.PACKED, order="1001"), "in the parcel of 1001, set aside"),
        (of(replace(SLOT, seen=ASTRAY)), "in bin A-1-1 by the records, but its card was seen in bin A-1-2"),
        (of(replace(SLOT, out=BASKET, seen=ASTRAY)), "in basket 3 by the records, but its card was seen in bin A-1-2"),
        (of(line=LineState.SHORT, missed=NOON), "missing from bin A-1-1"),
        (whereabouts(Account(FREE, False)), "in the tray"),
        (
            whereabouts(Account(replace(FREE, seen=REFUSED_AT_TRAY), False)),
            "in the tray by the records, but its card was not found there",
        ),
        (
            of(replace(SLOT, seen=REFUSED_AT_TRAY)),
            "in bin A-1-1 by the records, but its card is not on it: look in the tray",
        ),
    ],
)
def test_words_of_a_place(where, said):
    """One place, the same words everywhere."""
    assert said == words(where)
