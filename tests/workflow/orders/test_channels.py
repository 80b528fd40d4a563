"""What channels say of their orders, what a complete file lacks, and files that are taken back."""

from __future__ import annotations

from dataclasses import replace

import pytest
from room_in_memory import RoomInMemory

from labels import slot_code
from scanflow.domain import events
from scanflow.domain.life import DoubtKind, Hold, LineState
from scanflow.domain.orders.incoming import IncomingLine, IncomingOrder
from scanflow.domain.orders.loaded import Loaded
from scanflow.domain.things import ChangedOrder, Channel, ChannelStatus, Line, Order, Station, Stay
from scanflow.exchange import orders_csv
from scanflow.exchange.csv_table import read_table
from scanflow.exchange.mapping import guess
from scanflow.workflow import orders, parcels, stock
from scanflow.workflow.orders import file, many, receiving, taking_back
from scanflow.workflow.orders.channels import SayChannel, claim, say
from scanflow.workflow.orders.many import SettleMany
from scanflow.workflow.ports import Invalid, Refused, must
from scanflow.workflow.stock import doubts

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
    assert [[Hold.NOT_IN_FILE], [Hold.DOUBTFUL]] == holds(room, "1")

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


MEANING = {"paid": ChannelStatus.PACK, "off": ChannelStatus.CANCELLED, "sent": ChannelStatus.SENT}


def filed(room: RoomInMemory, name: str, *rows: str) -> Loaded:
    """What comes of a file of order 1 with these rows of a slot and a status."""
    text = "".join(f"1,{slot_code.reference(row.split()[0], 1)},{row.split()[1]}\n" for row in rows)
    table = read_table(f"number,reference,status\n{text}".encode())
    parsed = orders_csv.orders(table, guess(table), None, "fair", lambda _, value: MEANING.get(value))
    done, _ = file.load_part(room.unit, parsed.orders, parsed.rows, 0, lambda: False, name)
    return done


def test_a_row_may_be_called_off_alone() -> None:
    """Of an order that came before, once: what a person says then stands until the row says otherwise."""
    room = RoomInMemory("D001", "D002")
    filed(room, "a", "D001 paid", "D002 paid")
    assert 1 == filed(room, "b", "D001 paid", "D002 off").changed
    assert [LineState.WAITING, LineState.CANCELLED] == states(room, "1")
    [_, second] = room.lines(room.unit.find(Order, number="1")[0])
    orders.revive(room.unit, second.id)
    assert 1 == filed(room, "c", "D001 paid", "D002 off").unchanged
    assert [LineState.WAITING] * 2 == states(room, "1")


def test_a_row_that_is_wanted_after_all_is_looked_at() -> None:
    """It was cancelled alone, and a later file wants it with the rest: it waits again, held."""
    room = RoomInMemory("D001", "D002")
    for name, status in (("a", "paid"), ("b", "off"), ("c", "paid")):
        filed(room, name, "D001 paid", f"D002 {status}")
    assert ([LineState.WAITING] * 2, [[], [Hold.DOUBTFUL]]) == (states(room, "1"), holds(room, "1"))


def test_a_row_that_was_kept_is_called_off_later() -> None:
    """A file lacked it and a person kept it; then its channel says that it is cancelled, and it is."""
    room = RoomInMemory("D001", "D002")
    filed(room, "a", "D001 paid", "D002 paid")
    filed(room, "b", "D001 paid")
    [_, second] = room.lines(room.unit.find(Order, number="1")[0])
    orders.settle(room.unit, second.id, orders.Settle())
    filed(room, "c", "D001 paid", "D002 off")
    assert [LineState.WAITING, LineState.CANCELLED] == states(room, "1")


def test_a_row_that_was_sent_alone_is_asked_about() -> None:
    """It is held once, and a person's answer stands."""
    room = RoomInMemory("D001", "D002")
    filed(room, "a", "D001 paid", "D002 paid")
    assert 1 == filed(room, "b", "D001 paid", "D002 sent").changed
    assert [[], [Hold.NOT_IN_FILE]] == holds(room, "1")
    [_, second] = room.lines(room.unit.find(Order, number="1")[0])
    orders.settle(room.unit, second.id, orders.Settle())
    assert 1 == filed(room, "c", "D001 paid", "D002 sent").unchanged
    assert [[], []] == holds(room, "1")


