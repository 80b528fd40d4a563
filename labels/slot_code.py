"""The only grammar of slot codes, card texts, references, slips, stops and bin labels.

=============  ==========  ==================================================================
slot code      `D014`      section of 1-2 letters, number of fixed width per section
card text      `D0145`     slot code and check digit, ISO/IEC 7064 MOD 11,10; what the bars say
reference      `D014-07T`  slot code, turn (2 digits or more) and ISO/IEC 7064 MOD 37,36 check
slip           `ORD000123` `ORD`, number and MOD 11,10 check digit; three letters, so never a card
stop           `STP000126` the same of a stop on a round's paper
bin label      `BINA-2-32` `BIN`, the bin's name and MOD 37,36 check character; three letters too
=============  ==========  ==================================================================

Reading is forgiving about case, spaces and hyphens. A letter O or I where only a digit can stand is read as 0 or 1;
at a reference's check position O and 0, I and 1 stand for each other; no other character is ever guessed.

A text whose second character is O or I can be split two ways (`DO14`: section DO, or D with a mistyped 0). A section
listed in `digits` wins over one that is not; between equals the text as written wins if it is valid.
"""

import re
from collections.abc import Callable, Iterable, Mapping
from dataclasses import dataclass
from typing import TypeVar

_T = TypeVar("_T")
DEFAULT_DIGITS = 3
_WIDTHS = range(2, 7)  # of a number whose section nobody listed
_TURN_DIGITS = 2
_MOST_DIGITS = 18  # of any number: more are nobody's, and no database counts so far
_SLIP_DIGITS = 5
_SLIP_LETTERS = "ORD"
_STOP_LETTERS = "STP"
_BIN_LETTERS = "BIN"
_BIN = re.compile("[0-9A-Z]{1,16}-[0-9]{1,3}-[0-9]{1,3}")
_ALPHABET = "0123456789ABCDEFGHIJKLMNOPQRSTUVWXYZ"
_CODE = re.compile(r"([A-Z]{1,2})([0-9]{2,6})")
_SPACES = dict.fromkeys(map(ord, " \t\r\n\u00a0\u2009\u202f"))
_HYPHENS = dict.fromkeys(map(ord, "-\u2010\u2011\u2012\u2013\u2212"))
_LOOKALIKE = str.maketrans("OI", "01")
# ISO/IEC 15424: Code 128 without FNC1, Code 39 and ITF without check. `]C1` (FNC1 first) marks GS1 data: not ours.
_SYMBOLOGY = re.compile(r"\](?:C0|A0|I0)")


class CodeError(ValueError):
    """A text that is no code of the shop."""


class BadFormat(CodeError):
    """A text without the form of the code asked for."""


class BadCheck(CodeError):
    """A text of the right form whose check is wrong or missing."""


@dataclass(frozen=True, slots=True)
class Referred:
    """What a listing's text names: a slot code, and the turn (from 1) unless only the slot was written."""

    code: str
    turn: int | None


def _hybrid_check(values: Iterable[int], modulus: int) -> int:
    """ISO/IEC 7064 hybrid systems MOD modulus+1,modulus: the value of the check character."""
    product = modulus
    for value in values:
        product = ((product + value) % modulus or modulus) * 2 % (modulus + 1)
    return (1 - product) % modulus


def calc_check_digit(text: str) -> str:
    """Check digit of letters and digits by MOD 11,10, each letter counting as the two digits 10 ... 35.

    >>> calc_check_digit("D014"), calc_check_digit("LP07"), calc_check_digit("79462")
    ('5', '2', '3')
    """
    return str(_hybrid_check((int(digit) for char in text for digit in str(int(char, 36))), 10))


def calc_check_character(text: str) -> str:
    """Check character of letters and digits by MOD 37,36.

    >>> calc_check_character("D01407"), calc_check_character("A12425GABC1234002")
    ('T', 'M')
    """
    return _ALPHABET[_hybrid_check((int(char, 36) for char in text), 36)]


def _tidy(text: str) -> str:
    """Upper case without symbology identifier and spaces; hyphens stay. Only ASCII letters have an upper case here."""
    text = text.translate(_SPACES)
    text = _SYMBOLOGY.sub("", text, count=1) if text.startswith("]") else text
    return re.sub("[a-z]", lambda match: match[0].upper(), text)


def compact(text: str) -> str:
    """The text without symbology identifier, spaces and hyphens, in upper case.

    >>> compact("]C0d-014 5")
    'D0145'
    """
    return _tidy(text).translate(_HYPHENS)


