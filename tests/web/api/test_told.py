"""What the service was told it never acts against: readings elsewhere, doubts, misses and second reasons."""

from __future__ import annotations

from datetime import UTC, datetime, timedelta
from typing import Any

import pytest
from calls import Calls, photo
from room_in_memory import LATER

from labels.slot_code import card_text
from scanflow.shop import Shop

HELD = "misplaced"


def half_packed(calls: Calls, table: str = "main") -> tuple[list[Any], Any, Any]:
    """Two things picked for one order, the first of them packed; their stays, the order, the open parcel."""
    calls.section()
    stays, order = calls.picked(things=2)
    parcel = calls.post("/api/parcels", 201, orders=[order["id"]], table=table)
    assert "packed" == calls.scan("table", stays[0]["code"], table=table)["line_state"]
    return stays, order, parcel


def line(calls: Calls, order: Any, place: int = 0) -> Any:
    return calls.get(f"/api/orders/{order['id']}")["lines"][place]


def holds(calls: Calls, order: Any, place: int = 0) -> list[str]:
    return [each["hold"] for each in line(calls, order, place)["holds"]]


def count_of(calls: Calls, area: str = "room") -> str:
    return f"/api/stocktakes/{calls.post('/api/stocktakes', 201, area=area)['id']}"


def look(calls: Calls, count: str, place: str, *codes: str, **more: Any) -> Any:
    texts = [card_text(code) for code in codes]
    return calls.post(f"{count}/looks", key=f"look-{place}-{len(codes)}", place=place, texts=texts, **more)


def at_a_shelf(calls: Calls, stay: Any) -> None:
    calls.scan("shelf", stay["code"], bin="A-1-2")


def at_its_own_shelf(calls: Calls, stay: Any) -> None:
    calls.scan("shelf", stay["code"], bin=stay["bin"])


def on_a_round(calls: Calls, stay: Any) -> None:
    other = calls.put_away("Brass bell")
    calls.order("other", other)
    round_ = calls.post("/api/rounds", 201)
    calls.scan("bin", stay["code"], round=round_["id"])


def at_another_table(calls: Calls, stay: Any) -> None:
    calls.scan("table", stay["code"], table="side")


def beside_another_parcel(calls: Calls, stay: Any) -> None:
    _, other = calls.ordered("other")
    calls.post("/api/parcels", 201, orders=[other["id"]], table="side")
    assert "other_order" == calls.scan("table", stay["code"], table="side")["reason"]


def in_a_count(calls: Calls, stay: Any) -> None:
    look(calls, count_of(calls), "A-1-2", stay["code"])


def in_a_closed_count(calls: Calls, stay: Any) -> None:
    count = count_of(calls)
    look(calls, count, "A-1-2", stay["code"])
    calls.post(f"{count}/close")


@pytest.mark.parametrize(
    "read",
    [
        *(at_a_shelf, at_its_own_shelf, on_a_round, at_another_table),
        *(beside_another_parcel, in_a_count, in_a_closed_count),
    ],
)
def test_no_parcel_closes_over_a_thing_whose_card_was_read_elsewhere(calls: Calls, read: Any) -> None:
    """The packed line is held, packing the rest closes nothing, and the call to close says where it was read."""
    calls.section("E", 3, 1)
    (first, second), order, parcel = half_packed(calls)
    read(calls, first)
    assert [HELD] == holds(calls, order)
    answer = calls.scan("table", second["code"])
    assert ("packed", "open", []) == (answer["line_state"], answer["parcel_state"], answer["released"])
    problem = calls.post(f"/api/parcels/{parcel['id']}/close", 409)
    assert ("still_in_box", True) == (problem["code"], "its card was read" in problem["detail"])


def test_a_parcel_set_aside_is_not_closed_over_it_either(calls: Calls) -> None:
    """The card is read at the table once its parcel has left it: then the thing may have stayed there too."""
    (first, second), order, parcel = half_packed(calls)
    calls.post(f"/api/parcels/{parcel['id']}/set-aside")
    calls.scan("table", first["code"])
    assert [HELD] == holds(calls, order)
    calls.post("/api/parcels", 201, orders=[order["id"]])
    assert "open" == calls.scan("table", second["code"])["parcel_state"]


