"""Sections and their slots; a thing is put away, moved, withdrawn."""

from __future__ import annotations

from collections import Counter
from collections.abc import Iterator, Mapping
from dataclasses import dataclass, fields, replace
from datetime import datetime, timedelta
from typing import Annotated, Any, Self

from pydantic import Field, model_validator
from pydantic_core import PydanticCustomError

from labels import slot_code
from labels.paper import COLOURS
from scanflow.domain import events
from scanflow.domain.derive import SlotState, slot_state
from scanflow.domain.life import CardState, LineState
from scanflow.domain.things import Bin, Fetch, Item, Line, Out, Rack, Section, Slot, Stay
from scanflow.domain.whereabouts import free_to_give, read_words
from scanflow.planning import room
from scanflow.planning.racking import Measured
from scanflow.workflow.fields import (
    CardText,
    Code,
    Command,
    Identity,
    Letters,
    Listing,
    Maybe,
    Name,
    Notes,
    OneOf,
    Packing,
    Reason,
    Title,
    integer,
    like,
    words,
)
from scanflow.workflow.ports import Invalid, Refused, Unit, must
from scanflow.workflow.stock import doubts, listings
from scanflow.workflow.stock.cards import card_facts, refuse_lost, refuse_named, refuse_taken, slot_facts
from scanflow.workflow.stock.sightings import where
from scanflow.workflow.times import clock

MOST_PER_BIN = 999


class AddSection(
    Command,
    json_schema_extra={"examples": [{"code": "D", "name": "Derailleurs", "slots_per_bin": 18, "colour": "yellow"}]},
):
    code: Letters
    name: Name
    slots_per_bin: Annotated[int, integer(1, MOST_PER_BIN)] = Field(title="Things in one bin")
    colour: Maybe[Annotated[str, OneOf(COLOURS)]] = Field(default=None, description="The one least used so far.")
    digits: Annotated[int, integer(2, 6)] = Field(
        default=slot_code.DEFAULT_DIGITS, description="Width of its numbers, the same for all: 3 in D014."
    )


def add_section(unit: Unit, said: AddSection) -> Section:
    """A kind and bulk of goods with letters of its own; `section_exists` when they are in use."""
    if unit.get(Section, said.code) is not None:
        raise Refused("section_exists", f"Section {said.code} exists. Choose other letters.")
    section = Section(said.code, said.name, said.slots_per_bin, said.colour or _least_used(unit), said.digits)
    unit.add(section)
    bulk, colour = section.slots_per_bin, section.colour
    unit.record(events.SectionAdded(section=section.code, name=section.name, slots_per_bin=bulk, colour=colour))
    return section


def _least_used(unit: Unit) -> str:
    used = Counter(section.colour for section in unit.find(Section))
    return min(COLOURS, key=lambda colour: used[colour])


MOST_SLOTS = 5000
"""That are made at once."""


class AddSlots(Command, json_schema_extra={"examples": [{"count": 18, "rack": "A"}]}):
    count: Annotated[int, integer(1, MOST_SLOTS)] = Field(title="Slots to make")
    rack: Maybe[Annotated[str, like(r"^[A-Za-z0-9]{1,16}$")]] = Field(default=None, description="Where new bins stand.")


def add_slots(unit: Unit, code: str, said: AddSlots) -> tuple[Slot, ...]:
    """More slots with the next numbers; a section's bins are filled in order, new bins stand on `rack` if it has room.

    Their cards count as in the tray.
    """
    section = must(unit, Section, code)
    count = said.count
    if section.last + count >= 10**section.digits:
        raise Invalid("/count", "too_many", f"Section {code} has numbers up to {10**section.digits - 1}.")
    bins = _bins_for(unit, section, said.rack)
    in_bin = section.last % section.slots_per_bin
    here = next(bins)
    slots = []
    for number in range(section.last + 1, section.last + count + 1):
        if in_bin == section.slots_per_bin:
            here, in_bin = next(bins), 0
        slots.append(Slot(slot_code.make(code, number, section.digits), code, number, here.name))
        in_bin += 1
    refuse_named(unit, [slot.code for slot in slots])
    for slot in slots:
        unit.add(slot)
    unit.put(replace(section, last=section.last + count))
    unit.record(events.SlotsAdded(section=code, first=slots[0].code, last=slots[-1].code))
    return tuple(slots)


