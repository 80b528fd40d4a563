"""A scan reflectance profile as a drawing to look at: SVG, as text."""

from xml.sax.saxutils import escape

from labels.grade import GradedScan

_WIDTH, _HEIGHT = 960, 260
_LEFT, _TOP, _RIGHT, _BOTTOM = 48, 34, 12, 26  # round the plot


def svg(scan: GradedScan, title: str) -> str:
    """The profile, its global threshold as a dashed line, its element edges as ticks; 960 by 260 pixels."""
    across = (_WIDTH - _LEFT - _RIGHT) / max(len(scan.profile) - 1, 1)
    down = _HEIGHT - _TOP - _BOTTOM

    def x(sample: float) -> str:
        return f"{_LEFT + sample * across:.2f}"

    def y(reflectance: float) -> str:
        return f"{_TOP + (1 - reflectance) * down:.2f}"

    line = " ".join(f"{x(at)},{y(value)}" for at, value in enumerate(scan.profile))
    ticks = "".join(f"M{x(edge)} {_HEIGHT - _BOTTOM}v6" for edge in scan.edges)
    levels = "".join(
        f'<text x="{_LEFT - 6}" y="{y(level / 100)}" dy="4" text-anchor="end">{level} %</text>'
        for level in (0, 50, 100)
    )
    threshold = y(scan.threshold)
    return (
        f'<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 {_WIDTH} {_HEIGHT}" width="{_WIDTH}" '
        f'height="{_HEIGHT}" role="img" font-family="sans-serif" font-size="12" fill="#1f1b16">'
        f"<title>{escape(title)}</title>"
        f'<rect width="{_WIDTH}" height="{_HEIGHT}" fill="#ffffff"/>'
        f'<text x="{_LEFT}" y="20" font-size="14">{escape(title)}</text>{levels}'
        f'<path class="threshold" d="M{_LEFT} {threshold}H{_WIDTH - _RIGHT}" stroke="#a33a00" stroke-dasharray="6 4"/>'
        f'<path class="edges" d="{ticks}" stroke="#1f1b16"/>'
        f'<polyline class="profile" points="{line}" fill="none" stroke="#1d4f91" stroke-width="1.2"/></svg>\n'
    )
