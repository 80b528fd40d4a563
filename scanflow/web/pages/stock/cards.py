"""The card designer: a card at its true size, the sheet it lies on, and the files to print."""

from __future__ import annotations

import threading
from collections.abc import Callable
from io import BytesIO
from zipfile import ZipFile

from flask import Blueprint, Response, request, send_file
from flask.typing import ResponseReturnValue

from labels import draw, sheet
from labels.card import Style
from labels.paper import COLOURS, SHEETS
from scanflow.domain.things import Section, Slot
from scanflow.web.pages.declare import Group, MenuEntry, page
from scanflow.web.pages.rendering import render
from scanflow.web.pages.room_view import let_go, room
from scanflow.web.pages.stock import card_design
from scanflow.web.pages.stock.card_design import DEFAULTS, DUPLEX, STYLES, Design
from scanflow.workflow.ports import Invalid, Unit, must

blueprint = Blueprint("card_page", __name__)
MOST_PICTURES = 20
"""Pages that are given as pictures, one file each; more go into a PDF."""

FORMATS = ("pdf", "svg", "png")
_drawing = threading.Lock()
"""Pdfium, which gives the outlines of letters and makes PNG, takes one caller at a time."""


def _given(unit: Unit, section: Section) -> dict[str, str]:
    """What was typed, and what stands in a field before anything is."""
    given = DEFAULTS | {"paper": unit.settings.paper} | request.args.to_dict()
    if not given.get("numbers", "").strip():
        given["numbers"] = card_design.unprinted(unit.find(Slot, section=section.code))
    return given


@page(blueprint, "GET", "/cards", menu=MenuEntry(Group.ROOM, 5, "Cards", "k"))
def show() -> ResponseReturnValue:
    unit = room()
    sections = unit.find(Section)
    wanted = request.args.get("section", "")
    section = must(unit, Section, wanted) if wanted else next(iter(sections), None)
    if section is None:
        return render("stock/cards.html", section=None, sections=(), said="")
    given = _given(unit, section) | {"section": section.code}
    try:
        design, said = card_design.read(unit, section, given), ""
        facts = design.facts()
    except Invalid as error:
        design, facts, said = None, None, error.detail
    choices = {"styles": STYLES, "sheets": tuple(SHEETS), "colours": tuple(COLOURS), "duplexes": DUPLEX}
    # the address of a picture says all that it shows, so it changes with the design
    typed = {name: value for name, value in given.items() if value}
    shown = {"section": section, "sections": sections, "given": given, "typed": typed, **choices}
    return render("stock/cards.html", **shown, design=design, facts=facts, said=said)


def _drawn(use: Callable[[Design], Response], *, whole_dots: bool = False) -> Response:
    unit = room()
    section = must(unit, Section, request.args.get("section", ""))
    design = card_design.read(unit, section, _given(unit, section), whole_dots=whole_dots)
    let_go()
    with _drawing:
        return use(design)


@page(blueprint, "GET", "/cards/card.svg")
def picture() -> ResponseReturnValue:
    """The first card, in millimetres."""
    return _drawn(lambda design: _svg(design, design.single()))


@page(blueprint, "GET", "/cards/sheet.svg")
def sheet_picture() -> ResponseReturnValue:
    """The first sheet, in millimetres."""
    return _drawn(lambda design: _svg(design, design.sheets(first_only=True)[0]))


def _svg(design: Design, drawn: sheet.SheetPage) -> Response:
    return Response(draw.svg(drawn, title=design.title), mimetype="image/svg+xml")


@page(blueprint, "GET", "/cards/print")
def download() -> ResponseReturnValue:
    """All sheets as a file to keep: a PDF, or pictures, packed together when there are several."""
    kind = request.args.get("format", "pdf")
    if kind not in FORMATS:
        raise Invalid("/format", "unknown_format", "Cards are printed as pdf, svg or png.")
    return _drawn(lambda design: _file(design, kind), whole_dots=kind == "png")


def _file(design: Design, kind: str) -> Response:
    name = f"{'bins' if design.card_design.style is Style.BIN else 'cards'}-{design.section.code}"
    if kind == "pdf":
        out = BytesIO()
        draw.pdf(design.sheets(), out, title=design.title)
        return _kept(out.getvalue(), f"{name}.pdf", "application/pdf")
    pages = design.sheets()
    if len(pages) > MOST_PICTURES:
        raise Invalid("/format", "too_many", f"For more than {MOST_PICTURES} pages take the PDF, or fewer numbers.")
    files = [_picture(design, each, kind) for each in pages]
    if len(files) == 1:
        return _kept(files[0], f"{name}.{kind}", "image/svg+xml" if kind == "svg" else "image/png")
    packed = BytesIO()
    with ZipFile(packed, "w") as archive:
        for number, data in enumerate(files, 1):
            archive.writestr(f"{name}-{number:02}.{kind}", data)
    return _kept(packed.getvalue(), f"{name}-{kind}.zip", "application/zip")


def _picture(design: Design, drawn: sheet.SheetPage, kind: str) -> bytes:
    if kind == "svg":
        return draw.svg(drawn, title=design.title)
    return draw.png(drawn, title=design.title, dpi=design.dpi)


def _kept(data: bytes, name: str, mimetype: str) -> Response:
    return send_file(BytesIO(data), mimetype, as_attachment=True, download_name=name)
