"""Who may come in: only hashes are kept, links work once, sessions end."""

from __future__ import annotations

from collections.abc import Iterator
from datetime import datetime, timedelta

import argon2
import pytest
from argon2.low_level import Type, core, ffi
from memory import NOON
from sqlalchemy import Connection, text

from scanflow.storage import access
from scanflow.storage.access import LinkSpent, Role, Visitor, passwords
from scanflow.storage.access.names import BadName, NameTaken
from scanflow.storage.database import Database

PASSWORD = "a long enough pass phrase"
SECOND = timedelta(seconds=1)


@pytest.fixture
def connection(database: Database) -> Iterator[Connection]:
    with database.writing(NOON, "tester") as unit:
        yield unit.connection


def used(connection: Connection, secret: str, at: datetime) -> None:
    """A session or device is used."""
    found = access.visitor(connection, "session", secret, NOON)
    assert found is not None
    access.note_use(connection, found.n, at)


def kept(connection: Connection) -> str:
    """All that the table of who may come in holds, as one text."""
    return "\n".join(str(tuple(row)) for row in connection.execute(text("SELECT * FROM access")))


@pytest.mark.parametrize("role", Role)
def test_token(connection: Connection, role: Role) -> None:
    """A token is known by its secret, for ever, with its name and role; it is no session."""
    secret = access.make_token(connection, "printer", role, NOON)
    later = NOON + timedelta(days=9999)
    assert Visitor("printer", role) == access.visitor(connection, "token", secret, later)
    assert [None, None] == [access.visitor(connection, kind, secret, NOON) for kind in ("session", "setup")]


def test_wrong_token(connection: Connection) -> None:
    """A secret that differs in one character, in case or is empty is unknown."""
    secret = access.make_token(connection, "printer", Role.PROGRAM, NOON)
    wrong = [secret[:-1], secret + "A", secret.swapcase(), "", "%"]
    assert 5 * [None] == [access.visitor(connection, "token", each, NOON) for each in wrong]


def test_names_of_tokens(connection: Connection) -> None:
    """A second token of a name is refused, whatever its role."""
    access.make_token(connection, "printer", Role.PROGRAM, NOON)
    with pytest.raises(NameTaken):
        access.make_token(connection, "printer", Role.OWNER, NOON)


def test_secrets_are_long_and_differ(connection: Connection) -> None:
    """A secret has 256 bits, and no two are alike."""
    secrets = {access.make_token(connection, f"t{n}", Role.PROGRAM, NOON) for n in range(20)}
    assert (20, {43}) == (len(secrets), {len(secret) for secret in secrets})


def test_only_hashes_are_kept(connection: Connection) -> None:
    """Neither secrets nor the password stand anywhere in the table."""
    access.set_password(connection, PASSWORD, NOON)
    owner = Visitor("owner", Role.OWNER)
    secrets = [
        access.make_token(connection, "printer", Role.PROGRAM, NOON),
        access.make_session(connection, owner, NOON),
        access.make_setup_link(connection, NOON),
        access.pair(connection, access.make_pairing_link(connection, NOON), "phone", NOON),
        access.make_pairing_link(connection, NOON),
    ]
    everything = kept(connection)
    assert 6 == len(everything.splitlines())
    assert 6 * [False] == [secret in everything for secret in (*secrets, PASSWORD)]


def test_session_ends_by_time(connection: Connection) -> None:
    """A session lasts 14 days and not a second longer, however much it is used."""
    secret = access.make_session(connection, Visitor("owner", Role.OWNER), NOON)
    last = NOON + timedelta(days=14)
    used(connection, secret, last)
    wanted = Visitor("owner", Role.OWNER, access.csrf_of(secret))
    assert wanted == access.visitor(connection, "session", secret, last)
    assert None is access.visitor(connection, "session", secret, last + SECOND)


