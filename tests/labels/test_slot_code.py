"""The grammar of slot codes, card texts, references and slips."""

import doctest
import itertools

import pytest
from hypothesis import assume, example, given
from hypothesis import strategies as st
from stdnum.iso7064 import mod_11_10, mod_37_36

from labels import slot_code
from labels.slot_code import BadCheck, BadFormat, CodeError, Referred

SECTIONS = st.from_regex("[A-Z]{1,2}", fullmatch=True)
TURNS = st.integers(1, 12_345)
SLOPPY = st.text("DLPOSAIdoi01457T- \t]C", max_size=12)
WIDTHS = {"D": 3, "LP": 2, "DO": 2}


@st.composite
def codes(draw):
    width = draw(st.integers(2, 6))
    return slot_code.make(draw(SECTIONS), draw(st.integers(0, 10**width - 1)), width)


def width_of(code):
    section = slot_code.section_of(code)
    return {section: len(code) - len(section)}


def plain(text):
    """The text with everything taken away that reading may forgive."""
    return slot_code.compact(text).replace("O", "0").replace("I", "1")


def as_digits(text):
    return "".join(str(int(char, 36)) for char in text)


def test_doctests():
    """Every example in the module's docstrings holds, the failing ones too."""
    outcome = doctest.testmod(slot_code)
    assert (outcome.failed, outcome.attempted > 20) == (0, True)


@pytest.mark.parametrize("text", ["D0016", "D0145", "C0416", "L2071", "S0173", "W9997", "A0010", "Z7771", "LP072"])
def test_published_card_texts(text):
    """Card texts carry the MOD 11,10 digit that python-stdnum gives."""
    # computed with python-stdnum
    assert text == slot_code.card_text(text[:-1])


def test_check_vectors():
    """The two ISO/IEC 7064 systems give the check characters of python-stdnum's examples."""
    # python-stdnum's docstrings; D01407 computed with python-stdnum
    assert slot_code.calc_check_digit("79462") == "3"
    assert slot_code.calc_check_character("A12425GABC1234002") == "M"
    assert slot_code.calc_check_character("D01407") == "T"


@pytest.mark.parametrize(("section", "digits"), [("D", 3), ("LP", 2), ("LP", 3)])
def test_whole_grammar_against_stdnum(section, digits):
    """Every card text and reference of a section is valid for python-stdnum and reads back."""
    for number in range(10**digits):
        code = slot_code.make(section, number, digits)
        text = slot_code.card_text(code)
        reference = slot_code.reference(code, number + 1)
        assert mod_11_10.is_valid(as_digits(text[:-1]) + text[-1])
        assert mod_37_36.is_valid(reference.replace("-", ""))
        assert code == slot_code.parse_card(text, {section: digits}) == slot_code.parse_card(text)
        assert Referred(code, number + 1) == slot_code.parse_reference(reference, {section: digits})


def test_error_detection_of_card_texts():
    """Wrong letters, wrong digits and swapped digits are detected as often as MOD 11,10 promises."""
    # percentages computed with python-stdnum from a sample: letter, three digits and check; here all of them
    letters = [chr(65 + i) for i in range(26)]
    numbers = [f"{number:03}" for number in range(1000)]
    check = {letter + number: slot_code.calc_check_digit(letter + number) for letter in letters for number in numbers}
    valid = {code + digit for code, digit in check.items()}

    def detected(errors):
        errors = list(errors)
        return 100 * sum(wrong not in valid for wrong in errors) / len(errors)

    def swapped(text, i, j):
        chars = list(text)
        chars[i], chars[j] = chars[j], chars[i]
        return "".join(chars)

    def swaps(distance):
        for text, i in itertools.product(valid, range(1, 5 - distance)):
            if text[i] != text[i + distance]:
                yield swapped(text, i, i + distance)

    wrong_letters = (other + text[1:] for text in valid for other in letters if other != text[0])
    wrong_digits = (
        text[:i] + other + text[i + 1 :]
        for text in valid
        for i in range(1, 5)
        for other in "0123456789"
        if other != text[i]
    )
    found = [detected(wrong_letters), detected(wrong_digits), detected(swaps(1)), detected(swaps(2))]
    assert pytest.approx([93.3, 100, 97.7, 90.9], abs=0.25) == found
    assert found[1] == 100


