"""The schemas of all nouns, gathered."""

from __future__ import annotations

from importlib import import_module
from pkgutil import iter_modules

import pytest

from scanflow.web.api import schemas

NOUNS = sorted(each.name for each in iter_modules(schemas.__path__) if each.name != "parts")


@pytest.mark.parametrize("kind", ["BODIES", "FORMS", "QUERIES", "ANSWERS"])
@pytest.mark.parametrize("noun", NOUNS)
def test_a_nouns_schemas_are_gathered_under_their_names(noun: str, kind: str) -> None:
    """Each is there, and no other noun's stands in its place."""
    own = getattr(import_module(f"{schemas.__name__}.{noun}"), kind, {})

    assert own == {name: schema for name, schema in getattr(schemas, kind).items() if own.get(name) is schema}


def test_a_name_is_of_one_kind() -> None:
    """No body, form or answer has the name of another kind's, for references find them by name alone."""
    kinds = (schemas.BODIES, schemas.FORMS, schemas.ANSWERS)

    assert sum(map(len, kinds)) == len(schemas.COMPONENTS["schemas"])
