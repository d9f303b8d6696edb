"""Clauses with a subject of their own beside what is told whole: "clamped at 1015, she felt dizzy".

Who else did something, or how the patient is, changes nothing of a line or an event beside it, whatever its
words are: so they need not be understood. What makes such a clause doubtful is a number, a word for a drain
or for what happens to one, a cue of ours, a doubt or a denial, or "it" and "that", which may be the drain.
Then the message is asked as it was. Called by `read` for messages that would be asked.
"""

from __future__ import annotations

from collections.abc import Iterator
from typing import NamedTuple

from .again import Again, Told
from .numbers import Toks, is_digits, is_inside_number, word
from .patterns.asides import PATIENTS, RELATIVES, STAFF, THINGS
from .patterns.clockwords import HOUR_WORDS, MINUTE_WORDS
from .patterns.numerals import NUMERALS
from .patterns.ownclauses import (
    AMOUNTS,
    ASIDE_THINGS,
    BECAUSE,
    BEFORE_SUBJECT,
    DENIALS,
    DESCRIBING,
    DEVICES,
    DOUBTFUL,
    DRAINS,
    GOING_ON,
    HAS_VERB,
    JOINING,
    NOT_PERSONS,
    OBJECTS,
    OF_DAY,
    OPENING,
    OWNERS,
    REPORTING,
    SELVES,
    SETTLED,
    SMALL,
    STANDS,
    WAITED_FOR,
    WANTING,
)
from .patterns.smalltalk import NAMES
from .pipeline import Cue
from .statements import Answered, Asked, Corrected, Withdrawn
from .weighty import MEANWHILE

STOPS = frozenset({".", ";", "!", ",", "(", ")"})
PLAIN = frozenset(
    {"filler", "word", "okay", "bed", "about", "timeword", "question", "since", "plan", "neg", "nothing"}
    | {"window", "span", "ask", "arrival"}
)
"""Labels of cues that say nothing of a drain; what they doubt or deny is looked for by its words."""
OF_PEOPLE = frozenset({"coming to", "really"})
"""Phrases that are cues only of what is ours."""
OF_PERSONS = frozenset({"away", "back", "left", "moved"})
"""What people do, too: "her husband went home"."""
PERSONS = (STAFF | RELATIVES | PATIENTS | NAMES | {"pt", "pts", "patient", "patients"}) - NOT_PERSONS
OTHERS = (STAFF | RELATIVES | NAMES) - NOT_PERSONS
"""Persons who lie in no bed of the unit."""
OF_PATIENT = frozenset({"him", "her", "pt", "patient"})
OF_WAITING = frozenset({"wall", "canister", "tubeword"})
OF_THINGS = frozenset({"order", "tubeword", "other"})
"""Cues beside what else is ordered: "chest x-ray ordered"."""
FEWEST = 2
"""Words of a clause."""


class Piece(NamedTuple):
    """A stretch between stops and joining words; `joined` is the word that it begins with."""

    start: int
    end: int
    joined: str


class Clause(NamedTuple):
    """A stretch with whom it is of ("he", "wife", or "because") and its words."""

    piece: Piece
    subject: str
    words: frozenset[str]


def beside(again: Again) -> Told:
    """What the message tells without such clauses; nothing where that is not whole."""
    if "?" in again.toks.words:
        return ()
    spans = _harmless(again, list(_pieces(again.toks)))
    if not spans:
        return ()
    told = again.without(*((piece.start, piece.end) for piece in spans))
    return () if any(isinstance(s, Answered | Asked | Corrected | Withdrawn) for s in told) else told


def _pieces(toks: Toks) -> Iterator[Piece]:
    start = 0
    for k in range(len(toks) + 1):
        stop = k == len(toks) or (word(toks, k) in STOPS and not is_inside_number(toks, k))
        if k > start and (stop or _joins(toks, k)):
            yield Piece(start, k, word(toks, start) if word(toks, start) in JOINING else "")
            start = k
        if stop:
            start = k + 1


def _joins(toks: Toks, k: int) -> bool:
    """Whether a clause begins with this word; none does with the last one, nor the "once" of "at once"."""
    last = word(toks, k + 1) in STOPS | {""}
    return word(toks, k) in JOINING and word(toks, k - 1) not in {"at", "and"} and not last


def _harmless(again: Again, pieces: list[Piece]) -> list[Piece]:
    """The clauses that may be left out; none whose subject the next one has: "he sat up and pulled"."""
    toks, found, subject = again.toks, list[Piece](), ""
    for piece in pieces:
        own = _subject(toks, piece)
        goes_on = bool(piece.joined and not own and found and found[-1].end == piece.start)
        subject = own or (subject if goes_on else "")
        clause = Clause(piece, subject, _words(toks, piece))
        few = len(clause.words) < (1 if goes_on else FEWEST)
        if _is_settled(toks, piece) or (subject and not few and _is_harmless(again, clause)):
            found.append(piece)
        elif goes_on:
            found.pop()
    return found


