"""Cues of a plain line and of the remark beside it: what its bed "says", who goes home.

Called by `recast`; `whenread` has when it was read.
"""

from __future__ import annotations

from collections.abc import Container, Iterator, Mapping

from .beside import WATER_SEALS
from .clock import clocks
from .followers import CALLED
from .items import FULL_HOUR
from .lengths import length
from .neighbours import number_follows, phrase_of
from .numbers import Toks, glued, is_digits, starts_number, word
from .patterns.asides import STAFF, THINGS
from .patterns.clockwords import HOUR_WORDS
from .patterns.leads import LINES, OF_BED, TELLS
from .patterns.levels import VOLUMES
from .patterns.numerals import HOMOPHONES, NUMERALS
from .patterns.ownclauses import DOUBTFUL
from .pipeline import Cue, in_order
from .readthen import (
    AT,
    BED_WORDS,
    BEFORE_BED,
    LABEL_DIGITS,
    LONGEST_LABEL,
    MOST_OF_TIME,
    STOPS,
    follows_bed,
    has_time,
    is_fallen_on,
    is_marking,
    is_of_bed_read,
    is_particle,
    is_whole_clock,
    of_chest,
    was_at_time,
)
from .whenread import when_read

ENDS = frozenset({"", ".", ",", ";", "!", "-", "now", "everyone", "all", "folks", "guys", "team", "then"})
CANNOT = frozenset({"can't", "cant", "cannot", "couldn't", "couldnt", "unable to"})
SEEING = frozenset({"see", "read", "get", "reach", "find", "bend", "kneel", "crouch", "look", "turn"})
ENDING_CLAUSE = frozenset({".", ",", ";", "!", "?", "-", "(", ")"})
OF_WHOM = frozenset(
    {"mr", "mrs", "ms", "miss", "yesterday", "before", "then", "earlier", "for", "from", "on", "in"}
)
OF_WHOM |= {"at", "me", "him", "her", "mine", "his", "hers"}
"""Behind "that was" these may say whose a line is, or of when."""
DOUBTS = frozenset({"right", "sure", "correct", "or", "if", "whether", "not", "no", "true"})
PAPER = frozenset({"paper", "chart", "sheet", "flowsheet", "board", "whiteboard", "note", "notes", "report"})
"""What a number stands on that somebody else wrote."""
DID = frozenset({"did", "done", "took", "drew", "marked"})
THINKING = frozenset({"uh", "um", "alright", "right"})
LATELY = frozenset({"last", "past"})
NO_AMOUNT = BED_WORDS | frozenset(
    {
        "",
        "up",
        "by",
        "of",
        "from",
        "on",
        "in",
        "at",
        "level",
        "line",
        "mark",
        "was",
        "is",
        "over",
        "than",
        "down",
    }
)
"""Before a number these say that it is no amount of the last hour."""
TELLING = frozenset(
    {"amount", "output", "old", "ask", "level", "levelat", "other", "seal", "suction", "wall"}
)
SCORE = 10
"""A patient says how bad it is, from nought to ten."""
RISING = frozenset(
    {"got", "gets", "get", "getting", "stood", "sat", "sits", "woke", "him", "her", "went", "jumped"}
)
A = frozenset({"a", "an", "quite", "such", "hard", "easy", "quick", "fun"})
"""Behind "that was" these put nothing right."""
ENDING = frozenset({"finished", "finishes", "finishing", "ended", "ends", "ending", "finish", "end"})
SOME = frozenset({"a", "any", "much"})
MOST_OF_WHO = 4
"""Words before "says", at most: "the night shift tech"."""
LINED = frozenset({"level", "closing"})
SUMMED = frozenset({"comes to", "came to", "come to"})
HOME = frozenset({"me", "me's", "i'm", "im"})
OF_NURSES = frozenset({"my", "next", "rest", "others", "lunch", "dinner", "supper", "tea", "coffee", "break"})
"""Behind "off to" these are where a nurse goes, and no patient."""
LYING = frozenset(
    {"comfortable", "comfy", "lying", "laying", "turned", "resting", "asleep", "sleeping", "rolled"}
    | {"positioned", "repositioned", "nursed", "propped", "him", "her", "sleeps", "rests", "over", "settled"}
)
ANYBODY = frozenset({"anyone", "anybody", "someone", "somebody", "else", "you", "u"})
"""Whoever asks whether these have seen something has seen no notice."""
SEALS = frozenset({"seal", "ws", "waterseal"})
SEALED = frozenset({"", ",", ".", ";", "and"})
OFF = frozenset({"away", "off", "out", "gone", "done", "finished", "home"})


