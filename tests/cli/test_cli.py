"""The commands, run as a person runs them."""

import json
import socket
import sqlite3

import numpy as np
import pypdfium2
import pytest
import zxingcpp
from click.testing import CliRunner
from pyzbar import pyzbar

from scanflow.cli import main
from scanflow.storage.database import REVISION


def run(*arguments):
    return CliRunner().invoke(main, [str(argument) for argument in arguments])


@pytest.fixture(scope="module")
def printed(tmp_path_factory):
    """A printed page of the cards D001 to D018, and the report about it."""
    out = tmp_path_factory.mktemp("cards") / "cards.pdf"
    result = run("cards", "D", "--numbers", "1-18", "--paper", "letter", "--grid", "3x6", "--out", out, "--json")
    assert result.exit_code == 0, result.output
    return pypdfium2.PdfDocument(out), json.loads(result.output)


# computed with python-stdnum
TEXTS = [
    *("D0016", "D0024", "D0032", "D0049", "D0057", "D0065", "D0073", "D0081", "D0090"),
    *("D0104", "D0112", "D0129", "D0137", "D0145", "D0153", "D0161", "D0170", "D0188"),
]


@pytest.mark.parametrize("dpi", [150, 200, 300])
def test_printed_cards_are_read_by_both_decoders(printed, dpi):
    """One Letter page of 18 cards is read whole by zxing-cpp and by zbar at each resolution."""
    page = printed[0][0]
    image = page.render(scale=dpi / 72).to_pil().convert("L")
    zxing = zxingcpp.read_barcodes(np.array(image))
    zbar = pyzbar.decode(image, symbols=[pyzbar.ZBarSymbol.CODE128])
    assert sorted(found.text for found in zxing) == TEXTS
    assert sorted(found.data.decode() for found in zbar) == TEXTS


def test_cards_report(printed):
    """The report names the file, its pages and every card text in order."""
    document, report = printed
    assert len(document) == report["pages"] == 1
    assert report["texts"] == TEXTS


def test_cards_in_plain_words(tmp_path):
    """Without --json the report is one sentence, and numbers may be a list of ranges."""
    result = run("cards", "lp", "--numbers", "1-18,25", "--out", tmp_path / "cards.pdf", "--name", "Lamps")
    assert (result.exit_code, result.output.startswith("19 cards on 2 pages in ")) == (0, True)


@pytest.mark.parametrize(
    ("changes", "status"),
    [
        (("--numbers", "1000"), 1),
        (("--grid", "9x9"), 1),
        (("--out", "/nonexistent/cards.pdf"), 1),
        (("--numbers", "18-1"), 2),
        (("--numbers", "one"), 2),
        (("--numbers", "1-18,18"), 2),
        (("--numbers", ""), 2),
        (("--grid", "3"), 2),
        (("--paper", "a5"), 2),
        (("--colour", "mauve"), 2),
    ],
)
def test_cards_refused(tmp_path, changes, status):
    """What can't be printed gives status 1, what makes no sense 2, and no file is left."""
    out = tmp_path / "cards.pdf"
    result = run("cards", "D", "--numbers", "1-18", "--out", out, *changes)
    assert (status, False) == (result.exit_code, out.exists())
    assert "Traceback" not in result.output


def test_malformed_section_is_refused(tmp_path):
    """A section is one or two letters."""
    assert run("cards", "ABC", "--numbers", "1", "--out", tmp_path / "cards.pdf").exit_code == 2


def test_a_port_in_use_is_told(tmp_path):
    """The service says in one line where it can't listen, and ends."""
    with socket.create_server(("127.0.0.1", 0)) as taken:
        port = taken.getsockname()[1]
        result = run("serve", "--port", port, "--data", tmp_path)
    told = f"Error: Can't listen at 127.0.0.1:{port}: Address already in use. Try another --port.\n"
    assert (1, told) == (result.exit_code, result.output)


def test_data_of_a_newer_version_is_told(tmp_path):
    """A command says in one line that it does not know the data's revision, and ends."""
    assert run("token", "printer", "--data", tmp_path).exit_code == 0
    with sqlite3.connect(tmp_path / "scanflow.db") as newer:
        newer.execute("UPDATE alembic_version SET version_num = '9999'")
    result = run("token", "scanner", "--data", tmp_path)
    told = (
        "Error: A newer scanflow has opened this database: its tables are of revision 9999, and this one knows them "
        f"up to {REVISION}. Start the newer one, or a copy of the data from before.\n"
    )
    assert (1, told) == (result.exit_code, result.output)
