"""The day's calls in short, for tests that need a room in some state."""

from __future__ import annotations

import io
import itertools
from typing import Any

import numpy as np
import zxingcpp
from flask.testing import FlaskClient
from PIL import Image
from werkzeug.test import TestResponse

from labels.slot_code import card_text

_keys = itertools.count(1)


def photo(*codes: str) -> bytes:
    """A PNG of the bars of these slots' cards, one above the other."""
    return bars(*map(card_text, codes))


def bars(*texts: str) -> bytes:
    """The same of any texts."""
    page = Image.new("L", (600, 200 * max(1, len(texts))), 255)
    for place, text in enumerate(texts):
        scale = 4 if len(text) < 8 else 3
        drawn = zxingcpp.create_barcode(text, zxingcpp.BarcodeFormat.Code128).to_image(scale=scale)
        page.paste(Image.fromarray(np.asarray(drawn)), (60, 200 * place + 40))
    out = io.BytesIO()
    page.save(out, "PNG")
    return out.getvalue()


class Calls:
    """Makes calls with a client and answers their JSON; a status other than the wanted one fails the test."""

    def __init__(self, client: FlaskClient) -> None:
        self.client = client

    def post(self, path: str, status: int = 200, **body: Any) -> Any:
        return _json(self.client.post(path, json=body), status)

    def upload(self, path: str, status: int = 200, **fields: Any) -> Any:
        """A multipart form; bytes are sent as a file."""
        data = {
            name: (io.BytesIO(value), name) if isinstance(value, bytes) else value for name, value in fields.items()
        }
        return _json(self.client.post(path, data=data, content_type="multipart/form-data"), status)

    def get(self, path: str, status: int = 200) -> Any:
        return _json(self.client.get(path), status)

    def section(self, code: str = "D", slots: int = 6, slots_per_bin: int = 4) -> list[str]:
        """A new section's slot codes."""
        self.post("/api/sections", 201, code=code, name=f"Section {code}", slots_per_bin=slots_per_bin)
        return self.post(f"/api/sections/{code}/slots", 201, count=slots)["codes"] if slots else []

    def put_away(self, title: str = "Rear derailleur", section: str = "D") -> Any:
        return self.post("/api/stays", 201, title=title, section=section)

    def order(self, number: str, *stays: Any) -> Any:
        """An order for these stays."""
        lines = [{"reference": stay["reference"], "title": stay["title"]} for stay in stays]
        return self.post("/api/orders", 201, number=number, lines=lines)

    def ordered(self, number: str = "1001", things: int = 1) -> tuple[list[Any], Any]:
        """Things put away, and an order for them."""
        stays = [self.put_away(f"Thing {place} of {number}") for place in range(things)]
        return stays, self.order(number, *stays)

    def scan(self, station: str, code: str, **more: Any) -> Any:
        """The verdict on the card of a slot."""
        key = more.pop("key", None) or f"test-{next(_keys)}"
        return self.post("/api/scans", station=station, key=key, text=card_text(code), **more)

    def picked(self, number: str = "1001", things: int = 1) -> tuple[list[Any], Any]:
        """The same, picked on a round."""
        stays, order = self.ordered(number, things)
        round_ = self.post("/api/rounds", 201, orders=[order["id"]])
        for stay in stays:
            assert "accepted" == self.scan("bin", stay["code"], round=round_["id"])["verdict"]
        return stays, order

    def packed(self, number: str = "1001", things: int = 1) -> tuple[list[Any], Any, Any]:
        """The same, packed, so that the parcel has closed by itself; and that parcel."""
        stays, order = self.picked(number, things)
        parcel = self.post("/api/parcels", 201, orders=[order["id"]])
        for stay in stays:
            assert "accepted" == self.scan("table", stay["code"])["verdict"]
        return stays, order, self.get(f"/api/parcels/{parcel['id']}")


def _json(response: TestResponse, status: int) -> Any:
    assert status == response.status_code, response.text
    return response.get_json()
