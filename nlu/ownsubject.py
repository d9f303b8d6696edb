"""One clause with a subject of its own: whether all that it says is of that subject, and of no drain.

"the new aide starts 0700", "he gave it a 9/10 for ouch", "dad went out for air": what somebody else, a thing
of the house or so many of something is, does and thinks. Each number has a noun, a unit or a time of its own,
or stands in a clause of something that has a name (`unnamed`: it is left out where it can be no other value
of what is told). Used by `alongside`.
"""

from __future__ import annotations

from .accounts import SIDES, SIGNS, Accounts, Figure
from .again import Again, Span
from .numbers import is_digits, word
from .patterns.alongside import (
    AMONG,
    CUTS,
    DOES,
    FEET,
    HOMELY,
    HOUSE,
    IMAGED,
    LAB_BLOOD,
    MINDED,
    NO_ADJECTIVE,
    NO_NOUN,
    NOT_OF_OURS,
    OWNING,
    POINTING,
    RATING,
    SEEN,
    SENT,
    SOFT,
    WHOM_IF,
)
from .patterns.asides import FALLS
from .patterns.clockwords import HOUR_WORDS, MINUTE_WORDS
from .patterns.leads import BED_WORDS, LINES
from .patterns.levels import MILLILITRES
from .patterns.otherfigures import DURATIONS, HALVES, NAMES, SCORES
from .patterns.ownclauses import ARTICLES, DENIALS, DRAINS, HAPPENS, HEDGES, JOINTS, WHOM
from .patterns.ownclauses import OTHERS as PERSONS
from .pipeline import Cue
from .somebody import IS_PATIENT, OTHER, SPEAKS, Clause, subject
from .strangers import JOINTS as BINDING
from .strangers import LEAST, Strangers, may_name

JOINING = BINDING | CUTS
GOES = frozenset({"away", "back", "left", "moved"})
GONE = frozenset({"went", "gone", "goes", "going", "came", "come", "comes", "coming", "leaving", "leaves"})
GONE |= {"arrived", "off", "home", "out", "away"}
SILENT = frozenset({"plan", "neg", "no", "yes", "ask", "order", "question", "repair", "okay", "arrival"})
"""Cues that say nothing where the clause has a subject or a noun of its own."""
NAMELESS = frozenset(
    {"a", "an", "one", "two", "three", "four", "five", "six", "seven", "eight", "nine", "ten"}
)
HERE = frozenset({"side", "ward", "end", "floor", "shift", "bay", "pod", "unit"})
CAME = frozenset({"came", "come", "comes", "out", "more", "less", "lost", "passed", "since", "over", "under"})
"""Beside a number these may be of how much drained."""
ASKING = frozenset({"know", "knows", "ask", "asks", "asking", "wants", "want", "what", "when", "how", "tell"})
"""With one of these a word of a topic asks for it."""
OUR_UNITS = MILLILITRES | {
    "cm",
    "cms",
    "cmh",
    "h",
    "mmhg",
    "mm",
    "kpa",
    "torr",
    "l",
    "water",
    "seal",
    "suction",
}
FEWEST = 2
"""Words of a clause without a number."""
MOST_BETWEEN = 3
"""Words from a number to what it counts: "5 falls risk pts"."""
NEAR = 4
INCHES, TENTHS = 11, 10
OLD, OLDEST = 15, 110


