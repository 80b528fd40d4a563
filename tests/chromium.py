"""Which Chromium tests and measurements drive."""

import shutil

NAMES = ("chromium-headless-shell", "chromium", "chromium-browser", "google-chrome")
"""The first draws no window, and so takes a third less time than the second."""


def program() -> str | None:
    """The path of the first of them that is installed."""
    return next((found for name in NAMES if (found := shutil.which(name))), None)
