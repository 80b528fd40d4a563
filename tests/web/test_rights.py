"""A helper gets at nothing of the owner's: every call of the OpenAPI document and every page of the map is tried."""

from __future__ import annotations

import re
from collections.abc import Iterator
from typing import Any

import pytest
from clients import SQLITE_ONLY, client_of
from flask import Flask
from flask.testing import FlaskClient
from furnished import Furnished, furnish

from scanflow.domain.access import Role
from scanflow.shop import Shop
from scanflow.storage import access
from scanflow.web.door.visitors import COOKIE
from scanflow.web.pages.declare import PAGES

pytestmark = SQLITE_ONLY

OPEN = {endpoint for endpoint, page in PAGES.items() if not page.roles} | {"static"}
HELPERS = {endpoint for endpoint, page in PAGES.items() if Role.HELPER in page.roles}


def operations(client: FlaskClient) -> Iterator[tuple[str, str, Any]]:
    """Method, path and operation of every call that the OpenAPI document describes."""
    for path, methods in client.get("/api/openapi.json").get_json()["paths"].items():
        for method, operation in methods.items():
            yield method.upper(), path, operation


def paired(app: Flask, shop: Shop) -> FlaskClient:
    """A phone that was paired: a session of a helper, which sends its CSRF token with each call."""
    link = shop.act("owner", lambda unit: unit.access.make_pairing_link())
    secret = shop.act("owner", lambda unit: unit.access.pair(link, "phone"))
    client = app.test_client()
    client.set_cookie(COOKIE, secret)
    client.environ_base["HTTP_X_CSRF_TOKEN"] = access.csrf_of(secret)
    return client


@pytest.fixture(params=["token", "phone"])
def helper(request: pytest.FixtureRequest, app: Flask, shop: Shop) -> FlaskClient:
    return paired(app, shop) if request.param == "phone" else client_of(app, shop, Role.HELPER)


def filled(path: str) -> str:
    return re.sub("{[a-z]+}", "none", path)


def test_a_helper_is_refused_every_call_of_the_owner(helper: FlaskClient) -> None:
    """403 as problem details for each call that doesn't name helpers, before anything else of it is looked at."""
    refused, told = set(), set()
    for method, path, operation in operations(helper):
        response = helper.open(filled(path), method=method)
        if operation["x-roles"] and "helper" not in operation["x-roles"]:
            told.add((method, path))
        if response.status_code == 403:
            refused.add((method, path))
            assert ("application/problem+json", "forbidden") == (response.mimetype, response.get_json()["code"])
    assert told == refused
    assert len(told) >= 9


def test_the_document_names_every_call(app: Flask, anonymous: FlaskClient) -> None:
    """No call of the map of addresses is missing in the document, and each says who may make it."""
    described = {(method, path): operation for method, path, operation in operations(anonymous)}
    routed = {
        (method, re.sub(r"<(?:[^>:]*:)?([^>]+)>", r"{\1}", rule.rule))
        for rule in app.url_map.iter_rules()
        for method in (rule.methods or set()) - {"HEAD", "OPTIONS"}
        if rule.rule.startswith("/api")
    }
    assert routed == described.keys()
    open_ = {path for (_, path), operation in described.items() if not operation["x-roles"]}
    assert {"/api/health", "/api/openapi.json"} == open_
    assert [] == [key for key, told in described.items() if bool(told["x-roles"]) is not bool(told["security"])]


def pages(app: Flask, room: Furnished) -> Iterator[tuple[str, str, str]]:
    """Endpoint, method and address of every page, with ids of things that are there."""
    stay, order = room.stays[0].id, room.orders[0].id
    ids = {"stays": stay, "put-away": stay, "orders": order, "rounds": room.round.id if room.round else "none"}
    known = {"code": "D001", "name": "A", "step": "short"}
    for rule in app.url_map.iter_rules():
        if rule.rule.startswith("/api") or rule.endpoint in OPEN:
            continue
        path = rule.rule
        for name in rule.arguments:
            value = known.get(name) or ids.get(path.split("/")[1], "none")
            path = re.sub(rf"<(?:[^<>]*:)?{name}>", value, path)
        for method in (rule.methods or set()) & {"GET", "POST"}:
            yield rule.endpoint, method, path


def test_a_helper_is_refused_every_page_of_the_owner(app: Flask, shop: Shop, helper: FlaskClient) -> None:
    """403 for each page that is not named as a helper's, also for a page that nobody thought of."""
    room = furnish(shop, 25)
    asked = sorted(pages(app, room), key=lambda page: page[0] == "login.leave")  # the last that a phone does
    answered = {(where, method): helper.open(path, method=method) for where, method, path in asked}
    refused = {where for (where, _), response in answered.items() if response.status_code == 403}
    endpoints = {where for where, _ in answered}
    assert endpoints - HELPERS == refused
    assert {"settings_page.show", "device_page.show", "device_page.pair", "ledger_page.show"} <= refused
    assert set() == HELPERS - endpoints


def test_nothing_of_the_owner_is_shown_to_a_helper(app: Flask, shop: Shop) -> None:
    """No link or form of a helper's page leads where it is refused."""
    room, helper, adapter = furnish(shop, 25), paired(app, shop), app.url_map.bind("localhost")
    dead, seen = set(), 0
    for where, method, path in pages(app, room):
        if where in HELPERS and method == "GET":
            answer = helper.get(path)
            html = answer.text if answer.mimetype == "text/html" else ""
            shown = [("GET", each) for each in re.findall(r'href="(/[^"#?]*)', html)]
            shown += [("POST", each) for each in re.findall(r'method="post" action="(/[^"#?]*)', html)]
            seen += len(shown)
            for kind, target in shown:
                endpoint, _ = adapter.match(target, method=kind)
                if endpoint not in HELPERS | OPEN:
                    dead.add((path, kind, target))
    assert (True, set()) == (seen > 300, dead)


def test_a_program_has_no_pages(app: Flask, shop: Shop) -> None:
    """A program is refused every page: it has the API."""
    room, program = furnish(shop, 25), client_of(app, shop, Role.PROGRAM)
    statuses = {program.open(path, method=method).status_code for _, method, path in pages(app, room)}
    assert {403} == statuses
