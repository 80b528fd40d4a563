"""Slots, and an item's story through them."""

from __future__ import annotations

from collections.abc import Callable
from io import BytesIO
from typing import Any

from flask import Blueprint, Response, redirect, request, send_file, url_for
from flask.typing import ResponseReturnValue

from labels import slot_code
from scanflow.domain.advice import ONCE_MORE
from scanflow.domain.derive import SlotState
from scanflow.domain.life import LIVE
from scanflow.domain.things import Doubt, Stay
from scanflow.exchange import card_file
from scanflow.storage.views import channels as channel_views
from scanflow.storage.views import ledger as ledger_views
from scanflow.storage.views import listings as listing_views
from scanflow.storage.views import lists
from scanflow.storage.views import orders as order_views
from scanflow.storage.views import room as room_views
from scanflow.storage.views import stock as slot_views
from scanflow.storage.views import where as where_views
from scanflow.storage.views.lists import Rows
from scanflow.web.pages.declare import STAFF, Group, MenuEntry, page
from scanflow.web.pages.forms import sent
from scanflow.web.pages.rendering import PAGE, Refusal, act, do, offset, render, settle_doubt, typed_words, where_are
from scanflow.web.pages.room_view import ask, room
from scanflow.web.pages.stock import photo_form
from scanflow.web.problem import Problem
from scanflow.workflow import stock
from scanflow.workflow.orders import selling
from scanflow.workflow.ports import Invalid, Missing, Unit, must
from scanflow.workflow.stock import cards, doubts, lending, listings, photos, reserving

blueprint = Blueprint("slot_page", __name__)
STATES = (*(state.value for state in SlotState), "away", slot_views.NOT_YET_SEEN)


@page(blueprint, "GET", "/slots", roles=STAFF, live=True, menu=MenuEntry(Group.ROOM, 2, "Slots", "l"))
def index() -> ResponseReturnValue:
    section, state = request.args.get("section", ""), request.args.get("state", "")
    state = state if state in STATES else ""
    words = typed_words("words")
    rows, found = _to_put_back(section, words) if state == "away" else _listed(section, state, words)
    sections = ask(room_views.section_list)
    shown = {"slots": rows, "found": found, "skip": offset(), "size": PAGE, "placed": where_are(rows)}
    return render("stock/slots.html", **shown, sections=sections, section=section, state=state, words=words)


def _listed(section: str, state: str, words: str) -> tuple[Rows, int]:
    rows = ask(slot_views.slot_list, section=section, state=state, words=words, skip=offset(), limit=PAGE)
    return rows, ask(slot_views.slot_count, section, state, words)


def _to_put_back(section: str, words: str) -> tuple[Rows, int]:
    """The slots of things and cards that are not where they belong, and how many there are."""
    codes = [duty.code for duty in ask(where_views.duties) if section in ("", duty.section)]
    place = {code: i for i, code in enumerate(codes)}
    rows = sorted(ask(slot_views.slots_of, codes, words), key=lambda row: place[row.code])
    return rows[offset() : offset() + PAGE], len(rows)


@page(blueprint, "GET", "/slots/<code>", roles=STAFF, live=True)
def show(code: str, said: str = "", status: int = 200, looked: str = "") -> ResponseReturnValue:
    """`looked`: the text of a card without a check, that is asked for once more."""
    slot = ask(slot_views.slot, code)
    if slot is None:
        raise Problem(404, "not_found", f"There is no slot {code}.")
    stays = ask(slot_views.stays_where, code=code)
    entries = ask(ledger_views.newest, about=[code], limit=20)
    lines = ask(order_views.lines_of_stays, [slot.stay]) if slot.stay else ()
    wanted = next((line for line in lines if line.state in LIVE and not line.holds), None)
    shown = {"slot": slot, "stays": stays, "wanted": wanted, "entries": entries, "said": said, "looked": looked}
    return render("stock/slot.html", where=where_are([slot]), **shown), status


@page(blueprint, "POST", "/slots/<code>/lost", roles=STAFF)
def lose_card(code: str) -> ResponseReturnValue:
    return do(show, lambda unit: stock.lose_card(unit, code), code=code)


@page(blueprint, "POST", "/slots/<code>/destroyed")
def destroyed(code: str) -> ResponseReturnValue:
    """Of two cards of the slot one is left."""
    return do(show, lambda unit: cards.destroyed(unit, code), code=code)


@page(blueprint, "POST", "/slots/<code>/adopt")
def adopt(code: str) -> ResponseReturnValue:
    """The card that bears this text stands for the slot."""
    text, looked = request.form.get("text", ""), request.form.get("looked", "")
    if text and slot_code.compact(looked) != slot_code.compact(text):
        return show(code, ONCE_MORE, 422, text)
    return do(show, lambda unit: cards.adopt(unit, sent(cards.Adopt, code=code)), code=code)


@page(blueprint, "POST", "/slots/<code>/reprint")
def reprint(code: str) -> ResponseReturnValue:
    """The card again, as a PDF to keep."""
    pages = act(lambda unit: card_file.again(unit, code, sent(cards.Reprint)))
    if isinstance(pages, Refusal):
        return show(code, *pages)
    file = BytesIO(card_file.pdf(pages, code))
    return send_file(file, "application/pdf", as_attachment=True, download_name=f"card-{code}.pdf")


