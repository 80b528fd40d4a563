"""Scanners that type and persons who type, as keys with their times: for tests of what the pages make of them.

Layouts are of common US, French and German keyboards, from memory; only the places that these texts need.
"""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import asdict, dataclass, field
from random import Random
from typing import Any

from labels import slot_code

LETTERS = "ABCDEFGHIJKLMNOPQRSTUVWXYZ"
_FRENCH_PLACES = {"A": "KeyQ", "Q": "KeyA", "W": "KeyZ", "Z": "KeyW", "M": "Semicolon"}
_GERMAN_PLACES = {"Y": "KeyZ", "Z": "KeyY"}
_FIGURE_ROWS = {"us": (")!@#$%^&*(", False), "de": ('=!"§$%&/()', False), "fr": ("à&é\"'(-è_ç", True)}
"""The other sign on each figure's key, and whether figures need Shift."""

_SIGNS = {
    "us": {"-": ("Minus", 0), "]": ("BracketRight", 0), "~": ("Backquote", 1), " ": ("Space", 0)},
    "de": {"-": ("Slash", 0), "~": ("BracketRight", 2), "]": ("Digit9", 2), "*": ("BracketRight", 1)},
    "fr": {"-": ("Digit6", 0), "~": ("Digit2", 2), "]": ("Minus", 2), "*": ("Backslash", 0)},
}
"""Place and level of a sign: 0 plain, 1 with Shift, 2 with AltGr."""

_OTHER_KEYS = {
    "de": {("Minus", 0): "ß", ("BracketRight", 0): "+", ("Backquote", 1): "°"},
    "fr": {("Minus", 0): ")", ("BracketRight", 0): "$", ("Backquote", 1): "²", ("KeyM", 0): ",", ("KeyM", 1): "?"},
}


@dataclass(frozen=True, slots=True)
class Stroke:
    """One key: what it types here, its place, and when, in ms."""

    key: str
    code: str
    at: float
    shift: bool = False
    sign: bool = False
    ctrl: bool = False
    held: bool = False
    composing: bool = False


@dataclass(slots=True)
class Sample:
    """Keys pressed while `focus` had the focus, and the texts that should come of it: `scans`, or what was `typed`."""

    name: str
    focus: str
    strokes: list[Stroke]
    scans: list[str] = field(default_factory=list)
    typed: str = ""
    any_text: bool = False
    entered: bool = False

    def as_json(self) -> dict[str, Any]:
        return asdict(self)


def _places(layout: str) -> dict[str, tuple[str, int]]:
    """Place and level of each character."""
    moved = {"fr": _FRENCH_PLACES, "de": _GERMAN_PLACES}.get(layout, {})
    places = {letter: (moved.get(letter, f"Key{letter}"), 1) for letter in LETTERS}
    places |= {letter.lower(): (place, 0) for letter, (place, _) in list(places.items())}
    signs, figures_shifted = _FIGURE_ROWS[layout]
    places |= {str(n): (f"Digit{n}", int(figures_shifted)) for n in range(10)}
    places |= {sign: (f"Digit{n}", int(not figures_shifted)) for n, sign in enumerate(signs)}
    return places | _SIGNS[layout]


PLACES = {layout: _places(layout) for layout in ("us", "de", "fr")}
KEYS = {
    layout: _OTHER_KEYS.get(layout, {}) | {place: char for char, place in places.items()}
    for layout, places in PLACES.items()
}


def press(char: str, at: float, scanner: str = "us", host: str = "us", caps: str = "") -> Stroke:
    """The key that a scanner of one layout presses for a character, as a computer of another sees it.

    `caps`: "" off, "letters" or "all" where Caps Lock also turns the figures' row.
    """
    code, level = PLACES[scanner][char]
    seen = level
    if (
        caps
        and level < 2
        and (code.startswith("Key") or code == "Semicolon" or (caps == "all" and code[:5] == "Digit"))
    ):
        seen = 1 - level
    key = KEYS[host].get((code, seen), "Dead")
    return Stroke(key, code, at, shift=level == 1, sign=level == 2)


def card(random: Random) -> str:
    section = "".join(random.choices("AQZWYMDSLP", k=random.choice((1, 1, 2))))
    width = random.choice((2, 3, 3, 3, 4, 6))
    return slot_code.card_text(f"{section}{random.randrange(10**width):0{width}}")


def _foreign(random: Random) -> str:
    if random.random() < 0.5:
        return "".join(random.choices("0123456789", k=13))
    return "".join(random.choices("ABCDEFGHKLNPRSTUVX", k=4)) + "".join(
        random.choices("0123456789", k=random.randint(4, 9))
    )


