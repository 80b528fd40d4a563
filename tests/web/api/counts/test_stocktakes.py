"""A count over HTTP, on both databases."""

from __future__ import annotations

import csv
import hashlib
import io
from concurrent.futures import ThreadPoolExecutor
from datetime import datetime
from typing import Any

import pytest
from calls import Calls, photo
from clients import SQLITE_ONLY, client_of
from flask import Flask
from sqlalchemy import func, select

from labels.slot_code import bin_text, card_text
from scanflow.domain.access import Role
from scanflow.shop import Shop
from scanflow.storage import tables
from scanflow.workflow.counts import looks, resolving
from scanflow.workflow.counts.looks import IncomingLook, LabelReading
from scanflow.workflow.ports import Refused


class Count:
    """Section D, D001 … D006 of four to a bin, things in the first four; and a count of the room."""

    def __init__(self, calls: Calls, area: str = "room") -> None:
        self.calls = calls
        calls.section()
        self.stays = [calls.put_away(f"Thing {number}") for number in range(1, 5)]
        self.id = calls.post("/api/stocktakes", 201, area=area)["id"]
        self.path = f"/api/stocktakes/{self.id}"
        self.keys = 0

    def look(self, place: str | None, *codes: str, status: int = 200, **more: Any) -> Any:
        self.keys += 1
        said = {"place": place} if place else {}
        texts = more.pop("texts", [card_text(code) for code in codes])
        body = {"key": f"look-{self.keys}", "texts": texts} | said | more
        return self.calls.post(f"{self.path}/looks", status, **body)

    def upload(self, image: bytes, status: int = 200, **more: Any) -> Any:
        self.keys += 1
        return self.calls.upload(f"{self.path}/looks", status, **{"key": f"look-{self.keys}", **more}, image=image)

    def all_right(self) -> None:
        self.look("A-1-1", "D001", "D002", "D003", "D004")
        self.look("A-1-2")
        self.look("tray", "D005", "D006")

    def findings(self) -> list[str]:
        return [each["id"] for each in self.calls.get(f"{self.path}/findings")["findings"]]

    def resolve(self, finding: str, how: str, status: int = 200, **more: Any) -> Any:
        return self.calls.post(f"{self.path}/findings/{finding}/resolve", status, how=how, **more)

    def undo(self, finding: str, status: int = 200) -> Any:
        return self.calls.post(f"{self.path}/findings/{finding}/undo", status)


@pytest.fixture
def count(calls: Calls) -> Count:
    return Count(calls)


def test_a_refused_scan_makes_no_card_unexpected_in_its_own_bin(calls: Calls) -> None:
    """Its thing was refused at a table: seen in its bin since, it is where it belongs, photo and report say."""
    calls.section()
    calls.put_away()
    assert "no_parcel" == calls.scan("table", "D001")["reason"]
    path = f"/api/stocktakes/{calls.post('/api/stocktakes', 201, area='bin:A-1-1')['id']}"
    look = calls.upload(f"{path}/looks", key="k1", image=photo("D001"), place="A-1-1")
    assert [("D001", False)] == [(each["code"], each["unexpected"]) for each in look["reads"]]
    assert [] == calls.get(f"{path}/findings")["findings"]
    [section] = calls.post(f"{path}/close")["sections"]
    assert (1, 1) == (section["expected"], section["agreed"])


def test_a_right_room_has_no_findings(calls: Calls, count: Count) -> None:
    """Progress says what is still to look at; at the end nothing is, the report agrees, and the count is closed."""
    assert (0, ["A-1-1", "A-1-2", "tray"]) == tuple(calls.get(count.path)[name] for name in ("looked", "to_look"))
    count.all_right()
    assert (3, []) == tuple(calls.get(count.path)[name] for name in ("looked", "to_look"))

    report = calls.post(f"{count.path}/close")
    counts = {"expected": 6, "counted": 6, "agreed": 6, "unclear": 0, "record_not_found": 0, "found_not_recorded": 0}
    # Clopper and Pearson, none wrong of 6: 0.05 / 2 = p ** 6
    row = {"section": "D", "agreement": [round(0.025 ** (1 / 6), 4), 1.0], **counts}
    assert ([row], [], []) == (report["sections"], report["findings"], report["not_looked"])
    assert report == calls.get(f"{count.path}/report")
    assert "closed" == calls.get(count.path)["state"]
    assert "closed" == count.look("A-1-1", "D001", status=409)["code"]


