"""A message that asks tells nothing: its numbers and events are what it asks about.

Called by `unexplained`, and by `leftovers` for what is dictated.
"""

from __future__ import annotations

from collections.abc import Iterator
from itertools import pairwise

from .clauses import NUMBERS, happens
from .items import FINDINGS, Item
from .numbers import Toks, word
from .patterns.leads import BED_SAID

ASKING = frozenset(
    {"what", "what's", "whats", "how", "how's", "hows", "when", "when's", "whens", "who", "which"}
    | {"why", "why's", "whys"}
)
OPENING = 4
"""Words at most before what a question is about: "can you tell me"."""
AUXILIARY = frozenset(
    {"is", "are", "was", "were", "does", "did", "do", "has", "have", "can", "could", "should", "am"}
    | {"isn't", "isnt", "wasn't", "wasnt", "hasn't", "didn't", "doesn't"}
)


CAME = frozenset({"dumped", "gushed", "drained", "poured", "leaked", "bled", "oozed", "emptied", "out"})
SINCE = frozenset({"since", "after"})
STOPS = frozenset({",", ".", ";", "?", "!", "and"})
OF_UNIT = frozenset({"beds", "due", "open"})
"""What is asked of all beds."""
UNSUMMED = frozenset({"rate", "last", "checks", "due", "capacity"})
"""Topics without a window: since when is only why they are asked for."""
REACH = 4
"""Tokens between "since" and what happened then, and one more."""
READ = frozenset({"mark", "read", "check", "marked"})
OPENERS = frozenset({"so", "hey", "hi", "ok", "okay", "wait", "and", "but", "well", "um", "uh", ",", "-"})
"""Before a question these only begin to speak."""
OF_WHAT = frozenset({"bed", "room", "rm", "the", "pt", "patient", "he", "she", "it", "that", "this", "still"})
OF_US = frozenset({"are", "do", "did", "have", "am", "has"})
US = frozenset({"we", "i", "you", "u", "they", "anyone", "anybody", "someone", "somebody"})
OF_FINDINGS = frozenset({"is", "was", "are", "were", "does"})
"""First before a bed these ask; dictated, "have nine" was bed nine."""
PAIR = 2
"""Words of "is bed", before its number."""
TAGGED = 4
"""Words and signs of "that's due right?"."""
WHO = frozenset({"i", "we", "to", "you", "someone", "anyone"})
ASKED_ABOUT = NUMBERS | FINDINGS | {"num", "check", "kind", "what", "same"}
"""Pieces of which one at least is asked about."""


BIDDEN = frozenset({"can", "could", "would", "will", "may", "please", "pls", "plz", "pl", "kindly"})
"""With one of these a line is to be put right or taken back, though a question mark may follow."""
OFFERED = frozenset({"like", "want", "know", "be", "help"})
"""Behind "would you" these ask what somebody wants, and bid nothing."""
WHETHER = frozenset({"should", "shall", "do", "does", "did", "is", "was", "are", "were", "have", "has", "am"})
ASKED_OF = US | {"bed", "room", "rm", "the", "my", "that", "this", "it", "someone", "anyone", "he", "she"}
MODALS = frozenset({"can", "could", "would", "should", "might", "will"})
LOOKING = frozenset({"see", "check", "tell", "find", "confirm", "remind", "say", "let", "look", "ask"})
WHETHER_WORDS = frozenset({"if", "whether", "when", "what", "who", "how", "which", "what's", "who's"})
INVERTED = frozenset(
    {"did", "do", "does", "has", "have", "didn't", "hasn't", "haven't", "don't", "doesn't", "am"}
)
WH = frozenset({"why", "who", "who's", "how", "when", "where", "which"})


