"""Counts: begun for an area, looked into place by place, ended. What should stand there is nowhere on these pages."""

from __future__ import annotations

import hashlib
from collections.abc import Collection, Iterable, Sequence
from dataclasses import dataclass
from io import BytesIO
from typing import Any

from flask import Blueprint, Response, redirect, request, url_for
from flask.typing import ResponseReturnValue
from markupsafe import Markup

from scanflow.domain.counts.findings import CountedPlace, places
from scanflow.domain.counts.stocktake import Area, AreaKind, BadArea, Certainty, Look, Read, Stocktake
from scanflow.domain.life import StocktakeState
from scanflow.domain.things import Bin, Rack, Round, Section
from scanflow.domain.words import units
from scanflow.planning import sampling
from scanflow.planning.room import Shape
from scanflow.storage.views import lists
from scanflow.vision.stored_pictures import opened
from scanflow.web import count_pictures, count_words
from scanflow.web.pages.declare import STAFF, Group, MenuEntry, page
from scanflow.web.pages.forms import sent
from scanflow.web.pages.rendering import Refusal, act, do, offset, render
from scanflow.web.pages.room_view import ask, room
from scanflow.web.pages.stock import room_drawing
from scanflow.workflow.counts import cycle, stocktakes
from scanflow.workflow.counts import report as stocktake_report
from scanflow.workflow.counts.report import Whole
from scanflow.workflow.ports import Missing, Unit

blueprint = Blueprint("count_page", __name__)
LAST = 12
"""Closed counts on one page."""
SURE, AMISS = (80, 90, 95, 99), (1, 2, 5, 10, 20)
"""Per cent to choose from for a sample: how sure it is, and how many bins may be amiss at most."""


@dataclass(frozen=True, slots=True)
class PlaceToCount:
    """One place of a running count: what was done there so far, blind."""

    name: str
    section: str
    photos: int
    by_hand: bool
    known: CountedPlace

    @property
    def words(self) -> str:
        """How it was looked at."""
        if not self.known.looked:
            return "not yet"
        if self.by_hand:
            return "by hand"
        return units(self.photos, "photo")

    @property
    def blank(self) -> bool:
        """Photographed, and nothing could be read: it is empty, or was too far or too dark."""
        return self.known.looked and not self.known.sure and not self.known.read

    @property
    def mark(self) -> str:
        """The class of its square."""
        return "blank" if self.blank else "full" if self.known.looked else ""


@dataclass(frozen=True, slots=True)
class Running:
    """A count and how many of its places were looked at."""

    count: Stocktake
    words: str
    looked: int
    places: int


@dataclass(frozen=True, slots=True)
class Closed:
    """A count that is over, and what it came to."""

    count: Stocktake
    words: str
    whole: Whole


@dataclass(frozen=True, slots=True)
class Ending:
    """What there is of a running count: `left` places not looked at, `todo` things amiss and not settled."""

    photos: int
    looked: int
    left: int
    todo: int


@dataclass(frozen=True, slots=True)
class SamplePlan:
    """How many of the bins are drawn, to be so sure that at most so many are amiss, both in per cent."""

    bins: int
    draw: int
    sure: int
    amiss: int


@page(blueprint, "GET", "/counts", roles=STAFF, live=True, menu=MenuEntry(Group.ROOM, 4, "Counts", "n"))
def index() -> ResponseReturnValue:
    ended = room().get(Stocktake, request.args.get("cancelled", ""))
    over = ended is not None and ended.state is StocktakeState.CANCELLED
    return _index(request.args.get("area", ""), "", 200, count_words.subject(ended) if ended and over else "")


