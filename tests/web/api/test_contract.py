"""What holds for all calls: who may make them, bodies, parameters, repeats, pages, the document, the ledger."""

from __future__ import annotations

import hashlib
import json
from typing import Any

import jsonschema_rs
import pytest
import rfc8785
from calls import Calls
from clients import SQLITE_ONLY, client_of
from flask import Flask
from flask.testing import FlaskClient

from scanflow.domain.access import Role
from scanflow.shop import Shop
from scanflow.web.api import openapi
from scanflow.web.api.contract import CALLS, Call
from scanflow.workflow.fields import Command

NAMES = [f"{call.tag}.{call.name}" for call in CALLS]

CONTRACT = """
GET /api/health
GET /api/openapi.json
POST /api/sections
GET /api/sections
POST /api/sections/{section}/slots
GET /api/slots
POST /api/stays
GET /api/stays/{stay}
PATCH /api/stays/{stay}
PUT /api/stays/{stay}/photo
GET /api/stays/{stay}/photo
POST /api/stays/{stay}/withdraw
POST /api/stays/{stay}/sell
POST /api/stays/{stay}/reserve
POST /api/stays/{stay}/listings
GET /api/listings
POST /api/listings/{listing}/ended
POST /api/listings/check
GET /api/stock.csv
POST /api/stock/load
POST /api/stays/{stay}/move
POST /api/stays/{stay}/exchange
POST /api/orders
POST /api/orders/import
GET /api/channels
POST /api/channels
GET /api/orders
GET /api/orders/{order}
POST /api/orders/{order}/cancel
POST /api/lines/{line}/settle
POST /api/lines/{line}/short
POST /api/lines/{line}/found
POST /api/lines/{line}/hold
POST /api/lines/{line}/revive
GET /api/stays/{stay}/doubts
POST /api/doubts/{doubt}/settle
POST /api/rounds
GET /api/rounds/{round}
POST /api/rounds/{round}/close
POST /api/parcels
GET /api/parcels/{parcel}
POST /api/parcels/{parcel}/close
POST /api/parcels/{parcel}/set-aside
POST /api/parcels/{parcel}/reopen
GET /api/hand-over
POST /api/hand-over
POST /api/returns
GET /api/returns
GET /api/returns/{id}
POST /api/returns/{id}/arrived
POST /api/returns/{id}/check
POST /api/scans
POST /api/scans/{key}/undo
POST /api/decode
POST /api/stocktakes
GET /api/stocktakes
GET /api/stocktakes/{stocktake}
POST /api/stocktakes/{stocktake}/looks
GET /api/stocktakes/{stocktake}/looks
GET /api/stocktakes/{stocktake}/looks/{key}/photo
POST /api/stocktakes/{stocktake}/looks/{key}/drop
POST /api/stocktakes/{stocktake}/forget
POST /api/stocktakes/{stocktake}/cancel
POST /api/stocktakes/{stocktake}/close
GET /api/stocktakes/{stocktake}/findings
POST /api/stocktakes/{stocktake}/findings/{finding}/resolve
POST /api/stocktakes/{stocktake}/findings/{finding}/undo
GET /api/stocktakes/{stocktake}/report
GET /api/ledger
GET /api/changes
GET /api/sections/{section}
"""
"""The last is where a new section's Location leads."""


BODIES = list(dict.fromkeys(call.body for call in CALLS if call.body is not None))


def _examples(body: type[Command]) -> list[Any]:
    return body.model_json_schema()["examples"]


def open_call(client: FlaskClient, call: Call) -> Any:
    path = call.path
    for name in call.ids:
        path = path.replace("{" + name + "}", "none")
    body = _examples(call.body)[0] if call.body else None
    return client.open(path, method=call.method, json=body)


@SQLITE_ONLY
def test_health_needs_no_token(anonymous: FlaskClient, calls: Calls) -> None:
    """It names the database and counts the ledger's entries."""
    expected = {"status": "ok", "database": "sqlite", "ledger": len(calls.get("/api/ledger")["entries"])}

    assert expected == anonymous.get("/api/health").get_json()


@SQLITE_ONLY
def test_the_document_names_every_call(anonymous: FlaskClient) -> None:
    """Its paths are the contract's, it needs no token, and every id is unique."""
    document = anonymous.get("/api/openapi.json").get_json()

    listed = {f"{method.upper()} {path}" for path, calls in document["paths"].items() for method in calls}
    assert set(CONTRACT.split("\n")[1:-1]) == listed
    assert "3.1.0" == document["openapi"]
    assert {"type": "http", "scheme": "bearer"} == document["components"]["securitySchemes"]["bearer"]
    assert len(NAMES) == len(set(NAMES))
    for call in CALLS:
        operation = document["paths"][call.path][call.method.lower()]
        assert [role.value for role in call.roles] == operation["x-roles"]
        bodiless = {status for status, answer in operation["responses"].items() if not answer.get("content")}
        assert bodiless <= {"204", "304"}