def as_printed(text: str) -> str:
    """What a card bears, hyphens and case and all: without symbology identifier and the spaces around, signs as ASCII.

    >>> as_printed("]C0AB\u20110123 ")
    'AB-0123'
    """
    text = text.translate(dict.fromkeys(_HYPHENS, "-") | dict.fromkeys(_SPACES, " ")).strip(" ")
    return _SYMBOLOGY.sub("", text, count=1).strip(" ") if text.startswith("]") else text


def _match(code: str) -> re.Match[str]:
    match = _CODE.fullmatch(code)
    if match is None:
        raise BadFormat(f"{code!r} is no slot code")
    return match


def section_of(code: str) -> str:
    """The letters of a slot code; BadFormat if it is none.

    >>> section_of("LP07")
    'LP'
    """
    return _match(code)[1]


def number_of(code: str) -> int:
    """The number of a slot code; BadFormat if it is none.

    >>> number_of("D014")
    14
    """
    return int(_match(code)[2])


def make(section: str, number: int, digits: int = DEFAULT_DIGITS) -> str:
    """The slot code of a number; BadFormat if the section is not 1-2 letters A-Z or the number doesn't fit.

    >>> make("D", 14), make("LP", 7, digits=2)
    ('D014', 'LP07')
    >>> make("D", 1000)
    Traceback (most recent call last):
    labels.slot_code.BadFormat: 1000 does not fit into 3 digits
    """
    if not re.fullmatch("[A-Z]{1,2}", section):
        raise BadFormat(f"{section!r} is no section: it has one or two letters")
    if not 0 <= number < 10**digits:
        raise BadFormat(f"{number} does not fit into {digits} digits")
    code = f"{section}{number:0{digits}}"
    return _match(code)[0]


def card_text(code: str) -> str:
    """What the bars of a slot's card say.

    >>> card_text("D014")
    'D0145'
    """
    return _match(code)[0] + calc_check_digit(code)


def parse_card(text: str, digits: Mapping[str, int] | None = None) -> str:
    """The slot code of a scanned or typed card text.

    `digits`: width of the number by section, 3 for a section not listed; without the mapping any width from 2 to 6.
    BadCheck: the form of a card text with a wrong check, or a bare slot code by the section's width.
    BadFormat: anything else.

    >>> parse_card("]C0D0145"), parse_card(" do14-5 ", {"D": 3})
    ('D014', 'D014')
    >>> parse_card("D0146")
    Traceback (most recent call last):
    labels.slot_code.BadCheck: the check digit of 'D0146' is wrong
    >>> parse_card("D014", {"D": 3})
    Traceback (most recent call last):
    labels.slot_code.BadCheck: 'D014' lacks its check digit
    >>> parse_card("]C1D0145")
    Traceback (most recent call last):
    labels.slot_code.BadFormat: ']C1D0145' is no card text
    """

    def read(section: str, rest: str) -> str:
        widths = _WIDTHS if digits is None else [digits.get(section, DEFAULT_DIGITS)]
        if digits is not None and len(rest) in widths and _digits(rest):
            raise BadCheck(f"{text!r} lacks its check digit")
        if len(rest) - 1 not in widths:
            raise BadFormat
        return _checked_card(section, _digits(rest), text)

    return _first_valid(text, digits, read, "card text")


def parse_bare_card(text: str, digits: Mapping[str, int]) -> str:
    """The slot code that the card of another system bears as its whole text, without a check; BadFormat for else.

    `digits`: width of the number by section, 3 for a section not listed. Nothing tells a misread text from a right one.

    >>> parse_bare_card("d 14", {"D": 2}), parse_bare_card("DO14", {"D": 3})
    ('D14', 'D014')
    >>> parse_bare_card("D0145", {"D": 3})
    Traceback (most recent call last):
    labels.slot_code.BadFormat: 'D0145' is no slot code
    """

    def read(section: str, rest: str) -> str:
        if len(rest) != digits.get(section, DEFAULT_DIGITS):
            raise BadFormat
        return section + _digits(rest)

    return _first_valid(text, digits, read, "slot code")


def reference(code: str, turn: int) -> str:
    """What goes into the listing of the stay that is a slot's `turn`-th, counted from 1.

    >>> reference("D014", 7), reference("D014", 123)
    ('D014-07T', 'D014-123R')
    """
    if turn < 1:
        raise BadFormat(f"turns count from 1, not {turn}")
    written = f"{turn:0{_TURN_DIGITS}}"
    return f"{_match(code)[0]}-{written}{calc_check_character(code + written)}"


