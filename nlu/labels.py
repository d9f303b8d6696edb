"""Bed labels and tube names that tokens can say."""

from __future__ import annotations

import re
from collections.abc import Iterator, Mapping
from functools import lru_cache
from types import MappingProxyType

from .numbers import (
    Number,
    Toks,
    glued,
    heard_as_number,
    is_digits,
    is_inside_number,
    numbers,
    starts_number,
    word,
)
from .patterns.leads import BED_WORDS, LINES
from .patterns.numerals import NUMERALS, ONES, ZEROS

LETTERS = {
    "alpha": "a", "alfa": "a", "bravo": "b", "charlie": "c", "delta": "d",
    "echo": "e", "foxtrot": "f", "golf": "g", "hotel": "h",
}  # fmt: skip
"""How a letter is spelt out."""
HEARD_LETTERS = {
    "bee": "b", "be": "b", "see": "c", "sea": "c", "cee": "c", "dee": "d", "gee": "g",
    "ay": "a", "eh": "a", "hey": "a",
}  # fmt: skip
"""What a recogniser writes for a letter behind a bed's number or the word bed."""


def letter_of(text: str, *, voice: bool) -> str:
    """The letter that a word spells out or sounds like; any other word as it is."""
    text = LETTERS.get(text, text)
    return HEARD_LETTERS.get(text, text) if voice else text


_NO_PART = re.compile(r"(?<!\d)[^a-z\d]+|[^a-z\d]+(?!\d)")
_BETWEEN = re.compile(r"(?<=\d)[^a-z\d]+(?=\d)")


@lru_cache(maxsize=64)
def bed_index(beds: tuple[str, ...]) -> Mapping[str, str]:
    """The unit's labels as written, and by their letters and digits: 3-B is found as 3b."""
    keys = [key(label) for label in beds]
    plain = {k: label for k, label in zip(keys, beds, strict=True) if keys.count(k) == 1}
    return MappingProxyType(plain | {label.lower(): label for label in beds})


def key(label: str) -> str:
    """Letters and digits of a label, lower-case, without leading zeros.

    Between digits a sign stays, as a dash: "2/4" is 2-4, and never 24.
    """
    plain = label.lower()
    if not plain.isalnum():
        plain = _BETWEEN.sub("-", _NO_PART.sub("", plain))
    return plain.lstrip("0") or plain


Found = tuple[int, str, bool]
Said = list[tuple[int, str, str | None]]
LAST_DIGITS = 2
"""What a recogniser sets apart from the hundred of a bed: "4 07"."""
ROUND = frozenset(range(20, 100, 10))
LEVEL_WORDS = frozenset({"mark", "marks", "marked", "line", "level", "is", "at", "reads", "reading"})


def beds(toks: Toks, i: int, index: Mapping[str, str] | None, *, voice: bool, cued: bool) -> Iterator[Found]:
    """Each label that can begin at a place: its end, the label, and whether the unit has it.

    A label that the unit does not have counts only after the word bed (`cued`).
    """
    seen: set[tuple[int, str]] = set()
    said = [(end, text, bed_label(text, index)) for end, text in _spoken(toks, i, voice=voice and cued)]
    if voice and cued and index is not None:
        said = _with_pieces(toks, index, said)
    several = [end for end, text, label in said if label and text[-1:].isalpha()] if len(said) > 1 else ()
    whole = max(several, default=0)
    others = index is not None and _is_behind_letters(toks, i, index)
    for end, text, label in said:
        if others and label is not None:
            label, text = None, f"{word(toks, i - 1)}{text}"
        if end < whole and (
            glued(toks, end) or word(toks, end) == "bed" or (voice and _is_no_article(toks, end))
        ):
            continue  # "2B" is not bed 2 where the unit has a 2B
        if label is not None:
            if (end, label) not in seen:
                seen.add((end, label))
                yield end, label, True
        elif others or (cued and _may_be_unknown(toks, i, end, text, said) and index is not None):
            yield end, text.upper(), False