def plainly(cues: tuple[Cue, ...], toks: Toks, labelled: Mapping[int, tuple[int, str]]) -> tuple[Cue, ...]:
    """The cues, those of a plain line and of a farewell as they are meant."""
    cues = when_read(cues, toks, labelled)
    found = [meant for cue in cues for meant in ((cue,) if cue.label == "bed" else _meant(cue, cues, toks))]
    for hindered in [c for c in cues if c.label == "neg" and _is_hindered(c, cues, toks)]:
        end = _end_of_clause(hindered, toks)
        found = [c for c in found if not hindered.start <= c.start < end]
        found.append(Cue("filler", "", hindered.start, end))
    if not LATELY.isdisjoint(toks.words):
        found = list(_in_the_last(found, toks))
    if "without" in toks.words:
        found += _without(found, toks)
    if "says" in toks.words:
        found = _on_whose_word(found, toks)
        taken = {k for cue in found for k in range(cue.start, cue.end)}
        ends = {end for end, _ in labelled.values()}
        found += [c for c in _said(toks, ends) if c.start not in taken]
    if "na" in toks.words or "po" in toks.words:
        found = [c for c in found if not is_particle(toks, c.start)]
        found += (Cue("filler", "", k, k + 1) for k in range(1, len(toks)) if is_particle(toks, k))
    if labelled and not SEALS.isdisjoint(toks.words):
        found = _on_water_seal(found, toks, {end for end, _ in labelled.values()})
    if "chest" in toks.words:
        found += of_chest(toks, {end for end, _ in labelled.values()}, {c.start for c in found})
    return in_order(found)


def _on_water_seal(cues: list[Cue], toks: Toks, ends: Container[int]) -> list[Cue]:
    """ "CT1 suction 20, CT3 water seal": behind such a label it is how that bed is set."""
    return [
        cue._replace(label="waterseal")
        if cue.label == "seal"
        and cue.start in ends
        and phrase_of(cue, toks) in WATER_SEALS
        and (word(toks, cue.end) in SEALED or not number_follows(toks, cue.end))
        else cue
        for cue in cues
    ]


def _without(cues: list[Cue], toks: Toks) -> Iterator[Cue]:
    """ "came out without a hitch": how it went, where it was without nothing of a drain."""
    for k, text in enumerate(toks.said):
        what = word(toks, k + 2)
        plain = text == "without" and word(toks, k + 1) in SOME and what.isalpha() and what not in DOUBTFUL
        if plain and not any(c.start == k + 2 and c.label != "word" for c in cues):
            yield Cue("filler", "", k + 2, k + 3)


def _on_whose_word(cues: list[Cue], toks: Toks) -> list[Cue]:
    """ "the tech says that bed 6's drain got disconnected": who told it; of a line it may be hearsay."""
    k = toks.said.index("says")
    told = k <= MOST_OF_WHO and word(toks, k - 1) in STAFF and any(c.label == "what" for c in cues)
    if not told or any(c.label in TELLING for c in cues):
        return cues
    end = k + 1 + (word(toks, k + 1) == "that")
    return [*(c for c in cues if c.start >= end), Cue("filler", "", 0, end)]


