"""A round goes on without network: noted on the phone, settled in order later, nothing lost or doubled."""

from __future__ import annotations

import os
import re
import shutil
import signal
import time
from collections.abc import Callable
from dataclasses import replace
from datetime import datetime
from pathlib import Path

import chromium
import control_names
import pytest
from furnished import Furnished, furnish, waiting
from live_shop import PASSWORD, Live, anew, free_port, go_on, serving, sign_in, type_fast
from page_text import figures
from playwright.sync_api import Browser, BrowserContext, Error, Page, expect

from labels import slot_code
from labels.slot_code import card_text
from scanflow.domain import events
from scanflow.domain.things import Line, Scan
from scanflow.shop import Shop
from scanflow.storage.database import Database
from scanflow.vision.workers import Readers
from scanflow.workflow import orders
from scanflow.workflow.picking import rounds
from scanflow.workflow.stock import cards
from scanflow.workflow.times import instant

WORKER = True

# A worker that is active serves the next page; whether it has taken over the present one is Chromium's own pace.
KEPT = """async (path) => Boolean(
  (await navigator.serviceWorker.getRegistration())?.active?.state === "activated" &&
  await caches.match(path, { cacheName: "round" }) &&
  await caches.match("/static/js/scanning/station.js"))"""
HELD = """() => new Promise((go) => (indexedDB.open("scanflow").onsuccess = ({ target }) => {
  const all = target.result.transaction("scans").objectStore("scans").getAll();
  all.onsuccess = () => go(all.result.map((each) => each.scan.text));
}))"""

NOTHING_HELD = f"async () => !(await ({HELD})()).length"


def state(shop: Shop, line: Line) -> str:
    with shop.looking() as unit:
        return unit.get(Line, line.id).state.value  # type: ignore[union-attr]


def recorded(shop: Shop, code: str) -> int:
    with shop.looking() as unit:
        return len(unit.find(Scan, code=code))


def ages_of(shop: Shop, code: str) -> list[int]:
    """How long each scan of this card had waited, in ms."""
    with shop.looking() as unit:
        return [told.age_ms for _, told in unit.told_since(0) if isinstance(told, events.Scanned) and told.code == code]


def until(page: Page, script: str, arg: str | None = None) -> None:
    """Until an asynchronous script on the page says true, which may be loaded anew meanwhile."""

    def says() -> bool:
        try:
            return bool(page.evaluate(script, arg))
        except Error:  # the page was left while it ran
            return False

    end = time.monotonic() + 20
    while not says():
        assert time.monotonic() < end, script
        page.wait_for_timeout(50)


def walk(page: Page, room: Furnished) -> str:
    """Opens the round and waits until the phone keeps it; its address."""
    assert room.round is not None
    path = f"/rounds/{room.round.id}"
    page.goto(path)
    until(page, KEPT, path)
    return path


def note(page: Page, code: str) -> None:
    """Scan without network, and let the list's answer go by."""
    type_fast(page, card_text(code))
    expect(page.locator("dialog.noted.good")).to_contain_text("Provisional")
    expect(page.locator("dialog")).to_have_count(0, timeout=4000)


def away(live: Live, context: BrowserContext) -> None:
    """No network; a new page has it for a moment until the browser says so, and in that moment nothing gets through."""
    live.cut.set()
    context.set_offline(True)


def back(live: Live, context: BrowserContext) -> None:
    live.cut.clear()
    context.set_offline(False)


