"""What a live camera's looks come to."""

from __future__ import annotations

from itertools import pairwise

import pytest
from hypothesis import given
from hypothesis import strategies as st

from labels import slot_code
from scanflow.vision.camera.glances import AGREE, GONE, MISSED, Glances, ours

CARD, OTHER = slot_code.card_text("D014"), slot_code.card_text("D015")
STEPS = st.floats(5, 400)
"""Milliseconds from one look to the next."""


def shown(glances: Glances, frames: list[tuple[float, tuple[str, ...]]], at: float = 0.0) -> list[str]:
    """What is scanned by looks at these, each so long after the one before."""
    scanned = []
    for step, texts in frames:
        at += step
        scanned.append(glances.take(texts, at))
    return [text for text in scanned if text is not None]


@given(st.lists(st.tuples(STEPS, st.booleans()), max_size=60))
def test_one_appearance_is_one_scan_whatever_drops_out(frames: list[tuple[float, bool]]) -> None:
    """A card that is seen again within 1.5 s has not left: it is scanned once, as soon as two looks in 1 s agree."""
    at, glances = 0.0, []
    seen: list[float] = []
    for step, there in frames:
        at += step
        there = there and (not seen or at - seen[-1] <= GONE)
        if there:
            seen.append(at)
        glances.append((step, (CARD,) if there else ()))
    agreeing = any(later - earlier <= AGREE for earlier, later in pairwise(seen))

    assert [CARD] * agreeing == shown(Glances(), glances)


@given(st.lists(st.tuples(STEPS, st.sampled_from([(CARD,), (OTHER,), (CARD, OTHER), ()])), max_size=60))
def test_no_scan_without_two_looks_at_it_alone(frames: list[tuple[float, tuple[str, ...]]]) -> None:
    """Whatever comes and goes, two looks that show only this card come before each of its scans, and are not used
    twice.
    """
    scanned = shown(Glances(), frames)
    for text in (CARD, OTHER):
        assert 2 * scanned.count(text) <= [texts for _, texts in frames].count((text,))


def test_two_cards_at_once() -> None:
    """Neither is scanned; one that was scanned before has not left meanwhile; the other is once it is alone."""
    glances = Glances()
    assert [CARD] == shown(glances, [(40, (CARD,))] * 3)
    assert [] == shown(glances, [(400, (CARD, OTHER))] * 10, at=120)
    assert [] == shown(glances, [(40, (CARD,))] * 3, at=4120)
    assert [OTHER] == shown(glances, [(40, (OTHER,))] * 3, at=4240)


@pytest.mark.parametrize(
    ("step", "glances", "again"),
    [(40, 60, True), (40, 30, False), (800, MISSED, True), (800, MISSED - 1, False)],
    ids=["2.4 s", "1.2 s", "4 slow looks", "3 slow looks"],
)
def test_the_same_card_again_after_it_was_away(step: float, glances: int, again: bool) -> None:
    """It has left when at least four looks missed it over more than 1.5 s, and then two looks scan it again."""
    tracker = Glances()
    assert [CARD] == shown(tracker, [(40, (CARD,))] * 2)
    away, back = [(step, ())] * glances, [(40, (CARD,))] * 5

    assert [CARD] * again == shown(tracker, [*away, *back], at=80)


def test_shut() -> None:
    """While nothing may be scanned a card is only looked at; it is scanned when that is over."""
    glances = Glances()
    assert [None] * 3 == [glances.take((CARD,), at, shut=True) for at in (0, 40, 80)]
    assert (CARD, True) == (glances.take((CARD,), 120), glances.scanned(CARD))


@pytest.mark.parametrize(
    ("texts", "expected"),
    [
        ((CARD, "2012345678903", CARD), (CARD,)),
        ((slot_code.slip_text(12), "0000"), (slot_code.slip_text(12),)),
        (("D0146", "0000"), ("D0146", "0000")),
        ((), ()),
    ],
    ids=["card", "slip", "neither", "nothing"],
)
def test_ours(texts: tuple[str, ...], expected: tuple[str, ...]) -> None:
    """Cards and slips, each once, and other codes beside them don't count; without any it is whatever was read."""
    assert expected == ours(texts)
