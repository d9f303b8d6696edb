"""Bed, tube and time shared among the statements of one message."""

from __future__ import annotations

from collections.abc import Iterable, Iterator
from dataclasses import replace
from itertools import pairwise

from .drafts import SIDES, Draft, each_placed, each_side
from .foundofall import share_found
from .gathering import Gathering
from .items import FINDINGS, Item, is_now
from .leading import leads
from .numbers import Toks
from .patterns.asides import PATIENTS
from .patterns.leads import PAUSES
from .timing import is_other_bed, now_of_findings, share_times

OTHERWISE = frozenset({"word", "plan", "neg", "question"})
"""Cues beside a second tube that say something else of it than that it is out as well."""
AS_WELL = frozenset({"too", "also", "both", "likewise", "ditto"})
LOOKED = frozenset({"checked", "check", "recorded", "taken", "seen", "reviewed", "assessed"})
"""With one of these a time is of that, and not of when a tube went in."""
LED = frozenset({"level", "levelat", "is", "at"})
"""Before the number of a line."""
OF_SEVERAL = frozenset({"removed", "exchanged"})
"""Events told of several beds at once."""
BED_BEHIND = 2
"""Words of "and bed" between two beds."""
HEADING = 2
"""Words between "closing" and the number of its bed."""


def gathered(items: Iterable[Item], toks: Toks) -> list[Draft]:
    """The drafts of a reading, with bed, tube and time shared among them."""
    said = tuple(items)
    gathering = Gathering(leads(said))
    for item in said:
        gathering.add(item)
    if gathering.tube_said:
        _put_in(gathering.drafts, said, toks, gathering.arrival)
    if gathering.arrival is not None and any(d.volume for d in gathering.drafts):
        gathering.drafts[0].faults += 1  # "admitted from er with ct 400 out in er": charted there
    told = [part for draft in _with_last_lines(gathering.done()) for part in _with_since(draft)]
    told = [part for draft in told for part in _each_removed(draft, said)]
    told = [part for draft in told for part in each_side(draft)]
    gathering.drafts = [part for draft in told for part in each_placed(draft)]
    drafts = [
        d for d in gathering.drafts if d.bed or d.time or d.tubes or d.clashes or d.wants or d.has_content
    ]
    _without_told_again(drafts)
    if len(drafts) > 1:
        _share(drafts, said, gathering)
        share_found(drafts, toks)
    elif drafts and drafts[0].whats and drafts[0].checks:
        now_of_findings(drafts, [i for i in said if i.role == "sep" and i.value in PAUSES])
    return drafts


def _share(drafts: list[Draft], items: tuple[Item, ...], gathering: Gathering) -> None:
    _with_beds_behind(drafts)
    _with_bed_behind(drafts, [i.start for i in items if i.role == "sep"])
    _fold_bare(drafts)
    if gathering.leads.times:
        _under_headings(drafts)
    _share_beds(drafts)
    share_times(drafts, [i for i in items if i.role == "sep" and i.value in PAUSES])
    drafts[:] = [part for draft in drafts for part in _with_reason_of_bed(draft, drafts)]
    _share_order(drafts)
    _share_output(drafts)
    _share_closing(drafts, gathering.closes)
    _ask_which_tube(drafts, items)


def _ask_which_tube(drafts: list[Draft], items: tuple[Item, ...]) -> None:
    """ "R 305 L 60 0645, sxn 20": what stands apart, before or behind two tubes' lines, may be of either."""
    marks = [d for d in drafts if d.level is not None and d.tubes and d.bed is not None]
    if len({d.tube for d in marks}) < len(SIDES) or len({d.bed.label for d in marks if d.bed}) > 1:
        return
    first, last = marks[0], marks[-1]
    line = last.level.start if last.level else 0
    stops = [i.start for i in items if i.start > line and (i.role == "time" or i.value in PAUSES)]
    ahead = {n: c for n, c in first.checks.items() if c.start < first.tubes[0].start}
    named = [k for k, i in enumerate(items) if i.role == "tube" and stops and i.start > stops[0]]
    first_named = named[0] - (items[named[0] - 1].value in FINDINGS) if named else len(items)
    again = {i.start for i in items[first_named:]}  # "330. left no leak", "330 no leak on the right"
    apart = ahead or {
        n: c for n, c in last.checks.items() if stops and c.start > stops[0] and c.start not in again
    }
    one = first if ahead else last
    if not apart or any(c.start not in again for d in drafts if d is not one for c in d.checks.values()):
        return
    one.checks = {n: c for n, c in one.checks.items() if n not in apart}
    either = [d.tubes[0] for d in marks]
    asked = Draft(bed=one.bed, checks=apart, time=one.time, shared_time=one.shared_time, either=either)
    drafts.append(asked)


