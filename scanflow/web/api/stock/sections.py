"""Sections, and more slots for them."""

from __future__ import annotations

from typing import Any

from flask import Blueprint, Response

from labels.paper import COLOURS
from labels.slot_code import DEFAULT_DIGITS
from scanflow.domain.things import Section
from scanflow.storage.unit import SqlUnit
from scanflow.storage.views import lists
from scanflow.web.api import paging, render
from scanflow.web.api.contract import MANAGERS, STAFF, call, do, look
from scanflow.web.once import Reply
from scanflow.workflow import stock
from scanflow.workflow.ports import must

blueprint = Blueprint("api_sections", __name__)


@call(
    blueprint,
    "POST",
    "/api/sections",
    roles=MANAGERS,
    body="NewSection",
    answers={201: "Section"},
    conflicts=("section_exists",),
)
def create(body: dict[str, Any]) -> Response:
    """Makes a section."""

    def work(unit: SqlUnit) -> Reply:
        colour = body.get("colour") or _least_used(unit)
        digits = body.get("digits", DEFAULT_DIGITS)
        section = stock.add_section(unit, body["code"], body["name"], body["slots_per_bin"], colour, digits)
        return Reply(201, render.sections(unit, [section])[0], f"/api/sections/{section.code}")

    return do(work)


def _least_used(unit: SqlUnit) -> str:
    used = lists.colours_used(unit.connection)
    return min(COLOURS, key=lambda colour: used.get(colour, 0))


@call(blueprint, "GET", "/api/sections", roles=STAFF, query="Page", answers={200: "Sections"})
def listing(query: dict[str, Any]) -> Response:
    """Lists the sections with their slots counted by state."""

    def work(unit: SqlUnit) -> dict[str, Any]:
        (start,) = paging.after(query.get("cursor"), (0,))
        rows = lists.section_page(unit.connection, start, query["limit"])
        rows, following = paging.cut(rows, query["limit"], lambda row: (row.n,))
        return {"sections": render.sections(unit, rows), "next": following}

    return look(work)


@call(blueprint, "GET", "/api/sections/{section}", roles=STAFF, answers={200: "Section"})
def show(section: str) -> Response:
    """Shows one section."""
    return look(lambda unit: render.sections(unit, [must(unit, Section, section)])[0])


@call(
    blueprint,
    "POST",
    "/api/sections/{section}/slots",
    roles=MANAGERS,
    body="NewSlots",
    answers={201: "Codes"},
)
def add_slots(section: str, body: dict[str, Any]) -> Response:
    """Makes more slots with the next numbers; their cards count as in the tray."""

    def work(unit: SqlUnit) -> Reply:
        slots = stock.add_slots(unit, section, body["count"], body.get("rack"))
        return Reply(201, {"codes": [slot.code for slot in slots]}, f"/api/slots?section={section}")

    return do(work)
