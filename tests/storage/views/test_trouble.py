"""What went wrong, read from what the shop's own calls recorded."""

from __future__ import annotations

from datetime import UTC, datetime, timedelta

import pytest
from calls import Calls

from labels.slot_code import card_text
from scanflow.planning.trouble import Trouble
from scanflow.shop import Shop
from scanflow.storage.views import trouble as trouble_views


def past(shop: Shop, after: datetime) -> trouble_views.Past:
    with shop.looking() as unit:
        return trouble_views.past(unit.connection, after)


def told(shop: Shop) -> list[Trouble]:
    return past(shop, datetime.now(UTC) - timedelta(days=1)).troubles


def walk(calls: Calls) -> tuple[str, str, str]:
    """A round with one stop; its id, the card it wants and one that nobody ordered."""
    calls.section("D", 6)
    stays, order = calls.ordered()
    other = calls.put_away("Bell")
    return calls.post("/api/rounds", 201, orders=[order["id"]])["id"], stays[0]["code"], other["code"]


def test_nothing_yet(shop: Shop) -> None:
    """A new shop has no trouble and no scans."""
    after = datetime.now(UTC) - timedelta(days=90)
    assert (after, [], []) == past(shop, after)


def test_the_wrong_card_before_the_right_one(shop: Shop, calls: Calls) -> None:
    """A card refused at the bin is told with its bin, and with the card that the same round took next."""
    round_, right, wrong = walk(calls)
    calls.scan("bin", wrong, round=round_)
    calls.scan("bin", right, round=round_)
    (trouble,) = told(shop)
    assert ("not_ordered", "bin", "", "D") == (trouble.kind, trouble.station, trouble.table, trouble.section)
    assert (wrong, "A-1-1", right, "A-1-1") == (trouble.code, trouble.bin, trouble.right, trouble.right_bin)


def test_a_wrong_card_and_nothing_after(shop: Shop, calls: Calls) -> None:
    """Where no card was taken afterwards, or on another round only, none is named."""
    round_, right, wrong = walk(calls)
    calls.scan("bin", wrong, round=round_)
    calls.post(f"/api/rounds/{round_}/close")
    other = calls.post("/api/rounds", 201)["id"]
    calls.scan("bin", right, round=other)
    assert [("not_ordered", wrong, "", "")] == [(x.kind, x.code, x.right, x.right_bin) for x in told(shop)]


@pytest.mark.parametrize(
    ("text", "kind", "section"),
    [("d0019", "bad_check", "D"), ("D0019", "bad_check", "D"), ("Q0019", "bad_check", ""), ("9", "unknown_code", "")],
)
def test_mistyped_texts(shop: Shop, calls: Calls, text: str, kind: str, section: str) -> None:
    """A typed text that no card bears counts for the section of its letters, if the shop has it."""
    calls.section("D", 6)
    calls.post("/api/scans", station="tray", key="k1", text=text, via="typed")
    (trouble,) = told(shop)
    assert (kind, section, "typed", "") == (trouble.kind, trouble.section, trouble.via, trouble.code)


def test_scanned_twice_in_a_row(shop: Shop, calls: Calls) -> None:
    """A card scanned again right after its own yes is told with its table; at the tray it is nothing."""
    calls.section("D", 6)
    stays, order = calls.picked(things=2)
    calls.post("/api/parcels", 201, orders=[order["id"]], table="two")
    for code in [stays[0]["code"]] * 3 + [stays[1]["code"]]:
        calls.scan("table", code, table="two")
    for _ in range(2):
        calls.scan("tray", stays[0]["code"])
    doubled = [(each.kind, each.station, each.table, each.code) for each in told(shop)]
    assert [("twice", "table", "two", stays[0]["code"])] * 2 == doubled


def test_undone_and_missing(shop: Shop, calls: Calls) -> None:
    """An undo counts at the station of its scan, a missing thing in its section; what went well is no trouble."""
    round_, right, _ = walk(calls)
    key = "the-scan"
    calls.scan("bin", right, round=round_, key=key)
    line = calls.post(f"/api/scans/{key}/undo")["id"]
    calls.post(f"/api/lines/{line}/short")
    found = [(each.kind, each.station, each.section, each.code, each.bin) for each in told(shop)]
    assert [("undone", "bin", "D", right, "A-1-1"), ("short", "", "D", right, "A-1-1")] == found


def test_first_look_at_an_adopted_card(shop: Shop, calls: Calls) -> None:
    """The first of two looks at a card without a check is asked for by the shop, and is no trouble."""
    round_, right, _ = walk(calls)
    settings = {"name": "Shop", "zone": "UTC", "check": "none"}
    calls.client.post("/settings", data=settings)
    for key in ("one", "two"):
        calls.post("/api/scans", station="bin", key=key, text=right, round=round_)
    assert [] == told(shop)


def test_as_far_back_as_was_asked(shop: Shop, calls: Calls, monkeypatch: pytest.MonkeyPatch) -> None:
    """Only what came after the time counts, and of a long ledger the latest entries, with the time since when."""
    calls.section("D", 6)
    for number in range(8):
        calls.scan("tray", f"D00{number % 4 + 1}")
        calls.post("/api/scans", station="tray", key=f"k{number}", text="D0019", via="typed")
    now = datetime.now(UTC)
    assert ([], []) == past(shop, now)[1:]
    everything = past(shop, now - timedelta(days=1))
    assert (8, 16) == (len(everything.troubles), len(everything.scans))
    monkeypatch.setattr(trouble_views, "LATEST", 6)
    latest = past(shop, now - timedelta(days=1))
    assert (everything.troubles[-3:], everything.scans[-6:]) == latest[1:]
    assert latest.since == latest.scans[0]


def test_nobody_is_named(shop: Shop, calls: Calls) -> None:
    """What is told has no place for who scanned, though the ledger knows."""
    calls.section("D", 6)
    calls.post("/api/scans", station="tray", key="k2", text="D0019")
    assert "boss" == calls.get("/api/ledger")["entries"][-1]["actor"]
    assert [False] == ["boss" in str(each) for each in told(shop)]


def test_what_counts_found(shop: Shop, calls: Calls) -> None:
    """Once they are closed, by slot and section; a foreign card counts where it hung, what was ignored nowhere."""
    calls.section("D", 6)
    stay = calls.put_away("Bell")
    counted = calls.post("/api/stocktakes", 201, area="room")["id"]
    texts = [card_text("D006"), card_text("D005"), card_text("Q077")]
    calls.post(f"/api/stocktakes/{counted}/looks", key="k1", place="A-1-2", texts=texts)
    calls.post(f"/api/stocktakes/{counted}/looks", key="k2", place="A-1-1", texts=[])
    calls.post(f"/api/stocktakes/{counted}/findings/slot_free-D005/resolve", how="ignore", reason="a joke")
    assert [] == told(shop)
    calls.post(f"/api/stocktakes/{counted}/close")
    found = [(each.kind, each.station, each.section, each.code, each.bin) for each in told(shop)]
    assert [
        ("missing", "count", "D", stay["code"], "A-1-1"),
        ("slot_free", "count", "D", "D006", "A-1-2"),
        ("unknown", "count", "D", "", "A-1-2"),
    ] == found
