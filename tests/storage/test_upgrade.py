"""Furnished shops of every revision of the tables are opened, brought up to date, and used, on both databases."""

from __future__ import annotations

import json
import shutil
from collections.abc import Iterator
from dataclasses import dataclass, field
from datetime import datetime
from pathlib import Path
from typing import Any

import pytest
from alembic.migration import MigrationContext
from alembic.operations import Operations
from alembic.script import ScriptDirectory
from busy_shop import Clock
from calls import Calls
from clients import new_token
from every_page import addresses
from furnished import Furnished
from old_shops import KINDS, OldShop, kept, load
from schema import described, dropped
from sqlalchemy import Column, Connection, String, inspect, text
from sqlalchemy.exc import IntegrityError

from labels.slot_code import card_text
from scanflow.domain import events
from scanflow.domain.access import Role
from scanflow.domain.life import RoundState
from scanflow.domain.things import Order, Round, Stay
from scanflow.shop import Shop
from scanflow.storage import database as module
from scanflow.storage.database import REVISION, Database
from scanflow.storage.engine import connect
from scanflow.storage.ledger import entry_of, first_break
from scanflow.storage.trust.replay import NOW
from scanflow.vision.workers import Readers
from scanflow.web import create_app

OF_A_LINE = ("state", "hold", "why")


@dataclass(frozen=True, slots=True)
class Content:
    """What a shop's tables hold: how many rows, all stays and entries of the ledger, and of each line what stands."""

    counts: dict[str, int]
    stays: list[dict[str, Any]]
    ledger: list[dict[str, Any]]
    lines: dict[str, dict[str, Any]]

    @classmethod
    def of(cls, connection: Connection) -> Content:
        def rows(table: str, order: str) -> list[dict[str, Any]]:
            return [dict(row) for row in connection.execute(text(f"SELECT * FROM {table} ORDER BY {order}")).mappings()]

        names = inspect(connection).get_table_names()
        return cls(
            {name: connection.execute(text(f"SELECT count(*) FROM {name}")).scalar_one() for name in names},
            rows("stays", "n"),
            rows("ledger", "seq"),
            {row["id"]: {name: row[name] for name in OF_A_LINE if name in row} for row in rows("lines", "n")},
        )


@dataclass(slots=True)
class Upgraded:
    """An old shop that was opened by the code of today.

    `before` and `after` are what it held around that, `schema` what its tables became, `lines` its lines by the API.
    """

    old: OldShop
    shop: Shop
    calls: Calls
    before: Content
    after: Content
    schema: dict[str, Any]
    lines: dict[str, Any] = field(default_factory=dict)

    def __post_init__(self) -> None:
        self.lines = {line["id"]: line for order in self.orders() for line in order["lines"]}

    def get(self, path: str) -> Any:
        return self.calls.get(path)

    def order(self, number: str) -> Any:
        return next(each for each in self.orders() if each["number"] == number)

    def orders(self) -> list[Any]:
        found: list[Any] = self.get("/api/orders?limit=500")["orders"]
        return found

    def state(self, number: str) -> list[str]:
        return [line["state"] for line in self.order(number)["lines"]]

    def round(self) -> Round:
        """The one that was under way."""
        with self.shop.looking() as unit:
            (found,) = unit.find(Round, state=RoundState.OPEN)
        return found


def content(url: str) -> tuple[Content, dict[str, Any]]:
    engine = connect(url)
    with engine.connect() as connection:
        found = Content.of(connection), described(connection)
    engine.dispose()
    return found


def loaded(old: OldShop, request: pytest.FixtureRequest, folder: Path) -> str:
    """The URL of a database of its own with an old shop in it."""
    if old.kind == "sqlite":
        url = f"sqlite:///{folder / 'shop.db'}"
    else:
        url = dropped(str(request.getfixturevalue("new_postgresql")()))
    load(old.path, url)
    return url


@pytest.fixture(scope="module", params=kept(), ids=str)
def upgraded(
    request: pytest.FixtureRequest, tmp_path_factory: pytest.TempPathFactory, readers: Readers
) -> Iterator[Upgraded]:
    old = request.param
    url = loaded(old, request, tmp_path_factory.mktemp(str(old)))
    before, _ = content(url)
    shop = Shop(Database(url), readers, Clock(datetime.fromisoformat(before.ledger[-1]["at"])))
    after, schema = content(url)
    client = create_app(shop).test_client()
    client.environ_base["HTTP_AUTHORIZATION"] = f"Bearer {new_token(shop, 'upgrader', Role.OWNER)}"
    yield Upgraded(old, shop, Calls(client), before, after, schema)
    shop.database.close()