def test_a_round_goes_on_without_network(live: Live, page: Page) -> None:
    """The list answers in a look of its own; closed and opened again nothing is lost; later all is settled in order,
    and what the service refuses says what to do until it is done.
    """
    room = furnish(live.shop, 25)
    (one, first), (two, second), (three, third), *_ = waiting(live.shop, room)
    sign_in(page, live)
    path, context = walk(page, room), page.context
    done = int(page.locator("h1").inner_text().split()[0])

    away(live, context)
    expect(page.locator(".frame")).to_contain_text("No network")
    note(page, one)
    expect(page.locator("h1")).to_contain_text(figures(done + 1, 9, 1))
    expect(page.locator(".face .plate")).to_contain_text(re.compile(two[1:]))
    note(page, one)
    type_fast(page, card_text("D009"))
    expect(page.locator("dialog.noted")).to_contain_text("Not on this list")
    page.wait_for_timeout(2000)
    go_on(page)
    assert [card_text(one)] == page.evaluate(HELD)

    page.close()
    page = context.new_page()
    page.goto(path)
    expect(page.locator("h1")).to_contain_text("1 of them provisional")
    note(page, two)
    note(page, three)
    assert [card_text(each) for each in (one, two, three)] == page.evaluate(HELD)
    assert 3 * ["waiting"] == [state(live.shop, line) for line in (first, second, third)]

    live.shop.act("owner", lambda unit: orders.cancel(unit, second.order, orders.Cancel()))
    back(live, context)
    duty = page.locator(".putback .line")
    expect(duty).to_contain_text(f"Put back {two}", timeout=20_000)
    expect(duty).to_contain_text(re.compile(r"no longer wants .* since .*\d\d:\d\d\. Put it back in [A-Z]-\d"))
    expect(page.locator(".frame")).to_have_count(0, timeout=15_000)
    expect(page.locator("h1")).not_to_contain_text("provisional")
    assert ["picked", "cancelled", "picked"] == [state(live.shop, line) for line in (first, second, third)]
    assert [1, 1, 1] == [recorded(live.shop, code) for code in (one, two, three)]
    ages = [age for code in (one, two, three) for age in ages_of(live.shop, code)]
    assert [True, True, True] == [1000 <= age < 120_000 for age in ages]
    assert sorted(ages, reverse=True) == ages
    page.goto("/table")
    expect(duty).to_contain_text(f"Put back {two}")
    page.get_by_role("button", name=control_names.IT_IS_BACK.format(two)).press("Enter")
    expect(duty).to_have_count(0)
    page.reload()
    expect(page.locator("h1")).to_be_visible()
    expect(duty).to_have_count(0)
    assert [] == page.evaluate(HELD)


def test_a_round_that_was_closed_meanwhile(live: Live, page: Page) -> None:
    """Late picks count while their lines wait, the one at which the network went too; another page sends them."""
    room = furnish(live.shop, 25)
    (one, first), (two, second), *_ = waiting(live.shop, room)
    sign_in(page, live)
    walk(page, room)
    live.cut.set()  # gone, and the browser does not know
    note(page, one)
    note(page, two)
    live.shop.act("owner", lambda unit: rounds.close_round(unit, room.round.id))  # type: ignore[union-attr]
    page.goto("/slots")
    live.cut.clear()
    page.reload()
    until(page, NOTHING_HELD)
    assert ["picked", "picked"] == [state(live.shop, line) for line in (first, second)]
    expect(page.locator(".putback")).to_have_count(0)


def test_the_table_never_works_without_network(live: Live, page: Page) -> None:
    """It says so, takes nothing, and as a page it is not there; the open round is one press away."""
    room = furnish(live.shop, 25)
    sign_in(page, live)
    path = walk(page, room)
    page.goto("/table")
    expect(page.locator("h1")).to_be_visible()
    away(live, page.context)
    expect(page.locator(".frame")).to_contain_text("The table needs the network")
    type_fast(page, card_text("D002"))
    expect(page.locator("dialog")).to_have_count(0)
    assert {} == page.evaluate("({ ...sessionStorage })")
    page.reload()
    expect(page.locator("h1")).to_have_text("No network")
    page.get_by_role("link", name=control_names.GO_ON_WITH_THE_ROUND).press("Enter")
    page.wait_for_url(f"**{path}")
    expect(page.locator("h1")).to_contain_text("of 9 stops done")