def _is_behind_letters(toks: Toks, i: int, index: Mapping[str, str]) -> bool:
    """ "CT13" where the unit has a CT1 and no CT13: it is no bed 13."""
    letters = word(toks, i - 1) if i and is_digits(toks, i) and glued(toks, i) else ""
    if not letters.isalpha():
        return False
    named = (label for label in index if label.startswith(letters))
    return any(label[len(letters) : len(letters) + 1].isdecimal() for label in named)


def _is_no_article(toks: Toks, k: int) -> bool:
    """ "bed twelve a, mark 360", "the 1900 on twelve a should be": the letter of the bed."""
    stopped = word(toks, k + 1) in {",", "."}
    behind = word(toks, k + 1 + stopped)
    mark = stopped and behind == "mark" and starts_number(toks, k + 2 + stopped)
    return word(toks, k) == "a" and (mark or behind in {"is", "was", "should", "reads"})


def _with_pieces(toks: Toks, index: Mapping[str, str], said: Said) -> Said:
    """The labels, and "4 07", "4:07" or "four 12" as the bed 407 or 412 that the unit has; then no unknown
    bed 4."""
    ends = [(end + _is_signed(toks, end), head) for end, head, _ in said if head.isdecimal()]
    pieced: Said = [
        (end + 1, head + word(toks, end), index[head + word(toks, end)])
        for end, head in ends
        if (_goes_on(toks, end) or word(toks, end - 1) == ":") and head + word(toks, end) in index
    ]
    return [found for found in said if found[2] is not None] + pieced if pieced else said


def _goes_on(toks: Toks, i: int) -> bool:
    """Whether two digits stand here that may be the rest of a label: not those of "20:40" or "11.5"."""
    two = is_digits(toks, i) and len(word(toks, i)) == LAST_DIGITS and not glued(toks, i)
    return two and not _is_signed(toks, i + 1)


def _is_signed(toks: Toks, i: int) -> bool:
    """Whether a sign here goes on with the digits before it: "1,550", "20:40"."""
    return word(toks, i) in {":", ".", ","} and is_digits(toks, i + 1) and glued(toks, i + 1)


def _may_be_unknown(toks: Toks, i: int, end: int, text: str, said: Said) -> bool:
    """Whether a label here, which the unit does not have, may have been meant: "bed forty two"."""
    if is_digits(toks, i):
        return len(text) <= 4 and not _scaled(toks, end)
    longest = end == max(end for end, _, _ in said) and not any(label for _, _, label in said)
    return longest and text.isdecimal() and len(text) <= 3


def _scaled(toks: Toks, i: int) -> bool:
    return word(toks, i) in {"hundred", "thousand"}


def bed_label(text: str, index: Mapping[str, str] | None) -> str | None:
    """The label of the unit that the text is; where the unit is not known, what looks like one."""
    if index is not None and (label := index.get(text)) is not None:
        return label
    plain = key(text)
    if len(text) == len("0415") and text.isdecimal() and len(plain) < len(text):
        return None  # a time, and no bed 415
    if index is not None:
        return index.get(plain)
    return plain.upper() if plain.rstrip("abcdefgh").isdecimal() and len(plain) <= 4 else None


def _spoken(toks: Toks, i: int, *, voice: bool) -> Iterator[tuple[int, str]]:
    if is_digits(toks, i) and not _may_go_on(word(toks, i + 1)):
        yield i + 1, word(toks, i)
        return
    start, prefix = _prefix(toks, i)
    if prefix:
        yield start, prefix
        yield from _with_letters(toks, _heads(toks, start, voice=False), prefix, voice=voice)
    yield from _with_letters(toks, _heads(toks, i, voice=voice), "", voice=voice)


def _may_go_on(behind: str) -> bool:
    """Whether what stands behind digits can be part of their label: a letter, a dash, a digit."""
    return len(behind) == 1 or behind == "bed" or behind in LETTERS or behind in HEARD_LETTERS


