"""Rounds, scans, and scans that were taken back."""

from __future__ import annotations

from scanflow.domain.events.kinds import Event, LineId, NamedThing, ParcelId, RoundId, SlotCode, event


@event("round opened", moves=())
class RoundOpened(Event):
    round: RoundId
    lines: tuple[LineId, ...]


@event("round closed", moves=())
class RoundClosed(Event):
    round: RoundId


@event("scan", moves=("code", "released"))
class Scanned(Event):
    """One reading with its verdict. `age_ms` is how long it waited, `released` are the slots of a parcel it closed."""

    station: str
    spot: str
    key: str
    text: tuple[str, ...]
    via: str
    client_at: str | None
    age_ms: int = 0
    take_out: bool
    verdict: str
    reason: str | None
    changed: bool
    code: SlotCode | None
    order_number: str | None
    line: LineId | None
    line_state: str | None
    parcel: ParcelId | None
    parcel_state: str | None
    released: tuple[SlotCode, ...]

    @property
    def accepted(self) -> bool:
        return self.verdict == "accepted"

    def moved(self) -> tuple[NamedThing, ...]:
        """A card that was refused stays where it is."""
        return Event.moved(self) if self.accepted else ()


@event("undone", moves=("line",))
class Undone(Event):
    key: str
    line: LineId
    line_state: str
