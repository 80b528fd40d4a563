"""What `scanflow cards` says about the sheets it made."""

from pathlib import Path
from typing import Any

import click

from labels import card, colour, paper, sheet, slot_code, typeface
from scanflow.cli.typed import units

CAUTIONS = (
    "Laminators are hot and cutters are sharp: follow the makers' instructions and your local rules, cut away from "
    "the hand, keep children away, and let cards cool before you stack them.",
)


def report(
    codes: list[str], look: card.Look, layout: sheet.Layout, pages: list[sheet.Page], files: list[Path]
) -> dict[str, Any]:
    """What was printed, how far it can be read, and what to mind; lengths in mm, distances in m."""
    drawn = [each for page in pages for each in page.cards]
    bars = [each.bars for each in drawn if each.bars]
    cap = min(each.cap_height for each in drawn)
    width, height = layout.card
    gutter = layout.gutter
    return {
        "out": str(files[0]),
        "files": [str(file) for file in files],
        "pages": len(pages),
        "texts": [slot_code.card_text(code) for code in codes],
        "style": look.style.value,
        "card_mm": [round(width, 2), round(height, 2)],
        "laminated_mm": [round(width + gutter, 2), round(height + gutter, 2)] if gutter > 0.1 + 1e-6 else None,
        "x_mm": round(min(bar.module for bar in bars), 4) if bars else None,
        "bar_height_mm": round(min(bar.height for bar in bars), 2) if bars else None,
        "cap_height_mm": round(cap, 2),
        "reads_at_m": round(typeface.reading_distance(cap), 2),
        "reads_at_most_m": round(typeface.reading_distance(cap, minutes=16), 2),
        "contrast": {
            "red_light": round(colour.contrast_under_red(_ground(look)), 2),
            "camera": round(colour.contrast_for_camera(_ground(look)), 2),
        },
        "scale_bar": layout.ruler is not None,
        "warnings": _warnings(layout),
        "cautions": list(CAUTIONS),
    }


def _ground(look: card.Look) -> str:
    return paper.WHITE if look.panel else look.paper.hex


def _warnings(layout: sheet.Layout) -> list[str]:
    found = []
    if 0.1 + 1e-6 < layout.gutter < 2 * sheet.SEALED_EDGE:
        found.append(
            f"Cards laid out {layout.gutter:g} mm apart have {layout.gutter / 2:g} mm of laminate around them; "
            f"a sealed edge is at least {sheet.SEALED_EDGE:g} mm: take --gutter {2 * sheet.SEALED_EDGE:g}."
        )
    if layout.ruler is None:
        found.append("There is no room for the scale bar: measure a printed label before you print them all.")
    if not layout.cut and min(layout.corner) < sheet.MARGIN:
        found.append("The labels reach closer to the paper's edge than many printers print: try one sheet.")
    return found


def tell(report: dict[str, Any]) -> None:
    slots, files = len(report["texts"]), ", ".join(report["files"])
    what = f"Fronts of the bins of {units(slots, 'slot')}" if report["style"] == "bin" else units(slots, "card")
    click.echo(f"{what} on {units(report['pages'], 'page')} in {files}. Print at 100 %, not fitted to the page.")
    if report["x_mm"]:
        click.echo(f"Narrowest bar {report['x_mm']:.2f} mm, bars {report['bar_height_mm']:.1f} mm high.")
    click.echo(
        f"The number is {report['cap_height_mm']:.1f} mm high: easily read from {report['reads_at_m']:.1f} m, "
        f"at most from {report['reads_at_most_m']:.1f} m (20 and 16 minutes of arc, ISO 9241-3)."
    )
    if report["laminated_mm"]:
        width, height = report["laminated_mm"]
        click.echo(
            "Cut the cards out, lay them into the pouch as far apart as they were printed, and cut the laminate by "
            f"itself, in the middle between them: {width:.0f} x {height:.0f} mm."
        )
    for line in (*report["warnings"], *report["cautions"]):
        click.echo(line)
