"""An area is counted from photos, as a person asks for it."""

from __future__ import annotations

import json
from pathlib import Path

import cv2
import numpy as np
import pytest
import zxingcpp
from click.testing import CliRunner, Result
from PIL import Image

from labels.slot_code import bin_text, card_text
from scanflow.cli import main
from scanflow.cli.stocktake import place_of
from scanflow.demo.snapshot import photograph
from scanflow.domain.counts.stocktake import Look
from scanflow.shop import Shop
from scanflow.storage.database import Database
from scanflow.storage.engine import sqlite_url
from scanflow.workflow import stock

EVERYWHERE = {"A-1-1": ["D001", "D002", "D003"], "A-1-2": ["D004"]}


@pytest.fixture
def folder(tmp_path: Path) -> Path:
    """A shop's folder: D001 … D006, three to a bin, with things in the first four."""
    shop = Shop(Database(sqlite_url(tmp_path / "shop")))
    shop.act(
        "owner",
        lambda unit: stock.add_section(
            unit, stock.AddSection(code="D", name="Derailleurs", slots_per_bin=3, colour="blue")
        ),
    )
    shop.act("owner", lambda unit: stock.add_slots(unit, "D", stock.AddSlots(count=6)))
    for code in ("D001", "D002", "D003", "D004"):
        shop.act(
            "owner", lambda unit, code=code: stock.put_away(unit, stock.PutAway(title=f"Thing of {code}", code=code))
        )
    shop.close()
    return tmp_path / "shop"


def taken(path: Path, *texts: str) -> Path:
    """A photograph of the bars of these texts, one above the other."""
    page = Image.new("L", (700, 200 * len(texts)), 255)
    for place, text in enumerate(texts):
        bars = zxingcpp.create_barcode(text, zxingcpp.BarcodeFormat.Code128).to_image(scale=4)
        page.paste(Image.fromarray(np.asarray(bars)), (60, 200 * place + 40))
    path.parent.mkdir(exist_ok=True)
    path.write_bytes(photograph(np.asarray(page.convert("RGB")), seed=len(texts), tilt=2))
    return path


def photos(tmp_path: Path, bins: dict[str, list[str]]) -> list[Path]:
    """A photo of each bin, called after it."""
    return [taken(tmp_path / f"{name}.jpg", *map(card_text, codes)) for name, codes in bins.items()]


def run(folder: Path, *arguments: object) -> Result:
    return CliRunner().invoke(main, ["stocktake", *map(str, arguments), "--data", str(folder)])


HIDDEN = "Look at A-1-1 again. Some that belong there were not seen. Other things may hide them."


def counted(folder: Path, *arguments: object, status: int) -> dict:
    result = run(folder, *arguments, "--json")
    assert status == result.exit_code, result.output
    return json.loads(result.output)


def test_a_right_section_has_status_0(folder: Path, tmp_path: Path) -> None:
    """Every thing is where it belongs: no findings, and the report says how far they may be wrong."""
    report = counted(folder, "section:D", *photos(tmp_path, EVERYWHERE), status=0)["report"]
    assert (2, 2, []) == (report["places"], report["looked"], report["findings"])
    # Clopper and Pearson, none wrong of 4: 0.05 / 2 = p ** 4
    assert [[round(0.025**0.25, 4), 1.0]] == [row["agreement"] for row in report["sections"]]


def test_what_is_amiss_is_told(folder: Path, tmp_path: Path) -> None:
    """Each in the other's bin, a free card on a shelf, a card of another shop; a thing that is gone may be hidden."""
    amiss = photos(tmp_path, {"A-1-1": ["D001", "D004", "Q077"], "A-1-2": ["D005", "D003"]})
    result = run(folder, "section:D", *amiss)
    assert [
        "elsewhere: D003 (Thing of D003): In A-1-2, not in A-1-1. It was seen there, and nowhere else.",
        "elsewhere: D004 (Thing of D004): In A-1-1, not in A-1-2. It was seen there, and nowhere else.",
        "slot free: D005: A free card in A-1-2. By the records its slot is empty.",
        f"unknown: {card_text('Q077')}: A foreign card in A-1-1. No slot of this room has this number.",
        f"unreadable: {HIDDEN}",
        "2 of 2 places looked at: 2 elsewhere, 1 slot free, 1 unknown, 1 unreadable.",
    ] == result.output.splitlines()
    assert 1 == result.exit_code


def test_what_photos_do_not_show_is_looked_for_again(folder: Path, tmp_path: Path) -> None:
    """Another thing may hide it in all of them."""
    again = taken(tmp_path / "A-1-1 again.jpg", *map(card_text, ["D003", "D001"]))
    result = run(folder, "bin:A-1-1", *photos(tmp_path, {"A-1-1": ["D001", "D003"]}), again)
    assert [
        f"unreadable: {HIDDEN}",
        "1 of 1 places looked at: 1 unreadable.",
    ] == result.output.splitlines()


def test_what_is_not_looked_at_is_not_missing(folder: Path, tmp_path: Path) -> None:
    """One bin's photo says nothing of the other."""
    report = counted(folder, "room", *photos(tmp_path, {"A-1-2": ["D004"]}), status=0)["report"]
    assert (["A-1-1", "tray"], []) == (report["not_looked"], report["findings"])


def test_a_label_in_the_picture_says_which_bin_it_is(folder: Path, tmp_path: Path) -> None:
    """Whatever the photo's name says."""
    image = taken(tmp_path / "A-1-1.jpg", bin_text("A-1-2"), card_text("D004"))
    assert ["A-1-2"] == [each["place"] for each in counted(folder, "section:D", image, status=0)["images"]]


