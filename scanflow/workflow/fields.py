"""What can be said to the shop: a command for each thing it does, and the limits of its fields.

A command is frozen, and whoever has one need not check it again. `Command.of` makes one of what the API got,
`Command.read` of words as a form, a file or the command line has them. `Invalid` names every fault, by the same codes.
"""

from __future__ import annotations

import re
from collections.abc import Iterable, Iterator, Mapping
from functools import cache
from typing import Annotated, Any, Self, TypeVar

from pydantic import (
    AfterValidator,
    BaseModel,
    ConfigDict,
    Field,
    GetCoreSchemaHandler,
    StringConstraints,
)
from pydantic import ValidationError as Unfit
from pydantic.fields import FieldInfo
from pydantic_core import CoreSchema, ErrorDetails, PydanticCustomError, core_schema

from scanflow.workflow.ports import Invalid
from scanflow.workflow.times import HOW, YEARS, instant

T = TypeVar("T")


class Command(BaseModel):
    """One thing that the shop is asked to do. Unknown fields are refused."""

    model_config = ConfigDict(frozen=True, extra="forbid")

    @classmethod
    def of(cls, said: Mapping[str, Any]) -> Self:
        """The command of these fields; `Invalid` with all that is wrong with them."""
        if isinstance(said, dict) and None in said.values():
            said = {name: _NULL if each is None else each for name, each in said.items()}
        try:
            made: Self = cls.__pydantic_validator__.validate_python(said)
        except Unfit as unfit:
            raise refusal(cls, unfit) from None
        return made

    @classmethod
    def read(cls, words: Mapping[str, Any]) -> Self:
        """The same of fields that came as words, as those of a form do: numbers, yes and no are read from them."""
        kinds = _kinds(cls)
        return cls.of({name: _read(word, kinds.get(name)) for name, word in words.items()})

    def sent(self, *without: str) -> dict[str, Any]:
        """The fields as they were said, those left to their defaults not among them."""
        return {
            name: each
            for name in self.model_fields_set.difference(without)
            if (each := self.__dict__[name]) is not None
        }

    def known(self, *without: str) -> dict[str, Any]:
        """All fields with their values, as they are here."""
        return {name: each for name, each in self.__dict__.items() if name not in without}


@cache
def _kinds(kind: type[Command]) -> dict[str, str]:
    """JSON's kind of each field that has one."""
    return {name: each.get("type", "") for name, each in kind.model_json_schema()["properties"].items()}


def _read(word: Any, kind: str | None) -> Any:
    if not isinstance(word, str):
        return word
    match kind:
        case "integer" if re.fullmatch("-?[0-9]{1,18}", word):
            return int(word)
        case "number" if re.fullmatch(r"-?[0-9]{1,18}([.,][0-9]{1,18})?", word):
            return float(word.replace(",", "."))
        case "boolean":
            return {"true": True, "yes": True, "false": False}.get(word, word)
    return word


_NULL = object()
"""In place of a null that came in: a field that may be absent is never sent as null."""


class _OrAbsent:
    def __get_pydantic_core_schema__(self, source: Any, handler: GetCoreSchemaHandler) -> CoreSchema:
        nullable: Any = handler(source)
        return core_schema.json_or_python_schema(nullable["schema"], nullable)


class OneOf:
    """A text that is one of these, where they are no enumeration."""

    def __init__(self, texts: Iterable[str]) -> None:
        self.texts = list(texts)

    def __get_pydantic_core_schema__(self, source: Any, handler: GetCoreSchemaHandler) -> CoreSchema:
        return core_schema.literal_schema(self.texts)


Maybe = Annotated[T | None, _OrAbsent()]
"""A field that may be absent, and then is None."""


def words(most: int, least: int = 0) -> StringConstraints:
    """A text of at most `most` characters without NUL, which no database keeps; with `least` 1 not of spaces alone."""
    pattern = r"^[^\u0000]*[^\s\u0000][^\u0000]*$" if least else r"^[^\u0000]*$"
    return StringConstraints(strict=True, min_length=least or None, max_length=most, pattern=pattern)


def like(pattern: str) -> StringConstraints:
    """A text of this pattern."""
    return StringConstraints(strict=True, pattern=pattern)


def integer(least: int, most: int | None = None) -> Any:
    """A whole number from `least` to `most`."""
    return Field(strict=True, ge=least, le=most)


def _is_time(said: str) -> str:
    try:
        instant(said, "UTC")
    except (ValueError, OverflowError):
        raise PydanticCustomError("bad_time", HOW) from None
    return said


ID = r"^[A-Za-z0-9_-]{1,64}$"
MOST_LINES = 500
"""Of an order, a round, a look."""

LONGEST_NAME = 100
"""Of a section, an order's number, a channel."""

LONGEST_LISTING = 200
"""Of a listing's id."""

_DAY = "[0-9]{4}-(0[1-9]|1[0-2])-(0[1-9]|[12][0-9]|3[01])"
_HOUR = r"([01][0-9]|2[0-3]):[0-5][0-9](:[0-5][0-9](\.[0-9]{1,6})?)?"
_TIME = rf"^{_DAY}([T ]{_HOUR}(Z|[+-]([01][0-9]|2[0-3]):[0-5][0-9])?)?$"

