"""The geometry of one card."""

import math
from dataclasses import replace

import pytest

from labels import card, code128, typeface
from labels.card import CardDesign, CardTooSmall, Style, Unreadable
from labels.paper import COLOURS, WHITE, Paper
from labels.shape import Bars, Pattern, Rect, SheetArea, Text

AREA = SheetArea(5, 5, 72, 46)
LOOK = CardDesign("Derailleurs", COLOURS["green"])
WITH_BARS = [style for style in Style if style is not Style.BIN]


def draw(code="D014", area=AREA, **changes):
    return card.slot_card(code, replace(LOOK, **changes), area)


def texts(drawn):
    return {shape.text: shape for shape in drawn.shapes if isinstance(shape, Text)}


def box(shape):
    """(left, top, right, bottom) of a shape; descenders of text not counted."""
    if isinstance(shape, Text):
        width = typeface.width(shape.text, shape.size, shape.font)
        return shape.x, shape.y - shape.size * typeface.CAP_HEIGHT, shape.x + width, shape.y
    return shape.x, shape.y, shape.x + shape.width, shape.y + shape.height


def overlap(one, other):
    return one[0] < other[2] and other[0] < one[2] and one[1] < other[3] and other[1] < one[3]


def test_module_on_the_usual_card():
    """A card of 72 mm has modules of 0.72 mm, 0.65 mm for two letters, and 10.5 of them left white on each side."""
    assert (0.72, 0.65) == (card.module_width("D0145", 72), round(card.module_width("LP072", 72), 2))
    bars = draw().bars
    assert pytest.approx(10.5 * 0.72) == bars.x - AREA.x == AREA.right - bars.x - bars.width


def test_modules_are_never_wider_than_scanners_expect():
    """A large card has modules of 1.016 mm."""
    # GS1 General Specifications, general scanning; from memory
    assert card.module_width("D0145", 200) == 1.016


@pytest.mark.parametrize(("text", "modules"), [("D0145", 79), ("LP072", 90)])
def test_narrowest_card(text, modules):
    """A card takes bars of 0.33 mm and refuses narrower ones."""
    narrowest = (modules + 21) * 0.33
    assert pytest.approx(0.33) == card.module_width(text, narrowest)
    with pytest.raises(CardTooSmall, match=f"{narrowest:.1f} mm wide"):
        card.module_width(text, narrowest - 0.01)


@pytest.mark.parametrize("dpi", [150, 203, 300, 600])
@pytest.mark.parametrize("style", WITH_BARS)
def test_bars_on_whole_dots(style, dpi):
    """For a printer of few dots each module is a whole number of them, and the first bar begins on one."""
    dot = 25.4 / dpi
    bars = draw(style=style, dot=dot).bars
    dots = [bars.module / dot, bars.x / dot]
    assert pytest.approx([round(count) for count in dots]) == dots
    assert (True, True) == (0.72 - dot < bars.module <= 0.72, bars.x - AREA.x >= 10 * bars.module)


def test_dots_too_coarse():
    """A printer whose dots make no module of at least 0.33 mm on the card is refused."""
    with pytest.raises(CardTooSmall):
        card.module_width("D0145", 40, 25.4 / 60)


@pytest.mark.parametrize("style", WITH_BARS)
@pytest.mark.parametrize("code", ["D014", "LP07", "LP999999"])
@pytest.mark.parametrize("area", [AREA, SheetArea(0, 0, 65, 40), SheetArea(0, 0, 98, 44), SheetArea(0, 0, 200, 140)])
def test_quiet_zone_and_height_of_the_bars(style, code, area):
    """Bars have 10 X of white on each side, and are at least 5 mm and 15 % of their length high."""
    # GS1 General Specifications 5.4.4; height recommended by ISO/IEC 15417, secondary
    drawn = draw(code, area, style=style)
    bars = drawn.bars
    assert bars.height >= max(5, 0.15 * bars.width)
    quiet = code128.QUIET * bars.module
    zone = (bars.x - quiet, bars.y, bars.x + bars.width + quiet, bars.y + bars.height)
    assert area.x <= zone[0] and zone[2] <= area.right
    printed = [shape for shape in drawn.shapes if not isinstance(shape, Bars) and getattr(shape, "fill", "") != WHITE]
    assert [] == [shape for shape in printed if overlap(zone, box(shape))]


@pytest.mark.parametrize("height", [44.2, 46])
def test_bars_of_a_filed_card_stand_along_its_top_edge(height):
    """They begin 1.5 mm below the edge and are 18 to 20 mm high; all text stands below them."""
    drawn = draw(area=replace(AREA, height=height))
    bars = drawn.bars
    assert pytest.approx(1.5) == bars.y - AREA.y
    assert 18 <= bars.height <= 20
    assert min(box(text)[1] for text in texts(drawn).values()) > bars.y + bars.height


def test_a_face_has_the_largest_number_of_all_above_its_bars():
    """The face is made to be looked at."""
    drawn = {style: draw(style=style) for style in WITH_BARS}
    face = drawn[Style.FACE]
    assert face.cap_height == max(each.cap_height for each in drawn.values())
    assert texts(face)["014"].y < face.bars.y


def test_a_tag_has_a_hole_with_paper_around_it():
    """The hole of 5 mm stands at the top in the middle, at least 2.5 mm from every edge and clear of plate and bars."""
    drawn = draw(style=Style.TAG)
    hole = next(shape for shape in drawn.shapes if isinstance(shape, Rect) and shape.width == 5 == shape.height)
    assert (2.5, pytest.approx(AREA.x + 36)) == (hole.radius, hole.x + 2.5)
    assert hole.y - AREA.y >= 2.5
    assert hole.y + 5 + 2.5 <= min(box(text)[1] for text in texts(drawn).values())


