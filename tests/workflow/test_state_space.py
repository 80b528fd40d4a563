"""Small rooms, walked through every state they can get into, over the functions that serve the real one.

What each room holds and what may happen in it stands in `small_rooms`. The day's room has all of the main job: put
away, rounds, bin, table, cancelling, tray. Holds, undo, moves, withdrawals, lost cards, changed
orders, slips, parts, settings and late picks are each explored in a room of their own, never all at once: together
they have more states than can be walked. So a fault that needs, say, an undo and a move in one run is not excluded
here. In all rooms a slot has at most two turns and one round is open at a time.

A call that raises is rolled back by whoever runs it, here as in the shop, so that it changes nothing is not proved
but given; refused scans are committed, and of those it is proved.
"""

import pytest
from explorer import explore
from mutants import base, ended
from small_rooms import DAY, ROOMS

from scanflow.domain.life import CardState, ParcelState, RoundState
from scanflow.domain.things import Order, Parcel, Round, Slot

PINNED = {
    "unread": (4, 76, "9acc8369"),
    "empty": (116, 768, "396d16c6"),
    "walk": (36, 1062, "a593ec24"),
    "stock": (142, 1518, "150f9816"),
    "versions": (122, 613, "34f454aa"),
    "file": (65, 626, "52560de1"),
    "reuse": (126, 2166, "e616dc64"),
    "parcels": (172, 2317, "ec39d0b4"),
    "doubts": (300, 4557, "fd06a1f1"),
    "again": (220, 2664, "2a7c202d"),
    "aside": (53, 663, "34001c26"),
    "unfound": (108, 1080, "91f6313d"),
    "beeps": (572, 10296, "d19c3066"),
    "lost": (212, 3604, "e8a0352e"),
    "undo": (192, 3561, "8eb3fd7d"),
    "straight": (224, 3872, "c3061561"),
    "settle": (225, 4275, "77cb2ccf"),
    "table": (182, 4400, "129c2bbe"),
    "holds": (355, 7927, "0836f986"),
    "move": (120, 2208, "d509ba25"),
}
"""Room → its states, the calls made in them, and a print of all ways and answers.

A changed rule changes these: look why before writing them anew.
"""

PINNED_DAY = (4276, 165393)

ENDING = ("stock", "file", "doubts", "straight", "table", "holds", "move")
"""The rooms in which all that is needed to end an order may happen."""


@pytest.mark.parametrize("name", ROOMS)
def test_no_step_of_a_room_breaks_a_rule(name):
    """Every property holds of every step, and the room has exactly its states."""
    found = base(name).found
    assert (None, ()) == (found.broken, found.path)
    assert PINNED[name] == (found.states, found.steps, found.print)


@pytest.mark.parametrize("name", ENDING)
def test_every_order_can_end(name):
    """From every state one can be reached in which all orders are released or cancelled."""
    assert 0 == base(name).stuck


def test_the_day_breaks_no_rule_and_can_always_end():
    """The whole main job: every property of every step, and a way to a room at rest from every state."""
    found = explore(DAY)
    assert (None, ()) == (found.broken, found.path)
    assert 0 == found.stuck(at_rest)
    assert PINNED_DAY == (found.states, found.steps)


def at_rest(unit):
    """All orders ended, nothing open, every card in the tray or on its item."""
    return (
        ended(unit)
        and all(order.parcel is None for order in unit.all(Order).values())
        and not unit.find(Parcel, state=ParcelState.OPEN)
        and not unit.find(Round, state=RoundState.OPEN)
        and all(slot.card in (CardState.TRAY, CardState.ON_ITEM) for slot in unit.all(Slot).values())
    )
