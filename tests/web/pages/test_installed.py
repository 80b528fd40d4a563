"""What a phone needs to keep the service as an app."""

from __future__ import annotations

import io
import json
import re

from clients import SQLITE_ONLY
from flask import Flask
from flask.testing import FlaskClient
from PIL import Image

from scanflow.web.pages import installed


@SQLITE_ONLY
def test_the_manifest_names_icons_of_their_sizes(anonymous: FlaskClient) -> None:
    """What Web App Manifest (W3C) asks of an app, for anybody; each icon is as large as told."""
    response = anonymous.get("/manifest.webmanifest")
    told = response.get_json()
    assert ("application/manifest+json", "/", "/", "standalone") == (
        *(response.mimetype, told["start_url"], told["scope"], told["display"]),
    )
    assert {("192x192", "any"), ("192x192", "maskable"), ("512x512", "any"), ("512x512", "maskable")} == {
        (each["sizes"], each["purpose"]) for each in told["icons"]
    }
    for each in told["icons"]:
        picture = Image.open(io.BytesIO(anonymous.get(each["src"]).data))
        assert ("PNG", each["sizes"]) == (picture.format, f"{picture.width}x{picture.height}")
    assert 404 == anonymous.get("/icon-7.png").status_code


def test_a_maskable_icon_keeps_its_drawing_in_the_middle() -> None:
    """A launcher may cut a circle of 40 % of the side as radius (Web App Manifest, icon masks): bars lie within it."""
    picture = Image.open(io.BytesIO(installed.draw_icon(512))).convert("L")
    dark = [(x, y) for x in range(220, 400) for y in range(130, 380) if picture.getpixel((x, y)) < 60]  # type: ignore[operator]
    assert dark
    assert max((x - 256) ** 2 + (y - 256) ** 2 for x, y in dark) <= (0.4 * 512) ** 2


@SQLITE_ONLY
def test_the_worker_keeps_every_static_file_and_no_page(anonymous: FlaskClient, app: Flask) -> None:
    """Its list is all that stands under /static, each there without signing in, and it is never kept unasked."""
    response = anonymous.get("/worker.js")
    assert ("text/javascript", "no-cache") == (response.mimetype, response.headers["Cache-Control"])
    names = json.loads(re.search(r"^const FILES = (.*);$", response.text, re.MULTILINE)[1])  # type: ignore[index]
    assert "/static/js/scanning/station.js" in names
    assert {200} == {anonymous.get(name).status_code for name in [*names, "/offline"]}
    assert [] == [name for name in names if not name.startswith("/static/") or name.endswith("worker.js")]


@SQLITE_ONLY
def test_another_static_file_makes_another_worker(anonymous: FlaskClient, app: Flask, tmp_path) -> None:  # type: ignore[no-untyped-def]
    """The version is a hash of what is kept: the same files the same, one byte more another."""
    first = anonymous.get("/worker.js").text
    assert first == anonymous.get("/worker.js").text
    folder = tmp_path / "static"
    (folder / "js" / "phone").mkdir(parents=True)
    for name, content in {"style.css": b"a", "js/phone/worker.js": b"w"}.items():
        (folder / name).write_bytes(content)
    app.static_folder = str(folder)
    before = anonymous.get("/worker.js").text
    (folder / "style.css").write_bytes(b"b")
    assert before != anonymous.get("/worker.js").text
