"""Pages of lists: opaque cursors that hold the sort key of the last row."""

from __future__ import annotations

import base64
import json
from collections.abc import Callable, Sequence
from typing import Annotated, Any, TypeVar

from scanflow.web.problem import Problem
from scanflow.workflow.fields import Command, Maybe, integer, like

R = TypeVar("R")


class Limit(Command):
    """How many rows of a list are asked for."""

    limit: Annotated[int, integer(1, 500)] = 100


class PageQuery(Limit):
    """Which rows of a list are asked for."""

    cursor: Maybe[Annotated[str, like(r"^[A-Za-z0-9_-]{1,200}$")]] = None

    def after(self, first: tuple[Any, ...]) -> tuple[Any, ...]:
        """The key in the cursor, or `first` without one; `Problem` 422 for a cursor that is none of this list's."""
        if self.cursor is None:
            return first
        try:
            key = json.loads(base64.urlsafe_b64decode(self.cursor + "=" * (-len(self.cursor) % 4)))
        except (ValueError, RecursionError):
            key = None
        same = isinstance(key, list) and [type(part) for part in key] == [type(part) for part in first]
        if not same or not all(part.isalnum() if isinstance(part, str) else 0 <= part < 2**53 for part in key):
            raise Problem(422, "bad_cursor", "This is not a cursor of this list.", (("/cursor", "bad_cursor"),))
        return tuple(key)

    def cut(self, rows: Sequence[R], key: Callable[[R], Sequence[Any]]) -> tuple[Sequence[R], str | None]:
        """The page and its next cursor, of `limit + 1` rows or fewer."""
        if len(rows) <= self.limit:
            return rows, None
        rows = rows[: self.limit]
        text = json.dumps(list(key(rows[-1])), separators=(",", ":"))
        return rows, base64.urlsafe_b64encode(text.encode()).decode().rstrip("=")