def test_a_scan_at_its_own_parcel_ends_it(calls: Calls) -> None:
    """Accepted, the line stays packed, and the parcel closes if nothing else is missing."""
    (first, second), _, _ = half_packed(calls)
    at_a_shelf(calls, first)
    calls.scan("table", second["code"])
    answer = calls.scan("table", first["code"])
    assert ("accepted", None, True) == (answer["verdict"], answer["reason"], answer["changed"])
    assert ("released", "closed") == (answer["line_state"], answer["parcel_state"])
    assert {first["code"], second["code"]} == set(answer["released"])


def test_what_else_holds_it_stays(calls: Calls) -> None:
    """A scan at its own parcel ends that hold alone; one left keeps the parcel open."""
    (first, second), order, _ = half_packed(calls)
    calls.post(f"/api/lines/{line(calls, order)['id']}/hold", why="Another colour")
    at_a_shelf(calls, first)
    assert ["suspect", HELD] == holds(calls, order)
    assert "accepted" == calls.scan("table", first["code"])["verdict"]
    assert ["suspect"] == holds(calls, order)
    assert "open" == calls.scan("table", second["code"])["parcel_state"]


def test_a_word_does_not_end_it(calls: Calls) -> None:
    """Nobody settles by pressing that a thing lies in an open parcel."""
    (first, _), order, _ = half_packed(calls)
    at_a_shelf(calls, first)
    settle = f"/api/lines/{line(calls, order)['id']}/settle"
    assert "still_in_box" == calls.post(settle, 409)["code"]
    assert "still_in_box" == calls.post(settle, 409, hold=HELD)["code"]


def test_taking_it_out_ends_it(calls: Calls) -> None:
    """The thing is in a hand then, and waits to be packed."""
    (first, _), order, _ = half_packed(calls)
    at_a_shelf(calls, first)
    assert "picked" == calls.scan("table", first["code"], take_out=True)["line_state"]
    assert [] == holds(calls, order)


def test_its_own_table_many_codes_and_what_was_read_before_hold_nothing(calls: Calls) -> None:
    """Neither a scan beside its own open parcel, nor two cards in view, nor a reading older than the packing."""
    (first, second), order, _ = half_packed(calls)
    assert "slot_free" == calls.scan("table", "D006")["reason"]
    assert "already_packed" == calls.scan("table", first["code"])["reason"]
    image = photo(first["code"], second["code"])
    read = calls.upload("/api/scans", station="shelf", key="two", bin="A-1-2", image=image)
    assert "many_codes" == read["reason"]
    calls.scan("shelf", first["code"], bin="A-1-2", at=LATER, age_ms=3_600_000)
    assert [] == holds(calls, order)


def test_the_age_of_a_reading_is_no_part_of_its_key(calls: Calls) -> None:
    """Sent again later it has waited longer, and gets the same answer."""
    (first, _), _, _ = half_packed(calls)
    scan = {"key": "waited", "bin": "A-1-2", "at": LATER}
    once = calls.scan("shelf", first["code"], **scan, age_ms=5000)
    again = calls.scan("shelf", first["code"], **scan, age_ms=65000)
    assert (once | {"replayed": True}) == again


def test_a_card_taken_off_before_closing_is_noted_and_back_at_closing(calls: Calls) -> None:
    """The tray accepts it, changes nothing, and no card of that thing is due when the parcel closes."""
    (first, second), order, _ = half_packed(calls)
    answer = calls.scan("tray", first["code"])
    assert ("accepted", False, order["number"]) == (answer["verdict"], answer["changed"], answer["order_number"])
    assert f"counts as packed for {order['number']}" in answer["advice"]
    assert [] == holds(calls, order)
    closed = calls.scan("table", second["code"])
    assert ("closed", [second["code"]]) == (closed["parcel_state"], closed["released"])
    assert "free" == {each["code"]: each["state"] for each in calls.get("/api/slots")["slots"]}[first["code"]]


@pytest.mark.parametrize("read", [at_a_shelf, on_a_round, in_a_count])
def test_a_closed_parcel_is_held_until_somebody_looked(calls: Calls, read: Any) -> None:
    """Its card is read where only a thing in stock would be; “it is in the box” ends it."""
    calls.section("E", 3, 1)
    calls.section()
    (first, _), order, _ = calls.packed(things=2)
    read(calls, first)
    assert [HELD] == holds(calls, order)
    assert "held" == calls.get(f"/api/orders/{order['id']}")["state"]
    calls.post(f"/api/lines/{line(calls, order)['id']}/settle", hold=HELD)
    assert [] == holds(calls, order)


