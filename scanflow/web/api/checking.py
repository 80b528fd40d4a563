"""What a call sends, parsed into the command or the query that it declares; `Invalid` or a `Problem` where it can't."""

from __future__ import annotations

import json
import math
from collections.abc import Iterator, Mapping
from typing import Any, TypeVar

from flask import request

from scanflow.vision.upright import MEDIA_TYPES
from scanflow.web.door import bodies
from scanflow.web.problem import Problem
from scanflow.workflow.fields import Command, pointer, refuse_unkeepable
from scanflow.workflow.ports import Invalid

C = TypeVar("C", bound=Command)


def body(kind: type[C]) -> C:
    """The JSON body; absent it counts as an empty object. Problems 400, 413, 415, 422."""
    request.max_content_length = bodies.USUAL
    raw = request.get_data()
    if request.mimetype != "application/json" and (raw or request.mimetype):
        raise Problem(415, "unsupported_media_type", "Send JSON: Content-Type: application/json.")
    return kind.of(parse(raw) if raw else {})


def parse(raw: bytes) -> Any:
    """The value of a JSON text (RFC 8259). Problem 400; 422 for a text that is not Unicode."""
    try:
        words = raw.decode("utf-8")
        value = json.loads(words, parse_constant=_refuse, parse_float=_number, object_pairs_hook=_object)
    except (ValueError, RecursionError) as error:
        raise Problem(400, "malformed", f"The body is not JSON in UTF-8: {error}.") from None
    if "\\u" in words:
        refuse_unkeepable(value)
    return value


def _refuse(word: str) -> None:
    raise ValueError(f"{word} is no number")


def _number(word: str) -> float:
    """JSON has one kind of number: 3.0 is the integer 3."""
    value = float(word)
    if not math.isfinite(value):
        raise ValueError("a number is too large")
    return int(value) if value.is_integer() else value


def _object(pairs: list[tuple[str, Any]]) -> dict[str, Any]:
    value = dict(pairs)
    if len(value) != len(pairs):
        raise ValueError("a name stands twice in one object")
    return value


def query(kind: type[C]) -> C:
    """The query's parameters; `Invalid` with `/name` as pointer."""
    return kind.read(dict(_single(request.args.to_dict(flat=False))))


def _single(fields: Mapping[str, list[Any]]) -> Iterator[tuple[str, Any]]:
    for name, sent in fields.items():
        if len(sent) > 1:
            raise Invalid(pointer((name,)), "repeated", f"{name} is said twice.")
        yield name, sent[0]


def form(kind: type[C]) -> C:
    """A multipart form, its files as bytes. Problems 413, 415, 422."""
    if request.mimetype != "multipart/form-data":
        raise Problem(415, "unsupported_media_type", "Send a form: Content-Type: multipart/form-data.")
    words = dict(_single(request.form.to_dict(flat=False)))
    files = {name: file.read() for name, file in _single(request.files.to_dict(flat=False))}
    return kind.read(words | files)


def image() -> bytes:
    """The body, said to be a picture. Problems 413, 415."""
    if request.mimetype not in MEDIA_TYPES:
        raise Problem(415, "unsupported_media_type", f"Send a picture: Content-Type one of {', '.join(MEDIA_TYPES)}.")
    return request.get_data()
