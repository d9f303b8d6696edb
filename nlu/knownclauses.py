"""Messages all of whose words are clauses that are known: what each makes of its values.

Called by `reworded` and `restated`, which have the clauses (`patterns.rewording`, `patterns.restating`).
"""

from __future__ import annotations

import re
from collections.abc import Mapping
from functools import cache
from typing import Final, NamedTuple

from .again import Again, Span
from .labels import bed_label
from .numbers import word
from .patterns import restating, rewording
from .tokens import Words, tokens

WORDS = rewording.WORDS | restating.WORDS
Clauses = Mapping[str, tuple[str, ...]]
LONGEST = 30
"""Words and signs of a message that is a correction and no more."""
VALUE = re.compile(
    r"(?P<T>\b\d{1,2} : \d\d(?: (?:am|pm|a m|p m|h|hrs|hours|hr))?\b|\b\d{1,4} (?:am|pm)\b"
    r"|\b\d{4} (?:h|hrs|hours|hr)\b|\b0\d{3}\b(?! ml))"
    r"|(?P<L>\b\d{1,4} (?:ml|mls|cc|ccs|mils)\b)"
    r"|(?P<B>\b(?:bed|room|rm) (?:\d{1,3}(?: [a-f]\b)?)(?! (?:ml|mls|cc|:)))"
    r"|(?P<C>\b\d{1,2} [a-f]\b)"
    r"|(?P<N>\b\d{1,4}\b)"
    r"|(?P<S>\b(?:left|right|l|r)\b)"
)
STOPS: Final = re.compile(r"(?: ?[,.;:!()\-])+ ?| ")
Strange = tuple[int, set[str]]
"""How many words may be left over, and which never."""
WORD = re.compile(r"[a-z]+(?= |$|[,.])")
BINDING = frozenset(
    {
        "if",
        "unless",
        "whether",
        "or",
        "why",
        "how",
        "what",
        "who",
        "which",
        "should",
        "would",
        "could",
        "will",
    }
    | {
        "can",
        "may",
        "might",
        "must",
        "except",
        "unlike",
        "nearly",
        "almost",
        "asked",
        "says",
        "wants",
        "want",
    }
    | {
        "tell",
        "goal",
        "target",
        "limit",
        "max",
        "min",
        "order",
        "ordered",
        "think",
        "maybe",
        "perhaps",
        "guess",
    }
    | {
        "probably",
        "not",
        "no",
        "never",
        "none",
        "nor",
        "neither",
        "without",
        "cannot",
        "about",
        "around",
        "than",
    }
    | {
        "before",
        "until",
        "till",
        "when",
        "then",
        "since",
        "after",
        "over",
        "under",
        "both",
        "other",
        "another",
    }
    | {"each", "all", "every", "also", "plus", "minus", "half", "by", "between", "previously", "formerly"}
)
"""Words that bind or turn what stands beside them: never left over."""
PAIR = 2
DEEP = 3
"""How often a word of `WORDS` stands in another."""
BOTH = frozenset({"was now", "pointed now", "now was", "from to", "pointed bed now"})
Patterns = tuple[tuple[tuple[str, ...], re.Pattern[str]], ...]
VALUED = rf"(?:the )?(?:([BNLT]\d+)|(S\d+)(?: {WORDS['TUBE']})*)(?: 's)?"
DAY, HOUR, HUNDRED = 24, 60, 100


class Value(NamedTuple):
    """Something with a number in a message: its sort, where it stands, and as what it was typed."""

    sort: str
    at: Span
    text: str

    @property
    def number(self) -> int:
        """The digits that it is typed with."""
        return int(re.sub(r"\D", "", self.text) or 0)

    @property
    def is_clock(self) -> bool:
        """Whether it may be a time of the day: three or four digits."""
        hour, minute = divmod(self.number, HUNDRED)
        return self.sort == "T" or (self.number >= HUNDRED and hour < DAY and minute < HOUR)


class Said(NamedTuple):
    """What the clauses of a message make of its values, and what they say beside them."""

    found: dict[str, list[Value]]
    flags: frozenset[str]

    def one(self, role: str) -> Value | None:
        """The value of that role."""
        return next(iter(self.found.get(role, ())), None)