def test_a_look_that_waited_is_as_old_as_it_says(calls: Calls, count: Count) -> None:
    """What was read meanwhile is not undone by it, as a list and as a photo; sent again it is the same look, older."""
    calls.scan("shelf", "D001", bin="A-1-1")
    before = {"key": "old", "place": "A-1-2", "texts": [card_text("D001")]}
    first = calls.post(f"{count.path}/looks", **before, age_ms=60_000)
    assert first == calls.post(f"{count.path}/looks", **before, age_ms=90_000)
    picture = {"key": "old-photo", "place": "A-1-2", "image": photo("D001")}
    shown = calls.upload(f"{count.path}/looks", **picture, age_ms="60000")
    assert shown == calls.upload(f"{count.path}/looks", **picture, age_ms="70000")
    round_ = calls.order("1001", count.stays[0]) and calls.post("/api/rounds", 201)
    assert ["A-1-1"] == [stop["bin"] for stop in round_["stops"]]
    count.look("A-1-2", "D001")
    assert ["A-1-2"] == [stop["bin"] for stop in calls.get(f"/api/rounds/{round_['id']}")["stops"]]
    for wrong in (-1, 31 * 24 * 3_600_000 + 1, "1"):
        assert 422 == calls.client.post(f"{count.path}/looks", json={**before, "age_ms": wrong}).status_code


@pytest.mark.parametrize("by_photo", [False, True])
def test_a_count_that_sees_a_card_mends_its_sighting(calls: Calls, count: Count, by_photo: bool) -> None:
    """A refused scan at the table says that it is there; seen in its bin it is home: no finding, no duty, it agrees."""

    def duty() -> bool:
        return "out of place" in calls.client.get("/").text

    assert "no_parcel" == calls.scan("table", "D001")["reason"]
    seen = [duty()]
    if by_photo:
        count.upload(photo("D001", "D002", "D003", "D004"), place="A-1-1")
    else:
        count.look("A-1-1", "D001", "D002", "D003", "D004")
    seen.append(duty())
    assert ([True, False], []) == (seen, count.findings())
    report = calls.post(f"{count.path}/close")
    assert [(4, 4)] == [(row["counted"], row["agreed"]) for row in report["sections"]]


def test_a_count_and_the_day_agree_on_what_strays(calls: Calls, count: Count) -> None:
    """A card in another bin is a finding and out of place, until it is put right."""
    count.look("A-1-1", "D002", "D003", "D004")
    count.look("A-1-2", "D001")
    said = "In bin A-1-1 by the records, but its card was seen in bin A-1-2."
    assert ["elsewhere-D001"] == count.findings()
    assert said in calls.client.get("/").text
    count.resolve("elsewhere-D001", "put_right")
    (finding,) = calls.get(f"{count.path}/findings")["findings"]
    assert ("put_right", False) == (finding["resolved"]["how"], said in calls.client.get("/").text)


def test_a_sample_is_drawn(calls: Calls, count: Count) -> None:
    """The count tells which of how many bins it is about; what lies elsewhere is no place of it."""
    opened = calls.post("/api/stocktakes", 201, area="section:D", sample=1)
    (name,) = opened["sample"]["bins"]
    first = min(("A-1-1", "A-1-2"), key=lambda each: hashlib.sha256(f"{opened['id']}\n{each}".encode()).digest())
    assert (first, [first], "blind", 2) == (name, opened["to_look"], *(opened["sample"][n] for n in ("chosen", "of")))
    assert None is calls.get(count.path)["sample"]
    count.path = f"/api/stocktakes/{opened['id']}"
    other = "A-1-1" if name == "A-1-2" else "A-1-2"
    assert "not_in_area" == count.look(other, status=422)["errors"][0]["code"]
    report = calls.post(f"{count.path}/close")
    assert (opened["sample"], 1, [name]) == (report["sample"], report["places"], report["not_looked"])
    assert "bad_number" == calls.post("/api/stocktakes", 422, area="room", sample=3)["errors"][0]["code"]


