"""Who may come in: only hashes are kept, links work once, sessions end."""

from __future__ import annotations

from collections.abc import Iterator
from datetime import datetime, timedelta

import argon2
import pytest
from argon2.low_level import Type, core, ffi
from memory import NOON
from sqlalchemy import Connection, text

from scanflow.domain.access import LinkSpent, Role, Visitor
from scanflow.domain.access.names import BadName, NameTaken
from scanflow.storage import access
from scanflow.storage.access import SqlAccess, passwords
from scanflow.storage.database import Database

PASSWORD = "a long enough pass phrase"
SECOND = timedelta(seconds=1)


@pytest.fixture
def connection(database: Database) -> Iterator[Connection]:
    with database.writing(NOON, "tester") as unit:
        yield unit.connection


def noon(connection: Connection) -> SqlAccess:
    """What is done and asked at noon."""
    return SqlAccess(connection, NOON)


def used(connection: Connection, secret: str, at: datetime) -> None:
    """A session or device is used."""
    found = noon(connection).visitor("session", secret)
    assert found is not None
    SqlAccess(connection, at).note_use(found.n)


def check_password(connection: Connection, password: str) -> bool:
    """Whether this is the owner's password, as the sign-in looks at it."""
    kept = noon(connection).password_hash()
    return kept is not None and passwords.matches(kept, password)


def kept(connection: Connection) -> str:
    """All that the table of who may come in holds, as one text."""
    return "\n".join(str(tuple(row)) for row in connection.execute(text("SELECT * FROM access")))


@pytest.mark.parametrize("role", Role)
def test_token(connection: Connection, role: Role) -> None:
    """A token is known by its secret, for ever, with its name and role; it is no session."""
    secret = noon(connection).make_token("printer", role)
    later = NOON + timedelta(days=9999)
    assert Visitor("printer", role) == SqlAccess(connection, later).visitor("token", secret)
    assert [None, None] == [noon(connection).visitor(kind, secret) for kind in ("session", "setup")]


def test_wrong_token(connection: Connection) -> None:
    """A secret that differs in one character, in case or is empty is unknown."""
    secret = noon(connection).make_token("printer", Role.PROGRAM)
    wrong = [secret[:-1], secret + "A", secret.swapcase(), "", "%"]
    assert 5 * [None] == [noon(connection).visitor("token", each) for each in wrong]


def test_names_of_tokens(connection: Connection) -> None:
    """A second token of a name is refused, whatever its role."""
    noon(connection).make_token("printer", Role.PROGRAM)
    with pytest.raises(NameTaken):
        noon(connection).make_token("printer", Role.OWNER)


def test_secrets_are_long_and_differ(connection: Connection) -> None:
    """A secret has 256 bits, and no two are alike."""
    secrets = {noon(connection).make_token(f"t{n}", Role.PROGRAM) for n in range(20)}
    assert (20, {43}) == (len(secrets), {len(secret) for secret in secrets})


def test_only_hashes_are_kept(connection: Connection) -> None:
    """Neither secrets nor the password stand anywhere in the table."""
    noon(connection).set_password(PASSWORD)
    owner = Visitor("owner", Role.OWNER)
    secrets = [
        noon(connection).make_token("printer", Role.PROGRAM),
        noon(connection).make_session(owner),
        noon(connection).make_setup_link(),
        noon(connection).pair(noon(connection).make_pairing_link(), "phone"),
        noon(connection).make_pairing_link(),
    ]
    everything = kept(connection)
    assert 6 == len(everything.splitlines())
    assert 6 * [False] == [secret in everything for secret in (*secrets, PASSWORD)]


def test_session_ends_by_time(connection: Connection) -> None:
    """A session lasts 14 days and not a second longer, however much it is used."""
    secret = noon(connection).make_session(Visitor("owner", Role.OWNER))
    last = NOON + timedelta(days=14)
    used(connection, secret, last)
    wanted = Visitor("owner", Role.OWNER, access.csrf_of(secret))
    assert wanted == SqlAccess(connection, last).visitor("session", secret)
    assert None is SqlAccess(connection, last + SECOND).visitor("session", secret)


@pytest.mark.parametrize(("kind", "idle"), [("session", timedelta(hours=12)), ("device", timedelta(days=60))])
def test_what_nobody_uses_ends(connection: Connection, kind: str, idle: timedelta) -> None:
    """A session ends 12 hours after its last use, a device 60 days after it; then the device's name is free."""
    if kind == "session":
        secret = noon(connection).make_session(Visitor("owner", Role.OWNER))
    else:
        secret = noon(connection).pair(noon(connection).make_pairing_link(), "phone")
    last = NOON + 2 * idle
    used(connection, secret, NOON + idle)
    assert None is not SqlAccess(connection, last).visitor("session", secret)
    assert None is SqlAccess(connection, last + SECOND).visitor("session", secret)
    assert ([], []) == (access.sessions(connection, last + SECOND), access.named(connection, last + SECOND))
    link = SqlAccess(connection, last + SECOND).make_pairing_link()
    assert SqlAccess(connection, last + SECOND).pair(link, "phone")


