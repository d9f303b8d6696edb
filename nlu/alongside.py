"""Clauses with a subject of their own beside a whole line, in words that elsewhere would be of it.

"he gave it a 9/10 for ouch", "the new aide starts 0700", "dad went out for air", "not a happy man": what
somebody else, a thing of the house or so many of something is, does and thinks is no report, whatever its
verb. Each number must have a noun, a unit or a time of its own; a word of a drain, an event that no subject
there accounts for, a doubt or a correction leaves the clause as it was. Called by `read`, last of all, where
a typed message would be asked.
"""

from __future__ import annotations

from collections.abc import Iterator

from . import framed, strangers
from .accounts import is_clock
from .again import Again, Span, Told
from .framed import Frame
from .items import EVENTS, FULL_HOUR
from .neighbours import is_dash, parted
from .numbers import Toks, glued, is_digits, word
from .ownsubject import GOES, JOINING, OwnSubject
from .patterns.alongside import LITTLE_MORE, NO_NOUN
from .patterns.asides import RELATIVES
from .patterns.otherfigures import COLLECTORS, LINKS, VESSELS
from .patterns.ownclauses import HIMSELF, VERBS
from .somebody import is_behind_line
from .statements import Away, Back, Checked, Described, Left, Mark, Moved, Statement, Unclear
from .strangers import FAR, FARTHER, LEAST, STOPS, amounts_of, begins_tube, is_bare, may_be_line
from .verdict import Outcome

HELD = frozenset({"tubeword", "canister"})
WITH = frozenset({"with", "w"})
FEWEST = 2
"""Words of a clause without a number."""


def alongside(again: Again) -> Told:
    """What is told beside such clauses; nothing where it is not whole, or one of them may be of it."""
    toks, clauses = again.toks, [c for c in _clauses(again) if not _goes_on(again, c)]
    if not clauses:
        return ()
    counted = [c for c in clauses if c.numbers]
    frames = [f for f in framed.frames(again) if f.of_somebody]
    for some in (counted, clauses):
        taken = {k for c in some for k in range(c.start, c.end)}
        beside = [Frame(_begins(toks, c.start), c.end, 0, True, True, c.timely) for c in some]
        others = [f for f in frames if taken.isdisjoint(range(f.start, f.end))]
        for way in dict.fromkeys((tuple(beside), (*beside, *others))):
            told = framed.told_without(again, way) if way and some else ()
            if told and _stands(told, again) and not any(_may_be_of(s, c, again) for s in told for c in some):
                return told
    return ()


def _begins(toks: Toks, k: int) -> int:
    """With the word that joins it: "discharged at 1140 | with 14 days of antibiotics"."""
    return k - (word(toks, k - 1) in WITH)


def _stands(told: Told, again: Again) -> bool:
    """Whether each of them is told in full: a line with its time, or by a word that makes it one."""
    return not any(isinstance(s, Mark) and is_bare(s, again) for s in told) and all(map(_is_firm, told))


def _is_firm(said: Statement) -> bool:
    return said.at is not None or isinstance(said, Mark | Checked | Described)


def _goes_on(again: Again, clause: OwnSubject) -> bool:
    """ "dr smith saw him at 5 | and clamped": whether who is told of there did what is told behind it."""
    joined = word(again.toks, clause.end) in {"and", "&"}
    return joined and any(c.start == clause.end + 1 and c.label in EVENTS for c in again.cues)


def _may_be_of(said: Statement, clause: OwnSubject, again: Again) -> bool:
    """Whether a clause may say of what, or of whom, that is told: "320 (stomach bag)", "wife visiting and she
    went home"."""
    toks, words = again.toks, frozenset(again.toks.said[clause.start : clause.end])
    if (
        isinstance(said, Away | Back | Left | Moved)
        and words & RELATIVES
        and not HIMSELF.isdisjoint(toks.words)
    ):
        return True
    if clause.numbers:
        return _is_near(said, clause)
    device = any(c.label in HELD and clause.start <= c.start < clause.end for c in again.cues)
    device |= bool(words & (COLLECTORS | VESSELS)) and not isinstance(said, Mark)
    led = any(c.label in framed.LED | HELD and not clause.start <= c.start < clause.end for c in again.cues)
    bare = not (clause.is_person or clause.is_house or words & VERBS or led)
    return device or (isinstance(said, Mark) and bare)


