"""Cards of another system: which slots their texts can mean, and what a test scan of some of them tells."""

from __future__ import annotations

from collections import Counter, defaultdict
from collections.abc import Collection, Iterable, Iterator, Mapping, Sequence
from dataclasses import dataclass
from enum import StrEnum

from labels import slot_code

ADVICE = {
    "several_slots": "{texts} can mean {codes}. Print that card again.",
    "several_texts": "{codes} has more than one card: {texts}. Keep one of them.",
    "lookalike": "{texts} look alike, O for 0 or I for 1. Scan such a card, never type it, or print one again.",
    "foreign_form": "{texts} has the form of a slip, a stop or a reference. No card may have it: print it again.",
}
MOST_NAMED = 12
LOOKALIKE = str.maketrans("OI", "01")


class Form(StrEnum):
    """What a text is of a card that the shop already owns."""

    CARD = "card_text"
    BARE = "slot_code"
    ALIAS = "alias"


@dataclass(frozen=True, slots=True)
class Meaning:
    """One way to understand a text: the slot it names, and by which form."""

    code: str
    form: Form


def meanings(text: str, digits: Mapping[str, int], aliases: Mapping[str, str]) -> tuple[Meaning, ...]:
    """Every slot that the text can name, there or not; of two in the room an honest scan may mean either.

    `digits`: number width by section of the room; `aliases`: compact text to slot code.
    """
    key = slot_code.compact(text)
    found = [Meaning(aliases[key], Form.ALIAS)] if key in aliases else []
    for section, width in digits.items():
        if key.startswith(section):
            found += _in_section(key, section, width)
    return tuple(found)


def _in_section(key: str, section: str, width: int) -> Iterator[Meaning]:
    for form, parse in ((Form.CARD, slot_code.parse_card), (Form.BARE, slot_code.parse_bare_card)):
        try:
            code = parse(key, {section: width})
        except slot_code.CodeError:
            continue
        if slot_code.section_of(code) == section:
            yield Meaning(code, form)


def is_foreign(text: str, digits: Mapping[str, int]) -> bool:
    """Whether the text has the form of a slip, a stop, a bin label or a reference, which no card may have."""
    if slot_code.is_slip_like(text) or slot_code.is_stop_like(text) or slot_code.is_bin_like(text):
        return True
    try:
        return slot_code.parse_reference(text, digits).turn is not None
    except slot_code.CodeError:
        return False


@dataclass(frozen=True, slots=True)
class Room:
    """What texts are understood by: number width by section, the slot codes, aliases (compact text to slot code)."""

    digits: Mapping[str, int]
    slots: Collection[str]
    aliases: Mapping[str, str]

    def understood(self, text: str) -> tuple[Meaning, ...]:
        """The `meanings` of a text that are slots of the room."""
        found = meanings(text, self.digits, self.aliases)
        return tuple(meaning for meaning in found if meaning.code in self.slots)


@dataclass(frozen=True, slots=True)
class TrialScan:
    """What one card of a test scan gave: `source` is the picture or line it came from, `text` None if none was read."""

    source: str
    text: str | None
    symbology: str = ""
    engine: str = ""


@dataclass(frozen=True, slots=True)
class Ambiguity:
    """Why a text can't be relied on: `kind` is several_slots, several_texts, lookalike or foreign_form."""

    kind: str
    texts: tuple[str, ...]
    codes: tuple[str, ...]

    @property
    def advice(self) -> str:
        texts = " and ".join(f"“{text}”" for text in self.texts)
        return ADVICE[self.kind].format(texts=texts, codes=" or ".join(self.codes))


@dataclass(frozen=True, slots=True)
class Trial:
    """A test scan told: how many cards were shown and read, and by what.

    `known` gives each text its slot and form, `unknown` the texts that name no slot of the room. `single` are texts
    that one engine alone read: at the stations such a card is scanned twice. `without_card` are the slots of the
    tried section that no text and no alias names.
    """

    shown: int
    read: int
    unread: tuple[str, ...]
    engines: Mapping[str, int]
    symbologies: Mapping[str, int]
    known: Mapping[str, Meaning]
    unknown: tuple[str, ...]
    single: tuple[str, ...]
    ambiguous: tuple[Ambiguity, ...]
    without_card: tuple[str, ...]

    @property
    def good(self) -> bool:
        return not (self.unread or self.unknown or self.ambiguous) and self.shown > 0

    def scans_of(self, text: str) -> int:
        """How often this known card is scanned at a station; what was typed says nothing of engines."""
        if self.known[text].form is Form.CARD:
            return 1
        return 2 if not self.engines or text in self.single else 1

    def sentences(self, section: str, check: str) -> list[str]:
        """What the trial tells of a section's cards, where the room asks for such a check."""
        said = [f"{self.read} of {self.shown} cards read{_counted(self.engines)}{_counted(self.symbologies)}."]
        said += [f"Not read: {source}" for source in self.unread]
        said += [f"“{text}” names no slot of the room. Adopt it, or print a card." for text in self.unknown]
        said += [each.advice for each in self.ambiguous]
        unchecked = [text for text, meaning in self.known.items() if meaning.form is not Form.CARD]
        twice = [text for text in unchecked if self.scans_of(text) > 1]
        if unchecked and check != "none":
            said.append(
                f"{len(unchecked)} have no check digit: they count only once cards of another system do, by the "
                "settings or by `scanflow adopt check none`."
            )
        if twice:
            said.append(f"{len(twice)} are scanned twice at a station, for want of a check and of a second engine.")
        said.append(f"Slots of section {section} without a card so far: {_few(self.without_card) or 'none'}.")
        return said