def asks_whether(toks: Toks) -> bool:
    """ "should I delete bed 5's 0100 mark?", "who deleted it": asked about, and not to be done.

    "can you delete it?" bids; "should be 430 bed 5" and "was 340 should be 430" put right.
    """
    said = toks.said[: len(toks)]
    opens = next((k for k, text in enumerate(said) if text not in OPENERS), 0)
    first, after = word(toks, opens), word(toks, opens + 1)
    if first in WH - {"when"} or (
        first in {"would", "do", "did"} and not OFFERED.isdisjoint(said[: opens + 4])
    ):
        return True
    label = after[:1].isdigit() and "?" in said
    if first in WHETHER and (after in ASKED_OF or label):
        return True
    return said[-1:] == ("?",) and BIDDEN.isdisjoint(said)


def opens_asking(toks: Toks) -> bool:
    """ "is 260 right for 21", "would 100 in an hour be worth a call": what is asked about is not told."""
    asks = word(toks, 0) in {"is", "are", "would", "should", "could", "can", "does"}
    return asks and word(toks, 1).isdecimal() and "?" not in toks.words


def opens_aloud(toks: Toks) -> bool:
    """ "are you sure bed 5 was 340", "could bed 5 be 340", "can you see if bed 5 went to CT": it asks.

    So do "what time was bed 5's tube pulled" and "when was it"; "when i went in, bed 5 was 340" is told.
    "can you put bed 5 down as 340" bids, and "did bed 5 at 1800" and "have bed 5 at 340" leave out who did.
    """
    opens = next((k for k, text in enumerate(toks.said) if text not in OPENERS), 0)
    first, after = word(toks, opens), word(toks, opens + 1)
    if first in MODALS and after in {"you", "u", "anyone", "anybody", "someone", "somebody"}:
        return word(toks, opens + 2) in LOOKING and not WHETHER_WORDS.isdisjoint(toks.said[opens:])
    if first in WH | {"what"} and after in AUXILIARY | {"time"}:
        return True
    if first in MODALS or first in {"is", "was", "were", "are", "isn't", "wasn't"}:
        return after in ASKED_OF - {"my"} | US
    return first in INVERTED and after in US | {"he", "she", "it"}


def is_owned_up(text: str) -> bool:
    """ "oh no I deleted the 2000 on 11": told, and not asked for; as tokens its word may be put right."""
    return any(who in TELLERS and verb in DELETED for who, verb in pairwise(text.lower().split()))


TELLERS = US | {"he", "she", "someone", "somebody", "nobody", "who", "i've", "student", "accidentally"}
DELETED = frozenset(
    {"deleted", "cancelled", "canceled", "voided", "removed", "scrapped", "withdrew", "ignored"}
)
DELETED |= {"struck", "scratched", "erased", "disregarded"}


def with_bed_to_read(items: tuple[Item, ...], toks: Toks) -> tuple[Item, ...]:
    """ "when am i supposed to mark 3 again": what is read there is a bed, and no level."""
    if word(toks, 0) not in {"when", "when's", "whens", "how", "what"}:
        return items
    nums = [i for i in items if i.role == "num"]
    if len(nums) != 1 or nums[0].label is None or nums[0].unit or any(i.role == "bed" for i in items):
        return items
    k = nums[0].start
    told = word(toks, k - 1) in READ and word(toks, k - 2) in WHO
    return tuple(i.as_role("bed") if told and i is nums[0] else i for i in items)


def with_next_bed(items: tuple[Item, ...], toks: Toks) -> tuple[Item, ...]:
    """ "what about 20", "and 21?", "how about 5 right": the next bed that is asked of, and no level."""
    opens = next((k for k, text in enumerate(toks.said) if text not in OPENERS), 0)
    about = toks.said[opens : opens + PAIR] in {("what", "about"), ("how", "about")}
    if not about and not (opens == 1 and word(toks, 0) == "and" and "?" in toks.words):
        return items
    said = [i for i in items if i.role != "cue" and i.start >= opens]
    bed = said[0] if said else None
    behind = opens + PAIR * about
    behind += word(toks, behind) in BED_SAID
    rest = [i for i in said[1:] if i.role != "tube"]
    if bed is None or bed.start != behind or rest or bed.label is None or bed.unit:
        return items
    tubes = [i for i in said[1:] if i.role == "tube"]
    last = max(i.end for i in said)
    ends = word(toks, last) in {"", "?", ".", "please", "pls"} and not word(toks, last + 1).isalnum()
    asked = (bed.as_role("bed")._replace(lead="", about=False), *tubes)
    return (*asked, Item("cue", len(toks), len(toks), "mark_of_question")) if ends else items