@pytest.mark.parametrize(("kind", "idle"), [("session", timedelta(hours=12)), ("device", timedelta(days=60))])
def test_what_nobody_uses_ends(connection: Connection, kind: str, idle: timedelta) -> None:
    """A session ends 12 hours after its last use, a device 60 days after it; then the device's name is free."""
    if kind == "session":
        secret = access.make_session(connection, Visitor("owner", Role.OWNER), NOON)
    else:
        secret = access.pair(connection, access.make_pairing_link(connection, NOON), "phone", NOON)
    last = NOON + 2 * idle
    used(connection, secret, NOON + idle)
    assert None is not access.visitor(connection, "session", secret, last)
    assert None is access.visitor(connection, "session", secret, last + SECOND)
    assert ([], []) == (access.sessions(connection, last + SECOND), access.named(connection, last + SECOND))
    link = access.make_pairing_link(connection, last + SECOND)
    assert access.pair(connection, link, "phone", last + SECOND)


def test_a_phone_paired_before_uses_were_noted_goes_on(connection: Connection) -> None:
    """Nobody knows how long it was idle, so it holds for its year."""
    secret = access.pair(connection, access.make_pairing_link(connection, NOON), "phone", NOON)
    connection.execute(text("UPDATE access SET seen = NULL"))
    assert None is not access.visitor(connection, "session", secret, NOON + timedelta(days=300))


def test_sessions_are_listed_and_ended(connection: Connection) -> None:
    """Each with its browser, the one used last first; one, or all but one, are ended, and devices go on."""
    device = access.pair(connection, access.make_pairing_link(connection, NOON), "phone", NOON)
    owner = Visitor("owner", Role.OWNER)
    secrets = [access.make_session(connection, owner, NOON + n * SECOND, f"browser {n}") for n in range(4)]
    used(connection, secrets[1], NOON + timedelta(hours=1))
    listed = access.sessions(connection, NOON + timedelta(hours=1))
    assert ["browser 1", "browser 3", "browser 2", "browser 0"] == [row.agent for row in listed]
    assert ["browser 3"] == access.end_sessions(connection, n=listed[1].n)
    assert ["browser 0", "browser 2"] == sorted(access.end_sessions(connection, but=listed[0].n))
    told = [access.visitor(connection, "session", each, NOON) is not None for each in (*secrets, device)]
    assert [False, True, False, False, True] == told


def test_session_ends_by_leaving(connection: Connection) -> None:
    """Signing out ends that session only."""
    one, two = (access.make_session(connection, Visitor("owner", Role.OWNER), NOON) for _ in range(2))
    access.end_session(connection, one)
    told = [access.visitor(connection, "session", each, NOON) is None for each in (one, two)]
    assert [True, False] == told


def test_old_sessions_are_swept(connection: Connection) -> None:
    """Sessions that ran out are removed when a new one begins."""
    owner = Visitor("owner", Role.OWNER)
    access.make_session(connection, owner, NOON)
    access.make_session(connection, owner, NOON + timedelta(days=15))
    assert 1 == len(kept(connection).splitlines())


def test_csrf_belongs_to_one_session(connection: Connection) -> None:
    """Each session has a CSRF token of its own that is neither its secret nor what is kept of it."""
    one, two = (access.make_session(connection, Visitor("owner", Role.OWNER), NOON) for _ in range(2))
    tokens = {access.csrf_of(one), access.csrf_of(two)}
    assert (2, True) == (len(tokens), tokens.isdisjoint({one, two}))
    assert [False, False] == [token in kept(connection) for token in tokens]


def test_setup_link_works_once(connection: Connection) -> None:
    """The link that sets the password is known until the password is set, for a day, and only the newest is."""
    first = access.make_setup_link(connection, NOON)
    secret = access.make_setup_link(connection, NOON)
    last = NOON + timedelta(hours=24)
    assert None is access.visitor(connection, "setup", first, NOON)
    assert Visitor("owner", Role.OWNER) == access.visitor(connection, "setup", secret, last)
    assert None is access.visitor(connection, "setup", secret, last + SECOND)
    access.set_password(connection, PASSWORD, NOON)
    assert None is access.visitor(connection, "setup", secret, NOON)


