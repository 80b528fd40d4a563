"""The service keeps what its OpenAPI document promises, for calls that a generator makes up."""

from __future__ import annotations

import re
import zlib
from collections.abc import Iterator
from pathlib import Path
from typing import Any

import pytest
import schemathesis
from calls import Calls, photo
from clients import client_of, new_token
from hypothesis import HealthCheck, given, settings
from hypothesis import strategies as st
from schemathesis import GenerationMode, openapi
from schemathesis.openapi import media_type
from schemathesis.specs.openapi.checks import negative_data_rejection
from schemathesis.transport.serialization import Binary

from scanflow.domain.access import Role
from scanflow.shop import Shop
from scanflow.storage.database import Database
from scanflow.vision.upright import MEDIA_TYPES
from scanflow.vision.workers import Readers
from scanflow.web import create_app
from scanflow.web.api.changes import Streams
from scanflow.web.api.contract import CALLS

ACCEPTED = ["2xx", "404", "409", "422"]
"""Of a body that fits its schema: 422 too, for an id or a card that the room doesn't know."""

BOUNDS = settings(
    max_examples=12, deadline=None, derandomize=True, database=None, suppress_health_check=list(HealthCheck)
)


def fits(value: Any, like: Any) -> bool:
    """Whether a made-up value is of the kind of a known one: a file, a slot code, or another id."""
    if isinstance(like, Binary):
        return isinstance(value, Binary)
    form = "[A-Z]{1,2}[0-9]{2,6}" if like[-1].isdigit() and like[0].isupper() else "[A-Za-z0-9_-]+"
    return isinstance(value, str) and re.fullmatch(form, value) is not None


for kind in MEDIA_TYPES:
    media_type(kind, st.sampled_from([photo("S002"), photo(), b"no picture"]))


class Room:
    """A room in the middle of a day, and things of it to put in place of most ids that are made up."""

    def __init__(self, shop: Shop) -> None:
        self.app = create_app(shop)
        self.app.extensions["streams"] = Streams(lasts=0.0)
        self.token = new_token(shop, "generator", Role.OWNER)
        calls = Calls(client_of(self.app, shop, Role.PROGRAM))
        calls.section("D", 40)
        calls.section("S", 10, slots_per_bin=2)
        packed, left, parcel = calls.packed("1001", 2)
        _, picked = calls.picked("1002", 2)
        held = calls.post("/api/orders", 201, number="1003", lines=[{"reference": "D014"}, {"reference": "nothing"}])
        stored = [calls.put_away(f"Saddle {place}", "S") for place in range(3)]
        waiting = calls.order("1004", *stored[:2])
        orders = (left, picked, held, waiting)
        count, done = (calls.post("/api/stocktakes", 201, area="room")["id"] for _ in range(2))
        for each, key in ((count, "look-1"), (done, "look-2")):
            seen = {"key": key, "place": packed[0]["bin"], "image": photo("S001")}
            calls.upload(f"/api/stocktakes/{each}/looks", **seen)
        calls.post(f"/api/stocktakes/{done}/close")
        found = calls.get(f"/api/stocktakes/{count}/findings")["findings"]
        self.known = {
            "stocktake": [count, done],
            "finding": [each["id"] for each in found],
            "area": ["room", "tray", "section:D", "bin:A-1-1"],
            "place": ["tray", packed[0]["bin"], stored[0]["bin"]],
            "section": ["D", "S"],
            "stay": [stay["id"] for stay in (*packed, *stored)],
            "order": [order["id"] for order in orders],
            "line": [line["id"] for order in orders for line in order["lines"]],
            "round": [calls.post("/api/rounds", 201)["id"]],
            "parcel": [parcel["id"], calls.post("/api/parcels", 201, orders=[waiting["id"]])["id"]],
            "key": ["test-1", "test-2", "test-3", "look-1", "look-2"],
            "to": ["S008", "S009"],
            "code": ["S010", "D001"],
            "text": ["S0109", "D0010", "S0028"],
            "bin": [stored[0]["bin"], stored[2]["bin"]],
            "table": ["main"],
            "file": [
                Binary(b"number,reference,title\n2001,D014,Lamp\n"),
                Binary(b"number;reference\n2002;S001\n;S002\n"),
            ],
            "image": [Binary(photo("S002")), Binary(photo())],
        }

    def replace(self, name: str, value: Any) -> Any:
        """Three of four ids of a known kind become one that exists; what no schema takes stays as it is."""
        kind = self.known.get(name)
        if kind is None or not fits(value, kind[0]):
            return value
        draw = zlib.crc32(value.data if isinstance(value, Binary) else value.encode())
        return kind[draw // 4 % len(kind)] if draw % 4 else value


@pytest.fixture(scope="module")
def room(tmp_path_factory: pytest.TempPathFactory, sqlite_template: Path, readers: Readers) -> Iterator[Room]:
    path = tmp_path_factory.mktemp("schemathesis") / "shop.db"
    path.write_bytes(sqlite_template.read_bytes())
    shop = Shop(Database(f"sqlite:///{path}"), readers)
    yield Room(shop)
    shop.database.close()


@pytest.fixture(scope="module")
def described(room: Room) -> Any:
    config = schemathesis.Config.from_dict(
        {
            "checks": {"positive_data_acceptance": {"expected-statuses": ACCEPTED}},
        }
    )
    schema = openapi.from_wsgi("/api/openapi.json", room.app, config=config)

    @schema.hook
    def map_path_parameters(context: Any, path_parameters: Any) -> Any:
        return {name: room.replace(name, value) for name, value in (path_parameters or {}).items()}

    @schema.hook
    def map_body(context: Any, body: Any) -> Any:
        if not isinstance(body, dict):
            return body
        replaced = {name: value if name == "key" else room.replace(name, value) for name, value in body.items()}
        if isinstance(replaced.get("orders"), list):
            replaced["orders"] = [room.replace("order", value) for value in replaced["orders"]]
        return replaced

    @schema.hook
    def map_query(context: Any, query: Any) -> Any:
        """Nobody makes up a cursor."""
        return {name: value for name, value in (query or {}).items() if name != "cursor"}

    return schema


@pytest.mark.parametrize("mode", [GenerationMode.POSITIVE, GenerationMode.NEGATIVE], ids=["fitting", "unfitting"])
@pytest.mark.parametrize("operation", [f"{call.tag}.{call.name}" for call in CALLS])
def test_answers_as_described(room: Room, described: Any, operation: str, mode: GenerationMode) -> None:
    """Whatever is sent, fitting or not, the answer's status, headers and body are among those the document names."""
    found = described.find_operation_by_id(operation)

    @settings(BOUNDS)
    @given(case=found.as_strategy(generation_mode=mode))
    def holds(case: Any) -> None:
        # In a form every value is text: the made-up number in place of a text fits after all.
        left_out = [negative_data_rejection] if case.media_type == "multipart/form-data" else []
        case.call_and_validate(headers={"Authorization": f"Bearer {room.token}"}, excluded_checks=left_out)

    holds()
