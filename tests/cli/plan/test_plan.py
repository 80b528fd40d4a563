"""The plans, as a person asks for them."""

from __future__ import annotations

import json
import xml.etree.ElementTree as ET
from datetime import UTC, datetime, timedelta

import pytest
from click.testing import CliRunner

from scanflow.cli import main
from scanflow.planning.erlang import blocking
from scanflow.shop import Shop
from scanflow.storage.database import Database
from scanflow.storage.engine import sqlite_url
from scanflow.workflow import stock


def run(*arguments):
    return CliRunner().invoke(main, ["plan", *(str(argument) for argument in arguments)])


def answered(*arguments):
    """The JSON document that a plan prints."""
    result = run(*arguments, "--json")
    assert 0 == result.exit_code, result.output
    return json.loads(result.output)


def test_slots_for_five_a_day():
    """Five a day for sixty days need 324 slots at 1 %, in words and as JSON."""
    # computed by the recursion with an independent program
    answer = answered("slots", "--intake", 35, "--stay", 60)
    assert (324, 340, 17) == (answer["needed"]["slots"], answer["chosen"]["slots"], answer["bins"])
    assert answer["chosen"] in answer["curve"] and answer["assumptions"]
    words = run("slots", "--intake", 35, "--stay", 60).output
    assert "324 slots" in words and "17 bins of 20 make 340" in words and "<- chosen" in words
    assert "Assumptions:\n- " in words


def test_how_often_120_cards_are_too_few():
    """The reverse: 14 a week for 55 days find none of 120 cards free as often as the formula says."""
    answer = answered("slots", "--intake", 14, "--stay", 55, "--slots", 120)
    assert pytest.approx(blocking(110, 120)) == answer["chosen"]["risk"]
    assert blocking(answer["intake_carried"] / 7 * 55, 120) == pytest.approx(0.01)
    assert "With 120 slots 2.78%" in run("slots", "--intake", 14, "--stay", 55, "--slots", 120).output


def test_batches_and_seasons_take_more_slots():
    """Buying days and a season each need more slots."""
    needed = [
        answered("slots", "--intake", 35, "--stay", 60, *more)["needed"]["slots"]
        for more in ((), ("--season", 0.5), ("--batch", "4,12"), ("--batch", "4,12", "--season", 0.5))
    ]
    assert sorted(set(needed)) == [needed[0], needed[2], needed[1], needed[3]]


@pytest.fixture
def old_shop(tmp_path):
    """A shop where twelve saddles came a day after another; the first eight left after 30 days each, a lamp never."""
    now = datetime(2024, 1, 1, tzinfo=UTC)
    shop = Shop(Database(sqlite_url(tmp_path / "shop")), clock=lambda: now)

    def act(work):
        return shop.act("test", work)

    for code in "SL":
        act(
            lambda unit, code=code: stock.add_section(
                unit, stock.AddSection(code=code, name=code, slots_per_bin=10, colour="yellow")
            )
        )
        act(lambda unit, code=code: stock.add_slots(unit, code, stock.AddSlots(count=20)))
    saddles = []
    for number in range(12):
        now = datetime(2024, 1, 1, tzinfo=UTC) + timedelta(days=number)
        saddles.append(act(lambda unit: stock.put_away(unit, stock.PutAway(title="Saddle", section="S"))))
    act(lambda unit: stock.put_away(unit, stock.PutAway(title="Lamp", section="L")))
    for number in range(8):
        now = datetime(2024, 1, 31, tzinfo=UTC) + timedelta(days=number)
        act(lambda unit, number=number: stock.withdraw(unit, saddles[number].id, stock.Withdraw(reason="sold by hand")))
    shop.close()
    return tmp_path / "shop"


def test_stays_from_the_shops_own(old_shop):
    """The shop's own stays say how long: eight ended after 30 days, four are open, and of the lamps none ended."""
    answer = answered("stays", "s", "--data", old_shop)
    assert (8, 4, 30.0) == (answer["ended"], answer["still_open"], answer["median"])
    assert answer["mean"] > 30
    assert (
        "Stays that have ended: 8. Things still here, counted as staying at least this long: 4."
        in run("stays", "S", "--data", old_shop).output
    )
    sized = answered("slots", "--intake", 7, "--section", "S", "--data", old_shop)
    assert pytest.approx(answer["mean"], rel=1e-3) == sized["stay"]
    assert any("Things still here" in sentence for sentence in sized["assumptions"])
    for section, words in (("L", "No stay has ended"), ("Q", "Q")):
        refused = run("stays", section, "--data", old_shop)
        assert (1, True) == (refused.exit_code, words in refused.output)


def test_bulk_of_two_kinds(tmp_path):
    """Lamps and wheels in one section are told apart, typed or from a file of sizes."""
    sample = tmp_path / "sizes.txt"
    sample.write_text("2x7.5x6in\n\n11x8x6in\n", encoding="utf-8")
    typed = answered("bulk", "2x7.5x6in", "11x8x6in")
    assert typed == answered("bulk", "--sample", sample)
    assert (2, 12, 2) == (
        typed["slots_per_bin"],
        typed["split"]["small"]["slots_per_bin"],
        typed["split"]["large"]["slots_per_bin"],
    )
    assert "Make two sections" in run("bulk", "--sample", sample).output


