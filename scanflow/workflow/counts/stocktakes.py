"""A count of an area: opened, looked into place by place, closed with a report or cancelled. It changes nothing else.

What its findings are put right by stands in `resolving`, what is said at its end in `stocktake_report`.
"""

from __future__ import annotations

import json
from collections.abc import Iterator, Mapping
from dataclasses import asdict, dataclass, replace
from datetime import timedelta
from typing import Annotated

from pydantic import Field

from scanflow.domain import events
from scanflow.domain.counts.findings import CountedPlace, Finding, FindingKind, findings, places
from scanflow.domain.counts.seen import SlotAccount
from scanflow.domain.counts.stocktake import Area, BadArea, Chosen, Look, Read, Resolved, Sample, Stocktake
from scanflow.domain.life import LIVE, StayState, StocktakeState
from scanflow.domain.things import Bin, Item, Line, Photo, Slot, Station, Stay
from scanflow.domain.whereabouts import Account, whereabouts
from scanflow.domain.whereabouts import PlaceKind as Stands
from scanflow.planning.counting import draw
from scanflow.workflow.fields import Command, Maybe, Note, integer, words
from scanflow.workflow.ports import Invalid, Unit, must

JUMP = timedelta(days=40)
"""A longer time without an entry in the ledger may be a wrong clock."""

TRUSTED = timedelta(days=7)
"""After so long a person has seen that the clock is right."""


class OpenCount(
    Command,
    json_schema_extra={"examples": [{"area": "shelf:A-2", "note": "After the sale"}, {"area": "room", "sample": 59}]},
):
    area: Annotated[str, words(64, least=1)] = Field(
        description="`bin:A-2-3`, `shelf:A-2`, `rack:A`, `section:D`, `tray` or `room`."
    )
    note: Note = ""
    sample: Maybe[Annotated[int, integer(1, 100_000)]] = Field(
        default=None, description="So many bins of the area, drawn blind; the tray is not among them."
    )


def open_count(unit: Unit, said: OpenCount) -> Stocktake:
    """Begin a count of an area, or of so many of its bins, drawn blind; it may rest for days.

    What is drawn hangs on the new count's id alone, which nobody chooses: `planning.counting.draw` gives it again from
    the area's bins, the first `Sample.of` of them. `Invalid` at `/area` and `/sample`.
    """
    try:
        wanted = Area.parse(said.area)
    except BadArea as error:
        raise Invalid("/area", "bad_area", str(error)) from error
    if not wanted.places(unit.find(Bin)):
        raise Invalid("/area", "unknown_area", f"There is no bin in {wanted}.")
    count = Stocktake(unit.new_id(), str(wanted), said.note, unit.at, unit.seq)
    if said.sample is not None:
        names = bins_of(unit, wanted)
        if said.sample > len(names):
            raise Invalid("/sample", "bad_number", f"Draw 1 to {len(names)} of the bins of {wanted}.")
        drawn = set(draw(names, said.sample, count.id))
        bins = tuple(name for name in names if name in drawn)
        count = replace(count, sample=Sample(Chosen.BLIND, len(names), bins))
    return begin(unit, count)


def bins_of(unit: Unit, area: Area) -> tuple[str, ...]:
    """The bins of an area, without the tray."""
    return tuple(each.name for each in unit.find(Bin) if area.covers(each))


def begin(unit: Unit, count: Stocktake) -> Stocktake:
    """Keep a new count, and write into the ledger what it is about."""
    unit.add(count)
    sample = asdict(count.sample) if count.sample else None
    unit.record(events.StocktakeOpened(stocktake=count.id, area=count.area, note=count.note, sample=sample))
    forget_old_photos(unit)
    return count


@dataclass(frozen=True, slots=True)
class TrackedFinding:
    """A finding with how it was resolved, None while it is open."""

    finding: Finding
    resolved: Resolved | None = None


@dataclass(frozen=True, slots=True)
class CountState:
    """A count as it stands: all slots by the shop's account, its looks, what is known of each place, its findings."""

    count: Stocktake
    room: Mapping[str, SlotAccount]
    looks: tuple[Look, ...]
    places: Mapping[str, CountedPlace]
    found: tuple[TrackedFinding, ...]

    @property
    def looked(self) -> int:
        return sum(each.looked for each in self.places.values())


def state(unit: Unit, count_id: str) -> CountState:
    """How a count stands. Once it is closed its findings are those of the report, whatever happened since."""
    count = must(unit, Stocktake, count_id)
    names = count.places(unit.find(Bin))
    looks = unit.find(Look, stocktake=count_id)
    room = standings(unit)
    settled = [(Finding.from_dict(json.loads(each.finding)), each) for each in unit.find(Resolved, stocktake=count_id)]
    resolved = {finding.id: TrackedFinding(finding, each) for finding, each in settled}
    gone = set() if count.report else changed(unit, count)
    sorted_out = {
        finding.subject for finding, each in settled if finding.kind is FindingKind.UNREADABLE and each.how == "ignore"
    }
    known = places(names, room, looks, gone, sorted_out)
    if count.report:
        written = [Finding.from_dict(each) for each in json.loads(count.report)["findings"]]
        return CountState(
            count, room, looks, known, tuple(resolved.get(each.id, TrackedFinding(each)) for each in written)
        )
    subjects = {finding.subject for finding, _ in settled}
    now = [
        TrackedFinding(each) for each in findings(names, room, looks, gone, sorted_out) if each.subject not in subjects
    ]
    order = list(FindingKind)
    found = sorted([*resolved.values(), *now], key=lambda one: (order.index(one.finding.kind), one.finding.subject))
    return CountState(count, room, looks, known, tuple(found))