def _with_since(draft: Draft) -> list[Draft]:
    """ "300 at 0700 suction off since 0630": the line has its time, and what happened has its own."""
    if draft.time is not None and draft.time.lead == "from" and draft.volume and not draft.kind:
        draft.since, draft.time = draft.time, None  # "from 0400 drained 340"
    what, since = draft.whats[-1:], draft.since
    bare = not (draft.time or draft.has_amount or draft.kind or draft.checks)
    if what and since is not None and bare and what[0].start < since.start:
        draft.time, draft.since = since, None  # "unclamped 11 now, was clamped since 1400"
        return [draft]
    if not what or since is None or draft.level is None or draft.kind or what[0].start > since.start:
        return [draft]
    of_what = Draft(bed=draft.bed, tubes=list(draft.tubes), whats=what, time=since)
    draft.whats, draft.since = draft.whats[:-1], None
    return [draft, of_what]


def _with_last_lines(drafts: list[Draft]) -> list[Draft]:
    """ "340 at 1840, tube removed": of that time and with that level, where it has none of its own."""
    gone: list[Draft] = []
    for line, after in pairwise(drafts):
        bare = after.kind == "removed" and line.level is not None and not (line.kind or line.whats)
        own = after.time or after.bed or after.tubes or after.has_amount or after.clashes
        if bare and line.time is not None and not own:
            line.kind = after.kind
            gone.append(after)
    return [draft for draft in drafts if not any(draft is each for each in gone)]


def _each_removed(draft: Draft, items: tuple[Item, ...]) -> list[Draft]:
    """ "left and right tubes out": two; "left tube out, right no leak": one, and a check."""
    if draft.kind == "removed" and draft.final is not None:  # "final 210 tube out 0940"
        if draft.level is not None:
            draft.clash("level", draft.level, draft.final)
        draft.level, draft.final = draft.level or draft.final, None
    if draft.inherited and draft.kind != "removed":
        draft.kind, draft.inherited = draft.kind if draft.final else "", False
    bare = draft.inherited and not (draft.has_amount or draft.time)
    if draft.inherited and (draft.checks or draft.whats or draft.order or draft.same):
        draft.kind = ""
    elif bare and _is_told_otherwise(draft.tubes[-1], items):
        return []
    elif draft.inherited and draft.level is not None and draft.level.name == "old":
        pass  # "both drains out at 1000, left final 210, right final 340"
    elif draft.inherited and draft.has_amount and not _is_own_line(draft):
        draft.faults += 1
    elif draft.inherited and draft.has_amount:
        draft.kind = ""
    sides = [tube for tube in draft.tubes if tube.name in SIDES]
    if draft.kind != "removed" or draft.joined or len(sides) < len(SIDES) or len(sides) < len(draft.tubes):
        return [draft]
    draft.faults += draft.has_amount
    return [replace(draft, tubes=[tube]) for tube in sides]


def _is_own_line(draft: Draft) -> bool:
    """ "left tube out at 1650, right is at 260 as of 1720": a line with its own word and its own time."""
    level, time = draft.level, draft.time
    return level is not None and level.lead in LED and time is not None and time.start > level.start


