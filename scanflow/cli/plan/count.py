"""`scanflow plan count`: how many bins to count, and what a count says of the rest."""

import json
from typing import Any

import click

from scanflow.cli.plan.option_types import SHARE, as_json, say_assumptions
from scanflow.domain.words import units
from scanflow.planning.sampling import MOST, rate_between, to_count, too_many, wrong_between

ASSUMPTIONS = (
    "The bins are drawn blind: by lot, each as likely as another, and without knowing what should stand there.",
    "What is counted is seen right: a bin that is wrong is found to be wrong.",
    "Nothing in the room changes between the draw and the count, or the changes are known.",
)


@click.command("count")
@click.option("--bins", type=click.IntRange(1, MOST), required=True, help="Bins of the room, or of a part of it.")
@click.option("--most", type=SHARE, default="2%", show_default=True, help="Share of wrong bins that may stay unseen.")
@click.option("--certainty", type=SHARE, default="95%", show_default=True, help="That more of them are noticed.")
@click.option("--allowed", type=click.IntRange(0, MOST), default=0, show_default=True, help="Wrong bins to pass over.")
@click.option("--counted", type=click.IntRange(1, MOST), help="The reverse: bins that were counted.")
@click.option("--wrong", type=click.IntRange(0, MOST), help="Of those counted, how many were wrong.")
@as_json
def count(
    bins: int, most: float, certainty: float, allowed: int, counted: int | None, wrong: int | None, as_json: bool
) -> None:
    """How many bins to count for a wanted certainty, or what a count of some says of the rest."""
    if (counted is None) != (wrong is None):
        raise click.UsageError("Say both how many bins were --counted and how many of them were --wrong.")
    if counted is None or wrong is None:
        answer, words = _plan(bins, most, certainty, allowed)
    elif wrong <= counted <= bins:
        answer, words = _found(bins, certainty, counted, wrong)
    else:
        raise click.UsageError("What is wrong is part of what was counted, and that of the bins.")
    if as_json:
        click.echo(json.dumps({"bins": bins, "certainty": certainty, **answer, "assumptions": ASSUMPTIONS}))
        return
    click.echo(words)
    say_assumptions(ASSUMPTIONS)


def _plan(bins: int, most: float, certainty: float, allowed: int) -> tuple[dict[str, Any], str]:
    wrong = too_many(bins, most)
    if allowed >= wrong:
        raise click.UsageError(f"Of {units(bins, 'bin')} {wrong} wrong are too many: allow fewer than that.")
    number = to_count(bins, wrong, certainty, allowed)
    told = "none of them is wrong" if not allowed else f"at most {allowed} of them {_are(allowed)} wrong"
    words = (
        f"Count {number} of {units(bins, 'bin')}. If {told}, it is {_percent(certainty)} certain that fewer than "
        f"{wrong} of all {_are(bins)} wrong."
    )
    return {"most": most, "too_many": wrong, "allowed": allowed, "count": number}, words


def _found(bins: int, certainty: float, counted: int, wrong: int) -> tuple[dict[str, Any], str]:
    low, high = wrong_between(wrong, counted, bins, certainty)
    rate = rate_between(wrong, counted, certainty)
    answer = {
        "counted": counted,
        "wrong": wrong,
        "wrong_of_all": (low, high),
        "wrong_of_the_rest": (low - wrong, high - wrong),
        "rate": rate,
    }
    words = f"{wrong} of {units(counted, 'bin')} counted {_are(wrong)} wrong, {wrong / counted:.1%}."
    rest = bins - counted
    if not rest:
        return answer, f"{words} That is every bin: nothing is left open."
    return answer, (
        f"{words} Of the {units(rest, 'bin')} not counted {_between(low - wrong, high - wrong)} wrong, with "
        f"{_percent(certainty)} certainty. A shop that goes on so has {rate[0]:.1%} to {rate[1]:.1%} of its bins wrong."
    )


def _between(low: int, high: int) -> str:
    return f"{low} {_are(low)}" if low == high else f"{low} to {high} are"


def _are(number: int) -> str:
    return "is" if number == 1 else "are"


def _percent(share: float) -> str:
    return f"{share * 100:.6g}%"