def test_a_closed_parcel_is_opened_and_scanned(calls: Calls) -> None:
    """The hold is still there when it is open again, and a scan of the card ends it."""
    calls.section()
    (first, _), order, parcel = calls.packed(things=2)
    at_a_shelf(calls, first)
    calls.post(f"/api/parcels/{parcel['id']}/reopen")
    assert ("packed", [HELD]) == (line(calls, order)["state"], holds(calls, order))
    assert "closed" == calls.scan("table", first["code"])["parcel_state"]


def test_tables_and_the_tray_say_nothing_of_a_closed_parcel(calls: Calls) -> None:
    """There its cards are read honestly."""
    calls.section()
    (first, second), order, _ = calls.packed(things=2)
    calls.scan("table", first["code"], table="side")
    calls.scan("tray", second["code"])
    assert [[], []] == [holds(calls, order, place) for place in (0, 1)]


def test_a_parcel_that_is_opened_again_wants_the_cards_that_were_read_elsewhere(calls: Calls) -> None:
    """A card that lay about while its parcel was closed may have had its thing with it: it is read at the box before
    that closes again. One that went into the tray says nothing.
    """
    calls.section()
    (first, second), order, parcel = calls.packed(things=2)
    calls.scan("table", first["code"], table="side")
    calls.scan("tray", second["code"])
    calls.post(f"/api/parcels/{parcel['id']}/reopen")
    assert [[HELD], []] == [holds(calls, order, place) for place in (0, 1)]
    refused = calls.post(f"/api/parcels/{parcel['id']}/close", status=409)
    assert "still_in_box" == refused["code"]
    assert "closed" == calls.scan("table", first["code"])["parcel_state"]


def test_a_card_that_was_in_the_tray_is_not_back_once_its_parcel_was_opened_again(calls: Calls) -> None:
    """Its thing has it again. Read on a shelf after the next closing, it holds the parcel; its number is not free."""
    calls.section("E", 3, 1)
    calls.section()
    (first, second), order, parcel = calls.packed(things=2)
    calls.scan("tray", first["code"])
    calls.post(f"/api/parcels/{parcel['id']}/reopen")
    calls.post(f"/api/parcels/{parcel['id']}/close")
    states = {each["code"]: each["state"] for each in calls.get("/api/slots")["slots"]}
    assert ("due", "due") == (states[first["code"]], states[second["code"]])
    at_a_shelf(calls, first)
    assert [HELD] == holds(calls, order)


def test_a_parcel_that_left_is_not_held(shop: Shop, calls: Calls) -> None:
    """Where hand-overs are not recorded a closed parcel is gone after some days; its card is a card then, no more."""
    calls.section()
    (first,), order, _ = calls.packed()
    shop.clock = lambda: datetime.now(UTC) + timedelta(days=4)
    at_a_shelf(calls, first)
    assert [] == holds(calls, order)


def test_a_take_out_and_a_double_beep_pack_nothing(shop: Shop, calls: Calls) -> None:
    """For five seconds the second beep is one, whatever the page has reset; after that a scan packs again."""
    (first, _), _, _ = half_packed(calls)
    out = calls.scan("table", first["code"], take_out=True)
    for _ in range(2):
        again = calls.scan("table", first["code"])
        assert ("picked", False, out["advice"]) == (again["line_state"], again["changed"], again["advice"])
    shop.clock = lambda: datetime.now(UTC) + timedelta(seconds=6)
    answer = calls.scan("table", first["code"])
    assert ("packed", True) == (answer["line_state"], answer["changed"])


def test_taking_out_after_packing_is_never_a_repeat(calls: Calls) -> None:
    """The card that was just packed is taken out at once."""
    (first, _), _, _ = half_packed(calls)
    answer = calls.scan("table", first["code"], take_out=True)
    assert ("picked", True) == (answer["line_state"], answer["changed"])


def test_a_repeat_is_none_once_its_card_was_read_elsewhere(calls: Calls) -> None:
    """The thing counts as packed, its card was on a shelf meanwhile: the scan at its parcel says that it is here."""
    (first, _), order, _ = half_packed(calls)
    assert calls.scan("table", first["code"])["changed"] is False
    at_a_shelf(calls, first)
    answer = calls.scan("table", first["code"])
    assert ("accepted", True, []) == (answer["verdict"], answer["changed"], holds(calls, order))


