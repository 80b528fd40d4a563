"""A first view weighs little: what a phone loads that has seen nothing of the service."""

from __future__ import annotations

import pytest
from first_view_bench import MOST_BYTES, first_view
from furnished import furnish
from live_shop import Live
from paperwork import jpeg
from playwright.sync_api import Browser

from scanflow.domain.access import Role, Visitor
from scanflow.vision import photographs
from scanflow.workflow.stock import photos


@pytest.mark.parametrize("name", ["today", "round", "table"])
def test_first_view(live: Live, browser: Browser, name: str) -> None:
    """Document, styles, scripts and pictures together stay below 150 kB; the scripts' time is a bench's."""
    room = furnish(live.shop, 25)
    picture = photographs.photo(live.shop.readers, jpeg())
    for stay in room.stays:
        live.shop.act("owner", lambda unit, name=stay.id: photos.keep(unit, name, picture))
    owner = Visitor("owner", Role.OWNER)
    secret = live.shop.act("owner", lambda unit: unit.access.make_session(owner))
    paths = {"today": "/", "round": f"/rounds/{room.round.id if room.round else ''}", "table": "/table"}
    view = first_view(browser, live.address + paths[name], secret)
    assert view.requests > 5  # styles and scripts were counted
    assert MOST_BYTES > view.bytes
