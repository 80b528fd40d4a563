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
    assert '<p class="empty">' in html and "<table" not in html
    assert re.search(r'class="next" href="/">', html)


@SQLITE_ONLY
@pytest.mark.parametrize(("times", "advised"), [(4, False), (5, True)])
def test_mistyped_codes(client: FlaskClient, calls: Calls, times: int, advised: bool) -> None:
    """Five mistyped texts of a section are advice, with a way to it; four are counted alone."""
    calls.section("D", 6)
    for number in range(times):
        calls.post("/api/scans", station="tray", key=f"k{number}", text="D0019", via="typed")
    html = client.get("/trouble").text
    assert advised is ('<p class="empty">' not in html)
    assert advised is (re.search(r'class="next" href="/slots\?section=D"', html) is not None)
    assert f"{KINDS[Reason.BAD_CHECK]} {times} {PLACES[Station.TRAY]} " in text_of(html)


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
    assert re.search(rf"\bA-1-1\b\D+\b5\b.*\b{wrong}\b\D+\b{stays[0]['code']}\D+\b5\b", told)


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
    html = client.get("/trouble").text
    told = text_of(html)
    assert 5 == len(things)
    advised = [text_of(each) for each in re.findall(r'<a class="title" href="[^"]*">([^<]*\b5\b[^<]*)</a>', html)]
    assert ([True], [True]) == tuple([True for each in advised if name in each.split()] for name in ("two", "D"))
    assert f"{KINDS[SHORT]} 5 {PLACES['']}" in told and f"{KINDS[TWICE]} 5 {PLACES[Station.TABLE]}" in told


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
    assert f"{PLACES[COUNT]}, " in said and not re.search(r"\b\d\d:00 \d", said)
    for station, text in (("tray", "D0019"), ("tray", "D0019"), ("shelf", "D0019"), ("tray", card_text("D005"))):
        key = f"{station}{len(calls.get('/api/ledger')['entries'])}"
        calls.post(
            "/api/scans", station=station, key=key, text=text, **({"bin": "A-1-1"} if station == "shelf" else {})
        )
    said = text_of(client.get("/trouble").text)
    assert code == "D001" and re.search(rf"\b3\b\D+\b4\b\D+{PLACES[COUNT]}, ", said)
    assert re.search(rf"{KINDS[Reason.BAD_CHECK]} 3 \w+ {PLACES[Station.TRAY]}, \w+ {PLACES[Station.SHELF]}", said)
    assert all(f"{KINDS[kind]} 1 {PLACES[COUNT]}" in said for kind in (FindingKind.MISSING, FindingKind.SLOT_FREE))
    assert re.search(r"\bD Section D 5\b", said)


def test_who_scanned_is_counted_where_the_shop_says_so(client: FlaskClient, calls: Calls, shop: Shop) -> None:
    """A name stands there only then, with what was refused or taken back, and all its scans."""
    calls.section("D", 6)
    for number, text in enumerate(("D0016", "D0019")):
        calls.post("/api/scans", station="tray", key=f"k{number}", text=text)
    assert '<th scope="row">boss' not in client.get("/trouble").text
    shop.act("owner", lambda unit: unit.set_settings(replace(unit.settings, by_person=True)))
    html = client.get("/trouble").text
    assert '<tr><th scope="row">boss</th><td>1</td><td>2</td></tr>' in html
