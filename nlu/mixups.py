"""Signs, anywhere in a message, that its numbers were mixed up: another bed's, told again, or mistyped.

A star says what was mistyped, a name is put over another, a sum stands where a line would. Called by
`leftovers`.
"""

from __future__ import annotations

from collections.abc import Iterator
from itertools import pairwise, zip_longest

from .bedlike import BEDLIKE
from .clauses import NUMBERS, clauses
from .halfsaid import HALF_SAID
from .items import FULL_HOUR, Item
from .numbers import Toks, glued, is_digits, word
from .patterns.leads import LABEL_LETTERS
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
ALIKE = frozenset({"l", "i", "o"})
FORMERLY = frozenset({"was", "from", "previously", "before", "prev"})
AGAIN = frozenset({"that's", "thats", "it's", "its", "maybe", "perhaps", "or", "no"})


def _mixed_up(items: tuple[Item, ...], toks: Toks) -> Iterator[str]:
    """ "i mixed up 12 and 13: 12 is 220": what was told before may be wrong."""
    told = any(i.role in NUMBERS for i in items)
    for item in items if told else ():
        owned = item.value == "repair" and word(toks, item.start) in MISTAKEN  # "oops bed 21 was 359"
        if owned or (item.unread and item.name in MISTAKEN):
            yield f"{item.name!r} may say that what was told before is wrong"


def _wrong_behind(items: tuple[Item, ...], toks: Toks) -> Iterator[str]:
    """ "410 at six wrong time": what is wrong, and what would be right?"""
    last = items[-1] if items else None
    wrong = last is not None and last.value == "kind" and last.name == "corrected"
    taken_back = any(i.value == "kind" and i.name == "withdrawn" for i in items)  # "delete 2000, wrong pt"
    named = last is not None and last.end > last.start + 1 and word(toks, last.start) == "wrong"
    if wrong and named and not taken_back:
        yield from ("what is wrong is told behind it" for i in items if i.role == "num")


def _other_way(items: tuple[Item, ...], toks: Toks) -> Iterator[str]:
    """ "not the other way round"."""
    said = any(word(toks, k) in OTHER_WAYS and word(toks, k + 1) in WAYS for k in range(len(toks)))
    swapped = not {"versa", "other", "opposite"}.isdisjoint(toks.words) and (said or "versa" in toks.words)
    if any(i.role in NUMBERS | ({"num"} if swapped else set()) for i in items if said or swapped):
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


def _totalled(items: tuple[Item, ...], _: Toks) -> Iterator[str]:
    """ "330 total at 1400": the sum, or what the canister shows?"""
    for before, item, after in zip(items, items[1:], items[2:], strict=False):
        summed = item.role == "cue" and item.value == "output" and item.start == before.end
        bare = before.role == "level" and before.lead in {"", "at"} and not before.unit
        if summed and bare and after.role in {"output", "time"} and after.at:
            yield "a total may be an amount"


def _given(items: tuple[Item, ...], _: Toks) -> Iterator[str]:
    """ "gave 20 lasix at 0600": how much of something else."""
    for before, item in pairwise(items):
        amount = before.role in {"volume", "output"} and not before.unit
        amount |= before.role == "level" and before.unit == "litre" and not before.lead  # oxygen
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


def lettered(items: tuple[Item, ...], toks: Toks) -> Iterator[str]:
    """ "bed 9-A line 240", where the unit has no 9A: the letter is of the label, and no article."""
    for item in items:
        letter = word(toks, item.end + 1)
        dashed = word(toks, item.end) == "-" and glued(toks, item.end) and glued(toks, item.end + 1)
        if item.role == "bed" and dashed and letter in LABEL_LETTERS:
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


def _put_under(items: tuple[Item, ...], toks: Toks) -> Iterator[str]:
    """ "put the 1900 on bed 9", "the 1700 for 19 was taken at 1640": a level, or the line of that time?"""
    for item in items:
        plain = item.role == "level" and item.full_clock and not (item.unit or item.at or item.lead)
        if not plain or word(toks, item.start - 1) not in {"the", "my"}:
            continue
        behind = word(toks, item.end)
        put = word(toks, item.start - 2) in PUT and behind in {"under", "to", "down"}
        if put or behind in {"on", "for", "in"} or toks.said[item.end : item.end + 2] in AGREED:
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


def _or_else(items: tuple[Item, ...], toks: Toks) -> Iterator[str]:
    """ "1210 or it's 1310", "level 1400 or time 1400", "at 1400 or 4B": one of two, and not both."""
    said = [i for i in items if i.role in NUMBERS | {"num", "time", "bed", "tube"}]
    for before, after in pairwise(said):
        between = toks.said[before.end : after.start]
        asked = after.role not in {"bed", "tube"} and "or" in {before.link, after.link}
        if "or" in between and not asked and OR_WORDS.issuperset(between):
            yield "one number or the other"


