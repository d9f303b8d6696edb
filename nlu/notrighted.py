"""What was read as a correction, a withdrawal or an answer, and is none, or not quite.

"would've corrected bed 4 to 340 but she says leave it": nothing is put right. "Bed 4 anterior should be 340
not 430, posterior is fine": of one tube. "Transposed it. Bed 4 reads 340": a line beside words of a slip is
read as what it puts right, or asked. Called by `read` with what was read.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace

from .again import Again
from .entered import ENTERED
from .entities import Value, is_recent, values
from .numbers import Toks, is_digits, word
from .patterns.notrighted import (
    ASKED_FIRST,
    COMPARED,
    OF_CORRECTION,
    OF_OTHER_TIME,
    PUT_WRONG,
    RIGHT_ONE,
    SEVERAL,
    UNDONE,
    UNSURE,
    WRONG_ONE,
)
from .puttingright import put_right
from .statements import Answered, Asked, Corrected, Mark, Statement, Unclear, Withdrawn
from .verdict import Outcome, as_a_whole

FINE = frozenset({"fine", "ok", "okay", "right", "correct", "good", "unchanged", "alright", "spot"})
AROUND_PLACE = frozenset(
    {
        "sorry",
        "oops",
        "whoops",
        "it",
        "was",
        "its",
        "it's",
        "one",
        "i",
        "mean",
        "meant",
        "forgot",
        "to",
        "say",
    }
    | {
        "that",
        "that's",
        "thats",
        "didnt",
        "didn't",
        "obviously",
        "apologies",
        "should",
        "have",
        "said",
        "bad",
    }
)
"""Beside a bed these say that it was asked for."""
PLACE = frozenset({"bed", "room", "rm", "the", "in", "for", "on", ",", ".", "!", "a", "b", "my", "'", "s"})
PLACE |= {
    "left",
    "right",
    "tube",
    "drain",
    "side",
    "anterior",
    "posterior",
    "apical",
    "basal",
    "please",
    "pls",
}
POLITE = frozenset(
    {"please", "pls", "plz", "thanks", "thx", "hi", "hey", "hello", "and", "&", "beds", "rooms", "ok"}
)
ASKING = frozenset({"ask", "question", "mark_of_question", "window", "howto"})
"""Cues with which a bed is asked about."""
BELONGING = frozenset({"belongs", "belonged"})
SHORTEST = 3
"""Digits of a line or a time."""


def without_unmade(outcome: Outcome, again: Again) -> Outcome:
    """What was read, with what nobody puts right or confirms asked."""
    if any(not isinstance(s, Corrected | Withdrawn | Answered | Mark | Asked) for s in outcome):
        return outcome
    toks = again.toks
    if again.ward.voice:
        return outcome
    said = " ".join(toks.said[: len(toks)])
    if told := _told_where(outcome, again):
        return told
    if _is_slip(outcome, said):
        return put_right(again) or _asked(outcome, again.text)
    if all(isinstance(s, Mark) for s in outcome) and not toks.words.isdisjoint(ENTERED):
        return put_right(again) or outcome
    if len(outcome) > 1:
        return outcome
    return tuple(_judged(s, said, toks, again) for s in outcome)


def _told_where(outcome: Outcome, again: Again) -> Outcome:
    """ "bed 8, sorry", "it was bed 8 left": an answer, and no question of its last line; with other words
    about it, asked."""
    if not outcome or not all(isinstance(s, Asked) and s.topic == "last" and s.bed for s in outcome):
        return ()
    toks = again.toks
    words = {w for k, w in enumerate(toks.said[: len(toks)]) if not is_digits(toks, k)}
    asking = again.ward.voice or "?" in words or any(c.label in ASKING for c in again.meant.cues)
    if asking or words <= PLACE | POLITE:
        return ()
    said = outcome[0]
    plain = words <= AROUND_PLACE | PLACE | POLITE and len(outcome) == 1
    if isinstance(said, Asked) and plain:
        return (Answered(bed=said.bed, tube=said.tube, spans=said.spans),)
    return tuple(as_a_whole(s, again.text) for s in outcome if isinstance(s, Statement))


def _is_slip(outcome: Sequence[Statement | Unclear], said: str) -> bool:
    """Whether only lines are told beside words of a slip."""
    return all(isinstance(s, Mark) for s in outcome) and PUT_WRONG.search(said) is not None


def _asked(outcome: Outcome, text: str) -> Outcome:
    return tuple(as_a_whole(s, text) if isinstance(s, Statement) else s for s in outcome)


def _judged(said: Statement | Unclear, words: str, toks: Toks, again: Again) -> Statement | Unclear:
    match said:
        case Corrected() if UNDONE.search(words) or COMPARED.search(words) or word(toks, 0) in ASKED_FIRST:
            return as_a_whole(said, again.text)
        case Withdrawn() if UNDONE.search(words) or OF_CORRECTION.search(words) or SEVERAL.search(words):
            return as_a_whole(said, again.text)
        case Corrected() if said.to_at is not None and OF_OTHER_TIME.search(words):
            return as_a_whole(said, again.text)
        case Corrected() if _is_taken_back(said, toks) or _leaves_out(said, again):
            return as_a_whole(said, again.text)
        case Corrected() | Answered() if _is_the_wrong_one(said, toks):
            return Unclear(slot="level_ml", text=again.text, statement=replace(said, level_ml=None))
        case Answered() if said.choice == "misread" and said.at and said.bed and said.level_ml is not None:
            return Corrected(
                bed=said.bed, tube=said.tube, at=said.at, level_ml=said.level_ml, spans=said.spans
            )
        case Corrected() if RIGHT_ONE.search(words) and (asked := _side_or_so(said, toks, again.text)):
            return asked
        case Corrected() if said.to_tube is not None and said.level_ml is not None:
            return replace(said, to_tube=None) if _is_fine(said.to_tube, toks) else said
        case Answered() if UNSURE.search(words) or (word(toks, 0) in ASKED_FIRST | {"was"} and said.at):
            return as_a_whole(said, again.text)
        case Answered() if said.at == again.ward.arrived and (said.answer or said.choice):
            return replace(said, at=None)  # "yeah bed 9 it is right, dr is at the bedside now"
        case Answered() if said.tube == "right" and said.choice and _is_what_is_right(toks):
            return replace(said, tube=None)
        case Answered() if said.level_ml is not None and _may_be_another(said, toks):
            return Unclear(slot="kind", text=again.text)
        case Corrected() if said.level_ml is not None and _may_be_its_time(said, again):
            return Unclear(slot="at", text=again.text, statement=replace(said, level_ml=None))
    return said


def _is_the_wrong_one(said: Corrected | Answered, toks: Toks) -> bool:
    """ "fix the 640 on bed 4", "bed 4 shouldnt be 640", "bed 4 640 incorrect": what is right is not told."""
    if said.level_ml is None or getattr(said, "was_ml", None) is not None:
        return False
    words = ["#" if w == str(said.level_ml) else w for w in toks.said[: len(toks)]]
    if isinstance(said, Answered) and said.answer == "no":
        return words[-1] in {"incorrect", "wrong"} and words[0] not in {"no", "nope", "nah"}
    return WRONG_ONE.search(" ".join(words)) is not None


def _is_taken_back(said: Corrected, toks: Toks) -> bool:
    """ "please remove bed 10 1059, it belongs to another ward": nothing that is right is told."""
    righted = (said.to_bed, said.to_tube, said.to_at, said.was_ml)
    return all(each is None for each in righted) and not toks.words.isdisjoint(BELONGING)


def _leaves_out(said: Corrected, again: Again) -> bool:
    """ "bed 4 1855 should be under right not left": whether what may be its time is in no slot."""
    told = {said.bed, said.to_bed, said.tube, said.to_tube, str(said.was_ml), str(said.level_ml)}
    times = {at.strftime("%H:%M") for at in (said.at, said.to_at) if at is not None}
    return any(
        len(value.text) >= SHORTEST
        and value.text.lstrip("0") not in told
        and not (value.at is not None and value.at.strftime("%H:%M") in times)
        for value in values(again) or ()
        if value.sort == "num" and value.at is not None and not _is_let_be(value, again.toks)
    )


def _is_let_be(value: Value, toks: Toks) -> bool:
    """ "the 1500 is fine"."""
    return word(toks, value.end) in {"is", "was"} and word(toks, value.end + 1) in FINE


def _side_or_so(said: Corrected, toks: Toks, text: str) -> Statement | Unclear | None:
    """ "wrong column, right one is 340": right, and no side; "the right is 340, I put 430": either."""
    if "left" in toks.words or said.to_tube is not None or said.level_ml is None:
        return None
    if said.tube == "right" and "wrong" in toks.words:
        return replace(said, tube=None)
    bare = said.tube in {None, "right"} and any(
        word(toks, k) == "the" and word(toks, k + 1) == "right" and word(toks, k + 2) in {"is", "was"}
        for k in range(len(toks))
    )
    return Unclear(slot="tube", text=text, statement=said) if bare and "wrong" not in toks.words else None


def _is_what_is_right(toks: Toks) -> bool:
    """ "the second one is the right one": no side."""
    places = [k for k, w in enumerate(toks.said[: len(toks)]) if w == "right"]
    return all(word(toks, k - 1 - (word(toks, k - 1) == "the")) in {"is", "was", "one's"} for k in places)


def _may_be_another(said: Answered, toks: Toks) -> bool:
    """ "it was for 7", "the A one": a bed or a tube, and no level."""
    places = [k for k in range(len(toks)) if is_digits(toks, k)]
    if not places:
        return said.level_ml == 1 and "one" in toks.words
    return len(places) == 1 and word(toks, places[0] - 1) in {"for", "in", "on", "under"}


def _may_be_its_time(said: Corrected, again: Again) -> bool:
    """ "that was 1832" at 1841: the level, or when it was read?"""
    if said.bed or said.was_ml is not None or said.at or said.to_bed or said.to_tube or said.tube:
        return False
    found = [v for v in values(again) or () if v.sort == "num"]
    return len(found) == 1 and is_recent(found[0], again.ward.arrived, 2) and not found[0].unit


def _is_fine(tube: str, toks: Toks) -> bool:
    """ "posterior is fine as it stands": nothing of that tube is put right."""
    words = toks.said[: len(toks)]
    return any(
        words[k] == tube and words[k + 1] in {"is", "was"} and words[k + 2] in FINE
        for k in range(len(words) - 2)
    )