def test_pairing_link_lasts_ten_minutes(connection: Connection) -> None:
    """A link pairs until ten minutes have passed and not a second longer, and only the newest does."""
    first = access.make_pairing_link(connection, NOON)
    link = access.make_pairing_link(connection, NOON)
    last = NOON + timedelta(minutes=10)
    with pytest.raises(LinkSpent):
        access.pair(connection, first, "phone", NOON)
    with pytest.raises(LinkSpent):
        access.pair(connection, link, "phone", last + SECOND)
    secret = access.pair(connection, link, "phone", last)
    wanted = Visitor("phone", Role.HELPER, access.csrf_of(secret))
    assert wanted == access.visitor(connection, "session", secret, last)


def test_pairing_link_works_once(connection: Connection) -> None:
    """A link that was used pairs no other device; it is neither a token nor a session itself."""
    link = access.make_pairing_link(connection, NOON)
    assert [None, None] == [access.visitor(connection, kind, link, NOON) for kind in ("token", "session")]
    secret = access.pair(connection, link, "phone", NOON)
    assert None is access.visitor(connection, "token", secret, NOON)
    with pytest.raises(LinkSpent):
        access.pair(connection, link, "tablet", NOON)


@pytest.mark.parametrize("name", ["printer", "phone", "owner", "Printer", "ｐrinter", " phone", "OWNER", "scanflow"])
def test_a_device_has_a_name_of_its_own(connection: Connection, name: str) -> None:
    """A token's, a device's and the owner's names are taken; the link is still good for another name."""
    access.make_token(connection, "printer", Role.PROGRAM, NOON)
    access.pair(connection, access.make_pairing_link(connection, NOON), "phone", NOON)
    link = access.make_pairing_link(connection, NOON)
    with pytest.raises(NameTaken):
        access.pair(connection, link, name, NOON)
    access.pair(connection, link, "tablet", NOON)
    with pytest.raises(NameTaken):
        access.rename(connection, "tablet", name, NOON)
    with pytest.raises(NameTaken):
        access.make_token(connection, "tablet", Role.PROGRAM, NOON)
    assert access.rename(connection, "tablet", "Tablet", NOON)


@pytest.mark.parametrize("name", ["", "  ", "\u043ewner", "blue\u202ephone", "x" * 41])
def test_a_name_that_nobody_can_read(connection: Connection, name: str) -> None:
    """Neither a device nor a token gets it, at first or later."""
    link = access.make_pairing_link(connection, NOON)
    with pytest.raises(BadName):
        access.pair(connection, link, name, NOON)
    with pytest.raises(BadName):
        access.make_token(connection, name, Role.PROGRAM, NOON)
    access.pair(connection, link, "tablet", NOON)
    with pytest.raises(BadName):
        access.rename(connection, "tablet", name, NOON)


def test_a_device_lasts_a_year(connection: Connection) -> None:
    """After 365 days a device must be paired again, and its name is free."""
    secret = access.pair(connection, access.make_pairing_link(connection, NOON), "phone", NOON)
    last = NOON + timedelta(days=365)
    used(connection, secret, last)
    assert "phone" == getattr(access.visitor(connection, "session", secret, last), "name", None)
    assert None is access.visitor(connection, "session", secret, last + SECOND)
    assert (1, 0) == (len(access.named(connection, last)), len(access.named(connection, last + SECOND)))
    access.pair(connection, access.make_pairing_link(connection, last + SECOND), "phone", last + SECOND)


def test_rename_and_revoke(connection: Connection) -> None:
    """Tokens and devices are listed by name, get another one, and end; sessions and links are none of them."""
    token = access.make_token(connection, "printer", Role.PROGRAM, NOON)
    device = access.pair(connection, access.make_pairing_link(connection, NOON), "phone", NOON)
    session = access.make_session(connection, Visitor("owner", Role.OWNER), NOON)
    access.make_pairing_link(connection, NOON)
    listed = [(row.name, row.role, row.kind, row.made) for row in access.named(connection, NOON)]
    assert [("phone", "helper", "device", NOON), ("printer", "program", "token", NOON)] == listed
    assert (True, False) == (
        access.rename(connection, "phone", "blue phone", NOON),
        access.rename(connection, "x", "y", NOON),
    )
    assert "blue phone" == getattr(access.visitor(connection, "session", device, NOON), "name", None)
    ended = [access.revoke(connection, name) for name in ("blue phone", "printer", "owner", "", "phone")]
    assert [True, True, False, False, False] == ended
    told = [access.visitor(connection, *who, NOON) for who in (("token", token), ("session", device))]
    assert [None, None] == told
    assert None is not access.visitor(connection, "session", session, NOON)


