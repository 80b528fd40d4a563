"""Pictures of cards, printed or owned already: how well each will scan, and what it means in this room."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass

from flask import Blueprint, request
from flask.typing import ResponseReturnValue

from scanflow.domain.things import Section
from scanflow.planning.adopting import TrialScan, trial
from scanflow.vision import ImageError
from scanflow.vision.print_check.check import Check
from scanflow.web.door.visitors import shop
from scanflow.web.pages.declare import page
from scanflow.web.pages.planning import form_values
from scanflow.web.pages.rendering import render
from scanflow.web.pages.room_view import room
from scanflow.workflow.ports import Invalid, must
from scanflow.workflow.stock import cards

blueprint = Blueprint("check_page", __name__)
MOST_PICTURES = 12
OPEN = 3
"""Poorest cards whose profile is shown at once; the others' are folded away."""


@dataclass(frozen=True, slots=True)
class CheckedPicture:
    """A picture: its cards judged, or why it could not be opened; `samples` as a trial of owned cards takes them."""

    name: str
    checks: tuple[Check, ...]
    samples: tuple[TrialScan, ...]
    error: str = ""


@page(blueprint, "GET", "/cards/check")
def show() -> ResponseReturnValue:
    return _show(request.args.to_dict(), (), ""), 200


@page(blueprint, "POST", "/cards/check", takes_file=True)
def read() -> ResponseReturnValue:
    """Judge what was sent; nothing of it is kept."""
    given = request.form.to_dict()
    try:
        seen = _seen(given)
    except Invalid as error:
        return _show(given, (), error.detail), 422
    return _show(given, seen, ""), 200


def _seen(given: Mapping[str, str]) -> tuple[CheckedPicture, ...]:
    module = given.get("module", "").strip()
    nominal = form_values.decimal(given, "module", "Width of the narrowest bar", 0.1, 2) if module else None
    files = [each for each in request.files.getlist("pictures") if each.filename]
    if not 0 < len(files) <= MOST_PICTURES:
        raise Invalid("/pictures", "required", f"Choose one picture, or up to {MOST_PICTURES}.")
    return tuple(_one(each.filename or "", each.read(), nominal) for each in files)


def _one(name: str, data: bytes, nominal: float | None) -> CheckedPicture:
    try:
        picture, checks = shop().readers.check(data, nominal)
    except ImageError as error:
        return CheckedPicture(name, (), (TrialScan(name, None),), str(error))
    samples = tuple(TrialScan(name, each.text, each.symbology, each.engine) for each in picture.decoded)
    return CheckedPicture(name, checks, samples or (TrialScan(name, None),))


def _show(given: Mapping[str, str], seen: tuple[CheckedPicture, ...], said: str) -> str:
    judged = sorted((each for picture in seen for each in picture.checks), key=_goodness)
    unit = room()
    sections = unit.find(Section)
    tried: list[str] = []
    if seen and given.get("section"):
        code = must(unit, Section, given["section"]).code
        samples = [sample for picture in seen for sample in picture.samples]
        tried = trial(samples, cards.room(unit), code).sentences(code, unit.settings.check)
    return render(
        "stock/check.html",
        given=given,
        sections=sections,
        said=said,
        seen=seen,
        judged=judged,
        good=sum(each.passed for each in judged),
        unread=[picture for picture in seen if not picture.checks],
        tried=tried,
        open=OPEN,
        most=MOST_PICTURES,
    )


def _goodness(each: Check) -> float:
    """The poorest first, after those that can't be judged."""
    return each.estimate.grade if each.estimate else -1.0
