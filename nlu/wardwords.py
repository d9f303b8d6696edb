"""Words of the ward as a recogniser writes them: "lion" for line, "chess tube", "mark as 410".

Each only beside what shows that it can be nothing else; dictation only. Called by `heard`.
"""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from typing import NamedTuple

from .items import FULL_HOUR
from .patterns.clockwords import HOUR_WORDS, MINUTE_WORDS
from .patterns.leads import BED_SAID
from .patterns.levels import MILLILITRES
from .patterns.numerals import HOMOPHONES, is_number
from .tokens import Token, text_at

NUMBER = "#"
"""Stands for any number among the words beside."""
ANY: frozenset[str] = frozenset()
BEFORE_BED = BED_SAID | {"", "so", "and", "uh", "um", "okay", "hey", "bet", "bad", "bit", "bid"}
VALUED = frozenset({NUMBER, "is", "are", "at", "was", "reads", "now", "as", "his", "about", "roughly", "of"})
PLACED = frozenset({"on", "for", "in", *BED_SAID})
TUBES = frozenset({"tube", "tubes", "tub", "drain", "drains"})
CANISTERS = frozenset({"canister", "cannister", "box", "chamber", "bottle", "unit"})
LINE = frozenset({"line", "lines", "mark", "marks", "marked", "level", "levels", "reading"})
SIDES = frozenset({"left", "right", "side", "pleural", "mediastinal"})
COUNTED = MILLILITRES | {NUMBER}
LENGTHS = HOUR_WORDS | MINUTE_WORDS
NAMED = LINE | TUBES | CANISTERS | SIDES | {NUMBER, "fluid", "shift", "time", "it", *"abcdefgh", *HOMOPHONES}
"""What may be so much: "mark as 410", "bed 3b as 410"."""


MEASURED = "foley catheter urine ng og pain sat temp temperature pulse bp sugar glucose lactate potassium"
"""What is measured of a patient and is no drain: "the foley's at four hundred"."""
SO_IT_IS = frozenset({"gone", "stopped", "resolved", "back", "small", "large", "constant", "continuous"})
_LOOKS = "pink red bloody clear serous serosanguinous serosanguineous dark bright milky cloudy straw yellow"
LOOKS = frozenset({*_LOOKS.split(), "purulent", "turned", "turning", "looking"})


class Heard(NamedTuple):
    """What was said, and the words of which one must stand before and behind what was written; none: any."""

    said: str
    before: frozenset[str] = ANY
    behind: frozenset[str] = ANY


def _all(words: str, heard: Heard) -> dict[str, Heard]:
    return dict.fromkeys(words.split(), heard)


THINGS = {
    **_all("lion lyon lime loin lined", Heard("line", behind=VALUED | PLACED)),
    **_all("lions limes", Heard("lines", behind=VALUED | PLACED)),
    **_all("lying laying", Heard("line", behind=VALUED)),
    **_all("marc marck", Heard("mark")),
    **_all("marked", Heard("mark", behind=frozenset({"me"}))),
    **_all("leek leeks", Heard("leak")),
    **_all("mart", Heard("mark", behind=VALUED | PLACED)),
    **_all("reeds", Heard("reads")),
    **_all("leads", Heard("reads", TUBES | CANISTERS | {NUMBER}, frozenset({NUMBER}))),
    **_all("labels", Heard("level", TUBES | CANISTERS | {NUMBER, "the"}, VALUED | {"a"})),
    **_all("chess test jest", Heard("chest", behind=TUBES)),
    **_all("tub", Heard("tube")),
    **_all("train", Heard("drain", SIDES | {"chest", "chess", "the"})),
    **_all("market", Heard("mark", behind=frozenset({NUMBER}))),
    **_all("banister bannister canaster", Heard("canister")),
    **_all("battle", Heard("bottle", behind=VALUED | PLACED)),
    **_all("boat", Heard("both", behind=frozenset({NUMBER, "at"}))),
    **_all("passed pass", Heard("past", frozenset({NUMBER, "half", "quarter"}), frozenset({NUMBER}))),
    **_all("ship sheep", Heard("shift", frozenset({"of", "my", "this"}))),
    **_all("pain pan pin", Heard("pen", behind=LINE | {"marc"})),
    **{f"{of}'s": Heard(of, behind=VALUED) for of in MEASURED.split()},
    **_all("rates rate's", Heard("rate", frozenset({"heart", "respiratory"}), VALUED)),
    **_all("walls", Heard("wall", behind=VALUED)),
    **_all("seals", Heard("seal", behind=VALUED | {"good", "intact", "fine", "ok", "okay"})),
    **_all("write", Heard("right", frozenset({NUMBER}), TUBES | {"chest", "side", "sided", "pleural"})),
    **_all("rights", Heard("right", behind=VALUED)),
    **_all("lefts", Heard("left", behind=VALUED)),
    **_all("leaks", Heard("leak", behind=SO_IT_IS)),
    **_all("fluids", Heard("fluid", behind=LOOKS)),
    **_all("titling tiling tiding tidying", Heard("tidaling")),
}
BEFORE_AT = frozenset({"same", "unchanged", "is", "was", "be"})
LINKS = {
    "as": Heard("is", NAMED, VALUED | {"up", "sitting", "a"}),
    "his": Heard("is", NAMED | {"this"}, frozenset({NUMBER, "at", "up", *BED_SAID})),
    "that": Heard("at", COUNTED | {"read", "taken", "done"}, frozenset({NUMBER, "o", "oh"})),
    "had": Heard("at", COUNTED, frozenset({NUMBER})),
    "done": Heard("taken", COUNTED, frozenset({"at", "@", "and", "add", "that", "just", "now"})),
    "read": Heard("taken", COUNTED, frozenset({"at", "@"})),
    "ate": Heard("at", frozenset({NUMBER}), frozenset({NUMBER, "quarter", "half"})),
    "add": Heard("at", BEFORE_AT, frozenset({NUMBER})),
    "and": Heard("at", frozenset({"is", "was", "be"}), frozenset({NUMBER})),
    "s": Heard("is", frozenset({NUMBER}), frozenset({"at", "up"})),
}
TOGETHER: Mapping[tuple[str, ...], Heard] = {
    ("can", "a", "stir"): Heard("canister"),
    ("can", "of", "stir"): Heard("canister"),
    ("milli", "liters"): Heard("milliliters"),
    ("milli", "litres"): Heard("millilitres"),
    ("take", "in"): Heard("taken", COUNTED),
    ("a", "go"): Heard("ago", LENGTHS),
    ("title", "ing"): Heard("tidaling"),
    ("tidal", "ing"): Heard("tidaling"),
    ("tide", "ling"): Heard("tidaling"),
    ("tied", "ling"): Heard("tidaling"),
    **{("on", "the", canister): Heard("inside", COUNTED) for canister in CANISTERS},
}


