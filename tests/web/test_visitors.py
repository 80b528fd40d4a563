"""Who is calling is known at once, and not for longer than it holds."""

from __future__ import annotations

from datetime import datetime, timedelta

import pytest
from clients import SQLITE_ONLY
from flask import Flask
from sqlalchemy import delete

from scanflow.shop import Shop
from scanflow.storage import access, tables
from scanflow.storage.access import Role, Visitor
from scanflow.web.visitors import COOKIE, Recent

NOON = datetime.fromisoformat("2026-03-02T12:00:00+00:00")
pytestmark = SQLITE_ONLY


class Clock:
    def __init__(self) -> None:
        self.now = NOON

    def __call__(self) -> datetime:
        return self.now


@pytest.mark.parametrize(("passed", "known"), [(0.9, True), (1.0, False), (-1.0, False)])
def test_taken_back_elsewhere(shop: Shop, passed: float, known: bool) -> None:
    """A token that another process took back is refused a second later, and when the clock was put back."""
    shop.clock = clock = Clock()
    recent = Recent(shop)
    secret = shop.token("phone", Role.HELPER)
    assert Visitor("phone", Role.HELPER) == recent.known("token", secret)
    shop.act("elsewhere", lambda unit: unit.connection.execute(delete(tables.access)))
    clock.now += timedelta(seconds=passed)
    assert known is (recent.known("token", secret) is not None)


def test_strangers_are_not_kept(shop: Shop) -> None:
    """A token made right after it was refused is good at once; a session's secret is no token."""
    recent = Recent(shop)
    assert recent.known("token", "nobody") is None
    secret = shop.token("phone", Role.HELPER)
    assert recent.known("token", secret) is not None
    assert recent.known("session", secret) is None


def test_sign_out_counts_at_once(app: Flask, shop: Shop) -> None:
    """Who signed out is asked to sign in by the very next page."""
    owner = Visitor("owner", Role.OWNER)
    secret = shop.act("owner", lambda unit: access.make_session(unit.connection, owner, unit.at))
    client = app.test_client()
    client.set_cookie(COOKIE, secret)
    before = client.get("/api/slots").status_code
    client.post("/logout", headers={"X-CSRF-Token": access.csrf_of(secret)})
    client.set_cookie(COOKIE, secret)
    assert (200, 401) == (before, client.get("/api/slots").status_code)