def _in_the_last(cues: list[Cue], toks: Toks) -> Iterator[Cue]:
    """ "7 200 in the last hour": how much came out since."""
    spans: dict[int, int] = {}
    for k in range(2, len(toks)):
        last = k + 1 + (word(toks, k + 1) == "the")
        over = word(toks, k) in {"in", "over", "within"} and word(toks, last) in LATELY
        number = k - 1 - (word(toks, k - 1) in VOLUMES)
        first = number
        while word(toks, first) in NUMERALS and word(toks, first - 1) in NUMERALS:
            first -= 1
        counted = over and (is_digits(toks, number) or word(toks, number) in NUMERALS) and first > 0
        counted = (
            counted and word(toks, first - 1) not in NO_AMOUNT and not glued(toks, first)
        )  # "CT8 in the"
        counted &= not ("how" in toks.words and word(toks, first - 1) in {"for", "from", "on"})  # of that bed
        end = _length_end(toks, last + 1)
        if counted and end > last + 1 and not any(c.label in TELLING and c.end == number for c in cues):
            spans[k + (word(toks, k) == "in")] = end
    yield from (c for c in cues if not any(start <= c.start < end for start, end in spans.items()))
    yield from (Cue("out", "", start, end) for start, end in spans.items())


def _length_end(toks: Toks, i: int) -> int:
    """Where a length of time ends that begins here: "2 hours", "hour", "hr"."""
    return i + 1 if word(toks, i) in HOUR_WORDS else length(toks, i)[0]


def _said(toks: Toks, ends: set[int]) -> Iterator[Cue]:
    """ "13 says 1065": what its canister shows; "nurse in 13 says 340" is of somebody."""
    for k, text in enumerate(toks.said if PAPER.isdisjoint(toks.words) else ()):
        if text != "says" or not starts_number(toks, k + 1):
            continue
        label = k in ends or follows_bed(toks, k)
        number = word(toks, k + 1)
        goes_on = word(toks, k + 2) == "," or is_digits(toks, k + 2)
        scored = number.isdecimal() and int(number) <= SCORE and not goes_on
        if label and not scored and word(toks, k + 2) not in {"/", "out", "of", "pain"}:
            yield Cue("level", "", k, k + 1)


def _is_ended_at(cue: Cue, toks: Toks) -> bool:
    """ "bed 13 finished the shift at 475": the line that ends it; "at 1900" is when."""
    number = cue.end + 1
    led = word(toks, cue.end) in {"at", "on", "with"} and is_digits(toks, number)
    return led and cue.label == "window" and not is_whole_clock(toks, number)


def _is_remark(cue: Cue, cues: tuple[Cue, ...], toks: Toks) -> bool:
    """ "that was a struggle", "that was the last one in stock": no bed, tube, number, name or thing of ours.

    Not "no wait, that was a foley", "that was next door's".
    """
    if any(c.label in {"repair", "other", "no"} for c in cues):
        return False
    if word(toks, cue.end) in A:
        return True
    end = next((k for k in range(cue.end, len(toks)) if word(toks, k) in ENDING_CLAUSE), len(toks))
    said = toks.said[cue.end : end]
    told = any(c.label not in {"filler", "word", "ask"} for c in cues if cue.end <= c.start < end)
    named = any(w.endswith("'s") for w in said) or not said or not OF_WHOM.isdisjoint(said[:1])
    numbered = any(starts_number(toks, k) and word(toks, k) != "one" for k in range(cue.end, end))
    return not (told or named or numbered)


def _is_of_line(cue: Cue, cues: tuple[Cue, ...], toks: Toks) -> bool:
    """ "the line for bed 3 came to 430": what its line is, and no sum."""
    line = next((c for c in reversed(cues) if c.label in LINED and c.end <= cue.start), None)
    between = toks.said[line.end : cue.start] if line is not None else (",",)
    return STOPS.isdisjoint(between) and word(toks, cue.end - 1) == "to"


