"""Faults to put into the rules, one at a time, and what exploring a small room makes of each.

`python tests/mutants.py` tries every fault in every room and prints how it was caught.
"""

from __future__ import annotations

import sys
from collections.abc import Callable, Iterator
from contextlib import contextmanager
from dataclasses import dataclass, replace
from datetime import timedelta
from functools import cache, partial
from typing import Any

import memory
import pytest
from diagrams import TABLES
from explorer import Explored, explore
from memory import Memory
from small_rooms import ROOMS

from scanflow.domain import life, things, verdict, whereabouts
from scanflow.domain.derive import order_state
from scanflow.domain.life import CardState, DoubtEnd, Hold, LineState, ParcelState, RoundState, StayState
from scanflow.domain.things import Line, Order, Station
from scanflow.domain.verdict import Guard, Reason, Scene
from scanflow.workflow import orders, parcels, stock
from scanflow.workflow.picking import scans, undoing
from scanflow.workflow.stock import doubts, sightings

Patch = Callable[[pytest.MonkeyPatch], None]
Row = tuple[str, str, str]


@dataclass(frozen=True)
class Mutant:
    """What puts the fault in; for a fault in a row, the table's name, the state and the event."""

    patch: Patch
    row: Row | None = None


ADDED_ROWS: dict[str, dict[tuple[Any, str], Any]] = {
    "line": {
        (LineState.UNBOUND, "pick"): LineState.PICKED,
        (LineState.WAITING, "pack"): LineState.PACKED,
        (LineState.WAITING, "close"): LineState.RELEASED,
        (LineState.PICKED, "close"): LineState.RELEASED,
        (LineState.PICKED, "pick"): LineState.PICKED,
        (LineState.PACKED, "pack"): LineState.PACKED,
        (LineState.PACKED, "cancel"): LineState.CANCELLED,
        (LineState.PACKED, "miss"): LineState.SHORT,
        (LineState.PACKED, "put back"): LineState.WAITING,
        (LineState.SHORT, "pick"): LineState.PICKED,
        (LineState.RELEASED, "cancel"): LineState.CANCELLED,
        (LineState.RELEASED, "revive"): LineState.WAITING,
        (LineState.CANCELLED, "pick"): LineState.PICKED,
        (LineState.CANCELLED, "unbind"): LineState.UNBOUND,
    },
    "stay": {
        (StayState.SHIPPED, "withdraw"): StayState.WITHDRAWN,
        (StayState.SHIPPED, "move"): StayState.MOVED,
        (StayState.WITHDRAWN, "reopen"): StayState.STORED,
        (StayState.MOVED, "withdraw"): StayState.WITHDRAWN,
    },
    "card": {
        (CardState.ON_ITEM, "take"): CardState.HAND,
        (CardState.ON_ITEM, "see in tray"): CardState.TRAY,
        (CardState.DUE, "see on item"): CardState.ON_ITEM,
        (CardState.DUE, "release"): CardState.DUE,
        (CardState.TRAY, "see on item"): CardState.ON_ITEM,
        (CardState.LOST, "lose"): CardState.LOST,
    },
    "parcel": {
        (ParcelState.ASIDE, "close"): ParcelState.CLOSED,
        (ParcelState.CLOSED, "drop"): ParcelState.DROPPED,
        (ParcelState.CLOSED, "close"): ParcelState.CLOSED,
        (ParcelState.DROPPED, "reopen"): ParcelState.OPEN,
    },
    "round": {(RoundState.CLOSED, "close"): RoundState.CLOSED},
}
"""Rows that skip a step or take one too many."""


def _either(scene: Scene, *states: LineState) -> bool:
    return scene.line_state in states


