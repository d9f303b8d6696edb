"""What whoever lies in a bed is called there: "bed 4 kiddo 62 at 2200", "little one in 6", "26 lung guy 430".

Each is put as the patient. A number behind may be an age, so that it must be told as a line: with a time, or
in millilitres. A child that somebody brought ("his kid") is left. Called by `pipeline`.
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence

from .patterns.leads import BED_WORDS
from .tokens import Token, text_at

CHILDREN = frozenset(
    {"baby", "bub", "bubs", "bubba", "bubby", "infant", "neonate", "newborn", "kiddo", "kid", "toddler"}
    | {"bairn", "wean", "sprog", "preemie", "prem", "peanut", "munchkin", "cutie", "sweetie"}
)
GROWN = frozenset(
    {"guy", "man", "lady", "woman", "gent", "chap", "fella", "bloke", "boy", "girl", "lad", "lass", "gal"}
    | {"gentleman", "teen", "teenager"}
)
PAIRS = frozenset({("little", name) for name in ("one", *GROWN)} | {("wee", "one"), ("sweet", "pea")})
PAIRS |= {("wee", name) for name in GROWN}
NAMES = CHILDREN | GROWN | {"one", "pea"}
LOOSE = frozenset({"lung", "chest", "thoracic", "chd", "fontan", "tof", "tga", "hlhs", "norwood", "vsd"})
LOOSE |= {"asd", "avsd", "glenn", "switch", "pneumo"}
"""Of these no more is understood: before the patient they are a part of the name."""
OPERATED = LOOSE | {"heart", "cardiac", "lobectomy", "vats", "cabg", "valve", "trauma", "wedge", "op"}
OPERATED |= {"pneumonectomy", "esophagectomy", "oesophagectomy", "decortication", "effusion", "empyema"}
"""Before a grown patient: "the lung guy"."""
STOPS = frozenset({",", ".", ";", ":", "-", "!", "?", "and", "/"})
BEFORE = OPERATED | STOPS | BED_WORDS | {"", "the", "our", "this", "new", "poor", "post-op", "postop"}
SIGNED = frozenset({"in", "bed", "room", "bay", "rm", "weight", "wt", "weighs", "back", "off", "rolled"})
SIGNED |= {"had", "pulled", "kicked", "drain", "icc", "chest", "crying", "settled", "asleep", "has"}
"""Behind "bub" these leave it a child, and no bubbling."""
OF_A_LINE = frozenset({"at", "@", "ml", "mls", "cc"})
OF_A_BED = frozenset({"nil", "no", "drain", "line", "swing", "swinging", "drained", "back", "off", "still"})
LONG = 4
"""Digits of a time, and of no bed."""


def plain(toks: Sequence[Token]) -> Sequence[Token]:
    """The tokens, with each such name as the patient."""
    if NAMES.isdisjoint([t.text for t in toks]):
        return toks
    return list(_named(toks))


def _named(toks: Sequence[Token]) -> Iterator[Token]:
    skipped = -1
    for k, token in enumerate(toks):
        if k <= skipped:
            continue
        end = _end(toks, k + (token.text in LOOSE))
        if end and _is_patient(toks, k, end):
            skipped = end - 1
            token = token._replace(text="patient", end=toks[skipped].end)
        yield token


def _end(toks: Sequence[Token], k: int) -> int:
    """Where such a name ends that begins there; 0 where none does."""
    name = text_at(toks, k)
    if (name, text_at(toks, k + 1)) in PAIRS:
        return k + 2
    operated = name in GROWN and text_at(toks, k - 1) in OPERATED
    return k + 1 if name in CHILDREN or operated else 0


def _is_patient(toks: Sequence[Token], k: int, end: int) -> bool:
    behind = text_at(toks, end)
    if behind[:1].isdecimal() and not (_is_line(toks, end) or _is_bed(toks, k, end)):
        return False
    if toks[k].text == "bub" and not (behind in SIGNED or behind[:1].isdecimal()):
        return False
    return text_at(toks, k - 1) in BEFORE or _ends_bed(toks, k - 1)


def _ends_bed(toks: Sequence[Token], k: int) -> bool:
    """Whether a bed ends there that opens its clause: "bed 4", "12", "P4", "2B"."""
    first = k - (k > 0 and toks[k].glued and toks[k].is_word and len(toks[k].text) == 1)
    if not toks[first].is_digits or len(toks[first].text) >= LONG:
        return False
    first -= first > 0 and toks[first].glued and toks[first - 1].is_word and len(toks[first - 1].text) == 1
    return first == 0 or text_at(toks, first - 1) in BED_WORDS | STOPS


def _is_line(toks: Sequence[Token], k: int) -> bool:
    """Whether the number there is told with a time or in millilitres: no age."""
    behind = text_at(toks, k + 1)
    return behind in OF_A_LINE or (len(behind) == LONG and behind.isdecimal())


def _is_bed(toks: Sequence[Token], k: int, end: int) -> bool:
    """ "bub 10 nil drained": at the very start the bed that the child lies in; an age has its unit behind."""
    behind = text_at(toks, end + 1)
    return k == 0 and len(toks[end].text) < LONG and (behind in STOPS or behind in OF_A_BED)
