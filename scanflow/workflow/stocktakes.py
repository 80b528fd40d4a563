"""A count of an area: opened, looked into place by place, closed with a report or cancelled. It changes nothing else.

What its findings are put right by stands in `resolving`, what is said at its end in `stocktake_report`.
"""

from __future__ import annotations

import json
from collections.abc import Iterator, Mapping
from dataclasses import asdict, dataclass, replace
from datetime import timedelta
from math import dist
from typing import Any

from labels import slot_code
from scanflow.domain import shelf_view
from scanflow.domain.derive import seen_away, stands_in
from scanflow.domain.findings import Finding, Kind, Place, Standing, findings, places
from scanflow.domain.life import LIVE, LineState, StayState, StocktakeState
from scanflow.domain.stocktake import (
    Area,
    BadArea,
    Certainty,
    Chosen,
    How,
    Looked,
    Read,
    Resolved,
    Sample,
    Stocktake,
)
from scanflow.domain.things import Bin, Item, Line, Photo, Slot, Station, Stay
from scanflow.planning.counting import draw
from scanflow.workflow import cards
from scanflow.workflow.ports import Invalid, Refused, Unit, must


@dataclass(frozen=True, slots=True)
class Text:
    """One label as a reader gave it: None where it is located and not read. `engines` that read it agree."""

    text: str | None
    certainty: Certainty = Certainty.DECODED
    corners: tuple[float, ...] = ()
    engines: int = 1


@dataclass(frozen=True, slots=True)
class Shown:
    """A look as it came in; its fields are those of `domain.stocktake.Looked`.

    `doubts`: those of the texts whose thing is not the one that the account has, as a person said. Without `place` a
    bin's label among the texts says it, of several that in the middle of the picture, or the area where that is one
    place. In an `image` codes that are not the shop's don't count.
    """

    key: str
    body: str
    texts: tuple[Text, ...]
    how: How = How.WEDGE
    place: str | None = None
    whole: bool = True
    closer: str | None = None
    image: bool = False
    size: tuple[int, ...] = ()
    photo: Photo | None = None
    doubts: tuple[str, ...] = ()


def open_count(unit: Unit, area: str, note: str = "", sample: int | None = None) -> Stocktake:
    """Begin a count of an area, or of so many of its bins, drawn blind; it may rest for days.

    What is drawn hangs on the new count's id alone, which nobody chooses: `planning.counting.draw` gives it again from
    the area's bins, the first `Sample.of` of them. `Invalid` at `/area` and `/sample`.
    """
    try:
        wanted = Area.parse(area)
    except BadArea as error:
        raise Invalid("/area", "bad_area", str(error)) from error
    if not wanted.places(unit.find(Bin)):
        raise Invalid("/area", "unknown_area", f"There is no bin in {wanted}.")
    count = Stocktake(unit.new_id(), str(wanted), note, unit.at, unit.seq)
    if sample is not None:
        names = bins_of(unit, wanted)
        if not 0 < sample <= len(names):
            raise Invalid("/sample", "bad_number", f"Draw 1 to {len(names)} of the bins of {wanted}.")
        drawn = set(draw(names, sample, count.id))
        bins = tuple(name for name in names if name in drawn)
        count = replace(count, sample=Sample(Chosen.BLIND, len(names), bins))
    return begin(unit, count)


def bins_of(unit: Unit, area: Area) -> tuple[str, ...]:
    """The bins of an area, without the tray."""
    return tuple(each.name for each in unit.find(Bin) if area.covers(each))


def begin(unit: Unit, count: Stocktake) -> Stocktake:
    """Keep a new count, and write into the ledger what it is about."""
    unit.add(count)
    told = {"stocktake": count.id, "area": count.area, "note": count.note}
    unit.record("stocktake opened", told | ({"sample": asdict(count.sample)} if count.sample else {}))
    forget_old_photos(unit)
    return count


def earlier(unit: Unit, count_id: str, key: str, body: str) -> Looked | None:
    """The look that came with this key before; `key_reused` if it was another one."""
    look = unit.get(Looked, key)
    if look is None:
        return None
    if (look.stocktake, look.body) != (count_id, body):
        raise Invalid("/key", "key_reused", "This key was used for another look.")
    return look


