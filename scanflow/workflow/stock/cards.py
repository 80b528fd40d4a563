"""Which slot a card's text names; cards of another system are adopted; one card is printed again."""

from __future__ import annotations

from collections.abc import Collection, Iterable, Mapping, Sequence
from dataclasses import asdict, dataclass, replace
from typing import Annotated, Literal, Self

from pydantic import AfterValidator, Field, model_validator
from pydantic_core import PydanticCustomError

from labels import slot_code
from scanflow.domain import advice, events
from scanflow.domain.life import CardState
from scanflow.domain.things import Alias, Section, Slot, Stay
from scanflow.domain.words import MISREAD
from scanflow.planning.adopting import Form, Meaning, Room, is_foreign, meanings
from scanflow.workflow.fields import CardText, Code, Command, Maybe, Reason
from scanflow.workflow.ports import Invalid, Missing, Refused, SlotFacts, Unit, must

LONGEST = 32
"""Characters of an adopted card's text: as many as the pages take, and more than fit on a card that can be scanned."""


@dataclass(frozen=True, slots=True)
class NamedSlot:
    """The slot that a card's text names. `checked`: the text's own check digit held, so one reading is enough."""

    code: str
    checked: bool


def named(unit: Unit, text: str, digits: Mapping[str, int] | None) -> NamedSlot:
    """What a card's text names, by the room's `check`; whether there is such a slot is not asked.

    `digits`, BadCheck and BadFormat are those of `slot_code.parse_card`; a text that can
    mean two slots is BadCheck too.
    """
    if unit.settings.check == "mod_11_10":
        return NamedSlot(slot_code.parse_card(text, digits), True)
    alias = unit.get(Alias, slot_code.compact(text))
    found = _meanings(unit, text, {alias.text: alias.code} if alias else {})
    if len({meaning.code for meaning in found}) > 1:
        raise slot_code.BadCheck(f"{text!r} can mean several slots")
    if found:
        return NamedSlot(found[0].code, any(meaning.form is Form.CARD for meaning in found))
    try:
        return NamedSlot(slot_code.parse_bare_card(text, widths(unit)), False)
    except slot_code.BadFormat:
        return NamedSlot(slot_code.parse_card(text, widths(unit)), True)


def widths(unit: Unit) -> dict[str, int]:
    """Number width by section."""
    return {section.code: section.digits for section in unit.find(Section)}


def _meanings(unit: Unit, text: str, aliases: Mapping[str, str]) -> tuple[Meaning, ...]:
    """All slots of the room that the text can mean."""
    found = meanings(text, widths(unit), aliases)
    return tuple(meaning for meaning in found if unit.get(Slot, meaning.code) is not None)


def texts_of(unit: Unit, codes: Collection[str]) -> dict[str, tuple[str, ...]]:
    """The texts, compact, that the card of each of these slots may have, and that mean no other slot."""
    texts = {code: [slot_code.card_text(code)] for code in codes}
    if unit.settings.check == "none":
        for code in texts:
            texts[code].append(code)
        for alias in unit.find(Alias):
            if alias.code in texts:
                texts[alias.code].append(alias.text)
    digits = widths(unit)
    return {code: tuple(text for text in each if _means(unit, text, code, digits)) for code, each in texts.items()}


def _means(unit: Unit, text: str, code: str, digits: Mapping[str, int]) -> bool:
    try:
        return named(unit, text, digits).code == code
    except slot_code.CodeError:
        return False


def bears_name(unit: Unit, text: str) -> bool:
    """Whether the text is one that only this room takes for a card's: an alias."""
    return unit.settings.check == "none" and unit.get(Alias, slot_code.compact(text)) is not None


def referred(unit: Unit, text: str) -> slot_code.Referred:
    """What a reference, a slot's code, a card's text or an adopted number names. An adopted number says no turn, as a
    bare code says none, and gives way to a reference of a later section. Raises as `slot_code.parse_reference`.
    """
    alias = unit.get(Alias, slot_code.compact(text))
    if alias is not None and not is_foreign(text, widths(unit)):
        return slot_code.Referred(alias.code, None)
    return slot_code.parse_reference(text, widths(unit))


