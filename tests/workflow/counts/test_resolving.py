"""Each finding is put right in each way there is, and each way is taken back while nothing has built on it."""

from __future__ import annotations

import pytest
from count_in_memory import CountInMemory

from labels.slot_code import card_text
from scanflow.domain.counts.findings import FindingKind
from scanflow.domain.counts.stocktake import Resolved
from scanflow.domain.derive import SlotState, slot_state
from scanflow.domain.life import CardState, DoubtEnd, Hold, LineState, StayState
from scanflow.domain.things import Line, Order
from scanflow.workflow import orders, stock
from scanflow.workflow.counts import report as stocktake_report
from scanflow.workflow.counts import stocktakes
from scanflow.workflow.counts.resolving import ACTS, ways
from scanflow.workflow.ports import Invalid, Missing, Refused
from scanflow.workflow.stock import doubts


def refused(call, *args, **more):
    """The code of the refusal that the call meets."""
    with pytest.raises((Refused, Invalid)) as refusal:
        call(*args, **more)
    return refusal.value.code


def missing():
    room = CountInMemory("D001", "D002")
    room.look("A-1-1", "D001")
    return room, "missing-D002"


def elsewhere():
    room = CountInMemory("D001", "D002")
    room.look("A-1-3", "D002")
    return room, "elsewhere-D002"


def twin():
    room = CountInMemory("D001", "D002")
    room.look("A-1-1", "D002", "D001")
    room.look("A-1-3", "D002")
    return room, "twin-D002"


def slot_free():
    room = CountInMemory("D001", "D002")
    room.release("1001", "D002")
    room.open()
    room.look("A-1-3", "D002")
    return room, "slot_free-D002"


def in_tray():
    room = CountInMemory("D001", "D002")
    room.look("tray", "D002", "D003", "D004", "D005", "D006")
    return room, "in_tray-D002"


def card_due():
    room = CountInMemory("D001", "D002")
    room.release("1001", "D002")
    room.open()
    room.look("tray", "D003", "D004", "D005", "D006")
    return room, "card_due-D002"


def unknown():
    room = CountInMemory("D001", "D002")
    room.look("A-1-1", "D001", "D002", "Q0771")
    return room, "unknown-Q0771"


def unreadable():
    room = CountInMemory("D001", "D002")
    room.look("A-1-1", "D001", unread=1)
    return room, "unreadable-A-1-1"


def suspect():
    room = CountInMemory("D001", "D002")
    room.order("1001", "D002")
    room.pick("D002")
    room.open()
    room.look("A-1-1", "D001", "D002")
    return room, "suspect-D002"


PLANTED = {
    FindingKind(make.__name__): make
    for make in (missing, elsewhere, twin, slot_free, in_tray, card_due, unknown, unreadable, suspect)
}
WAYS = [(kind, how) for kind, acts in ACTS.items() for how in acts]
SAID = {"text": card_text("D002")}
READ = {
    (FindingKind.UNREADABLE, "reprint"),
    (FindingKind.SLOT_FREE, "put_right"),
    (FindingKind.CARD_DUE, "put_right"),
    (FindingKind.CARD_DUE, "found_later"),
}
"""Ways that ask for the text of the card."""


def resolved(kind, how):
    room, finding = PLANTED[kind]()
    assert [finding] == room.found()
    if (kind, how) == (FindingKind.SUSPECT, "withdraw"):
        orders.cancel(room.unit, room.unit.find(Order)[0].id, orders.Cancel())
        room.look("A-1-1", "D002", doubts=("D0024",))
    before = room.unit.facts("D002")
    more = SAID if (kind, how) in READ else {"reason": "Nobody knows"}
    room.resolve(finding, how, **more)
    return room, finding, before


