"""Readings of two engines become one per place, or none."""

from scanflow.vision.merge import EngineReading, merge
from scanflow.vision.readings import Quad, Symbology


def box(x: float, y: float, width: float, height: float) -> Quad:
    return (x, y), (x + width, y), (x + width, y + height), (x, y + height)


def found(
    text: str, engine: str, corners: Quad, symbology: Symbology = Symbology.CODE128, sure: bool = True
) -> EngineReading:
    return EngineReading(text, symbology, engine, corners, sure)


def texts(*readings: EngineReading) -> list[tuple[str, str]]:
    return [(one.text, one.engine) for one in merge(list(readings))]


WHOLE = box(100, 100, 400, 120)


def test_agreement_names_both_engines() -> None:
    """What both engines read at one place is one reading, at the first engine's corners."""
    merged = merge([found("D0145", "zxing-cpp", WHOLE), found("D0145", "zbar", box(104, 130, 390, 60))])

    assert [("D0145", "zxing-cpp+zbar", WHOLE)] == [(one.text, one.engine, one.corners) for one in merged]


def test_disagreement_reads_nothing() -> None:
    """Two texts at one place leave nothing there, and other places alone."""
    other = found("S0173", "zbar", box(100, 400, 400, 120))

    assert [("S0173", "zbar")] == texts(found("D0145", "zxing-cpp", WHOLE), found("D0146", "zbar", WHOLE), other)


def test_disagreement_about_the_symbology_reads_nothing() -> None:
    """The same text in two symbologies is no agreement."""
    both = found("123456", "zxing-cpp", WHOLE), found("123456", "zbar", WHOLE, Symbology.ITF)

    assert [] == texts(*both)


def test_thin_line_within_the_bars_is_the_same_place() -> None:
    """A place seen on one scan line alone is compared with the bars it lies in."""
    line = (102.0, 160.0), (498.0, 160.0), (498.0, 160.0), (102.0, 160.0)

    assert [("D0145", "zxing-cpp+zbar")] == texts(found("D0145", "zxing-cpp", WHOLE), found("D0145", "zbar", line))
    assert [] == texts(found("D0145", "zxing-cpp", WHOLE), found("D0146", "zbar", line))


def test_part_of_a_code_disputes_the_whole() -> None:
    """A shorter text read in a part of the bars leaves nothing there."""
    part = found("3018", "zbar", box(100, 150, 180, 10), Symbology.CODE39)

    assert [] == texts(found("30181083", "zxing-cpp", WHOLE, Symbology.CODE39), part)


def test_one_engine_twice_at_a_place_is_one_reading() -> None:
    """An engine that reports a code twice has read it once."""
    assert [("D0145", "zbar")] == texts(found("D0145", "zbar", WHOLE), found("D0145", "zbar", box(102, 104, 396, 90)))


def test_one_text_at_two_places_is_two_readings() -> None:
    """Two cards with the same text are both there, in order from the top."""
    below = box(100, 300, 400, 120)
    merged = merge([found("D0145", "zxing-cpp", below), found("D0145", "zxing-cpp", WHOLE)])

    assert [WHOLE, below] == [one.corners for one in merged]


def test_hull_around_two_equal_cards_confirms_both() -> None:
    """zbar gives equal texts one hull around them all; what lies between them is not disputed by it."""
    first, middle, last = (box(100, y, 400, 120) for y in (100, 300, 500))
    zxing = [found(text, "zxing-cpp", at) for text, at in (("D0145", first), ("S0173", middle), ("D0145", last))]
    zbar = [found("D0145", "zbar", box(100, 100, 400, 520)), found("S0173", "zbar", middle)]

    both = "zxing-cpp+zbar"
    assert [("D0145", both), ("S0173", both), ("D0145", both)] == texts(*zxing, *zbar)


def test_unsure_reading_needs_another_engine() -> None:
    """What one engine isn't sure of counts only where another agrees."""
    alone = found("00123457", "zxing-cpp", WHOLE, Symbology.ITF, sure=False)
    other = found("00123457", "zbar", WHOLE, Symbology.ITF, sure=False)

    assert [] == texts(alone)
    assert [("00123457", "zxing-cpp+zbar")] == texts(alone, other)


def test_unsure_reading_still_disputes() -> None:
    """A doubtful reading is enough to doubt another of its place."""
    doubt = found("00123457", "zbar", WHOLE, Symbology.ITF, sure=False)

    assert [] == texts(found("D0145", "zxing-cpp", WHOLE), doubt)


def test_lost_eighth_bit_is_agreement() -> None:
    """zbar ignores FNC4 and so gives s for ó; zxing-cpp's text stands."""
    assert [("ó1", "zxing-cpp+zbar")] == texts(found("ó1", "zxing-cpp", WHOLE), found("s1", "zbar", WHOLE))


def test_neighbours_are_two_places() -> None:
    """Codes side by side, or one close above the other, don't dispute each other."""
    beside, below = box(505, 100, 400, 120), box(100, 225, 400, 120)
    three = [found(text, "zxing-cpp", at) for text, at in (("D0145", WHOLE), ("D0016", beside), ("S0173", below))]

    assert ["D0145", "D0016", "S0173"] == [one.text for one in merge(three)]


def test_bars_split_by_noise_are_one_place() -> None:
    """Two parts of the same bars, one right below the other, are one reading; with a gap they are two cards."""
    upper = found("D0145", "zxing-cpp", ((0, 0), (400, 0), (400, 60), (0, 60)))
    for gap, count in ((5, 1), (80, 2)):
        low = ((1, 60 + gap), (399, 60 + gap), (399, 120 + gap), (1, 120 + gap))
        assert count == len(merge([upper, found("D0145", "zxing-cpp", low)]))
