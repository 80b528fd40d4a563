"""What stands in the room, out as a file."""

from __future__ import annotations

from pathlib import Path

import click

from scanflow.cli.opening import in_shop, must_exist, open_shop


@click.group()
def stock() -> None:
    """What stands in the room, as a file."""


@stock.command()
@click.argument("file", type=click.Path(dir_okay=False, writable=True, path_type=Path))
@click.option("--on", metavar="DATE", help="What stood here at the end of this day, like 2026-12-31.")
@in_shop
def save(file: Path, on: str | None, data: Path | None, database: str | None) -> None:
    """Write what stands here to FILE as CSV: number, title, listing, notes, since, bin."""
    from scanflow.exchange import stock_csv
    from scanflow.storage.views.stock import standing
    from scanflow.workflow.times import HOW, instant

    must_exist(data, database)
    shop = open_shop(data, database)
    try:
        with shop.looking() as unit:
            zone = unit.settings.zone
            rows = standing(unit.connection, instant(on, zone) or unit.at)
    except ValueError as error:
        raise click.UsageError(HOW) from error
    finally:
        shop.close()
    file.write_text(stock_csv.text(rows, zone), encoding="utf-8", newline="")
    click.echo(f"{len(rows):,} {'thing stands' if len(rows) == 1 else 'things stand'} in {file}.")