def _counted(counts: Mapping[str, int]) -> str:
    return f", {', '.join(f'{count} by {name}' for name, count in counts.items())}" if counts else ""


def _few(codes: Sequence[str]) -> str:
    more = f" and {len(codes) - MOST_NAMED} more" if len(codes) > MOST_NAMED else ""
    return ", ".join(codes[:MOST_NAMED]) + more


def trial(samples: Sequence[TrialScan], room: Room, section: str) -> Trial:
    """What these cards of a section come to in the room. A source with several texts is one picture of several."""
    texts = list(dict.fromkeys(sample.text for sample in samples if sample.text is not None))
    understood = {text: room.understood(text) for text in texts}
    known = {text: found[0] for text, found in understood.items() if found}
    named = {meaning.code for meaning in known.values()} | set(room.aliases.values())
    sources = dict.fromkeys(sample.source for sample in samples)
    silent = tuple(sample.source for sample in samples if sample.text is None)
    return Trial(
        shown=len(sources),
        read=len(sources) - len(silent),
        unread=silent,
        engines=Counter(sample.engine for sample in samples if sample.engine),
        symbologies=Counter(sample.symbology for sample in samples if sample.symbology),
        known=known,
        unknown=tuple(text for text in texts if not understood[text]),
        single=tuple(dict.fromkeys(s.text for s in samples if s.text and s.engine and "+" not in s.engine)),
        ambiguous=tuple(_ambiguities(texts, understood, room)),
        without_card=tuple(
            code for code in sorted(room.slots) if code not in named and slot_code.section_of(code) == section
        ),
    )


def _ambiguities(
    texts: Sequence[str], understood: Mapping[str, tuple[Meaning, ...]], room: Room
) -> Iterator[Ambiguity]:
    for text in texts:
        codes = _unique(meaning.code for meaning in understood[text])
        if len(codes) > 1:
            yield Ambiguity("several_slots", (text,), codes)
        if is_foreign(text, room.digits):
            yield Ambiguity("foreign_form", (text,), codes)
    yield from _several_texts(texts, understood, room.aliases)
    yield from _lookalikes(texts, understood, room)


def _several_texts(
    texts: Sequence[str], understood: Mapping[str, tuple[Meaning, ...]], aliases: Mapping[str, str]
) -> Iterator[Ambiguity]:
    """Slots with two cards, each of which would stand for the same thing."""
    by_code: dict[str, dict[str, str]] = defaultdict(dict)
    for alias, code in aliases.items():
        by_code[code][alias] = alias
    for text in texts:
        for meaning in understood[text]:
            by_code[meaning.code].setdefault(slot_code.compact(text), text)
    for code, named in by_code.items():
        if len(named) > 1:
            yield Ambiguity("several_texts", tuple(named.values()), (code,))


def _lookalikes(texts: Sequence[str], understood: Mapping[str, tuple[Meaning, ...]], room: Room) -> Iterator[Ambiguity]:
    """Texts of different slots, of these cards or of any other, that differ only in O and 0 or I and 1."""
    alike: dict[str, dict[str, str]] = defaultdict(dict)
    for code in sorted(room.slots):
        alike[code.translate(LOOKALIKE)][code] = code
    for alias, code in room.aliases.items():
        alike[alias.translate(LOOKALIKE)][alias] = code
    keys = {slot_code.compact(text): text for text in texts}
    for key, text in keys.items():
        for meaning in understood[text]:
            alike[key.translate(LOOKALIKE)][key] = meaning.code
    for group in alike.values():
        codes = _unique(group.values())
        if len(codes) > 1 and not keys.keys().isdisjoint(group):
            yield Ambiguity("lookalike", tuple(group), codes)


def _unique(codes: Iterable[str]) -> tuple[str, ...]:
    return tuple(dict.fromkeys(codes))
