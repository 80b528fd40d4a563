"""Who may come in: passwords, tokens, sessions and the one-time link. Only hashes are kept."""

from __future__ import annotations

import hashlib
import secrets
from dataclasses import dataclass
from datetime import datetime, timedelta
from enum import StrEnum

from argon2 import PasswordHasher
from argon2.exceptions import VerifyMismatchError
from sqlalchemy import Connection, delete, insert, select

from scanflow.storage.tables import access

PASSWORDS = PasswordHasher(time_cost=2, memory_cost=19456, parallelism=1)
"""Argon2id with OWASP's least settings."""

SESSION = timedelta(days=14)
SETUP_LINK = timedelta(hours=24)
SHORTEST_PASSWORD = 8


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
    """There is a token of that name already."""


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
    taken = select(access.c.n).where(access.c.kind == "token", access.c.name == name)
    if connection.execute(taken).first() is not None:
        raise NameTaken(name)
    return _add(connection, "token", name, role, at, None)


def make_session(connection: Connection, visitor: Visitor, at: datetime) -> str:
    connection.execute(delete(access).where(access.c.kind == "session", access.c.expires < at))
    return _add(connection, "session", visitor.name, visitor.role, at, SESSION)


def end_session(connection: Connection, secret: str) -> None:
    connection.execute(delete(access).where(access.c.hash == hash_of(secret), access.c.kind == "session"))


def make_setup_link(connection: Connection, at: datetime) -> str:
    """The secret of a link that sets the owner's password once; an older link stops working."""
    connection.execute(delete(access).where(access.c.kind == "setup"))
    return _add(connection, "setup", "owner", Role.OWNER, at, SETUP_LINK)


def visitor(connection: Connection, kind: str, secret: str, at: datetime) -> Visitor | None:
    """Who a token or session (`kind`) belongs to, if it is known and has not run out."""
    row = connection.execute(select(access).where(access.c.hash == hash_of(secret), access.c.kind == kind)).first()
    if row is None or (row.expires is not None and row.expires < at):
        return None
    return Visitor(row.name, Role(row.role), csrf_of(secret) if kind == "session" else None)


def has_password(connection: Connection) -> bool:
    return connection.execute(select(access.c.n).where(access.c.kind == "password")).first() is not None


def set_password(connection: Connection, password: str, at: datetime) -> None:
    """Set the owner's password; sessions and links of before end."""
    connection.execute(delete(access).where(access.c.kind.in_(("password", "session", "setup"))))
    row = {"hash": hash_of("password"), "name": PASSWORDS.hash(password), "role": Role.OWNER.value, "kind": "password"}
    connection.execute(insert(access), row | {"made": at, "expires": None})


def check_password(connection: Connection, password: str) -> bool:
    kept = connection.execute(select(access.c.name).where(access.c.kind == "password")).scalar()
    try:
        return kept is not None and PASSWORDS.verify(kept, password)
    except VerifyMismatchError:
        return False
