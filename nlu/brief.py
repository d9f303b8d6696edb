"""Short messages that answer what was asked: yes, no, a choice, a bare value."""

from __future__ import annotations

from dataclasses import replace
from datetime import datetime
from itertools import pairwise

from . import answers
from .items import Item, is_now
from .numbers import Toks, is_digits, word
from .statements import Answered, Statement, Unclear

MOST_HOURS = 24
WHOLE = 3
"""A bed, a level and a time: a whole line."""
MOST_ML = 3000
"""No canister holds so much."""
LEVEL = 3
"""Digits of a level that may stand behind the single one of its bed."""
DESCRIBING = frozenset({"it", "it's", "its", "that's", "thats", "this", "that"})
"""What is said of the canister with one of these first is no report of a change."""
HOURLY = frozenset({"hourly", "hrly", "hourlies"})
"""Before a bare number these ask for a bed, or tell how much came."""
GOING_ON = frozenset({"and", "&", "also", "plus"})
"""Before a bare number: one bed more of what was asked, or so much more: "and 13"."""
BEEN = frozenset({"s", "'", "has", "was", "been", "got"})
CHANGED = frozenset({"changed", "swapped", "replaced", "exchanged"})
OF_A_LINE = frozenset({"mark", "line", "level", "reading", "fluid", "canister", "box", "chamber", "bottle"})
SEEN = frozenset({"ok", "okay", "k", "noted", "sorry", "thanks", "thx", "thank", "ta", "cheers", "soz"})
"""Beside a bare number that is a bed too these may say that its notice was seen, or that it was mistaken."""
KEEPING = DESCRIBING | {"keep", "yes", "yeah", "yep", "ok", "okay", "please", "pls", "as", "is", "then", ","}
HALTING = frozenset(
    {"uh", "um", "er", "erm", "ah", "hmm", "mm", "uhm", "so", "well", "okay", "please", "sorry", "thanks"}
    | {"it", "it's", "its", "that's", "is", "was", "the", "a", "at", "of", "i", "got", "have", "just", "now"}
    | {"about", "still", "on", "in", "for", "to", "exactly", "this", "my", "one", "side"}
)
"""Beside a bare answer these say nothing."""


