"""The bars to try a scanner with are read by a decoder of others, and mean nothing to the shop."""

from __future__ import annotations

import re

import numpy as np
import pytest
import zxingcpp
from flask.testing import FlaskClient
from furnished import furnish

from scanflow.domain.things import Station
from scanflow.shop import Shop
from scanflow.web.pages.picking.scanner import TEST_TEXT, bars
from scanflow.workflow.picking import scans
from scanflow.workflow.picking.reading import ScanBase


def test_bars() -> None:
    """zxing-cpp reads the drawn path, quiet zones and all, as the text."""
    width, path = bars(TEST_TEXT)
    image = np.full((40, width), 255, np.uint8)
    for x, wide in re.findall(r"M(\d+) 0h(\d+)v30", path):
        image[5:35, int(x) : int(x) + int(wide)] = 0
    found = zxingcpp.read_barcodes(np.kron(image, np.ones((4, 4), np.uint8)))
    assert [(TEST_TEXT, "Code128")] == [(each.text, each.format.name) for each in found]


@pytest.mark.parametrize("station", list(Station))
def test_refused_everywhere(shop: Shop, station: Station) -> None:
    """No station accepts the test text."""
    room = furnish(shop, 4)
    assert room.round is not None
    reading = scans.StationReading(
        ScanBase(station=station, key="key", round=room.round.id, bin="A-1-1"), (TEST_TEXT,), "key"
    )
    answer = shop.act("owner", lambda unit: scans.scan(unit, reading))
    assert ("refused", "unknown_code") == (answer["verdict"], answer["reason"])


def test_page(shop: Shop, client: FlaskClient) -> None:
    """The bars' text is printed beneath them, and settings lead there."""
    assert f"<figcaption>{TEST_TEXT}</figcaption>" in client.get("/scanner").text
    assert 'href="/scanner"' in client.get("/settings").text
