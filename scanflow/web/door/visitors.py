"""Who is calling: a program by its bearer token, a person by the session of a page."""

from __future__ import annotations

import logging
import secrets
import threading
import time
from collections import deque
from collections.abc import Callable
from datetime import datetime, timedelta
from typing import Any, TypeVar, cast
from urllib.parse import urlsplit

from flask import Flask, after_this_request, current_app, g, redirect, request, url_for
from flask.typing import ResponseReturnValue
from sqlalchemy.exc import SQLAlchemyError
from werkzeug.wrappers import Response

from scanflow.domain.access import Role, Visitor
from scanflow.shop import Shop
from scanflow.storage import access
from scanflow.storage.writing.unwritable import Unwritable
from scanflow.web.door.addresses import network
from scanflow.web.door.refused_sign_ins import RefusedSignIns
from scanflow.web.problem import Problem, is_api

COOKIE = "scanflow_session"
BY_ITSELF = "X-By-Itself"
"""The header of a call that a page makes on its own: nobody used it for that."""

SAFE = frozenset({"GET", "HEAD", "OPTIONS"})
POLICY = (
    "default-src 'self'; img-src 'self' data: blob:; style-src 'self'; script-src 'self'; "
    "frame-ancestors 'none'; base-uri 'none'; form-action 'self'"
)


View = TypeVar("View", bound=Callable[..., Any])
log = logging.getLogger(__name__)


def shop() -> Shop:
    """The shop that this app serves."""
    return cast(Shop, current_app.extensions["scanflow"])


def visitor() -> Visitor:
    """Who is calling; only where somebody must be."""
    return cast(Visitor, g.visitor)


def cookie() -> str:
    """The name of the session's cookie. Under HTTPS no other host and no plain page can set one of this name (RFC
    6265bis, 4.1.3.2).
    """
    return f"__Host-{COOKIE}" if request.is_secure else COOKIE


def session_secret() -> str:
    """What this browser shows as its session; empty where it has none."""
    return request.cookies.get(cookie(), "")


def needs_nobody(view: View) -> View:
    """Declares that calls of this view may come from anybody."""
    view.needs_nobody = True  # type: ignore[attr-defined]
    return view


def for_anybody() -> bool:
    """Whether what is asked for needs nobody."""
    return getattr(current_app.view_functions.get(request.endpoint or ""), "needs_nobody", False)


def need(*roles: Role) -> None:
    """`Problem` 403 unless the visitor has one of these roles."""
    if visitor().role not in roles:
        raise Problem(403, "forbidden", f"This needs the role {' or '.join(roles)}.")


class Attempts:
    """How often a password may be tried in `seconds`: `most` times from one address, and only `few` times once there
    were `altogether` from all of them. So a neighbour's tries don't lock the owner out, by however many addresses.

    Call `take` before the password is looked at, so that no number of calls at once gets past, and `good` once it was
    right. This machine's own addresses (`HERE`) keep their tries, whatever others do.
    """

    HERE = frozenset({"127.0.0.1", "::1"})

    def __init__(self, most: int = 10, seconds: float = 60.0, altogether: int = 60, few: int = 2) -> None:
        self.most, self.seconds, self.altogether, self.few = most, seconds, altogether, few
        self._taken: deque[tuple[float, str]] = deque()
        self._lock = threading.Lock()

    def take(self, address: str | None) -> None:
        """Count a try from this address (`request.remote_addr`). `Problem` 429 where it has none left."""
        by, now = network(address or ""), time.monotonic()
        with self._lock:
            while self._taken and self._taken[0][0] < now - self.seconds:
                self._taken.popleft()
            own = sum(each == by for _, each in self._taken)
            busy = by not in self.HERE and len(self._taken) >= self.altogether
            if own >= (self.few if busy else self.most):
                raise Problem(429, "too_many_requests", "Too many wrong passwords. Wait a minute, then try again.")
            self._taken.append((now, by))

    def good(self, address: str | None) -> None:
        """Give a try back: the password was right."""
        by = network(address or "")
        with self._lock:
            found = next((each for each in reversed(self._taken) if each[1] == by), None)
            if found is not None:
                self._taken.remove(found)


