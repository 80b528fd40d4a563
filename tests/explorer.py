"""Every state that a small room can get into, breadth first over the real workflow functions.

A room's states are told apart by what can still matter (`canonical`): ids, times, words and the ledger don't, nor do
dropped parcels, nor scans that nobody can undo. While something is counted the ledger does: it tells what moved since.
What is asked of every step stands in `properties`.
"""

from __future__ import annotations

import json
import zlib
from collections import deque
from collections.abc import Callable, Iterable, Iterator, Mapping
from dataclasses import dataclass, field, replace
from typing import Any

from memory import Memory
from properties import Change, boxed, broken_by

from labels import slot_code
from scanflow.domain.counts.stocktake import Look, Resolved, Stocktake
from scanflow.domain.life import CardState, Condition, DoubtEnd, LineState, NotAllowed, ParcelState, RoundState
from scanflow.domain.orders.incoming import IncomingOrder
from scanflow.domain.things import Bin, Doubt, Line, Order, Parcel, Return, Round, Scan, Slot, Station, Stay, Stop
from scanflow.workflow import orders, parcels, stock
from scanflow.workflow.counts import looks, resolving, stocktakes, taking_back
from scanflow.workflow.counts import report as stocktake_report
from scanflow.workflow.orders import receiving, returns
from scanflow.workflow.parcels import hand_over
from scanflow.workflow.picking import rounds, scans, undoing
from scanflow.workflow.picking.reading import ScanBase, StationReading
from scanflow.workflow.ports import Invalid, Missing, Refused
from scanflow.workflow.stock import doubts

A_WHILE = 200
LATER = "2026-03-02T11:00:00Z"


@dataclass(frozen=True)
class Room:
    """A start and what may happen from it.

    `does` names the kinds of events, `items` bounds the things put away from the start on, `turns` the stays a slot
    may ever have. `versions` are the orders that may arrive (again). `beeps` tells states apart by the last scan at
    each spot; without it that scan is forgotten between two events, save that every accepted scan is repeated at once.
    `looks` are the places that may be gone through by hand, with the cards that hang there. `still` are slots of whose
    cards and lines nothing is said: what two other lines may do a third, as free as they, would only multiply.
    `sights` tells states apart by where cards were read last, refused readings too; without it only by what those
    readings hold.
    """

    start: Callable[[], Memory]
    does: frozenset[str]
    items: int = 0
    turns: int = 2
    tables: tuple[str, ...] = ("main", "second")
    versions: tuple[IncomingOrder, ...] = ()
    unread: tuple[tuple[str, ...], ...] = ()
    looks: tuple[tuple[str, tuple[str, ...]], ...] = ()
    still: tuple[str, ...] = ()
    joined: bool = True
    beeps: bool = False
    sights: bool = False


@dataclass(frozen=True)
class Event:
    """One call. `code` is the slot of a scanned card, `takes` the slot that a put-away or a move would hand out."""

    kind: str
    text: str
    call: Callable[[Memory], Any]
    station: Station | None = None
    code: str | None = None
    table: str = "main"
    bin: str | None = None
    take_out: bool = False


@dataclass
class Explored:
    """What was found: successors by state, what each call said in turn, and the first break of a property."""

    successors: list[set[int]] = field(default_factory=list)
    rooms: list[Memory] = field(default_factory=list)
    said: list[tuple[str, str]] = field(default_factory=list)
    broken: str | None = None
    path: tuple[str, ...] = ()

    @property
    def states(self) -> int:
        return len(self.rooms)

    @property
    def steps(self) -> int:
        return len(self.said)

    @property
    def print(self) -> str:
        """Eight digits that change with any state, step or answer."""
        told = repr((self.said, [sorted(nexts) for nexts in self.successors]))
        return f"{zlib.crc32(told.encode()):08x}"

    def stuck(self, goal: Callable[[Memory], bool]) -> int:
        """The number of states from which no state of the goal can be reached."""
        before: list[list[int]] = [[] for _ in self.rooms]
        for index, nexts in enumerate(self.successors):
            for other in nexts:
                before[other].append(index)
        reached = {index for index, room in enumerate(self.rooms) if goal(room)}
        todo = list(reached)
        while todo:
            for index in before[todo.pop()]:
                if index not in reached:
                    reached.add(index)
                    todo.append(index)
        return self.states - len(reached)


