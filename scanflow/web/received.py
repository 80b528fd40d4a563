"""What came with a request: its forms are read in memory, and each part of one has a name."""

from __future__ import annotations

from io import BytesIO
from typing import IO, Any

from flask import Request
from werkzeug.datastructures import ImmutableMultiDict

from scanflow.web.problem import Problem


class Received(Request):
    """A request. `Problem` 400 where a part of its form has no name (RFC 7578, 4.2)."""

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