def parse_reference(text: str, digits: Mapping[str, int] | None = None) -> Referred:
    """What a listing's reference, bare slot code or card text names.

    After the letters a bare code has as many characters as its section's numbers, a card text one more, a reference
    at least three more, so the width alone tells them apart. `digits` gives it by section; for a section not listed
    the hyphen of a reference tells it, else it is 3. BadCheck, BadFormat as for cards.

    >>> parse_reference("D014-07T"), parse_reference("d01407t")
    (Referred(code='D014', turn=7), Referred(code='D014', turn=7))
    >>> parse_reference("D014"), parse_reference("D0145")
    (Referred(code='D014', turn=None), Referred(code='D014', turn=None))
    >>> parse_reference("LP07-01I"), parse_reference("LP0701I", {"LP": 2})
    (Referred(code='LP07', turn=1), Referred(code='LP07', turn=1))
    >>> parse_reference("D014-08T")
    Traceback (most recent call last):
    labels.slot_code.BadCheck: the check character of 'D014-08T' is wrong
    >>> parse_reference("D014-7T")
    Traceback (most recent call last):
    labels.slot_code.BadFormat: 'D014-7T' is no reference
    """
    after_hyphen = len(re.split("[-\u2010\u2011\u2012\u2013\u2212]", _tidy(text))[-1])

    def read(section: str, rest: str) -> Referred:
        width = (digits or {}).get(section)
        if width is None:
            told = len(rest) - after_hyphen
            width = told if after_hyphen > _TURN_DIGITS and told in _WIDTHS else DEFAULT_DIGITS
        if len(rest) == width:
            return Referred(section + _digits(rest), None)
        if len(rest) == width + 1:
            return Referred(_checked_card(section, _digits(rest), text), None)
        number, turn, check = _digits(rest[:width]), _digits(rest[width:-1]), rest[-1:]
        if not _TURN_DIGITS <= len(turn) <= _MOST_DIGITS or turn != f"{int(turn):0{_TURN_DIGITS}}" or int(turn) < 1:
            raise BadFormat
        wanted = calc_check_character(section + number + turn)
        if check.translate(_LOOKALIKE) != wanted.translate(_LOOKALIKE):
            raise BadCheck(f"the check character of {text!r} is wrong")
        return Referred(section + number, int(turn))

    return _first_valid(text, digits, read, "reference")


def parse_short(text: str, digits: Mapping[str, int]) -> str:
    """The slot code that a number means as people say it, with fewer figures than its section's `digits`.

    BadFormat for anything else: what has as many figures or more is a code, a card's text, or one that was misread.

    >>> parse_short("d 7", {"D": 3}), parse_short("D07", {"D": 3})
    ('D007', 'D007')
    >>> parse_short("D0019", {"D": 3})
    Traceback (most recent call last):
    labels.slot_code.BadFormat: 'D0019' is no short number
    """
    found = re.fullmatch("([A-Z]{1,2})([0-9]+)", compact(text))
    if found is None or len(found[2]) >= digits.get(found[1], 0):
        raise BadFormat(f"{text!r} is no short number")
    return make(found[1], int(found[2]), digits[found[1]])


def slip_text(number: int) -> str:
    """What the bars of an order's slip say; an even count of digits keeps Code 128 in its dense set.

    >>> slip_text(12), slip_text(123456)
    ('ORD000123', 'ORD01234566')
    """
    return _numbered(_SLIP_LETTERS, number)


def parse_slip(text: str) -> int:
    """The number of a scanned or typed slip.

    >>> parse_slip("ord 00012-3")
    12
    >>> parse_slip("D0145")
    Traceback (most recent call last):
    labels.slot_code.BadFormat: 'D0145' is no slip
    """
    return _parse_numbered(_SLIP_LETTERS, text, "slip")


def stop_text(number: int) -> str:
    """What the bars of a stop on a round's paper say: the stop's own number, of the form of a slip.

    It finds the stop and proves nothing, for it is no card text and says none.

    >>> stop_text(12)
    'STP000126'
    """
    return _numbered(_STOP_LETTERS, number)


def parse_stop(text: str) -> int:
    """The number of a stop that was scanned or typed from paper.

    >>> parse_stop("STP000126")
    12
    >>> parse_stop("ORD000123")
    Traceback (most recent call last):
    labels.slot_code.BadFormat: 'ORD000123' is no stop
    """
    return _parse_numbered(_STOP_LETTERS, text, "stop")


def bin_text(name: str) -> str:
    """What the bars on a bin's front say, of its name rack-tier-position; BadFormat if it is none.

    The hyphens count: without them A-1-23 and A-12-3 were one.

    >>> bin_text("A-2-3")
    'BINA-2-32'
    """
    if not _BIN.fullmatch(name.upper()):
        raise BadFormat(f"{name!r} is no bin's name")
    return _BIN_LETTERS + name.upper() + calc_check_character(_BIN_LETTERS + compact(name))


