"""Phones are paired once, by a link, within ten minutes; they and tokens are renamed and revoked."""

from __future__ import annotations

import html
import re
from concurrent.futures import ThreadPoolExecutor
from datetime import datetime, timedelta
from typing import Any

import numpy as np
import pytest
import zxingcpp
from clients import SQLITE_ONLY, new_token
from flask import Flask
from flask.testing import FlaskClient

from scanflow.domain.access import Role
from scanflow.domain.access.names import NameTaken
from scanflow.shop import Shop
from scanflow.web import create_app
from scanflow.web.door.addresses import Listening
from scanflow.web.door.visitors import COOKIE

NOON = datetime.fromisoformat("2026-03-02T12:00:00+00:00")
PHONE = "Mozilla/5.0 (iPhone; CPU iPhone OS 18_0 like Mac OS X) AppleWebKit/605.1.15 Version/18.0 Mobile Safari/604.1"
AT = "http://192.168.1.7:8765"


class Clock:
    now = NOON

    def __call__(self) -> datetime:
        return self.now


@pytest.fixture
def clock(shop: Shop) -> Clock:
    shop.clock = Clock()
    return shop.clock


@pytest.fixture
def app(shop: Shop) -> Flask:
    """A service that phones call by an address of the home network."""
    return create_app(shop, names=["192.168.1.7"])


def new_link(owner: FlaskClient) -> str:
    """The path of a new link, as the owner's page shows it."""
    page = owner.post("/devices/pair", base_url=AT)
    assert 200 == page.status_code
    found = re.search(r'<output id="link"[^>]*>([^<]+)', page.text)
    assert found is not None
    return html.unescape(found[1]).removeprefix(AT)


def opened(app: Flask, link: str, name: str) -> FlaskClient:
    """A phone that opened the link under a name."""
    phone = app.test_client()
    assert 303 == phone.post(link, data={"name": name}).status_code
    return phone


@SQLITE_ONLY
def test_a_phone_comes_in_as_a_helper(app: Flask, client: FlaskClient, shop: Shop) -> None:
    """The phone that opened the link scans under its own name, and has no settings; the ledger tells."""
    phone = app.test_client()
    link = new_link(client)
    assert "iPhone" in phone.get(link, headers={"User-Agent": PHONE}).text
    response = phone.post(link, data={"name": "  Blue\tphone "})
    assert (303, "/") == (response.status_code, response.headers["Location"])
    assert [200, 403, 403] == [phone.get(path).status_code for path in ("/", "/settings", "/devices")]
    assert "Signed in as Blue phone, helper." in phone.get("/trust").text
    entries = client.get("/api/ledger").get_json()["entries"]
    assert {"name": "Blue phone", "address": "127.0.0.1"} == next(
        entry["data"] for entry in entries if entry["kind"] == "device paired"
    )


@SQLITE_ONLY
def test_looking_at_the_link_does_not_use_it_up(app: Flask, client: FlaskClient, anonymous: FlaskClient) -> None:
    """A preview may get the link, or its head, as often as it likes; using it does so, once."""
    link = new_link(client)
    assert [200] * 4 == [anonymous.open(link, method=method).status_code for method in ("GET", "HEAD", "GET", "GET")]
    opened(app, link, "phone")
    assert [410, 410] == [anonymous.get(link).status_code, anonymous.post(link, data={"name": "tablet"}).status_code]
    assert 302 == anonymous.get("/").status_code


@SQLITE_ONLY
@pytest.mark.parametrize(("passed", "status"), [(600, 303), (601, 410)])
def test_ten_minutes(app: Flask, client: FlaskClient, clock: Clock, passed: int, status: int) -> None:
    """The link is good for ten minutes and not a second longer."""
    link = new_link(client)
    clock.now += timedelta(seconds=passed)
    assert status == app.test_client().post(link, data={"name": "phone"}).status_code


def test_two_at_once(app: Flask, client: FlaskClient) -> None:
    """Of eight phones that use a link together one comes in."""
    link = new_link(client)

    def use(number: int) -> int:
        return app.test_client().post(link, data={"name": f"phone {number}"}).status_code

    with ThreadPoolExecutor(8) as threads:
        assert [303] + 7 * [410] == sorted(threads.map(use, range(8)))


