"""Cues in a remark that is of nothing of ours: "hang on a second", "nice and easy to read for a change".

Beside a line a word asks, answers or puts right only in a stretch of words that does so: a question has the
form of one, a correction says what is put right, a choice stands alone. Elsewhere it is a word of a remark,
and the line beside it stays what it is. Called by `recast`, last.
"""

from __future__ import annotations

from collections.abc import Callable, Mapping

from .idleevents import closing, fluid, is_going, leak, reason, same, side, what
from .lengths import length
from .neighbours import phrase_of
from .numbers import Toks, is_digits, starts_number, word
from .patterns.asides import RELATIVES
from .patterns.clockwords import AGO
from .patterns.elsedoubts import MAY, NAMED
from .patterns.idle import (
    ASKING,
    AUXILIARY,
    IDIOMS,
    LITTLE,
    NEEDING,
    OBJECTS,
    OF_A_LAST,
    OF_TIME,
    SUBJECTS,
    TURNING,
    WANTING,
    WEAK,
)
from .patterns.leads import BED_SAID
from .patterns.ownclauses import HIMSELF, SPEAKER
from .pipeline import Cue
from .stretches import Stretch, adjoins, has_noun, objects, opens, strange, stretch_of

NAMES = frozenset({"first", "second"})
SILENT = frozenset({"filler", "word", "other", "okay", "neg", "nothing", "no", "plan", "order", "about"})
"""Labels of cues whose words are no more than words here."""
FEWEST = 2
"""Numbers of a line: its bed and its level."""
FAR = 4
"""Words before and behind a cue that an idiom may have."""
CERTAIN = frozenset(
    {"%", "percent", "pretty", "quite", "fairly", "very", "absolutely", "totally", "i'm", "im", "am", "dead"}
)
POINTED = frozenset({"it's", "its", "that's", "thats", "was", "see", "depends"})
"""Behind these what, how and who ask nothing: "that's what was on the sheet", "to see how he goes"."""
OF_THINGS = frozenset({"wrong", "was wrong", "is wrong", "error", "wrong number", "wrong time"})
FILLING = frozenset({"getting", "nearly", "almost", "close"})
OF_UNIT = frozenset({"open", "beds", "me", "repeat"})
"""Topics that are of no bed: beside a line they are asked in so many words."""


def without_idle(
    cues: tuple[Cue, ...], toks: Toks, labelled: Mapping[int, tuple[int, str]]
) -> tuple[Cue, ...]:
    """The cues, those of a remark beside figures as words of it."""
    looked_at = [cue for cue in cues if _look(cue) is not None]
    if not looked_at or not _has_figures(toks, labelled):
        return cues
    taken = {k for cue in cues if cue.label not in SILENT for k in range(cue.start, cue.end)}
    idle = {cue.start for cue in looked_at if _is_idle(cue, stretch_of(cue, toks, labelled), toks, taken)}
    righted = {cue.start for cue in cues if cue.value == "corrected"}
    if not righted <= idle:
        idle -= righted  # "correct bed 13 1800 to 1150, i read the wrong column"
    if not idle:
        return cues
    return tuple(_as_word(cue, toks) if cue.start in idle else cue for cue in cues)


def _as_word(cue: Cue, toks: Toks) -> Cue:
    said = phrase_of(cue, toks)
    silent = said == "that was" or cue.value == "capacity"
    return Cue("filler" if silent else "word", said, cue.start, cue.end)


def _has_figures(toks: Toks, labelled: Mapping[int, tuple[int, str]]) -> bool:
    numbers = sum(starts_number(toks, k) and word(toks, k) not in LITTLE for k in range(len(toks)))
    return numbers + len(labelled) >= FEWEST


def _is_idle(cue: Cue, stretch: Stretch, toks: Toks, taken: set[int]) -> bool:
    look = _look(cue)
    return _is_idiom(cue, toks) or (look is not None and look(cue, stretch, toks, taken))


def _is_idiom(cue: Cue, toks: Toks) -> bool:
    """ "in full swing", "at any rate": of nothing here, whatever stands beside it."""
    said = toks.said
    return any(
        said[k : k + len(idiom)] == idiom and k + len(idiom) > cue.start
        for k in range(max(0, cue.start - FAR), cue.end)
        for idiom in IDIOMS.get(said[k], ())
    )


