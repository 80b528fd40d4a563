"""What tests say of a running service and the browser before it; the fixtures are in `browser/conftest.py`."""

from __future__ import annotations

import threading
from dataclasses import dataclass, field

from playwright.sync_api import Page, expect

from scanflow.shop import Shop
from scanflow.storage import access

PASSWORD = "saddle-brown-7"


@dataclass(frozen=True, slots=True)
class Live:
    """A shop and the address of its service. While `cut` is set no scan gets through to it."""

    shop: Shop
    address: str
    cut: threading.Event = field(default_factory=threading.Event)


def sign_in(page: Page, live: Live) -> None:
    """Set the owner's password and come in with it, by the keyboard."""
    live.shop.act("owner", lambda unit: access.set_password(unit.connection, PASSWORD, unit.at))
    page.goto("/login")
    expect(page.locator("input[name=password]")).to_be_focused()
    page.keyboard.type(PASSWORD)
    page.keyboard.press("Enter")
    page.wait_for_url(f"{live.address}/")


def type_fast(page: Page, text: str) -> None:
    """What a scanner that types does: keys a few milliseconds apart, then Enter. The page's scripts are there."""
    page.wait_for_load_state()
    page.keyboard.type(text, delay=8)
    page.keyboard.press("Enter")
