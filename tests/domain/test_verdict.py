"""Every reason, at every station where it is given, reached by real scans; and which of two reasons is told."""

from dataclasses import replace
from datetime import UTC, datetime
from itertools import product

import pytest
from room_in_memory import LATER, RoomInMemory

from labels import slot_code
from scanflow.domain.life import CardState, Hold, LineState, ParcelState, RoundState, StayState
from scanflow.domain.things import Held, Line, Order, Parcel, Round, Slot, Station, Stay
from scanflow.domain.verdict import ALL, GUARDS, Reason, Scene, effects, judge
from scanflow.workflow import orders, parcels, stock
from scanflow.workflow.picking import rounds

SPOTS = {"table": {}, "tray": {}, "shelf": {"bin": "A-1-1"}}

ORDER = {
    "all": "unreadable many_codes bad_check unknown_code retired",
    "bin": "closed slot_free not_ordered cancelled held not_on_round already_picked already_packed",
    "table": "no_parcel already_released slot_free not_ordered cancelled other_order held already_packed not_picked",
    "tray": "not_released",
    "shelf": "slot_free wrong_bin",
}
"""The guards of each station in the order they ask."""


def spot(room, station):
    """Where to scan at a station; a round is opened for the bin."""
    return {"round": room.round().id} if station == "bin" else SPOTS[station]


@pytest.mark.parametrize("station", Station)
@pytest.mark.parametrize(
    ("texts", "reason"),
    [
        ((), "unreadable"),
        ((" ",), "unreadable"),
        ((slot_code.card_text("D001"), slot_code.card_text("D002")), "many_codes"),
        (("D0015",), "bad_check"),
        (("D002",), "bad_check"),
        ((slot_code.card_text("D999"),), "unknown_code"),
        (("rubber duck",), "unknown_code"),
    ],
)
def test_what_is_no_card_is_refused_everywhere(station, texts, reason):
    """Nothing, too much, a wrong or missing check, and what is no card of the room have a reason at each station."""
    room = RoomInMemory("D001", "D002")
    room.order("1", "D001")
    answer = room.read(station, *texts, **spot(room, station))
    assert ("refused", reason, None) == (answer["verdict"], answer["reason"], answer["code"])


@pytest.mark.parametrize("station", ["bin", "table", "shelf"])
def test_a_lost_card_is_retired_except_at_the_tray(station):
    """The number of a lost card is refused where things are handled, and taken back at the tray."""
    room = RoomInMemory("D001")
    room.order("1", "D001")
    stock.lose_card(room.unit, "D003")
    assert "retired" == room.scan(station, "D003", **spot(room, station))["reason"]
    assert ("accepted", CardState.TRAY) == (room.scan("tray", "D003")["verdict"], room.slot("D003").card)


def bin_closed(room):
    room.order("1", "D001")
    walk = room.round()
    rounds.close_round(room.unit, walk.id)
    return room.scan("bin", "D001", round=walk.id)


def bin_slot_free(room):
    room.order("1", "D001")
    return room.scan("bin", "D003", round=room.round().id)


def bin_not_ordered(room):
    room.order("1", "D001")
    return room.scan("bin", "D002", round=room.round().id)


def bin_cancelled(room):
    order = room.order("1", "D001", "D002")
    walk = room.round()
    orders.cancel(room.unit, order.id, orders.Cancel(line=room.line("D002").id))
    return room.scan("bin", "D002", round=walk.id)


def bin_held(room):
    room.order("1", "D001")
    walk = room.round()
    orders.hold(room.unit, room.line("D001").id, orders.NotThis(why="not this"))
    return room.scan("bin", "D001", round=walk.id)


def bin_not_on_round(room):
    first, _ = room.order("1", "D001"), room.order("2", "D002")
    return room.scan("bin", "D002", round=room.round(first).id)


def bin_already_picked(room):
    room.order("1", "D001", "D002")
    walk = room.round()
    room.scan("bin", "D001", round=walk.id)
    room.scan("bin", "D002", round=walk.id)
    return room.scan("bin", "D001", round=walk.id)


def bin_already_packed(room):
    order = room.order("1", "D001", "D002")
    walk = room.round()
    room.scan("bin", "D001", round=walk.id)
    room.parcel(order)
    room.pack("D001")
    return room.scan("bin", "D001", round=walk.id)


def table_no_parcel(room):
    room.order("1", "D001")
    room.pick("D001")
    return room.scan("table", "D001")


def table_already_released(room):
    room.release("1", "D001")
    room.parcel(room.order("2", "D002"))
    return room.scan("table", "D001")


def table_slot_free(room):
    room.parcel(room.order("1", "D001"))
    return room.scan("table", "D003")


def table_not_ordered(room):
    room.parcel(room.order("1", "D001"))
    return room.scan("table", "D002")


def table_cancelled(room):
    order = room.order("1", "D001", "D002")
    room.parcel(order)
    orders.cancel(room.unit, order.id, orders.Cancel(line=room.line("D002").id))
    return room.scan("table", "D002")


