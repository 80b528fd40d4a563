"""The words of the verdict sheet, which a script has for itself."""

from __future__ import annotations

import re
from pathlib import Path

import scanflow.web
from scanflow.domain.verdict import Reason


def test_a_sheet_has_words_for_every_refusal() -> None:
    """The words that the verdict sheet shows are for the reasons there are, and for a label on the wrong parcel."""
    script = (Path(scanflow.web.__file__).parent / "static" / "js" / "scanning" / "sheet.js").read_text()
    words = re.search(r"const REASONS = \{(.*?)\};", script, re.DOTALL)
    assert words is not None
    assert [*(reason.value for reason in Reason), "wrong_label"] == re.findall(r"^  (\w+): \"", words[1], re.MULTILINE)