def _shape(toks: Words) -> tuple[str, list[Value]]:
    """The message with a capital and a count for each value, and the values."""
    words = toks.said[: len(toks)]
    starts: dict[int, int] = {}
    ends: dict[int, int] = {}
    place = 0
    for k, said in enumerate(words):
        starts[place], ends[place + len(said)] = k, k
        place += len(said) + 1
    values: list[Value] = []

    def _as_sign(found: re.Match[str]) -> str:
        sort = found.lastgroup or ""
        first, last = toks[starts[found.start()]], toks[ends[found.end()]]
        label = sort == "C"
        values.append(Value("B" if label else sort, (first.start, last.end), found.group()))
        return f"{'B' if label else sort}{len(values) - 1}"

    try:
        shape = VALUE.sub(_as_sign, " ".join(words)).replace(" ' s", " 's")
        return re.sub(r"\b(one|drain|tube|side)'s\b", r"\1 's", shape), values
    except KeyError:
        return "", []


@cache
def _patterns(clauses: tuple[tuple[str, tuple[str, ...]], ...]) -> Patterns:
    """Each clause as a pattern, with the roles of its values in order."""
    return tuple(
        (_roles(role), re.compile(_written(clause) + r"(?= |$)")) for role, each in clauses for clause in each
    )


def _roles(role: str) -> tuple[str, ...]:
    """ "was now" are two roles, "of time" is a flag."""
    return tuple(role.split()) if role in BOTH else (role,)


def _written(clause: str) -> str:
    """A clause with its words written out, and its capitals as signs that are kept."""
    for _ in range(DEEP):
        clause = re.sub(r"[A-Z]{2,}", lambda found: WORDS.get(found.group(), found.group()), clause)
    clause = clause.replace("(?:B|N)", r"([BN]\d+)").replace("(?:N|T)", r"([NT]\d+)")
    clause = re.sub(r"(?<![\[A-Z])X(?![A-Z])", lambda _: VALUED, clause)
    return re.sub(r"(?<![\[A-Z])([BNLTS])(?![A-Z\]\\])", r"(\1\\d+)", clause)


def scanned(again: Again, clauses: Clauses, *, both: bool = False, strange: int = 0) -> Said | None:
    """What the clauses of a message say; nothing where a word is left over, or a role is there twice."""
    if not PAIR <= len(again.toks) <= LONGEST:
        return None
    patterns = _patterns(tuple(clauses.items()))
    told = (
        {word(again.toks, k) for cue in again.read.cues for k in range(cue.start, cue.end)}
        if strange
        else set()
    )
    as_typed = tokens(again.text)
    for toks in (as_typed,) if both else (as_typed, again.toks):  # "take 8 to CT" is not "took"
        said = _clause_by_clause(*_shape(toks), patterns, (strange, told | BINDING))
        if said is not None:
            many = {role for role, found in said.found.items() if len(found) > 1}
            return said if many <= ({"nil both"} if both else set()) else None
    return None


def _clause_by_clause(shape: str, values: list[Value], patterns: Patterns, strange: Strange) -> Said | None:
    """Clause by clause, the longest that fits; nothing where one is not known."""
    found: dict[str, list[Value]] = {}
    flags: set[str] = set()
    place, (left, telling) = 0, strange
    while place < len(shape):
        stop = STOPS.match(shape, place)
        if stop:
            place = stop.end()
            continue
        fits = [(m.end(), roles, m) for roles, p in patterns if (m := p.match(shape, place))]
        if not fits:
            strange_word = WORD.match(shape, place)
            if left < 1 or strange_word is None or strange_word.group() in telling:
                return None
            left, place = left - 1, strange_word.end()
            flags.add("strange")
            continue
        end, roles, match = max(fits, key=lambda fit: fit[0])
        signs = [sign for sign in match.groups() if sign]
        if not signs:
            flags.add(roles[0])
        for role, sign in zip(roles if len(roles) == len(signs) else roles * len(signs), signs, strict=True):
            found.setdefault(role, []).append(values[int(sign[1:])])
        place = end
    return Said(found, frozenset(flags))


def label_of(again: Again, value: Value) -> str | None:
    """The bed of the ward that it names."""
    text = re.sub(r"^(?:bed|room|rm) ", "", value.text).replace(" ", "")
    if value.sort not in {"B", "N"} or again.ward.index is None:
        return None
    label = bed_label(text, again.ward.index)
    return label if label in set(again.ward.index.values()) else None


def where(again: Again, bed: Value | None) -> list[str | Span]:
    return [" bed ", digits(again, bed)] if bed is not None else []


def digits(again: Again, bed: Value) -> Span:
    """Where its label stands, without the word for a bed."""
    text = again.text[bed.at[0] : bed.at[1]]
    begun = re.search(r"\d", text)
    return bed.at[0] + (begun.start() if begun else 0), bed.at[1]


def time_of(value: Value) -> list[str | Span]:
    return [value.at, "h" if value.sort == "N" else ""]


def ml(value: Value) -> str:
    return " ml" if value.sort == "N" else ""