def table_other_order(room):
    first, _ = room.order("1", "D001"), room.order("2", "D002")
    room.pick("D001", "D002")
    room.parcel(first)
    return room.scan("table", "D002")


def table_held(room):
    room.parcel(room.order("1", "D001"))
    orders.hold(room.unit, room.line("D001").id, orders.NotThis(why="not this"))
    return room.scan("table", "D001")


def table_already_packed(room):
    order = room.order("1", "D001", "D002", "D004")
    room.pick("D001", "D002")
    room.parcel(order)
    room.pack("D001", "D002")
    return room.scan("table", "D001")


def table_not_picked(room):
    room.parcel(room.order("1", "D001"))
    return room.scan("table", "D001")


def tray_not_released(room):
    return room.scan("tray", "D001")


def shelf_slot_free(room):
    return room.scan("shelf", "D003", bin="A-1-2")


def shelf_wrong_bin(room):
    return room.scan("shelf", "D001", bin="A-1-2")


SCENES = (
    *(bin_closed, bin_slot_free, bin_not_ordered, bin_cancelled, bin_held, bin_not_on_round),
    *(bin_already_picked, bin_already_packed, table_no_parcel, table_already_released, table_slot_free),
    *(table_not_ordered, table_cancelled, table_other_order, table_held, table_already_packed, table_not_picked),
    *(tray_not_released, shelf_slot_free, shelf_wrong_bin),
)


@pytest.mark.parametrize("scene", SCENES, ids=lambda scene: scene.__name__)
def test_every_reason_of_a_station_is_reached(scene):
    """A scan in the scene named by station and reason is refused for that reason, with words and no change."""
    answer = scene(RoomInMemory("D001", "D002", "D004"))
    reason = scene.__name__.split("_", 1)[1]
    assert ("refused", reason, False) == (answer["verdict"], answer["reason"], answer["changed"])
    assert answer["advice"].endswith(".")


def test_there_is_a_scene_for_every_guard():
    """No guard of a station is without its scene."""
    guards = {f"{station}_{reason}" for station in Station for reason, _ in GUARDS[station]}
    assert guards == {scene.__name__ for scene in SCENES}


@pytest.mark.parametrize("station", ["all", *Station])
def test_guards_ask_in_the_order_that_is_meant(station):
    """The list of a station is its order of precedence."""
    guards = ALL if station == "all" else GUARDS[Station(station)]
    assert ORDER[station] == " ".join(reason for reason, _ in guards)


NOON = datetime(2026, 3, 2, 12, tzinfo=UTC)
SLOT = Slot("D001", "D", 1, "A-1-1", turns=1)
STAY = Stay("s", "i", "D001", 1, NOON)
LINE = Line("l", "o", 1, "D001", stay="s", state=LineState.WAITING)


def looks(station):
    """Looks of every make: card, stay, line, hold, round, parcel, bin, taking out."""
    makes = product(
        [None, Reason.UNREADABLE, Reason.MANY_CODES, Reason.BAD_CHECK, Reason.UNKNOWN_CODE],
        [CardState.ON_ITEM, CardState.LOST, CardState.DUE],
        [StayState.STORED, StayState.SHIPPED],
        [None, *LineState],
        [None, Hold.SUSPECT],
        [None, "r"],
        [(None, False), (("o",), False), (("p",), False), (("o",), True), (("p",), True)],
    )
    for unread, card, stay, line, hold, on, (boxes, take_out) in makes:
        holds = (Held(hold, "Why."),) if hold else ()
        wanted = replace(LINE, state=line, holds=holds, round=on) if line else None
        for over, where in ((RoundState.OPEN, "A-1-1"), (RoundState.CLOSED, "A-1-2")):
            yield Scene(
                station,
                unread,
                None if unread else replace(SLOT, card=card),
                None if unread else replace(STAY, state=stay),
                None,
                None if unread else wanted,
                Order("o", "1", "", NOON, 1) if wanted and not unread else None,
                None,
                Round("r", NOON, over) if station is Station.BIN else None,
                Parcel("b", "main", boxes, NOON, ParcelState.OPEN) if boxes and station is Station.TABLE else None,
                where,
                take_out,
            )


MADE = {station: tuple(looks(station)) for station in Station}

