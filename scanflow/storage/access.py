"""Who may come in: passwords, tokens, sessions, devices and one-time links. Only hashes are kept."""

from __future__ import annotations

import hashlib
import secrets
from dataclasses import dataclass
from datetime import datetime, timedelta
from enum import StrEnum
from typing import Any

from argon2 import PasswordHasher
from argon2.exceptions import VerifyMismatchError
from sqlalchemy import Connection, Row, delete, insert, select, update

from scanflow.storage.tables import access

PASSWORDS = PasswordHasher(time_cost=2, memory_cost=19456, parallelism=1)
"""Argon2id with OWASP's least settings."""

SESSION = timedelta(days=14)
DEVICE = timedelta(days=365)
SETUP_LINK = timedelta(hours=24)
PAIRING_LINK = timedelta(minutes=10)
SHORTEST_PASSWORD = 8
LONGEST_NAME = 40

BY_COOKIE = ("session", "device")
"""What a browser shows as its session: a person's, who knew the password, or a device's, which was paired."""

NAMED = ("token", "device")
"""What goes on until it is revoked, under a name that nothing else has."""


class Role(StrEnum):
    OWNER = "owner"
    HELPER = "helper"
    PROGRAM = "program"


@dataclass(frozen=True, slots=True)
class Visitor:
    """Somebody who may come in. `csrf` is set for a session: pages send it back with every change."""

    name: str
    role: Role
    csrf: str | None = None


class NameTaken(Exception):
    """There is a token or a device of that name already."""


class LinkSpent(Exception):
    """The link was used, has run out, or a newer one took its place."""


def hash_of(secret: str) -> str:
    """What is kept of a secret: SHA-256 in hex."""
    return hashlib.sha256(secret.encode()).hexdigest()


def csrf_of(secret: str) -> str:
    """The token that a session's pages send with every change; it can't be turned back into the session."""
    return hash_of("csrf " + secret)


def _add(connection: Connection, kind: str, name: str, role: Role, at: datetime, lasts: timedelta | None) -> str:
    secret = secrets.token_urlsafe(32)
    expires = at + lasts if lasts else None
    row = {"hash": hash_of(secret), "name": name, "role": role.value, "kind": kind, "made": at, "expires": expires}
    connection.execute(insert(access), row)
    return secret


def make_token(connection: Connection, name: str, role: Role, at: datetime) -> str:
    """A new access token for a program or a person; `NameTaken` if the name has one."""
    if name in names(connection):
        raise NameTaken(name)
    return _add(connection, "token", name, role, at, None)


def names(connection: Connection) -> set[str]:
    """The names of all tokens and devices."""
    return set(connection.execute(select(access.c.name).where(access.c.kind.in_(NAMED))).scalars())


def make_session(connection: Connection, visitor: Visitor, at: datetime) -> str:
    _sweep(connection, at)
    return _add(connection, "session", visitor.name, visitor.role, at, SESSION)


def _sweep(connection: Connection, at: datetime) -> None:
    """Remove the sessions and devices that have run out."""
    connection.execute(delete(access).where(access.c.kind.in_(BY_COOKIE), access.c.expires < at))


def end_session(connection: Connection, secret: str) -> None:
    """Sign a browser out. A device's has to be paired again."""
    connection.execute(delete(access).where(access.c.hash == hash_of(secret), access.c.kind.in_(BY_COOKIE)))


def make_setup_link(connection: Connection, at: datetime) -> str:
    """The secret of a link that sets the owner's password once; an older link stops working."""
    connection.execute(delete(access).where(access.c.kind == "setup"))
    return _add(connection, "setup", "owner", Role.OWNER, at, SETUP_LINK)


def make_pairing_link(connection: Connection, at: datetime) -> str:
    """The secret of a link that signs one device in; an older link stops working."""
    connection.execute(delete(access).where(access.c.kind == "pairing"))
    return _add(connection, "pairing", "", Role.HELPER, at, PAIRING_LINK)


def pair(connection: Connection, link: str, name: str, at: datetime) -> str:
    """Use up a link: the secret of a new device of this name, with the role that the link gives.

    `LinkSpent`; `NameTaken`, and the link is still good.
    """
    found = visitor(connection, "pairing", link, at)
    if found is None:
        raise LinkSpent
    _sweep(connection, at)
    if name == Role.OWNER or name in names(connection):
        raise NameTaken(name)
    connection.execute(delete(access).where(access.c.hash == hash_of(link)))
    return _add(connection, "device", name, found.role, at, DEVICE)


def named(connection: Connection, at: datetime) -> list[Row[Any]]:
    """name, role, kind and made of each token and device that still holds, in order of their names."""
    columns = (access.c.name, access.c.role, access.c.kind, access.c.made, access.c.expires)
    rows = connection.execute(select(*columns).where(access.c.kind.in_(NAMED)).order_by(access.c.name))
    return [row for row in rows if row.expires is None or row.expires >= at]


def rename(connection: Connection, name: str, to: str) -> bool:
    """Give a token or device another name; False if there is none of this name. `NameTaken`."""
    if name != to and (to == Role.OWNER or to in names(connection)):
        raise NameTaken(to)
    row = update(access).where(access.c.kind.in_(NAMED), access.c.name == name)
    return connection.execute(row.values(name=to)).rowcount > 0


def revoke(connection: Connection, name: str) -> bool:
    """End a token or device; False if there is none of this name."""
    row = delete(access).where(access.c.kind.in_(NAMED), access.c.name == name)
    return connection.execute(row).rowcount > 0


def visitor(connection: Connection, kind: str, secret: str, at: datetime) -> Visitor | None:
    """Who a token, session or link (`kind`) belongs to, if it is known and has not run out."""
    kinds = BY_COOKIE if kind == "session" else (kind,)
    row = connection.execute(select(access).where(access.c.hash == hash_of(secret), access.c.kind.in_(kinds))).first()
    if row is None or (row.expires is not None and row.expires < at):
        return None
    return Visitor(row.name, Role(row.role), csrf_of(secret) if kind == "session" else None)


def has_password(connection: Connection) -> bool:
    return connection.execute(select(access.c.n).where(access.c.kind == "password")).first() is not None


def set_password(connection: Connection, password: str, at: datetime) -> None:
    """Set the owner's password; sessions and links of before end."""
    connection.execute(delete(access).where(access.c.kind.in_(("password", "session", "setup", "pairing"))))
    row = {"hash": hash_of("password"), "name": PASSWORDS.hash(password), "role": Role.OWNER.value, "kind": "password"}
    connection.execute(insert(access), row | {"made": at, "expires": None})


def check_password(connection: Connection, password: str) -> bool:
    kept = connection.execute(select(access.c.name).where(access.c.kind == "password")).scalar()
    try:
        return kept is not None and PASSWORDS.verify(kept, password)
    except VerifyMismatchError:
        return False
