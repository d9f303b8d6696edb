"""Signs, anywhere in a message, that its lines are not to be taken as they stand.

Something was mixed up or read wrongly before, a star says what was mistyped, a time is of what somebody
did; in dictation a number may be another one. Called by `leftovers`.
"""

from __future__ import annotations

from collections.abc import Iterator
from itertools import pairwise

from .clauses import NUMBERS, clauses
from .items import AMOUNTS, FULL_HOUR, Item
from .neighbours import is_scan
from .numbers import Toks, glued, heard_as_number, is_digits, word
from .patterns.asides import PERSONS
from .patterns.leads import BED_WORDS, LINES
from .patterns.numerals import HOMOPHONES, ONES, SCALES, TENS
from .patterns.remarks import REMARKS
from .rules import Rule

MISTAKEN = frozenset(
    {"mixed", "mixup", "mix", "muddled", "backwards", "reversed", "mistake", "mistaken", "misread", "typo"}
    | {"mistyped", "misentered", "mischarted", "swap", "swapped", "flipped", "switched", "crossed", "versa"}
    | {
        "reverse",
        "flip",
        "switch",
        "confused",
        "wrongly",
        "incorrectly",
        "oops",
        "whoops",
        "oopsie",
        "apologies",
        "error",
        "typos",
    }
)
WAYS = frozenset({"way", "ways"})
OTHER_WAYS = frozenset({"other", "wrong", "opposite"})
TOLD = frozenset({"bed", "tube", "check"}) | NUMBERS
PLAIN = frozenset({"word", "filler", "about", "time", "timeword", "bed", "opens"})
NURSES = frozenset({"i", "we"})
VISITS = frozenset(
    {"went", "got", "looked", "checked", "popped", "came", "saw", "walked", "visited", "nipped"}
)
"""What a nurse does who goes to look at a drain."""
QUARTER = 15
BREAKING = frozenset({"", ",", ".", ";", "!", "at", "@", "tea", "t"})
LETTERS = frozenset("abcdefgh")
ROUND = frozenset(map(str, range(20, 100, 10)))
ALIKE = frozenset({"l", "i", "o"})
FORMERLY = frozenset({"was", "from", "previously", "before", "prev"})
AGAIN = frozenset({"that's", "thats", "it's", "its", "maybe", "perhaps", "or", "no"})
SENTENCES = frozenset({".", ";", "!"})
SPANS = frozenset({"-", "to", "til", "till", "until"})


def _mixed_up(items: tuple[Item, ...], _: Toks) -> Iterator[str]:
    """ "i mixed up 12 and 13: 12 is 220": what was told before may be wrong."""
    told = any(i.role in NUMBERS for i in items)
    for item in items if told else ():
        if item.unread and item.name in MISTAKEN:
            yield f"{item.name!r} may say that what was told before is wrong"


def _other_way(items: tuple[Item, ...], toks: Toks) -> Iterator[str]:
    """ "not the other way round"."""
    said = any(word(toks, k) in OTHER_WAYS and word(toks, k + 1) in WAYS for k in range(len(toks)))
    if said and any(i.role in NUMBERS for i in items):
        yield "which way round it is"


def _starred(items: tuple[Item, ...], toks: Toks) -> Iterator[str]:
    """ "*1050": a star says that something was mistyped before."""
    stars = [k for k in range(len(toks)) if word(toks, k) == "*"]
    if len(stars) != 1:
        return
    for item in items:
        behind = item.start == stars[0] + 1 and glued(toks, item.start) and not glued(toks, stars[0])
        if item.role in TOLD and behind:
            yield "a star says that something was mistyped"


def _since_level(items: tuple[Item, ...], toks: Toks) -> Iterator[str]:
    """ "nothing out since 610 at 2200": since that level, or since ten past six?"""
    same = any(i.role == "cue" and i.value == "same" for i in items)
    timed = sum(i.role == "time" for i in items) > 1
    for item in items if same else ():
        after = word(toks, item.start - 1) in {"since", "from"}
        loose = item.role == "time" and item.amount is not None and not item.sure_time
        odd = len(item.digits) < FULL_HOUR and any(clock.minute % QUARTER for clock in item.clocks)
        if after and loose and (timed or odd):
            yield "since that level, or since that time"