def test_a_phone_paired_before_uses_were_noted_goes_on(connection: Connection) -> None:
    """Nobody knows how long it was idle, so it holds for its year."""
    secret = noon(connection).pair(noon(connection).make_pairing_link(), "phone")
    connection.execute(text("UPDATE access SET seen = NULL"))
    assert None is not SqlAccess(connection, NOON + timedelta(days=300)).visitor("session", secret)


def test_sessions_are_listed_and_ended(connection: Connection) -> None:
    """Each with its browser, the one used last first; one, or all but one, are ended, and devices go on."""
    device = noon(connection).pair(noon(connection).make_pairing_link(), "phone")
    owner = Visitor("owner", Role.OWNER)
    secrets = [SqlAccess(connection, NOON + n * SECOND).make_session(owner, f"browser {n}") for n in range(4)]
    used(connection, secrets[1], NOON + timedelta(hours=1))
    listed = access.sessions(connection, NOON + timedelta(hours=1))
    assert ["browser 1", "browser 3", "browser 2", "browser 0"] == [row.agent for row in listed]
    assert ["browser 3"] == noon(connection).end_sessions(n=listed[1].n)
    assert ["browser 0", "browser 2"] == sorted(noon(connection).end_sessions(but=listed[0].n))
    told = [noon(connection).visitor("session", each) is not None for each in (*secrets, device)]
    assert [False, True, False, False, True] == told


def test_session_ends_by_leaving(connection: Connection) -> None:
    """Signing out ends that session only."""
    one, two = (noon(connection).make_session(Visitor("owner", Role.OWNER)) for _ in range(2))
    noon(connection).end_session(one)
    told = [noon(connection).visitor("session", each) is None for each in (one, two)]
    assert [True, False] == told


def test_old_sessions_are_swept(connection: Connection) -> None:
    """Sessions that ran out are removed when a new one begins."""
    owner = Visitor("owner", Role.OWNER)
    noon(connection).make_session(owner)
    SqlAccess(connection, NOON + timedelta(days=15)).make_session(owner)
    assert 1 == len(kept(connection).splitlines())


def test_csrf_belongs_to_one_session(connection: Connection) -> None:
    """Each session has a CSRF token of its own that is neither its secret nor what is kept of it."""
    one, two = (noon(connection).make_session(Visitor("owner", Role.OWNER)) for _ in range(2))
    tokens = {access.csrf_of(one), access.csrf_of(two)}
    assert (2, True) == (len(tokens), tokens.isdisjoint({one, two}))
    assert [False, False] == [token in kept(connection) for token in tokens]


def test_setup_link_works_once(connection: Connection) -> None:
    """The link that sets the password is known until the password is set, for a day, and only the newest is."""
    first = noon(connection).make_setup_link()
    secret = noon(connection).make_setup_link()
    last = NOON + timedelta(hours=24)
    assert None is noon(connection).visitor("setup", first)
    assert Visitor("owner", Role.OWNER) == SqlAccess(connection, last).visitor("setup", secret)
    assert None is SqlAccess(connection, last + SECOND).visitor("setup", secret)
    noon(connection).set_password(PASSWORD)
    assert None is noon(connection).visitor("setup", secret)


def test_pairing_link_lasts_ten_minutes(connection: Connection) -> None:
    """A link pairs until ten minutes have passed and not a second longer, and only the newest does."""
    first = noon(connection).make_pairing_link()
    link = noon(connection).make_pairing_link()
    last = NOON + timedelta(minutes=10)
    with pytest.raises(LinkSpent):
        noon(connection).pair(first, "phone")
    with pytest.raises(LinkSpent):
        SqlAccess(connection, last + SECOND).pair(link, "phone")
    secret = SqlAccess(connection, last).pair(link, "phone")
    wanted = Visitor("phone", Role.HELPER, access.csrf_of(secret))
    assert wanted == SqlAccess(connection, last).visitor("session", secret)


def test_pairing_link_works_once(connection: Connection) -> None:
    """A link that was used pairs no other device; it is neither a token nor a session itself."""
    link = noon(connection).make_pairing_link()
    assert [None, None] == [noon(connection).visitor(kind, link) for kind in ("token", "session")]
    secret = noon(connection).pair(link, "phone")
    assert None is noon(connection).visitor("token", secret)
    with pytest.raises(LinkSpent):
        noon(connection).pair(link, "tablet")


