"""What every page needs: the shop's words for times and places, the papers of its sections, and doing one thing."""

from __future__ import annotations

import re
from collections.abc import Callable, Iterable
from datetime import datetime
from typing import Any, NamedTuple, TypeVar
from zoneinfo import ZoneInfo

from flask import Flask, g, redirect, render_template, request, url_for
from flask.typing import ResponseReturnValue
from markupsafe import Markup, escape

from labels import slot_code
from labels.paper import COLOURS
from scanflow.domain import advice, life, whereabouts
from scanflow.domain.access import agents
from scanflow.domain.derive import ListingState, OrderState, SlotState, stands_still
from scanflow.domain.life import DoubtEnd, NotAllowed, ParcelState, ReturnState, StayState
from scanflow.domain.things import Held
from scanflow.domain.whereabouts import Whereabouts
from scanflow.domain.words import (
    AT_THE_DOOR,
    CONDITIONS,
    DIFFERS,
    HOLDS,
    LINES,
    LISTINGS,
    MISREAD,
    ORDERS,
    PARCELS,
    REFUSALS,
    RETURNS,
    SLOTS,
    STAYS,
    units,
)
from scanflow.storage.database import trouble_of
from scanflow.storage.program import typed
from scanflow.storage.trust.guard import STOPPED
from scanflow.storage.views import room as room_views
from scanflow.storage.views import where as where_views
from scanflow.web import problem
from scanflow.web.door.addresses import is_loopback
from scanflow.web.door.visitors import shop
from scanflow.web.ledger_words import said
from scanflow.web.pages.declare import View, follows, may, menu
from scanflow.web.pages.forms import sent, write
from scanflow.web.pages.room_view import ask, room
from scanflow.workflow.ports import Invalid, Missing, Refused, Unit
from scanflow.workflow.stock import doubts, photos

T = TypeVar("T")
PAGE = 50
"""Rows of a list on one page."""

LARGEST = 2**53
"""Of a number in an address: SQL counts further, and JSON (RFC 8259, 6) so far."""


def render(template: str, **rows: Any) -> str:
    """A template with the shop's settings and papers beside its own rows."""
    unit = room()
    zone = ZoneInfo(unit.settings.zone)
    frame = {
        "settings": unit.settings,
        "papers": ask(room_views.papers),
        "digits": ask(room_views.digits),
        "zone": zone,
        "now": unit.at.astimezone(zone),
        "stopped": trouble_of(shop().database),
        "amiss_words": STOPPED,
    }
    if follows() or "here" in rows:
        frame["seq"] = unit.seq
    return render_template(template, **frame, **rows)


class Refusal(NamedTuple):
    """What a page says in place of what it was to do."""

    said: str
    status: int


def act(work: Callable[[Unit], T]) -> T | Refusal:
    """Do one thing: what the work gives back, or why it was refused."""
    try:
        return write(work)
    except (Refused, Invalid, NotAllowed, Missing) as error:
        refusal = problem.of(error)
        return Refusal(refusal.detail, refusal.status)


def do(view: View, work: Callable[[Unit], object], to: str | None = None, **ids: Any) -> ResponseReturnValue:
    """Do one thing and lead to this page of the same blueprint, or `to` another; refused, the page says why."""
    done = act(work)
    if isinstance(done, Refusal):
        return view(**ids, **done._asdict())
    return redirect(to or url_for(f".{view.__name__}", **ids), 303)


def settle_doubt(unit: Unit, doubt: str) -> None:
    """As the form of a page says it: with the text of the card, or with a note of what was put right."""
    doubts.settle(unit, doubt, sent(doubts.SettleDoubt, how=request.form.get("how") or DoubtEnd.SEEN))


def asked(name: str) -> int:
    """A whole number in the address, 0 where there is none; cut to what a database can count to."""
    return max(-LARGEST, min(request.args.get(name, 0, type=int), LARGEST))


def offset() -> int:
    """How many rows of a list come before this page."""
    return max(0, asked("from"))


def typed_words(name: str) -> str:
    """The words in the address by which a list is narrowed."""
    return request.args.get(name, "").strip()[:200]


def split(code: str) -> tuple[str, str]:
    """Letters and number of a slot code; a text that is none has no letters."""
    try:
        letters = slot_code.section_of(code)
    except slot_code.BadFormat:
        return "", code
    return letters, code[len(letters) :]


def when(at: datetime | None, zone: ZoneInfo, now: datetime) -> str:
    """A time as people say it: the day, and the hour while it matters."""
    if at is None:
        return ""
    local = at.astimezone(zone)
    days = (local.date() - now.date()).days
    near = {0: "today", 1: "tomorrow", -1: "yesterday"}
    if days in near:
        return f"{near[days]} {local:%H:%M}"
    return day(local, now) + (f" {local:%H:%M}" if abs(days) < 7 else "")


def day(local: datetime, now: datetime) -> str:
    """A day as this shop writes it, with its year if that is another than now."""
    year = "" if local.year == now.year else str(local.year)
    if room().settings.dates == "month-first":
        return f"{local:%b} {local.day}" + (year and f", {year}")
    return f"{local.day} {local:%b}" + (year and f" {year}")


MONTH = 31
"""Days ahead; so far working days are counted, further away nobody plans by them."""


