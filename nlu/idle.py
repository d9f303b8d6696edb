"""Cues in a remark that is of nothing of ours: "hang on a second", "nice and easy to read for a change".

Beside a line a word asks, answers or puts right only in a stretch of words that does so: a question has the
form of one, a correction says what is put right, a choice stands alone. Elsewhere it is a word of a remark,
and the line beside it stays what it is. Called by `recast`, last.
"""

from __future__ import annotations

from collections.abc import Callable, Mapping
from typing import NamedTuple

from .lengths import length
from .neighbours import phrase_of
from .numbers import Toks, is_digits, is_inside_number, starts_number, word
from .patterns.background import HIMSELF, SPEAKER
from .patterns.clockwords import AGO
from .patterns.idle import (
    ASKING,
    AUXILIARY,
    IDIOMS,
    INTENSIFIED,
    LITTLE,
    NEEDING,
    OBJECTS,
    OF_A_LAST,
    OF_SOMEBODY,
    OF_TIME,
    OPENING,
    OTHER_THINGS,
    OTHERS_BEHIND_LEFT,
    SAME_THINGS,
    SORE,
    SUBJECTS,
    TAKEN,
    WANTING,
    WEAK,
)
from .patterns.leads import BED_WORDS, LINES
from .pipeline import Cue

STOPS = frozenset({".", ",", ";", "!", "?", ":", "-", "(", ")", "\n"})
JOINTS = frozenset({"and", "but", "so", "because"})
NAMES = frozenset({"first", "second"})
SILENT = frozenset({"filler", "word", "other", "okay", "neg", "nothing", "no", "plan", "order", "about"})
"""Labels of cues whose words are no more than words here."""
FEWEST = 2
"""Numbers of a line: its bed and its level."""
FAR = 4
"""Words before and behind a cue that an idiom may have."""
OF_UNIT = frozenset({"open", "beds", "me", "repeat"})
"""Topics that are of no bed: beside a line they are asked in so many words."""


class Stretch(NamedTuple):
    """Words between stops and figures, and whether figures stand right before or behind them."""

    start: int
    end: int
    behind_figures: bool
    before_figures: bool


def without_idle(
    cues: tuple[Cue, ...], toks: Toks, labelled: Mapping[int, tuple[int, str]]
) -> tuple[Cue, ...]:
    """The cues, those of a remark beside figures as words of it."""
    looked_at = [cue for cue in cues if _look(cue) is not None]
    if not looked_at or not _has_figures(toks, labelled):
        return cues
    taken = {k for cue in cues if cue.label not in SILENT for k in range(cue.start, cue.end)}
    idle = {cue.start for cue in looked_at if _is_idle(cue, _stretch(cue, toks, labelled), toks, taken)}
    righted = {cue.start for cue in cues if cue.value == "corrected"}
    if not righted <= idle:
        idle -= righted  # "correct bed 13 1800 to 1150, i read the wrong column"
    if not idle:
        return cues
    return tuple(_as_word(cue, toks) if cue.start in idle else cue for cue in cues)


def _as_word(cue: Cue, toks: Toks) -> Cue:
    said = phrase_of(cue, toks)
    return Cue("filler" if said == "that was" else "word", said, cue.start, cue.end)


def _has_figures(toks: Toks, labelled: Mapping[int, tuple[int, str]]) -> bool:
    numbers = sum(starts_number(toks, k) and word(toks, k) not in LITTLE for k in range(len(toks)))
    return numbers + len(labelled) >= FEWEST


def _stretch(cue: Cue, toks: Toks, labelled: Mapping[int, tuple[int, str]]) -> Stretch:
    """The words around a cue, up to a stop, a number, or the words that begin a line."""
    inside = {k for start, (end, _) in labelled.items() for k in range(start, end)}
    start, end = cue.start, cue.end
    while start and not _ends(toks, start - 1, inside):
        start -= 1
    while end < len(toks) and not (_ends(toks, end, inside) or _begins_line(toks, end, inside)):
        end += 1
    before = start > 0 and _is_figure(toks, start - 1, inside)
    return Stretch(start, end, before, end < len(toks) and not _is_stop(toks, end))


def _is_stop(toks: Toks, k: int) -> bool:
    return word(toks, k) in STOPS | JOINTS and not is_inside_number(toks, k)


def _is_figure(toks: Toks, k: int, inside: set[int]) -> bool:
    return k in inside or is_digits(toks, k) or (starts_number(toks, k) and word(toks, k) not in LITTLE)


def _ends(toks: Toks, k: int, inside: set[int]) -> bool:
    return _is_stop(toks, k) or _is_figure(toks, k, inside)


