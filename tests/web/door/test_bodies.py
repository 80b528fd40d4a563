"""How large a body may be, by where it goes."""

from __future__ import annotations

import io

from clients import SQLITE_ONLY
from flask.testing import FlaskClient

pytestmark = SQLITE_ONLY

OPEN = ("/login", "/set-up/x", "/pair/x", "/none", "/api/none")
FILES = {
    **{"/cards/check": "pictures", "/look": "pictures", "/put-away": "photo", "/stays/x/photo": "photo"},
    **{"/orders/load": "file", "/api/orders/import": "file", "/api/decode": "image", "/api/scans": "image"},
}
"""Addresses of forms with a file, and the field that it is in."""


def refused(client: FlaskClient, path: str, length: int) -> bool:
    kind = "application/x-www-form-urlencoded"
    return 413 == client.post(path, data=b"a=" + b"x" * (length - 2), content_type=kind).status_code


def test_forms(client: FlaskClient) -> None:
    """64 kB where nobody need be known, and 1 MB for forms without a file."""
    assert [False] * 5 == [refused(client, path, 64 * 1024) for path in OPEN]
    assert [True] * 5 == [refused(client, path, 64 * 1024 + 1) for path in OPEN]
    assert [False, True] == [refused(client, "/stays/x/edit", length) for length in (1024 * 1024, 1024 * 1024 + 1)]


def test_files(client: FlaskClient) -> None:
    """A file of 2 MB is taken wherever a form asks for one."""
    for path, field in FILES.items():
        answer = client.post(path, data={field: (io.BytesIO(bytes(2_000_000)), "x.jpg")})
        assert answer.status_code not in (405, 413), path


def test_a_file_in_a_field(client: FlaskClient) -> None:
    """Between its two steps a file of orders travels in a field of the form, which may be as large as the file."""
    answer = client.post("/orders/load", data={"carried": "A" * 2_000_000}, content_type="multipart/form-data")
    assert (422, True) == (answer.status_code, "Choose a file first." in answer.text)
