"""What every page needs."""

from __future__ import annotations

from clients import SQLITE_ONLY
from flask.testing import FlaskClient
from furnished import furnish

from scanflow.shop import Shop
from scanflow.vision.upright import accepted

LARGE = "9" * 20


def test_a_number_that_no_database_can_count_to(shop: Shop, client: FlaskClient) -> None:
    """A page is shown, and never an error, whatever number the address has."""
    round_ = furnish(shop, 4).round
    assert round_ is not None
    for address in ("/orders?from=", "/slots?from=", "/ledger?before=", f"/rounds/{round_.id}?stop="):
        for number in (LARGE, f"-{LARGE}", "9" * 5000, "x"):
            assert 200 == client.get(address + number).status_code, address + number


@SQLITE_ONLY
def test_fields_for_pictures_take_what_can_be_opened(shop: Shop, client: FlaskClient) -> None:
    """The formats stand in one list, which every file field for pictures names."""
    code = furnish(shop, 4).stays[0].code
    for address in ("/look", "/cards/check", "/put-away", f"/slots/{code}", "/tray"):
        html = client.get(address).text
        assert f'accept="{accepted()}"' in html or 'type="file"' not in html, address
    assert "image/jpeg" in accepted()
