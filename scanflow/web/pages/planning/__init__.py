"""Plan a section, one question a page: what, how big, how many, the answer, and what is made of it.

What was typed goes along from page to page; nothing is kept before the last.
"""

from __future__ import annotations

from collections.abc import Callable, Mapping

from flask import Blueprint, redirect, request, url_for
from flask.typing import ResponseReturnValue
from markupsafe import Markup

from labels.paper import COLOURS
from scanflow.domain.things import Bin, Rack, Section
from scanflow.planning.bulk import Bulk
from scanflow.planning.curve import curve
from scanflow.planning.room import free_places
from scanflow.planning.sizing import Sizing, size_section
from scanflow.storage.views import room as room_views
from scanflow.web import problem
from scanflow.web.pages.declare import STAFF, Group, MenuEntry, page
from scanflow.web.pages.forms import sent
from scanflow.web.pages.planning import form as plan_form
from scanflow.web.pages.planning import form_values
from scanflow.web.pages.rendering import Refusal, act, render
from scanflow.web.pages.room_view import ask, room
from scanflow.web.problem import Problem
from scanflow.workflow import stock
from scanflow.workflow.ports import Invalid, Refused, Unit, must

blueprint = Blueprint("plan_page", __name__)
FIELDS = (
    ("section", "code"),
    ("slots_per_bin", "bin_size", "things"),
    ("intake", "stay", "risk", "batch", "season"),
    ("count", "colour", "proposed"),
    ("rack",),
)
"""What each step asks for; `proposed` is the count that its page proposed, to tell it from one that was typed."""

LAST = len(FIELDS)
OWN_RACK = "-"
"""Instead of a rack's name, which has letters and digits alone: an empty rack, or a new one."""


def _given(values: Mapping[str, str]) -> dict[str, str]:
    given = {name: values.get(name, "").strip() for fields in FIELDS for name in fields}
    given["code"] = given["code"].upper()
    return given | {"bin_size": given["bin_size"] or plan_form.BIN}


def _section(given: Mapping[str, str], per_bin: int, digits: int = 3) -> stock.AddSection:
    told = {"code": given["code"], "colour": given["colour"]}
    return sent(stock.AddSection, told, name=given["section"], slots_per_bin=str(per_bin), digits=str(digits))


def _goods(given: Mapping[str, str]) -> None:
    _section({**given, "colour": ""}, 1)  # that is asked for later
    if room().get(Section, given["code"]) is not None:
        raise Refused("section_exists", f"Section {given['code']} exists. Choose other letters.")


def _bulk(given: Mapping[str, str]) -> tuple[int, Bulk | None]:
    """Slots per bin, as typed or else from the sizes of some things."""
    found = plan_form.measured(given)
    if given["slots_per_bin"] or found is None:
        return form_values.whole(given, "slots_per_bin", "Things in one bin", 1, stock.MOST_PER_BIN), found
    return found.count.slots_per_bin, found


def _flow(given: Mapping[str, str]) -> Sizing:
    return size_section(plan_form.demand(given), plan_form.risk(given), _bulk(given)[0])


def _count(given: Mapping[str, str]) -> int:
    """The slots to make, on a paper that there is."""
    _section(given, 1)
    return form_values.whole(given, "count", "Cards to begin with", 1, stock.MOST_SLOTS)


CHECKS: tuple[Callable[[Mapping[str, str]], object], ...] = (_goods, _bulk, _flow, _count)
"""What must hold before the step after it is shown."""


def _reached(given: Mapping[str, str], wanted: int) -> tuple[int, str, int]:
    """The step to show: the one wanted, or the first before it that lacks something, with what it lacks."""
    for step, check in enumerate(CHECKS[: wanted - 1], 1):
        try:
            check(given)
        except (Invalid, Refused) as error:
            refusal = problem.of(error)
            return step, refusal.detail, refusal.status
    return wanted, "", 200


def _racks(bins: int) -> tuple[list[tuple[str, int, int]], str]:
    """Racks with free places, their aisles and how many; and the first of them that has room for so many bins."""
    unit = room()
    there, standing, shape = unit.find(Rack), unit.find(Bin), unit.settings.racks.shape()
    in_order = sorted(there, key=lambda rack: (rack.aisle, rack.start))
    free = [(rack.name, rack.aisle, len([*free_places(rack.name, standing, shape)])) for rack in in_order]
    fitting = (name for name, _, places in free if places >= bins)
    return [each for each in free if each[2]], next(fitting, "")


@page(blueprint, "GET", "/plan", menu=MenuEntry(Group.SHOP, 2, "Plan"))
def show() -> ResponseReturnValue:
    given = _given(request.args)
    step, said, status = _reached(given, min(max(request.args.get("step", 1, type=int), 1), LAST))
    return _step(step, given, said, status)


def _step(step: int, given: dict[str, str], said: str, status: int) -> ResponseReturnValue:
    if given["count"] == given["proposed"]:  # not typed: what is proposed now stands in its place
        given = given | {"count": "", "proposed": ""} if step < LAST else given
    kept = {name: value for name, value in given.items() if name not in FIELDS[step - 1]}
    per_bin, found = _bulk(given) if step > 2 else (0, None)
    shown = {"step": step, "last": LAST, "given": given, "kept": kept, "said": said, "risks": plan_form.RISKS}
    if step >= LAST - 1:
        used = {colour for colour, _ in ask(room_views.papers).values()}
        sizing = _flow(given)
        shown |= {"sizing": sizing, "picture": Markup(curve(sizing)), "odds": plan_form.odds, "most": stock.MOST_SLOTS}
        shown |= {"colours": sorted(COLOURS, key=lambda name: name in used)}
    if step == LAST:
        bins = -(-_count(given) // per_bin)
        racks, room = _racks(bins)
        shown |= {"bins": bins, "racks": racks, "rack": given["rack"] or room or OWN_RACK, "own_rack": OWN_RACK}
    return render("planning/plan.html", **shown, per_bin=per_bin, found=found), status


@page(blueprint, "POST", "/plan")
def make() -> ResponseReturnValue:
    """The section with its slots, in one step."""
    given = _given(request.form)
    step, said, status = _reached(given, LAST)
    if said:
        return _step(step, given, said, status)

    def work(unit: Unit) -> None:
        count = _count(given)
        digits = 3 if count <= 500 else 4  # so that the section can grow to twice its size
        stock.add_section(unit, _section(given, _bulk(given)[0], digits))
        if (rack := given["rack"] or OWN_RACK) != OWN_RACK:
            must(unit, Rack, rack)
        stock.add_slots(unit, given["code"], stock.AddSlots(count=count, rack=None if rack == OWN_RACK else rack))

    done = act(work)
    if isinstance(done, Refusal):
        return _step(LAST, given, *done)
    return redirect(url_for("plan_page.made", code=given["code"]), 303)


@page(blueprint, "GET", "/plan/made/<code>", roles=STAFF)
def made(code: str) -> ResponseReturnValue:
    section = next((each for each in ask(room_views.section_list) if each.code == code), None)
    if section is None:
        raise Problem(404, "not_found", f"There is no section {code}.")
    return render("planning/made.html", section=section)
