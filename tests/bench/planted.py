"""A shop of many slots, and a room in which some things are not as its account has them: each is told.

What stands in the room is made beside the account, never from it, so that it can judge what a count finds.
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import dataclass, field

import numpy as np
from room_scene import DAMAGED, Card

from labels import slot_code
from scanflow.domain.counts.findings import FindingKind
from scanflow.domain.orders.incoming import IncomingLine, IncomingOrder
from scanflow.domain.things import Slot, Station
from scanflow.shop import Shop
from scanflow.workflow import stock
from scanflow.workflow.orders import receiving
from scanflow.workflow.picking import rounds, scans
from scanflow.workflow.picking.reading import ScanBase, StationReading
from scanflow.workflow.ports import Unit

SECTIONS = "DEF"
TAKEN = 0.85
WHO = "bench"


@dataclass(frozen=True)
class Plant:
    """One error: its finding, and the cards (text, bin) that show it; without any its bin or the tray does."""

    kind: FindingKind
    subject: str
    cards: tuple[tuple[str, str], ...] = ()

    @property
    def id(self) -> str:
        return f"{self.kind}-{self.subject}"


@dataclass
class Room:
    """What stands where: the cards of each bin in their order, and the texts of those in the tray."""

    bins: dict[str, list[Card]] = field(default_factory=dict)
    tray: list[str] = field(default_factory=list)
    planted: list[Plant] = field(default_factory=list)


def furnish(shop: Shop, seed: int, slots: int = 600, per_bin: int = 20) -> Room:
    """A shop with things in most of its slots, and a room that differs from it by 20 errors."""
    rng = np.random.default_rng([seed, 77])
    made = shop.act(WHO, lambda unit: _stock(unit, rng, slots, per_bin))
    room = Room({bin_: [] for _, bin_, _ in made})
    for code, bin_, taken in made:
        if taken:
            room.bins[bin_].append(Card(slot_code.card_text(code)))
        else:
            room.tray.append(slot_code.card_text(code))
    _go_wrong(shop, rng, room, made)
    for cards in room.bins.values():
        rng.shuffle(cards)  # type: ignore[arg-type]
    return room


Made = list[tuple[str, str, bool]]


def _stock(unit: Unit, rng: np.random.Generator, slots: int, per_bin: int) -> Made:
    made = []
    for number, letter in enumerate(SECTIONS):
        stock.add_section(
            unit,
            stock.AddSection(
                code=letter, name=f"Parts {letter}", slots_per_bin=per_bin, colour=("blue", "green", "orange")[number]
            ),
        )
        for slot in stock.add_slots(unit, letter, stock.AddSlots(count=slots // len(SECTIONS))):
            taken = bool(rng.random() < TAKEN)
            if taken:
                stock.put_away(unit, stock.PutAway(title=f"thing of {slot.code}", code=slot.code))
            made.append((slot.code, slot.bin, taken))
    return made


def _go_wrong(shop: Shop, rng: np.random.Generator, room: Room, made: Made) -> None:
    taken = _drawn(rng, [(code, bin_) for code, bin_, has in made if has])
    free = _drawn(rng, [(code, bin_) for code, bin_, has in made if not has])
    _missing(room, taken, 3)
    _elsewhere(rng, room, taken)
    _twin(rng, room, taken)
    _slot_free(rng, room, free)
    _in_tray(room, taken, 2)
    _card_due(shop, room, taken)
    for number in (77, 501):
        text = slot_code.card_text(slot_code.make("Q", number))
        _planted(room, FindingKind.UNKNOWN, text, text, _any(rng, room))
    for _ in range(2):
        code, bin_ = next(taken)
        text = _take(room, code, bin_)
        room.bins[bin_].append(Card(text, DAMAGED))
        room.planted.append(Plant(FindingKind.UNREADABLE, bin_, ((text, bin_),)))
    _suspect(shop, room, [next(taken) for _ in range(2)])


def _drawn(rng: np.random.Generator, slots: Sequence[tuple[str, str]]) -> Iterator[tuple[str, str]]:
    """One after the other, none twice."""
    return iter([slots[int(place)] for place in rng.permutation(len(slots))])


def _take(room: Room, code: str, bin_: str) -> str:
    """A card is taken out of its bin."""
    text = slot_code.card_text(code)
    room.bins[bin_].remove(Card(text))
    return text


def _any(rng: np.random.Generator, room: Room, but: str = "") -> str:
    return str(rng.choice([name for name in room.bins if name != but]))


def _next_to(room: Room, bin_: str) -> str:
    """A bin beside it on its shelf."""
    shelf, _, position = bin_.rpartition("-")
    names = (f"{shelf}-{int(position) + step}" for step in (1, -1))
    return next(name for name in names if name in room.bins)


def _planted(room: Room, kind: FindingKind, subject: str, text: str, bin_: str, *more: tuple[str, str]) -> None:
    """A card is put into a bin."""
    room.bins[bin_].append(Card(text))
    room.planted.append(Plant(kind, subject, ((text, bin_), *more)))


def _missing(room: Room, taken: Iterator[tuple[str, str]], count: int) -> None:
    for _ in range(count):
        code, bin_ = next(taken)
        _take(room, code, bin_)
        room.planted.append(Plant(FindingKind.MISSING, code))


def _elsewhere(rng: np.random.Generator, room: Room, taken: Iterator[tuple[str, str]]) -> None:
    """In the bin next to their own twice, and once far off."""
    for near in (True, True, False):
        code, bin_ = next(taken)
        there = _next_to(room, bin_) if near else _any(rng, room, bin_)
        _planted(room, FindingKind.ELSEWHERE, code, _take(room, code, bin_), there)


def _twin(rng: np.random.Generator, room: Room, taken: Iterator[tuple[str, str]]) -> None:
    """One card in its own bin and a second like it next to it, or far off."""
    for near in (True, False):
        code, bin_ = next(taken)
        there = _next_to(room, bin_) if near else _any(rng, room, bin_)
        text = slot_code.card_text(code)
        _planted(room, FindingKind.TWIN, code, text, there, (text, bin_))


def _slot_free(rng: np.random.Generator, room: Room, free: Iterator[tuple[str, str]]) -> None:
    for own in (True, False):
        code, bin_ = next(free)
        text = slot_code.card_text(code)
        room.tray.remove(text)
        _planted(room, FindingKind.SLOT_FREE, code, text, bin_ if own else _any(rng, room, bin_))


def _in_tray(room: Room, taken: Iterator[tuple[str, str]], count: int) -> None:
    for _ in range(count):
        code, bin_ = next(taken)
        room.tray.append(_take(room, code, bin_))
        room.planted.append(Plant(FindingKind.IN_TRAY, code))


def _card_due(shop: Shop, room: Room, taken: Iterator[tuple[str, str]]) -> None:
    """Of things that left: one card is gone, one lies in the tray and nobody said so."""
    for back in (False, True):
        code, bin_ = next(taken)
        text = _take(room, code, bin_)
        stay = _stay(shop, code)
        shop.act(WHO, lambda unit, stay=stay: stock.withdraw(unit, stay, stock.Withdraw(reason="sold at the door")))
        room.tray += [text] * back
        room.planted.append(Plant(FindingKind.CARD_DUE, code))


def _stay(shop: Shop, code: str) -> str:
    with shop.looking() as unit:
        facts = unit.facts(code)
    assert facts is not None and facts.stay is not None
    return facts.stay.id


def _suspect(shop: Shop, room: Room, chosen: Sequence[tuple[str, str]]) -> None:
    """They count as picked, and stand on their shelves: something else was taken."""

    def work(unit: Unit) -> None:
        wanted = tuple(IncomingLine(slot_code.reference(code, 1)) for code, _ in chosen)
        order, _ = receiving.receive(unit, IncomingOrder("1001", lines=wanted))
        walk, _ = rounds.open_round(unit, rounds.OpenRound(orders=[order.id]))
        for code, _ in chosen:
            texts = (slot_code.card_text(code),)
            scans.scan(
                unit, StationReading(ScanBase(station=Station.BIN, key=f"pick-{code}", round=walk.id), texts, code)
            )
        rounds.close_round(unit, walk.id)

    shop.act(WHO, work)
    for code, bin_ in chosen:
        room.planted.append(Plant(FindingKind.SUSPECT, code, ((slot_code.card_text(code), bin_),)))


def owner_of(shop: Shop) -> dict[str, str]:
    """The bin of each slot's card text."""
    with shop.looking() as unit:
        return {slot_code.card_text(slot.code): slot.bin for slot in unit.find(Slot)}
