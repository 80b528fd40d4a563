"""``scanflow read``: photos in, one line each out."""

import json
from pathlib import Path

import pytest
from click.testing import CliRunner
from pictures import as_file, card
from PIL import Image

from scanflow.cli import main
from scanflow.cli.read import as_result, book_of, in_words
from scanflow.vision import Certainty, PictureReadings, Reading, Symbology

SAMPLES = Path(__file__).parents[2] / "sample_images"
GOOD = SAMPLES / "straight" / "s037.jpg"


def test_json_is_one_line_an_image_in_the_order_given(tmp_path: Path) -> None:
    """Each image has its line with the argument as given, its size, its reads and their corners."""
    second = tmp_path / "card.png"
    second.write_bytes(as_file(card()))
    images = [str(SAMPLES / "two_cards" / "d774_l624.jpg"), str(second), str(SAMPLES / "no_code" / "type.jpg")]
    done = CliRunner().invoke(main, ["read", "--json", *images])
    lines = [json.loads(line) for line in done.stdout.splitlines()]

    assert 0 == done.exit_code
    assert images == [line["image"] for line in lines]
    assert [["D7745", "L6242"], ["D0145"], []] == [[read["text"] for read in line["reads"]] for line in lines]
    assert (480, 300, None) == (lines[1]["width"], lines[1]["height"], lines[1]["error"])
    assert [{"image", "width", "height", "ms", "error", "reads"}] * 3 == [set(line) for line in lines]
    (read,) = lines[1]["reads"]
    assert {"text", "symbology", "certainty", "engine", "corners"} == set(read)
    assert ("code128", "decoded", "zxing-cpp+zbar") == (read["symbology"], read["certainty"], read["engine"])
    assert [2, 2, 2, 2] == [len(corner) for corner in read["corners"]]


def test_an_image_that_can_not_be_opened_gives_status_1(tmp_path: Path) -> None:
    """The others are read, the one that can't be has its error, and the status says so."""
    torn = tmp_path / "torn.jpg"
    torn.write_bytes(as_file(card(), "JPEG")[:2000])
    good = str(SAMPLES / "straight" / "s037.jpg")
    done = CliRunner().invoke(main, ["read", "--json", str(torn), good, str(tmp_path / "none.jpg")])
    lines = [json.loads(line) for line in done.stdout.splitlines()]

    assert 1 == done.exit_code
    assert [True, False, True] == [line["error"] is not None for line in lines]
    assert [[], ["S0374"], []] == [[read["text"] for read in line["reads"]] for line in lines]
    assert (0, 0) == (lines[0]["width"], lines[0]["height"])


def test_a_person_gets_words(tmp_path: Path) -> None:
    """Without --json each image has a line to read."""
    empty, good = tmp_path / "empty.jpg", SAMPLES / "straight" / "s037.jpg"
    empty.touch()
    blank = SAMPLES / "no_code" / "type.jpg"
    done = CliRunner().invoke(main, ["read", str(good), str(blank), str(empty)])

    assert [
        f"{good}: S0374 (decoded, code128, by zxing-cpp+zbar)",
        f"{blank}: no code read",
        f"{empty}: This file is not a picture that can be opened here. "
        "Send the photo as JPEG, PNG, WebP, HEIC or AVIF.",
    ] == done.stdout.splitlines()


def test_how_sure_each_is_said_in_words() -> None:
    """Decoded and matched stand with their texts, what is unread is counted; JSON has null for its text."""
    corners = ((0.0, 0.0), (9.0, 0.0), (9.0, 5.0), (0.0, 5.0))
    readings = (
        Reading(None, Symbology.CODE128, "locate", corners, Certainty.UNREAD),
        Reading("D0153", Symbology.CODE128, "match", corners, Certainty.MATCHED),
        Reading("D0145", Symbology.CODE128, "zbar", corners),
        Reading(None, Symbology.CODE128, "locate", corners, Certainty.UNREAD),
    )
    result = as_result("a.jpg", PictureReadings(10, 6, 1.0, readings))

    assert "a.jpg: D0153 (matched), D0145 (decoded, code128, by zbar), 2 unread labels" == in_words(result)
    (first, *_) = json.loads(json.dumps(result))["reads"]
    assert {"symbology": "code128", "certainty": "unread", "engine": "locate"} | {
        "text": None,
        "corners": [[0, 0], [9, 0], [9, 5], [0, 5]],
    } == first