def _bins_for(unit: Unit, section: Section, rack: str | None) -> Iterator[Bin]:
    """The section's last bin while it has room, then new bins, on the wanted rack first, then on others."""
    mine = unit.find(Bin, section=section.code)
    if mine and section.last % section.slots_per_bin:
        yield mine[-1]
    racks = list(unit.find(Rack))
    wanted = rack or (mine[-1].rack if mine else None)
    if wanted is not None and all(each.name != wanted for each in racks):
        racks.append(_new_rack(unit, racks, wanted))
    bins = unit.find(Bin)
    first = [each for each in racks if each.name == wanted]
    empty = [each for each in racks if each.name != wanted and all(b.rack != each.name for b in bins)]
    for each in first + empty:
        yield from _new_bins(unit, section, each, bins)
    while True:
        racks.append(_new_rack(unit, racks))
        yield from _new_bins(unit, section, racks[-1], bins)


def _new_rack(unit: Unit, racks: list[Rack], name: str | None = None) -> Rack:
    rack = room.next_rack(racks, name, unit.settings.racks.shape())
    unit.add(rack)
    return rack


def _new_bins(unit: Unit, section: Section, rack: Rack, bins: tuple[Bin, ...]) -> Iterator[Bin]:
    for tier, position in room.free_places(rack.name, bins, unit.settings.racks.shape()):
        new = Bin(f"{rack.name}-{tier}-{position}", rack.name, tier, position, section.code)
        unit.add(new)
        yield new


class PlaceRack(Command):
    aisle: Annotated[int, integer(0, 500)]
    start: Annotated[float, Field(strict=True, ge=0, le=1000, description="Metres from the front cross-aisle.")]


def place_rack(unit: Unit, name: str, said: PlaceRack) -> Rack:
    """Say where a rack stands."""
    rack = replace(must(unit, Rack, name), aisle=said.aisle, start=said.start)
    unit.put(rack)
    unit.record(events.RackPlaced(rack=name, aisle=said.aisle, start_mm=round(said.start * 1000)))
    return rack


_Typed = Annotated[str, words(60)]


class MeasureRacks(Command):
    """The fields of `Measured`, in which they say the room's shape."""

    rack: _Typed = ""
    bin: _Typed = ""
    base_width: _Typed = ""
    kg: _Typed = ""
    rated: _Typed = ""
    table: _Typed = ""

    @model_validator(mode="after")
    def _shape(self) -> Self:
        try:
            self.measured.shape()
        except ValueError as error:
            raise PydanticCustomError("bad_size", "{why}", {"why": str(error)}) from error
        return self

    @property
    def measured(self) -> Measured:
        return Measured(**self.known())


def measure_racks(unit: Unit, said: MeasureRacks) -> None:
    """Keep what racks and bins measure and where the table stands; racks that stood in a row still do.

    Invalid where a bin that hangs already would have no place.
    """
    before, shape = unit.settings.racks.shape(), said.measured.shape()
    beyond = [each.name for each in unit.find(Bin) if each.tier > shape.tiers or each.position > shape.positions]
    if beyond:
        raise Invalid(
            "/rack",
            "bins_beyond",
            f"{len(beyond)} bins would have no place where {shape.positions} go across and {shape.tiers} up: "
            f"{beyond[0]} is one. Measure again.",
        )
    for rack in unit.find(Rack):
        place = rack.start / before.rack_width
        if abs(place - round(place)) < 1e-6:
            unit.put(replace(rack, start=round(round(place) * shape.rack_width, 4)))
    unit.set_settings(replace(unit.settings, racks=said.measured))
    unit.record(events.RacksMeasured(**said.known()))


class Words(Command):
    """What is told of a thing, a field of `Item` each: API, forms and pages have them from here.

    A field's `title` is its label. `ChangeItem` has all of them again, none of them needed. Where it is offered is
    told apart (`stock.listings`).
    """

    title: Title
    notes: Notes = ""
    packing: Packing = Field(default="", title="Packing note")