@pytest.mark.parametrize("body", BODIES)
def test_examples_fit_their_schemas(body: type[Command]) -> None:
    """Every body's schema in the document is sound and has an example that fits it, by the schema and by the call."""
    components = openapi.document()["components"]
    schema = {"$ref": f"#/components/schemas/{body.__name__}", "components": components}
    jsonschema_rs.meta.validate(components["schemas"][body.__name__])

    for example in _examples(body):
        assert jsonschema_rs.is_valid(schema, example)
        assert body.of(example)


@SQLITE_ONLY
@pytest.mark.parametrize("authorization", [None, "Bearer wrong", "Bearer ", "Basic b3duZXI6eA=="])
def test_a_call_without_a_valid_token_is_unauthorized(anonymous: FlaskClient, authorization: str | None) -> None:
    """401 as problem details with WWW-Authenticate, for every call that isn't open."""
    if authorization is not None:
        anonymous.environ_base["HTTP_AUTHORIZATION"] = authorization

    for call in CALLS:
        response = open_call(anonymous, call)
        if call.roles:
            assert (401, "unauthorized") == (response.status_code, response.get_json()["code"])
            assert "Bearer" == response.headers["WWW-Authenticate"]
        else:
            assert 200 == response.status_code


@SQLITE_ONLY
def test_a_role_may_do_what_is_declared(app: Flask, shop: Shop) -> None:
    """A helper scans, puts away, packs and looks; sections, orders and the ledger are the owner's and programs'."""
    for role in Role:
        client = client_of(app, shop, role)
        for call in CALLS:
            allowed = not call.roles or role in call.roles
            assert allowed is (open_call(client, call).status_code != 403), (role, call.path)
    denied = {f"{call.method} {call.path}" for call in CALLS if call.roles and Role.HELPER not in call.roles}
    assert {
        "POST /api/sections",
        "POST /api/sections/{section}/slots",
        "POST /api/stays/{stay}/withdraw",
        "POST /api/stays/{stay}/sell",
        "POST /api/stays/{stay}/reserve",
        "POST /api/listings/check",
        "GET /api/stock.csv",
        "POST /api/stock/load",
        "POST /api/channels",
        "POST /api/orders",
        "POST /api/orders/import",
        "POST /api/orders/{order}/cancel",
        "POST /api/lines/{line}/settle",
        "POST /api/lines/{line}/revive",
        "POST /api/doubts/{doubt}/settle",
        "POST /api/stocktakes/{stocktake}/forget",
        "GET /api/ledger",
    } == denied


@SQLITE_ONLY
@pytest.mark.parametrize(
    ("body", "kind", "status", "code"),
    [
        (b"{", "application/json", 400, "malformed"),
        (b"[NaN]", "application/json", 400, "malformed"),
        (b'{"count": 1e999}', "application/json", 400, "malformed"),
        (b'{"count": 1, "count": 2}', "application/json", 400, "malformed"),
        ('{"count": "ä"}'.encode("latin-1"), "application/json", 400, "malformed"),
        (b"[" * 100_000, "application/json", 400, "malformed"),
        (b"count=1", "application/x-www-form-urlencoded", 415, "unsupported_media_type"),
        (b"{}", "text/plain", 415, "unsupported_media_type"),
        (b'{"count": 1}', None, 415, "unsupported_media_type"),
        (b" " * (1024 * 1024 + 1), "application/json", 413, "too_large"),
        (b"", None, 422, "required"),
        (b"[]", "application/json", 422, "type"),
        (b'{"count": true}', "application/json", 422, "type"),
        (b'{"count": 0}', "application/json", 422, "too_small"),
        (b'{"count": 5001}', "application/json", 422, "too_large"),
        (b'{"count": 1%s}' % (b"0" * 4000), "application/json", 422, "too_large"),
        (b'{"count": 1, "racks": "A"}', "application/json", 422, "unknown_field"),
    ],
)
def test_a_body_that_is_wrong_says_how(calls: Calls, body: bytes, kind: str | None, status: int, code: str) -> None:
    """400 for no JSON, 413, 415, and 422 for what the schema doesn't take; nothing is made."""
    calls.section("D", 0)

    response = calls.client.post("/api/sections/D/slots", data=body, content_type=kind)
    assert (status, code) == (response.status_code, response.get_json()["code"])
    assert "application/problem+json" == response.mimetype
    assert [] == calls.get("/api/slots")["slots"]


