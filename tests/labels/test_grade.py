"""Print quality of profiles degraded by known amounts, against the standard's worked values."""

import doctest
from dataclasses import replace
from itertools import pairwise
from xml.etree import ElementTree

import numpy as np
import pytest
import zxingcpp
from hypothesis import given, settings
from hypothesis import strategies as st

from labels import code128, grade, profile_drawing, reflectance
from labels.grade import Parameter

TEXT = "D0145"
PIXELS = 16  # samples a module
BARS = len(code128.widths(TEXT))


def profile(text=TEXT, dark=0.05, light=0.9, growth=0.0, quiet=10, aperture=8):
    """A printed symbol's profile; `growth` is what every bar gains in modules, half at each side."""
    widths = [quiet, *code128.widths(text), quiet]
    edges = np.cumsum(widths)[:-1] + np.resize([-growth / 2, growth / 2], len(widths) - 1)
    cuts = np.round(edges * PIXELS).astype(int)
    levels = np.full(sum(widths) * PIXELS, light)
    for begin, end in zip(cuts[::2], cuts[1::2], strict=True):
        levels[begin:end] = dark
    return smoothed(levels, np.ones(aperture) / aperture)


def smoothed(levels, kernel):
    margin = len(kernel)
    return np.convolve(np.pad(levels, margin, mode="edge"), kernel, "same")[margin:-margin]


def blurred(levels, sigma):
    """`sigma` in modules."""
    at = np.arange(-4 * sigma, 4 * sigma + 1e-9, 1 / PIXELS)
    kernel = np.exp(-((at / sigma) ** 2) / 2)
    return smoothed(levels, kernel / kernel.sum())


def spotted(levels, element, depth, share=0.25):
    """`depth` of reflectance taken from the middle of a space, or given to that of a bar; 0 is the first bar."""
    widths = code128.widths(TEXT)
    middle = (10 + sum(widths[:element]) + widths[element] / 2) * PIXELS
    half = widths[element] * PIXELS * share / 2
    spot = levels.copy()
    spot[round(middle - half) : round(middle + half)] += depth if element % 2 == 0 else -depth
    return spot


def estimate(levels):
    return grade.symbol([grade.grade(levels)], TEXT)


def measure(levels, name):
    return grade.grade(levels).measures[name]


def test_doctests():
    """The examples in the module's docstrings hold."""
    assert 0 == doctest.testmod(grade).failed


@pytest.mark.parametrize("text", ["D0145", "LP072", "AIM1234", "1234", "a", "PJJ123C"])
def test_a_perfect_print_grades_a(text):
    """A sharp black and white symbol has no fault, and decodes to its own values."""
    scan = grade.grade(profile(text))
    seen = grade.symbol([scan] * 10, text)

    assert code128.values(text) == scan.values
    assert (4.0, "A", None, grade.GOOD) == (seen.grade, seen.letter, seen.weakest, seen.advice)


@pytest.mark.parametrize("text", ["PJJ123C", "Zq~9 7", "00112233"])
def test_symbols_of_another_writer_decode(text):
    """The reference decode takes what zxing-cpp writes, whatever code sets it chose."""
    row = np.array(zxingcpp.create_barcode(text, zxingcpp.BarcodeFormat.Code128).to_image(scale=8))[20]
    light = np.flatnonzero(row < 128)
    levels = np.pad(row[light[0] : light[-1] + 1] / 255.0, 80, constant_values=1.0)

    assert grade.grade(levels).values is not None


def test_the_worked_symbol_grade():
    """Ten scans A A B B A A C F D A make 2.9, a B."""
    # published example of ISO/IEC 15416
    good = grade.grade(profile())
    scans = [
        replace(good, measures={**good.measures, Parameter.DEFECTS: grade.Measure(0.0, "FDCBA".index(letter))})
        for letter in "AABBAACFDA"
    ]
    seen = grade.symbol(scans, TEXT)

    assert (2.9, "B", Parameter.DEFECTS) == (round(seen.grade, 9), seen.letter, seen.weakest)


