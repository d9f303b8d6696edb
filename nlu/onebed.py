"""A message of one bed read part by part, where it cannot be read as a whole.

"bed 7 canister changed at 1810, old 1990. tube clamped at 1845", "no leak on 4; 340 at 1830, what's the last
line?": the first part names the bed, and each of those behind it tells something whole of the same bed, with
its own time. A part that leans on another (no word of its own, its time said elsewhere, "both", "or"), that
may name another bed, or that contradicts one is left to the question. Called by `apart`, as typed.
"""

from __future__ import annotations

from collections.abc import Sequence

from .again import Again, Span, Told
from .agreeing import TIMELESS, agree, in_one, with_time_of_all
from .bedclauses import LEANING, may_be_label
from .claims import CLAIMED
from .days import day_words
from .eachtube import SIDES
from .numbers import FULL_HOUR, Toks, glued, is_digits, is_inside_number, starts_number, word
from .patterns.asides import RELATIVES
from .patterns.leads import LINES, SHORT_BED_WORDS
from .patterns.levels import MILLILITRES
from .patterns.ownclauses import HIMSELF
from .roles import CHECK_LIMITS
from .statements import Asked, Drained, Mark, Statement

MOST = 5
"""Places where a message may be parted; more are a list, or no message of one bed."""
STOPS = frozenset({",", ";", ".", "!", "?"})
SIGNS = frozenset({"-", "/", "+", "&"})
WORDS = frozenset({"and", "then"})
JOINTS = STOPS | SIGNS | WORDS
ASKING = frozenset({"ask", "question"})
ASKED_FOR = ASKING | {"level", "old", "total"}
FINDING = frozenset({"seal", "suction", "wall", "leak", "tidal", "fluid", "waterseal", "indicator", "order"})
TELLING = (
    FINDING | ASKING | {"kind", "what", "same", "amount", "reason", "level", "levelat", "output", "other"}
)
"""A cue of these says what a part is about; a number alone may be of the part before it."""
OF_TUBE = SIDES | {"tube", "side", "one", ":"}
SETTINGS = frozenset({"suction", "wall", "seal", "order"})
NOW = frozenset({"now", "currently"})
RIGHTING = frozenset({"correction", "should", "mistake", "wrong", "sorry", "not"})
SIGNED = frozenset({("leak", "present"), ("tidal", "yes")})
OF_DRAIN = frozenset({"leak", "tidal", "seal", "away", "back", "left", "moved"})
OF_CHEST = frozenset({"chest", "canister", "pleural"})
LEANING_ON = LEANING - {"?"}


def by_part(again: Again) -> Told:
    """What is told of the one bed, part by part; nothing where a part is not whole or may lean on another."""
    toks = again.toks
    ends = [k for k in range(1, len(toks)) if _is_joint(toks, k) and word(toks, k - 1) not in JOINTS]
    if not _may_be_minus(again).isdisjoint(ends):
        return ()
    if not 0 < len(ends) <= MOST or _is_doubtful(again):
        return ()
    for end in reversed(ends):
        first = again.part(0, _behind_question(toks, end))
        if (named := _bed_of(again, first, end)) is not None and _is_fitting(again, first, 0, end):
            parts = Parts(again, *named, (*ends, len(toks)))
            said = parts.behind(end)
            if said is not None and agree((*first, *said), again.ward.arrived, aside=parts.aside):
                return tuple(in_one(with_time_of_all((*first, *said))))
    return ()


def _may_be_minus(again: Again) -> set[int]:
    """Where a sign stands beside a finding: "leak - seal 2"; beside "no leak", "swinging" it is a dash."""
    toks = again.toks
    bare = [
        c
        for c in again.cues
        if (c.label, c.value) in SIGNED and not word(toks, c.end - 1).removesuffix("swing").endswith("ing")
    ]
    return {k for c in bare for k in (c.start - 1, c.end) if word(toks, k) in {"-", "+"}}


def _bed_of(again: Again, told: Told, end: int) -> tuple[str, Span] | None:
    """The one bed of the part that ends there, and where in the message it is named."""
    beds = {s.bed for s in told}
    if len(beds) > 1 or not (told or _is_of_others(again, end)):
        return None
    if (bed := told[0].spans.get("bed") if told else None) is not None:
        return told[0].bed or "", (bed.start, bed.end)
    index = again.ward.index or {}
    toks = again.toks
    for k in range(end) if told else (word(toks, 0) in SHORT_BED_WORDS,):
        for last in (k + 1, k):
            said = (toks[k].start, toks[last].end) if last < end else (0, 0)
            label = index.get(again.text[slice(*said)].lower())
            if label is not None and (not told or {label} == beds):
                return label, said
    return None


