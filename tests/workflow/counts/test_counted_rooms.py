"""Small rooms with something amiss, counted, and walked through every state that resolving it can lead to.

What each holds stands in `counted_rooms`; beside the findings' ways and taking them back, only a few things may happen
there, so that a fault that needs a resolved finding and, say, a round is not excluded here. A thing moves to another
slot, or back, as long as no slot has more than two turns.
"""

from functools import cache

import pytest
from counted_rooms import COUNTED_ROOMS
from explorer import explore

from scanflow.domain.counts.findings import FindingKind
from scanflow.domain.things import Slot
from scanflow.workflow import stock
from scanflow.workflow.counts import resolving, stocktakes, taking_back
from scanflow.workflow.ports import must

PINNED = {
    "gone": (235, 2047, "ac13447c"),
    "astray": (278, 2991, "bc437a8d"),
    "loose cards": (67, 894, "796efa70"),
    "under way": (672, 10544, "0b146930"),
    "sent": (1766, 20712, "da8da0fd"),
}
"""Room → its states, the calls made in them, and a print of all ways and answers; as in `test_state_space`."""


@cache
def sound(name):
    """A room without a fault."""
    return explore(COUNTED_ROOMS[name])


@pytest.mark.parametrize("name", COUNTED_ROOMS)
def test_no_way_of_resolving_breaks_a_rule(name):
    """Every property holds of every step: no slot is freed by the way, and all can be taken back at once."""
    found = sound(name)
    assert (None, ()) == (found.broken, found.path)
    assert PINNED[name] == (found.states, found.steps, found.print)


def _moved_anywhere(unit, finding, said):
    """Whatever is known of the card of the slot."""
    stay = unit.facts(finding.subject).stay
    stock._carry(unit, stay.after("move", unit.at), None, must(unit, Slot, "D003"))


FAULTS = {
    "what is ignored is withdrawn": (
        "gone",
        "a_slot_is_freed_only_on_purpose",
        lambda patch: patch.setitem(resolving.ACTS[FindingKind.MISSING], "ignore", resolving._withdrawn),
    ),
    "a thing moves to a slot whose card is away": (
        "astray",
        "a_thing_moves_only_to_a_card_in_the_tray",
        lambda patch: patch.setitem(resolving.ACTS[FindingKind.ELSEWHERE], "moved", _moved_anywhere),
    ),
    "another slot's card is lost": (
        "gone",
        "a_finding_is_resolved_in_its_own_slot",
        lambda patch: patch.setitem(
            resolving.ACTS[FindingKind.MISSING], "lost", lambda unit, finding, said: stock.lose_card(unit, "D002")
        ),
    ),
    "nothing is taken back": (
        "gone",
        "what_is_resolved_can_be_taken_back_at_once",
        lambda patch: patch.setattr(taking_back, "_restore", lambda unit, code, kept: None),
    ),
    "what has changed since is taken back too": (
        "loose cards",
        "free_cards_are_told_true",
        lambda patch: patch.setattr(taking_back, "_restore", _restore_blindly),
    ),
    "what has changed since is resolved too": (
        "gone",
        "answers",
        lambda patch: patch.setattr(stocktakes, "changed", lambda unit, count: set()),
    ),
}
"""Fault → the room that catches it, the property that is broken or `answers`, and what puts it in."""

_restore = taking_back._restore


def _restore_blindly(unit, code, kept):
    now = {name: taking_back._image(part) for name, part in taking_back._parts(unit.facts(code)).items()}
    _restore(unit, code, kept | {"before": now | kept["before"], "after": now})


@pytest.mark.parametrize("fault", FAULTS)
def test_a_fault_in_resolving_is_caught(fault, monkeypatch):
    """Exploring its room notices it in the way that is told."""
    name, way, put_in = FAULTS[fault]
    without = sound(name)
    put_in(monkeypatch)
    found = explore(COUNTED_ROOMS[name], without if way == "answers" else None)
    assert way == (found.broken or ("answers" if found.said != without.said else None))