def explore(room: Room, sound: Explored | None = None) -> Explored:
    """All states of a room, or as far as the first broken property.

    Beside a `sound` exploration of the same room it ends a while after the first call that says something else.
    """
    found = Explored()
    start = prune(room, room.start())
    numbers: dict[Any, int] = {canonical(room, start): 0}
    found.rooms.append(start)
    proved = [boxed(start)]
    came: list[tuple[int, str]] = [(0, "")]
    todo = deque([0])
    last: int | None = None
    while todo and (last is None or found.steps < last):
        here = todo.popleft()
        nexts: set[int] = set()
        found.successors.append(nexts)
        before = found.rooms[here]
        for event in events(room, before):
            after, answer, said = attempt(before, event)
            found.said.append((event.kind, str(said)))
            if last is None and sound and found.said[-1:] != sound.said[found.steps - 1 : found.steps]:
                last = found.steps + A_WHILE
            change = Change(before, after, event, answer, said, proved[here])
            broken = broken_by(change)
            if broken:
                found.broken, found.path = broken, (*_path(came, here), event.text)
                return found
            if after is before or (change.refused and not _tells(room, before, after)):
                continue
            key = canonical(room, after)
            number = numbers.get(key)
            if number is None:
                number = numbers[key] = found.states
                found.rooms.append(prune(room, after))
                proved.append(change.proved_after)
                came.append((here, event.text))
                todo.append(number)
            nexts.add(number)
    found.successors += [set() for _ in range(found.states - len(found.successors))]
    return found


def _tells(room: Room, before: Memory, after: Memory) -> bool:
    """Whether a refusal leads to a state that this room tells apart."""
    lines = before.all(Line) is not after.all(Line)
    return room.beeps or lines or (room.sights and before.all(Slot) != after.all(Slot))


def _path(came: list[tuple[int, str]], here: int) -> tuple[str, ...]:
    texts: list[str] = []
    while here:
        here, text = came[here]
        texts.append(text)
    return tuple(reversed(texts))


def attempt(before: Memory, event: Event) -> tuple[Memory, dict[str, Any] | None, str]:
    """The room after an event, its answer if it was a scan, and what was said; a call that raises is rolled back."""
    after = before.fork()
    try:
        answer = event.call(after)
    except (Refused, Invalid) as no:
        return before, None, no.code
    except NotAllowed:
        return before, None, "not_allowed"
    except Missing:
        return before, None, "missing"
    if event.station is None:
        return after, None, "done"
    return after, answer, answer["reason"] or ("changed" if answer["changed"] else "unchanged")


def events(room: Room, unit: Memory) -> Iterator[Event]:
    """All calls of the room's kinds that could be made in this state."""
    for kind in EVENTS:
        if kind in room.does:
            for event in EVENTS[kind](room, unit):
                if not any(code in event.text for code in room.still):
                    yield event


def scan_event(kind: str, station: Station, texts: tuple[str, ...], code: str | None = None, **more: Any) -> Event:
    def call(unit: Memory) -> dict[str, Any]:
        key = unit.new_id()
        return scans.scan(unit, StationReading(ScanBase(station=station, key=key, **more), texts, key))

    text = " ".join([kind, *texts, *(f"{name}={value}" for name, value in more.items())])
    known = {name: more[name] for name in ("table", "bin", "take_out") if name in more}
    return Event(kind, text, call, station, code, **known)


def _cards(unit: Memory) -> Iterator[tuple[str, tuple[str]]]:
    for code in unit.all(Slot):
        yield code, (slot_code.card_text(code),)


def _put_away(room: Room, unit: Memory) -> Iterator[Event]:
    if len({stay.item for stay in unit.all(Stay).values()}) >= room.items:
        return
    yield Event(
        "put away", "put away by section", lambda u: stock.put_away(u, stock.PutAway(title="thing", section="D"))
    )
    for code, (text,) in _cards(unit):
        if unit.all(Slot)[code].turns < room.turns:
            yield Event(
                "put away",
                f"put away by card {text}",
                lambda u, t=text: stock.put_away(u, stock.PutAway(title="thing", text=t)),
            )
            yield Event(
                "put away",
                f"put away in {code}",
                lambda u, c=code: stock.put_away(u, stock.PutAway(title="thing", code=c)),
            )