def _correction(cue: Cue, stretch: Stretch, toks: Toks, taken: set[int]) -> bool:
    """ "for a change", "he's actually asleep": nothing is put right there."""
    said = phrase_of(cue, toks)
    if said == "that was":
        return _is_ago(cue.end, toks)
    if said not in WEAK | OF_THINGS:
        return False
    if said == "change" and word(toks, cue.start - 1) == "a" and word(toks, cue.start - 2) not in NEEDING:
        return True
    if said == "change" and (word(toks, cue.end) in TURNING or _is_of_either(cue, toks)):
        return True
    if said in OF_THINGS and _is_of_other_thing(cue, stretch, toks):
        return True
    if said == "wrong" and not _is_of_another(cue, stretch, toks, taken):
        return False
    apart = opens(stretch, toks) or has_noun(cue, stretch, toks, taken)
    if objects(stretch, toks) or adjoins(cue, stretch, toks) or not apart:
        return False
    return bool(strange(cue, stretch, toks, taken))


def _is_of_other_thing(cue: Cue, stretch: Stretch, toks: Toks) -> bool:
    """ "lunch was wrong again", "wrong number for the son", "glucometer reading error": nothing of ours."""
    own = {word(toks, k) for k in range(stretch.start, stretch.end) if not cue.start <= k < cue.end}
    apart = not (stretch.behind_figures or stretch.before_figures)
    ours = (OBJECTS - {"again", "reading", "number"}) | MAY | {"says", "said", "thinks", "by"}
    return apart and bool(own & (NAMED | RELATIVES)) and own.isdisjoint(ours)


def _is_of_either(cue: Cue, toks: Toks) -> bool:
    """ "19 chg - 1890": a line that is changed, or the old one's of a canister?"""
    ends = cue.end + 2 == len(toks) and is_digits(toks, cue.end + 1)
    return is_digits(toks, cue.start - 1) and word(toks, cue.end) == "-" and ends


def _is_ago(k: int, toks: Toks) -> bool:
    """ "that was 45 minutes ago, bed 12 line 410": when it was, and nothing that was wrong."""
    end, minutes = length(toks, k)
    return minutes is not None and word(toks, end) in AGO


def _is_of_another(cue: Cue, stretch: Stretch, toks: Toks, taken: set[int]) -> bool:
    """ "wrong door", "nothing wrong with him"; "clocks wrong" may be of the time."""
    nothing = word(toks, cue.start - 1) in {"nothing", "what", "anything"}
    return nothing or has_noun(cue, stretch, toks, taken)


def _choice(cue: Cue, stretch: Stretch, toks: Toks, taken: set[int]) -> bool:
    """ "hang on a second", "first night here": of nothing that was asked."""
    if cue.value not in NAMES:
        return False
    return word(toks, cue.start - 1) == "a" or bool(strange(cue, stretch, toks, taken))


def _answer(cue: Cue, stretch: Stretch, toks: Toks, taken: set[int]) -> bool:
    """ "yeah no worries", "yes I'm fine": nothing that was asked is answered."""
    if word(toks, cue.end - 1) == "sure" and word(toks, cue.start - 1) in CERTAIN:
        return True  # "100% sure, bed 8 reads 145"
    adjoins = stretch.before_figures and all(word(toks, k) in LITTLE for k in range(cue.end, stretch.end))
    if adjoins or objects(stretch, toks):
        return False
    return bool(strange(cue, stretch, toks, taken))


def _ask(cue: Cue, stretch: Stretch, toks: Toks, taken: set[int]) -> bool:
    """ "asleep at last", "report given", "I've charted the rest": nothing is asked."""
    if cue.value == "capacity" and _is_told_of_room(cue, stretch, toks):
        return True
    if word(toks, cue.start - 1) == "at" and phrase_of(cue, toks) == "last":
        return word(toks, cue.end) not in OF_A_LAST and not is_digits(toks, cue.end)
    if cue.value == "last" and word(toks, cue.end) in OF_TIME:
        return False
    if stretch.before_figures and all(word(toks, k) in LITTLE for k in range(cue.end, stretch.end)):
        return False
    if word(toks, stretch.end) == "?" or not opens(stretch, toks):
        return False
    offered = cue.value in OF_UNIT and word(toks, cue.start) == "any"  # "any questions just ask"
    if _has_form_of_question(stretch, toks) and not offered:
        return False
    if not WANTING.isdisjoint(toks.said[stretch.start : stretch.end]):
        return False
    return (cue.value in OF_UNIT and not offered) or bool(strange(cue, stretch, toks, taken))