def test_a_bad_line_of_a_sample_is_named(tmp_path):
    """A line that is no size is told with its number."""
    sample = tmp_path / "sizes.txt"
    sample.write_text("2x7.5x6in\nbig\n", encoding="utf-8")
    result = run("bulk", "--sample", sample)
    assert (1, True) == (result.exit_code, f"Line 2 of {sample}: 'big'" in result.output)


def test_a_room(tmp_path):
    """A room is told, drawn from above and in front, and walks less than by letters or at random."""
    sections = ("C:12:5:low", "D:30:40", "L:40:4", "S:18:30", "W:50:2")
    files = tmp_path / "plan.svg", tmp_path / "front.svg"
    answer = answered("room", *sections, "--plan", files[0], "--front", files[1])
    assert (5, 6, 150) == (answer["positions"], answer["tiers"], len(answer["bins"]))
    assert answer["walk"]["metres"] < min(answer["alphabetical"]["metres"], answer["random"]["metres"])
    drawn = [list(ET.parse(file).iter("{http://www.w3.org/2000/svg}g")) for file in files]
    assert [5, 5] == [sum(group.get("class") == "rack" for group in groups) for groups in drawn]
    assert 150 == sum(group.get("class") == "bin" for group in drawn[1])
    words = run("room", *sections, "--kg", 12, "--rated", 50).output
    assert "30 bins on a rack" in words and "Rack E" in words and "more than its maker's rating of 50 kg" in words


def test_bins_on_a_rack_alone():
    """Without sections the fit is told, and how a sloped bin changes it."""
    assert (5, 6) == tuple(answered("room")[name] for name in ("positions", "tiers"))
    assert 4 == answered("room", "--base-width", "10in")["positions"]
    assert "5 bins across" in run("room").output


def test_placing():
    """What near places save and cost is told for both ways."""
    asked = ("placing", "--intake", 35, "--quick", "50%", "--quick-stay", 10, "--slow-stay", 90, "--bins", 20)
    answer = answered(*asked)
    assert answer["metres_saved"] > 0
    assert answer["lowest"]["highest"] == answer["lowest"]["held"]
    assert pytest.approx(answer["near"]["open_bins"] - answer["lowest"]["open_bins"]) == answer["bins_more"]
    assert f"saves {answer['metres_saved']:.2f} m a pick" in run(*asked).output


def test_measures_are_kept(tmp_path):
    """With --keep the shop's room has these racks from then on; bins that hang already need their places."""
    sizes = ("--rack", "600x1475x1000", "--bin", "580x350x180", "--kg", 9, "--table", 0.5)
    assert 0 == run("room", *sizes, "--keep", "--data", tmp_path).exit_code
    shop = Shop(Database(sqlite_url(tmp_path)))
    with shop.looking() as unit:
        kept = unit.settings.racks
    assert (4, 3, 1.0) == (kept.shape().positions, kept.shape().tiers, kept.shape().table)
    assert "carries 36 kg" in kept.cautions()[0]
    shop.act(
        "owner",
        lambda unit: stock.add_section(
            unit, stock.AddSection(code="D", name="Derailleurs", slots_per_bin=1, colour="blue")
        ),
    )
    shop.act("owner", lambda unit: stock.add_slots(unit, "D", stock.AddSlots(count=12)))
    shop.close()
    refused = run("room", "--rack", "600x500x1000", "--keep", "--data", tmp_path)
    assert (1, True) == (refused.exit_code, "bins would have no place" in refused.output)


@pytest.mark.parametrize(
    ("arguments", "status"),
    [
        (("slots", "--intake", 35), 2),
        (("slots", "--intake", 35, "--stay", 60, "--section", "D"), 2),
        (("slots", "--intake", 0, "--stay", 60), 2),
        (("slots", "--intake", 99999, "--stay", 60), 2),
        (("slots", "--intake", 35, "--stay", 60, "--batch", "999999"), 2),
        (("slots", "--intake", 35, "--stay", 60, "--risk", "2"), 2),
        (("slots", "--intake", 35, "--stay", 60, "--risk", "often"), 2),
        (("slots", "--intake", 35, "--stay", 60, "--batch", "3,0"), 2),
        (("slots", "--intake", 35, "--stay", 60, "--season", "1.5"), 2),
        (("bulk",), 2),
        (("bulk", "5x4"), 2),
        (("bulk", "30x9x9in"), 1),
        (("room", "D:12"), 2),
        (("room", "D:0:3"), 2),
        (("room", "D:1:3", "D:2:3"), 2),
        (("room", "--plan", "room.svg"), 2),
        (("room", "--rack", "24x7x72in"), 1),
        (("room", "D:1:3", "--front", "/nonexistent/front.svg"), 1),
        (("placing", "--intake", 35, "--quick", "100%", "--quick-stay", 1, "--slow-stay", 9, "--bins", 2), 2),
        (("placing", "--intake", 1e6, "--quick", "50%", "--quick-stay", 1, "--slow-stay", 900, "--bins", 2), 2),
    ],
)
def test_refused(arguments, status):
    """What makes no sense gives status 2, what can't be answered 1, in a line and not as a traceback."""
    result = run(*arguments)
    assert (status, "Error: ") == (result.exit_code, result.output.splitlines()[-1][:7])