def _lines_of(unit: Memory) -> Iterable[Line]:
    return unit.all(Line).values()


def _stays(unit: Memory) -> tuple[Stay, ...]:
    """Those that have ended too."""
    return tuple(unit.all(Stay).values())


def _for_lines(kind: str, act: Callable[[Memory, str], Any]) -> Callable[[Room, Memory], Iterator[Event]]:
    def make(room: Room, unit: Memory) -> Iterator[Event]:
        for line in _lines_of(unit):
            yield Event(kind, f"{kind} {line.reference}", lambda u, name=line.id: act(u, name))

    return make


def _receive(room: Room, unit: Memory) -> Iterator[Event]:
    for version in room.versions:
        text = f"receive {version.number}: {', '.join(f'{x.reference} {x.title}' for x in version.lines)}"
        yield Event("receive", text, lambda u, v=version: receiving.receive(u, v))


def _cancel_order(room: Room, unit: Memory) -> Iterator[Event]:
    for order in unit.all(Order).values():
        yield Event(
            "cancel order",
            f"cancel order {order.number}",
            lambda u, name=order.id: orders.cancel(u, name, orders.Cancel()),
        )


def _cancel_in_time(room: Room, unit: Memory) -> Iterator[Event]:
    """Orders of which nothing was closed yet."""
    closed = {line.order for line in _lines_of(unit) if line.state is LineState.RELEASED}
    for order, event in zip(unit.all(Order), _cancel_order(room, unit), strict=True):
        if order not in closed:
            yield event


def _cancel_line(room: Room, unit: Memory) -> Iterator[Event]:
    for line in _lines_of(unit):
        text = f"cancel {line.reference}"
        yield Event("cancel line", text, lambda u, x=line: orders.cancel(u, x.order, orders.Cancel(line=x.id)))


def _settle(room: Room, unit: Memory) -> Iterator[Event]:
    """Each hold of a line by its name, and the gravest without one."""
    for line in _lines_of(unit):
        for hold in (None, *(each.hold for each in line.holds)) if line.holds else ():
            text = f"settle {line.reference} {hold or ''}".rstrip()
            yield Event("settle", text, lambda u, x=line, h=hold: orders.settle(u, x.id, orders.Settle(hold=h)))


def _settle_doubt(room: Room, unit: Memory) -> Iterator[Event]:
    """Each open doubt by the right card, by another, and by a person's word."""
    for doubt in unit.all(Doubt).values():
        if doubt.open:
            for code, (text,) in _cards(unit):
                words = f"settle doubt of {doubt.kind} by card {code}"
                yield Event(
                    "settle doubt",
                    words,
                    lambda u, d=doubt.id, t=text: doubts.settle(u, d, doubts.SettleDoubt(how=DoubtEnd.SEEN, text=t)),
                )
            words = f"settle doubt of {doubt.kind}: corrected"
            yield Event(
                "settle doubt",
                words,
                lambda u, d=doubt.id: doubts.settle(u, d, doubts.SettleDoubt(how=DoubtEnd.CORRECTED)),
            )


def _settle_on(room: Room, unit: Memory) -> Iterator[Event]:
    for line in _lines_of(unit):
        for stay in _stays(unit):
            text = f"settle {line.reference} on {stay.code}, turn {stay.turn}"
            yield Event("settle on", text, lambda u, x=line, s=stay: orders.settle(u, x.id, orders.Settle(stay=s.id)))


def _open_round(room: Room, unit: Memory) -> Iterator[Event]:
    if not unit.find(Round, state=RoundState.OPEN):
        yield Event("open round", "open round", lambda unit: rounds.open_round(unit, rounds.OpenRound()))
        for order in unit.all(Order):
            yield Event(
                "open round",
                f"open round {order}",
                lambda u, name=order: rounds.open_round(u, rounds.OpenRound(orders=[name])),
            )


