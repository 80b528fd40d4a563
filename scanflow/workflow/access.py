"""Who comes in and goes out. The ledger tells of each with the address it came from, and never of a secret."""

from __future__ import annotations

from collections.abc import Mapping
from datetime import datetime

from scanflow.domain import events
from scanflow.domain.access import LinkSpent, Role, Visitor, agents
from scanflow.domain.access.names import SINGLE, BadName, NameTaken, fit
from scanflow.workflow.ports import Invalid, Missing, Refused, Unit

OWNER = Visitor(SINGLE, Role.OWNER)


def sign_in(unit: Unit, before: str, agent: str, address: str | None) -> str:
    """The secret of a new session of the owner, in place of the one that this browser had `before`."""
    unit.access.end_session(before)
    unit.record(events.SignedIn(address=address, browser=agents.words(agent)))
    return unit.access.make_session(OWNER, agent)


def refused(unit: Unit, tries: Mapping[str, tuple[datetime, int]]) -> None:
    """Wrong passwords, by address: since when, and how many."""
    for address, (since, count) in tries.items():
        unit.record(events.SignInRefused(address=address, tries=count, since=since.isoformat()))


def sign_out(unit: Unit, secret: str, address: str | None) -> None:
    """One browser goes out; nothing where it was not signed in."""
    if unit.access.end_session(secret):
        unit.record(events.SignedOut(address=address))


def setup_link(unit: Unit) -> str:
    """The secret of a new one-time link that sets the owner's password; the one of now holds until it is used, and the
    ledger tells that somebody may set another one.
    """
    if unit.access.has_password():
        unit.record(events.PasswordLinkMade())
    return unit.access.make_setup_link()


def set_up(unit: Unit, link: str, password: str, address: str | None) -> None:
    """The owner's password, by a link that works once. Raises LinkSpent."""
    if unit.access.visitor("setup", link) is None:
        raise LinkSpent
    unit.access.set_password(password)
    unit.record(events.PasswordSet(address=address))


def change_password(unit: Unit, before: str | None, password: str, keep: int, address: str | None) -> None:
    """A new password in place of the one whose hash was `before`; all sessions end but the one to `keep`.

    Refused: `changed_since`.
    """
    if unit.access.password_hash() != before:
        raise Refused("changed_since", "The password was changed elsewhere just now. Sign in with the new one.")
    unit.access.set_password(password, keep=keep)
    unit.record(events.PasswordChanged(address=address))


def end_session(unit: Unit, n: int, address: str | None) -> None:
    """One browser of the owner; it is out with its very next call."""
    ended = unit.access.end_sessions(n=n)
    if not ended:
        raise Missing("That browser is signed out already.")
    unit.record(events.SessionEnded(address=address, browser=agents.words(ended[0])))


def sign_out_everywhere(unit: Unit, address: str | None) -> None:
    """All browsers of the owner. Helpers' phones and tokens go on: they are revoked one by one."""
    ended = unit.access.end_sessions()
    unit.record(events.SignedOutEverywhere(address=address, sessions=len(ended)))


def pairing_link(unit: Unit) -> str:
    """The secret of a new link that pairs one phone; the one before stops working."""
    unit.record(events.PairingLinkMade())
    return unit.access.make_pairing_link()


def pair(unit: Unit, link: str, name: str, before: str, agent: str, address: str | None) -> str:
    """The secret of a new device, in place of who this browser was `before`. Raises LinkSpent, BadName, NameTaken."""
    unit.access.end_session(before)
    device = unit.access.pair(link, name, agent)
    unit.record(events.DevicePaired(name=name, address=address))
    return device


def make_token(unit: Unit, name: str, role: Role) -> str:
    """The secret of a new access token. Raises BadName, NameTaken."""
    secret = unit.access.make_token(name, role)
    unit.record(events.TokenMade(name=fit(name), role=role.value))
    return secret


def rename(unit: Unit, name: str, to: str) -> None:
    """Another name for a token or device. Refused: `taken`."""
    try:
        if not unit.access.rename(name, to):
            raise Missing(f"There is no {name} any more.")
    except NameTaken as error:
        raise Refused("taken", str(error)) from error
    except BadName as error:
        raise Invalid("/to", "bad_name", str(error)) from error
    unit.record(events.DeviceRenamed(name=name, to=fit(to)))


def revoke(unit: Unit, name: str) -> None:
    """A token or device is out with its very next call."""
    if not unit.access.revoke(name):
        raise Missing(f"There is no {name} any more.")
    unit.record(events.DeviceRevoked(name=name))
