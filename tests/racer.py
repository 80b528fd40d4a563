"""A client that works in the room at random, on the same few slots as others, and notes what it was answered.

Run as a program it is one client process: `racer.py PORT TOKEN NAME COUNT` writes a line of JSON for each answer.
"""

from __future__ import annotations

import json
import random
import sys
from collections.abc import Callable
from dataclasses import asdict, dataclass
from http.client import HTTPConnection, HTTPException
from typing import Any

from labels import slot_code

CODES = [f"D00{number}" for number in range(1, 7)]
TABLES = ["main", "side", "back"]
TOGETHER = 40
"""Calls that all clients send under the same keys, at the start."""

Json = dict[str, Any]


class Unanswered(Exception):
    """The service went away before it answered."""


@dataclass(frozen=True, slots=True)
class Sent:
    """One call under a key: `status` is None while it was not answered; `replayed` is told apart from the answer."""

    key: str
    path: str
    body: Json
    status: int | None = None
    answer: Any = None
    replayed: bool = False

    @property
    def counts(self) -> bool:
        """Whether it is a scan or a put-away."""
        return self.path in ("/api/scans", "/api/stays")


class Caller:
    """Calls with a token over one connection that is kept; a broken one is opened anew for the next call."""

    def __init__(self, port: Callable[[], int], token: str) -> None:
        self._port, self._token = port, token
        self._connection: HTTPConnection | None = None

    def __call__(self, method: str, path: str, body: Any = None, key: str | None = None) -> tuple[int, Any, bool]:
        """Status, answer without `replayed`, and whether it was a replay; `Unanswered` if there is none."""
        headers = {"Authorization": f"Bearer {self._token}", "Content-Type": "application/json"}
        if key is not None:
            headers["Idempotency-Key"] = key
        try:
            if self._connection is None:
                self._connection = HTTPConnection("127.0.0.1", self._port(), timeout=60)
            self._connection.request(method, path, None if body is None else json.dumps(body), headers)
            response = self._connection.getresponse()
            answer = json.loads(response.read() or "null")
        except (OSError, HTTPException, ValueError) as error:
            self.close()
            raise Unanswered(f"{method} {path}: {error!r}") from error
        replayed = response.headers.get("Answer-Stored") == "true"
        if isinstance(answer, dict) and "replayed" in answer:
            replayed = answer.pop("replayed")
        return response.status, answer, replayed

    def close(self) -> None:
        if self._connection is not None:
            self._connection.close()
        self._connection = None

    def send(self, key: str, path: str, body: Json) -> Sent:
        """A POST under a key: the scan's own, or an Idempotency-Key."""
        if path == "/api/scans":
            return Sent(key, path, body, *self("POST", path, {"key": key, **body}))
        return Sent(key, path, body, *self("POST", path, body, key))