def _close_round(room: Room, unit: Memory) -> Iterator[Event]:
    for name in unit.all(Round):
        yield Event("close round", f"close round {name}", lambda u, r=name: rounds.close_round(u, r))


def _bin(room: Room, unit: Memory) -> Iterator[Event]:
    for name in unit.all(Round):
        for code, texts in _cards(unit):
            yield scan_event("bin", Station.BIN, texts, code, round=name)


def _packed(unit: Memory, code: str) -> bool:
    facts = unit.facts(code)
    line = facts.live_line if facts else None
    return line is not None and line.state is LineState.PACKED


def _honest_bin(room: Room, unit: Memory) -> Iterator[Event]:
    """No card of what is packed is at a bin."""
    return (event for event in _bin(room, unit) if not _packed(unit, event.code or ""))


def _honest_tray(room: Room, unit: Memory) -> Iterator[Event]:
    """No card of what is packed is taken off before its parcel closes."""
    return (event for event in _tray(room, unit) if not _packed(unit, event.code or ""))


def _late(room: Room, unit: Memory) -> Iterator[Event]:
    for name in unit.all(Round):
        for code, texts in _cards(unit):
            yield scan_event("late", Station.BIN, texts, code, round=name, at=LATER)


def _table(kind: str, take_out: bool) -> Callable[[Room, Memory], Iterator[Event]]:
    def make(room: Room, unit: Memory) -> Iterator[Event]:
        for table in room.tables:
            for code, texts in _cards(unit):
                yield scan_event(kind, Station.TABLE, texts, code, table=table, take_out=take_out)

    return make


def _slip(room: Room, unit: Memory) -> Iterator[Event]:
    for table in room.tables:
        for order in unit.all(Order).values():
            yield scan_event("slip", Station.TABLE, (slot_code.slip_text(order.slip),), table=table)


def _tray(room: Room, unit: Memory) -> Iterator[Event]:
    for code, texts in _cards(unit):
        yield scan_event("tray", Station.TRAY, texts, code)


def _shelf(room: Room, unit: Memory) -> Iterator[Event]:
    for name in unit.all(Bin):
        for code, texts in _cards(unit):
            yield scan_event("shelf", Station.SHELF, texts, code, bin=name)


def _unread(room: Room, unit: Memory) -> Iterator[Event]:
    """Texts that are no card, at every station."""
    name = next(iter(unit.all(Round)), None)
    spots: list[tuple[Station, dict[str, str]]] = [
        (Station.TABLE, {}),
        (Station.TRAY, {}),
        (Station.SHELF, {"bin": next(iter(unit.all(Bin)))}),
        *([(Station.BIN, {"round": name})] if name else []),
    ]
    for station, spot in spots:
        for texts in room.unread:
            yield scan_event(f"unread {station}", station, texts, **spot)


def _open_parcel(room: Room, unit: Memory) -> Iterator[Event]:
    names = tuple(unit.all(Order))
    for table in room.tables:
        for chosen in (*((name,) for name in names), *([names] if room.joined else [])):
            text = f"open parcel of {'+'.join(chosen)} at {table}"
            yield Event(
                "open parcel",
                text,
                lambda u, c=chosen, t=table: parcels.open_parcel(u, parcels.OpenParcel(orders=c, table=t)),
            )


def _for_parcels(kind: str, act: Callable[[Memory, str], Any]) -> Callable[[Room, Memory], Iterator[Event]]:
    def make(room: Room, unit: Memory) -> Iterator[Event]:
        for name in unit.all(Parcel):
            yield Event(kind, f"{kind} {name}", lambda u, n=name: act(u, n))

    return make


def _undo(room: Room, unit: Memory) -> Iterator[Event]:
    for line in _lines_of(unit):
        if line.scan is not None:
            yield Event("undo", f"undo at {line.reference}", lambda u, key=line.scan: undoing.undo(u, key))


def _move(room: Room, unit: Memory) -> Iterator[Event]:
    for stay in _stays(unit):
        for slot in unit.all(Slot).values():
            if slot.turns < room.turns:
                text = f"move {stay.code}, turn {stay.turn}, to {slot.code}"
                yield Event("move", text, lambda u, s=stay.id, to=slot.code: stock.move(u, s, stock.Move(to=to)))