def test_what_is_amiss_is_found_resolved_and_taken_back(calls: Calls, count: Count) -> None:
    """A thing that is gone and one in the wrong bin: one is withdrawn and stored again, the other put right."""
    count.look("A-1-1", "D001", "D003")
    count.look("A-1-2", "D004")
    assert ["missing-D002", "elsewhere-D004"] == count.findings()

    done = count.resolve("missing-D002", "withdraw", reason="Nowhere to be found")
    assert ("withdraw", "Nowhere to be found", "boss") == tuple(
        done["resolved"][name] for name in ("how", "reason", "who")
    )
    assert "withdrawn" == calls.get(f"/api/stays/{count.stays[1]['id']}")["state"]
    assert None is count.undo("missing-D002")["resolved"]
    assert "stored" == calls.get(f"/api/stays/{count.stays[1]['id']}")["state"]
    count.resolve("elsewhere-D004", "put_right")
    assert ["missing-D002", "elsewhere-D004"] == count.findings()

    report = calls.post(f"{count.path}/close")
    assert [("missing-D002", None), ("elsewhere-D004", "put_right")] == [
        (each["id"], each["resolved"] and each["resolved"]["how"]) for each in report["findings"]
    ]
    assert (["tray"], 2) == (report["not_looked"], report["looked"])
    assert (1 + 1, 4, 2) == tuple(report["sections"][0][name] for name in ("record_not_found", "counted", "agreed"))


def test_a_report_never_changes(calls: Calls, count: Count) -> None:
    """What is resolved or renamed after the end is in the findings, not in the report."""
    count.look("A-1-1", "D001", "D003", "D004")
    written = calls.post(f"{count.path}/close")
    count.resolve("missing-D002", "found_later")
    calls.client.patch(f"/api/stays/{count.stays[1]['id']}", json={"title": "Another name"})

    assert written == calls.get(f"{count.path}/report")
    assert ["found_later"] == [each["resolved"]["how"] for each in calls.get(f"{count.path}/findings")["findings"]]


@SQLITE_ONLY
@pytest.mark.parametrize("asked", [{"query_string": "format=csv"}, {"headers": {"Accept": "text/csv"}}])
def test_a_report_as_csv(calls: Calls, count: Count, asked: dict[str, Any]) -> None:
    """A row for each finding, with a header: what is amiss in words, what was done, why, by whom, when; no formula."""
    count.look("A-1-1", "D001", "D004")
    count.resolve("missing-D003", "withdraw", reason="=1+1, thrown away")
    assert "not_closed" == calls.get(f"{count.path}/report", 409)["code"]
    calls.post(f"{count.path}/close")

    answer = calls.client.get(f"{count.path}/report", **asked)
    assert "text/csv" == answer.mimetype
    rows = list(csv.DictReader(io.StringIO(answer.text)))
    names = ("kind", "code", "title", "bin", "amiss", "resolved", "done", "reason")
    assert [
        ("missing", "D002", "Thing 2", "A-1-1", "Not in A-1-1", "", "open", ""),
        ("missing", "D003", "Thing 3", "A-1-1", "Not in A-1-1", "withdraw", "thing withdrawn", "'=1+1, thrown away"),
    ] == [tuple(row[name] for name in names) for row in rows]
    assert [False, True] == [bool(row["who"] and datetime.fromisoformat(row["at"])) for row in rows]


