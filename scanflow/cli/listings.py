"""What channels offer, against what stands here."""

from __future__ import annotations

import json
import sys
from pathlib import Path

import click

from scanflow.cli.opening import in_shop, must_exist, open_shop


@click.group()
def listings() -> None:
    """What channels offer, against what stands here."""


@listings.command()
@click.argument("file", type=click.Path(exists=True, dir_okay=False, path_type=Path))
@click.option("--channel", required=True, help="Whose offers the file lists.")
@click.option("--json", "as_json", is_flag=True, help="Report as one JSON document.")
@in_shop
def check(file: Path, channel: str, as_json: bool, data: Path | None, database: str | None) -> None:
    """Compare what a channel offers by a CSV FILE with what stands here. Status 1 if anything differs."""
    from dataclasses import asdict

    from scanflow.domain.words import DIFFERS, units
    from scanflow.exchange import listings_csv
    from scanflow.workflow.ports import Invalid
    from scanflow.workflow.stock import cards, offered

    must_exist(data, database)
    shop = open_shop(data, database)
    try:
        with shop.looking() as unit:
            rows = listings_csv.read(file.read_bytes(), cards.widths(unit))
            found = offered.check(unit, channel, rows)
    except Invalid as error:
        raise click.ClickException(error.detail) from error
    finally:
        shop.close()
    if as_json:
        click.echo(json.dumps({"channel": channel, "rows": len(rows), "differs": [asdict(each) for each in found]}))
    else:
        click.echo(f"{units(len(rows), 'row')} of {channel}, {units(len(found), 'difference')}.")
        for each in found:
            named = (f"row {each.row}" if each.row else "", each.listing, each.correct or each.reference, each.title)
            click.echo(f"{DIFFERS[each.kind]}: {', '.join(filter(None, named))}. {each.why}")
    sys.exit(int(bool(found)))