def _is_near(said: Statement, clause: OwnSubject) -> bool:
    """Whether a number may be another value of what was told: "gah 360", or one that nothing right beside it
    accounts for."""
    toks = clause.toks
    words = sum(word(toks, k).isalpha() for k in range(clause.start, clause.end))
    loose = {word(toks, k) for k in (clause.numbers if words <= len(clause.numbers) == 1 else clause.unnamed)}
    told = any(word(toks, k - 1) in NO_NOUN | LINKS for k in clause.unnamed)  # "the machine says 42"
    far = FARTHER if words == FEWEST or told else FAR
    near = any(
        int(n) >= LEAST if a is None else a <= far * int(n) and int(n) <= far * a
        for n in loose
        for a in amounts_of(said)
    )
    return near or any(len(n) == FULL_HOUR and is_clock(n) for n in loose)


def left_out(again: Again, outcome: Outcome) -> tuple[str, ...]:
    """Clauses of which nothing was read and nothing is known, as they stand in the message."""
    told = strangers.left_out(again, outcome)
    if told or again.ward.voice or not outcome or any(isinstance(s, Unclear) for s in outcome):
        return told
    clauses = [c for c in _clauses(again) if c.unnamed]
    if not clauses:
        return ()
    places = [place for s in outcome if isinstance(s, Statement) for place in s.spans.values()]
    known = {k for frame in framed.frames(again) for k in range(frame.start, frame.end)}
    loose = ((c, {again.toks[k].start for k in c.unnamed - known}) for c in clauses)
    return tuple(
        again.said(c.start, c.end)
        for c, numbers in loose
        if numbers and not any(p.start <= n < p.end for p in places for n in numbers)
    )


def _clauses(again: Again) -> Iterator[OwnSubject]:
    """The longest that are of others, between stops, and between what joins them."""
    toks = again.toks
    for span in _between(toks, (0, len(toks)), joined=False):
        whole = _of_another(again, span)
        goes = [cue.end for cue in again.cues if cue.label == "kind" and cue.value in GOES]
        parts = () if whole else _between(toks, span, joined=True, goes=min(goes, default=len(toks)))
        yield from filter(None, (whole, *(_of_another(again, part) for part in parts)))


def _between(toks: Toks, span: Span, *, joined: bool, goes: int = 0) -> Iterator[Span]:
    """Those between stops, or also between what joins them; behind who `goes`, also with whom or what."""

    def is_joint(k: int) -> bool:
        return _is_joint(toks, k) or (word(toks, k) in WITH and k >= goes and is_digits(toks, k - 1))

    if not joined:
        return parted(*span, lambda k: _is_stop(toks, k), lambda _: False)
    return parted(*span, is_joint, lambda k: is_behind_line(toks, k))


def _is_stop(toks: Toks, k: int) -> bool:
    of_number = word(toks, k) == "." and glued(toks, k) and glued(toks, k + 1) and is_digits(toks, k + 1)
    return is_dash(toks, k) or (word(toks, k) in STOPS and not of_number)


def _is_joint(toks: Toks, k: int) -> bool:
    said = word(toks, k)
    return said in JOINING and (said.isalpha() or not glued(toks, k + 1))


def _of_another(again: Again, span: Span) -> OwnSubject | None:
    """The clause, if it has a subject or a noun, each number is of that, and no word may be of a drain."""
    toks, (start, end) = again.toks, span
    if word(toks, end) == "?" or any(k in again.meant.labelled for k in range(start, end)):
        return None
    if may_be_line(again, start, end) or any(begins_tube(again.said(k, k + 1).lower()) for k in range(*span)):
        return None
    clause = OwnSubject(again, span)
    words = sum(word(toks, k)[:1].isalpha() for k in range(start, end))
    listed = word(toks, end) == ")" and word(toks, start - 1) == ","  # "(wife 84, very deaf, shout)"
    few = words + listed < FEWEST and not clause.numbers
    few |= not LITTLE_MORE.isdisjoint(toks.said[start:end]) and words <= FEWEST  # "600 and a bit"
    return clause if not few and not clause.is_ours and clause.are_whole() else None
