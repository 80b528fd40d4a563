"""What stands in the room comes in by file, by the numbers on its cards; the file is taken back where it was wrong."""

from __future__ import annotations

import hashlib
import re
from collections import Counter
from collections.abc import Callable, Iterable, Mapping, Sequence
from dataclasses import dataclass, replace
from datetime import datetime, time
from typing import Annotated
from zoneinfo import ZoneInfo

from pydantic import AfterValidator, Field
from pydantic_core import PydanticCustomError

from labels import slot_code
from scanflow.domain import events
from scanflow.domain.derive import unseen
from scanflow.domain.life import CardState, StayState
from scanflow.domain.orders.loaded import Loaded, RefusedRow
from scanflow.domain.things import Alias, Bin, Doubt, Item, Line, Listing, Slot, Stay
from scanflow.domain.words import units
from scanflow.workflow.fields import LONGEST_LISTING, LONGEST_NAME, Maybe, Time, words
from scanflow.workflow.ports import Invalid, Refused, SlotFacts, Unit, must
from scanflow.workflow.stock import WORDS, ByFile, Words, begin, cards, end_stay, listings
from scanflow.workflow.times import clock, instant


def _is_ids(cell: str) -> str:
    if any(len(each) > LONGEST_LISTING for each in ids_of(cell)):
        raise PydanticCustomError("string_too_long", "{max_length}", {"max_length": LONGEST_LISTING})
    return cell


class StoredThing(Words):
    """A row of the file. A `since` that is a day is that day from its beginning. `listing` has any number of ids."""

    number: Annotated[str, words(LONGEST_NAME, least=1), Field(title="Number on the card")]
    listing: Annotated[str, words(2_000), AfterValidator(_is_ids), Field(title="Listing ids")] = ""
    since: Maybe[Annotated[Time, Field(title="Here since")]] = None
    bin: Maybe[Annotated[str, words(LONGEST_NAME), Field(title="Bin")]] = None


def ids_of(cell: str) -> tuple[str, ...]:
    """The listing ids in a cell: spaces, commas or semicolons part them. One that has such a sign stands in quotes.

    >>> ids_of("L-1, L-2;L-3"), ids_of('"a b" c')
    (('L-1', 'L-2', 'L-3'), ('a b', 'c'))
    """
    found = re.findall(r'"((?:[^"]|"")*)"(?=[\s,;]|$)|([^\s,;]+)', cell)
    ids = (quoted.replace('""', '"') or bare for quoted, bare in found)
    return tuple(dict.fromkeys(filter(None, ids)))


def cell_of(ids: Iterable[str]) -> str:
    """The cell in which these listing ids stand."""
    return " ".join(f'"{each.replace(_QUOTE, _QUOTE * 2)}"' if re.search(r'[\s,;"]', each) else each for each in ids)


_QUOTE = '"'


_TITLES = {name: each["title"] for name, each in StoredThing.model_json_schema()["properties"].items()}
FIELDS: Mapping[str, str] = {name: _TITLES[name] for name in ("number", "title", "listing", "notes", "since", "bin")}
"""Their labels."""


@dataclass(frozen=True, slots=True)
class Row:
    """`number` is its place in the file, 1 for the first; `cells` are the fields of `StoredThing` that it says. `bad`:
    why it can't be read.
    """

    number: int
    cells: Mapping[str, str]
    bad: str = ""


@dataclass(frozen=True, slots=True)
class Fate:
    """What becomes of a row: stored in the slot `code`, refused for a reason, or neither as it stands there already."""

    row: Row
    code: str = ""
    refused: RefusedRow | None = None


@dataclass(frozen=True, slots=True)
class StockFile:
    """The rows of a file as one room sees them. `key`, the SHA-256 (hex) of the rows, names what the file brought: the
    same file sent again has it. `twice` are the codes that more than one row names, `zeros` the adopted numbers that
    begin with zeros, by what a spreadsheet makes of them.
    """

    rows: Sequence[Row]
    key: str
    twice: frozenset[str]
    zeros: Mapping[str, str]

    @classmethod
    def of(cls, unit: Unit, rows: Sequence[Row]) -> StockFile:
        numbers = (row.cells.get("number", "") for row in rows)
        named = Counter(code for number in numbers if (code := _code(unit, number)))
        aliases = (alias.printed for alias in unit.find(Alias) if alias.printed.isdigit())
        zeros = {text.lstrip("0"): text for text in aliases if text.startswith("0")}
        said = repr([(row.number, sorted(row.cells.items()), row.bad) for row in rows])
        key = hashlib.sha256(said.encode(errors="backslashreplace")).hexdigest()
        return cls(rows, key, frozenset(code for code, n in named.items() if n > 1), zeros)


def fates(unit: Unit, file: StockFile) -> list[Fate]:
    """What loading would do to each row. Nothing is written."""
    return [_fate(unit, file, row) for row in file.rows]


def would_be(each: Sequence[Fate]) -> Loaded:
    """The same as counts, with the rows that would be refused."""
    refused = tuple(fate.refused for fate in each if fate.refused is not None)
    stored = sum(bool(fate.code) for fate in each)
    return Loaded(stored, 0, len(each) - stored - len(refused), (), refused)


