"""A form that changes something carries a key: sent again, it does nothing and gets the page that it got before.

The first write of a request keeps the key in its own transaction, so nothing is done twice. The page that comes of it
is kept beside the key once it is known. What is refused keeps nothing, so a corrected form goes through.
"""

from __future__ import annotations

import hashlib
import json
import re
import secrets
import time
import zlib
from base64 import b64decode, b64encode
from collections.abc import Callable, Collection, Mapping
from contextlib import suppress
from typing import Any, TypeVar

from flask import Flask, Response, g, redirect, request
from werkzeug.wrappers import Response as AnyResponse

from scanflow.storage.writing.unwritable import Unwritable
from scanflow.web import once as onces
from scanflow.web.door.visitors import shop, visitor
from scanflow.web.once import CallReply, Once
from scanflow.web.pages import room_view
from scanflow.web.problem import Problem
from scanflow.workflow.fields import Command
from scanflow.workflow.ports import Invalid, Unit

T = TypeVar("T")
C = TypeVar("C", bound=Command)
KEY = "key"
"""The field of the key; `csrf_field` of `parts.html` has it."""

OF_THE_VISIT = ("csrf", KEY)
"""Fields that say nothing of what is to be done."""

SECRET = ("current", "password", "again")
"""Passwords: nothing of them is kept, not even the fingerprint."""

UNTOLD = 0
"""The status of a reply that is not known yet."""

PATIENCE = 10.0
"""Seconds to wait for the page of a form that is being answered elsewhere."""

REUSED = "You sent this form before with other entries, and that was done. Check, then send this if you still want it."
UNKNOWN = "You sent this form before, and it was done. Load the page again and check, before you go on."


class _Again(Exception):
    """The same form was answered, or is being answered, by another request."""

    def __init__(self, once: Once) -> None:
        super().__init__()
        self.once = once


def sent(
    kind: type[C], fields: Mapping[str, str] | None = None, *, keep: Collection[str] = (), **more: str | list[str]
) -> C:
    """The command that the form says, or these fields: texts without the spaces around them; what is left empty is not
    said, unless it is to be kept. `more` are fields that stand there under another name. `Invalid` as the API's.
    """
    said = request.form if fields is None else fields
    names = [field.alias or name for name, field in kind.model_fields.items()]
    words = {name: said[name] for name in names if name in said} | more
    texts = {name: each.strip() if isinstance(each, str) else each for name, each in words.items()}
    return kind.read({name: each for name, each in texts.items() if each or name in keep})


def new_key() -> str:
    return secrets.token_urlsafe(9)


def write(work: Callable[[Unit], T]) -> T:
    """Do one thing as one transaction. The first one of a request is done once for the key of its form."""
    return write_in_parts(lambda unit: (work(unit),))[0]


def write_in_parts(work: Callable[[Unit], T | None]) -> T:
    """The same for work that takes several transactions, as `Shop.act_in_parts` has it."""
    room_view.let_go()
    once: Once | None = g.get("once")
    made: list[T] = []

    def first(unit: Unit) -> CallReply | None:
        found = work(unit)
        if found is None:
            return None
        made.append(found)
        return CallReply(UNTOLD, None)

    try:
        reply = onces.act_once(shop(), visitor().name, once, first)
    except Invalid as error:
        raise Invalid("", error.code, REUSED) if error.code == "key_reused" else error from error
    if once is not None:
        if reply.replayed:
            raise _Again(once)
        g.once, g.done = None, once  # later writes of the same request have no key left
    return made[0]


def write_untold(who: str, work: Callable[[Unit], T]) -> T:
    """The same for who is not known yet, and for an answer that holds a secret: nothing is kept of it."""
    room_view.let_go()
    return shop().act(who, work)


def answer_again() -> AnyResponse | None:
    """The answer that this very form got before; None where it is new, or has no key."""
    g.once = _sent()
    return _reply(g.once) if g.once is not None else None


def _sent() -> Once | None:
    """The key of the form that came, with what it says."""
    key = request.form.get(KEY, "") if request.method == "POST" else ""
    if not re.fullmatch(r"[A-Za-z0-9_-]{1,64}", key):
        return None
    fields = sorted(pair for pair in request.form.items(multi=True) if pair[0] not in OF_THE_VISIT + SECRET)
    files = sorted((name, _hash(file)) for name, file in request.files.items(multi=True))
    said = json.dumps([fields, files]).encode()
    return Once.of(f"form {key}", visitor().name, request.method, request.full_path, said)


def _hash(file: Any) -> str:
    found = hashlib.file_digest(file.stream, "sha256").hexdigest()
    file.stream.seek(0)
    return found


def _answer(again: _Again) -> AnyResponse:
    reply = _reply(again.once)
    if reply is None:
        raise Problem(409, "already_done", UNKNOWN)
    return reply


def _reply(once: Once) -> AnyResponse | None:
    """The page that this form got before; None where nothing was done yet."""
    until = time.monotonic() + PATIENCE
    while (reply := onces.answered(shop(), once)) is not None and reply.status == UNTOLD:
        if time.monotonic() > until:
            raise Problem(409, "already_done", UNKNOWN)
        time.sleep(0.05)
    return _response(reply) if reply is not None else None


def _response(reply: CallReply) -> AnyResponse:
    if reply.location:
        return redirect(reply.location, reply.status)
    content = zlib.decompress(b64decode(reply.body["content"]))
    return Response(content, reply.status, reply.body["headers"])


HEADERS = ("Content-Type", "Content-Disposition")


def _keep(response: Response) -> Response:
    once: Once | None = g.pop("done", None)
    if once is not None and response.status_code < 500:
        with suppress(Unwritable):  # what the form asked for is done, only its page is not kept
            onces.answer(shop(), visitor().name, once, _reply_of(response))
    return response


def _reply_of(response: Response) -> CallReply:
    if response.location:
        return CallReply(response.status_code, None, response.location)
    response.direct_passthrough = False
    headers = {name: response.headers[name] for name in HEADERS if name in response.headers}
    content = b64encode(zlib.compress(response.get_data(), 9)).decode()
    return CallReply(response.status_code, {"headers": headers, "content": content})


def register(app: Flask) -> None:
    app.after_request(_keep)
    app.add_template_global(new_key, "form_key")
    app.register_error_handler(_Again, _answer)