LOOSENED: dict[str, tuple[Station | None, Reason, Callable[[Scene], bool]]] = {
    "retired at the tray too": (
        None,
        Reason.RETIRED,
        lambda scene: scene.slot is not None and not scene.taken and scene.slot.card is CardState.LOST,
    ),
    "retired though its thing is there": (
        None,
        Reason.RETIRED,
        lambda scene: (
            scene.slot is not None and scene.station is not Station.TRAY and scene.slot.card is CardState.LOST
        ),
    ),
    "closed also when late": (
        Station.BIN,
        Reason.CLOSED,
        lambda scene: scene.round is not None and scene.round.state is RoundState.CLOSED,
    ),
    "never closed when late": (
        Station.BIN,
        Reason.CLOSED,
        lambda scene: scene.round is not None and scene.round.state is RoundState.CLOSED and not scene.late,
    ),
    "late from another round": (
        Station.BIN,
        Reason.CLOSED,
        lambda scene: (
            scene.round is not None
            and scene.round.state is RoundState.CLOSED
            and not (scene.late and scene.line_state is LineState.WAITING)
        ),
    ),
    "late though not waiting": (
        Station.BIN,
        Reason.CLOSED,
        lambda scene: (
            scene.round is not None
            and scene.round.state is RoundState.CLOSED
            and not (scene.late and scene.on_this_round)
        ),
    ),
    "any round will do": (
        Station.BIN,
        Reason.NOT_ON_ROUND,
        lambda scene: scene.live and scene.line is not None and scene.line.round is None,
    ),
    "released though its slot is taken again": (
        Station.TABLE,
        Reason.ALREADY_RELEASED,
        lambda scene: scene.line is not None and scene.line.state is LineState.RELEASED,
    ),
    "released though its card is back": (
        Station.TABLE,
        Reason.ALREADY_RELEASED,
        lambda scene: not scene.taken and scene.line is not None and scene.line.state is LineState.RELEASED,
    ),
    "not ordered when cancelled": (Station.TABLE, Reason.NOT_ORDERED, lambda scene: not scene.live),
    "cancelled though gone": (
        Station.TABLE,
        Reason.CANCELLED,
        lambda scene: scene.line is not None and scene.line.state is LineState.CANCELLED,
    ),
    "another order's only when picked": (
        Station.TABLE,
        Reason.OTHER_ORDER,
        lambda scene: verdict._other_order(scene) and _either(scene, LineState.PICKED),
    ),
    "another order's may be taken out": (
        Station.TABLE,
        Reason.OTHER_ORDER,
        lambda scene: verdict._other_order(scene) and not scene.take_out,
    ),
    "held only when cancelled in the box": (
        Station.TABLE,
        Reason.HELD,
        lambda scene: verdict._held(scene) and scene.line is not None and scene.line.has(Hold.CANCELLED_IN_BOX),
    ),
    "held also when taken out": (
        Station.TABLE,
        Reason.HELD,
        lambda scene: scene.live and scene.line is not None and bool(scene.line.holds),
    ),
    "held also at its own parcel": (
        Station.TABLE,
        Reason.HELD,
        lambda scene: scene.live and scene.line is not None and bool(scene.line.holds) and not scene.take_out,
    ),
    "packed also when it was read elsewhere": (
        Station.TABLE,
        Reason.ALREADY_PACKED,
        lambda scene: scene.counts_as_packed and not scene.take_out,
    ),
    "not picked though it lies in a basket": (
        Station.TABLE,
        Reason.NOT_PICKED,
        lambda scene: verdict._not_packable(scene) or (scene.line_state is LineState.WAITING and scene.by_bin),
    ),
    "packed things are refused at the tray": (Station.TRAY, Reason.NOT_RELEASED, lambda scene: scene.taken),
    "packed also when taken out": (
        Station.TABLE,
        Reason.ALREADY_PACKED,
        lambda scene: scene.line_state is LineState.PACKED,
    ),
    "straight from waiting": (
        Station.TABLE,
        Reason.NOT_PICKED,
        lambda scene: scene.take_out and scene.line_state is not LineState.PACKED,
    ),
    "never straight from short": (
        Station.TABLE,
        Reason.NOT_PICKED,
        lambda scene: verdict._not_packable(scene) or scene.line_state is LineState.SHORT,
    ),
    "picked may be taken out": (
        Station.TABLE,
        Reason.NOT_PICKED,
        lambda scene: verdict._not_packable(scene) and not (scene.take_out and scene.line_state is LineState.PICKED),
    ),
    "never straight from waiting": (
        Station.TABLE,
        Reason.NOT_PICKED,
        lambda scene: scene.line_state is not (LineState.PACKED if scene.take_out else LineState.PICKED),
    ),
    "in the tray though in stock": (Station.TRAY, Reason.NOT_RELEASED, lambda scene: scene.live),
    "right bin for live lines only": (
        Station.SHELF,
        Reason.WRONG_BIN,
        lambda scene: scene.slot is not None and scene.live and scene.bin != scene.slot.bin,
    ),
}
"""Guards that say less, or more, than they should: station (None: those before all), reason, the wrong question."""


