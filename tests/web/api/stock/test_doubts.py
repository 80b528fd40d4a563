"""Doubts over HTTP: what is doubted of a thing is listed, and ends only on purpose."""

from __future__ import annotations

from typing import Any

from calls import Calls
from clients import client_of
from flask import Flask

from labels.slot_code import card_text
from scanflow.domain.access import Role
from scanflow.shop import Shop


def doubted(calls: Calls, why: str = "The picture shows a saddle") -> tuple[Any, str, str]:
    """A thing that an order wants and a person doubts: its stay, the line and the doubt."""
    calls.section()
    (stay,), order = calls.ordered()
    line = order["lines"][0]["id"]
    calls.post(f"/api/lines/{line}/hold", why=why)
    (doubt,) = calls.get(f"/api/stays/{stay['id']}/doubts")["doubts"]
    return stay, line, doubt["id"]


def hold_of(calls: Calls, line: str, order: str) -> Any:
    (told,) = [each for each in calls.get(f"/api/orders/{order}")["lines"] if each["id"] == line]
    return told["state"], [each["hold"] for each in told["holds"]]


def test_what_is_doubted_of_a_thing_is_listed(calls: Calls) -> None:
    """Each open doubt with its kind, words, time and who said it, the oldest first; of an unknown stay 404."""
    calls.section()
    (stay,), order = calls.ordered()
    line = order["lines"][0]["id"]
    assert {"doubts": []} == calls.get(f"/api/stays/{stay['id']}/doubts")
    calls.post(f"/api/lines/{line}/hold", why="The picture shows a saddle")
    calls.post(f"/api/lines/{line}/short", note="Not in its bin")

    told = calls.get(f"/api/stays/{stay['id']}/doubts")["doubts"]
    assert [{"id", "kind", "words", "since", "by"}] * 2 == [set(each) for each in told]
    expected = [("not_this", "The picture shows a saddle", "boss"), ("missing", "Not in its bin", "boss")]
    assert expected == [(each["kind"], each["words"], each["by"]) for each in told]
    assert 404 == calls.client.get("/api/stays/none/doubts").status_code


def test_a_doubt_that_was_settled_as_seen_wants_its_card(calls: Calls) -> None:
    """422 at /text without a text, with another card's, with none of the shop; its own ends the doubt and frees."""
    stay, line, doubt = doubted(calls)
    other = calls.put_away()
    for sent, code in (
        ({}, "required"),
        ({"text": ""}, "required"),
        ({"text": card_text(other["code"])}, "other_card"),
        ({"text": card_text(stay["code"])[:-1] + "X"}, "unknown_code"),
    ):
        problem = calls.post(f"/api/doubts/{doubt}/settle", 422, how="seen", **sent)
        assert [{"pointer": "/text", "code": code}] == problem["errors"]
    order = calls.get("/api/orders")["orders"][0]["id"]
    assert ("waiting", ["suspect"]) == hold_of(calls, line, order)

    ended = calls.post(f"/api/doubts/{doubt}/settle", how="seen", text=card_text(stay["code"]))
    assert {"id", "kind", "words", "since", "by", "how", "ended"} == set(ended)
    assert (doubt, "seen", True) == (ended["id"], ended["how"], ended["ended"] >= ended["since"])
    assert ("waiting", []) == hold_of(calls, line, order)
    assert {"doubts": []} == calls.get(f"/api/stays/{stay['id']}/doubts")
    assert "settled" == calls.post(f"/api/doubts/{doubt}/settle", 409, how="corrected")["code"]


def test_a_doubt_stays_while_another_is_settled(calls: Calls) -> None:
    """A line is free once the last doubt of its thing has ended."""
    stay, line, doubt = doubted(calls)
    calls.post(f"/api/lines/{line}/hold", why="The chain is another")
    order = calls.get("/api/orders")["orders"][0]["id"]
    calls.post(f"/api/doubts/{doubt}/settle", how="corrected", note="The picture is exchanged")
    assert ("waiting", ["suspect"]) == hold_of(calls, line, order)
    (left,) = calls.get(f"/api/stays/{stay['id']}/doubts")["doubts"]
    calls.post(f"/api/doubts/{left['id']}/settle", how="corrected")
    assert ("waiting", []) == hold_of(calls, line, order)


def test_what_was_missing_waits_again(calls: Calls) -> None:
    """A short line whose thing was seen, as somebody settles it, waits."""
    calls.section()
    (stay,), order = calls.ordered()
    line = order["lines"][0]["id"]
    calls.post(f"/api/lines/{line}/short")
    (doubt,) = calls.get(f"/api/stays/{stay['id']}/doubts")["doubts"]
    calls.post(f"/api/doubts/{doubt['id']}/settle", how="seen", text=card_text(stay["code"]))
    assert ("waiting", []) == hold_of(calls, line, order["id"])


def test_a_helper_lists_doubts_and_settles_none(app: Flask, shop: Shop, calls: Calls) -> None:
    """403 for the settling, as for a line's."""
    stay, _, doubt = doubted(calls)
    helper = Calls(client_of(app, shop, Role.HELPER))
    assert [doubt] == [each["id"] for each in helper.get(f"/api/stays/{stay['id']}/doubts")["doubts"]]
    assert "forbidden" == helper.post(f"/api/doubts/{doubt}/settle", 403, how="corrected")["code"]
