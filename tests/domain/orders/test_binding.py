"""Which stay an order line asks for: bound, bound with a doubt, or unbound and why."""

from dataclasses import replace
from datetime import UTC, datetime

import pytest

from scanflow.domain.life import Hold, StayState
from scanflow.domain.orders.binding import Asked, Bound, ReferenceFacts, bind, doubt_of, learns
from scanflow.domain.orders.titles import Titled
from scanflow.domain.things import Held, Item, Stay

NOON = datetime(2026, 3, 2, 12, tzinfo=UTC)
MORNING = datetime(2026, 3, 2, 8, tzinfo=UTC)
STAY = Stay("s1", "i", "D001", 1, NOON)
ITEM = Item("i", "Rear derailleur, long cage")
HERE = ReferenceFacts(STAY, STAY, ITEM, None, 1, listings=("L-1",))
OURS = Titled("i", "s1", "D001", ITEM.title)
OTHER = Titled("j", "s5", "D005", "Brass bicycle bell")
THIRD = Titled("k", "s6", "D006", "Quill stem")
ASKED = Asked(True, 1)


def found(**changes):
    return replace(HERE, **changes)


def state(name, **more):
    return replace(STAY, state=name, **more)


@pytest.mark.parametrize(
    ("asked", "known", "hold"),
    [
        (Asked(True, 1, bad="Column missing."), HERE, Hold.BAD_ROW),
        (Asked(False), ReferenceFacts(), Hold.UNKNOWN_CODE),
        (ASKED, ReferenceFacts(turns=1), Hold.UNKNOWN_CODE),
        (Asked(True), ReferenceFacts(), Hold.SLOT_FREE),
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
    assert (None, [hold], True) == (bound.stay, [each.hold for each in bound.holds], bool(bound.holds[0].why))


def test_the_other_order_is_named():
    """What is sold already names the order that has it."""
    assert (Held(Hold.ALREADY_SOLD, "Order 7 has it."),) == bind(ASKED, found(wanted_by="7")).holds


def test_another_line_of_the_same_order_is_no_other_order():
    """A second line for one thing says so, and doesn't name its own order as if it were another."""
    expected = (Held(Hold.ALREADY_SOLD, "Another line of this order has it."),)
    assert expected == bind(ASKED, found(wanted_by="")).holds
    gone = bind(ASKED, found(latest=state(StayState.SHIPPED), wanted_by=""))
    assert (Held(Hold.ALREADY_SOLD, "It has left with this order."),) == gone.holds


def test_a_quantity_binds_and_holds():
    """There is one of each thing: who asks for more gets the one, once a person has looked, whatever the listing id."""
    asked = replace(ASKED, quantity="2", listing="L-1")
    expected = Bound("s1", (Held(Hold.DOUBTFUL, "The order asks for 2 of it; there is one."),))
    assert expected == bind(asked, found(listed=(OURS,)))


def test_a_quantity_stands_behind_other_doubts():
    """A doubt and a quantity are one hold with both sentences."""
    bound = bind(replace(ASKED, quantity="2", title="Brass bicycle bell"), HERE)
    expected = ("s1", 1)
    assert expected == (bound.stay, len(bound.holds))
    assert bound.holds[0].why.startswith("The title differs")
    assert bound.holds[0].why.endswith("The order asks for 2 of it; there is one.")


def test_an_unbound_line_tells_its_quantity():
    """A line that is bound to nothing keeps its hold, and says how many were asked for."""
    bound = bind(replace(ASKED, quantity="2"), found(wanted_by="7"))
    assert (Held(Hold.ALREADY_SOLD, "Order 7 has it. The order asks for 2 of it; there is one."),) == bound.holds


def test_what_is_wrong_with_a_reference_is_told():
    """The words of an unknown code say what is wrong with it, where that is known."""
    for asked, known in ((Asked(False, wrong="No section Q."), ReferenceFacts()), (ASKED, ReferenceFacts(turns=1))):
        bound = bind(replace(asked, wrong="No section Q."), known)
        assert (Held(Hold.UNKNOWN_CODE, "No section Q."),) == bound.holds


DOUBTED = {
    "another thing's listing id": (Asked(True, 1, listing="L-2"), found(listed=(OTHER,))),
    "other words": (Asked(True, 1, title="Brass bicycle bell"), HERE),
    "another thing fits better": (Asked(True, 1, title="Rear bell"), found(closer=OTHER)),
    "ordered before it came": (Asked(True, 1, ordered_at=MORNING), HERE),
    "a bare code in a used slot": (Asked(True), found(turns=2)),
    "a bare code with another listing id": (Asked(True, listing="L-2"), HERE),
    "a bare code with an id of two other things": (Asked(True, listing="L-2"), found(listed=(OTHER, THIRD))),
    "an id of two things, and other words": (Asked(True, 1, "Bell", "L-1"), found(listed=(OURS, OTHER))),
}


@pytest.mark.parametrize("why", DOUBTED)
def test_a_doubt_binds_and_holds(why):
    """What speaks for another thing leaves the line bound, but a person must look."""
    bound = bind(*DOUBTED[why])
    assert ("s1", [Hold.DOUBTFUL]) == (bound.stay, [each.hold for each in bound.holds])


UNDOUBTED = {
    "a reference alone": (ASKED, HERE),
    "a bare code": (Asked(True), HERE),
    "ordered since": (Asked(True, 1, ordered_at=NOON), HERE),
    "half of the words": (Asked(True, 1, title="rear DERAILLEUR"), HERE),
    "a reference with an unknown listing id": (Asked(True, 1, listing="L-9"), HERE),
    "a reference with an id of two other things": (Asked(True, 1, listing="L-9"), found(listed=(OTHER, THIRD))),
    "a bare code with an id of two things, ours too": (Asked(True, listing="L-1"), found(listed=(OURS, OTHER))),
    "a bare code with an id, where none is known of ours": (Asked(True, listing="L-9"), found(listings=())),
}


@pytest.mark.parametrize("why", UNDOUBTED)
def test_no_doubt_binds_alone(why):
    """What speaks for no other thing holds nothing."""
    assert Bound("s1") == bind(*UNDOUBTED[why])


@pytest.mark.parametrize("turn", [None, 1])
def test_our_own_listing_id_outweighs_dates_turns_and_words(turn):
    """The listing id that is this thing's alone tells what the buyer saw."""
    asked = Asked(True, turn, "Brass bicycle bell", "L-1", MORNING)
    assert Bound("s1") == bind(asked, found(turns=3, listed=(OURS,), closer=OTHER))


@pytest.mark.parametrize("known", [found(listed=(OTHER,)), found(closer=OTHER), found(listed=(OTHER,), closer=OTHER)])
def test_the_other_thing_is_named(known):
    """A doubt that another thing is meant names its code and its title."""
    why = doubt_of(Asked(True, 1, "Bell", "L-2"), known)
    assert (True, True) == ("D005" in why, "Brass bicycle bell" in why)


def test_all_doubts_are_told():
    """One hold has the words of every doubt."""
    why = doubt_of(Asked(True, 1, "Quill stem", "L-2", MORNING), found(listed=(OTHER,), closer=THIRD))
    assert (True, True, True) == ("D005" in why, "D006" in why, "before" in why)


@pytest.mark.parametrize(
    ("asked", "known", "taught"),
    [
        (Asked(True, 1, listing="L-9"), HERE, True),
        (Asked(True, 1), HERE, False),
        (Asked(True, listing="L-9"), found(listings=()), False),
        (Asked(True, 1, listing="L-1"), found(listed=(OURS,)), False),
        (Asked(True, 1, listing="L-9"), found(listed=(OTHER, THIRD)), False),
        (Asked(True, 1, listing="L-9"), found(doubts="Not this."), False),
        (Asked(True, 1, listing="L-9"), found(wanted_by="7"), False),
    ],
)
def test_an_exact_reference_in_no_doubt_teaches_an_unknown_listing_id(asked, known, taught):
    """Only where nothing else speaks against it, and no thing has the id."""
    assert taught is learns(asked, known, bind(asked, known))


def test_a_moved_thing_is_found_by_its_old_reference():
    """A line asks for the thing: it is bound to the stay the thing has now."""
    moved = found(named=state(StayState.MOVED), latest=replace(STAY, id="s2", code="D002"))
    assert Bound("s2") == bind(ASKED, moved)
