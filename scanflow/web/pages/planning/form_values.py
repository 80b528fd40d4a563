"""What people type into the fields of a plan, turned into values; `Invalid` says what a field wants."""

from __future__ import annotations

import re
from collections.abc import Mapping
from math import isfinite

from labels import sheet
from scanflow.planning import measures
from scanflow.workflow.ports import Invalid

MOST_NUMBERS = 5000


def sentence(error: ValueError) -> str:
    """The words of an error as a sentence."""
    words = str(error)
    return words[:1].upper() + words[1:] + ("" if words.endswith(".") else ".")


def decimal(given: Mapping[str, str], name: str, what: str, least: float, most: float) -> float:
    """A number from `least` to `most`, with a point or a comma."""
    text = given.get(name, "").strip().replace(",", ".")
    try:
        value = float(text)
    except ValueError:
        value = -1.0
    if not isfinite(value) or not least <= value <= most:
        raise Invalid(f"/{name}", "bad_number", f"{what}: write a number from {least:g} to {most:,g}.")
    return value


def whole(given: Mapping[str, str], name: str, what: str, least: int, most: int) -> int:
    text = given.get(name, "").strip()
    if re.fullmatch("[0-9]{1,7}", text) is None or not least <= int(text) <= most:
        raise Invalid(f"/{name}", "bad_number", f"{what}: write a whole number from {least} to {most:,}.")
    return int(text)


def choice(given: Mapping[str, str], name: str, choices: Mapping[str, object] | tuple[str, ...]) -> str:
    """One of the choices; the first when nothing was chosen."""
    value = given.get(name, "") or next(iter(choices))
    if value not in choices:
        raise Invalid(f"/{name}", "unknown_choice", f"Choose one of {', '.join(choices)}.")
    return value


def counts(given: Mapping[str, str], name: str, what: str) -> tuple[int, ...]:
    """Whole numbers above zero like `4, 12, 20`; empty when nothing was typed."""
    parts = [part for part in re.split(r"[,;\s]+", given.get(name, "").strip()) if part]
    if not all(re.fullmatch("[0-9]{1,5}", part) and int(part) for part in parts) or len(parts) > 100:
        raise Invalid(f"/{name}", "bad_number", f"{what}: write whole numbers like 4, 12, 20.")
    return tuple(int(part) for part in parts)


def numbers(given: Mapping[str, str], name: str) -> list[int]:
    """Numbers of slots and ranges of them like `1-18, 25`, none twice."""
    try:
        return sheet.parse_numbers(given.get(name, ""), MOST_NUMBERS)
    except ValueError as error:
        raise Invalid(f"/{name}", "bad_numbers", sentence(error)) from error


def size(given: Mapping[str, str], name: str) -> measures.Size:
    try:
        return measures.size(given.get(name, ""))
    except ValueError as error:
        raise Invalid(f"/{name}", "bad_size", sentence(error)) from error


def pair(given: Mapping[str, str], name: str, what: str) -> tuple[float, float]:
    """Across and down in mm, as `measures.across_down` has it."""
    try:
        return measures.across_down(given.get(name, ""))
    except ValueError as error:
        raise Invalid(f"/{name}", "bad_size", f"{what}: {error}.") from error
