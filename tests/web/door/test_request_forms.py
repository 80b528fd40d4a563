"""What comes with a request, whole or not, is an answer in words."""

from __future__ import annotations

import tempfile

import pytest
from clients import SQLITE_ONLY
from flask.testing import FlaskClient
from pictures import as_file, card

NAMELESS = b"--x\r\nContent-Disposition: form-data\r\n\r\n1\r\n--x--\r\n"
NAMELESS_FILE = b'--x\r\nContent-Disposition: form-data; filename="a.jpg"\r\n\r\n1\r\n--x--\r\n'


@SQLITE_ONLY
@pytest.mark.parametrize("body", [NAMELESS, NAMELESS_FILE])
@pytest.mark.parametrize("address", ["/api/decode", "/api/scans", "/api/orders/import", "/look", "/put-away"])
def test_a_part_without_a_name_is_malformed(client: FlaskClient, address: str, body: bytes) -> None:
    """400 in words, of calls and of pages."""
    answer = client.post(address, data=body, content_type="multipart/form-data; boundary=x")
    assert 400 == answer.status_code
    assert "A part of the form has no name." in answer.text


@SQLITE_ONLY
def test_a_photo_is_read_where_there_is_no_room_for_temporary_files(
    client: FlaskClient, monkeypatch: pytest.MonkeyPatch
) -> None:
    """A file of a form, larger than what is kept in memory usually, needs no temporary one."""
    monkeypatch.setattr(tempfile, "tempdir", "/nowhere/at/all")
    head = b'--x\r\nContent-Disposition: form-data; name="image"; filename="card.png"\r\n\r\n'
    body = head + as_file(card()) + bytes(1 << 20) + b"\r\n--x--\r\n"
    answer = client.post("/api/decode", data=body, content_type="multipart/form-data; boundary=x")
    assert (200, ["D0145"]) == (answer.status_code, answer.json["texts"])


@pytest.mark.parametrize(
    ("method", "address", "field"),
    [
        ("GET", "/slots/D%00", ""),
        ("GET", "/search?q=%00", ""),
        ("GET", "/slots?section=D&state=%00", ""),
        ("GET", "/login?next=%00", ""),
        ("POST", "/put-away", "title"),
        ("POST", "/devices/revoke", "name"),
        ("POST", "/api/scans", "text"),
    ],
)
def test_a_nul_is_refused(client: FlaskClient, method: str, address: str, field: str) -> None:
    """400 of an address, 422 of a form, in words, on both databases: PostgreSQL keeps none in a text."""
    form = {"station": "tray", "key": "k", field: "a\0b"} if field else None
    answer = client.open(address, method=method, data=form, content_type="multipart/form-data" if field else None)
    assert (422 if field else 400, True) == (answer.status_code, "NUL character" in answer.text)
