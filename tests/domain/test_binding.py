"""Which stay an order line asks for: bound, bound with a doubt, or unbound and why."""

from dataclasses import replace
from datetime import UTC, datetime

import pytest

from scanflow.domain.binding import Asked, Bound, Found, bind, doubt_of, shared_words
from scanflow.domain.life import Hold, StayState
from scanflow.domain.things import Item, Stay

NOON = datetime(2026, 3, 2, 12, tzinfo=UTC)
MORNING = datetime(2026, 3, 2, 8, tzinfo=UTC)
STAY = Stay("s1", "i", "D001", 1, NOON)
ITEM = Item("i", "Rear derailleur, long cage", "L-1")
HERE = Found(STAY, STAY, ITEM, None, 1)
ASKED = Asked(True, 1)


def found(**changes):
    return replace(HERE, **changes)


def state(name, **more):
    return replace(STAY, state=name, **more)


@pytest.mark.parametrize(
    ("asked", "known", "hold"),
    [
        (Asked(True, 1, bad="Column missing."), HERE, Hold.BAD_ROW),
        (Asked(False), Found(), Hold.UNKNOWN_CODE),
        (ASKED, Found(turns=1), Hold.UNKNOWN_CODE),
        (Asked(True), Found(), Hold.SLOT_FREE),
        (Asked(True), found(named=state(StayState.SHIPPED)), Hold.SLOT_FREE),
        (Asked(True, ordered_at=MORNING), HERE, Hold.STALE_CODE),
        (ASKED, found(latest=state(StayState.WITHDRAWN, reason="bent")), Hold.WITHDRAWN),
        (ASKED, found(latest=state(StayState.SHIPPED), wanted_by="7"), Hold.ALREADY_SOLD),
        (ASKED, found(wanted_by="7"), Hold.ALREADY_SOLD),
    ],
)
def test_hard_reasons_leave_a_line_unbound(asked, known, hold):
    """A line that can't be bound says why, and names no stay."""
    bound = bind(asked, known)
    assert (None, hold, True) == (bound.stay, bound.hold, bool(bound.why))


def test_the_other_order_is_named():
    """What is sold already names the order that has it."""
    assert "Order 7 has it." == bind(ASKED, found(wanted_by="7")).why


@pytest.mark.parametrize(
    ("asked", "known"),
    [
        (Asked(True, 1, listing="L-2"), HERE),
        (Asked(True, 1, title="Brass bicycle bell"), HERE),
        (Asked(True), found(turns=2)),
    ],
)
def test_a_doubt_binds_and_holds(asked, known):
    """Another listing id, another title or a bare code of a slot used before: bound, but a person must look."""
    bound = bind(asked, known)
    assert ("s1", Hold.DOUBTFUL) == (bound.stay, bound.hold)


@pytest.mark.parametrize(
    "asked",
    [
        ASKED,
        Asked(True),
        Asked(True, ordered_at=NOON),
        Asked(True, 1, ordered_at=MORNING),
        Asked(True, 1, title="Brass bicycle bell", listing="L-1"),
        Asked(True, 1, title="rear DERAILLEUR"),
    ],
)
def test_no_doubt_binds_alone(asked):
    """The same listing id outweighs words; a reference outweighs dates; half the words are enough."""
    assert Bound("s1") == bind(asked, HERE)


def test_a_moved_thing_is_found_by_its_old_reference():
    """A line asks for the thing: it is bound to the stay the thing has now."""
    moved = found(named=state(StayState.MOVED), latest=replace(STAY, id="s2", code="D002"))
    assert Bound("s2") == bind(ASKED, moved)


def test_equal_listing_ids_leave_no_doubt_about_a_bare_code():
    """The listing id tells which of the slot's things is meant."""
    assert "" == doubt_of(Asked(True, listing="L-1"), found(turns=3))


@pytest.mark.parametrize(
    ("one", "other", "share"),
    [("a b c d", "A, B", 1.0), ("a b c d", "a x", 0.5), ("a b", "c d", 0.0), ("", "a", 1.0), ("…", "a", 1.0)],
)
def test_shared_words(one, other, share):
    """The share counts whole words without case, of the shorter title; nothing to compare counts as alike."""
    assert share == shared_words(one, other)
