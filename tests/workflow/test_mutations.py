"""Each row of the tables, each guard and each list of the rules, spoiled in turn: exploring small rooms notices.

How a fault is caught, from strong to weak: the name of a broken property; `no end`, when orders can't end any more;
`states`, other states or ways between them than the pinned ones; `answers`, other answers than the pinned ones.
"""

import pytest
from mutants import ALL_MUTANTS, base, caught, how
from small_rooms import ROOMS, room

from scanflow.domain.things import Order
from scanflow.workflow import parcels
from scanflow.workflow.ports import Refused

CAUGHT = {
    "line: no row unbound, settle": ("empty", "answers"),
    "line: unbound, settle stays unbound": ("empty", "answers"),
    "line: no row unbound, cancel": ("file", "answers"),
    "line: unbound, cancel stays unbound": ("file", "answers"),
    "line: no row waiting, pick": ("straight", "every_card_gets_a_verdict"),
    "line: waiting, pick stays waiting": ("undo", "every_card_gets_a_verdict"),
    "line: no row waiting, miss": ("walk", "answers"),
    "line: waiting, miss stays waiting": ("walk", "answers"),
    "line: no row waiting, cancel": ("stock", "answers"),
    "line: waiting, cancel stays waiting": ("stock", "answers"),
    "line: no row waiting, unbind": ("settle", "answers"),
    "line: waiting, unbind stays waiting": ("settle", "answers"),
    "line: no row picked, pack": ("undo", "every_card_gets_a_verdict"),
    "line: picked, pack stays picked": ("walk", "answers"),
    "line: no row picked, put back": ("aside", "every_card_gets_a_verdict"),
    "line: picked, put back stays picked": ("undo", "undo_goes_back_to_before_the_scan"),
    "line: no row picked, miss": ("walk", "answers"),
    "line: picked, miss stays picked": ("walk", "answers"),
    "line: no row picked, cancel": ("holds", "every_card_gets_a_verdict"),
    "line: picked, cancel stays picked": ("holds", "what_was_cancelled_in_the_box_ends_cancelled"),
    "line: no row packed, take out": ("beeps", "every_card_gets_a_verdict"),
    "line: packed, take out stays packed": ("unfound", "undo_goes_back_to_before_the_scan"),
    "line: no row packed, close": ("reuse", "every_card_gets_a_verdict"),
    "line: packed, close stays packed": ("reuse", "one_live_line_for_a_stay"),
    "line: no row short, find": ("straight", "every_card_gets_a_verdict"),
    "line: short, find stays short": ("walk", "what_is_short_is_missing"),
    "line: no row short, cancel": ("settle", "answers"),
    "line: short, cancel stays short": ("settle", "answers"),
    "line: no row released, reopen": ("reuse", "answers"),
    "line: released, reopen stays released": ("reuse", "boxed_only_by_its_own_card"),
    "line: no row released, return": ("ways back", "answers"),
    "line: released, return stays released": ("ways back", "boxed_only_by_its_own_card"),
    "line: no row cancelled, revive": ("file", "answers"),
    "line: cancelled, revive stays cancelled": ("file", "answers"),
    "line: no row cancelled, revive unbound": ("file", "answers"),
    "line: cancelled, revive unbound stays cancelled": ("file", "answers"),
    "line: no row returned, send again": ("ways back", "answers"),
    "line: returned, send again stays returned": ("ways back", "answers"),
    "line: row packed, miss to short": ("walk", "out_of_the_box_only_by_its_card"),
    "line: row released, revive to waiting": ("holds", "answers"),
    "line: row cancelled, unbind to unbound": ("settle", "answers"),
    "stay: no row stored, release": ("reuse", "every_card_gets_a_verdict"),
    "stay: stored, release stays stored": ("reuse", "boxed_only_by_its_own_card"),
    "stay: no row stored, withdraw": ("stock", "answers"),
    "stay: stored, withdraw stays stored": ("stock", "free_cards_are_told_true"),
    "stay: no row stored, move": ("again", "answers"),
    "stay: stored, move stays stored": ("again", "free_cards_are_told_true"),
    "stay: no row shipped, reopen": ("reuse", "answers"),
    "stay: shipped, reopen stays shipped": ("reuse", "one_live_line_for_a_stay"),
    "stay: row shipped, withdraw to withdrawn": ("reuse", "boxed_only_by_its_own_card"),
    "stay: row shipped, move to moved": ("again", "boxed_only_by_its_own_card"),
    "stay: row moved, withdraw to withdrawn": ("again", "free_cards_are_told_true"),
    "card: no row tray, take": ("empty", "answers"),
    "card: tray, take stays tray": ("empty", "answers"),
    "card: no row tray, see in tray": ("stock", "every_card_gets_a_verdict"),
    "card: no row tray, reopen": ("reuse", "answers"),
    "card: tray, reopen stays tray": ("reuse", "free_cards_are_told_true"),
    "card: no row tray, lose": ("reuse", "answers"),
    "card: tray, lose stays tray": ("walk", "answers"),
    "card: no row hand, attach": ("empty", "answers"),
    "card: hand, attach stays hand": ("empty", "free_cards_are_told_true"),
    "card: no row on_item, release": ("reuse", "every_card_gets_a_verdict"),
    "card: on_item, release stays on_item": ("stock", "free_cards_are_told_true"),
    "card: no row on_item, see on item": ("straight", "every_card_gets_a_verdict"),
    "card: no row on_item, lose": ("reuse", "answers"),
    "card: on_item, lose stays on_item": ("reuse", "answers"),
    "card: no row due, take": ("stock", "answers"),
    "card: due, take stays due": ("stock", "answers"),
    "card: no row due, see in tray": ("stock", "every_card_gets_a_verdict"),
    "card: due, see in tray stays due": ("stock", "an_accepted_card_is_seen_there"),
    "card: no row due, reopen": ("reuse", "answers"),
    "card: due, reopen stays due": ("reuse", "free_cards_are_told_true"),
    "card: no row due, lose": ("reuse", "answers"),
    "card: due, lose stays due": ("reuse", "answers"),
    "card: no row lost, take": ("reuse", "answers"),
    "card: lost, take stays lost": ("reuse", "answers"),
    "card: no row lost, see in tray": ("reuse", "every_card_gets_a_verdict"),
    "card: lost, see in tray stays lost": ("reuse", "an_accepted_card_is_seen_there"),
    "card: no row lost, see on item": ("reuse", "every_card_gets_a_verdict"),
    "card: lost, see on item stays lost": ("reuse", "a_second_beep_changes_nothing"),
    "card: no row lost, release": ("reuse", "every_card_gets_a_verdict"),
    "card: no row lost, reopen": ("reuse", "answers"),
    "card: row lost, lose to lost": ("reuse", "answers"),
    "parcel: no row open, close": ("reuse", "every_card_gets_a_verdict"),
    "parcel: open, close stays open": ("reuse", "released_only_from_a_closing_parcel"),
    "parcel: no row open, set aside": ("parcels", "answers"),
    "parcel: open, set aside stays open": ("parcels", "answers"),
    "parcel: no row open, drop": ("parcels", "answers"),
    "parcel: open, drop stays open": ("parcels", "packed_things_lie_in_their_orders_parcel"),
    "parcel: no row aside, resume": ("parcels", "every_card_gets_a_verdict"),
    "parcel: aside, resume stays aside": ("parcels", "answers"),
    "parcel: no row closed, reopen": ("reuse", "answers"),
    "parcel: closed, reopen stays closed": ("reuse", "packed_things_lie_in_their_orders_parcel"),
    "parcel: no row closed, hand over": ("ways back", "answers"),
    "parcel: closed, hand over stays closed": ("ways back", "answers"),
    "parcel: row aside, close to closed": ("parcels", "answers"),
    "parcel: row closed, drop to dropped": ("parcels", "packed_things_lie_in_their_orders_parcel"),
    "parcel: row closed, close to closed": ("reuse", "answers"),
    "round: no row open, close": ("empty", "answers"),
    "round: open, close stays open": ("empty", "answers"),
    "round: row closed, close to closed": ("walk", "answers"),
    "every station: no unreadable": ("unread", "every_card_gets_a_verdict"),
    "every station: no many_codes": ("unread", "every_card_gets_a_verdict"),
    "every station: no bad_check": ("unread", "every_card_gets_a_verdict"),
    "every station: no unknown_code": ("unread", "every_card_gets_a_verdict"),
    "every station: no retired": ("walk", "answers"),
    "bin: no closed": ("walk", "a_second_beep_changes_nothing"),
    "bin: no slot_free": ("walk", "answers"),
    "bin: no not_ordered": ("walk", "answers"),
    "bin: no cancelled": ("doubts", "answers"),
    "bin: no held": ("doubts", "every_card_gets_a_verdict"),
    "bin: no not_on_round": ("walk", "only_the_right_station_moves_on"),
    "bin: no already_picked": ("walk", "answers"),
    "bin: no already_packed": ("undo", "answers"),
    "bin: slot_free before closed": ("walk", "answers"),
    "bin: not_ordered before slot_free": ("walk", "answers"),
    "bin: not_on_round before held": ("doubts", "answers"),
    "bin: already_picked before not_on_round": ("walk", "answers"),
    "table: no no_parcel": ("reuse", "boxed_only_by_its_own_card"),
    "table: no already_released": ("parcels", "answers"),
    "table: no slot_free": ("undo", "answers"),
    "table: no not_ordered": ("undo", "answers"),
    "table: no cancelled": ("parcels", "answers"),
    "table: no other_order": ("reuse", "boxed_only_by_its_own_card"),
    "table: no held": ("parcels", "answers"),
    "table: no already_packed": ("reuse", "answers"),
    "table: no not_picked": ("aside", "only_the_right_station_moves_on"),
    "table: already_released before no_parcel": ("reuse", "answers"),
    "table: slot_free before already_released": ("parcels", "answers"),
    "table: not_ordered before slot_free": ("undo", "answers"),
    "table: held before other_order": ("parcels", "answers"),
    "table: already_packed before held": ("parcels", "answers"),
    "tray: no not_released": ("stock", "an_accepted_card_is_seen_there"),
    "shelf: no slot_free": ("aside", "every_card_gets_a_verdict"),
    "shelf: no wrong_bin": ("aside", "an_accepted_card_is_seen_there"),
    "shelf: wrong_bin before slot_free": ("aside", "answers"),
    "every station: retired at the tray too": ("reuse", "answers"),
    "every station: retired though its thing is there": ("reuse", "answers"),
    "bin: closed also when late": ("walk", "answers"),
    "bin: never closed when late": ("walk", "answers"),
    "bin: late from another round": ("walk", "answers"),
    "bin: late though not waiting": ("walk", "answers"),
    "bin: any round will do": ("walk", "only_the_right_station_moves_on"),
    "table: released though its slot is taken again": ("table", "answers"),
    "table: released though its card is back": ("table", "answers"),
    "table: not ordered when cancelled": ("parcels", "answers"),
    "table: another order's only when picked": ("parcels", "answers"),
    "table: another order's may be taken out": ("beeps", "answers"),
    "table: held only when cancelled in the box": ("second reason", "answers"),
    "table: held also when taken out": ("table", "answers"),
    "table: held also at its own parcel": ("parcels", "answers"),
    "table: packed also when it was read elsewhere": ("parcels", "answers"),
    "table: not picked though it lies in a basket": ("holds", "answers"),
    "tray: packed things are refused at the tray": ("reuse", "answers"),
    "table: packed also when taken out": ("beeps", "answers"),
    "table: straight from waiting": ("aside", "only_the_right_station_moves_on"),
    "table: never straight from short": ("straight", "answers"),
    "table: picked may be taken out": ("beeps", "boxed_only_by_its_own_card"),
    "table: never straight from waiting": ("straight", "answers"),
    "tray: in the tray though in stock": ("stock", "an_accepted_card_is_seen_there"),
    "shelf: right bin for live lines only": ("holds", "an_accepted_card_is_seen_there"),
    "CLOSING without card release": ("reuse", "free_cards_are_told_true"),
    "CLOSING without line close": ("reuse", "one_live_line_for_a_stay"),
    "CLOSING without stay release": ("reuse", "boxed_only_by_its_own_card"),
    "REOPENING without card reopen": ("reuse", "free_cards_are_told_true"),
    "REOPENING without line reopen": ("reuse", "boxed_only_by_its_own_card"),
    "REOPENING without stay reopen": ("reuse", "one_live_line_for_a_stay"),
    "BACK without waiting from picked": ("undo", "answers"),
    "BACK without short from picked": ("unfound", "answers"),
    "BACK without picked from packed": ("undo", "answers"),
    "BACK without waiting from packed": ("straight", "answers"),
    "BACK without short from packed": ("straight", "answers"),
    "no reading holds what is packed": ("walk", "what_is_packed_and_read_elsewhere_is_held"),
    "another table says nothing of what is packed": ("parcels", "what_is_packed_and_read_elsewhere_is_held"),
    "a shelf says nothing of what is packed": ("aside", "what_is_packed_and_read_elsewhere_is_held"),
    "the tray says that what is packed is not": ("walk", "answers"),
    "a shelf says nothing of a closed parcel": ("aside", "what_is_packed_and_read_elsewhere_is_held"),
    "a card in the tray is not back at closing": ("reuse", "answers"),
    "a number goes out wherever its card was read": ("given out", "no_number_is_handed_out_whose_card_is_away"),
    "a chosen number goes out wherever its card was read": ("given out", "no_number_is_handed_out_whose_card_is_away"),
    "doubts are forgotten when a line is bound": ("sold again", "doubted_things_hold_their_lines"),
    "doubts hold no line": ("doubts", "doubted_things_hold_their_lines"),
    "a press settles any hold": ("holds", "what_is_packed_and_read_elsewhere_is_held"),
    "a second reason is dropped": ("parcels", "what_is_packed_and_read_elsewhere_is_held"),
    "a repeat is told by its card alone": ("beeps", "the_answer_tells_the_truth"),
    "a scan after a take-out packs at once": ("beeps", "answers"),
    "a scan at its own parcel ends every hold": ("walk", "doubted_things_hold_their_lines"),
    "a reopened parcel is not looked into": ("closed too early", "what_is_packed_and_read_elsewhere_is_held"),
    "a scan that finds a thing settles every doubt": ("in doubt", "doubts_end_on_purpose"),
}
"""Fault → the room that catches it, and how."""