def test_whole_numbers_are_integers_however_written(calls: Calls) -> None:
    """JSON has one kind of number: 2.0 and 2e0 are 2."""
    calls.section("D", 0)

    response = calls.client.post("/api/sections/D/slots", data=b'{"count": 2.0}', content_type="application/json")
    assert ["D001", "D002"] == response.get_json()["codes"]


def test_every_fault_is_pointed_at(calls: Calls) -> None:
    """One answer names all fields that are wrong, unknown ones first."""
    body = {"title": "x" * 501, "nots/es": "a", "text": 5, "listing": None}

    problem = calls.post("/api/stays", 422, **body)
    assert "unknown_field" == problem["code"]
    assert {
        ("/nots~1es", "unknown_field"),
        ("/title", "too_long"),
        ("/text", "type"),
        ("/listing", "type"),
    } == {(error["pointer"], error["code"]) for error in problem["errors"]}
    lines = [{"reference": "D001"}, {"refrence": "D002"}]
    problem = calls.post("/api/orders", 422, number="1", lines=lines)
    assert ["/lines/1/refrence", "/lines/1/reference"] == [error["pointer"] for error in problem["errors"]]


@pytest.mark.parametrize("text", ["a\0b", "\ud800", "\udc00 x"])
def test_texts_that_no_database_keeps_are_refused(calls: Calls, text: str) -> None:
    """422 `not_text` for NUL and lone surrogates, in names of fields too."""
    calls.section()
    for body, pointer in (
        ({"title": text, "section": "D"}, "/title"),
        ({"number": "1", "lines": [{"reference": text}]}, "/lines/0/reference"),
    ):
        path = "/api/stays" if "title" in body else "/api/orders"
        assert [{"pointer": pointer, "code": "not_text"}] == calls.post(path, 422, **body)["errors"]
    assert "not_text" == calls.post("/api/stays", 422, **{"title": "x", "section": "D", text: 1})["code"]
    assert "not_text" == calls.post("/api/scans", 422, station="tray", key="k", text=text)["code"]


@SQLITE_ONLY
def test_all_of_unicode_is_kept(calls: Calls) -> None:
    """Texts come back as they were sent, and the ledger's chain holds over them."""
    calls.section()
    title = "Sattel “Größe 5” \U0001f6b2 \u202e\u0007 \u00e9e\u0301"

    stay = calls.post("/api/stays", 201, title=title, section="D")
    assert title == calls.get(f"/api/stays/{stay['id']}")["title"]


@pytest.mark.parametrize(
    ("query", "pointer", "code"),
    [
        ("limit=0", "/limit", "too_small"),
        ("limit=501", "/limit", "too_large"),
        ("limit=ten", "/limit", "type"),
        ("limit=1&limit=2", "/limit", "repeated"),
        ("limt=1", "/limt", "unknown_field"),
        ("cursor=%00", "/cursor", "pattern"),
        ("cursor=W10", "/cursor", "bad_cursor"),
        ("cursor=WyJcdTAwMDAiLDFd", "/cursor", "bad_cursor"),
        ("section=d", "/section", "pattern"),
        ("state=lost", "/state", "not_allowed_value"),
    ],
)
def test_a_parameter_that_is_wrong_is_pointed_at(calls: Calls, query: str, pointer: str, code: str) -> None:
    """422 with `/name` of the parameter."""
    assert [{"pointer": pointer, "code": code}] == calls.get(f"/api/slots?{query}", 422)["errors"]


@SQLITE_ONLY
@pytest.mark.parametrize(("path", "allowed"), [("/api/slots", "GET"), ("/api/stays", "POST")])
def test_other_methods_are_not_allowed(client: FlaskClient, path: str, allowed: str) -> None:
    """405 with Allow, OPTIONS says what is allowed, HEAD is a GET without its body, and unknown paths are 404."""
    response = client.delete(path)
    assert (405, "method_not_allowed") == (response.status_code, response.get_json()["code"])
    assert allowed in response.headers["Allow"].split(", ")
    assert allowed in client.options(path).headers["Allow"].split(", ")
    head, whole = client.head("/api/slots"), client.get("/api/slots")
    assert (200, b"", whole.mimetype) == (head.status_code, head.data, head.mimetype)
    missing = client.get(f"{path}/nothing/here")
    assert (404, "application/problem+json") == (missing.status_code, missing.mimetype)