def test_every_revision_has_its_shops() -> None:
    """No revision is without a furnished shop for each database: `python tests/keep_old_shop.py` makes the newest's."""
    folder = Path(module.__file__).parent / "migrations"
    revisions = {script.revision for script in ScriptDirectory(str(folder)).walk_revisions()}
    assert REVISION in revisions
    assert {(revision, kind) for revision in revisions for kind in KINDS} == {
        (each.revision, each.kind) for each in kept()
    }


def test_every_entry_of_the_ledger_is_an_event(upgraded: Upgraded) -> None:
    """Each is of a type that is known, and says all that it said when it was recorded."""
    for row in upgraded.before.ledger:
        kept = {name: value for name, value in json.loads(row["data"]).items() if name != NOW}
        event = events.read(row["kind"], kept)
        assert isinstance(event, events.Event), row
        assert kept == {name: value for name, value in event.data().items() if name in kept}


def test_nothing_is_lost(upgraded: Upgraded) -> None:
    """Each table has its rows, each stay and each entry of the ledger is what it was, and the chain is whole. Entries
    that tell of every row come after them.
    """
    before, after = upgraded.before, upgraded.after
    old, new = after.ledger[: len(before.ledger)], after.ledger[len(before.ledger) :]
    here = {name: count for name, count in before.counts.items() if name != "learned"}  # those are listings now
    assert here == {name: after.counts.get(name) for name in here} | {"ledger": len(old)}
    kept = [{name: now[name] for name in was} for was, now in zip(before.stays, after.stays, strict=True)]
    assert (before.stays, before.ledger) == (kept, old)
    told = set() if upgraded.old.revision == REVISION else {"baseline"}
    assert told == {entry["kind"] for entry in new}
    with upgraded.shop.looking() as unit:
        entries = unit.connection.execute(text("SELECT * FROM ledger ORDER BY seq")).all()
    assert None is first_break(map(entry_of, entries))


def test_each_line_stands_as_it_did(upgraded: Upgraded) -> None:
    """By the API every line has the state, the hold and its words that it had."""
    lines, wanted = upgraded.lines, upgraded.before.lines
    assert wanted == {name: {key: lines[name][key] for key in wanted[name]} for name in wanted}


@pytest.fixture(scope="module")
def new_schemas(request: pytest.FixtureRequest, tmp_path_factory: pytest.TempPathFactory) -> dict[str, Any]:
    """What a new database of each kind is like."""
    path = tmp_path_factory.mktemp("new") / "shop.db"
    shutil.copy(request.getfixturevalue("sqlite_template"), path)
    urls = (f"sqlite:///{path}", str(request.getfixturevalue("new_postgresql")()))
    return {kind: content(url)[1] for kind, url in zip(KINDS, urls, strict=True)}


def test_the_tables_are_those_of_a_new_shop(upgraded: Upgraded, new_schemas: dict[str, Any]) -> None:
    """Columns, links, indexes and guards are the same, whichever revision the shop began with."""
    assert new_schemas[upgraded.old.kind] == upgraded.schema


def test_every_page_answers(upgraded: Upgraded) -> None:
    """No page fails over what an older revision wrote; those that show nothing of it are asked for on SQLite alone."""
    with upgraded.shop.looking() as unit:
        stays, orders = list(unit.find(Stay, code="D001")), list(unit.find(Order, number="B-05"))
    room = Furnished(stays, orders, upgraded.round())
    general = addresses(upgraded.shop, room) if upgraded.old.kind == "sqlite" else ()
    pages = [*general, *each_thing(upgraded)]
    failed = {}
    for address in pages:
        status = upgraded.calls.client.get(address, follow_redirects=True).status_code
        if status >= 500:
            failed[address] = status
    assert {} == failed


def each_thing(upgraded: Upgraded) -> Iterator[str]:
    """Pages and calls about what the old shop holds, one by one."""
    for order in upgraded.orders():
        yield f"/orders/{order['id']}"
        yield from (f"/lines/{line['id']}" for line in order["lines"] if line["hold"])
    yield from (f"/stays/{stay['id']}" for stay in upgraded.before.stays[-8:])
    yield from (f"/slots/{code}" for code in ("D002", "L001", "S001", "W001", "W015"))
    yield from (f"/ledger?before={seq}" for seq in range(50, upgraded.before.counts["ledger"] + 50, 50))
    yield from ("/api/ledger?limit=500", "/api/slots?limit=500", "/api/stocktakes", "/api/health")
    for count in upgraded.get("/api/stocktakes")["stocktakes"]:
        path = f"/stocktakes/{count['id']}"
        yield from (f"/counts/{count['id']}", f"/counts/{count['id']}/findings", f"/counts/{count['id']}/report")
        yield from (f"/api{path}", f"/api{path}/looks", f"/api{path}/findings", f"/api{path}/report")
        yield from (f"/api{path}/report?format=csv", f"/api{path}/report?format=pdf")