@given(codes())
@example("DO14")
def test_card_round_trip(code):
    """A card text as printed reads back as its slot, whether the section's width is known or not."""
    text = slot_code.card_text(code)
    assert code == slot_code.parse_card(text, width_of(code)) == slot_code.parse_card(f"]C0{text}\r")
    assert slot_code.is_card_like(text)


@given(codes(), TURNS)
@example("DO14", 7)
def test_reference_round_trip(code, turn):
    """A reference as written reads back as its slot and turn, and without its hyphen once the width is known."""
    reference = slot_code.reference(code, turn)
    assert Referred(code, turn) == slot_code.parse_reference(reference) == slot_code.parse_reference(reference.lower())
    assert Referred(code, turn) == slot_code.parse_reference(reference.replace("-", " "), width_of(code))


@given(codes())
@example("DO14")
def test_bare_code_and_card_text_in_a_listing(code):
    """A bare slot code and a card text in a listing name the slot without a turn."""
    expected = Referred(code, None)
    assert expected == slot_code.parse_reference(code, width_of(code))
    assert expected == slot_code.parse_reference(slot_code.card_text(code), width_of(code))


@given(st.integers(1, 10**9))
def test_slip_round_trip(number):
    """A slip reads back as its number, has an even count of digits, and is never a card."""
    text = slot_code.slip_text(number)
    assert number == slot_code.parse_slip(text) == slot_code.parse_slip(text.lower())
    assert ((len(text) - 3) % 2, len(text) >= 9) == (0, True)
    assert mod_11_10.is_valid(as_digits(text[:-1]) + text[-1])
    assert (slot_code.is_slip_like(text), slot_code.is_card_like(text)) == (True, False)


@given(
    st.one_of(SLOPPY, st.from_regex("[DdLAI][PO]?-?[0-9OIo]{3,4} ?[0-9Oi]", fullmatch=True)),
    st.sampled_from([None, {}, WIDTHS]),
)
@example("DO145", None)
@example("DO14-5", WIDTHS)
def test_card_reading_changes_no_character(text, digits):
    """What is read as a card is the very text of that card but for case, spaces, hyphens, O for 0 and I for 1."""
    try:
        code = slot_code.parse_card(text, digits)
    except CodeError:
        return
    assert plain(slot_code.card_text(code)) == plain(text)


@given(st.one_of(SLOPPY, st.from_regex("[DO][0-9OI]{3}-?[0-9OI]{2}[0-9A-Z]", fullmatch=True)), st.just(WIDTHS))
@example("D014-O7T", WIDTHS)
def test_reference_reading_changes_no_character(text, digits):
    """What is read from a listing is what stands there but for case, spaces, hyphens, O with 0 and I with 1."""
    try:
        listing = slot_code.parse_reference(text, digits)
    except CodeError:
        return
    turn = listing.turn
    readings = [listing.code, slot_code.card_text(listing.code)] if turn is None else []
    readings += [slot_code.reference(listing.code, turn)] if turn is not None else []
    assert plain(text) in [plain(reading) for reading in readings]


@given(st.integers(0, 999), st.integers(1, 99), st.data())
def test_one_wrong_character_never_gives_the_same_slot(number, turn, data):
    """One character put for another in a card text or reference never reads as what was meant. As O and 0, and I and 1,
    stand for each other in a reference's check, such a one can read as another turn of the same slot.
    """
    code = slot_code.make("D", number)
    for text, parse in [
        (slot_code.card_text(code), slot_code.parse_card),
        (
            slot_code.reference(code, turn).replace("-", ""),
            slot_code.parse_reference,
        ),
    ]:
        at = data.draw(st.integers(0, len(text) - 1))
        other = data.draw(st.sampled_from("0123456789ABCDEFGHIJKLMNOPQRSTUVWXYZ!/$ſı１é"))
        assume(plain(other) != plain(text[at]))
        try:
            read = parse(text[:at] + other + text[at + 1 :], {"D": 3})
        except CodeError:
            continue
        if isinstance(read, Referred) and text[-1] in "O0I1":
            assert Referred(code, turn) != read
        else:
            assert code != getattr(read, "code", read)


