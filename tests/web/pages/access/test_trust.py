"""The page that says how a phone comes to trust the service, and what is missing without."""

from __future__ import annotations

from pathlib import Path

import pytest
from clients import SQLITE_ONLY, client_of
from cryptography import x509
from flask.testing import FlaskClient

from scanflow.domain.access import Role
from scanflow.shop import Shop
from scanflow.web import create_app
from scanflow.web.door.addresses import Listening
from scanflow.web.door.certificates import Home, fingerprint

pytestmark = SQLITE_ONLY


@pytest.fixture
def home(tmp_path: Path) -> Home:
    return Home(tmp_path / "https", lambda: ["bench", "192.168.1.7"])


def test_without_https(anonymous: FlaskClient) -> None:
    """The page says that there is no live camera and why, and there is no certificate to load."""
    page = anonymous.get("/trust").text
    assert "need HTTPS" in page and "scanflow serve --https --database" in page
    assert "/trust/authority.crt" not in page
    assert 404 == anonymous.get("/trust/authority.crt").status_code


def test_the_certificate_is_there_for_anybody(shop: Shop, home: Home) -> None:
    """Without sign-in the page says how, and the certificate is loaded as phones take it; its key stays."""
    anonymous = create_app(shop, Listening("0.0.0.0", https=True), home, ["192.168.1.7"]).test_client()
    page = anonymous.get("/trust", base_url="http://192.168.1.7:8765").text
    assert "https://192.168.1.7:8765/" in page and "scanflow on bench" in page
    response = anonymous.get("/trust/authority.crt")
    assert "application/x-x509-ca-cert" == response.mimetype
    assert home.authority(shop.clock()).certificate == x509.load_der_x509_certificate(response.data)
    assert b"PRIVATE" not in response.data


@pytest.mark.parametrize(("agent", "first"), [("(iPhone; CPU", "iPhone"), ("(Linux; Android 15", "Android")])
def test_ones_own_phone_comes_first(shop: Shop, home: Home, agent: str, first: str) -> None:
    """What to press stands first for the phone that asks."""
    anonymous = create_app(shop, Listening("0.0.0.0", https=True), home, ["192.168.1.7"]).test_client()
    page = anonymous.get("/trust", headers={"User-Agent": agent}).text
    places = {kind: page.index(f"<h2>{kind}") for kind in ("iPhone", "Android")}
    assert first == min(places, key=lambda kind: places[kind])


def test_the_fingerprint_is_on_the_owners_screen_only(shop: Shop, home: Home) -> None:
    """What the phone's fingerprint is compared with must not come the same way as the certificate."""
    app = create_app(shop, Listening("0.0.0.0", https=True), home)
    told = fingerprint(home.authority(shop.clock()).certificate)
    assert told in client_of(app, shop, Role.OWNER).get("/devices").text
    assert told not in app.test_client().get("/trust").text
