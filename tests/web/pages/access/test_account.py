"""The password is changed by who knows it; sign-ins are listed and ended; what nobody uses ends."""

from __future__ import annotations

import re
from datetime import datetime, timedelta

import pytest
from clients import SQLITE_ONLY, new_token
from flask import Flask
from flask.testing import FlaskClient

from scanflow.domain.access import Role
from scanflow.shop import Shop
from scanflow.storage import access
from scanflow.storage.views import ledger as ledger_views

PASSWORD, NEW = "saddle-brown-7", "another-one-8"
NOON = datetime.fromisoformat("2026-03-02T12:00:00+00:00")
HOUR = timedelta(hours=1)
FIREFOX = {"User-Agent": "Mozilla/5.0 (X11; Linux x86_64; rv:140.0) Gecko/20100101 Firefox/140.0"}
pytestmark = SQLITE_ONLY


class Clock:
    now = NOON

    def __call__(self) -> datetime:
        return self.now


@pytest.fixture
def clock(shop: Shop) -> Clock:
    shop.clock = Clock()
    shop.act("owner", lambda unit: unit.access.set_password(PASSWORD))
    return shop.clock


def signed_in(app: Flask) -> FlaskClient:
    """A browser of the owner, which sends its CSRF token with each call."""
    client = app.test_client()
    assert 303 == client.post("/login", data={"password": PASSWORD}, headers=FIREFOX).status_code
    found = re.search(r'name="csrf" content="([0-9a-f]+)"', client.get("/account", buffered=True).text)
    assert found is not None
    client.environ_base["HTTP_X_CSRF_TOKEN"] = found[1]
    return client


def form(current: str = PASSWORD, password: str = NEW, again: str | None = None, key: str = "once") -> dict[str, str]:
    return {"current": current, "password": password, "again": password if again is None else again, "key": key}


def is_out(client: FlaskClient) -> bool:
    return client.get("/account", buffered=True).status_code == 302


def kinds(shop: Shop) -> list[str]:
    with shop.looking() as unit:
        return [each.event.kind for each in ledger_views.newest(unit.connection)]


def test_change(app: Flask, shop: Shop, clock: Clock) -> None:
    """Other browsers are out, this one stays; the new password alone opens, and the ledger tells."""
    here, other = signed_in(app), signed_in(app)
    assert 303 == here.post("/account/password", data=form()).status_code
    assert [False, True] == [is_out(here), is_out(other)]
    told = [app.test_client().post("/login", data={"password": each}).status_code for each in (PASSWORD, NEW)]
    assert [401, 303] == told
    assert "password changed" in kinds(shop)


def test_sent_twice(app: Flask, shop: Shop, clock: Clock) -> None:
    """A form sent again gets the same answer; what is kept with its key says nothing of the passwords."""
    here = signed_in(app)
    assert [303, 303] == [here.post("/account/password", data=form()).status_code for _ in range(2)]
    assert 303 == here.post("/account/password", data=form("quite", "another", "one")).status_code
    assert 1 == kinds(shop).count("password changed")


@pytest.mark.parametrize(
    ("sent", "status", "said"),
    [
        (form(current="wrong-one-9"), 401, "not the password you have now"),
        (form(password="short-7"), 422, "at least 8 characters"),
        (form(password="iloveyou"), 422, "most common"),
        (form(again="another-one-9"), 422, "two passwords differ"),
        ({}, 401, "not the password you have now"),
    ],
)
def test_change_refused(app: Flask, shop: Shop, clock: Clock, sent: dict[str, str], status: int, said: str) -> None:
    """In words; the password of before still opens, and nobody is out."""
    here, other = signed_in(app), signed_in(app)
    response = here.post("/account/password", data=sent)
    assert (status, True) == (response.status_code, said in response.text)
    assert 303 == app.test_client().post("/login", data={"password": PASSWORD}).status_code
    assert [False, False] == [is_out(here), is_out(other)]


