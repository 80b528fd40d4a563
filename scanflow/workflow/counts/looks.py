"""One look of a count: what was shown is understood, told to be of one place, kept, or taken out again."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass, replace
from datetime import datetime, timedelta
from math import dist
from typing import Annotated, Any

from pydantic import Field

from labels import slot_code
from scanflow.domain import events
from scanflow.domain.counts import shelf_view
from scanflow.domain.counts.stocktake import TRAY, Certainty, How, Look, Read, Stocktake
from scanflow.domain.life import CardState, LineState, StocktakeState
from scanflow.domain.things import Bin, Photo, Sighting, Slot, Station
from scanflow.domain.whereabouts import free_to_give
from scanflow.workflow.counts.stocktakes import drop_photo
from scanflow.workflow.fields import (
    MOST_LINES,
    Age,
    CardText,
    Command,
    Flag,
    Identity,
    Image,
    Key,
    Maybe,
    OneOf,
    Place,
)
from scanflow.workflow.ports import Invalid, Missing, Refused, SlotFacts, Unit, must
from scanflow.workflow.stock import cards, doubts, sightings


class Looking(Command):
    """A look of a count, but for what was seen."""

    key: Key
    via: How = How.WEDGE
    place: Maybe[Place] = Field(
        default=None,
        description="A bin's name or `tray`. Absent: the bin whose label is in view, or the area's only place.",
    )
    whole: Flag = Field(
        default=True,
        description="All that stands there was in view, or was held up. What a look by hand lacks is missing; what "
        "photos lack may be hidden.",
    )
    age_ms: Age = 0
    closer: Maybe[Identity] = Field(
        default=None, description="The key of an earlier look of which this one shows a part again."
    )

    @property
    def shown(self) -> dict[str, Any]:
        """As fields of `IncomingLook`."""
        return {"how": self.via} | self.known("via", "texts", "doubts", "image")


_Texts = Annotated[tuple[CardText, ...], Field(max_length=MOST_LINES)]


class LookTexts(
    Looking, json_schema_extra={"examples": [{"key": "phone-1-000018", "place": "A-2-3", "texts": ["D0145", "D0153"]}]}
):
    texts: _Texts = Field(description="Of the cards, as scanned or typed.")
    doubts: _Texts = Field(default=(), description="Those of the texts that hang on another thing.")


class LookImage(Looking):
    via: Annotated[How, OneOf((How.PHOTO, How.CAMERA))] = How.PHOTO
    image: Image = Field(description="A photograph of one bin or the tray.")


@dataclass(frozen=True, slots=True)
class LabelReading:
    """One label as a reader gave it: None where it is located and not read. `engines` that read it agree."""

    text: str | None
    certainty: Certainty = Certainty.DECODED
    corners: tuple[float, ...] = ()
    engines: int = 1


@dataclass(frozen=True, slots=True)
class IncomingLook:
    """A look as it came in; its fields are those of `domain.counts.stocktake.Look`.

    `doubts`: those of the texts whose thing is not the one that the account has, as a person said. Without `place` a
    bin's label among the texts says it, of several that in the middle of the picture, or the area where that is one
    place. In an `image` codes that are not the shop's don't count.
    """

    key: str
    body: str
    texts: tuple[LabelReading, ...]
    how: How = How.WEDGE
    place: str | None = None
    whole: bool = True
    closer: str | None = None
    image: bool = False
    age_ms: int = 0
    size: tuple[int, ...] = ()
    photo: Photo | None = None
    doubts: tuple[str, ...] = ()


def typed(said: LookTexts, body: str) -> IncomingLook:
    """What a look by hand shows."""
    return IncomingLook(body=body, texts=tuple(map(LabelReading, said.texts)), doubts=said.doubts, **said.shown)


def earlier(unit: Unit, count_id: str, key: str, body: str) -> Look | None:
    """The look that came with this key before; `key_reused` if it was another one."""
    look = unit.get(Look, key)
    if look is None:
        return None
    if (look.stocktake, look.body) != (count_id, body):
        raise Invalid("/key", "key_reused", "This key was used for another look.")
    return look


def look(unit: Unit, count_id: str, shown: IncomingLook) -> Look:
    """Keep what one look saw. `Invalid` where it can't be told which place it shows, or a typed text is no card."""
    count = must(unit, Stocktake, count_id)
    before = earlier(unit, count_id, shown.key, shown.body)
    if before is not None:
        return before
    if count.state is not StocktakeState.OPEN:
        raise Refused("closed", f"This count is {count.state}. Begin another.")
    reads, labels = _understood(unit, shown)
    reads = _located(unit, reads, labels, shown.size)
    doubts = {slot_code.compact(text) for text in shown.doubts}
    if not doubts <= {read.text for read in reads}:
        raise Invalid("/doubts", "unknown_card", "Doubt only cards that are among the texts.")
    reads = [replace(read, doubted=read.text in doubts) for read in reads]
    place = _place(unit, count, shown, labels)
    if shown.closer is not None:
        former = unit.get(Look, shown.closer)
        if former is None or (former.stocktake, former.place) != (count_id, place):
            raise Invalid("/closer", "unknown_look", f"There is no such look at {place} in this count.")
        closer = former.closer or former.key
    else:
        closer = None
    if shown.photo is not None and unit.get(Photo, shown.photo.hash) is None:
        unit.add(shown.photo)
    looked = Look(
        key=shown.key,
        body=shown.body,
        stocktake=count_id,
        place=place,
        at=unit.at,
        how=shown.how,
        reads=tuple(reads),
        whole=shown.whole,
        closer=closer,
        size=shown.size,
        photo=shown.photo.hash if shown.photo else None,
    )
    unit.add(looked)
    _record(unit, looked)
    _sight(unit, looked, timedelta(milliseconds=shown.age_ms))
    return looked