@pytest.mark.parametrize("way", ["revive", "next order", "settle on", "move", "exchange"])
def test_a_doubt_stays_with_its_thing(calls: Calls, way: str) -> None:
    """“Not this thing” holds whatever wants the thing next, until it is settled with its card in view."""
    calls.section()
    (stay,), order = calls.ordered()
    first = order["lines"][0]["id"]
    calls.post(f"/api/lines/{first}/hold", why="It is a left crank")
    if way in ("move", "exchange"):
        other = calls.put_away("Lamp")
        calls.post(f"/api/orders/{order['id']}/cancel")
        told = {"to": "D006"} if way == "move" else {"with": other["id"]}
        stay = calls.post(f"/api/stays/{stay['id']}/{way}", **told)
    else:
        calls.post(f"/api/orders/{order['id']}/cancel")
    if way == "revive":
        after = calls.post(f"/api/lines/{first}/revive")
    elif way == "settle on":
        unbound = calls.post("/api/orders", 201, number="2", lines=[{"reference": "crank"}])["lines"][0]
        after = calls.post(f"/api/lines/{unbound['id']}/settle", stay=stay["id"])
    else:
        after = calls.order("2", stay)["lines"][0]
    assert ("waiting", "suspect", "It is a left crank") == (after["state"], after["hold"], after["why"])
    assert "doubted" == calls.post(f"/api/lines/{after['id']}/settle", 409)["code"]


def test_a_line_that_was_held_is_held_when_it_is_wanted_after_all(calls: Calls) -> None:
    """Whatever it was held for: cancelling it answers no question."""
    calls.section()
    stay = calls.put_away("Saddle")
    lines = [{"reference": stay["code"], "listing": "L-9"}]
    calls.client.patch(f"/api/stays/{stay['id']}", json={"listing": "L-1"})
    held = calls.post("/api/orders", 201, number="1", lines=lines)["lines"][0]
    assert "doubtful" == held["hold"]
    order = calls.get("/api/orders")["orders"][0]
    assert "cancelled" == calls.post(f"/api/orders/{order['id']}/cancel")["state"]
    assert "doubtful" == calls.post(f"/api/lines/{held['id']}/revive")["hold"]


def test_a_missing_thing_holds_the_next_order(calls: Calls) -> None:
    """It was short and cancelled: whoever orders it next waits until it was seen."""
    calls.section()
    (stay,), order = calls.ordered()
    calls.post(f"/api/lines/{order['lines'][0]['id']}/short", note="Not in its bin")
    calls.post(f"/api/orders/{order['id']}/cancel")
    second = calls.order("2", stay)
    assert "suspect" == second["lines"][0]["hold"]
    calls.scan("shelf", stay["code"], bin=stay["bin"])
    assert [] == holds(calls, second)


@pytest.mark.parametrize("how", ["lost", "ignore", None])
def test_a_thing_that_a_count_missed_holds_the_next_order(calls: Calls, how: str | None) -> None:
    """Whether somebody said that its card is lost, looked away, or just ended the count."""
    calls.section()
    stay = calls.put_away()
    count = count_of(calls, f"bin:{stay['bin']}")
    look(calls, count, stay["bin"])
    if how is not None:
        calls.post(f"{count}/findings/missing-{stay['code']}/resolve", how=how, reason="Nobody knows")
    calls.post(f"{count}/close")
    assert "suspect" == calls.order("1", stay)["lines"][0]["hold"]


@pytest.mark.parametrize(("station", "after"), [("shelf", "waiting"), ("bin", "picked"), ("table", "released")])
def test_only_an_accepted_scan_finds_a_short_thing(calls: Calls, station: str, after: str) -> None:
    """At the shelf its line waits again; at the bin or the table the same scan picks, and packs."""
    calls.section()
    (stay,), order = calls.ordered()
    round_ = calls.post("/api/rounds", 201)
    calls.post(f"/api/lines/{order['lines'][0]['id']}/short")
    spot = {"shelf": {"bin": stay["bin"]}, "bin": {"round": round_["id"]}, "table": {}}[station]
    if station == "table":
        calls.post("/api/parcels", 201, orders=[order["id"]])
    assert after == calls.scan(station, stay["code"], **spot)["line_state"]