def test_a_photo_is_read_kept_and_deleted(calls: Calls, count: Count, shop: Shop) -> None:
    """Its cards with their corners in pixels; the photo is given until it is deleted for good."""
    look = count.upload(photo("D001", "D002"), place="A-1-1")
    assert [("D001", "decoded", False), ("D002", "decoded", False)] == [
        (each["code"], each["certainty"], each["unexpected"]) for each in look["reads"]
    ]
    assert (600, 400, 4) == (look["width"], look["height"], len(look["reads"][0]["corners"]))
    count.upload(photo("D002", "D001"), place="A-1-1")
    assert ["unreadable-A-1-1"] == count.findings()  # photos prove nothing gone
    count.look("A-1-1", "D001", "D002")
    assert ["missing-D003", "missing-D004"] == count.findings()

    assert "image/jpeg" == calls.client.get(look["photo"]).mimetype
    calls.post(f"{count.path}/forget")
    assert 404 == calls.client.get(look["photo"]).status_code
    with shop.looking() as unit:
        assert 0 == unit.connection.execute(select(func.count()).select_from(tables.photos)).scalar()
    assert ["missing-D003", "missing-D004"] == count.findings()


def test_a_photo_sent_twice_is_one_look(calls: Calls, count: Count) -> None:
    """The same key gets the same answer; with another picture it is refused."""
    first = count.upload(photo("D001"), place="A-1-1", key="phone-1")
    assert first == count.upload(photo("D001"), place="A-1-1", key="phone-1")
    assert ["phone-1"] == [each["key"] for each in calls.get(f"{count.path}/looks")["looks"]]
    assert "key_reused" == count.upload(photo("D002"), 422, place="A-1-1", key="phone-1")["code"]


def test_two_people_count_at_once(calls: Calls, count: Count, shop: Shop) -> None:
    """Every look is kept once, also those that both send; and one finding is resolved once."""
    shown = [
        IncomingLook(f"look-{number}", "body", (LabelReading(card_text(code)),), place="A-1-1")
        for number, code in enumerate(["D001", "D002", "D003"] * 4)
    ]
    sent = [each for each in shown for _ in range(2)]

    def resolve(how: str) -> str:
        try:
            shop.act(how, lambda unit: resolving.resolve(unit, count.id, "missing-D004", resolving.Resolve(how=how)))
        except Refused as refusal:
            return refusal.code
        return how

    with ThreadPoolExecutor(4) as people:
        list(people.map(lambda each: shop.act("someone", lambda unit: looks.look(unit, count.id, each)), sent))
        answers = list(people.map(resolve, ["lost", "found_later"]))
    assert len(shown) == len(calls.get(f"{count.path}/looks")["looks"])
    assert 1 == answers.count("resolved")


@SQLITE_ONLY
def test_the_label_in_view_says_which_bin_it_is(count: Count) -> None:
    """Scanned first it names the bin; one that is not the bin that was said is refused, and so is no bin at all."""
    label = bin_text("A-1-1")
    assert "A-1-1" == count.look(None, texts=[label, card_text("D001")])["place"]
    assert "other_bin" == count.look("A-1-2", texts=[label], status=422)["code"]
    assert "many_bins" == count.look(None, texts=[label, bin_text("A-1-2")], status=422)["code"]
    assert "required" == count.look(None, "D001", status=422)["code"]
    assert "not_in_area" == count.look("B-1-1", "D001", status=422)["code"]


@SQLITE_ONLY
@pytest.mark.parametrize(
    ("text", "code"), [("D0146", "bad_check"), ("ORD000123", "unknown_code"), ("hello", "unknown_code")]
)
def test_a_typed_text_that_is_no_card_is_pointed_at(count: Count, text: str, code: str) -> None:
    """The one who types it can read it again."""
    problem = count.look("A-1-1", texts=["D0016", text], status=422)
    assert [{"pointer": "/texts/1", "code": code}] == problem["errors"]