MEETING = {
    Station.BIN: """
        bad_check>closed bad_check>not_on_round bad_check>not_ordered bad_check>slot_free cancelled>not_on_round
        closed>already_packed closed>already_picked closed>cancelled closed>held closed>not_on_round
        closed>not_ordered closed>slot_free held>already_packed held>already_picked held>not_on_round
        many_codes>closed many_codes>not_on_round many_codes>not_ordered many_codes>slot_free
        not_on_round>already_packed not_on_round>already_picked not_ordered>not_on_round retired>closed
        retired>not_on_round retired>not_ordered retired>slot_free slot_free>not_on_round slot_free>not_ordered
        unknown_code>closed unknown_code>not_on_round unknown_code>not_ordered unknown_code>slot_free
        unreadable>closed unreadable>not_on_round unreadable>not_ordered unreadable>slot_free
    """,
    Station.TABLE: """
        already_released>not_ordered already_released>not_picked
        already_released>slot_free bad_check>no_parcel bad_check>not_ordered bad_check>not_picked
        bad_check>slot_free cancelled>not_picked held>already_packed held>not_picked many_codes>no_parcel
        many_codes>not_ordered many_codes>not_picked many_codes>slot_free no_parcel>already_packed
        no_parcel>already_released no_parcel>cancelled no_parcel>held no_parcel>not_ordered no_parcel>not_picked
        no_parcel>slot_free not_ordered>not_picked other_order>already_packed other_order>held
        other_order>not_picked retired>no_parcel retired>not_ordered retired>not_picked retired>slot_free
        slot_free>not_ordered slot_free>not_picked unknown_code>no_parcel unknown_code>not_ordered
        unknown_code>not_picked unknown_code>slot_free unreadable>no_parcel unreadable>not_ordered
        unreadable>not_picked unreadable>slot_free
    """,
    Station.TRAY: """

    """,
    Station.SHELF: """
        bad_check>slot_free many_codes>slot_free retired>slot_free retired>wrong_bin slot_free>wrong_bin
        unknown_code>slot_free unreadable>slot_free
    """,
}
"""Pairs of reasons that one look can have with none before them; all others exclude each other."""


@pytest.mark.parametrize("station", Station)
def test_of_two_reasons_the_first_is_told(station):
    """Wherever two guards both fit and none before them, the earlier one gives the reason; which pairs can is known."""
    met = set()
    for scene in MADE[station]:
        fitting = [reason for reason, fits in (*ALL, *GUARDS[station]) if fits(scene)]
        assert (fitting[0] if fitting else None) is judge(scene)
        met |= {f"{fitting[0]}>{other}" for other in fitting[1:]}
    assert MEETING[station].split() == sorted(met)


@pytest.mark.parametrize("late", [False, True])
@pytest.mark.parametrize("state", list(LineState))
def test_only_a_late_pick_that_still_waits_counts_on_a_closed_round(late, state):
    """A round that is over refuses all but what was scanned in time, waits still and stands on no other round."""
    line = replace(LINE, state=state, round="r")
    scene = Scene(Station.BIN, slot=SLOT, stay=STAY, line=line, round=Round("r", NOON, RoundState.CLOSED), late=late)
    assert (None if late and state is LineState.WAITING else Reason.CLOSED) == judge(scene)
    assert Reason.CLOSED == judge(replace(scene, line=replace(line, round="other")))


def test_late_scans_count_in_the_shop_too():
    """A pick that waited for the network is accepted after its round was closed."""
    room = RoomInMemory("D001")
    room.order("1", "D001")
    walk = room.round()
    rounds.close_round(room.unit, walk.id)
    assert "picked" == room.scan("bin", "D001", round=walk.id, at=LATER)["line_state"]


@pytest.mark.parametrize(
    ("station", "state", "hold", "events"),
    [
        ("bin", "waiting", None, "pick"),
        ("bin", "short", None, "find, pick"),
        ("table", "waiting", None, "pick, pack"),
        ("table", "short", None, "find, pick, pack"),
        ("table", "picked", None, "pack"),
        ("table", "packed", None, "take out"),
        ("table", "packed", Hold.MISPLACED, ""),
        ("table", "packed", Hold.CANCELLED_IN_BOX, "take out, cancel"),
        ("shelf", "waiting", None, ""),
        ("shelf", "short", None, "find"),
        ("shelf", "picked", None, "put back"),
        ("shelf", "packed", None, ""),
        ("shelf", "packed", Hold.CANCELLED_IN_BOX, ""),
    ],
)
def test_what_an_accepted_scan_does_to_the_line(station, state, hold, events):
    """Each station steps the line as its work goes, and sees the card on its item."""
    line = replace(LINE, state=LineState(state), holds=(Held(hold, ""),) if hold else ())
    take_out = events.startswith("take out")
    steps = list(effects(Scene(Station(station), slot=SLOT, stay=STAY, line=line, take_out=take_out)))
    assert ("card", "see on item") == steps[0]
    assert events == ", ".join(event for _, event in steps[1:])


def test_a_scan_at_the_tray_only_sees_the_card():
    """The tray moves no line."""
    assert [("card", "see in tray")] == list(effects(Scene(Station.TRAY, slot=SLOT)))


def test_closing_by_hand_is_told_from_a_scan():
    """A line of a parcel that was closed by hand can't be undone by its packing scan."""
    room = RoomInMemory("D001", "D002")
    order = room.order("1", "D001", "D002")
    room.pick("D001")
    parcel = room.parcel(order)
    room.pack("D001")
    parcels.close_parcel(room.unit, parcel.id, partial=True)
    assert None is room.line("D001").scan