@SQLITE_ONLY
def test_another_site_cannot_pair(client: FlaskClient, anonymous: FlaskClient) -> None:
    """A form of another site is refused, and the link is still good."""
    link = new_link(client)
    headers = {"Origin": "https://evil.example"}
    assert 403 == anonymous.post(link, data={"name": "phone"}, headers=headers).status_code
    assert 303 == anonymous.post(link, data={"name": "phone"}).status_code


@SQLITE_ONLY
@pytest.mark.parametrize(("name", "status"), [("", 422), (" \n", 422), ("x" * 41, 422), ("phone", 409), ("owner", 409)])
def test_names(app: Flask, client: FlaskClient, anonymous: FlaskClient, name: str, status: int) -> None:
    """A name that is empty, too long or another's is asked for again; the link is still good."""
    opened(app, new_link(client), "phone")
    link = new_link(client)
    assert status == anonymous.post(link, data={"name": name}).status_code
    assert 303 == anonymous.post(link, data={"name": "tablet"}).status_code


@SQLITE_ONLY
def test_pairing_again_takes_the_place(app: Flask, client: FlaskClient) -> None:
    """A phone that is paired once more keeps its name, and is listed once."""
    phone = opened(app, new_link(client), "phone")
    assert 303 == phone.post(new_link(client), data={"name": "phone"}).status_code
    assert 1 == client.get("/devices").text.count('<span class="title">phone</span>')


@SQLITE_ONLY
def test_the_owner_is_not_turned_into_a_helper(client: FlaskClient) -> None:
    """The owner who opens the link is told so, and has no button to press."""
    html = client.get(new_link(client)).text
    assert ("The owner is signed in here" in html, "<form" in html) == (True, False)


@SQLITE_ONLY
def test_revoked_at_once(app: Flask, client: FlaskClient) -> None:
    """A revoked phone is refused at its very next call, on pages and API, though its session was open."""
    phone = opened(app, new_link(client), "phone")
    assert (200, 200) == (phone.get("/").status_code, phone.get("/api/slots").status_code)
    assert 303 == client.post("/devices/revoke", data={"name": "phone"}).status_code
    assert (401, 302) == (phone.get("/api/slots").status_code, phone.get("/").status_code)
    assert 404 == client.post("/devices/revoke", data={"name": "phone"}).status_code


@SQLITE_ONLY
def test_tokens_are_listed_and_revoked(app: Flask, client: FlaskClient, shop: Shop) -> None:
    """A token stands beside the phones, is renamed, and ends when it is revoked; its secret is shown nowhere."""
    secret = new_token(shop, "printer", Role.PROGRAM)
    program = app.test_client()
    program.environ_base["HTTP_AUTHORIZATION"] = f"Bearer {secret}"
    assert 200 == program.get("/api/slots").status_code
    page = client.get("/devices").text
    assert (True, False) == ('<span class="title">printer</span>' in page, secret in page)
    assert 303 == client.post("/devices/rename", data={"name": "printer", "to": "big printer"}).status_code
    with pytest.raises(NameTaken):
        new_token(shop, "big printer", Role.PROGRAM)
    client.post("/devices/revoke", data={"name": "big printer"})
    assert 401 == program.get("/api/slots").status_code


@SQLITE_ONLY
def test_signing_out_unpairs(app: Flask, client: FlaskClient, anonymous: FlaskClient) -> None:
    """A phone that signs out is no longer listed."""
    phone = opened(app, new_link(client), "phone")
    found = re.search(r'name="csrf" value="([0-9a-f]+)"', phone.get("/trust").text)
    assert found is not None
    assert 303 == phone.post("/logout", data={"csrf": found[1]}).status_code
    assert '<span class="title">phone</span>' not in client.get("/devices").text