def test_wrong_ones_count_as_tries(app: Flask, shop: Shop, clock: Clock) -> None:
    """Who found a browser signed in can't guess the password there: after ten tries the right one has to wait."""
    here = signed_in(app)
    told = [here.post("/account/password", data=form(current="guess")).status_code for _ in range(10)]
    assert (10 * [401], 429) == (told, here.post("/account/password", data=form()).status_code)


def test_sessions_are_listed(app: Flask, shop: Shop, clock: Clock) -> None:
    """Each with its browser in plain words, this one marked; a helper's phone is none of them."""
    here = signed_in(app)
    signed_in(app)
    link = shop.act("owner", lambda unit: unit.access.make_pairing_link())
    shop.act("owner", lambda unit: unit.access.pair(link, "Blue phone"))
    page = here.get("/account", buffered=True).text
    told = (page.count("Firefox, Linux computer</span>"), page.count("this browser, since"), page.count("Blue phone"))
    assert (2, 1, 0) == told


def test_one_is_ended(app: Flask, shop: Shop, clock: Clock) -> None:
    """It is out with its next call, this one stays, and a second press says so; a token is not ended this way."""
    here, other = signed_in(app), signed_in(app)
    new_token(shop, "printer", Role.PROGRAM)
    numbers = re.findall(r'name="session" value="([0-9]+)"', here.get("/account", buffered=True).text)
    assert 1 == len(numbers)
    sent = [here.post("/account/sessions/end", data={"session": numbers[0]}).status_code for _ in range(2)]
    assert ([303, 404], [False, True]) == (sent, [is_out(here), is_out(other)])
    odd = ("", "1e9", 30 * "9")
    assert 3 * [404] == [here.post("/account/sessions/end", data={"session": n}).status_code for n in odd]
    with shop.looking() as unit:
        assert {"printer"} == access.taken_names(unit.connection)
    assert 1 == kinds(shop).count("session ended")


def test_sign_out_everywhere(app: Flask, shop: Shop, clock: Clock) -> None:
    """All browsers are out, this one too; tokens and phones go on."""
    here, other = signed_in(app), signed_in(app)
    token = app.test_client()
    token.environ_base["HTTP_AUTHORIZATION"] = f"Bearer {new_token(shop, 'printer', Role.PROGRAM)}"
    response = here.post("/account/sessions/end-all")
    assert (303, "/login") == (response.status_code, response.headers["Location"])
    assert [True, True] == [is_out(here), is_out(other)]
    assert (200, "signed out everywhere") == (token.get("/api/slots").status_code, kinds(shop)[0])


def test_a_session_in_use_goes_on(app: Flask, shop: Shop, clock: Clock) -> None:
    """Used each eleven hours it lasts for days; what a page asks for by itself is no use; then it is out."""
    here = signed_in(app)
    for _ in range(5):
        clock.now += 11 * HOUR
        assert not is_out(here)
    for _ in range(2):
        clock.now += 5 * HOUR
        assert 200 == here.get("/", headers={"X-By-Itself": "yes"}, buffered=True).status_code
    clock.now += 3 * HOUR
    assert is_out(here)


def test_a_use_is_noted_rarely(app: Flask, shop: Shop, clock: Clock) -> None:
    """At most once in ten minutes, and after the answer: noting it is a write."""
    here = signed_in(app)
    noted: list[datetime] = []
    real = shop.database.writing
    shop.database.writing = lambda at, who: noted.append(at) or real(at, who)  # type: ignore[method-assign,assignment,func-returns-value]
    for minutes in range(30):
        clock.now = NOON + timedelta(minutes=minutes)
        here.get("/account", buffered=True)
    assert [NOON + timedelta(minutes=10), NOON + timedelta(minutes=20)] == noted
    with shop.looking() as unit:
        assert [NOON + timedelta(minutes=20)] == [row.seen for row in access.sessions(unit.connection, clock.now)]
