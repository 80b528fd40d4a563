"""``scanflow read``: photos in, one line each out."""

import json
from pathlib import Path

from click.testing import CliRunner
from pictures import as_file, card

from scanflow.cli import main

SAMPLES = Path(__file__).parents[1] / "sample_images"


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
        f"{good}: S0374 (code128, by zxing-cpp+zbar)",
        f"{blank}: no code read",
        f"{empty}: This file is not a picture. Send the photo as JPEG, PNG or WebP.",
    ] == done.stdout.splitlines()


def test_no_image_is_wrong_usage() -> None:
    """Without an image there is nothing to do, and the status says how it was called."""
    assert 2 == CliRunner().invoke(main, ["read"]).exit_code
