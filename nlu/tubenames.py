"""A tube told by what it is like or by its letter, as the words that every phrase knows.

"the back one's at 260", "A drain was 340 and B drain was 95", "bed 11, A is 210 and B is 65".
Called by `pipeline`; each word stays at its place in the message.
"""

from __future__ import annotations

from collections.abc import Sequence

from .patterns.leads import BED_SAID
from .patterns.numerals import is_number
from .tokens import Token, text_at

ARTICLES = frozenset({"the", "his", "her", "their"})
LIKE = frozenset(
    {"front", "back", "top", "bottom", "middle", "big", "bigger", "biggest", "small", "smaller", "little"}
    | {"large", "larger", "thin", "thick", "long", "short", "outer", "inner", "near", "far", "side", "chest"}
)
"""What a tube is like, beside its side and place."""
PLACES = frozenset({"upper", "lower", "lateral"})
IS = frozenset({"is", "was"})
LETTERS = frozenset("abcd")
TUBES = frozenset({"drain", "tube", "drain's", "tube's"})
TELLS = IS | {"at", "on", "reads", "reading", "shows", "sits", "sitting", "mark", "line", "level", ":", "="}
NAMED = frozenset({"tube", "drain", "ct"})
FEWEST = 2
"""Letters of tubes: with one alone an "a" is an article."""


def plain(toks: Sequence[Token]) -> Sequence[Token]:
    """The tokens with such a tube as a drain, and its letter behind that word."""
    said = {t.text for t in toks}
    if "one" in said:
        toks = [
            t._replace(text="drain") if t.text == "one" and _is_like(toks, k) else t
            for k, t in enumerate(toks)
        ]
    if {"a", "b"} <= said or {"a's", "b's"} & said:
        return _lettered(toks)
    return toks


def named(toks: Sequence[Token], text: str) -> Sequence[Token]:
    """The tokens of a typed message with the capital of "clamped tube A" kept: a name, and no article; "IS
    1250" among small letters is what somebody breathed in, and no verb."""
    if text.isupper():
        return toks
    if "IS " in text:
        toks = [t._replace(text="incentive") if text[t.start : t.end] == "IS" else t for t in toks]
    if "A" not in text:
        return toks
    return [
        token._replace(text="A")
        if token.text == "a" and text[token.start] == "A" and text_at(toks, k - 1) in NAMED
        else token
        for k, token in enumerate(toks)
    ]


def _is_like(toks: Sequence[Token], k: int) -> bool:
    """Whether the "one" at a place is no bed one: "the bottom one's at 90"."""
    article, like = text_at(toks, k - 2), text_at(toks, k - 1)
    is_so = text_at(toks, k + 1) in IS or text_at(toks, k + 2) == "s"
    return is_so and (like in PLACES or (article in ARTICLES and like in LIKE))


def _lettered(toks: Sequence[Token]) -> Sequence[Token]:
    places = [k for k in range(len(toks)) if _is_letter(toks, k)]
    if len({toks[k].text[0] for k in places}) < FEWEST:
        return toks
    out: list[Token] = []
    for k, token in enumerate(toks):
        if k in places:
            out.append(Token("drain", token.start, token.start, token.glued))
            out.append(token._replace(text=token.text[0]))
        elif k - 1 not in places or token.text not in TUBES:
            out.append(token)
    return out


def _is_letter(toks: Sequence[Token], k: int) -> bool:
    """Whether a letter alone names a tube there, behind no number that it may be the end of."""
    before, text, behind = (text_at(toks, j) for j in (k - 1, k, k + 1))
    if text.removesuffix("'s") not in LETTERS or before in TUBES | BED_SAID or is_number(before):
        return False
    if toks[k].glued or (behind not in TUBES and not any(t.text in BED_SAID for t in toks[:k])):
        return False  # "A is 210, B is 65": beds, where the unit calls them so
    told = behind.endswith("'s") or text_at(toks, k + 2) in TELLS or is_number(text_at(toks, k + 2))
    return text.endswith("'s") or behind in IS or (behind in TUBES and told)