def due(at: datetime | None, zone: ZoneInfo, now: datetime) -> str:
    """By when an order must go, as a distance from today. What can't be shipped on its day is due before it."""
    if at is None:
        return "no date"
    closing, today = room().settings.closing, now.date()
    last = closing.leave_by(at, zone).astimezone(zone).date()
    days = (last - today).days
    if days < 0:
        return f"{-days} day{'s' if days < -1 else ''} late"
    left = closing.open_days(today, last) if 1 < days <= MONTH else days
    if left < days:
        return "due on the next working day" if left == 1 else f"due in {left} working days"
    return {0: "due today", 1: "due tomorrow"}.get(days, f"due in {days} days")


def moved_up(at: datetime, zone: ZoneInfo) -> datetime | None:
    """By when an order must leave, where the shop is closed on the day by which it is to be shipped; else None."""
    leave = room().settings.closing.leave_by(at, zone)
    return None if leave == at else leave


_WHOLE = re.compile(r"\b[A-Za-z0-9]+(?:-[0-9]+){1,2}\b|(?<!\S)--[a-z]+")


def whole(words: str) -> Markup:
    """Words in which no line ends within the name of a bin, a shelf or an option.

    >>> whole("Count of bin A-1-2"), whole("the tray")
    (Markup('<span>Count of bin <span class="unbroken">A-1-2</span></span>'), Markup('the tray'))
    >>> whole("add --https")
    Markup('<span>add <span class="unbroken">--https</span></span>')
    """
    told, found = _WHOLE.subn(r'<span class="unbroken">\g<0></span>', str(escape(words)))
    return Markup(f"<span>{told}</span>" if found else told)


def among(names: list[str], found: dict[str, T]) -> list[T]:
    """What was found under these names, in their order."""
    return [found[name] for name in names if name in found]


def why(holds: Iterable[Held]) -> str:
    """All reasons for which a line stands still, the gravest first."""
    return " ".join(dict.fromkeys(each.why for each in holds))


def reasons(holds: Iterable[Held]) -> str:
    """What holds a line, in a few words."""
    return ", ".join(HOLDS[each.hold].lower() for each in holds)


def standing(line: Any) -> str:
    """What holds a line, and how far it is."""
    return ", ".join(filter(None, (reasons(line.holds), LINES[line.state])))


def headings(at_the_door: bool = False) -> dict[str, str]:
    """What stands above the sentence of a refusal, by its reason: for the script that shows it, without network too."""
    return {reason: said.heading for reason, said in (AT_THE_DOOR if at_the_door else REFUSALS).items()}


def command(*words: str) -> str:
    """What to type on the service's machine. A stranger in the network learns no folder of it."""
    known = g.get("visitor") is not None or is_loopback(f"[{request.remote_addr}]")
    return shop().command(*words) if known else typed("scanflow", *words)


def where_are(rows: Iterable[Any]) -> dict[str, Whereabouts]:
    """Where the things and cards of these rows are, by their `code`."""
    return ask(where_views.whereabouts_of, [row.code for row in rows])


def register(app: Flask) -> None:
    app.add_template_filter(split)
    app.add_template_filter(when)
    app.add_template_filter(day)
    app.add_template_filter(due)
    app.add_template_filter(moved_up)
    app.add_template_filter(among)
    app.add_template_filter(why)
    app.add_template_filter(reasons)
    app.add_template_filter(standing)
    app.add_template_filter(lambda state: ORDERS[OrderState(state)], "order_state")
    app.add_template_filter(lambda state: SLOTS[SlotState(state)], "slot_state")
    app.add_template_filter(lambda state: STAYS[StayState(state)], "stay_state")
    app.add_template_filter(lambda state: LISTINGS[ListingState(state)], "listing_state")
    app.add_template_filter(DIFFERS.get, "differs")
    app.add_template_filter(lambda state: PARCELS[ParcelState(state)], "parcel_state")
    app.add_template_filter(lambda state: RETURNS[ReturnState(state)], "return_state")
    app.add_template_filter(CONDITIONS.get, "condition")
    app.add_template_filter(whereabouts.words, "place")
    app.add_template_filter(advice.put_right)
    app.add_template_filter(said)
    app.add_template_filter(HOLDS.get, "heading")
    app.add_template_global(headings)
    app.jinja_env.globals["misread"] = MISREAD
    app.add_template_filter(lambda words: words[:1].upper() + words[1:], "capital")
    app.add_template_test(stands_still, "held_still")
    app.add_template_test(lambda line: line.state in life.LIVE, "live")
    app.add_template_filter(whole)
    app.add_template_filter(agents.words, "browser")
    app.add_template_filter(units)
    app.add_template_filter("{:,}".format, "figures")
    app.add_template_global(lambda colour: colour if colour in COLOURS else "white", "paper_of")
    app.add_template_global(lambda: (known.csrf or "") if (known := g.get("visitor")) else "", "csrf")
    app.add_template_global(lambda: g.get("visitor"), "visitor")
    app.add_template_global(may)
    app.add_template_global(command)
    app.add_template_global(photos.address_of, "photo_of")
    app.add_template_global(advice.order_says)
    app.add_template_global(advice.packing_says)
    app.add_template_global(menu)