def _words(toks: Toks, piece: Piece) -> frozenset[str]:
    """The words of a clause without the one that joins it, and without the "this" of "this morning"."""
    said = toks.said[piece.start + bool(piece.joined) : piece.end]
    return frozenset(w for k, w in enumerate(said) if w != "this" or OF_DAY.isdisjoint(said[k + 1 : k + 2]))


def _subject(toks: Toks, piece: Piece) -> str:
    """Whom a clause is of: "he", "wife"; "because" where it only says why; nothing where nobody is named."""
    if piece.joined in BECAUSE:
        return piece.joined
    k = piece.start
    while k < piece.end and word(toks, k) in BEFORE_SUBJECT:
        k += 1
    if word(toks, k) in SELVES:
        return word(toks, k)
    if piece.joined == "and" and word(toks, piece.start + 1) in GOING_ON:
        return word(toks, piece.start + 1)
    owned = word(toks, k) in OWNERS
    k += owned
    while word(toks, k) in DESCRIBING:
        k += 1
    if k >= piece.end:
        return ""
    said = word(toks, k)
    if said in PERSONS or said in ASIDE_THINGS:
        return said
    verb = not HAS_VERB.isdisjoint(toks.said[k + 1 : piece.end])
    return said if owned and verb and said.isalpha() else ""


def _is_settled(toks: Toks, piece: Piece) -> bool:
    """ "drain kept below the chest", "box went with him": it is where it should be."""
    said = set(toks.said[piece.start : piece.end])
    return not said.isdisjoint(DRAINS) and said <= SETTLED | DRAINS | JOINING and not said.isdisjoint(STANDS)


def _is_harmless(again: Again, clause: Clause) -> bool:
    toks, piece, words = again.toks, clause.piece, clause.words
    if any(is_digits(toks, k) and not _is_length(toks, k) for k in range(piece.start, piece.end)):
        return False
    if piece.joined in MEANWHILE and word(toks, piece.start - 1) == "pulled":
        return False  # "tube pulled when he rolled": by whom?
    if words & _doubts(clause) or any(_is_number(toks, k) for k in range(piece.start, piece.end)):
        return False
    if piece.joined not in BECAUSE | {"as"} and word(toks, piece.end - 1) in REPORTING | OPENING:
        return False
    inside = [c for c in again.cues if piece.start <= c.start < piece.end]
    return all(_says_nothing(cue, clause, toks) for cue in inside)


def _is_number(toks: Toks, k: int) -> bool:
    return word(toks, k) in NUMERALS - SMALL and not _is_length(toks, k)


def _is_length(toks: Toks, k: int) -> bool:
    """ "he wants an x-ray in two hours": how long till then, and no number of ours."""
    return word(toks, k - 1) in {"in", "for", "within"} and word(toks, k + 1) in HOUR_WORDS | MINUTE_WORDS


def _doubts(clause: Clause) -> frozenset[str]:
    """The words that make it doubtful: "because it wasn't draining" denies nothing of the event."""
    doubts = DOUBTFUL - AMOUNTS if clause.subject in BECAUSE else DOUBTFUL | DENIALS | OBJECTS
    doubts = doubts - THINGS - WAITED_FOR if "waiting" in clause.words else doubts
    doubts = doubts - {"broken", "broke"} if not clause.words.isdisjoint(DEVICES) else doubts
    another = clause.subject in ASIDE_THINGS or _is_of_another(clause)
    return doubts - {"ordered", "chest", "dry"} if another else doubts


def _is_of_another(clause: Clause) -> bool:
    """ "clamped at 1715 and wants an x-ray": what else is wanted, and nothing of the drain."""
    return clause.subject in WANTING and not clause.words.isdisjoint(ASIDE_THINGS)


def _says_nothing(cue: Cue, clause: Clause, toks: Toks) -> bool:
    subject, words = clause.subject, clause.words
    phrase = " ".join(toks.said[cue.start : cue.end])
    if phrase in OF_PEOPLE or cue.label in PLAIN or cue.value == "acknowledged":
        return True
    if cue.value == "damaged":
        return not words.isdisjoint(DEVICES) and clause.piece.joined in BECAUSE | {"as", "since"}
    if subject in ASIDE_THINGS:
        return cue.label in OF_THINGS
    if cue.label == "other":
        return subject in SELVES | BECAUSE or not words.isdisjoint(HAS_VERB)
    if cue.label == "order":
        # "as the surgeon wants to see how he copes", "and wants an x-ray"
        return clause.piece.joined in BECAUSE | {"as"} or _is_of_another(clause)
    if cue.label in OF_WAITING:
        return "waiting" in words
    if "sleep" in words and (cue.label == "side" or cue.value == "back"):
        return True  # "went right back to sleep"
    if phrase == "move":
        return word(toks, cue.start - 1) in OWNERS  # "slept through the move"
    of_person = cue.label == "kind" and cue.value in OF_PERSONS and subject in OTHERS
    return of_person and words.isdisjoint(OF_PATIENT)