class Racer:
    def __init__(self, caller: Caller, name: str) -> None:
        self.caller, self.name = caller, name
        self.random = random.Random(name)
        self.log: list[Sent] = []
        self.round: str | None = None
        self.stops: list[str] = []
        self.parcels: list[str] = []
        self.stays: list[str] = []

    @property
    def done(self) -> int:
        """Scans and put-aways so far."""
        return sum(sent.counts for sent in self.log)

    def post(self, path: str, body: Json, key: str | None = None) -> Json:
        """The answer; what is not answered is noted before `Unanswered` goes on."""
        key = key or f"{self.name}-{len(self.log)}"
        try:
            sent = self.caller.send(key, path, body)
        except Unanswered:
            self.log.append(Sent(key, path, body))
            raise
        self.log.append(sent)
        return sent.answer if isinstance(sent.answer, dict) else {}

    def step(self) -> None:
        self.random.choices([self.trade, self.go_on, self.meddle], [3, 6, 2])[0]()

    def together(self, number: int) -> None:
        """The call of this number, the same for all who send it."""
        same = random.Random(number)
        if number % 2:
            self.post("/api/stays", {"title": f"Thing {number}", "section": "D"}, f"same-{number}")
        else:
            body = {"station": same.choice(["table", "tray"]), "text": slot_code.card_text(same.choice(CODES))}
            self.post("/api/scans", body, f"same-{number}")

    def scan(self, station: str, code: str, **more: Any) -> None:
        """Hold a card before a station; cards that are due mostly go back to the tray at once."""
        answer = self.post("/api/scans", {"station": station, "text": slot_code.card_text(code), **more})
        for due in answer.get("released", []):
            if self.random.random() < 0.8:
                self.scan("tray", due)

    def trade(self) -> None:
        """Put a thing away and sell it; or sell once more what stands in some slot."""
        code = self.random.choice(CODES)
        ways: list[Json] = [{"section": "D"}, {"section": "D"}, {"code": code}, {"text": slot_code.card_text(code)}]
        stay = self.post("/api/stays", {"title": f"Thing of {self.name}", **self.random.choice(ways)})
        reference = stay.get("reference", code)
        if "id" in stay:
            self.stays.append(stay["id"])
        if "id" in stay or self.random.random() < 0.1:
            self.post("/api/orders", {"number": f"{self.name}-{len(self.log)}", "lines": [{"reference": reference}]})
        else:
            self.scan("tray", code)

    def go_on(self) -> None:
        """What comes next for an order, whoever took it in."""
        state = self.random.choice(["waiting", "waiting", "picking", "picking", "picking", "packing", "held"])
        _, answer, _ = self.caller("GET", f"/api/orders?state={state}&limit=10")
        if not answer["orders"]:
            return
        order = self.random.choice(answer["orders"])
        line = self.random.choice(order["lines"])
        code, likely = line["code"] or self.random.choice(CODES), self.random.random() < 0.6
        table = TABLES[int(order["id"], 16) % len(TABLES)]
        match state:
            case "waiting":
                self.walk(code)
            case "picking" if likely:
                self.scan("table", code, table=table)
            case "picking":
                parcel = self.post("/api/parcels", {"orders": [order["id"]], "table": table})
                self.parcels += [parcel[name] for name in ("id", "parcel") if name in parcel]
                if "parcel" in parcel and self.random.random() < 0.6:
                    self.post(f"/api/parcels/{parcel['parcel']}/set-aside", {})
            case "packing":
                self.scan("table", code, table=table, take_out=not likely)
            case _ if likely:
                self.post(f"/api/orders/{order['id']}/cancel", {})
            case _:
                self.post(f"/api/lines/{line['id']}/settle", {})

    def walk(self, code: str) -> None:
        """The next stop of the round, now and then with another card; then another round."""
        if self.round and self.stops:
            self.scan("bin", self.stops.pop(0) if self.random.random() < 0.8 else code, round=self.round)
        else:
            opened = self.post("/api/rounds", {})
            self.round, self.stops = opened["id"], [stop["code"] for stop in opened["stops"]]

    def meddle(self) -> None:
        code, keys = self.random.choice(CODES), [sent.key for sent in self.log if sent.path == "/api/scans"]
        match self.random.randrange(8):
            case 0 | 1:
                self.scan("tray", code)
            case 2:
                self.scan("shelf", code, bin=self.random.choice(["A-1-1", "A-1-2"]))
            case 3 if keys:
                self.post(f"/api/scans/{self.random.choice(keys[-5:])}/undo", {})
            case 4 if self.stays:
                self.post(f"/api/stays/{self.stays.pop()}/move", {"to": code})
            case 5 if self.stays:
                self.post(f"/api/stays/{self.stays.pop()}/withdraw", {"reason": "cracked"})
            case 6 | 7 if self.parcels:
                what, body = self.random.choice([("set-aside", {}), ("close", {"partial": True}), ("reopen", {})])
                self.post(f"/api/parcels/{self.parcels[-1]}/{what}", body)
            case _:
                self.post("/api/scans", {"station": "table", "text": "D0010"})


def main() -> None:
    port, token, name, count = sys.argv[1:]
    racer = Racer(Caller(lambda: int(port), token), name)
    print("ready", flush=True)
    sys.stdin.readline()
    for number in range(TOGETHER):
        racer.together(number)
    while racer.done < int(count):
        racer.step()
    for sent in racer.log:
        print(json.dumps(asdict(sent)))


if __name__ == "__main__":
    main()
