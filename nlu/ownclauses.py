"""Clauses with a subject of their own, and no drain, beside what is told whole: "he's been up for breakfast".

What somebody else did, or how the patient is, changes nothing of a line or an event beside it, whatever its
words are: so they need not be understood. What makes such a clause doubtful is a number, a word for a drain,
its line or what happens to one, a cue of ours, a doubt, a denial of the nurse, or "it" and "that", which may
be the drain. The bed that it names stays: "physio is with [bed 11] so I read it: 380 mL at 8 am". Called by
`framed`, typed and dictated, which leaves them out where a message would be asked.
"""

from __future__ import annotations

from collections.abc import Container
from itertools import pairwise
from typing import NamedTuple

from .again import Again, Span
from .behind import READ_OFF
from .clock import clocks
from .neighbours import begins_at, phrase_of
from .numbers import Toks, is_digits, starts_number, word
from .otherthings import goes_on_with_event, told_of_another
from .patterns.leads import BED_WORDS, LINES
from .patterns.numerals import FRACTIONS, NUMERALS
from .patterns.ownclauses import (
    AHEAD,
    AMOUNTS,
    ARTICLES,
    BECAUSE,
    COUNTED,
    DENIALS,
    DOUBTFUL,
    DRAINS,
    DRESSINGS,
    GOING,
    GONE,
    HIMSELF,
    HIMSELF_MOVED,
    JOINTS,
    LATER,
    LEAVING,
    NO_BARE,
    OBJECTS,
    OF_DRESSINGS,
    OPEN,
    OPENING,
    PLANS,
    REST,
    THINGS,
    VERBS,
    WHOM,
)
from .pipeline import Cue
from .readthen import is_whole_clock
from .settled import (
    is_how_it_runs,
    is_looked_at,
    is_of_lab,
    is_only_when,
    is_settled,
    is_still_to_do,
    is_told_of,
    is_why,
    says_what,
    takes_along,
)
from .somebody import (
    HEAD,
    IS_PATIENT,
    ONWARDS,
    OTHER,
    SPEAKS,
    STOPS,
    THING,
    Clause,
    clauses,
    names_bed,
)
from .weighty import MEANWHILE, is_meanwhile

_PLAIN = """
filler word other okay bed plan neg no badunit claimed about span window levelat order nothing help since
foreign question litre timeword weight ask arrival join
"""
PLAIN = frozenset(_PLAIN.split())
"""Labels of cues that say nothing of a drain where there is no number and the subject is somebody."""
AT = frozenset({"at", "@", "by", "for", "around", "about", "since", "until", "till", "from", "before"})
AT |= {"after"}
SMALL = frozenset({"a", "an", "one", "oh", "to", "too", "for", "o", "and"})
"""Number words that mostly are none."""
LETTERS = frozenset("bcdeglmoprst")
SITS = frozenset({"sitting", "sat"})
SAYING = frozenset({"says", "said", "thinks", "told"})
LEFT = frozenset({"left", "lt", "l"})
"""Behind these the time is that of the line too: "when i went in at 1100 the line was 275"."""
UNTIL = frozenset({"until", "till", "til"})
LOOKED = frozenset({"look", "looked", "check", "checked"})
HOURS = frozenset({"hour", "midnight", "midday", "noon"})
"""When something will be, which is no time of a line."""
WAITED_FOR = frozenset({"regulator", "new", "suction", "pump", "supplies", "pharmacy"})
OWNED = frozenset({"his", "her", "their", "the", "of", "asleep", "way"})
STAND = frozenset({"is", "was", "be", "been", "now", "still", "up", "down", "he's", "she's", "it's", "sits"})
MILLILITRES = frozenset({"mls", "ccs", "mils", "litres", "liters", "is", "was", "has", "hundreds", "beds"})
HER_BEDS = frozenset({"after", "and", "&", "beds", "rooms", "covering", "have", "got", ","})
HALF_OF = frozenset({"back", "front", "other", "top", "bottom", "my", "our"})
WARDS = frozenset({"bay", "ward", "pod", "theatre", "bays"})
COUNTING = (NUMERALS | FRACTIONS.keys()) - SMALL
MYSELF = frozenset({"i", "i'll", "i'm", "i've", "im", "ive", "ill", "we", "we'll", "we're", "we've", "me"})
MYSELF |= {"it", "it's", "its"}
"""Of whoever speaks, or of what was read: a no of these may be of the line."""
MOST_OF_TIME = 4
"""Words of a time, at most."""
FEWEST = 2
"""Words of a clause."""
BARE = "nobody"
FEWEST_BARE = 3
"""Words of one of nobody: "off now" may be of the suction."""
OF_DRAINS = DRAINS | LINES


