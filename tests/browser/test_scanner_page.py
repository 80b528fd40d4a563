"""The page to try a scanner says what arrives and what to change."""

from __future__ import annotations

import keyboards
import pytest
from live_shop import Live, sign_in
from playwright.sync_api import Page, expect
from real_keys import send

from labels import slot_code
from scanflow.web.pages.picking.scanner import TEST_TEXT

CARD = slot_code.card_text("D014")


@pytest.mark.parametrize(
    ("text", "host", "pace", "end", "word", "sentence"),
    [
        (TEST_TEXT, "us", 9, True, "Ready", "Every character arrives as it is printed."),
        (f"]C0{CARD}", "us", 9, True, "Ready", "names the kind of bar code"),
        (TEST_TEXT, "fr", 9, True, "Works", "Set the scanner's country to this computer's."),
        (TEST_TEXT, "de", 9, True, "Works", "Set the scanner's country to this computer's."),
        (CARD, "us", 9, False, "Works", "Set the suffix to Enter."),
        (f"X{TEST_TEXT}", "us", 9, True, "Works", "Set no prefix."),
        (TEST_TEXT, "us", 150, True, "Change it", "Set the delay between keys to none."),
    ],
)
def test_advice(live: Live, page: Page, text: str, host: str, pace: int, end: bool, word: str, sentence: str) -> None:
    """A word for all of it, and a sentence for what is to be changed, in terms that every scanner's booklet has."""
    sign_in(page, live)
    page.goto("/scanner")
    strokes = [keyboards.press(char, 1.0 * pace * n, "us", host) for n, char in enumerate(text)]
    last = [keyboards.Stroke("Enter", "Enter", pace * len(text))] if end else []
    send(page, [*strokes, *last])
    expect(page.locator("#verdict .no")).to_have_text(word)
    expect(page.locator("#advice")).to_contain_text(sentence)
    expect(page.locator("#keys tbody tr")).to_have_count(len(strokes) + len(last))
