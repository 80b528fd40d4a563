"""Pictures of things over HTTP, on both databases."""

from __future__ import annotations

import hashlib
from io import BytesIO
from typing import Any

import pytest
from calls import Calls
from clients import SQLITE_ONLY, client_of
from flask import Flask
from flask.testing import FlaskClient
from PIL import Image
from sqlalchemy import func, select

from scanflow.domain.access import Role
from scanflow.shop import Shop
from scanflow.storage import tables
from scanflow.web.door.bodies import FILE


def picture(colour: str = "#804020", size: tuple[int, int] = (640, 480), kind: str = "JPEG") -> bytes:
    out = BytesIO()
    Image.new("RGB", size, colour).save(out, kind)
    return out.getvalue()


def put(client: FlaskClient, stay: Any, data: bytes, kind: str = "image/jpeg") -> Any:
    return client.put(f"/api/stays/{stay['id']}/photo", data=data, content_type=kind)


@pytest.fixture
def stay(calls: Calls) -> Any:
    calls.section()
    return calls.put_away()


def test_a_picture_is_put_and_given(calls: Calls, stay: Any) -> None:
    """204; then its address is the stay's `photo`, and what is there is a JPEG, whole or small."""
    assert None is stay["photo"]
    answer = put(calls.client, stay, picture())
    assert (204, b"") == (answer.status_code, answer.data)

    address = calls.get(f"/api/stays/{stay['id']}")["photo"]
    whole, small = calls.client.get(address), calls.client.get(address + "&size=small")
    assert address.endswith(hashlib.sha256(whole.data).hexdigest())
    assert ("image/jpeg", (640, 480)) == (whole.mimetype, Image.open(BytesIO(whole.data)).size)
    assert (320, 240) == Image.open(BytesIO(small.data)).size
    assert whole.data == calls.client.get(f"/api/stays/{stay['id']}/photo").data


@pytest.mark.parametrize("kind", ["PNG", "WEBP", "AVIF"])
def test_other_kinds_become_jpeg(calls: Calls, stay: Any, kind: str) -> None:
    """What was sent as PNG, WebP or AVIF is kept as JPEG."""
    assert 204 == put(calls.client, stay, picture(kind=kind), f"image/{kind.lower()}").status_code
    given = calls.client.get(f"/api/stays/{stay['id']}/photo")
    assert ("image/jpeg", "JPEG") == (given.mimetype, Image.open(BytesIO(given.data)).format)


def test_a_browser_keeps_it_by_its_address(calls: Calls, stay: Any) -> None:
    """With the right hash it may be kept for ever, without or with another it must be asked for: 304 by its ETag."""
    put(calls.client, stay, picture())
    address = calls.get(f"/api/stays/{stay['id']}")["photo"]
    named, bare = calls.client.get(address), calls.client.get(address.partition("?")[0])
    assert "private, max-age=31536000, immutable" == named.headers["Cache-Control"]
    assert "private, no-cache" == bare.headers["Cache-Control"]

    again = calls.client.get(address, headers={"If-None-Match": named.headers["ETag"]})
    assert (304, b"") == (again.status_code, again.data)
    put(calls.client, stay, picture("#204080"))
    changed = calls.client.get(address, headers={"If-None-Match": named.headers["ETag"]})
    assert (200, "private, no-cache") == (changed.status_code, changed.headers["Cache-Control"])
    assert changed.data != named.data


def test_one_picture_of_two_things_is_one_row(calls: Calls, shop: Shop, stay: Any) -> None:
    """It is stored by its hash."""
    other = calls.put_away("Another")
    for each in (stay, other):
        put(calls.client, each, picture())
    with shop.looking() as unit:
        assert 1 == unit.connection.execute(select(func.count()).select_from(tables.photos)).scalar()


def test_it_is_told_in_the_ledger(calls: Calls, stay: Any) -> None:
    """Which picture, of which stay, and by whom."""
    put(calls.client, stay, picture())
    entry = calls.get("/api/ledger")["entries"][-1]
    sent = calls.client.get(f"/api/stays/{stay['id']}/photo").data
    told = {"stay": stay["id"], "code": stay["code"], "photo": hashlib.sha256(sent).hexdigest()}
    data = {name: value for name, value in entry["data"].items() if name != "now"}
    assert ("photo kept", "boss", told) == (entry["kind"], entry["actor"], data)


def test_stops_and_verdicts_show_it(calls: Calls) -> None:
    """The address is in the round's stop, in the verdicts at bin and table, and follows the thing as it moves."""
    calls.section()
    (stay,), order = calls.ordered()
    put(calls.client, stay, picture())
    moved = calls.post(f"/api/stays/{stay['id']}/move", to="D005")
    assert moved["photo"].startswith(f"/api/stays/{moved['id']}/photo?hash=")
    walk = calls.post("/api/rounds", 201)
    calls_ = [walk["stops"][0], calls.scan("bin", "D005", round=walk["id"])]
    calls.post("/api/parcels", 201, orders=[order["id"]])
    calls_.append(calls.scan("table", "D005"))
    assert [moved["photo"]] * 3 == [each["photo"] for each in calls_]
    assert 200 == calls.client.get(moved["photo"]).status_code


def test_what_is_no_picture_is_refused(calls: Calls, stay: Any) -> None:
    """415 for another type of content, 422 for what is no picture, 404 before there is one; nothing is kept."""
    answers = [
        put(calls.client, stay, picture(), "application/octet-stream"),
        put(calls.client, stay, picture(), "image/svg+xml"),
        put(calls.client, stay, b"no picture"),
        calls.client.get(f"/api/stays/{stay['id']}/photo"),
    ]
    expected = [(415, "unsupported_media_type")] * 2 + [(422, "bad_image"), (404, "not_found")]
    assert expected == [(each.status_code, each.get_json()["code"]) for each in answers]
    assert {"application/problem+json"} == {each.mimetype for each in answers}


@SQLITE_ONLY
@pytest.mark.parametrize("kind", ["GIF", "TIFF", "BMP", "EPS", "PDF", "ICO", "PPM", "TGA", "JPEG2000"])
def test_other_formats_are_no_pictures_here(calls: Calls, stay: Any, kind: str) -> None:
    """422, which names the formats that are taken, to whatever says to be a JPEG."""
    answer = put(calls.client, stay, picture(kind=kind))
    assert (422, "bad_image") == (answer.status_code, answer.json["code"])
    assert "Send the photo as JPEG, PNG, WebP, HEIC or AVIF." in answer.json["detail"]


@SQLITE_ONLY
def test_a_body_too_large_is_refused(calls: Calls, stay: Any) -> None:
    """413, as told before it is read."""
    answer = put(calls.client, stay, bytes(FILE + 1))
    assert (413, "too_large") == (answer.status_code, answer.get_json()["code"])


@SQLITE_ONLY
def test_helpers_may_put_pictures(app: Flask, shop: Shop, stay: Any, anonymous: FlaskClient) -> None:
    """A helper puts and sees them; nobody else does without a token."""
    helper = client_of(app, shop, Role.HELPER)
    assert 204 == put(helper, stay, picture()).status_code
    assert 200 == helper.get(f"/api/stays/{stay['id']}/photo").status_code
    assert [401, 401] == [
        put(anonymous, stay, picture()).status_code,
        anonymous.get(f"/api/stays/{stay['id']}/photo").status_code,
    ]


@SQLITE_ONLY
def test_of_an_unknown_stay(client: FlaskClient) -> None:
    """404, before the picture is opened."""
    assert 404 == put(client, {"id": "none"}, b"no picture").status_code
