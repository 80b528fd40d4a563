"""What left and came back is put away again."""

from __future__ import annotations

from scanflow.domain import events
from scanflow.domain.life import Hold
from scanflow.domain.things import Line, Parcel, Stay
from scanflow.workflow import parcels
from scanflow.workflow.fields import CardText, Command
from scanflow.workflow.ports import Refused, Unit, must
from scanflow.workflow.stock import begin, in_hand


class TakeBack(Command):
    text: CardText


def take_back(unit: Unit, line_id: str, said: TakeBack) -> Stay:
    """By the card in hand: the item's next stay begins in that card's slot.

    Refused: `not_left` while its parcel can be opened again, `taken`.
    """
    line = must(unit, Line, line_id)
    returned = line.after("return").freed((Hold.MISPLACED,))
    if parcels.can_reopen(unit, must(unit, Parcel, line.parcel or "")):
        raise Refused("not_left", "Its parcel is still here. Open it again, and take the thing out with a scan.")
    stay = begin(unit, in_hand(unit, said.text), must(unit, Stay, line.stay or "").item)
    unit.put(returned)
    unit.record(events.Returned(line=line.id, stay=stay.id, code=stay.code, turn=stay.turn))
    return stay
