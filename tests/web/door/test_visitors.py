"""Who is calling is known at once, and not for longer than it holds."""

from __future__ import annotations

from concurrent.futures import ThreadPoolExecutor
from datetime import datetime, timedelta

import pytest
from clients import SQLITE_ONLY, new_token
from flask import Flask
from sqlalchemy import delete

from scanflow.domain.access import Role, Visitor
from scanflow.shop import Shop
from scanflow.storage import access, tables
from scanflow.web.door.visitors import COOKIE, Attempts, Recent
from scanflow.web.problem import Problem

NOON = datetime.fromisoformat("2026-03-02T12:00:00+00:00")


class Clock:
    def __init__(self) -> None:
        self.now = NOON

    def __call__(self) -> datetime:
        return self.now


@SQLITE_ONLY
@pytest.mark.parametrize(("passed", "known"), [(0.9, True), (1.0, False), (-1.0, False)])
def test_taken_back_elsewhere(shop: Shop, passed: float, known: bool) -> None:
    """A token that another process took back is refused a second later, and when the clock was put back."""
    shop.clock = clock = Clock()
    recent = Recent(shop)
    secret = new_token(shop, "phone", Role.HELPER)
    assert Visitor("phone", Role.HELPER) == recent.known("token", secret)
    shop.act("elsewhere", lambda unit: unit.connection.execute(delete(tables.access)))
    clock.now += timedelta(seconds=passed)
    assert known is (recent.known("token", secret) is not None)


@SQLITE_ONLY
def test_strangers_are_not_kept(shop: Shop) -> None:
    """A token made right after it was refused is good at once; a session's secret is no token."""
    recent = Recent(shop)
    assert recent.known("token", "nobody") is None
    secret = new_token(shop, "phone", Role.HELPER)
    assert recent.known("token", secret) is not None
    assert recent.known("session", secret) is None


@SQLITE_ONLY
def test_sign_out_counts_at_once(app: Flask, shop: Shop) -> None:
    """Who signed out is asked to sign in by the very next page."""
    owner = Visitor("owner", Role.OWNER)
    secret = shop.act("owner", lambda unit: unit.access.make_session(owner))
    client = app.test_client()
    client.set_cookie(COOKIE, secret)
    before = client.get("/api/slots").status_code
    client.post("/logout", headers={"X-CSRF-Token": access.csrf_of(secret)})
    client.set_cookie(COOKIE, secret)
    assert (200, 401) == (before, client.get("/api/slots").status_code)


def taken(attempts: Attempts, addresses: list[str]) -> int:
    """How many of these tries were let through, made all at once."""

    def take(address: str) -> bool:
        try:
            attempts.take(address)
        except Problem as problem:
            assert 429 == problem.status
            return False
        return True

    with ThreadPoolExecutor(20) as threads:
        return sum(threads.map(take, addresses))


def test_a_neighbours_tries_are_his_own() -> None:
    """Of many tries at once from one address ten are let through, and another address still has its own."""
    attempts = Attempts()
    assert 10 == taken(attempts, ["192.0.2.7"] * 60)
    assert 10 == taken(attempts, ["192.0.2.8"] * 60)


def test_tries_of_all_addresses_are_bounded() -> None:
    """After sixty tries a minute each address has two, the owner's phone too; this machine's own keeps its ten."""
    attempts = Attempts()
    assert 60 == sum(taken(attempts, [f"192.0.2.{number}"] * 20) for number in range(6))
    assert 2 == taken(attempts, ["192.0.2.8"] * 20)
    assert 10 == taken(attempts, ["127.0.0.1"] * 20)


def test_addresses_of_one_network_are_one() -> None:
    """A device has as many IPv6 addresses as it likes; they share their tries."""
    attempts = Attempts()
    assert 10 == taken(attempts, [f"2001:db8::{number:x}" for number in range(40)])
    assert 10 == taken(attempts, ["::1"] * 20)


def test_a_right_password_costs_no_try() -> None:
    """Who signs in again and again is not counted."""
    attempts = Attempts(most=1)
    for _ in range(3):
        attempts.take("192.0.2.7")
        attempts.good("192.0.2.7")
    attempts.take("192.0.2.7")
    with pytest.raises(Problem):
        attempts.take("192.0.2.7")
    attempts.good("192.0.2.8")