def _sight(unit: Unit, looked: Look, age: timedelta) -> None:
    """Keep where its cards were read, as far as it tells their places, and what a person doubted of them."""
    for read in looked.reads:
        facts = unit.facts(read.code) if read.code else None
        if facts is None or read.certainty is not Certainty.DECODED:
            continue
        place = _place_of(looked, read, facts.slot.bin)
        if place is not None:
            station = Station.TRAY if place == TRAY else Station.SHELF
            honest = place == TRAY and (not facts.taken or _packed(facts))
            seen = Sighting(station, "" if place == TRAY else place, honest, unit.at - age)
            sightings.sight(unit, facts, seen)
        if read.doubted and facts.taken and facts.item is not None:
            doubts.not_this(unit, facts.item.id, f"A count found another thing on its card in {looked.place}.")
    if looked.place == TRAY:
        _miss_in_tray(unit, looked.stocktake)


def _packed(facts: SlotFacts) -> bool:
    return facts.live_line is not None and facts.live_line.state is LineState.PACKED


def _place_of(looked: Look, read: Read, home: str) -> str | None:
    """The one bin that a card hangs in, or the tray, as a label in view or a person says; None where neither does.

    In a photo without labels what belongs in a bin beside may hang there. A film shows whole bins only by their labels.
    """
    if looked.place == TRAY:
        return TRAY
    if read.bins:
        return read.bins[0] if len(read.bins) == 1 else None
    if not looked.by_eye:
        return looked.place
    if looked.how is How.CAMERA:
        return None
    return home if shelf_view.near(looked.place, home) else looked.place


def _miss_in_tray(unit: Unit, count_id: str) -> None:
    """What the tray was gone through for and does not hold is not handed out until its card is read there."""
    looks = [each for each in unit.find(Look, stocktake=count_id, place=TRAY) if not each.by_eye]
    if not any(each.whole and each.closer is None for each in looks):
        return
    read = {read.code for each in unit.find(Look, stocktake=count_id, place=TRAY) for read in each.reads}
    at = max(each.at for each in looks)
    for slot in unit.find(Slot, card=CardState.TRAY):
        known_since = slot.seen is not None and slot.seen.at is not None and slot.seen.at > at
        if slot.code not in read and not known_since and free_to_give(slot, taken=False):
            unit.put(replace(slot, seen=Sighting(Station.TRAY, "", False, at)))


def _record(unit: Unit, looked: Look) -> None:
    told = {certainty: tuple(r.text for r in looked.reads if r.certainty is certainty) for certainty in Certainty}
    unit.record(
        events.Looked(
            stocktake=looked.stocktake,
            key=looked.key,
            place=looked.place,
            how=looked.how,
            decoded=told[Certainty.DECODED],
            matched=told[Certainty.MATCHED],
            unread=looked.unread,
            doubted=tuple(sorted(read.text for read in looked.reads if read.doubted)),
            photo=looked.photo,
        )
    )


Labels = Mapping[str, tuple[float, ...]]
"""The names on bin labels, and their corners in the picture."""


def _understood(unit: Unit, shown: IncomingLook) -> tuple[list[Read], Labels]:
    """The cards in view, and the bins' labels; a card that was typed or beeped twice is one."""
    widths = cards.widths(unit)
    reads: list[Read] = []
    labels: dict[str, tuple[float, ...]] = {}
    best_first = sorted(enumerate(shown.texts), key=lambda pair: pair[1].certainty is not Certainty.DECODED)
    for number, each in best_first:
        if each.text is None:
            reads.append(Read("", None, Certainty.UNREAD, each.corners))
            continue
        try:
            if slot_code.is_bin_like(each.text):
                labels.setdefault(slot_code.parse_bin(each.text), each.corners)
            elif (read := _card(unit, each, widths)) is not None and not any(_same(read, other) for other in reads):
                reads.append(read)
        except slot_code.CodeError as error:
            if not shown.image:
                code = "bad_check" if isinstance(error, slot_code.BadCheck) else "unknown_code"
                raise Invalid(f"/texts/{number}", code, f"“{each.text}” is no card's text. Read it again.") from error
    return reads, labels


