"""The commands. Exit status: 0 done, 1 refused or found something wrong, 2 wrong usage."""

import json
import signal
import sys
from collections.abc import Callable
from pathlib import Path
from typing import Any

import click

from scanflow.cli.backup import backup, restore
from scanflow.cli.cards import cards
from scanflow.cli.cards.adopt import adopt
from scanflow.cli.cards.printcheck import printcheck
from scanflow.cli.cards.reprint import reprint
from scanflow.cli.listings import listings
from scanflow.cli.opening import PORT, in_shop, open_shop
from scanflow.cli.password import password
from scanflow.cli.plan import plan
from scanflow.cli.read import read
from scanflow.cli.serve import serve
from scanflow.cli.stock import stock
from scanflow.cli.stocktake import stocktake
from scanflow.cli.verify import health, verify
from scanflow.cli.watch import watch
from scanflow.storage.writing.unwritable import Unwritable


class Commands(click.Group):
    """Where the storage fails, a command ends with one line on it and status 1."""

    def invoke(self, context: click.Context) -> Any:
        try:
            return super().invoke(context)
        except Unwritable as error:
            raise click.ClickException(error.detail) from error


@click.group(cls=Commands)
@click.version_option(package_name="scanflow")
def main() -> None:
    """A room of one-of-a-kind goods: every item has one place and one buyer, and a scan says yes or refuses."""


main.add_command(plan)
main.add_command(adopt)
main.add_command(backup)
main.add_command(restore)
main.add_command(reprint)
main.add_command(cards)
main.add_command(listings)
main.add_command(printcheck)
main.add_command(password)
main.add_command(read)
main.add_command(serve)
main.add_command(stock)
main.add_command(stocktake)
main.add_command(watch)
main.add_command(verify)
main.add_command(health)


@main.command()
@click.option("--data", type=click.Path(file_okay=False, path_type=Path), help="An empty or new folder to make it in.")
@click.option("--serve", "then_serve", is_flag=True, help="Open the shop afterwards, until Ctrl+C.")
@click.option("--port", default=PORT, show_default=True, type=click.IntRange(0, 65535), help="Port to open it at.")
@click.option("--json", "as_json", is_flag=True, help="Report as one JSON document.")
@click.pass_context
def demo(context: click.Context, data: Path | None, then_serve: bool, port: int, as_json: bool) -> None:
    """Make an example shop and run its day: real cards, photographs of them, a real service."""
    from scanflow import demo as example

    if as_json and then_serve:
        raise click.UsageError("--json reports and ends; --serve stays. Choose one.")
    say: Callable[[str], None] = (lambda line: None) if as_json else click.echo
    signal.signal(signal.SIGTERM, lambda *_: sys.exit(1))
    try:
        folder = example.new_folder(data)
        report = example.run(folder, say)
    except (example.FolderInUse, example.NoService, example.Unexpected, OSError) as error:
        raise click.ClickException(str(error)) from error
    if as_json:
        click.echo(json.dumps(report.as_dict()))
    else:
        example.tell(report, say)
    if then_serve:
        context.invoke(serve, data=folder, port=port)


@main.command()
@click.argument("file", type=click.Path(exists=True, dir_okay=False, path_type=Path))
@click.option("--channel", default="", help="Where the orders come from that name no channel in their row.")
@click.option("--mapping", help="Name of the remembered mapping of columns; by default it is found or guessed.")
@click.option("--part", is_flag=True, help="The file is a part: open orders that it does not have are not held.")
@click.option("--json", "as_json", is_flag=True, help="Report as one JSON document.")
@in_shop
def orders(
    file: Path,
    channel: str,
    mapping: str | None,
    part: bool,
    as_json: bool,
    data: Path | None,
    database: str | None,
) -> None:
    """Load orders from a CSV file. Status 1 if a line is held or a row was refused."""
    from scanflow.domain.orders.loaded import ALREADY_SENT
    from scanflow.exchange import order_files
    from scanflow.shop import a_while
    from scanflow.workflow.orders import file as order_file
    from scanflow.workflow.ports import Invalid

    shop = open_shop(data, database)
    try:
        parsed = order_files.read(shop.looking, file.read_bytes(), mapping, channel)
        listed = () if part else parsed.listed
        with shop.looking() as unit:
            load = order_file.in_parts(unit, parsed.key, parsed.orders, parsed.rows, a_while, listed)
        done = shop.act_in_parts("scanflow orders", load)
    except Invalid as error:
        if error.pointer == "/channel":
            raise click.UsageError(f"{error.detail} Name it with --channel.") from error
        raise click.ClickException(error.detail) from error
    finally:
        shop.close()
    refused = [{"row": row.row, "code": row.code, "text": row.text} for row in (*parsed.refused, *done.refused)]
    counts = {"loaded": done.loaded, "changed": done.changed, "unchanged": done.unchanged}
    if as_json:
        click.echo(json.dumps({**counts, "held": list(done.held), "refused": refused}))
    else:
        click.echo(", ".join(f"{count} {what}" for what, count in counts.items()) + f", lines held: {len(done.held)}.")
        for row in refused:
            fate = "is left out" if row["code"] == ALREADY_SENT else "was refused"
            click.echo(f"Row {row['row']} {fate}: {row['text']}")
    for warning in parsed.warnings:
        click.echo(f"Row {warning.row}: {warning.text}", err=True)
    if parsed.dates:
        click.echo(parsed.dates, err=True)
    sys.exit(int(bool(done.held or any(row["code"] != ALREADY_SENT for row in refused))))


@main.command()
@click.argument("name")
@click.option("--role", type=click.Choice(["owner", "helper", "program"]), default="program", show_default=True)
@in_shop
def token(name: str, role: str, data: Path | None, database: str | None) -> None:
    """Print a new access token called NAME. Only its hash is kept, so it can't be shown again."""
    from scanflow.domain.access import Role
    from scanflow.domain.access.names import BadName, fit
    from scanflow.workflow import access

    shop = open_shop(data, database)
    try:
        click.echo(shop.act(fit(name), lambda unit: access.make_token(unit, name, Role(role))))
    except BadName as error:
        raise click.ClickException(str(error)) from error
    finally:
        shop.close()
