"""What the workflow needs of storage, and how it says no."""

from __future__ import annotations

from collections.abc import Iterable, Mapping, Sequence
from dataclasses import dataclass, field
from datetime import datetime
from typing import Any, Literal, Protocol, TypeVar

from scanflow.domain import events
from scanflow.domain.access import Role, Visitor
from scanflow.domain.backups import Backups
from scanflow.domain.closing import ClosingDays
from scanflow.domain.orders.loaded import Far, Loaded
from scanflow.domain.orders.titles import Stocked
from scanflow.domain.things import Item, Line, Order, Parcel, Scan, Slot, Station, Stay
from scanflow.planning.racking import Measured

T = TypeVar("T")


class Refused(Exception):
    """The call can't be done as the room stands. `extra` goes into the answer beside code and words."""

    def __init__(self, code: str, detail: str, **extra: Any) -> None:
        super().__init__(detail)
        self.code, self.detail, self.extra = code, detail, extra


class Invalid(Exception):
    """A field of the call is wrong: `pointer` is its place as a JSON pointer (RFC 6901).

    `errors` are all of them as (pointer, code), that one first.
    """

    def __init__(self, pointer: str, code: str, detail: str, errors: tuple[tuple[str, str], ...] = ()) -> None:
        super().__init__(detail)
        self.pointer, self.code, self.detail, self.errors = pointer, code, detail, errors or ((pointer, code),)


class Missing(Exception):
    """The thing that the call is about does not exist."""


@dataclass(frozen=True, slots=True)
class Settings:
    """How this shop works. `zone` is an IANA time zone name, for times that come without offset.

    `check`: what tells a misread card. `none` takes the cards of another system besides our own: bare slot codes and
    aliases, each believed only after two scans that agree. `racks` are measured for the room's drawing and its walks.
    `bind_labels`: shipping labels are scanned and bound to their parcels. `photo_days`: how long the photos of a
    stocktake are kept after it was closed. `count_weeks`: within how many weeks every bin is counted, 0 for no such
    plan; it began at `count_began` (ISO 8601). `by_person`: what goes wrong is counted by who scanned too.
    `hand_overs`: that a parcel leaves is recorded by a scan; without that a closed one is gone after `gone_days`.
    `slip_closes`: a box closes by the scan of its slip, when all is packed. `paper`: what its printer has. `dates`:
    which number comes first where days are shown, and in files that prove nothing; empty for a shop that never said.
    `baskets`: the most orders of a round that takes what waits, 0 for no such limit. `backups`: where they go, how
    often. `restored_at`: when the shop was last put back from a backup (ISO 8601, empty for never); `slips_from`: the
    least number of a slip since then. `closing`: its days off.
    """

    auto_close: bool = True
    scan_at_bin: bool = True
    zone: str = "UTC"
    paper: Literal["a4", "letter"] = "a4"
    dates: Literal["", "day-first", "month-first"] = ""
    name: str = "The stock room"
    check: Literal["mod_11_10", "none"] = "mod_11_10"
    racks: Measured = field(default_factory=Measured)
    bind_labels: bool = False
    photo_days: int = 90
    count_weeks: int = 0
    count_began: str = ""
    by_person: bool = False
    hand_overs: bool = False
    gone_days: int = 3
    slip_closes: bool = False
    baskets: int = 0
    backups: Backups = field(default_factory=Backups)
    restored_at: str = ""
    slips_from: int = 0
    closing: ClosingDays = field(default_factory=ClosingDays)

    @classmethod
    def from_dict(cls, kept: Mapping[str, Any]) -> Settings:
        """What `asdict` made; what was not there yet has its usual value."""
        parts = {
            "racks": Measured(**kept.get("racks", {})),
            "backups": Backups.from_dict(kept.get("backups", {})),
            "closing": ClosingDays.from_dict(kept.get("closing", {})),
        }
        return cls(**{**kept, **parts})


@dataclass(frozen=True, slots=True)
class SlotFacts:
    """One slot with its latest stay, that stay's item, its live line or else its last one, and that line's order."""

    slot: Slot
    stay: Stay | None = None
    item: Item | None = None
    line: Line | None = None
    order: Order | None = None

    @property
    def taken(self) -> bool:
        return self.stay is not None and self.stay.open

    @property
    def live_line(self) -> Line | None:
        return self.line if self.taken and self.line is not None and self.line.live else None