def in_parts(file: StockFile, enough: Callable[[], Callable[[], bool]]) -> Callable[[Unit], Loaded | None]:
    """What stores the next part of the file, until `enough` of its own says so: None while there is more to do, at last
    what came of all. The same file sent again goes on where it was ended.
    """

    def part(unit: Unit) -> Loaded | None:
        before = unit.loads.far(file.key)
        done, place = _load_part(unit, file, before.done, enough())
        if place < len(file.rows):
            unit.loads.keep(file.key, before, place, done)
            return None
        return unit.loads.end(file.key, before, done)

    return part


def _load_part(unit: Unit, file: StockFile, first: int, enough: Callable[[], bool]) -> tuple[Loaded, int]:
    stored = unchanged = 0
    refused: list[RefusedRow] = []
    place = first
    while place < len(file.rows) and (place == first or not enough()):
        fate = _fate(unit, file, file.rows[place])
        place += 1
        if fate.refused is not None:
            refused.append(fate.refused)
        elif fate.code:
            _store(unit, fate, file.key)
            stored += 1
        else:
            unchanged += 1
    if stored:
        unit.record(events.StockLoaded(load=file.key, stored=stored))
    return Loaded(stored, 0, unchanged, (), tuple(refused)), place


def _fate(unit: Unit, file: StockFile, row: Row) -> Fate:
    try:
        said = _said(row)
        facts = _facts(unit, file, said)
        if _stands_there(unit, facts, said):
            return Fate(row)
        _refuse(unit, facts, said)
    except (Invalid, Refused) as error:
        return Fate(row, refused=RefusedRow(row.number, error.code, error.detail))
    return Fate(row, facts.slot.code)


def _said(row: Row) -> StoredThing:
    if row.bad:
        raise Invalid("", "bad_row", row.bad)
    try:
        return StoredThing.of(row.cells)
    except Invalid as error:
        if error.pointer != "/since":
            raise
        since = row.cells["since"][:40]
        raise Invalid("/since", "bad_time", f"“{since}” can't be read as a date.") from error


def _code(unit: Unit, number: str) -> str | None:
    """The slot whose card bears this number; a reference is no number of a card."""
    try:
        named = cards.referred(unit, number)
    except slot_code.CodeError:
        return None
    return named.code if named.turn is None else None


def _facts(unit: Unit, file: StockFile, said: StoredThing) -> SlotFacts:
    code = _code(unit, said.number)
    facts = unit.facts(code) if code else None
    if facts is None:
        whole = file.zeros.get(said.number)
        hint = f" Is it {whole}? Spreadsheets drop zeros in front: make that column text." if whole else ""
        raise Invalid("/number", "unknown_code", f"No card here has the number {said.number}.{hint}")
    if facts.slot.code in file.twice:
        raise Invalid("/number", "twice", f"{said.number} stands in this file more than once. Which row is right?")
    return facts


def _stands_there(unit: Unit, facts: SlotFacts, said: StoredThing) -> bool:
    item = facts.item if facts.taken else None
    same = item is not None and all(getattr(item, name) == getattr(said, name) for name in WORDS)
    return same and item is not None and _is_known_by(unit, item, said)


def _is_known_by(unit: Unit, item: Item, said: StoredThing) -> bool:
    """Whether each listing id of the row is known of the thing, and the row has one if a person or a file said one."""
    ids = set(ids_of(said.listing))
    told = any(each.line is None for each in unit.find(Listing, item=item.id))
    return ids <= set(listings.known(unit, item.id)) and (bool(ids) or not told)


def _refuse(unit: Unit, facts: SlotFacts, said: StoredThing) -> None:
    """What a row says that can't be, as the room stands. Nothing is guessed."""
    slot = facts.slot
    if facts.taken and facts.item is not None:
        raise Refused("taken", f"{slot.code} holds {facts.item.title}.")
    cards.refuse_lost(slot)
    since = _since(unit, said)
    if since is not None and since > unit.at:
        raise Invalid("/since", "bad_time", f"{said.since} is still to come.")
    for stay in unit.find(Stay, code=slot.code):
        if stay.reason == TAKEN_BACK:
            continue
        item = must(unit, Item, stay.item)
        if item.title == said.title and _is_known_by(unit, item, said):
            raise Refused("left", f"{item.title} stood in {slot.code} and left. Is it back? Put it away by its card.")
        if since is not None and stay.ended is not None and since < stay.ended:
            ended = clock(stay.ended, unit.at, unit.settings.zone)
            raise Refused("left", f"Another thing stood in {slot.code} until {ended}. Since when is this one here?")
    _bin(unit, slot, said)


def _since(unit: Unit, said: StoredThing) -> datetime | None:
    zone = unit.settings.zone
    when = instant(said.since, zone)
    if when is None or said.since is None or len(said.since) > len("2026-11-03"):
        return when
    return datetime.combine(when.astimezone(ZoneInfo(zone)), time.min, ZoneInfo(zone)).astimezone(when.tzinfo)


