"""A page is declared once: nothing is served beside the declarations, and the lists of the tests leave none out."""

from __future__ import annotations

import re

import pytest
from clients import SQLITE_ONLY, client_of
from every_page import ALWAYS, FILES, addresses, front_door, shown_by
from flask import Flask
from flask.testing import FlaskClient
from furnished import furnish

from scanflow.domain.access import Role
from scanflow.shop import Shop
from scanflow.web.pages.declare import PAGES

pytestmark = SQLITE_ONLY

SHOWN = {endpoint for endpoint, page in PAGES.items() if page.method == "GET"} - FILES


def test_nothing_is_served_undeclared(app: Flask) -> None:
    """Each address outside the API is a declared page, by its method alone, or a static file."""
    served = {
        (rule.endpoint, rule.rule, method)
        for rule in app.url_map.iter_rules()
        for method in (rule.methods or set()) - {"HEAD", "OPTIONS"}
        if not rule.rule.startswith("/api") and rule.endpoint != "static"
    }
    assert {(endpoint, page.path, page.method) for endpoint, page in PAGES.items()} == served


def test_every_page_is_looked_at(app: Flask, shop: Shop) -> None:
    """The addresses that axe, narrow screens and old shops are tried with show each page, those at the door too."""
    room = furnish(shop, 25)
    assert SHOWN == shown_by(app, [*addresses(shop, room), *front_door(shop)])


def test_every_page_without_an_id_is_always_there(app: Flask) -> None:
    """The addresses of an empty room and of hostile titles show each page that is about no one thing."""
    wanted = {endpoint for endpoint in SHOWN if PAGES[endpoint].roles and "<" not in PAGES[endpoint].path}
    assert wanted - {"backup_page.key"} == shown_by(app, ALWAYS)  # which is about one place of backups


def test_what_counts_as_a_file_is_no_page(client: FlaskClient, shop: Shop) -> None:
    """What the lists leave out as a file answers no HTML, where it needs no thing of the room."""
    furnish(shop, 25)
    paths = [PAGES[endpoint].path for endpoint in FILES if "<" not in PAGES[endpoint].path]
    answers = [client.get(path, query_string={"section": "D", "state": "waiting"}) for path in paths]
    assert [] == [each.request.path for each in answers if each.status_code == 200 and each.mimetype == "text/html"]


def test_a_form_with_a_file_is_sent_where_one_is_taken(app: Flask, client: FlaskClient, shop: Shop) -> None:
    """Each form that has a field for a file leads to a page that is declared to take one."""
    room = furnish(shop, 25)
    adapter, sending = app.url_map.bind("localhost"), set()
    for address in addresses(shop, room):
        answer = client.get(address, follow_redirects=True)
        forms = re.findall(r'<form[^>]*method="post".*?</form>', answer.text, re.DOTALL)
        for form in (each for each in forms if 'type="file"' in each):
            action = re.match(r'<form[^>]*action="([^"#?]*)', form)
            path = action[1] if action and action[1] else answer.request.path
            sending.add(adapter.match(path, method="POST")[0])
    taking = {endpoint for endpoint in PAGES if getattr(app.view_functions[endpoint], "takes_file", False)}
    assert taking == sending


@pytest.mark.parametrize(
    ("role", "left_out"),
    [(Role.OWNER, set()), (Role.HELPER, {"Cards", "Settings", "Plan", "Channels", "Ledger", "Where things go wrong"})],
)
def test_the_menu_has_what_its_reader_may_use(app: Flask, shop: Shop, role: Role, left_out: set[str]) -> None:
    """The menu stands in the order of its groups and places, without what the reader may not use."""
    html = client_of(app, shop, role).get("/").text
    menu = re.findall(r"<a [^>]*>([^<]*)</a>", html[html.index('aria-label="All pages"') :].partition("</nav>")[0])
    day = ("Today", "Put away", "Orders", "Rounds", "Table", "Tray", "Hand-over")
    room = ("Room", "Slots", "Shelf", "Counts", "Cards", "Listings")
    settings = ("Settings", "Plan", "Channels", "Ledger", "Where things go wrong")
    all_ = (*day, *room, *settings, "This phone", "Scanner", "Help")
    assert [each for each in all_ if each not in left_out] == menu
