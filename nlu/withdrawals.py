"""Withdrawals: which line or message is taken back."""

from __future__ import annotations

from datetime import datetime
from itertools import pairwise

from .corrections import LINE_WORDS, is_told_of
from .entered import ENTERED
from .items import AMOUNTS, FINDINGS, FULL_HOUR, RECENT, Item
from .labels import tube_name
from .moments import LIST_REACH
from .neighbours import phrase_of
from .numbers import Toks, word
from .sides import TOWARD
from .statements import Statement, Unclear, Withdrawn
from .whichline import is_named

TAKING_BACK = frozenset({"scratch", "strike"})
REASONS = frozenset(
    {"that", "that's", "thats", "it", "it's", "its", "was", "wrong", "not", "my", "i", "mistake", "misread"}
    | {"sorry", "typo", "meant", "read", "they", "these", "those", "this", "because", "bc", "as", "since"}
    | {"cos", "cuz", "he", "she", "we", "had", "misread", "student"}
)
"""What the reason begins with for which something is taken back."""
OPENING = frozenset(
    {"it", "it's", "its", "that", "that's", "thats", "because", "bc", "as", "since", "cos", "cuz", "i"}
)
"""With no stop before them these open a reason behind what is named."""
WHO = frozenset({"he", "she", "they", "someone", "patient", "pt"})
STOPS = frozenset({",", ".", ";", "-", "(", "!"})
TOLD = (
    AMOUNTS
    | FINDINGS
    | {"num", "bed", "tube", "time", "bad", "alt", "check", "what", "level", "levelat", "same"}
)
"""Pieces that may be more than a reason."""
UNMADE = frozenset({"happened", "happen", "real", "exist", "taken"})
"""What a line did not, or was not, that was never made."""
OF_AN_ENTRY = frozenset(
    {"entry", "entries", "message", "msg", "text", "texts", "one", "last", "sent", "put", "said", "entered"}
    | {"wrote", "typed", "charted", "that", "it", "number", "what"}
)
"""Behind "take back" these say what."""
ENTRIES = frozenset({"entry", "entries", "message", "msg", "text", "duplicate", "dup", "extra", "twice"})
"""Beside what is taken back these only say that it was sent."""
OF_A_PATIENT = frozenset(
    {
        "patient",
        "pt",
        "pts",
        "him",
        "her",
        "them",
        "to",
        "from",
        "theatre",
        "theater",
        "or",
        "ct",
        "icu",
        "ir",
    }
)
BY_HAND = frozenset({"remove", "withdraw", "pull", "take"})
"""What may be done to a tube as well as to its entry."""
THINGS = frozenset({"tubeword", "canister"})
ORDERED = frozenset(
    {"scan", "scans", "mri", "xray", "x-ray", "cxr", "film", "ultrasound", "echo", "transport", "order"}
    | {"orders", "transfer", "porter", "porters", "theatre", "theater", "booking", "appointment"}
    | {"alarm", "alarms", "reminder", "reminders", "timer", "list"}
    | {"referral", "consult", "physio", "endoscopy", "dialysis", "discharge", "procedure", "surgery"}
)
"""What is cancelled on a ward beside lines."""
LINES = frozenset({"line", "lines", "mark", "marks", "level", "reading"})
OF_A_LINE = LINES | {"tube", "drain", "out", "removal"}
IGNORING = frozenset({"ignore", "disregard", "forget", "drop", "skip"})
MAY = frozenset({"can", "could", "may", "should", "to", "will", "must", "crew", "team", "days", "nights"})
"""Before such a word these say that it is for others to do."""
NOON, HUNDRED = 12, 100
MANY = frozenset({"both", "all", "every", "each", "everything"})
EVENTS = frozenset(
    {"change", "exchange", "swap", "changeover", "move", "placement", "removal", "clamp", "check"}
)
"""Entries of another kind than a line: "cancel the change on 9"."""


def is_withdrawal(items: tuple[Item, ...]) -> bool:
    """Whether a line or message is taken back."""
    return "withdrawn" in [i.name for i in items if i.value == "kind" and i.role == "cue"]


def opened(items: tuple[Item, ...], toks: Toks) -> tuple[Item, ...]:
    """ "no no scratch that": where nothing else is told, the message before is taken back."""
    if TAKING_BACK.isdisjoint(toks.words):
        return items
    if any(i.role in TOLD or (i.role == "cue" and i.value in TOLD | {"kind"}) for i in items):
        return items
    return tuple(
        i._replace(value="kind", name="withdrawn")
        if i.value == "repair" and not TAKING_BACK.isdisjoint(toks.said[i.start : i.end])
        else i
        for i in items
    )


