"""What comes with a request, whole or not, is an answer in words."""

from __future__ import annotations

import tempfile

import pytest
from clients import SQLITE_ONLY
from flask.testing import FlaskClient
from pictures import as_file, card

pytestmark = SQLITE_ONLY

NAMELESS = b"--x\r\nContent-Disposition: form-data\r\n\r\n1\r\n--x--\r\n"
NAMELESS_FILE = b'--x\r\nContent-Disposition: form-data; filename="a.jpg"\r\n\r\n1\r\n--x--\r\n'


@pytest.mark.parametrize("body", [NAMELESS, NAMELESS_FILE])
@pytest.mark.parametrize("address", ["/api/decode", "/api/scans", "/api/orders/import", "/look", "/put-away"])
def test_a_part_without_a_name_is_malformed(client: FlaskClient, address: str, body: bytes) -> None:
    """400 in words, of calls and of pages."""
    answer = client.post(address, data=body, content_type="multipart/form-data; boundary=x")
    assert 400 == answer.status_code
    assert "A part of the form has no name." in answer.text


def test_a_photo_is_read_where_there_is_no_room_for_temporary_files(
    client: FlaskClient, monkeypatch: pytest.MonkeyPatch
) -> None:
    """A file of a form, larger than what is kept in memory usually, needs no temporary one."""
    monkeypatch.setattr(tempfile, "tempdir", "/nowhere/at/all")
    head = b'--x\r\nContent-Disposition: form-data; name="image"; filename="card.png"\r\n\r\n'
    body = head + as_file(card()) + bytes(1 << 20) + b"\r\n--x--\r\n"
    answer = client.post("/api/decode", data=body, content_type="multipart/form-data; boundary=x")
    assert (200, ["D0145"]) == (answer.status_code, answer.json["texts"])