class Aside(NamedTuple):
    """A clause of somebody: what is left out of it, and whether it says when the line was."""

    clause: Span
    spans: tuple[Span, ...]
    timely: bool


def own_clauses(again: Again, timed: Container[int] = ()) -> list[Aside]:
    """The clauses that are of somebody, in order; a number at a place of `timed` is no doubt of them."""
    return _Finding(again, timed).found()


class _Finding:
    """Goes through the clauses of a message."""

    def __init__(self, again: Again, timed: Container[int]) -> None:
        self.toks, self.voice = again.toks, again.ward.voice
        read = again.meant
        self.cues = read.cues
        self.claimed = {k for c in self.cues if c.label == "claimed" for k in range(c.start, c.end)}
        self.claimed |= {k for k in range(len(self.toks)) if k in timed}
        self.clauses = clauses(again, self.claimed, read.labelled)
        self.beds = sum(len(clause.beds) for clause in self.clauses)
        ours = (k for k, said in enumerate(self.toks.said) if said in OF_DRAINS or said.isdecimal())
        self.opened = min((*ours, *(bed[0] for clause in self.clauses for bed in clause.beds)), default=0)

    def found(self) -> list[Aside]:
        toks = self.toks
        found: list[Aside] = []
        who, goes_on, thing = "", -1, ""
        for clause in self.clauses:
            follows = goes_on == clause.start
            who = clause.who or (who if follows else "")
            of = who or ("" if self.voice or clause.beds else BARE)
            said = toks.said[clause.begins : clause.end]
            inside = [c for c in self.cues if clause.begins <= c.start < clause.end]
            behind = thing if follows else ""
            thing = "" if self.voice and not clause.who else told_of_another(toks, clause, inside, behind)
            told = bool(of) and self._is_harmless(clause._replace(who=of), inside)
            told &= not is_only_when(toks, clause)
            told |= bool(thing) or (
                not self.voice and self.beds <= 1 and is_still_to_do(toks, clause, DOUBTFUL)
            )
            open_end = follows and _may_be_of_either(toks, clause, inside)
            open_end |= bool(behind) and goes_on_with_event(toks, clause, behind)
            if not told and open_end:
                return []
            if not told and follows and not clause.who and _goes_on(toks, clause, who):
                found.pop()
            if told or is_how_it_runs(said) or is_settled(said) or is_why(toks, said):
                found.append(_aside(toks, clause))
                goes_on = clause.end + (word(toks, clause.end) in ONWARDS)
        return found

    def _is_harmless(self, clause: Clause, cues: list[Cue]) -> bool:
        """Whether nothing in a clause of somebody is doubtful, and its bed the only one."""
        toks = self.toks
        said = toks.said[clause.start : clause.end]
        if clause.beds and (self.voice or self.beds > 1 or clause.who == THING or DENIALS & set(said)):
            return False
        others = {phrase_of(c, toks) for c in cues if c.label == "other"}
        if not others <= READ_OFF and self._may_be_whose(clause):
            return False
        taken = {k for bed in clause.beds for k in range(*bed)}
        if taken.issuperset(range(clause.begins, clause.end)) or self._is_doubtful(clause, taken):
            return False
        planned = any(c.label == "plan" for c in cues)
        leaves = clause.who == IS_PATIENT and not LEAVING.isdisjoint(said)
        taken_along = any(takes_along(toks, k) for k in range(clause.begins, clause.end))
        if (leaves or taken_along) and not planned:
            return False
        own = [c for c in cues if c.start not in taken and c.label not in PLAIN and c.value != "due"]
        return all(_says_nothing(c, toks, clause) or _goes_nowhere(toks, c, cues, clause) for c in own)

    def _may_be_whose(self, clause: Clause) -> bool:
        """ "bed 4 got a litre of saline, 1000 at 1630", "the 980 I shouted was his urine": of that?"""
        said = self.toks.said
        lined = not OF_DRAINS.isdisjoint(said[: clause.start] + said[clause.end :])
        runs_on = clause.start and word(self.toks, clause.start - 1).isalnum() and not self.voice
        return bool(runs_on or (clause.beds and not lined))

    def _is_doubtful(self, clause: Clause, beds: set[int]) -> bool:
        toks, inside = self.toks, range(clause.begins, clause.end)
        said = {word(toks, k) for k in inside if k not in self.claimed and not is_told_of(toks, k)}
        doubtful = DOUBTFUL - OF_DRESSINGS if said & (DRESSINGS | THINGS) else DOUBTFUL
        doubtful = doubtful - WAITED_FOR if "waiting" in said else doubtful
        doubtful = doubtful - {"stuck"} if clause.who == SPEAKS else doubtful
        last = clause.end - 1
        right = word(toks, last) == "right" and word(toks, last - 1) not in ARTICLES | {"all"}
        why = not BECAUSE.isdisjoint(toks.said[clause.start : clause.begins])
        doubtful = doubtful - AMOUNTS if why else doubtful
        doubtful = doubtful - HOURS if said & PLANS else doubtful
        first = word(toks, clause.begins)
        fewest = FEWEST if clause.start and first in OPENING and first.endswith("ing") else FEWEST_BARE
        if clause.who == BARE and (said & NO_BARE | LETTERS & said or clause.end - clause.begins < fewest):
            return True
        if said & doubtful or right or (word(toks, clause.end) == "?" and not self.voice):
            return True
        if not why and self._is_of_it(said, clause):
            return True
        if self._is_cut_short(clause, said):
            return True
        places = [k for k in inside if k not in beds and k not in self.claimed]
        return any(self._is_amount(k) or (not why and _is_reported(toks, k)) for k in places)

    def _is_of_it(self, said: set[str], clause: Clause) -> bool:
        """Whether something is done to what may be the drain, or the nurse says that something is not so."""
        toks = self.toks
        own = bool(said & MYSELF)
        if own and clause.start and said & DENIALS:
            return True
        opens = clause.end <= self.opened and not self.voice and not said & (DENIALS | AHEAD)
        if opens and not says_what(toks, clause):
            return False  # "it's been a long one. bed 3 ...": no drain was named before
        return bool(said & OBJECTS) and not said & PLANS and (own or not self.voice)

    def _is_cut_short(self, clause: Clause, said: set[str]) -> bool:
        """ "surgeon wants | bed 9 tube out", "pulled | when he rolled", "she's not | in bed 4": a half."""
        toks, start, end = self.toks, clause.start, clause.end
        why = word(toks, start) in BECAUSE
        few = end - (clause.begins if why else start) < FEWEST + (self.voice and clause.who == THING)
        back = toks.said[end : end + 2] == ("and", "back")  # "walked 14 to the loo and back 1830"
        if (few and (self.voice or why)) or (back and starts_number(toks, end + 2)):
            return True
        if why and clause.who == THING and any(is_digits(toks, k) for k in range(start, end)):
            return True  # "Jess has bed 2 and 16 till 20:45"
        if is_meanwhile(toks, start) and (
            word(toks, start - 1) in {"pulled", "out"} or (self.voice and not start)
        ):
            return True
        if clause.begins == start and word(toks, end - 1) in OPEN and (self.voice or not clause.beds):
            return True
        if not self.voice:
            return False
        if clause.who == HEAD and "now" in toks.said[start:end]:
            return True  # "right now, room 22 line at 1430"
        if {"if", "whether"} & said:
            return True  # "do you know if | bed 5 is clamped"
        cut = end < len(toks) and word(toks, end) not in STOPS and end - clause.begins < MOST_OF_TIME
        letter = any(len(w) == 1 and w not in {"a", "i", "-"} for w in said)
        return letter or (cut and bool(said & DENIALS)) or any(names_bed(toks, k) for k in range(start, end))

    def _is_amount(self, k: int) -> bool:
        """Whether a number there may be ours: it is no time behind its at, and counts nothing else."""
        toks = self.toks
        said = word(toks, k)
        if not (is_digits(toks, k) or said in COUNTING) or self._is_bed_of_hers(k):
            return False
        if not self.voice and (_is_in_time(toks, k) or word(toks, k - 1) == "x"):
            return False
        end = k
        while starts_number(toks, end) or word(toks, end) in COUNTING:
            end += 1
        behind = word(toks, max(end, k + 1))
        if behind in COUNTED or (self.voice and word(toks, k - 1) == "day"):
            return False
        plural = behind[-1:] == "s" and len(behind) > len("his") and behind not in MILLILITRES
        counted = plural and not is_digits(toks, k) and not self.voice  # "two laps"
        part = said == "half" and (behind in OWNED or word(toks, k - 1) in HALF_OF)
        return not (counted or part)

    def _is_bed_of_hers(self, k: int) -> bool:
        """ "i'm looking after 2 and 3 tonight. bed 2 at 1900: 310": beds that come with their lines."""
        toks = self.toks
        named = any(
            word(toks, j) == word(toks, k) and word(toks, j - 1) in BED_WORDS for j in range(k + 1, len(toks))
        )
        elsewhere = self.beds > 0 and word(toks, k - 1) in WARDS  # "an emergency in bay 2"
        return not self.voice and ((named and word(toks, k - 1) in HER_BEDS) or elsewhere)


