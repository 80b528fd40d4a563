"""The rehearsed year in short: honest days go through, slips lead to nothing that was told, and a lost guard shows."""

from __future__ import annotations

import ast
from collections.abc import Iterator
from pathlib import Path

import pytest
from rehearsal import life, server, service, slips

HERE = Path(__file__).parent / "bench" / "rehearsal"
OF_THE_SERVICE = {"server.py"}
"""What starts the service, and may take a guard out of it."""


@pytest.fixture(scope="module")
def empty() -> Iterator[service.Empty]:
    with service.empty_shop() as shop:
        yield shop


def test_the_world_knows_nothing_of_the_rules():
    """Beside the server nothing of it imports the service, and of labels it knows the texts of cards alone."""
    imported = {
        (path.name, node.module)
        for path in HERE.glob("*.py")
        for node in ast.walk(ast.parse(path.read_text(encoding="utf-8")))
        if isinstance(node, ast.ImportFrom) and (node.module or "").split(".")[0] in ("scanflow", "labels")
    }
    assert {"labels"} == {module for name, module in imported if name not in OF_THE_SERVICE}


def test_each_guard_has_its_slip():
    """A kind of slip shows it missing, or words say what stands behind it; each kind that is named anywhere exists."""
    assert set(server.guards()) == {*slips.SHOWS, *slips.BEHIND}
    named = {*slips.SHOWS.values(), *slips.PROOFS, *slips.WITH, *slips.WAYS, *slips.HARMLESS}
    assert set() == named - set(slips.KINDS)


def test_honest_days_are_let_through(empty):
    """Nothing right is refused or held while nobody slips, and in the end all has ended and stands where it should."""
    found = life.rehearse(empty, seed=7, chances={}, days=6)
    assert found["boxes"] > 5
    assert sum(found["rightly"].values()) > 0  # not paid yet, or called off late
    assert {} == {kind: hits for kind, hits in found["refused"].items() if hits}
    assert ({}, {}, []) == (found["held"], found["calls_refused"], found["amiss"])
    assert (0, []) == (found["wrong"], found["escapes"])


def test_two_work_at_the_same_time(empty):
    """An owner and a helper, at two tables and on two rounds, each call sent twice at once: nothing goes otherwise."""
    found = life.rehearse(empty, seed=4, chances={}, days=2, two=True)
    assert found["boxes"] > 2
    assert {} == {kind: hits for kind, hits in found["refused"].items() if hits}
    assert ([], 0, []) == (found["amiss"], found["wrong"], found["escapes"])


def test_labels_and_cards_of_another_system(empty):
    """Shipping labels are bound, cards have no check digit: honest people get on as ever."""
    found = life.rehearse(empty, seed=5, chances={}, days=2)
    assert found["boxes"] > 2
    assert {} == {kind: hits for kind, hits in found["refused"].items() if hits}
    assert ({}, [], 0) == (found["calls_refused"], found["amiss"], found["wrong"])


def test_yesterdays_backup_is_put_back(empty):
    """At noon the account is that of the evening before: nothing is acted against what was told since."""
    found = life.rehearse(empty, seed=4, chances={"yesterday's backup restored": 1.0}, days=1)
    assert {"yesterday's backup restored"} == {slip["kind"] for slip in found["slips"]}
    assert [] == found["escapes"]


def test_nothing_told_is_let_go(empty):
    """Days full of slips of all kinds: some things leave wrong that no scan shows, none against what was told."""
    found = life.rehearse(empty, seed=1, chances=slips.mixed(0.3), days=5)
    assert len(found["slips"]) > 20
    assert [] == found["escapes"]


def test_files_of_another_channel_or_taken_amiss(empty):
    """Loaded under the wrong channel, a part as a whole, what is not paid as paid: nothing told is let go."""
    kinds = {"file loaded under the wrong channel", "status explained wrongly", "part file loaded as whole"}
    found = life.rehearse(empty, seed=9, chances=dict.fromkeys(sorted(kinds), 0.9), days=4)
    assert kinds == {slip["kind"] for slip in found["slips"]}
    assert [] == found["escapes"]


def test_a_guard_taken_out_is_noticed(empty):
    """Without the door's look at holds, a box leaves whose thing was read on a shelf: the rehearsal tells of it."""
    found = life.rehearse(empty, 4, slips.alone("packed thing read elsewhere"), days=4, without="hand-over: held")
    assert {"missing"} == {each["how"] for each in found["escapes"]}
    assert all("read at a shelf" in each["told"] for each in found["escapes"])
