"""The files, judged by what other libraries find in them. Lengths in mm, y down."""

import ctypes
import io
import re
from xml.etree import ElementTree

import numpy as np
import pypdfium2
import pypdfium2.raw as pdfium
import pytest
import zxingcpp
from PIL import Image
from printed import MM, bars, filled

from labels import card, draw, sheet, slot_code
from labels.card import CardDesign, Style
from labels.paper import COLOURS, SHEETS, Paper
from labels.sheet import Duplex

SVG = "{http://www.w3.org/2000/svg}"
WITH_BARS = [style for style in Style if style is not Style.BIN]


def pages(codes, *, paper="letter", grid="3x6", colour="green", name="Derailleurs", duplex=None, gutter=0, **changes):
    design = CardDesign(name, COLOURS[colour], **changes)
    layout = sheet.cut_layout(SHEETS[paper], grid, gutter=gutter)
    return sheet.pages([sheet.slot_face(code, design) for code in codes], layout, duplex)


def document(codes, **changes):
    out = io.BytesIO()
    draw.pdf(pages(codes, **changes), out, title="Cards of section D")
    return pypdfium2.PdfDocument(out.getvalue())


def written_edges(text):
    """Edges in modules of every bar of the symbol that zxing-cpp writes."""
    symbol = zxingcpp.create_barcode(text, zxingcpp.BarcodeFormat.Code128)
    row = np.array(symbol.to_image(scale=1, add_quiet_zones=False))[0] < 128
    steps = np.flatnonzero(np.diff(np.concatenate(([0], row.astype(int), [0]))))
    return steps.reshape(-1, 2)


def off(boxes, text, module):
    """How far any edge of a bar is from its multiple of X."""
    boxes = np.array(boxes)
    return np.abs(boxes[:, [0, 2]] - boxes[0, 0] - written_edges(text) * module).max()


@pytest.mark.parametrize("style", WITH_BARS)
@pytest.mark.parametrize("paper", ["letter", "a4"])
def test_bars_in_the_pdf_lie_where_x_says(paper, style):
    """Every edge of every bar in the file is within 0.01 mm of its multiple of X, and all bars are equally high."""
    codes = [f"D{number:03}" for number in range(1, 19)]
    found = bars(document(codes, paper=paper, style=style)[0])
    width = (SHEETS[paper][0] - 10 - 0.2) / 3
    for code, boxes in zip(codes, found, strict=True):
        text = slot_code.card_text(code)
        assert off(boxes, text, card.module_width(text, width)) < 0.01
        assert (1, 1) == (len({box[1] for box in boxes}), len({box[3] for box in boxes}))


def test_turned_bars_run_backwards():
    """On backs turned over the top, the bars lie in the file as half a turn puts them."""
    front, back = document(["D014"], duplex=Duplex.SHORT)
    (one,), (other,) = bars(front), bars(back)
    width, height = SHEETS["letter"]
    cell = sheet.cut_layout(SHEETS["letter"], "3x6").cells()[0]
    turned = [(2 * cell.x + cell.width - r, 0, 2 * cell.x + cell.width - x, 0) for x, _, r, _ in one]
    assert np.abs(np.array(turned)[:, [0, 2]] - np.array(other)[:, [0, 2]]).max() < 0.01
    assert pytest.approx(height - one[0][1], abs=0.01) == other[0][3]
    assert other[0][2] < width


@pytest.mark.parametrize("gutter", [0, 6])
def test_backs_in_the_file_cover_their_fronts(gutter):
    """The sheet turned about its long edge, each back's paper colour covers its front's plate side to side."""
    front, back = document([f"D{number:03}" for number in range(1, 19)], duplex=Duplex.LONG, gutter=gutter)
    width = SHEETS["letter"][0]
    strips = [
        [boxes[0] for rgb, boxes in filled(page) if rgb == (0xD7, 0xF3, 0xC6) and boxes[0][3] - boxes[0][1] < 1.1]
        for page in (front, back)
    ]
    mirrored = [(width - right, top, width - left, bottom) for left, top, right, bottom in strips[1]]
    assert 18 == len(strips[0])
    assert np.abs(np.array(strips[0]) - np.array(mirrored)).max() < 0.01


