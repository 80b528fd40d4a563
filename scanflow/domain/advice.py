"""What to say to the person who scanned: what happened, then what to do, in words of the trade."""

from __future__ import annotations

from collections.abc import Sequence

from scanflow.domain.life import Hold, LineState
from scanflow.domain.things import Station
from scanflow.domain.verdict import Look, Reason

REFUSALS: dict[Reason, str] = {
    Reason.UNREADABLE: "No card was read. Hold it flat and in the light, or type its text.",
    Reason.MANY_CODES: "More than one card is in view. Show one at a time.",
    Reason.BAD_CHECK: "The check digit is wrong or missing. Scan again, or type all of the card's text.",
    Reason.UNKNOWN_CODE: "This is no card of the room.",
    Reason.RETIRED: "Card {code} was given up as lost. Bring it to the tray and scan it there.",
    Reason.CLOSED: "This round is over. Leave the thing in its bin.",
    Reason.SLOT_FREE: "Nothing is stored in {code}{since}. Bring the card to the tray.",
    Reason.NOT_ORDERED: "Nobody ordered {code}. {back}",
    Reason.CANCELLED: "Order {order} no longer wants {code}{since}. {back}",
    Reason.HELD: "{held}",
    Reason.NOT_ON_ROUND: "{code} is ordered, but not on this round. Leave it in {home}.",
    Reason.ALREADY_PICKED: "{code} is picked already{basket}{since}.",
    Reason.ALREADY_PACKED: "{code} is packed already{since}, in the parcel of {order}.",
    Reason.NO_PARCEL: "No parcel is open at this table. Choose an order or scan its slip first.",
    Reason.ALREADY_RELEASED: "The thing of {code} left with order {order}. Bring the card to the tray.",
    Reason.OTHER_ORDER: "Another order's. This is {code}, wanted by {order}. {other_basket}",
    Reason.NOT_PICKED: "{not_picked}",
    Reason.NOT_RELEASED: "The item of {code} is still in stock. Put the card back on it in {home}.",
    Reason.WRONG_BIN: "{code} does not belong here. It belongs in {home}.",
}

OUT_OF_ITS_BIN: dict[Reason, str] = {
    Reason.CLOSED: "This round is over{since}. {back}",
    Reason.NOT_ON_ROUND: "{code} is ordered, but not on this round. {back}",
}
"""Of a pick that waited for the network: the thing was taken along."""

ONCE_MORE = "There is no check on this card: scan it once more to be sure."
"""Beside the first look at an adopted card."""


def refusal(reason: Reason, look: Look) -> str:
    """The sentence beside a refusal."""
    words = OUT_OF_ITS_BIN.get(reason, REFUSALS[reason]) if look.late else REFUSALS[reason]
    return words.format(
        code=look.slot.code if look.slot else "",
        home=look.slot.bin if look.slot else "",
        order=look.order.number if look.order else "",
        back=_back(look),
        since=_since(look),
        basket=_basket(look),
        other_basket=_other_basket(look),
        held=_held(look),
        not_picked=_not_picked(look),
    )


def _back(look: Look) -> str:
    home = look.slot.bin if look.slot else ""
    return f"Leave it in {home}." if look.station is Station.BIN and not look.late else f"Put it back in {home}."


def _since(look: Look) -> str:
    return f" since {look.since}" if look.since else ""


def _basket(look: Look) -> str:
    return f", in basket {look.line.basket}" if look.line is not None and look.line.basket else ""


def _other_basket(look: Look) -> str:
    if look.line is not None and look.line.basket:
        return f"Put it in basket {look.line.basket}."
    return "Lay it aside for that order."


def _held(look: Look) -> str:
    if look.line is not None and look.line.hold is Hold.CANCELLED_IN_BOX:
        return "It was cancelled and must come out of the parcel. Press “Take out”, then scan it."
    order, why = (look.order.number if look.order else "", look.line.why if look.line else "")
    return f"Order {order} is held{_since(look)}: {why} Settle it on the orders page."


def _not_picked(look: Look) -> str:
    code = look.slot.code if look.slot else ""
    if look.take_out:
        return f"{code} is not in the parcel."
    if look.line_state is LineState.SHORT:
        return f"{code} was reported missing. Say that it was found, then scan it at its bin."
    return f"{code} was not picked on a round. Scan it at its bin first."


def acceptance(look: Look, missing: Sequence[str], released: Sequence[str]) -> str:
    """The sentence beside a yes. `missing` are the slot codes still to be packed, `released` those just freed."""
    code = look.slot.code if look.slot else ""
    match look.station:
        case Station.BIN:
            basket = look.line.basket if look.line else None
            return f"Put it in basket {basket}." if basket else "Take it to the table."
        case Station.TRAY:
            return f"Card {code} is back in the tray. Its slot can be used again."
        case Station.SHELF:
            if look.line_state is LineState.PACKED:
                return f"{code} stands where it belongs, but it counts as packed. Look into its parcel."
            return f"{code} stands where it belongs."
    if look.take_out:
        return f"{code} is out of the parcel. Put it back in {look.slot.bin if look.slot else ''} if it is not wanted."
    if released:
        return f"Parcel closed. Put back in the tray: {', '.join(released)}."
    return f"Packed. Still missing: {', '.join(missing)}." if missing else "Packed. Close the parcel when it is ready."
