"""The alphabet and the parts of a text message (3GPP TS 23.038 and TS 23.040)."""

import pytest
from hypothesis import given
from hypothesis import strategies as st

from bot.wording.gsm import BASIC, EXTENSION, gsm_only, is_gsm, segments


def test_the_basic_alphabet_has_127_characters_beside_the_escape() -> None:
    assert len(BASIC) == 127
    assert len(EXTENSION) == 10
    assert not BASIC & EXTENSION


@pytest.mark.parametrize(
    ("text", "parts"),
    [
        ("", 0),
        ("a", 1),
        ("a" * 160, 1),
        ("a" * 161, 2),
        ("a" * 306, 2),
        ("a" * 307, 3),
        ("€" * 80, 1),
        ("€" * 80 + "a", 2),
        ("a" * 70 + "ê", 2),
        ("ê" * 70, 1),
        ("ê" * 71, 2),
        ("ê" * 134, 2),
        ("ê" * 135, 3),
        ("\U0001fac1" * 35, 1),
        ("\U0001fac1" * 36, 2),
    ],
)
def test_a_text_costs_the_parts_that_the_standard_says(text: str, parts: int) -> None:
    assert segments(text) == parts


def test_a_character_of_two_septets_is_not_cut_between_two_parts() -> None:
    assert segments("a" * 152 + "€" + "a" * 151) == 2
    assert segments("a" * 152 + "€" + "a" * 152) == 3


def test_a_character_of_two_units_is_not_cut_between_two_parts() -> None:
    assert segments("ê" * 66 + "\U0001fac1" + "ê" * 65) == 2
    assert segments("ê" * 66 + "\U0001fac1" + "ê" * 66) == 3


@pytest.mark.parametrize(
    ("given_text", "plain"),
    [
        ("it’s 1,050 mL – ok…", "it's 1,050 mL - ok..."),
        ("Zoë", "Zoe"),
        ("José at 12", "José at 12"),
        ("bed\u00a012", "bed 12"),
        ("日", "?"),
        ("1 050", "1 050"),
    ],
)
def test_what_comes_from_outside_is_made_plain(given_text: str, plain: str) -> None:
    assert gsm_only(given_text) == plain


@given(st.text())
def test_any_text_at_all_is_made_sendable_and_then_left_alone(text: str) -> None:
    plain = gsm_only(text)
    assert is_gsm(plain)
    assert gsm_only(plain) == plain


@given(st.text(alphabet=sorted(BASIC), max_size=700))
def test_the_parts_of_a_text_of_one_septet_characters_are_a_division(text: str) -> None:
    expected = -(-len(text) // 153) if len(text) > 160 else min(len(text), 1)
    assert segments(text) == expected
