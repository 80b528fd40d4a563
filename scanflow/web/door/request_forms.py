"""What came with a request: its forms are read in memory, each part of one has a name, and no text has a NUL, which
PostgreSQL keeps in none (https://www.postgresql.org/docs/current/datatype-character.html) and nobody types.
"""

from __future__ import annotations

from io import BytesIO
from typing import IO, Any

from flask import Flask, Request, request
from werkzeug.datastructures import ImmutableMultiDict

from scanflow.web.problem import Problem, is_api

NUL = "The {where} has a NUL character (U+0000). Leave it out, then send it again."


class Received(Request):
    """A request. `Problem` 400 where a part of its form has no name (RFC 7578, 4.2), 422 where a field has a NUL."""

    def _get_file_stream(self, *size_and_kind: Any, **more: Any) -> IO[bytes]:
        """In memory: a body is bounded, and a full disk for temporary files is no reason to read no picture."""
        return BytesIO()

    def _load_form_data(self) -> None:
        if "form" in self.__dict__:
            return
        super()._load_form_data()
        if None in self.form or None in self.files:
            for kind in ("form", "files"):
                named = [pair for pair in self.__dict__[kind].items(multi=True) if pair[0] is not None]
                self.__dict__[kind] = ImmutableMultiDict(named)
            raise Problem(400, "malformed", "A part of the form has no name. Give each a name in its header.")
        if any("\0" in each for pair in self.form.items(multi=True) for each in pair):
            self.form = ImmutableMultiDict()
            raise Problem(422, "not_text", NUL.format(where="form"))


def _check() -> None:
    """`Problem` 400 for a page's address with a NUL; a call of the API says what its own may be."""
    if is_api():
        return
    if "\0" in request.path or b"%00" in request.query_string:
        raise Problem(400, "malformed", NUL.format(where="address"))


def register(app: Flask) -> None:
    """Refuse the address of a page that has a NUL."""
    app.before_request(_check)
