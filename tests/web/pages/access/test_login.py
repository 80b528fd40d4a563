"""Coming in and going out."""

from __future__ import annotations

import html
import re
from collections import Counter
from concurrent.futures import ThreadPoolExecutor
from datetime import datetime
from typing import Any

import pytest
from clients import SQLITE_ONLY, setup_link
from flask import Flask
from flask.testing import FlaskClient

from scanflow.shop import Shop
from scanflow.storage.views import ledger as ledger_views
from scanflow.web import create_app
from scanflow.web.door.addresses import Listening
from scanflow.web.door.visitors import COOKIE

PASSWORD = "saddle-brown-7"
pytestmark = SQLITE_ONLY


def set_up(client: FlaskClient, shop: Shop) -> FlaskClient:
    """A browser that set the owner's password and has a session."""
    client.post(f"/set-up/{setup_link(shop)}", data={"password": PASSWORD, "again": PASSWORD})
    return client


def csrf(client: FlaskClient) -> str:
    found = re.search(r'name="csrf" content="([0-9a-f]+)"', client.get("/settings").text)
    assert found is not None
    return found[1]


def test_set_up_once(anonymous: FlaskClient, shop: Shop) -> None:
    """The link of the first start sets the password and opens a session; it works once."""
    link = f"/set-up/{setup_link(shop)}"
    assert 200 == anonymous.get(link).status_code
    response = anonymous.post(link, data={"password": PASSWORD, "again": PASSWORD})
    assert (303, "/") == (response.status_code, response.headers["Location"])
    assert 200 == anonymous.get("/").status_code
    assert 410 == anonymous.get(link).status_code
    assert 410 == anonymous.post(link, data={"password": "another-one", "again": "another-one"}).status_code


@pytest.mark.parametrize(("password", "again"), [("short-7", "short-7"), (PASSWORD, PASSWORD + "x")])
def test_set_up_refused(anonymous: FlaskClient, shop: Shop, password: str, again: str) -> None:
    """A short password or two different ones are refused, and the link still works."""
    link = f"/set-up/{setup_link(shop)}"
    assert 422 == anonymous.post(link, data={"password": password, "again": again}).status_code
    assert 200 == anonymous.get(link).status_code


def test_cookie(anonymous: FlaskClient, shop: Shop) -> None:
    """The session's cookie can't be read by scripts nor sent by other sites' forms."""
    response = anonymous.post(f"/set-up/{setup_link(shop)}", data={"password": PASSWORD, "again": PASSWORD})
    cookie = response.headers["Set-Cookie"]
    assert (True, True, True) == (cookie.startswith(COOKIE), "HttpOnly" in cookie, "SameSite=Lax" in cookie)
    https = anonymous.post("/login", data={"password": PASSWORD}, base_url="https://localhost")
    assert "Secure" in https.headers["Set-Cookie"]


def test_sign_in_and_out(app: Flask, shop: Shop) -> None:
    """The password opens a new session and leads on to the page that was asked for; going out ends it for good."""
    set_up(app.test_client(), shop)
    client = app.test_client()
    assert 401 == client.post("/login", data={"password": "wrong-password"}).status_code
    response = client.post("/login", data={"password": PASSWORD, "next": "/orders?state=held"})
    assert (303, "/orders?state=held") == (response.status_code, response.headers["Location"])
    secret = client.get_cookie(COOKIE)
    assert 303 == client.post("/logout", data={"csrf": csrf(client)}).status_code
    assert secret is not None
    client.set_cookie(COOKIE, secret.value)
    assert 302 == client.get("/").status_code


@pytest.mark.parametrize(
    "target", ["https://evil.example/", "//evil.example", "/\\evil.example", "javascript:alert(1)"]
)
def test_sign_in_leads_nowhere_else(anonymous: FlaskClient, shop: Shop, target: str) -> None:
    """An address of another site is not followed."""
    set_up(anonymous, shop)
    response = anonymous.post("/login", data={"password": PASSWORD, "next": target})
    assert "/" == response.headers["Location"]


def test_too_many_attempts(app: Flask, shop: Shop) -> None:
    """After ten wrong passwords the right one has to wait, too."""
    set_up(app.test_client(), shop)
    client = app.test_client()
    for _ in range(10):
        assert 401 == client.post("/login", data={"password": "guess"}).status_code
    assert 429 == client.post("/login", data={"password": PASSWORD}).status_code


def test_many_tries_at_once(app: Flask, shop: Shop) -> None:
    """Of sixty wrong passwords sent at once ten are looked at, and the others have to wait."""
    set_up(app.test_client(), shop)
    with ThreadPoolExecutor(20) as threads:
        told = list(threads.map(lambda n: app.test_client().post("/login", data={"password": f"{n}"}), range(60)))
    assert {401: 10, 429: 50} == Counter(each.status_code for each in told)