WORDS: Mapping[str, Mapping[str, Any]] = Words.model_json_schema()["properties"]
"""Their names, labels and limits."""


class PutAway(
    Words,
    json_schema_extra={
        "examples": [{"title": "Rear derailleur, long cage", "section": "D"}],
        "oneOf": [{"required": [name]} for name in ("text", "code", "section")],
    },
):
    listing: Listing = Field(default="", title="Listing id")
    channel: listings.Channel = ""
    text: Maybe[CardText] = Field(default=None, description="The text of the card in hand.")
    code: Maybe[Code] = Field(default=None, description="A free slot.")
    section: Maybe[Letters] = Field(default=None, description="The lowest free slot of this section.")

    @model_validator(mode="after")
    def _one_place(self) -> Self:
        if sum(each is not None for each in (self.text, self.code, self.section)) != 1:
            raise PydanticCustomError("exactly_one", "Scan the card in your hand, or choose a section.")
        return self


def put_away(unit: Unit, said: PutAway) -> Stay:
    """Store a thing: by the card in hand (`text`), in a chosen slot (`code`), or in a section's lowest free slot.

    Refused: `taken`, `card_due`, `retired`, `section_full` (with the free slots of sections of equal or greater
    bulk). Only a card in hand may be handed out again before it was seen in the tray, or while somebody else fetches
    it. What this person was fetching is for anybody again.
    """
    if said.text is not None:
        slot = in_hand(unit, said.text)
    elif said.code is not None:
        slot = _free_slot(unit, said.code, "/code")
    else:
        slot = _next_free(unit, said.section or "")
    for kept in unit.fetched():
        unit.put(replace(kept, fetch=None))
    item = Item(unit.new_id(), **{name: getattr(said, name) for name in WORDS})
    unit.add(item)
    stay = begin(unit, must(unit, Slot, slot.code), item.id)
    if said.listing:
        listings.offer(unit, item.id, said.listing, said.channel)
    channel = said.channel if said.listing else ""
    told = {"title": item.title, "listing": said.listing}
    unit.record(events.ItemPutAway(stay=stay.id, code=stay.code, turn=stay.turn, **told, channel=channel or None))
    return stay


def in_hand(unit: Unit, text: str) -> Slot:
    """The free slot whose card is in hand, by its text."""
    facts = card_facts(unit, text)
    refuse_taken(facts)
    return facts.slot


def _free_slot(unit: Unit, code: str, pointer: str) -> Slot:
    facts = slot_facts(unit, code, pointer)
    refuse_taken(facts)
    refuse_lost(facts.slot)
    if slot_state(facts.slot, facts.stay) is SlotState.DUE:
        raise Refused("card_due", f"Card {code} was not seen in the tray since its last item left. Scan it there.")
    now = where(unit, facts)
    if now.misplaced:
        raise Refused("card_due", f"Card {code} is free, but {read_words(now)}. Scan it at the tray first.")
    fetch = facts.slot.fetch
    if fetch is not None and facts.slot.fetcher(unit.at) not in (None, unit.who):
        until = clock(fetch.until, unit.at, unit.settings.zone)
        raise Refused("card_due", f"Card {code} is being fetched by {fetch.by} until {until}. Take another one.")
    return facts.slot


FETCHING = timedelta(minutes=10)
"""How long a number is kept for whoever fetches its card."""


def fetch(unit: Unit, section: str) -> Slot:
    """Name the number whose card this person fetches from the tray, and keep it from others meanwhile.

    Who asks again gets the same number. Refused: `section_full`.
    """
    slot = replace(_next_free(unit, section), fetch=Fetch(unit.who, unit.at + FETCHING))
    unit.put(slot)
    unit.record(events.CardToFetch(code=slot.code))
    return slot


def fetching(unit: Unit, section: str) -> Slot | None:
    """The free slot of this section whose card this person fetches."""
    for slot in unit.fetched():
        facts = slot_facts(unit, slot.code, "/section")
        if slot.section == section and free_to_give(slot, taken=facts.taken):
            return slot
    return None


