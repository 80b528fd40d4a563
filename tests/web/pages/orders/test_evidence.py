"""What was done for an order is shown, printed, and saved so that a program of somebody else's can check it."""

from __future__ import annotations

import copy
import hashlib
import json
import re
from dataclasses import replace
from typing import Any

import numpy as np
import pytest
import rfc8785
from calls import Calls
from clients import client_of
from flask import Flask
from paperwork import jpeg, words
from PIL import Image
from pypdfium2 import PdfDocument

from scanflow.domain.access import Role
from scanflow.shop import Shop
from scanflow.storage import tables

LABEL = "RR123456785DE"
SECRET = "Paid by Q. Quill, 7 Quay"


@pytest.fixture
def order(shop: Shop, calls: Calls) -> str:
    """Two things picked, packed, closed, labelled and handed over, in a shop that has other things to tell too."""
    settings = {"bind_labels": True, "hand_overs": True, "zone": "Asia/Tokyo"}
    shop.act("owner", lambda unit: unit.set_settings(replace(unit.settings, **settings)))  # type: ignore[arg-type]
    calls.section()
    stays, order = calls.ordered("1001", 2)
    calls.put_away("Bell of another order")
    calls.client.put(f"/api/stays/{stays[0]['id']}/photo", data=jpeg("#c02040"), content_type="image/jpeg")
    calls.client.patch(f"/api/stays/{stays[0]['id']}", json={"notes": SECRET})
    walk = calls.post("/api/rounds", 201, orders=[order["id"]])
    for stay in stays:
        calls.scan("bin", stay["code"], round=walk["id"])
    parcel = calls.post("/api/parcels", 201, orders=[order["id"]])
    for stay in stays:
        calls.scan("table", stay["code"])
    assert 303 == calls.client.post("/hand-over", data={"text": LABEL, "parcel": parcel["id"]}).status_code
    assert "accepted" == calls.post("/api/hand-over", key="leaves", text=LABEL)["verdict"]
    calls.put_away("Saddle of another order")
    return str(order["id"])


def saved(calls: Calls, order: str) -> dict[str, Any]:
    answer = calls.client.get(f"/orders/{order}/evidence.json")
    assert (200, "application/json") == (answer.status_code, answer.mimetype)
    file = re.fullmatch(r'attachment; filename="evidence-\d+-\d+\.json"', answer.headers["Content-Disposition"])
    assert file is not None
    told: dict[str, Any] = json.loads(answer.data)
    return told


def wrong(file: dict[str, Any]) -> int | None:
    """The number of the first entry whose hash is not what the published rule gives; nothing of the project in it."""
    previous = file["previous"]
    for entry in file["entries"]:
        bare = {name: value for name, value in entry.items() if name != "hash"}
        if hashlib.sha256(previous.encode() + rfc8785.dumps(bare)).hexdigest() != entry["hash"]:
            return int(entry["seq"])
        previous = entry["hash"]
    return None


def test_the_saved_entries_are_checked_by_another_library(calls: Calls, order: str) -> None:
    """All entries without a gap, from the order's first to its last, and each hash is what RFC 8785 and SHA-256 give.

    One changed letter is found, wherever it stands: in what an entry tells, in who did it, when, or in a hash.
    """
    file = saved(calls, order)
    numbers = [entry["seq"] for entry in file["entries"]]
    assert list(range(numbers[0], numbers[-1] + 1)) == numbers
    assert (numbers[0], numbers[-1]) == (file["about"][0], file["about"][-1])
    assert ("1001", "order received", "hand-over") == (
        file["order"],
        file["entries"][0]["kind"],
        file["entries"][-1]["kind"],
    )
    assert None is wrong(file)
    for place in range(len(numbers)):
        for change in (_told, _actor, _hour, _hash):
            changed = copy.deepcopy(file)
            change(changed["entries"][place])
            assert numbers[place] == wrong(changed)


def _told(entry: dict[str, Any]) -> None:
    entry["data"] |= {"code": "D009"}


def _actor(entry: dict[str, Any]) -> None:
    entry["actor"] = entry["actor"].replace("o", "0") + ("" if "o" in entry["actor"] else "x")


def _hour(entry: dict[str, Any]) -> None:
    entry["at"] = entry["at"][:-7] + ("1" if entry["at"][-7] != "1" else "2") + entry["at"][-6:]


def _hash(entry: dict[str, Any]) -> None:
    entry["hash"] = ("1" if entry["hash"][0] != "1" else "2") + entry["hash"][1:]


def test_a_file_of_the_very_first_entries(calls: Calls, shop: Shop, order: str) -> None:
    """The hash before the first entry of the ledger is empty, and a file that begins later brings the one before."""
    file = saved(calls, order)
    assert 64 == len(file["previous"])
    everything = calls.get("/api/ledger?limit=500")["entries"]
    assert None is wrong({"previous": "", "entries": everything})
    assert everything[file["about"][0] - 2]["hash"] == file["previous"]


