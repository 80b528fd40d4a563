"""Yes or refused: for each station one ordered list of guards; the first that fits gives the reason."""

from __future__ import annotations

from collections.abc import Callable, Iterator
from dataclasses import dataclass
from enum import StrEnum

from scanflow.domain.derive import SlotState, slot_state
from scanflow.domain.life import CardState, Hold, LineState, ParcelState, RoundState
from scanflow.domain.things import Item, Line, Order, Parcel, Round, Slot, Station, Stay
from scanflow.domain.whereabouts import Whereabouts


class Reason(StrEnum):
    """Why a scan is refused."""

    UNREADABLE = "unreadable"
    MANY_CODES = "many_codes"
    BAD_CHECK = "bad_check"
    UNKNOWN_CODE = "unknown_code"
    RETIRED = "retired"
    CLOSED = "closed"
    SLOT_FREE = "slot_free"
    NOT_ORDERED = "not_ordered"
    CANCELLED = "cancelled"
    HELD = "held"
    NOT_ON_ROUND = "not_on_round"
    ALREADY_PICKED = "already_picked"
    ALREADY_PACKED = "already_packed"
    NO_PARCEL = "no_parcel"
    ALREADY_RELEASED = "already_released"
    OTHER_ORDER = "other_order"
    NOT_PICKED = "not_picked"
    NOT_RELEASED = "not_released"
    WRONG_BIN = "wrong_bin"
    NOT_CLOSED = "not_closed"


@dataclass(frozen=True, slots=True)
class Scene:
    """All that a station knows when a card is held before it.

    `unread` is why there is no card at all. `stay` is the slot's open stay or else its last one; `line` the live
    line of that stay or else its last one; `order` the order of `line`. `where` is where card and thing are by all
    that is known before this reading. `parcel` is the one open at the table.
    `late` marks a scan that waited for the network, and `since` says from when on it is refused, in the shop's time,
    where that is known; `by_bin` is false in a shop that does not scan at the bin, `by_slip` true in one whose
    boxes close by their slips.
    """

    station: Station
    unread: Reason | None = None
    slot: Slot | None = None
    stay: Stay | None = None
    item: Item | None = None
    line: Line | None = None
    order: Order | None = None
    where: Whereabouts | None = None
    round: Round | None = None
    parcel: Parcel | None = None
    bin: str | None = None
    take_out: bool = False
    late: bool = False
    since: str = ""
    by_bin: bool = True
    by_slip: bool = False

    @property
    def taken(self) -> bool:
        return self.stay is not None and self.stay.open

    @property
    def live(self) -> bool:
        return self.taken and self.line is not None and self.line.live

    @property
    def line_state(self) -> LineState | None:
        """The state of the live line, None when no live line wants the thing."""
        return self.line.state if self.line is not None and self.live else None

    @property
    def counts_as_packed(self) -> bool:
        """Whether the thing counts as packed in a parcel that is not closed yet."""
        return self.line_state is LineState.PACKED

    @property
    def comes_home(self) -> bool:
        """Whether a packed thing whose card was read elsewhere is shown at the table of its own open parcel."""
        line, parcel = self.line, self.parcel
        packed_here = self.counts_as_packed and line is not None and parcel is not None and line.parcel == parcel.id
        return packed_here and not self.take_out and line is not None and line.has(Hold.MISPLACED)

    @property
    def on_this_round(self) -> bool:
        return self.live and self.line is not None and self.round is not None and self.line.round == self.round.id


Guard = tuple[Reason, Callable[[Scene], bool]]


def _unread(reason: Reason) -> Guard:
    return reason, lambda scene: scene.unread is reason


def _retired(scene: Scene) -> bool:
    """A lost card's number is retired; the tray is where it is taken back."""
    if scene.slot is None or scene.station is Station.TRAY:
        return False
    return slot_state(scene.slot, scene.stay) is SlotState.RETIRED


def _round_over(scene: Scene) -> bool:
    """A pick that waited for the network counts while its line still waits and stands on no other round."""
    if scene.round is None or scene.round.state is RoundState.OPEN:
        return False
    return not (scene.late and scene.on_this_round and scene.line_state is LineState.WAITING)


def _released(scene: Scene) -> bool:
    """Its last item was shipped and its card was not seen since."""
    shipped = scene.line is not None and scene.line.state is LineState.RELEASED
    return not scene.taken and shipped and scene.slot is not None and scene.slot.card is CardState.DUE


def _cancelled(scene: Scene) -> bool:
    return scene.taken and scene.line is not None and scene.line.state is LineState.CANCELLED


def _not_ordered(scene: Scene) -> bool:
    return not scene.live and not _cancelled(scene)


def _held(scene: Scene) -> bool:
    held = scene.live and scene.line is not None and bool(scene.line.holds)
    return held and not scene.take_out and not scene.comes_home


def _packed_already(scene: Scene) -> bool:
    return scene.counts_as_packed and not scene.take_out and not scene.comes_home


def _other_order(scene: Scene) -> bool:
    return (
        scene.live
        and scene.order is not None
        and scene.parcel is not None
        and scene.order.id not in scene.parcel.orders
    )