def test_a_refused_reading_of_a_short_thing_says_who_misses_it(calls: Calls) -> None:
    """It changes no line, says which order wants it, and the thing is a duty where it was read."""
    calls.section()
    (stay,), order = calls.ordered()
    calls.post(f"/api/lines/{order['lines'][0]['id']}/short")
    answer = calls.scan("shelf", stay["code"], bin="A-1-2")
    assert ("refused", "short", True) == (
        answer["verdict"],
        answer["line_state"],
        f"Order {order['number']} still needs it" in answer["advice"],
    )


def shelf_scan(calls: Calls) -> None:
    calls.scan("shelf", "D001", bin="A-1-1")


def table_scan(calls: Calls) -> None:
    calls.scan("table", "D001")


def round_scan(calls: Calls) -> None:
    stay = calls.post("/api/stays", 201, title="Bell", code="D004")
    calls.order("other", stay)
    calls.scan("bin", "D001", round=calls.post("/api/rounds", 201)["id"])


def counted_on_a_shelf(calls: Calls) -> None:
    look(calls, count_of(calls), "A-1-1", "D001")


def counted_and_closed(calls: Calls) -> None:
    count = count_of(calls)
    look(calls, count, "A-1-1", "D001")
    calls.post(f"{count}/findings/slot_free-D001/resolve", how="ignore", reason="Later")
    calls.post(f"{count}/close")


def missed_in_the_tray(calls: Calls) -> None:
    look(calls, count_of(calls, "tray"), "tray", "D002", "D003", "D004", "D005", "D006")


@pytest.mark.parametrize(
    "read", [shelf_scan, table_scan, round_scan, counted_on_a_shelf, counted_and_closed, missed_in_the_tray]
)
def test_a_number_goes_out_only_if_its_card_was_in_the_tray_last(calls: Calls, read: Any) -> None:
    """Neither by section nor by code, until its card is read in the tray; the card in hand always may."""
    calls.section()
    read(calls)
    assert "card_due" == calls.post("/api/stays", 409, title="Saddle", code="D001")["code"]
    assert "D002" == calls.put_away()["code"]
    calls.scan("tray", "D001")
    assert "D001" == calls.put_away()["code"]


def test_a_thing_sold_again_before_it_was_put_back_is_packed_from_its_basket(calls: Calls) -> None:
    """It was picked, cancelled and sold again: the table takes it by its scan, without a walk to an empty bin."""
    calls.section()
    (stay,), order = calls.picked()
    calls.post(f"/api/orders/{order['id']}/cancel")
    second = calls.order("2", stay)
    assert ("waiting", None) == (second["lines"][0]["state"], second["lines"][0]["hold"])
    calls.post("/api/parcels", 201, orders=[second["id"]])
    assert "released" == calls.scan("table", stay["code"])["line_state"]


def test_a_second_reason_is_kept(calls: Calls) -> None:
    """A packed line that a later file lacks, and whose card is read on its shelf: settling the one leaves the other."""
    (first, second), order, _ = half_packed(calls)
    lines = [{"reference": second["reference"], "title": second["title"]}]
    calls.post("/api/orders", number=order["number"], lines=lines)
    at_its_own_shelf(calls, first)
    assert [HELD, "not_in_file"] == holds(calls, order)
    calls.post(f"/api/lines/{line(calls, order)['id']}/settle", hold="not_in_file")
    assert [HELD] == holds(calls, order)
    answer = calls.scan("table", second["code"])
    assert ("open", []) == (answer["parcel_state"], answer["released"])


def test_a_hold_that_a_line_does_not_have_is_not_settled(calls: Calls) -> None:
    """The call says so, and what holds the line stays."""
    (first, _), order, _ = half_packed(calls)
    at_a_shelf(calls, first)
    settle = f"/api/lines/{line(calls, order)['id']}/settle"
    assert "not_held" == calls.post(settle, 409, hold="doubtful")["code"]
    assert [HELD] == holds(calls, order)


def test_a_scan_older_than_another_reading_packs_nothing(shop: Shop, calls: Calls) -> None:
    """It waited while the card was read on a shelf: it says where the card was, and asks for another scan."""
    (first, second), order, _ = half_packed(calls)
    calls.scan("shelf", second["code"], bin="A-1-2")
    late = calls.scan("table", second["code"], at=LATER, age_ms=30_000)
    assert ("refused", "picked", True) == (late["verdict"], late["line_state"], "Scan it again." in late["advice"])
    at_a_shelf(calls, first)
    assert "refused" == calls.scan("table", first["code"], at=LATER, age_ms=30_000)["verdict"]
    assert [HELD] == holds(calls, order)


