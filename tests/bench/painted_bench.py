"""Prints the time from a scan's last key to its painted verdict, to a bare page's: `python tests/bench painted`.

The bare page sends one fetch for a bare durable insert behind the same server and shows a word. Both are asked in
turns. `answer` is the same from the answer's arrival on. Goal: a verdict is painted 100 ms after its answer at most.
"""

from __future__ import annotations

from statistics import median, quantiles
from urllib.parse import urljoin

from actions_bench import at_a_page
from keyboards import Stroke, press
from playwright.sync_api import Page
from real_keys import send

from labels import slot_code

COUNT = 80
CARD = slot_code.card_text("D001")

MARKS = """
window.times = [];
let begin = 0;
let answer = 0;
window.addEventListener("keydown", ({ key, timeStamp }) => { if (key === "Enter") begin = timeStamp; }, true);
const ask = window.fetch;
window.fetch = async (path, ...rest) => {
  const reply = await ask(path, ...rest);
  if (rest[0]?.method === "POST") answer = performance.now();
  return reply;
};
let shown = null;
new MutationObserver(() => {
  const now = document.querySelector("dialog, .word");
  if (!now || now === shown) return;
  shown = now;
  requestAnimationFrame(() => {
    const { port1, port2 } = new MessageChannel();
    port1.onmessage = () => times.push([performance.now() - begin, performance.now() - answer]);
    port2.postMessage(null);
  });
}).observe(document, { childList: true, subtree: true });
"""
"""The frame is painted right after its animation callbacks; a message sent by one arrives behind the painting."""

BARE = """() => document.addEventListener("keydown", async ({ key }) => {
  if (key !== "Enter") return;
  const headers = { "Content-Type": "application/json" };
  const body = JSON.stringify({ key: crypto.randomUUID(), text: "D0015" });
  const reply = await fetch("/bare/", { method: "POST", headers, body });
  const word = document.createElement("p");
  word.className = "word";
  word.textContent = (await reply.json()).key;
  document.querySelector(".word")?.remove();
  document.body.append(word);
})"""


def bare_page(station: Page) -> Page:
    """A page of the same server with nothing but the fetch."""
    browser = station.context.browser
    assert browser is not None
    page = browser.new_page()
    page.route("**/bare/page", lambda route: route.fulfill(body="<!doctype html><title>Bare</title>"))
    page.goto(urljoin(station.url, "/bare/page"))
    page.evaluate(MARKS)
    page.evaluate(BARE)
    return page


def scan(page: Page, number: int) -> None:
    """One scan by real keys, until it is painted and the page has come to rest."""
    page.bring_to_front()
    strokes = [press(char, 8.0 * place) for place, char in enumerate(CARD)]
    send(page, [*strokes, Stroke("Enter", "Enter", 8.0 * len(CARD))], timed=False)
    while page.evaluate("times.length") < number:
        page.wait_for_timeout(10)
    page.wait_for_timeout(150)


def main() -> None:
    with at_a_page() as (person, _, _):
        station = person.page
        station.goto("/tray")
        station.evaluate(MARKS)
        bare = bare_page(station)
        for number in range(1, COUNT + 1):
            scan(station, number)
            scan(bare, number)
        times = {name: page.evaluate("times.slice(5)") for name, page in (("verdict", station), ("bare", bare))}
    print("page      scans  key to painted: median ms  p95 ms   answer to painted: median ms  p95 ms")
    middle = {}
    for name, both in times.items():
        whole, rest = ([pair[which] for pair in both] for which in (0, 1))
        middle[name] = median(whole)
        late, rest_late = (quantiles(each, n=20)[18] for each in (whole, rest))
        print(f"{name:9} {len(both):5} {median(whole):26.1f} {late:7.1f} {median(rest):29.1f} {rest_late:7.1f}")
    print(f"ratio of medians, key to painted: {middle['verdict'] / middle['bare']:.2f}")
    print("goal: answer to painted at most 100 ms")


if __name__ == "__main__":
    main()
