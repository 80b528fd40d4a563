"""`scanflow stocktake`: an area is counted from photos."""

from __future__ import annotations

import json
import mimetypes
import re
import sys
from collections import Counter
from collections.abc import Mapping, Sequence
from concurrent.futures import ThreadPoolExecutor
from dataclasses import dataclass
from pathlib import Path
from typing import TYPE_CHECKING, Any

import click

from scanflow.cli.opening import in_shop, open_shop
from scanflow.cli.plan.option_types import as_json
from scanflow.cli.read import FOLDER, names_for

if TYPE_CHECKING:
    from scanflow.domain.counts.findings import Finding
    from scanflow.domain.counts.stocktake import Look, Stocktake
    from scanflow.shop import Shop
    from scanflow.vision.workers import Readers

WHO = "scanflow stocktake"


@dataclass(frozen=True, slots=True)
class PhotoFile:
    """A photo's file, or a frame of a film, which has its `content` with it."""

    name: str
    content: bytes | None = None
    film: str = ""


@dataclass(frozen=True, slots=True)
class Image:
    """A photo and its look, or why it does not count."""

    photo: PhotoFile
    look: Look | None
    error: str | None = None


@click.command()
@click.argument("area")
@click.argument("images", nargs=-1, required=True, metavar="IMAGE...")
@click.option("--note", default="", help="What the report says about this count.")
@click.option("--draw", type=FOLDER, help="Folder for a copy of each photo with its readings drawn in.")
@as_json
@in_shop
def stocktake(
    area: str,
    images: tuple[str, ...],
    note: str,
    draw: Path | None,
    as_json: bool,
    data: Path | None,
    database: str | None,
) -> None:
    """Count AREA from photos: bin:A-2-3, shelf:A-2, rack:A, section:D, tray or room.

    Each photo shows one bin, or the tray. The bin's label in the picture says which one, else the photo's name (as in
    A-2-3.jpg or "A-2-3 again.jpg"), else that of its folder. If several labels are visible, the middle one counts, and
    each card counts in the bin whose label is nearest. A film of a walk along the shelves counts as its sharpest
    frames, each with something new; those without a bin's label are left out. A card that isn't visible is never
    reported missing, because something may be hiding it; the report lists the bins to check by hand. Nothing in the
    shop is changed: the count with its findings is kept, to be put right later. Status 1 if something is amiss or a
    photo could not be used.
    """
    from scanflow.workflow.ports import Invalid

    photos, failed = _photos(images)
    names = tuple(photo.name for photo in photos)
    drawn: Sequence[Path | None] = names_for(draw, names) if draw else [None] * len(photos)
    shop = open_shop(data, database)
    try:
        count, looks = _count(shop, area, note, photos)
        _draw_all(shop, looks, drawn)
    except Invalid as error:
        raise click.BadParameter(error.detail, param_hint="AREA") from None
    finally:
        shop.close()
    looks = [*failed, *_worth_telling(looks)]
    report = json.loads(count.report) if count.report else None
    if as_json:
        click.echo(json.dumps({"stocktake": count.id, "images": list(map(_as_dict, looks)), "report": report}))
    else:
        for line in _in_words(looks, report):
            click.echo(line)
    sys.exit(int(any(each.error for each in looks) or bool(report and report["findings"])))


def _count(shop: Shop, area: str, note: str, photos: Sequence[PhotoFile]) -> tuple[Stocktake, list[Image]]:
    """The count as it ended, cancelled where no photo counts, and what became of each photo. Invalid: no such area."""
    from scanflow.workflow.counts import report as stocktake_report
    from scanflow.workflow.counts import stocktakes

    count = shop.act(
        WHO, lambda unit: stocktakes.open_count(unit, stocktakes.OpenCount.of({"area": area, "note": note}))
    )
    looks = _looks(shop, count.id, photos)
    end = stocktake_report.close if any(each.look for each in looks) else stocktakes.cancel
    return shop.act(WHO, lambda unit: end(unit, count.id)), looks


def _photos(images: Sequence[str]) -> tuple[list[PhotoFile], list[Image]]:
    """The photos of all images, those of films chosen; and films that can't be played."""
    from scanflow.vision.camera.live import Camera, CameraFrame, NoFilm
    from scanflow.vision.camera.sweep import worth_reading

    photos, failed = [], []
    for image in images:
        if not (mimetypes.guess_type(image)[0] or "").startswith("video/"):
            photos.append(PhotoFile(image))
            continue
        file = Path(image)
        try:
            with Camera(file, every=True) as camera:
                frames = (frame for frame in camera.frames() if isinstance(frame, CameraFrame))
                for frame in worth_reading(frames):
                    name = file.with_name(f"{file.stem} {frame.at / 1000:.1f} s.jpg")
                    photos.append(PhotoFile(str(name), frame.jpeg, film=image))
        except NoFilm:
            failed.append(Image(PhotoFile(image), None, "This can't be played as a film."))
    return photos, failed


def _worth_telling(looks: Sequence[Image]) -> list[Image]:
    """All but the frames of films that don't count, and films of which none does."""
    counted = {each.photo.film for each in looks if each.look}
    silent = dict.fromkeys(each.photo.film for each in looks if each.photo.film not in counted)
    said = "No frame shows a bin's label. Film one bin a film and call it after the bin, or walk with labels in view."
    told = [each for each in looks if each.look or not each.photo.film]
    return [*told, *(Image(PhotoFile(film), None, said) for film in silent if film)]