def unmade(items: tuple[Item, ...], toks: Toks) -> tuple[Item, ...]:
    """ "1100 mark on 5 never happened": said last of a line and its time or bed, it takes the line back."""
    if UNMADE.isdisjoint(toks.words) or not any(map(_is_line, items)):
        return items
    if not any(i.role == "time" or (i.role == "num" and i.clocklike) for i in items):
        return items
    k = next((k for k, i in enumerate(items) if i.role == "cue" and i.value == "neg"), 0)
    last = [w for w in toks.said[items[k].end : len(toks)] if w not in {"it", "pls", "please", "."}]
    if not k or len(last) != 1 or last[0] not in UNMADE:
        return items
    return (*items[:k], items[k]._replace(value="kind", name="withdrawn"))


def entered_in_error(items: tuple[Item, ...], toks: Toks) -> tuple[Item, ...]:
    """ "bed 8 1835 entered in error": said last of one line, with nothing that is right, it takes it back."""
    if toks.said[len(toks) - 2 : len(toks)] != ("in", "error") or word(toks, len(toks) - 3) not in ENTERED:
        return items
    values = [i for i in items if i.role in {"num", "time", "bad"} and i.label is None]
    righted = [i for i in items if i.role == "cue" and i.name == "corrected"]
    if len(values) != 1 or len(righted) != 1 or righted[0] is not items[-1]:
        return items
    kept = tuple(i for i in items[:-1] if not (i.unread and i.name in ENTERED))
    return (*kept, righted[0]._replace(name="withdrawn"))


def _is_line(item: Item) -> bool:
    return item.role == "cue" and item.value in LINE_WORDS


def without_reason(items: tuple[Item, ...], toks: Toks) -> tuple[Item, ...]:
    """What is taken back, without the reason behind it: "scratch that, that was the urine bag"."""
    stop, reason = _reason(items, toks)
    told = tuple(i for i in items if i.start < stop)
    named = any(i.role == "bed" for i in told)
    right = any(i.name == "corrected" and phrase_of(i, toks) in TOWARD for i in reason)
    strange = TOLD if right or not named else TOLD - {"bed"}
    plain = all(
        i.role not in strange
        and not (i.role == "cue" and i.value in TOLD - {"bed"} and not _is_of_reading(i, toks))
        for i in reason
    )
    began = bool(reason) and word(toks, stop + (word(toks, stop) in STOPS)) in REASONS
    items = told if began and plain and not any(map(_happens, reason)) else items
    return tuple(i for i in items if not (i.unread and i.name in ENTRIES))


def _is_of_reading(item: Item, toks: Toks) -> bool:
    """ "remove the 1800 line, I read the catheter bag": how it came, and no line."""
    return item.value == "level" and word(toks, item.start) in {"i", "we"}


def tells_more(items: tuple[Item, ...], toks: Toks) -> bool:
    """ "scratch that, he tipped it over", "scratch that, it was the left": more than what is taken back."""
    stop, reason = _reason(items, toks)
    if not any(i.role in {"bed", "num"} for i in items if i.start < stop) and _is_of_another(reason, toks):
        return True
    named = any(i.role in {"bed", "num"} for i in items)
    return any(map(_happens, reason)) or (not named and any(i.role == "tube" for i in reason))


def _is_of_another(reason: tuple[Item, ...], toks: Toks) -> bool:
    """ "delete that leak, it was the bed 14 one": where it belongs, and not which is taken back."""
    return any(i.role == "bed" and is_told_of(i, toks) for i in reason)


def _reason(items: tuple[Item, ...], toks: Toks) -> tuple[int, tuple[Item, ...]]:
    """Where the first stop behind the word for it is, or the reason itself, and the pieces of the reason.

    "delete the 1600 on bed 21 it was the foley": with no stop, behind the bed or the time.
    """
    begun = next((i for i in items if i.name == "withdrawn"), items[-1])
    named = min(
        (i.end for i in items if i.start >= begun.end and i.role in {"bed", "num", "time"}), default=0
    )
    opening = (
        k
        for k in range(begun.end, len(toks))
        if word(toks, k) in STOPS | WHO or (0 < named <= k and word(toks, k) in OPENING)
    )
    stop = next(opening, len(toks))
    return stop, tuple(i for i in items if i.start > stop or (i.start == stop and i.role != "sep"))


