"""Prints what the first view of a page weighs, and how long its scripts run: `python tests/bench first_view`.

Cold cache, a phone's size, a shop of 25 things with pictures. The bare page has one script that does nothing, and comes
from no server; all are opened in turns. Goals: 150 kB and 100 ms of script.
"""

from __future__ import annotations

from collections.abc import Iterator, Mapping
from contextlib import contextmanager
from dataclasses import dataclass
from pathlib import Path
from statistics import median
from tempfile import TemporaryDirectory

import chromium
from furnished import Furnished, furnish
from paperwork import jpeg
from playwright.sync_api import Browser, sync_playwright
from verdict_bench import serving

from scanflow.domain.access import Role, Visitor
from scanflow.shop import Shop
from scanflow.storage.database import Database
from scanflow.vision import photographs
from scanflow.web.door.visitors import COOKIE
from scanflow.workflow.stock import photos

TIMES = 15
THINGS = 25
MOST_BYTES, MOST_SCRIPT_MS = 150_000, 100
SETTLED_MS = 300
"""Nothing came for so long: the view is whole."""

PHONE = {"width": 360, "height": 740}
ARGUMENTS = ["--no-sandbox", "--disable-background-networking", "--disable-gpu"]
BARE = '<!doctype html><title>Bare</title><script type="module" src="/bare/nothing.js"></script>'


@dataclass(frozen=True, slots=True)
class View:
    """What one opening of a page took: bytes on the wire, requests, ms of script and until it was loaded."""

    bytes: int
    requests: int
    script_ms: float
    loaded_ms: float


def first_view(browser: Browser, address: str, secret: str) -> View:
    """Opens a page in a browser that has seen nothing of the service, without its worker's copies for later."""
    context = browser.new_context(viewport=PHONE, service_workers="block")  # type: ignore[arg-type]
    context.add_cookies([{"name": COOKIE, "value": secret, "url": address}])
    context.route("**/bare/page", lambda route: route.fulfill(body=BARE, content_type="text/html"))
    context.route("**/bare/nothing.js", lambda route: route.fulfill(body="", content_type="text/javascript"))
    page = context.new_page()
    wire = context.new_cdp_session(page)
    sizes: list[float] = []
    wire.on("Network.loadingFinished", lambda event: sizes.append(event["encodedDataLength"]))
    for part in ("Network", "Performance"):
        wire.send(f"{part}.enable")
    page.goto(address)
    came = -1
    while came < len(sizes):  # a stream of events never ends, so no waiting for an idle network
        came = len(sizes)
        page.wait_for_timeout(SETTLED_MS)
    numbers = {each["name"]: each["value"] for each in wire.send("Performance.getMetrics")["metrics"]}
    loaded = page.evaluate("performance.getEntriesByType('navigation')[0].loadEventEnd")
    context.close()
    return View(round(sum(sizes)), len(sizes), 1000 * numbers["ScriptDuration"], loaded)


@contextmanager
def at_a_shop() -> Iterator[tuple[str, str, Furnished]]:
    """Address of a service, the secret of a session of its owner, and what is in its room."""
    owner = Visitor("owner", Role.OWNER)
    with TemporaryDirectory() as folder:
        shop = Shop(Database(f"sqlite:///{folder}/shop.db"))
        room = furnish(shop, THINGS)
        picture = photographs.photo(shop.readers, jpeg())
        for stay in room.stays:
            shop.act("owner", lambda unit, name=stay.id: photos.keep(unit, name, picture))
        secret = shop.act("owner", lambda unit: unit.access.make_session(owner))
        with serving(Path(folder)) as port:
            yield f"http://127.0.0.1:{port}", secret, room
        shop.close()


def main() -> None:
    with at_a_shop() as (at, secret, room), sync_playwright() as playwright:
        assert room.round is not None
        browser = playwright.chromium.launch(executable_path=chromium.program(), args=ARGUMENTS)
        pages = {"bare": "/bare/page", "today": "/", "round": f"/rounds/{room.round.id}", "table": "/table"}
        views: Mapping[str, list[View]] = {name: [] for name in pages}
        for _ in range(TIMES):
            for name, path in pages.items():
                views[name].append(first_view(browser, at + path, secret))
        browser.close()
    print("page       kB  requests  script: median ms  loaded: median ms  ratio to bare")
    middle = {name: median(each.loaded_ms for each in seen) for name, seen in views.items()}
    for name, seen in views.items():
        script = median(each.script_ms for each in seen)
        row = f"{name:8} {max(each.bytes for each in seen) / 1000:5.1f} {seen[0].requests:9} {script:18.1f}"
        print(f"{row} {middle[name]:18.1f} {middle[name] / middle['bare']:14.2f}")
    print(f"goals: {MOST_BYTES / 1000:.0f} kB, {MOST_SCRIPT_MS} ms of script")


if __name__ == "__main__":
    main()