def _looks(shop: Shop, count_id: str, photos: Sequence[PhotoFile]) -> list[Image]:
    """The photos are read by all workers at once, and each kept as soon as it is read."""
    from scanflow.domain.counts.stocktake import Stocktake
    from scanflow.domain.things import Bin
    from scanflow.workflow.ports import must

    with shop.looking() as unit:
        places = must(unit, Stocktake, count_id).places(unit.find(Bin))
    hidden = not sys.stderr.isatty()
    with ThreadPoolExecutor(shop.readers.count) as threads:
        looks = threads.map(lambda pair: _look(shop, count_id, places, *pair), enumerate(photos))
        with click.progressbar(looks, len(photos), hidden=hidden, show_pos=True, file=sys.stderr) as shown:
            return list(shown)


def _look(shop: Shop, count_id: str, places: Sequence[str], number: int, photo: PhotoFile) -> Image:
    import hashlib
    from dataclasses import replace

    from labels import slot_code
    from scanflow.vision import ImageError, photographs
    from scanflow.vision.workers import read_file
    from scanflow.workflow.counts import looks
    from scanflow.workflow.ports import Invalid

    try:
        content = photo.content or read_file(Path(photo.name))
        key, body = f"{count_id}-{number}", hashlib.sha256(content).hexdigest()
        shown = photographs.shown(shop.looking, shop.readers, content, key=key, body=body)
        named = replace(shown, place=place_of(Path(photo.name), places))
        if not any(text.text and slot_code.is_bin_like(text.text) for text in shown.texts):
            return Image(photo, shop.act(WHO, lambda unit: looks.look(unit, count_id, named)))
        try:
            return Image(photo, shop.act(WHO, lambda unit: looks.look(unit, count_id, shown)))
        except Invalid:  # the labels in view don't tell
            if named.place is None:
                raise
            return Image(photo, shop.act(WHO, lambda unit: looks.look(unit, count_id, named)))
    except ImageError as error:
        return Image(photo, None, str(error))
    except Invalid as error:
        return Image(photo, None, error.detail)


def place_of(image: Path, places: Sequence[str]) -> str | None:
    """The place whose name the photo's name begins with, else the one its folder is called; None where neither is.

    >>> place_of(Path("photos/a-1-10 again.jpg"), ["A-1-1", "A-1-10"])
    'A-1-10'
    """
    for name in (image.stem, image.absolute().parent.name):
        for place in places:
            if re.match(rf"{re.escape(place)}(?![0-9A-Za-z])", name, re.IGNORECASE):
                return place
    return None


def _draw_all(shop: Shop, looks: Sequence[Image], outs: Sequence[Path | None]) -> None:
    """The looks with a file beside them, what nobody expected there marked."""
    from scanflow.workflow.counts import stocktakes

    with shop.looking() as unit:
        room = stocktakes.standings(unit)
    for each, out in zip(looks, outs, strict=True):
        if out is not None and each.look is not None:
            reads, place = each.look.reads, each.look.place
            strange = {read.code or read.text for read in reads if stocktakes.unexpected(read, place, room)}
            _draw(shop.readers, each, strange, out)


def _draw(readers: Readers, image: Image, unexpected: set[str], out: Path) -> None:
    """The photo with its readings as a file. ClickException where it can't be written."""
    from scanflow.vision.stored_pictures import opened
    from scanflow.web.count_pictures import drawn

    assert image.look is not None
    photo = opened(readers.whole(image.photo.content or Path(image.photo.name)))
    try:
        drawn(photo, image.look, unexpected).save(out, quality=90)
    except OSError as error:
        raise click.ClickException(f"The drawing can't be written: {error}") from error


def _as_dict(image: Image) -> dict[str, Any]:
    look = image.look
    return {
        "image": image.photo.name,
        "place": look.place if look else None,
        "error": image.error,
        "reads": [
            {"text": read.text or None, "code": read.code, "certainty": read.certainty, "corners": read.corners}
            for read in (look.reads if look else ())
        ],
    }


def _in_words(looks: Sequence[Image], report: dict[str, Any] | None) -> list[str]:
    from scanflow.domain.counts.findings import Finding

    said = [f"{each.photo.name}: {each.error}" for each in looks if each.error]
    if report is None:
        return [*said, "Nothing was counted."]
    said += [_sentence(each, report["titles"]) for each in map(Finding.from_dict, report["findings"])]
    kinds = Counter(each["kind"].replace("_", " ") for each in report["findings"])
    amiss = ", ".join(f"{count} {kind}" for kind, count in kinds.items()) or "nothing amiss"
    said.append(f"{report['looked']} of {report['places']} places looked at: {amiss}.")
    return said


def _sentence(found: Finding, titles: Mapping[str, str]) -> str:
    """The kind of a finding, whose card it is, and what is amiss."""
    from scanflow.domain.counts.stocktake import Certainty
    from scanflow.domain.words import said

    words, title = said(found), titles.get(found.id)
    whose = found.subject + (f" ({title})" if title else "")
    thing = "" if found.subject in found.places else f"{whose}: "
    matched = " No decoder read it: take a closer photo." if found.certainty == Certainty.MATCHED else ""
    return f"{found.kind.replace('_', ' ')}: {thing}{words.amiss}. {words.why}{matched}"
