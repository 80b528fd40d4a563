"""What tests say of a running service and the browser before it; the fixtures are in `browser/conftest.py`."""

from __future__ import annotations

import socket
import threading
import time
from collections.abc import Iterator
from contextlib import contextmanager
from dataclasses import dataclass, field

import control_names
import keyboards
from playwright.sync_api import Page, expect
from real_keys import send
from served import Server, forked_services

from scanflow.shop import Shop

PASSWORD = "saddle-brown-7"
PACE = 8
"""Milliseconds between two keys of a scanner."""


@dataclass(frozen=True, slots=True)
class Live:
    """A shop and the address of its service. While `cut` is set no scan gets through to it."""

    shop: Shop
    address: str
    cut: threading.Event = field(default_factory=threading.Event)


def sign_in(page: Page, live: Live) -> None:
    """Set the owner's password and come in with it, by the keyboard."""
    live.shop.act("owner", lambda unit: unit.access.set_password(PASSWORD))
    page.goto("/login")
    expect(page.locator("input[name=password]")).to_be_focused()
    page.keyboard.type(PASSWORD)
    page.keyboard.press("Enter")
    page.wait_for_url(f"{live.address}/")


def anew(page: Page) -> None:
    """Sign in once more, as in another window of this browser: pages that are open have the token of before."""
    assert page.context.request.post("/login", form={"password": PASSWORD}).ok


def type_fast(page: Page, text: str) -> None:
    """What a scanner that types does: keys a few milliseconds apart, then Enter, by the times that they say. Were they
    as late as a busy machine sends them, the page would take them for a person's. The page's scripts are there.
    """
    page.wait_for_load_state()
    begun, enter = time.time(), PACE * len(text)
    strokes = [keyboards.press(char, PACE * number) for number, char in enumerate(text)]
    send(page, [*strokes, keyboards.Stroke("Enter", "Enter", enter)])
    page.wait_for_timeout(max(0, enter - 1000 * (time.time() - begun)))  # the next key says a later time


def free_port() -> int:
    with socket.create_server(("127.0.0.1", 0)) as free:
        return int(free.getsockname()[1])


@contextmanager
def serving(url: str, port: int) -> Iterator[Server]:
    """A service of its own process, at a port that it finds again; it is killed in the end."""
    with forked_services() as services:
        server = services.start(url, port=port)
        try:
            yield server
        finally:
            if server.runs():
                server.kill()


def go_on(page: Page, key: str = "Enter") -> None:
    """Press a no away, when it has stood long enough to be read."""
    button = page.get_by_role("button", name=control_names.GO_ON)
    expect(button).to_be_enabled()
    button.press(key)
