"""What a page's form would send."""

from __future__ import annotations

import html
import re


def fields_of(page: str) -> dict[str, str]:
    """What the form of that page would send, apart from its button and its file."""
    fields = {}
    for tag in re.findall(r"<input ([^>]*)>", page):
        said = dict(re.findall(r'([a-z-]+)="([^"]*)"', tag))
        kind = said.get("type", "text")
        if "name" in said and (kind in ("text", "hidden") or re.search(r" checked\b", tag)):
            fields[said["name"]] = said.get("value", "")
    for name, options in re.findall(r'<select\s+id="[^"]*"\s+name="([^"]*)"\s*>(.*?)</select>', page, re.DOTALL):
        chosen = re.search(r'<option(?: value="([^"]*)")? selected>([^<]*)', options)
        fields[name] = (chosen[1] or chosen[2]) if chosen else ""
    return {html.unescape(name): html.unescape(value) for name, value in fields.items()}