def _withdraw(room: Room, unit: Memory) -> Iterator[Event]:
    for stay in _stays(unit):
        yield Event(
            "withdraw",
            f"withdraw {stay.code}, turn {stay.turn}",
            lambda u, s=stay.id: stock.withdraw(u, s, stock.Withdraw(reason="broken")),
        )


def _exchange(room: Room, unit: Memory) -> Iterator[Event]:
    opened = [stay for stay in _stays(unit) if stay.open]
    for stay in opened:
        for other in opened:
            if all(unit.all(Slot)[each.code].turns < room.turns for each in (stay, other)):
                text = f"exchange {stay.code} with {other.code}"
                yield Event("exchange", text, lambda u, s=stay.id, o=other.id: stock.exchange(u, s, o))


def _take_back(room: Room, unit: Memory) -> Iterator[Event]:
    for line in _lines_of(unit):
        for code, (text,) in _cards(unit):
            if line.state is LineState.RELEASED and unit.all(Slot)[code].turns < room.turns:
                words = f"take back {line.reference} by card {code}"
                yield Event("take back", words, lambda u, x=line, t=text: _come_back(u, x, t))


def _come_back(unit: Memory, line: Line, text: str) -> None:
    """A return of this line is expected, arrives and is checked at once."""
    back = returns.expect(unit, returns.Expect(order=line.order, lines=(line.id,)))
    returns.arrive(unit, back.id)
    returns.check(unit, back.id, returns.CheckReturn(line=line.id, condition=Condition.RESELL, text=text))


def _hand_over(room: Room, unit: Memory) -> Iterator[Event]:
    for order in unit.all(Order).values():
        slip = slot_code.slip_text(order.slip)
        yield Event(
            "hand over",
            f"hand over {slip}",
            lambda u, t=slip: hand_over.hand_over(u, hand_over.HandOver(key=u.new_id(), text=t)),
        )


def _lose(room: Room, unit: Memory) -> Iterator[Event]:
    for code in unit.all(Slot):
        yield Event("lose card", f"lose card {code}", lambda u, c=code: stock.lose_card(u, c))


def _counts(unit: Memory) -> tuple[str, ...]:
    return tuple(unit.all(Stocktake))


def _look(room: Room, unit: Memory) -> Iterator[Event]:
    for count in _counts(unit):
        for place, codes in room.looks:
            texts = tuple(looks.LabelReading(slot_code.card_text(code)) for code in codes)
            shown = looks.IncomingLook(f"{count}-{place}", "", texts, place=place)
            yield Event("look", f"look at {place}", lambda u, c=count, s=shown: looks.look(u, c, s))


def _resolve(room: Room, unit: Memory) -> Iterator[Event]:
    for count in _counts(unit):
        for found in stocktakes.state(unit, count).found:
            for how in resolving.ACTS[found.finding.kind]:
                if how == "moved" and not _has_turns(room, unit, found.finding.places[0]):
                    continue
                name, code = found.finding.id, found.finding.code
                proof = slot_code.card_text(code) if code and how in ("put_right", "found_later") else None
                said = resolving.Resolve(how=how, reason="why", text=proof, sure=True)
                text = f"resolve {name}: {how}"
                yield Event("resolve", text, lambda u, c=count, n=name, s=said: resolving.resolve(u, c, n, s))


def _has_turns(room: Room, unit: Memory, place: str) -> bool:
    """Whether every slot of a bin may have another stay."""
    return all(slot.turns < room.turns for slot in unit.all(Slot).values() if slot.bin == place)


def _reopen_finding(room: Room, unit: Memory) -> Iterator[Event]:
    for each in unit.all(Resolved).values():
        name = each.id.partition(".")[2]
        if each.how == "moved" and unit.all(Slot)[name.partition("-")[2]].turns >= room.turns:
            continue
        yield Event("reopen finding", f"reopen {name}", lambda u, c=each.stocktake, n=name: taking_back.undo(u, c, n))


def _close_count(room: Room, unit: Memory) -> Iterator[Event]:
    for count in _counts(unit):
        yield Event("close count", "close the count", lambda u, c=count: stocktake_report.close(u, c))