def _is_told_otherwise(tube: Item, items: tuple[Item, ...]) -> bool:
    """ "left tube out, right tomorrow", "right draining well": no second tube that was taken out."""
    behind = next((k for k, i in enumerate(items) if i.start == tube.start), len(items)) + 1
    for item in items[behind:]:
        if item.role == "sep" and item.value in PAUSES:
            break
        if item.role == "cue" and item.value in OTHERWISE and item.name not in AS_WELL:
            return True
    return False


def _without_told_again(drafts: list[Draft]) -> None:
    """ "beds 4 and 9 end of shift: 4 is 660 and 9 is 1430": each bed has its own line."""
    if any(draft.more_beds for draft in drafts):
        own = {d.bed.label for d in drafts if d.bed is not None and d.has_content}
        for draft in drafts:
            draft.more_beds = [bed for bed in draft.more_beds if bed.label not in own]


def _with_beds_behind(drafts: list[Draft]) -> None:
    """ "surgeon ordered suction 20 on CT6 and CT1", "no leak on 4 and 5": what stands before is of both."""
    for draft, last in reversed([*pairwise(drafts)]):
        if draft.bed is None or last.bed is None or last.has_content or last.tubes or last.clashes:
            continue
        found = [i for i in (*draft.checks.values(), *draft.whats, draft.ordered) if i is not None]
        told = (found or draft.kind in OF_SEVERAL) and draft.kind in {"", *OF_SEVERAL} and not draft.clashes
        told = told and not (draft.has_amount or draft.opening or draft.reason)
        first = max((i.start for i in found), default=0) < draft.bed.start
        ends = (draft.bed.end, *(bed.end for bed in last.more_beds))
        if told and first and last.bed.start - max(ends) <= BED_BEHIND and draft.bed.label != last.bed.label:
            draft.more_beds += [last.bed, *last.more_beds]
            draft.time = draft.time or last.time
            drafts.remove(last)


def _with_bed_behind(drafts: list[Draft], stops: list[int]) -> None:
    """ "bed 15 960 at midnight and I kicked the drain over on bed 2": what was told behind the last stop is
    of the bed behind it, of which nothing else is said."""
    for draft, behind in pairwise(drafts):
        own = behind.bed is not None and not (behind.has_content or behind.tubes or behind.clashes)
        if not own or behind.bed is None or draft.bed is None:
            continue
        stop = max((k for k in stops if draft.bed.end <= k < behind.bed.start), default=None)
        if stop is None or (draft.time is not None and draft.time.start > stop):
            continue
        whats = [what for what in draft.whats if what.start > stop]
        checks = {name: check for name, check in draft.checks.items() if check.start > stop}
        left = draft.kind or draft.has_amount or len(draft.whats) > len(whats)
        if (whats or checks) and (left or len(draft.checks) > len(checks)):
            behind.whats, behind.checks = whats, checks
            draft.whats = [what for what in draft.whats if what not in whats]
            draft.checks = {n: c for n, c in draft.checks.items() if n not in checks}


def _fold_bare(drafts: list[Draft]) -> None:
    """A draft of nothing but a bed, tube or time belongs to the one before that lacks it, or after."""
    for k in range(len(drafts) - 1, -1, -1):
        draft = drafts[k]
        if len(drafts) == 1 or draft.has_content:
            continue
        near = [drafts[j] for j in (k - 1, k + 1) if 0 <= j < len(drafts)]
        headed = k > 1 and draft.bed is not None and any(d.bed for d in drafts[: k - 1])
        fitting = near[1:] if headed else near  # "bed 3 L 180 R 90 at 1900. bed 18 refused obs"
        home = next((d for d in fitting if _fits(draft, d)), None)
        if home is not None:
            home.bed = home.bed or draft.bed
            home.time = home.time or draft.time
            home.tubes = home.tubes or draft.tubes
            home.closing |= draft.closing
            for slot, items in draft.clashes.items():
                home.clash(slot, *items)
            del drafts[k]
        elif draft.time and near[0].time and not draft.bed:
            near[0].clash("time", near[0].time, draft.time)
            del drafts[k]