class Recent:
    """Who called within the last second, so that a station's scans need no look-up each.

    What another process takes back counts a second later; what this one does, at once.
    """

    LASTS = timedelta(seconds=1)
    MOST = 1000

    def __init__(self, shop: Shop) -> None:
        self._shop = shop
        self._seen: dict[tuple[str, str], tuple[datetime, Visitor]] = {}
        self._noted: dict[int, datetime] = {}

    def known(self, kind: str, secret: str) -> Visitor | None:
        """Who a token or session belongs to, if it is good."""
        now, key = self._shop.clock(), (kind, access.hash_of(secret))
        since, known = self._seen.get(key, (None, None))
        if since is not None and timedelta() <= now - since < self.LASTS:
            return known
        with self._shop.looking() as unit:
            known = unit.access.visitor(kind, secret)
        if known is not None:
            if len(self._seen) >= self.MOST:
                self.forget()
            self._seen[key] = (now, known)
        return known

    def to_note(self, known: Visitor) -> bool:
        """Whether the use of a session is to be noted now: not while one of a moment ago is, or is being noted."""
        now = self._shop.clock()
        last = self._noted.get(known.n, known.seen)
        if last is not None and timedelta() <= now - last < access.SEEN_EVERY:
            return False
        if len(self._noted) >= self.MOST:
            self._noted.clear()
        self._noted[known.n] = now
        return True

    def forget(self) -> None:
        self._seen.clear()


def _note_use(known: Visitor) -> None:
    """That a session is in use, rarely and once the answer is gone: it is a write, and nobody waits for it."""
    noting, recent = shop(), cast(Recent, current_app.extensions["recent"])
    if recent.to_note(known):

        @after_this_request
        def at_its_end(response: Response) -> Response:
            response.call_on_close(lambda: _noted(noting, known))
            return response


def _noted(noting: Shop, known: Visitor) -> None:
    try:
        noting.act(known.name, lambda unit: unit.access.note_use(known.n))
    except (SQLAlchemyError, Unwritable) as error:  # a later use is noted instead
        log.warning("The use of a session could not be noted: %s", error)


def identify() -> Visitor | None:
    """Who the present request says to come from, if that is true."""
    shown = _shown()
    recent: Recent = current_app.extensions["recent"]
    return recent.known(*shown) if shown else None


def greet() -> Visitor | None:
    """Who comes to a page that needs nobody, for one that speaks otherwise to somebody who is known."""
    g.visitor = identify()
    return visitor()


def _shown() -> tuple[str, str] | None:
    """Kind and secret of the token or session that came with the call."""
    header = request.headers.get("Authorization", "")
    kind, secret = "token", ""
    if header:
        scheme, _, secret = header.partition(" ")
        if scheme.lower() != "bearer":
            return None
    else:
        kind, secret = "session", session_secret()
    return (kind, secret.strip()) if secret.strip() else None


def lasting() -> Callable[[], bool]:
    """Says, also after the call, whether its visitor may still come in."""
    recent: Recent = current_app.extensions["recent"]
    shown = _shown()
    return lambda: shown is not None and recent.known(*shown) is not None


def _check_csrf(known: Visitor) -> None:
    """A session's change must bring its CSRF token, and come from our own pages where the browser says so."""
    if known.csrf is None or request.method in SAFE:
        return
    sent = request.headers.get("X-CSRF-Token") or request.form.get("csrf", "")
    origin = request.headers.get("Origin")
    foreign = origin is not None and urlsplit(origin).netloc != request.host
    if foreign or not secrets.compare_digest(sent.encode(), known.csrf.encode()):
        raise Problem(403, "csrf", "This form has expired. Reload the page and try again.")


def _enter() -> ResponseReturnValue | None:
    g.visitor = None
    if for_anybody() or (request.endpoint is None and is_api() and request.routing_exception is not None):
        return None
    known = identify()
    if known is None:
        if is_api():
            raise Problem(401, "unauthorized", "Send a valid access token: Authorization: Bearer TOKEN.")
        if request.method in SAFE:
            return redirect(url_for("login.show", next=request.full_path.rstrip("?")))
        raise Problem(401, "unauthorized", "Sign in first.")
    g.visitor = known
    _check_csrf(known)
    if known.csrf is not None and request.endpoint != "api_changes.stream" and BY_ITSELF not in request.headers:
        _note_use(known)
    return None


def _protect(response: Response) -> Response:
    if request.blueprint in ("login", "pairing", "device_page", "account_page"):
        current_app.extensions["recent"].forget()
    headers = response.headers
    headers.setdefault("Content-Security-Policy", POLICY)
    headers.setdefault("X-Content-Type-Options", "nosniff")
    headers.setdefault("Referrer-Policy", "same-origin")
    headers.setdefault("Cross-Origin-Opener-Policy", "same-origin")
    if request.endpoint != "static":
        headers.setdefault("Cache-Control", "no-store")
    return response


def register(app: Flask) -> None:
    """Ask of every request who makes it."""
    app.extensions["attempts"] = Attempts()
    app.extensions["refused"] = RefusedSignIns()
    app.extensions["recent"] = Recent(app.extensions["scanflow"])
    needs_nobody(app.view_functions["static"])
    app.before_request(_enter)
    app.after_request(_protect)
