"""What every application builds alike is built for the first one of a process: tests start thousands of them."""

from __future__ import annotations

from types import MethodType
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
    """A route, compiled for the first application of this process: it takes a tenth of a second for all routes. An
    application of its own still has rules of its own; converters know nothing of theirs.
    """

    built: ClassVar[dict[tuple[Any, ...], dict[str, Any]]] = {}
    compiled = ("_parts", "_trace", "_converters", "arguments")

    def compile(self) -> None:
        assert self.map is not None
        key = (self.rule, repr(self.defaults), self.merge_slashes, self.map.host_matching, self.host, self.subdomain)
        if key not in self.built:
            super().compile()
            self.built[key] = {name: getattr(self, name) for name in self.compiled}
            self.built[key] |= {name: getattr(self, name).__func__ for name in ("_build", "_build_unknown")}
            return
        for name, value in self.built[key].items():
            setattr(self, name, MethodType(value, self) if name.startswith("_build") else value)


def install() -> None:
    Flask.jinja_options = {"bytecode_cache": Compiled()}
    Flask.url_rule_class = BuiltOnce
