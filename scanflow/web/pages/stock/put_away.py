"""Store a thing: the card in hand, or a section that picks the slot; then what to write into the listing."""

from __future__ import annotations

import re
from typing import Any

from flask import Blueprint, redirect, request, url_for
from flask.typing import ResponseReturnValue

from labels import slot_code
from scanflow.domain.advice import ONCE_MORE
from scanflow.domain.things import Alias, Slot, Stay
from scanflow.storage.views import channels as channel_views
from scanflow.storage.views import room as room_views
from scanflow.storage.views import stock as slot_views
from scanflow.web.pages.declare import STAFF, Group, MenuEntry, page
from scanflow.web.pages.forms import sent
from scanflow.web.pages.rendering import Refusal, act, render
from scanflow.web.pages.room_view import ask, room
from scanflow.web.pages.stock import photo_form
from scanflow.web.problem import Problem
from scanflow.workflow import stock
from scanflow.workflow.ports import Invalid, Unit
from scanflow.workflow.stock import cards, listings, photos

blueprint = Blueprint("put_away", __name__)
FIELDS = ("text", "looked", "section", "code", "listing", "channel", *stock.WORDS)
CARRIED = ("section", "listing", "channel", *stock.WORDS)
"""What goes along to the page that names the card to fetch."""


@page(blueprint, "GET", "/put-away", roles=STAFF, menu=MenuEntry(Group.DAY, 2, "Put away", "p", top=True))
def show() -> ResponseReturnValue:
    return _form({name: request.args.get(name, "") for name in FIELDS}, "", 200, request.args.get("stored", ""))


def _form(given: dict[str, str], said: str, status: int, last: str = "") -> ResponseReturnValue:
    """`last`: the stay that was begun just before, by the scan of this thing's card."""
    unit = room()
    sections = ask(room_views.section_list)
    named = stock.fetching(unit, given["section"]) if given["section"] else unit.get(Slot, given["code"])
    shown: dict[str, Any] = {"channels": ask(channel_views.channel_names), "listing": listings.ASKED["listing"]}
    shown |= {"given": given, "sections": sections, "named": named, "asked": stock.WORDS, "once_more": ONCE_MORE}
    before = ask(slot_views.stay, last) if last else None
    return render("stock/put_away.html", **shown, said=said, before=before, reference=_reference(before)), status


def _reference(stay: Any) -> str:
    return slot_code.reference(stay.code, stay.turn) if stay is not None else ""


@page(blueprint, "POST", "/put-away", roles=STAFF, takes_file=True)
def store() -> ResponseReturnValue:
    """By the card in hand, or in the slot chosen before; a section alone names the card to fetch."""
    given = {name: request.form.get(name, "").strip() for name in FIELDS}
    if given["text"] and slot_code.compact(given["title"]) == slot_code.compact(given["text"]):
        given |= {"looked": given["text"], "title": ""}  # the scanner was quicker than the page
    number = _in_the_title(given["title"])
    if number:
        given |= {"title": given["title"].removesuffix(number), "scanned": number}
        return _form(given, f"{number} was scanned into the title, and is out of it again. Scan that card again.", 422)
    if given["section"] and not given["text"]:
        return _fetch(given)
    return _store(given)


def _in_the_title(title: str) -> str:
    """The adopted number that a scanner wrote behind the title, too short for the page to tell from a person's keys."""
    if room().settings.check != "none":
        return ""
    numbers = (alias.printed for alias in room().find(Alias))
    return next((each for each in numbers if re.search(rf"\S{re.escape(each)}$", title)), "")


def _fetch(given: dict[str, str]) -> ResponseReturnValue:
    done = act(lambda unit: stock.fetch(unit, given["section"]))
    if isinstance(done, Refusal):
        return _form(given, *done)
    carried = {name: given[name] for name in CARRIED if given[name]}
    return redirect(url_for("put_away.show", **carried), 303)  # type: ignore[arg-type]


def _store(given: dict[str, str]) -> ResponseReturnValue:
    try:
        wanted = sent(stock.PutAway, given | ({"code": ""} if given["text"] else {}), section="")
        photo = photo_form.sent()
    except Invalid as error:
        return _form(given, error.detail, 422)

    def work(unit: Unit) -> Stay:
        if wanted.text is not None:
            cards.believe(unit, wanted.text, given["looked"])
        stay = stock.put_away(unit, wanted)
        return stay if photo is None else photos.keep(unit, stay.id, photo)

    stay = act(work)
    if not isinstance(stay, Refusal):
        following = request.form.get("next", "").strip()
        if following:
            carried = {"text": following, "looked": following, "stored": stay.id, "channel": given["channel"] or None}
            return redirect(url_for("put_away.show", **carried), 303)  # type: ignore[arg-type]
        return redirect(url_for("put_away.stored", id=stay.id), 303)
    if stay.said == ONCE_MORE:
        given |= {"looked": given["text"], "text": ""}
    return _form(given, *stay)


@page(blueprint, "GET", "/put-away/<id>", roles=STAFF)
def stored(id: str) -> ResponseReturnValue:
    stay = ask(slot_views.stay, id)
    if stay is None:
        raise Problem(404, "not_found", f"There is no stay {id}.")
    return render("stock/stored.html", stay=stay, reference=_reference(stay))
