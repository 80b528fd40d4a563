"""A card is held before a station: answered once, twice alike, and taken back."""

import json
from dataclasses import replace

import pytest
from memory import NOON
from room_in_memory import LATER, RoomInMemory

from labels import slot_code
from scanflow.domain.life import CardState, Hold, LineState, ParcelState
from scanflow.domain.things import Line, Parcel, Scan, Sighting, Slot, Station, Stay
from scanflow.workflow import orders, parcels, stock
from scanflow.workflow.picking import rounds, undoing
from scanflow.workflow.ports import Invalid, Missing, Refused


def refused(call, *args, **more):
    """The code of the refusal that the call meets."""
    with pytest.raises((Refused, Invalid)) as refusal:
        call(*args, **more)
    return refusal.value.code


def picked(**settings):
    """A room with order 1 of D001 and D002 and order 2 of D003, all picked."""
    room = RoomInMemory("D001", "D002", "D003", **settings)
    first, second = room.order("1", "D001", "D002"), room.order("2", "D003")
    room.pick("D001", "D002", "D003")
    return room, first, second


def things(room):
    """All lines, stays, slots and parcels as they stand."""
    return [dict(room.unit.all(kind)) for kind in (Line, Stay, Slot, Parcel)]


def test_the_main_job():
    """Put away, ordered, picked, packed, released, back in the tray, used again."""
    room = RoomInMemory()
    stay = stock.put_away(room.unit, stock.PutAway(title="crank", section="D"))
    order = room.order("1", stay.code)
    walk = room.round()
    answers = [room.scan("bin", "D001", round=walk.id)]
    room.parcel(order)
    answers += [room.scan("table", "D001"), room.scan("tray", "D001")]
    assert ["picked", "released", "released"] == [answer["line_state"] for answer in answers]
    assert (["D001"], "closed") == (answers[1]["released"], answers[1]["parcel_state"])
    assert ("D001", 2) == (
        (again := stock.put_away(room.unit, stock.PutAway(title="lamp", section="D"))).code,
        again.turn,
    )


def test_an_answer_names_all_that_it_is_about():
    """Code, title, order, line, parcel and states are those of the scan."""
    room, first, _ = picked()
    parcel = room.parcel(first)
    answer = room.scan("table", "D001")
    line = room.line("D001")
    wanted = {
        **{"verdict": "accepted", "reason": None, "replayed": False, "changed": True, "photo": None, "released": []},
        **{"code": "D001", "title": "thing of D001", "order": first.id, "order_number": "1", "line": line.id},
        **{"line_state": "packed", "order_state": "picking", "parcel": parcel.id, "parcel_state": "open"},
        "advice": "Packed. Still to pack: D002.",
    }
    assert wanted == answer


def test_the_title_of_what_has_left_is_not_told():
    """An empty slot's card shows no thing."""
    room, first, _ = picked()
    room.parcel(first)
    room.pack("D001", "D002")
    assert None is room.scan("tray", "D001")["title"]


@pytest.mark.parametrize(
    ("station", "more", "pointer", "code"),
    [
        ("bin", {}, "/round", "required"),
        ("bin", {"round": "none"}, "/round", "unknown_round"),
        ("shelf", {}, "/bin", "required"),
        ("shelf", {"bin": "Z-1-1"}, "/bin", "unknown_bin"),
        ("tray", {"bin": "Z-1-1"}, "/bin", "unknown_bin"),
    ],
)
def test_without_its_spot_a_scan_has_no_verdict(station, more, pointer, code):
    """A station must be told where it is."""
    with pytest.raises(Invalid) as refusal:
        RoomInMemory("D001").scan(station, "D001", **more)
    assert (pointer, code) == (refusal.value.pointer, refusal.value.code)


