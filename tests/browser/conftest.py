"""A running service over a shop of its own, and a browser before it."""

from __future__ import annotations

import shutil
import threading
from collections.abc import Callable, Iterable, Iterator
from pathlib import Path
from typing import Any

import chromium
import pytest
from listening import listening
from live_shop import Live
from playwright.sync_api import Browser, Page, ViewportSize, expect, sync_playwright

from scanflow.shop import Shop
from scanflow.storage.database import Database
from scanflow.vision.workers import Readers
from scanflow.web import create_app

ARGUMENTS = ("--no-sandbox", "--disable-background-networking", "--disable-gpu")
expect.set_options(timeout=20_000)  # the machine may be busy


@pytest.fixture
def live(sqlite_template: Path, tmp_path: Path, readers: Readers) -> Iterator[Live]:
    path = tmp_path / "shop.db"
    shutil.copy(sqlite_template, path)
    shop = Shop(Database(f"sqlite:///{path}"), readers)
    cut = threading.Event()
    app = create_app(shop, names=["room.test"])

    def service(environ: dict[str, Any], start_response: Callable[..., Any]) -> Iterable[bytes]:
        if cut.is_set() and environ["PATH_INFO"] == "/api/scans":
            start_response("503 Service Unavailable", [("Content-Length", "0")])
            return []
        return app(environ, start_response)

    with listening(service, shop) as server:
        yield Live(shop, f"http://127.0.0.1:{server.effective_port}", cut)
    shop.database.close()


@pytest.fixture(scope="session")
def launch() -> Iterator[Callable[..., Browser]]:
    """Starts Chromium with more arguments; the tests fail where there is none."""
    with sync_playwright() as playwright:
        yield lambda *more: playwright.chromium.launch(executable_path=chromium.program(), args=[*ARGUMENTS, *more])


@pytest.fixture(scope="session")
def browser(launch: Callable[..., Browser]) -> Iterator[Browser]:
    browser = launch()
    yield browser
    browser.close()


@pytest.fixture
def page(browser: Browser, live: Live, request: pytest.FixtureRequest) -> Iterator[Page]:
    """A phone's page that fails the test for any error in a script and any request to another host.

    Only a module with `WORKER` set has the service worker: what it fetches a test can't hold up or change on its way.
    """
    workers = "allow" if getattr(request.module, "WORKER", False) else "block"
    size = ViewportSize(width=390, height=780)
    context = browser.new_context(viewport=size, base_url=live.address, service_workers=workers)
    page = context.new_page()
    errors: list[str] = []
    ours = (live.address, f"blob:{live.address}", "data:")
    page.on("pageerror", lambda error: errors.append(str(error)))
    page.on("request", lambda call: None if call.url.startswith(ours) else errors.append(call.url))
    yield page
    context.close()
    assert [] == errors