def _with_letters(
    toks: Toks, heads: Iterator[tuple[int, str]], prefix: str, *, voice: bool
) -> Iterator[tuple[int, str]]:
    for end, head in heads:
        yield end, prefix + head
        letter_at = end + 1 if word(toks, end) == "-" else end
        letter = letter_of(word(toks, letter_at), voice=voice)
        if len(letter) == 1 and letter.isalpha() and word(toks, letter_at + 1) != "/":  # "12 b/l tubes"
            yield letter_at + 1, prefix + head + letter
            if is_digits(toks, letter_at + 1) and glued(toks, letter_at + 1):
                yield letter_at + 2, prefix + head + letter + word(toks, letter_at + 1)
        elif word(toks, end) == "-" and is_digits(toks, end + 1) and is_digits(toks, end - 1):
            yield end + 2, prefix + head + "-" + word(toks, end + 1)
        elif word(toks, end) == "bed" and len(word(toks, end + 1)) == 1 and word(toks, end + 1).isalpha():
            yield end + 2, prefix + head + word(toks, end + 1)


def _prefix(toks: Toks, i: int) -> tuple[int, str]:
    """The letters of a label such as CT4, ICU 3 or c t four, or none."""
    run, end = "", i
    while end < i + 3 and word(toks, end).isalpha() and len(word(toks, end)) <= 4 and not numbers(toks, end):
        run += word(toks, end)
        end += 1
        if len(run) > 2:
            break
    if run and word(toks, end) == "-":
        end += 1
    return (end, run) if run else (i, "")


def _heads(toks: Toks, i: int, *, voice: bool) -> Iterator[tuple[int, str]]:
    if is_digits(toks, i):
        yield i + 1, word(toks, i)
        single = len(word(toks, i)) == 1 and is_digits(toks, i + 1) and len(word(toks, i + 1)) == 1
        if single and not _is_signed(toks, i + 2):
            yield i + 2, word(toks, i) + word(toks, i + 1)
        return
    found = numbers(toks, i)
    if voice:
        found = found + [n for n in heard_as_number(toks, i) if n.end == i + 1]
    for number in found:
        if number.style in {"plain", "spelt", "heard", "led"} and number.value.denominator == 1:
            yield number.end, str(number.value)
            if voice and number.value in ROUND:
                yield from _ended(toks, number)


def _ended(toks: Toks, tens: Number) -> Iterator[tuple[int, str]]:
    """ "bed twenty for mark 340": the "for" may be the four of twenty-four."""
    if word(toks, tens.end + 1) in LEVEL_WORDS:
        yield from ((n.end, str(tens.value + n.value)) for n in heard_as_number(toks, tens.end)[:1])


_BEHIND_NAME = """
mark should marks marked line level at reads read reading shows showing is was drained put seal no page the
okay ok uh um er erm ah so and add as with has had sitting sits measures measured measuring now just it's
its that's canister box chamber bottle collection fluid suction air leak tidaling swinging out in on to from
of for about around please yesterday today this last half quarter tube drain right left bed room final
output same chest roughly approximately approx nearly almost
belongs belong came fell stays stay stayed still remains not isn't wasn't hasn't won't goes went swings swung
draining leaking bubbling oozing off back unclamped
"""
BEHIND_NAME = frozenset(_BEHIND_NAME.split())
SUBJECTS = frozenset(
    {"i", "he", "she", "we", "they", "it", "that", "the", "his", "her", "there", "my", "end"}
)
"""Behind "tube a" these begin what is said next."""
SUBJECTS |= frozenset(
    {
        "i'm",
        "i've",
        "i'll",
        "he's",
        "she's",
        "there's",
        "looks",
        "taken",
        "read",
        "drawn",
        "recorded",
        "seen",
        "comes",
        "came",
        "will",
    }
)
KINDS_OF_LINE = frozenset({"closing", "pen", "hourly", "final", "current"})
TELLS = frozenset({"is", "was", "at"})
SIDES = {"l": "left", "r": "right"}
NO_NAMES = frozenset("olrxynwu")
"""Letters that stand for a word or a side: "drain n all", "tube w clots"."""
LONGER = frozenset(
    {":", ".", "ml", "cc", "mls", "hundred", "thousand", "am", "pm", "a", "p", "h", "fr", "french", "f"}
)
"""Before these a digit is no tube by itself."""
SPELT_LEVEL = 3
"""So many single digits in a row are a level: "one three seven"; a digit more may be the tube's."""
MORE_THAN_TUBES = frozenset({"5", "6", "7", "8", "9", "five", "six", "seven", "eight", "nine"})
"""Nobody has so many chest tubes. Common practice, no source."""