def test_forgiving_input():
    """Case, spaces, hyphens, and O or I where only a digit can stand, are forgiven."""
    for text in ["d0145", " D 014 5 ", "D-014-5", "D\u2011014\u00a05", "DO145", "DOI45", "]A0D0145", "]C0D0145\r\n"]:
        assert slot_code.parse_card(text, {"D": 3}) == "D014"
    for text in ["d014-07t", "D014 07T", "D01407T", "DOI4-O7T", "D014\u201307T", "D-014-07-T"]:
        assert Referred("D014", 7) == slot_code.parse_reference(text, {"D": 3})


def test_check_position_of_a_reference_takes_o_for_0_and_i_for_1():
    """A reference whose check is O, 0, I or 1 reads with either of the pair."""
    seen = set()
    for number, turn in itertools.product(range(40), range(1, 10)):
        code = slot_code.make("D", number)
        reference = slot_code.reference(code, turn)
        twin = {"O": "0", "0": "O", "I": "1", "1": "I"}.get(reference[-1])
        if twin:
            seen.add(twin)
            assert Referred(code, turn) == slot_code.parse_reference(reference[:-1] + twin)
    assert {"O", "0", "I", "1"} == seen


@pytest.mark.parametrize(
    ("text", "digits", "error"),
    [
        ("D0146", None, BadCheck),
        ("D0146", {"D": 3}, BadCheck),
        ("D014", {"D": 3}, BadCheck),
        ("D014", {}, BadCheck),
        ("DO14", {"D": 3}, BadCheck),
        ("D01455", {"D": 3}, BadFormat),
        ("D0", None, BadFormat),
        ("ABC0145", None, BadFormat),
        ("0145", None, BadFormat),
        ("D014S", None, BadFormat),
        ("D0l45", None, BadFormat),
        ("D\uff10145", None, BadFormat),
        ("D0145\x1d", None, BadFormat),
        ("\u017f0173", None, BadFormat),
        ("D\u0131108", None, BadFormat),
        ("]C1D0145", None, BadFormat),
        ("]c0D0145", None, BadFormat),
        ("D014-07T", {"D": 3}, BadFormat),
        ("ORD000123", None, BadFormat),
        ("", None, BadFormat),
    ],
)
def test_refused_card_texts(text, digits, error):
    """Texts that are no valid card are refused by form or by check."""
    with pytest.raises(CodeError) as caught:
        slot_code.parse_card(text, digits)
    assert error is caught.type
    assert (error is BadCheck) == slot_code.is_card_like(text, digits)


@pytest.mark.parametrize(
    ("text", "error"),
    [
        ("D014-08T", BadCheck),
        ("D015-07T", BadCheck),
        ("D0146", BadCheck),
        ("D014-7T", BadFormat),
        ("D014-00" + slot_code.calc_check_character("D01400"), BadFormat),
        ("D014-007" + slot_code.calc_check_character("D014007"), BadFormat),
        ("D01", BadFormat),
        ("D014-07T!", BadFormat),
        ("saddle", BadFormat),
        ("", BadFormat),
    ],
)
def test_refused_references(text, error):
    """Texts that name no stay are refused by form or by check."""
    with pytest.raises(CodeError) as caught:
        slot_code.parse_reference(text, {"D": 3})
    assert error is caught.type


@pytest.mark.parametrize(
    ("text", "error"),
    [("ORD000124", BadCheck), ("0RD000123", BadFormat), ("ORD0000123", BadFormat), ("ORD000004", BadFormat)],
)
def test_refused_slips(text, error):
    """Slips with a wrong check, a digit for a letter, another padding or the number 0 are refused."""
    with pytest.raises(CodeError) as caught:
        slot_code.parse_slip(text)
    assert error is caught.type


@given(st.integers(1, 10**9))
def test_stop_round_trip(number):
    """A stop reads back as its number, and is never a card, a slip or what a listing names."""
    text = slot_code.stop_text(number)
    assert number == slot_code.parse_stop(text) == slot_code.parse_stop(text.lower())
    assert mod_11_10.is_valid(as_digits(text[:-1]) + text[-1])
    forms = [form(text) for form in (slot_code.is_stop_like, slot_code.is_slip_like, slot_code.is_card_like)]
    assert [True, False, False] == forms
    assert not slot_code.is_card_like(text, {"S": 6, "ST": 6, "P": 6})
    with pytest.raises(BadFormat):
        slot_code.parse_reference(text)


@pytest.mark.parametrize(("text", "error"), [("STP000127", BadCheck), ("STP0000126", BadFormat), ("D0145", BadFormat)])
def test_refused_stops(text, error):
    """Stops with a wrong check or another padding, and cards, are refused."""
    with pytest.raises(CodeError) as caught:
        slot_code.parse_stop(text)
    assert error is caught.type


