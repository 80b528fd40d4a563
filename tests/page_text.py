"""What stands on a page without its tags, and how a test finds figures and names in it whatever words stand around."""

from __future__ import annotations

import re
from html import unescape


def text_of(html: str) -> str:
    return re.sub(r"\s+", " ", unescape(re.sub(r"<[^>]*>", " ", html)))


def figures(*expected: str | int) -> re.Pattern[str]:
    """These figures and names in this order, with no other figure between them."""
    return re.compile(r"\D*".join(rf"(?<![\w-]){re.escape(str(each))}(?![\w-])" for each in expected))