@pytest.mark.parametrize(("kind", "how"), WAYS)
def test_each_way_resolves_and_is_taken_back(kind, how):
    """Afterwards it is not open; taken back, the slot, its stay and its line are what they were, and it is open."""
    room, finding, before = resolved(kind, how)
    left = ["missing-D002"] if (kind, how) == (FindingKind.UNREADABLE, "ignore") else []
    assert (left, [how]) == (room.found(), [each.resolved.how for each in room.state().found if each.resolved])
    assert "resolved" == refused(room.resolve, finding, "ignore", reason="Once more")
    room.undo(finding)
    now = room.unit.facts("D002")
    if how == "moved":
        assert (now.item, now.stay.state, now.stay.turn) == (before.item, StayState.STORED, 2)
    else:
        assert before == now
    assert [finding] == room.found()
    assert () == room.unit.find(Resolved)
    with pytest.raises(Missing):
        room.undo(finding)


def card(room):
    return room.slot("D002").card


def stands(room):
    return room.where("D002").bin


@pytest.mark.parametrize(
    ("kind", "how", "look", "expected"),
    [
        (FindingKind.MISSING, "lost", card, CardState.LOST),
        (FindingKind.MISSING, "reprint", card, CardState.LOST),
        (FindingKind.MISSING, "withdraw", lambda room: room.stay("D002").state, StayState.WITHDRAWN),
        (FindingKind.MISSING, "found_later", stands, "A-1-1"),
        (FindingKind.ELSEWHERE, "put_right", stands, "A-1-1"),
        (FindingKind.ELSEWHERE, "moved", lambda room: room.stay("D005").open, True),
        (FindingKind.IN_TRAY, "withdraw", card, CardState.TRAY),
        (FindingKind.SLOT_FREE, "put_right", card, CardState.TRAY),
        (FindingKind.CARD_DUE, "put_right", card, CardState.TRAY),
        (FindingKind.CARD_DUE, "lost", card, CardState.LOST),
        (FindingKind.SLOT_FREE, "still_here", lambda room: room.line("D002").hold, Hold.MISPLACED),
        (FindingKind.SUSPECT, "put_right", lambda room: room.line("D002").state, LineState.WAITING),
    ],
)
def test_what_a_way_does(kind, how, look, expected):
    """To the card, the stay, the line, or where the thing is looked for."""
    assert expected == look(resolved(kind, how)[0])


def test_a_thing_that_turned_up_waits_for_its_order_again():
    """A picker had said that it was not there."""
    room, _ = missing()
    line = room.lines(room.order("1001", "D002"))[0]
    orders.short(room.unit, line.id, orders.Short())
    room.resolve("missing-D002", "found_later")
    assert LineState.WAITING is room.line("D002").state
    room.undo("missing-D002")
    assert LineState.SHORT is room.line("D002").state


def test_a_packed_thing_whose_card_is_on_the_shelf_holds_its_line():
    """Somebody has to look into the parcel; nothing is moved by the count."""
    room = CountInMemory("D001", "D002")
    order = room.order("1001", "D001", "D002")
    room.pick("D001", "D002")
    room.parcel(order)
    room.pack("D001")
    room.open()
    room.look("A-1-1", "D001")
    room.resolve("suspect-D001", "put_right")
    line = room.line("D001")
    assert (LineState.PACKED, Hold.MISPLACED) == (line.state, line.hold)
    room.undo("suspect-D001")
    assert Hold.MISPLACED is room.line("D001").hold  # the count did see it


def test_still_here_is_a_duty_on_the_order_until_a_person_settles_it():
    """The order that left stands held, with why; one whose thing was withdrawn has no such duty."""
    room, _ = slot_free()
    room.resolve("slot_free-D002", "still_here")
    line = room.line("D002")
    assert "Card D002 was found on a thing in A-1-3. Ask what order 1001 got." in line.why
    orders.settle(room.unit, line.id, orders.Settle())
    assert (LineState.RELEASED, None) == (room.line("D002").state, room.line("D002").hold)
    assert "changed_since" == refused(room.undo, "slot_free-D002")

    other = CountInMemory("D001", "D002")
    stock.withdraw(other.unit, other.stay("D002").id, stock.Withdraw(reason="Broken"))
    other.open()
    other.look("A-1-3", "D002")
    assert "not_shipped" == refused(other.resolve, "slot_free-D002", "still_here")


