"""Who may come in: passwords, tokens, sessions, devices and one-time links. Only hashes are kept."""

from __future__ import annotations

import hashlib
import secrets
from datetime import datetime, timedelta
from typing import Any

from sqlalchemy import Connection, Row, delete, insert, or_, select, update

from scanflow.domain.access import LinkSpent, Role, Visitor
from scanflow.domain.access import names as naming
from scanflow.domain.access.names import NameTaken
from scanflow.storage.access import passwords
from scanflow.storage.tables import access

SESSION = timedelta(days=14)
SESSION_IDLE = timedelta(hours=12)
"""A working day with its pauses goes on; a browser that was left signed in is out by the next morning.

OWASP ASVS 5.0.0, 7.3.1 and 7.3.2, leaves both spans to a judgement of risk. NIST SP 800-63B wants 30 days at most where
one factor is asked for, and 12 hours for two (from memory): there is one factor here, and the rooms are a home.
"""

DEVICE = timedelta(days=365)
DEVICE_IDLE = timedelta(days=60)
"""A paired phone has no password to type again, and is only a helper: it goes on over a long holiday, and one that was
lost or given away ends by itself.
"""

SEEN_EVERY = timedelta(minutes=10)
"""How long a use goes unnoted after one that was noted: noting it is a write."""

SETUP_LINK = timedelta(hours=24)
PAIRING_LINK = timedelta(minutes=10)
LONGEST_AGENT = 300

BY_COOKIE = ("session", "device")
"""What a browser shows as its session: a person's, who knew the password, or a device's, which was paired."""

IDLE = {"session": SESSION_IDLE, "device": DEVICE_IDLE}
"""How long each may go unused. One from before uses were noted has no `seen`, and is idle only after the next."""

NAMED = ("token", "device")
"""What goes on until it is revoked, under a name that nothing else has."""


def hash_of(secret: str) -> str:
    """What is kept of a secret: SHA-256 in hex."""
    return hashlib.sha256(secret.encode()).hexdigest()


def csrf_of(secret: str) -> str:
    """The token that a session's pages send with every change; it can't be turned back into the session."""
    return hash_of("csrf " + secret)


