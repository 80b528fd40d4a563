"""`scanflow cards`, run as a person runs it."""

import json

import numpy as np
import pypdfium2
import pytest
import zxingcpp
from click.testing import CliRunner
from PIL import Image
from printed import bars

from scanflow.cli import main


def run(*arguments):
    return CliRunner().invoke(main, ["cards", *map(str, arguments)])


def report(*arguments):
    result = run(*arguments, "--json")
    assert 0 == result.exit_code, result.output
    return json.loads(result.output)


@pytest.mark.parametrize(("style", "bars_high"), [("filed", 18.49), ("face", 12.32), ("tag", 10.56)])
def test_report_says_what_the_file_holds(tmp_path, style, bars_high):
    """X and bar height of the report are those that another library measures in the PDF."""
    said = report("D", "--numbers", "1-18", "--paper", "letter", "--style", style, "--out", tmp_path / "c.pdf")
    (first, *_) = bars(pypdfium2.PdfDocument(tmp_path / "c.pdf")[0])
    assert pytest.approx(said["x_mm"], abs=0.001) == (first[-1][2] - first[0][0]) / 79
    assert pytest.approx([bars_high, bars_high], abs=0.02) == [first[0][3] - first[0][1], said["bar_height_mm"]]
    assert (style, True, []) == (said["style"], said["scale_bar"], said["warnings"])


@pytest.mark.parametrize("style", ["filed", "face", "tag", "bin"])
def test_report_says_from_how_far_the_number_is_read(tmp_path, style):
    """The distance is that of 20 minutes of arc, and the farthest that of 16."""
    said = report("D", "--numbers", "1-18", "--style", style, "--out", tmp_path / "c.pdf")
    # 5.82 and 4.65 mm at 1 m, ISO 9241-3
    wanted = [said["cap_height_mm"] / 5.82, said["cap_height_mm"] / 4.65]
    assert pytest.approx(wanted, abs=0.01) == [said["reads_at_m"], said["reads_at_most_m"]]
    assert said["reads_at_m"] == said["reads_at_m_in_style"][said["style"]]
    assert {"filed", "face", "tag", "bin"} == set(said["reads_at_m_in_style"])


def test_plain_words_name_the_distance_and_the_cautions(tmp_path):
    """Without --json it says bar width, reading distance, and to follow the makers of laminator and cutter."""
    said = run("D", "--numbers", "1-3", "--out", tmp_path / "c.pdf", "--gutter", 6).output
    for words in ("Narrowest bar 0.6", "easily read from", "follow the makers' instructions", "cut the laminate"):
        assert words in said


def test_narrow_gutters_are_warned_of(tmp_path):
    """A gutter that leaves less than 3 mm of sealed laminate is printed, with a warning."""
    said = report("D", "--numbers", "1", "--gutter", 4, "--out", tmp_path / "c.pdf")
    assert ["so make the gutter 6 mm." in line for line in said["warnings"]] == [True]
    assert [] == report("D", "--numbers", "1", "--gutter", 6, "--out", tmp_path / "c.pdf")["warnings"]


def test_duplex_doubles_the_pages(tmp_path):
    """Every page has its backs, and they are read like the fronts."""
    said = report("D", "--numbers", "1-20", "--duplex", "long", "--out", tmp_path / "c.pdf")
    assert (4, 20) == (said["pages"], len(said["texts"]))
    back = pypdfium2.PdfDocument(tmp_path / "c.pdf")[3].render(scale=200 / 72).to_numpy()
    assert sorted(said["texts"][18:]) == sorted(found.text for found in zxingcpp.read_barcodes(back))


def test_png_has_whole_pixels(tmp_path):
    """A PNG is at 300 dots per inch unless told otherwise, its bars whole dots wide, and read."""
    said = report("LP", "--digits", 2, "--numbers", "1-18", "--out", tmp_path / "c.png")
    assert pytest.approx(round(said["x_mm"] / 25.4 * 300), abs=0.001) == said["x_mm"] / 25.4 * 300
    found = zxingcpp.read_barcodes(np.array(Image.open(tmp_path / "c.png")))
    assert sorted(said["texts"]) == sorted(each.text for each in found)
    assert "LP072" in said["texts"]


def test_ready_labels_by_their_measures(tmp_path):
    """Labels are given by size, first corner and pitch, in mm or inches."""
    where = ("--grid", "2x5", "--label", "4x2in", "--corner", "0.1875x0.5in", "--pitch", "4.125x2in")
    said = report("D", "--numbers", "1-10", "--paper", "8.5x11in", *where, "--out", tmp_path / "c.pdf")
    assert ([101.6, 50.8], None) == (said["card_mm"], said["laminated_mm"])
    boxes = bars(pypdfium2.PdfDocument(tmp_path / "c.pdf")[0])
    assert pytest.approx(104.775, abs=0.02) == boxes[1][0][0] - boxes[0][0][0]
    assert pytest.approx(50.8, abs=0.01) == boxes[2][0][1] - boxes[0][0][1]


def test_fronts_of_bins(tmp_path):
    """Bin fronts group the slots by bin, take the bins' names in order, and have bars that say them."""
    where = ("--style", "bin", "--numbers", "1-40", "--grid", "2x3", "--out", tmp_path / "c.pdf")
    said = report("D", *where, "--per-bin", 20, "--bins", "2-3-1,2-3-2")
    text = pypdfium2.PdfDocument(tmp_path / "c.pdf")[0].get_textpage().get_text_range()
    assert [1, 1, 1] == [text.count(part) for part in ("021–040", "2-3-1", "2-3-2")]
    assert said["x_mm"] > 0.33


@pytest.mark.parametrize(
    ("changes", "status", "reason"),
    [
        (("--colour", "#1f5fbf", "--no-panel"), 1, "red-light scanner"),
        (("--out", "cards.gif"), 1, "not '.gif'"),
        (("--style", "bin", "--bins", "a,b,c"), 1, "3 bins are named"),
        (("--digits", "2", "--numbers", "100"), 1, "does not fit"),
        (("--margin", "50", "--paper", "100x150"), 1, "leaves no cards"),
        (("--label", "60x40"), 2, "--corner"),
        (("--corner", "5x5"), 2, "--label"),
        (("--label", "60by40"), 2, "63.5x38.1"),
        (("--colour", "#12"), 2, "#ffe680"),
        (("--paper", "0x150"), 2, "zero"),
        (("--dpi", "10"), 2, "dpi"),
    ],
)
def test_refusals_say_why(tmp_path, changes, status, reason):
    """What can't be printed gives status 1, what makes no sense 2; both say why, and no file is left."""
    changes = [tmp_path / part if part == "cards.gif" else part for part in changes]
    result = run("D", "--numbers", "1-18", "--out", tmp_path / "c.pdf", *changes)
    assert (status, True, []) == (result.exit_code, reason in result.output, list(tmp_path.iterdir())), result.output
