"""The one view of the room that an answer is made of: opened when it is first asked for, and unchanging."""

from __future__ import annotations

from collections.abc import Callable, Iterator
from contextlib import ExitStack, contextmanager
from typing import Any, TypeVar, cast

from flask import g

from scanflow.web.door.visitors import shop
from scanflow.workflow.ports import Unit

T = TypeVar("T")


@contextmanager
def one_view() -> Iterator[None]:
    """While a page is answered; what fails in it comes out as its storage says it."""
    with ExitStack() as g.views:
        yield
    g.pop("room", None)


def _room() -> Any:
    if "room" not in g:
        who = g.visitor.name if g.get("visitor") else ""
        g.room = g.views.enter_context(shop().looking(who))
    return g.room


def room() -> Unit:
    """The room as this answer sees it, to read from."""
    return cast(Unit, _room())


def ask(query: Callable[..., T], *args: Any, **kwargs: Any) -> T:
    """One query of a module of views, in the same view of the room."""
    return query(_room().connection, *args, **kwargs)


def let_go() -> None:
    """Before something is written, or takes long: what is looked at afterwards is another view."""
    g.pop("room", None)
    g.views.close()
