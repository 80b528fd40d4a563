"""What is wrong with a reference, and which near ones exist: in words, and nothing is bound by them."""

import pytest
from room_in_memory import RoomInMemory

from labels.slot_code import card_text, reference
from scanflow.domain.life import Hold, LineState
from scanflow.domain.orders.incoming import IncomingLine
from scanflow.workflow import stock


def room() -> RoomInMemory:
    """Sections D and O of six slots each, LP of none; things in D001 (its second turn), D002 and O001."""
    made = RoomInMemory("D001", "D002")
    stock.withdraw(made.unit, made.stay("D001").id, stock.Withdraw(reason="bent"))
    made.put_away("D001")
    stock.add_section(made.unit, stock.AddSection(code="O", name="Odds", slots_per_bin=2, colour="pink"))
    stock.add_slots(made.unit, "O", stock.AddSlots(count=6))
    stock.add_section(made.unit, stock.AddSection(code="LP", name="Lamps", slots_per_bin=2, colour="green"))
    made.put_away("O001")
    return made


def told(text: str) -> str:
    """The words of the hold, of a line that asks for `text`, once it is bound to nothing."""
    here = room()
    line = here.lines(here.order("1", IncomingLine(text)))[0]
    assert (LineState.UNBOUND, None, Hold.UNKNOWN_CODE) == (line.state, line.stay, line.hold)
    return line.why


def other(text: str) -> str:
    """With another character at the end."""
    return text[:-1] + ("7" if text[-1] != "7" else "8")


FITS = reference("D001", 2)


@pytest.mark.parametrize(
    ("text", "words"),
    [
        (other(FITS), f"The check character doesn't fit. {FITS} would."),
        (other(FITS).lower().replace("-", " "), f"The check character doesn't fit. {FITS} would."),
        (other(card_text("D002")), f"The check digit doesn't fit. {card_text('D002')} would."),
        (FITS.replace("D", "E"), f"The check character doesn't fit. No section E. The nearest that exists is {FITS}."),
        (FITS.replace("001", "010"), f"Section D ends at D006. The nearest that exists is {FITS}."),
        (FITS.replace("02", "2"), f"This is not written like a reference. The nearest that exists is {FITS}."),
        (FITS.replace("001", "01"), f"The nearest that exists is {FITS}."),
        (reference("D001", 3), f"D001 has not had turn 3 yet. Its latest is {FITS}."),
        (reference("D005", 1), "Nothing has stood in D005 yet."),
        (reference("D999", 1), "Section D ends at D006."),
        ("D999", "Section D ends at D006."),
        ("D009", "Section D ends at D006."),
        ("D016", "Section D ends at D006. The nearest that exists is D006."),
        ("Q001", "No section Q. The nearest that exist are D001 and O001."),
        (reference("Q001", 2), "No section Q."),
        ("LP001", "Section LP has no slots yet."),
        ("Q9", "No section Q."),
        ("nothing", "This is not written like a reference."),
        ("see note", "This is not written like a reference."),
    ],
)
def test_it_says_what_is_wrong_and_what_is_near(text, words):
    """The check, the section, the last number or the turn, and what exists one slip of a hand away."""
    assert words in told(text)


def test_of_many_that_are_near_none_is_named():
    """More than three tell nothing: D00? is one slip from every slot of the section."""
    assert "nearest" not in told("D009")


def test_what_does_not_exist_is_not_named():
    """A check that fits a slot or a turn that the room never had is no way to mend a reference."""
    unused = reference("D003", 9)
    assert unused not in told(other(unused))
