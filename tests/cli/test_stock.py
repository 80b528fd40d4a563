"""`scanflow stock save`: what stands in the room, in a file."""

from __future__ import annotations

import csv
from pathlib import Path

from click.testing import CliRunner

from scanflow.cli import main
from scanflow.cli.opening import open_shop
from scanflow.workflow import stock


def test_the_stock_is_saved(tmp_path: Path) -> None:
    """A row for each thing; a day before anything stood here has none, and what is no day is refused."""
    data, file = tmp_path / "shop", tmp_path / "stock.csv"
    shop = open_shop(data, None)

    def furnish(unit: stock.Unit) -> None:
        stock.add_section(unit, stock.AddSection(code="D", name="Derailleurs", slots_per_bin=5, colour="blue"))
        stock.add_slots(unit, "D", stock.AddSlots(count=2))
        stock.put_away(unit, stock.PutAway(title="Rear derailleur", section="D"))

    shop.act("owner", furnish)
    shop.close()
    done = CliRunner().invoke(main, ["stock", "save", str(file), "--data", str(data)])
    assert (0, f"Wrote 1 thing to {file}.\n") == (done.exit_code, done.output)
    [row] = csv.DictReader(file.open(encoding="utf-8"))
    assert ("D001", "Rear derailleur", "A-1-1") == (row["number"], row["title"], row["bin"])
    before = CliRunner().invoke(main, ["stock", "save", str(file), "--on", "2020-12-31", "--data", str(data)])
    assert (0, f"Wrote 0 things to {file}.\n") == (before.exit_code, before.output)
    assert 2 == CliRunner().invoke(main, ["stock", "save", str(file), "--on", "soon", "--data", str(data)]).exit_code


def test_a_folder_without_a_shop_gets_none(tmp_path: Path) -> None:
    """A mistyped folder is named, and stays as it was."""
    done = CliRunner().invoke(main, ["stock", "save", str(tmp_path / "s.csv"), "--data", str(tmp_path / "no")])
    assert (1, False) == (done.exit_code, (tmp_path / "no").exists())
