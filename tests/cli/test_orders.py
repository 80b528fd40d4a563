"""`scanflow orders`: a file of orders is loaded by a command."""

from __future__ import annotations

import json
from pathlib import Path

from click.testing import CliRunner, Result

from scanflow.cli import main
from scanflow.cli.opening import open_shop
from scanflow.domain.things import Order
from scanflow.workflow.orders import channels

FILE = "number,ordered at,reference\n1001,soon,nothing\n1001,soon,nothing\n1002,25/11/2026,nothing\n5 rows,,\n"


def load(folder: Path, rows: str, *more: str) -> Result:
    """The command for a file of these rows."""
    file = folder / "orders.csv"
    file.write_text(rows, encoding="utf-8")
    return CliRunner().invoke(main, ["orders", str(file), "--data", str(folder / "shop"), *more])


def test_the_channel_must_be_named(tmp_path: Path) -> None:
    """Wrong usage where neither the file nor the command names it; nothing is loaded then."""
    rows = "number,reference\n1,Q1\n"
    without = load(tmp_path, rows)
    assert (2, True) == (without.exit_code, "--channel" in without.output)
    assert 1 == load(tmp_path, rows, "--channel", "fair").exit_code  # its line is held
    assert 1 == load(tmp_path, "number,channel,reference\n1,corner,Q1\n").exit_code
    shop = open_shop(tmp_path / "shop", None)
    with shop.looking() as unit:
        assert ["fair", "corner"] == [order.channel for order in unit.find(Order)]
    shop.close()


def test_what_was_sent_already_is_told_and_no_fault(tmp_path: Path) -> None:
    """Status 0, and its row is named; a status that nobody explained is refused with its word, and status 1."""
    shop = open_shop(tmp_path / "shop", None)
    said = channels.SayChannel.of({"name": "fair", "statuses": {"Gone": "sent"}})
    shop.act("owner", lambda unit: channels.say(unit, said))
    shop.close()
    done = load(tmp_path, "number,reference,status\n1,Q1,gone\n", "--channel", "fair")
    assert (0, True) == (done.exit_code, "Row 2 is left out: Order 1 was sent already" in done.output)
    new = load(tmp_path, "number,reference,status\n1,Q1,Blue\n", "--channel", "fair", "--json")
    told = json.loads(new.stdout)
    assert (1, [(2, "new_status")]) == (new.exit_code, [(row["row"], row["code"]) for row in told["refused"]])
    assert "“Blue”" in told["refused"][0]["text"]


def test_warnings_go_to_the_error_stream(tmp_path: Path) -> None:
    """What holds no line is told beside the report, which stays as it is; so is how the dates were read."""
    done = load(tmp_path, FILE, "--channel", "fair", "--json")
    told = json.loads(done.stdout)
    assert (1, {"loaded", "changed", "unchanged", "held", "refused"}) == (done.exit_code, set(told))
    assert (2, [(5, "no_order")]) == (told["loaded"], [(row["row"], row["code"]) for row in told["refused"]])
    expected = [
        "Row 2: “soon” can't be read as a date. The row is taken without it.",
        "Row 3: This row says the same as row 2. It counts once.",
        "Dates are read day first. Row 4 proves it: “25/11/2026”.",
    ]
    assert expected == done.stderr.splitlines()