def test_a_new_password_ends_pairing_links(connection: Connection) -> None:
    """Setting the password ends a link that waits for its phone; paired devices go on."""
    device = access.pair(connection, access.make_pairing_link(connection, NOON), "phone", NOON)
    link = access.make_pairing_link(connection, NOON)
    access.set_password(connection, PASSWORD, NOON)
    assert None is access.visitor(connection, "pairing", link, NOON)
    assert None is not access.visitor(connection, "session", device, NOON)


def test_password(connection: Connection) -> None:
    """Only the very password is right; before one is set none is."""
    assert (False, False) == (access.has_password(connection), access.check_password(connection, ""))
    access.set_password(connection, PASSWORD, NOON)
    assert access.has_password(connection)
    tries = (PASSWORD, PASSWORD.upper(), PASSWORD + " ", "", passwords.hashed(PASSWORD))
    assert [True, False, False, False, False] == [access.check_password(connection, each) for each in tries]


def test_a_new_password_ends_sessions(connection: Connection) -> None:
    """Setting the password again ends what the old one opened; tokens go on."""
    access.set_password(connection, PASSWORD, NOON)
    session = access.make_session(connection, Visitor("owner", Role.OWNER), NOON)
    token = access.make_token(connection, "printer", Role.PROGRAM, NOON)
    access.set_password(connection, "another pass phrase", NOON)
    told = [access.visitor(connection, kind, each, NOON) for kind, each in (("session", session), ("token", token))]
    assert [None, Visitor("printer", Role.PROGRAM)] == told
    checked = [access.check_password(connection, each) for each in (PASSWORD, "another pass phrase")]
    assert [False, True] == checked


def test_password_hash_parameters(connection: Connection) -> None:
    """Passwords are kept as Argon2id of at least m = 19456 KiB, t = 2, p = 1, salted anew each time."""
    access.set_password(connection, PASSWORD, NOON)
    one = connection.execute(text("SELECT name FROM access WHERE kind = 'password'")).scalar_one()
    access.set_password(connection, PASSWORD, NOON)
    two = connection.execute(text("SELECT name FROM access WHERE kind = 'password'")).scalar_one()
    told = argon2.extract_parameters(one)
    # OWASP Password Storage Cheat Sheet
    assert Type.ID is told.type and told.memory_cost >= 19456 and told.time_cost >= 2 and told.parallelism >= 1
    assert (19, True) == (told.version, one != two and told.salt_len >= 16)


def test_argon2id_is_that_of_rfc_9106() -> None:
    """The library computes the Argon2id vector of RFC 9106, section 5.3."""
    out, password, salt = ffi.new("uint8_t[32]"), ffi.new("uint8_t[]", 32 * b"\x01"), ffi.new("uint8_t[]", 16 * b"\x02")
    secret, data = ffi.new("uint8_t[]", 8 * b"\x03"), ffi.new("uint8_t[]", 12 * b"\x04")
    context = ffi.new(
        "argon2_context *",
        {
            **{"out": out, "outlen": 32, "pwd": password, "pwdlen": 32, "salt": salt, "saltlen": 16},
            **{"secret": secret, "secretlen": 8, "ad": data, "adlen": 12, "version": 19, "flags": 0},
            **{"t_cost": 3, "m_cost": 32, "lanes": 4, "threads": 4},
            **{"allocate_cbk": ffi.NULL, "free_cbk": ffi.NULL},
        },
    )
    assert 0 == core(context, Type.ID.value)
    # RFC 9106 section 5.3, computed with argon2-cffi
    assert "0d640df58d78766c08c037a34a8b53c9d01ef0452d75b65eb52520e96b01e659" == bytes(out).hex()
