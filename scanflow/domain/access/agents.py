"""What a browser says of itself, in plain words."""

from __future__ import annotations

import re
from collections.abc import Mapping

DEVICES = {
    "iPhone": "iPhone",
    "iPad": "iPad",
    "Android": "Android phone",
    "Windows": "Windows computer",
    "CrOS": "Chromebook",
    "Mac": "Mac",
    "Linux": "Linux computer",
}
"""What stands in a User-Agent → what people call such a device; the first that fits."""

BROWSERS = {
    "Firefox|FxiOS": "Firefox",
    "Edg|EdgA|EdgiOS": "Edge",
    "OPR": "Opera",
    "SamsungBrowser": "Samsung Internet",
    "CriOS|Chrome|Chromium|HeadlessChrome": "Chrome",
    "Safari": "Safari",
}
"""The same of browsers: each of them also says the names of those below it."""


def _first(called: Mapping[str, str], agent: str, end: str) -> str:
    return next((words for told, words in called.items() if re.search(rf"\b(?:{told}){end}", agent)), "")


def device(agent: str) -> str:
    """What people call the device; empty where it is not known."""
    return _first(DEVICES, agent, "")


def words(agent: str) -> str:
    """The browser and its device.

    >>> words("Mozilla/5.0 (X11; Linux x86_64; rv:140.0) Gecko/20100101 Firefox/140.0"), words("curl/8.5.0"), words("")
    ('Firefox, Linux computer', 'curl', 'A browser')
    """
    known = [each for each in (_first(BROWSERS, agent, "/"), device(agent)) if each]
    named = re.match(r"[A-Za-z][\w-]{0,39}", agent)
    return ", ".join(known) or (named[0] if named else "A browser")
