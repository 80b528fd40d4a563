"""A picture of a thing, for the eye to prove what the scan can't."""

from __future__ import annotations

from dataclasses import replace

from scanflow.domain import events
from scanflow.domain.things import Item, Photo, Stay
from scanflow.workflow.ports import Unit, must


def keep(unit: Unit, stay_id: str, photo: Photo) -> Stay:
    """Let the item of a stay have this picture, in place of one it has; it keeps it wherever it moves.

    The same picture is stored once, for however many items. The former one stays: the ledger names it.
    """
    stay = must(unit, Stay, stay_id)
    item = must(unit, Item, stay.item)
    if unit.get(Photo, photo.hash) is None:
        unit.add(photo)
    if item.photo != photo.hash:
        unit.put(replace(item, photo=photo.hash))
        unit.record(events.PhotoKept(stay=stay.id, code=stay.code, photo=photo.hash))
    return stay


def address(stay: Stay | None, item: Item | None) -> str | None:
    """Where the item's picture is given, None without one."""
    return address_of(stay.id, item.photo) if stay is not None and item is not None else None


def address_of(stay_id: str | None, photo: str | None) -> str | None:
    """It names the picture, so that whoever has it once need not ask again."""
    return f"/api/stays/{stay_id}/photo?hash={photo}" if stay_id and photo else None