def test_the_same_key_gets_the_same_answer_once():
    """A replay is marked and changes nothing; the same key with another body is an error."""
    room, first, _ = picked()
    room.parcel(first)
    answer = room.scan("table", "D001", key="k", body="b")
    before, entries = things(room), len(room.unit.ledger)
    assert {**answer, "replayed": True} == room.scan("table", "D001", key="k", body="b")
    assert (before, entries) == (things(room), len(room.unit.ledger))
    assert "key_reused" == refused(room.scan, "table", "D001", key="k", body="other")


def test_a_refused_scan_is_replayed_too():
    """The answer of a key stays what it was, though the scan would be accepted by now."""
    room, first, _ = picked()
    refusal = room.scan("table", "D001", key="k", body="b")
    room.parcel(first)
    assert {**refusal, "replayed": True} == room.scan("table", "D001", key="k", body="b")


@pytest.mark.parametrize("station", ["bin", "table", "take out", "tray", "shelf"])
def test_a_second_beep_is_accepted_and_changes_nothing(station):
    """The same card right after its acceptance is accepted again, with another key, at every station."""
    room = RoomInMemory("D001", "D002", "D003")
    first = room.order("1", "D001", "D002")
    walk = room.round()
    spot = {"bin": {"round": walk.id}, "shelf": {"bin": "A-1-1"}, "take out": {"take_out": True}}.get(station, {})
    if station in ("table", "take out"):
        room.scan("bin", "D001", round=walk.id)
        room.parcel(first)
    if station == "take out":
        room.pack("D001")
    code = "D004" if station == "tray" else "D001"
    at = "table" if station == "take out" else station
    stock.lose_card(room.unit, "D004")
    answer = room.scan(at, code, **spot)
    before = things(room)
    assert (True, {**answer, "changed": False}) == (answer["changed"], room.scan(at, code, **spot))
    assert before == things(room)


def test_the_beep_that_closed_the_parcel_may_come_twice():
    """The card that closed its parcel is accepted again, and again says what was released."""
    room, first, _ = picked()
    room.parcel(first)
    room.pack("D001")
    answer = room.scan("table", "D002")
    assert (["D001", "D002"], {**answer, "changed": False}) == (answer["released"], room.scan("table", "D002"))


def test_a_third_beep_is_a_second_one_again():
    """A hand that trembles is accepted as often as it likes."""
    room, first, _ = picked()
    room.parcel(first)
    answers = [room.scan("table", "D001") for _ in range(4)]
    assert [True, False, False, False] == [answer["changed"] for answer in answers]
    assert {"accepted"} == {answer["verdict"] for answer in answers}


def beep_after(room, first, second, between):
    """What the card of a packed or closing scan is answered after something else has happened."""
    room.parcel(first)
    room.pack("D001")
    match between:
        case "another card":
            room.pack("D002")
        case "refused card":
            room.scan("table", "D003")
        case "held":
            orders.hold(room.unit, room.line("D001").id, orders.NotThis(why="hm"))
        case "undone":
            undoing.undo(room.unit, room.line("D001").scan)
            return room.scan("table", "D001")["changed"]
        case "set aside":
            parcels.set_aside(room.unit, room.line("D001").parcel)
        case "other parcel":
            room.pack("D002")
            room.parcel(second)
            return room.scan("table", "D002")["reason"]
        case "tray":
            room.pack("D002")
            room.scan("tray", "D002")
            return room.scan("table", "D002")["reason"]
    return room.scan("table", "D001")["reason"]


@pytest.mark.parametrize(
    ("between", "answer"),
    [
        ("another card", "no_parcel"),
        ("refused card", "already_packed"),
        ("held", "held"),
        ("undone", True),
        ("set aside", "no_parcel"),
        ("other parcel", "already_released"),
        ("tray", "no_parcel"),
    ],
)
def test_a_second_beep_counts_only_right_after_the_first(between, answer):
    """Once another card, parcel, hold, undo or station came between, the scan is judged as it stands."""
    assert answer == beep_after(*picked(), between)


def test_a_beep_on_a_closed_round_is_refused():
    """A live scan after the round's end is told so; a late one is the second beep of its pick."""
    room = RoomInMemory("D001")
    room.order("1", "D001")
    walk = room.round()
    room.scan("bin", "D001", round=walk.id)
    rounds.close_round(room.unit, walk.id)
    assert "closed" == room.scan("bin", "D001", round=walk.id)["reason"]