def mutants() -> dict[str, Mutant]:
    """Name → the fault."""
    return dict((*_rows(), *_guards(), *_sets(), *_told()))


def _rows() -> Iterator[tuple[str, Mutant]]:
    for name in ADDED_ROWS:
        table = TABLES[name]
        for (state, event), after in table.items():
            key, row = (state, event), (name, str(state), event)
            yield f"{name}: no row {state}, {event}", Mutant(partial(_drop, table, key), row)
            if after != state:
                yield f"{name}: {state}, {event} stays {state}", Mutant(partial(_put, table, key, state), row)
        for (state, event), after in ADDED_ROWS[name].items():
            added = Mutant(partial(_put, table, (state, event), after), (name, str(state), event))
            yield f"{name}: row {state}, {event} to {after}", added


def _told() -> Iterator[tuple[str, Mutant]]:
    """What was told, and forgotten."""
    for name, (module, attribute, value) in FORGOTTEN.items():
        yield name, Mutant(partial(_set, module, attribute, value))


def _any_hold(line: Line, hold: Hold | None) -> Hold | None:
    return hold or line.hold


def _found_all(unit: Any, item: str, how: DoubtEnd) -> None:
    for each in doubts.open_doubts(unit, item):
        doubts._end(unit, each, how, "")


FORGOTTEN: dict[str, tuple[Any, str, Any]] = {
    "no reading holds what is packed": (sightings, "_hold", lambda unit, line, why: None),
    "another table says nothing of what is packed": (
        sightings,
        "contradicts_parcel",
        lambda seen, parcel: seen.station is not Station.TABLE and whereabouts.contradicts_parcel(seen, parcel),
    ),
    "a shelf says nothing of what is packed": (
        sightings,
        "contradicts_parcel",
        lambda seen, parcel: seen.station is not Station.SHELF and whereabouts.contradicts_parcel(seen, parcel),
    ),
    "the tray says that what is packed is not": (sightings, "contradicts_parcel", lambda seen, parcel: True),
    "a shelf says nothing of a closed parcel": (sightings, "contradicts_closing", lambda seen: False),
    "a reopened parcel is not looked into": (parcels, "_read_again", lambda unit, line, closed: None),
    "a card in the tray is not back at closing": (parcels, "_back_already", lambda unit, code: False),
    "a number goes out wherever its card was read": (
        memory,
        "free_to_give",
        lambda slot, taken: not taken and slot.card is CardState.TRAY,
    ),
    "a chosen number goes out wherever its card was read": (
        stock,
        "where",
        lambda unit, facts: replace(sightings.where(unit, facts), read=None),
    ),
    "doubts are forgotten when a line is bound": (doubts, "said", lambda unit, those: ""),
    "doubts hold no line": (doubts, "hold", lambda unit, line, item: line),
    "a scan that finds a thing settles every doubt": (doubts, "found", _found_all),
    "a press settles any hold": (orders, "_settled", _any_hold),
    "a second reason is dropped": (
        things.Line,
        "held",
        lambda line, hold, why: line if line.holds else replace(line, holds=(things.Held(hold, why),), scan=None),
    ),
    "a repeat is told by its card alone": (scans, "_stood", lambda unit, reading, scene: "x"),
    "a scan after a take-out packs at once": (scans, "DOUBLE_BEEP", timedelta(seconds=-1)),
    "a scan at its own parcel ends every hold": (
        scans,
        "_told",
        lambda unit, line, scene, key: replace(line, holds=(), scan=key) if scene.comes_home else line,
    ),
}
"""Functions that say less than they should, and what is said in their place."""


def _drop(table: Any, key: Any, patch: pytest.MonkeyPatch) -> None:
    patch.delitem(table, key)


def _put(table: Any, key: Any, value: Any, patch: pytest.MonkeyPatch) -> None:
    patch.setitem(table, key, value)


def _set(module: Any, name: str, value: Any, patch: pytest.MonkeyPatch) -> None:
    patch.setattr(module, name, value)


