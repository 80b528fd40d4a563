"""Which shop a command works in."""

import os
from collections.abc import Callable
from functools import wraps
from pathlib import Path
from typing import TYPE_CHECKING, Any

import click
import platformdirs

if TYPE_CHECKING:
    from scanflow.shop import Shop
    from scanflow.storage.database import Database

PORT = 8765
"""Where `scanflow serve` listens unless told otherwise."""


def in_shop(command: Callable[..., Any]) -> Callable[..., Any]:
    """The options that say which shop a command works in."""
    folder = click.option("--data", type=click.Path(file_okay=False, path_type=Path), help="Folder of the shop's data.")
    database = click.option("--database", help="Database URL; SCANFLOW_DATABASE_URL where neither is given.")

    @wraps(command)
    def told(*given: Any, **named: Any) -> Any:
        from scanflow.storage.writing.unwritable import Unwritable

        try:
            return command(*given, **named)
        except Unwritable as error:
            raise click.ClickException(error.detail) from error

    return folder(database(told))


def data_folder(data: Path | None) -> Path:
    """The folder of a shop's data on this machine, given or usual."""
    return data or platformdirs.user_data_path("scanflow", appauthor=False)


def _folder_of(database: "Database") -> Path:
    """For a shop whose database is elsewhere: a folder of its own among this machine's data."""
    from scanflow.keeper import shop_name

    with database.engine.connect() as connection:
        return data_folder(None) / f"shop-{shop_name(connection)}"


def must_exist(data: Path | None, database: str | None) -> None:
    """For what makes no sense in a new shop: a folder that was mistyped gets none."""
    from scanflow.storage.engine import DATABASE
    from scanflow.storage.trust import note

    if database is None and (data or not os.environ.get("SCANFLOW_DATABASE_URL")):
        folder = data_folder(data)
        if not any((folder / name).exists() for name in (DATABASE, f"{DATABASE}-wal", note.NAME)):
            raise click.ClickException(f"There is no shop in {folder}. Name its folder by --data.")


def open_shop(data: Path | None, database: str | None, *, brief: bool = False) -> "Shop":
    """The shop in a folder or database, verified in brief if wanted; an error in one line where it can't be opened."""
    from sqlalchemy.exc import SQLAlchemyError

    from scanflow.shop import Shop
    from scanflow.storage import machine
    from scanflow.storage.database import Database, NewerData
    from scanflow.storage.engine import UnfitFolder, file_of, sqlite_url
    from scanflow.storage.trust import note
    from scanflow.storage.writing.failing import of_os

    if data is not None and database is not None:
        raise click.UsageError("Give a folder or a database, not both.")
    if data is None and database is None:
        database = os.environ.get("SCANFLOW_DATABASE_URL")
    try:
        url = database or sqlite_url(data_folder(data))
        file = file_of(url)
        notebook = note.for_file(file) if file is not None else note.for_url(url, data_folder(data))
        opened = Database(url, notebook, brief=brief, begun=machine.begun_here)
        return Shop(opened, folder=_folder_of(opened) if database else data_folder(data).resolve())
    except OSError as error:
        raise click.ClickException(str(of_os(error) or error)) from error
    except (UnfitFolder, NewerData, note.Unopened) as error:
        raise click.ClickException(str(error)) from error
    except SQLAlchemyError as error:
        cause = getattr(error, "orig", None) or error
        raise click.ClickException(f"The database can't be opened: {cause}") from error