def _goes_on(toks: Toks, clause: Clause, who: str) -> bool:
    """ "he was confused and pulled the tubing off": what the one before it did, too."""
    first = word(toks, clause.begins)
    verb = first.isalpha() and first not in LINES | DRAINS | ARTICLES | BED_WORDS
    return who in {IS_PATIENT, OTHER} and (verb if clause.begins > clause.start else first in VERBS)


def _may_be_of_either(toks: Toks, clause: Clause, cues: list[Cue]) -> bool:
    """ "wife visiting and she went home": who went, the wife or the patient?"""
    goes = any(c.label == "kind" and c.value in GOING for c in cues)
    return goes and word(toks, clause.begins) in HIMSELF


def _aside(toks: Toks, clause: Clause) -> Aside:
    """What is left out: all but the bed, the stop before it, and a time that is the line's as well."""
    first = clause.start - (word(toks, clause.start - 1) == ",")
    joints = toks.said[clause.start : clause.begins]
    times = [(j - 1, end) for j, end in _times(toks) if clause.start < j < clause.end]
    said = toks.said[clause.begins : clause.end]
    looked = not MEANWHILE.isdisjoint(joints) or (clause.who == SPEAKS and not LOOKED.isdisjoint(said))
    planned = not PLANS.isdisjoint(said)
    own = tuple(times) if looked and not planned and len(_times(toks)) == 1 else ()
    ends = [first, *(k for kept in sorted((*clause.beds, *own)) for k in kept), clause.end]
    spans = tuple((a, b) for a, b in zip(ends[::2], ends[1::2], strict=True) if a < b)
    return Aside((first, clause.end), spans, not (own or planned) and bool(times))


