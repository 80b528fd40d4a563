"""A scanner that types is told from a person, whatever their quirks; nothing of a scan stays in a field."""

from __future__ import annotations

from dataclasses import replace
from html import escape
from itertools import product
from random import Random
from typing import Any

import keyboards
from furnished import furnish
from live_shop import Live, sign_in
from playwright.sync_api import Page, expect
from real_keys import send

from labels import slot_code

PAGE = """<!doctype html><meta charset="utf-8"><title>Keys</title><link rel="icon" href="data:,">
<body data-check="CHECK" data-digits="DIGITS"><input id="box">
<form><input id="line" value="abc"><input id="many" type="number" value="12">
<textarea id="note">Scratched, look</textarea><button id="press" type="button">Press</button></form>"""

HEAR = """async () => {
  window.heard = { scans: [], unclear: [], entered: [], refused: 0 };
  const box = document.querySelector("#box");
  document.querySelector("form").addEventListener("submit", (event) => {
    event.preventDefault();
    heard.submitted = true;
  });
  const { listen } = await import("/static/js/scanning/wedge.js");
  listen(() => box, {
    scanned: (text, via) => heard.scans.push([text, via]),
    entered: () => { heard.entered.push(box.value); box.value = ""; },
    unclear: (texts) => heard.unclear.push(texts),
    shut: () => window.shut ?? false,
    refused: () => heard.refused++,
  });
}"""

PLAY = """(samples) => {
  let [now, ids] = [1000, 0];
  const timers = new Map();
  window.setTimeout = (go, ms) => { timers.set(++ids, { at: now + ms, go }); return ids; };
  window.clearTimeout = (id) => timers.delete(id);
  performance.now = () => now;
  const until = (end) => {
    for (;;) {
      const next = [...timers].filter(([, { at }]) => at <= end).sort((a, b) => a[1].at - b[1].at)[0];
      if (!next) break;
      timers.delete(next[0]);
      now = next[1].at;
      next[1].go();
    }
    now = end;
  };
  const insert = (field, key) => {
    if (field.type === "number") field.value = /\\d/.test(key) ? field.value + key : "";
    else field.setRangeText(key, field.selectionStart, field.selectionEnd, "end");
  };
  const all = ["box", "line", "many", "note"].map((id) => document.getElementById(id));
  return samples.map(({ focus, strokes }) => {
    heard.scans = []; heard.unclear = []; heard.entered = []; heard.submitted = false;
    all.forEach((field) => (field.value = field.defaultValue));
    document.activeElement.blur();
    document.getElementById(focus)?.focus();
    const begun = document.activeElement;
    begun.setSelectionRange && begun.type !== "number" && begun.setSelectionRange(2, 2);
    const start = now + 3000;
    let native = "";
    for (const stroke of strokes) {
      until(start + stroke.at);
      const event = new KeyboardEvent("keydown", { key: stroke.key, code: stroke.code, shiftKey: stroke.shift,
        ctrlKey: stroke.ctrl, repeat: stroke.held, isComposing: stroke.composing, modifierAltGraph: stroke.sign,
        bubbles: true, cancelable: true });
      Object.defineProperty(event, "timeStamp", { value: now });
      document.activeElement.dispatchEvent(event);
      if (event.defaultPrevented) continue;
      const field = document.activeElement;
      if (stroke.key.length > 1 || stroke.ctrl) native += ["Dead", "Process"].includes(stroke.key) ? "" : stroke.key;
      else if (all.includes(field)) insert(field, stroke.key);
    }
    until(now + 3000);
    const fields = Object.fromEntries(all.map((field) => [field.id, field.value]));
    return { ...structuredClone(heard), native, fields };
  });
}"""

SEED = 20
FIELDS = {"box": "", "line": "abc", "many": "12", "note": "Scratched, look"}


def hear(page: Page, check: str = "mod_11_10", digits: str = "{}") -> None:
    """A page with a station's box and some fields, on which the scans that are heard are written down."""
    html = PAGE.replace("CHECK", check).replace("DIGITS", escape(digits))
    page.route("**/keys", lambda route: route.fulfill(body=html, content_type="text/html; charset=utf-8"))
    page.goto("/keys")
    page.evaluate(HEAR)


def played(page: Page, samples: list[keyboards.Sample]) -> list[dict[str, Any]]:
    """What came of each sample, its keys sent at their own times by a clock that need not wait."""
    found: list[dict[str, Any]] = page.evaluate(PLAY, [sample.as_json() for sample in samples])
    return found


