"""`scanflow plan`: sizing, placing and walking, each with what it takes for granted."""

import json
from collections.abc import Iterable
from dataclasses import asdict
from pathlib import Path
from typing import Any

import click

from scanflow.cli.opening import in_shop, open_shop
from scanflow.cli.plan.count import count
from scanflow.cli.plan.option_types import COUNTS, SHARE, SIZE, as_json, say_assumptions
from scanflow.cli.plan.room import room
from scanflow.planning import measures, stays
from scanflow.planning.sizing import Burst, Demand, Season, Sizing, intake_carried, judge_section, size_section

POSITIVE = click.FloatRange(0, min_open=True, max=1e6)
WIDEST_BAR = 40

per_bin = click.option("--per-bin", type=click.IntRange(1, 1000), default=20, show_default=True, help="Slots in a bin.")


@click.group()
def plan() -> None:
    """Plan a room: how many slots, how many in a bin, which racks, where things go, how many bins to count."""


plan.add_command(room)
plan.add_command(count)


def _estimate(section: str, data: Path | None, database: str | None) -> stays.StayEstimate:
    from scanflow.workflow.ports import Missing
    from scanflow.workflow.stock.history import stays_in

    shop = open_shop(data, database)
    try:
        with shop.looking() as unit:
            return stays.estimate(stays.observe(stays_in(unit, section.upper()), unit.at))
    except (Missing, stays.NothingEnded) as error:
        raise click.ClickException(str(error)) from error
    finally:
        shop.close()


@plan.command()
@click.option("--intake", type=POSITIVE, required=True, help="Items that come in, a week.")
@click.option("--stay", type=POSITIVE, help="Days that an item stays, on average.")
@click.option("--section", help="Instead of --stay: the section whose own stays say how long.")
@click.option("--risk", type=SHARE, default="1%", show_default=True, help="Share of items that may find no card.")
@click.option("--slots", "have", type=click.IntRange(1, 100_000), help="The reverse: what so many slots are good for.")
@per_bin
@click.option("--batch", type=COUNTS, help="Items that some buying days brought, like 4,12,20.")
@click.option("--season", type=click.FloatRange(0, 1), help="Swing of the intake over a year, 0 to 1 of its mean.")
@as_json
@in_shop
def slots(
    intake: float,
    stay: float | None,
    section: str | None,
    risk: float,
    have: int | None,
    per_bin: int,
    batch: tuple[int, ...] | None,
    season: float | None,
    as_json: bool,
    data: Path | None,
    database: str | None,
) -> None:
    """How many slots and bins a section needs, or what those it has are good for."""
    if (stay is None) == (section is None):
        raise click.UsageError("Say how long items stay: --stay DAYS, or --section with the shop's own stays.")
    own = _estimate(section, data, database) if section is not None else None
    days = own.mean if own else stay
    assert days is not None  # one of the two was given
    try:
        burst, swing = Burst(batch) if batch else None, Season(season) if season else None
        demand = Demand(intake, days, burst, swing, own.shorter_of_two if own else 0.5)
    except ValueError as error:
        raise click.UsageError(str(error)) from error
    if have is None:
        sizing, carried = size_section(demand, risk, per_bin), None
    else:
        sizing, carried = judge_section(demand, have, per_bin), intake_carried(demand, have, risk)
    assumptions = (*(own.assumptions() if own else ()), *sizing.assumptions)
    if as_json:
        click.echo(json.dumps(_sizing_as_dict(sizing, carried, assumptions)))
    else:
        _tell(sizing, carried, risk)
        say_assumptions(assumptions)


def _tell(sizing: Sizing, carried: float | None, risk: float) -> None:
    """What a section needs at this risk; with `carried`, items a week, what the slots it has are good for."""
    if carried is None:
        click.echo(
            f"{sizing.needed.slots} slots keep the risk of finding no free card at {risk:.2%}. "
            f"{sizing.bins} bins of {sizing.slots_per_bin} make {sizing.chosen.slots}: {sizing.chosen.risk:.2%}."
        )
    else:
        click.echo(
            f"With {sizing.chosen.slots} slots {sizing.chosen.risk:.2%} of the items find no free card. "
            f"At {risk:.2%} they carry {carried:.1f} items a week."
        )
    click.echo(
        f"At that risk {sizing.no_card_a_year:.1f} items a year have no card; with one more bin "
        f"{sizing.no_card_a_year - sizing.saved_by_one_more:.1f}."
    )
    _curve(sizing)


