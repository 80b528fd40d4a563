"""Cards of another system are tried and adopted, and one card is printed again, as a person asks for it."""

from __future__ import annotations

import json

import numpy as np
import pypdfium2
import pytest
import zxingcpp
from click.testing import CliRunner
from PIL import Image

from labels.slot_code import card_text
from scanflow.cli import main
from scanflow.domain.things import Alias
from scanflow.shop import Shop
from scanflow.storage.database import Database
from scanflow.storage.engine import sqlite_url
from scanflow.workflow import stock


@pytest.fixture
def folder(tmp_path):
    """A shop's folder: D001 … D012, and a thing in D001."""
    shop = Shop(Database(sqlite_url(tmp_path / "shop")))
    shop.act(
        "owner",
        lambda unit: stock.add_section(
            unit, stock.AddSection(code="D", name="Derailleurs", slots_per_bin=4, colour="blue")
        ),
    )
    shop.act("owner", lambda unit: stock.add_slots(unit, "D", stock.AddSlots(count=12)))
    shop.act("owner", lambda unit: stock.put_away(unit, stock.PutAway(title="Rear derailleur", code="D001")))
    shop.close()
    return tmp_path / "shop"


def run(folder, *arguments):
    return CliRunner().invoke(main, [*(str(argument) for argument in arguments), "--data", str(folder)])


def answered(folder, *arguments, status=0):
    result = run(folder, *arguments, "--json")
    assert status == result.exit_code, result.output
    return json.loads(result.output)


def code39(path, text):
    """A picture of a card in Code 39."""
    bars = np.asarray(zxingcpp.create_barcode(text, zxingcpp.BarcodeFormat.Code39Std).to_image(scale=4))
    page = Image.new("L", (bars.shape[1] + 160, bars.shape[0] + 160), 255)
    page.paste(Image.fromarray(bars), (80, 80))
    page.save(path)
    return path


def test_ten_cards_are_tried(folder, tmp_path):
    """Ten pictures in Code 39: all read by both engines, all known, two slots still without a card."""
    pictures = [code39(tmp_path / f"{n}.png", f"D{n:03}") for n in range(1, 11)]
    report = answered(folder, "adopt", "test", "d", *pictures)
    assert (10, 10, {"zxing-cpp+zbar": 10}, {"code39": 10}) == tuple(
        report[name] for name in ("shown", "read", "engines", "symbologies")
    )
    assert {"text": "D001", "code": "D001", "form": "slot_code", "looks": 1} == report["known"][0]
    assert ("mod_11_10", ["D011", "D012"]) == (report["check"], report["without_card"])
    words = run(folder, "adopt", "test", "D", *pictures).output
    assert "10 of 10 cards read" in words
    assert "10 have no check digit: they count only once cards of another system do" in words


def test_what_went_wrong_is_told(folder, tmp_path):
    """An empty picture, a file that is none, and a text of no slot: each is named, and the status is 1."""
    Image.new("L", (400, 200), 255).save(tmp_path / "empty.png")
    (tmp_path / "torn.png").write_bytes(b"torn")
    pictures = [tmp_path / "empty.png", tmp_path / "torn.png", code39(tmp_path / "box.png", "BOX-17")]
    report = answered(folder, "adopt", "test", "D", *pictures, status=1)
    assert (3, 1, ["BOX-17"]) == (report["shown"], report["read"], report["unknown"])
    assert [str(tmp_path / "empty.png"), True] == [report["unread"][0], "torn.png" in report["unread"][1]]
    words = run(folder, "adopt", "test", "D", *pictures).output
    assert "1 of 3 cards read" in words
    assert "“BOX-17” names no slot of the room." in words


def test_typed_texts_are_tried(folder, tmp_path):
    """Texts in a file, a line each: two of one slot are ambiguous; without a check each is scanned twice."""
    (tmp_path / "texts.txt").write_text(f"D002\n\n{card_text('D002')}\nD003\n")
    report = answered(folder, "adopt", "test", "D", "--texts", tmp_path / "texts.txt", status=1)
    assert [{"kind": "several_texts", "texts": ["D002", "D0024"], "codes": ["D002"]}] == report["ambiguous"]
    assert [2, 1, 2] == [each["looks"] for each in report["known"]]
    words = run(folder, "adopt", "test", "D", "--texts", tmp_path / "texts.txt").output
    assert "D002 has more than one card: “D002” and “D0024”. Keep one of them." in words


def test_texts_are_adopted(folder, tmp_path):
    """Rows of text and code are adopted; a refused row is told with its number, and the others stand."""
    (tmp_path / "cards.csv").write_text("Text,Code\nBOX-17,d002\nD003,D004\nBOX-18,D999\nlonely\n")
    report = answered(folder, "adopt", "texts", tmp_path / "cards.csv", status=1)
    assert (1, [3, 4, 5]) == (report["adopted"], [each["row"] for each in report["refused"]])
    assert "Row 3 was refused: D003 means D003 already." in run(folder, "adopt", "texts", tmp_path / "cards.csv").output
    database = Database(sqlite_url(folder))
    with database.reading(Shop(database).clock()) as unit:
        assert (Alias("BOX17", "D002", "BOX-17"),) == unit.find(Alias)
    database.close()


def test_the_check_is_chosen(folder, tmp_path):
    """The room's check is set, and the test scan tells it."""
    (tmp_path / "texts.txt").write_text("D002\n")
    assert 0 == run(folder, "adopt", "check", "none").exit_code
    assert "none" == answered(folder, "adopt", "test", "D", "--texts", tmp_path / "texts.txt")["check"]
    assert "count only after" not in run(folder, "adopt", "test", "D", "--texts", tmp_path / "texts.txt").output


@pytest.mark.parametrize(("arguments", "status"), [(("D",), 2), (("X", "--texts", __file__), 1)])
def test_wrong_usage(folder, arguments, status):
    """Nothing to try, or no such section."""
    assert status == run(folder, "adopt", "test", *arguments).exit_code


def test_one_card_is_printed_again(folder, tmp_path):
    """The PDF has that one card, and it scans."""
    report = answered(folder, "reprint", "d001", "--out", tmp_path / "card.pdf", "--text", card_text("D001"))
    assert {"code": "D001", "out": str(tmp_path / "card.pdf")} == report
    image = pypdfium2.PdfDocument(tmp_path / "card.pdf")[0].render(scale=200 / 72).to_pil().convert("L")
    assert [card_text("D001")] == [found.text for found in zxingcpp.read_barcodes(image)]
    assert (
        "destroy the old one" in run(folder, "reprint", "D001", "--out", tmp_path / "2.pdf", "--text", "D0016").output
    )


@pytest.mark.parametrize(
    ("more", "words"),
    [
        (("--lost", "Gone"), "Report card D001 lost first."),
        ((), "Read the text of the damaged card"),
        (("--text", card_text("D002")), "This is not the text of card D001."),
        (("--text", card_text("D001"), "--grid", "9x9"), "wide"),
    ],
)
def test_no_card_without_cause(folder, tmp_path, more, words):
    """Refused in one line, with status 1 and no file; a card that would be too small as well."""
    result = run(folder, "reprint", "D001", "--out", tmp_path / "card.pdf", *more)
    assert (1, True, False) == (result.exit_code, words in result.output, (tmp_path / "card.pdf").exists())
