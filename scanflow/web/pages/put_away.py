"""Store a thing: the card in hand, or a section that picks the slot; then what to write into the listing."""

from __future__ import annotations

from flask import Blueprint, redirect, request, url_for
from flask.typing import ResponseReturnValue

from labels import slot_code
from scanflow.domain.things import Stay
from scanflow.storage import room_views, slot_views
from scanflow.storage.unit import SqlUnit
from scanflow.web.pages import photo_form
from scanflow.web.pages.shown import act, look, page
from scanflow.web.problem import Problem
from scanflow.workflow import photos, stock
from scanflow.workflow.ports import Invalid

blueprint = Blueprint("put_away", __name__)
FIELDS = ("text", "section", "code", "title", "listing", "notes")


@blueprint.get("/put-away")
def show() -> ResponseReturnValue:
    return _form("", 200)


def _form(said: str, status: int) -> ResponseReturnValue:
    given = {name: request.values.get(name, "") for name in FIELDS}
    sections = look(room_views.section_list)
    return page("put_away.html", given=given, sections=sections, said=said), status


@blueprint.post("/put-away")
def store() -> ResponseReturnValue:
    given = {name: request.form.get(name, "").strip() for name in FIELDS}
    where = next(({name: given[name]} for name in ("text", "code", "section") if given[name]), None)
    if where is None:
        return _form("Scan the card in your hand, or choose a section.", 422)
    if not given["title"]:
        return _form("Say what it is: a title is needed.", 422)
    try:
        photo = photo_form.sent()
    except Invalid as error:
        return _form(error.detail, 422)
    made: list[Stay] = []

    def work(unit: SqlUnit) -> None:
        made.append(stock.put_away(unit, given["title"], given["listing"], given["notes"], **where))
        if photo is not None:
            photos.keep(unit, made[0].id, photo)

    said, status = act(work)
    if said:
        return _form(said, status)
    return redirect(url_for("put_away.stored", id=made[0].id), 303)


@blueprint.get("/put-away/<id>")
def stored(id: str) -> ResponseReturnValue:
    stay = look(slot_views.stay, id)
    if stay is None:
        raise Problem(404, "not_found", f"There is no stay {id}.")
    return page("stored.html", stay=stay, reference=slot_code.reference(stay.code, stay.turn))