def _bin(unit: Unit, slot: Slot, said: StoredThing) -> str:
    """The bin where it stands; the slot's own where the row says none."""
    if not said.bin:
        return slot.bin
    there = unit.get(Bin, said.bin.upper())
    if there is None:
        raise Invalid("/bin", "unknown_bin", f"There is no bin {said.bin} in this room. {slot.code} is in {slot.bin}.")
    if there.section != slot.section:
        raise Invalid("/bin", "other_section", f"Bin {there.name} is for {there.section}, and {slot.code} is not.")
    return there.name


def _store(unit: Unit, fate: Fate, load_name: str) -> None:
    said = _said(fate.row)
    slot = must(unit, Slot, fate.code)
    there, before = _bin(unit, slot, said), slot.bin
    if there != before:
        slot = _rehang(unit, slot, there)
    item = Item(unit.new_id(), **{name: getattr(said, name) for name in WORDS})
    unit.add(item)
    ids = ids_of(said.listing)
    for each in ids:
        listings.offer(unit, item.id, each)
    since = _since(unit, said)
    by_file = ByFile(load_name, _told(item, ids), since, since is None, before if there != before else "")
    stay = begin(unit, slot, item.id, by_file=by_file)
    told = {"title": item.title, "listing": cell_of(ids), "load": load_name}
    unit.record(events.ItemPutAway(stay=stay.id, code=stay.code, turn=stay.turn, **told))


def _rehang(unit: Unit, slot: Slot, there: str) -> Slot:
    unit.record(events.SlotRehung(code=slot.code, bin=there, before=slot.bin))
    slot = replace(slot, bin=there)
    unit.put(slot)
    return slot


def _told(item: Item, ids: Iterable[str]) -> str:
    """What the file said of a thing. What was loaded before there were packing notes has none."""
    said = [item.title, cell_of(ids), item.notes, *([item.packing] if item.packing else [])]
    return hashlib.sha256(repr(said).encode(errors="backslashreplace")).hexdigest()


TAKEN_BACK = "The file that told of it was taken back."
"""Why a thing is out of stock that a wrong file brought."""


def taking_back(
    view: Unit, load_name: str, enough: Callable[[], Callable[[], bool]]
) -> Callable[[Unit], tuple[int, int] | None]:
    """What takes out the next part of what a file brought, until `enough` of its own says so: None while there is more
    to do, at last how many things it was and how many stay, as they were built on meanwhile.

    Refused: `built_on` where that is so of one of them in `view`: a file is taken back whole or not at all.
    """
    for stay in view.find(Stay, load=load_name):
        why = _built_on(view, stay)
        if why:
            raise Refused("built_on", f"{stay.code} {why} since the file was loaded, so it can't be taken back whole.")
    out = kept = 0

    def part(unit: Unit) -> tuple[int, int] | None:
        nonlocal out, kept
        unit.loads.end(load_name, unit.loads.far(load_name), Loaded(0, 0, 0, (), ()))  # the file begins anew
        done, kept, until = 0, 0, enough()
        stays = unit.find(Stay, load=load_name, state=StayState.STORED)
        for stay in stays:
            if _built_on(unit, stay):
                kept += 1
                continue
            if done and until():
                break
            _take_out(unit, stay)
            done += 1
        if done:
            unit.record(events.LoadTakenBack(load=load_name, stays=done))
        out += done
        return None if done + kept < len(stays) else (out, kept)

    return part


def _built_on(unit: Unit, stay: Stay) -> str:
    """What has happened to a thing since a file brought it, as words after its number; empty where nothing has."""
    slot, item = must(unit, Slot, stay.code), must(unit, Item, stay.item)
    if stay.reason == TAKEN_BACK:
        return ""
    if not stay.open:
        return "left"
    if slot.card is CardState.LOST:
        return "lost its card"
    if not unseen(slot, stay):
        return "was scanned"
    if unit.find(Line, stay=stay.id):
        return "was ordered"
    if item.photo or _told(item, [each.listing for each in listings.up(unit, item.id)]) != stay.told:
        return "was described"
    return "was doubted" if unit.find(Doubt, item=item.id) else ""


def _take_out(unit: Unit, stay: Stay) -> None:
    """As if the file had never been; but its turn is used up, for its reference may be in a listing."""
    end_stay(unit, stay.after("withdraw", unit.at, TAKEN_BACK))
    if len(unit.find(Stay, code=stay.code)) == len(unit.find(Stay, code=stay.code, reason=TAKEN_BACK)):
        unit.put(must(unit, Slot, stay.code).after("see in tray"))  # nothing ever hung on it
    if stay.rehung_from:
        _rehang(unit, must(unit, Slot, stay.code), stay.rehung_from)
    unit.record(events.Withdrawn(stay=stay.id, code=stay.code, reason=TAKEN_BACK))


def told(done: Loaded) -> str:
    """What came of a file, as one sentence."""
    parts = (units(done.loaded, "thing") + " stored", f"{done.unchanged} unchanged", f"{len(done.refused)} refused")
    return ", ".join(parts) + "."
