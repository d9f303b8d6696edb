"""A reply as a voice should say it."""

import re

import pytest
from hypothesis import given
from hypothesis import strategies as st
from num2words import num2words

from bot.wording.speech import _BEGINS, _TOKEN, digit_by_digit, in_words, spoken, time_in_words


@given(st.integers(min_value=0, max_value=2_000_000))
def test_a_number_is_worded_as_an_independent_reference_words_it(value: int) -> None:
    reference = num2words(value, lang="en").replace(" and ", " ").replace(",", "")
    assert in_words(value) == reference


@pytest.mark.parametrize(
    ("hhmm", "said"),
    [
        ("19:00", "nineteen hundred"),
        ("07:00", "oh seven hundred"),
        ("00:00", "zero hundred"),
        ("00:05", "zero oh five"),
        ("07:05", "oh seven oh five"),
        ("19:30", "nineteen thirty"),
        ("10:50", "ten fifty"),
        ("20:00", "twenty hundred"),
        ("23:59", "twenty-three fifty-nine"),
    ],
)
def test_a_time_is_said_on_the_24_hour_clock(hhmm: str, said: str) -> None:
    assert time_in_words(hhmm) == said


def test_no_two_minutes_of_the_day_are_said_alike() -> None:
    minutes = [f"{hour:02}:{minute:02}" for hour in range(24) for minute in range(60)]
    assert len({time_in_words(hhmm) for hhmm in minutes}) == 1440


@pytest.mark.parametrize(
    ("reply", "said"),
    [
        (
            "Bed 12, 19:00, line 1,050 mL.",
            "Bed twelve, nineteen hundred, line one thousand fifty milliliters.",
        ),
        (
            "Chart 130 mL (1,180 - 1,050 at 19:00).",
            "Chart one hundred thirty milliliters (one thousand one hundred eighty minus one thousand fifty "
            "at nineteen hundred).",
        ),
        ("Day shift 1 mL", "Day shift one milliliter"),
        ("Line 5 mL.\nRight?\nTo chart:\n1 mL", "Line five milliliters. Right? To chart: one milliliter"),
        ("Amend: 15:00-19:00 210", "Amend: fifteen hundred to nineteen hundred two hundred ten"),
        ("Tue 3 Mar 23:00", "Tuesday March third twenty-three hundred"),
        ("Fri 31 Jul", "Friday July thirty-first"),
        ("Sun 20 Dec", "Sunday December twentieth"),
        ("seal 0.5 cm", "seal zero point five centimeters"),
        ("3.4 mL/kg/h", "three point four milliliters per kilogram an hour"),
        ("20 cmH2O, wall 90 mmHg", "twenty centimeters of water, wall ninety millimeters of mercury"),
        ("bed 12A and CT4", "bed twelve A and C T four"),
        ("URGENT: 620 mL in 60 min", "Urgent: six hundred twenty milliliters in sixty minutes"),
        ("to CT\nback", "to C T. back"),
        ('Not understood: "b12 7pm x007"', 'Not understood: "b twelve seven pm x seven "'),
        ("whole mL only", "whole milliliters only"),
        (
            "Picture until 20:05: https://x.org/trend/a-B_9.c-7\nNext",
            "Picture until twenty oh five: see the text. Next",
        ),
    ],
)
def test_numbers_times_and_units_are_said_in_words(reply: str, said: str) -> None:
    assert spoken(reply) == said


@given(
    st.lists(st.sampled_from(["Bed 12,", "19:00", "1,050 mL", "130 mL/h", "07:00-19:00", "12A", "0.5 cm"]))
)
def test_nothing_is_left_for_a_synthesiser_to_read_as_digits(pieces: list[str]) -> None:
    assert not any(letter.isdigit() for letter in spoken(" ".join(pieces)))


@pytest.mark.parametrize(("value", "said"), [(1050, "one zero five zero"), (0, "zero"), (15, "one five")])
def test_a_number_can_be_read_back_digit_by_digit(value: int, said: str) -> None:
    assert digit_by_digit(value) == said


_SOUGHT_EVERYWHERE = re.compile(_TOKEN.pattern.replace(_BEGINS, ""), re.VERBOSE)
_PIECES = ("Mon 3 Mar", "19:00", "07:00-19:00", " - ", "1,050", "2.5", "mL/kg/h", " mL", "CT4", "12A", "NOTE")


@given(st.lists(st.one_of(st.sampled_from(_PIECES), st.characters()), max_size=12).map("".join))
def test_nothing_is_passed_over_that_has_words(text: str) -> None:
    assert _SOUGHT_EVERYWHERE.pattern != _TOKEN.pattern
    sought = [(found.span(), found.lastgroup) for found in _SOUGHT_EVERYWHERE.finditer(text)]
    assert [(found.span(), found.lastgroup) for found in _TOKEN.finditer(text)] == sought