def _next_free(unit: Unit, code: str) -> Slot:
    section = unit.get(Section, code)
    if section is None:
        raise Invalid("/section", "unknown_section", f"There is no section {code}.")
    slot = fetching(unit, code) or unit.lowest_free(code)
    if slot is None:
        free = unit.free_slots(section.slots_per_bin)
        where = ", ".join(f"{count} in {name}" for name, count in free.items()) or "none elsewhere"
        raise Refused("section_full", f"No card of section {code} is free. Free for its bulk: {where}.", free=free)
    return slot


@dataclass(frozen=True, slots=True)
class ByFile:
    """What a stay is begun with that a file told of: see `Stay`. `since` None where nobody knows."""

    load: str
    told: str = ""
    since: datetime | None = None
    undated: bool = False
    rehung_from: str = ""


def begin(unit: Unit, slot: Slot, item: str, out: Out | None = None, by_file: ByFile | None = None) -> Stay:
    """The next stay of this slot; its card is taken in hand and attached. `out`: the thing is off its shelf still."""
    turn = slot.turns + (FORGOTTEN if _restored_since(unit, slot) else 1)
    slot = replace(slot.after("take").after("attach"), turns=turn, seen=None, out=out, fetch=None)
    unit.put(slot)
    stay = Stay(unit.new_id(), item, slot.code, slot.turns, unit.at)
    if by_file is not None:
        said = {field.name: getattr(by_file, field.name) for field in fields(by_file) if field.name != "since"}
        stay = replace(stay, began=by_file.since or stay.began, **said)
    unit.add(stay)
    return stay


FORGOTTEN = 20
"""Turns that a slot skips after a backup was put back: the listings of those that came after it are out still."""


def _restored_since(unit: Unit, slot: Slot) -> bool:
    """Whether a backup was put back after the last stay of this slot that is known began."""
    if not unit.settings.restored_at:
        return False
    last = unit.facts(slot.code)
    began = last.stay.began if last is not None and last.stay is not None else None
    return began is None or began <= datetime.fromisoformat(unit.settings.restored_at)


class ChangeItem(
    Command, json_schema_extra={"examples": [{"title": "Rear derailleur, short cage"}], "minProperties": 1}
):
    title: Maybe[Title] = None
    notes: Maybe[Notes] = None
    listing: Maybe[Listing] = Field(
        default=None, title="Listing id", description="In place of the one of which nobody said the channel."
    )
    packing: Maybe[Packing] = Field(default=None, title="Packing note")

    @model_validator(mode="after")
    def _something(self) -> Self:
        if not self.model_fields_set:
            raise PydanticCustomError("too_few", "Say what is new of it.")
        return self


def change_item(unit: Unit, stay_id: str, said: ChangeItem) -> Stay:
    """New words for the item of a stay; what is not said stays as it is."""
    stay = must(unit, Stay, stay_id)
    new = said.sent()
    unit.put(replace(must(unit, Item, stay.item), **said.sent("listing")))
    if said.listing is not None:
        listings.rename(unit, stay.item, said.listing)
    unit.record(events.ItemChanged(stay=stay.id, code=stay.code, **new))
    return stay


class Withdraw(Command, json_schema_extra={"examples": [{"reason": "Cracked on inspection"}]}):
    reason: Reason


def withdraw(unit: Unit, stay_id: str, said: Withdraw) -> Stay:
    """Take a thing out of stock for good; `has_live_line` while an order wants it. Its card is due back."""
    stay = must(unit, Stay, stay_id)
    doubts.refuse_wanted(_live_line(unit, stay))
    end_stay(unit, stay.after("withdraw", unit.at, said.reason))
    doubts.gone(unit, stay.item)
    unit.record(events.Withdrawn(stay=stay.id, code=stay.code, reason=said.reason))
    return must(unit, Stay, stay.id)


class Move(Command, json_schema_extra={"examples": [{"to": "D015"}]}):
    to: Code


