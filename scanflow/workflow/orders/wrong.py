"""What is wrong with a reference that names no thing, and which near ones exist: words, which bind nothing."""

from __future__ import annotations

import re
from collections.abc import Iterable, Iterator, Mapping
from contextlib import suppress
from itertools import islice

from labels import slot_code
from labels.slot_code import Referred
from scanflow.domain.things import Section, Slot
from scanflow.workflow.ports import Unit
from scanflow.workflow.stock import cards

_CHARACTERS = "0123456789ABCDEFGHIJKLMNOPQRSTUVWXYZ"
_FORM = re.compile("([A-Z]{1,2})[0-9][0-9A-Z]{0,11}")
_MOST = 3
"""Of more that are equally near none is named: they tell nothing."""


def reference(unit: Unit, text: str) -> str:
    """Of a text that `cards.referred` refuses."""
    plain = slot_code.compact(text)
    form = _FORM.fullmatch(plain)
    digits = cards.widths(unit)
    fitting = next(_read((plain[:-1] + each for each in _CHARACTERS), digits), None) if form else None
    if fitting is not None:
        spelled, named = fitting
        check = f"The check {'digit' if named.turn is None else 'character'} doesn't fit."
        if _exists(unit, named):
            return f"{check} {spelled} would."
        return _sentences(check, _place(unit, named.code), _nearest(unit, plain))
    if form and form[1] not in digits and form[1][0] not in digits:
        return _sentences(f"No section {form[1]}.", _nearest(unit, plain))
    return _sentences("This is not written like a reference.", _nearest(unit, plain) if form else "")


def slot(unit: Unit, text: str, code: str) -> str:
    """Of a text that names a slot which the room has not."""
    return _sentences(_place(unit, code), _nearest(unit, slot_code.compact(text)))


def turn(slot: Slot, turn: int) -> str:
    """Of a reference to a turn that the slot has not had."""
    if not slot.turns:
        return f"Nothing has stood in {slot.code} yet."
    latest = slot_code.reference(slot.code, slot.turns)
    return f"{slot.code} has not had turn {turn} yet. Its latest is {latest}."


def _sentences(*said: str) -> str:
    return " ".join(filter(None, said))


def _place(unit: Unit, code: str) -> str:
    """Why there is no such slot, empty where there is one."""
    letters = slot_code.section_of(code)
    section = unit.get(Section, letters)
    if section is None:
        return f"No section {letters}."
    if slot_code.number_of(code) > section.last:
        last = slot_code.make(letters, section.last, section.digits)
        return f"Section {letters} ends at {last}." if section.last else f"Section {letters} has no slots yet."
    return "" if unit.get(Slot, code) else f"There is no slot {code}."


def _nearest(unit: Unit, plain: str) -> str:
    """The references, codes or card texts that exist and that one slip of a hand makes into this text."""
    digits = cards.widths(unit)
    for slips in (_mistyped(plain), _left_out_or_added(plain)):
        near = _distinct(spelled for spelled, named in _read(slips, digits) if _exists(unit, named))
        found = sorted(islice(near, _MOST + 1))
        if found:
            many = len(found) > 1
            listed = " and ".join(filter(None, (", ".join(found[:-1]), found[-1])))
            return f"The nearest that {'exist are' if many else 'exists is'} {listed}." if len(found) <= _MOST else ""
    return ""


def _distinct(texts: Iterable[str]) -> Iterator[str]:
    seen: set[str] = set()
    for text in texts:
        if text not in seen:
            seen.add(text)
            yield text


def _mistyped(plain: str) -> Iterator[str]:
    """With another character in a place, or two neighbours changed round."""
    for place in range(len(plain)):
        before, after = plain[:place], plain[place + 1 :]
        yield from (before + each + after for each in _CHARACTERS)
        yield before + after[:1] + plain[place] + after[1:]


def _left_out_or_added(plain: str) -> Iterator[str]:
    """With a character more, or less."""
    for place in range(len(plain) + 1):
        yield from (plain[:place] + each + plain[place:] for each in _CHARACTERS)
        yield plain[:place] + plain[place + 1 :]


def _read(texts: Iterable[str], digits: Mapping[str, int]) -> Iterator[tuple[str, Referred]]:
    """Those that are codes of a room, as they are written, and what they name."""
    for text in texts:
        with suppress(slot_code.CodeError):
            named = slot_code.parse_reference(text, digits)
            if named.turn is not None:
                yield slot_code.reference(named.code, named.turn), named
            else:
                yield named.code if len(text) == len(named.code) else slot_code.card_text(named.code), named


def _exists(unit: Unit, named: Referred) -> bool:
    """Whether the room has the slot, and the slot has had the turn."""
    slot = unit.get(Slot, named.code)
    return slot is not None and (named.turn or 0) <= slot.turns