def test_a_late_pick_may_beep_twice():
    """Both beeps that waited for the network are accepted, the second without a change."""
    room = RoomInMemory("D001")
    room.order("1", "D001")
    walk = room.round()
    rounds.close_round(room.unit, walk.id)
    answers = [room.scan("bin", "D001", round=walk.id, at=LATER) for _ in range(2)]
    assert [("accepted", True), ("accepted", False)] == [(x["verdict"], x["changed"]) for x in answers]


def test_a_late_pick_counts_only_while_its_line_waits_on_no_other_round():
    """What went on another round, or was picked already, is refused as closed."""
    room = RoomInMemory("D001", "D002")
    room.order("1", "D001")
    walk = room.round()
    rounds.close_round(room.unit, walk.id)
    room.round()
    assert "closed" == room.scan("bin", "D001", round=walk.id, at=LATER)["reason"]


def late_trouble(room, order, walk, trouble):
    if trouble == "cancelled":
        orders.cancel(room.unit, order.id, orders.Cancel())
    elif trouble == "held":
        orders.hold(room.unit, room.lines(order)[0].id, orders.NotThis(why="Another colour."))
    elif trouble == "already_picked":
        room.scan("bin", "D001", round=walk.id)
        room.scan("bin", "D002", round=walk.id)
    elif trouble == "closed":
        rounds.close_round(room.unit, walk.id)
        room.round()
    else:
        orders.cancel(room.unit, order.id, orders.Cancel())
        stock.withdraw(room.unit, room.stay("D001").id, stock.Withdraw(reason="It is broken."))


@pytest.mark.parametrize("trouble", ["cancelled", "held", "already_picked", "closed", "slot_free"])
def test_a_late_refusal_says_since_when(trouble):
    """What became of the thing without the phone's knowing is told with the hour in the shop's zone; live it is not."""
    room = RoomInMemory("D001", "D002")
    room.unit.set_settings(replace(room.unit.settings, zone="Europe/Berlin"))
    order = room.order("1", "D001", "D002")
    walk = room.round()
    late_trouble(room, order, walk, trouble)
    answers = [room.scan("bin", "D001", round=walk.id, **more) for more in ({"at": LATER}, {})]
    assert [" since 13:00" in answer["advice"] for answer in answers] == [True, False], answers
    assert trouble == answers[0]["reason"]


def test_a_thing_brought_back_to_its_shelf_again_has_no_duty_left():
    """A card seen at the shelf, at the table, and at the shelf again is no second beep: its put-back duty ends."""
    room, first, _ = picked()
    room.put_away("D004")
    room.scan("shelf", "D004", bin="A-1-2")
    room.parcel(first)
    room.scan("table", "D004")
    duty = room.where("D004").to_put_back
    answer = room.scan("shelf", "D004", bin="A-1-2")
    after = room.where("D004").to_put_back
    assert (True, True, False) == (duty, answer["changed"], after)


@pytest.mark.parametrize("between", ["withdrawn", "lost"])
def test_a_card_comes_back_to_the_tray_as_often_as_it_was_away(between):
    """Between two scans at the tray the card was used or lost: the second one takes it back."""
    room = RoomInMemory()
    room.scan("tray", "D001")
    if between == "withdrawn":
        room.put_away("D001")
        stock.withdraw(room.unit, room.stay("D001").id, stock.Withdraw(reason="bent"))
    else:
        stock.lose_card(room.unit, "D001")
    answer = room.scan("tray", "D001")
    assert (True, CardState.TRAY) == (answer["changed"], room.slot("D001").card)


def test_a_lost_card_that_turns_up_on_its_thing_is_no_longer_lost():
    """A scan at the shelf, where the thing was seen before too, says that the card is back on it."""
    room = RoomInMemory("D001")
    room.scan("shelf", "D001", bin="A-1-1")
    stock.lose_card(room.unit, "D001")
    room.scan("shelf", "D001", bin="A-1-1")
    assert CardState.ON_ITEM is room.slot("D001").card