def test_a_scan_older_than_the_miss_finds_nothing(calls: Calls) -> None:
    """The thing was there before it was missed; that says nothing of now."""
    calls.section()
    (stay,), order = calls.ordered()
    calls.post(f"/api/lines/{order['lines'][0]['id']}/short")
    late = calls.scan("shelf", stay["code"], bin=stay["bin"], at=LATER, age_ms=300_000)
    assert ("refused", "short") == (late["verdict"], late["line_state"])
    assert 1 == len(calls.get(f"/api/stays/{stay['id']}/doubts")["doubts"])


def test_a_tray_scan_older_than_the_end_of_a_stay_frees_no_number(calls: Calls) -> None:
    """The card was in the tray before its thing came, not after it left."""
    calls.section()
    stay = calls.put_away()
    calls.post(f"/api/stays/{stay['id']}/withdraw", reason="Bent")
    assert "refused" == calls.scan("tray", stay["code"], at=LATER, age_ms=3_600_000)["verdict"]
    assert "D002" == calls.put_away()["code"]


def test_a_look_taken_out_forgets_no_other_counts_misses(calls: Calls) -> None:
    """What another count looked for in the tray and missed is not handed out."""
    calls.section()
    first = count_of(calls, "tray")
    look(calls, first, "tray", "D002", "D003", "D004", "D005", "D006")
    calls.post(f"{first}/close")
    second = count_of(calls, "tray")
    key = look(calls, second, "tray", "D002")["key"]
    calls.post(f"{second}/looks/{key}/drop")
    assert "D002" == calls.put_away()["code"]


def test_no_word_alone_says_that_a_card_is_in_the_tray(calls: Calls) -> None:
    """A card that a count missed there is put right by its text, read as it is laid into the tray."""
    calls.section()
    count = count_of(calls, "tray")
    look(calls, count, "tray", "D002", "D003", "D004", "D005", "D006")
    resolve = f"{count}/findings/missing-D001/resolve"
    assert "required" == calls.post(resolve, 422, how="found_later")["code"]
    calls.post(resolve, how="found_later", text=card_text("D001"))
    assert "D001" == calls.put_away()["code"]


@pytest.mark.parametrize(
    ("again", "hold"), [([1], "not_in_file"), ([0, 1], "changed_after_pick")], ids=["absent", "changed"]
)
def test_a_closed_parcel_is_held_by_a_later_file(calls: Calls, again: list[int], hold: str) -> None:
    """Until it has left it is held, when the order comes again without a thing or with other words for it."""
    calls.section()
    stays, order, _ = calls.packed(things=2)
    lines = [{"reference": stays[n]["reference"], "title": stays[n]["title"] + (" red" * (1 - n))} for n in again]
    calls.post("/api/orders", number=order["number"], lines=lines)
    assert [[hold], []] == [holds(calls, order, place) for place in (0, 1)]


def test_not_this_thing_of_a_closed_parcel_while_the_next_is_open(calls: Calls) -> None:
    """It can't be opened at its table then: it is held closed, and the doubt is kept until its card is read."""
    calls.section()
    (first,), order, _ = calls.packed()
    _, other = calls.ordered("2")
    calls.post("/api/parcels", 201, orders=[other["id"]])
    calls.post(f"/api/lines/{order['lines'][0]['id']}/hold", why="It is a left crank")
    assert ("released", ["suspect"]) == (line(calls, order)["state"], holds(calls, order))
    (doubt,) = calls.get(f"/api/stays/{first['id']}/doubts")["doubts"]
    calls.post(f"/api/doubts/{doubt['id']}/settle", how="seen", text=card_text(first["code"]))
    assert [] == holds(calls, order)


def test_two_counts_that_miss_a_thing_are_two_doubts(calls: Calls) -> None:
    """Taking back what was said of the one leaves the other."""
    calls.section()
    stay = calls.put_away()
    first = count_of(calls, f"bin:{stay['bin']}")
    look(calls, first, stay["bin"])
    finding = f"{first}/findings/missing-{stay['code']}"
    calls.post(f"{finding}/resolve", how="ignore", reason="Nobody knows")
    second = count_of(calls, f"bin:{stay['bin']}")
    calls.post(f"{second}/looks", key="other", place=stay["bin"], texts=[])
    calls.post(f"{second}/close")
    calls.post(f"{finding}/undo")
    assert "suspect" == calls.order("1", stay)["lines"][0]["hold"]
