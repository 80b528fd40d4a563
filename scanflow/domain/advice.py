"""What to say to the person who scanned: what happened, then what to do, in words of the trade."""

from __future__ import annotations

from collections.abc import Sequence

from scanflow.domain.life import Hold, LineState
from scanflow.domain.orders.titles import differ
from scanflow.domain.things import Station
from scanflow.domain.verdict import Reason, Scene
from scanflow.domain.whereabouts import PlaceKind, Whereabouts, read_words, words
from scanflow.domain.words import AT_THE_DOOR, REFUSALS

TOO_OLD = "This scan waited, and more was told of {code} since. Scan it again."
"""Beside a scan that waited for the network while its card was read elsewhere, or its thing was missed or left."""

ONCE_MORE = "There is no check on this card: scan it once more to be sure."
"""Beside the first scan of an adopted card."""


def refusal(reason: Reason, scene: Scene) -> str:
    """The sentence beside a refusal."""
    said = REFUSALS[reason]
    return (said.late if scene.late and said.late else said.sentence).format(
        code=scene.slot.code if scene.slot else "",
        home=scene.slot.bin if scene.slot else "",
        order=scene.order.number if scene.order else "",
        back=_back(scene),
        since=_since(scene),
        basket=_basket(scene),
        other_basket=_other_basket(scene),
        held=_held(scene),
        not_picked=_not_picked(scene),
        not_on_round=_not_on_round(scene),
        packed_elsewhere=_packed_elsewhere(scene),
        where=words(scene.where) if scene.where else "in its bin",
        belongs=_belongs(scene),
        card_alone=_card_alone(scene),
    )


def _card_alone(scene: Scene) -> str:
    """What to do with a card whose thing is stored no longer: the thing may lie beside it, not in its closed parcel."""
    line = scene.line
    if line is None or line.state is not LineState.RELEASED or not line.has(Hold.MISPLACED) or scene.order is None:
        return "Bring the card to the tray."
    return (
        f"If its thing is here too, it is not in the closed parcel of {scene.order.number}: open that parcel again. "
        "If only the card is here, bring it to the tray."
    )


def _back(scene: Scene) -> str:
    home = scene.slot.bin if scene.slot else ""
    stands = scene.station is Station.BIN and not scene.late and not (scene.where is not None and scene.where.out)
    return f"Leave it in {home}." if stands else f"Put it back in {home}."


def _not_on_round(scene: Scene) -> str:
    code = scene.slot.code if scene.slot else ""
    if scene.line_state is LineState.SHORT:
        return f"{code} was missing. {_misses(scene)}"
    return f"{code} is ordered, but not on this round. {_back(scene)}"


def _misses(scene: Scene) -> str:
    return f"Order {scene.order.number if scene.order else ''} still needs it: bring it to the table."


def _belongs(scene: Scene) -> str:
    if scene.line_state is LineState.SHORT:
        return _misses(scene)
    if scene.counts_as_packed:
        return f"It counts as packed.{_packed_elsewhere(scene)}"
    home = scene.slot.bin if scene.slot else ""
    return f"It belongs in {home}."


def _packed_elsewhere(scene: Scene) -> str:
    """What to do about a packed thing whose card is read away from its parcel."""
    here = scene.parcel is not None and scene.line is not None and scene.line.parcel == scene.parcel.id
    if not scene.counts_as_packed or (scene.station is Station.TABLE and here):
        return ""
    order = scene.order.number if scene.order else ""
    return f" The parcel of {order} is held until you scan this card there, or take the thing out."


def _since(scene: Scene) -> str:
    return f" since {scene.since}" if scene.since else ""


def _basket(scene: Scene) -> str:
    return f", in basket {scene.line.basket}" if scene.line is not None and scene.line.basket else ""


def _other_basket(scene: Scene) -> str:
    if scene.counts_as_packed:
        return f"It counts as packed.{_packed_elsewhere(scene)}"
    if scene.where is not None and scene.where.place is PlaceKind.BASKET and scene.where.basket:
        return f"Put it in basket {scene.where.basket}."
    return "Lay it aside for that order."


def _held(scene: Scene) -> str:
    if scene.line is not None and scene.line.has(Hold.CANCELLED_IN_BOX):
        return "It was cancelled and must come out of the parcel. Press “Take out”, then scan it."
    order, why = (scene.order.number if scene.order else "", scene.line.why if scene.line else "")
    misplaced = scene.line is not None and scene.line.hold is Hold.MISPLACED
    todo = _packed_elsewhere(scene).strip() if misplaced else "Settle it on the orders page."
    held = f"has been held{_since(scene)}" if scene.since else "is held"
    return f"Order {order} {held}: {why} {todo}".rstrip()