def _timed_first(items: tuple[Item, ...], toks: Toks) -> Iterator[str]:
    """ "12 vomited at 0600, drain at 640", "picked up 9 at 1300, line 330": of what was done then."""
    parts = list(clauses(items))
    if len(parts) < 2:
        return
    first = parts[0]
    times = [i for i in first if i.role == "time" and i.lead not in {"since", "timeword"}]
    told = any(i.role in TOLD - {"bed", "tube"} for i in first)
    told |= any(i.role == "cue" and not (i.value in PLAIN or is_scan(i, toks)) for i in first)
    if not times or told:
        return
    done = [i for i in first if i.role == "foreign" or _is_doing(i, toks)]
    if _is_visit(first, done, toks):
        return
    if any(i.end <= times[0].start for i in done):
        yield "the time may be of what was done then"


def _is_visit(first: tuple[Item, ...], done: list[Item], toks: Toks) -> bool:
    """ "I went in to bed 12 at 1830 and the box was showing 640": when the nurse was there, and read it."""
    begins = word(toks, min((i.start for i in first), default=0))
    at_bed = any(i.role == "bed" for i in first) and all(i.role == "cue" and i.name in VISITS for i in done)
    who = begins in NURSES or word(toks, min((i.start for i in first), default=0) - 1) in NURSES
    return at_bed and who


def _is_doing(item: Item, toks: Toks) -> bool:
    """A word for what somebody did, "i started at" among them."""
    if item.role != "cue":
        return False
    began = item.value == "opens" and word(toks, item.start - 1) in PERSONS
    return began or (item.value == "word" and item.name not in REMARKS)


def _totalled(items: tuple[Item, ...], _: Toks) -> Iterator[str]:
    """ "330 total at 1400": the sum, or what the canister shows?"""
    for before, item, after in zip(items, items[1:], items[2:], strict=False):
        summed = item.role == "cue" and item.value == "output" and item.start == before.end
        bare = before.role == "level" and before.lead in {"", "at"} and not before.unit
        if summed and bare and after.role in {"output", "time"} and after.at:
            yield "a total may be an amount"


def _timed_of_another(items: tuple[Item, ...], _: Toks) -> Iterator[str]:
    """ "uo 300 at 0600, line 640": the only time is that of another device's number."""
    said = [i for i in items if i.role != "cue" or i.value != "filler"]
    alone = sum(i.role == "time" for i in items) == 1 and any(i.role == "level" for i in items)
    for before, item in pairwise(said) if alone else ():
        if (
            item.role == "time"
            and before.role in {"claimed", "foreign"}
            and item.lead not in {"since", "timeword"}
        ):
            yield "the time may be of the number that is not ours"


def _given(items: tuple[Item, ...], _: Toks) -> Iterator[str]:
    """ "gave 20 lasix at 0600": how much of something else."""
    for before, item in pairwise(items):
        amount = before.role in {"volume", "output"} and not before.unit
        if amount and item.role == "foreign" and item.start == before.end:
            yield "the amount may be of what is not ours"


def _replaced(items: tuple[Item, ...], _: Toks) -> Iterator[str]:
    """ "box cracked, replaced": what was replaced, the canister or another thing?"""
    if any(i.role == "cue" and i.value == "kind" for i in items):
        return
    for before, item in zip((None, *items), items, strict=False):
        of_another = before is not None and before.role == "foreign"
        if item.role == "cue" and item.value == "change" and not of_another:
            yield "what was replaced"


def _openers(items: tuple[Item, ...], _: Toks) -> Iterator[str]:
    """ "404 line 265, 406 line 720, 410 line 1180 all 1850": what opens each clause is a bed."""
    firsts = [clause[0] for clause in clauses(items) if clause]
    beds = [i for i in firsts if i.label is not None and len(i.digits) == FULL_HOUR - 1]
    timed = any(i.role == "time" and i.label is None for i in items)
    if (timed or len(beds) > 2) and {"bed", "time"} <= {i.role for i in beds}:
        yield "one number that opens a clause is a bed, and another a time"