class OwnSubject(Strangers):
    """The accounts of a clause with a subject: whom it is of, and whether that is a thing of the house."""

    def __init__(self, again: Again, span: Span) -> None:
        toks, (start, end) = again.toks, span
        begins = start
        while begins < end and word(toks, begins) in HEDGES | JOINTS | CUTS:
            begins += 1
        self.begins, self.toks, self.start, self.end = begins, toks, start, end
        self.who = subject(toks, Clause(start, end, begins, (), ""), voice=False)
        self.is_person = self.who in {IS_PATIENT, OTHER, SPEAKS}
        self.is_homely = self._subject_in(HOMELY)
        self.is_house = not self.is_person and self._subject_in(HOUSE)
        self.numbers = [k for k in range(start, end) if is_digits(toks, k)]
        self.timely = not {"noon", "midnight", "midday"}.isdisjoint(toks.said[start:end])
        super().__init__(again, span)

    def _subject_in(self, words: frozenset[str]) -> bool:
        """Whether the first noun of it is one of these: "his mum", "1 of the 3 lifts", "bell's"."""
        for k in range(self.begins, min(self.begins + NEAR + 1, self.end)):
            said = word(self.toks, k)
            if said in words or said.removesuffix("'s") in words or said.removesuffix("s") in words:
                return True
            if not (said in ARTICLES | AMONG | {"of", "old", "other", "new"} or said.isdecimal()):
                return False
        return False

    def _is_known(self) -> bool:
        return super()._is_known() or self.is_person or self.is_house

    def _may_be_ours(self, cue: Cue) -> bool:
        """Whether a cue may be of a drain, and is not what the subject of the clause does or has."""
        if cue.label == "ask" and not self._is_bare_of(ASKING):
            return True  # "doctor wants to know the rate"
        if not super()._may_be_ours(cue):
            return False
        toks, k = self.toks, cue.start
        behind = word(toks, cue.end)
        if cue.label in SILENT:
            return not (self.strange or self.others or self.is_person or self.is_house)
        if cue.label in {"new", "opens"}:
            return not (
                cue.end in self.strange
                or (word(toks, k).startswith(("start", "open")) and k - 1 in self.strange)
            )
        if cue.label == "fluid":
            return not (word(toks, cue.end - 1) == "blood" and behind in LAB_BLOOD)
        if cue.label == "tubeword" and word(toks, k) == "ct":
            return behind not in IMAGED
        if cue.label in {"level", "side"}:
            return any(self._is_doubtful(j) for j in range(k, cue.end)) or not self._is_verb(k)
        return self._happens_to_us(cue)

    def _happens_to_us(self, cue: Cue) -> bool:
        """Whether an event may be of a drain or its patient: not "dad went out", "the bell's broken"."""
        if cue.label == "kind" and cue.value in {"help", "acknowledged"}:
            return False
        if cue.label == "kind" and cue.value == "corrected":
            return any(self._is_doubtful(k) for k in range(cue.start, cue.end))
        if cue.label == "kind" and cue.value in GOES:
            return not (self._goes_alone() and WHOM.isdisjoint(self.toks.said[self.begins + 1 : self.end]))
        if cue.label == "what":
            falls = " ".join(self.toks.said[cue.start : cue.end]) in FALLS and self.who == OTHER
            return not (self._of_house(cue.start) or (falls and self._is_bare_of(DRAINS)))
        return True

    def _goes_alone(self) -> bool:
        """Whether whoever comes or goes is no patient of a drain."""
        if word(self.toks, self.end) in {"with", "w"}:
            return False  # "nurse is gone to CT with bed 17"
        other = self.who == OTHER and not self._subject_in(HOMELY - PERSONS)
        return (other or self.who == SPEAKS or self.is_house) and self._is_bare_of(DRAINS)

    def _is_bare_of(self, words: frozenset[str]) -> bool:
        return words.isdisjoint(self.toks.said[self.start : self.end])

    def _of_house(self, k: int) -> bool:
        """Whether a thing of the house stands right before, or heads the clause: "lift 3 is broken"."""
        near = self.toks.said[max(self.start, k - MOST_BETWEEN) : k + 1]
        named = any(w in HOUSE or w.removesuffix("'s") in HOUSE for w in near)
        return (named or self.is_house) and self._is_bare_of(DRAINS | BED_WORDS - {"bed"})

    def _account(self, figure: Figure) -> Span | None:
        return (
            Accounts._account(self, figure)
            or self._lasts(figure)
            or self._of_several(figure)
            or self._of_size(figure)
            or self._at_half(figure)
            or self._aged(figure)
            or self._loose(figure)
        )

    def _count(self, figure: Figure) -> Span | None:
        """ "4 more days", "5 falls risk pts", "2 other things": a number and what it counts."""
        if Accounts._count(self, figure) or not figure.plain or self._may_be_bed(figure):
            return Accounts._count(self, figure)
        toks, small = self.toks, figure.value < LEAST
        for k in range(figure.end, min(figure.end + MOST_BETWEEN, self.end)):
            said = word(toks, k)
            if not said.isalpha() or said in NO_ADJECTIVE | DRAINS | HOUR_WORDS | MINUTE_WORDS | OUR_UNITS:
                return None
            plural = said.endswith("s") or toks[k].end - toks[k].start == len(said) + 1
            one = figure.value == 1 and k in self.strange
            if (
                (may_name(said) or k in self.others)
                and len(said) > FEWEST
                and (plural or one or (small and k + 1 == self.end))
            ):
                self.heads |= {k}
                return figure.start, k + 1
        return None

    def _has_name(self, figure: Figure) -> bool:
        """Whether the name of a thing stands before it, and nobody's: not "reg got 350"."""
        k = self._name_before(figure.start)
        if word(self.toks, k) in PERSONS | HOMELY or word(self.toks, k).endswith(("ed", "ing")):
            return False
        return super()._has_name(figure)

    def _lasts(self, figure: Figure) -> Span | None:
        """ "4 hours in theatre", "off for 45 min": how long something is."""
        long = figure.plain and word(self.toks, figure.end) in DURATIONS | {"weeks", "months", "years"}
        ago = word(self.toks, figure.end + 1) in {"ago", "later", "since"}
        return (figure.start, figure.end + 1) if long and not ago else None

    def _of_several(self, figure: Figure) -> Span | None:
        """ "1 of us", "1 of the 3 lifts", "3/4 of it", "7 out of 10"."""
        toks, end = self.toks, figure.end
        small = figure.value < LEAST
        if toks.said[end : end + 3] == ("out", "of", "10") and figure.plain and figure.value <= TENTHS:
            return figure.start, end + 3
        if small and word(toks, end) == "of" and word(toks, end + 1) in AMONG and self._has_subject():
            return figure.start, end + 2
        part = not figure.plain and word(toks, figure.start + 1) == "/" and small
        return (figure.start, end + 2) if part and word(toks, end) == "of" and self.is_homely else None

    def _has_subject(self) -> bool:
        return bool(self.strange) or self.is_person or self.is_house

    def _of_size(self, figure: Figure) -> Span | None:
        """ "6 ft 5"."""
        toks, k = self.toks, figure.start
        behind = word(toks, k - 1) in FEET and is_digits(toks, k - 2) and figure.value <= INCHES
        return (k - 2, figure.end) if behind and k - 2 >= self.start else None

    def _at_half(self, figure: Figure) -> Span | None:
        """ "at half 6", "the 6 o'clock heparin", "the 2 pm bus": an hour of what is told there."""
        toks = self.toks
        hour = figure.plain and figure.value <= 2 * (INCHES + 1) and self._has_subject()
        half = word(toks, figure.start - 1) in {"half", "past"}
        clock = word(toks, figure.end) in HALVES | {"o'clock", "oclock"}
        if not hour or not (half or clock):
            return None
        self.timely = True
        return figure.start - half, figure.end + clock

    def _aged(self, figure: Figure) -> Span | None:
        """ "who is 71", "he turned 80 last week", "she is 90 on friday"."""
        toks, k = self.toks, figure.start
        before, behind = toks.said[self.begins : k], word(toks, figure.end)
        who = toks.said[self.start : k] in {("who", "is"), ("who", "was"), ("who's",)}
        old = who and figure.end == self.end
        old |= self.is_homely and before[-1:] in {("turned",), ("turns",), ("turning",)}
        old |= (
            self.is_homely
            and len(before) <= FEWEST
            and behind in {"next", "on"}
            and figure.end + 1 < self.end
        )
        if not (old and figure.plain and OLD <= figure.value <= OLDEST):
            return None
        self.heads |= {k}
        return k - 1, figure.end

    def _loose(self, figure: Figure) -> Span | None:
        """ "pain's a 6", "the monitor says 72": a number in a clause of something that has a name. It is left
        out where it cannot be another value of what is told (`_is_near`)."""
        named = bool(self._nouns()) or any(w.removesuffix("'s") in NAMES for w in self.said)
        if figure.value >= LEAST and not (figure.start > self.begins and self._is_behind_word(figure.start)):
            return None  # "80 after the walk", "turned him and 80 ran out"
        came = not CAME.isdisjoint((word(self.toks, figure.start - 1), word(self.toks, figure.end)))
        if not named or came or self.amounts or self._may_be_of_bed(figure) or self._is_set(figure):
            return None
        self.unnamed |= {figure.start}
        return figure.start, figure.end

    def _is_behind_word(self, k: int) -> bool:
        return word(self.toks, k - 1)[:1].isalpha() and word(self.toks, k - 1) not in JOINING | JOINTS

    def _nouns(self) -> list[int]:
        """Where words stand that may say of what the clause is."""
        known = NO_NOUN | PERSONS | HOMELY
        found = (k for k in self.strange | self.others if word(self.toks, k) not in known)
        return [k for k in found if not word(self.toks, k).endswith(("ed", "ing"))]

    def _may_be_of_bed(self, figure: Figure) -> bool:
        """ "7 dry", "6 is asleep": a bed and what is told of it."""
        heads = figure.start == self.begins and word(self.toks, figure.start) in self.beds
        of_bed = heads and figure.end not in self.strange | self.others
        return of_bed or self._may_be_bed(figure) or word(self.toks, figure.start - 1) in BED_WORDS

    def _is_set(self, figure: Figure) -> bool:
        """ "reg wants 10", "doc said 20": what somebody of the staff may want of the suction."""
        return self.who == OTHER and not self.is_homely and figure.end == self.end

    def _is_doubtful(self, k: int) -> bool:
        if k in self.own and word(self.toks, k) not in DRAINS | LINES | MILLILITRES:
            return is_digits(self.toks, k) and k + 1 not in self.own and super()._is_doubtful(k)
        return super()._is_doubtful(k) and not self._is_plain(k)

    def _is_plain(self, k: int) -> bool:
        """Whether a word that elsewhere would be of a line is of the subject of the clause."""
        toks, said = self.toks, word(self.toks, k)
        behind, named = word(toks, k + 1), k + 1 in self.strange | self.others
        if said in {"it", "it's"}:
            rated = self.is_homely and not RATING.isdisjoint(toks.said[self.begins : k])
            own = behind in OWNING or toks.said[k + 2 : k + 3] == ("degrees",)
            return rated or (k == self.begins and said == "it's" and own)
        if said in SOFT and self._has_subject() and named | (behind not in NOT_OF_OURS):
            return True
        if said in MINDED and self.is_homely:
            return True
        if said in DOES and (behind in WHOM or (behind in OWNING and k + 2 in self.strange | self.others)):
            return True
        if said in POINTING:
            when = word(toks, k - 1) in {"before", "after"} and self.is_person
            here = word(toks, k - 1) in {"on", "at", "in"} and behind in HERE and not self.unnamed
            return when or here or (named and behind not in NOT_OF_OURS)
        if said in DENIALS:
            return self._denies_own(k)
        if said == "if":
            return behind in WHOM_IF
        if said == "each":
            return word(toks, k - 1) in {"of", "for"} and self._has_subject() and not self.unnamed
        if said in {"other", "wrong"}:
            return (named and behind not in NOT_OF_OURS) or k in self.own
        if said in NAMELESS:
            return named or (word(toks, k - 1) == "a" and not self.said.isdisjoint(SCORES))
        if said == "air":
            return word(toks, k - 1) in {"for", "fresh", "some"} and self.is_person
        if said == "turned" and behind in {"up", "out"}:
            return self.is_person and not is_digits(toks, k + 2)
        if said in {"i'm", "but"}:
            return self._has_subject()
        if said == "number":
            return k - 1 in self.strange
        return self._is_verb(k)

    def _is_no_side(self, k: int) -> bool:
        """ "he left half of it", "left his phone at home", "lost her right shoe", "asleep on her left"."""
        toks, said, behind = self.toks, word(self.toks, k), word(self.toks, k + 1)
        named = k + 1 in self.strange | self.others or k + 2 in self.strange
        if word(toks, k - 1) in OWNING and named:
            return True
        lies = word(toks, k - 1) in OWNING and word(toks, k - 2) == "on" and not self.numbers
        led = k == self.begins + 1 and self.is_homely and behind in ARTICLES | {"half", "most", "some"}
        owned = behind in OWNING and k + 2 in self.strange | self.others
        return lies or (
            said == "left" and ((led and not is_digits(toks, k + 1)) or owned or self._is_part(k))
        )

    def _is_part(self, k: int) -> bool:
        """ "he left 3/4 of it"."""
        return self.is_homely and k + 1 in self.own and k + 2 in self.own

    def _denies_own(self, k: int) -> bool:
        """ "no tears", "he's not keen on lunch": what somebody or something is not."""
        toks, said = self.toks, word(self.toks, k)
        if said in {"no", "nil", "without"}:
            noun = k + 1 + (word(toks, k + 1) not in NOT_OF_OURS and k + 2 in self.strange)
            return noun in self.strange | self.others or toks.said[k : k + 3] == ("nil", "by", "mouth")
        own = self.is_homely or self.is_house or self.who == SPEAKS or (k == self.begins and self._nouns())
        return bool(own) and SEEN.isdisjoint(toks.said[k : self.end])

    def _is_verb(self, k: int) -> bool:
        """Whether a word is what the subject does, or is done with a thing: "dad went", "2 swabs sent"."""
        toks, said = self.toks, word(self.toks, k)
        if said in GONE:
            thing = any(j < k for j in self._nouns()) and said not in {"out", "off", "home", "away", "left"}
            thing &= not self.is_homely and word(toks, k + 1) not in {"out", "off"}
            return (thing or self._goes_alone()) and WHOM.isdisjoint(toks.said[k : self.end])
        if said in SENT:
            return k - 1 in self.strange | self.others and not is_digits(toks, k + 1)
        if said in SIDES:
            return self._is_no_side(k)
        if said in {"read", "wrote"}:
            counted = k + 1 in self.own or k + 2 in self.own
            return counted and (self.is_homely or self.who == OTHER)
        if said in HAPPENS:
            return self._of_house(k)
        return said in SIGNS