def _not_picked(scene: Scene) -> str:
    code = scene.slot.code if scene.slot else ""
    if scene.take_out:
        return f"{code} is not in the parcel."
    return f"{code} was not picked on a round. Scan it at its bin first."


def order_says(said: str, ours: str) -> str:
    """The buyer's title, for the eye to compare, where it is not ours."""
    return f"The order says “{said}”." if differ(said, ours) else ""


def packing_says(note: str) -> str:
    """The packing note of a thing as a sentence; empty where there is none."""
    said = " ".join(note.split())
    return f"Packing: {said}{'' if said[-1] in '.!?…' else '.'}" if said else ""


def acceptance(scene: Scene, missing: Sequence[str], released: Sequence[str]) -> str:
    """The words beside a yes, with the thing's packing note. `missing` are the slot codes still to be packed,
    `released` those just freed.
    """
    done = _done(scene, missing, released)
    leaves = scene.station in (Station.BIN, Station.TABLE) and not scene.take_out
    if not leaves or scene.line is None or scene.item is None:
        return done
    beside = (order_says(scene.line.title, scene.item.title), packing_says(scene.item.packing))
    return " ".join(filter(None, (done, *beside)))


def _done(scene: Scene, missing: Sequence[str], released: Sequence[str]) -> str:
    code = scene.slot.code if scene.slot else ""
    match scene.station:
        case Station.BIN:
            basket = scene.line.basket if scene.line else None
            return f"Put it in basket {basket}." if basket else "Take it to the table."
        case Station.TRAY if scene.counts_as_packed:
            order = scene.order.number if scene.order else ""
            return f"{code} counts as packed for {order}. The card counts as back once that parcel closes."
        case Station.TRAY:
            return f"Card {code} is back in the tray. Its slot can be used again."
        case Station.SHELF:
            if scene.counts_as_packed:
                return f"{code} stands where it belongs, but it counts as packed.{_packed_elsewhere(scene)}"
            return f"{code} stands where it belongs."
    if scene.take_out:
        return (
            f"{code} is out of the parcel. Put it back in {scene.slot.bin if scene.slot else ''} if it is not wanted."
        )
    if released:
        return f"Parcel closed. Put back in the tray: {', '.join(released)}."
    if missing:
        return f"Packed. Still to pack: {', '.join(missing)}."
    return f"Packed. {CLOSE_BY_SLIP}" if scene.by_slip else "Packed. Close the parcel when it is ready."


CLOSE_BY_SLIP = "Scan the slip on the parcel."


BUYER_COMES = "Its buyer comes for it, so no carrier takes it. When it is collected, say so on its page."
"""Why a parcel that is collected does not leave with a carrier."""


def must_stay(reason: Reason, numbers: str, why: str) -> str:
    """`numbers` are those of the parcel's orders, `why` the words of its holds."""
    sentence = AT_THE_DOOR[reason].sentence.format(why=why)
    return f"{numbers}: {sentence}" if numbers else sentence


def handed_over(numbers: str, things: int, since: str = "") -> str:
    """The sentence when a parcel leaves; `since`: it left before, then."""
    if since:
        return f"{numbers}: handed over before, {since}."
    return f"{numbers}: handed over, {things} {'thing' if things == 1 else 'things'}."


def at_stop(where: Whereabouts, basket: int | None, round_id: str, *, scan: bool = True) -> str:
    """What to know at a stop whose thing is not in its own bin; empty where it is. On paper nobody can `scan`."""
    if where.read is not None:
        own = f" Its own bin is {where.home}." if where.bin not in (None, where.home) else ""
        return f"{_capital(read_words(where))}. Look there first.{own}"
    if not where.out:
        return ""
    earlier = " of an earlier round" if where.place is PlaceKind.BASKET and where.round != round_id else ""
    into = f"put it into basket {basket}" if basket else "take it along"
    return f"{_capital(words(where))}{earlier}: {'scan it there, then ' if scan else ''}{into}."


def put_right(where: Whereabouts, *, thing: bool) -> str:
    """What to do about a thing that is out of its bin, or a card that is away from the tray (`thing` false)."""
    off_it = where.read is not None and where.read.station is Station.TRAY
    if not thing:
        return "Look for it, and scan it into the tray." if off_it else "Bring it to the tray, and scan it there."
    if off_it:
        return "Put the card back on it."
    if where.order is None:
        return f"Put it back in {where.home}."
    if where.missing:
        return f"Order {where.order} still needs it: bring it to the table."
    return f"Order {where.order} wants it: bring it to the table, or pick it on a round."


def _capital(sentence: str) -> str:
    return sentence[:1].upper() + sentence[1:]
