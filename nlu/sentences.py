"""Where a new sentence begins behind a number without a stop: "450 at 7 she is resting", as a recogniser
writes it. A stop is put in there, so that what follows is read as if its stop had been written.

Only where nothing of what follows can be about the number: it says no number and doubts, corrects and quotes
nothing. Called by `pipeline`.
"""

from __future__ import annotations

from collections.abc import Sequence
from itertools import takewhile

from .patterns.asides import RELATIVES, STAFF
from .patterns.clockwords import AMPM
from .patterns.levels import VOLUMES
from .patterns.numerals import FRACTIONS, NUMERALS
from .patterns.otherfigures import DRUGS
from .tokens import Token

STOPS = frozenset({".", ",", ";", "!", "?", ":", "-", "/"})
BEHIND = NUMERALS | frozenset(
    VOLUMES
    | {"hours", "hrs", "o'clock", "oclock", "now", "ago", "noon"}
    | {"midnight", "morning", "afternoon", "evening", "tonight", *AMPM}
)
"""What a line ends with, beside digits."""
TOGETHER = frozenset({"he's", "she's", "they're", "we're", "i'm", "i'll", "we'll"})
"""Whom a new sentence is of, with its verb."""
SUBJECTS = (
    frozenset({"he", "she", "they", "we", "i", "patient", "pt", "everyone", "everybody", "everything"})
    | {"vitals", "obs", "dressing", "dressings", "lungs"}
    | RELATIVES
    | STAFF
)
PEOPLE = RELATIVES | STAFF
_VERBS = """
is are was were am looks look seems feels sleeps slept rests sits sat sitting resting sleeping asleep awake
at in updated aware comfortable stable doing visiting will came comes went wants
"""
VERBS = frozenset(_VERBS.split())
OF_PEOPLE = frozenset(
    {"called", "rang", "phoned", "left", "arrived", "visited", "popped", "brought", "asked"}
)
"""What those do who come and go, and a patient does not: "wife left" tells of no tube."""
OWNED = frozenset({"his", "her", "their"})
PERSONS = frozenset({"he", "she", "they"})
JUST = frozenset({"just", "has", "have", "is"})
SCANS = frozenset({"xray", "cxr", "labs", "bloods", "abg", "ecg", "ekg", "echo"})
SCANNED = frozenset({"done", "taken", "sent", "ordered", "pending"})
HURTS = frozenset({"sore", "painful", "hurts", "tender", "itchy", "aching"})
SAYS_SO = frozenset({"says", "said", "it's", "that", "it"})
"""With one of the words above, of a body."""
REQUESTS = frozenset(
    {("call", "me"), ("text", "me"), ("page", "me"), ("ping", "me"), ("thank", "you")}
    | {("will", "keep"), ("will", "watch"), ("keeping", "an"), ("heading", "to"), ("need", "to")}
    | {("needs", "to"), ("needs", "swapping"), ("needs", "changing")}
)
LOOKING_AGAIN = frozenset({"recheck", "check", "remeasure", "mark", "read", "reassess"})
WHEN_NEXT = frozenset({"in", "at"})
_ABOUT_A_NUMBER = """
not no nor never cannot think thinks thought guess guessing guessed maybe probably perhaps possibly might
may could should would estimate estimated estimating eyeballed eyeballing unsure sure approx roughly about
around ish wrong mistake correct correction corrected scratch delete undo ignore disregard actually instead
rather wait oops meant mean said says say told heard reported report reports than more less from same was
were had read reads reading misread line mark level amount total output number figure it's that's check
rechecks recheck rechecking verify confirm double again right let now this these those before after earlier
yesterday half line's
"""
OPENING = TOGETHER | SUBJECTS | OWNED | SCANS | {"will", "chest", *(first for first, _ in REQUESTS)}
"""What any sentence begins with that is looked for."""
ABOUT_A_NUMBER = frozenset(_ABOUT_A_NUMBER.split())
"""With one of these what follows may go on about the number, or take it back."""
_OF_ANOTHER = """
drank drink drinks drinking drunk eaten eating ate void voids voided peed pee urine urinal foley catheter
bag bags infused infusing infusion bolus boluses fluid fluids iv drip water tea juice emptied emptying vomit
vomited vomiting emesis stool commode feed feeds bladder output transfused blood lost
"""
OF_ANOTHER = frozenset(_OF_ANOTHER.split())
"""What else has amounts: the number before may be its."""
GOING_ON = ABOUT_A_NUMBER | OF_ANOTHER | NUMERALS | FRACTIONS.keys()
IS_AT = frozenset({"at", "on", "is", "line", "mark", "level", "drain", "box", "bottle", "canister"})
"""Behind "204s" these tell of that bed."""
COUNTS = {"one": "1", "two": "2", "three": "3", "four": "4"}
"""How many of a drug, as it is typed."""
PARTED = frozenset({"/", "s", *COUNTS})
FULL_HOUR = 4
ENDS = STOPS - {",", "-", "/"}


