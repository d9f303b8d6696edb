"""A 24-hour time that a recogniser writes with a comma: "mark 1,090 at 1,900", "at 1,400 bed 9 was 735".

Joined where nothing else than a time can be meant, or where it is as unsure as "bed 7 at 2100", which is
asked near that time. Called by `figures`.
"""

from __future__ import annotations

from collections.abc import Sequence

from .patterns.clockwords import AMPM, HOUR_WORDS
from .patterns.leads import BED_SAID
from .patterns.levels import MILLILITRES
from .patterns.numerals import NUMERALS, TENS, is_number
from .tokens import Token, text_at

LABELLED = frozenset(
    {"bed", "beds", "bay", "room", "rm", "bad", "tube", "drain", "number", "b", "and", "for"}
)
"""Before what is a label, or may be."""
ROUND = frozenset({"hundred", "thousand"})
DONE = frozenset(
    {"changed", "exchanged", "swapped", "replaced", "removed", "pulled", "placed", "inserted", "clamped"}
    | {"unclamped", "transferred"}
)
"""Behind these a number after "at" is the time."""
OUTRIGHT = frozenset({"time", "since"})
"""Before these digits nothing but a time is meant."""
AT = frozenset({"at", "@"})
READ = frozenset({"read", "taken", "measured", "done", "checked"})
"""Between a level and when it was read."""
BEGINNING = frozenset({"starts", "starting", "started", "opens", "opened", "began", "begins"})
"""Before "at" these say how full a new canister was: "new one starts at 0"."""
TELLING = frozenset(
    {"is", "was", "reads", "mark", "line", "level", "reading", "final", "at", "@", "old", "of"}
)
"""Right before a number these say that it is a level."""
TUBES = frozenset({"tube", "tubes", "drain", "drains"})
BEFALLEN = DONE | {"tipped", "cracked", "dislodged", "disconnected", "kinked", "broke"}
"""What happened to a drain: told before its bed, the number behind the bed is when."""
WHITHER = frozenset(
    {"home", "back", "ct", "theatre", "theater", "icu", "off", "out", "discharged", "died", "moved"}
    | {"seal", "waterseal", "suction", "gravity", "over", "ray", "xray", "scan", "mri", "red", "bloody"}
)
DAYS = frozenset({"yesterday", "today", "tonight", "night", "morning", "afternoon", "evening"})
OPENING = DAYS | {"", ".", ";"}
"""Before "at" these lead to a time: "yesterday at 2,300 was 760"; "nearly at 1,900" is a level."""
SIDES = frozenset({"left", "right", "mediastinal"})
HOURS, MINUTES = 24, 60
FULL_HOUR = 4
FEWEST = 5
"""Words and digits of "at 1,400 bed 9"."""


def without_commas(toks: list[Token]) -> list[Token]:
    """ "mark 1,090 at 1,900", "nine sixty at 2,100 hours": a time in full as "1900" and "2100"."""
    if not any(token.text == "," and token.glued for token in toks):
        return toks
    found = [k for k in range(len(toks) - 2) if _is_thousand(toks, k) and _is_clock(toks, k)]
    times = {k for k in found if _is_time(toks, k)}
    unsure = [k for k in found if k not in times and _may_be_time(toks, k)]
    if len(unsure) == 1 and not times and not _has_time(toks, unsure[0]):
        times.add(unsure[0])
    return _joined(toks, times) if times else toks


def _joined(toks: Sequence[Token], times: set[int]) -> list[Token]:
    out: list[Token] = []
    for k, token in enumerate(toks):
        if k in times:
            last = toks[k + 2]
            out.append(Token(token.text + last.text, token.start, last.end, token.glued))
        elif k - 1 not in times and k - 2 not in times:
            out.append(token)
    return out


def _is_thousand(toks: Sequence[Token], i: int) -> bool:
    if not _is_hour(toks[i].text) or toks[i + 1].text != "," or (i and toks[i - 1].text == ","):
        return False
    last = toks[i + 2]
    return toks[i + 1].glued and last.glued and last.is_digits and len(last.text) == len("900")


def _is_hour(text: str) -> bool:
    return text.isdecimal() and len(text) == 1


def _is_clock(toks: Sequence[Token], i: int) -> bool:
    digits = toks[i].text + toks[i + 2].text
    return int(digits[:2]) < HOURS and int(digits[2:]) < MINUTES


def _is_time(toks: Sequence[Token], i: int) -> bool:
    """ "1,900 hours", "time 2,215", "final 1,340 at 1,015"."""
    before = text_at(toks, i - 1)
    named = before == "is" and text_at(toks, i - 2) == "time"
    if text_at(toks, i + 3) in HOUR_WORDS or before in OUTRIGHT or named:
        return True
    return before in AT and _is_after_value(toks, i - 2)


