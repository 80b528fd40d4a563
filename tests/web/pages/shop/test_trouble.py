"""The page of what goes wrong says what the numbers carry, and no more."""

from __future__ import annotations

import re
from dataclasses import replace
from datetime import UTC, datetime
from html import unescape

import pytest
from calls import Calls
from clients import SQLITE_ONLY
from flask.testing import FlaskClient

from labels.slot_code import card_text
from scanflow.domain.counts.findings import FindingKind
from scanflow.domain.things import Station
from scanflow.domain.verdict import Reason
from scanflow.planning.trouble import COUNT, SHORT, TWICE, UNDONE
from scanflow.shop import Shop
from scanflow.web.pages.shop.trouble import KINDS, PLACES


def text_of(html: str) -> str:
    return re.sub(r"\s+", " ", unescape(re.sub(r"<[^>]*>", " ", html)))


def test_every_kind_has_words() -> None:
    """Each reason to refuse and each other kind has words of its own, and so has each place."""
    assert {*Station, COUNT, ""} == PLACES.keys()
    assert {*Reason, SHORT, TWICE, UNDONE, *FindingKind} == KINDS.keys()
    assert len(KINDS) == len(set(KINDS.values()))


@SQLITE_ONLY
def test_nothing_scanned(client: FlaskClient) -> None:
    """In a new shop the page says what will stand there, and leads back to the day."""
    html = client.get("/trouble").text
    assert "Nothing was scanned since" in html and "Fewer may be chance" in html and "<table" not in html
    assert re.search(r'class="next" href="/">Go on with today', html)


@SQLITE_ONLY
@pytest.mark.parametrize(("times", "advised"), [(4, False), (5, True)])
def test_mistyped_codes(client: FlaskClient, calls: Calls, times: int, advised: bool) -> None:
    """Five mistyped texts of a section are advice, with a way to it; four are counted alone."""
    calls.section("D", 6)
    for number in range(times):
        calls.post("/api/scans", station="tray", key=f"k{number}", text="D0019", via="typed")
    html = client.get("/trouble").text
    assert advised is (f"Codes of section D are mistyped: {times} times" in html)
    assert advised is (re.search(r'class="next" href="/slots\?section=D"', html) is not None)
    assert f"wrong check digit {times} at the tray " in text_of(html)


@SQLITE_ONLY
def test_a_confused_bin(client: FlaskClient, calls: Calls) -> None:
    """The bin, the wrong card and the right one are named."""
    calls.section("D", 6)
    stays, order = calls.ordered(things=2)
    wrong = calls.put_away("Bell")["code"]
    round_ = calls.post("/api/rounds", 201, orders=[order["id"]])["id"]
    for _ in range(5):
        calls.scan("bin", wrong, round=round_)
    calls.scan("bin", stays[0]["code"], round=round_)
    told = text_of(client.get("/trouble").text)
    assert "In bin A-1-1 another card was scanned first: 5 times" in told
    assert f"{wrong} before {stays[0]['code']} (5×)" in told


@SQLITE_ONLY
def test_a_doubling_scanner_and_missing_things(client: FlaskClient, calls: Calls) -> None:
    """A table whose cards come twice, and a section whose things are missing, are told apart."""
    calls.section("D", 8)
    stays, order = calls.picked(things=2)
    calls.post("/api/parcels", 201, orders=[order["id"]], table="two")
    for _ in range(6):
        calls.scan("table", stays[0]["code"], table="two")
    things, missing = calls.ordered("1002", 5)
    for line in missing["lines"]:
        calls.post(f"/api/lines/{line['id']}/short")
    told = text_of(client.get("/trouble").text)
    assert 5 == len(things)
    assert "At table two cards are scanned twice in a row: 5 times" in told
    assert "Things of section D are missing: 5 times" in told
    assert "thing missing 5 without a scan" in told and "scanned twice in a row 5 at the table" in told
    assert re.search(r"5 times in \d+ scans, 5 times without a scan, since", told)


@SQLITE_ONLY
def test_hours_of_the_shop(client: FlaskClient, calls: Calls, shop: Shop) -> None:
    """Hours are those of the shop's zone, beside the scans of that hour."""
    shop.act("owner", lambda unit: unit.set_settings(replace(unit.settings, zone="Asia/Tokyo")))
    calls.section("D", 6)
    shop.clock = lambda: datetime(2026, 7, 1, 3, 30, tzinfo=UTC)
    calls.post("/api/scans", station="tray", key="k1", text="D0019")
    calls.post("/api/scans", station="tray", key="k2", text=card_text("D001"))
    assert "12:00 1 2" in text_of(client.get("/trouble").text)  # Japan is nine hours before UTC all the year


@SQLITE_ONLY
def test_what_a_count_found(client: FlaskClient, calls: Calls) -> None:
    """It is told apart from scans, counted by kind and section, with no hour of its own."""
    calls.section("D", 6)
    code = calls.put_away("Bell")["code"]
    counted = calls.post("/api/stocktakes", 201, area="room")["id"]
    calls.post(f"/api/stocktakes/{counted}/looks", key="k1", place="A-1-1", texts=[card_text("D006")])
    calls.post(f"/api/stocktakes/{counted}/close")
    said = text_of(client.get("/trouble").text)
    assert "Twice in counts, since" in said and "By hour" not in said
    for station, text in (("tray", "D0019"), ("tray", "D0019"), ("shelf", "D0019"), ("tray", card_text("D005"))):
        key = f"{station}{len(calls.get('/api/ledger')['entries'])}"
        calls.post(
            "/api/scans", station=station, key=key, text=text, **({"bin": "A-1-1"} if station == "shelf" else {})
        )
    said = text_of(client.get("/trouble").text)
    assert "5 times something went wrong" in said and code == "D001"
    assert "3 times in 4 scans, twice in counts, since" in said
    assert "wrong check digit 3 twice at the tray, once at shelves" in said
    assert "counted and not there 1 in counts" in said and "nothing is stored in its slot 1 in counts" in said
    assert "By section D Section D 5 times" in said


def test_who_scanned_is_counted_where_the_shop_says_so(client: FlaskClient, calls: Calls, shop: Shop) -> None:
    """A name stands there only then, with what was refused or taken back, and all its scans."""
    calls.section("D", 6)
    for number, text in enumerate(("D0016", "D0019")):
        calls.post("/api/scans", station="tray", key=f"k{number}", text=text)
    assert "By who scanned" not in client.get("/trouble").text
    shop.act("owner", lambda unit: unit.set_settings(replace(unit.settings, by_person=True)))
    html = client.get("/trouble").text
    assert "Who scanned is not counted" not in html
    assert '<tr><th scope="row">boss</th><td>1</td><td>2</td></tr>' in html
