"""Every kind of card, printed, blurred and noisy, is read by two decoders that know nothing of us."""

import io
from string import ascii_uppercase

import cv2
import numpy as np
import pypdfium2
import pytest
import zxingcpp
from pyzbar import pyzbar

from labels import draw, sheet, slot_code
from labels.card import CardDesign, Style
from labels.colour import linear
from labels.paper import COLOURS, SHEETS

DPI = 200
BLUR = 1.2  # standard deviation in pixels
NOISE = 2  # in grey levels; at 4 zbar reads few of these sheets, zxing-cpp all of them
BLACK, WHITE = 15, 235  # no picture is exposed so that its noise is cut off at white
SECTIONS = [*ascii_uppercase, "AB", "BX", "FR", "HS", "LP", "OI", "RD", "ST", "WW", "ZZ"]
CODES = [slot_code.make(section, 997 * place % 1000) for place, section in enumerate(SECTIONS, start=1)]
ALONE = sheet.label_layout((82, 56), "1x1", (72, 46), (5, 5), (72, 46))
GRIDS = {"letter": "3x6", "a4": "3x6", "legal": "3x8", "4x6": "1x3"}


def seen(design, layout, channel, codes=CODES):
    """Grey pictures of the printed pages at 200 dpi, by `channel` of linear light, with blur and noise."""
    return printed([sheet.slot_face(code, design) for code in codes], layout, channel)


def printed(faces, layout, channel):
    """The same of any faces."""
    out = io.BytesIO()
    draw.pdf(sheet.pages(faces, layout), out, title="Cards")
    random = np.random.default_rng(7)
    with pypdfium2.PdfDocument(out.getvalue()) as document:
        for page in document:
            image = channel(page.render(scale=DPI / 72, rev_byteorder=True).to_numpy()[..., :3])
            exposed = BLACK + image.astype(np.float32) * (WHITE - BLACK) / 255
            blurred = cv2.GaussianBlur(exposed, (0, 0), BLUR)
            grain = random.normal(0, NOISE, blurred.shape).astype(np.float32)
            yield np.clip(blurred + grain, 0, 255).astype(np.uint8)


def camera(image):
    """What a grey picture holds."""
    return cv2.cvtColor(image, cv2.COLOR_RGB2GRAY)


def red_light(image):
    """Red reflectance: the red channel made linear."""
    table = np.array([255 * linear(f"#{level:02x}0000")[0] for level in range(256)]).astype(np.uint8)
    return table[image[..., 0]]


def read(pictures):
    """Texts by zxing-cpp and by zbar, sorted."""
    zxing, zbar = [], []
    for picture in pictures:
        zxing += [found.text for found in zxingcpp.read_barcodes(picture, formats=zxingcpp.BarcodeFormat.Code128)]
        zbar += [found.data.decode() for found in pyzbar.decode(picture, symbols=[pyzbar.ZBarSymbol.CODE128])]
    return sorted(zxing), sorted(zbar)


@pytest.mark.parametrize("style", [Style.FILED, Style.FACE, Style.TAG])
@pytest.mark.parametrize(("colour", "paper"), list(zip(COLOURS, [*GRIDS] * 2, strict=True)))
def test_cards_of_36_sections_are_read_by_both(style, colour, paper):
    """On every paper, in every style and colour, each of 36 sections' cards is read, and nothing else."""
    texts = sorted(slot_code.card_text(code) for code in CODES)
    layout = sheet.cut_layout(SHEETS[paper], GRIDS[paper])
    assert (texts, texts) == read(seen(CardDesign("Derailleurs", COLOURS[colour], style), layout, camera))


def test_fronts_of_bins_are_read_by_both():
    """Their bars say which bin it is, on every paper of a section."""
    names = [f"{rack}-{tier}-{tier + 9}" for tier, rack in enumerate("ABCDEFGHIJ", start=1)]
    looks = [CardDesign("Derailleurs", COLOURS[colour], Style.BIN) for colour in COLOURS]
    faces = [sheet.bin_face("D001", "D020", *pair) for pair in zip(names, looks, strict=False)]
    texts = sorted(slot_code.bin_text(name) for name in names[: len(faces)])
    assert (texts, texts) == read(printed(faces, sheet.cut_layout(SHEETS["a4"], "2x4"), camera))


@pytest.mark.parametrize("channel", [camera, red_light])
@pytest.mark.parametrize("colour", COLOURS)
def test_bars_straight_on_every_section_paper_are_read_by_both(colour, channel):
    """Without the white panel, every section paper leaves enough contrast for a camera and for red light."""
    texts = sorted(slot_code.card_text(code) for code in CODES[20:30])
    design = CardDesign("Lamps", COLOURS[colour], panel=False)
    assert (texts, texts) == read(seen(design, ALONE, channel, CODES[20:30]))


def test_bars_on_a_refused_paper_are_lost():
    """The colours refused without a panel are those that decoders lose: deep blue under red light."""
    design = CardDesign("Lamps", COLOURS["white"], panel=False)
    blue = lambda image: red_light(np.minimum(image, np.uint8([0x1F, 0x5F, 0xBF])))  # noqa: E731
    assert ([], []) == read(seen(design, ALONE, blue, CODES[:6]))