SECOND_LOCK = (
    "No step asks for this row: a guard or a check of the workflow answers first. The table is the second lock."
)
HELD_BEFORE = "The guard `held`, or the check of what lies in a closing parcel, answers first; this is the second lock."
NOTHING_LEFT = "Nothing of a dropped parcel is with a buyer, so reopening it is refused for that."
EARLIER = "An earlier guard has answered for every look in which this one says too much."
NEVER_BOTH = "The two guards never fit the same look, so their order can't show."

HARMLESS = {
    "line: row unbound, pick to picked": SECOND_LOCK,
    "line: row waiting, pack to packed": SECOND_LOCK,
    "line: row waiting, close to released": SECOND_LOCK,
    "line: row picked, close to released": SECOND_LOCK,
    "line: row picked, pick to picked": SECOND_LOCK,
    "line: row packed, pack to packed": SECOND_LOCK,
    "line: row packed, cancel to cancelled": SECOND_LOCK,
    "line: row packed, put back to waiting": SECOND_LOCK,
    "line: row short, pick to picked": SECOND_LOCK,
    "line: row released, cancel to cancelled": SECOND_LOCK,
    "line: row cancelled, pick to picked": SECOND_LOCK,
    "stay: row withdrawn, reopen to stored": SECOND_LOCK,
    "card: row on_item, take to hand": SECOND_LOCK,
    "card: row on_item, see in tray to tray": SECOND_LOCK,
    "card: row due, see on item to on_item": SECOND_LOCK,
    "card: row due, release to due": SECOND_LOCK,
    "card: row tray, see on item to on_item": SECOND_LOCK,
    "parcel: row dropped, reopen to open": NOTHING_LEFT,
    "every station: many_codes before unreadable": NEVER_BOTH,
    "every station: bad_check before many_codes": NEVER_BOTH,
    "every station: unknown_code before bad_check": NEVER_BOTH,
    "every station: retired before unknown_code": NEVER_BOTH,
    "bin: cancelled before not_ordered": NEVER_BOTH,
    "bin: held before cancelled": NEVER_BOTH,
    "bin: already_packed before already_picked": NEVER_BOTH,
    "table: cancelled before not_ordered": NEVER_BOTH,
    "table: other_order before cancelled": NEVER_BOTH,
    "table: not_picked before already_packed": NEVER_BOTH,
    "table: cancelled though gone": EARLIER,
    "FORWARD without close": HELD_BEFORE,
    "FORWARD without pack": HELD_BEFORE,
    "FORWARD without pick": HELD_BEFORE,
}
"""Fault → why it can't matter."""