def _settings(room: Room, unit: Memory) -> Iterator[Event]:
    other = replace(unit.settings, scan_at_bin=not unit.settings.scan_at_bin)
    yield Event("settings", "switch scanning at the bin", lambda u, s=other: u.set_settings(s))


EVENTS: Mapping[str, Callable[[Room, Memory], Iterator[Event]]] = {
    "put away": _put_away,
    "receive": _receive,
    "cancel order": _cancel_order,
    "cancel in time": _cancel_in_time,
    "cancel line": _cancel_line,
    "settle": _settle,
    "settle on": _settle_on,
    "settle doubt": _settle_doubt,
    "short": _for_lines("short", lambda unit, line: orders.short(unit, line, orders.Short())),
    "found": _for_lines("found", orders.found),
    "hold": _for_lines("hold", lambda unit, line: orders.hold(unit, line, orders.NotThis(why="not this"))),
    "revive": _for_lines("revive", orders.revive),
    "open round": _open_round,
    "close round": _close_round,
    "bin": _bin,
    "honest bin": _honest_bin,
    "honest tray": _honest_tray,
    "late": _late,
    "table": _table("table", False),
    "take out": _table("take out", True),
    "slip": _slip,
    "tray": _tray,
    "shelf": _shelf,
    "unread": _unread,
    "open parcel": _open_parcel,
    "close parcel": _for_parcels("close parcel", parcels.close_parcel),
    "close part": _for_parcels("close part", lambda unit, name: parcels.close_parcel(unit, name, partial=True)),
    "set aside": _for_parcels("set aside", parcels.set_aside),
    "reopen": _for_parcels("reopen", parcels.reopen),
    "undo": _undo,
    "move": _move,
    "exchange": _exchange,
    "take back": _take_back,
    "send again": _for_lines("send again", orders.send_again),
    "hand over": _hand_over,
    "withdraw": _withdraw,
    "lose card": _lose,
    "look": _look,
    "resolve": _resolve,
    "reopen finding": _reopen_finding,
    "close count": _close_count,
    "settings": _settings,
}
"""Kind of event → all events of that kind in a state."""


def canonical(room: Room, unit: Memory) -> tuple[Any, ...]:
    """What can still matter of a state, the same for states that differ in ids and history alone."""
    lines = tuple(_lines_of(unit))
    stays = {stay.id: (stay.code, stay.turn) for stay in unit.all(Stay).values()}
    first: dict[str, tuple[str, int]] = {}
    for stay in unit.all(Stay).values():
        first.setdefault(stay.item, stays[stay.id])
    boxes = _parcels(room, unit, lines)
    open_rounds = {each.id for each in unit.all(Round).values() if each.state is RoundState.OPEN}
    return (
        tuple(_card(room, unit, slot, boxes) for slot in unit.all(Slot).values()),
        frozenset((stays[stay.id], stay.state, first[stay.item]) for stay in unit.all(Stay).values()),
        tuple(boxes.get(order.parcel) for order in unit.all(Order).values()),
        tuple(
            (
                line.state,
                frozenset(each.hold for each in line.holds),
                stays.get(line.stay),
                boxes.get(line.parcel),
                _round(room, line, open_rounds),
                (line.title, line.in_file) if room.versions else "",
                _undoable(unit, line) if "undo" in room.does else None,
            )
            for line in lines
        ),
        frozenset(boxes.values()),
        len(open_rounds),
        unit.settings,
        frozenset((first[each.item], each.kind) for each in unit.all(Doubt).values() if each.open),
        _beeps(unit, boxes, open_rounds) if room.beeps else None,
        tuple(_counted(unit, each, stays) for each in unit.all(Stocktake).values()),
    )


UNDER_WAY = (LineState.PICKED, LineState.PACKED)
"""Where a thing was taken out of its bin to says nothing more of it then; only an undo asks for that again."""


