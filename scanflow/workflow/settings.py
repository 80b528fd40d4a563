"""How this shop works, as its owner says it."""

from __future__ import annotations

from dataclasses import asdict, replace
from typing import Annotated, Literal
from zoneinfo import available_timezones

from pydantic import AfterValidator, Field
from pydantic_core import PydanticCustomError

from scanflow.domain import events
from scanflow.domain.closing import WEEKDAYS, ClosingDays, read_dates
from scanflow.workflow.counts import cycle
from scanflow.workflow.fields import Command, Flag, Maybe, OneOf, integer, words
from scanflow.workflow.parcels import hand_over
from scanflow.workflow.ports import Unit


def _zone(name: str) -> str:
    if name not in available_timezones():
        raise PydanticCustomError("unknown_zone", "Choose a time zone from the list.")
    return name


def _weekdays(names: tuple[str, ...]) -> tuple[str, ...]:
    if set(names) >= set(WEEKDAYS):
        raise PydanticCustomError("never_open", "Leave one day of the week open.")
    return tuple(name for name in WEEKDAYS if name in names)


def _dates(typed: str) -> str:
    try:
        read_dates(typed)
    except ValueError as error:
        raise PydanticCustomError("bad_days", "{why}", {"why": str(error)}) from error
    return typed


class ChangeSettings(Command):
    """As of `ports.Settings`; a number that is not said stays as it is. `closed_on` and `closed_dates` are its
    `closing`, both as they are said where the dates are said, though there be none.
    """

    name: Annotated[str, words(60, least=1)] = Field(title="The shop's name")
    zone: Annotated[str, AfterValidator(_zone)]
    paper: Maybe[Literal["a4", "letter"]] = Field(default=None, title="Paper")
    dates: Maybe[Literal["day-first", "month-first"]] = Field(default=None, title="Dates")
    photo_days: Maybe[Annotated[int, integer(1, 9999)]] = Field(default=None, title="Days that photos are kept")
    count_weeks: Maybe[Annotated[int, integer(0, 99)]] = Field(default=None, title="Weeks to count every bin")
    gone_days: Maybe[Annotated[int, integer(1, 999)]] = Field(default=None, title="Days until a parcel counts as gone")
    baskets: Maybe[Annotated[int, integer(0, 99)]] = Field(default=None, title="Baskets on one round")
    closed_on: Annotated[tuple[Annotated[str, OneOf(WEEKDAYS)], ...], AfterValidator(_weekdays)] = Field(
        default=(), title="Closed each week on"
    )
    closed_dates: Maybe[Annotated[str, words(4000), AfterValidator(_dates)]] = Field(default=None, title="Closed days")
    auto_close: Flag = False
    by_person: Flag = False
    scan_at_bin: Flag = False
    bind_labels: Flag = False
    hand_overs: Flag = False
    slip_closes: Flag = False
    check: Literal["mod_11_10", "none"] = "mod_11_10"


def change(unit: Unit, said: ChangeSettings) -> None:
    """Keep all that is said, and begin what is switched on."""
    before = unit.settings
    if said.hand_overs and not before.hand_overs:
        hand_over.begin(unit)
    planned = cycle.planned(unit, before.count_weeks if said.count_weeks is None else said.count_weeks)
    told = {name: each for name, each in said.known("count_weeks", *_CLOSING).items() if each is not None}
    new = replace(planned, closing=_closing(before.closing, said), **told)
    unit.set_settings(new)
    unit.record(events.SettingsChanged(settings=asdict(new)))


_CLOSING = ("closed_on", "closed_dates")


def _closing(before: ClosingDays, said: ChangeSettings) -> ClosingDays:
    return before if said.closed_dates is None else ClosingDays(said.closed_on, read_dates(said.closed_dates))