@pytest.mark.parametrize("password", ["password", "12345678", "scanflow", "        ", "The stock room 7", "StockR00m"])
def test_an_easy_password_is_refused(anonymous: FlaskClient, shop: Shop, password: str) -> None:
    """The words say why, and the link still works."""
    link = f"/set-up/{setup_link(shop)}"
    response = anonymous.post(link, data={"password": password, "again": password})
    assert (422, True) == (response.status_code, "Choose another one" in html.unescape(response.text))
    assert 303 == anonymous.post(link, data={"password": PASSWORD, "again": PASSWORD}).status_code


def entries(shop: Shop) -> list[tuple[str, str, dict[str, Any]]]:
    """Kind, actor and data of what the ledger says, the first first."""
    with shop.looking() as unit:
        newest = ledger_views.newest(unit.connection)
    return [(each.event.kind, each.actor, each.event.data()) for each in reversed(newest)]


def test_the_ledger_tells_of_signing_in(app: Flask, shop: Shop) -> None:
    """Password, sign-ins with browser and address, sign-outs, a link that sets another password; refused ones of an
    address in one entry.
    """
    client = set_up(app.test_client(), shop)
    for _ in range(12):
        client.post("/login", data={"password": "wrong-password"}, environ_base={"REMOTE_ADDR": "192.0.2.7"})
    client.post("/login", data={"password": PASSWORD}, headers={"User-Agent": "Firefox/140.0 (Windows)"})
    client.post("/logout", data={"csrf": csrf(client)})
    here = {"address": "127.0.0.1"}
    setup_link(shop)
    told = entries(shop)
    since = told[2][2].pop("since")
    assert datetime.fromisoformat(since) <= shop.clock()
    assert [
        ("password set", "owner", here),
        ("signed in", "owner", {**here, "browser": "Werkzeug"}),
        ("sign-in refused", "scanflow", {"address": "192.0.2.7", "tries": 12}),
        ("signed in", "owner", {**here, "browser": "Firefox, Windows computer"}),
        ("signed out", "owner", here),
        ("password link made", "scanflow", {}),
    ] == told


def test_a_link_keeps_the_password_until_it_is_used(app: Flask, shop: Shop) -> None:
    """The password of before works beside a new link; once that is used, all sessions of before are out."""
    before = set_up(app.test_client(), shop)
    link = f"/set-up/{setup_link(shop)}"
    assert 303 == app.test_client().post("/login", data={"password": PASSWORD}).status_code
    assert 200 == before.get("/").status_code
    there = app.test_client()
    assert 303 == there.post(link, data={"password": "another-one-8", "again": "another-one-8"}).status_code
    assert [302, 200] == [each.get("/").status_code for each in (before, there)]
    assert [401, 303] == [
        app.test_client().post("/login", data={"password": each}).status_code for each in (PASSWORD, "another-one-8")
    ]


def test_changes_need_the_token_of_the_session(anonymous: FlaskClient, shop: Shop) -> None:
    """A form without the session's CSRF token, with a wrong one, or from another site changes nothing."""
    client = set_up(anonymous, shop)
    fields = {"name": "Other name", "zone": "UTC"}
    assert 403 == client.post("/settings", data=fields).status_code
    assert 403 == client.post("/settings", data=fields | {"csrf": "0" * 64}).status_code
    token = {"csrf": csrf(client)}
    foreign = client.post("/settings", data=fields | token, headers={"Origin": "https://evil.example"})
    assert 403 == foreign.status_code
    with shop.looking() as unit:
        assert "The stock room" == unit.settings.name
    assert 303 == client.post("/settings", data=fields | token).status_code
    with shop.looking() as unit:
        assert "Other name" == unit.settings.name


def test_sign_in_from_another_site(anonymous: FlaskClient, shop: Shop) -> None:
    """Another site's form can't sign a browser in."""
    set_up(anonymous, shop)
    headers = {"Origin": "https://evil.example"}
    assert 403 == anonymous.post("/login", data={"password": PASSWORD}, headers=headers).status_code


def test_who_can_read_the_password_is_said(shop: Shop) -> None:
    """Without HTTPS in a network the sign-in page and the first link's say it; this machine's own is not told."""
    words = "This connection is not encrypted"
    client = create_app(shop, Listening("0.0.0.0"), names=["bench"]).test_client()

    def told(path: str, address: str) -> bool:
        answer = client.get(path, base_url="http://bench", environ_overrides={"REMOTE_ADDR": address})
        return words in html.unescape(answer.text)

    link = f"/set-up/{setup_link(shop)}"
    assert [True, True, False] == [told("/login", "192.0.2.7"), told(link, "192.0.2.7"), told("/login", "127.0.0.1")]
    secure = create_app(shop, Listening("0.0.0.0", https=True)).test_client()
    assert words not in html.unescape(secure.get("/login").text)


def test_a_broken_address_to_go_on_to(anonymous: FlaskClient, shop: Shop) -> None:
    """What is no address leads to the day's page."""
    set_up(anonymous, shop)
    answer = anonymous.post("/login", data={"password": PASSWORD, "next": "//["})
    assert (303, "/") == (answer.status_code, answer.headers["Location"])