PACES = (1, 4, 8, 15, 25, 35, 50)
ENDS = ((), ("Enter",), ("Enter",), ("Tab",), ("Enter", "Enter"), ("Enter", "^J"))
HOSTS = (("us", "us"), ("fr", "fr"), ("de", "de"), ("us", "fr"), ("us", "de"))
FIELDS = ("nothing", "box", "note", "line", "many", "press")


def scan(random: Random) -> Sample:
    """A scanner with a random set of quirks: one text, or two back to back."""
    scanner, host = random.choice(HOSTS)
    caps = random.choice(("", "", "letters", "all"))
    pace, end, focus = random.choice(PACES), random.choice(ENDS), random.choice(FIELDS)
    count, shop = random.choice((1, 1, 2)), random.random() < 0.8
    before, after = random.choice((("", ""), ("", ""), ("]C0", ""), ("~", ""), ("*", "*"))) if shop else ("", "")
    strokes: list[Stroke] = []
    texts, at = [], 0.0
    for _ in range(count):
        text = (
            random.choice((card(random), slot_code.slip_text(random.randint(1, 99999)))) if shop else _foreign(random)
        )
        texts.append(text)
        written = list(_signs(before + text + after, scanner))
        stall = random.choice((0, 0, 80)) if shop else 0
        for place, char in enumerate(written):
            at += max(1, pace + round(random.uniform(-0.25, 0.25) * pace)) + (stall if place == 1 else 0)
            strokes.append(press(char, at, scanner, host, caps))
        for key in end:
            at += max(1, pace)
            strokes.append(Stroke("j", "KeyJ", at, ctrl=True) if key == "^J" else Stroke(key, key, at))
        at += random.uniform(240, 900) if not end else random.uniform(160, 900)
    wrong = not shop and (scanner != host or bool(caps))
    name = f"{scanner} on {host}, {pace} ms, {' '.join(end) or 'no end'}, caps {caps or 'off'}, in {focus}"
    return Sample(f"{' '.join(texts)}: {name}", focus, strokes, texts, any_text=wrong)


def _signs(text: str, layout: str) -> Iterator[str]:
    """The characters that a scanner of this layout can press."""
    return (char for char in text if char in PLACES[layout])


WORDS = (
    "Scratched at the left, box is torn",
    "see D014-07T and D0145",
    "1200",
    "B-14 paid 35 on 12-04",
    "brake pads, 4 pairs",
    "S0012",
    "the rear hub turns, 36 holes, 135 mm",
    "ORD000123",
    "wheel",
)


def typing(random: Random) -> Sample:
    """A person's keys: rolled pairs of letters, figures, pauses, held keys, dead keys and input methods.

    Mean times between keys from 65 ms, faster than nearly anyone, to 300 ms (from memory).
    """
    layout, mean = random.choice(("us", "fr", "de")), random.uniform(65, 300)
    spread, words = random.uniform(0.2, 0.5), random.choice(WORDS)
    kind = random.choice(("plain", "plain", "plain", "held", "dead", "method"))
    focus = random.choice(("nothing", "box", "note", "line")) if kind == "plain" else random.choice(("note", "line"))
    if focus == "nothing":
        words = words.replace(" ", "")
    typed = "".join(_signs(words, layout)) if layout == "us" else "".join(c for c in words if c in PLACES[layout])
    strokes: list[Stroke] = []
    at, last = 0.0, ""
    for char in typed:
        gap = max(20.0, random.lognormvariate(0, spread) * mean)
        if char.isdigit():
            gap = max(95.0, 1.3 * gap)
        elif last.isalpha() and char.isalpha() and random.random() < 0.2:
            gap = random.uniform(20, 60)
        at += gap
        strokes.append(press(char, at, layout, layout))
        last = char
    more = _more(kind, random, at)
    entered = kind == "plain" and focus in ("nothing", "box") and random.random() < 0.6
    if entered:
        more = [Stroke("Enter", "Enter", at + max(90.0, random.lognormvariate(0, spread) * mean))]
    typed += "".join(stroke.key for stroke in more if len(stroke.key) == 1)
    return Sample(
        f"{kind} {typed!r} on {layout}, {mean:.0f} ms, in {focus}", focus, strokes + more, [], typed, False, entered
    )


def _more(kind: str, random: Random, at: float) -> list[Stroke]:
    if kind == "held":
        first = Stroke("7", "Digit7", at + 200)
        return [first, *(Stroke("7", "Digit7", at + 700 + 31 * n, held=True) for n in range(random.randint(5, 20)))]
    if kind == "dead":
        return [Stroke("Dead", "BracketLeft", at + 150), Stroke("ê", "KeyE", at + 260)]
    if kind == "method":
        gaps = [random.uniform(90, 250) for _ in range(6)]
        codes = ("KeyN", "KeyI", "KeyH", "KeyA", "KeyO", "Digit1")
        return [Stroke("Process", code, at + sum(gaps[: n + 1]), composing=True) for n, code in enumerate(codes)]
    return []