def test_a_doubted_thing_is_held_for_its_order():
    """“Not this thing” of a count; without an order there is nothing to hold, and only what is in view is doubted."""
    room = CountInMemory("D001", "D002")
    room.look("A-1-1", "D001", "D002", doubts=("d001-6",))
    assert ["suspect-D001"] == room.found()
    room.order("1001", "D001")
    assert Hold.SUSPECT is room.line("D001").hold
    room.resolve("suspect-D001", "hold", reason="Another saddle")
    assert "Another saddle" in room.line("D001").why
    assert "unknown_card" == refused(room.look, "A-1-1", "D001", doubts=("D0024",))


@pytest.mark.parametrize(
    ("built", "kind", "how"),
    [
        (lambda room: (room.scan("tray", "D002"), room.put_away("D002")), FindingKind.MISSING, "withdraw"),
        (lambda room: room.scan("shelf", "D002", bin="A-1-1"), FindingKind.MISSING, "lost"),
        (lambda room: room.put_away("D002"), FindingKind.SLOT_FREE, "put_right"),
        (lambda room: room.put_away("D002"), FindingKind.CARD_DUE, "lost"),
        (lambda room: room.scan("tray", "D002"), FindingKind.ELSEWHERE, "moved"),
        (lambda room: room.scan("shelf", "D005", bin="A-1-3"), FindingKind.ELSEWHERE, "moved"),
    ],
)
def test_what_something_has_built_on_stands(built, kind, how):
    """A newer stay, or a scan of the card since: the resolution is not taken back, and nothing changes."""
    room, finding, _ = resolved(kind, how)
    built(room)
    before = room.unit.facts("D002")
    assert "changed_since" == refused(room.undo, finding)
    assert before == room.unit.facts("D002")


@pytest.mark.parametrize("state", [LineState.SHORT, LineState.WAITING])
def test_a_move_is_taken_back_while_the_line_that_wants_the_thing_stands_where_it_stood(state):
    """Short before and short since is untouched; what happens to the line afterwards is built upon it."""
    room = CountInMemory("D001", "D002")
    order = room.order("1001", "D002")
    if state is LineState.SHORT:
        orders.short(room.unit, room.line("D002").id, orders.Short())
    room.open()
    room.look("A-1-3", "D002")
    room.resolve("elsewhere-D002", "moved")
    room.undo("elsewhere-D002")
    assert (state, "D002") == (room.line("D002").state, room.stay("D002").code)
    room.resolve("elsewhere-D002", "moved")
    if state is LineState.SHORT:
        orders.found(room.unit, room.lines(order)[0].id)
    room.pick("D006")
    assert "changed_since" == refused(room.undo, "elsewhere-D002")


def test_a_card_that_is_lost_already_is_not_reported_lost():
    """What the account knows is no way on."""
    room, finding = missing()
    assert True is ("lost" in ways(room.unit, room.state().found[0].finding))
    stock.lose_card(room.unit, "D002")
    room.open()
    room.look("A-1-1", "D001")
    assert [finding] == room.found()
    assert False is ("lost" in ways(room.unit, room.state().found[0].finding))


def test_a_matched_reading_alone_moves_nothing():
    """A closer photo that decodes is enough, and so is the word of somebody who looked; to ignore it needs neither."""
    room = CountInMemory("D001", "D002")
    room.look("A-1-3", matched="D002")
    assert "look_closer" == refused(room.resolve, "elsewhere-D002", "put_right")
    room.resolve("elsewhere-D002", "put_right", sure=True)
    room.undo("elsewhere-D002")
    room.resolve("elsewhere-D002", "ignore", reason="A shadow")
    room.undo("elsewhere-D002")
    room.look("A-1-3", "D002", closer="look-1")
    room.resolve("elsewhere-D002", "put_right")


