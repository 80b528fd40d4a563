"""Pictures of printed symbols: what the print did and what the picture did are told apart."""

from __future__ import annotations

from pathlib import Path

import numpy as np
import pytest
from numpy.typing import NDArray
from pictures import as_file
from PIL import Image
from print_faults import HEIGHT, MARGIN, PIXELS, TEXT, WIDTHS, bars_of, bent, picture, symbol

from labels import code128
from labels.grade import Parameter
from labels.reflectance import widths_of
from scanflow.vision import read
from scanflow.vision.print_check.check import Check, check
from scanflow.vision.print_check.disturbances import Disturbance, blur
from scanflow.vision.print_check.profiles import sweep

MODULES = sum(WIDTHS)
LEFT, RIGHT = MARGIN + 10 * PIXELS, MARGIN + (10 + MODULES) * PIXELS
CORNERS = ((LEFT, MARGIN), (RIGHT, MARGIN), (RIGHT, MARGIN + HEIGHT), (LEFT, MARGIN + HEIGHT))


def checked(image: Image.Image, module_mm: float | None = None, **settings: object) -> Check:
    """The one card in an image, as its file is read and judged."""
    data = as_file(image, **settings)
    (only,) = check(data, read(data).decoded, module_mm)
    return only


def named(seen: Check) -> tuple[str | None, Parameter | None, tuple[Disturbance, ...]]:
    assert seen.estimate is not None
    return seen.estimate.letter, seen.estimate.weakest, seen.disturbances


def grey(image: Image.Image) -> NDArray[np.uint8]:
    return np.asarray(image)


@pytest.mark.parametrize("turn", [0, 90, 180, 270])
def test_a_perfect_print_grades_a_whichever_way_it_lies(turn: int) -> None:
    """A sharp, even picture of flawless bars is an A, and its module is measured to a thousandth."""
    seen = checked(picture(symbol()).rotate(turn, expand=True))

    assert ("A", None, ()) == named(seen)
    assert pytest.approx(PIXELS, rel=1e-3) == seen.pixels_per_module


@pytest.mark.parametrize("tilt", [3, 7, -10, 12])
def test_a_tilted_card_is_followed(tilt: float) -> None:
    """Rows follow the code, not the picture, and a tilt costs no grade."""
    seen = checked(picture(symbol()).rotate(tilt, Image.Resampling.BICUBIC, expand=True, fillcolor=216))

    assert ("A", ()) == (named(seen)[0], seen.disturbances)
    assert pytest.approx(PIXELS, rel=2e-3) == seen.pixels_per_module


def test_a_sweep_is_ten_profiles_with_their_quiet_zones() -> None:
    """Each row sees 9.75 modules of white, the bars as drawn, and 9.75 modules of white; paper is 1."""
    swept = sweep(grey(picture(symbol(dark=0.2))), CORNERS, MODULES)
    assert swept is not None

    assert (10, round((MODULES + 19.5) * 16) + 1) == swept.profiles.shape
    assert (1.0, 0.2) == (round(float(swept.profiles.max()), 2), round(float(swept.profiles.min()), 2))
    assert pytest.approx(1 / 0.7, rel=0.01) == swept.clipping


def test_where_no_bars_are_there_is_no_sweep() -> None:
    """White paper has no ends of bars."""
    assert sweep(np.full((500, 900), 230, np.uint8), CORNERS, MODULES) is None


@pytest.mark.parametrize(("contrast", "letter"), [(0.65, "B"), (0.52, "C")])
def test_a_pale_print_of_known_contrast_names_it(contrast: float, letter: str) -> None:
    """The contrast drawn is the contrast measured, whatever the exposure."""
    for exposure in (0.4, 0.9):
        seen = checked(picture(symbol(dark=1 - contrast), exposure=exposure))

        assert pytest.approx(contrast, abs=0.01) == seen.estimate.measures[Parameter.CONTRAST]
        assert (letter, Parameter.CONTRAST) == named(seen)[:2]


def test_a_void_of_known_depth_names_defects() -> None:
    """A pale gap through the height of a wide bar counts with its depth."""
    page = symbol()
    bar = next(i for i in range(0, len(WIDTHS), 2) if WIDTHS[i] == 3)
    middle = round((sum(WIDTHS[:bar]) + 1.5) * PIXELS)
    bars_of(page)[:, middle - 3 : middle + 3] += 0.2
    seen = checked(picture(page))

    assert pytest.approx(0.2 / 0.96, abs=0.015) == seen.estimate.measures[Parameter.DEFECTS]
    assert ("C", Parameter.DEFECTS, ()) == named(seen)


def test_ink_spread_of_known_width_names_decodability() -> None:
    """Bars grown by a quarter module lose what the formula says: 1 - 3·0.25/1.75 is left."""
    # formula of ISO/IEC 15417 from memory
    seen = checked(picture(symbol(growth=0.25)))

    assert pytest.approx(1 - 0.75 / 1.75, abs=0.02) == seen.estimate.measures[Parameter.DECODABILITY]
    assert ("B", Parameter.DECODABILITY, ()) == named(seen)


def test_noise_names_defects() -> None:
    """Grain of a tenth of full light makes the inside of bars and spaces uneven."""
    seen = checked(picture(symbol(), noise=0.1))

    assert Parameter.DEFECTS == named(seen)[1]


