"""Keys through the browser's own input, at the times that they say: a machine under load changes nothing."""

from __future__ import annotations

import time
from collections.abc import Iterable

from keyboards import Stroke
from playwright.sync_api import Page


def send(page: Page, strokes: Iterable[Stroke], *, timed: bool = True) -> None:
    """Press and release each key; their times count from now, or are those at which they arrive."""
    session = page.context.new_cdp_session(page)
    begin = time.time()
    for stroke in strokes:
        typed = "\r" if stroke.key == "Enter" else stroke.key if len(stroke.key) == 1 else ""
        key = {"key": stroke.key, "code": stroke.code, "modifiers": 8 if stroke.shift else 0}
        if timed:
            key["timestamp"] = begin + stroke.at / 1000
        down = {"type": "keyDown", "text": typed} if typed else {"type": "rawKeyDown"}
        session.send("Input.dispatchKeyEvent", key | down)
        session.send("Input.dispatchKeyEvent", key | {"type": "keyUp"})
    session.detach()