@pytest.mark.parametrize("name", ["printer", "phone", "owner", "Printer", "ｐrinter", " phone", "OWNER", "scanflow"])
def test_a_device_has_a_name_of_its_own(connection: Connection, name: str) -> None:
    """A token's, a device's and the owner's names are taken; the link is still good for another name."""
    noon(connection).make_token("printer", Role.PROGRAM)
    noon(connection).pair(noon(connection).make_pairing_link(), "phone")
    link = noon(connection).make_pairing_link()
    with pytest.raises(NameTaken):
        noon(connection).pair(link, name)
    noon(connection).pair(link, "tablet")
    with pytest.raises(NameTaken):
        noon(connection).rename("tablet", name)
    with pytest.raises(NameTaken):
        noon(connection).make_token("tablet", Role.PROGRAM)
    assert noon(connection).rename("tablet", "Tablet")


@pytest.mark.parametrize("name", ["", "  ", "\u043ewner", "blue\u202ephone", "x" * 41])
def test_a_name_that_nobody_can_read(connection: Connection, name: str) -> None:
    """Neither a device nor a token gets it, at first or later."""
    link = noon(connection).make_pairing_link()
    with pytest.raises(BadName):
        noon(connection).pair(link, name)
    with pytest.raises(BadName):
        noon(connection).make_token(name, Role.PROGRAM)
    noon(connection).pair(link, "tablet")
    with pytest.raises(BadName):
        noon(connection).rename("tablet", name)


def test_a_device_lasts_a_year(connection: Connection) -> None:
    """After 365 days a device must be paired again, and its name is free."""
    secret = noon(connection).pair(noon(connection).make_pairing_link(), "phone")
    last = NOON + timedelta(days=365)
    used(connection, secret, last)
    assert "phone" == getattr(SqlAccess(connection, last).visitor("session", secret), "name", None)
    assert None is SqlAccess(connection, last + SECOND).visitor("session", secret)
    assert (1, 0) == (len(access.named(connection, last)), len(access.named(connection, last + SECOND)))
    SqlAccess(connection, last + SECOND).pair(SqlAccess(connection, last + SECOND).make_pairing_link(), "phone")


def test_rename_and_revoke(connection: Connection) -> None:
    """Tokens and devices are listed by name, get another one, and end; sessions and links are none of them."""
    token = noon(connection).make_token("printer", Role.PROGRAM)
    device = noon(connection).pair(noon(connection).make_pairing_link(), "phone")
    session = noon(connection).make_session(Visitor("owner", Role.OWNER))
    noon(connection).make_pairing_link()
    listed = [(row.name, row.role, row.kind, row.made) for row in access.named(connection, NOON)]
    assert [("phone", "helper", "device", NOON), ("printer", "program", "token", NOON)] == listed
    assert (True, False) == (
        noon(connection).rename("phone", "blue phone"),
        noon(connection).rename("x", "y"),
    )
    assert "blue phone" == getattr(noon(connection).visitor("session", device), "name", None)
    ended = [noon(connection).revoke(name) for name in ("blue phone", "printer", "owner", "", "phone")]
    assert [True, True, False, False, False] == ended
    told = [noon(connection).visitor(*who) for who in (("token", token), ("session", device))]
    assert [None, None] == told
    assert None is not noon(connection).visitor("session", session)


def test_a_new_password_ends_pairing_links(connection: Connection) -> None:
    """Setting the password ends a link that waits for its phone; paired devices go on."""
    device = noon(connection).pair(noon(connection).make_pairing_link(), "phone")
    link = noon(connection).make_pairing_link()
    noon(connection).set_password(PASSWORD)
    assert None is noon(connection).visitor("pairing", link)
    assert None is not noon(connection).visitor("session", device)


def test_password(connection: Connection) -> None:
    """Only the very password is right; before one is set none is."""
    assert (False, False) == (noon(connection).has_password(), check_password(connection, ""))
    noon(connection).set_password(PASSWORD)
    assert noon(connection).has_password()
    tries = (PASSWORD, PASSWORD.upper(), PASSWORD + " ", "", passwords.hashed(PASSWORD))
    assert [True, False, False, False, False] == [check_password(connection, each) for each in tries]


def test_a_new_password_ends_sessions(connection: Connection) -> None:
    """Setting the password again ends what the old one opened; tokens go on."""
    noon(connection).set_password(PASSWORD)
    session = noon(connection).make_session(Visitor("owner", Role.OWNER))
    token = noon(connection).make_token("printer", Role.PROGRAM)
    noon(connection).set_password("another pass phrase")
    told = [noon(connection).visitor(kind, each) for kind, each in (("session", session), ("token", token))]
    assert [None, Visitor("printer", Role.PROGRAM)] == told
    checked = [check_password(connection, each) for each in (PASSWORD, "another pass phrase")]
    assert [False, True] == checked


def test_password_hash_parameters(connection: Connection) -> None:
    """Passwords are kept as Argon2id of at least m = 19456 KiB, t = 2, p = 1, salted anew each time."""
    noon(connection).set_password(PASSWORD)
    one = connection.execute(text("SELECT name FROM access WHERE kind = 'password'")).scalar_one()
    noon(connection).set_password(PASSWORD)
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