def _fits(draft: Draft, home: Draft) -> bool:
    return not ((draft.bed and home.bed) or (draft.time and home.time) or (draft.tubes and home.tubes))


def _share_beds(drafts: list[Draft]) -> None:
    for k, draft in enumerate(drafts):
        if draft.bed is not None or draft.clashes.get("bed"):
            continue
        before = next((d for d in reversed(drafts[:k]) if d.bed is not None), None)
        after = next((d for d in drafts[k + 1 :] if d.bed is not None), None)
        source = before or after
        if source is None:
            continue
        draft.bed = source.bed
        if source.kind == "moved" and source.to_bed is not None and draft.has_content:
            draft.clash("bed", source.bed, source.to_bed)  # "moved 4 to 5, line 260": of which bed?
        if source.clashes.get("bed"):
            draft.clashes["bed"] = source.clashes["bed"]
        if before is not None and not draft.tubes:
            draft.tubes = list(before.tubes)


def _put_in(drafts: list[Draft], said: tuple[Item, ...], toks: Toks, arrival: Item | None) -> None:
    """ "new pt bed 20 with a chest tube": a patient who came with a drain, where no line is told.

    "pigtail in 9 right side at 1410 for effusion": why a drain is in has no time, so that is when it went in.
    """
    draft, came = drafts[0], arrival is not None
    opens = arrival is not None and arrival.name == "into" and _is_what_it_began_with(draft)
    if len(drafts) > 1 or draft.kind or (draft.has_amount and not opens) or (draft.opening and not came):
        return
    without = [tube for before, tube, behind in _around(said) if _is_denial(before) or _is_denial(behind)]
    timed = draft.time is not None and not all(clock.style == "date" for clock in draft.time.clocks)
    told = (
        draft.checks
        or draft.whats
        or any((i.unread and i.name not in PATIENTS) or i.role == "foreign" for i in said)
    )
    put = timed and draft.reason is not None and not told and toks.words.isdisjoint(LOOKED)
    if (came or put) and without:
        draft.denied, draft.reason, draft.weight = without, None, None
    elif came or put:
        draft.kind = "placed"


def _is_what_it_began_with(draft: Draft) -> bool:
    """ "fresh heart into 6 at 1830, canister at 60": a line of when somebody came, and no more."""
    other = draft.final or draft.volume or draft.output or draft.same
    behind = draft.level is not None and draft.time is not None and draft.time.end < draft.level.start
    return behind and not other


def _around(said: tuple[Item, ...]) -> Iterator[tuple[Item, Item, Item]]:
    """Each word for a tube, with the pieces before and behind it."""
    ends = (None, *said, None)
    return (
        (before or tube, tube, behind or tube)
        for before, tube, behind in zip(ends, said, ends[2:], strict=False)
        if tube.role == "cue" and tube.value == "tubeword"
    )


def _is_denial(item: Item) -> bool:
    """ "no drain yet", "may need a drain", "drain not in": there is none."""
    return item.role == "cue" and item.value in {"no", "neg", "plan"}


def _under_headings(drafts: list[Draft]) -> None:
    """ "0300 L 340 R 120, 0400 L 360 R 130": a line without a time is of the time before it.

    "1500: 3 165, 4 tube out at 1310, 9 960": when something happened to a bed is no time of other beds.
    """
    heading: Item | None = None
    event: Draft | None = None
    for draft in drafts:
        time = heading if event is None or is_other_bed(event, draft) else event.time
        if draft.time is None and draft.has_amount and time is not None:
            draft.time, draft.shared_time = time, True
        if draft.time is None or draft.time is heading or is_now(draft.time):
            continue
        happened = heading is not None and (draft.kind or draft.whats)
        event = draft if happened else None
        heading = heading if happened else draft.time


def _share_order(drafts: list[Draft]) -> None:
    """ "orders bed 1 suction 20, bed 2 gravity": said before the first bed, it is of every setting."""
    order, bed = drafts[0].order if drafts else None, drafts[0].bed if drafts else None
    if order is not None and bed is not None and order.start < bed.start:
        for draft in drafts[1:]:
            draft.order = draft.order or (order if "suction" in draft.checks else None)