def test_a_part_that_was_sent_is_sent() -> None:
    """What lies in a box already is not asked about, where the rest of its order is still to be packed."""
    room = RoomInMemory("D001", "D002")
    filed(room, "a", "D001 paid", "D002 paid")
    room.pick("D001")
    parcel = room.parcel(*room.unit.find(Order, number="1"))
    room.scan(Station.TABLE, "D001")
    parcels.close_parcel(room.unit, parcel.id, partial=True)
    filed(room, "b", "D001 sent", "D002 paid")
    assert [[], []] == holds(room, "1")


def test_a_cancelled_order_gets_no_line_more() -> None:
    """A line that comes later with the same status is cancelled like the others."""
    room = RoomInMemory("D001", "D002")
    for codes in (("D001",), ("D001", "D002")):
        receiving.receive(room.unit, ordered(room, "1", *codes, status=ChannelStatus.CANCELLED))
    assert [LineState.CANCELLED] * 2 == states(room, "1")


def test_what_a_channel_wants_after_all_is_looked_at() -> None:
    """A cancelled order that is to be packed now waits again, held; without its thing it is bound to nothing."""
    room = RoomInMemory("D001", "D002")
    for number, code in (("1", "D001"), ("2", "D002")):
        receiving.receive(room.unit, ordered(room, number, code, status=ChannelStatus.CANCELLED))
    receiving.receive(room.unit, ordered(room, "3", "D002"))
    for number, code in (("1", "D001"), ("2", "D002")):
        receiving.receive(room.unit, ordered(room, number, code, status=ChannelStatus.PACK))
    assert ([LineState.WAITING], [[Hold.DOUBTFUL]]) == (states(room, "1"), holds(room, "1"))
    assert ([LineState.UNBOUND], [[Hold.ALREADY_SOLD, Hold.DOUBTFUL]]) == (states(room, "2"), holds(room, "2"))
    assert [LineState.WAITING] == states(room, "3")


def test_a_packed_thing_that_is_wanted_after_all_stays_in_its_box() -> None:
    """It was to come out, as its channel had cancelled it; now a person looks, and nothing comes out."""
    room = RoomInMemory("D001", auto_close=False)
    receiving.receive(room.unit, ordered(room, "1", "D001"))
    room.pick("D001")
    room.parcel(*room.unit.find(Order, number="1"))
    room.scan(Station.TABLE, "D001")
    receiving.receive(room.unit, ordered(room, "1", "D001", status=ChannelStatus.CANCELLED))
    assert [[Hold.CANCELLED_IN_BOX]] == holds(room, "1")
    receiving.receive(room.unit, ordered(room, "1", "D001", status=ChannelStatus.PACK))
    assert ([LineState.PACKED], [[Hold.DOUBTFUL]]) == (states(room, "1"), holds(room, "1"))


def test_a_line_that_is_gone_is_not_wanted_after_all() -> None:
    """Of a cancelled order that comes again with less only that less is looked at."""
    room = RoomInMemory("D001", "D002")
    receiving.receive(room.unit, ordered(room, "1", "D001", "D002", status=ChannelStatus.CANCELLED))
    receiving.receive(room.unit, ordered(room, "1", "D002", status=ChannelStatus.PACK))
    assert [LineState.CANCELLED, LineState.WAITING] == states(room, "1")


def test_what_was_cancelled_by_hand_is_not_cleared_by_reviving_it() -> None:
    """Its channel said meanwhile that it is not paid."""
    room = RoomInMemory("D001")
    order, _ = receiving.receive(room.unit, ordered(room, "1", "D001"))
    orders.cancel(room.unit, order.id, orders.Cancel())
    receiving.receive(room.unit, ordered(room, "1", "D001", status=ChannelStatus.ASIDE))
    orders.revive(room.unit, room.lines(order)[0].id)
    assert [[Hold.NOT_CLEARED]] == holds(room, "1")


