"""Lines of orders are settled, reported, held, revived."""

from __future__ import annotations

from flask import Blueprint, Response

from scanflow.domain.things import Line
from scanflow.storage.unit import SqlUnit
from scanflow.web.api import given, render
from scanflow.web.api.contract import MANAGERS, STAFF, call, do
from scanflow.web.once import CallReply
from scanflow.workflow import orders

blueprint = Blueprint("api_lines", __name__)


def _reply(unit: SqlUnit, line: Line) -> CallReply:
    return CallReply(200, render.one_line(unit, line))


@call(
    blueprint,
    "POST",
    "/api/lines/{line}/settle",
    MANAGERS,
    {200: given.Line},
    ("still_in_box", "doubted", "not_held", "not_in_stock", "has_live_line", "not_allowed"),
)
def settle(line: str, said: orders.Settle) -> Response:
    """A person decides which thing a line means; one of its holds goes."""
    return do(lambda unit: _reply(unit, orders.settle(unit, line, said)))


@call(blueprint, "POST", "/api/lines/{line}/short", STAFF, {200: given.Line}, ("not_allowed",))
def short(line: str, said: orders.Short) -> Response:
    """Its thing is not where it should be."""
    return do(lambda unit: _reply(unit, orders.short(unit, line, said)))


@call(blueprint, "POST", "/api/lines/{line}/found", STAFF, {200: given.Line}, ("not_allowed",))
def found(line: str) -> Response:
    """Its thing turned up; the line waits again."""
    return do(lambda unit: _reply(unit, orders.found(unit, line)))


@call(
    blueprint,
    "POST",
    "/api/lines/{line}/hold",
    STAFF,
    {200: given.Line},
    ("not_allowed", "handed_over", "slot_reused", "parcel_open"),
)
def hold(line: str, said: orders.NotThis) -> Response:
    """Not this thing: the line stands still until a person settles it."""
    return do(lambda unit: _reply(unit, orders.hold(unit, line, said)))


@call(
    blueprint,
    "POST",
    "/api/lines/{line}/revive",
    MANAGERS,
    {200: given.Line},
    ("not_in_stock", "has_live_line", "not_allowed"),
)
def revive(line: str) -> Response:
    """A cancelled line is wanted after all."""
    return do(lambda unit: _reply(unit, orders.revive(unit, line)))
