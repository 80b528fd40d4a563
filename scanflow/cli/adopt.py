"""`scanflow adopt`: a shop keeps the cards it already has."""

import csv
import json
import sys
from collections.abc import Iterable, Mapping
from pathlib import Path
from typing import Any, Literal

import click

from scanflow.cli.opening import in_shop, open_shop
from scanflow.cli.typed import as_json
from scanflow.planning.adopting import Ambiguity, Form, Sample, Trial, trial

ADVICE = {
    "several_slots": "{texts} can mean {codes}. Print that card again.",
    "several_texts": "{codes} has more than one card: {texts}. Keep one of them.",
    "lookalike": "{texts} look alike, O for 0 or I for 1. Scan such a card, never type it, or print one again.",
    "foreign_form": "{texts} has the form of a slip or a reference. No card may have it: print it again.",
}

FILE = click.Path(exists=True, dir_okay=False, path_type=Path)


@click.group()
def adopt() -> None:
    """Take over cards of another system: other number widths, Code 39 or ITF, without a check digit."""


@adopt.command()
@click.argument("section")
@click.argument("images", nargs=-1, type=click.Path(path_type=Path), metavar="[IMAGE]...")
@click.option("--texts", type=FILE, help="Typed card texts, a line each.")
@as_json
@in_shop
def test(
    section: str, images: tuple[Path, ...], texts: Path | None, as_json: bool, data: Path | None, database: str | None
) -> None:  # fmt: skip
    """Try some cards of SECTION, ten are a good number: one picture of each, or their texts in a file.

    Says how many were read, by which engine, what they name, which are ambiguous, and which slots had none. Changes
    nothing. Status 1 if a card was not read, names no slot or is ambiguous.
    """
    from scanflow.domain.things import Section
    from scanflow.workflow import cards
    from scanflow.workflow.ports import Missing, must

    if not images and texts is None:
        raise click.UsageError("Give pictures of the cards, or --texts with a line for each.")
    shop = open_shop(data, database)
    try:
        with shop.looking() as unit:
            must(unit, Section, section.upper())
            room, check = cards.room(unit), unit.settings.check
        samples = [*_typed(texts), *(sample for image in images for sample in _seen(shop.readers, image))]
    except Missing as error:
        raise click.ClickException(str(error)) from error
    finally:
        shop.close()
    found = trial(samples, room, section.upper())
    if as_json:
        click.echo(json.dumps({"section": section.upper(), "check": check} | _as_dict(found)))
    else:
        _tell(found, section.upper(), check)
    sys.exit(int(not found.good))


def _typed(texts: Path | None) -> list[Sample]:
    lines = texts.read_text(encoding="utf-8-sig").splitlines() if texts else []
    return [Sample(f"line {number}", line.strip()) for number, line in enumerate(lines, 1) if line.strip()]


def _seen(readers: Any, image: Path) -> list[Sample]:
    from scanflow.vision import ImageError

    name = str(image)
    try:
        found = [Sample(name, each.text, each.symbology, each.engine) for each in readers.read(image).decoded]
    except ImageError as error:
        return [Sample(f"{name} ({error})", None)]
    return found or [Sample(name, None)]


def _looks(found: Trial, text: str) -> int:
    """How often this card is scanned at a station; what was typed says nothing of engines."""
    if found.known[text].form is Form.CARD:
        return 1
    return 2 if not found.engines or text in found.single else 1


def _as_dict(found: Trial) -> dict[str, Any]:
    return {
        "shown": found.shown,
        "read": found.read,
        "unread": list(found.unread),
        "engines": dict(found.engines),
        "symbologies": dict(found.symbologies),
        "known": [
            {"text": text, "code": meaning.code, "form": meaning.form, "looks": _looks(found, text)}
            for text, meaning in found.known.items()
        ],
        "unknown": list(found.unknown),
        "ambiguous": [{"kind": a.kind, "texts": list(a.texts), "codes": list(a.codes)} for a in found.ambiguous],
        "without_card": list(found.without_card),
    }


def _tell(found: Trial, section: str, check: str) -> None:
    click.echo(f"{found.read} of {found.shown} cards read{_counted(found.engines)}{_counted(found.symbologies)}.")
    for source in found.unread:
        click.echo(f"Not read: {source}")
    for text in found.unknown:
        click.echo(f"“{text}” names no slot of the room. Adopt it with `scanflow adopt texts`, or print a card.")
    for each in found.ambiguous:
        click.echo(_sentence(each))
    unchecked = [text for text, meaning in found.known.items() if meaning.form is not Form.CARD]
    twice = [text for text in unchecked if _looks(found, text) > 1]
    if unchecked and check != "none":
        click.echo(f"{len(unchecked)} have no check digit: they count only after `scanflow adopt check none`.")
    if twice:
        click.echo(f"{len(twice)} are scanned twice at a station, for want of a check and of a second engine.")
    click.echo(f"Slots of section {section} without a card so far: {_few(found.without_card) or 'none'}.")


def _counted(counts: Mapping[str, int]) -> str:
    return f", {', '.join(f'{count} by {name}' for name, count in counts.items())}" if counts else ""


def _sentence(ambiguity: Ambiguity) -> str:
    texts = " and ".join(f"“{text}”" for text in ambiguity.texts)
    return ADVICE[ambiguity.kind].format(texts=texts, codes=" or ".join(ambiguity.codes))


def _few(codes: Iterable[str], most: int = 12) -> str:
    codes = list(codes)
    more = f" and {len(codes) - most} more" if len(codes) > most else ""
    return ", ".join(codes[:most]) + more


@adopt.command()
@click.argument("file", type=FILE)
@as_json
@in_shop
def texts(file: Path, as_json: bool, data: Path | None, database: str | None) -> None:
    """Load a CSV FILE of two columns, text and code: what a card bears, and the slot it stands for.

    Status 1 if a row was refused; the others are adopted.
    """
    from scanflow.workflow import cards

    with file.open(encoding="utf-8-sig", newline="") as lines:
        rows = [(number, row) for number, row in enumerate(csv.reader(lines), 1) if any(cell.strip() for cell in row)]
    if rows and [cell.strip().lower() for cell in rows[0][1]] == ["text", "code"]:
        del rows[0]
    shop = open_shop(data, database)
    try:
        refused = shop.act("scanflow adopt", lambda unit: cards.adopt_rows(unit, rows))
    finally:
        shop.close()
    adopted = len(rows) - len(refused)
    if as_json:
        click.echo(json.dumps({"adopted": adopted, "refused": [{"row": row, "text": why} for row, why in refused]}))
    else:
        click.echo(f"{adopted} cards adopted.")
        for row, why in refused:
            click.echo(f"Row {row} was refused: {why}")
    sys.exit(int(bool(refused)))


@adopt.command()
@click.argument("which", type=click.Choice(["mod_11_10", "none"]))
@in_shop
def check(which: Literal["mod_11_10", "none"], data: Path | None, database: str | None) -> None:
    """Choose the room's check: none takes cards without a check digit too, each only after two looks that agree."""
    from scanflow.workflow import cards

    shop = open_shop(data, database)
    try:
        shop.act("scanflow adopt", lambda unit: cards.choose_check(unit, which))
    finally:
        shop.close()
    click.echo("Cards without a check digit count too." if which == "none" else "Only cards with a check digit count.")