@SQLITE_ONLY
def test_the_code_reads_as_the_link(client: FlaskClient) -> None:
    """The drawing on the page, read by zxing-cpp, is the link that is written beside it."""
    page = client.post("/devices/pair", base_url=AT).text
    link = re.search(r'<output id="link"[^>]*>([^<]+)', page)
    drawn = re.search(r'<figure class="qr"[^>]*>(<svg.*?</svg>)', page, re.DOTALL)
    assert link is not None and drawn is not None
    found = zxingcpp.read_barcodes(rastered(drawn[1]))
    assert [link[1]] == [each.text for each in found]


def rastered(svg: str) -> np.ndarray[Any, Any]:
    """The drawing of a QR code, 8 pixels a module: a path of strokes 1 high, moved along by `m` and `h`."""
    size = int(re.findall(r'viewBox="0 0 ([0-9]+)', svg)[0])
    path = re.findall(r'class="[^"]*"[^>]* d="([^"]+)"|stroke="#000"[^>]* d="([^"]+)"|d="(M[^"]+h[^"]*)"', svg)[-1]
    image = np.full((size, size), 255, np.uint8)
    x = y = 0.0
    for step, numbers in re.findall(r"([Mmh])([-0-9. ]+)", next(each for each in path if each)):
        values = [float(each) for each in numbers.split()]
        if step == "h":
            image[int(y), int(x) : int(x + values[0])] = 0
            x += values[0]
        else:
            x, y = (values[0], values[1]) if step == "M" else (x + values[0], y + values[1])
    return image.repeat(8, 0).repeat(8, 1)


@SQLITE_ONLY
def test_a_service_at_home_says_how_to_start_it(shop: Shop, client: FlaskClient) -> None:
    """Where it listens on this machine alone no link is made, and the page says what to do."""
    assert f"<code>{shop.command('serve', '--https')}</code>" in html.unescape(client.get("/devices").text)
    assert 409 == client.post("/devices/pair").status_code


@SQLITE_ONLY
@pytest.mark.parametrize(
    ("base", "wanted"),
    [
        ("http://127.0.0.1:8765", "https://192.168.1.7:8765/pair/"),
        ("http://localhost:8765", "https://192.168.1.7:8765/pair/"),
        ("https://bench.local:8765", "https://bench.local:8765/pair/"),
    ],
)
def test_the_link_leads_where_a_phone_gets(shop: Shop, base: str, wanted: str) -> None:
    """By the address in the owner's browser, or where that is this machine's to itself, by one in the network."""
    app = create_app(shop, Listening("192.168.1.7", 8765, https=True), names=["bench.local"])
    owner = app.test_client()
    owner.environ_base["HTTP_AUTHORIZATION"] = f"Bearer {new_token(shop, 'boss', Role.OWNER)}"
    page = owner.post("/devices/pair", base_url=base).text
    found = re.search(r'<output id="link"[^>]*>([^<]+)', page)
    assert found is not None and found[1].startswith(wanted)
    other = owner.post("/devices/pair", base_url=base, data={"address": "https://evil.example"}).text
    assert "evil.example" not in other


@SQLITE_ONLY
def test_cookies_under_https(shop: Shop, app: Flask, client: FlaskClient) -> None:
    """Under HTTPS the cookie is bound to this host and to TLS (RFC 6265bis, 4.1.3.2); a plain one does not count."""
    phone = app.test_client()
    response = phone.post(new_link(client), data={"name": "phone"}, base_url="https://192.168.1.7")
    cookie = response.headers["Set-Cookie"]
    assert cookie.startswith(f"__Host-{COOKIE}=")
    assert {"Secure", "HttpOnly", "Path=/", "SameSite=Lax"} <= set(cookie.split("; "))
    assert "Domain" not in cookie and "Strict-Transport-Security" not in response.headers
    secret = cookie.split("=", 1)[1].split(";")[0]
    for scheme, name, status in (("https", f"__Host-{COOKIE}", 200), ("https", COOKIE, 302), ("http", COOKIE, 200)):
        browser = app.test_client(use_cookies=False)
        headers = {"Cookie": f"{name}={secret}"}
        assert status == browser.get("/", base_url=f"{scheme}://192.168.1.7", headers=headers).status_code
