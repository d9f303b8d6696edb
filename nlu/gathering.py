"""The pieces of one reading, gathered into statements by what they belong to.

`Gathering` goes through the pieces in the order said. A piece that has no free place in the draft
at hand opens the next one; bed, tube and time are shared afterwards, in `sharing.py`.
"""

from __future__ import annotations

from itertools import pairwise

from .drafts import Draft, is_one_name
from .findings import Findings
from .items import MEASURED, NUMBERLESS, Item, is_now
from .leading import Leads
from .moments import hours_meant
from .patterns.leads import PAUSES
from .roles import EVENTS

LINES = frozenset({"level", "levelat"})


class Gathering(Findings):
    """The drafts of one reading."""

    def __init__(self, leads: Leads) -> None:
        super().__init__()
        self.leads = leads
        self.repair = False
        self.either = False
        self.foreign = self.measured = False
        self.mended: Item | None = None
        self.linked = ""
        self.last: Item | None = None
        self.cued = self.ended = self.told_old = self.past = self.happened = False
        self.closes: list[Item] = []
        self.closing_next = False
        self.arrival: Item | None = None
        self.tube_said = False
        self.hung_new = False
        self.heading: Item | None = None
        self.alike: list[tuple[Draft | None, int, Item | None]] = []
        self.bed_first = False

    def add(self, item: Item) -> None:
        """One more piece."""
        self._begin(item)
        match item.role:
            case "cue":
                self._cue(item)
            case "sep":
                self.measured &= not self._is_measure_apart(item)
            case "bed":
                self._bed(item)
            case "tube":
                self._tube(item)
            case "time":
                self._time(item)
            case "level":
                self._level(item)
            case "volume" | "output":
                self._amount(item)
            case "check":
                self.check(item.name, item)
            case "weight":
                self.now.weight = item
            case "alt":
                self.now.clash(item.name, self.last, item)
            case "bad":
                self.now.bad.append(item)
            case "denied":
                self.now.denied.append(item)
            case "repair":
                self.repair, self.mended = True, self.last
            case "foreign":
                self.foreign |= item.name not in {MEASURED, NUMBERLESS}
                self.measured |= item.name == MEASURED
        self.follow(item)
        if item.role in {"bed", "cue"}:
            self.cued = item.role == "cue" and (self.cued or item.value != "bed")
        self.happened = item.role == "cue" and (self.happened or item.value in {"kind", "what"})
        self.linked = item.value if item.role == "sep" else "" if item.role != "cue" else self.linked
        self.last = item if item.role not in {"sep", "cue", "repair"} else self.last

    def _is_measure_apart(self, stop: Item) -> bool:
        """ "sats 95, bed 12 340": of no bed that waits for its line, as in "bed 3 bp 110, bed 5 90"."""
        apart = stop.value in PAUSES and self.last is not None and self.last.name == MEASURED
        return apart and (self.now.bed is None or self.now.has_amount)

    def _begin(self, item: Item) -> None:
        """Opens the draft that a closing word or a finding is of where that comes before its bed."""
        if self.closing_next and item.role != "cue":
            self.closing_next = False
            if item.role == "bed":
                self.open().closing = True
            else:
                self.now.closing = True
        if item.start in self.leads.findings:
            self.open()

    def _mend(self, slot: str, old: Item, new: Item) -> None:
        """A second value after a word of repair; odd where the repaired word was of another sort."""
        self.now.clash(slot, old, new)
        if self.mended is not None and self.mended.role != new.role:
            self.now.faults += 1

    def _bed(self, item: Item) -> None:
        draft = self.now
        self.bed_first |= len(self.drafts) == 1 and not (draft.has_content or draft.time)
        if self.linked in PAUSES and draft.time is not None and draft.to_bed is not None:
            self.open().bed = item  # "9 moved to 14 at 1840, 18 788 at 1825"
        elif draft.kind == "moved" and (
            draft.bed is not None or item.link in {"to", "into"} or item.lead == "to"
        ):
            if draft.to_bed is not None or (self.linked in {"and", "&"} and not self.cued):
                draft.clash("to_bed", draft.to_bed, item)
            came = "from" in {item.link, item.lead} and draft.bed is not None and draft.to_bed is None
            draft.bed, draft.to_bed = (item, draft.bed) if came else (draft.bed, item)
        elif draft.bed is None and self.leads.beds and draft.has_amount and len(self.drafts) > 1:
            self.open().bed = item  # "bed 3 0300 310 0400 320 bed 8 0300 715": each bed leads its lines
        elif draft.bed is None and self.bed_first and draft.has_content and self._is_behind_stop(item):
            self.open().bed = item  # "bed 9 to ct 1810, back 1840. bed 10 410"
        elif draft.bed is None:
            draft.bed = item
            if item.lead in {"output", "amount"}:
                draft.wants = draft.wants or item._replace(value=item.lead)
        elif draft.bed.label == item.label and item.label is not None:
            if draft.has_amount and not draft.kind and self.linked:
                self.open().bed = item
            else:
                draft.again = item
        elif self.repair:
            self._mend("bed", draft.bed, item)
        elif draft.has_content:
            self.open().bed = item
        elif self.linked in {"and", ",", "&", "+"} and draft.time is None:
            draft.more_beds.append(item)
        elif item.link == "to" and not draft.kind and not self.cued:
            draft.kind, draft.to_bed = "moved", item
        else:
            draft.clash("bed", draft.bed, item)

    def _is_behind_stop(self, bed: Item) -> bool:
        """Whether a stop was the last thing said, and nothing happened since: "... 410. changed 10 box"."""
        return self.linked in PAUSES and (not self.happened or bed.link == "from")

    def _tube(self, item: Item) -> None:
        draft = self.now
        if draft.tubes and (self.either or self.repair):
            draft.clash("tube", draft.tubes[-1], item)
            return
        if draft.tubes and draft.has_content and not draft.joined and draft.kind != "placed":
            last = draft.tubes[-1]
            said = self.last if self.last is not None and self.last.role == "tube" else None
            if said is not None and said is not last and said.name == last.name and is_one_name(said, item):
                self.open().tubes += [said, item]  # "lt 340 lt basal 50"
                return
            if not ((is_one_name(last, item) and self.last is last) or draft.is_of_both(item, self.linked)):
                self._next_tube(draft, item)
                return
        if self.leads.tubes and not draft.tubes and draft.has_amount and len(self.drafts) > 1:
            draft = self.open()
        draft.named.append(item)
        if not any(t.name == item.name for t in draft.tubes):
            draft.tubes.append(item)

    def _next_tube(self, draft: Draft, item: Item) -> None:
        """A tube after one that something was said of: its own statement."""
        if draft.tubes[-1].name != item.name:
            fresh = self.open()
            fresh.inherited = draft.passes_on
            fresh.kind = draft.kind if fresh.inherited else ""
            fresh.tubes.append(item)

    def _time(self, item: Item) -> None:
        draft = self.now
        happened = draft.kind in EVENTS and not any((draft.time, draft.level, draft.volume, draft.same))
        came_from = item.lead == "from" and draft.volume is not None and not draft.kind
        if (item.lead == "since" and not happened) or came_from:  # "in CT since 0500": that is when
            draft.since = item
            return
        since = draft.since if draft.same is not None and not self.happened else None
        if since is not None and self.last is since and item.at:
            draft.time_before = item  # "no change since the 1050 at 1500": when that line was
            return
        if draft.time is not None and is_now(draft.time):
            ago = any(c.style == "ago" for c in item.clocks)  # "340 now, physio came 20 min ago"
            read = draft.level is not None and draft.level.end == draft.time.start
            draft.faults += ago and read and item.start > draft.time.end + 1
            draft.time = item
            return
        if is_now(item) and draft.kind == "exchanged" and draft.final is not None:
            draft = self.open()  # "box changed, old 1290, now at 20": of the line that follows
        if self.last is draft.level and draft.time is not None and draft.is_timed_again(item):
            both = sorted((item, draft.time), key=lambda time: hours_meant(time.clocks))
            draft.time, draft.time_before = both  # "the 3 o'clock one, bed 8 was 615 at 03:00"
            return
        if draft.time is not None:
            if self.repair:
                self._mend("time", draft.time, item)
                return
            ahead = self.happened and draft.is_one_event  # "to CT at 540, back 1840"
            if (ahead and self.last is draft.time) or not (draft.has_content or draft.wants):
                draft.clash("time", draft.time, item)
                return
            later = draft.told_after(draft.time, self.last, happened=self.happened)
            draft = self.open(later)
        elif self.leads.times and draft.has_amount and self.heading is not None:
            draft = self.open()  # "0300 L 340 R 120, 0400 L 360": each time leads its lines
        draft.time = self.heading = item

    def _level(self, item: Item) -> None:
        draft = self.now
        if self.repair and (old := draft.final or draft.level or draft.volume) is not None:
            self._mend("level", old, item)
            return
        of_other = (self.foreign or self.measured) and not item.unit
        draft.faults += of_other and item.lead not in {"level", "levelat", "inside"}
        of_same = draft.same is not None and draft.since is not None and self.last is draft.since and item.at
        draft.faults += of_same and not self.linked  # "since the 1050 mark at 1500"
        item = self._by_name(item)
        if draft.ends_again(item):
            draft.clash("level", draft.level, item)
        elif (
            item.name == "old" or (item.name == "last" and draft.kind == "exchanged")
        ) and draft.kind != "placed":
            self._old(item)
        elif item.name == "opens" and draft.kind in {"exchanged", "placed", ""} and draft.level is None:
            draft.opening = item
        elif (draft.kind == "placed" and draft.level is None) or (
            draft.kind == "removed" and draft.level is None and item.name != "new"
        ):
            draft.level = item
        elif self.linked and draft.is_changed_before(item):
            self.open().level = item
        elif draft.kind == "exchanged" and item.name != "new" and item.lead not in {"level", "levelat"}:
            draft.clash("level", item)
        elif self._says_same(draft, item):
            draft.level, draft.same = item, None
        elif draft.kind or draft.has_amount:
            self.open().level = item
        elif draft.wants is not None and draft.wants.value == "output" and item.lead not in LINES:
            draft.output = item
        else:
            draft.level = item
        self.now.about |= item.about

    def _says_same(self, draft: Draft, item: Item) -> bool:
        """ "unchanged at 480", "no change, still at 480": the line that has not changed."""
        nothing = draft.same is not None and not (draft.kind or draft.level or draft.volume or draft.output)
        plain = item.lead in {"", "at"} and item.label is None and not item.clocklike
        led = item.lead in {"level", "levelat"} or plain
        return nothing and led and (self.last is None or self.last.role in {"bed", "tube"})

    def _by_name(self, item: Item) -> Item:
        """The level with the name that the words before it gave: of the old canister, or of the new one."""
        kind, old = self.now.kind, self.now.final
        at_last = self.past and item.lead == "levelat" and kind == "exchanged" and not old
        ended = self.ended and item.lead in {"", "at", "level", "levelat"}
        self.ended = self.past = False
        if item.name == "" and (ended or at_last):
            return item._replace(name="old", lead="old")
        if self.now.inherited and kind == "exchanged" and item.name != "old":
            self.now.kind = kind = ""  # "changed the left one, old 1230, right 340"
        if item.name == "inside":
            return item._replace(name="new" if kind == "exchanged" and self.hung_new else "")
        return item

    def _old(self, item: Item) -> None:
        draft = self.now
        if draft.kind == "removed" and draft.level is None:
            draft.level = item
            return
        draft = self.open() if draft.final or draft.level else draft
        draft.kind = draft.kind or ("exchanged" if self.told_old else "")
        draft.final, self.told_old = item, False

    def _amount(self, item: Item) -> None:
        draft = self.now
        if draft.kind == "placed" and draft.level is None and item.role == "output":
            draft.clash("level", item)
            return
        if self.repair and draft.volume is not None:
            draft.clash("volume", draft.volume, item)
            return
        gushed = draft.kind == "placed"
        draft.gushed |= gushed
        if draft.kind in EVENTS or draft.has_amount:
            draft = self.open()
            draft.gushed = gushed
        if item.role == "volume":
            draft.volume = item
        else:
            draft.output = item
        draft.about |= item.about

    def _cue(self, item: Item) -> None:
        if item.value in {"tubeword", "canister", "level", "levelat", "old", "new"}:
            self.foreign = self.measured = False
            self.tube_said |= item.value == "tubeword"
        if item.value in {"old", "new", "opens", "kind", "seal", "suction", "wall", "amount", "output"}:
            self.ended, self.told_old = item.value == "old", item.value == "old" and item.name == "canister"
        self.past = item.value == "levelat" and item.name == "past"
        match item.value:
            case "kind":
                self._kind(item)
            case "what":
                self._what(item)
            case "reason":
                self.now.reason = self.now.reason or item
            case "leak" | "leakhow" | "tidal" | "fluid" | "indicator" | "waterseal" | "each":
                self.find(item)
            case "order" if not self.happened:  # "suction 20. clamped per surgeon"
                self.now.order = item
            case "join":
                self.now.joined = True
            case "or":
                self.either = True
            case "arrival":
                self.arrival = item
            case "closing":
                self._closing(item)
            case "same" | "sametime":
                self._same(item)
            case "level" | "amount" | "levelat" | "output":
                self.now.wants = self.now.wants or item
            case "empty":
                self._empty(item)

    def _empty(self, item: Item) -> None:
        """What a new canister held before it was connected: nothing."""
        if self.now.kind in {"placed", "exchanged"} and self.now.opening is None:
            self.now.opening = Item("level", item.start, item.end, amount=0)

    def _closing(self, item: Item) -> None:
        """Which line ends the shift: "bed 3: 120. closing for bed 16: 310" says it of the next one."""
        self.closes.append(item)
        behind = self.now.level is not None and any(draft.bed is not None for draft in self.drafts)
        self.closing_next = behind and (bool(self.linked) or self.now.closing)
        self.now.closing |= not self.closing_next

    def done(self) -> list[Draft]:
        """The drafts, once all pieces are in."""
        self.now.closing |= self.closing_next
        for before, after in pairwise(self.drafts):  # "0600 430 closing 0655 455"
            first = min((i.start for i in (after.time, after.level) if i is not None), default=-1)
            whole = before.closing and before.time is not None and before.level is not None
            whole &= not after.closing  # both may be told to close the shift
            if whole and after.level is not None and any(c.end == first for c in self.closes):
                before.closing, after.closing = False, True
        for told, place, time in self.alike:  # "12 380 at 7, 14 90 same time", "at 7, same time 14 was 90"
            draft = told or next((d for d in self.drafts[place - 1 :] if d.has_amount and not d.time), None)
            if draft is not None and draft.time is None:
                draft.time, draft.shared_time = time, True
        return self.drafts

    def _same(self, item: Item) -> None:
        """No more came; behind a level it says how far that is from the one before, and nothing else."""
        if item.value == "sametime":
            told = self.now.has_amount and self.now.time is None
            alike = (self.now if told else None, len(self.drafts), self.heading)
            self.alike += [alike] if self.heading is not None else []
        elif not self.now.has_amount:
            self.now.same = item
        elif self.now.level is not None and not self._is_told(self.now.level, item.name):
            self.now.faults += 1

    def _is_told(self, level: Item, name: str) -> bool:
        """Whether right before stands a line that is told as one, or with its time: "500 ml, no change"."""
        time = self.now.time
        whole = level.lead == "level" or bool(level.unit) or (time is not None and time.start > level.start)
        whole &= (level.core - level.start == 1 or (time is not None and time.at)) and not level.about
        return whole and self.last in {level, time} and name == ("told" if self.linked else "")

    def _what(self, item: Item) -> None:
        """One more incident; one that comes after the time of another has its own."""
        draft = self.now
        told = draft.whats or (item.name == "suction_on" and "suction" in draft.checks)
        if told and (draft.time is not None or item.name in {"unclamped", "suction_on"}):
            draft = self.open()
        draft.whats.append(item)

    def _kind(self, item: Item) -> None:
        draft, kind = self.now, item.name
        self.hung_new |= item.unit == "new"
        if draft.kind == kind:
            return
        if (draft.kind, kind) in {("left", "moved"), ("back", "placed"), ("left", "away")}:
            draft.came_back, draft.kind = kind == "placed", kind
            return
        if draft.inherited and not (draft.has_amount or draft.time):
            draft.kind, draft.inherited = "", False  # "left out at 1810, right box changed at 1830"
        if kind == "moved" and draft.kind and not (draft.time is not None and self.linked):
            return
        taken = draft.kind or (draft.whats and draft.time) or draft.volume or draft.output or draft.same
        told = draft.time is not None and self.linked  # "line 90 at 1800. tube out 1839, final 95"
        if taken or (draft.level is not None and (told or kind not in {"removed", "placed"})):
            fresh = self.open()
            fresh.kind = kind
        else:
            draft.kind = kind
