"""`printcheck`: how well the cards in photos and scans are printed."""

from __future__ import annotations

import json
import re
import sys
from pathlib import Path
from typing import TYPE_CHECKING

import click

if TYPE_CHECKING:
    from scanflow.vision.print_check.check import Check
    from scanflow.vision.workers import Readers


@click.command()
@click.argument("images", nargs=-1, required=True, metavar="IMAGE...")
@click.option("--module", type=click.FloatRange(0.1, 2.0), help="Width in mm that the narrowest bar was meant to have.")
@click.option("--draw", type=click.Path(file_okay=False, path_type=Path), help="Folder for a drawing (SVG) a card.")
@click.option("--json", "as_json", is_flag=True, help="One JSON document per image, one a line.")
def printcheck(images: tuple[str, ...], module: float | None, draw: Path | None, as_json: bool) -> None:
    """Estimate how well printed cards will scan, from photos or, better, scans of 300 dpi and more.

    An estimate after ISO/IEC 15416, never a grade of conformity: a camera is no verifier. With --module, a scan that
    holds its resolution tells whether the printer has scaled the sheet. The drawing is of a card's poorest line.
    Status 1 if a card is below C or can't be judged, or an image shows none.
    """
    from scanflow.vision.workers import Readers

    passed = True
    with Readers() as readers:
        for number, image in enumerate(images, start=1):
            checks, error = _checked(readers, image, module)
            passed = passed and bool(checks) and all(check.passed for check in checks)
            cards = [check.as_dict() for check in checks]
            click.echo(
                json.dumps({"image": image, "error": error, "cards": cards})
                if as_json
                else _in_words(image, checks, error)
            )
            if draw is not None:
                _draw(draw, f"{number}-{Path(image).stem}", checks)
    sys.exit(int(not passed))


def _checked(readers: Readers, image: str, module: float | None) -> tuple[tuple[Check, ...], str | None]:
    from scanflow.vision import ImageError

    try:
        return readers.check(Path(image), module)[1], None
    except ImageError as error:
        return (), str(error)


def _in_words(image: str, checks: tuple[Check, ...], error: str | None) -> str:
    if not checks:
        return f"{image}: {error or 'no code read: nothing to judge'}"
    return "\n".join(f"{image}: {check.text}: {check.verdict} {check.advice}" for check in checks)


def _draw(folder: Path, stem: str, checks: tuple[Check, ...]) -> None:
    """A drawing for every card that was measured. ClickException where it can't be written."""
    try:
        folder.mkdir(parents=True, exist_ok=True)
        for number, check in enumerate(checks, start=1):
            if check.drawing is not None:
                name = re.sub(r"[^A-Za-z0-9._-]", "_", f"{stem}-{number}-{check.text}")
                (folder / f"{name}.svg").write_text(check.drawing, encoding="utf-8")
    except OSError as error:
        raise click.ClickException(f"The drawing can't be written: {error}") from error
