"""How many bins to count, and what was found, as a person asks."""

from __future__ import annotations

import json

import pytest
from click.testing import CliRunner

from scanflow.cli import main


def run(*arguments):
    return CliRunner().invoke(main, ["plan", "count", *(str(argument) for argument in arguments)])


def answered(*arguments):
    """The JSON document that the plan prints."""
    result = run(*arguments, "--json")
    assert 0 == result.exit_code, result.output
    return json.loads(result.output)


def test_a_plan():
    """Of 300 bins 104 are counted to be 95 % certain of less than seven wrong, in words and as JSON."""
    # computed with scipy's hypergeometric distribution
    assert {"count": 104, "too_many": 7}.items() <= answered("--bins", 300).items()
    assert {"count": 196, "too_many": 6}.items() <= answered("--bins", 500, "--most", "1%").items()
    words = run("--bins", 300).output
    assert "Count 104 of 300 bins. If none of them is wrong, it is 95% certain that fewer than 7 of all are" in words
    assert "Assumptions:\n- The bins are drawn blind" in words


def test_some_wrong_are_allowed():
    """To pass over one wrong bin more are counted, and the sentence says so."""
    words = run("--bins", 300, "--allowed", 1, "--certainty", "99.9%").output
    assert "If at most 1 of them is wrong, it is 99.9% certain" in words
    assert answered("--bins", 300, "--allowed", 1)["count"] > 104


def test_a_share_of_whole_bins():
    """29 % of 100 bins are 29: thirty are too many."""
    assert 30 == answered("--bins", 100, "--most", "29%")["too_many"]


def test_what_was_found():
    """Two wrong of fifty say what the rest may hold and what share goes wrong in the long run."""
    answer = answered("--bins", 300, "--counted", 50, "--wrong", 2)
    low, high = answer["wrong_of_the_rest"]
    assert [low + 2, high + 2] == answer["wrong_of_all"]
    assert 0 <= low < 10 < high < 250
    words = run("--bins", 300, "--counted", 50, "--wrong", 2).output
    assert f"2 of 50 bins counted are wrong, 4.0%. Of the 250 bins not counted {low} to {high} are wrong" in words
    assert "0.5% to 13.7% of its bins wrong" in words  # scipy's binomtest(2, 50).proportion_ci(): 0.0049 to 0.1371


def test_all_counted():
    """When every bin was counted nothing is guessed."""
    words = run("--bins", 20, "--counted", 20, "--wrong", 1).output
    assert "1 of 20 bins counted is wrong, 5.0%. That is every bin: nothing is left open." in words


@pytest.mark.parametrize(
    "arguments",
    [
        ("--bins", 0),
        ("--bins", 100_001),
        ("--bins", 300, "--counted", 5),
        ("--bins", 300, "--wrong", 5),
        ("--bins", 300, "--counted", 5, "--wrong", 6),
        ("--bins", 300, "--counted", 301, "--wrong", 6),
        ("--bins", 300, "--allowed", 7),
        ("--bins", 300, "--certainty", "100%"),
    ],
)
def test_wrong_usage(arguments):
    """What can't be asked ends with status 2 and words."""
    result = run(*arguments)
    assert (2, True) == (result.exit_code, "Error: " in result.output)