@pytest.mark.parametrize(
    ("kind", "how", "more", "code"),
    [
        (FindingKind.MISSING, "put_right", {}, "not_for_this"),
        (FindingKind.MISSING, "withdraw", {"reason": " "}, "required"),
        (FindingKind.MISSING, "reprint", {}, "required"),
        (FindingKind.MISSING, "reprint", {"text": card_text("D001")}, "other_card"),
        (FindingKind.UNREADABLE, "reprint", {"reason": "Torn"}, "required"),
        (FindingKind.ELSEWHERE, "moved", {"to": "D001"}, "taken"),
        (FindingKind.ELSEWHERE, "moved", {"to": "D099"}, "unknown_code"),
    ],
)
def test_what_can_not_be_done_is_refused(kind, how, more, code):
    """And the finding stays open."""
    room, finding = PLANTED[kind]()
    assert code == refused(room.resolve, finding, how, **more)
    assert [finding] == room.found()


def test_a_thing_that_an_order_wants_is_not_withdrawn():
    """Its line is cancelled first."""
    room, finding = missing()
    room.order("1001", "D002")
    assert "has_live_line" == refused(room.resolve, finding, "withdraw", reason="Gone")
    assert 1 == len(room.unit.find(Line))


def test_a_card_that_is_missing_in_the_tray_is_found_or_lost():
    """It bears nothing, so there is nothing to withdraw, and its number rests while it is lost."""
    room = CountInMemory("D001", "D002")
    room.look("tray", "D003", "D004", "D005")
    assert ["missing-D006"] == room.found()
    assert "not_for_this" == refused(room.resolve, "missing-D006", "withdraw", reason="Gone")
    assert "required" == refused(room.resolve, "missing-D006", "found_later")
    room.resolve("missing-D006", "found_later", text=card_text("D006"))
    room.undo("missing-D006")
    room.resolve("missing-D006", "lost")
    facts = room.unit.facts("D006")
    assert SlotState.RETIRED is slot_state(facts.slot, facts.stay)


def test_a_bin_that_is_full_takes_no_thing_for_good():
    """Both its slots are taken."""
    room = CountInMemory("D001", "D002", "D005", "D006")
    room.look("A-1-3", "D002")
    assert "bin_full" == refused(room.resolve, "elsewhere-D002", "moved")


def test_what_is_unread_and_no_card_leaves_the_rest_missing():
    """Once somebody looked and said so; while it may be a card that was cleaned or printed again, nothing is."""
    room, _ = unreadable()
    room.resolve("unreadable-A-1-1", "ignore", reason="A price label")
    assert ["missing-D002"] == room.found()
    room.undo("unreadable-A-1-1")
    room.resolve("unreadable-A-1-1", "put_right")
    assert [] == room.found()


def test_a_closed_count_is_resolved_as_long_as_its_slots_stand_still():
    """Later, what was found then may not be true any more."""
    room, finding = missing()
    stocktake_report.close(room.unit, room.count.id)
    room.resolve(finding, "lost")
    room.undo(finding)
    assert [finding] == room.found()
    room.scan("shelf", "D002", bin="A-1-1")
    assert "changed_since" == refused(room.resolve, finding, "lost")
    with pytest.raises(Missing):
        room.resolve("missing-D001", "lost")


def test_what_was_held_is_not_taken_back_on_another_orders_line():
    """A hold stays on the line of an order that came after the one that was held, with the same words."""
    room = CountInMemory("D001", "D002")
    first = room.order("1001", "D002")
    room.look("A-1-1", "D001", "D002", doubts=("D0024",))
    room.resolve("suspect-D002", "hold", reason="Not this thing")
    orders.cancel(room.unit, first.id, orders.Cancel())
    room.order("1002", "D002")
    orders.hold(room.unit, room.line("D002").id, orders.NotThis(why="Not this thing"))
    assert "changed_since" == refused(room.undo, "suspect-D002")
    assert (Hold.SUSPECT, True) == (room.line("D002").hold, "Not this thing" in room.line("D002").why)