def _curve(sizing: Sizing) -> None:
    click.echo("slots  finds no card")
    step = max(1, len(sizing.curve) // 12)
    shown = {*sizing.curve[::step], sizing.needed, sizing.chosen, sizing.one_more}
    for point in sorted(shown, key=lambda each: each.slots):
        bar = "#" * round(point.risk * WIDEST_BAR / sizing.curve[0].risk)
        mark = "  <- chosen" if point == sizing.chosen else ""
        click.echo(f"{point.slots:5}  {point.risk:8.3%}  {bar}{mark}")


def _sizing_as_dict(sizing: Sizing, carried: float | None, assumptions: Iterable[str]) -> dict[str, Any]:
    demand = sizing.demand
    return {
        "intake": demand.intake,
        "stay": demand.stay,
        "load": demand.load,
        "peak_load": demand.peak_load,
        "peakedness": demand.peakedness,
        "accepted": sizing.accepted,
        "slots_per_bin": sizing.slots_per_bin,
        "needed": asdict(sizing.needed),
        "bins": sizing.bins,
        "chosen": asdict(sizing.chosen),
        "one_more": asdict(sizing.one_more),
        "no_card_a_year": sizing.no_card_a_year,
        "saved_by_one_more": sizing.saved_by_one_more,
        "intake_carried": carried,
        "curve": [asdict(point) for point in sizing.curve],
        "assumptions": list(assumptions),
    }


@plan.command("stays")
@click.argument("section")
@as_json
@in_shop
def stays_command(section: str, as_json: bool, data: Path | None, database: str | None) -> None:
    """How long items stay in SECTION, from the shop's own stays. Status 1 while none has ended."""
    found = _estimate(section, data, database)
    if as_json:
        click.echo(json.dumps({**asdict(found), "mean": found.mean, "assumptions": found.assumptions()}))
        return
    median = f"half are gone after {found.median:.1f} days" if found.median is not None else "most are still there"
    click.echo(f"Items of section {section.upper()} stay {found.mean:.1f} days on average; {median}.")
    say_assumptions(found.assumptions())


def _sizes_of(file: Path) -> list[measures.Size]:
    sizes = []
    for number, line in enumerate(file.read_text(encoding="utf-8-sig").splitlines(), 1):
        if line.strip():
            try:
                sizes.append(measures.size(line))
            except ValueError as error:
                raise click.ClickException(f"Line {number} of {file}: {error}") from error
    return sizes


@plan.command("bulk")
@click.argument("items", nargs=-1, type=SIZE, metavar="[SIZE]...")
@click.option("--bin", "bin_", type=SIZE, default="23x8x6in", show_default=True, help="Inner size of a bin.")
@click.option("--sample", type=click.Path(exists=True, dir_okay=False, path_type=Path), help="File, a size a line.")
@as_json
def bulk_command(items: tuple[measures.Size, ...], bin_: measures.Size, sample: Path | None, as_json: bool) -> None:
    """How many items go into every bin, from their sizes. Status 1 if none goes into it."""
    from scanflow.planning.bulk import Count, NothingFits, bulk

    things = [*items, *(_sizes_of(sample) if sample else [])]
    if not things:
        raise click.UsageError("Give sizes of items, like 5x4x3in, or a --sample file.")
    try:
        answer = bulk(things, bin_)
    except NothingFits as error:
        raise click.ClickException(str(error)) from error
    if not as_json:
        click.echo(f"{answer.count.slots_per_bin} in every bin; {answer.count.wasted:.0%} of its floor stays empty.")
        for sentence in answer.warnings:
            click.echo(sentence)
        say_assumptions(answer.assumptions)
        return

    def told(count: Count) -> dict[str, Any]:
        return {"slots_per_bin": count.slots_per_bin, "wasted": count.wasted, "items": len(count.shares)}

    split = answer.split and {
        "limit": answer.split.limit,
        "small": told(answer.split.small),
        "large": told(answer.split.large),
        "saved": answer.split.saved,
    }
    click.echo(
        json.dumps(
            {
                **told(answer.count),
                "too_big": answer.too_big,
                "split": split,
                "warnings": answer.warnings,
                "assumptions": answer.assumptions,
            }
        )
    )


@plan.command("placing")
@click.option("--intake", type=POSITIVE, required=True, help="Items that come in, a week.")
@click.option("--quick", type=SHARE, required=True, help="Share of them that sells quickly.")
@click.option("--quick-stay", type=POSITIVE, required=True, help="Days that quick ones stay, on average.")
@click.option("--slow-stay", type=POSITIVE, required=True, help="Days that the others stay, on average.")
@click.option("--bins", type=click.IntRange(1, 10_000), required=True, help="Bins of the section, first by the table.")
@per_bin
@click.option("--seed", type=int, default=1, show_default=True)
@as_json
def placing_command(
    intake: float,
    quick: float,
    quick_stay: float,
    slow_stay: float,
    bins: int,
    per_bin: int,
    seed: int,
    as_json: bool,
) -> None:
    """Compare two rules: always use the lowest free number, or keep near bins for fast sellers."""
    from scanflow.planning.layout import SectionToPlace, alphabetical_room, racks_for, walks_to
    from scanflow.planning.placing import compare

    if intake / 7 * (quick * quick_stay + (1 - quick) * slow_stay) > 10_000:
        raise click.UsageError("That is more than 10,000 items at once.")
    kinds = [SectionToPlace("A", bins, 1)]
    racks = racks_for(kinds)
    walks = walks_to(alphabetical_room(kinds, racks), racks)
    answer = compare(intake, quick, quick_stay, slow_stay, per_bin, walks, seed=seed)
    if as_json:
        gain = {"metres_saved": answer.metres_saved, "bins_more": answer.bins_more}
        click.echo(json.dumps({**asdict(answer), **gain}))
        return
    click.echo("                      walk a pick  open bins  highest number")
    for name, outcome in (("lowest free number", answer.lowest), ("near for the quick", answer.near)):
        click.echo(f"{name:20}  {outcome.walk:9.2f} m  {outcome.open_bins:9.1f}  {outcome.highest:14}")
    click.echo(
        f"Keeping numbers up to {answer.reserved} for quick sellers saves {answer.metres_saved:.2f} m a pick and keeps "
        f"{answer.bins_more:.1f} more bins open."
    )
    say_assumptions(answer.assumptions)
