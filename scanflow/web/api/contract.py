"""A call of the API as it is declared: from this it is routed, admitted, parsed, and described in OpenAPI."""

from __future__ import annotations

import hashlib
import json
import re
from collections.abc import Callable, Mapping
from dataclasses import dataclass
from functools import wraps
from typing import Any, get_args, get_type_hints

from flask import Blueprint, Response, jsonify, request

from scanflow.domain.access import MANAGERS as MANAGERS
from scanflow.domain.access import Role
from scanflow.storage.unit import SqlUnit
from scanflow.web.api import checking
from scanflow.web.door import bodies, visitors
from scanflow.web.door.visitors import need, shop, visitor
from scanflow.web.once import CallReply, Once, act_once
from scanflow.web.problem import Problem
from scanflow.workflow.fields import ID, Command
from scanflow.workflow.ports import Missing

ANYONE: tuple[Role, ...] = ()
STAFF = (Role.OWNER, Role.PROGRAM, Role.HELPER)
"""Scan, put away, pack, look."""

IDEMPOTENCY_KEY = r"^[!-~]{1,255}$"


Shape = type | str | None


class Nothing(Command, json_schema_extra={"examples": [{}]}):
    """A call that says all by its address."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Call:
    """`path` is OpenAPI's; `body`, `form` and `query` are what is sent as JSON, as a form, in the address; `answers`
    the shapes of answers, or media types, by status, None for no body.

    `image`: the body is a picture. `conflicts` are the codes of its 409. `once`: it takes an Idempotency-Key.
    `bounded`: only so many at once. `also`: media types that a 200 may have instead.
    """

    name: str
    tag: str
    method: str
    path: str
    summary: str
    roles: tuple[Role, ...]
    answers: Mapping[int, Shape]
    image: bool
    query: type[Command]
    conflicts: tuple[str, ...]
    once: bool
    body: type[Command] | None = None
    form: type[Command] | None = None
    bounded: bool = False
    also: tuple[str, ...] = ()

    @property
    def ids(self) -> list[str]:
        return re.findall("{([a-z]+)}", self.path)


CALLS: list[Call] = []

View = Callable[..., Response]


def call(
    blueprint: Blueprint,
    method: str,
    path: str,
    roles: tuple[Role, ...],
    answers: Mapping[int, Shape],
    conflicts: tuple[str, ...] = (),
    *,
    once: bool = True,
    **more: Any,
) -> Callable[[View], View]:
    """Declares a call and routes it. Its view takes the path's ids, what is `said`, `query` and `image`: what of them
    it takes, and as what, is declared by it.
    """

    def register(view: View) -> View:
        declared = Call(
            name=view.__name__,
            tag=blueprint.name.removeprefix("api_"),
            method=method,
            path=path,
            summary=(view.__doc__ or "").strip().splitlines()[0],
            roles=roles,
            answers=answers,
            conflicts=conflicts,
            once=once and method == "POST",
            **_taken(view, method),
            **more,
        )
        CALLS.append(declared)
        rule = re.sub("{([a-z]+)}", r"<\1>", path)
        blueprint.add_url_rule(rule, view.__name__, _admitted(declared, view), methods=[method])
        return view

    return register


def _taken(view: View, method: str) -> dict[str, Any]:
    """How that is sent which a view takes: a command with a file in it as a form, any other as JSON."""
    taken = get_type_hints(view)
    said = taken.get("said", Nothing if method == "POST" else None)
    kinds = {"form" if kind and _has_file(kind) else "body": kind for kind in get_args(said) or (said,)}
    return kinds | {"query": taken.get("query", Nothing), "image": "image" in taken}


def _has_file(kind: type[Command]) -> bool:
    return any(field.annotation is bytes for field in kind.model_fields.values())


def _admitted(declared: Call, view: View) -> View:
    @wraps(view)
    def admitted(**ids: str) -> Response:
        if declared.roles:
            need(*declared.roles)
        for name, value in ids.items():
            if not re.fullmatch(ID, value):
                raise Missing(f"There is no {name} {value!r}.")
        return view(**ids, **_sent(declared))

    if not declared.roles:
        visitors.needs_nobody(admitted)
    return bodies.takes_file(admitted) if declared.image or declared.form is not None else admitted


def _sent(declared: Call) -> dict[str, Any]:
    """What the call sends, as its view is given it."""
    query = checking.query(declared.query)
    sent: dict[str, Any] = {} if declared.query is Nothing else {"query": query}
    if declared.form is not None and (declared.body is None or request.mimetype == "multipart/form-data"):
        sent["said"] = checking.form(declared.form)
    elif declared.body is not None:
        said = checking.body(declared.body)
        sent |= {"said": said} if declared.body is not Nothing else {}
    if declared.image:
        sent["image"] = checking.image()
    return sent


def do(work: Callable[[SqlUnit], CallReply | None], fingerprint: bytes | None = None) -> Response:
    """Answer what one transaction did, once for an Idempotency-Key. `fingerprint` stands for the body where given.

    Work may take several, as `Shop.act_in_parts` has it.
    """
    reply = act_once(shop(), visitor().name, _once(fingerprint), work)
    response = answer(reply.body, reply.status)
    if reply.location:
        response.headers["Location"] = reply.location
    if reply.replayed:
        response.headers["Answer-Stored"] = "true"
    return response


def _once(fingerprint: bytes | None) -> Once | None:
    key = request.headers.get("Idempotency-Key") if request.method == "POST" else None
    if key is None:
        return None
    if not re.fullmatch(IDEMPOTENCY_KEY, key):
        raise Problem(
            422,
            "pattern",
            "An Idempotency-Key has 1 to 255 printable ASCII characters.",
            (("/Idempotency-Key", "pattern"),),
        )
    sent = digest({"body": request.get_json(silent=True)}).encode() if fingerprint is None else fingerprint
    return Once.of(key, visitor().name, request.method, request.path, sent)


def answer_view(work: Callable[[SqlUnit], Any]) -> Response:
    """Answer what is seen in one view of the room."""
    with shop().looking() as unit:
        return answer(work(unit))


def answer(body: Any, status: int = 200) -> Response:
    response = jsonify(body)
    response.status_code = status
    return response


def digest(fields: Mapping[str, Any], content: bytes | None = None) -> str:
    """SHA-256 (hex) of what a call says, whatever the order and spelling of its fields."""
    told = {**fields, "content": hashlib.sha256(content).hexdigest()} if content is not None else fields
    return hashlib.sha256(json.dumps(told, sort_keys=True, separators=(",", ":")).encode()).hexdigest()