def _with_reason_of_bed(draft: Draft, drafts: list[Draft]) -> list[Draft]:
    """ "12 post op CABG, L 210 R 95": said apart from the lines of several tubes, it is of them all."""
    why = draft.reason or draft.weight
    of_bed = [d for d in drafts if d.bed is draft.bed and d.tubes]
    if why is None or draft.kind or not draft.tubes or len({d.tube for d in of_bed}) < len(SIDES):
        return [draft]
    behind = draft is of_bed[-1] and draft.level is not None and why.start > draft.level.end
    if not behind and why.start > draft.tubes[0].start:
        return [draft]  # "R 330 haemothorax, L 820"
    told = Draft(bed=draft.bed, reason=draft.reason, weight=draft.weight)
    draft.reason = draft.weight = None
    return [draft, told] if behind else [told, draft]


def _share_output(drafts: list[Draft]) -> None:
    """ "output 3 210, 4 310": what may be how much came from one bed may be so of the next."""
    told = next((draft.output.start for draft in drafts if draft.output is not None), None)
    for draft in drafts if told is not None else ():
        bed, level = draft.bed, draft.level
        if bed is None or level is None or level.lead or draft.kind or draft.tubes:
            continue
        either = level.label is not None and level.start < bed.start  # "6 total 7-7"
        if told is not None and bed.start > told and not either:
            draft.output, draft.level = level, None


def _share_closing(drafts: list[Draft], closes: list[Item]) -> None:
    """ "end of shift 12 1050, 14 220": said before the first bed or at the very end, it is of every line.

    So for the tubes of one bed: "12 left 340 right 120 end of shift", "3 closing left 120, right 290".
    So where it is said for each: "end of my shift! closing line bed 14 890 closing line bed 15 1230".
    """
    marks = [d for d in drafts if d.level is not None and not d.kind]
    own = [c for c in closes if any(d.bed and _is_headed(d.bed, [c]) for d in marks)]
    counts = {len(closes), len(own)}
    each = 1 < len({d.bed.label for d in marks if d.bed}) == len(marks) and len(marks) in counts
    if each or (sum(d.closing for d in drafts) == 1 and _is_of_all(marks, closes)):
        for draft in marks:
            draft.closing |= each or not _is_later(draft, marks)
    headed = {d.bed.label for d in marks if d.closing and d.bed and _is_headed(d.bed, closes)}
    for draft in marks:
        of_bed = draft.bed is not None and draft.bed.label in headed
        draft.closing |= of_bed and not _is_later(draft, marks)


def _is_later(mark: Draft, marks: list[Draft]) -> bool:
    """ "closing line 1190 at 0700, and 1215 at 0800": whether it was read at another time than the last."""
    closing = next((d for d in marks if d.closing), None)
    if closing is None or closing is mark or closing.time is None or mark.time is None:
        return False
    same = (closing.bed, closing.tube) == (mark.bed, mark.tube)
    return same and closing.time is not mark.time


def _is_of_all(marks: list[Draft], closes: list[Item]) -> bool:
    """Whether the word stands before the first bed or behind the last line."""
    beds = {d.bed.label: (d.again or d.bed).start for d in marks if d.bed is not None}
    tubes = {d.tube for d in marks}
    if not closes or max(len(beds), len(tubes)) < 2:
        return False
    last = max(i.start for d in marks for i in (d.bed, d.level, d.time) if i is not None)
    heads = [*beds.values()] if len(beds) > 1 else [t.start for d in marks for t in (*d.tubes, d.level) if t]
    return closes[-1].start < min(heads, default=0) or closes[-1].start > last


def _is_headed(bed: Item, closes: list[Item]) -> bool:
    """ "closing for bed 3", "11 closing left 595 right 100": right before it or behind."""
    return any(0 <= bed.start - closing.end <= HEADING or closing.start == bed.end for closing in closes)
