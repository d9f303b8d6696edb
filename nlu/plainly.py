"""Cues of a plain line and of the remark beside it: what its bed "says", when it was read, who goes home.

Once a level was told, "read at 1858" says when that was, and is no second line. Called by `recast`.
"""

from __future__ import annotations

from collections.abc import Iterator, Mapping

from .clock import clocks
from .followers import CALLED
from .items import FULL_HOUR
from .lengths import length
from .neighbours import phrase_of
from .numbers import Toks, glued, is_digits, starts_number, word
from .patterns.asides import THINGS
from .patterns.clockwords import HOUR_WORDS
from .patterns.leads import LINES
from .patterns.levels import VOLUMES
from .patterns.numerals import HOMOPHONES
from .pipeline import Cue, in_order
from .readthen import (
    AT,
    BED_WORDS,
    BEFORE_BED,
    LABEL_DIGITS,
    LONGEST_LABEL,
    MOST_OF_TIME,
    READ,
    STOPS,
    follows_bed,
    has_time,
    is_fallen_on,
    is_marking,
    is_of_bed_read,
    is_particle,
    of_chest,
    was_at_time,
)
from .readthen import is_whole_clock as is_whole_clock

IT = frozenset({"it", "line", "that", "this", "them"})
TELLS = frozenset(
    {"is", "=", ":", "now", "says", "shows", "showing", "reads", "reading", "mark", "line", "level"}
)
ENDS = frozenset({"", ".", ",", ";", "!", "-", "now", "everyone", "all", "folks", "guys", "team", "then"})
CANNOT = frozenset({"can't", "cant", "cannot", "couldn't", "couldnt", "unable to"})
SEEING = frozenset({"see", "read", "get", "reach", "find", "bend", "kneel", "crouch", "look", "turn"})
DOUBTS = frozenset({"right", "sure", "correct", "or", "if", "whether", "not", "no", "true"})
PAPER = frozenset({"paper", "chart", "sheet", "flowsheet", "board", "whiteboard", "note", "notes", "report"})
"""What a number stands on that somebody else wrote."""
OF_BED = frozenset({"for", "on", "in", "of"})
TOLD = frozenset({"is", "was", "=", "reads"})
DID = frozenset({"did", "done", "took", "drew", "marked"})
THINKING = frozenset({"uh", "um", "alright", "right"})
LATELY = frozenset({"last", "past"})
CLIMBED = frozenset({("got", "to"), ("up", "to"), ("gone", "to"), ("come", "to"), ("rose", "to")})
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
HOME = frozenset({"me", "me's", "i'm", "im"})
OF_NURSES = frozenset({"my", "next", "rest", "others", "lunch", "dinner", "supper", "tea", "coffee", "break"})
"""Behind "off to" these are where a nurse goes, and no patient."""
LYING = frozenset(
    {"comfortable", "comfy", "lying", "laying", "turned", "resting", "asleep", "sleeping", "rolled"}
    | {"positioned", "repositioned", "nursed", "propped", "him", "her", "sleeps", "rests", "over", "settled"}
)
ANYBODY = frozenset({"anyone", "anybody", "someone", "somebody", "else", "you", "u"})
"""Whoever asks whether these have seen something has seen no notice."""
OFF = frozenset({"away", "off", "out", "gone", "done", "finished", "home"})


def plainly(cues: tuple[Cue, ...], toks: Toks, labelled: Mapping[int, tuple[int, str]]) -> tuple[Cue, ...]:
    """The cues, those of a plain line and of a farewell as they are meant."""
    found = [meant for cue in cues for meant in ((cue,) if cue.label == "bed" else _meant(cue, toks))]
    for hindered in [c for c in cues if c.label == "neg" and _is_hindered(c, cues, toks)]:
        end = _end_of_clause(hindered, toks)
        found = [c for c in found if not hindered.start <= c.start < end]
        found.append(Cue("filler", "", hindered.start, end))
    if not LATELY.isdisjoint(toks.words):
        found = list(_in_the_last(found, toks))
    if "says" in toks.words:
        taken = {k for cue in found for k in range(cue.start, cue.end)}
        ends = {end for end, _ in labelled.values()}
        found += [c for c in _said(toks, ends) if c.start not in taken]
    if "na" in toks.words or "po" in toks.words:
        found = [c for c in found if not is_particle(toks, c.start)]
        found += (Cue("filler", "", k, k + 1) for k in range(1, len(toks)) if is_particle(toks, k))
    if "chest" in toks.words:
        found += of_chest(toks, {end for end, _ in labelled.values()}, {c.start for c in found})
    return in_order(found)


def _in_the_last(cues: list[Cue], toks: Toks) -> Iterator[Cue]:
    """ "7 200 in the last hour": how much came out since."""
    spans: dict[int, int] = {}
    for k in range(2, len(toks)):
        last = k + 1 + (word(toks, k + 1) == "the")
        over = word(toks, k) in {"in", "over", "within"} and word(toks, last) in LATELY
        number = k - 1 - (word(toks, k - 1) in VOLUMES)
        counted = over and is_digits(toks, number) and number > 0 and word(toks, number - 1) not in NO_AMOUNT
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


