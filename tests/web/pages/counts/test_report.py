"""The report of a count on its page."""

from __future__ import annotations

import re

from clients import SQLITE_ONLY
from flask.testing import FlaskClient
from furnished import furnish
from shown_counts import opened, two_counts

from scanflow.domain.counts.stocktake import Look
from scanflow.shop import Shop
from scanflow.workflow.counts import resolving
from scanflow.workflow.counts.resolving import Resolve

pytestmark = SQLITE_ONLY


def text_of(html: str) -> str:
    return re.sub(r"\s+", " ", re.sub(r"<[^>]*>", " ", html))


def test_the_report(client: FlaskClient, shop: Shop) -> None:
    """What was looked at and what was not, by section, what was amiss; PDF and CSV are a link each."""
    furnish(shop, 25)
    _, closed = two_counts(shop)
    html = client.get(f"/counts/{closed.id}/report").text
    text = text_of(html)
    for told in ("After the fair", "2 of 3 places, 3 looks", "Not looked at A-1-3", "In A-1-2, not in A-1-1", "open"):
        assert told in text
    links = [link.replace("&amp;", "&") for link in re.findall(r'href="(/api/stocktakes/[^"]+)"', html)]
    assert ["application/pdf", "text/csv"] == [client.get(link).mimetype for link in links]


def test_what_is_left_is_next(client: FlaskClient, shop: Shop) -> None:
    """Until all is settled the findings are next; the report stays as it was written."""
    furnish(shop, 25)
    _, closed = two_counts(shop)
    address = f"/counts/{closed.id}/report"
    before = text_of(client.get(address).text)
    assert (found := re.search(r"Put (\d+) findings right", before)) is not None
    shop.act("owner", lambda unit: resolving.resolve(unit, closed.id, "unknown-Q0771", Resolve(how="put_right")))
    after = text_of(client.get(address).text)
    assert f"Put {int(found[1]) - 1} findings right" in after
    assert before.partition("By section")[2] == after.partition("By section")[2]


def test_a_running_count_has_none(client: FlaskClient, shop: Shop) -> None:
    """Its page is the count itself; an unknown one is not there."""
    furnish(shop, 4)
    count = opened(shop)
    assert f"/counts/{count.id}" == client.get(f"/counts/{count.id}/report").location
    assert 404 == client.get("/counts/none/report").status_code


def test_photos_are_deleted(client: FlaskClient, shop: Shop) -> None:
    """For good, from the page of the report; the offer goes with them."""
    furnish(shop, 25)
    _, closed = two_counts(shop)
    address = f"/counts/{closed.id}/report"
    assert "Delete 3 photos for good" in client.get(address).text
    assert address == client.post(f"/counts/{closed.id}/forget").location
    with shop.looking() as unit:
        assert {None} == {look.photo for look in unit.find(Look, stocktake=closed.id)}
    assert "Delete its photos" not in client.get(address).text