def _meant(cue: Cue, cues: tuple[Cue, ...], toks: Toks) -> Iterator[Cue]:
    if cue.value == "moved" and _is_right_now(cue, toks):
        yield Cue("filler", "", cue.start + 1, cue.end - 1)
        yield Cue("bed", "", cue.end - 1, cue.end)
    elif _is_of_people(cue, toks):
        yield cue._replace(label="filler", value="")
    elif cue.label == "levelat" and phrase_of(cue, toks) == "up at" and word(toks, cue.start - 1) in RISING:
        yield cue._replace(label="filler", value="")  # "fell over when he got up at 1810"
    elif cue.value == "shift" and word(toks, cue.start - 1) in ENDING and _is_ended_at(cue, toks):
        yield cue._replace(label="closing", value="", start=cue.start - 1)
        yield Cue("levelat", "", cue.end, cue.end + 1)
    elif cue.label == "output" and phrase_of(cue, toks) in SUMMED and _is_of_line(cue, cues, toks):
        yield cue._replace(label="levelat", value="")
    elif cue.value == "corrected" and phrase_of(cue, toks) == "that was" and _is_remark(cue, cues, toks):
        yield cue._replace(label="filler", value="")  # "that was a struggle"
    elif cue.value == "acknowledged" and word(toks, cue.start - 1) in ANYBODY:
        yield cue._replace(label="word", value="")
    elif cue.label == "filler" and _tells_line(cue, toks):
        yield cue._replace(label="level")
    elif cue.label == "level" and _is_called_by_time(cue, toks):
        yield cue._replace(value=CALLED)
    elif cue.label == "filler" and was_at_time(cue, toks):
        yield cue._replace(label="level", value="")
    elif cue.label == "levelat" and is_fallen_on(cue, toks):
        yield from (Cue("filler", "", k, k + 1) for k in range(cue.start, cue.end))
    elif cue.label == "level" and has_time(cue, toks):
        yield cue._replace(label="filler", value="")
    elif cue.label == "level" and is_of_bed_read(cue, toks):
        yield cue._replace(label="bed", value="")
    elif cue.label == "level" and is_marking(cue, toks):
        yield cue._replace(label="filler", value="")
    elif cue.label == "filler" and _is_before_line(cue, toks):
        yield cue._replace(label="level", value="")
    elif cue.label == "filler" and _was_then(cue, toks):
        yield cue._replace(label="levelat", value="past")
    else:
        yield cue


def _was_then(cue: Cue, toks: Toks) -> bool:
    """ "bed 7 was 125 at 2300": what its line was then; 125 is no time of it."""
    at, number = cue.end + 1, word(toks, cue.end)
    level = phrase_of(cue, toks) == "was" and number.isdecimal() and len(number) < FULL_HOUR
    timed = level and word(toks, at) in AT and is_whole_clock(toks, at + 1)
    return timed and is_digits(toks, cue.start - 1) and word(toks, cue.start - 2) in BED_WORDS


def _is_hindered(cue: Cue, cues: tuple[Cue, ...], toks: Toks) -> bool:
    """ "roughly 500 at 1905 cant read under the bed": why it is only about so much."""
    if phrase_of(cue, toks) not in CANNOT or word(toks, cue.end) not in SEEING:
        return False
    about = any(c.label == "about" and c.start < cue.start for c in cues)
    stop = cue.start - (word(toks, cue.start - 1) == ",")
    timed = any(end == stop for k in range(stop - MOST_OF_TIME, stop) for end, _ in clocks(toks, k) if k > 0)
    behind = toks.said[cue.end : _end_of_clause(cue, toks)]
    plain = all(w.isalpha() for w in behind) and (DOUBTS | THINGS).isdisjoint(behind)
    return about and timed and plain


def _end_of_clause(cue: Cue, toks: Toks) -> int:
    return next((k for k in range(cue.end, len(toks)) if word(toks, k) in STOPS), len(toks))


def _is_right_now(cue: Cue, toks: Toks) -> bool:
    """ "885 right now in bed 24": the line is there now, and nobody moved."""
    right = word(toks, cue.start - 1) in {"right", "just"} and word(toks, cue.start) == "now"
    level = is_digits(toks, cue.start - 2) and len(word(toks, cue.start - 2)) > LABEL_DIGITS
    alone = sum(text in BED_WORDS for text in toks.said) == 1
    return right and level and alone and word(toks, cue.end - 1) in BED_WORDS


