"""The diagrams for developers are those of the tables."""

import pytest
from diagrams import DOCUMENT, TABLES, diagrams, inserted

from scanflow.domain.verdict import ALL, GUARDS, HAND_OVER


def test_document_shows_the_tables_as_they_are():
    """DEVELOPERS.md holds exactly what `python tests/diagrams.py` would write."""
    document = DOCUMENT.read_text(encoding="utf-8")
    assert inserted(document) == document


@pytest.mark.parametrize("name", TABLES)
def test_every_row_is_an_arrow(name):
    """Each row of a table is an arrow of its state diagram, and nothing else is."""
    drawn = diagrams().split(f"### {name.capitalize()}\n")[1].split("```")[1]
    arrows = [line.strip() for line in drawn.splitlines() if "-->" in line and "[*]" not in line]
    assert [f"{state} --> {after}: {event}" for (state, event), after in TABLES[name].items()] == arrows


def test_every_guard_asks_once():
    """Each guard of a station and of the hand-over is a question of its flow chart, in the order of the list."""
    asked = [line.split("{")[0].strip() for line in diagrams().splitlines() if "?}" in line]
    assert [reason.value for guards in (ALL, *GUARDS.values(), HAND_OVER) for reason, _ in guards] == asked


def test_a_document_without_markers_is_refused():
    """Nothing is written into a document that has no place for diagrams."""
    with pytest.raises(ValueError, match="no <!-- diagrams -->"):
        inserted("# For developers\n")