def _is_after_value(toks: Sequence[Token], i: int) -> bool:
    """Whether what happened ends here, or a number that is no bed or tube; "line at 1,900" is a level."""
    if text_at(toks, i) in DONE or (text_at(toks, i) == "out" and text_at(toks, i - 1) in {"tube", "drain"}):
        return True
    i -= text_at(toks, i) in READ
    last = i - (text_at(toks, i) in MILLILITRES)
    start = last
    while start >= 0 and (toks[start].is_digits or toks[start].text in NUMERALS | {","}):
        start -= 1 + (text_at(toks, start - 1) == "and" and text_at(toks, start - 2) in ROUND)
    if start == last or text_at(toks, last) == ",":
        return False
    large = toks[last].is_digits and len(toks[last].text) >= len("100")
    return large or last < i or (text_at(toks, start) not in LABELLED and start >= 0)


def _may_be_time(toks: Sequence[Token], i: int) -> bool:
    """ "at 1,400 bed 9 was 735", "canister cracked at 2,030", "bed 7 at 2,100"; no "line at 1,900"."""
    if text_at(toks, i - 1) not in AT or text_at(toks, i + 3) in MILLILITRES:
        return False
    last = i - 2 - (text_at(toks, i - 2) == ",")
    bed = _label_before(toks, last)
    if bed >= 0 and not _is_one_label([t.text for t in toks[bed : last + 1] if is_number(t.text)]):
        return False  # "bed 8 three fifty at 1,900", "bed 6 20 at 1,840"
    if bed < 0:
        led = text_at(toks, i - 2) in BEFALLEN | WHITHER
        return led or (text_at(toks, last) in OPENING and _has_level(toks, i))
    alone = bed == 0 and all(t.text in {".", "!"} for t in toks[i + 3 :])
    return alone or _is_told_before(toks, bed)


def _label_before(toks: Sequence[Token], last: int) -> int:
    """Where the bed begins that ends at a place, with its tube: "bed 16 left"; -1 where none does."""
    start = last - (text_at(toks, last) in SIDES)
    while start >= 0 and (is_number(toks[start].text) or len(toks[start].text) == 1):
        start -= 1
    named = text_at(toks, start) in BED_SAID | {"bad", "bet"}
    return start if named else (start if start < last else -1)


def _is_one_label(numbers: list[str]) -> bool:
    """ "12", "twenty one"; behind more numbers it is unsure which is the level."""
    return len(numbers) <= 1 or (len(numbers) == len(["twenty", "one"]) and numbers[0] in TENS)


def _is_told_before(toks: Sequence[Token], bed: int) -> bool:
    """ "changed the chamber bed 4", "tube out bed 21", "new chest tube bed 16 left"."""
    said = [t.text for t in toks[:bed]]
    out = "out" in said and not TUBES.isdisjoint(said)
    new = "new" in said and not TUBES.isdisjoint(said[said.index("new") :])
    return out or new or not BEFALLEN.isdisjoint(said)


def _has_level(toks: Sequence[Token], i: int) -> bool:
    """Whether another number stands behind a word of a level, or is large: "at 1,400 bed 9 was 60"; or
    whether there is none but the bed: "at 1,400 bed 9"."""
    if len([t for t in toks if t.text[:1].isalnum()]) == FEWEST:
        return True
    others = [k for k in range(len(toks)) if not i <= k <= i + 2 and is_number(toks[k].text)]
    return any(text_at(toks, k - 1) in TELLING or len(toks[k].text) == len("100") for k in others)


def _has_time(toks: Sequence[Token], i: int) -> bool:
    """Whether another number than the one at a place is a time, or may be: then this one is the level."""
    others = [k for k in range(len(toks)) if not i <= k <= i + 2 and toks[k].text[:1].isalnum()]
    return any(_may_tell_time(toks, k) for k in others)


def _may_tell_time(toks: Sequence[Token], k: int) -> bool:
    text, before = toks[k].text, text_at(toks, k - 1)
    if text in AMPM or text in HOUR_WORDS or text in {"o'clock", "oclock", "noon", "midnight", "ago", "now"}:
        return True
    if before in AT and is_number(text):
        return text_at(toks, k - 2) not in BEGINNING
    if not text.isdecimal():
        return False
    if text_at(toks, k + 1) == ":" and toks[k + 1].glued:
        return True
    told = before in TELLING or (before == "one" and text_at(toks, k - 2) in {"old", "new", "last"})
    thousand = _is_hour(text) and k + 2 < len(toks) and _is_thousand(toks, k)
    return not told and (len(text) == FULL_HOUR or thousand)
