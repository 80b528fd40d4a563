"""The OpenAPI 3.1 document, made of the calls as they are declared."""

from __future__ import annotations

from collections.abc import Iterator
from functools import cache
from importlib.metadata import version
from typing import Any

from flask import Blueprint, Response
from pydantic import TypeAdapter, ValidationError
from pydantic.json_schema import GenerateJsonSchema, JsonSchemaMode, JsonSchemaValue
from pydantic_core import core_schema

from scanflow.storage.writing.failing import CODES
from scanflow.vision.upright import MEDIA_TYPES
from scanflow.web.api import given
from scanflow.web.api.contract import ANYONE, CALLS, IDEMPOTENCY_KEY, Call, answer, call
from scanflow.workflow.fields import ID, Command

blueprint = Blueprint("openapi", __name__)

ABOUT = """Programs send `Authorization: Bearer TOKEN`. Ids are opaque. Times are RFC 3339 with offset; one without is
in the shop's zone. A scan that can be judged is answered 200, accepted or refused; 4xx means that there is no verdict.
Lists give `next`, the cursor of the following page, null at the end. `x-roles` names who may make a call."""

DESCRIBED = {
    503: "The database takes no writes; `status` says why.",
    201: "Made.",
    304: "As it was, by the ETag that was sent.",
}
PROBLEMS = {
    400: "The body is not JSON.",
    401: "No valid access token.",
    403: "The token's role may not do this.",
    404: "An id in the path is unknown.",
    409: "It can't be done as the room stands: {codes}.",
    413: "The body is too large.",
    415: "The body has another content type.",
    422: "A field or parameter is wrong; `errors` points at each.",
    429: "Pictures of this visitor are still being read. `Retry-After` says when to send this one again.",
    503: "{busy}Nothing is recorded, for the storage fails: "
    + ", ".join(f"`{code}`" for code in CODES)
    + ". Send it again after `Retry-After`.",
}


@call(blueprint, "GET", "/api/openapi.json", ANYONE, {200: given.Document})
def show() -> Response:
    """Gives this document."""
    return answer(document())


class _Schemas(GenerateJsonSchema):
    """Without what pydantic says of itself: names of fields as titles, and null for what is absent by default."""

    def field_title_should_be_set(self, schema: Any) -> bool:
        return False

    def typed_dict_schema(self, schema: core_schema.TypedDictSchema) -> JsonSchemaValue:
        """An answer has no more than its fields, unless it says so."""
        return {"additionalProperties": False, **super().typed_dict_schema(schema)}

    def default_schema(self, schema: core_schema.WithDefaultSchema) -> JsonSchemaValue:
        found = super().default_schema(schema)
        return found if found.get("default", ...) is not None else {k: v for k, v in found.items() if k != "default"}


def _shapes() -> Iterator[type]:
    """All that calls take and give."""
    for each in CALLS:
        yield from (
            kind for kind in (each.body, each.form, each.query, *each.answers.values()) if isinstance(kind, type)
        )
    yield given.Problem


@cache
def schemas() -> tuple[dict[Any, Any], dict[str, Any]]:
    """The schema of each shape, and all those that they refer to, by name."""
    inputs: list[tuple[Any, JsonSchemaMode, TypeAdapter[Any]]] = [
        (shape, "validation", TypeAdapter(shape)) for shape in dict.fromkeys(_shapes())
    ]
    of, shared = TypeAdapter.json_schemas(
        inputs, ref_template="#/components/schemas/{model}", schema_generator=_Schemas
    )
    return {shape: schema for (shape, _), schema in of.items()}, shared["$defs"]


@cache
def document() -> dict[str, Any]:
    paths: dict[str, dict[str, Any]] = {}
    for each in CALLS:
        paths.setdefault(each.path, {})[each.method.lower()] = _operation(each)
    return {
        "openapi": "3.1.0",
        "jsonSchemaDialect": "https://json-schema.org/draft/2020-12/schema",
        "info": {"title": "scanflow", "version": version("scanflow"), "description": ABOUT, "license": {"name": "MIT"}},
        "servers": [{"url": "/"}],
        "tags": [{"name": name} for name in dict.fromkeys(each.tag for each in CALLS)],
        "paths": paths,
        "components": {
            "schemas": schemas()[1],
            "securitySchemes": {"bearer": {"type": "http", "scheme": "bearer"}},
        },
    }


