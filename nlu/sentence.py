"""One way to cut a message, and what it says: an answer, a query, a correction, a report, or some of these.

Called by `read` for every way that stands; each reading comes back with what speaks against it.
"""

from __future__ import annotations

from collections.abc import Iterator, Mapping, Sequence
from dataclasses import dataclass, replace
from datetime import datetime, time
from functools import partial
from itertools import pairwise

from . import answers, corrections, queries, questions, topics, whichwrong, withdrawals
from .alarms import is_dire
from .asking import asks_whether, with_bed_to_read, with_next_bed, with_sign, without_hour, without_tag
from .begun import BEGUN
from .brief import Brief
from .building import Builder
from .context import in_context
from .cutting import cut_lengths, cuts, cuts_thousand
from .drafts import Draft
from .foundin import with_tubes_first
from .headings import without_heading
from .items import FINDINGS, Item, is_of_now
from .judging import EITHER_BED, is_list, standing
from .kept import dropped
from .keyed import with_plain_pairs
from .lattice import LONG
from .leftovers import leftovers
from .lined import with_beds, with_line_of_each
from .neighbours import phrase_of
from .nothing import is_greeting, is_nothing_of_ours
from .numbers import Toks, word
from .ofabed import with_checks_of_beds
from .patterns.remarks import REMARKS
from .pipeline import Read
from .righted import Correction
from .roles import assignments
from .rules import there
from .runtogether import BY_THE_HOUR
from .scope import scoped
from .sharing import gathered
from .sincewhen import without_since
from .soundalikes import eats_a_number
from .statements import Acknowledged, Answered, Asked, Mark, Statement, Unclear
from .strayfigures import strays, strays_asked, strays_beside
from .subjects import subjects
from .tubehead import without_tubes
from .verdict import Outcome, Reading, Unjudged, told

PLAIN = frozenset({"bed", "word", "yes", ","})
"""Beside "correct" these leave it a yes."""
UNTOLD = frozenset({"word", "old", "empty", "neg", "join", "plan", "change", "out", "order", "unchanged"})
"""Beside a bare bed these say that more was meant than its last line."""
MOST_CHOSEN = 2
"""Numbers of a choice: a bed and a level."""
COUNTED = frozenset({"level", "volume", "output", "check", "weight", "bad"})
"""Roles that no reading leaves out: what is said of them counts, and so do numbers that are cut in two."""
TELLING = COUNTED | FINDINGS | {"num", "time", "kind", "what", "same", "alt", "foreign", "claimed", "denied"}
"""Pieces that tell something in a question too: words that were not understood may be of them."""
TOLD_ASKED = TELLING - FINDINGS


@dataclass(frozen=True, slots=True)
class Ward:
    """What the reader knows of the unit and the moment."""

    arrived: datetime
    index: Mapping[str, str] | None
    voice: bool
    shifts: tuple[time, ...] = ()


def _tube_asked(drafts: list[Draft]) -> list[Draft]:
    """Dictated "right bed eight mark 490": whether it is of the right tube is all that is asked."""
    for draft in drafts:
        draft.either = draft.either or draft.tubes[:1]
    return drafts


def pieces(way: tuple[Item, ...], toks: Toks, arrived: datetime) -> tuple[Item, ...]:
    """The pieces of one way through a message, as its readings see them."""
    told = with_line_of_each(without_heading(without_tubes(way, toks), toks), toks)
    told = without_since(with_tubes_first(scoped(with_beds(told, toks), toks), toks))
    items = withdrawals.opened(in_context(with_plain_pairs(told, toks, arrived), toks), toks)
    items = _opened(items, toks)
    items = withdrawals.entered_in_error(without_tag(items, toks), toks)
    items = with_sign(withdrawals.unmade(items, toks), toks)
    items = with_bed_to_read(with_checks_of_beds(items, toks), toks)
    items = with_next_bed(without_hour(items, toks), toks)
    items = corrections.agreed(corrections.without_emphasis(items, toks), toks)
    return corrections.with_owner(corrections.told_right(items, toks), toks)


def _opened(items: tuple[Item, ...], toks: Toks) -> tuple[Item, ...]:
    """ "um no": where nothing was said before it, a no mends nothing and is an answer."""
    first = items[0] if items else None
    if first is None or first.value != "repair" or "no" not in toks.said[first.start : first.end]:
        return items
    return (first._replace(value="no"), *items[1:])


