"""What `scanflow cards` says about the sheets it made."""

from pathlib import Path
from typing import Any

import click

from labels import card, facts, sheet, slot_code
from scanflow.domain.words import units

CAUTIONS = (
    "Laminators are hot and cutters are sharp: follow the makers' instructions and your local rules, cut away from "
    "the hand, keep children away, and let cards cool before you stack them.",
)


def report(
    codes: list[str],
    design: card.CardDesign,
    layout: sheet.Layout,
    pages: list[sheet.SheetPage],
    files: list[Path],
    margin: float,
) -> dict[str, Any]:
    """What was printed, how far it can be read, and what to mind; lengths in mm, distances in m."""
    known = facts.facts([each for page in pages for each in page.cards], layout, design, codes[0], codes[-1])
    return {
        "out": str(files[0]),
        "files": [str(file) for file in files],
        "pages": len(pages),
        "texts": [slot_code.card_text(code) for code in codes],
        "style": design.style.value,
        "card_mm": [round(side, 2) for side in known.card],
        "laminated_mm": known.laminated and [round(side, 2) for side in known.laminated],
        "x_mm": known.module and round(known.module, 4),
        "bar_height_mm": known.bar_height and round(known.bar_height, 2),
        "cap_height_mm": round(known.cap_height, 2),
        "reads_at_m": round(known.reads_at, 2),
        "reads_at_most_m": round(known.reads_at_most, 2),
        "reads_at_m_in_style": {style.value: round(metres, 2) for style, metres in known.by_style.items()},
        "contrast": {"red_light": round(known.red_light, 2), "camera": round(known.camera, 2)},
        "scale_bar": layout.ruler is not None,
        "warnings": facts.warnings(layout, margin),
        "cautions": list(CAUTIONS),
    }


def tell(report: dict[str, Any]) -> None:
    """Say what was printed, for a person."""
    slots, files = len(report["texts"]), ", ".join(report["files"])
    what = f"Fronts of the bins of {units(slots, 'slot')}" if report["style"] == "bin" else units(slots, "card")
    click.echo(f"{what} on {units(report['pages'], 'page')} in {files}. Print at 100 %, not fitted to the page.")
    if report["x_mm"]:
        click.echo(f"Narrowest bar {report['x_mm']:.2f} mm, bars {report['bar_height_mm']:.1f} mm high.")
    click.echo(
        f"The number is {report['cap_height_mm']:.1f} mm high: easily read from {report['reads_at_m']:.1f} m, "
        f"at most from {report['reads_at_most_m']:.1f} m (20 and 16 minutes of arc, ISO 9241-3)."
    )
    styles = ", ".join(f"{style} {metres:.1f} m" for style, metres in report["reads_at_m_in_style"].items())
    click.echo(f"Easily read on cards of this size in each style: {styles}.")
    if report["laminated_mm"]:
        width, height = report["laminated_mm"]
        click.echo(
            "Cut the cards out, lay them into the pouch as far apart as they were printed, and cut the laminate by "
            f"itself, in the middle between them: {width:.0f} x {height:.0f} mm."
        )
    for line in (*report["warnings"], *report["cautions"]):
        click.echo(line)