@SQLITE_ONLY
@pytest.mark.parametrize("area", ["bin:Z-1-1", "rack:Z", "section:Q"])
def test_an_area_without_bins_is_refused(calls: Calls, area: str) -> None:
    """There is nothing to count there; nor is there in what is no area."""
    calls.section()
    assert "unknown_area" == calls.post("/api/stocktakes", 422, area=area)["code"]
    assert "bad_area" == calls.post("/api/stocktakes", 422, area=f"{area}:x")["code"]


@SQLITE_ONLY
def test_counts_are_listed_and_cancelled(calls: Calls, count: Count) -> None:
    """A count that is cancelled stays in the list."""
    calls.post(f"{count.path}/cancel")
    other = calls.post("/api/stocktakes", 201, area="tray", note="Just the tray")
    listed = calls.get("/api/stocktakes")["stocktakes"]
    assert [("room", "cancelled"), ("tray", "open")] == [(each["area"], each["state"]) for each in listed]
    page = calls.get("/api/stocktakes?limit=1")
    assert [other] == calls.get(f"/api/stocktakes?cursor={page['next']}")["stocktakes"]
    assert "not_allowed" == calls.post(f"{count.path}/close", 409)["code"]


@SQLITE_ONLY
def test_what_can_not_be_resolved_so_is_refused(count: Count) -> None:
    """A way that is not for this, one without a reason, a second one, and an unknown finding."""
    count.look("A-1-1", "D001", "D002", "D003")
    assert "not_for_this" == count.resolve("missing-D004", "still_here", 409)["code"]
    assert "required" == count.resolve("missing-D004", "ignore", 422)["code"]
    count.resolve("missing-D004", "ignore", reason="On loan")
    assert "resolved" == count.resolve("missing-D004", "lost", 409)["code"]
    count.resolve("missing-D001", "lost", 404)
    count.undo("missing-D001", 404)


def test_what_is_a_managers_is_so_in_a_count_too(app: Flask, shop: Shop, count: Count) -> None:
    """A helper puts right, but withdraws nothing, prints no card again, and takes back neither that nor a hold."""
    count.look("A-1-1", "D001", "D003", doubts=["D0016"])
    helper = Calls(client_of(app, shop, Role.HELPER))
    path = f"{count.path}/findings/missing-D002"
    for how, more in (("withdraw", {"reason": "Gone"}), ("reprint", {"reason": "Its card is gone"})):
        assert "forbidden" == helper.post(f"{path}/resolve", 403, how=how, **more)["code"]
    assert "found_later" == helper.post(f"{path}/resolve", how="found_later")["resolved"]["how"]
    assert None is helper.post(f"{path}/undo")["resolved"]
    count.resolve("missing-D002", "withdraw", reason="Gone")
    assert "forbidden" == helper.post(f"{path}/undo", 403)["code"]
    assert None is count.undo("missing-D002")["resolved"]
    calls = count.calls
    calls.post("/api/orders", 201, number="1", lines=[{"reference": count.stays[0]["reference"]}])
    count.resolve("suspect-D001", "hold", reason="Another thing")
    assert "forbidden" == helper.post(f"{count.path}/findings/suspect-D001/undo", 403)["code"]
    assert None is count.undo("suspect-D001")["resolved"]


def test_a_photo_is_no_look_by_hand(count: Count) -> None:
    """What a photo lacks may be hidden, whatever its sender says."""
    told = count.upload(photo("D001"), 422, place="A-1-1", via="wedge")
    assert [("/via", "not_allowed_value")] == [(each["pointer"], each["code"]) for each in told["errors"]]


def test_only_what_is_possible_is_offered(calls: Calls, count: Count) -> None:
    """No order got a thing from a slot that was never used."""
    count.look("A-1-1", "D001", "D002", "D003", "D004", "D006", doubts=["D0016"])
    offered = {each["id"]: each["ways"] for each in calls.get(f"{count.path}/findings")["findings"]}
    assert {
        "slot_free-D006": ["put_right", "ignore"],
        "suspect-D001": ["put_right", "hold", "withdraw", "ignore"],
    } == offered