def _times(toks: Toks) -> list[Span]:
    """Where the times stand that have an at before them."""
    found: list[Span] = []
    for k in range(1, len(toks)):
        ends = [end for end, _ in clocks(toks, k) if _is_whole_time(toks, k, end)]
        if word(toks, k - 1) in AT and ends:
            found.append((k, max(ends)))
    return found


def _says_nothing(cue: Cue, toks: Toks, clause: Clause) -> bool:
    """ "gave him his meds", "did really well", "bloods sent": no amount, correction or look of a fluid."""
    first, words = word(toks, cue.start), set(toks.said[clause.start : clause.end])
    if cue.value in {"help", "acknowledged"} or (cue.label == "output" and word(toks, cue.end - 1) == "to"):
        return True  # "with the help of the aide", "coming to take him"
    if first == "out" and word(toks, cue.start - 1) in SITS:
        return True
    if cue.label in {"canister", "tubeword", "level"}:
        return any(is_looked_at(toks, k) for k in range(cue.start, cue.end))
    if cue.label == "reason" and cue.end - cue.start == 1 and first in {"lung", "lungs"}:
        return True  # "they want to see if the lung stays up"
    if cue.label == "wall":
        return "waiting" in words
    if cue.label == "repair" and clause.who == HEAD:
        return True
    return is_of_lab(toks, cue.start) or (
        cue.end - cue.start == 1 and first in {"gave", "given", "giving", "really", "again"}
    )