def test_scans(page: Page) -> None:
    """500 of 500 scans with random quirks are taken whole, and leave every field and form as it was."""
    hear(page)
    random = Random(SEED)
    samples = [keyboards.scan(random) for _ in range(500)]
    wrong = []
    for sample, found in zip(samples, played(page, samples), strict=True):
        texts = [text for text, via in found["scans"] if via == "wedge"]
        as_wanted = len(texts) == len(sample.scans) if sample.any_text else texts == sample.scans
        if not as_wanted or found["fields"] != FIELDS or found["native"] or found["submitted"] or found["entered"]:
            wrong.append((sample.name, found))
    assert [] == wrong


def test_typing(page: Page) -> None:
    """Not one of 1,000 typed texts is taken for a scan, and each stands where it was typed."""
    hear(page)
    random = Random(SEED)
    samples = [keyboards.typing(random) for _ in range(1000)]
    wrong = []
    for sample, found in zip(samples, played(page, samples), strict=True):
        place = "box" if sample.focus == "nothing" else sample.focus
        begun = FIELDS[place]
        text = found["entered"] == [sample.typed] if sample.entered else None
        if text is None:
            text = found["fields"][place] == begun[:2] + sample.typed + begun[2:]
        if not text or found["scans"] or found["unclear"]:
            wrong.append((sample.name, found))
    assert [] == wrong


def test_layouts_never_make_another_card() -> None:
    """What a card's text becomes on a French or German keyboard is never another card's, whatever its letters."""
    for moved in ({"A": "Q", "Q": "A", "W": "Z", "Z": "W"}, {"Y": "Z", "Z": "Y"}):
        sections = [*keyboards.LETTERS, *map("".join, product(keyboards.LETTERS, repeat=2))]
        pairs = [(each, "".join(moved.get(letter, letter) for letter in each)) for each in sections]
        changed = [pair for pair in pairs if pair[0] != pair[1]]
        assert [] == [pair for pair in changed if len({slot_code.calc_check_digit(f"{each}014") for each in pair}) == 1]


def test_two_whole_texts(page: Page) -> None:
    """Where a letter stood in the box and the scan is whole with and without it, neither card is guessed."""
    hear(page)
    check = slot_code.calc_check_digit
    section = next(each for each in keyboards.LETTERS if check(f"L{each}014") == check(f"{each}014"))
    code = f"{section}014"
    page.evaluate("() => { document.querySelector('#box').value = 'L'; }")
    send(page, [keyboards.press(char, 8.0 * n) for n, char in enumerate(slot_code.card_text(code))])
    page.wait_for_function("heard.unclear.length > 0")
    text = slot_code.card_text(code)
    assert ([], [[text, f"L{text}"]]) == (page.evaluate("heard.scans"), page.evaluate("heard.unclear"))


def test_a_scanner_that_stalls_before_its_last_key(page: Page) -> None:
    """Where the begin of a card's text is whole by itself it is waited for the rest, by the width of the section."""
    hear(page, digits='{"C": 3, "LP": 2}')
    codes = [*(f"C{number:03}" for number in range(1000)), *(f"LP{number:02}" for number in range(100))]
    texts = [slot_code.card_text(code) for code in codes]
    samples = []
    for place, text in enumerate(texts):
        strokes = [keyboards.press(char, 8.0 * n) for n, char in enumerate(text)]
        late = strokes[-2].at + (70, 100, 150)[place % 3]
        end = [keyboards.Stroke("Enter", "Enter", late + 8)] if place % 2 else []
        samples.append(keyboards.Sample(text, "nothing", [*strokes[:-1], replace(strokes[-1], at=late), *end]))
    assert [[text] for text in texts] == [[text for text, _ in found["scans"]] for found in played(page, samples)]


def test_the_same_card_without_check_again(page: Page) -> None:
    """Where cards have no check the text that was scanned last is no word: its next beep leaves a field."""
    hear(page, "none")
    strokes = [keyboards.press(char, 8.0 * n) for n, char in enumerate("0421")]
    end = keyboards.Stroke("Enter", "Enter", 40)
    heard = played(page, [keyboards.Sample("0421", focus, [*strokes, end]) for focus in ("nothing", "note")])
    assert [([["0421", "wedge"]], FIELDS)] * 2 == [(found["scans"], found["fields"]) for found in heard]


def test_cards_without_check(page: Page) -> None:
    """In a room whose cards have no check only what was keyed counts, and short codes leave a field too."""
    hear(page, "none")
    for host, scans in (("us", [["Z14", "wedge"]]), ("us", [["D014", "wedge"]]), ("de", [["Y014", "wedge"]])):
        text = scans[0][0].translate(str.maketrans("YZ", "ZY")) if host == "de" else scans[0][0]
        strokes = [keyboards.press(char, 8.0 * n, "us", host) for n, char in enumerate(text)]
        focus = "note" if len(text) > 3 else "box"
        found = played(page, [keyboards.Sample(text, focus, [*strokes, keyboards.Stroke("Enter", "Enter", 40)])])[0]
        heard = found["scans"] or [[found["entered"][0], "wedge"]]
        assert (scans, FIELDS) == (heard, found["fields"])


