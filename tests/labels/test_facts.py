"""What is said of cards before they are printed."""

import pytest

from labels import card, facts, sheet
from labels.paper import COLOURS, SHEETS
from labels.typeface import reading_distance

LAYOUT = sheet.cut_layout(SHEETS["a4"], "3x6", gutter=6)


def known(style=card.Style.FILED, layout=LAYOUT):
    design = card.CardDesign("Derailleurs", COLOURS["yellow"], style)
    pages = sheet.pages([sheet.slot_face(f"D{n:03}", design) for n in (1, 2)], layout)
    return facts.facts(pages[0].cards, layout, design, "D001", "D002"), pages[0].cards


@pytest.mark.parametrize("style", [card.Style.FILED, card.Style.FACE, card.Style.TAG])
def test_every_style_says_what_its_own_cards_say(style):
    """How far a style is read is told alike whichever style is being designed; faces are read from farthest."""
    told, cards = known(style)
    assert told.by_style[style] == told.reads_at == reading_distance(min(each.cap_height for each in cards))
    others, _ = known()
    assert pytest.approx(others.by_style) == told.by_style
    assert max(told.by_style, key=told.by_style.get) is card.Style.FACE


def test_a_style_without_room_is_left_out():
    """A card too low for a tag's hole and number can still be filed."""
    told, _ = known(layout=sheet.cut_layout(SHEETS["a4"], "3x8"))
    assert card.Style.TAG not in told.by_style
    assert card.Style.FILED in told.by_style


def test_what_to_mind_of_a_sheet():
    """A seal that is too narrow, a missing scale bar and a blank edge are told; a good sheet has none of them."""
    assert [] == facts.warnings(LAYOUT, 5)
    (narrow,) = facts.warnings(sheet.cut_layout(SHEETS["a4"], "3x6", gutter=4), 5)
    assert "make the gutter 6 mm" in narrow
    full = sheet.label_layout(SHEETS["4x6"], "1x3", (101.6, 50.8), (0, 0), (101.6, 50.8))
    assert ["scale bar" in words or "blank" in words for words in facts.warnings(full, 5)] == [True, True]