def _of_before(items: tuple[Item, ...], toks: Toks) -> Iterator[str]:
    """ "9 previous line 640": a line that was told before, and no new one."""
    if any(i.role == "time" for i in items) or sum(i.role == "level" for i in items) != 1:
        return
    for item in items:
        before = toks.said[max(0, item.start - NEAR) : item.start]
        if item.role == "level" and not BEFORE.isdisjoint(before):
            yield "a line of before"


def _is_no_line(items: tuple[Item, ...], toks: Toks) -> Iterator[str]:
    """ "9 480 room", "480 all night", "480 in ER": what is left, what came in a night, and elsewhere."""
    for item in items:
        behind = toks.said[item.end : item.end + 2]
        weighed = item.start == 1 and word(toks, 0) == "kg"  # "kg 64 CT2"
        if item.role == "level" and (weighed or behind[0] in ROOM_LEFT or behind in NO_LINES):
            yield "how much room is left, or came, or was there"
        one = sum(i.role == "bed" for i in items) == sum(i.role == "level" for i in items) == 1
        k = item.end
        while word(toks, k) in {"total", "for", "in", "altogether"}:
            k += 1
        if item.role == "level" and one and word(toks, k) in {"both", "each"} and word(toks, k + 1) in BREAKS:
            yield "of both tubes, or of each"


def _of_fluid(items: tuple[Item, ...], toks: Toks) -> Iterator[str]:
    """ "480 of blood", "blood 480", "480 in 300 out": how much; in a canister, where it stands."""
    if (
        not toks.words.isdisjoint(CANISTERS | {"drain", "line", "mark", "level"})
        or {"has", "it"} <= toks.words
    ):
        return
    for item, after in pairwise(items):
        bare = after.role == "level" and not after.lead and after.start == item.end
        if bare and item.value == "fluid" and toks.said[item.start : item.end] in NOUNS:
            yield "how much blood, or where the line stands"
        fluid = after.role == "cue" and after.value == "fluid" and after.start == item.end + 1
        taken = word(toks, item.end) == "in" and after.role in {"output", "volume", "level"}
        if item.role == "level" and ((fluid and word(toks, item.end) == "of") or taken):
            yield "how much it was, or where the line stands"


def _bidden_at(items: tuple[Item, ...], toks: Toks) -> Iterator[str]:
    """ "clamp at 480": from which line on it is to be clamped, and nothing that was done."""
    for event, level in pairwise(items):
        base = event.role == "cue" and word(toks, event.end - 1) in {"clamp", "unclamp"}
        if base and level.role == "level" and word(toks, level.start - 1) in {"at", "@"}:
            yield "what is to be done at that line"


def _broken_off(items: tuple[Item, ...], toks: Toks) -> Iterator[str]:
    """ "mark 640 wait no hang on": what was told is taken back, and nothing told in its place."""
    said = [i for i in items if i.role != "sep" and not (i.role == "cue" and i.value in {"filler", "word"})]
    last = said[-1] if len(said) > 1 else None
    if last is None or last.value != "repair" or word(toks, last.end - 1) in POLITE:
        return
    if any(text.isalnum() for text in toks.said[last.end : len(toks)]):
        return  # "hang on a second"
    if any(i.role in NUMBERS for i in said):
        yield "a mending at the end mends what was told"


def _not_done(items: tuple[Item, ...], toks: Toks) -> Iterator[str]:
    """ "no canister change": an event by its name that did not happen; "no, canister changed" did."""
    for no, event in pairwise(items):
        named = event.role == "cue" and event.value == "kind" and event.start == no.end
        new = word(toks, event.start) in {"new", "fresh"}  # "no new canister for 5"
        called = new or word(toks, event.end - 1) in NAMES_OF_EVENTS
        if named and no.role == "cue" and no.value == "no" and called:
            yield "an event that did not happen"


def _same_of_another(items: tuple[Item, ...], toks: Toks) -> Iterator[str]:
    """ "no change of canister", "no change in orders": nothing is told of what came."""
    for item in items:
        k = item.end + 1
        while word(toks, k) in ARTICLES:
            k += 1
        left = word(toks, item.start) == "unchanged" and word(toks, item.start - 1) in CANISTERS
        if item.value == "same" and left and not any(i.role == "level" for i in items):
            yield "the level has not changed, or the canister was not"
        same = item.role == "cue" and item.value == "same" and word(toks, item.end) in {"in", "of", "to"}
        ours = OF_OUTPUT - (CANISTERS if word(toks, item.end) == "of" else set())  # "no change of canister"
        owned = next((j for j in range(k, len(toks)) if toks.said[j : j + 2] == ("'", "s")), None)
        if owned is not None and owned <= k + 2:
            k = owned + 2  # "no change in bed 20's meds"
        if same and word(toks, k).isalpha() and word(toks, k) not in ours:
            yield "what has not changed may be something else"
    alone = not any(i.role == "level" for i in items)
    for item, after in zip_longest(items, items[1:]):
        if item.role != "cue" or item.value != "same":
            continue
        last, behind = word(toks, item.end - 1), toks.said[item.end : item.end + 2]
        if last in {"as", "from", "since"} and not OTHER_SHIFTS.isdisjoint(behind):
            yield "the same as in another shift"
        beside = after if after is not None and after.start == item.end else None
        if last == "same" and alone and beside and beside.unread and beside.name not in AGAIN_SAID:
            yield "what is the same may be something else"  # "9 same nurse"


