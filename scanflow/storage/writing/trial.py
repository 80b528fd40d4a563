"""What a unit of work would do, tried on a view of the room: nothing is written, and nobody waits for it."""

from __future__ import annotations

from collections import defaultdict
from collections.abc import Mapping, Sequence
from typing import Any

from scanflow.domain.events import Event
from scanflow.storage.rows import FIELDS
from scanflow.storage.unit import SqlUnit

Asked = tuple[tuple[str, Any], ...]


class TrialUnit(SqlUnit):
    """Reads the room as it stands, with what was added and put here laid over it. `facts` tells of slots alone.

    What asks the database by its `connection` sees nothing of that, so a trial is for work that asks by `get`, `find`
    and `facts`, as receiving orders does.
    """

    def __init__(self, *view: Any) -> None:
        super().__init__(*view)
        self._new: dict[type, dict[str, Any]] = defaultdict(dict)
        """What was added or put, by name."""
        self._place: dict[tuple[type, str], int] = {}
        """In which order, by the first time of each."""
        self._by: dict[tuple[type, tuple[str, ...]], dict[Asked, dict[str, Any]]] = {}
        """The same by the fields that are asked for."""
        self._slip: int | None = None

    def add(self, new: object) -> None:
        self._lay(new)

    def put(self, new: object) -> None:
        self._lay(new)

    def drop(self, kind: type, name: str) -> None:
        raise NotImplementedError("a trial takes nothing away")

    def record(self, event: Event, now: Sequence[str] = ()) -> None:
        self.seq += 1

    def next_slip(self) -> int:
        self._slip = super().next_slip() if self._slip is None else self._slip + 1
        return self._slip

    def _lay(self, new: Any) -> None:
        kind = type(new)
        name = getattr(new, FIELDS[kind][0])
        before = self._new[kind].get(name)
        self._place.setdefault((kind, name), len(self._place))
        self._new[kind][name] = self._known[kind, name] = new
        self._found[kind].clear()
        for (of, names), index in self._by.items():
            if of is kind:
                if before is not None:
                    index[_asked(before, names)].pop(name, None)
                index[_asked(new, names)][name] = new

    def _keep(self, kind: type, row: Any) -> Any:
        laid = self._new[kind].get(row[0]) if row is not None else None
        return laid if laid is not None else super()._keep(kind, row)

    def _find(self, kind: type, equal: Mapping[str, Any]) -> tuple[Any, ...]:
        asked = tuple(sorted(equal.items(), key=lambda item: item[0]))
        names = tuple(name for name, _ in asked)
        stand = {getattr(each, FIELDS[kind][0]): each for each in super()._find(kind, equal)}
        laid = self._laid(kind, names).get(asked, {})
        kept = {name: each for name, each in stand.items() if name not in self._new[kind] or name in laid}
        more = sorted((name for name in laid if name not in kept), key=lambda name: self._place[kind, name])
        return (*kept.values(), *(laid[name] for name in more))

    def _laid(self, kind: type, names: tuple[str, ...]) -> dict[Asked, dict[str, Any]]:
        index = self._by.get((kind, names))
        if index is None:
            index = self._by[kind, names] = defaultdict(dict)
            for name, each in self._new[kind].items():
                index[_asked(each, names)][name] = each
        return index


def _asked(thing: Any, names: tuple[str, ...]) -> Asked:
    return tuple((name, getattr(thing, name)) for name in names)
