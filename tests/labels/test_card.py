"""The geometry of one card."""

import math

import pytest

from labels import card, code128, typeface
from labels.card import Area, DoesNotFit, Rect, Text

AREA = Area(5, 5, 72, 46)


def bars(shapes):
    return [shape for shape in shapes if isinstance(shape, Rect) and shape.fill == "#000000"]


def texts(shapes):
    return {shape.text: shape for shape in shapes if isinstance(shape, Text)}


def test_a_card_of_72_mm_has_bars_of_nearly_full_width():
    """One letter and four digits fill the card with their quiet zones, less what a cut may stray."""
    assert pytest.approx((72 - 1) / 99) == card.module_width("D0145", 72)


def test_modules_are_never_wider_than_0_72_mm():
    """A large card keeps the module that readers like."""
    assert card.module_width("D0145", 200) == 0.72


@pytest.mark.parametrize(("text", "modules"), [("D0145", 79), ("LP072", 90)])
def test_narrowest_card(text, modules):
    """A card takes bars of 0.33 mm and refuses narrower ones."""
    narrowest = (modules + 20) * 0.33 + 1
    assert pytest.approx(0.33) == card.module_width(text, narrowest + 1e-9)
    with pytest.raises(DoesNotFit, match=f"{narrowest:.1f} mm wide"):
        card.module_width(text, narrowest - 0.01)


@pytest.mark.parametrize("code", ["D014", "LP07", "LP999999"])
@pytest.mark.parametrize("area", [AREA, Area(0, 0, 60, 33), Area(0, 0, 98, 33), Area(0, 0, 200, 140)])
def test_quiet_zone_and_height_of_the_bars(code, area):
    """Bars have 10 X of card on each side, and are at least 5 mm and 15 % of their length high."""
    # GS1 General Specifications 5.4.4; height recommended by ISO/IEC 15417, secondary
    drawn = bars(card.shapes(code, "Derailleurs", "green", area))
    left, right = drawn[0].x, drawn[-1].x + drawn[-1].width
    x_dimension = drawn[0].width / 2
    assert code128.QUIET * x_dimension <= min(left - area.x, area.x + area.width - right)
    assert drawn[0].height >= max(5, 0.15 * (right - left))
    assert {(bar.y, bar.height) for bar in drawn} == {(area.y + 2.5, drawn[0].height)}


def test_number_is_readable_at_a_metre():
    """The number is higher than 20 minutes of arc at 2 m on the usual card, its letters half as high."""
    # cap height 2 d tan(angle / 2), ISO 9241-3
    drawn = texts(card.shapes("D014", "Derailleurs", "green", AREA))
    cap = drawn["014"].size * 0.729
    assert cap >= 2 * 2000 * math.tan(math.radians(20 / 60 / 2))
    assert drawn["014"].size / 2 == drawn["D"].size


def test_smallest_number():
    """A card whose number would be lower than 16 minutes of arc at a metre is refused."""
    # 4.65 mm, ISO 9241-3
    assert round(2 * 1000 * math.tan(math.radians(16 / 60 / 2)), 2) == card.CAP_MIN
    with pytest.raises(DoesNotFit, match="the number of D014"):
        card.shapes("D014", "Derailleurs", "green", Area(0, 0, 60, 28))


@pytest.mark.parametrize("area", [AREA, Area(0, 0, 60, 33), Area(0, 0, 200, 140)])
@pytest.mark.parametrize("name", ["Lamps", "Handlebars, stems, grips and everything else that steers"])
def test_everything_stays_on_the_card(area, name):
    """No shape and no line of text leaves its card, however long the section's name."""
    for shape in card.shapes("WW88888", name, "orange", area):
        if isinstance(shape, Text):
            width, top = typeface.width(shape.text, shape.size, shape.font), shape.y - shape.size * 0.729
        else:
            width, top = shape.width, shape.y
        assert shape.x >= area.x
        assert shape.x + width <= area.x + area.width + 1e-9
        assert top >= area.y - 1e-9


def test_check_digit_stands_only_in_the_small_line():
    """The card text is written once, and the number on the plate has no check digit."""
    assert {"D0145", "D", "014", "Derailleurs"} == texts(card.shapes("D014", "Derailleurs", "green", AREA)).keys()