def without_hour(items: tuple[Item, ...], toks: Toks) -> tuple[Item, ...]:
    """ "which beds still need a line before seven": by when, and no bed."""
    if {"before", "by"}.isdisjoint(toks.words) or not any(
        i.value == "ask" and i.name in OF_UNIT for i in items
    ):
        return items
    return tuple(
        i for i in items if not (i.role in {"num", "time"} and word(toks, i.start - 1) in {"before", "by"})
    )


SAYING = frozenset({"is", "that's", "thats", "it's", "its", "s", "are", "was", "due", "at"})
"""With one of these before it, a "right?" asks for a yes."""
OF_A_SIDE = frozenset({"the", "or", "and", "left", "other", "on", "/", "&", "a", "in", ""}) | SAYING - {"due"}


def without_tag(items: tuple[Item, ...], toks: Toks) -> tuple[Item, ...]:
    """ "thats due right?": a "right?" behind what is said whole is no side."""
    last = len(toks) - 2
    if len(toks) < TAGGED or toks.said[last : last + 2] != ("right", "?"):
        return items
    said = toks.said[:last]
    told = not SAYING.isdisjoint(said) and word(toks, last - 1) not in OF_A_SIDE
    return tuple(i for i in items if not (told and i.role == "tube" and i.start == last))


def with_sign(items: tuple[Item, ...], toks: Toks) -> tuple[Item, ...]:
    """ "was 5 tidaling earlier": asked of one bed with no other number, and no question mark."""
    if word(toks, 0) not in OF_FINDINGS or "?" in toks.words:
        return items
    numbers = [i for i in items if i.role not in {"cue", "sep", "tube"}]
    if word(toks, 1) in US - {"i", "we", "you", "u", "they"} and not numbers:
        return (*items, Item("cue", len(toks), len(toks), "mark_of_question"))  # "is anyone leaking"
    near = len(numbers) == 1 and (numbers[0].start <= PAIR or word(toks, 1) in {"the", "his", "her"})
    of_bed = near and numbers[0].label is not None
    events = any(happens(i) or i.value in {"kind", "what", "neg", "level"} for i in items)
    if not of_bed or events or not any(i.role == "cue" and i.value in FINDINGS for i in items):
        return items
    return (*items, Item("cue", len(toks), len(toks), "mark_of_question"))


def asking(items: tuple[Item, ...], toks: Toks) -> Iterator[str]:
    """One line for each number and event of a message that begins by asking: "what was 12 at 1500"."""
    said = next((i for i in items if i.role not in {"bed", "sep"} and i.value != "bed"), None)
    asks = said is not None and said.role == "cue" and said.value in {"question", "ask", "word"}
    if said is not None and asks and word(toks, said.start) in ASKING and not _says_on_what(said, toks):
        summed = not any(i.role == "cue" and i.value == "ask" and i.name in UNSUMMED for i in items)
        given = (i for i in items if i.role in NUMBERS or (happens(i) and (summed or not _is_when(i, toks))))
        yield from ("a question tells no number" for _ in given)
    opens = next((k for k, text in enumerate(toks.said) if text not in OPENERS), 0)
    first = next((i for i in items if i.start > opens or (i.start == opens and i.value != "question")), None)
    if (
        first is not None
        and _is_first(first, toks)
        and not (_is_put_down(toks) or _leaves_out_who(toks, opens))
        and word(toks, opens) in AUXILIARY
        and _is_of_bed(first, toks, opens)
    ):
        signed = any(i.role == "cue" and i.value == "mark_of_question" for i in items)
        amounts = frozenset() if signed else NUMBERS | {"num"}
        told = [
            i for i in items if i.role in amounts or (happens(i) and not _is_when(i, toks)) or _is_found(i)
        ]
        yield from ("a question tells nothing" for _ in told)


