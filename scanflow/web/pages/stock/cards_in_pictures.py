"""Pictures of goods as they stand: which cards are in them, where, what they are now, and how sure that is.

Nothing is kept, recorded or moved: only a scan at a station does that.
"""

from __future__ import annotations

from base64 import b64encode
from dataclasses import dataclass
from io import BytesIO
from typing import Any

from flask import Blueprint, request
from flask.typing import ResponseReturnValue
from werkzeug.datastructures import FileStorage

from labels import slot_code
from scanflow.storage.views import stock as slot_views
from scanflow.vision import Book, Certainty, ImageError, PictureReadings, Reading, photographs
from scanflow.vision.drawn import draw
from scanflow.vision.stored_pictures import opened
from scanflow.vision.workers import Readers
from scanflow.web.door.visitors import shop
from scanflow.web.pages.declare import STAFF, page
from scanflow.web.pages.rendering import render
from scanflow.web.pages.room_view import ask, let_go, room
from scanflow.web.problem import Problem
from scanflow.workflow.stock import cards

blueprint = Blueprint("picture_page", __name__)
MOST_PICTURES = 12


@dataclass(frozen=True, slots=True)
class CardInPicture:
    """A card of the shop in a picture, with the row of its slot."""

    reading: Reading
    slot: Any


@dataclass(frozen=True, slots=True)
class ShownPicture:
    """A picture as drawn (a data URI), its cards, the other codes with what they are, and how many labels are unread.

    Where it could not be opened there is only `error`.
    """

    name: str
    drawn: str = ""
    cards: tuple[CardInPicture, ...] = ()
    others: tuple[tuple[str, str], ...] = ()
    unread: int = 0
    error: str = ""

    def count(self, certainty: str) -> int:
        return sum(card.reading.certainty == certainty for card in self.cards)


@page(blueprint, "GET", "/look", roles=STAFF)
def show() -> ResponseReturnValue:
    return _show((), ""), 200


@page(blueprint, "POST", "/look", roles=STAFF, takes_file=True)
def read() -> ResponseReturnValue:
    """What is in the pictures that were sent."""
    if request.mimetype != "multipart/form-data":
        raise Problem(415, "unsupported_media_type", "Send pictures in a form: Content-Type: multipart/form-data.")
    files = [each for each in request.files.getlist("pictures") if each.filename]
    if not 0 < len(files) <= MOST_PICTURES:
        return _show((), f"Choose one picture, or up to {MOST_PICTURES}."), 422
    readers, book = shop().readers, photographs.book(room())
    let_go()
    read = [_read(readers, book, each) for each in files]  # in turn: the other worker is for the stations
    seen = tuple(_told(*each) for each in read)
    return _show(seen, ""), 200


def _show(seen: tuple[ShownPicture, ...], said: str) -> str:
    return render("stock/cards_in_pictures.html", seen=seen, said=said, most=MOST_PICTURES)


def _read(readers: Readers, book: Book, file: FileStorage) -> tuple[str, PictureReadings | None, str]:
    """Name, readings, and the drawn picture or what is wrong with it; only a worker opens what was sent."""
    name, data = file.filename or "", file.read()
    try:
        picture = readers.read(data, book)
        shown, _ = readers.kept(data)
    except ImageError as error:
        return name, None, str(error)
    out = BytesIO()
    draw(opened(shown), picture).save(out, "JPEG", quality=82)
    return name, picture, f"data:image/jpeg;base64,{b64encode(out.getvalue()).decode()}"


def _told(name: str, picture: PictureReadings | None, drawn: str) -> ShownPicture:
    if picture is None:
        return ShownPicture(name, error=drawn)
    read = [(one, one.text) for one in picture.readings if one.text is not None]
    codes = {text: _code(text) for _, text in read}
    named = [code for code, _ in codes.values() if code]
    slots = {slot.code: slot for slot in ask(slot_views.slots_of, named)}
    found = tuple(CardInPicture(one, slots[codes[text][0]]) for one, text in read if codes[text][0] in slots)
    others = tuple((text, codes[text][1]) for _, text in read if codes[text][0] not in slots)
    unread = sum(one.certainty is Certainty.UNREAD for one in picture.readings)
    return ShownPicture(name, drawn, found, others, unread)


def _code(text: str) -> tuple[str, str]:
    """The slot that a card's text names, and what the text is if the room has no such slot."""
    if slot_code.is_slip_like(text):
        return "", "a slip"
    try:
        return cards.named(room(), text, cards.widths(room())).code, "a card of no slot here"
    except slot_code.BadCheck:
        return "", "like a card, but its check is wrong"
    except slot_code.BadFormat:
        return "", "not a card of this room"
