"""The way to each page: few entries on top, and all others at most two presses away."""

from __future__ import annotations

import re
from urllib.parse import urlsplit

import pytest
from clients import SQLITE_ONLY, client_of
from every_page import FILES, shown_by
from flask import Flask
from furnished import furnish

from scanflow.domain.access import Role
from scanflow.shop import Shop
from scanflow.web.pages.declare import PAGES

pytestmark = SQLITE_ONLY

TOP = 6
ASKED_FOR = {"search_page.show", "amiss_page.show", "backup_page.key"}
"""Search is a form in the head, what is amiss is linked while something is, a key is shown of a place that has one."""


def head(html: str) -> str:
    return html[html.index("<header") : html.index("</header>")]


def links(html: str) -> set[str]:
    return {urlsplit(address).path for address in re.findall(r'href="(/[^"]*)"', html)}


@pytest.mark.parametrize("role", [Role.OWNER, Role.HELPER])
def test_few_entries_stand_on_top(app: Flask, shop: Shop, role: Role) -> None:
    """Five pages of the day's work, and the list of all pages, in which nothing is that this person may not open."""
    furnish(shop, 3)
    client = client_of(app, shop, role)
    page = head(client.get("/").text)
    wide, everything = page.split("<details", 1)
    on_top = re.findall(r'<a href="(/[^"]*)"', wide)
    assert TOP >= len(on_top) + 1
    assert dict.fromkeys(links(everything), 200) == {
        path: client.get(path, follow_redirects=True).status_code for path in links(everything)
    }


@pytest.mark.parametrize("role", [Role.OWNER, Role.HELPER])
def test_every_page_is_two_presses_away(app: Flask, shop: Shop, role: Role) -> None:
    """From any page the list of all pages leads on, and what is not in it is on a page that is."""
    furnish(shop, 3)
    client = client_of(app, shop, role)
    first = links(head(client.get("/").text)) | {"/"}
    second = set().union(*(links(client.get(path).text) for path in first))
    plain = {
        name: each.path
        for name, each in PAGES.items()
        if each.method == "GET" and "<" not in each.path and role in each.roles and name not in FILES
    }
    reached = shown_by(app, first | second)
    assert set() == set(plain) - reached - ASKED_FOR
