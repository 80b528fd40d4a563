"""A card is held before a station, as text or as a photograph; and what was wrong is undone."""

from __future__ import annotations

from collections.abc import Callable

from flask import Blueprint, Response
from pydantic import Field

from scanflow.vision.readings import ImageError, PictureReadings
from scanflow.web.api import given, render
from scanflow.web.api.contract import STAFF, answer, call, digest, do
from scanflow.web.door.visitors import shop, visitor
from scanflow.web.once import CallReply
from scanflow.workflow.answers import Answer
from scanflow.workflow.fields import Command, Image
from scanflow.workflow.picking import scans, undoing
from scanflow.workflow.picking.reading import ScanBase, ScanImage, ScanText, StationReading
from scanflow.workflow.ports import Invalid

blueprint = Blueprint("api_scans", __name__)

DEFAULTS = {"table": "main", "take_out": False}


@call(blueprint, "POST", "/api/scans", STAFF, {200: Answer}, once=False)
def create(said: ScanText | ScanImage) -> Response:
    """Judges one reading and does what it entails; the same key gets the same answer, once."""
    return answer(_of_image(said) if isinstance(said, ScanImage) else _of_text(said))


def _of_text(said: ScanText) -> Answer:
    reading = StationReading(said, (said.text,), _print(said))
    return shop().act(visitor().name, lambda unit: scans.scan(unit, reading))


def _of_image(said: ScanImage) -> Answer:
    """A repeat is answered without reading the picture again; it is read before the transaction, not in it."""
    body = _print(said, said.image)
    with shop().looking() as unit:
        before = scans.earlier(unit, said.key, body)
    if before is not None:
        return before
    read = [(one.text, one.engines) for one in _seen(shop().readers.read, said.image).decoded if one.text is not None]
    agreed = tuple(text for text, engines in read if engines > 1)
    reading = StationReading(said, tuple(text for text, _ in read), body, image=True, agreed=agreed)
    return shop().act(visitor().name, lambda unit: scans.scan(unit, reading))


def _print(said: ScanBase, image: bytes | None = None) -> str:
    """What a repeat must have alike: not its age, for it waited longer if the first did not come through."""
    return digest(DEFAULTS | said.sent("key", "age_ms", "image"), image)


class Frame(Command):
    image: Image = Field(description="What a live camera sees: grey will do.")


@call(blueprint, "POST", "/api/decode", STAFF, {200: given.Decoded}, once=False)
def decode(said: Frame) -> Response:
    """Reads the codes of one frame of a live camera; it judges, moves and records nothing."""
    return answer({"texts": [one.text for one in _seen(shop().readers.glance, said.image).decoded]})


def _seen(reader: Callable[[bytes], PictureReadings], image: bytes) -> PictureReadings:
    try:
        return reader(image)
    except ImageError as error:
        raise Invalid("/image", "bad_image", str(error)) from error


@call(
    blueprint,
    "POST",
    "/api/scans/{key}/undo",
    STAFF,
    {200: given.Line},
    ("nothing_to_undo", "changed_since", "handed_over", "slot_reused", "parcel_open", "not_allowed"),
)
def undo(key: str) -> Response:
    """Takes back a scan, if nothing has changed its line since; a parcel that it closed is reopened."""
    return do(lambda unit: CallReply(200, render.one_line(unit, undoing.undo(unit, key))))
