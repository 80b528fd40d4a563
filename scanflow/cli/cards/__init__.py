"""`scanflow cards`: sheets of cards for a section."""

import json
import re
from pathlib import Path
from typing import Any

import click

from labels import card, draw, paper, sheet, slot_code
from scanflow.cli.cards import report as cards_report
from scanflow.cli.cards.options import ACROSS_DOWN, COLOUR, GRID, NUMBERS, PAGE
from scanflow.cli.plan.option_types import as_json

_PAPERS = f"{', '.join(paper.SHEETS)}, or measures like 100x150 or 4x6in."


@click.command()
@click.argument("section")
@click.option("--numbers", type=NUMBERS, required=True, help="Numbers of the slots, like 1-18,25.")
@click.option("--paper", "page", type=PAGE, default="a4", show_default=True, help=_PAPERS)
@click.option("--grid", type=GRID, default="3x6", show_default=True, help="Columns x rows of cards on a page.")
@click.option("--out", type=click.Path(dir_okay=False, path_type=Path), required=True, help="A .pdf, .svg or .png.")
@click.option("--name", help="Name of the section, printed on every card; by default its letters.")
@click.option("--colour", "stock", type=COLOUR, default="yellow", show_default=True, help="A name, or #rrggbb.")
@click.option("--style", type=click.Choice([style.value for style in card.Style]), default="filed", show_default=True)
@click.option("--digits", type=click.IntRange(2, 6), default=slot_code.DEFAULT_DIGITS, show_default=True)
@click.option("--per-bin", type=click.IntRange(1), default=20, show_default=True, help="With --style bin: slots a bin.")
@click.option("--bins", default="", help="With --style bin: the bins' names in order, like 2-3-1,2-3-2.")
@click.option("--duplex", type=click.Choice([edge.value for edge in sheet.Duplex]), help="Backs, turned at this edge.")
@click.option("--margin", type=click.FloatRange(0, 50), default=sheet.MARGIN, show_default=True, help="In mm.")
@click.option("--gutter", type=click.FloatRange(0, 50), default=0.0, show_default=True, help="Between cards, mm.")
@click.option("--label", type=ACROSS_DOWN, help="Sheets of ready labels: size of a label.")
@click.option("--corner", type=ACROSS_DOWN, help="With --label: left and top of the first label on the page.")
@click.option("--pitch", type=ACROSS_DOWN, help="With --label: from one corner to the next; by default no gaps.")
@click.option("--dpi", type=click.FloatRange(72, 2400), help="Dots of the printer or PNG: bars become whole dots.")
@click.option("--no-panel", is_flag=True, help="The bars stand on the section's colour, without a white panel.")
@as_json
def cards(
    section: str, numbers: list[int], digits: int, name: str | None, stock: paper.Paper, style: str, no_panel: bool,
    out: Path, dpi: float | None, per_bin: int, bins: str, duplex: str | None, as_json: bool, **places: Any,
) -> None:  # fmt: skip
    """Print sheets of cards for SECTION, or with --style bin the fronts of its bins, to a PDF, SVG or PNG."""
    section = section.upper()
    if not re.fullmatch("[A-Z]{1,2}", section):
        raise click.BadParameter("a section has one or two letters", param_hint="SECTION")
    dpi = dpi or (draw.PNG_DPI if out.suffix.lower() == ".png" else None)
    try:
        codes = [slot_code.make(section, number, digits) for number in numbers]
        design = card.CardDesign(name or section, stock, card.Style(style), not no_panel, 25.4 / dpi if dpi else 0.0)
        layout = _layout(**places)
        faces = [sheet.slot_face(code, design) for code in codes]
        if design.style is card.Style.BIN:
            faces = _fronts(codes, per_bin, bins, design)
        pages = sheet.pages(faces, layout, sheet.Duplex(duplex) if duplex else None)
        title = f"{'Bins' if design.style is card.Style.BIN else 'Cards'} of section {design.section_name}"
        files = draw.write(pages, out, title=title, dpi=dpi or draw.PNG_DPI)
    except ValueError as error:
        raise click.ClickException(str(error)) from error
    except OSError as error:
        why = f"{out} can't be written: {error.strerror or error}. What was there is as it was."
        raise click.ClickException(why) from error
    report = cards_report.report(codes, design, layout, pages, files, places["margin"])
    if as_json:
        click.echo(json.dumps(report))
    else:
        cards_report.tell(report)


def _fronts(codes: list[str], per_bin: int, bins: str, design: card.CardDesign) -> list[sheet.Face]:
    groups = [codes[first : first + per_bin] for first in range(0, len(codes), per_bin)]
    names = [each.strip() for each in bins.split(",")] if bins else [""] * len(groups)
    if len(names) != len(groups):
        raise ValueError(f"{len(codes)} slots fill {len(groups)} bins of {per_bin}, but {len(names)} bins are named")
    return [sheet.bin_face(group[0], group[-1], each, design) for group, each in zip(groups, names, strict=True)]


def _layout(
    *, page: sheet.Size, grid: str, margin: float, gutter: float, label: sheet.Size | None, corner: sheet.Size | None,
    pitch: sheet.Size | None,
) -> sheet.Layout:  # fmt: skip
    if label is None:
        if corner or pitch:
            raise click.UsageError("--corner and --pitch place ready labels; give --label too.")
        return sheet.cut_layout(page, grid, margin=margin, gutter=gutter)
    if corner is None:
        raise click.UsageError("--label needs --corner: left and top of the first label.")
    return sheet.label_layout(page, grid, label, corner, pitch or label, margin=margin)
