"""One step of the day at a time: call the service, tell what it said, stop where that isn't what should happen."""

from __future__ import annotations

from collections import Counter
from collections.abc import Callable
from dataclasses import dataclass, field
from pathlib import Path
from typing import Any

from labels import slot_code
from scanflow.demo.goods import title_of
from scanflow.demo.pictures import Photographer
from scanflow.demo.service import Reply, RunningService
from scanflow.vision.workers import Readers

ACCEPTED = "accepted"

Json = dict[str, Any]


class Unexpected(Exception):
    """The service did something else than the day needs; the message has both."""


@dataclass(frozen=True, slots=True)
class StationRefusal:
    """A refusal as a person at the station met it; `shown` is the picture's name, or the text that was typed."""

    station: str
    reason: str
    advice: str
    shown: str


@dataclass(slots=True)
class Steps:
    """What the day is made of. `say` is given each line that tells of it."""

    service: RunningService
    camera: Photographer
    readers: Readers
    say: Callable[[str], None]
    scans: int = 0
    refusals: list[StationRefusal] = field(default_factory=list)
    engines: Counter[str] = field(default_factory=Counter)

    def show(self, station: str, *codes: str, want: str = ACCEPTED, steady: bool = True, **where: Any) -> Json:
        """Photograph these slots' cards and send the picture to a station; `where` is its round, bin or take_out."""
        picture = self.camera.take(station, *codes, steady=steady)
        self._read(picture, [slot_code.card_text(code) for code in codes] if steady else [])
        return self._scan(station, picture, " and ".join(codes), want, where)

    def beep(self, station: str, text: str, *, want: str = ACCEPTED, **where: Any) -> Json:
        """Send what a hand scanner read: a card's text or a slip's."""
        return self._scan(station, text, text, want, where | {"via": "wedge"})

    def type(self, station: str, text: str, *, want: str = ACCEPTED, **where: Any) -> Json:
        """Send what a person typed."""
        return self._scan(station, text, f"“{text}”", want, where | {"via": "typed"})

    def call(self, method: str, path: str, body: Any = None, *, want: int | str = 200) -> Json:
        """Any other call; `want` is its status, or the code of the problem it should meet."""
        return self.expect(self.service.call(method, path, body), want, f"{method} {path}")

    def expect(self, reply: Reply, want: int | str, what: str) -> Json:
        """The body of an answer that has the status or the problem code wanted; `Unexpected` else."""
        got = reply.body.get("code") if isinstance(want, str) and reply.status >= 400 else reply.status
        if got != want:
            raise Unexpected(f"{what}: expected {want}, got {reply.status} {reply.body}")
        if isinstance(want, str):
            self.say(f"    refused: {reply.body['detail']}")
        return dict(reply.body)

    def check(self, what: str, want: Any, got: Any) -> None:
        """`Unexpected` unless both are the same."""
        if want != got:
            raise Unexpected(f"{what}: expected {want}, got {got}")

    def again(self, answer: Json, **where: Any) -> Json:
        """The card of this answer once more by hand scanner, as a double beep: accepted, and nothing changes."""
        second = self.beep(answer["station"], slot_code.card_text(answer["code"]), **where)
        self.check("The second beep changed something", False, second["changed"])
        return second

    def _read(self, picture: Path, texts: list[str]) -> None:
        """Read the picture here as the service will, to count which decoder read it."""
        found = self.readers.read(picture).decoded
        self.check(f"Codes in {picture.name}", sorted(texts), sorted(each.text for each in found))
        self.engines.update(each.engine for each in found)

    def _scan(self, station: str, shown: Path | str, words: str, want: str, where: Json) -> Json:
        self.scans += 1
        key = f"demo-{self.scans:03}"
        body = {"station": station, "key": key, **where}
        if isinstance(shown, Path):
            fields = {name: str(value).lower() if value is True else str(value) for name, value in body.items()}
            reply = self.service.upload("/api/scans", fields, "image", shown)
        else:
            reply = self.service.call("POST", "/api/scans", body | {"text": shown})
        answer = self.expect(reply, 200, f"{station} {words}")
        got = answer["reason"] or answer["verdict"]
        if got != want:
            raise Unexpected(f"{station} {words}: expected {want}, got {got}: {answer['advice']}")
        self._tell(station, words, answer)
        if want != ACCEPTED:
            name = shown.name if isinstance(shown, Path) else shown
            self.refusals.append(StationRefusal(station, want, answer["advice"], name))
        return answer | {"key": key, "station": station}

    def _tell(self, station: str, words: str, answer: Json) -> None:
        yes = "yes" if answer["changed"] else "yes, as before"
        self.say(f"    {station:<5}  {words}: {'NO' if answer['reason'] else yes}. {answer['advice']}")


def named(code: str) -> str:
    """A slot with what stands there."""
    return f"{code} ({title_of(code)})"
