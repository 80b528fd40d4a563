"""Draw the diagrams of DEVELOPERS.md anew: `python tests/diagrams.py`."""

from pathlib import Path

from scanflow.domain.diagram import inserted

DOCUMENT = Path(__file__).parent.parent / "DEVELOPERS.md"

if __name__ == "__main__":
    DOCUMENT.write_text(inserted(DOCUMENT.read_text(encoding="utf-8")), encoding="utf-8")
