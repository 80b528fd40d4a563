"""A call or form that may come again is done once, and gets the answer that it got before."""

from __future__ import annotations

import hashlib
import json
from collections.abc import Callable
from dataclasses import dataclass
from typing import Any

from scanflow.shop import Shop
from scanflow.storage.unit import SqlUnit
from scanflow.storage.writing import answers
from scanflow.workflow.ports import Invalid


@dataclass(frozen=True, slots=True)
class CallReply:
    """What a call answers: status, JSON body (None for none), and the address of what it made."""

    status: int
    body: Any
    location: str = ""
    replayed: bool = False


@dataclass(frozen=True, slots=True)
class Once:
    """An Idempotency-Key with the fingerprint of the call it came with."""

    key: str
    body: str

    @classmethod
    def of(cls, key: str, who: str, method: str, path: str, body: bytes) -> Once:
        head = json.dumps([who, method, path]).encode()
        return cls(key, hashlib.sha256(head + body).hexdigest())


def act_once(shop: Shop, who: str, once: Once | None, work: Callable[[SqlUnit], CallReply | None]) -> CallReply:
    """What `work` replies, kept with what it did, or what was kept before; in parts, as `Shop.act_in_parts` has it.

    `Invalid`, `key_reused`, where the key came with another call.
    """

    def kept(unit: SqlUnit) -> CallReply | None:
        if once is None:
            return work(unit)
        before = answers.find(unit.connection, once.key)
        if before is not None:
            if before.body != once.body:
                raise Invalid("", "key_reused", "This Idempotency-Key was used for another call.")
            return _reply(before)
        reply = work(unit)
        if reply is not None:
            answers.add(unit.connection, once.key, once.body, *_row(reply))
        return reply

    return shop.act_in_parts(who, kept)


def answered(shop: Shop, once: Once) -> CallReply | None:
    """The reply that this very call had; None where it was not done yet."""
    with shop.looking() as unit:
        before = answers.find(unit.connection, once.key)
    return _reply(before) if before is not None and before.body == once.body else None


def answer(shop: Shop, who: str, once: Once, reply: CallReply) -> None:
    """Keep the reply of a call that was done while its reply was not known yet."""
    shop.act(who, lambda unit: answers.replace(unit.connection, once.key, *_row(reply)))


def _row(reply: CallReply) -> tuple[int, str, str]:
    return reply.status, reply.location, json.dumps(reply.body)


def _reply(row: Any) -> CallReply:
    return CallReply(row.status, json.loads(row.answer), row.location, replayed=True)
