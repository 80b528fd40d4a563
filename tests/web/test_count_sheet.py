"""The report of a count as a PDF."""

from __future__ import annotations

import pypdfium2
import pytest
from clients import SQLITE_ONLY
from flask.testing import FlaskClient
from furnished import furnish
from shown_counts import shown, two_counts

from scanflow.shop import Shop
from scanflow.workflow.counts import stocktakes

pytestmark = SQLITE_ONLY


@pytest.mark.parametrize(
    "asked", [{"query_string": "format=pdf"}, {"headers": {"Accept": "application/pdf"}}], ids=["query", "header"]
)
def test_the_report_as_a_pdf(client: FlaskClient, shop: Shop, asked: dict[str, object]) -> None:
    """It says what the report says: area, note, places, sections, findings, and what was done."""
    furnish(shop, 25)
    _, closed = two_counts(shop)
    answer = client.get(f"/api/stocktakes/{closed.id}/report", **asked)
    assert (200, "application/pdf") == (answer.status_code, answer.mimetype)
    pages = pypdfium2.PdfDocument(answer.data)
    text = " ".join(page.get_textpage().get_text_range() for page in pages).replace("\r\n", " ")
    for told in (
        *("The stock room", "Count of section D", "After the fair", "2 of 3 places", "A-1-3"),
        *("findings What was done", "In A-1-2, not in A-1-1", "open"),
    ):
        assert told in text
    assert (612, 792) == tuple(map(round, pages[0].get_size()))  # Letter, in points


def test_its_paper(client: FlaskClient, shop: Shop) -> None:
    """A4 where that is asked for; another paper is refused, and so is the report of a count that runs."""
    furnish(shop, 25)
    running, closed = two_counts(shop)
    asked = [client.get(f"/api/stocktakes/{closed.id}/report?format=pdf&paper={each}") for each in ("a4", "napkin")]
    assert [200, 422] == [each.status_code for each in asked]
    assert (595, 842) == tuple(map(round, pypdfium2.PdfDocument(asked[0].data)[0].get_size()))
    assert 409 == client.get(f"/api/stocktakes/{running.id}/report?format=pdf").status_code


def test_a_sample_says_of_how_many_bins_it_was_drawn(client: FlaskClient, shop: Shop) -> None:
    """In its title, beside what was looked at, and in what it says of the rest."""
    furnish(shop, 25)
    count = shop.act(
        "owner", lambda unit: stocktakes.open_count(unit, stocktakes.OpenCount(area="section:D", sample=2))
    )
    assert count.sample is not None
    shown(shop, count, count.sample.bins[0], key="one")
    client.post(f"/api/stocktakes/{count.id}/close", json={})
    answer = client.get(f"/api/stocktakes/{count.id}/report?format=pdf")
    text = " ".join(page.get_textpage().get_text_range() for page in pypdfium2.PdfDocument(answer.data))
    for told in ("Count of 2 bins drawn from section D", "1 of 2 places chosen of 3 bins"):
        assert told in text.replace("\r\n", " ")