def test_where_labels_do_not_tell_the_name_does(folder: Path, tmp_path: Path) -> None:
    """Those of two bins one above the other, as no shelf has them; without a name the photo can't be used."""
    both = [bin_text("A-1-1"), bin_text("A-1-2"), card_text("D004")]
    named, nameless = taken(tmp_path / "A-1-2.jpg", *both), taken(tmp_path / "some" / "where.jpg", *both)
    assert ["A-1-2"] == [each["place"] for each in counted(folder, "section:D", named, status=0)["images"]]
    (image,) = counted(folder, "section:D", nameless, status=1)["images"]
    assert "There are the labels of A-1-1, A-1-2 in view. Say which bin it is." == image["error"]


def test_photos_that_can_not_be_used_are_told(folder: Path, tmp_path: Path) -> None:
    """One that is no picture, and one of nobody knows which bin: status 1, and without any other the count is off."""
    broken, nameless = tmp_path / "A-1-1.jpg", taken(tmp_path / "some" / "where.jpg", card_text("D001"))
    broken.write_text("no picture")
    result = run(folder, "section:D", broken, nameless)
    assert [
        f"{broken}: This file is not a picture that can be opened here. "
        "Send the photo as JPEG, PNG, WebP, HEIC or AVIF.",
        f"{nameless}: Say which bin this is, or have its label in view.",
        "Nothing was counted.",
    ] == result.output.splitlines()
    assert 1 == result.exit_code


def test_photos_are_drawn(folder: Path, tmp_path: Path) -> None:
    """A copy of each with its readings, in a folder of its own."""
    images = photos(tmp_path, {"A-1-1": ["D001", "D004"]})
    counted(folder, "bin:A-1-1", *images, "--draw", tmp_path / "drawn", status=1)
    drawn = Image.open(tmp_path / "drawn" / "A-1-1.jpg")
    assert Image.open(images[0]).size == drawn.size


def test_the_count_is_kept_with_its_photos(folder: Path, tmp_path: Path) -> None:
    """It can be put right later: its looks are in the shop, and each has its photo."""
    done = counted(folder, "section:D", *photos(tmp_path, EVERYWHERE), "--note", "Sunday", status=0)
    shop = Shop(Database(sqlite_url(folder)))
    with shop.looking() as unit:
        looks = unit.find(Look, stocktake=done["stocktake"])
    shop.close()
    assert ({"A-1-1", "A-1-2"}, [True, True]) == ({look.place for look in looks}, [bool(look.photo) for look in looks])
    assert "Sunday" == done["report"]["note"]


@pytest.mark.parametrize("area", ["shelf", "bin:Z-1-1"])
def test_an_area_that_is_none_is_wrong_usage(folder: Path, tmp_path: Path, area: str) -> None:
    """Status 2, and what to write instead."""
    assert 2 == run(folder, area, *photos(tmp_path, {"A-1-2": ["D004"]})).exit_code


@pytest.mark.parametrize(
    ("image", "place"),
    [
        ("A-1-1.jpg", "A-1-1"),
        ("a-1-10 left.jpg", "A-1-10"),
        ("A-1-1_2.jpg", "A-1-1"),
        ("A-1-1/IMG_0001.jpg", "A-1-1"),
        ("tray.png", "tray"),
        ("A-1-12.jpg", None),
        ("IMG_0001.jpg", None),
    ],
)
def test_a_photos_name_says_its_place(tmp_path: Path, image: str, place: str | None) -> None:
    """Its own name first, then its folder's; A-1-12 is not A-1-1."""
    assert place == place_of(tmp_path / image, ["A-1-1", "A-1-10", "tray"])


def filmed(path: Path, *bins: Path) -> Path:
    """A film of a walk past bins that stand side by side, from before the first to behind the last."""
    views = [np.asarray(Image.open(each).convert("RGB").resize((960, 800))) for each in bins]
    aside = np.full((800, 600, 3), 90, np.uint8)
    shelf = np.hstack([aside, *views, aside])[:, :, ::-1]
    out = cv2.VideoWriter(str(path), cv2.VideoWriter.fourcc(*"MJPG"), 10, (1100, 800))
    for left in range(0, shelf.shape[1] - 1100, 30):
        out.write(np.ascontiguousarray(shelf[:, left : left + 1100]))
    out.release()
    return path


def test_a_film_of_a_walk_is_counted(folder: Path, tmp_path: Path) -> None:
    """Its frames are looks into the bins whose labels are in view, and what is amiss is found as in photos."""
    first = taken(tmp_path / "left.jpg", bin_text("A-1-1"), *map(card_text, ["D001", "D002"]))
    second = taken(tmp_path / "right.jpg", bin_text("A-1-2"), *map(card_text, ["D004", "D003"]))
    counts = counted(folder, "section:D", filmed(tmp_path / "walk.avi", first, second), status=1)
    assert {"A-1-1", "A-1-2"} == {each["place"] for each in counts["images"]}
    found = [(each["kind"], each["subject"]) for each in counts["report"]["findings"] if each["kind"] != "unreadable"]
    assert [("elsewhere", "D003")] == found


def test_films_that_can_not_be_used_are_told(folder: Path, tmp_path: Path) -> None:
    """One that is none, and one in which no bin's label is in view."""
    broken, silent = tmp_path / "broken.mp4", tmp_path / "some" / "where.avi"
    broken.write_text("no film")
    filmed(silent, taken(tmp_path / "some" / "where.jpg", card_text("D001")))
    result = run(folder, "section:D", broken, silent)
    assert [
        f"{broken}: This can't be played as a film.",
        f"{silent}: No frame shows a bin's label. Film one bin a film and call it after the bin, "
        "or walk with labels in view.",
        "Nothing was counted.",
    ] == result.output.splitlines()
    assert 1 == result.exit_code