class Access(Protocol):
    """Who may come in. Only hashes are kept of the secrets that are given out here, each once."""

    def make_token(self, name: str, role: Role) -> str:
        """The secret of a new access token. `BadName`; `NameTaken` if something has the name."""
        ...

    def make_session(self, visitor: Visitor, agent: str = "") -> str:
        """The secret of a new session in a browser that says `agent` of itself."""
        ...

    def end_session(self, secret: str) -> bool:
        """Sign a browser out; False if it was not signed in."""
        ...

    def end_sessions(self, *, n: int | None = None) -> list[str]:
        """End the owner's sessions, or the one of this number. What their browsers said of themselves."""
        ...

    def make_setup_link(self) -> str: ...

    def make_pairing_link(self) -> str: ...

    def pair(self, link: str, name: str, agent: str = "") -> str:
        """Use up a link: the secret of a new device of this name. `LinkSpent`, `BadName`, `NameTaken`."""
        ...

    def rename(self, name: str, to: str) -> bool:
        """False if there is no token or device of this name. `BadName`, `NameTaken`."""
        ...

    def revoke(self, name: str) -> bool:
        """False if there is no token or device of this name."""
        ...

    def visitor(self, kind: str, secret: str) -> Visitor | None:
        """Who a token, session or link (`kind`) belongs to, if it is known and has not run out."""
        ...

    def has_password(self) -> bool: ...

    def set_password(self, password: str, keep: int | None = None) -> None:
        """Set the owner's password; sessions and links end, but for the session whose number is to `keep`."""
        ...

    def password_hash(self) -> str | None: ...


class Mappings(Protocol):
    """Which column of an order file holds what, as text, remembered by name."""

    def save(self, name: str, signature: str, columns: str) -> None:
        """Remember `columns` under a name, in place of what was there. `signature` names the file's headers."""
        ...

    def load(self, name: str) -> str | None: ...

    def named(self, signature: str) -> Sequence[str]:
        """The names under which files of these headers are remembered."""
        ...

    def by_signature(self, signature: str) -> str | None:
        """That which was remembered last for a file of these headers."""
        ...


class Loads(Protocol):
    """How far a load in parts is, kept in the transaction of each part. `key` names what is loaded."""

    def far(self, key: str) -> Far: ...

    def keep(self, key: str, before: Far, done: int, part: Loaded) -> None:
        """A part more is in: `done` orders altogether."""
        ...

    def end(self, key: str, before: Far, last: Loaded) -> Loaded:
        """All of it, with its last part; how it came about is forgotten."""
        ...


class Unit(Protocol):
    """One unit of work: what is read and written in it stands or falls together.

    `at` and `who` are the time and the actor of the call. A thing is named by its kind and its first field. `seq`
    counts the ledger's entries.
    """

    at: datetime
    who: str
    settings: Settings

    @property
    def seq(self) -> int: ...

    @property
    def access(self) -> Access: ...

    @property
    def mappings(self) -> Mappings: ...

    @property
    def loads(self) -> Loads: ...

    def new_id(self) -> str: ...

    def get(self, kind: type[T], name: str) -> T | None: ...

    def find(self, kind: type[T], **equal: Any) -> tuple[T, ...]:
        """All things of a kind whose fields equal these, in the order they were added."""
        ...

    def add(self, new: object) -> None: ...

    def put(self, new: object) -> None:
        """Replace the thing of the same kind and name."""
        ...

    def drop(self, kind: type, name: str) -> None:
        """Delete a thing to which nothing refers; only what is no account may go: photos, and what was taken back."""
        ...

    def record(self, event: events.Event) -> None:
        """Append one entry to the ledger."""
        ...

    def told_since(self, seq: int) -> Iterable[tuple[int, events.Told]]:
        """The ledger's entries after this one, with their numbers."""
        ...

    def told_at(self, of: type[events.Event], name: str) -> datetime | None:
        """When the ledger's latest entry of this type that names this thing was made; None where that is long ago."""
        ...

    def told_before(self, at: datetime) -> datetime | None:
        """When the ledger's latest entry of at most this time was made; None where there is none."""
        ...

    def set_settings(self, settings: Settings) -> None: ...

    def facts(self, code: str) -> SlotFacts | None: ...

    def lowest_free(self, section: str) -> Slot | None:
        """The free slot of the lowest number whose card is in the tray and not fetched by somebody else."""
        ...

    def fetched(self) -> tuple[Slot, ...]:
        """The slots whose numbers are kept for this actor now."""
        ...

    def free_slots(self, most_per_bin: int) -> dict[str, int]:
        """Free slots, as `lowest_free` has them, per section with at most this many slots per bin, sections without
        any left out.
        """
        ...

    def last_scan(self, station: Station, spot: str) -> Scan | None: ...

    def last_closed(self, table: str) -> Parcel | None:
        """The parcel that was closed last at a table, and is not open again; it may have left since."""
        ...

    def stocked(self) -> Stocked:
        """All things in stock by the words of their titles."""
        ...

    def last_looks(self) -> Mapping[str, datetime]:
        """When each place was last looked at whole, in counts that were not cancelled."""
        ...

    def visits_since(self, since: datetime) -> Mapping[str, int]:
        """How many things came to each bin or left it since then, bins without any left out."""
        ...

    def next_slip(self) -> int: ...

    def card_texts(self) -> Sequence[str]:
        """What every card bears that exists, lost, retired and adopted ones too."""
        ...


def must(unit: Unit, kind: type[T], name: str) -> T:
    """The thing of that name, or `Missing`."""
    thing = unit.get(kind, name)
    if thing is None:
        raise Missing(f"There is no {kind.__name__.lower()} {name}.")
    return thing