class SqlAccess:
    """A `workflow.ports.Access` on one connection, at one time."""

    def __init__(self, connection: Connection, at: datetime) -> None:
        self._connection, self._at = connection, at

    def make_token(self, name: str, role: Role) -> str:
        """A new access token for a program or a person. `BadName`; `NameTaken` if something has the name."""
        self._sweep()
        return self._add("token", self._free_name(name), role, None)

    def make_session(self, visitor: Visitor, agent: str = "") -> str:
        """The secret of a new session in a browser that says `agent` of itself."""
        self._sweep()
        return self._add("session", visitor.name, visitor.role, SESSION, agent)

    def note_use(self, n: int) -> None:
        """The session or device of this number was used now."""
        self._connection.execute(update(access).where(access.c.n == n).values(seen=self._at))

    def end_sessions(self, *, n: int | None = None, but: int | None = None) -> list[str]:
        """End the owner's sessions: the one of this number, or all, or all `but` one. What their browsers said."""
        ended = access.c.kind == "session"
        if n is not None:
            ended &= access.c.n == n
        if but is not None:
            ended &= access.c.n != but
        agents = list(self._connection.execute(select(access.c.agent).where(ended)).scalars())
        self._connection.execute(delete(access).where(ended))
        return agents

    def end_session(self, secret: str) -> bool:
        """Sign a browser out; False if it was not signed in. A device's has to be paired again."""
        gone = delete(access).where(access.c.hash == hash_of(secret), access.c.kind.in_(BY_COOKIE))
        return self._connection.execute(gone).rowcount > 0

    def make_setup_link(self, name: str = "owner") -> str:
        """The secret of a link that sets the owner's password once; an older link of this name stops working."""
        self._connection.execute(delete(access).where(access.c.kind == "setup", access.c.name == name))
        return self._add("setup", name, Role.OWNER, SETUP_LINK)

    def make_pairing_link(self) -> str:
        """The secret of a link that signs one device in; an older link stops working."""
        self._connection.execute(delete(access).where(access.c.kind == "pairing"))
        return self._add("pairing", "", Role.HELPER, PAIRING_LINK)

    def pair(self, link: str, name: str, agent: str = "") -> str:
        """Use up a link: the secret of a new device of this name, with the role that the link gives.

        `LinkSpent`; `BadName` or `NameTaken`, and the link is still good.
        """
        found = self.visitor("pairing", link)
        if found is None:
            raise LinkSpent
        self._sweep()
        kept = self._free_name(name)
        self._connection.execute(delete(access).where(access.c.hash == hash_of(link)))
        return self._add("device", kept, found.role, DEVICE, agent)

    def rename(self, name: str, to: str) -> bool:
        """Give a token or device another name; False if there is none of this name. `BadName`, `NameTaken`."""
        self._sweep()
        kept = self._free_name(to, but=name)
        row = update(access).where(access.c.kind.in_(NAMED), access.c.name == name)
        return self._connection.execute(row.values(name=kept)).rowcount > 0

    def revoke(self, name: str) -> bool:
        """End a token or device; False if there is none of this name."""
        row = delete(access).where(access.c.kind.in_(NAMED), access.c.name == name)
        return self._connection.execute(row).rowcount > 0

    def visitor(self, kind: str, secret: str) -> Visitor | None:
        """Who a token, session or link (`kind`) belongs to, if it is known and has not run out."""
        kinds = BY_COOKIE if kind == "session" else (kind,)
        shown = select(access).where(access.c.hash == hash_of(secret), access.c.kind.in_(kinds))
        row = self._connection.execute(shown).first()
        if row is None or not _holds(row, self._at):
            return None
        return Visitor(row.name, Role(row.role), csrf_of(secret) if kind == "session" else None, row.n, row.seen)

    def has_password(self) -> bool:
        return self._connection.execute(select(access.c.n).where(access.c.kind == "password")).first() is not None

    def set_password(self, password: str, keep: int | None = None) -> None:
        """Set the owner's password; sessions and links of before end, but for the session whose number is to `keep`."""
        self.end_sessions(but=keep)
        self._connection.execute(delete(access).where(access.c.kind.in_(("password", "setup", "pairing"))))
        row = {"hash": hash_of("password"), "name": passwords.hashed(password), "role": Role.OWNER.value}
        self._connection.execute(insert(access), row | {"kind": "password", "made": self._at, "expires": None})

    def password_hash(self) -> str | None:
        """What is kept of the owner's password, for `passwords.matches`."""
        kept: str | None = self._connection.execute(select(access.c.name).where(access.c.kind == "password")).scalar()
        return kept

    def _add(self, kind: str, name: str, role: Role, lasts: timedelta | None, agent: str = "") -> str:
        secret = secrets.token_urlsafe(32)
        row = {"hash": hash_of(secret), "name": name, "role": role.value, "kind": kind, "agent": agent[:LONGEST_AGENT]}
        expires, seen = self._at + lasts if lasts else None, self._at if kind in BY_COOKIE else None
        self._connection.execute(insert(access), {**row, "made": self._at, "expires": expires, "seen": seen})
        return secret

    def _sweep(self) -> None:
        """Remove the sessions and devices that have run out."""
        for kind, idle in IDLE.items():
            over = or_(access.c.expires < self._at, access.c.seen < self._at - idle)
            self._connection.execute(delete(access).where(access.c.kind == kind, over))

    def _free_name(self, name: str, but: str = "") -> str:
        """The name as it is kept, if nothing has it, or only what is called `but`. `BadName`, `NameTaken`."""
        kept = naming.fit(name)
        if naming.key(kept) in {naming.key(each) for each in taken_names(self._connection) if each != but}:
            raise NameTaken(kept)
        return kept


def sessions(connection: Connection, at: datetime) -> list[Row[Any]]:
    """n, made, seen and agent of each of the owner's sessions that holds, the one used last first."""
    rows = connection.execute(select(access).where(access.c.kind == "session"))
    return sorted((row for row in rows if _holds(row, at)), key=lambda row: (row.seen or row.made, row.n), reverse=True)


def named(connection: Connection, at: datetime) -> list[Row[Any]]:
    """Each token and device that still holds, in order of their names."""
    rows = connection.execute(select(access).where(access.c.kind.in_(NAMED)).order_by(access.c.name))
    return [row for row in rows if _holds(row, at)]


def taken_names(connection: Connection) -> set[str]:
    """The names of all tokens and devices."""
    return set(connection.execute(select(access.c.name).where(access.c.kind.in_(NAMED))).scalars())


def _holds(row: Row[Any], at: datetime) -> bool:
    """Whether a token, session, device or link has not run out, and was not idle for too long."""
    in_time = row.expires is None or row.expires >= at
    return in_time and (row.seen is None or row.seen >= at - IDLE[row.kind])