def row_of_beds(items: tuple[Item, ...], toks: Toks) -> Iterator[str]:
    """ "beds seven eight and nine all at nine ten": the eight is a bed of the row, and no level of bed 7."""
    for before, item, after in zip(items, items[1:], items[2:], strict=False):
        row = before.role == "bed" and word(toks, before.start - 1) == "beds" and before.end == item.start
        plain = item.role == "level" and item.label is not None and not (item.unit or item.lead)
        if row and plain and after.value in {"and", "&", ","}:
            yield "a number in a row of beds is one of them"


def _from_when(items: tuple[Item, ...], toks: Toks) -> Iterator[str]:
    """ "suction off 0500-0540 for mri, line 333": when the line was read was not said."""
    for clause, after in pairwise(clauses(items)):
        ends = [i for a, i in pairwise(clause) if a.role == i.role == "time" and _spans(a, i, toks)]
        levels = [i for i in after if i.role == "level"]
        if ends and levels and not any(i.role == "time" for i in after):
            yield "the end of a span of time is no time of the line beside it"


def _of_a_remark(items: tuple[Item, ...], _: Toks) -> Iterator[str]:
    """ "14 mark 220. xray at 1900 ok": when that was, and no time of the line before it."""
    for clause, after in pairwise(clauses(items, SENTENCES)):
        lined = {"level"} == {i.role for i in clause} & {"level", "time"}
        time = next((k for k, i in enumerate(after) if i.role == "time"), None)
        if not lined or time is None or any(i.role in NUMBERS for i in after):
            continue
        if any(i.role == "foreign" or (i.unread and i.name not in REMARKS) for i in after[:time]):
            yield "the time may be of what is told behind the line"


def _spans(first: Item, last: Item, toks: Toks) -> bool:
    """Whether the first time and the last are the ends of a span."""
    return last.start == first.end + 1 and word(toks, first.end) in SPANS


def half_in_digits(items: tuple[Item, ...], toks: Toks) -> Iterator[str]:
    """ "bed 20 two 60": bed 20 with 260, or bed 22 with 60?"""
    for bed, item in pairwise(items):
        tens = bed.role == "bed" and word(toks, item.start - 1) in ROUND and item.role == "level"
        if tens and word(toks, item.start) in ONES and word(toks, item.start + 1) not in SCALES:
            yield "the number may begin with the end of the bed"


def first_digit(items: tuple[Item, ...], toks: Toks) -> Iterator[str]:
    """ "line for 20", "is for sixty": the word before the number may be the four of 420, and work of its own.

    "put 12 down for 40" has it; and where it was read as the digit, the number alone is as likely.
    """
    for item in items:
        if item.role not in AMOUNTS:
            continue
        before = item.start - 1
        four = word(toks, item.start) == "for"
        end = max(item.core, item.start + 1)
        joined = any(n.end == end > before + 1 for n in heard_as_number(toks, before))
        if four or (joined and word(toks, before) != "to" and word(toks, before - 1) != "down"):
            yield "the word before the number may be its first digit"


def last_digit(items: tuple[Item, ...], toks: Toks) -> Iterator[str]:
    """ "at six fifty for.", "six hundred and for tea": a word that sounds like a digit, with no work."""
    for item in items:
        k = item.end + (word(toks, item.end) == "and")
        heard = item.role in NUMBERS | {"time"} and word(toks, k) in HOMOPHONES
        if heard and word(toks, k + 1) in BREAKING:
            yield "the word behind the number may be its last digit"


def before_all(items: tuple[Item, ...], _: Toks) -> Iterator[str]:
    """ "both at AE30 bed 22 mark 680 bed 15 mark 270": what was not understood is of both beds."""
    beds = [i.start for i in items if i.role == "bed"]
    lost = len(beds) > 1 and any(i.role == "bad" and i.end <= beds[0] for i in items)
    yield from ["a number before all beds was not understood"] * lost