def test_scale_bar_in_the_file():
    """From the first tick's outer edge to the last's it is 50 mm in the file."""
    ink = [boxes[0] for rgb, boxes in filled(document(["D014"])[0]) if rgb == (0x1F, 0x1B, 0x16)]
    ticks = sorted(box for box in ink if box[1] > 265 and box[2] - box[0] < 0.3)
    assert (6, pytest.approx(50, abs=0.01)) == (len(ticks), ticks[-1][2] - ticks[0][0])


@pytest.mark.parametrize("style", WITH_BARS)
@pytest.mark.parametrize("colour", COLOURS)
def test_bars_stand_on_white_whatever_the_paper(style, colour):
    """Along the bars nothing but black and white is printed, the quiet zones included."""
    page = document(["D014"], colour=colour, style=style)[0]
    (boxes,) = bars(page)
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


def test_tags_and_language():
    """The PDF is tagged and in English; each card is a figure that says its code, in order, and points to its page."""
    found = document([f"D{number:03}" for number in range(1, 21)])
    language = (pdfium.FPDF_WCHAR * 10)()
    pdfium.FPDFCatalog_GetLanguage(found, language, 20)
    assert (1, "en") == (pdfium.FPDFCatalog_IsTagged(found), "".join(map(chr, language)).rstrip("\0"))
    assert [*(f"D{n:03}" for n in range(1, 19))] == [alt.split()[1] for alt in alternatives(found[0])]
    assert [
        "Card D019 of section Derailleurs; its bars say D0196.",
        "Card D020 of section Derailleurs; its bars say D0207.",
    ] == alternatives(found[1])


def alternatives(page):
    """What the figures of a page say."""
    tree = pdfium.FPDF_StructTree_GetForPage(page)
    said = []
    for index in range(pdfium.FPDF_StructTree_CountChildren(tree)):
        whole = pdfium.FPDF_StructTree_GetChildAtIndex(tree, index)
        assert "Document" == _string(pdfium.FPDF_StructElement_GetType, whole)
        for number in range(pdfium.FPDF_StructElement_CountChildren(whole)):
            figure = pdfium.FPDF_StructElement_GetChildAtIndex(whole, number)
            if figure:  # a figure of another page is none here
                assert "Figure" == _string(pdfium.FPDF_StructElement_GetType, figure)
                said.append(_string(pdfium.FPDF_StructElement_GetAltText, figure))
    pdfium.FPDF_StructTree_Close(tree)
    return said


def _string(get, element):
    buffer = ctypes.create_string_buffer(400)
    length = get(element, buffer, 400)
    return buffer.raw[:length].decode("utf-16-le").rstrip("\0")


def test_every_font_is_embedded():
    """All text is set in fonts that the file carries."""
    texts = list(document(["D014"])[0].get_objects(filter=[pdfium.FPDF_PAGEOBJ_TEXT]))
    fonts = [pdfium.FPDFTextObj_GetFont(text) for text in texts]
    assert (True, {1}) == (len(fonts) >= 5, {pdfium.FPDFFont_GetIsEmbedded(font) for font in fonts})


def test_same_cards_same_bytes(tmp_path):
    """Printing again gives the same file, by path as by stream."""
    made = pages(["D014"], colour="grey", paper="a4")
    out = io.BytesIO()
    draw.pdf(made, out, title="Cards")
    draw.pdf(made, tmp_path / "cards.pdf", title="Cards")
    assert out.getvalue() == (tmp_path / "cards.pdf").read_bytes()


@pytest.mark.parametrize("style", WITH_BARS)
def test_bars_in_the_svg_lie_where_x_says(style):
    """An XML parser finds the sheet's size in mm, and every bar within 0.01 mm of its multiple of X."""
    (page,) = pages(["D014", "D015"], style=style)
    root = ElementTree.fromstring(draw.svg(page, title="Cards"))
    assert ("215.9mm", "279.4mm", "0 0 215.9 279.4") == tuple(root.get(key) for key in ("width", "height", "viewBox"))
    black = [path.get("d") for path in root.iter(f"{SVG}path") if path.get("fill") == "#000000"]
    for data, each in zip(black, page.cards, strict=True):
        moves = re.findall(r"M(\S+) (\S+)h(\S+)v(\S+)h", data)
        boxes = [(float(x), float(y), float(x) + float(w), float(y) + float(h)) for x, y, w, h in moves]
        assert off(boxes, re.search("say (.*)[.]", each.alt)[1], each.bars.module) < 0.01


