"""What a page's form would send."""

from __future__ import annotations

import html
import re


def fields_of(page: str) -> dict[str, str]:
    """What the form of that page would send, apart from its button."""
    hidden = dict(re.findall(r'<input type="hidden" name="([a-z]+)" value="([^"]*)">', page))
    selects = re.findall(r'<select id="[^"]*" name="([^"]*)">(.*?)</select>', page)
    for name, options in selects:
        chosen = re.search(r'<option(?: value="([^"]*)")? selected>([^<]*)', options)
        hidden[name] = (chosen[1] or chosen[2]) if chosen else ""
    return {name: html.unescape(value) for name, value in hidden.items()}