def look(unit: Unit, count_id: str, shown: Shown) -> Looked:
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
        former = unit.get(Looked, shown.closer)
        if former is None or (former.stocktake, former.place) != (count_id, place):
            raise Invalid("/closer", "unknown_look", f"There is no such look at {place} in this count.")
        closer = former.closer or former.key
    else:
        closer = None
    if shown.photo is not None and unit.get(Photo, shown.photo.hash) is None:
        unit.add(shown.photo)
    looked = Looked(
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
    told = {certainty: [r.text for r in reads if r.certainty is certainty] for certainty in Certainty}
    unit.record(
        "looked",
        {
            "stocktake": count_id,
            "key": looked.key,
            "place": place,
            "how": looked.how,
            "decoded": told[Certainty.DECODED],
            "matched": told[Certainty.MATCHED],
            "unread": looked.unread,
            "doubted": sorted(doubts),
            "photo": looked.photo,
        },
    )
    return looked


Labels = Mapping[str, tuple[float, ...]]
"""The names on bin labels, and their corners in the picture."""


def _understood(unit: Unit, shown: Shown) -> tuple[list[Read], Labels]:
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


def _card(unit: Unit, seen: Text, widths: Mapping[str, int]) -> Read | None:
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


def _place(unit: Unit, count: Stocktake, shown: Shown, labels: Labels) -> str:
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


def _labelled(shown: Shown, labels: Labels) -> str | None:
    """The bin in the middle of the picture by the labels in view; one alone at the side is a neighbour's."""
    if len(labels) > 1:
        row = shelf_view.row(labels, shown.size)
        return f"{row[0]}-{row[1].looked_at}" if row is not None else None
    for name, corners in labels.items():
        if not corners or not shown.size or 1 / 4 < shelf_view.centre(corners)[0] / shown.size[0] < 3 / 4:
            return name
    return None


@dataclass(frozen=True, slots=True)
class Found:
    """A finding with how it was resolved, None while it is open."""

    finding: Finding
    resolved: Resolved | None = None


@dataclass(frozen=True, slots=True)
class State:
    """A count as it stands: all slots by the shop's account, its looks, what is known of each place, its findings."""

    count: Stocktake
    room: Mapping[str, Standing]
    looks: tuple[Looked, ...]
    places: Mapping[str, Place]
    found: tuple[Found, ...]

    @property
    def looked(self) -> int:
        return sum(each.looked for each in self.places.values())


def state(unit: Unit, count_id: str) -> State:
    """How a count stands. Once it is closed its findings are those of the report, whatever happened since."""
    count = must(unit, Stocktake, count_id)
    names = count.places(unit.find(Bin))
    looks = unit.find(Looked, stocktake=count_id)
    room = standings(unit)
    resolved = {
        finding.id: Found(finding, each)
        for each in unit.find(Resolved, stocktake=count_id)
        for finding in (Finding.from_dict(json.loads(each.finding)),)
    }
    gone = set() if count.report else changed(unit, count)
    sorted_out = {
        one.finding.subject
        for one in resolved.values()
        if one.finding.kind is Kind.UNREADABLE and one.resolved is not None and one.resolved.how == "ignore"
    }
    known = places(names, room, looks, gone, sorted_out)
    if count.report:
        written = [Finding.from_dict(each) for each in json.loads(count.report)["findings"]]
        return State(count, room, looks, known, tuple(resolved.get(each.id, Found(each)) for each in written))
    settled = {one.finding.subject for one in resolved.values()}
    now = [Found(each) for each in findings(names, room, looks, gone, sorted_out) if each.subject not in settled]
    order = list(Kind)
    found = sorted([*resolved.values(), *now], key=lambda one: (order.index(one.finding.kind), one.finding.subject))
    return State(count, room, looks, known, tuple(found))


def standings(unit: Unit) -> dict[str, Standing]:
    """Every slot by the shop's account."""
    stays = {stay.code: stay for stay in unit.find(Stay, state=StayState.STORED)}
    lines = {line.stay: line for live in sorted(LIVE) for line in unit.find(Line, state=live)}
    return {slot.code: _standing(slot, stays.get(slot.code), lines) for slot in unit.find(Slot)}


def _standing(slot: Slot, stay: Stay | None, lines: Mapping[str | None, Line]) -> Standing:
    if stay is None:
        return Standing(slot.code, slot.bin, False, slot.card, slot.bin)
    line = lines.get(stay.id)
    state = line.state if line is not None else None
    carried = seen_away(slot) and slot.seen is not None and slot.seen.station is not Station.SHELF
    away = carried or state in (LineState.PICKED, LineState.PACKED)
    return Standing(slot.code, slot.bin, True, slot.card, stands_in(slot), state, away)


def unexpected(read: Read, place: str, room: Mapping[str, Standing]) -> bool:
    """Whether by the account this card is not at this place, nor where the labels in the picture have it."""
    return bool(read.text) and (read.code is None or room[read.code].place not in (read.bins or (place,)))


def changed(unit: Unit, count: Stocktake) -> set[str]:
    """Codes of the slots whose thing or card moved since the count began, by its own resolutions of them apart."""
    moved: list[tuple[int, set[str]]] = []
    for seq, kind, data in unit.told_since(count.seq):
        if kind in ("finding resolved", "finding reopened") and data["stocktake"] == count.id:
            own = {data["finding"].partition("-")[2]}
            moved = [(at, codes if at <= data["after"] else codes - own) for at, codes in moved]
        elif codes := set(_moved(unit, kind, data)):
            moved.append((seq, codes))
    return set().union(*(codes for _, codes in moved))


def _moved(unit: Unit, kind: str, data: Mapping[str, Any]) -> Iterator[str]:
    """The slots that an entry of the ledger is about, if it tells of a thing or card that moved."""
    match kind:
        case "put away" | "withdrawn" | "card lost" | "found" | "undone" | "settled":
            yield from [data["code"]] if "code" in data else _codes_of(unit, unit.find(Line, id=data["line"]))
        case "moved":
            yield from (data["code"], data["to"])
        case "scan":
            yield from data["released"]
            if data["verdict"] == "accepted" and data["code"] is not None:
                yield data["code"]
        case "parcel closed":
            yield from data["released"]
        case "parcel reopened":
            for order in data["orders"]:
                yield from _codes_of(unit, unit.find(Line, order=order))


def _codes_of(unit: Unit, lines: tuple[Line, ...]) -> Iterator[str]:
    for line in lines:
        stay = unit.get(Stay, line.stay) if line.stay else None
        if stay is not None:
            yield stay.code


def cancel(unit: Unit, count_id: str) -> Stocktake:
    """End a count without a report; what was resolved in it stays resolved."""
    count = must(unit, Stocktake, count_id).after("cancel", unit.at)
    unit.put(count)
    unit.record("stocktake cancelled", {"stocktake": count.id})
    return count


def forget_photos(unit: Unit, count_id: str) -> Stocktake:
    """Delete the photos of a count for good, but for those that a thing has, or another count."""
    count = must(unit, Stocktake, count_id)
    forgotten = []
    for each in unit.find(Looked, stocktake=count_id):
        if each.photo is not None:
            unit.put(replace(each, photo=None))
            if not unit.find(Looked, photo=each.photo) and not unit.find(Item, photo=each.photo):
                unit.drop(Photo, each.photo)
            forgotten.append(each.photo)
    if forgotten:
        unit.record("photos deleted", {"stocktake": count_id, "photos": sorted(set(forgotten))})
    return count


def forget_old_photos(unit: Unit) -> None:
    """Delete the photos of counts that ended longer ago than the shop keeps them."""
    before = unit.at - timedelta(days=unit.settings.photo_days)
    for ended in (StocktakeState.CLOSED, StocktakeState.CANCELLED):
        for count in unit.find(Stocktake, state=ended):
            if count.closed is not None and count.closed < before:
                forget_photos(unit, count.id)
