"""The room in memory: a unit of work over frozen things in dictionaries, cheap to fork.

What storage does with tables and transactions is done here in the plainest way, so that it can serve as the model:
`fork` before a call that may be refused, and drop the fork to roll back.
"""

from __future__ import annotations

import json
from collections import Counter
from collections.abc import Iterable, Mapping
from dataclasses import fields
from datetime import UTC, datetime
from operator import attrgetter
from typing import Any, TypeVar

from scanflow.domain import events
from scanflow.domain.counts.stocktake import Look, Resolved, Stocktake
from scanflow.domain.life import CardState, LineState, ParcelState, StocktakeState
from scanflow.domain.orders.titles import Stocked, Titled
from scanflow.domain.things import (
    Alias,
    Bin,
    ChangedOrder,
    Channel,
    Doubt,
    Item,
    Label,
    Line,
    Listing,
    Order,
    Parcel,
    Photo,
    Rack,
    Return,
    Round,
    Scan,
    Section,
    Slot,
    Station,
    Stay,
    Stop,
)
from scanflow.domain.whereabouts import free_to_give
from scanflow.workflow.ports import Settings, SlotFacts

T = TypeVar("T")
KINDS = (
    Section,
    Rack,
    Bin,
    Slot,
    Alias,
    Photo,
    Item,
    Stay,
    Channel,
    Order,
    ChangedOrder,
    Line,
    Doubt,
    Listing,
    Return,
    Round,
    Stop,
    Parcel,
    Label,
    Scan,
    Stocktake,
    Look,
    Resolved,
)
FIRST = {kind: fields(kind)[0].name for kind in KINDS}
SHUT = (ParcelState.CLOSED, ParcelState.HANDED_OVER)
NOON = datetime(2026, 3, 2, 12, 0, tzinfo=UTC)


def name_of(thing: object) -> Any:
    """A thing's name within its kind: its first field, and round and position of a stop."""
    if isinstance(thing, Stop):
        return thing.round, thing.position
    return getattr(thing, FIRST[type(thing)])