def _is_told_of_room(cue: Cue, stretch: Stretch, toks: Toks) -> bool:
    """ "12 455 at 1806, getting close to full": told beside a line, and not asked."""
    told = word(toks, cue.start) in FILLING and (cue.start == stretch.start or stretch.behind_figures)
    whole = sum(is_digits(toks, k) for k in range(cue.start)) > FEWEST
    return told and whole and word(toks, stretch.end) != "?"


def _has_form_of_question(stretch: Stretch, toks: Toks) -> bool:
    """Whether it begins as a question or asks us to do something: "what's ...", "is he ...", "show me"."""
    k = stretch.start
    while k < stretch.end and word(toks, k) in LITTLE - ASKING - AUXILIARY:
        k += 1
    if word(toks, k - 1) in POINTED and k > stretch.start:
        return False  # "it's what was scribbled on the handover sheet"
    if word(toks, k) in AUXILIARY:
        return word(toks, k + 1) in SUBJECTS or starts_number(toks, k + 1)
    return word(toks, k) in ASKING or word(toks, k + 1) == "me"  # "chart me 12A for this shift"


def _question(cue: Cue, stretch: Stretch, toks: Toks, taken: set[int]) -> bool:
    """ "did ever so well", "she did her best": who did it is known, and nothing is asked."""
    del taken
    if _is_joined(cue, stretch, toks):
        return True
    if word(toks, cue.start) not in AUXILIARY or cue.end - cue.start > 1 or word(toks, stretch.end) == "?":
        return False
    if ASKING.intersection(toks.said[stretch.start : stretch.end]):
        return False
    told = word(toks, cue.start - 1) in HIMSELF | SPEAKER and cue.start > stretch.start
    begins = cue.start == stretch.start and cue.end < stretch.end
    return told or (begins and word(toks, cue.end) not in SUBJECTS and not starts_number(toks, cue.end))


def _is_joined(cue: Cue, stretch: Stretch, toks: Toks) -> bool:
    """ "by accident when housekeeping unplugged things", "it's what was on the sheet", "see how he goes"."""
    first, before, behind = word(toks, cue.start), word(toks, cue.start - 1), word(toks, cue.end)
    if word(toks, stretch.end) == "?" or cue.start == stretch.start or first not in ASKING:
        return False
    if before in POINTED:
        return True
    told = [w for w in toks.said[stretch.start : cue.start] if w not in LITTLE]
    if not told or ASKING.intersection(told) or not (WANTING - {"wants"}).isdisjoint(told):
        return False
    if first == "when" and cue.start + 1 == cue.end < stretch.end:
        return behind not in AUXILIARY and behind not in BED_SAID and not starts_number(toks, cue.end)
    return False


def _kind(cue: Cue, stretch: Stretch, toks: Toks, taken: set[int]) -> bool:
    if cue.value == "corrected":
        return _correction(cue, stretch, toks, taken)
    if cue.value == "withdrawn" and word(toks, cue.end) in {"my", "the", "that", "our"}:
        return False  # "changed mind ignore my 0110 reading"
    return is_going(cue, stretch, toks, taken)


def _nothing(cue: Cue, stretch: Stretch, toks: Toks, taken: set[int]) -> bool:
    """What only an idiom makes a word of a remark."""
    del cue, stretch, toks, taken
    return False


def _look(cue: Cue) -> Callable[[Cue, Stretch, Toks, set[int]], bool] | None:
    return LOOKED_AT.get(cue.label)


LOOKED_AT: Mapping[str, Callable[[Cue, Stretch, Toks, set[int]], bool]] = {
    "choice": _choice,
    "yes": _answer,
    "ask": _ask,
    "question": _question,
    "kind": _kind,
    "what": what,
    "same": same,
    "tidal": _nothing,
    "leak": leak,
    "no": _nothing,
    "out": _nothing,
    "output": _nothing,
    "reason": reason,
    "fluid": fluid,
    "side": side,
    "closing": closing,
}