def _index(chosen: str, said: str, status: int, cancelled: str = "") -> ResponseReturnValue:
    unit = room()
    bins, racks, sections = unit.find(Bin), unit.find(Rack), unit.find(Section)
    shape = unit.settings.racks.shape()
    running = [_running(unit, each, bins) for each in reversed(unit.find(Stocktake, state=StocktakeState.OPEN))]
    closed = unit.find(Stocktake, state=StocktakeState.CLOSED)[::-1]
    turn, has_turn = cycle.plan(unit), cycle.running(unit)
    asked = _area(chosen, bins)
    closed = tuple(each for each in closed if each.area == asked or not asked)
    past = [_closed(each) for each in closed[offset() :][:LAST]]
    area = asked or ("" if running else "room")
    front = ""
    if area and Area.parse(area).kind in (AreaKind.RACK, AreaKind.SHELF, AreaKind.BIN):
        shown = [each for each in bins if each.rack == _rack(area)]
        standing = [rack for rack in racks if rack.name == _rack(area)]

        def to(name: str) -> str:
            return url_for("count_page.index", area=f"bin:{name}", _anchor="start")

        front = room_drawing.front(standing, shown, shape, sections, link=to, here=area.removeprefix("bin:"))
    return render(
        "counts/counts.html",
        running=running,
        same=next((each for each in running if each.count.area == area and each.count.sample is None), None),
        plan=_plan(area, bins),
        sure=SURE,
        turn=turn if turn and has_turn is None else None,
        amiss=AMISS,
        area=area,
        words=count_words.area(area) if area else "",
        kind=Area.parse(area).kind if area else "",
        rack=_rack(area),
        size=len(Area.parse(area).places(bins)) if area else 0,
        bins=bins,
        racks=racks,
        sections=sections,
        tiers=sorted({each.tier for each in bins if each.rack == _rack(area)}),
        front=front,
        chosen=asked,
        past=_by_area(past),
        shown=len(past),
        least=_tens(past),
        skip=offset(),
        size_of_page=LAST,
        all_past=len(closed),
        between=count_words.between,
        cancelled=cancelled,
        said=said,
    ), status


def _plan(area: str, bins: Iterable[Bin]) -> SamplePlan | None:
    """What a sample of this area takes, None where there is nothing to draw from."""
    of = sum(Area.parse(area).covers(each) for each in bins) if area else 0
    if not 1 < of <= sampling.MOST:
        return None
    sure, amiss = _one_of("sure", SURE, 95), _one_of("amiss", AMISS, 5)
    return SamplePlan(of, sampling.to_count(of, sampling.too_many(of, amiss / 100), sure / 100), sure, amiss)


def _one_of(name: str, known: Sequence[int], usual: int) -> int:
    asked = request.args.get(name, usual, type=int)
    return asked if asked in known else usual


def _closed(count: Stocktake) -> Closed:
    return Closed(count, count_words.subject(count), stocktake_report.whole(stocktake_report.written(count)))


def _by_area(past: Iterable[Closed]) -> dict[str, list[Closed]]:
    """Those of one area together, by its words, that counted last before all others: only they can be compared."""
    areas: dict[str, list[Closed]] = {}
    for each in past:
        areas.setdefault(count_words.area(each.count.area), []).append(each)
    return areas


def _tens(past: Iterable[Closed]) -> int:
    """Where the scale of their agreements begins: full tens of per cent, below all of them."""
    lows = [each.whole.agreement[0] for each in past if each.whole.agreement]
    return int(10 * min(lows, default=0.0)) * 10


def _area(text: str, bins: Iterable[Bin]) -> str:
    """The area asked for, empty where there is none such."""
    try:
        wanted = Area.parse(text)
    except BadArea:
        return ""
    return str(wanted) if wanted.places(bins) else ""


def _rack(area: str) -> str:
    kind, _, name = area.partition(":")
    return name.split("-")[0] if kind in ("rack", "shelf", "bin") else ""


def _running(unit: Unit, count: Stocktake, bins: tuple[Bin, ...]) -> Running:
    known = _known(count.places(bins), unit.find(Look, stocktake=count.id))
    return Running(count, count_words.subject(count), sum(each.looked for each in known.values()), len(known))


def _known(names: Sequence[str], looks: Sequence[Look]) -> dict[str, CountedPlace]:
    """What the looks tell of each place, without the shop's account."""
    return places(names, {}, looks)


@page(blueprint, "POST", "/counts", roles=STAFF)
def start() -> ResponseReturnValue:
    count = act(lambda unit: stocktakes.open_count(unit, sent(stocktakes.OpenCount, keep=("sample",))))
    return _index(request.form.get("area", ""), *count) if isinstance(count, Refusal) else _begun(count)


