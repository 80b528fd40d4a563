"""Large bodies wait in temporary files until they are whole. Where one has no room, its call is answered in words."""

from __future__ import annotations

from typing import Any

from waitress.parser import HTTPRequestParser
from waitress.utilities import Error

from scanflow.web.problem import Problem, respond

WORDS = "There is no room here for what was sent: the disk for temporary files is full. Make room, then send it again."


class Spooled(HTTPRequestParser):  # type: ignore[misc]
    """Reads a request to its end even where its body can't be kept: who still sends listens to no answer."""

    error: Any
    body_rcv: Any
    path: str

    def parse_header(self, head: bytes) -> None:
        super().parse_header(head)
        if self.body_rcv is not None:
            self.body_rcv.buf = _Room(self.body_rcv.buf)

    def received(self, data: bytes) -> int:
        taken = super().received(data)
        if self.completed and self.error is None and self.body_rcv is not None and self.body_rcv.buf.full:
            self.error = _Full(WORDS, api=self.path.startswith("/api/"))
        return int(taken)


class _Room:
    """A buffer of waitress that drops all that it is given once it had no room."""

    def __init__(self, buffer: Any) -> None:
        self._buffer, self.full = buffer, False

    def append(self, data: bytes) -> None:
        if self.full:
            return
        try:
            self._buffer.append(data)
        except OSError:
            self._buffer.close()
            self.full = True

    def __len__(self) -> int:
        return 0 if self.full else len(self._buffer)

    def __getattr__(self, name: str) -> Any:
        return getattr(self._buffer, name)


class _Full(Error):  # type: ignore[misc]
    """As the application answers where the database has no room; text for who is no program."""

    code, reason = 503, "Service Unavailable"

    def __init__(self, words: str, *, api: bool) -> None:
        super().__init__(words)
        self._api = api

    def to_response(self, ident: str | None = None) -> tuple[str, list[tuple[str, str]], bytes]:
        response = respond(Problem(self.code, "storage_full", self.body))
        if not self._api:
            response.set_data(f"{self.body}\n")
            response.mimetype = "text/plain"
        headers = [pair for pair in response.headers.items() if pair[0] != "Content-Length"]
        return f"{self.code} {self.reason}", headers, response.get_data()
