"""The example shop before its day begins: sections, slots, and the stock of the five days before."""

from __future__ import annotations

from collections.abc import Iterator
from datetime import UTC, datetime, time, timedelta
from functools import partial
from pathlib import Path

from scanflow.demo import drawings, goods
from scanflow.demo.goods import CARDS, KINDS, STORED
from scanflow.domain.things import Photo
from scanflow.shop import Shop
from scanflow.storage import machine
from scanflow.storage.database import Database
from scanflow.storage.engine import sqlite_url
from scanflow.vision import photographs
from scanflow.workflow import stock
from scanflow.workflow.ports import Unit
from scanflow.workflow.stock import photos

WHO = "workshop"


def make(data: Path, now: datetime) -> int:
    """Make the shop in a data folder, dated over the days before `now`; answers how many things are in stock."""
    stored = list(_stored(now))
    clock = [stored[0][0]]
    shop = Shop(Database(sqlite_url(data), begun=machine.begun_here), clock=lambda: clock[0])
    try:
        shop.act(WHO, _add_sections)
        for clock[0], code in stored:
            shop.act(WHO, partial(_store, code=code, photo=photographs.photo(shop.readers, drawings.drawing(code))))
    finally:
        shop.close()
    return len(stored)


def _add_sections(unit: Unit) -> None:
    for kind in KINDS:
        stock.add_section(
            unit, stock.AddSection(code=kind.code, name=kind.name, slots_per_bin=kind.per_bin, colour=kind.colour)
        )
        stock.add_slots(unit, kind.code, stock.AddSlots(count=CARDS))


def _store(unit: Unit, code: str, photo: Photo) -> None:
    listing = "" if code == goods.ON_BOTH else goods.listing_of(code)
    stay = stock.put_away(unit, stock.PutAway(title=goods.title_of(code), listing=listing, code=code))
    photos.keep(unit, stay.id, photo)


def _stored(now: datetime) -> Iterator[tuple[datetime, str]]:
    """When each thing was put away, and in which slot: three of each section a day, the last ones yesterday."""
    today = datetime.combine(now.astimezone(UTC).date(), time(), UTC)
    days = -(-STORED // 3)
    for number in range(1, STORED + 1):
        day, hours = divmod(number - 1, 3)
        for place, kind in enumerate(KINDS):
            yield today - timedelta(days - day) + timedelta(hours=8 + 3 * hours, minutes=10 * place), kind.slot(number)