def _happens(item: Item) -> bool:
    """Whether a piece tells what happened or was found, and is no word of what was wrong."""
    event = item.value == "what" or item.value in FINDINGS
    settled = item.name in {"corrected", "withdrawn", "acknowledged", "help"}
    return item.role == "cue" and (event or (item.value == "kind" and not settled))


def _is_time_of_line(item: Item, arrived: datetime) -> bool:
    """ "the mark at 1500": when it was, where that is a full hour or lately."""
    full = item.full_clock and all(not c.minute for c in item.clocks)
    return item.lead in LINE_WORDS and item.at and (full or item.within(RECENT, arrived))


def is_of_a_level(items: tuple[Item, ...], arrived: datetime) -> bool:
    """ "delete the 1900 mark, mark 1050": beside a withdrawal another line is told."""
    leads = LINE_WORDS | {"levelat"}
    nums = [i for i in items if i.role == "num" and i.lead in leads and not _is_time_of_line(i, arrived)]
    return any(not _is_bed_behind(i, items) for i in nums)


def _is_bed_behind(item: Item, items: tuple[Item, ...]) -> bool:
    """ "delete 1900 mark 20": the word for a line belongs to the time before it, and the number is a bed."""
    named = any(i.role == "bed" for i in items)
    cue = next((k for k, i in enumerate(items) if i.role == "cue" and i.end == item.start), 0)
    time = items[cue - 1] if cue else None
    timed = time is not None and time.end == items[cue].start and (time.role == "time" or time.clocklike)
    return timed and not named and item.label is not None and not item.unit


def _is_one(item: Item) -> bool:
    """ "undo the 8A one": no number."""
    return item.role == "num" and item.amount == 1 and not item.unit and not item.digits


def _is_hour(item: Item) -> bool:
    """ "delete what i put for bed 19 at 3": under the rule of bare hours."""
    told = item.role == "num" and 0 < (item.amount or 0) <= NOON and not item.unit
    return told and (item.lead == "at" or (item.lead == "level" and item.at))


def _is_a_bed(item: Item) -> bool:
    """ "bed 9", "for 9"."""
    return item.role == "bed" or (item.label is not None and item.link in {"for", "on", "in"})


def _may_be_level(item: Item, items: tuple[Item, ...], arrived: datetime) -> bool:
    """ "disregard 1050": the level of the line, or its time; a full hour or a recent one is the time."""
    if item.role == "time" or item.lead in {"at", "timeword"}:
        return False
    short = len(item.digits) == FULL_HOUR - 1  # "void the 415 on bed 3"
    if not item.digits and item.amount is not None and HUNDRED <= item.amount < 10 * HUNDRED:
        return not is_named(item, items)  # said aloud: "bed six six hundred scratch that"
    if short and item.digits.endswith("00"):
        found = item.when(arrived, LIST_REACH).sure
        short = found is not None and found.hour >= NOON  # "ignore the 600 for 14" in the evening
        if short and not is_named(item, items):
            return True
    if not short and item.within(RECENT, arrived):
        return False
    whole = len(item.digits) == FULL_HOUR and not item.digits.startswith("0")
    if whole and not (is_named(item, items) or item.within(RECENT * 3, arrived)):
        return True  # "ignore the 1200 i just sent" at seven in the evening
    if _is_time_of_line(item, arrived):
        return False
    return (
        not is_named(item, items) and not item.digits.startswith("0") and all(c.minute for c in item.clocks)
    )


def _bed_among(times: list[Item]) -> Item | None:
    """ "cancel 418 1900", "the last one on 405": where labels look like times, the number that is one."""
    found = [i for i in times if i.role == "num" and i.label is not None and not (i.at or i.lead)]
    told = len(times) > 1 or any(i.link in {"on", "for", "in"} for i in found)
    return found[0] if told and len(found) == 1 else None


def _may_be_of_a_patient(text: str) -> bool:
    """ "take back 9": the entry, or the patient, to theatre?"""
    said = set(text.replace(",", " ").split())
    return "take back" in text and (OF_AN_ENTRY.isdisjoint(said) or not OF_A_PATIENT.isdisjoint(said))


def _may_be_by_hand(items: tuple[Item, ...], text: str) -> bool:
    """ "remove the 1400 tube for bed 5": its line, or the tube?"""
    said = set(text.replace(",", " ").split())
    thing = any(i.role == "tube" or (i.role == "cue" and i.value in THINGS) for i in items)
    return thing and not said.isdisjoint(BY_HAND) and said.isdisjoint(OF_AN_ENTRY)