def test_signed_in_anew_elsewhere(live: Live, page: Page) -> None:
    """What waited at a page of an earlier sign-in is recorded, and nothing is told to be put back."""
    room = furnish(live.shop, 25)
    (one, first), *_ = waiting(live.shop, room)
    sign_in(page, live)
    walk(page, room)
    away(live, page.context)
    expect(page.locator(".frame")).to_contain_text("No network")
    note(page, one)
    page.evaluate("() => { performance.now = () => 3600e3; }")  # the page has stood for an hour
    anew(page)
    back(live, page.context)
    until(page, NOTHING_HELD)
    expect(page.locator("h1")).not_to_contain_text("provisional")
    expect(page.locator(".putback .line")).to_have_count(0)
    assert ("picked", 1) == (state(live.shop, first), recorded(live.shop, one))


def test_nothing_is_kept_after_signing_out(live: Live, page: Page) -> None:
    """The round's page is kept while its reader is signed in, and no other page ever."""
    room = furnish(live.shop, 25)
    sign_in(page, live)
    path = walk(page, room)
    page.goto("/orders")
    kept = "async () => (await (await caches.open('round')).keys()).map(({ url }) => new URL(url).pathname)"
    assert {path, "/edges.css"} == set(page.evaluate(kept))
    page.goto("/trust")
    page.get_by_role("button", name=control_names.SIGN_OUT_HERE).press("Enter")
    page.wait_for_url("**/login")
    assert [] == page.evaluate(kept)
    away(live, page.context)
    page.goto(path)
    expect(page.locator("h1")).to_have_text("No network")


def test_with_network_no_page_is_stale(live: Live, page: Page) -> None:
    """What another station did is on the round's page when it is loaded again; a round that is over is kept no more.

    A scan that is sent at once has not waited.
    """
    room = furnish(live.shop, 25)
    (_, line), *_ = waiting(live.shop, room)
    sign_in(page, live)
    path = walk(page, room)
    type_fast(page, card_text("D015"))
    go_on(page)
    assert [0] == ages_of(live.shop, "D015")
    before = page.locator("h1").inner_text()
    live.shop.act("owner", lambda unit: orders.cancel(unit, line.order, orders.Cancel()))
    page.reload()
    expect(page.locator("h1")).not_to_have_text(before)
    live.shop.act("owner", lambda unit: rounds.close_round(unit, room.round.id))  # type: ignore[union-attr]
    page.reload()
    until(page, "async (path) => !(await caches.match(path))", path)


def named(shop: Shop, text: str) -> str | None:
    """The slot that the service takes this text for."""
    with shop.looking() as unit:
        try:
            return cards.named(unit, text, cards.widths(unit)).code
        except slot_code.CodeError:
            return None


@pytest.mark.parametrize("check", ["mod_11_10", "none"])
def test_the_list_takes_the_texts_that_the_service_takes(live: Live, page: Page, check: str) -> None:
    """Every text of a table means the same card to the list without network as to the service: whole texts, bare codes,
    adopted texts, O for 0, identifiers, spaces, and wrong checks.
    """
    room = furnish(live.shop, 25)
    (one, _), (two, _), *_ = waiting(live.shop, room)
    aliases = {"3600-0815": one, "box 17": two}
    if check == "none":
        live.shop.act("owner", lambda unit: unit.set_settings(replace(unit.settings, check=check)))  # type: ignore[arg-type]
        for text, code in aliases.items():
            live.shop.act(
                "owner", lambda unit, text=text, code=code: cards.adopt(unit, cards.Adopt(text=text, code=code))
            )
    listed = {code for code, _ in waiting(live.shop, room)}
    texts = [*aliases, "36000815", "BOX17", "box 18", "D999", card_text("D999")]
    for code in (one, two):
        whole = card_text(code)
        wrong = whole[:-1] + str((int(whole[-1]) + 1) % 10)
        texts += [whole, code, f"]C0{whole}", f" {whole.lower()} ", whole[0] + whole[1:].replace("0", "O"), wrong]
    sign_in(page, live)
    walk(page, room)
    script = """async (texts) => {
      const { judge } = await import("/static/js/picking/round.js");
      return texts.map((text) => judge(text, [])).map((said) => (said.good ? said.code : null));
    }"""
    means = [code if (code := named(live.shop, text)) in listed else None for text in texts]
    assert dict(zip(texts, means, strict=True)) == dict(zip(texts, page.evaluate(script, texts), strict=True))
    assert ({one, two} if check == "none" else {None}) == {named(live.shop, text) for text in aliases}


