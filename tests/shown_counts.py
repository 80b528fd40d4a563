"""Counts of a furnished room by photos whose readings are known, for tests that need no reader."""

from __future__ import annotations

from calls import photo

from labels.slot_code import card_text
from scanflow.domain.counts.stocktake import Certainty, How, Look, Stocktake
from scanflow.shop import Shop
from scanflow.vision import photographs
from scanflow.workflow.counts import looks, resolving, stocktakes
from scanflow.workflow.counts import report as stocktake_report
from scanflow.workflow.counts.looks import IncomingLook, LabelReading
from scanflow.workflow.counts.resolving import Resolve


def opened(shop: Shop, area: str = "section:D", note: str = "After the fair") -> Stocktake:
    return shop.act("owner", lambda unit: stocktakes.open_count(unit, stocktakes.OpenCount(area=area, note=note)))


def shown(
    shop: Shop, count: Stocktake, place: str, *codes: str, key: str, matched: str = "", unread: int = 0, **more: str
) -> Look:
    """A photo of a place with these slots' cards, one above the other; one of them matched, the last ones unread."""
    cards = [*codes, *([matched] if matched else []), *["D099"] * unread]
    certainties = [
        *[Certainty.DECODED] * len(codes),
        *[Certainty.MATCHED] * bool(matched),
        *[Certainty.UNREAD] * unread,
    ]
    texts = tuple(
        LabelReading(None if how is Certainty.UNREAD else card_text(code), how, corners(row), 2)
        for row, (code, how) in enumerate(zip(cards, certainties, strict=True))
    )
    picture = photographs.photo(shop.readers, photo(*cards))
    size = (600, 200 * max(1, len(cards)))
    look = IncomingLook(key, key, texts, How.PHOTO, place, image=True, size=size, photo=picture, **more)
    return shop.act("owner", lambda unit: looks.look(unit, count.id, look))


def corners(row: int) -> tuple[float, ...]:
    """Of the bars that `calls.photo` draws in a row."""
    left, top, right, bottom = 60, 200 * row + 40, 440, 200 * row + 140
    return tuple(map(float, (left, top, right, top, right, bottom, left, bottom)))


def amiss(shop: Shop, count: Stocktake, name: str) -> None:
    """Looks into section D of a furnished room that find a bit of everything; `name` is the begin of their keys."""
    shown(shop, count, "A-1-1", "D002", "D012", "Q077", matched="D003", unread=1, key=f"{name}1")
    shown(shop, count, "A-1-2", "D004", "S001", key=f"{name}2")
    shown(shop, count, "A-1-2", "D004", "S001", matched="D005", key=f"{name}3")


def two_counts(shop: Shop) -> tuple[Stocktake, Stocktake]:
    """One that runs and one that is closed, each with things amiss, of which one is put right."""
    counts = opened(shop), opened(shop)
    for number, count in enumerate(counts):
        amiss(shop, count, f"look{number}-")
    said = Resolve(how="put_right")
    shop.act("owner", lambda unit: resolving.resolve(unit, counts[0].id, "elsewhere-D004", said))
    closed = shop.act("owner", lambda unit: stocktake_report.close(unit, counts[1].id))
    return counts[0], closed
