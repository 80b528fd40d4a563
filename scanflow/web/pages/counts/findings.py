"""What a count found amiss: a short list of things to do, each with the picture that shows why, put right or left."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass
from datetime import datetime
from itertools import groupby
from typing import Any
from urllib.parse import quote

from flask import Blueprint, redirect, request, url_for
from flask.typing import ResponseReturnValue

from scanflow.domain.counts.findings import Finding, FindingKind
from scanflow.domain.counts.stocktake import Certainty, Look
from scanflow.domain.derive import unseen
from scanflow.domain.life import StocktakeState
from scanflow.domain.things import Order
from scanflow.domain.words import FindingWords, place, said
from scanflow.web import count_rights, count_words
from scanflow.web.count_words import Way
from scanflow.web.pages.declare import STAFF, page
from scanflow.web.pages.forms import sent
from scanflow.web.pages.rendering import Refusal, act, offset, render
from scanflow.web.pages.room_view import room
from scanflow.workflow.counts import resolving, stocktakes, taking_back
from scanflow.workflow.counts.report import title_of
from scanflow.workflow.counts.stocktakes import TrackedFinding
from scanflow.workflow.ports import Unit, must

blueprint = Blueprint("count_findings", __name__)
PHOTOS = 3
"""Photos that are shown of one finding."""
SIZE = 20
"""Findings on one page."""
SETTLED = 50
"""The latest that are shown of those settled."""


@dataclass(frozen=True, slots=True)
class FindingShown:
    """A finding as the page has it.

    `looks` are the newest photos that show it, one of each place, `of` the card that they are cut to, `by_hand` the
    places where it was held up. `closer`: the place and the look of which a photo from nearer is wanted first. `again`:
    the place to photograph. `at`: how many to do come before it. `unseen`: its thing came by file, and was not seen.
    """

    found: TrackedFinding
    said: FindingWords
    title: str | None
    section: str
    ways: list[Way]
    looks: list[Look]
    of: str
    by_hand: list[str]
    closer: tuple[str, str] | None
    again: str
    at: int
    unseen: bool

    @property
    def name(self) -> str:
        """What stands on its plate."""
        return self.found.finding.subject

    @property
    def anchor(self) -> str:
        return quote(self.found.finding.id)


@dataclass(frozen=True, slots=True)
class Unresolved:
    """Why a finding was not resolved as somebody asked, and what was filled in: it is asked again in its place."""

    finding: str
    how: str
    said: str
    filled: Mapping[str, str]


@page(blueprint, "GET", "/counts/<id>/findings", roles=STAFF, live=True)
def show(id: str, said: str = "", status: int = 200, refused: Unresolved | None = None) -> ResponseReturnValue:
    unit = room()
    now = stocktakes.state(unit, id)
    todo = _todo(now)
    done = sorted((each for each in now.found if each.resolved), key=_settled, reverse=True)
    at = _place(todo, refused.finding) if refused else None
    skip = _page(min(offset(), max(0, len(todo) - 1)) if at is None else at)
    shown = [_shown(unit, now, each, at) for at, each in enumerate(todo[skip : skip + SIZE], skip)]
    settled = [_shown(unit, now, each, 0) for each in done[:SETTLED]]
    if refused and (at is None or refused.how not in (way.how for way in shown[at - skip].ways)):
        said = f"{refused.finding.partition('-')[2]}: {refused.said}"
    return render(
        "counts/findings.html",
        count=now.count,
        words=count_words.subject(now.count),
        todo=shown,
        blocks=_blocks(shown),
        done=settled,
        all_todo=len(todo),
        all_done=len(done),
        skip=skip,
        size=SIZE,
        resolved=count_words.RESOLVED,
        may_undo=count_rights.may_undo,
        place=place,
        left=len(now.places) - now.looked,
        looked=now.looked,
        places=len(now.places),
        here=_address(id, skip),
        said=said,
        refused=refused,
    ), status


def _todo(now: stocktakes.CountState) -> list[TrackedFinding]:
    """What is open, in the order to walk."""
    return sorted(
        (each for each in now.found if each.resolved is None), key=lambda each: count_words.walk(each.finding)
    )


def _blocks(shown: list[FindingShown]) -> list[list[FindingShown]]:
    """What is missing in one bin is one block: the same photos tell of it, and it is looked for at once."""
    return [
        list(each)
        for _, each in groupby(
            shown, lambda one: one.found.finding.bin if one.found.finding.kind is FindingKind.MISSING else one.anchor
        )
    ]


def _place(todo: list[TrackedFinding], finding: str) -> int | None:
    return next((at for at, each in enumerate(todo) if each.finding.id == finding), None)


def _page(at: int) -> int:
    """How many rows come before the page that this one is on."""
    return at // SIZE * SIZE


def _settled(found: TrackedFinding) -> datetime:
    assert found.resolved is not None  # only what is settled has a time
    return found.resolved.at


def _shown(unit: Unit, now: stocktakes.CountState, found: TrackedFinding, at: int) -> FindingShown:
    finding = found.finding
    seen = sorted((look for look in now.looks if look.key in finding.looks), key=lambda look: look.at)
    slot = unit.facts(finding.code) if finding.code else None
    running = now.count.state is StocktakeState.OPEN
    matched = finding.certainty is Certainty.MATCHED and found.resolved is None and running
    unsure = next((look for look in seen if look.photo and _matched(look, finding.subject)), None)
    return FindingShown(
        found,
        _said(unit, finding, seen),
        title_of(unit, finding),
        slot.slot.section if slot else "",
        count_words.ways(
            finding,
            filter(count_rights.may, resolving.ways(unit, finding)),
            found.resolved is None and resolving.asks_for_card(unit, finding),
        ),
        list({look.place: look for look in seen if look.photo}.values())[:PHOTOS],
        "" if finding.kind in (FindingKind.MISSING, FindingKind.UNREADABLE) or not finding.places else finding.subject,
        sorted({place(look.place) for look in seen if not look.by_eye}),
        (unsure.place, unsure.key) if matched and unsure else None,
        finding.places[0] if finding.kind is FindingKind.UNREADABLE and running else "",
        at,
        slot is not None and slot.stay is not None and unseen(slot.slot, slot.stay),
    )


def _said(unit: Unit, finding: Finding, seen: list[Look]) -> FindingWords:
    words = said(finding)
    facts = unit.facts(finding.code) if finding.kind is FindingKind.SUSPECT and finding.code else None
    if facts is None:
        return words
    doubted = any(read.doubted for look in seen for read in look.reads if read.code == finding.code)
    line = facts.live_line
    return count_words.suspected(
        words, line.state if line else None, must(unit, Order, line.order).number if line else "", doubted
    )


def _matched(look: Look, subject: str) -> bool:
    return any(read.certainty is Certainty.MATCHED and (read.code or read.text) == subject for read in look.reads)


@page(blueprint, "POST", "/counts/<id>/findings", roles=STAFF)
def resolve(id: str) -> ResponseReturnValue:
    """One way to resolve one finding, as the form says."""
    form = request.form
    finding, how = form.get("finding", ""), form.get("how", "")
    count_rights.admit(how)
    to, sure = form.get("to", "").upper(), "yes" if form.get("sure") == "on" else ""
    done = act(lambda unit: resolving.resolve(unit, id, finding, sent(resolving.Resolve, to=to, sure=sure)))
    if isinstance(done, Refusal):
        return show(id, "", done.status, Unresolved(finding, how, done.said, form))
    return _on(id, form.get("at", -1, type=int))


@page(blueprint, "POST", "/counts/<id>/findings/undo", roles=STAFF)
def undo(id: str) -> ResponseReturnValue:
    finding = request.form.get("finding", "")

    def work(unit: Unit) -> None:
        count_rights.admit_undo(unit, id, finding)
        taking_back.undo(unit, id, finding)

    done = act(work)
    return show(id, *done) if isinstance(done, Refusal) else _on(id, finding)


def _on(id: str, to: int | str) -> ResponseReturnValue:
    """On to a finding by its name or its place, that is to the next one where one was settled; else to the top."""
    todo = _todo(stocktakes.state(room(), id))
    at = _place(todo, to) if isinstance(to, str) else to
    if at is None or not 0 <= at < len(todo):
        return redirect(_address(id, anchor="main"), 303)
    return redirect(_address(id, _page(at), quote(todo[at].finding.id)), 303)


def _address(id: str, skip: int = 0, anchor: str | None = None) -> str:
    """Of a page of a count's findings, at this one."""
    asked: dict[str, Any] = {"from": skip} if skip else {}
    return url_for("count_findings.show", id=id, _anchor=anchor, **asked)