def kill_browser(folder: Path) -> None:
    """As a phone does without asking: SIGKILL for the browser that has this profile."""
    for entry in Path("/proc").iterdir():
        if entry.name.isdigit() and f"--user-data-dir={folder}\0".encode() in _command(entry):
            os.kill(int(entry.name), signal.SIGKILL)


def _command(entry: Path) -> bytes:
    try:
        return (entry / "cmdline").read_bytes()
    except OSError:
        return b""


def test_service_and_phone_are_killed(
    sqlite_template: Path, tmp_path: Path, readers: Readers, launch: Callable[..., Browser], browser: Browser
) -> None:
    """A service killed in mid-scan and a browser killed right after: each scan is there once when both are back, also
    where the phone has to sign in again first.
    """
    shutil.copy(sqlite_template, tmp_path / "shop.db")
    port = free_port()
    url, profile = f"sqlite:///{tmp_path / 'shop.db'}", tmp_path / "profile"
    shop = Shop(Database(url), readers)
    room = furnish(shop, 25)
    (one, first), (two, second), *_ = waiting(shop, room)
    live = Live(shop, f"http://127.0.0.1:{port}")
    options = {"executable_path": chromium.program(), "args": ["--no-sandbox", "--disable-gpu"]}

    def phone() -> BrowserContext:
        return browser.browser_type.launch_persistent_context(profile, base_url=live.address, **options)  # type: ignore[arg-type]

    with serving(url, port) as service:
        context = phone()
        page = context.new_page()
        sign_in(page, live)
        path = walk(page, room)
        service.kill()
        service.wait()
    note(page, one)
    type_fast(page, card_text(two))
    expect(page.locator("dialog.noted.good")).to_be_visible()
    kill_browser(profile)
    context = phone()
    page = context.new_page()
    page.goto(path)
    expect(page.locator("h1")).to_contain_text("2 of them provisional")
    context.clear_cookies()  # a browser writes them late
    with serving(url, port):
        page.wait_for_url("**/login?next=*", timeout=30_000)
        assert [card_text(one), card_text(two)] == page.evaluate(HELD)
        page.keyboard.type(PASSWORD)
        page.keyboard.press("Enter")
        page.wait_for_url(f"**{path}")
        until(page, NOTHING_HELD)
    context.close()
    assert ["picked", "picked"] == [state(shop, line) for line in (first, second)]
    assert [1, 1] == [recorded(shop, code) for code in (one, two)]
    shop.database.close()


@pytest.mark.parametrize(
    ("now", "said"),
    [
        ("1970-01-01T00:00:05Z", "2000-01-01T00:00:00.000Z"),
        ("2026-11-03T14:05:00Z", "2026-11-03T14:05:00.000Z"),
        ("2345-01-01T00:00:00Z", "2199-12-31T23:59:59.999Z"),
    ],
)
def test_a_clock_far_off_loses_no_scan(live: Live, page: Page, now: str, said: str) -> None:
    """A phone whose clock is in another age says the nearest time that the service takes of a scan that waited."""
    page.clock.set_fixed_time(datetime.fromisoformat(now))
    page.goto(f"{live.address}/login")
    assert said == page.evaluate('async () => (await import("/static/js/page/api.js")).clock()')
    assert instant(said, "UTC") is not None
