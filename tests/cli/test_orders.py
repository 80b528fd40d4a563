"""The command that loads a file of orders."""

import json
from pathlib import Path

from click.testing import CliRunner

from scanflow.cli import main

FILE = "number,ordered at,reference\n1001,soon,nothing\n1001,soon,nothing\n1002,25/11/2026,nothing\n5 rows,,\n"


def test_warnings_go_to_the_error_stream(tmp_path: Path) -> None:
    """What holds no line is told beside the report, which stays as it is; so is how the dates were read."""
    file = tmp_path / "orders.csv"
    file.write_text(FILE)
    done = CliRunner().invoke(main, ["orders", str(file), "--data", str(tmp_path / "shop"), "--json"])
    told = json.loads(done.stdout)
    assert (1, {"loaded", "changed", "unchanged", "held", "refused"}) == (done.exit_code, set(told))
    assert (2, [(5, "no_order")]) == (told["loaded"], [(row["row"], row["code"]) for row in told["refused"]])
    expected = [
        "Row 2: “soon” can't be read as a date. The row is taken without it.",
        "Row 3: This row says the same as row 2. It counts once.",
        "Dates are read day first. Row 4 proves it: “25/11/2026”.",
    ]
    assert expected == done.stderr.splitlines()
