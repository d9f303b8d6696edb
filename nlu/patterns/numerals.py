"""Number words, by value."""

from __future__ import annotations

from fractions import Fraction

ZEROS = frozenset({"zero", "oh", "o", "ou", "nought", "naught"})
ONES = {
    "one": 1,
    "two": 2,
    "three": 3,
    "four": 4,
    "five": 5,
    "six": 6,
    "seven": 7,
    "eight": 8,
    "nine": 9,
}
TEENS = {
    "ten": 10,
    "eleven": 11,
    "twelve": 12,
    "thirteen": 13,
    "fourteen": 14,
    "fifteen": 15,
    "sixteen": 16,
    "seventeen": 17,
    "eighteen": 18,
    "nineteen": 19,
}
TENS = {
    "twenty": 20,
    "thirty": 30,
    "forty": 40,
    "fourty": 40,
    "fifty": 50,
    "sixty": 60,
    "seventy": 70,
    "eighty": 80,
    "ninety": 90,
    "ninty": 90,
}
JOINED = {tens + ones: value + one for tens, value in TENS.items() for ones, one in ONES.items()}
SCALES = {"hundred": 100, "thousand": 1000}
FRACTIONS = {
    "half": Fraction(1, 2),
    "halves": Fraction(1, 2),
    "third": Fraction(1, 3),
    "thirds": Fraction(1, 3),
    "quarter": Fraction(1, 4),
    "quarters": Fraction(1, 4),
    "three-quarters": Fraction(3, 4),
    "fifth": Fraction(1, 5),
    "fifths": Fraction(1, 5),
    "eighth": Fraction(1, 8),
    "eighths": Fraction(1, 8),
    "tenth": Fraction(1, 10),
    "tenths": Fraction(1, 10),
}
NUMERALS = frozenset({*ZEROS, *ONES, *TEENS, *TENS, *JOINED, *SCALES})

# What a recogniser writes for a small number after "bed", "mark" or "at"; read in dictation only.
HOMOPHONES = {"to": 2, "too": 2, "for": 4, "fore": 4, "ate": 8, "won": 1}


def is_number(text: str) -> bool:
    """Whether the word is a numeral, or begins with a digit."""
    return text in NUMERALS or text[:1].isdecimal()