def lettered(items: tuple[Item, ...], toks: Toks) -> Iterator[str]:
    """ "bed 9-A line 240", where the unit has no 9A: the letter is of the label, and no article."""
    for item in items:
        letter = word(toks, item.end + 1)
        dashed = word(toks, item.end) == "-" and glued(toks, item.end) and glued(toks, item.end + 1)
        if item.role == "bed" and dashed and letter in LETTERS:
            yield "a letter behind the label"


def thrice(items: tuple[Item, ...], toks: Toks) -> Iterator[str]:
    """ "1 1 1 0", "twelve twelve twelve": the bed said again, or a number of its own?"""
    for item in items:
        said = word(toks, item.start)
        if item.role == "bed" and not item.lead and said == word(toks, item.end) == word(toks, item.end + 1):
            yield "a number said three times"


def _letter_inside(_: tuple[Item, ...], toks: Toks) -> Iterator[str]:
    """ "4l0": a letter typed for a digit, and no side; "L80 R40" has its letters before."""
    for k in range(1, len(toks) - 1):
        inside = glued(toks, k) and glued(toks, k + 1)
        if word(toks, k) in ALIKE and inside and is_digits(toks, k - 1) and is_digits(toks, k + 1):
            yield "a letter inside a number"


def _breaks_off(items: tuple[Item, ...], toks: Toks) -> Iterator[str]:
    """ "bed twenty for stands at ten": bed 24; "to point one five litres": 2.15, and no 150 mL."""
    for item in items:
        tens = item.role == "bed" and word(toks, item.end - 1) in TENS
        if tens and word(toks, item.end) in HOMOPHONES and word(toks, item.end + 1) not in BED_WORDS | LINES:
            yield "the bed may go on"
        pointed = item.role in NUMBERS and word(toks, item.start) == "point"
        if pointed and not (item.unit and word(toks, item.start - 1) not in {"", *HOMOPHONES}):
            yield "what stood before the point was lost"


def _was_set(items: tuple[Item, ...], toks: Toks) -> Iterator[str]:
    """ "8 wall 80 was 60": what the wall was at before, and no line of 60."""
    for before, item in pairwise(items):
        bare = item.role == "level" and not item.unit and item.lead in {"", "at", "levelat"}
        if before.role == "check" and bare and not FORMERLY.isdisjoint(toks.said[before.end : item.start]):
            yield "what the check was before, or a line"


def _told_again(items: tuple[Item, ...], toks: Toks) -> Iterator[str]:
    """ "mark 500, no it's 510", "mark 500 or maybe 520": the level again, and no ten past five."""
    for item in items:
        again = word(toks, item.start - 1) in AGAIN and not item.at and not item.sure_time
        if again and item.role == "time" and item.amount is not None and not item.full_clock:
            yield "a number told again is no time"


def _time_it_is(items: tuple[Item, ...], toks: Toks) -> Iterator[str]:
    """ "it's 1120 now and it reads 365": what the clock shows, where another number is told as the line."""
    told = any(i.role == "level" and i.lead in {"level", "levelat"} and not i.at for i in items)
    for item in items:
        shown = item.role == "level" and item.full_clock and word(toks, item.end) == "now"
        if told and shown and word(toks, item.start - 1) in {"it's", "its", "s", "is"}:
            yield "the time that it is"


def _put_under(items: tuple[Item, ...], toks: Toks) -> Iterator[str]:
    """ "put the 1900 on bed 9": a level of 1900, or the line of that time?"""
    for item in items:
        plain = item.role == "level" and item.full_clock and not item.unit and not item.at
        the = word(toks, item.start - 1) == "the" and word(toks, item.start - 2) in PUT
        if plain and the and word(toks, item.end) in {"on", "under", "for", "in", "to", "down"}:
            yield "the line of that time, or a level"


