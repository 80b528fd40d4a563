"""What tests say of the fixtures in `conftest`: which database, and who calls."""

from __future__ import annotations

import re
from typing import Any

import pytest
from flask import Flask
from flask.testing import FlaskClient
from werkzeug.test import TestResponse

from scanflow.domain.access import Role
from scanflow.shop import Shop
from scanflow.workflow import access

SQLITE_ONLY = pytest.mark.parametrize("database_url", ["sqlite"], indirect=True)
"""For tests of what doesn't depend on the database."""


def new_token(shop: Shop, name: str, role: Role) -> str:
    """The secret of a new access token."""
    return shop.act(name, lambda unit: access.make_token(unit, name, role))


def setup_link(shop: Shop) -> str:
    """The secret of a new link that sets the owner's password."""
    return shop.act("scanflow", access.setup_link)


BLOCKS = re.compile(
    r" ?(</?(?:html|head|body|main|header|nav|section|div|p|[uod]l|li|d[td]|t(?:able|head|body|r|h|d)|caption|form"
    r"|fieldset|legend|details|summary|fig(?:ure|caption)|h[1-4]|option|path|circle|image|meta|link|script|title"
    r"|datalist|dialog)\b[^<>]*>) ?"
)


class Reader(FlaskClient):
    """Gets pages as a browser shows them: of white space one space counts, and none beside blocks."""

    def open(self, *args: Any, **kwargs: Any) -> TestResponse:
        response = super().open(*args, **kwargs)
        if response.mimetype == "text/html" and "Content-Encoding" not in response.headers:
            response.set_data(BLOCKS.sub(r"\1", re.sub(r"\s+", " ", response.get_data(as_text=True))))
        return response


def client_of(app: Flask, shop: Shop, role: Role) -> FlaskClient:
    """Calls with a new token of this role, named like it; the owner's own name is the owner's."""
    client = app.test_client()
    client.environ_base["HTTP_AUTHORIZATION"] = (
        f"Bearer {new_token(shop, 'boss' if role is Role.OWNER else role.value, role)}"
    )
    return client
