"""Words around a number: which cue it stands behind, what links it to the one before, what ends it."""

from __future__ import annotations

from .clockwords import HOUR_WORDS, MINUTE_WORDS

MOST_LITRES = 6
"""No canister holds so many: the L behind such a number is the left tube."""
LEVEL_LEADS = frozenset({"level", "levelat", "old", "new", "opens", "last"})
LEADS = {
    "bed": "bed",
    "level": "level",
    "levelat": "levelat",
    "amount": "amount",
    "output": "output",
    "old": "old",
    "new": "new",
    "opens": "opens",
    "seal": "seal",
    "suction": "suction",
    "wall": "wall",
    "leakgrade": "leakgrade",
    "weight": "weight",
    "since": "since",
    "timeword": "timeword",
}
KEEPS_LEAD = frozenset({":", "=", ",", "#", "(", ")", '"', "*", "'", "-", "$", "|", "<", ">", "~"})
TUBE_NAMES = frozenset({"left", "right", "mediastinal", "apical", "basal", "pleural"})
PUTS = frozenset({"put", "placed", "inserted", "popped"})
BREAKS = frozenset({";", ".", "!", ",", "&", "+", "then", "and", "plus", "/", "also", "|"})
LINKS = frozenset(
    {
        "to",
        "or",
        "-",
        "not",
        "from",
        "minus",
        "/",
        "vs",
        "versus",
        "but",
        "between",
        "\u00b1",
        "in",
        "into",
        "on",
        "for",
    }
)
BED_WORDS = frozenset({"bed", "room", "rm"})
"""One of these stands before a label."""
SHORT_BED_WORDS = BED_WORDS | {"b"}
"""With the b of "b12"."""
BED_SAID = frozenset({"bed", "beds", "room", "rm", "bay"})
"""Words for a bed, one or more, as somebody says them."""
OF_BED = frozenset({"of", "on", "in", "for"})
"""Before a bed these say whose something is: "the line on 12"."""
LABEL_LETTERS = frozenset("abcdefgh")
"""Letters of labels such as 12A."""
PAUSES = frozenset({",", ";", "."})
"""Signs at which a thought stops."""
FULL_STOPS = frozenset({".", ";", "!"})
"""Signs that end a sentence."""
TELLS = frozenset({"is", "was", "reads", "="})
"""Between a name and its number."""
MANY_LINES = frozenset({"marks", "lines", "levels", "readings"})
TOPPED = frozenset({"topped", "maxed", "peaked"})
"""Before "out at 1940" these leave it how full, and never when."""
LINES = frozenset({"mark", "line", "reading", "level", "marking"})
RANGING = LINES | {
    "somewhere", "anywhere", "anything", "something", "around", "about", "roughly", "approx", "like", "reads",
    "shows", "says", "showing", "reading", "is", "its", "it's", "s", "at", "sits", "sitting", "ranging",
}  # fmt: skip
"""Before "from 710 to 730" these say between what the line is, and not how it rose."""
GLUED_BEFORE = frozenset({"b", "l", "r", "m", "x", "s"})
DANGLING = (
    frozenset({"am", "pm", "ago", "hundred", "thousand", "past", "o'clock", "oclock", "point"})
    | MINUTE_WORDS - {"m"}
    | HOUR_WORDS - {"h"}
)
SPAN_BEFORE = frozenset(
    {"last", "past", "over", "in", "for", "next", "every", "previous", "prior", "the", "within", "q"}
    | {"after", "x", "clamped", "off", "slept", "asleep", "napped", "chair", "walked", "resting"}
)
MAY_BE_ARTICLE = frozenset(
    {"canister", "box", "chamber", "half", "quarter", "leak", "drain", "tube", "final", "same"}
)
"""Before these the "a" behind the word tube may be no name."""
HESITATION = frozenset({"uh", "um", "er", "erm", "ah", "so", "okay", "about", "around"})