def standings(unit: Unit) -> dict[str, SlotAccount]:
    """Every slot by the shop's account."""
    stays = {stay.code: stay for stay in unit.find(Stay, state=StayState.STORED)}
    lines = {line.stay: line for live in sorted(LIVE) for line in unit.find(Line, state=live)}
    return {slot.code: _standing(slot, stays.get(slot.code), lines) for slot in unit.find(Slot)}


def _standing(slot: Slot, stay: Stay | None, lines: Mapping[str | None, Line]) -> SlotAccount:
    if stay is None:
        return SlotAccount(slot.code, slot.bin, False, slot.card, slot.bin)
    line = lines.get(stay.id)
    state = line.state if line is not None else None
    where = whereabouts(Account(slot, True, state, parcel=line.parcel if line else None))
    read_off = where.read is not None and where.read.station is Station.TABLE
    return SlotAccount(
        slot.code, slot.bin, True, slot.card, where.bin or slot.bin, state, where.place is not Stands.BIN or read_off
    )


def unexpected(read: Read, place: str, room: Mapping[str, SlotAccount]) -> bool:
    """Whether by the account this card is not at this place, nor where the labels in the picture have it."""
    return bool(read.text) and (read.code is None or room[read.code].place not in (read.bins or (place,)))


def changed(unit: Unit, count: Stocktake) -> set[str]:
    """Codes of the slots whose thing or card moved since the count began, by its own resolutions of them apart.

    What another count put right has moved too, whatever else the ledger has of it.
    """
    moved: list[tuple[int, set[str]]] = []
    for seq, event in unit.told_since(count.seq):
        if isinstance(event, events.OfFinding) and event.stocktake == count.id:
            moved = [(at, codes if at <= event.after else codes - {event.subject}) for at, codes in moved]
        elif codes := {code for each in event.moved() for code in _slots(unit, each)}:
            moved.append((seq, codes))
    return set().union(*(codes for _, codes in moved))


def _slots(unit: Unit, named: events.NamedThing) -> Iterator[str]:
    """The slot of what is named: of an order those of all its lines, as they are bound now."""
    match named.noun:
        case events.Noun.SLOT:
            yield named.name
        case events.Noun.LINE:
            yield from _codes_of(unit, unit.find(Line, id=named.name))
        case events.Noun.ORDER:
            yield from _codes_of(unit, unit.find(Line, order=named.name))


def _codes_of(unit: Unit, lines: tuple[Line, ...]) -> Iterator[str]:
    for line in lines:
        stay = unit.get(Stay, line.stay) if line.stay else None
        if stay is not None:
            yield stay.code


def cancel(unit: Unit, count_id: str) -> Stocktake:
    """End a count without a report; what was resolved in it stays resolved."""
    count = must(unit, Stocktake, count_id).after("cancel", unit.at)
    unit.put(count)
    unit.record(events.StocktakeCancelled(stocktake=count.id))
    return count


def forget_photos(unit: Unit, count_id: str) -> Stocktake:
    """Delete the photos of a count for good, but for those that a thing has, or another count."""
    count = must(unit, Stocktake, count_id)
    forgotten = []
    for each in unit.find(Look, stocktake=count_id):
        if each.photo is not None:
            unit.put(replace(each, photo=None))
            drop_photo(unit, each.photo)
            forgotten.append(each.photo)
    if forgotten:
        unit.record(events.PhotosDeleted(stocktake=count_id, photos=tuple(sorted(set(forgotten)))))
    return count


def drop_photo(unit: Unit, photo: str) -> None:
    """Delete a picture, unless another look or a thing has it."""
    if not unit.find(Look, photo=photo) and not unit.find(Item, photo=photo):
        unit.drop(Photo, photo)


def forget_old_photos(unit: Unit) -> bool:
    """Delete the photos of counts that ended longer ago than the shop keeps them. False where they wait for now: the
    clock is far past what the ledger knows, and what is deleted by a wrong one is gone for good.
    """
    before = unit.at - timedelta(days=unit.settings.photo_days)
    old = [
        count.id
        for ended in (StocktakeState.CLOSED, StocktakeState.CANCELLED)
        for count in unit.find(Stocktake, state=ended)
        if count.closed is not None and count.closed < before and any(_photos(unit, count.id))
    ]
    if old and _clock_is_ahead(unit):
        return False
    for count_id in old:
        forget_photos(unit, count_id)
    return True


def _photos(unit: Unit, count_id: str) -> Iterator[str]:
    return (each.photo for each in unit.find(Look, stocktake=count_id) if each.photo is not None)


def _clock_is_ahead(unit: Unit) -> bool:
    """Whether the time jumped within the last week: what was told by a clock that went wrong then proves nothing."""
    last = unit.told_before(unit.at - TRUSTED)
    return last is not None and unit.at - last > JUMP
