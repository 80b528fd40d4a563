"""The database takes no writes now: why, for programs and in words."""

from __future__ import annotations


class Unwritable(Exception):
    """Nothing was written. `code` is for programs; the words say what happened, then what to do."""

    def __init__(self, code: str, detail: str) -> None:
        super().__init__(detail)
        self.code, self.detail = code, detail