def parted(toks: Sequence[Token]) -> Sequence[Token]:
    """ "7A right/ 600 at 0900/ clamped 0902": a slash with a blank behind it only is the comma of whoever
    types so; "120/ 80" is none. "204s on 410" is what 204 is on."""
    if PARTED.isdisjoint([t.text for t in toks]):
        return toks
    found = list(toks)
    for k, (before, sign, behind) in enumerate(zip(toks, toks[1:], toks[2:], strict=False), 1):
        apart = sign.text == "/" and sign.glued and not behind.glued
        short = before.is_word and len(before.text) == 1 and not before.glued  # "w/ trauma team"
        if apart and not short and not (before.is_digits and behind.is_digits):
            found[k] = sign._replace(text=",")
        if before.text in COUNTS and sign.text in DRUGS:  # "two paracetamol given"
            found[k - 1] = before._replace(text=COUNTS[before.text])
        if sign.text == "s" and sign.glued and before.is_digits and _is_told_of_bed(toks, k):
            found[k] = sign._replace(text="'s")
    return found


def _is_told_of_bed(toks: Sequence[Token], k: int) -> bool:
    """ "204s on 410": at the beginning, and a number behind it; "sats in the 90s on 2 L" is of no bed."""
    opens = k == 1 or toks[k - 2].text in STOPS | {"bed", "room", "rm"}
    return opens and toks[k + 1].text in IS_AT and k + 2 < len(toks) and toks[k + 2].is_digits


def stopped(toks: Sequence[Token]) -> Sequence[Token]:
    """The tokens, with a stop of no width before each sentence that begins behind a number."""
    places = [k for k in range(1, len(toks) - 1) if toks[k].text in OPENING and _begins(toks, k)]
    if not places:
        return toks
    found = list(toks)
    for k in reversed(places):
        found.insert(k, Token(".", toks[k - 1].end, toks[k - 1].end, glued=True))
    return found


def _begins(toks: Sequence[Token], k: int) -> bool:
    first, second, before = toks[k].text, toks[k + 1].text, toks[k - 1]
    opens = first in TOGETHER or (first in SUBJECTS and second in VERBS) or (first, second) in REQUESTS
    opens = opens or _is_of_people(toks, k) or _is_scan(toks, k) or (first in PERSONS and second in SAYS_SO)
    bed = first.startswith("need") and len(before.text) < FULL_HOUR  # "17 needs to go"
    ended = (before.is_digits and not bed and not _is_counting(toks, k)) or (
        before.text in BEHIND and not _is_verb(toks, k - 1)
    )
    return ended and (_plans_the_next(toks, k) or (opens and not _goes_on(toks, k)))


def _is_of_people(toks: Sequence[Token], k: int) -> bool:
    """ "daughter called wants update", "his wife just left"."""
    k += toks[k].text in OWNED
    if k + 1 >= len(toks) or toks[k].text not in PEOPLE - PERSONS:
        return False
    owned = toks[k - 1].text in OWNED
    verb = k + 1 + (toks[k + 1].text in JUST and k + 2 < len(toks))
    return toks[verb].text in OF_PEOPLE or (owned and toks[k + 1].text in VERBS)


def _is_scan(toks: Sequence[Token], k: int) -> bool:
    """ "chest xray done"."""
    k += toks[k].text == "chest"
    return k + 1 < len(toks) and toks[k].text in SCANS and toks[k + 1].text in SCANNED


def _is_counting(toks: Sequence[Token], k: int) -> bool:
    """ "640 at 1900. 5 visitors in": a small number that begins a clause, and how many of them there are."""
    begins = k == 1 or toks[k - 2].text in STOPS | {"and", "&"}
    return begins and len(toks[k - 1].text) == 1 and toks[k].text.endswith("s") and toks[k].text in PEOPLE


def _plans_the_next(toks: Sequence[Token], k: int) -> bool:
    """ "will recheck in an hour": when the next line is read says nothing of this one."""
    said = [t.text for t in toks[k : k + 4]]
    return said[0] == "will" and said[1] in LOOKING_AGAIN and not WHEN_NEXT.isdisjoint(said[2:])


def _is_verb(toks: Sequence[Token], k: int) -> bool:
    """ "who am i in here": no half of the day."""
    return toks[k].text == "am" and k > 0 and toks[k - 1].is_word and toks[k - 1].text not in NUMERALS


def _goes_on(toks: Sequence[Token], k: int) -> bool:
    """Whether the sentence from there on may still be about the number before it."""
    clause = list(takewhile(lambda token: token.text not in ENDS, toks[k:]))
    hurts = not HURTS.isdisjoint(token.text for token in clause)
    return any(_is_of_number(token) and not (hurts and token.text in SAYS_SO) for token in clause)


def _is_of_number(token: Token) -> bool:
    return token.text in GOING_ON or token.text.endswith("n't") or token.is_digits