def test_other_things_under_a_known_number_are_looked_at() -> None:
    """A file of another channel may have the same numbers: no thing of it goes into this one's box by itself."""
    room = RoomInMemory("D001", "D002", "D003")
    loaded(room, ordered(room, "1", "D001"))
    loaded(room, ordered(room, "1", "D002"), name="another")
    assert [[Hold.NOT_IN_FILE], [Hold.DOUBTFUL]] == holds(room, "1")
    loaded(room, ordered(room, "1", "D002", "D003"), name="and more")
    assert [[Hold.NOT_IN_FILE], [Hold.DOUBTFUL], []] == holds(room, "1")


def cancelled_by_file(room: RoomInMemory) -> Line:
    """The line of an order that the file “first” cancelled."""
    loaded(room, ordered(room, "1", "D001"), name="yesterday")
    loaded(room, ordered(room, "1", "D001", status=ChannelStatus.CANCELLED))
    return room.lines(room.unit.find(Order, number="1")[0])[0]


def test_what_has_left_since_is_not_taken_back() -> None:
    """A file cancelled an order whose thing went to another buyer, or was taken out of stock: the file stays."""
    room = RoomInMemory("D001")
    cancelled_by_file(room)
    receiving.receive(room.unit, ordered(room, "2", "D001"))
    room.pick("D001")
    room.parcel(*room.unit.find(Order, number="2"))
    room.scan(Station.TABLE, "D001")
    assert [LineState.RELEASED] == states(room, "2")
    with pytest.raises(Refused, match="has changed since"):
        taken_back(room)

    room = RoomInMemory("D001")
    stay = cancelled_by_file(room).stay
    stock.withdraw(room.unit, stay or "", stock.Withdraw(reason="broken"))
    with pytest.raises(Refused, match="has changed since"):
        taken_back(room)


def test_what_was_doubted_since_is_held_as_it_is_taken_back() -> None:
    """The line waits again, and what somebody said of its thing meanwhile holds it."""
    room = RoomInMemory("D001")
    line = cancelled_by_file(room)
    doubts.doubt(room.unit, must(room.unit, Stay, line.stay or "").item, DoubtKind.NOT_THIS, "It is another one.")
    assert 1 == taken_back(room)
    assert ([LineState.WAITING], [[Hold.SUSPECT]]) == (states(room, "1"), holds(room, "1"))


def test_a_row_that_can_be_read_now_and_is_called_off_is_not_picked() -> None:
    """A corrected file mends its line, and says of that row alone that it was cancelled: nothing of it waits."""
    room = RoomInMemory("D001", "D002")
    bad = IncomingLine("", "Brass bell", bad="This row has no reference.")
    first = ordered(room, "1", "D001")
    receiving.receive(room.unit, replace(first, lines=(*first.lines, bad)), "a")
    off = IncomingLine(slot_code.reference("D002", 1), "Brass bell", status=ChannelStatus.CANCELLED)
    receiving.receive(room.unit, replace(first, lines=(*first.lines, off)), "b")
    assert [LineState.WAITING, LineState.CANCELLED] == states(room, "1")


def test_a_row_that_is_still_called_off_is_not_wanted_with_the_rest() -> None:
    """The whole order was cancelled, and is wanted again but for this row."""
    room = RoomInMemory("D001", "D002")
    filed(room, "a", "D001 paid", "D002 paid")
    filed(room, "b", "D001 off", "D002 off")
    filed(room, "c", "D001 paid", "D002 off")
    assert [LineState.WAITING, LineState.CANCELLED] == states(room, "1")


def test_a_quantity_that_rises_is_held() -> None:
    """Once: there is one of each thing, and a person's answer stands."""
    room = RoomInMemory("D001")
    order = ordered(room, "1", "D001")
    [line] = order.lines
    receiving.receive(room.unit, order)
    more = replace(order, lines=(replace(line, quantity="2"),))
    receiving.receive(room.unit, more)
    assert [[Hold.DOUBTFUL]] == holds(room, "1")
    [held] = room.lines(room.unit.find(Order, number="1")[0])
    assert "The order asks for 2 of it; there is one." == held.why
    orders.settle(room.unit, held.id, orders.Settle())
    receiving.receive(room.unit, more)
    assert [[]] == holds(room, "1")
