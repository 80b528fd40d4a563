"""Who comes in: the owner, a helper's phone, a program."""

from __future__ import annotations

from dataclasses import dataclass, field
from datetime import datetime
from enum import StrEnum


class Role(StrEnum):
    """What somebody may do."""

    OWNER = "owner"
    HELPER = "helper"
    PROGRAM = "program"


MANAGERS = (Role.OWNER, Role.PROGRAM)
"""Who may do all that a helper may not, by calls and on pages alike."""


@dataclass(frozen=True, slots=True)
class Visitor:
    """Somebody who may come in. `csrf` is set for a session: pages send it back with every change. `n` is the number of
    the token or session, `seen` when it was used last, as far as that was noted.
    """

    name: str
    role: Role
    csrf: str | None = None
    n: int = field(default=0, compare=False)
    seen: datetime | None = field(default=None, compare=False)


class LinkSpent(Exception):
    """The link was used, has run out, or a newer one took its place."""
