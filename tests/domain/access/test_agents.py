"""Browsers in plain words."""

from __future__ import annotations

import doctest

import pytest

from scanflow.domain.access import agents

KHTML = "AppleWebKit/537.36 (KHTML, like Gecko)"


@pytest.mark.parametrize(
    ("agent", "wanted"),
    [
        # forms of User-Agent from memory
        (
            f"Mozilla/5.0 (Windows NT 10.0; Win64; x64) {KHTML} Chrome/120.0.0.0 Safari/537.36",
            "Chrome, Windows computer",
        ),
        (f"Mozilla/5.0 (Windows NT 10.0) {KHTML} Chrome/120.0 Safari/537.36 Edg/120.0", "Edge, Windows computer"),
        (f"Mozilla/5.0 (Linux; Android 10; K) {KHTML} Chrome/120.0 Mobile Safari/537.36", "Chrome, Android phone"),
        ("Mozilla/5.0 (iPhone; CPU iPhone OS 18_0 like Mac OS X) Version/18.0 Safari/604.1", "Safari, iPhone"),
        ("Mozilla/5.0 (Macintosh; Intel Mac OS X 10.15; rv:140.0) Gecko/20100101 Firefox/140.0", "Firefox, Mac"),
        ("<script>alert(1)</script>", "A browser"),
    ],
)
def test_words(agent: str, wanted: str) -> None:
    """The browser that says most of itself, and its device; nothing of what else was sent."""
    assert wanted == agents.words(agent)


def test_doctests() -> None:
    assert doctest.testmod(agents).failed == 0