def test_nothing_is_picked_by_taking_back():
    """A pick that was put back is not undone on another order's line, nor on the line's next round."""
    for another in (True, False):
        room, finding = suspect()
        room.resolve(finding, "put_right")
        if another:
            orders.cancel(room.unit, room.unit.find(Order)[0].id, orders.Cancel())
            room.order("1002", "D002")
        else:
            room.round()
        assert "changed_since" == refused(room.undo, finding)
        assert LineState.WAITING is room.line("D002").state


def test_a_new_things_card_is_not_lost_by_taking_back():
    """Nothing of the slot's next stay changes by what was said in the time of the one before."""
    room, finding = missing()
    room.resolve(finding, "lost")
    room.open()
    room.look("A-1-1", "D001")
    room.resolve(finding, "found_later")
    stock.withdraw(room.unit, room.stay("D002").id, stock.Withdraw(reason="Broken"))
    room.scan("tray", "D002")
    room.put_away("D002")
    room.scan("shelf", "D002", bin="A-1-1")
    assert "changed_since" == refused(room.undo, finding)
    assert CardState.ON_ITEM is room.slot("D002").card


def test_what_another_count_put_right_is_not_put_right_again():
    """Two counts found one card in the tray: once it is back on its thing, nobody withdraws that by the other count."""
    room, finding = in_tray()
    other = room.count
    room.open()
    room.look("tray", "D002", "D003", "D004", "D005", "D006")
    room.resolve(finding, "put_right")
    room.count = other
    assert [] == room.found()
    assert "changed_since" == refused(room.resolve, finding, "withdraw", reason="Broken")
    assert room.stay("D002").open


def test_what_another_count_left_so_is_still_to_be_put_right():
    """That somebody ignored it there changed nothing."""
    room, finding = in_tray()
    other = room.count
    room.open()
    room.look("tray", "D002", "D003", "D004", "D005", "D006")
    room.resolve(finding, "ignore", reason="Later")
    room.count = other
    assert [finding] == room.found()


@pytest.mark.parametrize("place", ["A-1-3", "tray"])
def test_what_is_packed_and_seen_away_from_the_box_holds_its_line(place):
    """In another bin or in the tray as on its own shelf: what lies in the parcel has to be looked at."""
    room = CountInMemory("D001", "D002")
    order = room.order("1001", "D001", "D002")
    room.pick("D001", "D002")
    room.parcel(order)
    room.pack("D002")
    room.open()
    room.look(place, "D002")
    (finding,) = [each for each in room.found() if "D002" in each]
    room.resolve(finding, "put_right")
    assert (LineState.PACKED, Hold.MISPLACED) == (room.line("D002").state, room.line("D002").hold)
    assert place in room.line("D002").why


def test_what_is_picked_and_brought_back_to_its_bin_waits_again():
    """It was seen in another bin, and stands in its own now: it is walked to once more."""
    room = CountInMemory("D001", "D002")
    room.order("1001", "D002")
    room.pick("D002")
    room.open()
    room.look("A-1-3", "D002")
    room.resolve("elsewhere-D002", "put_right")
    assert (LineState.WAITING, "A-1-1") == (room.line("D002").state, stands(room))


def test_nothing_is_put_right_in_a_count_that_was_cancelled():
    """What it found is not written down anywhere."""
    room, finding = in_tray()
    stocktakes.cancel(room.unit, room.count.id)
    assert "not_allowed" == refused(room.resolve, finding, "put_right")


@pytest.mark.parametrize("make", [slot_free, card_due])
def test_a_card_is_in_the_tray_once_it_was_read_there(make):
    """Nobody's word frees a number: its own card's text does, or that the count saw it in the tray."""
    room, finding = make()
    assert "required" == refused(room.resolve, finding, "put_right")
    assert "other_card" == refused(room.resolve, finding, "put_right", text=card_text("D003"))
    assert CardState.DUE is room.slot("D002").card
    room.resolve(finding, "put_right", text=card_text("D002"))
    assert CardState.TRAY is room.slot("D002").card


