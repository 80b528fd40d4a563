"""`scanflow backup` and `scanflow restore`: the whole shop to a folder, and back."""

from __future__ import annotations

import json
import os
import sys
from collections.abc import Callable, Iterator
from contextlib import closing, contextmanager
from pathlib import Path
from typing import TYPE_CHECKING, TextIO

import click

from scanflow.cli.opening import PORT, data_folder, in_shop, must_exist, open_shop
from scanflow.cli.plan.option_types import as_json
from scanflow.storage.program import PROGRAM, typed

if TYPE_CHECKING:
    from scanflow.storage.backups.restore import Restored


@click.command()
@click.argument("dest", type=click.Path(path_type=Path))
@click.option(
    "--recipient", default="", metavar="AGE1...", help="Encrypt it: only the recovery key of this recipient opens it."
)
@as_json
@in_shop
def backup(dest: Path, recipient: str, as_json: bool, data: Path | None, database: str | None) -> None:
    """Back up the shop to the folder DEST. The service may run meanwhile.

    DEST keeps each picture once, and one file of all the rest for each backup, so the next one is quick. A backup is
    checked before it counts. Passwords, sessions and tokens are not in it.
    """
    from scanflow.storage import backups

    must_exist(data, database)
    with closing(open_shop(data, database)) as shop:
        try:
            with _counted() as progress:
                done = backups.take(shop.database, dest, shop.clock(), recipient=recipient, progress=progress)
        except backups.BackupError as error:
            raise click.ClickException(str(error)) from error
        shop.database.guard.backed_up((dest / done.name).absolute(), done.at)
    if as_json:
        told = {"name": done.name, "at": done.at.isoformat(), "seq": done.seq, "size": done.size}
        click.echo(json.dumps({**told, "encrypted": done.encrypted}))
    else:
        click.echo(f"Backed up to {dest / done.name}, as of entry {done.seq} of the ledger.")


@click.command()
@click.argument("source", metavar="FROM", type=click.Path(exists=True, path_type=Path))
@click.option("--data", type=click.Path(file_okay=False, path_type=Path), help="New folder for the shop's data.")
@click.option("--database", help="URL of an empty PostgreSQL database, in place of a folder.")
@click.option("--which", default="", metavar="NAME", help="The backup whose name begins so.  [default: the newest]")
@click.option("--key-file", type=click.File(), help="File with the recovery key; - reads it from the input.")
@as_json
def restore(
    source: Path, data: Path | None, database: str | None, which: str, key_file: TextIO | None, as_json: bool
) -> None:
    """Restore a shop from a backup. FROM is the folder of backups, or a downloaded file.

    Nothing is overwritten: the new folder or database must hold no shop. The whole backup is checked first. Afterwards
    nobody is signed in; the printed link sets the owner's password. The command asks for the recovery key of an
    encrypted backup, or takes it from --key-file or SCANFLOW_RECOVERY_KEY.
    """
    from scanflow.storage.backups import BackupError, listed
    from scanflow.storage.backups.restore import restore as put_back
    from scanflow.storage.engine import UnfitFolder
    from scanflow.storage.trust.note import for_url

    if (data is None) == (database is None):
        raise click.UsageError("Give a folder by --data or a database by --database, not both.")
    try:
        key = key_file.read().strip() if key_file else os.environ.get("SCANFLOW_RECOVERY_KEY", "")
        fitting = [each for each in listed(source) if each.name.startswith(which)]
        if not key and fitting and fitting[0].encrypted and sys.stdin.isatty():
            key = click.prompt("Recovery key", hide_input=True, err=True)
        with _counted() as progress:
            done = put_back(source, data, database, key=key, which=which, progress=progress)
    except (BackupError, UnfitFolder) as error:
        raise click.ClickException(str(error)) from error
    if database:  # what this machine noted of a shop that stood there before
        for_url(database, data_folder(None)).set_aside()
    _tell(done, data, as_json)


def _tell(done: Restored, data: Path | None, as_json: bool) -> None:
    link = f"http://127.0.0.1:{PORT}/set-up/{done.secret}"
    if as_json:
        told = {"name": done.name, "at": done.at.isoformat(), "seq": done.seq, "things": done.things}
        click.echo(json.dumps({**told, "set_up": link}))
        return
    things = "1 thing" if done.things == 1 else f"{done.things} things"
    click.echo(f"Restored {things} as of entry {done.seq}, {done.at:%Y-%m-%d %H:%M} UTC, from {done.name}.")
    where = typed("--data", str(data)) if data else "--database URL"
    click.echo(f"Start the service: {PROGRAM} serve {where}")
    click.echo(f"Then set the owner's password here, once, within a day: {link}")


@contextmanager
def _counted() -> Iterator[Callable[[int, int], None]]:
    """Counts pictures on the screen, where there is one."""
    hidden = not sys.stderr.isatty()
    with click.progressbar(length=0, label="Pictures", hidden=hidden, show_pos=True, file=sys.stderr) as bar:

        def progress(done: int, of: int) -> None:
            bar.length = of
            bar.update(done - bar.pos)

        yield progress
