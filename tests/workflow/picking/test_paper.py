"""A round walked on paper is entered afterwards."""

from __future__ import annotations

import pytest
from memory import Memory

from labels import slot_code
from scanflow.domain.life import LineState
from scanflow.domain.orders.incoming import IncomingLine, IncomingOrder
from scanflow.domain.things import Line, Order, Round, Stay
from scanflow.workflow import orders, stock
from scanflow.workflow.answers import Answer
from scanflow.workflow.orders import receiving
from scanflow.workflow.picking import paper, rounds
from scanflow.workflow.ports import Invalid

LATER = "2026-03-02T18:00:00+00:00"


class Shop:
    """Three things of one order, on a round."""

    def __init__(self) -> None:
        self.unit = Memory()
        stock.add_section(self.unit, stock.AddSection(code="D", name="Derailleurs", slots_per_bin=4, colour="yellow"))
        stock.add_slots(self.unit, "D", stock.AddSlots(count=9))
        self.stays = [stock.put_away(self.unit, stock.PutAway(title=f"Thing {n}", section="D")) for n in range(3)]
        lines = tuple(IncomingLine(slot_code.reference(each.code, each.turn)) for each in self.stays)
        self.order: Order = receiving.receive(self.unit, IncomingOrder("1001", "", None, None, lines))[0]
        self.round: Round = rounds.open_round(self.unit, rounds.OpenRound())[0]
        self.lines = self.unit.find(Line, order=self.order.id)

    def enter(self, place: int, written: str, form: str = "form") -> Answer:
        return paper.enter(self.unit, self.round.id, self.lines[place].id, written, form, LATER)

    def state(self, place: int) -> LineState:
        line = self.unit.get(Line, self.lines[place].id)
        assert line is not None
        return line.state


def digit(stay: Stay) -> str:
    return slot_code.calc_check_digit(stay.code)


def test_the_digit_of_its_card_picks_a_stop() -> None:
    """With the slot code that the sheet shows it is the card's text, typed; the ledger says so, and that it is late."""
    shop = Shop()
    answer = shop.enter(0, digit(shop.stays[0]))
    assert ("accepted", True, "picked") == (answer["verdict"], answer["changed"], answer["line_state"])
    data = shop.unit.ledger[-1].data()
    told = {"via": "typed", "text": [slot_code.card_text("D001")], "client_at": LATER, "station": "bin"}
    assert told == {name: data[name] for name in told}


@pytest.mark.parametrize("wrong", range(1, 10))
def test_any_other_digit_is_refused(wrong: int) -> None:
    """Nothing is picked by the wrong one, so not by any card that differs in one figure."""
    shop = Shop()
    other = str((int(digit(shop.stays[0])) + wrong) % 10)
    answer = shop.enter(0, other)
    assert ("refused", "bad_check", LineState.WAITING) == (answer["verdict"], answer["reason"], shop.state(0))


def test_a_neighbour_s_digit_is_refused() -> None:
    """Whoever took the thing beside it wrote that card's digit."""
    shop = Shop()
    assert "refused" == shop.enter(0, digit(shop.stays[1]))["verdict"]
    assert [LineState.WAITING] * 3 == [shop.state(place) for place in range(3)]


@pytest.mark.parametrize("written", ["STP000012", slot_code.stop_text(1), slot_code.stop_text(700), "x", "D001", ""])
def test_nothing_that_the_sheet_says_picks(written: str) -> None:
    """Neither a stop's own number nor the slot code that is printed there."""
    shop = Shop()
    assert "refused" == shop.enter(0, written)["verdict"]
    assert LineState.WAITING is shop.state(0)


def test_the_card_s_whole_text_will_do() -> None:
    """For an adopted card that bears another text, or a card that was written down whole."""
    shop = Shop()
    assert "accepted" == shop.enter(1, slot_code.card_text("D002").lower())["verdict"]
    assert LineState.PICKED is shop.state(1)


def test_another_stop_s_card_in_its_line_picks_that_one() -> None:
    """A whole text is judged as it stands: it is the card of another stop of the round."""
    shop = Shop()
    assert shop.lines[2].id == shop.enter(0, slot_code.card_text("D003"))["line"]
    assert [LineState.WAITING, LineState.PICKED] == [shop.state(0), shop.state(2)]


def test_a_form_sent_twice_counts_once() -> None:
    """The same entry of the same page is a replay; of another page it is a second scan, accepted without a change."""
    shop = Shop()
    first = shop.enter(0, digit(shop.stays[0]))
    assert first | {"replayed": True} == shop.enter(0, digit(shop.stays[0]))
    assert False is shop.enter(0, digit(shop.stays[0]), "another")["changed"]


def test_it_may_come_after_the_round_was_ended() -> None:
    """What still waits is taken late; what was cancelled meanwhile, or is on another round now, is refused."""
    shop = Shop()
    rounds.close_round(shop.unit, shop.round.id)
    assert "accepted" == shop.enter(0, digit(shop.stays[0]))["verdict"]
    orders.cancel(shop.unit, shop.order.id, orders.Cancel(line=shop.lines[1].id))
    assert "refused" == shop.enter(1, digit(shop.stays[1]))["verdict"]
    rounds.open_round(shop.unit, rounds.OpenRound())
    assert "refused" == shop.enter(2, digit(shop.stays[2]))["verdict"]


def test_only_stops_of_the_round_are_entered() -> None:
    """A line of another round, or one that was unbound, has no line on this sheet."""
    shop = Shop()
    stay = stock.put_away(shop.unit, stock.PutAway(title="Later", section="D"))
    line = IncomingLine(slot_code.reference(stay.code, stay.turn))
    order = receiving.receive(shop.unit, IncomingOrder("1002", "", None, None, (line,)))[0]
    (later,) = shop.unit.find(Line, order=order.id)
    with pytest.raises(Invalid):
        paper.enter(shop.unit, shop.round.id, later.id, digit(stay), "form", LATER)