@pytest.mark.parametrize("sigma", [0.1, 0.2, 0.4])
def test_blur_is_measured(sigma: float) -> None:
    """The blur found is the blur drawn, to a thirtieth of a module."""
    swept = sweep(grey(picture(symbol(), blur=sigma * PIXELS)), CORNERS, MODULES)
    assert swept is not None

    assert pytest.approx(sigma, abs=0.033) == blur(swept.profiles, WIDTHS)


def test_blur_names_modulation_and_the_picture() -> None:
    """A blur of 0.35 modules takes modulation first, and is the picture's fault before the print's."""
    seen = checked(picture(symbol(), blur=0.35 * PIXELS))

    assert (Parameter.MODULATION, (Disturbance.BLURRED,)) == named(seen)[1:]
    assert "not sharp" in seen.advice


def test_glare_is_not_blamed_on_the_print() -> None:
    """A reflex that saturates a part of the rows is named, whatever it did to the measures."""
    page = symbol()
    x, y = np.meshgrid(np.arange(page.shape[1]), np.arange(page.shape[0]))
    distance = (y - MARGIN - 0.6 * HEIGHT) - 0.1 * (x - page.shape[1] / 2)
    seen = checked(picture(page + 1.5 * np.exp(-((distance / 30) ** 2))))

    assert Disturbance.GLARE in seen.disturbances
    assert not seen.passed or named(seen)[0] != "A"
    assert "lamp" in seen.advice and "print is not to blame" in seen.advice


def test_missing_print_is_not_taken_for_glare() -> None:
    """Where bars are pale but the paper beside them no brighter, it is the print: no lamp is named."""
    page = symbol()
    region = bars_of(page)[80:130, 200:330]
    region[:] = 1 - (1 - region) * 0.3
    seen = checked(picture(page))

    assert () == seen.disturbances
    assert named(seen)[0] != "A"


def test_pale_bars_on_blinding_paper_stay_open() -> None:
    """Where the paper saturates the sensor, glare and missing print look alike, and that is said."""
    page = symbol()
    region = bars_of(page)[80:130, 200:330]
    region[:] = 1 - (1 - region) * 0.3
    seen = checked(picture(page, exposure=1.05))

    assert (Disturbance.OVEREXPOSED,) == seen.disturbances


def test_a_fold_is_not_blamed_on_the_print() -> None:
    """Modules that widen to the middle and narrow again are a bent card's, and flattening is the advice."""
    seen = checked(picture(bent(symbol(), 0.15)))

    assert (Disturbance.BENT,) == seen.disturbances
    assert "flatten" in seen.advice


def test_a_shadow_is_not_blamed_on_the_print() -> None:
    """Paper that is dark over several spaces lies in a shadow or fold."""
    page = symbol()
    page[:, 380:560] *= 0.5
    seen = checked(picture(page))

    assert (Disturbance.SHADOW,) == seen.disturbances
    assert "shadow" in seen.advice


def test_a_coarse_picture_says_nothing() -> None:
    """Under four pixels a module there is no letter, and the advice is a finer picture."""
    seen = checked(picture(symbol(pixels=3)))

    assert (None, False) == (seen.estimate, seen.passed)
    assert Disturbance.COARSE in seen.disturbances
    assert "too coarse" in seen.advice


def test_a_picture_without_the_quiet_zone_says_so() -> None:
    """White that is not in the picture is not made up in silence."""
    seen = checked(picture(symbol()[:, LEFT - 5 * PIXELS :]))

    assert Disturbance.CROPPED in seen.disturbances


def test_a_cut_quiet_zone_is_named() -> None:
    """Five modules of white with the dark table beyond are too few."""
    page = symbol()
    page[:, : LEFT - 5 * PIXELS] = 0.05
    seen = checked(picture(page))

    assert ("F", Parameter.QUIET_ZONE, ()) == named(seen)


def test_a_scaled_print_is_told_by_a_scan_with_its_resolution() -> None:
    """Of modules meant to be 0.72 mm wide, 8 pixels at 300 dpi are 94 per cent; without resolution nothing is said."""
    scan = picture(symbol())
    seen = checked(scan, 0.72, dpi=(300, 300))
    silent = [checked(scan, 0.72), checked(scan, dpi=(300, 300)), checked(scan, 0.72, dpi=(72, 72))]

    assert (0.68, 0.94) == (round(seen.module_mm, 2), round(seen.scale, 2))
    assert "printed at 94%" in seen.advice
    assert [None] * 3 == [other.scale for other in silent]
    assert "printed" not in checked(scan, 0.68, dpi=(300, 300)).advice


def test_a_symbol_of_another_length_is_followed() -> None:
    """A writer that says the same text in more modules, code set B throughout, is measured by its own bars."""
    start_and_data = (104, 36, 16, 17, 20, 21)
    longer = widths_of((*start_and_data, code128.check_value(start_and_data), 106))
    seen = checked(picture(symbol(longer)))

    assert 90 == sum(longer) > MODULES
    assert (TEXT, "A", None, ()) == (seen.text, *named(seen))
    assert pytest.approx(PIXELS, rel=2e-3) == seen.pixels_per_module


def test_other_symbologies_are_left_alone() -> None:
    """Code 39 has no reference decode here, and is said to be unjudged."""
    image = Image.open(Path(__file__).parents[3] / "sample_images" / "adopted" / "code39_a0042.jpg")
    seen = checked(image)

    assert (None, False, "Only Code 128 can be judged.") == (seen.estimate, seen.passed, seen.advice)