TUBE_LETTERS = frozenset("aAbcd")
TUBE_NOUNS = frozenset({"tube", "drain", "pigtail", "ct"})
OF_BED = frozenset({"on", "in", "of", "for", "from"})


def tube_name(parts: list[str]) -> str:
    """A tube's name in the order side, place."""
    side = [p for p in parts if p in {"left", "right"}]
    return " ".join([*dict.fromkeys(side), *dict.fromkeys(p for p in parts if p not in side)])


def tube_label(toks: Toks, i: int) -> tuple[int, str] | None:
    """The letter or number of a tube after the word tube: B, 1, two."""
    if word(toks, i) == "#":
        i += 1
    text = word(toks, i)
    if len(text) == 1 and text.isalpha() and text not in NO_NAMES:
        if text == "a" and not ends_name(toks, i + 1):
            return None
        if text == "i" and word(toks, i + 1).isalpha():
            return None  # "the drain I mean"
        return i + 1, text.upper()
    if is_digits(toks, i):
        alone = len(text) == 1 and text != "0" and not _longer(toks, i + 1)
        return (i + 1, text) if alone else None
    found = [n for n in numbers(toks, i) if 0 < n.value < 10 and n.value.denominator == 1]
    return (found[0].end, str(found[0].value)) if found else None


def _longer(toks: Toks, i: int) -> bool:
    if word(toks, i) == ":" and not glued(toks, i + 1):
        return False
    if word(toks, i) == "," and is_inside_number(toks, i):
        return True  # "chest drain 1,240mls"
    return word(toks, i) in LONGER


def ends_name(toks: Toks, i: int) -> bool:
    """Whether the "a" before is the name of a tube: no noun follows that it could be the article of."""
    text = word(toks, i)
    if text in {"hundred", "thousand"}:
        return False
    called = word(toks, i + 1) in LINES and (word(toks, i + 2) in TELLS or starts_number(toks, i + 2))
    if text in KINDS_OF_LINE and called:
        return True  # "tube a closing line is 400", but not "drain, a closing line of 400"
    done = text.endswith("ed")  # "tube A clamped", "drain A removed"
    return not text.isalpha() or done or text in NUMERALS or text in BEHIND_NAME or text in SUBJECTS


def is_of_a_level(toks: Toks, i: int, end: int) -> bool:
    """Whether the digit behind the word tube is only the first of a level: "tube 1,188", "five seventy".

    Not "tube two seventy" nor "two seven five oh", which may be the second tube with 70, or with 750.
    """
    longest = max(numbers(toks, i), default=None, key=lambda n: n.end)
    if longest is None or longest.end <= end:
        return longest is not None and word(toks, i) in MORE_THAN_TUBES
    spelt = longest.end - i == SPELT_LEVEL and all(_is_digit(toks, k) for k in range(i, longest.end))
    signed = word(toks, end) in {"point", "hundred", "thousand"} or (
        word(toks, end) in {",", "."} and glued(toks, end)
    )
    return spelt or signed or word(toks, i) in MORE_THAN_TUBES or word(toks, end) in ZEROS


def _is_digit(toks: Toks, i: int) -> bool:
    text = word(toks, i)
    return text in ONES or text in ZEROS or (text.isdecimal() and len(text) == 1)


def names_tube(toks: Toks, i: int) -> bool:
    """ "pulled tube 1 on bed 12", "clamped the drain B of 7": whether the name of a tube stands there."""
    name = word(toks, i)
    named = len(name) == 1 and (name in TUBE_LETTERS or (name.isdecimal() and name not in MORE_THAN_TUBES))
    of_bed = word(toks, i + 1) in OF_BED and (word(toks, i + 2) in BED_WORDS or is_digits(toks, i + 2))
    return named and name != "0" and of_bed and word(toks, i - 1) in TUBE_NOUNS
