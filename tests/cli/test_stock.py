"""`scanflow stock`: what stands in the room goes out as a file, and comes in as one."""

from __future__ import annotations

import csv
from pathlib import Path

from click.testing import CliRunner

from scanflow.cli import main
from scanflow.cli.opening import open_shop
from scanflow.workflow import stock

SECTION = stock.AddSection(code="D", name="Derailleurs", slots_per_bin=5, colour="blue")


def test_the_stock_is_saved(tmp_path: Path) -> None:
    """A row for each thing; a day before anything stood here has none, and what is no day is refused."""
    data, file = tmp_path / "shop", tmp_path / "stock.csv"
    shop = open_shop(data, None)

    def furnish(unit: stock.Unit) -> None:
        stock.add_section(unit, SECTION)
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
    (tmp_path / "s.csv").write_text("number,title\nD001,Crank\n", encoding="utf-8")
    for command in ("save", "load"):
        done = CliRunner().invoke(main, ["stock", command, str(tmp_path / "s.csv"), "--data", str(tmp_path / "no")])
        assert (1, False) == (done.exit_code, (tmp_path / "no").exists())


def test_the_stock_is_loaded(tmp_path: Path) -> None:
    """A dry run stores nothing; a refused row is named and makes the status 1."""
    data, file = tmp_path / "shop", tmp_path / "stock.csv"
    shop = open_shop(data, None)
    shop.act("owner", lambda unit: stock.add_section(unit, SECTION))
    shop.act("owner", lambda unit: stock.add_slots(unit, "D", stock.AddSlots(count=2)))
    shop.close()
    file.write_text("number,title\nD001,Crank\nD009,Saddle\n", encoding="utf-8")

    def load(*more: str) -> tuple[int, list[str]]:
        done = CliRunner().invoke(main, ["stock", "load", str(file), "--data", str(data), *more])
        return done.exit_code, done.output.splitlines()

    refused = "Row 3 was refused: No card here has the number D009."
    assert (1, ["Nothing is stored yet. It would be: 1 thing stored, 0 unchanged, 1 refused.", refused]) == load(
        "--dry-run"
    )
    assert (1, ["1 thing stored, 0 unchanged, 1 refused.", refused]) == load()
    file.write_text("number,title\nD001,Crank\n", encoding="utf-8")
    assert (0, ["0 things stored, 1 unchanged, 0 refused."]) == load()
    file.write_text("colour\nred\n", encoding="utf-8")
    assert (1, ["Error: No column holds the number on the card. Call it “number”."]) == load()
