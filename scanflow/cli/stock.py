"""What stands in the room, out as a file."""

from __future__ import annotations

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
    """Write what stands here to FILE as CSV: number, title, listing, notes, since, bin."""
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


def _moment(on: str | None, zone: str) -> datetime | None:
    from scanflow.workflow.times import HOW, instant

    try:
        return instant(on, zone)
    except ValueError as error:
        raise click.UsageError(HOW) from error