FIRSTS = {words[0]: [said for said in TOGETHER if said[0] == words[0]] for words in TOGETHER}


def put_right(toks: Sequence[Token]) -> list[Token]:
    """The tokens with each such word as what was said."""
    return _linked(_alone(_joined(toks), THINGS))


def _joined(toks: Sequence[Token]) -> list[Token]:
    out: list[Token] = []
    k = 0
    while k < len(toks):
        words = next((w for w in FIRSTS.get(toks[k].text, ()) if _says(toks, k, w)), ())
        heard = TOGETHER.get(words)
        if heard is not None and _is_among(text_at(out, len(out) - 1), heard.before):
            out.append(Token(heard.said, toks[k].start, toks[k + len(words) - 1].end, toks[k].glued))
            k += len(words)
        else:
            out.append(toks[k])
            k += 1
    return out


def _says(toks: Sequence[Token], i: int, words: tuple[str, ...]) -> bool:
    return tuple(t.text for t in toks[i : i + len(words)]) == words


def _alone(toks: Sequence[Token], table: Mapping[str, Heard]) -> list[Token]:
    return [_said(toks, k, table.get(token.text)) for k, token in enumerate(toks)]


def _linked(toks: Sequence[Token]) -> list[Token]:
    """ "mark as 410", "bed 5 as at 750"; "340 as at 1800" says when."""
    if not any(token.text in LINKS for token in toks):
        return list(toks)
    return [
        token if _is_meant(toks, k) else _said(toks, k, LINKS.get(token.text)) for k, token in enumerate(toks)
    ]


def _is_meant(toks: Sequence[Token], i: int) -> bool:
    """Whether "as" says when, or a number beside "read" may be line or time: "1850 read at 1900"."""
    if toks[i].text == "read":
        before, behind = text_at(toks, i - 1), text_at(toks, i + 2)
        whole = before.isdecimal() and len(before) == FULL_HOUR
        return whole or (behind.isdecimal() and len(behind) < FULL_HOUR)
    if toks[i].text in {"ate", "add"}:
        return text_at(toks, i - 1) not in {"is", "was", "be"} and not _is_before_hour(toks, i)
    return toks[i].text == "as" and _is_when(toks, i)


def _is_before_hour(toks: Sequence[Token], i: int) -> bool:
    """ "mark 405 ate 1400", "same add 0200": the level is whole, and the number behind its time; in "bed 208
    ate 1400" it is missing."""
    hour = text_at(toks, i + 1)
    if hour in {"quarter", "half"}:
        return text_at(toks, i + 2) in {"past", "to", "after", "til", "till", "of"}
    timed = hour.isdecimal() and len(hour) == FULL_HOUR and hour[:2] < "24" and hour[2:] < "60"
    if text_at(toks, i + 2) in MILLILITRES | {"calories", "kcal"}:
        return False
    level = text_at(toks, i - 1)
    whole = len(level) >= len("405") and text_at(toks, i - 2) not in BED_SAID | {"ate", "at"}
    return timed and (toks[i].text == "add" or (level.isdecimal() and whole))


def _is_when(toks: Sequence[Token], i: int) -> bool:
    """Whether "as at" here stands behind a line, or "as" begins "as of now"."""
    after = _beside(toks, i, 1)
    start = i - (text_at(toks, i - 1) == ",")
    while is_number(text_at(toks, start - 1)):
        start -= 1
    level = text_at(toks, i - 1) in COUNTED or is_number(_beside(toks, i, -1))
    return after == "of" or (after == "at" and level and text_at(toks, start - 1) not in BEFORE_BED)


def _said(toks: Sequence[Token], i: int, heard: Heard | None) -> Token:
    if heard is None:
        return toks[i]
    right = _is_among(_beside(toks, i, -1), heard.before) and _is_among(_beside(toks, i, 1), heard.behind)
    return toks[i]._replace(text=heard.said, glued=False) if right else toks[i]


def _beside(toks: Sequence[Token], i: int, step: int) -> str:
    """The word beside a place, behind a comma: "mark, as 230"."""
    return text_at(toks, i + step * (1 + (text_at(toks, i + step) == ",")))


def _is_among(text: str, words: frozenset[str]) -> bool:
    return not words or text in words or (NUMBER in words and is_number(text))
