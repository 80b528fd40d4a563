"""A card is held before a station, as text or as a photograph; and what was wrong is undone."""

from __future__ import annotations

from collections.abc import Callable
from typing import Any

from flask import Blueprint, Response, request

from scanflow.domain.things import Station
from scanflow.vision.readings import ImageError, Picture
from scanflow.web.api import checking, render
from scanflow.web.api.contract import STAFF, answer, call, digest, do
from scanflow.web.door.visitors import shop, visitor
from scanflow.web.once import Reply
from scanflow.workflow.answers import Answer
from scanflow.workflow.picking import scans
from scanflow.workflow.picking.reading import Reading
from scanflow.workflow.ports import Invalid
from scanflow.workflow.times import HOW, instant

blueprint = Blueprint("api_scans", __name__)

DEFAULTS = {"table": "main", "take_out": False}


@call(
    blueprint,
    "POST",
    "/api/scans",
    roles=STAFF,
    body="NewScan",
    form="ScanImage",
    answers={200: "Verdict"},
    once=False,
)
def create() -> Response:
    """Judges one reading and does what it entails; the same key gets the same answer, once."""
    if request.mimetype == "multipart/form-data":
        return answer(_of_image(*checking.form("ScanImage", "image")))
    fields = checking.body("NewScan")
    return answer(_scan(fields, digest(DEFAULTS | _unkeyed(fields)), fields["text"]))


@call(blueprint, "POST", "/api/decode", roles=STAFF, form="Frame", answers={200: "Decoded"}, once=False)
def decode() -> Response:
    """Reads the codes of one frame of a live camera; it judges, moves and records nothing."""
    _, image = checking.form("Frame", "image")
    return answer({"texts": [one.text for one in _seen(shop().readers.glance, image).decoded]})


def _seen(reader: Callable[[bytes], Picture], image: bytes) -> Picture:
    try:
        return reader(image)
    except ImageError as error:
        raise Invalid("/image", "bad_image", str(error)) from error


def _unkeyed(fields: dict[str, Any]) -> dict[str, Any]:
    """What a repeat must have alike: it waited longer, if the first did not come through."""
    return {name: value for name, value in fields.items() if name not in ("key", "age_ms")}


def _of_image(fields: dict[str, Any], image: bytes) -> Answer:
    """A repeat is answered without reading the picture again; it is read before the transaction, not in it."""
    body = digest(DEFAULTS | _unkeyed(fields), image)
    with shop().looking() as unit:
        before = scans.earlier(unit, fields["key"], body)
    if before is not None:
        return before
    return _scan({"via": "camera"} | fields, body, _seen(shop().readers.read, image))


def _scan(fields: dict[str, Any], body: str, seen: str | Picture) -> Answer:
    known = {
        name: fields[name] for name in ("via", "round", "table", "bin", "take_out", "at", "age_ms") if name in fields
    }
    if isinstance(seen, str):
        known |= {"texts": (seen,)}
    else:
        known |= {"texts": tuple(one.text for one in seen.decoded), "image": True}
        known["agreed"] = tuple(one.text for one in seen.decoded if one.engines > 1)
    reading = Reading(station=Station(fields["station"]), key=fields["key"], body=body, **known)
    try:
        instant(reading.at, "UTC")
    except (ValueError, OverflowError):
        raise Invalid("/at", "bad_time", HOW) from None
    return shop().act(visitor().name, lambda unit: scans.scan(unit, reading))


@call(
    blueprint,
    "POST",
    "/api/scans/{key}/undo",
    roles=STAFF,
    body="Nothing",
    answers={200: "Line"},
    conflicts=("nothing_to_undo", "changed_since", "handed_over", "slot_reused", "parcel_open", "not_allowed"),
)
def undo(key: str, body: dict[str, Any]) -> Response:
    """Takes back a scan, if nothing has changed its line since; a parcel that it closed is reopened."""
    return do(lambda unit: Reply(200, render.one_line(unit, scans.undo(unit, key))))
