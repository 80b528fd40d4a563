"""`scanflow listings check`: what a channel offers against what stands here."""

from __future__ import annotations

import json
from pathlib import Path

from click.testing import CliRunner

from labels.slot_code import reference
from scanflow.cli import main
from scanflow.cli.opening import open_shop
from scanflow.workflow import stock


def furnished(data: Path) -> None:
    shop = open_shop(data, None)

    def furnish(unit: stock.Unit) -> None:
        stock.add_section(unit, stock.AddSection(code="D", name="Derailleurs", slots_per_bin=5, colour="blue"))
        stock.add_slots(unit, "D", stock.AddSlots(count=2))
        stock.put_away(unit, stock.PutAway(title="Rear derailleur", section="D", listing="L-1", channel="corner"))

    shop.act("owner", furnish)
    shop.close()


def test_differences_are_told_and_make_the_status_1(tmp_path: Path) -> None:
    """What agrees makes it 0; as JSON the same is one document."""
    data, file = tmp_path / "shop", tmp_path / "corner.csv"
    furnished(data)

    def check(listing: str, *more: str) -> tuple[int, str]:
        file.write_text(f"reference,listing\n{reference('D001', 1)},{listing}\n", encoding="utf-8")
        command = ["listings", "check", str(file), "--channel", "corner", "--data", str(data), *more]
        done = CliRunner().invoke(main, command)
        return done.exit_code, done.output

    assert (0, "1 row of corner, 0 differences.\n") == check("L-1")
    status, said = check("L-9")
    assert (1, "1 row of corner, 2 differences.") == (status, said.splitlines()[0])
    assert "New listing ids: row 2, L-9, D001-019, Rear derailleur. Its id was not known here." in said
    status, said = check("L-9", "--json")
    assert (1, ["new_id", "down"]) == (status, [each["kind"] for each in json.loads(said)["differs"]])


def test_what_cannot_be_checked_is_told(tmp_path: Path) -> None:
    """A file that names no thing, a folder without a shop, and no channel."""
    data, file = tmp_path / "shop", tmp_path / "corner.csv"
    furnished(data)
    file.write_text("colour\nred\n", encoding="utf-8")
    command = ["listings", "check", str(file), "--channel", "corner", "--data"]
    done = CliRunner().invoke(main, [*command, str(data)])
    assert (1, True) == (done.exit_code, "No column holds the reference or the listing id." in done.output)
    assert 1 == CliRunner().invoke(main, [*command, str(tmp_path / "none")]).exit_code
    assert 2 == CliRunner().invoke(main, ["listings", "check", str(file), "--data", str(data)]).exit_code
