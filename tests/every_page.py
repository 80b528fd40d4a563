"""The addresses of all pages, for tests that go through each."""

from __future__ import annotations

from collections.abc import Iterable, Iterator
from contextlib import suppress
from urllib.parse import urlsplit

from clients import setup_link
from flask import Flask
from furnished import Furnished
from shown_counts import two_counts
from werkzeug.exceptions import NotFound

from scanflow.domain.life import Hold, LineState, ParcelState
from scanflow.domain.things import Line, Parcel
from scanflow.shop import Shop
from scanflow.workflow import backups
from scanflow.workflow.orders import returns

FILES = frozenset(
    {
        *("trust.download", "edges.show", "installed.icon", "installed.manifest", "installed.worker"),
        *("paper_page.order_slip", "paper_page.order_slips", "paper_page.round_slips", "paper_page.sheet"),
        *("card_page.picture", "card_page.sheet_picture", "card_page.download", "backup_page.download"),
        *("count_page.picture", "slot_page.doubted", "hand_over_page.signed_list"),
        *("evidence_page.printed", "evidence_page.entries"),
    }
)
"""What is asked for by GET and gives no page: pictures, styles, files to keep."""


ALWAYS = (
    "/",
    "/put-away",
    "/orders",
    "/orders?state=held",
    "/orders/load",
    "/orders/new",
    "/channels",
    "/returns",
    "/stock/load",
    "/listings",
    "/listings/check",
    "/rounds",
    "/table",
    "/table?table=two",
    "/hand-over",
    "/tray",
    "/shelf",
    "/slots",
    "/slots?state=away",
    "/search",
    "/search?q=saddle",
    "/ledger",
    "/ledger?about=D001",
    "/trouble",
    "/help",
    "/look",
    "/counts",
    "/settings",
    "/scanner",
    "/cards",
    "/room",
    "/room/anew",
    "/cards/check",
    "/closing-up",
    "/amiss",
    "/devices",
    "/account",
    "/backups",
    "/plan",
    "/plan?section=Bells&code=b&step=2",
    "/plan?section=Bells&code=b&slots_per_bin=9&step=3",
    "/plan?section=Bells&code=b&slots_per_bin=9&intake=9&stay=9&step=4",
    "/plan?section=Bells&code=b&slots_per_bin=9&intake=9&stay=9&count=9&colour=pink&step=5",
    "/room?section=D",
)
"""The pages that need nothing in the room, by their addresses."""


def shown_by(app: Flask, addresses: Iterable[str]) -> set[str]:
    """The endpoints that these addresses lead to."""
    adapter, found = app.url_map.bind("localhost"), set()
    for address in addresses:
        with suppress(NotFound):
            found.add(adapter.match(urlsplit(address).path)[0])
    return found


def front_door(shop: Shop) -> Iterator[str]:
    """Every page that needs nobody, with a link that works and with one that does not."""
    pairing = shop.act("owner", lambda unit: unit.access.make_pairing_link())
    yield from ("/login", f"/set-up/{setup_link(shop)}", "/set-up/used", f"/pair/{pairing}", "/pair/used")
    yield from ("/trust", "/offline")


def backup_places(shop: Shop) -> str:
    """A plain place, and one whose recovery key was not tried yet; the path of that."""
    with shop.looking() as unit:
        if unit.settings.backups.places:
            return unit.settings.backups.places[1].path
    shop.act("owner", lambda unit: backups.add(unit, backups.NamePlace(path="/media/stick/backups")))
    return shop.act(
        "owner", lambda unit: backups.add(unit, backups.NamePlace(path="/media/disk"), recipient="age1none")
    ).path


def two_returns(shop: Shop) -> list[str]:
    """Parcels that nobody expects: one that has not arrived, and one that has."""
    first, second = (shop.act("owner", lambda unit: returns.expect(unit, returns.Expect()).id) for _ in range(2))
    shop.act("owner", lambda unit: returns.arrive(unit, second))
    return [first, second]


def addresses(shop: Shop, room: Furnished) -> Iterator[str]:
    """Every page, with something on it and, where that is another page, with nothing. Two counts and two returns are
    made for it, and two places for backups are named.
    """
    stay, order = room.stays[0].id, room.orders[0].id
    with shop.looking() as unit:
        held = next(each for each in unit.find(Line) if each.has(Hold.DOUBTFUL))
        unbound = next(each for each in unit.find(Line) if each.has(Hold.UNKNOWN_CODE))
    yield from ("/", "/put-away", "/put-away?code=D009", f"/put-away/{stay}", "/orders", "/orders?state=returned")
    yield from (
        f"/orders/{order}/evidence",
        f"/orders/{order}",
        f"/orders/{unbound.order}",
        f"/lines/{held.id}",
        f"/lines/{unbound.id}",
    )
    yield from (
        "/orders/load",
        "/orders/new",
        "/channels",
        "/stock/load",
        "/listings",
        "/listings?state=all",
        "/listings/check",
        f"/orders/new?stay={stay}",
        "/rounds",
        f"/rounds/{room.round.id if room.round else ''}",
        "/table",
        "/table?table=two",
    )
    yield from ("/tray", "/shelf", "/shelf?bin=A-1-1", "/shelf?bin=Z-9-9", "/slots", "/slots?section=D&state=taken")
    yield from ("/slots/D001", f"/stays/{stay}", "/search?q=D00&list=yes", "/search", "/search?q=saddle")
    yield from (
        "/search?q=nothing+at+all",
        "/ledger",
        "/ledger?about=D001",
        "/trouble",
        "/help",
        "/amiss",
        "/settings",
        "/scanner",
        "/no-such-page",
        "/look",
    )
    yield from ("/cards", "/cards?rows=99", "/cards/check?module=0.6")
    yield from ("/room", "/room/anew?heavy=W", "/room?section=D&kg=2&rated=1", "/sections/D?intake=9&stay=9")
    walk = room.round.id if room.round else ""
    yield from (f"/rounds/{walk}/paper", f"/rounds/{walk}/paper?stop=7")
    with shop.looking() as unit:
        closed = unit.find(Parcel, state=ParcelState.CLOSED)[0].id
    yield from (
        f"/table/{closed}/with",
        "/hand-over",
        f"/hand-over?parcel={closed}",
        f"/hand-over?parcel={closed}&told=known",
    )
    yield "/closing-up"
    waited, here = two_returns(shop)
    with shop.looking() as unit:
        left = unit.find(Line, state=LineState.RELEASED)[0].id
    yield from ("/returns", "/returns?state=expected", f"/returns/{waited}", f"/returns/{here}")
    yield from (f"/returns/{here}?q=derailleur", f"/returns/{here}?line={left}")
    yield "/sections/D/near?intake=9&quick=30&quick_stay=9&slow_stay=90"
    yield from ("/devices", "/account", "/trust", "/backups", f"/backups/key?path={backup_places(shop)}")
    plan = "/plan?section=Bells&code=b&slots_per_bin=9&things=5x4x3in&intake=9&stay=9&count=9&colour=pink&step="
    yield from ("/plan", f"{plan}2", f"{plan}3", f"{plan}4", f"{plan}5", "/plan/made/D")
    running, closed = (f"/counts/{count.id}" for count in two_counts(shop))
    yield from (
        "/counts",
        "/counts?area=rack:A&sure=80&amiss=20",
        "/counts?area=section:D",
        running,
        f"{running}?place=A-1-1",
    )
    yield from (
        f"{running}?place=A-1-3",
        f"{running}?end=1",
        f"{running}/findings",
        f"{closed}/findings",
        f"{closed}/report",
    )
