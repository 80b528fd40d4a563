"""Sections, and more slots for them."""

from __future__ import annotations

from flask import Blueprint, Response

from scanflow.domain.things import Section
from scanflow.storage.unit import SqlUnit
from scanflow.storage.views import lists
from scanflow.web.api import given, paging, render
from scanflow.web.api.contract import MANAGERS, STAFF, answer_view, call, do
from scanflow.web.once import CallReply
from scanflow.workflow import stock
from scanflow.workflow.ports import must

blueprint = Blueprint("api_sections", __name__)


@call(blueprint, "POST", "/api/sections", MANAGERS, {201: given.Section}, ("section_exists",))
def create(said: stock.AddSection) -> Response:
    """Makes a section."""

    def work(unit: SqlUnit) -> CallReply:
        section = stock.add_section(unit, said)
        return CallReply(201, render.sections(unit, [section])[0], f"/api/sections/{section.code}")

    return do(work)


@call(blueprint, "GET", "/api/sections", STAFF, {200: given.SectionPage})
def listing(query: paging.PageQuery) -> Response:
    """Lists the sections with their slots counted by state."""

    def work(unit: SqlUnit) -> given.SectionPage:
        (start,) = query.after((0,))
        rows = lists.section_page(unit.connection, start, query.limit)
        rows, following = query.cut(rows, lambda row: (row.n,))
        return {"sections": render.sections(unit, rows), "next": following}

    return answer_view(work)


@call(blueprint, "GET", "/api/sections/{section}", STAFF, {200: given.Section})
def show(section: str) -> Response:
    """Shows one section."""
    return answer_view(lambda unit: render.sections(unit, [must(unit, Section, section)])[0])


@call(blueprint, "POST", "/api/sections/{section}/slots", MANAGERS, {201: given.Codes})
def add_slots(section: str, said: stock.AddSlots) -> Response:
    """Makes more slots with the next numbers; their cards count as in the tray."""

    def work(unit: SqlUnit) -> CallReply:
        slots = stock.add_slots(unit, section, said)
        return CallReply(201, {"codes": [slot.code for slot in slots]}, f"/api/slots?section={section}")

    return do(work)