@page(blueprint, "GET", "/stays/<id>", roles=STAFF, live=True)
def story(id: str, said: str = "", status: int = 200, looked: str = "") -> ResponseReturnValue:
    stay = ask(slot_views.stay, id)
    if stay is None:
        raise Problem(404, "not_found", "There is no such stay.")
    stays = ask(slot_views.stays_where, item=stay.item)
    lines = ask(order_views.lines_of_stays, [each.id for each in stays])
    about = [each.id for each in (*stays, *lines)]
    entries = ask(ledger_views.newest, about=about, limit=60)
    doubted = doubts.open_doubts(room(), stay.item)
    reference = slot_code.reference(stay.code, stay.turn)
    shown: dict[str, Any] = {"stay": stay, "stays": stays, "lines": lines, "entries": entries, "reference": reference}
    moved = next((each for each in stays if each.id == request.args.get("moved")), None)
    shown |= {"offers": ask(listing_views.of_item, stay.item, room().at), "offer": listings.ASKED}
    shown |= {"channels": ask(channel_views.channel_names)}
    shown |= {"said": said, "looked": looked, "doubted": doubted, "asked": stock.WORDS, "moved": moved}
    return render("stock/stay.html", **shown, where=where_are([stay])), status


@page(blueprint, "POST", "/stays/<id>/doubts/<doubt>")
def doubt(id: str, doubt: str) -> ResponseReturnValue:
    """Settle what is doubted of this thing."""
    return do(story, lambda unit: settle_doubt(unit, doubt), id=id)


@page(blueprint, "GET", "/doubts/<id>/photo", roles=STAFF)
def doubted(id: str) -> ResponseReturnValue:
    """The picture of a thing as it was when it was doubted."""
    then = must(room(), Doubt, id).photo
    data = ask(lists.picture, then, small=request.args.get("size") == "small") if then else None
    if data is None:
        raise Missing("There was no picture of it.")
    response = Response(data, mimetype="image/jpeg")
    response.headers["Cache-Control"] = "private, max-age=31536000, immutable"
    return response


@page(blueprint, "POST", "/stays/<id>/edit", roles=STAFF)
def edit(id: str) -> ResponseReturnValue:
    fields = stock.ChangeItem.model_fields
    return do(story, lambda unit: stock.change_item(unit, id, sent(stock.ChangeItem, keep=fields)), id=id)


@page(blueprint, "POST", "/stays/<id>/photo", roles=STAFF, takes_file=True)
def photo(id: str) -> ResponseReturnValue:
    """A picture of the thing; back to the page that it was sent from."""
    try:
        picture = photo_form.sent()
    except Invalid as error:
        return story(id, error.detail, 422)
    if picture is None:
        return story(id, "Choose a picture.", 422)
    return do(story, lambda unit: photos.keep(unit, id, picture), _sent_from(id), id=id)


def _sent_from(id: str) -> str | None:
    """Where the form of a picture stood, if not on its thing's own page; `back` says so."""
    page, _, of = request.form.get("back", "").partition(" ")
    if page == "return":
        return url_for("return_page.show", id=of)
    return url_for("put_away.stored", id=id) if page == "stored" else None


@page(blueprint, "POST", "/stays/<id>/withdraw")
def withdraw(id: str) -> ResponseReturnValue:
    return do(story, lambda unit: stock.withdraw(unit, id, sent(stock.Withdraw)), id=id)


@page(blueprint, "POST", "/stays/<id>/sell")
def sell(id: str) -> ResponseReturnValue:
    """Sold here, by phone or by mail: its order is made, and shown."""
    order = act(lambda unit: selling.sell(unit, id, sent(selling.Sell)))
    return story(id, *order) if isinstance(order, Refusal) else redirect(url_for("order_page.show", id=order.id), 303)


@page(blueprint, "POST", "/stays/<id>/reserve")
def reserve(id: str) -> ResponseReturnValue:
    return do(story, lambda unit: reserving.reserve(unit, id, sent(reserving.Reserve)), id=id)


@page(blueprint, "POST", "/stays/<id>/out", roles=STAFF)
def take_out(id: str) -> ResponseReturnValue:
    """It is out of its bin for a while."""
    return do(story, lambda unit: lending.take_out(unit, id, sent(lending.TakeOut)), id=id)


@page(blueprint, "POST", "/stays/<id>/back", roles=STAFF)
def bring_back(id: str) -> ResponseReturnValue:
    return do(story, lambda unit: lending.bring_back(unit, id), id=id)


@page(blueprint, "POST", "/stays/<id>/free")
def free(id: str) -> ResponseReturnValue:
    """It is kept for nobody any more."""
    return do(story, lambda unit: reserving.end(unit, id), id=id)


@page(blueprint, "POST", "/stays/<id>/move", roles=STAFF)
def move(id: str) -> ResponseReturnValue:
    """Into the slot whose code or card text was given."""
    to = slot_code.compact(request.form.get("to", ""))

    def work(unit: Unit) -> Stay:
        cards.believe(unit, to, request.form.get("looked", ""))
        return stock.move(unit, id, stock.Move(to=_slot_named(unit, "to")))

    return _moved(id, work, to, moved=id)


@page(blueprint, "POST", "/stays/<id>/exchange", roles=STAFF)
def exchange(id: str) -> ResponseReturnValue:
    """With the thing in the slot whose code or card text was given."""
    return _moved(id, lambda unit: stock.exchange(unit, id, _slot_named(unit, "with")))


def _slot_named(unit: Unit, field: str) -> str:
    text = slot_code.compact(request.form.get(field, ""))
    return (unit.facts(text) or cards.card_facts(unit, text, f"/{field}")).slot.code


def _moved(id: str, work: Callable[[Unit], Stay], looked: str = "", moved: str = "") -> ResponseReturnValue:
    stay = act(work)
    if isinstance(stay, Refusal):
        return story(id, *stay, looked if stay.said == ONCE_MORE else "")
    return redirect(url_for("slot_page.story", id=stay.id, moved=moved or None), 303)
