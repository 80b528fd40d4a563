"""Every type of event: what it says of itself, and that the ledger gives it back."""

from __future__ import annotations

import json
from collections.abc import Mapping
from dataclasses import MISSING, FrozenInstanceError, fields
from types import NoneType
from typing import Any, get_args, get_origin, get_type_hints

import pytest

from scanflow.domain import events
from scanflow.domain.events import orders
from scanflow.domain.events.kinds import event

every = pytest.mark.parametrize("of", events.KINDS.values(), ids=list(events.KINDS))
PLAIN = {str: "x", int: 3, bool: True}


def some(hint: Any, empty: bool) -> Any:
    """A value of a field's type; None or nothing in it where it may be `empty`."""
    if hint in PLAIN:
        return PLAIN[hint]
    if hint is orders.LineTold:
        return {"line": "l1", "reference": "D014", "stay": None if empty else "s1", "hold": None}
    origin, parts = get_origin(hint) or hint, get_args(hint)
    if origin is tuple:
        return () if empty else (some(parts[0], empty), some(parts[0], empty))
    if origin is Mapping:
        return {} if empty else {"some": 1, "list": ["a"]}
    assert NoneType in parts, hint
    return None if empty else some(next(each for each in parts if each is not NoneType), empty)


def one(of: type[events.Event], empty: bool = False) -> events.Event:
    hints = get_type_hints(of)
    return of(**{each.name: some(hints[each.name], empty) for each in fields(of)})


def stored(told: events.Event) -> dict[str, Any]:
    kept: dict[str, Any] = json.loads(json.dumps(told.data()))
    return kept


@every
@pytest.mark.parametrize("empty", [False, True], ids=["full", "empty"])
def test_the_ledger_gives_it_back(of: type[events.Event], empty: bool) -> None:
    """What is recorded is read again as the same event, whatever a later version says beside it."""
    told = one(of, empty)
    assert told == events.read(of.kind, stored(told))
    if of is not events.SettingsChanged:
        assert told == events.read(of.kind, stored(told) | {"now": ["slots D014 tray 0"], "later": 1})


@every
def test_it_says_what_it_moves(of: type[events.Event]) -> None:
    """Each type says itself which of its fields name what is elsewhere after it; a count knows how to find those."""
    assert "moves" in vars(of)
    assert set(of.moves) <= {each.name for each in fields(of)}
    asked = {events.Noun.SLOT, events.Noun.LINE, events.Noun.ORDER}
    moved = one(of).moved()
    assert (bool(of.moves), True) == (bool(moved) or issubclass(of, events.Scanned), asked >= {n for n, _ in moved})


@every
def test_it_stays_as_it_was_told(of: type[events.Event]) -> None:
    """No field can be changed."""
    for each in fields(of):
        with pytest.raises(FrozenInstanceError):
            setattr(one(of), each.name, "other")


@every
def test_what_lacks_something_is_unknown(of: type[events.Event]) -> None:
    """An entry that lacks a field without a default is no event of its kind, and breaks nothing."""
    needed = [each.name.rstrip("_") for each in fields(of) if each.default is MISSING]
    for name in needed if of is not events.SettingsChanged else ():
        kept = {key: value for key, value in stored(one(of)).items() if key != name}
        assert events.Unknown(of.kind, kept) == events.read(of.kind, kept)


def test_a_kind_of_a_later_version() -> None:
    """It is kept as it stands, is about nothing, and moves nothing."""
    told = events.read("sold by lot", {"code": "D014"})
    assert events.Unknown("sold by lot", {"code": "D014"}) == told
    assert ({"code": "D014"}, (), ()) == (told.data(), told.about(), told.moved())


def test_a_kind_has_one_type() -> None:
    """A second type of a kind is refused, and so is one that does not say what it moves."""
    with pytest.raises(AssertionError, match="two types of put away"):
        event("put away", moves=())(type("Again", (events.Event,), {}))
    with pytest.raises(TypeError, match="moves"):
        event("put away again")  # type: ignore[call-arg]


def test_what_it_is_about() -> None:
    """Its slots, stays and all else that its fields name, those in its lines too."""
    line = orders.LineTold(line="l1", reference="D014", stay="s1", hold=None)
    told = events.OrderReceived(
        order="o1", number="7", channel="fair", lines=(line, {**line, "line": "l2", "stay": None})
    )
    assert [("order", "o1"), ("line", "l1"), ("line", "l2"), ("stay", "s1")] == [*told.about()]
    moved = events.Moved(stay="s1", code="D014", to="D020", new_stay="s2")
    assert [("stay", "s1"), ("slot", "D014"), ("slot", "D020"), ("stay", "s2")] == [*moved.about()]


def scanned(verdict: str, code: str | None) -> events.Scanned:
    return events.Scanned(
        station="table",
        spot="main",
        key="k1",
        text=("D0145",),
        via="wedge",
        client_at=None,
        take_out=False,
        verdict=verdict,
        reason=None,
        changed=True,
        code=code,
        order_number=None,
        line="l1",
        line_state="packed",
        parcel="p1",
        parcel_state="closed",
        released=("D020",) if verdict == "accepted" else (),
    )


@pytest.mark.parametrize(
    ("told", "moved"),
    [
        (events.CardLost(code="D014"), [("slot", "D014")]),
        (events.Moved(stay="s1", code="D014", to="D020", new_stay="s2"), [("slot", "D014"), ("slot", "D020")]),
        (events.Undone(key="k1", line="l1", line_state="waiting"), [("line", "l1")]),
        (events.ParcelReopened(parcel="p1", orders=("o1", "o2")), [("order", "o1"), ("order", "o2")]),
        (scanned("accepted", "D014"), [("slot", "D014"), ("slot", "D020")]),
        (scanned("accepted", None), [("slot", "D020")]),
        (scanned("refused", "D014"), []),
        (
            events.FindingReopened(stocktake="c1", finding="missing-D014", how="lost", after=3),
            [("slot", "D014")],
        ),
        (events.FindingReopened(stocktake="c1", finding="missing-D014", how="ignore", after=3), []),
        (events.LineHeld(line="l1", why="Not this thing"), []),
    ],
)
def test_what_it_moves(told: events.Event, moved: list[tuple[str, str]]) -> None:
    """The slots, lines and orders whose things or cards are elsewhere; a refused card and an ignored finding stay."""
    assert moved == [*told.moved()]
