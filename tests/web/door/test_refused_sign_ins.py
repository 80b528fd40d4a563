"""What the ledger says of refused sign-ins is bounded."""

from __future__ import annotations

from datetime import datetime, timedelta

from clients import SQLITE_ONLY

from scanflow.shop import Shop
from scanflow.storage.views import ledger as ledger_views
from scanflow.web.door.refused_sign_ins import RefusedSignIns

NOON = datetime.fromisoformat("2026-03-02T12:00:00+00:00")


@SQLITE_ONLY
def test_tries_are_told_together(shop: Shop) -> None:
    """One entry for each address with its count and when it began, however many tries; then nothing more is told."""
    refused = RefusedSignIns()
    for n in range(1000):
        refused.note("192.0.2.7", NOON + timedelta(seconds=n))
    for n in range(100):
        refused.note(f"198.51.100.{n}", NOON)
    refused.job().work(shop)
    refused.tell(shop)
    with shop.looking() as unit:
        told = [each.event.data() for each in ledger_views.newest(unit.connection, limit=100)]
    assert 21 == len(told)
    assert {"address": "192.0.2.7", "tries": 1000, "since": NOON.isoformat()} == told[-1]
    assert {"address": "others", "tries": 81, "since": NOON.isoformat()} == told[0]
    assert 1100 == sum(each["tries"] for each in told)