def _not_packable(scene: Scene) -> bool:
    """What is known to be out of its bin, or was missed, is taken here without a scan at its bin."""
    if scene.take_out:
        return not scene.counts_as_packed
    found = scene.line_state in (LineState.PICKED, LineState.PACKED, LineState.SHORT)
    return scene.by_bin and not found and not (scene.where is not None and scene.where.out)


SLOT_FREE: Guard = (Reason.SLOT_FREE, lambda scene: not scene.taken)
NOT_ORDERED: Guard = (Reason.NOT_ORDERED, _not_ordered)
CANCELLED: Guard = (Reason.CANCELLED, _cancelled)
HELD: Guard = (Reason.HELD, _held)

ALL: tuple[Guard, ...] = (
    _unread(Reason.UNREADABLE),
    _unread(Reason.MANY_CODES),
    _unread(Reason.BAD_CHECK),
    _unread(Reason.UNKNOWN_CODE),
    (Reason.RETIRED, _retired),
)

GUARDS: dict[Station, tuple[Guard, ...]] = {
    Station.BIN: (
        (Reason.CLOSED, _round_over),
        SLOT_FREE,
        NOT_ORDERED,
        CANCELLED,
        HELD,
        (Reason.NOT_ON_ROUND, lambda scene: not scene.on_this_round),
        (Reason.ALREADY_PICKED, lambda scene: scene.line_state is LineState.PICKED),
        (Reason.ALREADY_PACKED, lambda scene: scene.line_state is LineState.PACKED),
    ),
    Station.TABLE: (
        (Reason.NO_PARCEL, lambda scene: scene.parcel is None),
        (Reason.ALREADY_RELEASED, _released),
        SLOT_FREE,
        NOT_ORDERED,
        CANCELLED,
        (Reason.OTHER_ORDER, _other_order),
        HELD,
        (Reason.ALREADY_PACKED, _packed_already),
        (Reason.NOT_PICKED, _not_packable),
    ),
    Station.TRAY: ((Reason.NOT_RELEASED, lambda scene: scene.taken and not scene.counts_as_packed),),
    Station.SHELF: (
        SLOT_FREE,
        (Reason.WRONG_BIN, lambda scene: scene.slot is not None and scene.bin != scene.slot.bin),
    ),
}


@dataclass(frozen=True, slots=True)
class Leaving:
    """What a slip or a label names before a parcel is handed over: the lines are those whose things are in it.

    `known` is false where nothing of the shop bears that text; an order's slip is known before the order has a parcel.
    `wrong_way`: it is given to a carrier, and its buyer comes for it.
    """

    known: bool
    parcel: Parcel | None = None
    lines: tuple[Line, ...] = ()
    wrong_way: bool = False


def _not_closed(leaving: Leaving) -> bool:
    """It is open, set aside or dropped, or all that was in it has come back."""
    return leaving.parcel is None or leaving.parcel.state is not ParcelState.CLOSED or not leaving.lines


HAND_OVER: tuple[tuple[Reason, Callable[[Leaving], bool]], ...] = (
    (Reason.UNKNOWN_CODE, lambda leaving: not leaving.known),
    (Reason.NOT_CLOSED, _not_closed),
    (Reason.CANCELLED, lambda leaving: any(line.has(Hold.CANCELLED_IN_BOX) for line in leaving.lines)),
    (Reason.HELD, lambda leaving: leaving.wrong_way or any(line.holds for line in leaving.lines)),
)
"""What is asked before a parcel leaves the house, in order."""


def may_leave(leaving: Leaving) -> Reason | None:
    """The reason for which a parcel must not leave, or None."""
    return next((reason for reason, fits in HAND_OVER if fits(leaving)), None)


def judge(scene: Scene) -> Reason | None:
    """The reason to refuse, or None: accepted."""
    return next((reason for reason, fits in (*ALL, *GUARDS[scene.station]) if fits(scene)), None)


def effects(scene: Scene) -> Iterator[tuple[str, str]]:
    """The (table, event) steps of an accepted scan, in order; the caller takes them all or none."""
    if scene.station is Station.TRAY:
        if not scene.taken:
            yield "card", "see in tray"
        return
    yield "card", "see on item"
    if scene.station is Station.TABLE and scene.counts_as_packed:
        yield from _taken_out(scene)
    else:
        yield from (("line", event) for event in STEPS.get((scene.station, scene.line_state), ()))


STEPS: dict[tuple[Station, LineState | None], tuple[str, ...]] = {
    (Station.BIN, LineState.WAITING): ("pick",),
    (Station.BIN, LineState.SHORT): ("find", "pick"),
    (Station.TABLE, LineState.WAITING): ("pick", "pack"),
    (Station.TABLE, LineState.PICKED): ("pack",),
    (Station.TABLE, LineState.SHORT): ("find", "pick", "pack"),
    (Station.SHELF, LineState.PICKED): ("put back",),
    (Station.SHELF, LineState.SHORT): ("find",),
}
"""What an accepted card does to the line that wants its thing."""


def _taken_out(scene: Scene) -> Iterator[tuple[str, str]]:
    """What was cancelled in the box is cancelled once it is out; without a take-out a packed thing stays packed."""
    if scene.take_out:
        yield "line", "take out"
    if scene.take_out and scene.line is not None and scene.line.has(Hold.CANCELLED_IN_BOX):
        yield "line", "cancel"
