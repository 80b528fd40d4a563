"""Yes or refused: for each station one ordered list of guards; the first that fits gives the reason."""

from __future__ import annotations

from collections.abc import Callable, Iterator
from dataclasses import dataclass
from enum import StrEnum

from scanflow.domain.derive import SlotState, slot_state
from scanflow.domain.life import CardState, Hold, LineState, RoundState
from scanflow.domain.things import Item, Line, Order, Parcel, Round, Slot, Station, Stay


class Reason(StrEnum):
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


@dataclass(frozen=True, slots=True)
class Look:
    """All that a station knows when a card is held before it.

    `unread` is why there is no card at all. `stay` is the slot's open stay or else its last one; `line` the live
    line of that stay or else its last one; `order` the order of `line`. `parcel` is the one open at the table.
    `late` marks a scan that waited for the network, and `since` says from when on it is refused, in the shop's time,
    where that is known; `by_bin` is false in a shop that does not scan at the bin.
    """

    station: Station
    unread: Reason | None = None
    slot: Slot | None = None
    stay: Stay | None = None
    item: Item | None = None
    line: Line | None = None
    order: Order | None = None
    round: Round | None = None
    parcel: Parcel | None = None
    bin: str | None = None
    take_out: bool = False
    late: bool = False
    since: str = ""
    by_bin: bool = True

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
    def on_this_round(self) -> bool:
        return self.live and self.line is not None and self.round is not None and self.line.round == self.round.id


Guard = tuple[Reason, Callable[[Look], bool]]


def _unread(reason: Reason) -> Guard:
    return reason, lambda look: look.unread is reason


def _retired(look: Look) -> bool:
    """A lost card's number is retired; the tray is where it is taken back."""
    if look.slot is None or look.station is Station.TRAY:
        return False
    return slot_state(look.slot, look.stay) is SlotState.RETIRED


def _round_over(look: Look) -> bool:
    """A pick that waited for the network counts while its line still waits and stands on no other round."""
    if look.round is None or look.round.state is RoundState.OPEN:
        return False
    return not (look.late and look.on_this_round and look.line_state is LineState.WAITING)


def _released(look: Look) -> bool:
    """Its last item was shipped and its card was not seen since."""
    shipped = look.line is not None and look.line.state is LineState.RELEASED
    return not look.taken and shipped and look.slot is not None and look.slot.card is CardState.DUE


def _cancelled(look: Look) -> bool:
    return look.taken and look.line is not None and look.line.state is LineState.CANCELLED


def _not_ordered(look: Look) -> bool:
    return not look.live and not _cancelled(look)


def _held(look: Look) -> bool:
    return look.live and look.line is not None and look.line.hold is not None and not look.take_out


def _other_order(look: Look) -> bool:
    return look.live and look.order is not None and look.parcel is not None and look.order.id not in look.parcel.orders


def _not_packable(look: Look) -> bool:
    if look.take_out:
        return look.line_state is not LineState.PACKED
    return look.by_bin and look.line_state is not LineState.PICKED


SLOT_FREE: Guard = (Reason.SLOT_FREE, lambda look: not look.taken)
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
        (Reason.NOT_ON_ROUND, lambda look: not look.on_this_round),
        (Reason.ALREADY_PICKED, lambda look: look.line_state is LineState.PICKED),
        (Reason.ALREADY_PACKED, lambda look: look.line_state is LineState.PACKED),
    ),
    Station.TABLE: (
        (Reason.NO_PARCEL, lambda look: look.parcel is None),
        (Reason.ALREADY_RELEASED, _released),
        SLOT_FREE,
        NOT_ORDERED,
        CANCELLED,
        (Reason.OTHER_ORDER, _other_order),
        HELD,
        (Reason.ALREADY_PACKED, lambda look: look.line_state is LineState.PACKED and not look.take_out),
        (Reason.NOT_PICKED, _not_packable),
    ),
    Station.TRAY: ((Reason.NOT_RELEASED, lambda look: look.taken),),
    Station.SHELF: (
        SLOT_FREE,
        (Reason.WRONG_BIN, lambda look: look.slot is not None and look.bin != look.slot.bin),
    ),
}


def judge(look: Look) -> Reason | None:
    """The reason to refuse, or None: accepted."""
    return next((reason for reason, fits in (*ALL, *GUARDS[look.station]) if fits(look)), None)


def effects(look: Look) -> Iterator[tuple[str, str]]:
    """The (table, event) steps of an accepted look, in order; the caller takes them all or none."""
    if look.station is Station.TRAY:
        yield "card", "see in tray"
        return
    yield "card", "see on item"
    state = look.line_state
    match look.station, state:
        case Station.BIN, LineState.SHORT:
            yield from (("line", "find"), ("line", "pick"))
        case Station.BIN, _:
            yield "line", "pick"
        case Station.TABLE, LineState.PACKED:
            yield "line", "take out"
            yield from _cancel_in_box(look)
        case Station.TABLE, LineState.PICKED:
            yield "line", "pack"
        case Station.TABLE, LineState.WAITING:
            yield from (("line", "pick"), ("line", "pack"))
        case Station.TABLE, _:
            yield from (("line", "find"), ("line", "pick"), ("line", "pack"))
        case Station.SHELF, LineState.PICKED:
            yield "line", "put back"


def _cancel_in_box(look: Look) -> Iterator[tuple[str, str]]:
    """What was cancelled in the box is cancelled once it is out."""
    if look.line is not None and look.line.hold is Hold.CANCELLED_IN_BOX:
        yield "line", "cancel"