def _may_be_ordered(text: str) -> bool:
    """ "cancel the ct scan for bed 12", "cancel transport for 9": what was booked, and no line."""
    words = text.replace(",", " ").replace(".", " ").split()
    said = set(words)
    films = "ct" in said and "cancel" in said and said.isdisjoint(OF_A_LINE)
    films |= ("bed", "for") in pairwise(words)  # "cancel the bed for 12"
    return (films or not said.isdisjoint(ORDERED)) and said.isdisjoint(OF_AN_ENTRY | LINES)


def _says_which(text: str) -> bool:
    """ "ignore my last on 3", "disregard what i sent for 3": something that was sent."""
    return not OF_AN_ENTRY.isdisjoint(text.replace(",", " ").split())


def _may_be_left_out(items: tuple[Item, ...], text: str) -> bool:
    """ "days can ignore bed 30, no drain in there": a bed that others may leave out, and no line of it."""
    said = text.replace(",", " ").split()
    others = any(verb in IGNORING and before in MAY for before, verb in pairwise(said))
    bare = any(i.role == "cue" and i.value == "no" for i in items)
    thing = any(i.role == "cue" and i.value in THINGS for i in items)
    return others or (bare and thing and not IGNORING.isdisjoint(said))


def _times(items: tuple[Item, ...], arrived: datetime) -> list[Item]:
    named = any(map(_is_a_bed, items))
    clocks = (i for i in items if i.role == "num" and i.clocklike and i.within(LIST_REACH, arrived))
    found = {*clocks, *(i for i in items if i.role == "time" or (named and _is_hour(i)))}
    return [i for i in items if i in found]


def withdrawn(items: tuple[Item, ...], arrived: datetime, text: str) -> Statement | Unclear:
    """What is taken back: the last message, or the line of that bed and time."""
    items = tuple(i.as_role("bed") if i.role == "num" and _is_bed_behind(i, items) else i for i in items)
    beds = list(dict.fromkeys(i.label for i in items if i.role == "bed"))
    tubes = [i.name for i in items if i.role == "tube"]
    if any(i.role == "bed" or (i.role == "num" and not _is_one(i)) for i in items):
        items = tuple(i for i in items if not _is_one(i))
    times = _times(items, arrived)
    nums = [i for i in items if i.role == "num" and i not in times]
    if not beds and len(nums) == 1 and nums[0].label is not None and not _is_hour(nums[0]):
        beds, nums = [nums[0].label], []
    if not beds and not nums and (bed := _bed_among(times)) is not None:
        beds, times = [bed.label], [i for i in times if i is not bed]
    made = Withdrawn(bed=beds[0] if beds else None, tube=tube_name(tubes) if tubes else None)
    if any(i.role in {"foreign", "claimed"} for i in items) or _may_be_ordered(text.lower()):
        return Unclear(slot="kind", text=text, statement=made)  # "cancel the breakfast tray for 12"
    if len(beds) > 1 or any(i.role == "bed" and not i.known for i in items):
        return Unclear(slot="bed", text=text, choices=tuple(b for b in beds if b), statement=made)
    lines = any(i.role == "cue" and i.value in LINE_WORDS for i in items)
    whole = times or nums or not beds or _says_which(text.lower())
    if not (lines or whole) and _may_be_left_out(items, text.lower()):
        return Unclear(slot="kind", text=text, statement=Statement(bed=made.bed))
    if not lines and (_may_be_of_a_patient(text.lower()) or _may_be_by_hand(items, text.lower())):
        return Unclear(slot="kind", text=text, statement=Statement(bed=made.bed))
    if any(i.role == "bad" for i in items):
        return Unclear(slot="at" if beds else "bed", text=text, statement=made)
    many = MANY & set(text.lower().split())  # "delete both marks on 6"
    many |= set() if times else (EVENTS | {"before", "penultimate"}) & set(text.lower().split())
    if many or len(times) > 1 or nums or any(_may_be_level(i, items, arrived) for i in times):
        return Unclear(slot="at", text=text, statement=made)
    if times:
        found = times[0].when(arrived, LIST_REACH)
        if found.sure is None:
            return Unclear(slot="at", text=text, choices=found.values or found.nearest, statement=made)
        return Withdrawn(bed=made.bed, tube=made.tube, at=found.sure)
    return made
