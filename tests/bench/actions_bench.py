"""Prints how many actions a day of ten orders takes at the pages: `python tests/bench actions`.

An action is a scan, a key press (a chord counts once) or a tap. Letters of titles are counted apart: they are typed in
any case. A wrong card at the table and its correction are part of the day. Beside it stands the least that would do.
"""

from __future__ import annotations

import time
from collections import Counter
from collections.abc import Callable, Iterator, Sequence
from contextlib import contextmanager
from pathlib import Path
from tempfile import TemporaryDirectory

import chromium
import control_names
from live_shop import type_fast
from playwright.sync_api import Locator, Page, sync_playwright
from verdict_bench import serving

from labels import slot_code
from scanflow.domain.access import Role, Visitor
from scanflow.domain.life import LineState, StayState
from scanflow.domain.orders.incoming import IncomingLine, IncomingOrder
from scanflow.domain.things import Line, Order, Slot, Stay, Stop
from scanflow.shop import Shop
from scanflow.storage.database import Database
from scanflow.web.door.visitors import COOKIE
from scanflow.workflow import stock
from scanflow.workflow.orders import receiving
from scanflow.workflow.ports import Unit

OWNER = Visitor("owner", Role.OWNER)
ORDERS = (1, 1, 1, 1, 1, 2, 2, 2, 2, 3)
"""Things of each order."""
TITLES = ("Rear derailleur", "Leather saddle", "Dynamo lamp", "Crank set", "Front wheel", "Quill stem", "Bell")
ARGUMENTS = ["--no-sandbox", "--disable-background-networking", "--disable-gpu"]


class Person:
    """Works at a page by scanner, keyboard and finger; every action is counted under the step of the day."""

    def __init__(self, page: Page) -> None:
        self.page = page
        self._keyboard = page.context.new_cdp_session(page)
        self.step = ""
        self.counts: dict[str, Counter[str]] = {}

    def begin(self, step: str) -> None:
        self.step = step
        self.counts[step] = Counter()

    def _count(self, kind: str, times: int = 1) -> None:
        self.counts[self.step][kind] += times

    def press(self, keys: str) -> None:
        self._count("presses")
        self.page.keyboard.press(keys)

    def access_key(self, letter: str) -> None:
        """Alt with the letter. Chromium acts on the character, which Playwright's own chords leave out."""
        self._count("presses")
        key = {
            "modifiers": 1,
            "key": letter,
            "code": f"Key{letter.upper()}",
            "windowsVirtualKeyCode": ord(letter.upper()),
        }
        for kind, more in (("rawKeyDown", {}), ("char", {"text": letter, "unmodifiedText": letter}), ("keyUp", {})):
            self._keyboard.send("Input.dispatchKeyEvent", {"type": kind, **key, **more})

    def tap(self, what: Locator) -> None:
        self._count("taps")
        what.click()

    def type(self, words: str) -> None:
        self._count("letters", len(words))
        self.page.keyboard.type(words)

    def scan_into_page(self, text: str) -> None:
        self._count("scans")
        type_fast(self.page, text)

    def scan(self, text: str, wanted: str = "accepted") -> None:
        """At a station: until the verdict is on the screen."""
        with self.page.expect_response("**/api/scans") as answered:
            self.scan_into_page(text)
        verdict = answered.value.json()
        if verdict["verdict"] != wanted:
            raise RuntimeError(f"{text} was {verdict['verdict']}: {verdict['advice']}")
        self.page.wait_for_selector("dialog.yes" if wanted == "accepted" else "dialog.no")


@contextmanager
def at_a_page(*more: str) -> Iterator[tuple[Person, Shop, Path]]:
    """A person before a browser started with more arguments, signed in, the shop, and a folder."""
    with TemporaryDirectory() as folder, sync_playwright() as playwright:
        shop = Shop(Database(f"sqlite:///{folder}/shop.db"))
        shop.act("owner", _build)
        with serving(Path(folder)) as port:
            browser = playwright.chromium.launch(executable_path=chromium.program(), args=[*ARGUMENTS, *more])
            page = browser.new_page(base_url=f"http://127.0.0.1:{port}", viewport={"width": 1100, "height": 900})
            secret = shop.act("owner", lambda unit: unit.access.make_session(OWNER))
            page.context.add_cookies([{"name": COOKIE, "value": secret, "url": f"http://127.0.0.1:{port}"}])
            page.goto("/")
            yield Person(page), shop, Path(folder)
            browser.close()
        shop.close()


def _build(unit: Unit) -> None:
    stock.add_section(unit, stock.AddSection(code="D", name="Parts", slots_per_bin=5, colour="yellow"))
    stock.add_slots(unit, "D", stock.AddSlots(count=40))