def _is_farewell(cue: Cue, toks: Toks) -> bool:
    """ "that's me away. bed 19 ...": the nurse, and no patient; "that's me away to CT with 19" is asked."""
    return (
        word(toks, cue.start - 1) in HOME and word(toks, cue.end - 1) in OFF and word(toks, cue.end) in ENDS
    )


def _is_of_people(cue: Cue, toks: Toks) -> bool:
    """Whether it is the nurse who goes, or somebody who lies on a side."""
    goes = cue.value in {"away", "left"} and (_is_farewell(cue, toks) or _is_of_me(cue, toks))
    return goes or (cue.label == "side" and _is_posture(cue, toks))


def _is_posture(cue: Cue, toks: Toks) -> bool:
    """ "comfortable on his left side": how somebody lies, and no tube."""
    owned = word(toks, cue.start - 1) in {"his", "her", "their", "the"}
    lies = word(toks, cue.start - 2) in {"on", "onto", "to"} and word(toks, cue.start - 3) in LYING
    return owned and lies and "side" in toks.said[cue.start : cue.end + 1]


def _is_of_me(cue: Cue, toks: Toks) -> bool:
    """ "off to my next one", "i'm off to lunch": the nurse goes; "off to bed 2" names a bed and is asked."""
    said, before = word(toks, cue.end - 1), cue.start - (word(toks, cue.start - 1) in {"now", "just"})
    myself = word(toks, before - 1) in {"i'm", "im"} or toks.said[before - 2 : before] == ("i", "am")
    place = cue.end + (word(toks, cue.end) in {"the", "see", "check"})
    going = said == "to" and word(toks, cue.end - 2) in {"off", "gone", "on"}
    return (myself and said in {"to", "for", "off"}) or (going and word(toks, place) in OF_NURSES)


def _tells_line(cue: Cue, toks: Toks) -> bool:
    """ "line on bed three is seven hundred": what the line is, and no hour."""
    if phrase_of(cue, toks) not in {"is", "was"} or not starts_number(toks, cue.end):
        return False
    near = range(cue.start - 2, cue.start - 2 - LONGEST_LABEL, -1)
    bed = next((k for k in near if word(toks, k) in BED_WORDS), 0)
    return bed > 1 and word(toks, bed - 1 - (word(toks, bed - 1) in OF_BED)) in LINES


def _is_called_by_time(cue: Cue, toks: Toks) -> bool:
    """ "for the 1800 mark bed 6 is 690": the time by which the line is called."""
    bed = cue.end + (word(toks, cue.end) in OF_BED)
    label = bed + (word(toks, bed) in BED_WORDS)
    behind = range(label + 1, label + 1 + LONGEST_LABEL)
    tells = any(word(toks, k) in TELLS and starts_number(toks, k + 1) for k in behind)
    if not tells and DID.isdisjoint(toks.words):
        return False
    near = range(max(0, cue.start - MOST_OF_TIME), cue.start)
    start = next((k for k in near if any(end == cue.start for end, _ in clocks(toks, k))), None)
    if start is None:
        return False
    start -= word(toks, start - 1) == "the"
    if word(toks, start) == "the" and word(toks, start - 1) in DID:
        return ":" in toks.said[cue.end :]  # "bank nurse did the 1600 line with me: 410"
    start -= word(toks, start - 1) == "for"
    opens = word(toks, start - 1) in BEFORE_BED - BED_WORDS | THINKING
    named = starts_number(toks, label) or (label > bed and word(toks, label) in HOMOPHONES)
    return tells and opens and named


def _is_before_line(cue: Cue, toks: Toks) -> bool:
    """ "bed 2 was 310 at 2300": no ten past three, as the other number is a whole time behind its at."""
    told = phrase_of(cue, toks) in {"is", "was"} and is_digits(toks, cue.start - 1)
    before = cue.start - 2 - (word(toks, cue.start - 2) in BED_WORDS)
    if before >= 0 and word(toks, before) not in STOPS:
        return False  # "heard at handover that 12 was 640 at 0600"
    short = is_digits(toks, cue.end) and len(word(toks, cue.end)) < FULL_HOUR
    return told and short and word(toks, cue.end + 1) in AT and is_whole_clock(toks, cue.end + 2)
