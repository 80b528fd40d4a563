"""A look that is no good is taken out of its count."""

from __future__ import annotations

import pytest
from counted import Counted

from scanflow.domain import events
from scanflow.domain.counts.stocktake import Look
from scanflow.domain.things import Photo
from scanflow.workflow.counts import looks
from scanflow.workflow.counts import report as stocktake_report
from scanflow.workflow.ports import Missing, Refused

ALL = ("D001", "D002", "D003", "D004")


def picture(letter: str) -> Photo:
    return Photo(letter * 64, b"picture", b"thumb")


def test_what_it_showed_is_as_never_seen():
    """A photo of the wrong bin is dropped with the one from nearer: what they found is gone."""
    floor = Counted(*ALL)
    floor.look("A-1-1", "D001", "D002")
    before = floor.found()
    wrong = floor.look("A-1-2", "D001", "D002", unread=1)
    floor.look("A-1-2", "D001", closer=wrong.key)
    assert before != floor.found()
    looks.drop(floor.unit, floor.count.id, wrong.key)
    assert before == floor.found()
    assert ["A-1-1"] == [look.place for look in floor.unit.find(Look)]
    told = floor.unit.ledger[-1]
    assert (events.LookDropped, "A-1-2", 2) == (type(told), told.place, len(told.keys))


def test_its_photo_is_deleted_unless_another_look_has_it():
    """The same picture sent twice is kept for the look that stays."""
    floor = Counted(*ALL)
    first = floor.look("A-1-1", "D001", photo=picture("a"))
    floor.look("A-1-2", "D003", photo=picture("a"))
    other = floor.look("A-1-2", "D003", photo=picture("b"))
    looks.drop(floor.unit, floor.count.id, first.key)
    looks.drop(floor.unit, floor.count.id, other.key)
    assert ["a" * 64] == [photo.hash for photo in floor.unit.find(Photo)]


def test_a_closed_count_keeps_its_looks():
    """What the report rests on stays; a look of another count is none of this one."""
    floor = Counted(*ALL)
    count, look = floor.count, floor.look("A-1-1", "D001")
    stocktake_report.close(floor.unit, count.id)
    with pytest.raises(Refused, match="closed"):
        looks.drop(floor.unit, count.id, look.key)
    with pytest.raises(Missing):
        looks.drop(floor.unit, floor.open().id, look.key)
    assert [look.key] == [each.key for each in floor.unit.find(Look)]
