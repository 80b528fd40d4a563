"""Say where backups go, how often and how many: one rule for each, and an entry in the ledger."""

from __future__ import annotations

import os
from collections.abc import Callable
from dataclasses import asdict, replace
from pathlib import Path
from typing import Annotated

from pydantic import AfterValidator, Field
from pydantic_core import PydanticCustomError

from scanflow.domain import events
from scanflow.domain.backups import BackupPlace, Backups
from scanflow.workflow.fields import Command, integer
from scanflow.workflow.ports import Invalid, Missing, Refused, Unit

MOST_PLACES = 8
LONGEST_PATH = 400
LIMITS = {"every_hours": (1, 168), "days": (1, 366), "weeks": (0, 520), "months": (0, 240)}
"""The least and the most of each number."""


def _folder(path: str) -> str:
    """The path of a folder as it is kept."""
    given = path.strip()
    if not given or len(given) > LONGEST_PATH or not given.isprintable():
        words = "Write the path of a folder, of at most {most} characters."
        raise PydanticCustomError("bad_path", words, {"most": LONGEST_PATH})
    if not Path(given).is_absolute():
        example = r"D:\backups" if os.name == "nt" else "/media/stick/backups"
        words = "Write the whole path of the folder, such as {example}."
        raise PydanticCustomError("not_absolute", words, {"example": example})
    return os.path.normpath(given)


class NamePlace(Command):
    path: Annotated[str, AfterValidator(_folder)] = Field(title="The path of the folder")


def add(unit: Unit, said: NamePlace, own: str | None = None, recipient: str = "") -> BackupPlace:
    """Backups go to this folder too, encrypted if there is a recipient. Refusals as of `free`."""
    place = BackupPlace(free(unit, said, own), recipient)
    known = unit.settings.backups
    _set(unit, replace(known, places=(*known.places, place)))
    return place


def free(unit: Unit, said: NamePlace, own: str | None = None) -> str:
    """The path of a folder that can become a place. `own` is the folder of the shop's own data: it is no better one."""
    found = said.path
    if own is not None:
        not_own(found, own)
    known = unit.settings.backups
    if known.place(found):
        raise Refused("taken", "Backups go to this folder already.")
    if len(known.places) >= MOST_PLACES:
        raise Refused("too_many", f"There are {MOST_PLACES} places already. Remove one first.")
    return found


def not_own(path: str, own: str) -> None:
    """`Invalid` at `/path` for a folder in `own`, which is no better place than that one."""
    if Path(path).is_relative_to(own):
        raise Invalid("/path", "own_folder", "This is the shop's own folder. Choose one on a stick or another disk.")


def remove(unit: Unit, path: str) -> None:
    """No more backups go there; those that lie there stay."""
    _known(unit, path)
    known = unit.settings.backups
    _set(unit, replace(known, places=tuple(each for each in known.places if each.path != path)))


class Plan(Command):
    every_hours: Annotated[int, integer(*LIMITS["every_hours"])] = Field(title="Hours between two backups")
    days: Annotated[int, integer(*LIMITS["days"])]
    weeks: Annotated[int, integer(*LIMITS["weeks"])]
    months: Annotated[int, integer(*LIMITS["months"])]


def plan(unit: Unit, said: Plan) -> None:
    """How often, and how many are kept."""
    _set(unit, replace(unit.settings.backups, **said.known()))


def encrypt(unit: Unit, path: str, recipient: str) -> BackupPlace:
    """From now on backups there are for this recipient, and count once `tried`; plain ones for none."""
    return _change(unit, path, lambda place: replace(place, recipient=recipient, tried=False))


def begin(unit: Unit, path: str) -> BackupPlace:
    """The first backup there is made."""
    return _change(unit, path, lambda place: replace(place, begun=True))


def tried(unit: Unit, path: str, recipient: str) -> BackupPlace:
    """A backup there for this recipient was read back with the recovery key."""
    if _known(unit, path).recipient != recipient:
        raise Refused("other_key", "This place has got another recovery key meanwhile. Try that one.")
    return _change(unit, path, lambda place: replace(place, tried=True, begun=True))


def _known(unit: Unit, path: str) -> BackupPlace:
    place = unit.settings.backups.place(path)
    if place is None:
        raise Missing("Backups do not go to this folder any more. Load the page again.")
    return place


def _change(unit: Unit, path: str, how: Callable[[BackupPlace], BackupPlace]) -> BackupPlace:
    old, known = _known(unit, path), unit.settings.backups
    new = how(old)
    _set(unit, replace(known, places=tuple(new if each is old else each for each in known.places)))
    return new


def _set(unit: Unit, new: Backups) -> None:
    unit.set_settings(replace(unit.settings, backups=new))
    unit.record(events.BackupsSet(**asdict(new)))


def downloaded(unit: Unit, backup: str) -> None:
    """A backup left as a file, for whoever has it now."""
    unit.record(events.BackupDownloaded(backup=backup))