def test_a_refusal_moves_nothing_but_the_sighting():
    """A card of another order at the table leaves all as it was, and is seen there."""
    room, first, _ = picked()
    first_parcel = room.parcel(first)
    before = things(room)
    assert "other_order" == room.scan("table", "D003")["reason"]
    after = things(room)
    assert Sighting(Station.TABLE, "main", False, NOON, first_parcel.id) == room.slot("D003").seen
    after[2]["D003"] = replace(after[2]["D003"], seen=before[2]["D003"].seen)
    assert before == after


@pytest.mark.parametrize(
    ("station", "more", "seen"),
    [
        ("bin", {}, Sighting(Station.BIN, "A-1-1", True, NOON)),
        ("bin", {"bin": "A-1-2"}, Sighting(Station.BIN, "A-1-2", True, NOON)),
        ("table", {"table": "second"}, Sighting(Station.TABLE, "second", False, NOON)),
        ("tray", {}, Sighting(Station.TRAY, "", False, NOON)),
        ("shelf", {"bin": "A-1-3"}, Sighting(Station.SHELF, "A-1-3", False, NOON)),
    ],
)
def test_every_scan_is_a_sighting(station, more, seen):
    """Accepted or refused, the card was last seen at that spot."""
    room = RoomInMemory("D001")
    room.order("1", "D001")
    room.scan(station, "D001", **({"round": room.round().id} if station == "bin" else {}), **more)
    assert seen == room.slot("D001").seen


def test_taking_out_brings_a_thing_back_from_the_box():
    """What is packed comes out by its scan; what is not packed can't come out."""
    room, first, _ = picked()
    room.parcel(first)
    assert "not_picked" == room.scan("table", "D001", take_out=True)["reason"]
    room.pack("D001")
    answer = room.scan("table", "D001", take_out=True)
    assert ("picked", "open", None) == (answer["line_state"], answer["parcel_state"], room.line("D001").parcel)
    room.wait(6)
    assert "packed" == room.scan("table", "D001")["line_state"]


def test_a_held_thing_may_come_out():
    """A hold stops what goes forward, not what comes out of the box."""
    room, first, _ = picked()
    room.parcel(first)
    room.pack("D001")
    orders.hold(room.unit, room.line("D001").id, orders.NotThis(why="hm"))
    assert "picked" == room.scan("table", "D001", take_out=True)["line_state"]
    room.wait(6)
    assert "held" == room.scan("table", "D001")["reason"]


def test_taking_out_is_for_the_table_alone():
    """At another station the wish to take out means nothing."""
    room = RoomInMemory("D001")
    room.order("1", "D001")
    assert "picked" == room.scan("bin", "D001", round=room.round().id, take_out=True)["line_state"]


def test_the_shelf_puts_a_thing_back():
    """A picked thing that stands in its bin again waits again."""
    room, _, _ = picked()
    answer = room.scan("shelf", "D001", bin="A-1-1")
    assert ("waiting", True) == (answer["line_state"], answer["changed"])


def test_a_packed_thing_whose_card_is_at_the_shelf_is_held():
    """Whether the thing or only its card lies there a person must say; till then no parcel closes over it."""
    room, first, _ = picked()
    parcel = room.parcel(first)
    room.pack("D001")
    answer = room.scan("shelf", "D001", bin="A-1-1")
    line = room.line("D001")
    assert ("packed", True, "misplaced") == (answer["line_state"], answer["changed"], line.hold)
    assert "still_in_box" == refused(parcels.close_parcel, room.unit, parcel.id, partial=True)


def test_what_was_cancelled_in_the_box_stays_there_for_the_shelf():
    """A card at the shelf does not take its thing out of the box: only a scan at the table does."""
    room, first, _ = picked()
    room.parcel(first)
    room.pack("D001")
    orders.cancel(room.unit, first.id, orders.Cancel(line=room.line("D001").id))
    room.scan("shelf", "D001", bin="A-1-1")
    line = room.line("D001")
    assert ("packed", True) == (line.state, line.has(Hold.CANCELLED_IN_BOX))


