"""`scanflow reprint`: one card again."""

import json
from pathlib import Path

import click

from labels import paper
from labels.whole import write_whole
from scanflow.cli.cards.options import GRID
from scanflow.cli.opening import in_shop, open_shop
from scanflow.cli.plan.option_types import as_json


@click.command()
@click.argument("code")
@click.option("--out", type=click.Path(dir_okay=False, path_type=Path), required=True, help="The PDF to write.")
@click.option("--text", help="Read from the damaged card in your hand.")
@click.option("--lost", help="Instead: why the card is gone for good. Its item must stand in the slot.")
@click.option("--paper", "page", type=click.Choice(list(paper.SHEETS)), default="a4", show_default=True)
@click.option("--grid", type=GRID, default="3x6", show_default=True, help="Columns x rows, for the size of the card.")
@as_json
@in_shop
def reprint(
    code: str, out: Path, text: str | None, lost: str | None, page: str, grid: str, as_json: bool, data: Path | None,
    database: str | None,
) -> None:  # fmt: skip
    """Print the card of slot CODE again, damaged or lost. The ledger keeps it: destroy the old card."""
    from scanflow.exchange import card_file
    from scanflow.workflow.ports import Invalid, Missing, Refused
    from scanflow.workflow.stock import cards

    code = code.upper()
    shop = open_shop(data, database)
    try:
        said = cards.Reprint.of({name: each for name, each in {"text": text, "lost": lost}.items() if each})
        pages = shop.act(
            "scanflow reprint",
            lambda unit: card_file.again(unit, code, said, paper=page, grid=grid),
        )
        write_whole(out, card_file.pdf(pages, code))
    except (Invalid, Missing, Refused, OSError) as error:
        raise click.ClickException(str(error)) from error
    finally:
        shop.close()
    if as_json:
        click.echo(json.dumps({"code": code, "out": str(out)}))
    else:
        click.echo(f"Card {code} is in {out}. Print at 100 %, and destroy the old one: both scan alike.")
