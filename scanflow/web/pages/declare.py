"""A page as it is declared: from this it is routed, admitted, done once, followed, and named in the menu."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass
from enum import StrEnum
from functools import wraps

from flask import Blueprint, g, request
from flask.typing import ResponseReturnValue

from scanflow.domain.access import Role
from scanflow.web.door import bodies, visitors
from scanflow.web.door.visitors import need
from scanflow.web.pages import forms, room_view

ANYONE: tuple[Role, ...] = ()
"""It needs nobody: the front door."""
OWNER = (Role.OWNER,)
STAFF = (Role.OWNER, Role.HELPER)
"""Scan, put away, pack, look. A program has no pages: it has the API."""


class Group(StrEnum):
    """What the pages of one part of the menu are for."""

    DAY = "The day"
    ROOM = "The room"
    SHOP = "The shop"


@dataclass(frozen=True, slots=True)
class MenuEntry:
    """A line of the menu, after those of a lower `place` in its group; the browser's own keys with `key` lead there.

    `top`: on a wide screen it also stands beside the menu, at most five do.
    """

    group: Group
    place: int
    label: str
    key: str = ""
    top: bool = False


@dataclass(frozen=True, slots=True)
class Page:
    """A page, or what a form of a page does. `live`: it follows what changes elsewhere (`js/page/changes.js`)."""

    method: str
    path: str
    roles: tuple[Role, ...]
    live: bool
    menu: MenuEntry | None


PAGES: dict[str, Page] = {}
"""All pages by endpoint."""

BLUEPRINTS: dict[str, Blueprint] = {}

View = Callable[..., ResponseReturnValue]


def page(
    blueprint: Blueprint,
    method: str,
    path: str,
    *,
    roles: tuple[Role, ...] = OWNER,
    live: bool = False,
    takes_file: bool = False,
    menu: MenuEntry | None = None,
) -> Callable[[View], View]:
    """Declares a page and routes it; the view is given the path's ids. It is the owner's alone unless `roles` say else.

    A form that comes again, with its key, gets the answer that it got before, and the view is not asked.
    """

    def register(view: View) -> View:
        declared = Page(method, path, roles, live, menu)
        PAGES[f"{blueprint.name}.{view.__name__}"] = declared
        BLUEPRINTS[blueprint.name] = blueprint
        answered = bodies.takes_file(_answering(declared, view)) if takes_file else _answering(declared, view)
        blueprint.add_url_rule(path, view.__name__, answered, methods=[method])
        return view

    return register


def _answering(declared: Page, view: View) -> View:
    @wraps(view)
    def answered(**ids: str) -> ResponseReturnValue:
        with room_view.one_view():
            before = _admit(declared)
            return view(**ids) if before is None else before

    return answered if declared.roles else visitors.needs_nobody(answered)


def _admit(declared: Page) -> ResponseReturnValue | None:
    """`Problem` 403 unless the visitor may; the answer to a form that came before."""
    if declared.roles:
        need(*declared.roles)
        if declared.method == "POST":
            return forms.answer_again()
    return None


def follows() -> bool:
    """Whether the page that is asked for follows what changes elsewhere."""
    return PAGES[request.endpoint or ""].live


def may(endpoint: str) -> bool:
    """Whether the visitor may use a page: links to others are not shown."""
    roles, visitor = PAGES[endpoint].roles, g.get("visitor")
    return not roles or (visitor is not None and visitor.role in roles)


def menu() -> dict[Group, list[tuple[str, MenuEntry]]]:
    """The pages in the visitor's menu by group, each with its endpoint; no group is empty."""
    named = [(endpoint, each.menu) for endpoint, each in PAGES.items() if each.menu is not None and may(endpoint)]
    named.sort(key=lambda each: each[1].place)
    groups = {group: [each for each in named if each[1].group is group] for group in Group}
    return {group: entries for group, entries in groups.items() if entries}