def test_drawings_have_names_of_their_own(tmp_path: Path) -> None:
    """Two images of equal names, or names that differ in case, give two drawings; each is as large as its image."""
    images = [tmp_path / name for name in ("a/card.png", "b/card.png", "b/CARD.jpg")]
    for image in images:
        image.parent.mkdir(exist_ok=True)
        image.write_bytes(as_file(card()))
    out = tmp_path / "out" / "deeper"
    done = CliRunner().invoke(main, ["read", "--draw", str(out), *map(str, images)])

    assert 0 == done.exit_code
    assert ["CARD-3.jpg", "card-2.jpg", "card.jpg"] == sorted(path.name for path in out.iterdir())
    assert [(480, 300)] * 3 == [Image.open(path).size for path in out.iterdir()]


def test_no_drawing_takes_the_place_of_a_photo(tmp_path: Path) -> None:
    """The folder of a photo is refused as the folder of the drawings, and the photo stays."""
    image = tmp_path / "card.jpg"
    image.write_bytes(as_file(card(), "JPEG"))
    before = image.read_bytes()
    done = CliRunner().invoke(main, ["read", str(image), "--draw", str(tmp_path / "x" / "..")])

    assert (2, before) == (done.exit_code, image.read_bytes())
    assert "Choose another" in done.stderr


def test_an_image_without_pixels_has_no_drawing(tmp_path: Path) -> None:
    """Its error is told, nothing is drawn of it, and the others are."""
    (tmp_path / "torn.jpg").write_bytes(b"torn")
    out = tmp_path / "out"
    done = CliRunner().invoke(main, ["read", str(tmp_path / "torn.jpg"), str(GOOD), "--draw", str(out)])

    assert 1 == done.exit_code
    assert ["s037.jpg"] == [path.name for path in out.iterdir()]


def test_codes_are_one_a_line(tmp_path: Path) -> None:
    """Blank lines, spaces around a text and a byte order mark don't count; what was decoded stays decoded."""
    codes = tmp_path / "codes.txt"
    codes.write_text("\ufeffS0374\r\n\r\n  D0145 \n\n", encoding="utf-8")
    done = CliRunner().invoke(main, ["read", "--json", "--codes", str(codes), str(GOOD)])

    assert 0 == done.exit_code
    assert [("S0374", "decoded")] == [
        (read["text"], read["certainty"]) for read in json.loads(done.stdout)["reads"] if read["certainty"] != "unread"
    ]
    assert ("D0145", "S0374") == book_of(codes).texts


@pytest.mark.parametrize(
    ("content", "words"),
    [("D0145\n\nGröße\n".encode(), "Line 3 of"), ("D0145\nGröße".encode("latin-1"), "not a text in UTF-8")],
)
def test_a_bad_list_of_codes_is_wrong_usage(tmp_path: Path, content: bytes, words: str) -> None:
    """A text that no bars can carry is named by its line, before any image is read."""
    codes = tmp_path / "codes.txt"
    codes.write_bytes(content)
    done = CliRunner().invoke(main, ["read", "--codes", str(codes), str(GOOD)])

    assert (2, "") == (done.exit_code, done.stdout)
    assert words in done.stderr


def test_no_image_is_wrong_usage() -> None:
    """Without an image there is nothing to do, and the status says how it was called."""
    assert 2 == CliRunner().invoke(main, ["read"]).exit_code
