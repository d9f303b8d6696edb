"""What no sentence that a nurse sees may hold. Called by the tests of wording and of transcripts."""

from __future__ import annotations

import re

from bot.wording.gsm import BASIC, EXTENSION

# Words that tell someone what to do to a patient. Equipment may be looked at; a rule may be quoted.
PRESCRIBES = re.compile(
    r"\b(give|administer|transfuse|infuse|bolus|start (?:a|an|the|on|him|her)|stop the|hold the|"
    r"increase|decrease|titrate|"
    r"remove the tube|pull the tube|clamp the tube|clamp it|unclamp it|strip|milk|flush|irrigate|"
    r"you should|you must|must be|needs to be|recommend\w*|treat\w*|prescribe\w*|order (?:a|an|the)|"
    r"reposition|turn the patient|take the patient|call a code|ok to|safe to)\b",
    re.IGNORECASE,
)
# ISMP error-prone abbreviations list 2021; Joint Commission Do-Not-Use list and its additions.
ERROR_PRONE = {
    "cc": re.compile(r"\bcc\b|\dcc\b", re.IGNORECASE),
    "a plural or wrong case of mL": re.compile(r"\b(?:mls|MLs|mLs|ml|ML|Ml)\b"),
    "no space before the unit": re.compile(r"\d(?:mL|cm|mmHg|cmH2O|kg|min)\b"),
    "a trailing zero": re.compile(r"\d\.\d*0\b"),
    "a naked decimal point": re.compile(r"(?<!\d)\.\d"),
    "a missing comma": re.compile(r"(?<![\d:,.])\d{4,} mL"),
    "a sign for a word": re.compile(r"[<>@&+~^{}\\|\[\]]"),
    "a 12-hour time": re.compile(r"\b\d{1,2}(?::\d\d)? ?(?:am|pm)\b", re.IGNORECASE),
    "a plain-text program word": re.compile(r"\b(?:None|True|False|null|nan)\b"),
    "an underscore": re.compile(r"_"),
    "a doubled mark": re.compile(r"(?<!\.)\.\.(?!\.)|,,|;;|::| ,| \.|  "),
}

ADDRESS = re.compile(r"https?://\S+")
"""Its letters are no words; they must be in the alphabet of a text all the same."""


def faults(sentence: str) -> list[str]:
    """Everything about the sentence that a nurse must not be shown; empty when it is good."""
    words = ADDRESS.sub("address", sentence)
    found = [f"prescribes: {word[0]}" for word in PRESCRIBES.finditer(words)]
    found += [name for name, pattern in ERROR_PRONE.items() if pattern.search(words.replace("\n", " "))]
    found += [f"outside the alphabet: {letter}" for letter in sentence if letter not in BASIC | EXTENSION]
    return found
