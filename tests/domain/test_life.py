"""What can happen to a line, a stay, a card, a parcel, a round, a count and a return, and nothing else."""

from dataclasses import replace
from datetime import UTC, datetime

import pytest
from diagrams import TABLES

from scanflow.domain.life import FORWARD, Hold, LineState, NotAllowed, ParcelState, RoundState, StayState, step
from scanflow.domain.things import Held, Line, Parcel, Round, Slot, Stay

NOON = datetime(2026, 3, 2, 12, tzinfo=UTC)

ROWS = {
    "line": """
        unbound: settle waiting, cancel cancelled
        waiting: pick picked, miss short, cancel cancelled, unbind unbound
        picked: pack packed, put back waiting, miss short, cancel cancelled
        packed: take out picked, close released
        short: find waiting, cancel cancelled
        released: reopen packed, return returned
        cancelled: revive waiting, revive unbound unbound
        returned: send again waiting
    """,
    "stay": """
        stored: release shipped, withdraw withdrawn, move moved
        shipped: reopen stored
    """,
    "card": """
        tray: take hand, see in tray tray, reopen on_item, lose lost
        hand: attach on_item
        on_item: release due, see on item on_item, lose lost
        due: take hand, see in tray tray, reopen on_item, lose lost
        lost: take hand, see in tray tray, see on item on_item, release lost, reopen lost
    """,
    "parcel": """
        open: close closed, set aside aside, drop dropped
        aside: resume open
        closed: reopen open, hand over handed_over
    """,
    "round": """
        open: close closed
    """,
    "stocktake": """
        open: close closed, cancel cancelled
    """,
    "return": """
        expected: arrive arrived, give up given_up
        arrived: check checked, not arrived expected, give up given_up
        checked: check checked
    """,
}
"""Each table as it is meant: state, then its events with the state after them."""


def rows(name):
    """(state, event) → state after, as plain words."""
    found = {}
    for line in ROWS[name].strip().splitlines():
        state, events = line.strip().split(": ")
        for each in events.split(", "):
            event, after = each.rsplit(" ", 1)
            found[state, event] = after
    return found


EVERY_PAIR = [
    (name, state, event)
    for name, table in TABLES.items()
    for state in sorted({type(next(iter(table))[0])(each) for each in type(next(iter(table))[0])})
    for event in sorted({event for other in TABLES.values() for _, event in other})
]


def test_all_tables_are_meant():
    """There are these lives, and no more."""
    assert list(ROWS) == list(TABLES)


@pytest.mark.parametrize("name", ROWS)
def test_table_has_exactly_its_rows(name):
    """A table holds the rows that are meant, and nothing more."""
    assert rows(name) == {(str(state), event): str(after) for (state, event), after in TABLES[name].items()}


@pytest.mark.parametrize(("name", "state", "event"), EVERY_PAIR)
def test_what_is_not_in_the_table_is_refused(name, state, event):
    """Every state takes its own events and refuses all others."""
    wanted = rows(name).get((str(state), event))
    if wanted is not None:
        assert wanted == step(TABLES[name], state, event)
    else:
        with pytest.raises(NotAllowed) as refusal:
            step(TABLES[name], state, event)
        assert (state, event) == (refusal.value.state, refusal.value.event)


THINGS = [
    Line("1", "o", 1, "D001-01R", state=LineState.RELEASED),
    Stay("1", "i", "D001", 1, NOON, state=StayState.WITHDRAWN),
    Slot("D001", "D", 1, "A-1-1"),
    Parcel("1", "main", ("o",), NOON, ParcelState.DROPPED),
    Round("1", NOON, RoundState.CLOSED),
]


@pytest.mark.parametrize("thing", THINGS, ids=lambda thing: type(thing).__name__)
def test_a_refusal_leaves_the_thing_as_it_was(thing):
    """After a refused event the thing equals what it was."""
    before = replace(thing)
    with pytest.raises(NotAllowed):
        thing.after("close")
    assert before == thing


@pytest.mark.parametrize("event", sorted(FORWARD))
@pytest.mark.parametrize("hold", Hold)
def test_a_held_line_refuses_to_go_forward(hold, event):
    """Whatever the hold, a held line takes no event that brings it nearer to the buyer."""
    state = {"pick": LineState.WAITING, "pack": LineState.PICKED, "close": LineState.PACKED}[event]
    with pytest.raises(NotAllowed, match=f"held \\({hold}\\)"):
        Line("1", "o", 1, "D001", state=state, holds=(Held(hold, ""),)).after(event)


def test_a_held_line_goes_backward():
    """A held line may be taken out and put back."""
    line = Line("1", "o", 1, "D001", state=LineState.PACKED, holds=(Held(Hold.SUSPECT, ""),))
    assert LineState.WAITING == line.after("take out").after("put back").state


def test_a_stay_keeps_when_and_why_it_ended_until_it_is_stored_again():
    """Ending notes time and reason; taking the release back clears them."""
    shipped = Stay("1", "i", "D001", 1, NOON).after("release", NOON, "sold")
    assert (NOON, "sold") == (shipped.ended, shipped.reason)
    assert None is shipped.after("reopen", NOON).ended