def test_a_repeat_with_an_idempotency_key_gets_the_stored_answer(calls: Calls) -> None:
    """The same status, body and Location, marked as replayed, and nothing is done twice; another body is a 422."""
    calls.section()
    body = {"title": "Crank", "section": "D"}
    headers = {"Idempotency-Key": "first thing"}
    assert "pattern" == calls.client.post("/api/stays", json=body, headers=headers).get_json()["code"]
    headers = {"Idempotency-Key": "first-thing"}

    first = calls.client.post("/api/stays", json=body, headers=headers)
    again = calls.client.post("/api/stays", json=body, headers=headers)
    assert (201, None) == (first.status_code, first.headers.get("Answer-Stored"))
    assert (201, "true") == (again.status_code, again.headers["Answer-Stored"])
    assert first.get_json() == again.get_json()
    assert first.headers["Location"] == again.headers["Location"]
    assert 1 == len(calls.get("/api/slots?state=taken")["slots"])
    other = calls.client.post("/api/stays", json=body | {"title": "Lamp"}, headers=headers)
    assert (422, "key_reused") == (other.status_code, other.get_json()["code"])


def test_errors_are_not_stored(calls: Calls) -> None:
    """A key whose call was refused can be used again, with a better body too."""
    calls.section("D", 1)
    headers = {"Idempotency-Key": "k"}

    for body, status in (({"section": "X"}, 422), ({"code": "D001"}, 201), ({"code": "D001"}, 201)):
        response = calls.client.post("/api/stays", json={"title": "Crank"} | body, headers=headers)
        assert status == response.status_code
    assert "true" == response.headers["Answer-Stored"]


def test_a_file_is_loaded_once_for_a_key(calls: Calls) -> None:
    """A form is the same whatever boundary its sender draws."""
    calls.section()
    calls.client.environ_base["HTTP_IDEMPOTENCY_KEY"] = "file"

    answers = [calls.upload("/api/orders/import", file=b"number,channel,reference\n1,fair,D001\n") for _ in range(2)]
    assert 1 == answers[0]["loaded"] == answers[1]["loaded"]
    assert (
        "key_reused" == calls.upload("/api/orders/import", 422, file=b"number,channel,reference\n2,fair,D001\n")["code"]
    )


def walk(calls: Calls, path: str, name: str, key: str, add: Any) -> list[Any]:
    """The `key` of all rows, page by page, while rows are added between the pages."""
    found, cursor = [], None
    while True:
        page = calls.get(f"{path}{'&' if '?' in path else '?'}limit=2{f'&cursor={cursor}' if cursor else ''}")
        assert len(page[name]) <= 2
        found += [row[key] for row in page[name]]
        cursor = page["next"]
        if cursor is None:
            return found
        add()


@pytest.mark.parametrize(
    ("path", "name", "key"),
    [
        ("/api/slots", "slots", "code"),
        ("/api/slots?section=D", "slots", "code"),
        ("/api/slots?state=free", "slots", "code"),
        ("/api/slots?section=D&state=free", "slots", "code"),
        ("/api/sections", "sections", "code"),
        ("/api/orders", "orders", "number"),
        ("/api/orders?state=held", "orders", "number"),
    ],
)
def test_pages_show_every_row_once_while_rows_are_added(calls: Calls, path: str, name: str, key: str) -> None:
    """All rows that were there at the start are seen once, in order, and no other row twice."""
    for code in ("B", "D", "S"):
        calls.section(code, 3)
    for number in range(5):
        calls.post("/api/orders", 201, number=f"{number}", lines=[{"reference": "lamp"}])
    before = [row[key] for row in calls.get(path)[name]]
    added = iter(range(100, 200))

    def add() -> None:
        number = next(added)
        if number < 104:
            calls.section("A" + chr(number - 35), 1)
            calls.post("/api/sections/D/slots", 201, count=1)
            calls.post("/api/orders", 201, number=f"{number}", lines=[{"reference": "lamp"}])

    found = walk(calls, path, name, key, add)
    assert before == [each for each in found if each in before]
    assert len(set(found)) == len(found)
    assert len(before) > 2


def test_the_ledger_is_a_chain_anyone_can_check(calls: Calls) -> None:
    """Walked by `after`, each hash is SHA-256 over the one before and the entry as RFC 8785 JSON."""
    calls.section()
    calls.packed("1001", 2)
    calls.post("/api/stays", 201, title="Größe “5”", section="D")

    entries: list[Any] = []
    after: int | None = 0
    while after is not None:
        page = calls.get(f"/api/ledger?limit=3&after={after}")
        entries += page["entries"]
        after = page["next"]
        assert after in (None, entries[-1]["seq"])
    assert list(range(1, calls.get("/api/health")["ledger"] + 1)) == [entry["seq"] for entry in entries]
    previous = ""
    for entry in entries:
        kept = json.loads(json.dumps(entry))
        hashed = kept.pop("hash")
        assert hashed == hashlib.sha256(previous.encode() + rfc8785.dumps(kept)).hexdigest()
        previous = hashed
    assert {"boss"} == {entry["actor"] for entry in entries}
    assert {"put away", "order received", "round opened", "scan", "parcel closed"} < {e["kind"] for e in entries}