def _is_of_others(again: Again, end: int) -> bool:
    """Whether the first part tells of something else, and nothing of a drain: "9 foley 250"."""
    measured = _is_measured(again, 0, end) and {"at", "@"}.isdisjoint(again.toks.said[:end])
    device = _names_device(again, 0, end) and sum(is_digits(again.toks, k) for k in range(end)) > 1
    other = measured or device
    return other and not again.outcome_without((end, len(again.toks)))


def _is_fitting(again: Again, told: Told, start: int, end: int) -> bool:
    """Whether what a part tells may stand beside others: a question has its mark, an event its time."""
    named = {c.label for c in again.cues if c.start < end and c.end > start} | {*again.toks.said[start:end]}
    marked = word(again.toks, end) == "?"
    digits = any(is_digits(again.toks, k) for k in range(start, end))
    if "?" in again.toks.said[start:end]:
        return False
    for said in told:
        if isinstance(said, Asked) and (named.isdisjoint(ASKED_FOR) or said.topic == "checks"):
            return False
        if isinstance(said, Drained) and not digits:
            return False
        if isinstance(said, Mark) and said.at is None and not _is_led(again, said, start, end):
            return False
        if isinstance(said, Mark) and _may_be_time(again, said, start, end):
            return False
        if said.at is None and not isinstance(said, (*TIMELESS, Mark)):
            return False
    return marked == any(isinstance(said, Asked) for said in told)


def _is_led(again: Again, mark: Mark, start: int, end: int) -> bool:
    """Whether a line without a time is told by its word or unit, or is so now: "turned up to 100", "currently
    at 20" may be the suction."""
    said = again.toks.said[start:end]
    low = (mark.level_ml or 0) <= CHECK_LIMITS["wall"]
    set_to = low and any(cue.label in SETTINGS for cue in again.cues)
    return not (LINES | MILLILITRES).isdisjoint(said) or not (set_to or NOW.isdisjoint(said))


def _may_be_time(again: Again, mark: Mark, start: int, end: int) -> bool:
    """ "off when I came on at 1900, turned on 1902": whether a line may be a time, and no word says which."""
    level = mark.spans.get("level_ml")
    said = again.text[level.start : level.end] if level is not None else ""
    behind = again.text[level.end :].lstrip().lower() if level is not None else ""
    clock = said.isdecimal() and len(said) == FULL_HOUR and said < "2400" and said[2:] < "60"
    told = behind.startswith(("at ", "@", "ml", "cc")) or _is_led(again, mark, start, end)
    return clock and not told


class Parts:
    """The parts behind the one that names the bed `label`, at its place `bed`; they may stop at `ends`."""

    def __init__(self, again: Again, label: str, bed: Span, ends: Sequence[int]) -> None:
        self.again = again
        self.toks = again.toks
        self.label = label
        self.bed = bed
        self.ends = ends
        self.aside = False
        """Whether something is told with a time that is none of ours."""

    def behind(self, joint: int) -> Told | None:
        """What is told behind a joint, in as few parts as can be; none where one is not whole."""
        start = _first_word(self.toks, joint)
        for end in (k for k in reversed(self.ends) if k > start):
            told = self._told(start, end)
            if told is None:
                continue
            if end == len(self.toks) or _first_word(self.toks, end) == len(self.toks):
                return told
            rest = self.behind(end)
            if rest is not None:
                return (*told, *rest)
        return None

    def _told(self, start: int, end: int) -> Told | None:
        """What a part tells of the bed: nothing where it is of another device, none where it is not whole."""
        again = self.again
        if not self._stands_alone(start, end):
            return None
        said = (again.toks[start].start, again.toks[_behind_question(self.toks, end) - 1].end)
        outcome = again.outcome_of(("bed ", self.bed, ": ", said))
        if not outcome:
            return () if self._is_of_others(start, end) else None
        told = tuple(s for s in outcome if isinstance(s, Statement) and s.bed == self.label)
        return told if len(told) == len(outcome) and _is_fitting(again, told, start, end) else None

    def _stands_alone(self, start: int, end: int) -> bool:
        """Whether it says what it is about, and no number in it may be another bed."""
        toks = self.toks
        cues = [c for c in self.again.meant.cues if c.start < end and c.end > start]
        labels = {c.label for c in cues} | {c.value for c in cues}
        begun = (
            is_digits(toks, start)
            or word(toks, start) in NOW
            or any(c.start <= start and c.label != "word" for c in cues)
        )
        if not begun or (labels.isdisjoint(TELLING) and not _is_line(toks, start, end)):
            return False  # "serous and bonus mark 980"
        if "moved" not in labels and any(_names_bed(toks, k) for k in range(start, end)):
            return False
        if may_be_label(self.again, start) and labels.isdisjoint(ASKING) and not _is_no_bed(toks, start, end):
            return False
        if _names_device(self.again, 0, start) and not self._is_of_drain(start, end, labels):
            return False
        leaning = LEANING_ON.intersection(toks.said[start:end])
        plain = RIGHTING if "corrected" in labels else {"not"} if labels & FINDING else {"swapped", "swap"}
        return leaning <= plain

    def _is_of_drain(self, start: int, end: int, labels: set[str]) -> bool:
        """Whether it can be of no other device: "foley 250, clamped at 1840" may be of the catheter."""
        named = not OF_CHEST.isdisjoint(self.toks.said[start:end])
        return named or not labels.isdisjoint(OF_DRAIN) or not labels.isdisjoint(ASKING)

    def _is_of_others(self, start: int, end: int) -> bool:
        """Whether something else is told of, and nothing of a drain: "urine 200 at 1830"; "the NG one" may
        say what was told before."""
        labels = {c.label for c in self.again.cues if c.start < end and c.end > start}
        digits = any(is_digits(self.toks, k) for k in range(start, end))
        self.aside |= not {"at", "@"}.isdisjoint(self.toks.said[start:end])
        told = (TELLING - {"other"}) | {"side", "place"}  # "right side. held the 6 o'clock heparin"
        return digits and "other" in labels and labels.isdisjoint(told)