BEFORE, NEAR = frozenset({"previous", "prior", "earlier", "prev", "report"}), 3
BREAKS = frozenset({"", ",", ".", ";", "!", "at", "@", "tubes", "drains"})
NOUNS = frozenset({("blood",), ("pus",)})
ROOM_LEFT = frozenset({"room", "space", "headroom"})
NO_LINES = frozenset({("all", "night"), ("all", "day"), ("in", "er"), ("from", "er"), ("whole", "shift")})
POLITE = frozenset({"sorry", "apologies", "mean"})
"""Behind a line these mend nothing: "1140 at 0630, bed 15 i mean"."""
OR_WORDS = frozenset(
    {
        "or",
        "it's",
        "its",
        "it",
        "is",
        "was",
        "maybe",
        "perhaps",
        "possibly",
        "at",
        "@",
        "time",
        "level",
        "line",
    }
    | {"mark", "bed", "the", "a", "that's", "thats", "else", "about", "around", ",", "could", "be", "rather"}
)
"""With these between two numbers the second may be instead of the first."""
CANISTERS = frozenset({"canister", "box", "bottle", "chamber", "unit"})
ARTICLES = frozenset({"the", "a", "any", "his", "her", "their", "my", "chest"})
OF_OUTPUT = frozenset(
    {
        "output",
        "drainage",
        "volume",
        "amount",
        "level",
        "line",
        "mark",
        "reading",
        "drain",
        "tube",
        "it",
        "ml",
    }
    | {"bed", "room", "rm", "that", "total", "fluid", "left", "right", "last", "one"}
    | CANISTERS
)
"""What has not changed there, or where."""
AGAIN_SAID = frozenset(
    {"again", "same", "still", "overnight", "thanks", "thx", "ta", "pls", "please", "too", "also"}
)
OTHER_SHIFTS = frozenset(
    {"yesterday", "shift", "week", "nights", "days", "monday", "sunday", "handover", "start", "when"}
    | {"evening", "morning"}
)
"""Moments that are not of the last line: "same as yesterday", "same as at handover"."""
NAMES_OF_EVENTS = frozenset({"change", "exchange", "swap", "placement", "insertion", "removal", "transfer"})
AGREED = frozenset((be, good) for be in ("is", "was") for good in ("fine", "ok", "right", "correct", "good"))
MOVED = frozenset({"put", "shift"})
PUT = frozenset({"put", "log", "enter", "chart", "record", "stick", "add", "file"})
MIXED = (
    *HALF_SAID,
    Rule(_put_over, frozenset({"bed"}), MOVED),
    Rule(_put_under, frozenset({"level"}), frozenset({"the", "my"})),
    Rule(_named_over, frozenset({"repair"})),
    Rule(_told_again, frozenset({"time"}), AGAIN),
    Rule(_broken_off, frozenset({"repair"})),
    Rule(_is_no_line, frozenset({"level"}), ROOM_LEFT | {"all", "er", "whole", "both", "each", "kg"}),
    Rule(_of_fluid, frozenset({"level"}), frozenset({"of", "in", "blood", "pus"})),
    Rule(_bidden_at, frozenset({"level"}), frozenset({"clamp", "unclamp"})),
    Rule(_of_before, frozenset({"level"}), BEFORE),
    Rule(_or_else, frozenset({"time", "bed", "tube"}), frozenset({"or"})),
    Rule(_not_done, frozenset({"no"}), NAMES_OF_EVENTS | {"new", "fresh"}),
    Rule(_same_of_another, frozenset({"same"})),
    Rule(_was_set, frozenset({"check"}), FORMERLY),
    Rule(row_of_beds, frozenset({"level"}), frozenset({"beds"})),
    Rule(thrice, frozenset({"bed"})),
    Rule(lettered, frozenset({"bed"}), frozenset({"-"})),
    *BEDLIKE,
    Rule(_letter_inside, NUMBERS, ALIKE),
    Rule(_openers, frozenset({"sep"})),
    Rule(_mixed_up, frozenset({"word", "repair"})),
    Rule(_wrong_behind, frozenset({"kind"}), frozenset({"wrong"})),
    Rule(_other_way, NUMBERS | {"num"}, WAYS | {"versa"}),
    Rule(_starred, TOLD, frozenset({"*"})),
    Rule(_totalled, frozenset({"output"})),
    Rule(_given, frozenset({"foreign"})),
    Rule(_replaced, frozenset({"change"})),
)
