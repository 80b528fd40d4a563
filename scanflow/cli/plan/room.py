"""`scanflow plan room`: racks, the sections on them, the walk, and drawings."""

import json
import re
from dataclasses import asdict
from pathlib import Path
from typing import TYPE_CHECKING, Any

import click

from scanflow.cli.opening import in_shop, open_shop
from scanflow.cli.plan.option_types import LENGTH, SIZE, Typed, as_json, say_assumptions
from scanflow.domain.words import units
from scanflow.planning import drawing, racking
from scanflow.planning.layout import RoomPlan, SectionToPlace, plan_room
from scanflow.planning.measures import Size

if TYPE_CHECKING:
    from scanflow.shop import Shop


def _kind(text: str) -> SectionToPlace:
    match = re.fullmatch(r"([A-Za-z]{1,2}):([0-9]{1,4}):([0-9]{1,6}(?:\.[0-9]+)?)(:low)?", text)
    if match is None:
        raise ValueError(f"{text!r} is no section like D:12:30 or W:6:4:low (letters, bins, visits a week)")
    return SectionToPlace(match[1].upper(), int(match[2]), float(match[3]), low=bool(match[4]))


KIND = Typed("section", _kind)
SVG = click.Path(dir_okay=False, path_type=Path)


@click.command("room")
@click.argument("sections", nargs=-1, type=KIND, metavar="[SECTION]...")
@click.option("--rack", type=SIZE, default="24x48x72in", show_default=True, help="Outer size of a rack.")
@click.option("--bin", "bin_", type=SIZE, default="23x8x6in", show_default=True, help="Outer size of a bin at its rim.")
@click.option("--base-width", type=LENGTH, help="Outer width of a bin at its floor, where its walls slope.")
@click.option("--kg", type=click.FloatRange(0), help="Weight of a full bin.")
@click.option("--rated", type=click.FloatRange(0), help="The maker's rating for a shelf, in kg.")
@click.option("--stops", type=click.IntRange(1, 100), default=8, show_default=True, help="Stops of a round.")
@click.option("--table", type=click.FloatRange(-100, 600), default=0.0, help="Aisle before the table, 0 the first.")
@click.option("--keep", is_flag=True, help="Keep these measures: the shop's room is drawn and walked by them.")
@click.option("--seed", type=int, default=1, show_default=True)
@click.option("--plan", "plan_file", type=SVG, help="Draw the room from above into this SVG file.")
@click.option("--front", "front_file", type=SVG, help="Draw the fronts of the racks into this SVG file.")
@as_json
@in_shop
def room(
    sections: tuple[SectionToPlace, ...],
    rack: Size,
    bin_: Size,
    base_width: float | None,
    kg: float | None,
    rated: float | None,
    stops: int,
    table: float,
    keep: bool,
    seed: int,
    plan_file: Path | None,
    front_file: Path | None,
    as_json: bool,
    data: Path | None,
    database: str | None,
) -> None:
    """Bins on racks, and where each SECTION stands: LETTERS:BINS:VISITS, with :low for heavy or bulky things.

    Without sections it only tells how many bins fit on a rack. Status 1 if not one does.
    """
    if not sections and (plan_file or front_file):
        raise click.UsageError("A drawing needs sections.")
    try:
        fit = racking.racking(racking.BinShape(bin_, base_width), racking.RackShape(rack))
    except racking.NoBinFits as error:
        raise click.ClickException(str(error)) from error
    found = _plan(sections, fit, table, stops, seed) if sections else None
    if keep:
        _keep(fit, kg, rated, table, open_shop(data, database))
    cautions = fit.cautions(kg, rated)
    if found is not None:
        _draw(found, plan_file, front_file)
    if as_json:
        click.echo(json.dumps(_as_dict(fit, cautions, found)))
    else:
        _tell(fit, cautions, found)


def _keep(fit: racking.Racking, kg: float | None, rated: float | None, table: float, shop: "Shop") -> None:
    """Tell the shop, in mm and kg; ClickException where bins that hang already would have no place."""
    from scanflow.workflow import stock
    from scanflow.workflow.ports import Invalid

    rack, rim = (f"{size.depth:g} x {size.width:g} x {size.height:g} mm" for size in (fit.rack.size, fit.bin.rim))
    others = ("" if value is None else f"{value:g}" for value in (fit.bin.base_width, kg, rated, table))
    try:
        measures = stock.MeasureRacks.of(asdict(racking.Measured(rack, rim, *others)))
        shop.act("scanflow plan", lambda unit: stock.measure_racks(unit, measures))
    except Invalid as error:
        raise click.ClickException(error.detail) from error
    finally:
        shop.close()


def _plan(sections: tuple[SectionToPlace, ...], fit: racking.Racking, table: float, stops: int, seed: int) -> RoomPlan:
    shape, low, easy = fit.shape(table_aisle=table), fit.low_tiers, fit.easy_tiers
    try:
        return plan_room(sections, shape, stops=stops, low_tiers=low, easy_tiers=easy, seed=seed)
    except ValueError as error:
        raise click.UsageError(str(error)) from error


def _draw(found: RoomPlan, plan_file: Path | None, front_file: Path | None) -> None:
    try:
        if plan_file:
            plan_file.write_text(drawing.plan_view(found.racks, found.shape), encoding="utf-8")
        if front_file:
            front_file.write_text(drawing.front_view(found.racks, found.bins, found.shape), encoding="utf-8")
    except OSError as error:
        raise click.ClickException(str(error)) from error


def _tell(fit: racking.Racking, cautions: tuple[str, ...], found: RoomPlan | None) -> None:
    click.echo(
        f"{units(fit.positions, 'bin')} across ({fit.spare:.0f} mm to spare) and {units(fit.tiers, 'tier')}: "
        f"{units(fit.positions * fit.tiers, 'bin')} on a rack."
    )
    if found is not None:
        _tell_plan(found)
    click.echo("Mind:")
    for sentence in cautions:
        click.echo(f"- {sentence}")
    if found is not None:
        say_assumptions(found.assumptions)


def _tell_plan(found: RoomPlan) -> None:
    click.echo(f"{units(len(found.racks), 'rack')}. A round of {units(found.stops, 'stop')} walks")
    for name, walk in (("here", found.walk), ("by letters", found.alphabetical), ("at random", found.random)):
        click.echo(f"{name:>12}  {walk.metres:6.1f} m" + (f" (± {2 * walk.error:.1f})" if walk.error else ""))
    for rack in found.racks:
        click.echo(f"Rack {rack.name}, aisle {rack.aisle}, {rack.start:.1f} m from the front:")
        for tier in range(found.shape.tiers, 0, -1):
            row = {each.position: each.section for each in found.bins if (each.rack, each.tier) == (rack.name, tier)}
            click.echo(f"  {tier}  " + " ".join(f"{row.get(at + 1, '.'):2}" for at in range(found.shape.positions)))


def _as_dict(fit: racking.Racking, cautions: tuple[str, ...], found: RoomPlan | None) -> dict[str, Any]:
    report = {
        "positions": fit.positions,
        "tiers": fit.tiers,
        "spare_mm": fit.spare,
        "low_tiers": fit.low_tiers,
        "cautions": cautions,
    }
    return report if found is None else {**report, **asdict(found)}