def move(unit: Unit, stay_id: str, said: Move) -> Stay:
    """End this stay and begin the item's next one in a free slot; a live line follows the item."""
    stay = must(unit, Stay, stay_id)
    line = _live_line(unit, stay)
    if line is not None and line.state is LineState.PACKED:
        raise Refused("still_in_box", "It lies in a parcel. Take it out with a scan first.")
    ended = stay.after("move", unit.at)
    return _carry(unit, ended, line, _free_slot(unit, said.to, "/to"))


def move_back(unit: Unit, stay: Stay, code: str) -> Stay:
    """Take a move back: the item's next stay begins in its former slot, whose card never left it."""
    return _carry(unit, stay.after("move", unit.at), _live_line(unit, stay), must(unit, Slot, code))


class Exchange(Command, json_schema_extra={"examples": [{"with": "D015"}]}):
    other: Identity = Field(alias="with", description="The other stay, or the code of its slot.")


def exchange(unit: Unit, stay_id: str, other: str) -> Stay:
    """Two cards were swapped: each thing's next stay begins in the other's slot, and a live line follows its thing.

    `other` is a stay, or the code of its slot. Each card hangs where it hung: where it was read and taken to stays true
    of its slot, so what had picked the wrong thing waits again. Exchanged once more, all is as before.
    Refused: `still_in_box`, `retired` while a card is lost.
    """
    pair = (must(unit, Stay, stay_id), _swapped_with(unit, stay_id, other))
    ended = [stay.after("move", unit.at) for stay in pair]
    lines = [_live_line(unit, stay) for stay in pair]
    slots = [must(unit, Slot, stay.code) for stay in pair]
    for line, slot in zip(lines, slots, strict=True):
        if line is not None and line.state is LineState.PACKED:
            raise Refused("still_in_box", f"{slot.code} lies in a parcel. Take it out with a scan first.")
        if slot.card is CardState.LOST:
            raise Refused("retired", f"Card {slot.code} is lost. Scan it first.")
    for stay in ended:
        end_stay(unit, stay)
    waiting = [line.after("put back") if line and line.state is LineState.PICKED else line for line in lines]
    new = [
        _next(unit, stay, line, must(unit, Slot, slot.code), slot.out, read=own.seen is not None)
        for stay, line, own, slot in zip(ended, waiting, slots, reversed(slots), strict=True)
    ]
    for slot in slots:
        unit.put(replace(must(unit, Slot, slot.code), seen=slot.seen))
    return new[0]


def _swapped_with(unit: Unit, stay_id: str, other: str) -> Stay:
    facts = unit.facts(other)
    stay = unit.get(Stay, other) if facts is None else facts.stay
    if stay is None or stay.id == stay_id:
        raise Invalid("/with", "unknown_stay", "Say which other thing has its card.")
    return stay


def _carry(unit: Unit, ended: Stay, line: Line | None, slot: Slot) -> Stay:
    """From one slot to another; what was out of its bin is so still."""
    former = must(unit, Slot, ended.code)
    end_stay(unit, ended)
    return _next(unit, ended, line, slot, former.out, read=former.seen is not None)


def _next(unit: Unit, ended: Stay, line: Line | None, slot: Slot, out: Out | None, *, read: bool) -> Stay:
    """The item's next stay, in this slot. `out`: where its thing is, if it is out of its bin; `read`: its card was."""
    new = begin(unit, slot, ended.item, out, ByFile(ended.load) if ended.load and not read else None)
    if line is not None:
        unit.put(replace(line, stay=new.id, scan=None))
    unit.record(events.Moved(stay=ended.id, code=ended.code, to=new.code, new_stay=new.id))
    return new


def _live_line(unit: Unit, stay: Stay) -> Line | None:
    facts = unit.facts(stay.code)
    return facts.live_line if facts is not None and facts.stay is not None and facts.stay.id == stay.id else None


def end_stay(unit: Unit, stay: Stay) -> None:
    """Keep a stay that is over; its card is due back."""
    unit.put(stay)
    unit.put(replace(must(unit, Slot, stay.code).after("release"), out=None))


def lose_card(unit: Unit, code: str) -> Slot:
    """Say that a card is lost: its number is retired until the card is seen again."""
    slot = replace(must(unit, Slot, code).after("lose"), seen=None)
    unit.put(slot)
    unit.record(events.CardLost(code=code))
    return slot