def test_the_worked_scan():
    """Rmax 80, Rmin 8, ECmin 48 and ERN 11 per cent give SC 72, GT 44, MOD 66.7, Defects 15.28."""
    # computed independently from the formulas of ISO/IEC 15416
    levels = profile(dark=0.08, light=0.80)
    levels = spotted(levels, BARS - 1, 0.11)  # the last bar of the stop character, two modules wide
    narrow = next(i for i, width in enumerate(code128.widths(TEXT)) if width == 1 and i % 2 == 1)
    begin = (10 + sum(code128.widths(TEXT)[:narrow])) * PIXELS
    space = levels[begin - PIXELS // 2 : begin + PIXELS + PIXELS // 2]
    space[:] = 0.08 + (space - 0.08) * 48 / 72  # a narrow space rises only to 56 per cent, 48 above the bars
    scan = grade.grade(levels)

    assert 0.44 == round(scan.threshold, 9)
    assert (0.72, 4) == rounded(scan.measures[Parameter.CONTRAST])
    assert (0.48, 4) == rounded(scan.measures[Parameter.EDGE_CONTRAST])
    assert (0.6667, 3) == rounded(scan.measures[Parameter.MODULATION])
    assert (0.1528, 3) == rounded(scan.measures[Parameter.DEFECTS])


def rounded(found):
    return round(found.value, 4), found.grade


@pytest.mark.parametrize(
    ("name", "levels", "grades"),
    [
        # thresholds of the 2000 edition of ISO/IEC 15416, as published
        (Parameter.CONTRAST, (0.70, 0.69, 0.55, 0.54, 0.40, 0.39, 0.20, 0.19), (4, 3, 3, 2, 2, 1, 1, 0)),
        (Parameter.DEFECTS, (0.15, 0.16, 0.20, 0.21, 0.25, 0.26, 0.30, 0.31), (4, 3, 3, 2, 2, 1, 1, 0)),
    ],
)
def test_thresholds(name, levels, grades):
    """At a threshold the better grade is given, a hundredth beyond it the worse."""
    degrade = {
        Parameter.CONTRAST: lambda share: profile(dark=0.9 - share, light=0.9),
        Parameter.DEFECTS: lambda share: spotted(profile(dark=0, light=1), BARS - 1, share),
    }[name]

    assert list(grades) == [measure(degrade(level), name).grade for level in levels]
    assert list(levels) == pytest.approx([measure(degrade(level), name).value for level in levels])


@pytest.mark.parametrize(("contrast", "letter"), [(0.65, "B"), (0.50, "C")])
def test_a_pale_print_names_its_contrast(contrast, letter):
    """Of a print pale by a known amount the symbol contrast is the weakest, and darker print the advice."""
    seen = estimate(profile(dark=0.95 - contrast, light=0.95))

    assert (Parameter.CONTRAST, letter) == (seen.weakest, seen.letter)
    assert "darker" in seen.advice


def test_bars_above_half_the_paper_fail():
    """Bars that reflect more than half of what the paper does fail, whatever the contrast's grade."""
    assert (0, 4) == tuple(measure(profile(dark=dark, light=0.9), Parameter.MINIMUM).grade for dark in (0.4501, 0.4499))
    assert Parameter.MINIMUM == estimate(profile(dark=0.5, light=0.95)).weakest


@pytest.mark.parametrize("element", [BARS - 1, 13])
def test_a_spot_of_known_depth_names_defects(element):
    """A void in a bar and a spot in a space count with their depth against the symbol contrast."""
    seen = estimate(spotted(profile(dark=0.1, light=0.9), element, 0.18))

    assert 0.225 == round(seen.measures[Parameter.DEFECTS], 9)
    assert (Parameter.DEFECTS, "C") == (seen.weakest, seen.letter)


def test_a_spot_through_the_threshold_still_names_defects():
    """A void so light that it parts its bar in two makes the decode fail, and it is the defect that is named."""
    seen = estimate(spotted(profile(), BARS - 1, 0.6))

    assert (0.0, "F", Parameter.DEFECTS) == (seen.grade, seen.letter, seen.weakest)


@pytest.mark.parametrize("growth", [0.125, 0.25, 0.375, -0.25])
def test_bar_growth_lowers_decodability_as_computed(growth):
    """Edges to similar edges stay: V2 = 1 - 3·growth/1.75 falls, for three bars a character."""
    # formula of ISO/IEC 15417 from memory
    expected = 1 - 3 * abs(growth) / 1.75
    seen = estimate(profile(growth=growth))

    assert expected == pytest.approx(seen.measures[Parameter.DECODABILITY], abs=1e-6)
    assert (Parameter.DECODABILITY if expected < 0.62 else None) == seen.weakest


def test_an_edge_out_of_place_lowers_decodability_as_computed():
    """One edge moved by a quarter module leaves K at a quarter module: V1 = 0.25·2 = 0.5."""
    # formula of ISO/IEC 15417 from memory
    levels = profile()
    begin = (10 + sum(code128.widths(TEXT)[:8])) * PIXELS  # bar 8, in the second character
    levels[begin - 4 : begin + 8] = profile()[begin - 8 : begin + 4]

    assert pytest.approx(0.5) == measure(levels, Parameter.DECODABILITY).value


def test_growth_beyond_the_tolerance_does_not_decode():
    """Bars grown by 1.75 modules a character are outside the reference decode."""
    seen = estimate(profile(growth=0.625))

    assert ("F", Parameter.DECODABILITY) == (seen.letter, seen.weakest)


def test_blur_names_modulation():
    """A blur of 0.4 modules takes more from narrow elements than from anything else."""
    seen = estimate(blurred(profile(), 0.4))

    assert Parameter.MODULATION == seen.weakest
    assert seen.measures[Parameter.MODULATION] < 0.6 < 0.9 < seen.measures[Parameter.DECODABILITY]


def test_bars_run_together_name_modulation():
    """Where blur closes narrow spaces altogether, the missing edges say so."""
    assert ("F", Parameter.MODULATION) == (
        estimate(blurred(profile(), 1.2)).letter,
        estimate(blurred(profile(), 1.2)).weakest,
    )


def test_a_narrow_quiet_zone_fails():
    """Nine modules of white are too few, ten are enough, and dark beyond them does not matter."""
    narrow, wide = (np.concatenate([np.full(20, 0.05), profile(quiet=quiet)]) for quiet in (9, 10))

    assert Parameter.QUIET_ZONE == estimate(narrow).weakest
    assert (4, None) == (grade.grade(wide).grade, estimate(wide).weakest)


def test_a_blank_is_no_symbol():
    """White paper, and bars that are none, give an F and never a division by zero."""
    blank, wave = np.full(500, 0.9), 0.5 + 0.4 * np.sin(np.arange(500.0) / 8)

    assert [("F", Parameter.CONTRAST), "F"] == [
        (estimate(blank).letter, estimate(blank).weakest),
        estimate(wave).letter,
    ]


def test_what_can_not_be_judged_is_refused():
    """No profile, pictures for profiles, and more than ten scans are errors."""
    scan = grade.grade(profile())
    for wrong in (np.zeros(1), np.zeros((3, 3))):
        with pytest.raises(ValueError, match="at least two"):
            grade.grade(wrong)
    for scans in ([], [scan] * 11):
        with pytest.raises(ValueError, match="1 to 10"):
            grade.symbol(scans, TEXT)


def test_no_two_characters_look_alike():
    """Edges to similar edges alone tell all 107 characters apart."""
    similar = [
        tuple(a + b for a, b in pairwise([int(w) for w in widths][:5])) for widths in map(run_lengths, code128.PATTERNS)
    ]

    assert 107 == len(set(similar))


def run_lengths(bits):
    return "".join(str(len(run)) for run in bits.replace("01", "0 1").replace("10", "1 0").split())


degrees = st.lists(st.floats(0, 1), min_size=2, max_size=2).map(sorted)


@settings(max_examples=25)
@given(degrees)
def test_more_harm_never_grades_better(amounts):
    """Paler, blurrier (its edges still there), more grown and deeper spotted symbols never measure better."""
    less, more = amounts
    ways = {
        Parameter.CONTRAST: lambda share: profile(dark=0.05 + 0.8 * share),
        Parameter.MODULATION: lambda share: blurred(profile(), 0.1 + 0.5 * share),
        Parameter.DECODABILITY: lambda share: profile(growth=0.5 * share),
    }
    for name, degrade in ways.items():
        assert measure(degrade(more), name).value <= measure(degrade(less), name).value + 1e-9
    spots = [measure(spotted(profile(), BARS - 1, 0.4 * share), Parameter.DEFECTS).value for share in amounts]
    assert spots == sorted(spots)


@settings(max_examples=50)
@given(st.lists(st.floats(0, 1), min_size=2, max_size=300))
def test_any_profile_gets_a_grade(levels):
    """Whatever the reflectances, there are measures, and every grade is one of five."""
    scan = grade.grade(np.array(levels))

    assert set(Parameter) == set(scan.measures)
    assert {measure.grade for measure in scan.measures.values()} <= {0, 1, 2, 3, 4}


def test_elements_take_up_the_whole_profile():
    """Bars and spaces alternate and touch."""
    parts = reflectance.elements(profile(), 0.475)

    assert BARS + 2 == len(parts)
    assert all(a.dark != b.dark and a.end == b.begin for a, b in pairwise(parts))


def test_the_drawing_shows_profile_threshold_and_edges():
    """The SVG is whole, holds every sample and edge once, and its title is escaped."""
    scan = grade.grade(profile())
    drawn = ElementTree.fromstring(profile_drawing.svg(scan, "D0145 <&>"))
    named = {shape.get("class"): shape for shape in drawn if shape.get("class")}

    assert "D0145 <&>" == drawn[0].text
    assert len(scan.profile) == len(named["profile"].get("points").split())
    assert len(scan.edges) == BARS + 1 == named["edges"].get("d").count("M")
    assert "H948" in named["threshold"].get("d")