def _card(room: Room, unit: Memory, slot: Slot, boxes: dict[str, tuple[Any, ...]]) -> tuple[Any, ...]:
    """A slot by its turns and card, whether its thing is out of its bin or its card noted, and where it was read."""
    seen = slot.seen
    facts = unit.facts(slot.code)
    line = facts.live_line if facts else None
    under_way = line is not None and line.state in UNDER_WAY and "undo" not in room.does
    out = slot.out is not None and not under_way
    noted = slot.card is CardState.ON_ITEM and seen is not None and seen.station is Station.TRAY and seen.accepted
    sight = (seen.station, seen.place, seen.accepted, boxes.get(seen.parcel)) if room.sights and seen else None
    return slot.turns, slot.card, out, noted, sight


def _counted(unit: Memory, count: Stocktake, stays: Mapping[str, Any]) -> tuple[Any, ...]:
    """A count by what was looked at and resolved, what has changed since, and where cards were seen last."""
    resolved = {
        (each.finding, each.how, json.dumps(kept | {"to": stays.get(kept["to"])}))
        for each in unit.find(Resolved, stocktake=count.id)
        for kept in (json.loads(each.undo),)
    }
    return (
        count.state,
        count.report,
        frozenset(unit.all(Look)),
        frozenset(resolved),
        frozenset() if count.report else frozenset(stocktakes.changed(unit, count)),
        tuple(slot.seen for slot in unit.all(Slot).values()),
    )


def _parcels(room: Room, unit: Memory, lines: tuple[Line, ...]) -> dict[str, tuple[Any, ...]]:
    """Parcels by what they are for and what lies in them; where an aside one stood does not matter."""
    kept = {ParcelState.OPEN, ParcelState.ASIDE}
    kept |= {ParcelState.CLOSED, ParcelState.HANDED_OVER} if _reopens(room) else set()
    return {
        each.id: (
            each.state,
            "" if each.state is ParcelState.ASIDE else each.table,
            each.orders,
            tuple(place for place, line in enumerate(lines) if line.parcel == each.id),
        )
        for each in unit.all(Parcel).values()
        if each.state in kept
    }


def _reopens(room: Room) -> bool:
    return bool(room.does & {"reopen", "undo", "hand over"})


def _round(room: Room, line: Line, open_rounds: set[str]) -> str:
    if line.round is None:
        return ""
    if line.round in open_rounds:
        return "open"
    return "over" if "late" in room.does else ""


def _undoable(unit: Memory, line: Line) -> tuple[str, bool] | None:
    scan = unit.get(Scan, line.scan) if line.scan else None
    return (scan.was, '"parcel_state": "closed"' in scan.answer) if scan else None


def _beeps(unit: Memory, boxes: dict[str, tuple[Any, ...]], open_rounds: set[str]) -> frozenset[Any]:
    """The accepted last scan of each spot, as far as it can still answer for a second beep."""
    beeps = set()
    for (station, spot), scan in unit._last_scans.items():
        seen = unit.all(Slot)[scan.code].seen if scan.code else None
        if scan.accepted and seen is not None and seen.accepted and seen.station is station:
            states = tuple(part for part in scan.answer.split(", ") if "_state" in part)
            where = ("open" if spot in open_rounds else "over") if station is Station.BIN else spot
            beeps.add((station, where, scan.code, scan.take_out, scan.line, boxes.get(scan.parcel), states, seen))
    return frozenset(beeps)


def prune(room: Room, unit: Memory) -> Memory:
    """The same state without the history that `canonical` does not see."""
    if not unit.all(Stocktake):
        unit.ledger.clear()
    lines = tuple(_lines_of(unit))
    wanted = {line.scan for line in lines} if "undo" in room.does else set()
    if not room.beeps:
        unit._last_scans.clear()
    wanted |= {scan.key for scan in unit._last_scans.values()}
    kept = {line.round for line in lines}
    _forget(unit, Scan, lambda scan: scan.key not in wanted)
    _forget(unit, Stop, lambda stop: True)
    _forget(unit, Return, lambda each: not each.open)
    _forget(unit, Parcel, lambda each: each.state is ParcelState.DROPPED)
    _forget(unit, Round, lambda each: each.state is RoundState.CLOSED and each.id not in kept)
    return unit


def _forget(unit: Memory, kind: type, useless: Callable[[Any], bool]) -> None:
    for name in [name for name, thing in unit.all(kind).items() if useless(thing)]:
        unit.forget(kind, name)
