"""What a nurse asks: topic, window, beds; told from a report by having no level or event in it."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace
from datetime import datetime, time, timedelta
from functools import partial
from itertools import pairwise
from typing import Final, Literal, cast

from . import questions, shiftwords
from .drafts import SIDES
from .items import AMOUNTS, FINDINGS, Item, could_be_level, is_now
from .labels import tube_name
from .moments import LIST_REACH, distinct
from .numbers import starts_number, word
from .patterns.leads import BED_SAID
from .pipeline import Read
from .roles import CHECK_LIMITS
from .rules import there
from .statements import Asked, Checked, Statement, Unclear, WindowName
from .topics import SUMS, sums_up_a_bed
from .wholeunit import is_of_all

ASKING = frozenset({"question", "mark_of_question"})
TELLING = ASKING | SUMS | {"ask"}
"""Without one of these, and without a bed behind a word for a sum, nothing is asked."""
UNIT_WIDE = frozenset({"me", "repeat", "open", "due", "beds", "handoff", "history"})
TIMELESS = frozenset({"me", "repeat", "open", "beds"})
ASKED_IF = frozenset(
    {"me", "see", "check", "know", "say", "ask", "wonder", "wondering", "sure", "out", "tell", "asking"}
    | {"deciding", "decide", "debating"}
)
"""Before "if" these make it a question."""
SETTING = frozenset({"on", "to", "cont", "continuous", "low"})
"""With these before it, suction is told and not asked about."""
WITH_WINDOW = frozenset({"total", "trend", "chart"})
ASKING_FOR = frozenset({"show", "list", "which", "what", "give", "see"})
FINE = frozenset({"good", "ok", "okay", "fine", "topped", "filled", "intact", "normal", "stable", "great"})
_JOINING = "and & , + / also then or ; . ' s the for on"
JOINING = BED_SAID | frozenset(_JOINING.split())
LINES = frozenset({"level", "levelat"})
NIGHTS: Final[dict[object, Literal["last", "this"]]] = {"last": "last", "tonight": "this"}
WHEN = frozenset({"at", "for", "by", "@"})
RANGING = frozenset({"-", "to", "thru", "through", "til", "till"})
UNMOVED = frozenset({"same", "unchanged"})
DAY = timedelta(hours=24)
SEEN = frozenset({"acknowledged", "help", "corrected"})
SINCE = frozenset({"since", "after", "before", "from", "last", "until", "at"})
EXCHANGE = frozenset({"exchange", "change", "changed", "swap", "exchanged"})
SUMMING = frozenset({"output", "bed", "tubeword", "canister", "window", "span", "since"})
REPORTS = frozenset({"placed", "exchanged", "removed", "moved", "withdrawn", "corrected"})


def is_query(items: tuple[Item, ...]) -> bool:
    """Whether these pieces ask rather than report."""
    told = sums_up_a_bed(items)
    if not told and there(items).isdisjoint(TELLING):
        return False
    cues = [i for i in items if i.role == "cue"]
    question = _asks(items)
    asks = question or any(i.value == "ask" for i in cues)
    windowed = (told or any(i.value in SUMS for i in cues)) and (
        any(i.value in {"window", "span"} for i in cues)
        or any(i.role == "time" and _is_window(i) for i in items)
    )
    if not asks and windowed and any(i.role == "time" and not _is_window(i) and not i.lead for i in items):
        return False
    found = any(i.value in FINDINGS for i in cues)  # "7 drainage bloody today": no sum of that day
    if not asks and (not windowed or found) and not _is_bare_total(items):
        return False
    seen = any(i.value == "ask" and i.name == "checks" for i in cues)
    if not question and (not asks or seen) and any(i.value == "neg" for i in cues):
        return False  # "3 hasn't drained since midnight", "didn't see any leak"
    if any(i.role in AMOUNTS for i in items) or _is_line_and_time(items):
        return False
    if any(i.role in {"num", "bad", "alt", "check", "claimed", "denied"} for i in items):
        return False
    if any(a.role == "bed" and i.loose_time and could_be_level(i) for a, i in pairwise(items)):
        return False  # "bed 2 340 no leak, ok?"
    handoff = any(i.value == "ask" and i.name == "handoff" for i in cues)
    reports = REPORTS - {"moved"} if handoff and _is_before_leaving(items) else REPORTS
    return question or not any((i.value == "kind" and i.name in reports) or i.value in UNMOVED for i in cues)


def _asks(items: tuple[Item, ...]) -> bool:
    return any(i.role == "cue" and i.value in ASKING for i in items)


def _is_before_leaving(items: tuple[Item, ...]) -> bool:
    """ "report on 33 for transfer": with no bed behind it, what the report is for."""
    return items[-1].name == "moved" and items[-1].value == "kind"


def _is_line_and_time(items: tuple[Item, ...]) -> bool:
    """ "was at 610 when I looked at 1830": behind the word for a line stands no second time."""
    times = [i for i in items if i.role == "time"]
    named = any(i.role == "bed" for i in items)
    return named and len(times) > 1 and any(i.lead in LINES and i.amount is not None for i in times)


def _is_bare_total(items: tuple[Item, ...]) -> bool:
    """ "bed 7 total", "total 7": the word for a sum, a bed and no number; "12 draining well" asks nothing."""
    summed = any(i.role == "cue" and i.value == "output" and i.name != "going" for i in items)
    led = any(i.role == "bed" and i.lead == "output" for i in items)
    if not (summed or led):
        return False
    beds = [i for i in items if i.role == "bed" and i.known]
    plain = all(
        i.role in {"bed", "tube"}
        or (i.role == "time" and i.lead in {"since", "from"})
        or (i.role == "cue" and i.value in SUMMING)
        for i in items
    )
    return bool(beds) and plain


def asked(
    items: tuple[Item, ...], arrived: datetime, read: Read, shifts: Sequence[time] = ()
) -> list[Statement | Unclear]:
    """The queries that the pieces make, once per bed; `shifts` say which one "on nights" was."""
    each = questions.queries(items, read)
    made = [s for topic, part in each for s in _asked_once(topic, part, arrived, read, shifts)]
    return list(dict.fromkeys(made))


def _asked_once(
    topic: str | None, items: tuple[Item, ...], arrived: datetime, read: Read, shifts: Sequence[time]
) -> list[Statement | Unclear]:
    text = read.text
    if _tells_more(items, topic, read):
        return [Unclear(slot="kind", text=text)]
    items = tuple(_from_when(i, read) for i in items if not _says_nothing(i, read))
    beds = list(dict.fromkeys(i.label for i in items if i.role == "bed" and i.known))
    if topic == "checks" and _is_on_suction(items, read):
        told = [Checked(bed=bed) for bed in beds]
        return [Unclear(slot="suction_cmh2o", text=text, statement=s) for s in told]
    if topic is None:
        if beds and not any(i.role == "cue" and i.value == "question" for i in items):
            if any(i.role in {"time", "foreign"} or i.unread for i in items):
                return [Unclear(slot="kind", text=text)]
            topic = "last"
        else:
            return [Unclear(slot="kind", text=text)]
    named = [i for i in items if i.role == "tube"]
    several = {i.name for i in named} >= SIDES or any(b.start > a.end + 1 for a, b in pairwise(named))
    tubes = None if several else tube_name([i.name for i in named]) or None
    made = Asked(topic=topic, tube=tubes)  # type: ignore[arg-type]
    if topic in WITH_WINDOW:
        window, doubt = _window(items, arrived, shifts)
        if window is None and doubt is None and "shift total" in " ".join(read.tokens.said):
            window = "shift"
        when = _timed(made, window) if _says_when(items) else replace(made, window=window)
        if when.at is not None and topic != "chart":
            doubt = (when.at,)
        lost = window is None and any(map(partial(_is_since, read=read), items))
        lost |= window is None and not shiftwords.SAID.isdisjoint(read.tokens.words)
        if doubt or lost or _may_be_told(items, read):  # "since dialysis" is no window that we know
            made = replace(made, bed=beds[0] if beds else None)
            return [Unclear(slot="window", text=text, choices=doubt or (), statement=made)]
        made = when
    whole = topic in UNIT_WIDE or any(i.role == "cue" and i.name == "beds" for i in items)
    whole |= is_of_all(topic, items, read)
    return _of_beds(made, items, read, whole=whole)


def _of_beds(made: Asked, items: tuple[Item, ...], read: Read, *, whole: bool) -> list[Statement | Unclear]:
    """The question, once per bed; `whole` where it may be of the unit."""
    named = [i for i in items if i.role == "bed"]
    beds = list(dict.fromkeys(i.label for i in named if i.known))
    starts = {i.start for i in items if i.role in {"bed", "num"}}
    ranged = any(_begins_a_range(i, starts, read) for i in named)
    if ranged or any(not i.known for i in named) or (not beds and not whole):
        return [Unclear(slot="bed", text=read.text, statement=made)]
    set_to = any(i.lead in CHECK_LIMITS for i in named)  # "when is 9 due? on suction 20"
    if any(i.negative for i in named) or (made.topic != "checks" and set_to):
        return [Unclear(slot="bed", text=read.text, statement=made)]
    if made.topic in {"checks", "last"} and not _are_in_row(named, read):
        return [Unclear(slot="bed", text=read.text, choices=tuple(b for b in beds if b), statement=made)]
    return [replace(made, bed=bed) for bed in beds or [None]]


def _are_in_row(beds: list[Item], read: Read) -> bool:
    """ "checks for 2 and 3"; in "should the suction on 2 be 20?" one of the two is no bed."""
    between = (read.tokens.said[a.end : b.start] for a, b in pairwise(beds) if a.label != b.label)
    return all(JOINING.issuperset(said) and said != ("on",) for said in between)


def _begins_a_range(bed: Item, starts: set[int], read: Read) -> bool:
    """ "taking over 1A-4B. last lines?": of all beds between, and not of these two."""
    behind = bed.end + 1 in starts or starts_number(read.tokens, bed.end + 1)
    return behind and word(read.tokens, bed.end) in RANGING


def _is_since(item: Item, read: Read) -> bool:
    """Whether a piece says since when: "since dialysis", "since the exchange"."""
    first, last = word(read.tokens, item.start), word(read.tokens, item.end - 1)
    return first == "since" and (item.value == "since" or (item.value == "out" and last in EXCHANGE))


def _from_when(item: Item, read: Read) -> Item:
    """ "how much has bed 10 drained from 8 am": since then."""
    begins = item.role == "time" and word(read.tokens, item.start - 1) == "from"
    return item._replace(lead="from") if begins else item


def _is_left(item: Item, read: Read) -> bool:
    """ "where bed 3 was left": where its line was, and no side."""
    left = item.role == "tube" and item.name == "left"
    return left and word(read.tokens, item.start - 1) in {"was", "were", "been", "days", "nights"}


def _says_nothing(item: Item, read: Read) -> bool:
    """ "is it more than this morning": what it is compared with, and no window."""
    compared = item.role == "time" and word(read.tokens, item.start - 1) in {"as", "than", "with"}
    return compared or _is_count(item, read) or _is_left(item, read)


def _is_count(item: Item, read: Read) -> bool:
    """ "which patients have two tubes": how many, and no bed."""
    named = word(read.tokens, item.start - 1) in BED_SAID
    return item.role == "bed" and not named and word(read.tokens, item.end) in {"tubes", "drains", "cts"}


def _tells_more(items: tuple[Item, ...], topic: str | None, read: Read) -> bool:
    """Whether it tells something, and does not only ask."""
    if _is_remark(items, topic, read):
        return True
    foreign = topic != "me" and any(i.role == "foreign" for i in items)  # "logged in on this phone"
    if foreign or _supposes(read) or _exclaims(items, read):
        return True
    if topic is not None and _happened(items, read):
        return True
    last = topic == "last" and (_is_told_of_bed(items, read) or _is_told_of_time(items, read))
    return last or _is_told(items, topic)


def _happened(items: tuple[Item, ...], read: Read) -> bool:
    """ "changed the box on 9 do I chart it": told before anything is asked; "since the change" is when."""
    asking = next((i.start for i in items if i.role == "cue" and i.value in ASKING | {"ask"}), 0)
    return any(
        i.role == "cue"
        and i.start < asking
        and (i.value == "what" or (i.value == "kind" and i.name not in SEEN))
        and not {word(read.tokens, i.start - 1), word(read.tokens, i.start - 2)} & SINCE
        for i in items
    )


def _supposes(read: Read) -> bool:
    """ "if 4 tips over do i need a new box": of what has not happened; "tell me if 4 is full" asks."""
    said = read.tokens.said
    return any(text == "if" and (k == 0 or said[k - 1] not in ASKED_IF) for k, text in enumerate(said))


def _exclaims(items: tuple[Item, ...], read: Read) -> bool:
    """ "milky drainage on 5?!": a finding that astonishes, told as much as asked."""
    said = " ".join(read.tokens.said)
    marked = any(i.role == "cue" and i.value == "question" for i in items)
    return not marked and ("? !" in said or "! ?" in said)


def _is_told_of_time(items: tuple[Item, ...], read: Read) -> bool:
    """ "bed 12 last one, time was 0650": tells when it was, and asks nothing."""
    if _asks(items):
        return False
    toks = read.tokens
    return any(
        i.role == "time"
        and (i.lead == "timeword" or "was" in {word(toks, i.start - 1), word(toks, i.start - 2)})
        for i in items
    )


def _is_on_suction(items: tuple[Item, ...], read: Read) -> bool:
    """ "12 on suction", "dr wants wall suction": told, and how much was not; "12 suction" asks."""
    said = [i for i in items if i.role == "cue" and i.value == "suction"]
    asks = _asks(items) or any(i.role == "cue" and i.value == "ask" for i in items)
    if not asks and any(i.role == "cue" and i.value == "order" for i in items):
        return True
    return bool(said) and not asks and word(read.tokens, said[0].start) in SETTING


def _may_be_told(items: tuple[Item, ...], read: Read) -> bool:
    """ "chart 610 for bed 3" may tell a level, and "between 0500 and 0600" is no one moment."""
    times = [i for i in items if i.role == "time" and any(c.style in {"12", "24"} for c in i.clocks)]
    led = [i for i in times if i.lead or i.at or i.sure_time or word(read.tokens, i.start - 1) in WHEN]
    return len(times) > 1 or (bool(times) and not led and not _asks(items))


def _says_when(items: tuple[Item, ...]) -> bool:
    """ "what do I chart at 1900": when it is charted, and no window that begins then."""
    return not any(i.role == "time" and _is_window(i) for i in items)


def _timed(made: Asked, window: WindowName | timedelta | datetime | None) -> Asked:
    at = window if isinstance(window, datetime) else None
    return replace(made, at=at, window=None if at else window)


def _is_told(items: tuple[Item, ...], topic: str | None) -> bool:
    """ "last mark was 1050 at 1900", "tipped?": more than asks for the last line."""
    clocks = [i for i in items if i.role == "time" and not (_is_window(i) or is_now(i))]
    if any(i.role == "denied" for i in items):
        return True
    loose = [i for i in clocks if i.amount is not None and not (i.lead or i.at or i.sure_time)]
    if len(clocks) > 1 and loose and topic not in WITH_WINDOW:
        return True  # "heard at handover that 12 was 640 at 0600"
    if (topic in TIMELESS or topic == "capacity") and clocks:
        return True
    if not _asks(items) and any(i.role == "cue" and i.value == "what" for i in items):
        return True  # "left clamped right open"
    if topic == "handoff" and len(clocks) > 1 and not _asks(items):
        return True
    if topic not in {None, "last"} or any(i.role == "cue" and i.value == "question" for i in items):
        return False
    return len(clocks) > 1 or any(i.role == "cue" and i.value == "what" for i in items)


def _is_told_of_bed(items: tuple[Item, ...], read: Read) -> bool:
    """ "last one was bed 6": tells which bed it was of, and asks nothing."""
    if _asks(items):
        return False
    beds = [
        i.start - (word(read.tokens, i.start - 1) in {"bed", "room", "rm", "for"})
        for i in items
        if i.role == "bed"
    ]
    return any(
        word(read.tokens, k - 1) == "was" and word(read.tokens, k - 2) not in {"where", "what", "how"}
        for k in beds
    )


def _is_remark(items: tuple[Item, ...], topic: str | None, read: Read) -> bool:
    """ "my beds are quiet", "water seal level good", "no need for that last entry on 2": nothing is asked."""
    if _asks(items) or any(i.role == "cue" and i.value == "no" for i in items):
        return not _asks(items)
    if topic == "checks" and not any(i.role == "cue" and i.value == "ask" for i in items):
        return bool(set(read.tokens.said) & FINE)
    if topic == "beds":
        return _is_of_my_beds(items, read)
    beds = [i for i in items if i.role == "bed"]
    between = [read.tokens.said[a.end : b.start] for a, b in pairwise(beds)]
    return any(not set(said) <= JOINING and said[-1] not in BED_SAID for said in between)


def _is_of_my_beds(items: tuple[Item, ...], read: Read) -> bool:
    """ "my beds are all quiet": something is told of them, and nothing asked."""
    own = not (set(read.tokens.said) & ASKING_FOR) and "my" in read.tokens.words
    return own and not _asks(items) and len(items) > 1


def _is_window(time: Item) -> bool:
    return time.lead in {"since", "from"} or any(c.style == "date" for c in time.clocks)


def _window(
    items: tuple[Item, ...], arrived: datetime, shifts: Sequence[time]
) -> tuple[WindowName | timedelta | datetime | None, tuple[datetime | str, ...] | None]:
    """The window that was said, and the choices where it is not sure."""
    for item in items:
        if item.role == "cue" and item.value == "span":
            minutes = int(item.name)
            if minutes % 60:
                return None, (arrived,)
            return ("24h" if minutes == 1440 else timedelta(minutes=minutes)), None
    for item in items:
        if item.role == "time" and not is_now(item):
            since = (
                item.lead in {"since", "from"} and item.sure_time
            )  # "since midnight", asked in the evening
            found = item.when(arrived, DAY if since else LIST_REACH)
            day = item.clocks[0] if item.clocks else None
            if found.sure is not None:
                return found.sure, None
            if day is not None and day.style == "date" and day.day in {"today", "yesterday"} and not day.part:
                return ("day" if day.day == "today" else "last_day"), None
            if day is not None and day.style == "date" and day.day in NIGHTS:
                shift = shiftwords.night(NIGHTS[day.day], arrived, shifts)
                return shift, None if shift else ("shift", "last_shift")
            return None, distinct(found.values or found.nearest) or (arrived,)
    named = [i.name for i in items if i.role == "cue" and i.value == "window"]
    if whose := shiftwords.whose([i.name for i in items]):
        named = [whose]
    if named and named[0] in shiftwords.INSIDE:
        shift = shiftwords.named_shift(named[0], arrived, shifts)
        return shift, None if shift else ("shift", "last_shift")
    return (cast("WindowName", named[0]) if named else None), None