def put_away(person: Person, count: int) -> list[str]:
    """With each card in hand, whose scan ends the thing before; the references copied into the listings."""
    references = []
    person.access_key("p")
    person.page.wait_for_selector("#title")
    for number in range(1, count + 1):
        text = slot_code.card_text(slot_code.make("D", number))
        person.scan_into_page(text)
        person.page.wait_for_selector(f"#text[value='{text}']" if number > 1 else "#title:focus")
        if number > 1:
            references.append(copied(person))
        person.type(TITLES[number % len(TITLES)])
        person.page.wait_for_timeout(400)  # the scanner is taken up
    person.press("Enter")
    person.page.wait_for_url("**/put-away/*")
    return [*references, copied(person)]


def copied(person: Person) -> str:
    """The reference of what was put away just now, into its listing."""
    person.page.wait_for_load_state()
    person.access_key("c")
    person.page.wait_for_selector("text=Copied")
    return person.page.locator("#reference").inner_text()


def load_orders(person: Person, folder: Path, references: list[str]) -> None:
    path = folder / "orders.csv"
    left = iter(references)
    rows = [f"B-{n},{next(left)}" for n, things in enumerate(ORDERS, 1) for _ in range(things)]
    path.write_text("\n".join(["Order number,Reference", *rows]))
    person.access_key("o")
    person.page.wait_for_url("**/orders")
    person.tap(person.page.locator("main a[href='/orders/load']").first)
    with person.page.expect_file_chooser() as chooser:
        person.tap(person.page.locator("#file"))
    person.press("Enter")  # in the system's dialog, on the newest file
    chooser.value.set_files(path)
    person.page.wait_for_selector("text=Check the file")
    person.press("Enter")
    person.page.wait_for_selector("text=The file is loaded")


def walk(person: Person, shop: Shop) -> None:
    person.press("Enter")  # go to today
    person.page.wait_for_selector("h1:text('Today')")
    person.tap(person.page.locator("main .next"))
    person.page.wait_for_url("**/rounds/*")
    with shop.looking() as unit:
        lines = [unit.get(Line, stop.line) for stop in unit.find(Stop)]
        codes = [stay.code for line in lines if line and (stay := unit.get(Stay, line.stay or ""))]
    for code in codes:
        person.scan(slot_code.card_text(code))
    person.page.wait_for_selector("h1:text('All stops are done')")
    person.page.wait_for_selector("dialog.yes", state="detached")
    person.press("Enter")
    person.page.wait_for_url("**/table")


def pack(person: Person, shop: Shop) -> list[str]:
    """Each order's cards; at the second order one of another comes first. The codes whose cards are free now."""
    codes = _codes(shop)
    for place, (number, mine) in enumerate(codes.items()):
        person.tap(person.page.get_by_role("button", name=f"Pack {number}", exact=True))
        person.page.wait_for_selector("text=order being packed")
        if place == 1:
            person.scan(slot_code.card_text(list(codes.values())[2][0]), "refused")
            person.page.wait_for_timeout(
                600
            )  # nobody reads and presses sooner; an Enter this close is the scanner's own
            person.press("Enter")
            person.page.wait_for_selector("dialog.no", state="detached")
        for code in mine:
            person.scan(slot_code.card_text(code))
        person.page.wait_for_selector("h1:text('Which order do you pack?')")
    return [code for mine in codes.values() for code in mine]


def _codes(shop: Shop) -> dict[str, list[str]]:
    with shop.looking() as unit:
        return {
            order.number: [
                stay.code for line in unit.find(Line, order=order.id) if (stay := unit.get(Stay, line.stay or ""))
            ]
            for order in unit.find(Order)
        }


def bring_back(person: Person, codes: list[str]) -> None:
    person.access_key("y")
    person.page.wait_for_url("**/tray")
    for code in codes:
        person.scan(slot_code.card_text(code))


def _things(shop: Shop, titles: Sequence[str]) -> list[Stay]:
    """More things in stock, put away by somebody else."""

    def put(unit: Unit) -> list[Stay]:
        return [stock.put_away(unit, stock.PutAway(title=title, section="D")) for title in titles]

    return shop.act("owner", put)


def settle(person: Person, shop: Shop) -> None:
    """Three lines that may mean another thing, from today to the last."""
    stays = _things(shop, ["Brass bell", "Chain guard", "Pump"])
    references = [slot_code.reference(stay.code, stay.turn) for stay in stays]
    for number, (each, title) in enumerate(zip(references, ["Chain guard", "Pump", "Brass bell"], strict=True)):
        order = IncomingOrder(f"H-{number}", lines=(IncomingLine(each, title),))
        shop.act("owner", lambda unit, order=order: receiving.receive(unit, order))
    person.page.goto("/")
    person.tap(person.page.locator("main .next"))
    for left in (2, 1, 0):
        person.tap(person.page.locator("main .next"))
        person.page.wait_for_load_state()
        with shop.looking() as unit:
            assert left == sum(bool(line.holds) for line in unit.find(Line))


def move(person: Person, shop: Shop) -> None:
    """A thing in hand goes into a free slot whose card is in the other hand; from any page, by its card."""
    (stay,) = _things(shop, ["Bottle cage"])
    person.page.goto("/")
    person.scan_into_page(slot_code.card_text(stay.code))
    person.page.wait_for_url("**/slots/*")
    person.tap(person.page.locator("main .next"))
    person.page.wait_for_url("**/stays/*")
    person.tap(person.page.locator("summary", has_text="Move it to another slot"))
    person.scan_into_page(slot_code.card_text("D040"))
    person.page.wait_for_selector("text=Bring card")