class Memory:
    """All things by kind and name, the ledger as events, and the settings. Ids are counted, so runs repeat."""

    def __init__(self, settings: Settings | None = None, at: datetime = NOON, who: str = "tester") -> None:
        self.at, self.who = at, who
        self.settings = settings or Settings()
        self.ledger: list[events.Event] = []
        self._things: dict[type, dict[Any, Any]] = {kind: {} for kind in KINDS}
        self._last_scans: dict[tuple[Station, str], Scan] = {}
        self._ids = self._slips = 0
        self._own: set[type] = set(KINDS)

    def fork(self) -> Memory:
        """The same room, to go its own way; a kind's things are copied by whoever writes to them first."""
        other = object.__new__(type(self))
        other.__dict__.update(self.__dict__)
        other.ledger = self.ledger.copy()
        other._things = self._things.copy()
        other._last_scans = self._last_scans.copy()
        self._own, other._own = set(), set()
        return other

    def all(self, kind: type[T]) -> Mapping[Any, T]:
        """Name → thing, in the order they were added. The same object as long as no thing of the kind is written."""
        return self._things[kind]

    def _writable(self, kind: type) -> dict[Any, Any]:
        if kind not in self._own:
            self._things[kind] = self._things[kind].copy()
            self._own.add(kind)
        return self._things[kind]

    def new_id(self) -> str:
        self._ids += 1
        return f"id{self._ids}"

    def next_slip(self) -> int:
        self._slips += 1
        return self._slips

    def get(self, kind: type[T], name: str) -> T | None:
        return self._things[kind].get(name)

    def find(self, kind: type[T], **equal: Any) -> tuple[T, ...]:
        found: Iterable[T] = self._things[kind].values()
        for field, value in equal.items():
            field_of = attrgetter(field)
            found = [thing for thing in found if field_of(thing) == value]
        return tuple(found)

    def add(self, thing: object) -> None:
        things, name = self._writable(type(thing)), name_of(thing)
        if name in things:
            raise ValueError(f"there is a {type(thing).__name__} {name} already")
        things[name] = thing
        if isinstance(thing, Scan):
            self._last_scans[thing.station, thing.spot] = thing

    def put(self, thing: object) -> None:
        things, name = self._writable(type(thing)), name_of(thing)
        if name not in things:
            raise KeyError(f"there is no {type(thing).__name__} {name}")
        things[name] = thing

    def forget(self, kind: type, name: Any) -> None:
        """Drop a thing that nothing refers to any more: history, where only the present matters."""
        del self._writable(kind)[name]

    def drop(self, kind: type, name: str) -> None:
        self.forget(kind, name)

    @property
    def seq(self) -> int:
        return len(self.ledger)

    def record(self, event: events.Event) -> None:
        self.ledger.append(event)

    def told_since(self, seq: int) -> list[tuple[int, events.Event]]:
        return [(place, event) for place, event in enumerate(self.ledger, 1) if place > seq]

    def told_at(self, of: type[events.Event], name: str) -> datetime | None:
        """All that happens here happens now."""
        told = (json.dumps(event.data()) for event in self.ledger if isinstance(event, of))
        return self.at if any(json.dumps(name) in each for each in told) else None

    def told_before(self, at: datetime) -> datetime | None:
        return self.at if self.ledger and self.at <= at else None

    def set_settings(self, settings: Settings) -> None:
        self.settings = settings

    def facts(self, code: str) -> SlotFacts | None:
        slot = self.get(Slot, code)
        if slot is None:
            return None
        stay = self._latest(slot)
        if stay is None:
            return SlotFacts(slot)
        line = self._line_of(stay)
        return SlotFacts(slot, stay, self.get(Item, stay.item), line, self.get(Order, line.order) if line else None)

    def _latest(self, slot: Slot) -> Stay | None:
        for stay in self._things[Stay].values():
            if stay.code == slot.code and stay.turn == slot.turns:
                found: Stay = stay
                return found
        return None

    def _line_of(self, stay: Stay) -> Line | None:
        """The live one, else the one that was released, else the last."""
        lines = [line for line in self._things[Line].values() if line.stay == stay.id]
        for line in lines:
            if line.live:
                return line
        released = [line for line in lines if line.state is LineState.RELEASED]
        return next(iter(released or lines[-1:]), None)

    def lowest_free(self, section: str) -> Slot | None:
        return min(self._free(section), key=lambda slot: slot.number, default=None)

    def free_slots(self, most_per_bin: int) -> dict[str, int]:
        sections = (each.code for each in self.find(Section) if each.slots_per_bin <= most_per_bin)
        return {code: count for code in sections if (count := len(self._free(code)))}

    def _free(self, section: str) -> list[Slot]:
        slots = self.find(Slot, section=section, card=CardState.TRAY)
        stays = {slot.code: self._latest(slot) for slot in slots}
        free = [slot for slot in slots if free_to_give(slot, taken=bool((stay := stays[slot.code]) and stay.open))]
        return [slot for slot in free if slot.fetcher(self.at) in (None, self.who)]

    def fetched(self) -> tuple[Slot, ...]:
        return tuple(slot for slot in self.find(Slot) if slot.fetcher(self.at) == self.who)

    def stocked(self) -> Stocked:
        items = self._things[Item]
        stays = (stay for stay in self._things[Stay].values() if stay.open)
        return Stocked(Titled(stay.item, stay.id, stay.code, items[stay.item].title) for stay in stays)

    def last_looks(self) -> dict[str, datetime]:
        gone = {each.id for each in self.find(Stocktake, state=StocktakeState.CANCELLED)}
        looks = [each for each in self.find(Look, whole=True, closer=None) if each.stocktake not in gone]
        return {each.place: each.at for each in sorted(looks, key=lambda each: each.at)}

    def visits_since(self, since: datetime) -> dict[str, int]:
        times = [(each.code, at) for each in self.find(Stay) for at in (each.began, each.ended) if at is not None]
        return Counter(self._things[Slot][code].bin for code, at in times if at >= since)

    def last_closed(self, table: str) -> Parcel | None:
        shut = [each for each in self.find(Parcel, table=table) if each.state in SHUT and each.closed is not None]
        return max(reversed(shut), key=lambda each: each.closed or NOON, default=None)

    def last_scan(self, station: Station, spot: str) -> Scan | None:
        return self._last_scans.get((station, spot))
