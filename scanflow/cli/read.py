"""`scanflow read`: the codes in photos, and where they are."""

from __future__ import annotations

import json
import sys
from concurrent.futures import ThreadPoolExecutor
from itertools import chain, count
from pathlib import Path
from typing import TYPE_CHECKING, Any

import click

if TYPE_CHECKING:
    from scanflow.vision import Book, PictureReadings
    from scanflow.vision.workers import Readers

FILE = click.Path(exists=True, dir_okay=False, path_type=Path)
FOLDER = click.Path(file_okay=False, path_type=Path)


@click.command()
@click.argument("images", nargs=-1, required=True, metavar="IMAGE...")
@click.option("--codes", type=FILE, help="All card texts that exist, one a line: labels that don't decode are matched.")
@click.option("--draw", type=FOLDER, help="Folder for a copy of each photo with its readings drawn in.")
@click.option("--json", "as_json", is_flag=True, help="One JSON document per image, one a line.")
def read(images: tuple[str, ...], codes: Path | None, draw: Path | None, as_json: bool) -> None:
    """Read the bar codes in photos. Status 1 if any image could not be opened.

    What a decoder read whole is decoded. With --codes, which must list retired cards too, a label that no decoder
    reads is matched where it fits one text and no other. A label of which nothing is known is unread: look there.
    """
    from scanflow.vision.workers import Readers

    book = book_of(codes) if codes else None
    names = names_for(draw, images) if draw else [None] * len(images)
    failed = False
    counted = len(images) > 1 and sys.stderr.isatty() and not sys.stdout.isatty()
    with Readers() as readers, ThreadPoolExecutor(readers.count) as threads:
        found = threads.map(lambda image, name: _read_one(readers, image, book, name), images, names)
        with click.progressbar(found, len(images), hidden=not counted, show_pos=True, file=sys.stderr) as results:
            for result in results:
                failed = failed or result["error"] is not None
                click.echo(json.dumps(result) if as_json else in_words(result))
    sys.exit(int(failed))


def book_of(file: Path) -> Book:
    """The texts of a file; BadParameter that names the line of one that no card can bear."""
    from scanflow.vision import Book

    try:
        lines = [line.strip() for line in file.read_text(encoding="utf-8-sig").splitlines()]
    except UnicodeDecodeError:
        raise click.BadParameter(f"{file} is not a text in UTF-8.", param_hint="--codes") from None
    for number, line in enumerate(lines, start=1):
        try:
            Book([line] if line else [])
        except ValueError as error:
            raise click.BadParameter(f"Line {number} of {file}: {error}", param_hint="--codes") from None
    return Book(filter(None, lines))


def names_for(folder: Path, images: tuple[str, ...]) -> list[Path | None]:
    """A file in the folder for each image, of its name; a name that is taken gets a number.

    BadParameter for a folder that holds one of the images: a drawing could take the place of a photo.
    """
    if folder.resolve() in {Path(image).resolve().parent for image in images}:
        raise click.BadParameter("The photos themselves are in that folder. Choose another.", param_hint="--draw")
    try:
        folder.mkdir(parents=True, exist_ok=True)
    except OSError as error:
        raise click.ClickException(f"The folder can't be made: {error}") from error
    stems: list[str] = []
    for image in images:
        stem = Path(image).stem
        taken = {each.lower() for each in stems}  # some systems tell no upper case from lower
        choices = chain([stem], (f"{stem}-{number}" for number in count(2)))
        stems.append(next(each for each in choices if each.lower() not in taken))
    return [folder / f"{stem}.jpg" for stem in stems]


def _read_one(readers: Readers, image: str, book: Book | None, drawn: Path | None) -> dict[str, Any]:
    from scanflow.vision import ImageError

    try:
        picture = readers.read(Path(image), book)
        if drawn is not None:
            _draw(readers.whole(Path(image)), picture, drawn)
    except ImageError as error:
        return {"image": image, "width": 0, "height": 0, "ms": 0.0, "error": str(error), "reads": []}
    return as_result(image, picture)


def as_result(image: str, picture: PictureReadings) -> dict[str, Any]:
    """What --json prints of an image that could be opened."""
    seen = picture.as_dict()
    reads = seen.pop("readings")
    return {"image": image, **seen, "error": None, "reads": reads}


def _draw(image: bytes, picture: PictureReadings, out: Path) -> None:
    """The photo with its readings as a file. ClickException where it can't be written."""
    from scanflow.vision.drawn import draw
    from scanflow.vision.stored_pictures import opened

    drawn = draw(opened(image), picture)
    try:
        drawn.save(out, quality=90)
    except OSError as error:
        raise click.ClickException(f"The drawing can't be written: {error}") from error


def in_words(result: dict[str, Any]) -> str:
    """The same for a person."""
    reads = result["reads"]
    unread = sum(read["certainty"] == "unread" for read in reads)
    parts = [_one_in_words(read) for read in reads if read["certainty"] != "unread"]
    parts += [f"{unread} unread label{'s' if unread > 1 else ''}"] if unread else []
    return f"{result['image']}: {result['error'] or ', '.join(parts) or 'no code read'}"


def _one_in_words(read: dict[str, Any]) -> str:
    if read["certainty"] == "matched":
        return f"{read['text']} (matched)"
    return f"{read['text']} (decoded, {read['symbology']}, by {read['engine']})"