def count_bin(person: Person, shop: Shop) -> None:
    """A bin of three things from its own page, card by card."""
    with shop.looking() as unit:
        stays = [each for each in unit.find(Stay) if each.state is StayState.STORED]
        bins = {each.code: unit.get(Slot, each.code).bin for each in stays}  # type: ignore[union-attr]
    name = bins[stays[0].code]
    person.page.goto(f"/shelf?bin={name}")
    person.tap(person.page.get_by_role("link", name="Count this bin"))
    person.tap(person.page.locator("main .next"))
    person.page.wait_for_url("**/counts/*")
    person.tap(person.page.get_by_text(control_names.GO_THROUGH_BY_HAND))
    for code in [code for code, where in bins.items() if where == name]:
        person.scan_into_page(slot_code.card_text(code))
    person.tap(person.page.get_by_role("button", name=control_names.THAT_IS_ALL.format(name)))


def find(person: Person, shop: Shop) -> None:
    """A thing of which one knows the number on its card."""
    person.page.goto("/orders")
    person.press("Alt+f")
    person.page.locator(".find input").focus()
    person.type("D40")
    person.press("Enter")
    person.page.wait_for_url("**/slots/D040")


STOOD = 1200
"""Things that stand in a room whose owner moves in."""


def move_in(person: Person, shop: Shop) -> None:
    """All that stands here, from a file, as far as the walk that sees each thing."""

    def build(unit: Unit) -> None:
        stock.add_section(unit, stock.AddSection(code="M", name="Mixed", slots_per_bin=20, digits=4))
        stock.add_slots(unit, "M", stock.AddSlots(count=STOOD))

    shop.act("owner", build)
    rows = (f"M{number:04},{TITLES[number % len(TITLES)]} {number}" for number in range(1, STOOD + 1))
    with TemporaryDirectory() as folder:
        path = Path(folder) / "stock.csv"
        path.write_text("\n".join(["Number,Title", *rows]))
        person.access_key("l")
        person.page.wait_for_url("**/slots")
        person.tap(person.page.locator("main a[href='/stock/load']"))
        with person.page.expect_file_chooser() as chooser:
            person.tap(person.page.locator("#file"))
        person.press("Enter")  # in the system's dialog, on the newest file
        begun = time.perf_counter()
        chooser.value.set_files(path)
        person.page.wait_for_selector("text=Check the file")
        person.press("Enter")
        person.page.wait_for_selector("text=The file is loaded")
    print(f"{STOOD} things moved in by file; the program took {time.perf_counter() - begun:.1f} s")


ACTS: dict[str, tuple[Callable[[Person, Shop], None], int, str]] = {
    "settle three lines": (settle, 4, "begin, each line"),
    "move a thing": (move, 3, "its card, move, the other card"),
    "find by number": (find, 2, "search, Enter"),
    "move in": (move_in, 4, "the page, the file (a tap, Enter), and yes"),
    "count a bin": (count_bin, 6, "count, by hand, each card, that is all"),
}
"""What else is done often, with the least number of actions."""


def main() -> None:
    things = sum(ORDERS)
    least = {
        "put away": (2 * things + 2, "begin; card and copy for each thing; Enter at the end"),
        "load orders": (4, "the page, the file (a tap, Enter), and yes"),
        "round": (things + 2, "begin, each card, end"),
        "table": (things + len(ORDERS) + 2, "each order, each card; the wrong card, and go on"),
        "tray": (things, "each card"),
    }
    with at_a_page() as (person, shop, folder):
        person.begin("put away")
        references = put_away(person, things)
        person.begin("load orders")
        load_orders(person, folder, references)
        person.begin("round")
        walk(person, shop)
        person.begin("table")
        released = pack(person, shop)
        person.begin("tray")
        bring_back(person, released)
        with shop.looking() as unit:
            assert things == len(unit.find(Line, state=LineState.RELEASED))
        for act, (do, _, _) in ACTS.items():
            person.begin(act)
            do(person, shop)
    print(f"{len(ORDERS)} orders of {things} things   scans  presses  taps  actions  least   (letters typed)")
    total = Counter[str]()
    for step, counts in person.counts.items():
        if step in least:
            _print(step, counts, *least[step])
            total += counts
    _print("the day", total, sum(count for count, _ in least.values()), "")
    for act, (_, fewest, why) in ACTS.items():
        _print(act, person.counts[act], fewest, why)


def _print(step: str, counts: Counter[str], least: int, why: str) -> None:
    actions = counts["scans"] + counts["presses"] + counts["taps"]
    row = f"{step:25} {counts['scans']:7} {counts['presses']:8} {counts['taps']:5} {actions:8} {least:6}"
    print(f"{row}   ({counts['letters']}) {why}")


if __name__ == "__main__":
    main()
