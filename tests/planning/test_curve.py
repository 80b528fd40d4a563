"""The curve of a sizing, read back from its SVG."""

from __future__ import annotations

import xml.etree.ElementTree as ET
from math import log10

import pytest

from scanflow.planning.curve import curve
from scanflow.planning.sizing import Demand, Point, size_section

SVG = "{http://www.w3.org/2000/svg}"


def circles(drawn: ET.Element) -> dict[str, tuple[float, float]]:
    return {
        str(each.get("class")): (float(each.get("cx", "")), float(each.get("cy", "")))
        for each in drawn.iter(f"{SVG}circle")
    }


def lines(drawn: ET.Element) -> dict[str, float]:
    """Height of the line of each risk, by its words; the words stand 5 px lower."""
    texts = [each for each in drawn.iter(f"{SVG}text") if each.get("text-anchor") == "end" and each.text != "cards"]
    return {str(each.text): float(each.get("y", "")) - 5 for each in texts}


def test_points_lie_where_their_risk_is() -> None:
    """On the logarithmic scale the chosen point and one bin more lie between the lines of the risks around theirs."""
    sizing = size_section(Demand(15, 45), 0.01, 20)
    drawn = ET.fromstring(curve(sizing))
    ten, hundred = lines(drawn)["1 in 10"], lines(drawn)["1 in 100"]
    for name, point in (("chosen", sizing.chosen), ("ring", sizing.one_more)):
        expected = hundred + (-2 - log10(max(point.risk, 1e-4))) * (hundred - ten)
        assert expected == pytest.approx(circles(drawn)[name][1], abs=0.2)
    assert circles(drawn)["chosen"][0] < circles(drawn)["ring"][0]


def test_the_line_falls_from_left_to_right() -> None:
    """More cards never mean more risk."""
    drawn = ET.fromstring(curve(size_section(Demand(15, 45), 0.01, 20)))
    line = drawn.find(f"{SVG}polyline")
    assert line is not None
    points = [tuple(map(float, pair.split(","))) for pair in str(line.get("points")).split()]
    assert points == sorted(points)
    assert [y for _, y in points] == sorted(y for _, y in points)


@pytest.mark.parametrize("have", [Point(1, 0.99), Point(4000, 0.0)])
def test_all_stays_in_view(have: Point) -> None:
    """Few cards or very many: every mark is within the picture."""
    drawn = ET.fromstring(curve(size_section(Demand(15, 45), 0.01, 20), have))
    width, height = map(float, str(drawn.get("viewBox")).split()[2:])
    box = drawn.find(f"{SVG}rect")
    assert box is not None
    places = [*circles(drawn).values(), (float(box.get("x", "")) + 6, float(box.get("y", "")) + 6)]
    assert all(0 <= x <= width and 0 <= y <= height for x, y in places)