@page(blueprint, "POST", "/counts/due", roles=STAFF)
def due() -> ResponseReturnValue:
    """Count the bins whose turn it is."""
    count = act(cycle.open_due)
    return _index("", *count) if isinstance(count, Refusal) else _begun(count)


def _begun(count: Stocktake) -> ResponseReturnValue:
    """Go on to the new count; of chosen bins to the first."""
    return redirect(url_for("count_page.show", id=count.id, place=count.sample.bins[0] if count.sample else None), 303)


@page(blueprint, "GET", "/counts/<id>", roles=STAFF, live=True)
def show(id: str, said: str = "", status: int = 200) -> ResponseReturnValue:
    unit = room()
    count = unit.get(Stocktake, id)
    if count is None:
        raise Missing("There is no such count.")
    if count.state is StocktakeState.CLOSED:
        return redirect(url_for("count_report.show", id=id), 303)
    bins, racks, sections = unit.find(Bin), unit.find(Rack), unit.find(Section)
    shape = unit.settings.racks.shape()
    looks = unit.find(Look, stocktake=id)
    names = count.places(bins)
    place = _place(request.args.get("place", ""), names)
    shown = _look(looks, request.args.get("look", ""), place)
    standing = stocktakes.standings(unit) if shown else {}
    walk = unit.get(Round, request.args.get("round", ""))
    ending = _ending(unit, count, looks) if "end" in request.args else None
    reads = shown.reads if shown else ()
    strange = {read.text for read in reads if shown and stocktakes.unexpected(read, shown.place, standing)}
    spots = _spots(names, looks, bins)
    spot = next((each for each in spots if each.name == place), None)
    closer = next((each for each in looks if each.key == request.args.get("closer") and each.place == place), None)
    following = _following(spots, place)
    stays = closer or {"again", "hand"} & request.args.keys()
    seen = bool(spot and spot.known.looked and not stays)
    wanted: dict[str, Any] = {"place": place or None, "round": walk.id if walk else None}
    wanted["closer"] = closer.key if closer else None
    wanted |= {each: request.args.get(each) for each in ("of", "again", "look", "hand", "end")}
    here = url_for("count_page.show", id=id, **wanted)
    return render(
        "counts/count.html",
        count=count,
        words=count_words.subject(count),
        place=place,
        only=len(names) == 1,
        spot=spot,
        following=following,
        target=following if seen and following and not walk else place,
        seen=seen,
        round=walk,
        closer=closer,
        part=_part(closer, request.args.get("of", "")) if closer else None,
        ending=ending,
        shelves=_shelves(spots, bins),
        done=sum(each.known.looked for each in spots),
        size=len(names),
        front=_front(id, racks, bins, shape, sections, spots, place),
        look=shown,
        strange=strange,
        listed=sorted(shown.reads, key=lambda read: _rank(read, strange)) if shown else (),
        looks=[each for each in reversed(looks) if each.photo and each.place == place] if place else [],
        by_hand="hand" in request.args,
        here=here,
        said=said,
    ), status


def _rank(read: Read, strange: Collection[str]) -> tuple[bool, bool]:
    """What a person should see comes first: unexpected cards, then those that were not read whole."""
    return read.text not in strange, read.certainty is Certainty.DECODED


def _ending(unit: Unit, count: Stocktake, looks: Sequence[Look]) -> Ending:
    """What closing leaves undone and cancelling loses."""
    now = stocktakes.state(unit, count.id)
    todo = sum(each.resolved is None for each in now.found)
    return Ending(sum(each.photo is not None for each in looks), now.looked, len(now.places) - now.looked, todo)


def _part(look: Look, subject: str) -> Read | None:
    """The card of which a photo from nearer is wanted: the one asked for, else the first that no decoder read."""
    cards = [each for each in look.reads if each.corners and each.certainty is not Certainty.UNREAD]
    asked = [each for each in cards if subject in (each.code, each.text)]
    return next(iter(asked or [each for each in cards if each.certainty is Certainty.MATCHED]), None)


def _place(wanted: str, names: Sequence[str]) -> str:
    """The place asked for, or the area's only one; empty where none is."""
    if len(names) == 1:
        return names[0]
    return next((name for name in names if name.upper() == wanted.strip().upper()), "")