def _is_when(item: Item, toks: Toks) -> bool:
    """ "the rate on 11 since he came back": since when is asked, and not told."""
    before = toks.said[max(0, item.start - REACH) : item.start]
    return not SINCE.isdisjoint(before) and STOPS.isdisjoint(before)


def _says_on_what(said: Item, toks: Toks) -> bool:
    """ "9 dumped when we turned him": on what it came."""
    came = word(toks, said.start) == "when" and word(toks, said.start - 1) in CAME
    return came and word(toks, said.start + 1).isalpha()


def _is_first(first: Item, toks: Toks) -> bool:
    """Whether nothing was asked before it: "is 5 due? 7 marked 430 at 0640" asks of another bed."""
    return first.start <= OPENING and "?" not in toks.said[: first.start]


def _leaves_out_who(toks: Toks, opens: int) -> bool:
    """ "didn't get to send 13 at 1500, it was 1240": the nurse did not; "didn't he go" asks."""
    return word(toks, opens) in {"didn't", "didnt"} and word(toks, opens + 1) in {
        "get",
        "send",
        "chart",
        "manage",
    }


def _is_put_down(toks: Toks) -> bool:
    """ "could you put 4 down as 330 at 1545": what is to be written, and nothing that is asked."""
    put = word(toks, 1) in {"you", "u"} and word(toks, 2) == "put" and "?" not in toks.words
    return put and any(pair == ("down", "as") for pair in pairwise(toks.said))


def asking_aloud(items: tuple[Item, ...], toks: Toks) -> Iterator[str]:
    """One line for each word that asks in what should be a dictated line: it was misheard.

    "three right when thirty".
    """
    asks = any(i.role == "cue" and i.value == "question" and _is_asked(i, toks) for i in items)
    signed = any(i.role == "cue" and i.value == "mark_of_question" for i in items)
    asks |= signed and word(toks, 0) in OF_FINDINGS  # "Is bed 5 340?"
    if asks and any(i.role == "level" for i in items):
        yield "a question tells no number"
    for item, after in pairwise(i for i in items if i.role != "bed"):
        ask = item.role == "cue" and item.value == "ask" and word(toks, item.start) in ASKING
        if ask and after.role == "volume":  # "12 how much did 9 put out"
            yield "a question tells no number"


def _is_asked(question: Item, toks: Toks) -> bool:
    """ "what i can see in bed 8 is 340" asks nothing."""
    told = word(toks, question.start) == "what" and word(toks, question.start + 1) in {"i", "we", "i'm"}
    return word(toks, question.start) in ASKING and not told


def doubted(items: tuple[Item, ...], _: Toks) -> Iterator[str]:
    """One line for each number and event that is asked for, and planned or denied.

    "can you check if 15 was 720", "dont chart 8 yet, might be 260"; "fix 20, 615 not 651" puts right.
    """
    right = any(i.value == "kind" and i.name == "corrected" for i in items)
    denied = [a for a, b in pairwise(items) if a.value == "neg" and right and b.role == "num"]
    said = {i.value for i in items if i.role == "cue" and i not in denied}
    if "question" in said and said & {"plan", "neg"}:
        yield from ("what is asked and denied is not told" for i in items if i.role in NUMBERS or happens(i))


def _is_of_bed(first: Item, toks: Toks, opens: int) -> bool:
    """ "is 19 clamped", "has the patient in 12 moved", "so is it still 340", "are we at 410 on 12"."""
    if first.role in {"bed", "num"} or word(toks, opens + 1) in OF_WHAT:
        return True
    return word(toks, opens) in OF_US and word(toks, opens + 1) in US


def _is_found(item: Item) -> bool:
    return item.role == "check" or (item.role == "cue" and item.value in FINDINGS)
