"""A page refuses what the API refuses, with the same words."""

from __future__ import annotations

from html import unescape
from typing import Any

import pytest
from clients import SQLITE_ONLY
from flask.testing import FlaskClient
from furnished import furnish

from scanflow.shop import Shop

pytestmark = SQLITE_ONLY

SECTION = {"code": "LP", "name": "Levers", "slots_per_bin": 4, "digits": 3}
NAMED = {"name": "section"}
"""What a page calls a field in another way."""


@pytest.mark.parametrize(
    ("call", "page", "right", "wrong", "code"),
    [
        ("stays", "put-away", {"text": "D0033", "title": "Lamp"}, {"title": "x" * 501}, "too_long"),
        ("stays", "put-away", {"text": "D0033", "title": "Lamp"}, {"title": ""}, "required"),
        ("stays", "put-away", {"text": "D0033", "title": "Lamp"}, {"notes": "x" * 4001}, "too_long"),
        ("stays", "put-away", {"title": "Lamp"}, {"text": "D" * 201}, "too_long"),
        ("stays", "put-away", {"title": "Lamp"}, {}, "exactly_one"),
        ("stays/{stay}", "stays/{stay}/edit", {"title": "Lamp"}, {"listing": "x" * 201}, "too_long"),
        ("stays/{stay}", "stays/{stay}/edit", {}, {}, "too_few"),
        ("stays/{stay}/withdraw", "stays/{stay}/withdraw", {}, {"reason": "x" * 501}, "too_long"),
        ("stays/{stay}/withdraw", "stays/{stay}/withdraw", {}, {"reason": ""}, "required"),
        ("sections", "settings/sections", SECTION, {"name": "x" * 101}, "too_long"),
        ("sections", "settings/sections", SECTION, {"slots_per_bin": 1000}, "too_large"),
        ("sections", "settings/sections", SECTION, {"slots_per_bin": 0}, "too_small"),
        ("sections", "settings/sections", SECTION, {"slots_per_bin": "four"}, "type"),
        ("sections", "settings/sections", SECTION, {"code": "LPX"}, "pattern"),
        ("sections", "settings/sections", SECTION, {"digits": 7}, "too_large"),
        ("sections", "settings/sections", SECTION, {"colour": "plaid"}, "not_allowed_value"),
        ("sections/D/slots", "sections/D/slots", {}, {"count": 5001}, "too_large"),
        ("sections/D/slots", "sections/D/slots", {}, {"count": 0}, "too_small"),
        ("lines/{line}/settle", "lines/{line}/settle", {}, {"hold": "gone"}, "not_allowed_value"),
        ("lines/{line}/settle", "lines/{line}/settle", {}, {"stay": "x" * 65}, "pattern"),
        ("orders/{order}/cancel", "orders/{order}/cancel", {}, {"line": "?"}, "pattern"),
        ("parcels", "orders/{order}/pack", {"orders": ["{order}"]}, {"table": "x" * 65}, "too_long"),
        ("stocktakes", "counts", {"area": "room"}, {"note": "x" * 501}, "too_long"),
        ("stocktakes", "counts", {"area": "room"}, {"sample": 100_001}, "too_large"),
        ("stocktakes", "counts", {"area": "room"}, {"sample": 0}, "too_small"),
    ],
)
def test_one_limit(
    shop: Shop, client: FlaskClient, call: str, page: str, right: dict[str, Any], wrong: dict[str, Any], code: str
) -> None:
    """Too long, too many, out of its range or written in another way: 422 on both ways in, with one sentence."""
    room = furnish(shop, 2)
    order = room.orders[0]
    line = client.get(f"/api/orders/{order.id}").get_json()["lines"][0]["id"]
    ids = {"stay": room.stays[0].id, "order": order.id, "line": line}
    fields = {name: [each.format(**ids) for each in value] if isinstance(value, list) else value
              for name, value in (right | wrong).items()}  # fmt: skip
    said = {name: value for name, value in fields.items() if value != ""}

    method = "PATCH" if call == "stays/{stay}" else "POST"
    refused = client.open(f"/api/{call.format(**ids)}", method=method, json=said)
    assert (422, code) == (refused.status_code, refused.get_json()["code"])
    shown = client.post(f"/{page.format(**ids)}", data={NAMED.get(name, name): each for name, each in fields.items()})
    assert (422, True) == (shown.status_code, refused.get_json()["detail"] in unescape(shown.text))


@pytest.mark.parametrize("page", ["put-away", "api/orders/import"])
def test_a_nul_is_kept_nowhere(client: FlaskClient, page: str) -> None:
    """A form with one is refused as a JSON text with one is: `not_text`."""
    told = client.post("/api/stays", json={"title": "a\0b", "section": "D"})
    assert (422, "not_text") == (told.status_code, told.get_json()["code"])
    form = client.post(f"/{page}", data={"title": "a\0b", "mapping": "a\0b"}, content_type="multipart/form-data")
    assert (422, True) == (form.status_code, "character" in form.text)