BINS = ["A-2-3", "A-12-3", "A-1-23", "ANNEX2-10-12", "1-1-1"]


@pytest.mark.parametrize("name", BINS)
def test_a_bin_label_names_its_bin_and_is_nothing_else(name):
    """It is read in any case, its check is that of python-stdnum, and it has the form of no card, slip or reference."""
    text = slot_code.bin_text(name)
    assert name == slot_code.parse_bin(f" {text.lower()} ")
    assert mod_37_36.calc_check_digit("BIN" + name.replace("-", "")) == text[-1]
    forms = [slot_code.is_card_like(text), slot_code.is_slip_like(text), slot_code.is_stop_like(text)]
    assert [False, False, False] == forms
    with pytest.raises(BadFormat):
        slot_code.parse_reference(text)


def test_bin_labels_of_other_bins_differ():
    """A-1-23 and A-12-3 are not one, though their letters and digits are."""
    assert len(BINS) == len({slot_code.bin_text(name) for name in BINS})


@pytest.mark.parametrize(("text", "error"), [("BINA-2-42", BadCheck), ("BINA232", BadFormat), ("D0145", BadFormat)])
def test_refused_bin_labels(text, error):
    """Bin labels with a wrong check or without hyphens, and cards, are refused."""
    with pytest.raises(CodeError) as caught:
        slot_code.parse_bin(text)
    assert error is caught.type


def test_second_letter_o_or_i():
    """A text that splits two ways goes to the listed section, else to the section as written if that is valid."""
    assert slot_code.parse_card("DO145", {"D": 3}) == "D014"
    assert Referred("D014", None) == slot_code.parse_reference("DO14", {"D": 3})
    assert Referred("D014", None) == slot_code.parse_reference("DO145", {"D": 3})
    assert Referred("DO145", None) == slot_code.parse_reference("DO145")
    with pytest.raises(BadCheck):
        slot_code.parse_reference("DO146", {"D": 3})
    assert Referred("DO14", None) == slot_code.parse_reference("DO14", {"D": 3, "DO": 2})
    assert slot_code.parse_card(slot_code.card_text("DO14"), {"D": 3, "DO": 2}) == "DO14"


@pytest.mark.parametrize(
    "call",
    [
        lambda: slot_code.make("D", 1000),
        lambda: slot_code.make("D", -1),
        lambda: slot_code.make("ABC", 1),
        lambda: slot_code.make("d", 1),
        lambda: slot_code.card_text("D0"),
        lambda: slot_code.section_of("014"),
        lambda: slot_code.reference("D014", 0),
        lambda: slot_code.slip_text(0),
        lambda: slot_code.stop_text(0),
        lambda: slot_code.bin_text("A-2"),
    ],
)
def test_nothing_malformed_is_made(call):
    """Codes are made of valid parts only."""
    with pytest.raises(BadFormat):
        call()


def test_a_code_whose_letters_are_a_section_is_never_read_as_another_sections():
    """EO020 is slot 20 of section EO without its check, though with an O for 0 it would be the card of E002."""
    widths = {"E": 3, "EO": 3}
    assert "E0020" == slot_code.card_text("E002")
    with pytest.raises(slot_code.BadCheck):
        slot_code.parse_card("EO020", widths)
    assert "E002" == slot_code.parse_card("EO020", {"E": 3})


def test_a_section_has_letters_only():
    """One or two of them."""
    for section in ("D1", "", "DDD", "d"):
        with pytest.raises(slot_code.BadFormat):
            slot_code.make(section, 1)


@pytest.mark.parametrize("digits", [19, 5000])
def test_a_number_that_nobody_counts_to_is_no_code(digits):
    """However many digits a text has, it is a code or it is not; databases count to less than 19 digits' worth."""
    ones = "1" * digits
    slip = f"ORD{ones}"
    for parse, text in [
        (slot_code.parse_slip, slip + slot_code.calc_check_digit(slip)),
        (slot_code.parse_stop, f"STP{ones}1"),
        (slot_code.parse_reference, f"D014-{ones}T"),
        (slot_code.parse_card, f"D{ones}"),
    ]:
        with pytest.raises(slot_code.BadFormat):
            parse(text)