def slot_facts(unit: Unit, code: str, pointer: str) -> SlotFacts:
    """All that is known of a slot; `Invalid` where the room has none of this code."""
    facts = unit.facts(code)
    if facts is None:
        raise Invalid(pointer, "unknown_code", f"No slot of this room has the code {code}.")
    return facts


def card_facts(unit: Unit, text: str, pointer: str = "/text") -> SlotFacts:
    """The slot of a card text, or `Invalid` at `pointer`: `bad_check`, `unknown_code`.

    A card without a check is believed at once here; `believe` asks for a second reading.
    """
    try:
        code = named(unit, text, widths(unit)).code
    except slot_code.BadCheck as wrong:
        raise Invalid(pointer, "bad_check", MISREAD) from wrong
    except slot_code.BadFormat as wrong:
        raise Invalid(pointer, "unknown_code", "This is not the text of a card.") from wrong
    return slot_facts(unit, code, pointer)


def believe(unit: Unit, text: str, before: str) -> None:
    """`Invalid` at `/text` for a card without a check unless it was read before: two readings must agree.

    What is no card's text at all is left to whoever looks it up.
    """
    try:
        sure = named(unit, text, widths(unit)).checked
    except slot_code.CodeError:
        return
    if not sure and slot_code.compact(before) != slot_code.compact(text):
        raise Invalid("/text", "bad_check", advice.ONCE_MORE)


def room(unit: Unit) -> Room:
    """What texts are understood by, for a test scan."""
    return Room(
        widths(unit),
        frozenset(slot.code for slot in unit.find(Slot)),
        {alias.text: alias.code for alias in unit.find(Alias)},
    )


def _borne(text: str) -> str:
    printed = slot_code.as_printed(text)
    if not slot_code.compact(text) or len(printed) > LONGEST or not printed.isprintable():
        raise PydanticCustomError("bad_text", f"A card's text has 1 to {LONGEST} characters.")
    return text


class Adopt(Command):
    text: Annotated[str, AfterValidator(_borne)]
    code: Code


def adopt(unit: Unit, said: Adopt) -> Alias:
    """Let the card that bears this text stand for a slot, in a room whose `check` is `none`.

    A text adopted before may be given to another slot while no item stands in its old one. Refused: `ambiguous` for
    a text that means another slot already, differs only in hyphens, spaces or case from another slot's card, or has the
    form of a slip, a stop or a reference; `taken`.
    """
    text, code = said.text, said.code
    must(unit, Slot, code)
    alias = Alias(slot_code.compact(text), code, slot_code.as_printed(text))
    if is_foreign(text, widths(unit)):
        raise Refused("ambiguous", f"{text} has the form of a slip, a stop or a reference. No card may have it.")
    others = {meaning.code for meaning in _meanings(unit, alias.text, {})} - {code}
    if others:
        raise Refused("ambiguous", f"{text} means {', '.join(sorted(others))} already.")
    before = unit.get(Alias, alias.text)
    if before == alias:
        return alias
    if before is None:
        unit.add(alias)
    else:
        if before.code != code:
            _refuse_given(unit, before, alias)
        unit.put(alias)
    unit.record(events.CardAdopted(code=code, text=alias.printed, before=before.code if before else None))
    return alias


def _refuse_given(unit: Unit, before: Alias, alias: Alias) -> None:
    """A text of another slot is given on only to the letter, else there are two cards, and not while an item stands."""
    if before.printed != alias.printed:
        raise Refused(
            "ambiguous",
            f"{alias.printed} differs from {before.printed}, the card of {before.code}, only in hyphens, spaces or "
            "case, so no scan tells them apart. Print a card instead.",
        )
    refuse_taken(slot_facts(unit, before.code, "/text"))


