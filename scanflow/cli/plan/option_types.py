"""What is typed after an option, beyond plain numbers, and what plans have in common."""

from collections.abc import Callable, Iterable
from typing import Any

import click

from scanflow.planning import measures


class Typed(click.ParamType[Any]):
    """A text that a function turns into a value; its ValueError is wrong usage, in its own words."""

    def __init__(self, name: str, parse: Callable[[str], Any]) -> None:
        self.name = name
        self._parse = parse

    def convert(self, value: Any, param: click.Parameter | None, ctx: click.Context | None) -> Any:
        if not isinstance(value, str):
            return value
        try:
            return self._parse(value)
        except ValueError as error:
            self.fail(str(error), param, ctx)


def _share(text: str) -> float:
    try:
        value = float(text.removesuffix("%")) / (100 if text.endswith("%") else 1)
    except ValueError:
        value = -1.0
    if not 0 < value < 1:
        raise ValueError(f"{text!r} is no share like 1% or 0.01, above 0 and below 1")
    return value


def _counts(text: str) -> tuple[int, ...]:
    parts = text.split(",")
    if not all(part.strip().isdecimal() and int(part) > 0 for part in parts):
        raise ValueError(f"{text!r} is no list of whole numbers above zero like 4,12,20")
    return tuple(int(part) for part in parts)


SHARE = Typed("share", _share)
COUNTS = Typed("counts", _counts)
SIZE = Typed("size", measures.size)
LENGTH = Typed("length", measures.length)

as_json = click.option("--json", "as_json", is_flag=True, help="Report as one JSON document.")


def say_assumptions(sentences: Iterable[str]) -> None:
    """Print what a plan assumes."""
    click.echo("Assumptions:")
    for sentence in sentences:
        click.echo(f"- {sentence}")
