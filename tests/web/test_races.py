"""Client processes race at the same few slots and lines: nothing is doubled, nothing is lost."""

from __future__ import annotations

import json
import subprocess
import sys
from collections import Counter

from racer import CODES, TOGETHER, Caller, Sent
from served import HERE, answers_hold, forked_services, furnish, ledger, nothing_doubled

CLIENTS, COUNT = 8, 100


def test_races(database_url: str) -> None:
    """Eight client processes make 800 scans and put-aways; on PostgreSQL two services share the database."""
    token = furnish(database_url)
    with forked_services() as services:
        servers = [services.start(database_url) for _ in range(2 if database_url.startswith("postgresql") else 1)]
        ports = [servers[number % len(servers)].port for number in range(CLIENTS)]
        clients = [
            subprocess.Popen(
                [sys.executable, str(HERE / "racer.py"), str(port), token, f"r{number}", str(COUNT)],
                stdin=subprocess.PIPE,
                stdout=subprocess.PIPE,
                text=True,
            )
            for number, port in enumerate(ports)
        ]
        for client in clients:
            assert "ready\n" == client.stdout.readline()
        for client in clients:
            client.stdin.write("go\n")
            client.stdin.flush()
        said = [client.communicate(timeout=240)[0] for client in clients]
        entries = ledger(Caller(lambda: ports[0], token))
    assert CLIENTS * [0] == [client.returncode for client in clients]
    sent = [Sent(**json.loads(line)) for each in said for line in each.splitlines()]
    assert CLIENTS * COUNT <= sum(each.counts for each in sent)
    answers_hold(database_url, sent, entries)
    nothing_doubled(database_url, entries)
    _was_a_race(sent, entries)


def _was_a_race(sent: list[Sent], entries: list[dict]) -> None:
    """All sent the same keys together, numbers were used again, and things went out of the door meanwhile."""
    same = Counter(each.key for each in sent if each.key.startswith("same-"))
    assert {f"same-{number}": CLIENTS for number in range(TOGETHER)} == same
    kinds = Counter(entry["kind"] for entry in entries)
    assert min(kinds["put away"], kinds["order received"]) > len(CODES) and kinds["parcel closed"] >= 1, kinds
    verdicts = Counter(each.answer["verdict"] for each in sent if each.path == "/api/scans" and each.status == 200)
    assert min(verdicts["accepted"], verdicts["refused"]) >= TOGETHER // 2, verdicts