def _guards() -> Iterator[tuple[str, Mutant]]:
    lists = {"every station": verdict.ALL, **{str(station): verdict.GUARDS[station] for station in Station}}
    for where, guards in lists.items():
        for place, (reason, _) in enumerate(guards):
            yield f"{where}: no {reason}", Mutant(partial(_put_guards, where, (*guards[:place], *guards[place + 1 :])))
        for place in range(len(guards) - 1):
            one, other = guards[place], guards[place + 1]
            swapped = (*guards[:place], other, one, *guards[place + 2 :])
            yield f"{where}: {other[0]} before {one[0]}", Mutant(partial(_put_guards, where, swapped))
    for name, (station, reason, fits) in LOOSENED.items():
        where = str(station) if station else "every station"
        new = tuple((each, fits if each is reason else old) for each, old in lists[where])
        yield f"{where}: {name}", Mutant(partial(_put_guards, where, new))


def _put_guards(where: str, guards: tuple[Guard, ...], patch: pytest.MonkeyPatch) -> None:
    if where == "every station":
        patch.setattr(verdict, "ALL", guards)
    else:
        patch.setitem(verdict.GUARDS, Station(where), guards)


def _sets() -> Iterator[tuple[str, Mutant]]:
    for name, module in (("CLOSING", parcels), ("REOPENING", parcels), ("FORWARD", things)):
        for each in sorted(getattr(module, name)):
            kept = type(getattr(module, name))(other for other in getattr(module, name) if other != each)
            told = each if isinstance(each, str) else " ".join(each)
            yield f"{name} without {told}", Mutant(partial(_set, module, name, kept))
    for was, now in undoing.BACK:
        yield f"BACK without {was} from {now}", Mutant(partial(_drop, undoing.BACK, (was, now)))


@dataclass(frozen=True)
class Base:
    """What a room gives without a fault.

    `stuck` counts the states from which its orders can't all end; `asked` are the rows that any step looked for.
    """

    found: Explored
    stuck: int
    asked: frozenset[Row]


def ended(unit: Memory) -> bool:
    """Every order is released, cancelled or returned."""
    lines = unit.all(Line).values()
    return all(order_state(line for line in lines if line.order == order) in parcels.ENDED for order in unit.all(Order))


@cache
def base(room: str) -> Base:
    asked: set[tuple[int, Any, str]] = set()

    def step(table: Any, state: Any, event: str) -> Any:
        asked.add((id(table), state, event))
        return life.step(table, state, event)

    with pytest.MonkeyPatch.context() as patch:
        patch.setattr(things, "step", step)
        found = explore(ROOMS[room])
    names = {id(table): name for name, table in TABLES.items()}
    rows = frozenset((names[table], str(state), event) for table, state, event in asked)
    return Base(found, found.stuck(ended), rows)


@contextmanager
def _in_order(*tables: Any) -> Iterator[None]:
    """Afterwards the rows stand in their old order again: a row that comes back would come last."""
    rows = [dict(table) for table in tables]
    yield
    for table, old in zip(tables, rows, strict=True):
        table.clear()
        table.update(old)


def caught(name: str, room: str) -> str | None:
    """How exploring the room catches the fault: a property, `no end`, `states`, `answers`; None if it does not.

    A fault in a row that no step of the room looks for can't show there. `states` and `answers` are those that the
    pinned prints stand for: other states or ways between them, other answers.
    """
    sound, mutant = base(room), ALL_MUTANTS[name]
    if mutant.row is not None and mutant.row not in sound.asked:
        return None
    with _in_order(*TABLES.values(), undoing.BACK), pytest.MonkeyPatch.context() as patch:
        mutant.patch(patch)
        try:
            found = explore(ROOMS[room], sound.found)
        except life.NotAllowed:
            return "no start"
    if found.broken:
        return found.broken
    if found.said != sound.found.said:
        return "answers"
    if found.stuck(ended) > sound.stuck:
        return "no end"
    return "states" if found.successors != sound.found.successors else None


ALL_MUTANTS = mutants()


WEAK = ("no start", "no end", "states", "answers")
ENOUGH = 5


def how(name: str) -> tuple[str, str] | None:
    """Of the first rooms that catch the fault the one that tells most of it: a broken property, or the first."""
    ways: list[tuple[str, str]] = []
    for room in ROOMS:
        way = caught(name, room)
        if way is not None and way not in WEAK:
            return room, way
        if way in ("no end", "states", "answers"):
            ways.append((room, way))
        if len(ways) == ENOUGH:
            break
    return ways[0] if ways else None


if __name__ == "__main__":
    part, parts = (int(word) for word in sys.argv[1:3]) if len(sys.argv) > 2 else (0, 1)
    for name in list(ALL_MUTANTS)[part::parts]:
        print(f"    {name!r}: {how(name)!r},", flush=True)