def _look(looks: Sequence[Look], key: str, place: str) -> Look | None:
    """The look asked for, else the newest at the place, else the newest of all."""
    newest = sorted(looks, key=lambda each: each.at, reverse=True)
    asked = [each for each in newest if each.key == key]
    here = [each for each in newest if each.place == place]
    return next(iter(asked or here or ([] if place else newest)), None)


def _spots(names: Sequence[str], looks: Sequence[Look], bins: Iterable[Bin]) -> list[PlaceToCount]:
    sections = {each.name: each.section for each in bins}
    known = _known(names, looks)
    whole = [each for each in looks if each.whole and each.closer is None]
    return [
        PlaceToCount(
            name,
            sections.get(name, ""),
            sum(each.place == name and each.by_eye for each in whole),
            any(each.place == name and not each.by_eye for each in whole),
            known[name],
        )
        for name in names
    ]


def _following(spots: Sequence[PlaceToCount], place: str) -> str:
    """The next place in the room's order that nobody looked at, from the beginning after the last; empty for none."""
    at = next((n for n, spot in enumerate(spots) if spot.name == place), -1)
    return next((spot.name for spot in (*spots[at + 1 :], *spots[:at]) if not spot.known.looked), "")


def _shelves(spots: Iterable[PlaceToCount], bins: Iterable[Bin]) -> dict[str, list[PlaceToCount]]:
    """The places by rack and tier, in the room's order."""
    shelf_of = {each.name: f"Shelf {each.rack}-{each.tier}" for each in bins}
    shelves: dict[str, list[PlaceToCount]] = {}
    for spot in spots:
        shelves.setdefault(shelf_of.get(spot.name, "Tray"), []).append(spot)
    return shelves


def _front(
    id: str,
    racks: Iterable[Rack],
    bins: Iterable[Bin],
    shape: Shape,
    sections: Iterable[Section],
    spots: Sequence[PlaceToCount],
    place: str,
) -> Markup | str:
    """The racks of the area, each bin a way to say that the next photo shows it; those looked at have full squares."""
    looked = {spot.name: spot.known.looked for spot in spots}
    standing = [each for each in bins if each.name in looked]
    names = {each.rack for each in standing}
    if len(standing) < 2:
        return ""
    return room_drawing.front(
        [rack for rack in racks if rack.name in names],
        standing,
        shape,
        sections,
        link=lambda name: url_for("count_page.show", id=id, place=name),
        here=place,
        looked={name for name, done in looked.items() if done},
    )


@page(blueprint, "GET", "/counts/<id>/looks/<key>.jpg", roles=STAFF)
def picture(id: str, key: str) -> ResponseReturnValue:
    """The photo of a look with its outlines; with `of`, the part around that card alone."""
    subject = request.args.get("of", "")
    unit = room()
    shot, row = unit.get(Look, key), ask(lists.look_photo, id, key)
    if shot is None or row is None:
        raise Missing("There is no such photo, or it is kept no longer.")
    standing = stocktakes.standings(unit)
    strange = sorted(read.code or read.text for read in shot.reads if stocktakes.unexpected(read, shot.place, standing))
    response = Response(mimetype="image/jpeg")
    response.set_etag(hashlib.sha256("\n".join([row.hash, subject, *strange]).encode()).hexdigest())
    response.cache_control.private = True
    response.cache_control.no_cache = True
    if response.make_conditional(request).status_code == 304:
        return response
    image = opened(row.data)
    shown = count_pictures.near(image, shot, subject) if subject else count_pictures.drawn(image, shot, strange)
    out = BytesIO()
    shown.save(out, "JPEG", quality=82)
    response.data = out.getvalue()
    return response


@page(blueprint, "POST", "/counts/<id>/close", roles=STAFF)
def close(id: str) -> ResponseReturnValue:
    """Write the report; from then on nothing more is looked into."""
    return do(show, lambda unit: stocktake_report.close(unit, id), url_for("count_report.show", id=id), id=id)


@page(blueprint, "POST", "/counts/<id>/cancel", roles=STAFF)
def cancel(id: str) -> ResponseReturnValue:
    return do(show, lambda unit: stocktakes.cancel(unit, id), url_for(".index", cancelled=id), id=id)
