"""The lives and the guards as text for mermaid, drawn from the tables themselves.

`python tests/diagrams.py` draws those of DEVELOPERS.md anew.
"""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Mapping
from enum import StrEnum
from pathlib import Path
from typing import Any

from scanflow.domain.life import CARD, LINE, PARCEL, RETURN, ROUND, STAY, STOCKTAKE
from scanflow.domain.things import Station
from scanflow.domain.verdict import ALL, GUARDS, HAND_OVER, Reason

DOCUMENT = Path(__file__).parent.parent / "DEVELOPERS.md"
BEGIN, END = "<!-- diagrams -->", "<!-- /diagrams -->"
TABLES: Mapping[str, Mapping[tuple[Any, str], StrEnum]] = {
    "line": LINE,
    "stay": STAY,
    "card": CARD,
    "parcel": PARCEL,
    "round": ROUND,
    "stocktake": STOCKTAKE,
    "return": RETURN,
}
STARTS = {
    "line": "unbound",
    "stay": "stored",
    "card": "tray",
    "parcel": "open",
    "round": "open",
    "stocktake": "open",
    "return": "expected",
}


def diagrams() -> str:
    """Markdown: one state diagram for each table, one flow chart of guards for each station and for the hand-over."""
    parts = [f"### {name.capitalize()}\n\n{_fenced(_states(name, table))}" for name, table in TABLES.items()]
    parts += [f"### Guards: {station}\n\n{_fenced(_guards(GUARDS[station]))}" for station in Station]
    parts.append(f"### Guards: hand-over\n\n{_fenced(_guards(HAND_OVER))}")
    parts.insert(len(TABLES), f"### Guards: every station, before its own\n\n{_fenced(_guards(ALL))}")
    return "\n\n".join(parts)


def inserted(document: str) -> str:
    """The document with the diagrams between its two markers; ValueError when it lacks them."""
    before, begin, rest = document.partition(BEGIN)
    _, end, after = rest.partition(END)
    if not begin or not end:
        raise ValueError(f"no {BEGIN} … {END} in the document")
    return f"{before}{BEGIN}\n\n{diagrams()}\n\n{END}{after}"


def _fenced(lines: Iterator[str]) -> str:
    return "\n".join(("```mermaid", *lines, "```"))


def _states(name: str, table: Mapping[tuple[Any, str], StrEnum]) -> Iterator[str]:
    yield "stateDiagram-v2"
    yield f"    [*] --> {STARTS[name]}"
    for (state, event), after in table.items():
        yield f"    {state} --> {after}: {event}"


def _guards(guards: Iterable[tuple[Reason, object]]) -> Iterator[str]:
    """Guards from first to last; what passes the last of them is accepted, or goes on to the station's own."""
    yield "flowchart LR"
    names = [reason.value for reason, _ in guards]
    for here, after in zip(names, [*names[1:], "passed"], strict=True):
        yield f"    {here}{{{here}?}} -- no --> {after}"
        yield f"    {here} -- yes --> refused"


if __name__ == "__main__":
    DOCUMENT.write_text(inserted(DOCUMENT.read_text(encoding="utf-8")), encoding="utf-8")
