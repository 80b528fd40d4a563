"""The room drawn to scale, and how far a round walks in it."""

from __future__ import annotations

import re
from collections import Counter
from collections.abc import Iterable, Mapping
from dataclasses import asdict, dataclass, replace
from datetime import timedelta
from statistics import fmean

from flask import Blueprint, redirect, request, url_for
from flask.typing import ResponseReturnValue
from markupsafe import Markup

from scanflow.domain.things import Bin, Rack, Section
from scanflow.planning import drawing, layout, racking
from scanflow.planning.layout import SectionToPlace, Walk
from scanflow.planning.racking import Measured
from scanflow.planning.room import Shape
from scanflow.storage.views import planning as plan_views
from scanflow.web.pages.declare import STAFF, Group, MenuEntry, page
from scanflow.web.pages.forms import sent
from scanflow.web.pages.planning import form_values
from scanflow.web.pages.rendering import do, render
from scanflow.web.pages.room_view import ask, room
from scanflow.web.pages.stock import room_drawing
from scanflow.workflow import stock

blueprint = Blueprint("room_page", __name__)
PLAN_SCALE = 0.085
"""CSS pixels a millimetre of the room: so that a rack can be pressed with a finger."""

STOPS = 8
ROUNDS = 100
SHUFFLES = 3
PAST = timedelta(days=90)
ENOUGH = 30
"""Things that must have left in that time before their sections count by them."""

USUAL = Measured("24 x 48 x 72 in", "23 x 8 x 6 in")
"""What stands in the form before anything was measured: common sizes of wire racks and of bins for them."""


@dataclass(frozen=True, slots=True)
class Walks:
    """Metres of a round of `STOPS` stops as the bins stand, and in two other rooms on the same racks."""

    here: Walk
    alphabetical: float
    random: float
    visits: int
    """Things by which sections count; 0 where too few have left, and every bin counts alike."""


@page(blueprint, "GET", "/room", roles=STAFF, menu=MenuEntry(Group.ROOM, 1, "Room", "m"))
def show(said: str = "", status: int = 200) -> ResponseReturnValue:
    unit = room()
    racks, bins, sections = unit.find(Rack), unit.find(Bin), unit.find(Section)
    visits = ask(plan_views.left_since, unit.at - PAST)
    kept = unit.settings.racks
    shape = kept.shape()
    chosen = request.args.get("section", "")
    here = _standing_here(racks, bins, chosen)
    names = {rack.name for rack in here}
    shown = [each for each in bins if each.rack in names]
    given = _given(request.args, kept)
    fit, cautions, wrong = _cautions(given)
    return render(
        "stock/room.html",
        racks=racks,
        bins=bins,
        sections=sections,
        chosen=chosen,
        here=here,
        plan=_plan(racks, shape, chosen),
        front=room_drawing.front(here, shown, shape, sections, chosen=chosen, link=_to_shelf),
        walks=_walks(racks, bins, shape, visits) if bins else None,
        stops=STOPS,
        shape=shape,
        kept=kept,
        fit=fit,
        cautions=cautions,
        given=given,
        said=said,
        wrong=wrong,
    ), status


@page(blueprint, "POST", "/room")
def measure() -> ResponseReturnValue:
    """Keep what racks and bins measure: the room is drawn and walked by it."""
    return do(show, lambda unit: stock.measure_racks(unit, sent(stock.MeasureRacks)))


@page(blueprint, "GET", "/room/anew")
def anew() -> ResponseReturnValue:
    """The same bins on as few racks as hold them: often visited ones near the table, heavy ones low. A proposal."""
    unit = room()
    racks, bins, sections = unit.find(Rack), unit.find(Bin), unit.find(Section)
    visits = ask(plan_views.left_since, unit.at - PAST)
    kept = unit.settings.racks
    if not bins:
        return redirect(url_for("room_page.show"), 303)
    shape, heavy = kept.shape(), request.args.get("heavy", "")
    low = set(re.findall("[A-Z]+", heavy.upper()))
    fit = (kept if kept.rack else USUAL).fit()
    kinds, left = _kinds(bins, visits)
    found = layout.plan_room(
        [replace(kind, low=kind.code in low) for kind in kinds],
        shape,
        stops=STOPS,
        low_tiers=fit.low_tiers,
        easy_tiers=fit.easy_tiers,
    )
    unknown = low - {kind.code for kind in kinds}
    return render(
        "stock/room_anew.html",
        found=found,
        here=layout.expected_walk(racks, bins, kinds, shape, stops=STOPS, sampled=ROUNDS),
        racks=racks,
        visits=left,
        stops=STOPS,
        heavy=heavy,
        plan=room_drawing.sized(drawing.plan_view(found.racks, shape), "plan", PLAN_SCALE),
        front=room_drawing.front(found.racks, found.bins, shape, sections),
        said=f"No bins belong to {', '.join(sorted(unknown))}." if unknown else "",
    )


def _given(values: Mapping[str, str], kept: Measured) -> Measured:
    """What was typed, else what is kept, else the usual sizes."""
    before = asdict(kept if kept.rack else replace(USUAL, table=kept.table))
    return Measured(**{name: values.get(name, value).strip()[:40] for name, value in before.items()})


def _standing_here(racks: tuple[Rack, ...], bins: Iterable[Bin], chosen: str) -> list[Rack]:
    """The racks of the aisle asked for, else those that hold the chosen section, else those of the first aisle."""
    holding = {each.rack for each in bins if each.section == chosen}
    aisle = request.args.get("aisle", type=int)
    if aisle is None and holding:
        return [rack for rack in racks if rack.name in holding]
    aisles = {rack.aisle for rack in racks}
    aisle = aisle if aisle in aisles else min(aisles, default=0)
    return [rack for rack in racks if rack.aisle == aisle]


def _to_shelf(name: str) -> str:
    return url_for("station_page.shelf", bin=name)


def _plan(racks: tuple[Rack, ...], shape: Shape, chosen: str) -> Markup:
    def to(rack: Rack) -> str:
        return url_for("room_page.show", section=chosen or None, aisle=rack.aisle, _anchor="front")

    return room_drawing.sized(drawing.plan_view(racks, shape, link=to), "plan", PLAN_SCALE)


def _kinds(bins: Iterable[Bin], visits: Mapping[str, int]) -> tuple[list[SectionToPlace], int]:
    """The sections by what left them, and how many things those are; 0 where every bin counts alike."""
    hanging = Counter(each.section for each in bins)
    left = sum(visits.get(code, 0) for code in hanging)
    left = left if left >= ENOUGH else 0
    return [
        SectionToPlace(code, count, visits.get(code, 0) if left else count) for code, count in hanging.items()
    ], left


def _walks(racks: tuple[Rack, ...], bins: tuple[Bin, ...], shape: Shape, visits: Mapping[str, int]) -> Walks:
    kinds, left = _kinds(bins, visits)

    def walk(there: tuple[Bin, ...]) -> Walk:
        return layout.expected_walk(racks, there, kinds, shape, stops=STOPS, sampled=ROUNDS)

    shuffled = [walk(layout.random_room(kinds, racks, shape, seed=seed)).metres for seed in range(SHUFFLES)]
    return Walks(walk(bins), walk(layout.alphabetical_room(kinds, racks, shape)).metres, fmean(shuffled), left)


def _cautions(given: Measured) -> tuple[racking.Racking | None, tuple[str, ...], str]:
    """How many bins really fit, what to mind, and what can't be told of it."""
    try:
        given.shape()
        return given.fit(), given.cautions(), ""
    except ValueError as error:
        return None, (), form_values.sentence(error)