def test_a_due_card_that_the_count_saw_in_the_tray_is_back():
    """It was read there, though nobody scanned it."""
    room, finding = card_due()
    room.look("tray", "D002", "D003", "D004", "D005", "D006")
    room.resolve(finding, "put_right")
    assert CardState.TRAY is room.slot("D002").card


def test_of_two_cards_of_a_free_slot_one_is_read_in_the_tray():
    """Both hang on shelves: that one was taken away says not that the other is back."""
    room = CountInMemory("D001", "D002")
    room.release("1001", "D002")
    room.open()
    for place in ("A-1-1", "A-1-3"):
        room.look(place, "D002")
    assert "required" == refused(room.resolve, "twin-D002", "put_right")
    room.resolve("twin-D002", "put_right", text=card_text("D002"))
    assert CardState.TRAY is room.slot("D002").card


def test_a_card_that_still_hangs_on_a_thing_is_not_handed_out():
    """Its order got another thing: the number is out of use until the card is seen in the tray."""
    room = CountInMemory("D001", "D002")
    room.release("1001", "D002")
    room.scan("tray", "D002")
    room.open()
    room.look("A-1-3", "D002")
    room.resolve("slot_free-D002", "still_here")
    assert "retired" == refused(stock.put_away, room.unit, stock.PutAway(title="Saddle", code="D002"))
    assert "D003" == stock.put_away(room.unit, stock.PutAway(title="Saddle", section="D")).code
    room.scan("tray", "D002")
    assert "D002" == stock.put_away(room.unit, stock.PutAway(title="Lamp", section="D")).code


def test_a_card_that_a_running_count_saw_on_a_shelf_is_not_handed_out():
    """By no number and in no section, until it is scanned at the tray, or the count is over."""
    room = CountInMemory("D001")
    room.look("A-1-3", "D002")
    assert "card_due" == refused(stock.put_away, room.unit, stock.PutAway(title="Saddle", code="D002"))
    assert "D003" == stock.put_away(room.unit, stock.PutAway(title="Saddle", section="D")).code
    room.scan("tray", "D002")
    assert "D002" == stock.put_away(room.unit, stock.PutAway(title="Lamp", section="D")).code


def test_a_thing_that_is_not_the_one_is_held_for_the_next_order():
    """Nobody wants it yet: the doubt stays with it, through a move, until a person has looked or settled it."""
    room = CountInMemory("D001", "D002")
    room.look("A-1-1", "D001", "D002", doubts=(card_text("D001"),))
    room.resolve("suspect-D001", "hold", reason="A lamp hangs there")
    moved = stock.move(room.unit, room.stay("D001").id, stock.Move(to="D005"))
    room.order("1001", "D005")
    line = room.line("D005")
    assert (Hold.SUSPECT, True) == (line.hold, "A lamp hangs there" in line.why)
    orders.cancel(room.unit, room.unit.find(Order)[0].id, orders.Cancel())
    assert Hold.SUSPECT is orders.revive(room.unit, line.id).hold
    for each in doubts.open_doubts(room.unit, moved.item):
        doubts.settle(room.unit, each.id, doubts.SettleDoubt(how=DoubtEnd.SEEN, text=card_text("D005")))
    orders.cancel(room.unit, room.unit.find(Order)[0].id, orders.Cancel())
    room.order("1002", "D005")
    assert None is room.line("D005").hold


def test_a_card_missing_in_the_tray_has_no_thing():
    """It can be found, lost or left; nothing is withdrawn or printed."""
    room = CountInMemory("D001")
    room.look("tray", "D003", "D004", "D005", "D006")
    (found,) = [each.finding for each in room.state().found]
    assert ("missing-D002", ("found_later", "lost", "ignore")) == (found.id, ways(room.unit, found))
