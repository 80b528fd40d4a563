"""What is the same for everybody goes out compressed, and nothing else."""

from __future__ import annotations

import gzip

import pytest
from clients import SQLITE_ONLY
from flask.testing import FlaskClient

pytestmark = SQLITE_ONLY
GZIP = {"Accept-Encoding": "gzip"}
SHARED = ("/static/style.css", "/static/js/scanning/station.js", "/edges.css", "/worker.js")


@pytest.mark.parametrize("address", SHARED)
def test_packed_for_those_who_can_unpack(client: FlaskClient, address: str) -> None:
    """The content is the same either way, less than half as long, and a cache keeps the two apart."""
    plain, packed = client.get(address), client.get(address, headers=GZIP)
    assert (None, "gzip") == (plain.headers.get("Content-Encoding"), packed.headers.get("Content-Encoding"))
    assert plain.data == gzip.decompress(packed.data)
    assert len(packed.data) == int(packed.headers["Content-Length"]) < len(plain.data) / 2
    assert ("Accept-Encoding", "Accept-Encoding") == (plain.headers["Vary"], packed.headers["Vary"])


def test_what_is_kept_is_not_sent_again(client: FlaskClient) -> None:
    """The tag of a compressed file finds it unchanged, compressed or not."""
    tag = client.get("/static/style.css", headers=GZIP).headers["ETag"]
    for headers in (GZIP, {}):
        reply = client.get("/static/style.css", headers={**headers, "If-None-Match": tag})
        assert (304, b"") == (reply.status_code, reply.data)


@pytest.mark.parametrize("address", ["/", "/search?q=token", "/login", "/api/health"])
def test_nothing_beside_a_secret_is_packed(client: FlaskClient, address: str) -> None:
    """Pages and answers go out as they are."""
    reply = client.get(address, headers=GZIP)
    assert (200, None) == (reply.status_code, reply.headers.get("Content-Encoding"))
