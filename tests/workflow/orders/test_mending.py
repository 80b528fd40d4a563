"""A corrected file mends the lines that couldn't be read."""

from dataclasses import replace

import pytest
from room_in_memory import RoomInMemory

from labels.slot_code import reference
from scanflow.domain import events
from scanflow.domain.life import Hold
from scanflow.domain.orders.incoming import IncomingLine, IncomingOrder
from scanflow.domain.things import Listing, Order
from scanflow.workflow import orders
from scanflow.workflow.orders.receiving import Arrival, receive

BAD = "This row has 8 cells, the header 7 columns."
RIGHT = IncomingLine(reference("D001", 1), "thing of D001")


def received(room: RoomInMemory, *lines: IncomingLine, channel: str = "fair") -> tuple[Order, Arrival]:
    return receive(room.unit, IncomingOrder("1", channel, lines=lines))


def told(room: RoomInMemory, order: Order) -> list[tuple[int, str, str, Hold | None]]:
    """(position, reference, state, hold) of each line."""
    return [(line.position, line.reference, str(line.state), line.hold) for line in room.lines(order)]


@pytest.mark.parametrize(
    "bad",
    [
        replace(RIGHT, title="thing", listing="of D001", bad=BAD),
        IncomingLine("", "Thing of D001", bad="This row has no reference."),
        IncomingLine("D01-01", "Something else", bad=BAD),
    ],
)
@pytest.mark.parametrize("first", [True, False])
def test_a_corrected_row_takes_the_place_of_the_bad_one(bad, first):
    """By its reference, else by its title, else as the only one left, the line is bound and free: no line more."""
    room = RoomInMemory("D001", "D002")
    other = IncomingLine(reference("D002", 1))
    order, _ = received(room, *((bad, other) if first else (other, bad)))
    ids = [line.id for line in room.lines(order)]
    again, outcome = received(room, *((RIGHT, other) if first else (other, RIGHT)))
    expected = [(1, "D001"), (2, "D002")] if first else [(1, "D002"), (2, "D001")]
    assert [(place, reference(code, 1), "waiting", None) for place, code in expected] == told(room, again)
    assert (ids, Arrival.CHANGED) == ([line.id for line in room.lines(again)], outcome)
    assert Arrival.UNCHANGED == received(room, RIGHT, other)[1]


def test_what_was_mended_is_told_and_teaches():
    """The ledger has the line as it is now, and its listing id is learned, as of any line that comes."""
    room = RoomInMemory("D001")
    order, _ = received(room, replace(RIGHT, bad=BAD))
    received(room, replace(RIGHT, listing="L-9"))
    line = room.lines(order)[0]
    event = [each for each in room.unit.ledger if isinstance(each, events.OrderChanged)][-1]
    expected = ({"line": line.id, "reference": RIGHT.reference, "stay": room.stay("D001").id, "hold": None},)
    assert expected == event.lines
    assert ["L-9"] == [each.listing for each in room.unit.find(Listing)]


def test_a_row_that_is_bad_still_mends_nothing():
    """The line stays held, and the order is unchanged."""
    room = RoomInMemory("D001")
    bad = replace(RIGHT, bad=BAD)
    order, _ = received(room, bad)
    assert Arrival.UNCHANGED == received(room, bad)[1]
    assert [(1, RIGHT.reference, "unbound", Hold.BAD_ROW)] == told(room, order)


def test_a_row_that_can_be_read_but_names_nothing():
    """It is held for what is wrong with it now, and no longer as a row that can't be read."""
    room = RoomInMemory("D001")
    order, _ = received(room, replace(RIGHT, bad=BAD))
    received(room, IncomingLine("D999", "thing of D001"))
    assert [(1, "D999", "unbound", Hold.UNKNOWN_CODE)] == told(room, order)


def test_what_a_person_settled_stays_settled():
    """A bad line that was settled by hand is none any more: the corrected row is compared with it as ever."""
    room = RoomInMemory("D001", "D002")
    order, _ = received(room, replace(RIGHT, bad=BAD))
    line = room.lines(order)[0]
    orders.settle(room.unit, line.id, orders.Settle(stay=room.stay("D002").id))
    received(room, RIGHT)
    assert [(1, RIGHT.reference, "waiting", None)] == told(room, order)
    assert room.stay("D002").id == room.lines(order)[0].stay


def test_of_several_nothing_is_guessed():
    """Two bad lines and two rows that are like neither: the rows are lines of their own, the others are gone."""
    room = RoomInMemory("D001", "D002")
    order, _ = received(room, *(IncomingLine("", title, bad=BAD) for title in ("Bell", "Lamp")))
    received(room, IncomingLine(reference("D001", 1)), IncomingLine(reference("D002", 1)))
    held = [Hold.NOT_IN_FILE, Hold.NOT_IN_FILE, None, None]
    assert held == [line.hold for line in room.lines(order)]


def test_a_row_for_a_line_that_stands_mends_no_other():
    """A row whose own line stands is that line, though its title is the bad one's too."""
    room = RoomInMemory("D001", "D002")
    bad = IncomingLine("", "thing of D001", bad=BAD)
    order, _ = received(room, RIGHT, bad)
    received(room, RIGHT)
    assert [None, Hold.NOT_IN_FILE] == [line.hold for line in room.lines(order)]


def test_without_a_channel_a_title_tells_the_order():
    """An order of one bad row is known again by its title."""
    room = RoomInMemory("D001")
    order, _ = received(room, IncomingLine("", "Thing of D001", bad=BAD), channel="")
    again, _ = received(room, RIGHT, channel="")
    assert (order.id, [(1, RIGHT.reference, "waiting", None)]) == (again.id, told(room, again))


def test_without_a_channel_an_order_that_is_alike_in_nothing_is_another():
    """Two shops may use one number: a row of other words mends no row of the order that came before."""
    room = RoomInMemory("D001")
    order, _ = received(room, IncomingLine("", "Bell", bad=BAD), channel="")
    other, _ = received(room, RIGHT, channel="")
    assert ("1", "1 (2)") == (order.number, other.number)
    assert [Hold.DOUBTFUL, Hold.DOUBTFUL] == [room.lines(each)[0].holds[-1].hold for each in (order, other)]
