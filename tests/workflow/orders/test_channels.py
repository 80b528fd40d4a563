"""What channels say of their orders, what a complete file lacks, and files that are taken back."""

from __future__ import annotations

import pytest
from room_in_memory import RoomInMemory

from labels import slot_code
from scanflow.domain import events
from scanflow.domain.life import Hold, LineState
from scanflow.domain.orders.incoming import IncomingLine, IncomingOrder
from scanflow.domain.orders.loaded import Loaded
from scanflow.domain.things import ChangedOrder, Channel, ChannelStatus, Line, Order
from scanflow.workflow import orders
from scanflow.workflow.orders import file, many, receiving, taking_back
from scanflow.workflow.orders.channels import SayChannel, claim, say
from scanflow.workflow.orders.many import SettleMany
from scanflow.workflow.ports import Invalid, Refused

COMPLETE = SayChannel(name="fair", complete=True)


def ordered(room: RoomInMemory, number: str, *codes: str, **more: object) -> IncomingOrder:
    """An order of the channel “fair” for what stands in these slots."""
    lines = tuple(IncomingLine(slot_code.reference(code, max(room.slot(code).turns, 1))) for code in codes)
    return IncomingOrder(number, "fair", lines=lines, **more)  # type: ignore[arg-type]


def loaded(room: RoomInMemory, *sent: IncomingOrder, name: str = "first") -> Loaded:
    """What comes of a file of these orders."""
    rows = {(each.channel, each.number): range(2, 2 + len(each.lines)) for each in sent}
    done, place = file.load_part(room.unit, sent, rows, 0, lambda: False, name)
    assert len(sent) == place
    return done


def holds(room: RoomInMemory, number: str) -> list[list[Hold]]:
    [order] = room.unit.find(Order, number=number)
    return [[each.hold for each in line.holds] for line in room.lines(order)]


def states(room: RoomInMemory, number: str) -> list[LineState]:
    [order] = room.unit.find(Order, number=number)
    return [line.state for line in room.lines(order)]


def taken_back(room: RoomInMemory, name: str = "first") -> int | None:
    return taking_back.in_parts(room.unit, name, lambda: lambda: False)(room.unit)


def test_a_channel_is_said_once_and_said_anew() -> None:
    """What is said again counts instead, whatever its case; what is not said stays; the same again tells nothing."""
    room = RoomInMemory()
    first = SayChannel.of({"name": "fair", "statuses": {"Paid": "pack", "Not paid": "aside"}})
    assert (True, False) == (say(room.unit, first)[1], say(room.unit, first)[1])
    channel, _ = say(
        room.unit, SayChannel.of({"name": "fair", "statuses": {"NOT  PAID": "cancelled"}, "complete": True})
    )
    expected = {"Paid": ChannelStatus.PACK, "NOT  PAID": ChannelStatus.CANCELLED}
    assert (expected, True) == (channel.statuses, channel.complete)
    assert 2 == sum(isinstance(told, events.ChannelChanged) for told in room.unit.ledger)


def test_what_was_sent_is_asked_about_and_not_packed() -> None:
    """A live order that its channel calls sent is held, once; in the box it goes on; one that nobody knows is told."""
    room = RoomInMemory("D001", "D002", "D003")
    for number, code in (("1", "D001"), ("2", "D002")):
        receiving.receive(room.unit, ordered(room, number, code))
    [second] = room.unit.find(Order, number="2")
    room.pick("D002")
    room.parcel(second)
    sent = ChannelStatus.SENT
    done = loaded(room, *(ordered(room, *each, status=sent) for each in (("1", "D001"), ("3", "D003"))))
    assert [[Hold.NOT_IN_FILE]] == holds(room, "1")
    assert [("already_sent", 2)] == [(row.code, row.row) for row in done.refused]
    assert () == room.unit.find(Order, number="3")
    [line] = room.lines(room.unit.find(Order, number="1")[0])
    orders.settle(room.unit, line.id, orders.Settle())
    loaded(room, ordered(room, "1", "D001", status=sent))
    assert [[]] == holds(room, "1")  # what a person said stands


def test_what_a_complete_file_lacks_is_held() -> None:
    """Open orders that a file brought before and this one does not have; those by hand and of other channels stay."""
    room = RoomInMemory("D001", "D002", "D003", "D004")
    say(room.unit, COMPLETE)
    loaded(room, ordered(room, "1", "D001"), ordered(room, "2", "D002"))
    receiving.receive(room.unit, ordered(room, "by hand", "D003"))
    room.order("1", "D004", channel="corner")
    later = ordered(room, "2", "D002")
    keys = {("fair", "2")}
    assert ["1"] == [order.number for order, _ in file.absent(room.unit, keys)]
    done = file.load(room.unit, (later,), {}, keys)
    [line] = [each for each in room.unit.find(Line) if each.holds]
    assert (line.id,) == done.held
    assert ([Hold.NOT_IN_FILE], LineState.WAITING) == ([each.hold for each in line.holds], line.state)
    assert "does not have order 1" in line.why
    orders.settle(room.unit, line.id, orders.Settle())
    assert () == file.load(room.unit, (later,), {}, keys).held  # asked once


