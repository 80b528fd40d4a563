"""What makes a phone keep the service as an app: manifest, icons, service worker, the page for no network.

It needs nobody and says nothing of the room but its name, which the sign-in says too.
"""

from __future__ import annotations

import hashlib
import io
import json
from functools import cache
from pathlib import Path

from flask import Blueprint, Response, current_app, render_template, url_for
from flask.typing import ResponseReturnValue
from PIL import Image, ImageDraw

from labels.paper import COLOURS, INK
from scanflow.web.pages.access.login import shop_name
from scanflow.web.pages.declare import ANYONE, page
from scanflow.web.problem import Problem

blueprint = Blueprint("installed", __name__)

SIZES = (180, 192, 512)
"""Pixels of an icon's side: what phones ask for."""

GROUND = "#f6f1e7"
"""The paper of the pages; `style.css` has it too."""

WORKER = "js/phone/worker.js"
ROOM = 0.1
"""Of an icon's side, left free about the card: a launcher may cut a circle out of the middle (Web App Manifest)."""


def draw_icon(size: int) -> bytes:
    """The card of `icon.svg` as a PNG of so many pixels."""
    fine = 4
    side = size * fine
    icon = Image.new("RGB", (side, side), GROUND)
    pen, unit = ImageDraw.Draw(icon), side * (1 - 2 * ROOM) / 32

    def box(left: float, top: float, right: float, bottom: float) -> tuple[float, ...]:
        return tuple(side * ROOM + unit * each for each in (left, top, right, bottom))

    pen.rounded_rectangle(box(0, 0, 32, 32), 4 * unit, fill=INK)
    pen.rounded_rectangle(box(2, 2, 30, 30), 2 * unit, fill="#ffffff")
    pen.rectangle(box(2, 2, 9, 30), fill=COLOURS["yellow"].hex)
    pen.rectangle(box(8.5, 2, 9.5, 30), fill=INK)
    for left in (12, 16, 19, 24):
        pen.rectangle(box(left, 7, left + 2, 25), fill=INK)
    out = io.BytesIO()
    icon.resize((size, size), Image.Resampling.LANCZOS).save(out, "PNG", optimize=True)
    return out.getvalue()


icon_of = cache(draw_icon)


@page(blueprint, "GET", "/icon-<int:size>.png", roles=ANYONE)
def icon(size: int) -> Response:
    if size not in SIZES:
        raise Problem(404, "not_found", "There is no icon of this size.")
    return Response(icon_of(size), mimetype="image/png", headers={"Cache-Control": "public, max-age=86400"})


@page(blueprint, "GET", "/manifest.webmanifest", roles=ANYONE)
def manifest() -> Response:
    icons = [
        {"src": url_for("installed.icon", size=size), "sizes": f"{size}x{size}", "type": "image/png", "purpose": use}
        for size in SIZES[1:]
        for use in ("any", "maskable")
    ]
    told = {
        "name": shop_name(),
        "id": "/",
        "start_url": url_for("today.show"),
        "scope": "/",
        "display": "standalone",
        "background_color": GROUND,
        "theme_color": GROUND,
        "icons": icons,
    }
    return Response(json.dumps(told), mimetype="application/manifest+json", headers={"Cache-Control": "no-cache"})


def static_files(folder: Path) -> dict[str, bytes]:
    """The static files by name, the worker itself aside."""
    files = sorted(path for path in folder.rglob("*") if path.is_file())
    named = {path.relative_to(folder).as_posix(): path.read_bytes() for path in files}
    return {name: content for name, content in named.items() if name != WORKER}


@page(blueprint, "GET", "/worker.js", roles=ANYONE)
def worker() -> Response:
    """The service worker of the whole service. Another hash of what it keeps makes it another worker."""
    folder = Path(current_app.static_folder or "")
    files, source = static_files(folder), (folder / WORKER).read_text(encoding="utf-8")
    offline = render_template("offline.html")
    told = hashlib.sha256(
        json.dumps([offline, [[name, hashlib.sha256(each).hexdigest()] for name, each in files.items()]]).encode()
    )
    names = [url_for("static", filename=name) for name in files]
    head = f"const VERSION = {json.dumps(told.hexdigest()[:16])};\nconst FILES = {json.dumps(names)};\n"
    return Response(head + source, mimetype="text/javascript", headers={"Cache-Control": "no-cache"})


@page(blueprint, "GET", "/offline", roles=ANYONE)
def offline() -> ResponseReturnValue:
    """Stands in for other pages while there is no network; kept by the worker."""
    return render_template("offline.html")
