"""``scanflow printcheck``: scans of printed cards in, an estimate each out."""

import json
from pathlib import Path
from xml.etree import ElementTree

from click.testing import CliRunner, Result
from pictures import as_file
from PIL import Image
from print_faults import picture, symbol

from labels import draw, sheet
from scanflow.cli import main

SAMPLES = Path(__file__).parents[3] / "sample_images"


def run(*arguments: str | Path) -> Result:
    return CliRunner().invoke(main, ["printcheck", *map(str, arguments)])


def saved(path: Path, image: Image.Image, dpi: int = 300) -> Path:
    path.write_bytes(as_file(image, dpi=(dpi, dpi)))
    return path


def test_good_cards_give_status_0(tmp_path: Path) -> None:
    """A well printed card is an A, in words, and nothing is left to do."""
    good = saved(tmp_path / "good.png", picture(symbol()))
    done = run(good)

    assert 0 == done.exit_code, done.output
    assert (
        f"{good}: D0145: estimate A (4.0 of 4). Nothing to improve: print, laminate and cut the others like this.\n"
        == done.stdout
    )


def test_json_is_one_line_an_image(tmp_path: Path) -> None:
    """Each image has its line: cards with estimate, measures, weakest and advice, or an error; the worst decides."""
    poor = saved(tmp_path / "poor.png", picture(symbol(dark=0.55)))
    torn = tmp_path / "torn.png"
    torn.write_bytes(poor.read_bytes()[:300])
    done = run("--json", poor, SAMPLES / "no_code" / "qr.jpg", torn)
    first, none, broken = (json.loads(line) for line in done.stdout.splitlines())
    (card,) = first["cards"]

    assert 1 == done.exit_code
    assert (str(poor), None) == (first["image"], first["error"])
    assert ("D0145", {"letter": "F", "grade": 0.0}, "minimum reflectance") == (
        card["text"],
        card["estimate"],
        card["weakest"],
    )
    assert (0.45, []) == (round(card["measures"]["symbol contrast"], 2), card["disturbances"])
    assert "full black" in card["advice"]
    assert ([], None, []) == (none["cards"], none["error"], broken["cards"])
    assert "damaged" in broken["error"]


def test_a_picture_without_cards_gives_status_1() -> None:
    """Nothing read is nothing judged."""
    done = run(SAMPLES / "no_code" / "qr.jpg")

    assert (1, True) == (done.exit_code, "nothing to judge" in done.stdout)


def test_a_picture_too_coarse_is_not_judged() -> None:
    """A photo from far away gives no letter, its advice, and status 1."""
    done = run(SAMPLES / "far" / "l406.jpg")

    assert 1 == done.exit_code
    assert "L4069: not judged. The picture is too coarse" in done.stdout


def test_the_poorest_line_is_drawn(tmp_path: Path) -> None:
    """With --draw each card has its SVG in the folder, made if need be."""
    good = saved(tmp_path / "good one.png", picture(symbol()))
    done = run(good, "--draw", tmp_path / "new" / "folder")
    (drawn,) = (tmp_path / "new" / "folder").iterdir()

    assert 0 == done.exit_code, done.output
    assert "1-good_one-1-D0145.svg" == drawn.name
    assert "D0145: estimate A, its poorest line A" == ElementTree.parse(drawn).getroot()[0].text


def test_a_drawing_that_can_not_be_written_says_so(tmp_path: Path) -> None:
    """A folder that can't be made is refused in words."""
    good = saved(tmp_path / "good.png", picture(symbol()))
    done = run(good, "--draw", good / "inside")

    assert (1, True) == (done.exit_code, "can't be written" in done.output)


def test_a_sheet_tells_that_the_printer_scaled(tmp_path: Path) -> None:
    """A scan at 300 dpi of modules meant to be wider says at how many per cent it was printed."""
    scan = saved(tmp_path / "scan.png", picture(symbol()))

    assert "printed at 94% of its size" in run(scan, "--module", "0.72").stdout
    assert "of its size" not in run(scan, "--module", "0.677").stdout


def test_every_card_of_a_rendered_sheet_is_judged(tmp_path: Path) -> None:
    """The cards of a sheet as a scanner of 300 dpi sees it are all found, all undisturbed, and all an A or B."""
    import pypdfium2

    codes = [f"D{number:03}" for number in range(1, 19)]
    pages = sheet.sheets(codes, section_name="Derailleurs", colour="yellow", paper="letter", grid="3x6")
    draw.pdf(pages, tmp_path / "cards.pdf", title="Cards")
    page = pypdfium2.PdfDocument(tmp_path / "cards.pdf")[0].render(scale=300 / 72).to_pil().convert("L")
    done = run("--json", saved(tmp_path / "sheet.png", page))
    cards = json.loads(done.stdout)["cards"]

    assert 0 == done.exit_code
    assert codes == sorted(card["text"][:4] for card in cards)
    assert {"A", "B"} >= {card["estimate"]["letter"] for card in cards}
    assert [] == [card["disturbances"] for card in cards if card["disturbances"]]


def test_wrong_usage_gives_status_2() -> None:
    """No image, and a module no printer makes, are wrong usage."""
    assert [2, 2] == [run().exit_code, run("a.png", "--module", "0").exit_code]
