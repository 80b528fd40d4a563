"""What an event is, the one registry of their kinds, and how a stored entry of the ledger becomes one again."""

from __future__ import annotations

from collections.abc import Callable, Iterable, Iterator, Mapping
from dataclasses import MISSING, dataclass, field, fields
from enum import StrEnum
from typing import Annotated, Any, ClassVar, NamedTuple, Self, TypeVar, dataclass_transform, get_args, get_type_hints


class Noun(StrEnum):
    """What a field of an event may name."""

    SLOT = "slot"
    ITEM = "item"
    STAY = "stay"
    DOUBT = "doubt"
    ORDER = "order"
    LINE = "line"
    ROUND = "round"
    PARCEL = "parcel"
    COUNT = "stocktake"
    RETURN = "return"


class NamedThing(NamedTuple):
    """One thing that an event is about: a slot by its code, all else by its id."""

    noun: Noun
    name: str


SlotCode = Annotated[str, Noun.SLOT]
ItemId = Annotated[str, Noun.ITEM]
StayId = Annotated[str, Noun.STAY]
DoubtId = Annotated[str, Noun.DOUBT]
OrderId = Annotated[str, Noun.ORDER]
LineId = Annotated[str, Noun.LINE]
RoundId = Annotated[str, Noun.ROUND]
ParcelId = Annotated[str, Noun.PARCEL]
CountId = Annotated[str, Noun.COUNT]
ReturnId = Annotated[str, Noun.RETURN]

LEFT_OUT: Mapping[str, bool] = {"left out": True}
"""The metadata of a field that does not stand in the ledger while it is None."""


@dataclass(frozen=True, slots=True)
class Event:
    """One thing that happened, as the ledger tells it. Its fields are the names of the entry's data.

    A field that older entries lack has a default. `kind` is the ledger's word for the type. `moves` names the fields
    whose things or cards are elsewhere after it: their slots are left out of a count that is under way.
    """

    kind: ClassVar[str]
    moves: ClassVar[tuple[str, ...]]
    _nouns: ClassVar[Mapping[str, Noun]]
    _keys: ClassVar[tuple[tuple[str, str, bool], ...]]
    """Of each field its name, its name in the ledger, and whether None is left out."""
    _needed: ClassVar[frozenset[str]]

    def data(self) -> dict[str, Any]:
        """What the ledger keeps of it, as plain JSON values."""
        told = ((key, getattr(self, name), may_lack) for name, key, may_lack in self._keys)
        return {
            key: list(value) if isinstance(value, tuple) else value
            for key, value, may_lack in told
            if value is not None or not may_lack
        }

    @classmethod
    def of(cls, data: Mapping[str, Any]) -> Self | None:
        """The event of stored data; None where they lack something. What a later version has more is passed over."""
        if not cls._needed <= data.keys():
            return None
        given = {name: data[key] for name, key, _ in cls._keys if key in data}
        return cls(**{name: tuple(value) if isinstance(value, list) else value for name, value in given.items()})

    def about(self) -> tuple[NamedThing, ...]:
        """All that it names."""
        return tuple(self._named(self._nouns))

    def moved(self) -> tuple[NamedThing, ...]:
        """Those whose things or cards are elsewhere now: slots, and lines or orders that say which slots."""
        return tuple(self._named(self.moves))

    def _named(self, names: Iterable[str]) -> Iterator[NamedThing]:
        for name in names:
            value = getattr(self, name)
            for each in (value,) if isinstance(value, str) else value or ():
                yield NamedThing(self._nouns[name], each)


@dataclass(frozen=True, slots=True)
class Unknown:
    """An entry of a kind that this version does not know, or that lacks what its kind needs."""

    kind: str
    told: Mapping[str, Any]

    def data(self) -> dict[str, Any]:
        return dict(self.told)

    def about(self) -> tuple[NamedThing, ...]:
        return ()

    def moved(self) -> tuple[NamedThing, ...]:
        return ()


Told = Event | Unknown
"""What an entry may be that some version wrote."""

KINDS: dict[str, type[Event]] = {}
"""Every kind of the ledger and its type."""

E = TypeVar("E", bound=Event)


@dataclass_transform(kw_only_default=True, frozen_default=True, field_specifiers=(field,))
def event(kind: str, *, moves: tuple[str, ...]) -> Callable[[type[E]], type[E]]:
    """Make a class the type of a kind of entry: a frozen dataclass with slots. `moves` is said by every one of them."""

    def declared(cls: type[E]) -> type[E]:
        made = dataclass(frozen=True, slots=True, kw_only=True)(cls)
        assert kind not in KINDS, f"there are two types of {kind}"
        KINDS[kind] = made
        made.kind, made.moves = kind, moves
        hints, own = get_type_hints(made, include_extras=True), fields(made)
        made._nouns = {each.name: noun for each in own for noun in _nouns(hints[each.name])}
        made._keys = tuple((each.name, each.name.rstrip("_"), each.metadata == LEFT_OUT) for each in own)
        made._needed = frozenset(each.name.rstrip("_") for each in own if each.default is MISSING)
        return made

    return declared


def _nouns(hint: Any) -> Iterator[Noun]:
    """What a field of this type names, if it names something."""
    found = getattr(hint, "__metadata__", ())
    yield from (each for each in found if isinstance(each, Noun))
    if not found:
        for part in get_args(hint):
            yield from _nouns(part)


def read(kind: str, data: Mapping[str, Any]) -> Told:
    """The event of an entry as it is stored, whatever version wrote it."""
    known = KINDS.get(kind)
    return (known.of(data) if known is not None else None) or Unknown(kind, data)