def test_every_fault_has_its_place():
    """No fault is without an entry, and none has two."""
    assert sorted(ALL_MUTANTS) == sorted([*CAUGHT, *HARMLESS])


@pytest.mark.parametrize(("room", "fault"), [(room, fault) for fault, (room, _) in CAUGHT.items()])
def test_a_fault_is_caught(room, fault):
    """Exploring the room notices the fault in the way that is told."""
    assert CAUGHT[fault][1] == caught(fault, room)


@pytest.mark.long
@pytest.mark.parametrize("fault", HARMLESS)
def test_a_harmless_fault_shows_nowhere(fault):
    """What is said not to matter is noticed in no room."""
    assert None is how(fault)


@pytest.mark.parametrize("room", ROOMS)
def test_nothing_asks_for_a_harmless_row(room):
    """A row said to be out of reach is looked for by no step of the room."""
    unreachable = [fault for fault, why in HARMLESS.items() if why == SECOND_LOCK]
    assert [] == [fault for fault in unreachable if ALL_MUTANTS[fault].row in base(room).asked]


def test_a_dropped_parcel_has_nothing_to_reopen(monkeypatch):
    """Even if the table let a dropped parcel be reopened, the workflow refuses: nothing of it has left."""
    ALL_MUTANTS["parcel: row dropped, reopen to open"].patch(monkeypatch)
    unit = room()()
    parcel = parcels.set_aside(unit, parcels.open_parcel(unit, parcels.OpenParcel(orders=list(unit.all(Order))[:1])).id)
    with pytest.raises(Refused) as refusal:
        parcels.reopen(unit, parcel.id)
    assert "not_allowed" == refusal.value.code
