"""A section: its slots and bins, how many cards it needs, and what those it has are good for."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from dataclasses import dataclass
from typing import Any

from flask import Blueprint, request
from flask.typing import ResponseReturnValue
from markupsafe import Markup

from scanflow.domain.things import Bin, Rack, Section
from scanflow.planning.curve import curve
from scanflow.planning.layout import walks_to
from scanflow.planning.placing import Comparison, compare
from scanflow.planning.sizing import Point, Sizing, intake_carried, judge_section, size_section
from scanflow.storage.views import room as room_views
from scanflow.web.pages.declare import STAFF, page
from scanflow.web.pages.forms import sent
from scanflow.web.pages.planning import form as plan_form
from scanflow.web.pages.planning import form_values
from scanflow.web.pages.planning.form import OwnStays
from scanflow.web.pages.rendering import do, render
from scanflow.web.pages.room_view import ask, room
from scanflow.web.problem import Problem
from scanflow.workflow import stock
from scanflow.workflow.ports import Invalid, must
from scanflow.workflow.stock import history

blueprint = Blueprint("section_page", __name__)
BINS = 60
"""Bins that are listed; the room page has all."""


@dataclass(frozen=True, slots=True)
class SectionPlan:
    """The cards a section should have, and what those it has, or so many as were typed, are good for.

    `carried`: items a week that those carry, None where a single buying day is too much for them. `more`: slots to add;
    none are proposed before somebody looked at what the plan rests on.
    """

    sizing: Sizing
    judged: Sizing
    carried: float
    picture: Markup
    more: int
    assumptions: tuple[str, ...]


@page(blueprint, "GET", "/sections/<code>", roles=STAFF, live=True)
def show(code: str, said: str = "", status: int = 200) -> ResponseReturnValue:
    unit = room()
    row = next((each for each in ask(room_views.section_list) if each.code == code), None)
    if row is None:
        raise Problem(404, "not_found", f"There is no section {code}.")
    own = plan_form.own(history.stays_in(unit, code), unit.at)
    bins = ask(room_views.section_bins, code)
    given = request.args.to_dict()
    if own is not None and own.intake and not given.get("intake", "").strip():
        given["intake"] = f"{own.intake:.3g}"
    plan, wrong = _plan(row, given, own)
    shown: dict[str, Any] = {"section": row, "own": own, "bins": bins, "most_bins": BINS, "given": given, "plan": plan}
    return render(
        "stock/section.html",
        **shown,
        risks=plan_form.RISKS,
        odds=plan_form.odds,
        said=said or wrong,
        most=stock.MOST_SLOTS,
    ), status


def _plan(row: Any, given: Mapping[str, str], own: OwnStays | None) -> tuple[SectionPlan | None, str]:
    """The plan, once enough is known for one; and what is wrong with what was typed."""
    estimate = own.stays if own else None
    if not given.get("intake", "").strip() or not (given.get("stay", "").strip() or estimate):
        return None, ""
    usable = row.slots - row.retired
    try:
        demand, risk = plan_form.demand(given, estimate), plan_form.risk(given)
        cards = form_values.whole(given, "cards", "Cards", 1, 100_000) if given.get("cards", "").strip() else usable
        sizing = size_section(demand, risk, row.slots_per_bin)
        judged = judge_section(demand, max(cards, 1), row.slots_per_bin)
    except Invalid as error:
        return None, error.detail
    except ValueError as error:
        return None, form_values.sentence(error)
    estimated = estimate.assumptions() if estimate and not given.get("stay", "").strip() else ()
    return SectionPlan(
        sizing,
        judged,
        intake_carried(demand, judged.chosen.slots, risk),
        Markup(curve(sizing, _within(judged.chosen, sizing))),
        _more(sizing.needed.slots - usable, row.last, row.slots_per_bin) if "intake" in request.args else 0,
        (*estimated, *sizing.assumptions),
    ), ""


def _within(have: Point, sizing: Sizing) -> Point | None:
    """The cards there are, where they are not so many that the curve would shrink to a corner."""
    return have if have.slots <= 2 * sizing.curve[-1].slots else None


def _more(missing: int, last: int, slots_per_bin: int) -> int:
    """Slots to add so that none is missing and the last bin is full."""
    return missing + -(last + missing) % slots_per_bin if missing > 0 else 0


@page(blueprint, "GET", "/sections/<code>/near")
def near(code: str) -> ResponseReturnValue:
    """Keeping the bins next to the table for what sells quickly: what it saves, and what it costs."""
    unit = room()
    section = must(unit, Section, code)
    racks, bins, shape = unit.find(Rack), unit.find(Bin, section=code), unit.settings.racks.shape()
    own = plan_form.own(history.stays_in(unit, code), unit.at)
    given = request.args.to_dict()
    if own is not None and own.intake and not given.get("intake", "").strip():
        given["intake"] = f"{own.intake:.3g}"
    found, said = None, ""
    if given.get("quick", "").strip():
        try:
            found = _near(given, section.slots_per_bin, walks_to(bins, racks, shape))
        except Invalid as error:
            said = error.detail
        except ValueError as error:
            said = form_values.sentence(error)
    return render("stock/near.html", section=section, given=given, found=found, said=said)


def _near(given: Mapping[str, str], slots_per_bin: int, walks: Sequence[float]) -> Comparison:
    intake = form_values.decimal(given, "intake", "Things that come in a week", 0.01, 10_000)
    quick = form_values.decimal(given, "quick", "Share that sells quickly", 1, 99) / 100
    quick_stay, slow_stay = (
        form_values.decimal(given, name, what, 0.1, 10_000)
        for name, what in (("quick_stay", "Days of a quick one"), ("slow_stay", "Days of the others"))
    )
    if intake / 7 * (quick * quick_stay + (1 - quick) * slow_stay) > plan_form.MOST_AT_ONCE:
        raise Invalid("/intake", "bad_number", f"A section holds up to {plan_form.MOST_AT_ONCE:,.0f} things here.")
    return compare(intake, quick, quick_stay, slow_stay, slots_per_bin, walks)


@page(blueprint, "POST", "/sections/<code>/slots")
def add_slots(code: str) -> ResponseReturnValue:
    return do(show, lambda unit: stock.add_slots(unit, code, sent(stock.AddSlots)), code=code)
