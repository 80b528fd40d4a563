"""The PDF, judged by what another library finds in it. Lengths in mm, y down."""

import ctypes
import io

import numpy as np
import pypdfium2
import pypdfium2.raw as pdfium
import pytest
import zxingcpp

from labels import card, draw, sheet
from labels.paper import COLOURS, SHEETS

MM = 25.4 / 72


def document(codes, **changes):
    wanted = {"section_name": "Derailleurs", "colour": "green", "paper": "letter", "grid": "3x6"} | changes
    out = io.BytesIO()
    draw.pdf(sheet.sheets(codes, **wanted), out, title="Cards of section D")
    return pypdfium2.PdfDocument(out.getvalue())


def black_boxes(page):
    """(left, top, right, bottom) of every black filled path that the file holds."""
    height = page.get_height()
    boxes = []
    for path in page.get_objects(filter=[pdfium.FPDF_PAGEOBJ_PATH]):
        rgba = [ctypes.c_uint() for _ in range(4)]
        assert pdfium.FPDFPageObj_GetFillColor(path, *rgba)
        if [part.value for part in rgba[:3]] == [0, 0, 0]:
            left, bottom, right, top = path.get_bounds()
            boxes.append((left * MM, (height - top) * MM, right * MM, (height - bottom) * MM))
    return boxes


def written_edges(text):
    """Edges in modules of every bar of the symbol that zxing-cpp writes."""
    symbol = zxingcpp.create_barcode(text, zxingcpp.BarcodeFormat.Code128)
    row = np.array(symbol.to_image(scale=1, add_quiet_zones=False))[0] < 128
    steps = np.flatnonzero(np.diff(np.concatenate(([0], row.astype(int), [0]))))
    return steps.reshape(-1, 2)


@pytest.mark.parametrize("paper", SHEETS)
def test_bars_in_the_file_lie_where_x_says(paper):
    """Every edge of every bar in the file is within 0.01 mm of its multiple of X."""
    codes = [f"D{number:03}" for number in range(1, 19)]
    boxes = np.array(black_boxes(document(codes, paper=paper)[0])).reshape(18, 22, 4)
    x_dimension = card.module_width("D0016", (SHEETS[paper][0] - 10) / 3)
    for code, found in zip(codes, boxes, strict=True):
        edges = written_edges(card.slot_code.card_text(code))
        wanted = found[0, 0] + edges * x_dimension
        assert np.abs(found[:, [0, 2]] - wanted).max() < 0.01
        assert np.ptp(found[:, 1]) == np.ptp(found[:, 3]) == 0


@pytest.mark.parametrize("colour", COLOURS)
def test_bars_stand_on_white_whatever_the_paper(colour):
    """Along the bars nothing but black and white is printed, the quiet zones included."""
    page = document(["D014"], colour=colour, grid="3x6")[0]
    boxes = black_boxes(page)
    x_dimension = (boxes[-1][2] - boxes[0][0]) / 79
    scale = 300 / 72
    image = np.array(page.render(scale=scale).to_pil().convert("RGB"))
    left, right = boxes[0][0] - 10 * x_dimension, boxes[-1][2] + 10 * x_dimension
    rows = slice(int(boxes[0][1] / MM * scale) + 2, int(boxes[0][3] / MM * scale) - 2)
    panel = image[rows, int(left / MM * scale) + 1 : int(right / MM * scale)]
    assert np.ptp(panel, axis=2).max() == 0
    quiet = int(10 * x_dimension / MM * scale) - 2
    assert 255 == panel[:, :quiet].min() == panel[:, -quiet:].min()


def test_title_size_and_text():
    """The file has its title, the sheet's size, and each card text once."""
    found = document(["D014", "D015"])
    text = found[0].get_textpage().get_text_range()
    assert found.get_metadata_value("Title") == "Cards of section D"
    assert pytest.approx((215.9, 279.4), abs=0.01) == tuple(side * MM for side in found[0].get_size())
    assert [text.count(part) for part in ("D0145", "D0153", "Derailleurs")] == [1, 1, 2]


def test_same_cards_same_bytes(tmp_path):
    """Printing again gives the same file, by path as by stream."""
    pages = sheet.sheets(["D014"], section_name="Derailleurs", colour="grey", paper="a4", grid="3x6")
    out = io.BytesIO()
    draw.pdf(pages, out, title="Cards")
    draw.pdf(pages, tmp_path / "cards.pdf", title="Cards")
    assert out.getvalue() == (tmp_path / "cards.pdf").read_bytes()