def _begins_line(toks: Toks, k: int, inside: set[int]) -> bool:
    """ "bed 4", "the line for bed nine is", "line in 5"."""
    said = word(toks, k)
    if said in BED_WORDS:
        return _is_figure(toks, k + 1, inside)
    j = k + (said in {"the", "new"})
    if word(toks, j) not in LINES:
        return False
    near = (j + 1, j + 2, j + 3)
    return any(_is_figure(toks, n, inside) for n in near if n < len(toks))


def _is_idle(cue: Cue, stretch: Stretch, toks: Toks, taken: set[int]) -> bool:
    look = _look(cue)
    return _is_idiom(cue, toks) or (look is not None and look(cue, stretch, toks, taken))


def _is_idiom(cue: Cue, toks: Toks) -> bool:
    """ "in full swing", "at any rate": of nothing here, whatever stands beside it."""
    said = toks.said
    return any(
        said[k : k + len(idiom)] == idiom and k < cue.end and k + len(idiom) > cue.start
        for k in range(max(0, cue.start - FAR), cue.end)
        for idiom in IDIOMS
    )


def _opens(stretch: Stretch, toks: Toks) -> bool:
    """Whether it stands apart from the figures before it, or begins with a subject of its own."""
    return not stretch.behind_figures or word(toks, stretch.start) in OPENING | HIMSELF | SPEAKER


def _strange(cue: Cue, stretch: Stretch, toks: Toks, taken: set[int]) -> list[str]:
    """The words around a cue that say something, and nothing of ours."""
    del cue
    return [
        word(toks, k)
        for k in range(stretch.start, stretch.end)
        if k not in taken and word(toks, k) not in LITTLE and word(toks, k)[0].isalpha()
    ]


def _adjoins(cue: Cue, stretch: Stretch, toks: Toks) -> bool:
    """ "change bed 12", "12 340 wrong": whether only little words part it from figures."""
    behind = stretch.before_figures and all(word(toks, k) in LITTLE for k in range(cue.end, stretch.end))
    before = stretch.behind_figures and all(word(toks, k) in LITTLE for k in range(stretch.start, cue.start))
    return behind or before


def _correction(cue: Cue, stretch: Stretch, toks: Toks, taken: set[int]) -> bool:
    """ "for a change", "he's actually asleep": nothing is put right there."""
    said = phrase_of(cue, toks)
    if said == "that was":
        return _is_ago(cue.end, toks)
    if said not in WEAK:
        return False
    if said == "change" and word(toks, cue.start - 1) == "a" and word(toks, cue.start - 2) not in NEEDING:
        return True
    if said == "wrong" and not _is_of_another(cue, stretch, toks, taken):
        return False
    if _objects(stretch, toks) or _adjoins(cue, stretch, toks) or not _opens(stretch, toks):
        return False
    return bool(_strange(cue, stretch, toks, taken))


def _is_ago(k: int, toks: Toks) -> bool:
    """ "that was 45 minutes ago, bed 12 line 410": when it was, and nothing that was wrong."""
    end, minutes = length(toks, k)
    return minutes is not None and word(toks, end) in AGO


def _is_of_another(cue: Cue, stretch: Stretch, toks: Toks, taken: set[int]) -> bool:
    """ "wrong door", "nothing wrong with him"; "clocks wrong" may be of the time."""
    noun = cue.end < stretch.end and cue.end not in taken and word(toks, cue.end) not in LITTLE
    return noun or word(toks, cue.start - 1) in {"nothing", "what", "anything"}


def _objects(stretch: Stretch, toks: Toks) -> bool:
    """Whether something of a line is named there; "this thing", "that lot" are none."""
    return any(
        word(toks, k) in OBJECTS
        and (word(toks, k) not in {"this", "that"} or word(toks, k + 1) in OBJECTS | LITTLE | STOPS | {""})
        for k in range(stretch.start, stretch.end)
    )


def _choice(cue: Cue, stretch: Stretch, toks: Toks, taken: set[int]) -> bool:
    """ "hang on a second", "first night here": of nothing that was asked."""
    if cue.value not in NAMES:
        return False
    return word(toks, cue.start - 1) == "a" or bool(_strange(cue, stretch, toks, taken))


def _answer(cue: Cue, stretch: Stretch, toks: Toks, taken: set[int]) -> bool:
    """ "yeah no worries", "yes I'm fine": nothing that was asked is answered."""
    adjoins = stretch.before_figures and all(word(toks, k) in LITTLE for k in range(cue.end, stretch.end))
    if adjoins or _objects(stretch, toks):
        return False
    return bool(_strange(cue, stretch, toks, taken))