class Brief:
    """One way through a message, looked at as an answer."""

    def __init__(
        self, items: tuple[Item, ...], toks: Toks, arrived: datetime, text: str, *, voice: bool
    ) -> None:
        self.items = items
        self.toks = toks
        self.arrived = arrived
        self.text = text
        self.voice = voice

    def kept_or_bed(self) -> Statement | None:
        """ "keep it", "it was bed 12": a yes, or the bed that was asked for."""
        said = self.toks.said[: len(self.toks)]
        if "keep" in said and not DESCRIBING.isdisjoint(said) and KEEPING.issuperset(said):
            return Answered(answer="yes")
        if word(self.toks, 0) not in {"it", "it's", "its"} or "?" in said:
            return None
        beds = [i for i in self.items if i.role == "bed" and i.known]
        told = [i for i in self.items if i.value not in {"bed", "filler"} and i.role != "sep"]
        return Answered(bed=beds[0].label) if len(beds) == 1 and told == beds else None

    def choice_of_canister(self) -> Statement | None:
        """ "new canister", "new box yes": an answer, when no bed or number is said."""
        now = word(self.toks, 0) in DESCRIBING  # "its a fresh new canister now"
        beds = [i for i in self.items if i.role == "bed" or (i.role == "num" and not (i.unit or i.lead))]
        if len(beds) == 1 and beds[0].label is not None and beds[0].known and answers.cues(self.items, "yes"):
            rest = Brief(
                tuple(i for i in self.items if i is not beds[0] and i.value != "bed"),
                self.toks,
                self.arrived,
                self.text,
                voice=self.voice,
            )
            made = rest.choice_of_canister()  # "22 yes new canister"
            return replace(made, bed=beds[0].label) if made is not None else None
        if any(
            i.role in {"num", "bed", "bad"} or (i.role == "time" and not (now and is_now(i)))
            for i in self.items
        ):
            return None
        said = [i.value for i in self.items if i.role == "cue"]
        if {"question", "ask", "mark_of_question", "howto"} & set(said):
            return None
        if self._is_changed():
            return Answered(choice="new_canister", answer="yes" if "yes" in said else None)
        if "new" in said and not set(said) - {"new", "yes", "okay"}:
            return Answered(choice="new_canister", answer="yes" if "yes" in said else None)
        kinds = answers.cues(self.items, "kind")
        if len(kinds) != 1 or kinds[0].name != "exchanged" or word(self.toks, kinds[0].start) != "new":
            return None
        if kinds[0].end - kinds[0].start > 2 or answers.cues(self.items, "no"):
            return None
        return Answered(choice="new_canister", answer="yes" if answers.cues(self.items, "yes") else None)

    def _is_changed(self) -> bool:
        """ "its been changed": of the canister that was asked about."""
        said = [
            t.text for t in self.toks if t.text not in {"yes", "yeah", "yep", "just", "already", "out", ","}
        ]
        it = said[:1] in (["it"], ["it's"], ["its"]) and bool(said[1:-1]) and set(said[1:-1]) <= BEEN
        return it and said[-1] in CHANGED

    def answer(self) -> Statement | Unclear | None:
        """The answer that the message is, or the question about it; nothing if it is more than that."""
        said = {i.value for i in self.items if i.role == "cue" and i.name != "corrected"}
        told = said & {"yes", "no", "choice"}
        if said - answers.QUIET - {"yes", "no", "choice"} - ({"level", "levelat", "join"} if told else set()):
            return None
        if self._denies() or (told == {"yes"} and self._is_told_whole()) or self._is_counted_line(told):
            return None
        if "no" in told and "wait" in self.toks.words and any(i.role == "bed" for i in self.items):
            return Unclear(
                slot="kind", text=self.text
            )  # "wait no bed 14 was 817": no answer, or another line
        if "no" in told and any(i.role == "tube" for i in self.items) and self._says("not", "right"):
            return Unclear(slot="kind", text=self.text)
        if "yes" in told and "?" in self.toks.words and answers.numbers(self.items):
            return Unclear(slot="kind", text=self.text)  # "9 640 confirm?"
        if not told and self._says_which_is_right():
            return None
        one = not told and len(answers.numbers(self.items)) == 1
        if one and (word(self.toks, 0) in GOING_ON | HOURLY or self._may_be_a_bed()):
            return Unclear(slot="kind", text=self.text)
        if "yes" in told and self._also_says_no():
            return Unclear(slot="answer", text=self.text, choices=("yes", "no"))
        if self.voice and not told and (self.says_more() or self._may_have_bed()):
            return None
        items = self._answer_items(bool(told))
        if "no" in told and self._may_be_bed(items):
            return Unclear(slot="level_ml", text=self.text, statement=Answered(answer="no"))
        apart = "," in self.toks.words  # "misread, 20"; "i misread 9" may be of that bed
        if any(i.name == "misread" for i in items) and self._may_be_bed(items) and not apart:
            return Unclear(slot="level_ml", text=self.text, statement=Answered(choice="misread"))
        return answers.answered(items, self.arrived, self.text)

    def _is_counted_line(self, told: set[str]) -> bool:
        """ "bed 8 mark 70 at 1130, first line": which of its lines a line told whole is, and no choice."""
        counts = [i for i in answers.cues(self.items, "choice") if i.name in {"first", "second"}]
        beds = [i for i in self.items if i.role == "bed"]
        told_whole = len([i for i in self.items if i.role in {"bed", "num", "time"}]) == WHOLE
        return told == {"choice"} and bool(counts) and len(beds) == 1 and told_whole

    def _also_says_no(self) -> bool:
        """ "yes on 6 no on 7": a yes of one bed and a no of another."""
        first = next((i.start for i in self.items if i.role in {"num", "bed"}), len(self.toks))
        no = next((i for i in self.items if i.role == "repair" and word(self.toks, i.start) == "no"), None)
        return no is not None and first < no.start and word(self.toks, no.end) in {"on", "to", "for", "bed"}

    def _is_told_whole(self) -> bool:
        """ "bed 5 640 at 2100, confirmed": a line told whole before the yes; or thinking aloud."""
        yes = next(i for i in self.items if i.role == "cue" and i.value == "yes")
        before = [i for i in self.items if i.role in {"bed", "num", "time"} and i.start < yes.start]
        timed = sum(i.role == "bed" for i in before) == 1 and len(before) == WHOLE
        return timed or (self.voice and self._is_whole_line())

    def _is_whole_line(self) -> bool:
        """ "bed eleven yeah mark ten ninety five at seven", "yeah, mark 580 in bed 15": thinking aloud."""
        bed = next((i for i in self.items if i.role == "bed"), None)
        numbers = [i for i in self.items if i.role in {"num", "time"}]
        leads = {i.lead for i in numbers if i.role == "num"}
        yes = next(i for i in self.items if i.role == "cue" and i.value == "yes")
        told = "level" in leads or not OF_A_LINE.isdisjoint(w.removesuffix("'s") for w in self.toks.said)
        if bed is None:  # "yeah 39 reads 260 at 1500", but not "yeah reads 260 at 1500"
            first = yes.end + (word(self.toks, yes.end) == ",")
            return told and len(numbers) > 2 and numbers[0].start == first and not numbers[0].lead
        if not numbers:
            return False
        timed = len(numbers) > 1 or bed.start < yes.start < numbers[-1].start
        return told or (timed and "levelat" in leads and any(i.role == "time" or i.at for i in numbers))

    def says_more(self) -> bool:
        """Dictated "and ah and sixty": words that are no part of a bare answer, so that some may be lost."""
        inside = {k for i in self.items for k in range(i.start, i.end)}
        rest = {t.text for k, t in enumerate(self.toks) if k not in inside and t.is_word}
        return bool(rest - HALTING) or any(i.role == "sep" and i.value == "and" for i in self.items)

    def _may_have_bed(self) -> bool:
        """Dictated "1 540": bed 1 with 540, or 1,540?"""
        if any(i.role == "num" and (i.amount or 0) > MOST_ML for i in self.items):
            return True  # "five seven eight oh": bed 5 with 780
        apart = (i.start + 1 for i in self.items if i.role == "num" and i.core == i.start + 2)
        return any(is_digits(self.toks, k) and len(word(self.toks, k)) == LEVEL for k in apart)

    def _may_be_bed(self, items: tuple[Item, ...]) -> bool:
        """ "no 12": a bare number that is also a bed, with no other."""
        nums = [i for i in items if i.role == "num"]
        return (
            len(nums) == 1
            and nums[0].label is not None
            and not nums[0].lead
            and not any(i.role == "bed" for i in items)
        )

    def _may_be_a_bed(self) -> bool:
        """ "5 ok", "noted 5", "17 sorry": a line, or the bed that was seen or meant?"""
        number = next(i for i in self.items if i.role == "num")
        bare = number.label is not None and number.lead in {"", "amount"} and not number.unit
        things = any(i.role == "cue" and i.value == "tubeword" and i.start >= number.end for i in self.items)
        things &= not any(i.unread for i in self.items)
        rest = [i for i in self.items if i is not number]
        more = number.start == 0 and self.says_more() and all(i.unread for i in rest)  # "9 good"
        return bare and (things or more or not SEEN.isdisjoint(self.toks.words))

    def _says_which_is_right(self) -> bool:
        """ "last one is right": which line is, and no side."""
        return any(
            i.role == "tube" and i.name == "right" and word(self.toks, i.start - 1) in {"is", "was", "one's"}
            for i in self.items
        ) and not self.toks.words.isdisjoint({"one", "mark", "line", "reading", "last", "first", "yes", "it"})

    def _says(self, *words: str) -> bool:
        said = [t.text for t in self.toks]
        return any(tuple(said[k : k + len(words)]) == words for k in range(len(said)))

    def _denies(self) -> bool:
        """ "no mark for bed 12", "12 no drain": the "no" is of the word behind it, and no answer."""
        if any(self.toks.said[k : k + 3] == ("o", "/", "n") for k in range(len(self.toks))):
            return True  # "4 60 o/n"
        pairs = pairwise(self.items)
        no, after = next((p for p in pairs if p[0].role == "cue" and p[0].value == "no"), (None, None))
        if no is None or after is None:
            return False
        if after.value == "word" and after.start == no.end and after.name not in DESCRIBING:
            return True  # "9 no tipping"
        named = any(i.role == "bed" or i.label is not None for i in self.items)
        return named and after.role == "cue" and after.value in {"level", "tubeword", "canister"}

    def _answer_items(self, told: bool) -> tuple[Item, ...]:
        kept: list[Item] = []
        for item in self.items:
            after_tube = bool(kept) and kept[-1].role == "tube"
            if item.role == "num" and after_tube and word(self.toks, item.start) == "one":
                continue
            first = told and not any(i.role == "cue" and i.value in {"yes", "no", "choice"} for i in kept)
            named = item.role == "num" and item.label and (first or self._is_yes_to(item, kept))
            timed = (
                item.role == "num"
                and item.lead == "at"
                and (
                    len(item.digits) == 4
                    or (item.spoken_clock and not told)
                    or (item.amount is not None and item.amount <= MOST_HOURS)
                )
                and item.possible(self.arrived)
            )
            kept.append(item.as_role("bed" if named else "time" if timed else item.role))
        return tuple(kept)

    @staticmethod
    def _is_yes_to(item: Item, before: list[Item]) -> bool:
        """ "yes 12", "yes for 12": nobody says yes and a level that small."""
        yes = any(i.role == "cue" and i.value == "yes" for i in before)
        return yes and not item.lead and not item.unit and not any(i.role == "bed" for i in before)