def test_the_day_goes_on(upgraded: Upgraded) -> None:
    """What was begun is picked, packed and closed; cards come back; what was held is settled; a wrong card refused."""
    calls, walk = upgraded.calls, upgraded.round().id
    calls.post("/api/scans/pick-L002/undo")
    assert (["waiting"], "accepted") == (upgraded.state("B-05"), calls.scan("bin", "L002", round=walk)["verdict"])
    assert "picked" == calls.scan("bin", "L003", round=walk)["line_state"]
    calls.post(f"/api/lines/{upgraded.order('B-07')['lines'][0]['id']}/found")
    assert ["waiting"] == upgraded.state("B-07")

    assert ("refused", "other_order") == tuple(calls.scan("table", "L003")[name] for name in ("verdict", "reason"))
    assert ["S002", "S003"] == sorted(calls.scan("table", "S003")["released"])
    aside = calls.post("/api/parcels", 201, orders=[upgraded.order("B-04")["id"]])
    assert "closed" == calls.post(f"/api/parcels/{aside['id']}/close", partial=True)["state"]
    assert ["released", "picked"] == upgraded.state("B-04")

    assert "accepted" == calls.scan("tray", "S002")["verdict"]
    stay = calls.post("/api/stays", 201, title="Saddle with rivets", section="S")
    assert ("S002", 2) == (stay["code"], stay["turn"])
    held = upgraded.order("B-32")["lines"][1]
    assert ("not_in_file", None) == (held["hold"], calls.post(f"/api/lines/{held['id']}/settle")["hold"])
    assert "accepted" == calls.scan("table", "L006", table="second", take_out=True)["verdict"]


def test_counts_go_on(upgraded: Upgraded) -> None:
    """What a count found is put right and taken back, also what was put right before; then it closes with a report."""
    begun = "stocktakes" in upgraded.before.counts
    if not begun:
        upgraded.calls.post("/api/stocktakes", 201, area="section:L")
    counts = {each["area"]: f"/api/stocktakes/{each['id']}" for each in upgraded.get("/api/stocktakes")["stocktakes"]}
    runs = counts["section:L"]
    place = upgraded.get("/api/slots?section=L&limit=1")["slots"][0]["bin"]
    texts = [card_text(code) for code in ("L003", "L005")]
    upgraded.calls.post(f"{runs}/looks", key="upgraded", place=place, texts=texts)
    resolve_and_undo(upgraded, runs, "missing-L010")
    if begun:
        resolve_and_undo(upgraded, counts["section:S"], "missing-S008")
        undo(upgraded, runs, "missing-L008", "missing-L009")
        undo(upgraded, counts["section:S"], "elsewhere-S012")
    findings = [each["id"] for each in upgraded.get(f"{runs}/findings")["findings"]]
    assert findings == [each["id"] for each in upgraded.calls.post(f"{runs}/close")["findings"]]


def resolve_and_undo(upgraded: Upgraded, count: str, finding: str) -> None:
    path = f"{count}/findings/{finding}"
    assert "found_later" == upgraded.calls.post(f"{path}/resolve", how="found_later")["resolved"]["how"]
    assert None is upgraded.calls.post(f"{path}/undo")["resolved"]


def undo(upgraded: Upgraded, count: str, *findings: str) -> None:
    """Take back what was put right before the upgrade, or be told why not: less may have been kept of before then."""
    for finding in findings:
        answer = upgraded.calls.client.post(f"{count}/findings/{finding}/undo")
        told = (answer.status_code, answer.get_json()["code"])
        assert told in ((200, finding.partition("-")[2]), (409, "changed_since"))


@pytest.mark.parametrize("table", ["orders", "parcels", "lines"])
def test_a_table_that_rows_refer_to_is_not_made_anew(table: str, tmp_path: Path) -> None:
    """A migration that makes it anew, as batches do on SQLite, fails on a furnished shop; a filled-in default works."""
    url = f"sqlite:///{tmp_path / 'shop.db'}"
    load([each for each in kept() if each.kind == "sqlite"][-1].path, url)
    engine = connect(url)
    with engine.connect() as connection:
        op = Operations(MigrationContext.configure(connection))
        with connection.begin() as tried:
            op.add_column(table, Column("colour", String(8)))
            op.execute(f"UPDATE {table} SET colour = ''")
            with (
                pytest.raises(IntegrityError, match="FOREIGN KEY constraint failed"),
                op.batch_alter_table(table) as new,
            ):
                new.alter_column("colour", existing_type=String(8), nullable=False)
            tried.rollback()
        with connection.begin():
            op.add_column(table, Column("colour", String(8), nullable=False, server_default=text("''")))
        assert {""} == set(connection.execute(text(f"SELECT colour FROM {table}")).scalars())
    engine.dispose()
