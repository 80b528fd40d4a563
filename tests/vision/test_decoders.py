"""The two decoders, and what is done where one is missing."""

import logging
import re
import subprocess
import sys
from pathlib import Path

import numpy as np
import pytest
import zxingcpp
from numpy.typing import NDArray

import scanflow
from scanflow.vision import decoders, zbar
from scanflow.vision.readings import Symbology

WITHOUT_LIBZBAR = """
import ctypes.util, logging, sys
ctypes.util.find_library = lambda name: None
logging.basicConfig(stream=sys.stdout, format="%(message)s")
from scanflow.vision import engines, read
print(engines())
for _ in range(2):
    print([(reading.text, reading.engine) for reading in read(open(sys.argv[1], "rb").read()).decoded])
"""


def test_all_readers_look_for_the_same_symbologies():
    """libzbar and the browser's own reader (Barcode Detection API) read all that cards may carry."""
    script = Path(scanflow.__file__).parent / "web" / "static" / "js" / "scanning" / "decoder.js"
    browsers = re.search(r"FORMATS = \[(.*?)\]", script.read_text(encoding="utf-8"))
    assert browsers is not None
    assert set(Symbology) == set(zbar.SYMBOLOGIES.values())
    assert set(Symbology) == {name.replace("_", "") for name in re.findall('"([a-z0-9_]+)"', browsers[1])}


def bars(text: str, symbology: zxingcpp.BarcodeFormat, quiet: int = 60) -> NDArray[np.uint8]:
    """Grey levels of a symbol, 4 pixels a module."""
    drawn = np.asarray(zxingcpp.create_barcode(text, symbology).to_image(scale=4))
    return np.pad(drawn, quiet, constant_values=255)


@pytest.mark.parametrize(
    ("text", "drawn", "expected"),
    [
        ("D0145", zxingcpp.BarcodeFormat.Code128, Symbology.CODE128),
        ("BOX-17", zxingcpp.BarcodeFormat.Code39, Symbology.CODE39),
        ("00123457", zxingcpp.BarcodeFormat.ITF, Symbology.ITF),
    ],
)
def test_both_read_each_symbology(text: str, drawn: zxingcpp.BarcodeFormat, expected: Symbology) -> None:
    """Each engine reads each of the three symbologies, and tells them apart."""
    picture = bars(text, drawn)

    assert [(text, expected)] == [(one.text, one.symbology) for one in decoders.zxing(picture)]
    assert [(text, expected)] == [(one.text, one.symbology) for one in decoders.zbar(picture)]


@pytest.mark.parametrize("quarters", [0, 1, 2, 3])
def test_both_begin_where_reading_begins(quarters: int) -> None:
    """Both engines' first two corners run along the text, clockwise, whichever way the card lies."""
    picture = np.ascontiguousarray(np.rot90(bars("D0145", zxingcpp.BarcodeFormat.Code128), -quarters))
    (one,), (other,) = decoders.zxing(picture), decoders.zbar(picture)

    apart = np.abs(np.array(one.corners) - np.array(other.corners)).max()
    assert apart <= 2 * 4 + 4, "zbar leaves out the last bar, of two modules"


def test_short_itf_is_dropped() -> None:
    """Four digits of ITF are as likely a piece of other bars."""
    picture = bars("1234", zxingcpp.BarcodeFormat.ITF)

    assert [] == decoders.zxing(picture) + decoders.zbar(picture)


def test_itf_of_zxing_is_sure_when_it_is_high() -> None:
    """zxing-cpp is believed alone where it read ITF along the bars, not on a sliver of them; zbar never."""
    picture = bars("3600081500", zxingcpp.BarcodeFormat.ITF)
    sliver = np.ascontiguousarray(picture[100:104])

    assert [True] == [one.sure for one in decoders.zxing(picture)]
    assert [False] == [one.sure for one in decoders.zxing(sliver)]
    assert [False] == [one.sure for one in decoders.zbar(picture)]


def test_code39_stays_as_it_is() -> None:
    """Six characters that could be a Code 32 number are given as printed."""
    picture = bars("3PRM8N", zxingcpp.BarcodeFormat.Code39)

    assert ["3PRM8N"] == [one.text for one in decoders.zxing(picture)]


def test_missing_libzbar_is_said_once_and_zxing_reads() -> None:
    """Without libzbar, zxing-cpp reads alone, and two reads give one message."""
    sample = Path(__file__).parents[2] / "sample_images" / "two_cards" / "d774_l624.jpg"
    done = subprocess.run([sys.executable, "-c", WITHOUT_LIBZBAR, sample], capture_output=True, text=True, check=True)

    reads = "[('D7745', 'zxing-cpp'), ('L6242', 'zxing-cpp')]"
    message = "libzbar is missing: zxing-cpp reads alone. Install libzbar0 (Debian) or zbar (Homebrew)."
    assert ["('zxing-cpp',)", message, reads, reads] == done.stdout.splitlines()


def test_nothing_is_said_where_both_are(caplog: pytest.LogCaptureFixture) -> None:
    """With both engines there is no message."""
    with caplog.at_level(logging.WARNING):
        decoders.say_if_alone((decoders.ZXING, decoders.ZBAR))

    assert [] == caplog.messages