def test_a_tampered_ledger_is_found_by_the_file(calls: Calls, shop: Shop, order: str) -> None:
    """A letter that somebody changed in the database itself is found at its entry by the saved file alone."""
    about = saved(calls, order)["about"]
    row = tables.ledger.c.seq == about[1]
    with shop.database.engine.begin() as connection:
        for name in _guards(connection):
            connection.exec_driver_sql(name)
        connection.execute(tables.ledger.update().where(row).values(actor="someone"))
    assert about[1] == wrong(saved(calls, order))


def _guards(connection: Any) -> list[str]:
    """What takes off the triggers that keep the ledger as it is."""
    if connection.dialect.name == "sqlite":
        names = connection.exec_driver_sql("SELECT name FROM sqlite_master WHERE type = 'trigger'").scalars().all()
        return [f"DROP TRIGGER {name}" for name in names]
    return ["ALTER TABLE ledger DISABLE TRIGGER USER"]


def shown(calls: Calls, order: str) -> list[str]:
    """The page's words and the PDF's."""
    answer = calls.client.get(f"/orders/{order}/evidence.pdf?paper=a4")
    assert (200, "application/pdf") == (answer.status_code, answer.mimetype)
    paper = " ".join(words(page) for page in PdfDocument(answer.data))
    return [re.sub("<[^>]*>", "", calls.client.get(f"/orders/{order}/evidence").text), paper]


def test_page_and_paper_tell_what_was_done(calls: Calls, order: str) -> None:
    """Each thing and what was done with it, by whom, in the shop's zone; every entry about it with its hash; how to
    check them. No notes of the owner.
    """
    file = saved(calls, order)
    entries = {entry["seq"]: entry for entry in file["entries"]}
    for told in shown(calls, order):
        for title in ("Thing 0 of 1001", "Thing 1 of 1001"):
            assert title in told
        done = re.findall(
            r"(Received|Picked|Packed|Closed|Label …85DE bound|Handed over) ?"
            r"\d{4}-\d\d-\d\d \d\d:\d\d:\d\d\+09:00 by boss, entry (\d+)",
            told,
        )
        kinds = {name: entries[int(number)]["kind"] for name, number in done}
        scans = {"Picked": "scan", "Packed": "scan", "Received": "order received", "Closed": "parcel closed"}
        assert scans | {"Label …85DE bound": "label bound", "Handed over": "hand-over"} == kinds
        assert 2 == sum(name == "Packed" for name, _ in done)
        assert [True] * len(file["about"]) == [entries[seq]["hash"] in told for seq in file["about"]]
        assert (True, True) == (file["previous"] in told, "RFC 8785" in told)
        assert (False, False) == (SECRET in told, "another order" in told)


def test_the_paper_shows_the_thing_s_picture(calls: Calls, order: str) -> None:
    """One page for a small order, and on it, drawn to pixels, the colour of the picture."""
    pages = PdfDocument(calls.client.get(f"/orders/{order}/evidence.pdf?paper=letter").data)
    assert 1 == len(pages)
    drawn: Image.Image = pages[0].render(scale=1).to_pil().convert("RGB")
    away = np.abs(np.asarray(drawn).astype(int) - (0xC0, 0x20, 0x40)).sum(axis=2)
    assert (away < 24).sum() > 40 * 30


def test_what_was_taken_back_was_not_done(calls: Calls, order: str) -> None:
    """An order that waits has no deeds yet; a pick that was undone is none, though its entries stand there."""
    stays, waits = calls.ordered("2002")
    walk = calls.post("/api/rounds", 201, orders=[waits["id"]])
    calls.scan("bin", stays[0]["code"], round=walk["id"], key="pick-2002")
    picked = shown(calls, waits["id"])
    calls.post("/api/scans/pick-2002/undo")
    undone = shown(calls, waits["id"])
    assert [True, True] == ["Picked 20" in each for each in picked]
    assert [False, False] == ["Picked 20" in each for each in undone]
    assert [True, True] == ["undone" in each for each in undone]


def test_only_the_owner_gets_it(app: Flask, shop: Shop, calls: Calls, order: str) -> None:
    """The file tells of other orders and sign-ins: a helper neither sees the link nor gets page, paper and file."""
    helper = client_of(app, shop, Role.HELPER)
    addresses = [f"/orders/{order}/evidence{kind}" for kind in ("", ".pdf", ".json")]
    assert [403, 403, 403] == [helper.get(address).status_code for address in addresses]
    links = [f'href="/orders/{order}/evidence"' in each.get(f"/orders/{order}").text for each in (helper, calls.client)]
    assert [False, True] == links
    assert 404 == calls.client.get("/orders/none/evidence").status_code


def test_a_long_account_comes_whole(calls: Calls, order: str, monkeypatch: pytest.MonkeyPatch) -> None:
    """Read in many parts it is the same file."""
    whole = saved(calls, order)
    monkeypatch.setattr("scanflow.web.pages.orders.evidence.CHUNK", 2)
    assert whole == saved(calls, order)
