"""A look that is no good is taken out of its count."""

from __future__ import annotations

import pytest
from count_in_memory import CountInMemory

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
    room = CountInMemory(*ALL)
    room.look("A-1-1", "D001", "D002")
    before = room.found()
    wrong = room.look("A-1-2", "D001", "D002", unread=1)
    room.look("A-1-2", "D001", closer=wrong.key)
    assert before != room.found()
    looks.drop(room.unit, room.count.id, wrong.key)
    assert before == room.found()
    assert ["A-1-1"] == [look.place for look in room.unit.find(Look)]
    told = room.unit.ledger[-1]
    assert (events.LookDropped, "A-1-2", 2) == (type(told), told.place, len(told.keys))


def test_its_photo_is_deleted_unless_another_look_has_it():
    """The same picture sent twice is kept for the look that stays."""
    room = CountInMemory(*ALL)
    first = room.look("A-1-1", "D001", photo=picture("a"))
    room.look("A-1-2", "D003", photo=picture("a"))
    other = room.look("A-1-2", "D003", photo=picture("b"))
    looks.drop(room.unit, room.count.id, first.key)
    looks.drop(room.unit, room.count.id, other.key)
    assert ["a" * 64] == [photo.hash for photo in room.unit.find(Photo)]


def test_a_closed_count_keeps_its_looks():
    """What the report rests on stays; a look of another count is none of this one."""
    room = CountInMemory(*ALL)
    count, look = room.count, room.look("A-1-1", "D001")
    stocktake_report.close(room.unit, count.id)
    with pytest.raises(Refused, match="closed"):
        looks.drop(room.unit, count.id, look.key)
    with pytest.raises(Missing):
        looks.drop(room.unit, room.open().id, look.key)
    assert [look.key] == [each.key for each in room.unit.find(Look)]
