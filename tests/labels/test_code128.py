"""Code 128 against published symbols and an independent encoder and decoder."""

import doctest
import hashlib
import itertools
import random

import numpy as np
import pytest
import zxingcpp
from hypothesis import given
from hypothesis import strategies as st

from labels import code128, slot_code


def bits(text):
    return "".join("10"[index % 2] * width for index, width in enumerate(code128.widths(text)))


def written_width(text):
    """Width in modules of the symbol that zxing-cpp writes."""
    symbol = zxingcpp.create_barcode(text, zxingcpp.BarcodeFormat.Code128)
    return np.array(symbol.to_image(scale=1, add_quiet_zones=False)).shape[1]


def read(text, pixels=2):
    """What zxing-cpp reads from our symbol, drawn at whole pixels a module with its quiet zones."""
    row = np.array([255 * (bit == "0") for bit in "0" * 10 + bits(text) + "0" * 10], dtype=np.uint8)
    image = np.tile(row.repeat(pixels), (20, 1))
    return [(found.text, found.format) for found in zxingcpp.read_barcodes(image)]


def test_doctests():
    """The examples in the module's docstrings hold."""
    assert doctest.testmod(code128).failed == 0


@pytest.mark.parametrize(
    ("text", "values", "modules"),
    [
        # ISO/IEC 15417 Annex A.1, as quoted in zint's tests
        ("AIM1234", (104, 33, 41, 45, 99, 12, 34, 87, 106), 101),
        # computed independently
        ("D014", (104, 36, 16, 17, 20, 97, 106), 79),
        ("D0145", (104, 36, 99, 1, 45, 6, 106), 79),
        # zint's tests
        ("1234", (105, 12, 34, 82, 106), 57),
    ],
)
def test_published_symbols(text, values, modules):
    """Symbols have the values and length of the published ones."""
    assert (values, modules) == (code128.values(text), code128.modules(text))


def test_published_bars():
    """The bars of AIM are those of the standard's first figure."""
    # ISO/IEC 15417 Fig. 1, as quoted in zint's tests
    assert bits("AIM") == "11010010000101000110001100010001010111011000101110110001100011101011"


def test_letter_as_check_would_cost_a_symbol():
    """A fourth digit is free, a letter costs eleven modules."""
    # computed independently
    assert [code128.modules(text) for text in ("D014", "D0145", "D014Y")] == [79, 79, 90]


def test_check_value_in_set_a():
    """The check of PJJ123C in code set A is 54."""
    # from memory
    assert code128.check_value((103, 48, 42, 42, 17, 18, 19, 35)) == 54


def test_table():
    """The widths are the standard's: all that its rule allows but a reversed stop, and the known digest."""
    # computed: the tables of zint, reportlab and python-barcode agree
    table = ["".join(str(len(list(run))) for _, run in itertools.groupby(p)) for p in code128.PATTERNS]
    assert (
        hashlib.sha256("\n".join(table).encode()).hexdigest()
    ) == "ff5682dc660b5ec33093cd3e68d09de085a6c267c4678037b380658a5ab51939"
    allowed = {
        "".join(map(str, widths))
        for widths in itertools.product((1, 2, 3, 4), repeat=6)
        if sum(widths) == 11 and sum(widths[::2]) % 2 == 0
    }
    assert allowed == {*table[:106], "233111", "211133"}


@pytest.mark.parametrize(("section", "digits"), [("D", 3), ("LP", 2), ("LP", 3)])
def test_whole_grammar_is_read_by_zxing(section, digits):
    """Every card text of a section is read back from its bars."""
    for number in range(10**digits):
        text = slot_code.card_text(slot_code.make(section, number, digits))
        assert [(text, zxingcpp.BarcodeFormat.Code128)] == read(text)


def test_every_card_of_a_section_is_as_long():
    """All card texts of one letter and four digits take 79 modules."""
    texts = [slot_code.card_text(slot_code.make("D", number)) for number in range(1000)]
    assert {79} == {code128.modules(text) for text in texts}


def test_minimal_length_of_card_texts():
    """No card text of 4, 5 or 6 digits, and no slip, is longer than what zxing-cpp writes."""
    pick = random.Random(128)
    texts = [
        slot_code.card_text(slot_code.make(section, pick.randrange(10**digits), digits))
        for section in ("D", "LP")
        for digits in (2, 3, 4, 5)
        for _ in range(60)
    ] + [slot_code.slip_text(pick.randrange(1, 10**6)) for _ in range(60)]
    assert {text: written_width(text) for text in texts} == {text: code128.modules(text) for text in texts}


@given(st.text(st.sampled_from("AB0123456789ab\x00\x01\x1f~"), min_size=1, max_size=16))
def test_minimal_length_of_any_text(text):
    """No mixture of code sets is longer than what zxing-cpp writes."""
    assert written_width(text) == code128.modules(text)


@given(st.text(st.characters(max_codepoint=127), min_size=1, max_size=12))
def test_any_ascii_text_is_read_by_zxing(text):
    """Any ASCII text is read back from its bars."""
    row = np.array([255 * (bit == "0") for bit in "0" * 10 + bits(text) + "0" * 10], dtype=np.uint8)
    found = zxingcpp.read_barcodes(np.tile(row.repeat(2), (20, 1)), text_mode=zxingcpp.TextMode.Plain)
    assert [text.encode()] == [bytes(symbol.bytes) for symbol in found]


@pytest.mark.parametrize("text", ["", "é", "\x80"])
def test_texts_outside_ascii_are_refused(text):
    """Only one or more ASCII characters can be encoded."""
    with pytest.raises(ValueError, match="ASCII"):
        code128.values(text)