def test_grammar(page: Page) -> None:
    """What the page takes for a whole text is a card's or a slip's by the grammar of codes, its check right."""
    hear(page)
    random = Random(SEED)
    texts = [keyboards.card(random) for _ in range(300)] + [
        slot_code.slip_text(random.randint(1, 10**7)) for _ in range(100)
    ]
    texts += [text[:-1] + random.choice("0123456789") for text in texts] + [
        "ORD000000",
        "D014-5",
        "]C0D0145",
        "]C1D0145",
        "D014",
    ]
    module = 'await import("/static/js/scanning/card_text.js")'
    script = f"async (texts) => {{ const {{ isWhole }} = {module}; return texts.map(isWhole); }}"
    assert [_is_whole(text) for text in texts] == page.evaluate(script, texts)


def _is_whole(text: str) -> bool:
    for parse in (slot_code.parse_card, slot_code.parse_slip):
        try:
            parse(text)
        except slot_code.CodeError:
            continue
        return True
    return False


VALUES = "Object.fromEntries(['box', 'line', 'many', 'note'].map((id) => [id, document.getElementById(id).value]))"


def test_real_keys(page: Page) -> None:
    """By the browser's own keys too: a scan leaves the field that has the focus, and typing stays in it."""
    hear(page)
    random = Random(SEED)
    plain = [
        each for each in (keyboards.scan(random) for _ in range(200)) if not any(s.ctrl or s.sign for s in each.strokes)
    ]
    samples = [each for each in plain if not each.any_text and len(each.scans) == 1][:30]
    for sample in samples:
        page.evaluate(
            "() => { heard.scans = []; document.querySelector('form').reset(); document.activeElement.blur(); }"
        )
        if sample.focus != "nothing":
            page.focus(f"#{sample.focus}")
        send(page, sample.strokes)
        page.wait_for_function("heard.scans.length > 0", timeout=5000)
        page.wait_for_timeout(20)
        fields = page.evaluate(VALUES)
        assert (sample.name, [[sample.scans[0], "wedge"]], FIELDS) == (
            sample.name,
            page.evaluate("heard.scans"),
            fields,
        )
    page.focus("#note")
    page.evaluate("note.setSelectionRange(99, 99)")
    page.keyboard.type(" at D0145", delay=90)
    assert "Scratched, look at D0145" == page.input_value("#note")


def test_whole_texts(page: Page) -> None:
    """A card's text pasted beside fields is taken; into a field it is pasted; an on-screen scanner's text is a scan."""
    hear(page)
    page.context.grant_permissions(["clipboard-read", "clipboard-write"])
    page.evaluate("navigator.clipboard.writeText(' D0145 ')")
    for field in ("press", "box"):
        page.focus(f"#{field}")
        page.keyboard.press("Control+V")
    page.focus("#note")
    page.keyboard.press("Control+V")
    page.keyboard.insert_text("D0145")
    page.wait_for_function("heard.scans.length > 2")
    assert [["D0145", "typed"], ["D0145", "typed"], ["D0145", "wedge"]] == page.evaluate("heard.scans")
    assert "D0145" in page.input_value("#note")
    assert "" == page.input_value("#box")


def test_note_on_a_page_of_the_shop(live: Live, page: Page) -> None:
    """With the card scanned while the title is written, the title stays, and the card stands in its own field."""
    furnish(live.shop, 4)
    sign_in(page, live)
    page.goto("/put-away")
    page.focus("#listing")
    page.keyboard.type("L-7", delay=90)
    page.wait_for_timeout(250)
    send(page, [keyboards.press(char, 8.0 * n) for n, char in enumerate(slot_code.card_text("D009"))])
    expect(page.locator("#text")).to_have_value(slot_code.card_text("D009"))
    expect(page.locator("#listing")).to_have_value("L-7")
    expect(page.locator("#title")).to_be_focused()


def test_written_form_is_not_left(live: Live, page: Page) -> None:
    """A scan on a page with something written in it offers a way to what was scanned, and leaves nothing."""
    furnish(live.shop, 4)
    sign_in(page, live)
    page.goto("/settings")
    page.fill("#name", "Another name")
    send(page, [keyboards.press(char, 8.0 * n) for n, char in enumerate(slot_code.card_text("S001"))])
    expect(page.locator(".scanned a")).to_have_text(slot_code.card_text("S001"))
    expect(page.locator("#name")).to_have_value("Another name")
    page.locator(".scanned a").press("Enter")
    page.wait_for_url("**/slots/S001")
