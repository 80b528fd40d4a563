"""No regular expression takes long over a text, however long and however made: each that the code names is tried."""

from __future__ import annotations

import ast
import importlib
import re
import time
from collections.abc import Iterator
from pathlib import Path

import pytest

HOUSE = Path(__file__).parents[1]
LONG = 20_000
"""Characters; what needs as many steps as their square takes seconds."""

BEGINNINGS = ("", "1", "D014-07", "2026-01-01T00:00", "1mm x")
REPEATED = ("0", "A", "a", "-", " ", "\t", "\n", ".", ",", "x", "A0", "1-", "1,", "1 ", "- ", "é", "/", "O")
ENDS = ("", "!")


def patterns() -> Iterator[tuple[str, str, re.Pattern[str]]]:
    """Where each pattern stands, the function that it is given to, and the pattern."""
    for path in sorted([*(HOUSE / "scanflow").rglob("*.py"), *(HOUSE / "labels").rglob("*.py")]):
        if "migrations" in path.parts or path.name == "__main__.py":
            continue
        name = ".".join(path.relative_to(HOUSE).with_suffix("").parts).removesuffix(".__init__")
        for listed, value in vars(importlib.import_module(name)).items() if "re.compile" in path.read_text() else ():
            for place, each in enumerate(value if isinstance(value, list) else ()):
                if isinstance(each, re.Pattern):
                    yield f"{name}:{listed}{place}", "compile", each
        for call in ast.walk(ast.parse(path.read_text(encoding="utf-8"))):
            if isinstance(call, ast.Call) and isinstance(call.func, ast.Attribute) and _names(call.func.value) == "re":
                found = _compiled(call, vars(importlib.import_module(name)))
                if found is not None:
                    yield f"{name}:{call.lineno}", call.func.attr, found


def _names(node: ast.expr) -> str:
    return node.id if isinstance(node, ast.Name) else ""


def _compiled(call: ast.Call, known: dict[str, object]) -> re.Pattern[str] | None:
    """None for what is put together only when it is used, of parts that are short or escaped."""
    try:
        values = [eval(ast.unparse(each), known) for each in call.args if _is_plain(each)]
    except NameError:
        return None
    flags = [each for each in values if isinstance(each, re.RegexFlag)]
    return re.compile(values[0], *flags) if values and isinstance(values[0], str) else None


def _is_plain(node: ast.expr) -> bool:
    return not any(isinstance(each, ast.Call | ast.Lambda) for each in ast.walk(node))


FOUND = list(patterns())


def test_the_patterns_are_found() -> None:
    """Those of codes, sizes and dates are among them, so that the test below is about something."""
    assert {"labels.slot_code", "scanflow.planning.measures", "scanflow.exchange.dates"} <= {
        where.partition(":")[0] for where, _, _ in FOUND
    }


@pytest.mark.parametrize(("where", "used", "pattern"), FOUND, ids=[where for where, _, _ in FOUND])
def test_no_text_takes_long(where: str, used: str, pattern: re.Pattern[str]) -> None:
    """Of no text does a pattern take as many steps as the square of its length."""
    for beginning in BEGINNINGS:
        for repeated in REPEATED:
            for end in ENDS:
                text = beginning + (repeated * LONG)[:LONG] + end
                begun = time.thread_time()
                if used in ("compile", "fullmatch", "match"):
                    pattern.fullmatch(text)
                else:
                    pattern.sub("", text)
                assert time.thread_time() - begun < 0.5, (where, text[:40])
