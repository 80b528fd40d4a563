"""Every page with nothing, one thing and many: it renders, stays light, asks nobody else, and shows text as text."""

from __future__ import annotations

import re
from collections.abc import Iterator
from pathlib import Path

import pytest
from clients import SQLITE_ONLY
from every_page import ALWAYS
from flask.testing import FlaskClient
from furnished import Furnished, furnish, reference, scan

import scanflow.web
from scanflow.domain.life import LineState
from scanflow.domain.orders.incoming import IncomingLine, IncomingOrder
from scanflow.domain.things import Line, Station
from scanflow.shop import Shop
from scanflow.web.pages.declare import PAGES
from scanflow.workflow import parcels, stock
from scanflow.workflow.orders import receiving
from scanflow.workflow.picking import rounds

HEAVIEST = 150_000
"""Bytes of a page with its styles and all scripts, uncompressed."""

STATIC = Path(scanflow.web.__file__).parent / "static"
HOSTILE = "</script><script>alert(1)</script>\"'><img src=x onerror=alert(1)> ünïcode 引き出し"


def addresses(shop: Shop, room: Furnished) -> Iterator[str]:
    yield from ALWAYS
    for stay in room.stays[:2]:
        yield from (f"/put-away/{stay.id}", f"/stays/{stay.id}", f"/slots/{stay.code}", f"/search?q={stay.code}")
    yield from (f"/orders/{order.id}" for order in room.orders)
    if room.round is not None:
        yield f"/rounds/{room.round.id}"
    if room.stays:
        yield from ("/shelf?bin=A-1-1", "/sections/D", "/sections/D?intake=15&stay=45", "/plan/made/D")
    with shop.looking() as unit:
        lines = unit.find(Line)
    yield from (f"/lines/{line.id}" for line in lines if line.hold or line.state is LineState.UNBOUND)


def bodies(client: FlaskClient, shop: Shop, room: Furnished) -> Iterator[tuple[str, str]]:
    """The HTML of each page by its address."""
    for address in addresses(shop, room):
        response = client.get(address, follow_redirects=True)
        assert (200, "text/html") == (response.status_code, response.mimetype), address
        yield address, response.text


@pytest.mark.parametrize("things", [0, 1, 25])
def test_pages_render(shop: Shop, client: FlaskClient, things: int) -> None:
    """Each page answers 200 with one heading and one main part."""
    for address, html in bodies(client, shop, furnish(shop, things)):
        assert (1, 1) == (html.count("<h1"), html.count("<main")), address


def through_a_day(shop: Shop) -> Iterator[Furnished]:
    """A room with one section, slot, thing and order, each time one step further: waiting to released."""
    shop.act(
        "owner",
        lambda unit: (
            stock.add_section(unit, stock.AddSection(code="D", name="Derailleurs", slots_per_bin=9, colour="blue")),
            stock.add_slots(unit, "D", stock.AddSlots(count=1)),
        ),
    )
    yield Furnished()
    stay = shop.act("owner", lambda unit: stock.put_away(unit, stock.PutAway(title="Rear derailleur", section="D")))
    lines = (IncomingLine(reference(stay)),)
    order = shop.act("owner", lambda unit: receiving.receive(unit, IncomingOrder("B-9", "fair", None, None, lines)))[0]
    yield Furnished([stay], [order])
    room = Furnished([stay], [order], shop.act("owner", lambda unit: rounds.open_round(unit, rounds.OpenRound()))[0])
    yield room
    scan(shop, Station.BIN, stay.code, round=room.round.id if room.round else "")
    yield room
    shop.act("owner", lambda unit: parcels.open_parcel(unit, parcels.OpenParcel(orders=[order.id])))
    yield room
    scan(shop, Station.TABLE, stay.code)
    yield room


WRONG_NUMBER = (
    r"(?<![\w.,/–-])1 (?:[a-z]{3,}s\b(?! to\b)|[a-z]+ (?:are|make|carry|wait|have)\b)"
    r"|\b0 waits?\b|(?<!\.)\b0\.0 (?!m\b)"
)
"""One as many, "1 waits" aside; and figures that say nothing."""