def test_packing_is_not_undone_in_a_parcel_set_aside():
    """Nobody stands before that box: it is opened first, and the thing comes out by a scan."""
    room, first, _ = picked()
    parcel = room.parcel(first)
    room.pack("D001")
    key = room.line("D001").scan
    parcels.set_aside(room.unit, parcel.id)
    assert "changed_since" == refused(undoing.undo, room.unit, key)


def test_what_was_cancelled_in_the_box_is_cancelled_once_it_is_out():
    """The scan that takes it out cancels it and ends the hold."""
    room, first, _ = picked()
    room.parcel(first)
    room.pack("D001")
    orders.cancel(room.unit, first.id, orders.Cancel(line=room.line("D001").id))
    assert "held" == room.scan("table", "D001")["reason"]
    assert "cancelled" == room.scan("table", "D001", take_out=True)["line_state"]
    assert (None, None) == (room.line("D001").hold, room.line("D001").parcel)


def test_the_shelf_confirms_a_put_away_once():
    """The first sighting in the right bin is a change, the next one is none."""
    room = RoomInMemory("D001")
    answers = [room.scan("shelf", "D001", bin="A-1-1") for _ in range(2)]
    assert [True, False] == [answer["changed"] for answer in answers]


def test_a_missing_thing_that_is_scanned_at_its_bin_is_found():
    """Short, found and picked in one scan while its round goes on."""
    room = RoomInMemory("D001")
    room.order("1", "D001")
    walk = room.round()
    orders.short(room.unit, room.line("D001").id, orders.Short())
    assert "picked" == room.scan("bin", "D001", round=walk.id)["line_state"]


@pytest.mark.parametrize("short", [False, True])
def test_a_shop_that_does_not_scan_at_the_bin_packs_from_waiting(short):
    """The table picks and packs in one, what was missing too."""
    room = RoomInMemory("D001", "D002", scan_at_bin=False)
    room.parcel(room.order("1", "D001", "D002"))
    if short:
        orders.short(room.unit, room.line("D001").id, orders.Short())
    assert "packed" == room.scan("table", "D001")["line_state"]


@pytest.mark.parametrize("code", ["cancelled", "held", "short"])
def test_a_parcel_does_not_close_by_itself_while_something_is_wanted(code):
    """Held and short lines keep it open; a cancelled one is not missed."""
    room, first, _ = picked()
    room.parcel(first)
    line = room.line("D002").id
    match code:
        case "cancelled":
            orders.cancel(room.unit, first.id, orders.Cancel(line=line))
        case "held":
            orders.hold(room.unit, line, orders.NotThis(why="hm"))
        case "short":
            orders.short(room.unit, line, orders.Short())
    assert ("closed" if code == "cancelled" else "open") == room.scan("table", "D001")["parcel_state"]


def undone(room, code):
    """The line after the scan that changed it last was taken back."""
    return undoing.undo(room.unit, room.line(code).scan)


@pytest.mark.parametrize("was", ["waiting", "short"])
@pytest.mark.parametrize("station", ["bin", "table"])
def test_undo_brings_a_line_back_to_where_it_was(station, was):
    """A pick, or a packing straight from the bin, is taken back whole."""
    room = RoomInMemory("D001", "D002", scan_at_bin=station == "bin")
    order = room.order("1", "D001", "D002")
    walk = room.round()
    room.parcel(order)
    if was == "short":
        orders.short(room.unit, room.line("D001").id, orders.Short())
    room.scan(station, "D001", **({"round": walk.id} if station == "bin" else {}))
    line = undone(room, "D001")
    assert (was, None, None) == (str(line.state), line.parcel, line.scan)


