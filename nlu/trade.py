"""What a drain is called in one country, as the word that every phrase knows: "ICC" as tube.

The words are joined to one token at the place where they were said. Called by `pipeline`.
"""

from __future__ import annotations

from collections.abc import Sequence

from .patterns.numerals import NUMERALS
from .tokens import Token

NAMES: dict[tuple[str, ...], str] = {
    ("intercostal", "catheter"): "tube",
    ("intercostal", "catheters"): "tubes",
    ("intercostal", "tube"): "tube",
    ("intercostal", "cath"): "tube",
    ("icc",): "tube",
    ("ctt",): "tube",
    ("ctts",): "tubes",
    ("ictd",): "tube",
    ("iccs",): "tubes",
    ("i", "c", "c"): "tube",
    ("c", "t", "t"): "tube",
    ("thoracostomy", "tube"): "tube",
    ("chest", "tube", "thoracostomy"): "tube",
    ("thoracic", "drain"): "drain",
    ("thorax", "drain"): "drain",
    ("thoracic", "tube"): "tube",
    ("icdt",): "tube",
    ("ict",): "tube",
    ("icts",): "tubes",
    ("icds",): "tubes",
    ("intercostal", "chest", "drain"): "drain",
    ("intercostal", "chest", "tube"): "tube",
    ("intercostal", "drainage", "tube"): "tube",
    ("icd", "bag"): "box",
    ("icd", "jar"): "box",
    ("drain", "bag"): "box",
    ("chest", "drain", "bag"): "box",
    ("chest", "tube", "bag"): "box",
    ("chest", "drain", "jar"): "box",
    ("uwsd",): "box",
    ("uwd",): "box",
    ("uwds",): "canisters",
    ("wsd",): "box",
    ("uwsds",): "canisters",
    ("u", "w", "s", "d"): "box",
    ("underwater", "seal", "drain"): "box",
    ("underwater", "seal", "drainage"): "box",
    ("underwater", "sealed", "drain"): "box",
    ("under", "water", "seal", "drain"): "box",
    ("c", "/", "d", "/", "i"): "intact",
    ("underwater", "drain"): "box",
    ("replogle",): "ngt",
    ("peritoneal", "drain"): "jp",
    ("column", "movement"): "swing",
    ("received", "back"): "back",
    ("dry", "suction"): "suction",
    ("repogle",): "ngt",
}
"""British, Indian, Philippine and Australian words for the tube in the chest and for what it drains into.
From memory."""
SEALS = (("underwater", "seal"), ("under", "water", "seal"))
HOLDERS = frozenset({"bottle", "bottles", "box", "chamber", "canister", "unit", "system"})
OF_DRAIN = frozenset({"drain", "drainage", "box", "tube"})
CHANGES = frozenset(
    {"new", "fresh", "old", "changed", "swapped", "replaced", "exchanged", "tipped", "knocked", "cracked"}
)
"""Of a seal these are said of the whole canister."""
READ = {
    (first, noun): noun
    for first in ("drainage", "output")
    for noun in ("line", "mark", "level", "chamber", "canister", "box")
}
"""What is read on a canister, by what stands in it: "drainage line 1050"; alone it is an amount."""
READING = frozenset(
    {"at", "is", "reads", "reading", "now", "was", "of", ":", "=", "on", "shows", "sits", "@", "to"}
)
LONGEST = max(map(len, NAMES))
BEGINNING = frozenset(name[0] for name in (*NAMES, *SEALS, *READ))
FIRST = BEGINNING | OF_DRAIN
LEVEL_DIGITS = 3
"""No seal is so many centimetres deep."""


def plain(toks: Sequence[Token]) -> Sequence[Token]:
    """The tokens, with each such name as one word."""
    if FIRST.isdisjoint([t.text for t in toks]):
        return toks
    out: list[Token] = []
    i = 0
    while i < len(toks):
        size, text = _named(toks, i)
        same = size == 1 and text == toks[i].text
        _add(out, toks[i] if same else toks[i]._replace(text=text, end=toks[i + size - 1].end))
        i += size
    return out


def _add(out: list[Token], token: Token) -> None:
    """A token more; a drain's bottle is a bottle."""
    held = token.text in HOLDERS and out and out[-1].text in OF_DRAIN
    if held and (token.text.startswith("bottle") or _is_joined(out[-1])):
        drain = out.pop()
        if out and out[-1].text == "chest":
            drain = out.pop()
        token = token._replace(start=drain.start, glued=drain.glued)
    out.append(token)


def _is_joined(token: Token) -> bool:
    """Whether it stands for another name."""
    return token.end - token.start != len(token.text) or token.text == "box"


def _named(toks: Sequence[Token], i: int) -> tuple[int, str]:
    """How many tokens a name has that begins here, and the word for it."""
    for size in range(min(LONGEST, len(toks) - i), 0, -1) if toks[i].text in BEGINNING else ():
        said = tuple(t.text for t in toks[i : i + size])
        if said in NAMES:
            return size, NAMES[said]
        if said in READ and _is_read(toks, i + size):
            return size, READ[said]
        if said in SEALS and _is_whole(toks, i - 1, i + size):
            return size, "box"
    return 1, toks[i].text


def _is_read(toks: Sequence[Token], after: int) -> bool:
    """Whether a figure is read there: "drainage line reads 1050", not "drainage line kinked"."""
    while after < len(toks) and toks[after].text in READING:
        after += 1
    return after < len(toks) and (toks[after].is_digits or toks[after].text in NUMERALS)


def _is_whole(toks: Sequence[Token], before: int, after: int) -> bool:
    """Whether "underwater seal" is the canister: changed, or with what holds it or a level behind it."""
    behind = toks[after].text if after < len(toks) else ""
    level = len(behind) == LEVEL_DIGITS and behind.isdecimal() and behind[0] != "0"
    changed = before >= 0 and toks[before].text in CHANGES
    return level or changed or behind in CHANGES or behind in HOLDERS