@pytest.mark.parametrize("complete", [True, False])
def test_only_a_complete_channel_lacks_something(complete: bool) -> None:
    """Of another channel, and of a file that is a part, nothing counts as absent."""
    room = RoomInMemory("D001")
    if complete:
        say(room.unit, COMPLETE)
    loaded(room, ordered(room, "1", "D001"))
    listed = set() if complete else {("fair", "2")}
    assert [] == [*file.absent(room.unit, listed)]


def test_a_file_is_taken_back_whole() -> None:
    """New orders are cancelled and free their numbers; what the file changed is as before; the right file then counts
    as if the wrong one had never been.
    """
    room = RoomInMemory("D001", "D002", "D003")
    loaded(room, ordered(room, "1", "D001"), name="yesterday")
    before = [taking_back.image(room.unit, each) for each in room.unit.find(Order)]
    done = loaded(room, ordered(room, "1", "D002"), ordered(room, "2", "D003"))
    assert (1, 1) == (done.loaded, done.changed)
    assert [[Hold.NOT_IN_FILE], []] == holds(room, "1")

    assert 2 == taken_back(room)
    [first] = room.unit.find(Order, number="1")
    after = taking_back.image(room.unit, first)
    more = [line for line in room.lines(first) if line.id not in before[0]["lines"]]
    assert [LineState.CANCELLED] == [line.state for line in more]
    assert before == [after | {"lines": {name: after["lines"][name] for name in before[0]["lines"]}}]
    assert [LineState.CANCELLED] == states(room, "2 (taken back)")
    assert () == room.unit.find(ChangedOrder)

    again = loaded(room, ordered(room, "1", "D001"), ordered(room, "2", "D003"), name="second")
    assert 1 == again.loaded
    assert [LineState.WAITING] == states(room, "2")
    assert 0 == taken_back(room)


def test_a_file_of_which_something_was_picked_stays() -> None:
    """Nothing of it is taken back then."""
    room = RoomInMemory("D001", "D002")
    loaded(room, ordered(room, "1", "D001"), ordered(room, "2", "D002"))
    room.pick("D001")
    before = room.unit.seq
    with pytest.raises(Refused) as no:
        taken_back(room)
    assert ("built_on", before) == (no.value.code, room.unit.seq)


def test_a_change_on_which_a_person_built_stays() -> None:
    """Nor a line that somebody settled since, or whose thing another order has by now."""
    room = RoomInMemory("D001", "D002")
    loaded(room, ordered(room, "1", "D001"), name="yesterday")
    loaded(room, ordered(room, "1", "D002"))
    [order] = room.unit.find(Order)
    orders.settle(room.unit, room.lines(order)[0].id, orders.Settle())
    with pytest.raises(Refused):
        taken_back(room)

    room = RoomInMemory("D001")
    loaded(room, ordered(room, "1", "D001"), name="yesterday")
    loaded(room, ordered(room, "1", "D001", status=ChannelStatus.CANCELLED))
    room.order("2", "D001")
    with pytest.raises(Refused):
        taken_back(room)
    assert [LineState.WAITING] == states(room, "2")


def test_orders_without_a_channel_are_claimed_for_one() -> None:
    """But for one whose number the channel has already: two buyers' things never become one order."""
    room = RoomInMemory("D001", "D002", "D003")
    room.order("1", "D001")
    room.order("2", "D002")
    receiving.receive(room.unit, ordered(room, "2", "D003"))
    assert (1, 0) == (claim(room.unit, "fair"), claim(room.unit, "fair"))
    assert [("1", "fair"), ("2", ""), ("2", "fair")] == [(each.number, each.channel) for each in room.unit.find(Order)]
    assert room.unit.get(Channel, "fair") is None


def settled(room: RoomInMemory, hold: str, how: str, *lines: Line) -> int | None:
    said = SettleMany.of({"hold": hold, "how": how, "lines": tuple(line.id for line in lines)})
    return many.in_parts(said, lambda: lambda: False)(room.unit)


def test_many_held_lines_are_settled_in_one_act() -> None:
    """Those that are held for this reason alone are kept, or cancelled; what is held for a graver one stays."""
    room = RoomInMemory("D001", "D002", "D003")
    say(room.unit, COMPLETE)
    loaded(room, *(ordered(room, number, f"D00{number}") for number in "123"))
    file.load(room.unit, (), {}, {("fair", "4")})
    lines = room.unit.find(Line)
    orders.hold(room.unit, lines[2].id, orders.NotThis(why="Another lamp"))
    assert 1 == settled(room, "not_in_file", "keep", lines[0])
    assert 1 == settled(room, "not_in_file", "cancel", *lines)
    after = room.unit.find(Line)
    assert [LineState.WAITING, LineState.CANCELLED, LineState.WAITING] == [line.state for line in after]
    assert [0, 1, 2] == [len(line.holds) for line in after]


@pytest.mark.parametrize(("hold", "how"), [("suspect", "cancel"), ("bad_row", "keep"), ("cancelled_in_box", "cancel")])
def test_what_needs_a_look_is_not_settled_by_the_dozen(hold: str, how: str) -> None:
    """A doubted thing, or what lies in a box, or a row without a thing that is to be kept."""
    room = RoomInMemory("D001")
    with pytest.raises(Invalid):
        settled(room, hold, how, room.lines(room.order("1", "D001"))[0])
