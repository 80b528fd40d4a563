"""Which entries of the ledger mean that something was done for an order, and still stands."""

from __future__ import annotations

from dataclasses import replace
from datetime import UTC, datetime, timedelta

import pytest

from scanflow.domain import events
from scanflow.domain.life import LineState, ParcelState
from scanflow.domain.orders.evidence import AccountEntry, done_to, done_with, parcels_of
from scanflow.domain.things import Line, Parcel

NOON = datetime(2026, 3, 2, 12, tzinfo=UTC)
LINE = Line("l1", "o1", 1, "D001-01X", parcel="p1", state=LineState.PACKED)
PARCEL = Parcel("p1", "main", ("o1",), NOON, ParcelState.HANDED_OVER)


def account(*told: events.Told) -> list[AccountEntry]:
    return [AccountEntry(n, NOON + timedelta(minutes=n), "anna", each, "") for n, each in enumerate(told, 1)]


def scanned(station: str, *, line: str = "l1", verdict: str = "accepted", changed: bool = True, out: bool = False):
    return events.Scanned(
        station=station,
        spot="s",
        key="k",
        text=(),
        via="wedge",
        client_at=None,
        take_out=out,
        verdict=verdict,
        reason=None,
        changed=changed,
        code="D001",
        order_number="1",
        line=line,
        line_state="picked",
        parcel=None,
        parcel_state=None,
        released=(),
    )


PICK, PACK = scanned("bin"), scanned("table")
OTHERS = (
    scanned("bin", line="l2"),
    scanned("bin", verdict="refused"),
    scanned("bin", changed=False),
    scanned("table", out=True),
    scanned("shelf"),
)


@pytest.mark.parametrize(
    ("state", "deeds"),
    [
        (LineState.WAITING, []),
        (LineState.SHORT, []),
        (LineState.CANCELLED, []),
        (LineState.PICKED, [("Picked", 3)]),
        (LineState.PACKED, [("Picked", 3), ("Packed", 4)]),
        (LineState.RELEASED, [("Picked", 3), ("Packed", 4)]),
        (LineState.RETURNED, [("Picked", 3), ("Packed", 4)]),
    ],
)
def test_a_thing_was_picked_and_packed_by_its_last_scans(state, deeds):
    """As far as its line stands there still; refused and repeated scans, those of others and a take-out are none."""
    told = account(PICK, PACK, PICK, PACK, *OTHERS)
    assert deeds == [(deed.name, deed.entry.seq) for deed in done_with(replace(LINE, state=state), told)]


def test_a_shop_without_scans_at_the_bin_picks_nothing():
    """What was only packed was only packed."""
    assert ["Packed"] == [deed.name for deed in done_with(LINE, account(PACK))]


def left(parcel: str, verdict: str = "accepted") -> events.HandedOver:
    told = {"key": "k", "by": "slip", "reason": None, "changed": True, "order_number": "1", "line": None}
    return events.HandedOver(**told, verdict=verdict, parcel=parcel, parcel_state=None)


CLOSED = events.ParcelClosed(parcel="p1", orders=("o1",), released=())
BOUND = events.LabelBound(parcel="p1", label="a" * 64, ends="85DE")


@pytest.mark.parametrize(
    ("state", "gone", "deeds"),
    [
        (ParcelState.OPEN, left("p1"), []),
        (ParcelState.CLOSED, left("p1"), [("Closed", 2), ("Label …85DE bound", 3)]),
        (ParcelState.HANDED_OVER, left("p1"), [("Closed", 2), ("Label …85DE bound", 3), ("Handed over", 4)]),
        (ParcelState.HANDED_OVER, left("p1", "refused"), [("Closed", 2), ("Label …85DE bound", 3)]),
        (ParcelState.HANDED_OVER, left("p2"), [("Closed", 2), ("Label …85DE bound", 3)]),
        (
            ParcelState.HANDED_OVER,
            events.CountedAsGone(parcels=("p0", "p1")),
            [("Closed", 2), ("Label …85DE bound", 3), ("Handed over", 4)],
        ),
    ],
)
def test_a_parcel_was_closed_labelled_and_handed_over(state, gone, deeds):
    """By its last entries, while it is closed; of a label that it bears no more nothing is told."""
    told = account(CLOSED, CLOSED, BOUND, gone)
    found = done_to(replace(PARCEL, state=state), ["85DE"], told)
    assert deeds == [(deed.name, deed.entry.seq) for deed in found]
    assert "Label" not in "".join(deed.name for deed in done_to(replace(PARCEL, state=state), [], told))


def test_the_parcels_of_an_order_are_those_opened_for_it_or_joined():
    """A refused scan at another order's box makes that box none of its own, nor does one that it was parted from."""
    told = account(
        events.ParcelOpened(parcel="p2", table="main", orders=("o1", "o2")),
        events.ParcelOpened(parcel="p3", table="main", orders=("o2",)),
        events.ParcelJoined(parcel="p4", order="o1"),
        events.ParcelJoined(parcel="p5", order="o2"),
        events.ParcelParted(parcel="p4", order="o1"),
        replace(scanned("table", verdict="refused"), parcel="p6"),
    )
    assert {"p1", "p2"} == parcels_of("o1", [LINE], told)