def parse_bin(text: str) -> str:
    """The name, in upper case, on a scanned or typed bin label.

    >>> parse_bin("bina-2-32")
    'A-2-3'
    >>> parse_bin("BINA-2-42")
    Traceback (most recent call last):
    labels.slot_code.BadCheck: the check character of 'BINA-2-42' is wrong
    >>> parse_bin("D0145")
    Traceback (most recent call last):
    labels.slot_code.BadFormat: 'D0145' is no bin label
    """
    tidy = _tidy(text)
    name, check = tidy.removeprefix(_BIN_LETTERS)[:-1], tidy[-1:]
    if not tidy.startswith(_BIN_LETTERS) or not _BIN.fullmatch(name):
        raise BadFormat(f"{text!r} is no bin label")
    if check != bin_text(name)[-1]:
        raise BadCheck(f"the check character of {text!r} is wrong")
    return name


def _numbered(letters: str, number: int) -> str:
    if number < 1:
        raise BadFormat(f"slips and stops count from 1, not {number}")
    width = max(_SLIP_DIGITS, len(str(number)) | 1)
    text = f"{letters}{number:0{width}}"
    return text + calc_check_digit(text)


def _parse_numbered(letters: str, text: str, what: str) -> int:
    match = re.fullmatch(letters + f"([0-9OI]{{5,{_MOST_DIGITS}}})([0-9OI])", compact(text))
    number = int(match[1].translate(_LOOKALIKE)) if match else 0
    if match is None or number < 1 or len(match[1]) != len(_numbered(letters, number)) - len(letters) - 1:
        raise BadFormat(f"{text!r} is no {what}")
    if match[2].translate(_LOOKALIKE) != _numbered(letters, number)[-1]:
        raise BadCheck(f"the check digit of {text!r} is wrong")
    return number


def is_card_like(text: str, digits: Mapping[str, int] | None = None) -> bool:
    """Whether the text has the form of a card text, be its check right or wrong.

    >>> is_card_like("D0146"), is_card_like("ORD000123")
    (True, False)
    """
    return _has_form(lambda: parse_card(text, digits))


def is_slip_like(text: str) -> bool:
    """Whether the text has the form of a slip, be its check right or wrong.

    >>> is_slip_like("ORD000124"), is_slip_like("D0145")
    (True, False)
    """
    return _has_form(lambda: parse_slip(text))


def is_stop_like(text: str) -> bool:
    """Whether the text has the form of a stop, be its check right or wrong.

    >>> is_stop_like("STP000127"), is_stop_like("ORD000123")
    (True, False)
    """
    return _has_form(lambda: parse_stop(text))


def is_bin_like(text: str) -> bool:
    """Whether the text has the form of a bin label, be its check right or wrong.

    >>> is_bin_like("BINA-2-42"), is_bin_like("D0145")
    (True, False)
    """
    return _has_form(lambda: parse_bin(text))


def _has_form(parse: Callable[[], object]) -> bool:
    try:
        parse()
    except BadFormat:
        return False
    except BadCheck:
        return True
    return True


def _digits(text: str) -> str:
    """The text with O and I as digits; BadFormat if anything but digits is left."""
    text = text.translate(_LOOKALIKE)
    if not text.isdigit():
        raise BadFormat
    return text


def _checked_card(section: str, digits: str, text: str) -> str:
    code = section + digits[:-1]
    if digits[-1] != calc_check_digit(code):
        raise BadCheck(f"the check digit of {text!r} is wrong")
    return code


def _first_valid(text: str, digits: Mapping[str, int] | None, read: Callable[[str, str], _T], what: str) -> _T:
    """`read(section, rest)` of the first split that is valid; listed sections come first and hide the others."""
    splits = _splits(compact(text))
    listed = [split for split in splits if split[0] in (digits or {})]
    if listed and listed[0] == splits[0]:
        splits = listed = listed[:1]  # as written it names a section: nothing in it is mistyped
    for group in (listed, [split for split in splits if split not in listed]):
        wrong = None
        for section, rest in group:
            try:
                return read(section, rest)
            except BadFormat:
                continue
            except BadCheck as error:
                wrong = wrong or error
        if wrong is not None:
            raise wrong
    raise BadFormat(f"{text!r} is no {what}")


def _splits(text: str) -> list[tuple[str, str]]:
    """(section, rest) as written first, then with the second letter taken for a mistyped digit."""
    splits = []
    if re.fullmatch("[A-Z]{2}[0-9A-Z]*", text):
        splits.append((text[:2], text[2:]))
    if re.fullmatch("[A-Z][0-9OI][0-9A-Z]*", text):
        splits.append((text[0], text[1:]))
    return splits
