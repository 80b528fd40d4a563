"""What tests say of the fixtures in `conftest`: which database, and who calls."""

from __future__ import annotations

import pytest
from flask import Flask
from flask.testing import FlaskClient

from scanflow.shop import Shop
from scanflow.storage.access import Role

SQLITE_ONLY = pytest.mark.parametrize("database_url", ["sqlite"], indirect=True)
"""For tests of what doesn't depend on the database."""


def client_of(app: Flask, shop: Shop, role: Role) -> FlaskClient:
    """Calls with a new token of this role, named like it; the owner's own name is the owner's."""
    client = app.test_client()
    client.environ_base["HTTP_AUTHORIZATION"] = (
        f"Bearer {shop.token('boss' if role is Role.OWNER else role.value, role)}"
    )
    return client