def test_front_of_a_bin():
    """It shows first and last number and the bin's name, and its bars say the name, clear of the section's edge."""
    drawn = card.bin_front("D001", "D020", "A-2-3", LOOK, AREA)
    assert {"D", "001–020", "A-2-3", "Derailleurs"} == texts(drawn).keys()
    assert code128.widths("BINA-2-32") == drawn.bars.widths
    edge = next(shape for shape in drawn.shapes if isinstance(shape, Pattern))
    assert drawn.bars.x - (edge.x + edge.width) >= 10 * drawn.bars.module  # quiet zone of ISO/IEC 15417


@pytest.mark.parametrize(("name", "area"), [("", AREA), ("by the door", AREA), ("A-2-3", SheetArea(0, 0, 50, 40))])
def test_front_of_a_bin_without_bars(name, area):
    """A bin without a name of rack, tier and position has none, and neither has a front too small for them."""
    drawn = card.bin_front("LP07", "LP07", name, LOOK, area)
    assert ({"LP", "07", "Derailleurs", name} - {""}, None) == (texts(drawn).keys(), drawn.bars)


@pytest.mark.parametrize("style", WITH_BARS)
@pytest.mark.parametrize("colour", COLOURS)
def test_every_card_shows_its_sections_paper_and_pattern(style, colour):
    """The edge has the section's colour and pattern, and the section is named, so that colour is never alone."""
    drawn = draw(style=style, paper=COLOURS[colour])
    assert [COLOURS[colour].pattern] == [shape.name for shape in drawn.shapes if isinstance(shape, Pattern)]
    assert COLOURS[colour].hex in {shape.fill for shape in drawn.shapes if isinstance(shape, Rect)}
    assert "Derailleurs" in texts(drawn)


def test_without_a_panel_the_bars_stand_on_the_sections_paper():
    """The whole card has the section's colour, but for the plate of its number."""
    filled = [shape.fill for shape in draw(panel=False).shapes if isinstance(shape, Rect) and shape.width == 72]
    assert {COLOURS["green"].hex} == set(filled)
    assert WHITE in {shape.fill for shape in draw(panel=False).shapes if isinstance(shape, Rect)}


@pytest.mark.parametrize(
    ("colour", "reader"),
    [("#1f5fbf", "red-light"), ("#2e8b57", "red-light"), ("#b22222", "camera"), ("#dc143c", "camera")],
)
def test_colours_that_hide_the_bars_need_the_panel(colour, reader):
    """Without the panel they are refused with the reader that sees nothing and the way out; with it they are fine."""
    paper = Paper(colour, "plain")
    with pytest.raises(Unreadable, match=rf"{reader}.*Keep the white panel"):
        CardDesign("Lamps", paper, panel=False)
    assert CardDesign("Lamps", paper).paper is paper


def test_number_is_readable_at_two_metres():
    """The number is higher than 20 minutes of arc at 2 m on the usual card, its letters half as high."""
    # cap height 2 d tan(angle / 2), ISO 9241-3
    drawn = draw()
    cap = texts(drawn)["014"].size * typeface.CAP_HEIGHT
    assert cap == pytest.approx(drawn.cap_height)
    assert cap >= 2 * 2000 * math.tan(math.radians(20 / 60 / 2))
    assert texts(drawn)["014"].size / 2 == texts(drawn)["D"].size


def test_smallest_number():
    """A card whose number would be lower than 16 minutes of arc at a metre is refused."""
    # 4.65 mm, ISO 9241-3
    assert round(2 * 1000 * math.tan(math.radians(16 / 60 / 2)), 2) == card.CAP_MIN
    with pytest.raises(CardTooSmall, match="D014 would be"):
        draw(area=SheetArea(0, 0, 60, 24))


@pytest.mark.parametrize("style", Style)
@pytest.mark.parametrize("area", [AREA, SheetArea(0, 0, 65, 40), SheetArea(0, 0, 200, 140)])
@pytest.mark.parametrize("name", ["Lamps", "Handlebars, stems, grips and everything else that steers"])
@pytest.mark.parametrize("place", ["A-2-3", "Rack 12, tier 3, position 4"])
def test_everything_stays_on_the_card(style, area, name, place):
    """No shape and no line of text leaves its card, however long the section's name, and no texts touch."""
    design = CardDesign(name, COLOURS["orange"], style)
    if style is Style.BIN:
        drawn = card.bin_front("WW801", "WW888", place, design, area)
    else:
        drawn = card.slot_card("WW88888", design, area)
    for left, top, right, bottom in map(box, drawn.shapes):
        assert left >= area.x - 1e-9 and right <= area.right + 1e-9
        assert top >= area.y - 1e-9 and bottom <= area.bottom + 1e-9
    written = [box(text) for text in texts(drawn).values()]
    assert [] == [pair for i, pair in enumerate(written) if any(overlap(pair, other) for other in written[:i])]


def test_check_digit_stands_only_in_the_small_line():
    """The card text is written once, and the number on the plate has no check digit."""
    assert {"D0145", "D", "014", "Derailleurs"} == texts(draw()).keys()


def test_words_of_a_card():
    """A card says in words what it is, for those who can't see it."""
    assert draw().alt == "Card D014 of section Derailleurs; its bars say D0145."
