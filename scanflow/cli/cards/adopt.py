"""`scanflow adopt`: a shop keeps the cards it already has."""

import csv
import json
import sys
import time
from functools import partial
from pathlib import Path
from typing import Any, Literal

import click

from scanflow.cli.opening import in_shop, open_shop
from scanflow.cli.plan.option_types import as_json
from scanflow.planning.adopting import Trial, TrialScan, trial

PART = 200
"""Rows that are adopted in one transaction; others have their turn between two."""

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
    from scanflow.workflow.ports import Missing, must
    from scanflow.workflow.stock import cards

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
        for sentence in found.sentences(section.upper(), check):
            click.echo(sentence)
    sys.exit(int(not found.good))


def _typed(texts: Path | None) -> list[TrialScan]:
    lines = texts.read_text(encoding="utf-8-sig").splitlines() if texts else []
    return [TrialScan(f"line {number}", line.strip()) for number, line in enumerate(lines, 1) if line.strip()]


def _seen(readers: Any, image: Path) -> list[TrialScan]:
    from scanflow.vision import ImageError

    name = str(image)
    try:
        found = [TrialScan(name, each.text, each.symbology, each.engine) for each in readers.read(image).decoded]
    except ImageError as error:
        return [TrialScan(f"{name} ({error})", None)]
    return found or [TrialScan(name, None)]


def _as_dict(found: Trial) -> dict[str, Any]:
    return {
        "shown": found.shown,
        "read": found.read,
        "unread": list(found.unread),
        "engines": dict(found.engines),
        "symbologies": dict(found.symbologies),
        "known": [
            {"text": text, "code": meaning.code, "form": meaning.form, "looks": found.scans_of(text)}
            for text, meaning in found.known.items()
        ],
        "unknown": list(found.unknown),
        "ambiguous": [{"kind": a.kind, "texts": list(a.texts), "codes": list(a.codes)} for a in found.ambiguous],
        "without_card": list(found.without_card),
    }


@adopt.command()
@click.argument("file", type=FILE)
@as_json
@in_shop
def texts(file: Path, as_json: bool, data: Path | None, database: str | None) -> None:
    """Load a CSV FILE of two columns, text and code: what a card bears, and the slot it stands for.

    Status 1 if a row was refused; the others are adopted.
    """
    from scanflow.shop import GAP
    from scanflow.workflow.stock import cards

    with file.open(encoding="utf-8-sig", newline="") as lines:
        rows = [(number, row) for number, row in enumerate(csv.reader(lines), 1) if any(cell.strip() for cell in row)]
    if rows and [cell.strip().lower() for cell in rows[0][1]] == ["text", "code"]:
        del rows[0]
    shop = open_shop(data, database)
    try:
        refused = []
        for first in range(0, len(rows), PART):
            part = rows[first : first + PART]
            refused += shop.act("scanflow adopt", partial(cards.adopt_rows, rows=part))
            time.sleep(GAP)
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
    """Choose how cards are checked. 'none' also accepts cards without a check digit; each is scanned twice."""
    from scanflow.workflow.stock import cards

    shop = open_shop(data, database)
    try:
        shop.act("scanflow adopt", lambda unit: cards.choose_check(unit, which))
    finally:
        shop.close()
    click.echo("Cards without a check digit count too." if which == "none" else "Only cards with a check digit count.")