def _operation(each: Call) -> dict[str, Any]:
    operation: dict[str, Any] = {
        "operationId": f"{each.tag}.{each.name}",
        "tags": [each.tag],
        "summary": each.summary,
        "parameters": list(_parameters(each)),
        "responses": {str(status): response for status, response in sorted(_responses(each).items())},
        "security": [{"bearer": []}] if each.roles else [],
        "x-roles": [role.value for role in each.roles],
    }
    if each.body or each.form or each.image:
        operation["requestBody"] = _request_body(each)
    return operation


def _parameters(each: Call) -> Any:
    for name in each.ids:
        yield {"name": name, "in": "path", "required": True, "schema": {"type": "string", "pattern": ID}}
    for name, schema in _properties(each.query).items():
        yield {"name": name, "in": "query", "schema": schema}
    if each.once:
        yield {
            "name": "Idempotency-Key",
            "in": "header",
            "description": "A repeat with the same key and body gets the stored answer.",
            "schema": {"type": "string", "pattern": IDEMPOTENCY_KEY},
        }


def _properties(kind: type[Command]) -> dict[str, Any]:
    schema = schemas()[0][kind]
    properties: dict[str, Any] = (schemas()[1][kind.__name__] if "$ref" in schema else schema)["properties"]
    return properties


def _fits_nothing(kind: type[Command]) -> bool:
    """Whether all of its fields may be absent."""
    try:
        kind()
    except ValidationError:
        return False
    return True


def _request_body(each: Call) -> dict[str, Any]:
    content: dict[str, Any] = {}
    required = True
    if each.body:
        content["application/json"] = {"schema": schemas()[0][each.body]}
        required = not _fits_nothing(each.body)
    if each.form:
        content["multipart/form-data"] = {"schema": schemas()[0][each.form]}
    if each.image:
        content |= {kind: {} for kind in MEDIA_TYPES}
    return {"required": required, "content": content}


def _responses(each: Call) -> dict[int, Any]:
    answers = {status: _response(each, status, shape) for status, shape in each.answers.items()}
    pictures = each.image or (each.form and "image" in each.form.model_fields)
    some = [
        (each.roles, {401, 403}),
        (each.ids, {404}),
        (each.body or each.form, {400, 413, 415}),
        (each.image, {413, 415}),
        (pictures, {429}),
        (each.conflicts, {409}),
        (each.roles, {503}),  # those that anyone may call say it themselves, or need no database
    ]
    statuses = {422}.union(*(codes for applies, codes in some if applies))
    return answers | {status: _problem(status, each) for status in statuses}


def _response(each: Call, status: int, shape: Any) -> dict[str, Any]:
    headers: dict[str, Any] = {}
    if status == 201:
        headers["Location"] = {"schema": {"type": "string", "format": "uri-reference"}}
    if each.once:
        headers["Answer-Stored"] = {"schema": {"const": "true"}, "description": "Of a stored answer."}
    described = DESCRIBED.get(status, "Done." if each.method != "GET" else "As asked.")
    response: dict[str, Any] = {"description": described, **({"headers": headers} if headers else {})}
    if shape is not None:
        kind = {shape: {}} if isinstance(shape, str) else {"application/json": {"schema": schemas()[0][shape]}}
        response["content"] = kind
        response["content"] |= {kind: {} for kind in each.also}
    return response


def _problem(status: int, each: Call) -> dict[str, Any]:
    busy = "Too many of these are open: `busy`. " if each.bounded else ""
    described = PROBLEMS[status].format(codes=", ".join(f"`{code}`" for code in each.conflicts), busy=busy)
    return {"description": described, "content": {"application/problem+json": {"schema": schemas()[0][given.Problem]}}}
