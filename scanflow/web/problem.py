"""Errors as problem details (RFC 9457), which the API answers, and pages in words of their own."""

from __future__ import annotations

from collections.abc import Callable
from typing import Any

from flask import Flask, Response, current_app, json, request
from flask.typing import ResponseReturnValue
from werkzeug.exceptions import HTTPException, InternalServerError

from scanflow.domain.life import NotAllowed
from scanflow.storage.writing.unwritable import Unwritable
from scanflow.workflow.ports import Invalid, Missing, Refused

CODES = {
    400: "malformed",
    401: "unauthorized",
    403: "forbidden",
    404: "not_found",
    405: "method_not_allowed",
    406: "not_acceptable",
    413: "too_large",
    415: "unsupported_media_type",
    422: "invalid",
    429: "too_many_requests",
    500: "internal",
}

RETRY_AFTER = "10"
"""Seconds until what is full may have room again."""


class Problem(Exception):
    """An answer other than the one asked for. `errors` are (JSON pointer, code) of the fields at fault."""

    def __init__(
        self, status: int, code: str, detail: str, errors: tuple[tuple[str, str], ...] = (), **extra: Any
    ) -> None:
        super().__init__(detail)
        self.status, self.code, self.detail, self.errors, self.extra = status, code, detail, errors, extra


def of(error: Exception) -> Problem:
    """What an exception of the layers below means to a caller."""
    match error:
        case Problem():
            return error
        case Refused():
            return Problem(409, error.code, error.detail, **error.extra)
        case NotAllowed():
            return Problem(409, "not_allowed", f"{error}.")
        case Invalid():
            return Problem(422, error.code, error.detail, error.errors)
        case Unwritable():
            return Problem(503, error.code, error.detail)
        case Missing():
            return Problem(404, "not_found", str(error))
        case HTTPException():
            status = error.code or 500
            detail = "This page does not exist." if status == 404 else error.description or ""
            return Problem(status, CODES.get(status, "invalid"), detail)
    return Problem(500, "internal", "Something went wrong here. What was answered before is kept; try again.")


def respond(problem: Problem) -> Response:
    """A problem as `application/problem+json`."""
    body = {
        "type": f"https://scanflow.invalid/problems/{problem.code}",
        "title": problem.code.replace("_", " ").capitalize(),
        "status": problem.status,
        "detail": problem.detail,
        "code": problem.code,
        "errors": [{"pointer": pointer, "code": code} for pointer, code in problem.errors],
        **problem.extra,
    }
    response = Response(json.dumps(body), problem.status, mimetype="application/problem+json")
    if problem.status == 401:
        response.headers["WWW-Authenticate"] = "Bearer"
    response.headers.update(later(problem))
    return response


def later(problem: Problem) -> dict[str, str]:
    """The header that says when to try again, for an answer that has one."""
    return {"Retry-After": RETRY_AFTER} if problem.status in (429, 503) else {}


def is_api() -> bool:
    """Whether a program asks, and not a page."""
    return request.path.startswith("/api/") or request.path == "/api"


def register(app: Flask, on_a_page: Callable[[Problem], ResponseReturnValue]) -> None:
    """Errors anywhere are answered: of the API by `respond`, of pages by `on_a_page`."""

    def handle(error: Exception) -> Any:
        if isinstance(error, InternalServerError) and isinstance(error.original_exception, Exception):
            error = error.original_exception  # it came after the view, as its answer was finished
        problem = of(error)
        if problem.status == 500:
            current_app.logger.exception("A call failed", exc_info=error)
        if is_api():
            response = respond(problem)
            if isinstance(error, HTTPException) and error.get_response().headers.get("Allow"):
                response.headers["Allow"] = error.get_response().headers["Allow"]
            return response
        return on_a_page(problem)

    app.register_error_handler(Exception, handle)
