"""The page of a camera at a station, asked by a client."""

from __future__ import annotations

import base64

import pytest
from flask.testing import FlaskClient

from scanflow.web.watch_page import Watched, create_page

SEEN = b"\xff\xd8 the table"
OUTLINE = {"text": "D0145", "corners": ((1, 2), (9, 2), (9, 4), (1, 4)), "kind": "scanned"}


@pytest.fixture
def watched() -> Watched:
    return Watched("table", "Hold a card up.", jpeg=SEEN, size=(640, 480), outlines=[OUTLINE])


@pytest.fixture
def client(watched: Watched) -> FlaskClient:
    return create_page(watched).test_client()


def test_what_is_seen_now(client: FlaskClient) -> None:
    """The picture with what is read in it, what to do, and no verdict yet; kept by nobody."""
    answer = client.get("/now", base_url="http://127.0.0.1:8766")
    now = answer.get_json()

    assert ("no-store", 200) == (answer.headers["Cache-Control"], answer.status_code)
    assert (SEEN, 640, 480) == (base64.b64decode(now["picture"]), now["width"], now["height"])
    assert ([[1, 2], [9, 2], [9, 4], [1, 4]], "scanned") == (now["outlines"][0]["corners"], now["outlines"][0]["kind"])
    assert ("Hold a card up.", "", 0, None) == (now["hint"], now["waits"], now["answers"], now["answer"])


@pytest.mark.parametrize(
    ("host", "status"), [("127.0.0.1:8766", 200), ("localhost:9", 200), ("room.test:8766", 400), ("192.168.1.4", 400)]
)
@pytest.mark.parametrize("path", ["/", "/now", "/static/style.css"])
def test_it_is_for_this_machine_alone(client: FlaskClient, path: str, host: str, status: int) -> None:
    """A name of elsewhere that points here is refused, whatever is asked for; other pages can't show the picture."""
    answer = client.get(path, base_url=f"http://{host}")
    pictured = base64.b64encode(SEEN) in answer.data
    assert (status, status == 200 and path == "/now") == (answer.status_code, pictured)
    assert "same-origin" == answer.headers["Cross-Origin-Resource-Policy"]


def test_the_picture_of_the_thing(client: FlaskClient, watched: Watched) -> None:
    """It is given where the last verdict has one."""
    assert 404 == client.get("/thing", base_url="http://localhost").status_code
    watched.thing = b"a saddle"
    answer = client.get("/thing?number=2", base_url="http://localhost")
    assert (b"a saddle", "image/jpeg") == (answer.data, answer.mimetype)