def _meant(cue: Cue, toks: Toks) -> Iterator[Cue]:
    if cue.value == "moved" and _is_right_now(cue, toks):
        yield Cue("filler", "", cue.start + 1, cue.end - 1)
        yield Cue("bed", "", cue.end - 1, cue.end)
    elif _is_of_people(cue, toks):
        yield cue._replace(label="filler", value="")
    elif cue.value == "acknowledged" and word(toks, cue.start - 1) in ANYBODY:
        yield cue._replace(label="word", value="")
    elif cue.label in {"level", "levelat", "filler"} and _says_when(cue, toks):
        yield from _of_reading(cue, toks)
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


def _says_when(cue: Cue, toks: Toks) -> bool:
    """ "1020 mL, read at 1858", "is now 455, drew it at 1900": when that was read."""
    verb = cue.start - (word(toks, cue.start) in IT)
    at = cue.end - 1 if word(toks, cue.end - 1) in AT else cue.end
    it = at - 1 if word(toks, at - 1) in IT else at
    read = word(toks, it - 1) in READ and verb <= it - 1 < max(cue.end, verb + 1)
    return read and word(toks, at) in AT and is_whole_clock(toks, at + 1) and _is_told(toks, it - 1)


def _tells_line(cue: Cue, toks: Toks) -> bool:
    """ "line on bed three is seven hundred": what the line is, and no hour."""
    if phrase_of(cue, toks) not in {"is", "was"} or not starts_number(toks, cue.end):
        return False
    near = range(cue.start - 2, cue.start - 2 - LONGEST_LABEL, -1)
    bed = next((k for k in near if word(toks, k) in BED_WORDS), 0)
    return bed > 1 and word(toks, bed - 1 - (word(toks, bed - 1) in OF_BED)) in LINES


def _is_called_by_time(cue: Cue, toks: Toks) -> bool:
    """ "for the 1800 mark bed 6 is 690": the time by which the line is called."""
    near = range(max(0, cue.start - MOST_OF_TIME), cue.start)
    start = next((k for k in near if any(end == cue.start for end, _ in clocks(toks, k))), None)
    if start is None:
        return False
    start -= word(toks, start - 1) == "the"
    if word(toks, start) == "the" and word(toks, start - 1) in DID:
        return ":" in toks.said[cue.end :]  # "bank nurse did the 1600 line with me: 410"
    start -= word(toks, start - 1) == "for"
    opens = word(toks, start - 1) in BEFORE_BED - BED_WORDS | THINKING
    bed = cue.end + (word(toks, cue.end) in OF_BED)
    label = bed + (word(toks, bed) in BED_WORDS)
    named = starts_number(toks, label) or (label > bed and word(toks, label) in HOMOPHONES)
    tells = range(label + 1, label + 1 + LONGEST_LABEL) if opens and named else ()
    return any(word(toks, k) in TOLD and starts_number(toks, k + 1) for k in tells)


def _is_before_line(cue: Cue, toks: Toks) -> bool:
    """ "bed 2 was 310 at 2300": no ten past three, as the other number is a whole time behind its at."""
    told = phrase_of(cue, toks) in {"is", "was"} and is_digits(toks, cue.start - 1)
    before = cue.start - 2 - (word(toks, cue.start - 2) in BED_WORDS)
    if before >= 0 and word(toks, before) not in STOPS:
        return False  # "heard at handover that 12 was 640 at 0600"
    short = is_digits(toks, cue.end) and len(word(toks, cue.end)) < FULL_HOUR
    return told and short and word(toks, cue.end + 1) in AT and is_whole_clock(toks, cue.end + 2)


def _of_reading(cue: Cue, toks: Toks) -> Iterator[Cue]:
    if word(toks, cue.start) in IT:
        yield Cue("filler", "", cue.start - 1, cue.start)
    end = cue.end - (word(toks, cue.end - 1) in AT)
    if end > cue.start:
        yield Cue("filler", "", cue.start, end)
    if end < cue.end:
        yield Cue("filler", "", end, cue.end)


def _is_told(toks: Toks, end: int) -> bool:
    """Whether the last number before is told as a level: with its unit, or behind "is" and no whole time."""
    k = next((k for k in range(end - 1, 0, -1) if is_digits(toks, k)), 0)
    if not k:
        return False
    led = k - 1 - (word(toks, k - 1) in AT)
    if word(toks, led) == "is" and word(toks, led - 1) in LINES:
        return True  # "17 line is at 1215, read at 1855"
    stood = word(toks, k - 1) in AT and word(toks, led) in {"is", "sits", "stands", "now"}
    if (stood or toks.said[k - 2 : k] in CLIMBED) and not STOPS.isdisjoint(toks.said[k + 1 : end]):
        return True  # "bed 27 is at 1100, calm today, read at 1005"
    if word(toks, led) in LINES:
        return not is_whole_clock(toks, k)  # "mark 1850 read at 1900": which is the line?
    if word(toks, k + 1) in VOLUMES and (glued(toks, k + 1) or word(toks, k + 1) != "l"):
        return True
    return word(toks, k - 1) in TELLS and not is_whole_clock(toks, k)
