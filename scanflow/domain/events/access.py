"""Who comes in, and by what."""

from __future__ import annotations

from scanflow.domain.events.kinds import Event, event


@event("signed in", moves=())
class SignedIn(Event):
    address: str | None
    browser: str


@event("sign-in refused", moves=())
class SignInRefused(Event):
    """Some tries from one address, told together."""

    address: str
    tries: int
    since: str


@event("signed out", moves=())
class SignedOut(Event):
    address: str | None


@event("signed out everywhere", moves=())
class SignedOutEverywhere(Event):
    address: str | None
    sessions: int


@event("session ended", moves=())
class SessionEnded(Event):
    address: str | None
    browser: str


@event("password link made", moves=())
class PasswordLinkMade(Event):
    """There is a password, and by this link somebody may set another one."""


@event("password set", moves=())
class PasswordSet(Event):
    address: str | None


@event("password changed", moves=())
class PasswordChanged(Event):
    address: str | None


@event("pairing link made", moves=())
class PairingLinkMade(Event):
    """A helper's phone may come in by it."""


@event("device paired", moves=())
class DevicePaired(Event):
    name: str
    address: str | None = None


@event("device renamed", moves=())
class DeviceRenamed(Event):
    name: str
    to: str


@event("device revoked", moves=())
class DeviceRevoked(Event):
    name: str


@event("token made", moves=())
class TokenMade(Event):
    name: str
    role: str
