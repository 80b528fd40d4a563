"""What every application builds alike is built for the first one of a process: tests start thousands of them."""

from __future__ import annotations

from typing import Any, ClassVar

from flask import Flask
from jinja2.bccache import Bucket, BytecodeCache
from werkzeug.routing import Rule


class Compiled(BytecodeCache):
    """Templates as they were compiled for the first application of this process: each test has one of its own."""

    codes: ClassVar[dict[tuple[str, str], Any]] = {}

    def load_bytecode(self, bucket: Bucket) -> None:
        bucket.code = self.codes.get((bucket.key, bucket.checksum))

    def dump_bytecode(self, bucket: Bucket) -> None:
        self.codes[bucket.key, bucket.checksum] = bucket.code


class BuiltOnce(Rule):
    """A route's function that builds its address, compiled for the first application of this process: it takes a tenth
    of a second for all routes. An application of its own still has rules and converters of its own.
    """

    built: ClassVar[dict[tuple[str, str, bool], Any]] = {}

    def _compile_builder(self, append_unknown: bool = True) -> Any:
        key = (self.rule, repr(self.defaults), append_unknown)
        if key not in self.built:
            self.built[key] = super()._compile_builder(append_unknown)
        return self.built[key]


def install() -> None:
    Flask.jinja_options = {"bytecode_cache": Compiled()}
    Flask.url_rule_class = BuiltOnce