def test_svg_needs_no_font_and_keeps_hostile_names_as_words():
    """Letters are outlines; a section's name can't become markup; each card says its code."""
    (page,) = pages(["D014"], name='<script>"&</script>')
    written = draw.svg(page, title="<b>Cards</b>")
    root = ElementTree.fromstring(written)
    assert "<b>Cards</b>" == root.find(f"{SVG}title").text
    assert [0, 0] == [len(list(root.iter(f"{SVG}{tag}"))) for tag in ("text", "script")]
    labels = [group.get("aria-label") for group in root.iter(f"{SVG}g") if group.get("role") == "img"]
    assert ['Card D014 of section <script>"&</script>; its bars say D0145.'] == labels


@pytest.mark.parametrize("dpi", [150, 203, 300])
def test_bars_in_a_png_are_whole_pixels(dpi, tmp_path):
    """Each module is the same whole number of pixels, black or white, at the resolution asked for."""
    made = pages(["D014", "D015"], dot=25.4 / dpi)
    (file,) = draw.write(made, tmp_path / "cards.png", title="Cards", dpi=dpi)
    image = Image.open(file)
    assert (pytest.approx(dpi, abs=0.1), True) == (image.info["dpi"][0], abs(image.width - 215.9 / 25.4 * dpi) < 1)
    for each, text in zip(made[0].cards, ("D0145", "D0153"), strict=True):
        row = np.array(image.convert("L"))[round((each.bars.y + 9) / 25.4 * dpi)]
        first, pixels = round(each.bars.x / 25.4 * dpi), round(each.bars.module / 25.4 * dpi)
        wanted = np.full(79, 255)
        for left, right in written_edges(text):
            wanted[left:right] = 0
        assert np.abs(np.repeat(wanted, pixels) - row[first : first + 79 * pixels]).max() <= 2


def test_format_by_the_ending(tmp_path):
    """A PDF is one file, SVG and PNG are a file for each page, and no other format is guessed."""
    made = pages([f"D{number:03}" for number in range(1, 21)], dot=25.4 / 100)
    assert [tmp_path / "c.pdf"] == draw.write(made, tmp_path / "c.pdf", title="C")
    assert [tmp_path / "c-1.svg", tmp_path / "c-2.svg"] == draw.write(made, tmp_path / "c.svg", title="C")
    assert [tmp_path / "c-1.png", tmp_path / "c-2.png"] == draw.write(
        made, tmp_path / "c.PNG".lower(), title="C", dpi=100
    )
    assert [b"%PDF", b"<svg", b"\x89PNG"] == [
        (tmp_path / name).read_bytes()[:4] for name in ("c.pdf", "c-1.svg", "c-2.png")
    ]
    with pytest.raises(ValueError, match=r"\.gif"):
        draw.write(made, tmp_path / "c.gif", title="C")


@pytest.mark.parametrize("ending", ["pdf", "svg", "png"])
def test_cards_that_are_there_stay_where_new_ones_have_no_room(ending, tmp_path):
    """On a full disk a file of cards is what it was, and nothing of the new one is left beside it."""
    resource = pytest.importorskip("resource")  # POSIX
    file = tmp_path / f"c.{ending}"
    file.write_bytes(b"good")
    before = resource.getrlimit(resource.RLIMIT_FSIZE)
    resource.setrlimit(resource.RLIMIT_FSIZE, (100, before[1]))
    try:
        with pytest.raises(OSError, match="too large"):
            draw.write(pages(["D014"]), file, title="C")
    finally:
        resource.setrlimit(resource.RLIMIT_FSIZE, before)
    assert {file.name: b"good"} == {each.name: each.read_bytes() for each in tmp_path.iterdir()}


@pytest.mark.parametrize("colour", ["#ff9241", "#b3ebff"])
def test_without_a_panel_the_file_has_the_colour_behind_the_bars(colour):
    """Around the bars the section's colour is what the file shows."""
    out = io.BytesIO()
    design = CardDesign("Lamps", Paper(colour, "plain"), panel=False)
    draw.pdf(sheet.pages([sheet.slot_face("D014", design)], sheet.cut_layout(SHEETS["a4"], "3x6")), out, title="C")
    page = pypdfium2.PdfDocument(out.getvalue())[0]
    (boxes,) = bars(page)
    image = np.array(page.render(scale=2).to_pil().convert("RGB"))
    spot = image[int((boxes[0][1] + 5) / MM * 2), int((boxes[0][0] - 3) / MM * 2)]
    assert colour == "#" + "".join(f"{part:02x}" for part in spot)