def _is_in_time(toks: Toks, k: int) -> bool:
    near = (j for j in range(max(1, k - MOST_OF_TIME), k + 1) if word(toks, j - 1) in AT)
    near = (j for j in near if word(toks, j - 2) not in STAND)  # "he is at 1100" may be a line
    return any(k < end and _is_whole_time(toks, j, end) for j in near for end, _ in clocks(toks, j))


def _is_whole_time(toks: Toks, k: int, end: int) -> bool:
    """ "at 0700", "at quarter to two", "at nine"; "at 500" may be a line."""
    return is_whole_clock(toks, k) or not any(is_digits(toks, j) for j in range(k, end))


def _is_reported(toks: Toks, k: int) -> bool:
    """ "she says": whatever was told before; "he says he feels better" is of him."""
    return word(toks, k) in SAYING and word(toks, k + 1) not in HIMSELF | ARTICLES


def _goes_nowhere(toks: Toks, cue: Cue, cues: list[Cue], clause: Clause) -> bool:
    """Whether what tells of a patient who comes or goes tells of somebody else, of later, or of sleep."""
    said = toks.said[clause.start : clause.end]
    other = clause.who in {OTHER, SPEAKS, THING} or not MYSELF.isdisjoint(said)
    if cue.label == "side":
        if cue.start == clause.begins and any(is_digits(toks, k) for k in range(cue.end, clause.end)):
            return False  # "left at 650, right at 1400"
        kept = word(toks, cue.end) in WHOM and other  # "the doctor left him on it"
        return kept or word(toks, cue.start) not in LEFT or word(toks, cue.start - 1) in ARTICLES
    if cue.label != "kind" or cue.value not in GOING:
        return False
    planned = any(before.label == "plan" and before.start < cue.start for before in cues)
    if planned or not UNTIL.isdisjoint(toks.said[clause.start : clause.begins]):
        return True
    behind = toks.said[cue.end : cue.end + 3]
    if (LATER | AHEAD) & set(behind[:2]) and GONE.isdisjoint(toks.said[cue.start - 1 : cue.end]):
        return True  # "for a scan later"
    if word(toks, cue.start - 1) in ARTICLES and cue.end - cue.start == 1:
        return True  # "slept through the move"
    if cue.value == "away" and word(toks, cue.start - 1) in {"sat", "sitting", "up"}:
        return True  # "sat out for two hours"
    if cue.value == "moved" and HIMSELF_MOVED & set(behind):
        return True  # "he moved himself up the bed"
    if cue.value == "back" and REST & set(behind[:2]):
        return True
    start = begins_at(JOINTS | STOPS, toks, cue.start)
    before = {word(toks, k) for k in range(start + 1, cue.start)}
    along = any(a == "with" and b in WHOM for a, b in pairwise(toks.said[cue.start :]))
    return other and not (before & WHOM or along or clause.beds)