class Sentence:
    """One way through a message, read as an answer, a query, a correction or a report."""

    def __init__(self, read: Read, ward: Ward, items: tuple[Item, ...]) -> None:
        self.read = read
        self.ward = ward
        self.items, self.question, self.is_asked_first, self.seen = questions.parts(items, read)
        self.text = read.text
        self.brief = Brief(self.items, read.tokens, ward.arrived, read.text, voice=ward.voice)
        """The message looked at as an answer."""
        self._labelled = tuple(
            [i.as_role("bed") if i.role == "num" and i.label and not i.lead else i for i in self.items]
        )
        """The pieces with lone bare numbers that are beds taken as beds."""

    def readings(self) -> Iterator[tuple[Reading | Unjudged, bool]]:
        """Every reading of this way, and whether there were too many to follow."""
        if cuts_thousand(self.items, self.read.tokens):
            yield told(Unclear(slot="kind", text=self.text), faults=1), False
            return
        special = self._special()
        if special is not None:
            yield self._with_question(special, self._labelled), False
            return
        found, too_many = assignments(self.items, self.ward.arrived)
        if too_many and len(self.read.tokens) > LONG:
            yield told(Unclear(slot="kind", text=self.text)), True
            return
        for items in found:
            yield self._report(items), too_many

    # Short and special messages

    def _special(self) -> Reading | None:
        items = self.items
        if is_greeting(self.read.tokens):
            return told()
        if withdrawals.is_withdrawal(items):
            toks, level = self.read.tokens, withdrawals.is_of_a_level(items, self.ward.arrived)
            if level or withdrawals.tells_more(items, toks) or asks_whether(toks):
                return told(Unclear(slot="kind", text=self.text))
            items = withdrawals.without_reason(items, self.read.tokens)
            made = withdrawals.withdrawn(items, self.ward.arrived, self.text)
            return told(*self._for_a_bed([made]), faults=len(self.unread(items)))
        if (wrong := whichwrong.earlier_wrong(self.read.tokens)) is not None:
            return told(wrong)
        if whichwrong.is_either(self.read.tokens):
            return told(Unclear(slot="kind", text=self.text))
        if "correct" in self.read.tokens.words and self._is_bare_correct():
            beds = [i.label for i in self._labelled if i.role == "bed"]
            return told(Answered(answer="yes", bed=beds[0] if beds else None))
        several = len(answers.numbers(items)) > MOST_CHOSEN  # "209 was misread, at 1600 it was 1020 not 1200"
        placed = any(i.role in {"bed", "time"} for i in items)
        chosen = answers.cues(items, "choice") and not (placed or several)
        if not chosen and corrections.is_correction(items, self.read.tokens):
            corrected = self._corrected()
            whole = any(isinstance(s, Statement) for s in corrected)
            if corrections.is_of_another(items) or (whole and asks_whether(self.read.tokens)):
                return told(Unclear(slot="kind", text=self.text))
            read = corrections.without_told(items, self.read.tokens)
            return told(*self._for_a_bed(corrected), faults=len(self.unread(read)))
        if self.read.tokens.said[: len(self.read.tokens)] in {("beds",), ("beds", "?")}:
            return told(Asked(topic="beds"))
        if self._is_bare_question():
            return told(*queries.asked(self._labelled, self.ward.arrived, self.read, self.ward.shifts))
        said = answers.seen(self._labelled)
        if other := answers.other(said, self.text):
            return told(*other, faults=len(self.unread(self.items[: len(said)])))
        brief = self.brief
        simple = brief.kept_or_bed() or brief.choice_of_canister() or brief.answer()
        return self._rated([simple]) if simple is not None else None

    def _is_bare_correct(self) -> bool:
        """ "correct", "12 correct": a yes; "correct bed 12", "please correct" puts something right."""
        said = [i for i in self._labelled if i.role not in {"cue", "sep"} or i.value not in PLAIN]
        last = said[-1:] if said else []
        whole = all(i.role == "bed" for i in said[:-1]) and len(said) < 3
        return whole and any(
            phrase_of(i, self.read.tokens) == "correct"
            and i.name == "corrected"
            and word(self.read.tokens, i.end) != "it"
            for i in last
        )

    def _is_bare_question(self) -> bool:
        """ "5?": a bed and a question mark."""
        items = self._labelled
        return [i.role for i in items] == ["bed", "cue"] and items[1].value == "mark_of_question"

    def _for_a_bed(self, outcome: list[Statement | Unclear]) -> list[Statement | Unclear]:
        """In dictation a word that was not understood may have been the bed."""
        strange = [i for i in answers.cues(self.items, "word") if i.name not in REMARKS and i.name != "last"]
        lost = self.ward.voice and bool(strange or self._has_stray_number())
        return [
            Unclear(slot="bed", text=self.text, statement=s)
            if lost and isinstance(s, Statement) and s.bed is None
            else s
            for s in outcome
        ]

    def _has_stray_number(self) -> bool:
        return len([i for i in self.items if i.role == "num"]) > 1

    def _rated(self, outcome: Sequence[Statement | Unclear]) -> Reading:
        return told(*outcome, faults=len(self.unread(self.items)))

    def _corrected(self) -> list[Statement | Unclear]:
        return Correction(self.items, self.ward.arrived, self.text, self.read.tokens).read()

    # Reports and queries

    def _report(self, items: tuple[Item, ...]) -> Reading | Unjudged:
        if queries.is_query(items):
            asked = self._asked_beds(self.question)
            own = any(i.role == "bed" for i in asked)
            both = items if own else (*items, *asked)
            outcome = queries.asked(both, self.ward.arrived, self.read, self.ward.shifts)
            made = told(*outcome, faults=len(self.unread_question(items)) + self._is_half_heard(items))
            return self._with_question(made, items) if own else made
        if is_nothing_of_ours(items) and not (self.ward.voice and eats_a_number(self.read.tokens)):
            return self._with_question(told(faults=len(self.unread_question(self.question))), items)
        cut = len(cuts(items, self.read.tokens, self.ward.voice))
        counted = cut and not COUNTED.isdisjoint(there(items))
        return Unjudged(cut if counted else 0, lambda: self._gathered(items, cut))

    def _gathered(self, items: tuple[Item, ...], cut: int) -> Reading | Unjudged:
        """What the pieces tell: with the faults of its own, `cut` numbers and those in no statement."""
        drafts = gathered(items, self.read.tokens)
        if not drafts or not any(d.has_content or d.wants or d.clashes or d.time for d in drafts):
            return self._with_question(self._bare(items), items)
        lost = len(list(dropped(items, drafts)))
        stands = standing(drafts, self.ward.arrived)
        least = cut + lost + len(stands.faults)

        def further() -> Reading:
            toks, voice = self.read.tokens, self.ward.voice
            strange = len(list(subjects(items, toks)))
            stray = [] if voice else strays(items, toks)
            signs = [*leftovers(items, toks, voice=voice), *stray]
            beside = len(signs)
            beside += (
                sum(1 for look in BY_THE_HOUR for _ in look(items, toks, self.ward.arrived)) if voice else 0
            )
            asked = len(self.unread_question(self.question))
            if self.question and not voice:
                asks = topics.asks(self.question, self.read)
                asked += len(strays_beside(self.question, toks, asks=asks))
            beside += asked
            rank = (least + beside + strange, len(stands.doubts))
            unsure = bool(strange > 0 or asked > 0 or stray) or EITHER_BED in stands.doubts
            drawn = _tube_asked(drafts) if signs == [BEGUN] and voice and rank == (1, 0) else drafts
            return Reading(lambda: self._built(drawn), rank, cut + beside + strange, unsure)

        return Unjudged(least, further)

    def _built(self, drafts: list[Draft]) -> Outcome:
        ward = self.ward
        builder = Builder(self.read.tokens, self.text, ward.arrived, is_list(drafts), ward.voice)
        beds = {draft.bed.label for draft in drafts if draft.bed is not None}
        return self._and_asked(tuple(builder.all_built(drafts)), drafts[-1].bed if len(beds) == 1 else None)

    def _with_question(self, reading: Reading, items: tuple[Item, ...]) -> Reading:
        """The reading of a report, with the question that stands beside it."""
        if not (self.question or self.seen):
            return reading
        beds = [i for i in items if i.role == "bed"]
        bed = beds[-1] if beds else None
        return replace(reading, made=lambda: self._and_asked(reading.made(), bed))

    def _and_asked(self, told: Outcome, bed: Item | None) -> Outcome:
        """What is told, and what is asked beside it, in the order said."""
        seen = tuple(Acknowledged(bed=label) for label in self.seen)
        shared = None if self.is_asked_first else bed
        asked = tuple(self._asked_too(shared)) if self.question else ()
        return (*seen, *asked, *told) if self.is_asked_first else (*seen, *told, *asked)

    def unread(self, items: tuple[Item, ...]) -> list[str]:
        """The numbers that were cut in two, and what else of the message these pieces leave unread."""
        toks, voice = self.read.tokens, self.ward.voice
        stray = [] if voice else strays(items, toks)
        return [*cuts(items, toks, voice), *leftovers(items, toks, voice=voice), *stray]

    def unread_question(self, items: tuple[Item, ...]) -> list[str]:
        """The same of a question: where it tells nothing, the words of a typed one are how it is asked."""
        if not items:
            return []
        toks, voice = self.read.tokens, self.ward.voice
        known = topics.read_together(items, self.read)
        rest = tuple(i for i in items if not (i.unread and i.name in known))
        said = there(i for i in items if not is_of_now(i) and not questions.is_standing(i, items, self.read))
        named = any(i.role == "bed" for i in items)
        telling = TOLD_ASKED if named and not voice and questions.is_of_findings(self.read) else TELLING
        aloud = voice and named and topics.is_asked_aloud(items, self.read)
        plain = (not voice or not named or aloud) and telling.isdisjoint(said)
        halves = cut_lengths if plain and named else partial(cuts, voice=voice)
        cut = halves(items, toks)  # "total on 404 yesterday": no 4:04
        cut = [*cut, *questions.told_beside(items, self.read)]
        if not voice:
            cut = [*cut, *strays_asked(items, toks)]
        if plain and topics.asks(items, self.read):
            return cut
        return [*cut, *leftovers(rest, toks, voice=voice)]

    def _is_half_heard(self, items: tuple[Item, ...]) -> bool:
        """Dictated "to leave the last reading": a query without a word that asks, and with more words."""
        if not self.ward.voice or answers.cues(items, "question") or topics.asks(items, self.read):
            return False
        beds = [i for i in items if i.role == "bed"]
        if any(bed.end == after.start for bed, after in pairwise(beds)):
            return True  # "bed nine ten in the last hour"
        windowed = bool(answers.cues(items, "span") or answers.cues(items, "window"))
        plans = [
            i
            for i in answers.cues(items, "plan")
            if not windowed or word(self.read.tokens, i.start) != "over"
        ]
        return bool(plans or answers.cues(items, "word"))

    @staticmethod
    def _asked_beds(items: tuple[Item, ...]) -> tuple[Item, ...]:
        """The pieces of a question, whose numbers are beds."""
        return tuple(i.as_role("bed") if i.role == "num" and i.label else i for i in items)

    def _asked_too(self, bed: Item | None) -> list[Statement | Unclear]:
        items = self._asked_beds(self.question)
        if bed is not None and not any(i.role == "bed" for i in items):
            items = (*items, bed._replace(lead=""))  # "7 drainage serosang, last reading?"
        if any(i.role == "foreign" for i in items):
            return [Unclear(slot="kind", text=self.text)]
        return queries.asked(items, self.ward.arrived, self.read, self.ward.shifts)

    def _bare(self, items: tuple[Item, ...]) -> Reading:
        """Nothing but a bed, perhaps a tube: what is the last line there?"""
        beds = [i for i in items if i.role == "bed"]
        if beds and answers.cues(items, "no"):
            return told(Unclear(slot="kind", text=self.text, statement=Statement(bed=beds[0].label)))
        denied = bool(answers.cues(items, "neg")) or topics.asks(items, self.read)
        if len(beds) == 1 and not denied and is_dire(self.read.tokens):
            lacking = Unclear(slot="level_ml", text=self.text, statement=Mark(bed=beds[0].label))
            return Reading(lambda: (lacking,))
        if beds and topics.read_together(items, self.read):  # "is bed 9 full"
            made = queries.asked(items, self.ward.arrived, self.read, self.ward.shifts)
            return told(*made, faults=len(self.unread_question(items)))
        if any(i.role == "tube" for i in items) and word(self.read.tokens, 0) in {"it's", "its", "that's"}:
            return told(Unclear(slot="kind", text=self.text))  # "it's the right side bed 16"
        strange = [
            i
            for i in items
            if i.role in {"foreign", "claimed", "bad", "time"} or (i.role == "cue" and i.value in UNTOLD)
        ]
        if self.ward.voice and beds and not answers.cues(items, "bed") and self.brief.says_more():
            return told(Unclear(slot="kind", text=self.text))
        if _may_be_line_of(beds, items):
            return told(Unclear(slot="kind", text=self.text))
        if beds and not strange and not answers.cues(items, "nothing"):
            unread = len(self.unread(items)) if self.ward.voice else 0
            return told(*queries.asked(items, self.ward.arrived, self.read, self.ward.shifts), faults=unread)
        tubes = any(i.role == "tube" for i in items)
        if strange or beds or tubes or answers.cues(items, "nothing"):
            return told(Unclear(slot="kind", text=self.text))
        return told()


def _may_be_line_of(beds: Sequence[Item], items: Sequence[Item]) -> bool:
    """ "7, 12": two beds, or a bed and its line; "7 and 12", "beds 7, 12" are beds."""
    said = {i.value for i in items if i.role in {"cue", "sep"}}
    return len(beds) == 2 and said <= {",", "/", "-"} and all(str(b.label).isdecimal() for b in beds)