Identity = Annotated[str, like(ID)]
Key = Annotated[Identity, Field(description="Made by the client, unique in the shop; a repeat gets the same answer.")]
Letters = Annotated[str, like(r"^[A-Z]{1,2}$"), Field(title="Section", description="One or two letters from A to Z.")]
Code = Annotated[
    str, like(r"^[A-Z]{1,2}[0-9]{2,6}$"), Field(title="Slot", description="Letters and number, such as D014.")
]
CardText = Annotated[str, words(200, least=1), Field(title="Card")]
Title = Annotated[str, words(500, least=1)]
Reference = Annotated[str, words(200, least=1)]
Listing = Annotated[str, words(LONGEST_LISTING)]
Notes = Annotated[str, words(4000)]
Packing = Annotated[str, words(200)]
Note = Annotated[str, words(500)]
Reason = Annotated[str, words(500, least=1)]
Name = Annotated[str, words(LONGEST_NAME, least=1)]
Place = Annotated[str, words(64, least=1)]
Image = Annotated[bytes, Field(strict=True)]
Flag = Annotated[bool, Field(strict=True)]
Time = Annotated[
    str,
    StringConstraints(strict=True, max_length=40, pattern=_TIME),
    AfterValidator(_is_time),
    Field(
        description="RFC 3339; without offset in the shop's zone; a date alone is the end of that day. "
        f"Years {YEARS[0]} to {YEARS[-1]}.",
        examples=["2026-11-03T14:05:00+01:00"],
    ),
]
Age = Annotated[
    int,
    integer(0, 31 * 24 * 3_600_000),
    Field(description="How long it waited for the network, in ms, as the client measured it."),
]

CODES = {
    "missing": "required",
    "extra_forbidden": "unknown_field",
    "enum": "not_allowed_value",
    "literal_error": "not_allowed_value",
    "string_pattern_mismatch": "pattern",
    "string_too_long": "too_long",
    "string_too_short": "too_short",
    "string_unicode": "not_text",
    "too_long": "too_many",
    "too_short": "too_few",
    "less_than_equal": "too_large",
    "greater_than_equal": "too_small",
    "string_type": "type",
    "int_type": "type",
    "float_type": "type",
    "float_parsing": "type",
    "finite_number": "type",
    "bool_type": "type",
    "bytes_type": "type",
    "tuple_type": "type",
    "model_type": "type",
}
"""Our code of each of pydantic's errors; others are our own and stay as they are."""

WORDS = {
    "required": "{label} is needed.",
    "unknown_field": "There is no field of this name: {label}.",
    "type": "{label} is of the wrong kind.",
    "int_type": "{label}: write a whole number.",
    "float_type": "{label}: write a number.",
    "not_allowed_value": "{label}: choose {expected}.",
    "pattern": "{label} is written in another way.{form}",
    "not_text": "{label} holds a character that can't be kept.",
    "too_long": "{label} has at most {max_length:,} characters.",
    "too_short": "{label} is needed.",
    "too_many": "{label}: at most {max_length:,} of them.",
    "too_few": "{label}: at least {min_length:,} of them.",
    "too_large": "{label}: at most {le:,}.",
    "too_small": "{label}: at least {ge:,}.",
}
"""What to say of each code, or of one of its errors; our own errors have sentences of their own."""


def refusal(kind: type[BaseModel], unfit: Unfit) -> Invalid:
    """All faults at once. Fields that nobody knows come first: most often one is a misspelt one that is missing."""
    told = [(_code(each), each) for each in unfit.errors(include_url=False)]
    told.sort(key=lambda pair: pair[0] != "unknown_field")
    errors = tuple((pointer(each["loc"]), code) for code, each in told)
    code, first = told[0]
    return Invalid(errors[0][0], code, _sentence(kind, code, first), errors)


def _code(fault: ErrorDetails) -> str:
    kind, said = fault["type"], fault["input"]
    if kind in ("enum", "literal_error") and not isinstance(said, str):
        return "type"
    return CODES.get(kind, kind)


def _sentence(kind: type[BaseModel], code: str, fault: ErrorDetails) -> str:
    if fault["type"] not in CODES:  # a command's own, in its own words
        return fault["msg"]
    words = WORDS.get(fault["type"]) or WORDS[code]
    names = [str(part) for part in fault["loc"] if isinstance(part, str)]
    field = _field(kind, names[0]) if len(names) == 1 else None
    form = f" {field.description}" if field is not None and field.description else ""
    return words.format(label=_label(field, names), form=form, **fault.get("ctx", {}))


def _field(kind: type[BaseModel], name: str) -> FieldInfo | None:
    return next((each for key, each in kind.model_fields.items() if name in (key, each.alias)), None)


def _label(field: FieldInfo | None, names: list[str]) -> str:
    words = names[-1].replace("_", " ") if names else "what was sent"
    return (field.title if field is not None else None) or words[:1].upper() + words[1:]


def pointer(path: tuple[int | str, ...]) -> str:
    """The JSON pointer (RFC 6901) of a path."""
    return "".join("/" + str(part).replace("~", "~0").replace("/", "~1") for part in path)


def refuse_unkeepable(said: Any) -> None:
    """`Invalid` at each text or name of a field that holds a lone surrogate or NUL: no database keeps them."""
    errors = tuple((place.encode(errors="replace").decode(), "not_text") for place in _not_unicode(said, ()))
    if errors:
        raise Invalid(errors[0][0], "not_text", WORDS["not_text"].format(label=errors[0][0] or "It"), errors)


def _not_unicode(said: Any, path: tuple[int | str, ...]) -> Iterator[str]:
    match said:
        case str() if re.search("[\0\ud800-\udfff]", said):
            yield pointer(path)
        case list():
            for place, each in enumerate(said):
                yield from _not_unicode(each, (*path, place))
        case dict():
            for name, each in said.items():
                yield from _not_unicode(name, (*path, name))
                yield from _not_unicode(each, (*path, name))
