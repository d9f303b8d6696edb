"""Clauses beside a whole line whose numbers are of what nobody here knows: "hcg 12", "3 zorbs at 1930".

No list holds every drug, device and visitor. Typed, beside lines and events that are whole without it, a
clause need not be understood to be left out: a word in it names something, none is a word of a reading, of
doubt or of a correction, no cue in it is of a drain, and its numbers could be no other value of what is told.
Called by `read`, last of all.
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from itertools import pairwise

from spacy.lang.en.stop_words import STOP_WORDS

from . import framed
from .accounts import SIDES, Accounts, Figure
from .again import Again, Span, Told
from .entered import ENTERED
from .framed import Frame
from .items import FULL_HOUR
from .neighbours import is_dash, is_stop_among, parted
from .numbers import Toks, glued, is_digits, word
from .otherfigures import OURS
from .othernames import names_in
from .patterns.clockwords import HOUR_WORDS, MINUTE_WORDS
from .patterns.numerals import NUMERALS
from .patterns.ofreading import READ, TROUBLE
from .patterns.otherfigures import BODY, HALVES, LINKS, REFUSED
from .patterns.ownclauses import DENIALS, DOUBTFUL, HIMSELF, OBJECTS, SPEAKER
from .patterns.places import PLACES
from .pipeline import Cue
from .readthen import is_whole_clock
from .somebody import is_behind_line
from .statements import Checked, Described, Drained, Exchanged, Mark, Placed, Removed, Statement, Unclear
from .verdict import Outcome

TUBE_NAMES = tuple(label.removeprefix("place:") for label in PLACES if label.startswith("place:"))
STOPS = frozenset({".", ",", ";", "!", "?", "(", ")", "\n", "→"})
JOINTS = frozenset({"and", "&", "also", "/", "+"})
"""Between these, what is told and what is not may stand side by side."""
NAMING = frozenset({"the", "my", "your", "her", "that", "this"})
VESSELS = frozenset({"canister", "tubeword"})
CHEST = frozenset({"chest", "pleural", "thoracic", "intercostal", "thoracostomy", "pen", "marker"})
"""Of these a drain or a line is ours."""
AT = frozenset({"at", "@"})
NEAR = 4
"""Words from a bed to its line."""
HUNDRED = 100
LEAST = 15
"""mL: a number below that is hardly a line, even where no word names it; common practice, no source."""
SHORTEST = 2
"""Letters of a word that may name something."""
BEGINNINGS = frozenset(name[:k] for name in TUBE_NAMES for k in range(SHORTEST + 1, len(name) + 1)) - {"late"}
"""How the name of a tube may begin."""
FAR, FARTHER = 3, 8
"""So many times larger or smaller a number must be, to be no other value of a line; one without a name."""
REMAINING = frozenset({"on", "for", "in", "at", "over", "to", "by", "now", "today", "tonight"})
"""Behind a "left" that is no side."""
ANY = frozenset({"question", "ask", "amount", "weight"})
"""Labels of cues that say nothing of a drain by themselves, where no question is asked."""
UNTOLD = frozenset({"word", "other", "claimed"})
TUBES = frozenset({"side", "place", "join", "plan", "neg", "no", "yes"})
BOXES = frozenset({"bottle", "bottles", "box", "boxes", "canisters"})
HELD = BOXES | {"number", "level", "levels", "drain", "drains", "fluid"}
GOING = frozenset({"leaving", "leaves", "came", "come", "coming", "going", "gone", "goes", "went", "arrived"})
SETTING = frozenset({"turned", "turn", "dialled", "dialed", "adjusted", "weaned", "lowered", "cranked"})
"""What may have been done to a suction that was told."""
TELLING = frozenset({"says", "shows", "said", "has", "got", "gave", "had", "have"})
"""Behind these a number alone may be a line."""
_HARMLESS = """
hour hours hourly per rate pump discharge discharges discharging stitch stitches bag second test plan planned
report double less limit goal target bulb blood emptied fall falls last both
"""
HARMLESS = frozenset(_HARMLESS.split())
"""Words of a drain elsewhere, which change nothing of a line that is whole."""
BARRED = REFUSED | DOUBTFUL | READ | DENIALS | OBJECTS | ENTERED | GOING
BARRED |= frozenset({"=", "wait", "hold", "correcting", "should", "would", "could"} | SETTING)
BARRED -= HARMLESS
BETWEEN = LINKS | HELD | {"ok", "okay", "about", ":"}
"""Between a name and its number."""
PLAIN = (
    STOP_WORDS
    | BARRED
    | TELLING
    | HOUR_WORDS
    | MINUTE_WORDS
    | HALVES
    | NUMERALS
    | TROUBLE
    | HIMSELF
    | SPEAKER
)
"""Words that name nothing."""


def may_name(said: str) -> bool:
    """Whether a word may name something that is not known here."""
    return said.isalpha() and len(said) >= SHORTEST and said not in PLAIN


def beside_strangers(again: Again) -> Told:
    """What is told beside such clauses; nothing where it is not whole, or one of them may be of it."""
    clauses = list(_clauses(again))
    if not clauses:
        return ()
    strange = [Frame(c.start, c.end, aside=True, of_somebody=True) for c in clauses]
    taken = {k for c in clauses for k in range(c.start, c.end)}
    others = [f for f in framed.frames(again) if taken.isdisjoint(range(f.start, f.end))]
    ways = dict.fromkeys((tuple(strange), (*others, *strange)))
    told = next(filter(None, (framed.told_without(again, way) for way in ways)), ())
    lines = [s for s in told if isinstance(s, Mark)]
    if len(lines) > 1 or any(is_bare(line, again) for line in lines):
        return ()  # of a list a line may be lost
    return () if any(may_be_value(said, clause) for said in told for clause in clauses) else told


def is_bare(line: Mark, again: Again) -> bool:
    """ "pt in 13 is 84 and her husband is 91": a small number that no word and no time makes a line."""
    named = any(cue.label in framed.LED | {"ml", "tubeword", "canister"} for cue in again.cues)
    return line.at is None and (line.level_ml or 0) < HUNDRED and not named


def left_out(again: Again, outcome: Outcome) -> tuple[str, ...]:
    """Those of which nothing was read and nothing is known, as they stand in the message: a nurse is told."""
    toks = again.toks
    if again.ward.voice or not outcome or any(isinstance(s, Unclear) for s in outcome):
        return ()
    places = [place for s in outcome if isinstance(s, Statement) for place in s.spans.values()]
    free = {
        k
        for k in range(len(toks))
        if is_digits(toks, k) and not any(p.start <= toks[k].start < p.end for p in places)
    }
    if not free:
        return ()
    spans = [(c.start, c.end) for c in _clauses(again)]
    if not spans:
        return ()
    known = {k for frame in framed.frames(again) for k in range(frame.start, frame.end)}
    return tuple(again.said(*span) for span in spans if free - known >= free & {*range(*span)})


def _clauses(again: Again) -> Iterator[Strangers]:
    """Those of which every number is of something that is not known: whole ones, or what is joined to one."""
    toks = again.toks
    for span in _between(toks, (0, len(toks)), joined=False):
        whole = _of_another(again, span)
        parts = () if whole else _between(toks, span, joined=True)
        yield from filter(None, (whole, *(_of_another(again, part) for part in parts)))


def _between(toks: Toks, span: Span, *, joined: bool) -> Iterator[Span]:
    """The stretches between stops, or within a clause between its joints and behind a line that is whole."""
    stops = _is_joint if joined else _is_stop
    return parted(*span, lambda k: stops(toks, k), lambda k: joined and is_behind_line(toks, k))


def _is_stop(toks: Toks, k: int) -> bool:
    return is_dash(toks, k) or is_stop_among(STOPS, toks, k)


def _is_joint(toks: Toks, k: int) -> bool:
    return word(toks, k) in JOINTS and (word(toks, k).isalpha() or not glued(toks, k + 1))


class Strangers(Accounts):
    """The accounts of a clause in which a word that nobody knows may have any number."""

    def __init__(self, again: Again, span: Span) -> None:
        super().__init__(again.toks, span, again.cues, again.ward.index or ())
        start, end = span
        inside = [cue for cue in again.cues if start <= cue.start < end]
        cued = {k for cue in inside if cue.label not in UNTOLD for k in range(cue.start, cue.end)}
        self.others = {k for cue in inside if cue.label == "other" for k in range(cue.start, cue.end)}
        self.others |= names_in(self.toks) & frozenset(range(start, end))
        self.strange = {k for k in range(start, end) if k not in cued and may_name(word(self.toks, k))}
        self.heads |= self.strange
        self.amounts = any(cue.label == "amount" for cue in inside)
        self.unnamed: set[int] = set()
        """Where numbers begin that only stand behind the name of something."""
        self.is_ours = any(self._may_be_ours(cue) for cue in inside)

    def _may_be_ours(self, cue: Cue) -> bool:
        """Whether a cue may be of a drain: not "vanc level 14", "spare boxes", "a stump drain"."""
        k = cue.start - 1
        theirs = k in self.others or (cue.label in VESSELS and k in self.strange)
        if cue.label in VESSELS | {"level"} and theirs and word(self.toks, k) not in CHEST:
            return False
        if cue.label == "side" and self._remains(cue.start):
            return False
        if cue.label == "ml":
            return not (self.others or self._is_thing(self._name_before(k)))
        return cue.label in TUBES or cue.label in OURS - ANY

    def _remains(self, k: int) -> bool:
        """ "2 paracetamol left on the side", "4 beds left": what is there still, and no side."""
        named = k - 1 in self.strange | self.others
        end = k + 1 == self.end or (word(self.toks, k + 1) in REMAINING and not is_digits(self.toks, k + 2))
        return named and end and word(self.toks, k) == "left"

    def _account(self, figure: Figure) -> Span | None:
        named = super()._account(figure)
        told = any(k < figure.start for k in self.strange | self.others)
        few = figure.plain and figure.value < LEAST and not (self.amounts or self._may_be_bed(figure))
        if named or not (told or (few and self.strange | self.others)):
            return named
        self.unnamed |= {figure.start} if figure.value >= LEAST else set()
        return figure.start, figure.end

    def _count(self, figure: Figure) -> Span | None:
        counted = figure.plain and figure.end in self.strange and not self._may_be_bed(figure)
        return (figure.start, figure.end + 1) if counted else super()._count(figure)

    def _may_be_bed(self, figure: Figure) -> bool:
        """ "7 dry": a bed and what is told of it, beside "3 visitors"."""
        alone = (figure.start, figure.end + 1) == (self.start, self.end)
        bed = word(self.toks, figure.start) in self.beds
        return alone and bed and not word(self.toks, figure.end).endswith("s")

    def _name_before(self, k: int) -> int:
        """Where the word stands that may say what the number there is of."""
        k -= 1
        while k > self.start and word(self.toks, k) in BETWEEN:
            k -= 1
        return k

    def _is_thing(self, k: int) -> bool:
        """ "contrast was 80 ml", and not "florped 80 ml"."""
        return k in self.strange and not word(self.toks, k).endswith(("ed", "ing"))

    def _has_name(self, figure: Figure) -> bool:
        return self._name_before(figure.start) in self.strange or super()._has_name(figure)

    def _is_doubtful(self, k: int) -> bool:
        """Whether a word there is of a reading, names a bed, the side of a tube, or "the 1900": a line by
        its number."""
        toks, said = self.toks, word(self.toks, k)
        if is_digits(toks, k):
            counted = word(toks, k + 1) in HOUR_WORDS or k + 1 in self.strange
            return word(toks, k - 1) in NAMING and not counted
        theirs = k - 1 in self.others or (said in BOXES and k - 1 in self.strange)
        if said in HARMLESS or (said in HELD and theirs):  # "urine bottle 300"
            return False
        if self._remains(k):
            return False
        if said in SIDES:
            return word(toks, k + 1) not in BODY and not (glued(toks, k) or is_digits(toks, k - 1))
        return said in BARRED or (k not in self.strange and super()._is_doubtful(k))


def _of_another(again: Again, span: Span) -> Strangers | None:
    """The clause, if each number of it is of something else, and no word may be of a drain."""
    toks, (start, end) = again.toks, span
    if not any(is_digits(toks, k) for k in range(start, end)) or word(toks, end) == "?":
        return None
    if any(k in again.meant.labelled for k in range(start, end)) or may_be_line(again, start, end):
        return None
    if any(begins_tube(again.said(k, k + 1).lower()) for k in range(start, end)):
        return None
    clause = Strangers(again, span)
    return clause if not clause.is_ours and clause.are_whole() else None


def begins_tube(said: str) -> bool:
    """Whether a word as it is written begins the name of a tube: "peric"."""
    return said in BEGINNINGS


def may_be_line(again: Again, start: int, end: int) -> bool:
    """ "florp 7 210", "0900 florp 340": whether its last number may be a line of a bed or a time there."""
    toks, beds = again.toks, again.ward.index or ()
    numbers = [k for k in range(start, end) if is_digits(toks, k)]
    for k, last in pairwise(numbers):
        bed = word(toks, k) in beds and k - start < NEAR - 1
        level = (
            len(word(toks, last)) > 1 and last - k <= NEAR and (last == end - 1 or word(toks, last + 1) in AT)
        )
        if level and (bed or is_whole_clock(toks, k)):
            return True
    return False


def may_be_value(said: Statement, clause: Strangers) -> bool:
    """ "340 at 1900. gah 360", "sats fine on 60": whether a number of a short clause, or one that no word
    right beside it names, may be another value of what was told."""
    toks, span = clause.toks, range(clause.start, clause.end)
    numbers = [k for k in span if is_digits(toks, k)]
    words = [k for k in span if word(toks, k).isalpha()]
    short = len(words) <= len(numbers) == 1
    loose = {word(toks, k) for k in (numbers if short else clause.unnamed)}
    far = FAR if short else FARTHER
    near = any(
        a is None or (a <= far * int(n) and int(n) <= far * a) for n in loose for a in amounts_of(said)
    )
    return near or any(len(n) == FULL_HOUR for n in loose)


def amounts_of(said: Statement) -> Sequence[int | None]:
    """The levels and volumes that it may have; None for one that was not told."""
    if isinstance(said, Mark | Placed | Removed):
        return (said.level_ml,)
    if isinstance(said, Exchanged):
        return (said.final_ml, said.opening_ml)
    if isinstance(said, Drained):
        return (said.volume_ml,)
    return () if isinstance(said, Checked | Described) else (None,)
