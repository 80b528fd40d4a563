"""The past of a section."""

import pytest
from room_in_memory import RoomInMemory

from scanflow.domain.things import Stay
from scanflow.workflow import stock
from scanflow.workflow.ports import Missing
from scanflow.workflow.stock.history import stays_in


def test_every_stay_of_a_section_and_no_other():
    """A stay counts for the section of its slot, ended or not; a move to another section counts there from then on."""
    unit = RoomInMemory().unit
    stock.add_section(unit, stock.AddSection(code="X", name="Mixed", slots_per_bin=2, colour="pink"))
    stock.add_slots(unit, "X", stock.AddSlots(count=3))
    stock.add_section(unit, stock.AddSection(code="Y", name="Other", slots_per_bin=2, colour="blue"))
    stock.add_slots(unit, "Y", stock.AddSlots(count=3))
    first = stock.put_away(unit, stock.PutAway(title="Saddle", section="X"))
    second = stock.put_away(unit, stock.PutAway(title="Crank", section="X"))
    moved = stock.move(unit, first.id, stock.Move(to="Y001"))
    stock.withdraw(unit, second.id, stock.Withdraw(reason="broken"))
    assert [first.id, second.id] == [stay.id for stay in stays_in(unit, "X")]
    assert (unit.get(Stay, moved.id),) == stays_in(unit, "Y")
    assert [False, False] == [stay.open for stay in stays_in(unit, "X")]


def test_an_unknown_section():
    """There is no past of a section that does not exist."""
    with pytest.raises(Missing):
        stays_in(RoomInMemory().unit, "Q")