def test_undo_of_packing_leaves_the_thing_picked():
    """The last step only is taken back."""
    room, first, _ = picked()
    room.parcel(first)
    room.pack("D001")
    assert (LineState.PICKED, None) == ((line := undone(room, "D001")).state, line.parcel)


def test_undo_of_the_scan_that_closed_reopens_the_parcel():
    """The parcel is open again with the other thing in it, the last one is out: in one step."""
    room, first, _ = picked()
    parcel = room.parcel(first)
    room.pack("D001", "D002")
    assert LineState.PICKED is undone(room, "D002").state
    assert (LineState.PACKED, ParcelState.OPEN) == (room.line("D001").state, room.parcel_now(parcel).state)


def test_undo_after_the_slot_was_used_again_is_refused():
    """Once another thing stands in one of its slots, the closing can't be taken back."""
    room, first, _ = picked()
    room.parcel(first)
    room.pack("D001", "D002")
    key = room.line("D002").scan
    room.put_away("D001")
    assert "slot_reused" == refused(undoing.undo, room.unit.fork(), key)


@pytest.mark.parametrize("change", ["scanned", "held", "reopened", "moved", "undone"])
def test_undo_is_refused_once_the_line_was_changed_since(change):
    """Only the latest change of a line is taken back."""
    room, first, _ = picked()
    parcel = room.parcel(first)
    room.pack("D001", "D002") if change == "reopened" else room.pack("D001")
    key = room.line("D002" if change == "reopened" else "D001").scan
    match change:
        case "scanned":
            room.scan("table", "D001", take_out=True)
        case "held":
            orders.hold(room.unit, room.line("D001").id, orders.NotThis(why="hm"))
        case "reopened":
            parcels.reopen(room.unit, parcel.id)
        case "moved":
            room.scan("table", "D001", take_out=True)
            stock.move(room.unit, room.stay("D001").id, stock.Move(to="D004"))
        case "undone":
            undoing.undo(room.unit, key)
    assert "changed_since" == refused(undoing.undo, room.unit, key)


@pytest.mark.parametrize("case", ["refused", "second beep", "tray", "slip", "take out", "put back"])
def test_what_went_backwards_or_changed_nothing_is_not_undone(case):
    """Undo steps back only; what came out of the box goes in again by a scan."""
    room, first, _ = picked()
    match case:
        case "refused":
            room.scan("table", "D001", key="k")
        case "second beep":
            room.parcel(first)
            room.pack("D001")
            room.scan("table", "D001", key="k")
        case "tray":
            room.scan("tray", "D005", key="k")
        case "slip":
            room.read("table", slot_code.slip_text(first.slip), key="k")
        case "take out":
            room.parcel(first)
            room.pack("D001")
            room.scan("table", "D001", key="k", take_out=True)
        case "put back":
            room.scan("shelf", "D001", key="k", bin="A-1-1")
    assert "nothing_to_undo" == refused(undoing.undo, room.unit, "k")


def test_an_unknown_key_is_missing():
    """There is nothing to take back of a scan that never was."""
    with pytest.raises(Missing):
        undoing.undo(RoomInMemory().unit, "none")


def test_every_scan_is_kept_and_in_the_ledger():
    """Its record holds the answer as it was given; the ledger tells station, text, verdict and client's clock."""
    room = RoomInMemory("D001")
    room.order("1", "D001")
    answer = room.scan("bin", "D001", round=room.round().id, key="k", at=LATER, via="camera")
    told = room.unit.ledger[-1]
    assert answer == json.loads(room.unit.get(Scan, "k").answer)
    assert ("scan", "bin", ["D0016"], "accepted", "camera", LATER) == (
        told.kind,
        *(told.data()[name] for name in ("station", "text", "verdict", "via", "client_at")),
    )


def test_foreign_codes_in_view_stay_out_of_the_ledger():
    """Only what could be a card or a slip is recorded, be it right or wrong."""
    room = RoomInMemory("D001")
    room.read("tray", "NOT-OF-THIS-SHOP", "D0015", "D0016", image=True)
    assert ("D0015", "D0016") == room.unit.ledger[-1].text