def _is_measured(again: Again, start: int, end: int) -> bool:
    """Whether only what is measured of a patient is told there: "bp 110/60"."""
    labels = {c.label for c in again.cues if c.start < end and c.end > start}
    return (
        CLAIMED in labels and labels.isdisjoint(TELLING - {"other"}) and not _names_device(again, start, end)
    )


def _names_device(again: Again, start: int, end: int) -> bool:
    """Whether another device or a sample is named there: "foley 250"; what is measured is none."""
    ends = {c.start for c in again.cues if c.label == CLAIMED}
    return any(c.label == "other" and c.end not in ends for c in again.cues if start <= c.start < end)


def _behind_question(toks: Toks, end: int) -> int:
    return end + (word(toks, end) == "?")


def _is_joint(toks: Toks, k: int) -> bool:
    said = word(toks, k)
    before_word = said == "?" and glued(toks, k + 1) and toks[k + 1].is_word  # "drainage ?chyle"
    if said not in JOINTS or is_inside_number(toks, k) or before_word:
        return False
    return said not in SIGNS or not (glued(toks, k) or glued(toks, k + 1))


def _first_word(toks: Toks, joint: int) -> int:
    """Where what is told behind a joint begins: ", and then tube out"."""
    k = joint
    while word(toks, k) in JOINTS | {"also"} and not (word(toks, k) in {"-", "+"} and glued(toks, k + 1)):
        k += 1
    return k


def _names_bed(toks: Toks, k: int) -> bool:
    return word(toks, k) in SHORT_BED_WORDS and starts_number(toks, k + 1)


def _is_line(toks: Toks, start: int, end: int) -> bool:
    """ "340 at 1830", "620 ml", "now at 340", "right 340 at 1830": a line without a word for one."""
    while word(toks, start) in OF_TUBE:
        start += 1
    if word(toks, start) in NOW:
        start += 1 + (word(toks, start + 1) == "at")
        return is_digits(toks, start) and end - start <= len(("340", "ml"))
    plain = word(toks, start + 1) in MILLILITRES or _is_timed_line(toks, start, end)
    return is_digits(toks, start) and plain


def _is_no_bed(toks: Toks, start: int, end: int) -> bool:
    """ "20 ml at 1830", "20 out since 1800", "24h total?": a number that opens a part and is no bed."""
    behind = toks.said[start + 1 : start + 3]
    total = word(toks, end) == "?" and behind[0] in {"h", "hr", "hour"}
    return behind[0] in MILLILITRES or behind == ("out", "since") or total


def _is_timed_line(toks: Toks, start: int, end: int) -> bool:
    at = start + 1 + (word(toks, start + 1) in MILLILITRES)
    timed = word(toks, at) in {"at", "@"} and starts_number(toks, at + 1)
    return timed and is_digits(toks, start) and at + 1 < end


def _is_doubtful(again: Again) -> bool:
    """Whether a plan or a day that is said anywhere may be of every part; "how much today" asks of one."""
    toks = again.toks
    if "na" in toks.words:
        return True  # a salt, or "already": "na 255 at 2000, no bubbling po"
    if not toks.words.isdisjoint(RELATIVES) and not toks.words.isdisjoint(HIMSELF):
        return True  # "wife visiting and she went home at 1840"
    asked = {k for cue in again.cues if cue.label == "window" for k in range(cue.start, cue.end)}
    days = (k for k in range(len(toks)) if toks[k].is_word and any(day_words(toks, k)))
    planned = (c.start for c in again.meant.cues if c.label == "plan")
    return not all(_is_asked(toks, k) for k in planned) or not asked.issuperset(days)


def _is_asked(toks: Toks, k: int) -> bool:
    """Whether a question mark ends the clause: "next line due when?"."""
    return next((word(toks, j) for j in range(k, len(toks)) if word(toks, j) in STOPS), "") == "?"
