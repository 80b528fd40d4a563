"""A design of cards as its form says it: which slots, how a card looks, how the cards lie on a sheet."""

from __future__ import annotations

from collections.abc import Iterable, Mapping
from dataclasses import dataclass

from labels import card, draw, facts, sheet
from labels.paper import COLOURS, SHEETS
from scanflow.domain.life import CardState
from scanflow.domain.things import Section, Slot
from scanflow.web.pages.planning import form_values
from scanflow.workflow.ports import Invalid, Unit

STYLES = {
    card.Style.FILED.value: "filed in a bin",
    card.Style.FACE.value: "looked at from the front",
    card.Style.TAG.value: "tag with a hole",
    card.Style.BIN.value: "front of a bin",
}
DUPLEX = {"": "one side only", "long": "both sides, turned at the long edge", "short": "both, turned at the short edge"}
DEFAULTS = {"style": "filed", "columns": "3", "rows": "6", "margin": "5", "gutter": "0"}


@dataclass(frozen=True, slots=True)
class Design:
    """Cards of one section, `ends` the first slot's and the last's code; a dot of the printer is 25.4/`dpi` mm."""

    section: Section
    ends: tuple[str, str]
    card_design: card.CardDesign
    layout: sheet.Layout
    faces: tuple[sheet.Face, ...]
    duplex: sheet.Duplex | None
    dpi: float
    warnings: tuple[str, ...]

    def single(self) -> sheet.SheetPage:
        """The first card alone, on a page of its size."""
        size = self.layout.card
        return sheet.pages(self.faces[:1], sheet.Layout(size, 1, 1, (0, 0), size, size, None, False))[0]

    def sheets(self, first_only: bool = False) -> list[sheet.SheetPage]:
        faces = self.faces[: len(self.layout.cells())] if first_only else self.faces
        return sheet.pages(faces, self.layout, self.duplex)

    @property
    def title(self) -> str:
        what = "Bins" if self.card_design.style is card.Style.BIN else "Cards"
        return f"{what} of section {self.section.code}, {self.section.name}"

    @property
    def pages(self) -> int:
        return -(-len(self.faces) // len(self.layout.cells())) * (1 if self.duplex is None else 2)

    def facts(self) -> facts.CardFacts:
        """Of the first page: all cards of a section are alike."""
        cards = [each for page in self.sheets(first_only=True) for each in page.cards]
        return facts.facts(cards, self.layout, self.card_design, *self.ends)


def unprinted(slots: Iterable[Slot]) -> str:
    """The numbers that never had a thing, as ranges, the first that go into one file; all where each had one."""
    slots = tuple(slots)
    fresh = [slot.number for slot in slots if slot.turns == 0 and slot.card is CardState.TRAY]
    ranges: list[list[int]] = []
    numbers = fresh or [slot.number for slot in slots if slot.card is not CardState.LOST]
    for number in numbers[: form_values.MOST_NUMBERS]:
        if ranges and ranges[-1][1] == number - 1:
            ranges[-1][1] = number
        else:
            ranges.append([number, number])
    return ", ".join(str(first) if first == last else f"{first}-{last}" for first, last in ranges)


def read(unit: Unit, section: Section, given: Mapping[str, str], *, whole_dots: bool = False) -> Design:
    """The design that was typed; `Invalid` says what can't be printed so.

    `whole_dots`: bars become whole dots of the printer even where its fineness was not typed, as a picture needs it.
    """
    style = card.Style(form_values.choice(given, "style", STYLES))
    what, most = ("Dots per inch of a picture", draw.MOST_PNG_DPI) if whole_dots else ("Dots per inch", 2400)
    dpi = form_values.decimal(given, "dpi", what, 72, most) if given.get("dpi", "").strip() else 0.0
    dpi = dpi or (draw.PNG_DPI if whole_dots else 0.0)
    own = section.colour if section.colour in COLOURS else "white"
    paper = COLOURS[form_values.choice({"colour": given.get("colour") or own}, "colour", COLOURS)]
    duplex = form_values.choice(given, "duplex", DUPLEX)
    slots, warnings = _slots(unit, section, given)
    try:
        card_design = card.CardDesign(
            section.name, paper, style, given.get("panel") != "off", 25.4 / dpi if dpi else 0.0
        )
        layout = _layout(given)
        faces = _fronts(unit, slots, card_design) if style is card.Style.BIN else _cards(slots, card_design)
        design = Design(
            section,
            (slots[0].code, slots[-1].code),
            card_design,
            layout,
            faces,
            sheet.Duplex(duplex) if duplex else None,
            dpi or draw.PNG_DPI,
            (*warnings, *facts.warnings(layout, form_values.decimal(given, "margin", "Margin", 0, 50))),
        )
        design.single()
    except ValueError as error:
        raise Invalid("", "bad_design", form_values.sentence(error)) from error
    return design


def _slots(unit: Unit, section: Section, given: Mapping[str, str]) -> tuple[list[Slot], list[str]]:
    """The slots of the numbers typed, in their order, without those whose card is lost; and what to mind."""
    wanted = form_values.numbers(given, "numbers")
    there = {slot.number: slot for slot in unit.find(Slot, section=section.code)}
    unknown = next((number for number in wanted if number not in there), None)
    if unknown is not None:
        raise Invalid(
            "/numbers", "unknown_slot", f"Section {section.code} has no slot {unknown}. Make more slots first."
        )
    slots = [there[number] for number in wanted if there[number].card is not CardState.LOST]
    if not slots:
        raise Invalid("/numbers", "lost", "These cards are lost: their numbers rest until the cards are seen.")
    said = []
    if len(slots) < len(wanted):
        lost = ", ".join(there[number].code for number in wanted if there[number].card is CardState.LOST)
        said.append(f"Left out, because the card is lost and may turn up: {lost}.")
    used = sum(slot.turns > 0 for slot in slots)
    if used and given.get("style") != card.Style.BIN.value:
        said.append(
            f"{used:,} of these cards had a thing already. If one is damaged, print it from its slot's page; destroy "
            "every old card, for both scan alike."
        )
    return slots, said


def _cards(slots: list[Slot], card_design: card.CardDesign) -> tuple[sheet.Face, ...]:
    return tuple(sheet.slot_face(slot.code, card_design) for slot in slots)


def _fronts(unit: Unit, slots: list[Slot], card_design: card.CardDesign) -> tuple[sheet.Face, ...]:
    """The front of every bin that one of the slots is in, with all that the bin holds."""
    fronts = []
    for name in dict.fromkeys(slot.bin for slot in slots):
        held = sorted(unit.find(Slot, bin=name), key=lambda slot: slot.number)
        fronts.append(sheet.bin_face(held[0].code, held[-1].code, name, card_design))
    return tuple(fronts)


def _layout(given: Mapping[str, str]) -> sheet.Layout:
    page = SHEETS[form_values.choice(given, "paper", SHEETS)]
    columns = form_values.whole(given, "columns", "Cards across", 1, 40)
    rows = form_values.whole(given, "rows", "Cards down", 1, 40)
    margin = form_values.decimal(given, "margin", "Margin", 0, 50)
    if given.get("label", "").strip():
        label, corner = (
            form_values.pair(given, "label", "Size of a label"),
            form_values.pair(given, "corner", "First label"),
        )
        pitch = (
            form_values.pair(given, "pitch", "From one corner to the next") if given.get("pitch", "").strip() else label
        )
        return sheet.label_layout(page, f"{columns}x{rows}", label, corner, pitch, margin=margin)
    gutter = form_values.decimal(given, "gutter", "Gutter", 0, 50)
    return sheet.cut_layout(page, f"{columns}x{rows}", margin=margin, gutter=gutter)
