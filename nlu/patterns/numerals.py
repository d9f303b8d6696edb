"""Number words, by value."""

from __future__ import annotations

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
NUMERALS = frozenset({*ZEROS, *ONES, *TEENS, *TENS, *JOINED, *SCALES})

# What a recogniser writes for a small number after "bed", "mark" or "at"; read in dictation only.
HOMOPHONES = {"to": 2, "too": 2, "for": 4, "fore": 4, "ate": 8, "won": 1}
