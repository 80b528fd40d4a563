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
from small_rooms import DAY, ROOMS, SHORT_DAY

from scanflow.domain.life import CardState, ParcelState, RoundState
from scanflow.domain.things import Order, Parcel, Round, Slot

PINNED = {
    "unread": (4, 76, "9acc8369"),
    "empty": (116, 768, "396d16c6"),
    "walk": (200, 5900, "a9e843f4"),
    "stock": (142, 1518, "150f9816"),
    "versions": (122, 876, "86437bf7"),
    "file": (97, 994, "199fdac3"),
    "reuse": (140, 2460, "ffa7bd27"),
    "parcels": (582, 8106, "58754570"),
    "doubts": (1024, 15872, "b1ee6009"),
    "again": (220, 2664, "2a7c202d"),
    "aside": (117, 1502, "01560beb"),
    "unfound": (196, 1925, "d6175730"),
    "beeps": (879, 15822, "8e1e3cf4"),
    "lost": (480, 8160, "5772ae98"),
    "undo": (664, 12120, "3f1de629"),
    "straight": (224, 3872, "6aad4297"),
    "settle": (2544, 48336, "8bf09217"),
    "table": (704, 17224, "c2995116"),
    "holds": (640, 12710, "51273778"),
    "in doubt": (208, 4174, "f5acb75f"),
    "sold again": (648, 12168, "f648d654"),
    "read elsewhere": (192, 3536, "91fe116a"),
    "closed too early": (684, 8172, "37ffdbc4"),
    "two tables": (87, 1366, "b46a59a6"),
    "ways back": (716, 19340, "7e94cf56"),
    "swapped cards": (3968, 43776, "fec9539c"),
    "second reason": (96, 1288, "c5fd8c14"),
    "given out": (2944, 36160, "11816ab8"),
    "move": (120, 2208, "d509ba25"),
}
"""Room → its states, the calls made in them, and a print of all ways and answers.

A changed rule changes these: look why before writing them anew.
"""

PINNED_DAY = (13392, 383442)
PINNED_SHORT_DAY = (3520, 73538)

ENDING = (
    "stock",
    "file",
    "doubts",
    "straight",
    "ways back",
    "holds",
    "sold again",
    "two tables",
    "given out",
    "swapped cards",
    "move",
)
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


@pytest.mark.long
def test_the_day_breaks_no_rule_and_can_always_end():
    """The whole main job: every property of every step, and a way to a room at rest from every state."""
    found = explore(DAY)
    assert (None, ()) == (found.broken, found.path)
    assert 0 == found.stuck(at_rest)
    assert PINNED_DAY == (found.states, found.steps)


def test_a_short_day_breaks_no_rule():
    """Every property of every step; nothing can be settled in it, so it has states in which it can't end."""
    found = explore(SHORT_DAY)
    assert (None, ()) == (found.broken, found.path)
    assert PINNED_SHORT_DAY == (found.states, found.steps)


def at_rest(unit):
    """All orders ended, nothing open, every card in the tray or on its item."""
    return (
        ended(unit)
        and all(order.parcel is None for order in unit.all(Order).values())
        and not unit.find(Parcel, state=ParcelState.OPEN)
        and not unit.find(Round, state=RoundState.OPEN)
        and all(slot.card in (CardState.TRAY, CardState.ON_ITEM) for slot in unit.all(Slot).values())
    )
