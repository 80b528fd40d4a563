"""What stands in the room, as a file: out, and in."""

from __future__ import annotations

import sys
from datetime import datetime
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
    """Write what stands here to FILE as CSV: number, title, listing, notes, packing, since, bin."""
    from labels.whole import write_whole
    from scanflow.domain.words import units
    from scanflow.exchange import stock_csv
    from scanflow.storage.views.stock import standing

    must_exist(data, database)
    shop = open_shop(data, database)
    try:
        with shop.looking() as unit:
            zone = unit.settings.zone
            rows = standing(unit.connection, _moment(on, zone) or unit.at)
    finally:
        shop.close()
    write_whole(file, stock_csv.text(rows, zone).encode())
    click.echo(f"Wrote {units(len(rows), 'thing')} to {file}.")


@stock.command()
@click.argument("file", type=click.Path(exists=True, dir_okay=False, path_type=Path))
@click.option("--dry-run", is_flag=True, help="Only say what loading would do.")
@in_shop
def load(file: Path, dry_run: bool, data: Path | None, database: str | None) -> None:
    """Store the things of a CSV file under the numbers on their cards. Status 1 if a row was refused."""
    from scanflow.exchange import order_files, stock_csv
    from scanflow.shop import a_while
    from scanflow.workflow.ports import Invalid
    from scanflow.workflow.stock import loading

    must_exist(data, database)
    shop = open_shop(data, database)
    try:
        with shop.looking() as unit:
            sent = loading.StockFile.of(unit, stock_csv.read(file.read_bytes(), order_files.usual_dates(unit)))
            done = loading.would_be(loading.fates(unit, sent)) if dry_run else None
        done = done or shop.act_in_parts("scanflow stock", loading.in_parts(sent, a_while))
    except Invalid as error:
        raise click.ClickException(error.detail) from error
    finally:
        shop.close()
    click.echo(("Nothing is stored yet. It would be: " if dry_run else "") + loading.told(done))
    for row in done.refused:
        click.echo(f"Row {row.row} was refused: {row.text}")
    sys.exit(int(bool(done.refused)))


def _moment(on: str | None, zone: str) -> datetime | None:
    from scanflow.workflow.times import HOW, instant

    try:
        return instant(on, zone)
    except ValueError as error:
        raise click.UsageError(HOW) from error
