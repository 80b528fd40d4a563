"""A full disk for temporary files is an answer, not a connection that breaks."""

from __future__ import annotations

import http.client
import json
import tempfile
import threading
from collections.abc import Iterator

import pytest
import waitress
from clients import SQLITE_ONLY, new_token
from flask import Flask
from pictures import as_file, card
from waitress.channel import HTTPChannel

from scanflow.domain.access import Role
from scanflow.shop import Shop
from scanflow.web.door.spool import Spooled

pytestmark = SQLITE_ONLY

LARGE = 4 << 20
"""Bytes, more than are kept in memory and than a connection holds on its way."""


@pytest.fixture
def port(app: Flask, monkeypatch: pytest.MonkeyPatch) -> Iterator[int]:
    monkeypatch.setattr(HTTPChannel, "parser_class", Spooled)
    server = waitress.create_server(app, host="127.0.0.1", port=0, threads=2)
    thread = threading.Thread(target=server.run)
    thread.start()
    yield server.effective_port
    server.close()
    thread.join()


def ask(port: int, path: str, body: bytes, token: str, *, chunked: bool = False) -> tuple[int, str, bytes]:
    connection = http.client.HTTPConnection("127.0.0.1", port, timeout=20)
    headers = {"Authorization": f"Bearer {token}", "Content-Type": "multipart/form-data; boundary=x"}
    pieces = (body[at : at + 65536] for at in range(0, len(body), 65536))
    connection.request("POST", path, pieces if chunked else body, headers, encode_chunked=chunked)
    answer = connection.getresponse()
    return answer.status, answer.getheader("Content-Type") or "", answer.read()


@pytest.mark.parametrize("chunked", [False, True])
def test_a_body_without_room_is_answered(port: int, shop: Shop, monkeypatch: pytest.MonkeyPatch, chunked: bool) -> None:
    """503 in words, to programs as a problem; a small body goes through, and so does a large one with room."""
    head = b'--x\r\nContent-Disposition: form-data; name="image"; filename="card.png"\r\n\r\n'
    token, photo = new_token(shop, "camera", Role.HELPER), head + as_file(card())
    large, small = (photo + bytes(size) + b"\r\n--x--\r\n" for size in (LARGE, 0))
    with monkeypatch.context() as full:
        full.setattr(tempfile, "tempdir", "/nowhere/at/all")
        api = ask(port, "/api/decode", large, token, chunked=chunked)
        page = ask(port, "/look", large, token, chunked=chunked)
        assert 200 == ask(port, "/api/decode", small, token)[0]

    assert (503, "application/problem+json") == api[:2]
    problem = json.loads(api[2])
    assert ("storage_full", 503) == (problem["code"], problem["status"])
    assert (503, "text/plain; charset=utf-8") == page[:2]
    assert page[2].decode().startswith("There is no room here for what was sent")
    assert (200, {"texts": ["D0145"]}) == (
        (answer := ask(port, "/api/decode", large, token, chunked=chunked))[0],
        json.loads(answer[2]),
    )
