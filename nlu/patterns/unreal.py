"""Words for what is no drain of this shift: an exercise, a dream, a story, a time long ago."""

from __future__ import annotations

from .numerals import NUMERALS

EXERCISES = frozenset(
    {"quiz", "scenario", "scenarios", "simulation", "simulated", "sim", "mock", "pretend", "hypothetical"}
    | {"hypothetically", "imaginary", "imagined", "fictional", "fictitious", "roleplay", "osce", "sample"}
    | {"make-believe", "riddle", "trivia"}
)
"""These say by themselves that nothing is told of a patient."""
STORIES = frozenset(
    {"exam", "exams", "example", "training", "teaching", "practice", "practise", "drill", "demo", "dream"}
    | {"practising", "practicing", "rehearsing", "testing", "learning", "trying"}
    | {"dreams", "nightmare", "movie", "film", "novel", "textbook", "worksheet", "workshop", "lecture"}
    | {"tutorial", "homework", "assignment", "exercise", "demonstration", "video", "puzzle", "crossword"}
)
"""A nurse may come from these, or a patient watch one: only where the number stands in one is it of one."""
IN_A_FILM = frozenset({("in", "a"), ("in", "the"), ("in", "that"), ("in", "some"), ("in", "my")})
"""Otherwise a film is an x-ray."""
SAMPLING = frozenset(
    {"take", "takes", "took", "taken", "taking", "send", "sends", "sent", "sending", "get", "got", "getting"}
    | {"draw", "drew", "drawn", "drawing", "collect", "collected", "obtain", "obtained", "fluid", "pleural"}
    | {"blood", "sputum"}
)
"""Behind these a sample is one for the laboratory."""
MINDS = frozenset(
    {"dreamt", "dreamed", "joked", "joking", "pretended", "pretending", "wished", "bet", "predicted"}
)
"""What stands behind these in a clause was not read."""
TESTED = frozenset({"case", "patient", "entry", "data", "question", "run", "page", "account", "message"})
WITHIN = frozenset({"in", "from", "for", "on", "off", "as"})
AROUND = WITHIN | {"after", "before", "at", "to", "till", "until", "during", "of", "with", "since", "between"}
OWN = frozenset({"the", "a", "an", "my", "our", "his", "her", "their", "this", "that", "some"})
POINTING = frozenset(
    {"just", "only", "that's", "thats", "that", "this", "it's", "its", "it", "all", "purely", "not", "was"}
) | (WITHIN - {"off"})
"""Behind a line a clause that says what it was begins with these."""
SEASONS = frozenset(
    {"christmas", "xmas", "easter", "thanksgiving", "halloween", "ramadan", "eid", "diwali", "summer"}
    | {"winter", "spring", "autumn", "fall", "month", "week", "year", "weekend", "january", "february"}
    | {"march", "april", "may", "june", "july", "august", "september", "october", "november", "december"}
    | {"birthday", "holiday", "term", "season", "century", "admission", "rotation"}
)
"""Last, these are further back than any line is told late."""
MONTHS = frozenset(
    {"january", "february", "march", "april", "june", "july", "august", "september", "october"}
    | {"november", "december"}
)
LENGTHS = frozenset({"weeks", "months", "years", "month", "year", "week", "ages"})
OPENERS = frozenset({"on", "back", "in", "over", "and", "so", "well", "omg", "wow", "during", "at", "around"})
SINCE = frozenset({"since", "than", "from", "like", "as", "till", "until", "after", "before"})
HOW_MANY = frozenset(NUMERALS) | {"couple", "few", "of", "many", "several"}