def _ask(cue: Cue, stretch: Stretch, toks: Toks, taken: set[int]) -> bool:
    """ "asleep at last", "report given", "I've charted the rest": nothing is asked."""
    if word(toks, cue.start - 1) == "at" and phrase_of(cue, toks) == "last":
        return word(toks, cue.end) not in OF_A_LAST and not is_digits(toks, cue.end)
    if cue.value == "last" and word(toks, cue.end) in OF_TIME:
        return False
    if stretch.before_figures and all(word(toks, k) in LITTLE for k in range(cue.end, stretch.end)):
        return False
    if word(toks, stretch.end) == "?" or not _opens(stretch, toks):
        return False
    offered = cue.value in OF_UNIT and word(toks, cue.start) == "any"  # "any questions just ask"
    if _has_form_of_question(stretch, toks) and not offered:
        return False
    if not WANTING.isdisjoint(toks.said[stretch.start : stretch.end]):
        return False
    return (cue.value in OF_UNIT and not offered) or bool(_strange(cue, stretch, toks, taken))


def _has_form_of_question(stretch: Stretch, toks: Toks) -> bool:
    """Whether it begins as a question or asks us to do something: "what's ...", "is he ...", "show me"."""
    k = stretch.start
    while k < stretch.end and word(toks, k) in LITTLE - ASKING - AUXILIARY:
        k += 1
    if word(toks, k) in AUXILIARY:
        return word(toks, k + 1) in SUBJECTS or starts_number(toks, k + 1)
    return word(toks, k) in ASKING


def _question(cue: Cue, stretch: Stretch, toks: Toks, taken: set[int]) -> bool:
    """ "did ever so well", "she did her best": who did it is known, and nothing is asked."""
    del taken
    if word(toks, cue.start) not in AUXILIARY or cue.end - cue.start > 1 or word(toks, stretch.end) == "?":
        return False
    if ASKING.intersection(toks.said[stretch.start : stretch.end]):
        return False
    told = word(toks, cue.start - 1) in HIMSELF | SPEAKER and cue.start > stretch.start
    begins = cue.start == stretch.start and cue.end < stretch.end
    return told or (begins and word(toks, cue.end) not in SUBJECTS)


def _kind(cue: Cue, stretch: Stretch, toks: Toks, taken: set[int]) -> bool:
    """ "his back is sore", "out for the count", "back into bed": nobody comes or goes."""
    if cue.value == "corrected":
        return _correction(cue, stretch, toks, taken)
    if cue.value != "back" or word(toks, cue.end - 1) != "back":
        return False
    body = word(toks, cue.start - 1) in OF_SOMEBODY and not SORE.isdisjoint(toks.said[cue.end : cue.end + 2])
    into = word(toks, cue.end) in {"into", "in", "to"} and word(toks, cue.end + 1) == "bed"
    from_somewhere = "from" in toks.said[stretch.start : stretch.end]
    return body or (into and not from_somewhere and not starts_number(toks, cue.end + 2))


def _reason(cue: Cue, stretch: Stretch, toks: Toks, taken: set[int]) -> bool:
    """ "cardiac diet ordered", "new grad on peds cardiac": of another thing, or where somebody works."""
    del taken
    if word(toks, cue.end) in OTHER_THINGS:
        return True
    k = cue.start - 1
    while word(toks, k) in {"peds", "paeds", "the", "our", "adult"}:
        k -= 1
    works = word(toks, k) in {"on", "in", "at"} and not OF_SOMEBODY.isdisjoint(
        toks.said[cue.end : stretch.end]
    )
    return works or (word(toks, cue.start - 1) in {"hot", "fresh"} and phrase_of(cue, toks) == "air")


def _fluid(cue: Cue, stretch: Stretch, toks: Toks, taken: set[int]) -> bool:
    """ "bloody freezing in here", "blood taken": of no fluid in a drain."""
    del stretch, taken
    behind = word(toks, cue.end)
    said = phrase_of(cue, toks)
    return (said == "bloody" and behind in INTENSIFIED) or (said == "blood" and behind in TAKEN)


def _side(cue: Cue, stretch: Stretch, toks: Toks, taken: set[int]) -> bool:
    """ "left my pen at the desk": what somebody did."""
    del stretch, taken
    return phrase_of(cue, toks) == "left" and word(toks, cue.end) in OTHERS_BEHIND_LEFT


def _closing(cue: Cue, stretch: Stretch, toks: Toks, taken: set[int]) -> bool:
    """ "the change of shift was chaos": what it was like, and no line that closes it."""
    del taken
    return word(toks, cue.end) in {"was", "is"} and not stretch.before_figures


def _same(cue: Cue, stretch: Stretch, toks: Toks, taken: set[int]) -> bool:
    """ "with the same tube in place": which one it is, and not that nothing came."""
    del stretch, taken
    return phrase_of(cue, toks) in {"same", "the same"} and word(toks, cue.end) in SAME_THINGS


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
    "what": _nothing,
    "same": _same,
    "tidal": _nothing,
    "out": _nothing,
    "output": _nothing,
    "reason": _reason,
    "fluid": _fluid,
    "side": _side,
    "closing": _closing,
}