def _named_over(items: tuple[Item, ...], toks: Toks) -> Iterator[str]:
    """ "bed ct two, uh no, ct three": the tube behind the mending has the name of the bed before it."""
    said = [i for i in items if i.role not in {"sep", "cue"}]
    for before, repair, after in zip(said, said[1:], said[2:], strict=False):
        named = before.role == "bed" and repair.role == "repair" and after.role == "tube"
        if named and word(toks, after.start) in toks.said[before.start - 1 : before.end]:
            yield "the name behind the mending may be the bed"


def _put_over(items: tuple[Item, ...], toks: Toks) -> Iterator[str]:
    """ "put bed 9 1900 to bed 10": the line of one bed is another's, or the patient is."""
    beds = [i for i in items if i.role == "bed"]
    told = word(toks, 0) in MOVED or (word(toks, 0) in {"please", "can", "pls"} and "put" in toks.words)
    put = told and len(beds) == 2 and any(i.role == "time" for i in items)
    if put and "to" in toks.said[beds[0].end : beds[1].start]:
        yield "whose line it is, or where the patient went"


def _at_twice(items: tuple[Item, ...], toks: Toks) -> Iterator[str]:
    """ "mark bed 16 at eight at 500": a line of 8 at five, or of 500 at eight?"""
    hours = [i for i in items if i.role == "level" and i.amount in range(1, 13) and not i.unit]
    times = [i for i in items if i.role == "time" and (i.amount or 0) > LATEST and not i.sure_time]
    if hours and times and all(word(toks, i.start - 1) == "at" for i in (*hours, *times)):
        yield "which of the two is the time"


MOVED = frozenset({"put", "shift"})
LATEST = 24
"""No hour is a greater number."""
PUT = frozenset({"put", "log", "enter", "chart", "record", "stick", "add", "file"})
EITHER = (
    Rule(_put_over, frozenset({"bed"}), MOVED),
    Rule(_at_twice, frozenset({"time"}), frozenset({"at"})),
    Rule(_put_under, frozenset({"level"}), PUT),
    Rule(_named_over, frozenset({"repair"})),
    Rule(_told_again, frozenset({"time"}), AGAIN),
    Rule(_was_set, frozenset({"check"}), FORMERLY),
    Rule(row_of_beds, frozenset({"level"}), frozenset({"beds"})),
    Rule(thrice, frozenset({"bed"})),
    Rule(lettered, frozenset({"bed"}), frozenset({"-"})),
)


def _bed_goes_on(items: tuple[Item, ...], toks: Toks) -> Iterator[str]:
    """ "bed seven hundred and five line 210" on a ward that has none: perhaps no bed 5 either."""
    for bed, rest in pairwise(items):
        if bed.role == "bed" and rest.role == "bad" and word(toks, bed.end) in SCALES:
            yield "a bed whose number goes on"


HEARD = (
    *EITHER,
    Rule(_bed_goes_on, frozenset({"bad"}), frozenset(SCALES)),
    Rule(before_all, frozenset({"bad"})),
    Rule(_breaks_off, NUMBERS | {"bed"}, frozenset({*HOMOPHONES, "point"})),
    Rule(half_in_digits, frozenset({"level"}), frozenset(ONES)),
    Rule(last_digit, NUMBERS | {"time"}, frozenset(HOMOPHONES)),
    Rule(first_digit, AMOUNTS, frozenset(HOMOPHONES)),
)
MIXUPS = (
    *EITHER,
    Rule(_time_it_is, frozenset({"level"}), frozenset({"now"})),
    Rule(_letter_inside, NUMBERS, ALIKE),
    Rule(_of_a_remark, frozenset({"sep"})),
    Rule(_from_when, frozenset({"sep"})),
    Rule(_openers, frozenset({"sep"})),
    Rule(_mixed_up, frozenset({"word"})),
    Rule(_other_way, NUMBERS, WAYS),
    Rule(_starred, TOLD, frozenset({"*"})),
    Rule(_since_level, frozenset({"same"})),
    Rule(_timed_first, frozenset({"sep"})),
    Rule(_timed_of_another, frozenset({"claimed", "foreign"})),
    Rule(_totalled, frozenset({"output"})),
    Rule(_given, frozenset({"foreign"})),
    Rule(_replaced, frozenset({"change"})),
)