def _located(unit: Unit, reads: list[Read], labels: Labels, size: tuple[int, ...]) -> list[Read]:
    """With the bins that they hang in, where the labels of two bins or more tell."""
    there = {each.name.upper(): each.name for each in unit.find(Bin)}
    pictured = [each for each in reads if each.corners]
    whole = [(each.corners, each.certainty is not Certainty.UNREAD) for each in pictured]
    bins = {id(each): names for each, names in zip(pictured, shelf_view.bins(whole, labels, size), strict=True)}
    return [
        replace(each, bins=tuple(there[name] for name in bins.get(id(each), ()) if name in there)) for each in reads
    ]


def _same(one: Read, other: Read) -> bool:
    """Whether two readings are of one card: the same text, not at two places of a picture.

    Two rows of bars no farther apart than a card's are high, a third of their length, are of one card.
    """
    if (one.text, one.code) != (other.text, other.code):
        return False
    if not one.corners or not other.corners:
        return True
    apart = dist(shelf_view.centre(one.corners), shelf_view.centre(other.corners))
    length = max(dist(each.corners[:2], each.corners[2:4]) for each in (one, other))
    return apart < length / 3 or _within(one, other) or _within(other, one)


def _within(one: Read, other: Read) -> bool:
    """Whether the middle of one lies in the box around the other."""
    middle = shelf_view.centre(one.corners)
    return all(min(other.corners[axis::2]) <= middle[axis] <= max(other.corners[axis::2]) for axis in (0, 1))


def _card(unit: Unit, seen: LabelReading, widths: Mapping[str, int]) -> Read | None:
    """One card; a text without a check is as good as matched until two engines agree on it.

    None for what only has the form of another shop's card without a check: nothing says that it is one.
    """
    text = seen.text or ""
    name = cards.named(unit, text, widths)
    ours = unit.get(Slot, name.code) is not None
    if not ours and not name.checked:
        return None
    sure = seen.certainty is Certainty.DECODED and (name.checked or seen.engines > 1)
    certainty = Certainty.DECODED if sure else Certainty.MATCHED
    return Read(slot_code.compact(text), name.code if ours else None, certainty, seen.corners)


def _place(unit: Unit, count: Stocktake, shown: IncomingLook, labels: Labels) -> str:
    """The one place of the area that a look shows: as said, or as labels in view tell, or the area's only one."""
    there = count.places(unit.find(Bin))
    said, told = shown.place, _labelled(shown, labels)
    beside = len(labels) == 1 and told is None
    if said is not None and labels and not beside and said.upper() not in (*labels, told):
        raise Invalid("/place", "other_bin", f"The label in view is that of {next(iter(labels))}, not of {said}.")
    if said is None and len(labels) > 1 and told is None:
        raise Invalid(
            "/place", "many_bins", f"There are the labels of {', '.join(labels)} in view. Say which bin it is."
        )
    name = said or told or (there[0] if len(there) == 1 else None)
    if name is None:
        raise Invalid("/place", "required", "Say which bin this is, or have its label in view.")
    found = [each for each in there if each == name] or [each for each in there if each.upper() == name.upper()]
    if len(found) != 1:
        whole = "none of the bins that were drawn" if count.sample else f"no place of {count.area}"
        raise Invalid("/place", "not_in_area", f"{name} is {whole}.")
    return found[0]


def _labelled(shown: IncomingLook, labels: Labels) -> str | None:
    """The bin in the middle of the picture by the labels in view; one alone at the side is a neighbour's."""
    if len(labels) > 1:
        row = shelf_view.row(labels, shown.size)
        return f"{row[0]}-{row[1].looked_at}" if row is not None else None
    for name, corners in labels.items():
        if not corners or not shown.size or 1 / 4 < shelf_view.centre(corners)[0] / shown.size[0] < 3 / 4:
            return name
    return None


def _forget_missed(unit: Unit, since: datetime) -> None:
    """The look that missed cards in the tray was none, so they count as there, unless another look missed them too."""
    for slot in unit.find(Slot, card=CardState.TRAY):
        seen = slot.seen
        if seen is not None and (seen.station, seen.accepted) == (Station.TRAY, False) and seen.at and seen.at >= since:
            unit.put(replace(slot, seen=None))
    for count_id in dict.fromkeys(each.stocktake for each in unit.find(Look, place=TRAY)):
        _miss_in_tray(unit, count_id)


def drop(unit: Unit, count_id: str, key: str) -> Stocktake:
    """Take a look out, with those that show a part of it from nearer; their photos are deleted for good.

    What was resolved by it stays resolved. Refused: `closed` where the count is over.
    """
    count = must(unit, Stocktake, count_id)
    look = unit.get(Look, key)
    if look is None or look.stocktake != count_id:
        raise Missing("There is no such look in this count.")
    if count.state is not StocktakeState.OPEN:
        raise Refused("closed", f"This count is {count.state}. Its looks stay.")
    closer = unit.find(Look, closer=key)
    for each in (*closer, look):  # the look last: those point to it
        unit.drop(Look, each.key)
        if each.photo:
            drop_photo(unit, each.photo)
    if look.place == TRAY:
        _forget_missed(unit, look.at)
    dropped = tuple(sorted(each.key for each in (look, *closer)))
    unit.record(events.LookDropped(stocktake=count_id, place=look.place, keys=dropped))
    return count