def adopt_rows(unit: Unit, rows: Iterable[tuple[int, Sequence[str]]]) -> list[tuple[int, str]]:
    """Adopt the card of each (row number, [text, slot code]); the numbers of the refused rows, and why."""
    refused = []
    for number, row in rows:
        try:
            text, code = row
            adopt(unit, Adopt.of({"text": text, "code": slot_code.compact(code)}))
        except ValueError:
            refused.append((number, "A row has two cells: the card's text and the slot's code."))
        except (Refused, Invalid, Missing) as error:
            refused.append((number, str(error)))
    return refused


def choose_check(unit: Unit, check: Literal["mod_11_10", "none"]) -> None:
    """Set what the room's cards are checked by."""
    new = replace(unit.settings, check=check)
    unit.set_settings(new)
    unit.record(events.SettingsChanged(settings=asdict(new)))


def refuse_taken(facts: SlotFacts) -> None:
    """`Refused` where a thing stands in the slot."""
    if facts.taken:
        title = facts.item.title if facts.item else "another thing"
        raise Refused("taken", f"Slot {facts.slot.code} already holds {title}. Take another card.")


def refuse_lost(slot: Slot) -> None:
    """`Refused` where nobody knows where the slot's card is."""
    if slot.card is CardState.LOST:
        raise Refused("retired", f"Card {slot.code} is lost. Scan it at the tray when it turns up.")


def in_stock(unit: Unit, stay_id: str) -> Stay:
    """The stay, or `Refused` where its thing stands there no more."""
    stay = must(unit, Stay, stay_id)
    if not stay.open:
        raise Refused("not_in_stock", "That thing has left its slot.")
    return stay


def refuse_named(unit: Unit, codes: Collection[str]) -> None:
    """`Invalid` when one of these new slots would have the text of a card that was adopted for another."""
    for alias in unit.find(Alias):
        clash = {meaning.code for meaning in meanings(alias.text, widths(unit), {})} & set(codes) - {alias.code}
        if clash:
            raise Invalid("/count", "ambiguous", f"The card of {alias.code} bears {alias.text}: that is {clash.pop()}.")


class Reprint(Command):
    text: Maybe[CardText] = Field(default=None, description="Read from the damaged card in hand.")
    lost: Maybe[Reason] = Field(default=None, description="Instead: why the card is gone for good.")

    @model_validator(mode="after")
    def _one_of_them(self) -> Self:
        if (self.text is None) is (self.lost is None):
            raise PydanticCustomError("required", "Read the text of the damaged card, or say why the card is lost.")
        return self


def reprint(unit: Unit, code: str, said: Reprint) -> tuple[Slot, Section]:
    """Record that a slot's card is printed again; the slot and its section, for the printer.

    The damaged card in hand is printed again whatever its state: destroying it leaves one card. A lost card is another
    matter, for when it turns up there are two that scan alike. It is printed again only once it was declared lost, and
    while an item stands in its slot: that item needs a card to be packed by, and until it leaves, the slot is given to
    nothing else. The new card is seen at its next scan, as the old one would be. The number of an empty slot rests
    until the lost card itself is seen.
    Refused: `not_lost`, `retired`.
    """
    facts = unit.facts(code)
    if facts is None:
        raise Missing(f"There is no slot {code}.")
    if said.text is not None:
        if card_facts(unit, said.text).slot.code != code:
            raise Invalid("/text", "other_card", f"This is not the text of card {code}.")
    elif facts.slot.card is not CardState.LOST:
        raise Refused("not_lost", f"Report card {code} lost first.")
    elif not facts.taken:
        raise Refused("retired", f"Nothing stands in {code}. Its number rests until the lost card is seen.")
    slot = facts.slot if said.text is not None else replace(facts.slot, twin=True)
    unit.put(slot)
    unit.record(events.CardReprinted(code=code, lost=said.lost))
    return slot, must(unit, Section, slot.section)


def destroyed(unit: Unit, code: str) -> Slot:
    """A person says that of two cards that say the same one is destroyed. Refused: `no_twin`."""
    slot = must(unit, Slot, code)
    if not slot.twin:
        raise Refused("no_twin", f"There is only one card {code}.")
    slot = replace(slot, twin=False)
    unit.put(slot)
    unit.record(events.TwinDestroyed(code=code))
    return slot