@SQLITE_ONLY
def test_one_is_not_many(shop: Shop, client: FlaskClient) -> None:
    """Where there is one of a thing no page speaks of several, and none says 0 where it could be silent."""
    found = []
    for room in through_a_day(shop):
        for address, html in bodies(client, shop, room):
            shown = re.sub(r"<head>.*?</head>|<ol class=.entries.*?</ol>|<[^>]+>", " ", html, flags=re.DOTALL)
            text = " ".join(shown.replace("1 waits", "").split())
            found += [f"{address}: {text[m.start() : m.end() + 20]}" for m in re.finditer(WRONG_NUMBER, text)]
    assert [] == found


@SQLITE_ONLY
def test_pages_are_light(shop: Shop, client: FlaskClient) -> None:
    """A page weighs less than 150 kB with everything it loads."""
    edges = len(client.get("/edges.css").data)
    for address, html in bodies(client, shop, furnish(shop, 130)):
        loaded = sum(path.stat().st_size for path in statics(html))
        assert len(html.encode()) + edges + loaded < HEAVIEST, address


def statics(html: str) -> set[Path]:
    """The static files that a page loads, with the modules that its scripts import, and so on."""
    files: set[Path] = set()
    left = [STATIC / name for name in re.findall(r'(?:src|href)="/static/([^"?]+)', html)]
    while left:
        path = left.pop()
        if path not in files:
            files.add(path)
            left += [path.parent / name for name in re.findall(r'from "\./([^"]+)"', path.read_text())]
    return files


@SQLITE_ONLY
def test_pages_ask_nobody_else(shop: Shop, client: FlaskClient) -> None:
    """Nothing is loaded from another host, and nothing runs or styles that stands in the page itself."""
    for address, html in bodies(client, shop, furnish(shop, 25)):
        elsewhere = re.sub("http://www.w3.org/2000/svg|sqlite:///", "", html)  # the second in a command to type
        assert [] == re.findall(r"(?:https?:)?//[a-z0-9.]+", elsewhere), address
        assert [] == re.findall(r"<script(?![^>]*\bsrc=)|<style|\sstyle=|\son[a-z]+=", html), address


def test_static_files_ask_nobody_else() -> None:
    """Nor do the styles and scripts."""
    for path in STATIC.rglob("*.*"):
        text = path.read_text(encoding="utf-8").replace("http://www.w3.org/2000/svg", "")
        assert [] == re.findall(r"https?://[^\s\"'`]*|@import|url\((?!\"data:)", text), path.name


@SQLITE_ONLY
def test_titles_are_text(shop: Shop, client: FlaskClient) -> None:
    """A title, a name or a search that looks like markup is shown as it was written."""
    room = furnish(shop, 12, title=HOSTILE)
    for address, html in bodies(client, shop, room):
        assert "<img src=x" not in html, address
        assert 0 == html.count("<script>"), address
    html = client.get("/search", query_string={"q": HOSTILE}).text
    assert ("<img" in html, "<script>" in html) == (False, False)


@SQLITE_ONLY
def test_unknown_things(client: FlaskClient, shop: Shop) -> None:
    """What does not exist is answered 404, by a page."""
    furnish(shop, 1)
    for address in (
        "/orders/x",
        "/lines/x",
        "/rounds/x",
        "/slots/Q999",
        "/sections/Q",
        "/stays/x",
        "/put-away/x",
        "/nothing",
    ):
        response = client.get(address)
        assert (404, True) == (response.status_code, "<h1>" in response.text), address


@SQLITE_ONLY
def test_strangers_are_led_to_sign_in(anonymous: FlaskClient) -> None:
    """Without a session a page leads to the sign-in and back; a change is refused."""
    for address in ALWAYS:
        response = anonymous.get(address)
        assert (302, True) == (response.status_code, response.headers["Location"].startswith("/login?next=")), address
    for declared in PAGES.values():
        if declared.method == "POST" and declared.roles:
            path = re.sub(r"<[^>]*step>", "short", declared.path)
            assert 401 == anonymous.post(re.sub(r"<[^>]+>", "x", path)).status_code, declared.path


@SQLITE_ONLY
def test_many_rows(shop: Shop, client: FlaskClient) -> None:
    """A long list is cut into pages that lead on and back, and no row is left out."""
    furnish(shop, 120)
    first = client.get("/slots").text
    second = client.get("/slots?from=100").text
    codes = re.compile(r'href="/slots/([A-Z]\d+)"')
    seen = {code for skip in range(0, 550, 50) for code in codes.findall(client.get(f"/slots?from={skip}").text)}
    assert 500 == len(seen)
    assert ("More rows" in first, "Earlier rows" in first) == (True, False)
    assert ("More rows" in second, "Earlier rows" in second) == (True, True)
