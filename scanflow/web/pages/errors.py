"""A call to a page that could not be answered as asked."""

from __future__ import annotations

from flask import g, render_template
from flask.typing import ResponseReturnValue

from scanflow.web.problem import Problem, later

TITLES = {
    401: "Sign in first",
    403: "Not for you",
    404: "Nothing here",
    405: "This page can't be used that way",
    409: "Refused",
    413: "Too large",
    421: "Another name",
    429: "Wait a minute",
    500: "Something broke",
    503: "Not recorded",
}


def render(problem: Problem) -> ResponseReturnValue:
    """The problem as a page that stands without a database: that may be what failed."""
    title = TITLES.get(problem.status, "Not possible")
    known = g.get("visitor") is not None
    return render_template("error.html", problem=problem, title=title, known=known), problem.status, later(problem)
