"""What is read back of a recorded entry: bed, tube, level and time; the subtraction; the shift sum.

A result sent by text is confirmed back by the receiver (Joint Commission FAQ 2008, NPSG.02.01.01); a late
entry shows both times. Pure: what is known is an argument.
"""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from dataclasses import dataclass
from datetime import datetime, timedelta

from bot.engine.entries import Payload
from bot.engine.values import Interval, Level, Shift, Sum
from bot.wording import formats
from bot.wording.gsm import gsm_only
from bot.wording.queries.rows import row_text
from bot.wording.queries.view import View, place
from bot.wording.subtraction import subtraction_text

LATE = timedelta(minutes=60)
"""A time that is further back than this is read back with the time of entering."""

INVITATION = "Was there a line at"
"""How a first line's reply invites the line of the shift before."""

IS_RIGHT = "it is right"
"""What a yes means to most questions about a reading."""

NO_BED = "Its bed was not said: send it again with the bed."

DROP = 'Or say "no" to drop that.'

_KINDS = {"mark": "line", "final": "final level", "opening": "opening level"}

TWO_IDENTIFIERS = "At the bedside check two identifiers; a bed is not one."


@dataclass(frozen=True, slots=True, kw_only=True)
class Where:
    """The bed and tube as the nurse said them, and the bed where that drain is now."""

    bed: str
    tube: str | None = None
    now_bed: str | None = None

    @property
    def text(self) -> str:
        """Bed 12 left (now bed 14)."""
        moved = f" (now bed {self.now_bed})" if self.now_bed not in (None, self.bed) else ""
        return gsm_only(f"{place(self.bed, self.tube)}{moved}")


@dataclass(frozen=True, slots=True, kw_only=True)
class LineRead:
    """A recorded level with what it charts. `step` None: nothing is charted up to it.

    `same_as`: the line that it repeats. `told_ml`: the amount that it was reckoned from. `to_chart` False:
    between closing lines of a unit that charts by shift. `amended`: an "Amend" line of the reply says what
    becomes of it on the chart, so that it is not charted a second time. `asks_start`: the shift start to
    invite a line for.
    `lacks_final`: when the canister was changed whose final level nobody has told.
    """

    level: Level
    step: Interval | None = None
    same_as: Level | None = None
    to_chart: bool = True
    amended: bool = False
    asks_start: datetime | None = None
    lacks_final: datetime | None = None


def line_text(where: Where, read: LineRead, view: View) -> str:
    """ "Bed 7, 19:00, line 690 mL. Chart 60 mL (690 - 630 at 18:00)." """
    level = read.level
    name = _KINDS[level.kind]
    about = "about " if level.about else ""
    closing = ", closing" if level.closing else ""
    time = f"{view.clock(level.at)}{_entered(level, view)}"
    head = f"{where.text}, {time}, {name} {about}{formats.ml(level.level_ml)}{closing}"
    return f"{head}. {_charted(read, view)}"


def _entered(level: Level, view: View) -> str:
    return f" (entered {view.clock(level.entered)})" if level.entered - level.at > LATE else ""


def _charted(read: LineRead, view: View) -> str:
    if read.same_as is not None:
        return f"Already marked at {view.clock(read.same_as.at)}; counted once."
    if read.step is not None:
        return _step(read, read.step, view)
    if "line_fell" in read.level.codes:
        return "Kept as a new baseline: no volume to chart up to it."
    if "tipped" in read.level.codes:
        return "No volume to chart: this canister was tipped over."
    if read.level.baseline:
        return _first(read, view)
    return "Nothing to chart up to it."


def _first(read: LineRead, view: View) -> str:
    start = f" {INVITATION} {view.clock(read.asks_start)}?" if read.asks_start else ""
    return f"First line: nothing to chart yet.{start}"


def _step(read: LineRead, step: Interval, view: View) -> str:
    volume = formats.volume(step.volume_ml, step.at_least)
    crossing = f", includes before {view.clock(step.includes_before)}" if step.includes_before else ""
    shown = f"({subtraction_text(step, view)}{crossing})"
    if read.to_chart and not read.amended:
        return f"Chart {volume} {shown}.{_lacks_final(read, view)}"
    how = "see Amend" if read.to_chart else "not to be charted"
    return f"{volume[0].upper()}{volume[1:]} {shown}, {how}."


def _lacks_final(read: LineRead, view: View) -> str:
    """Why it is only "at least": the level can still be told."""
    if read.lacks_final is None:
        return ""
    return f" Final level at {view.clock(read.lacks_final)} not told yet."


def closed_text(last: Level | None, view: View) -> str:
    """The drain in whose place another one came: "The drain before is closed, last line 450 mL at 06:00." """
    told = f", last line {formats.ml(last.level_ml)} at {view.clock(last.at)}" if last else ""
    return gsm_only(f"The drain before is closed{told}.")


def closed_before_text(where: Where, last: Level | None, view: View) -> str:
    """The same of a bed that another patient comes to: "Bed 14: the drain before is closed." """
    told = closed_text(last, view)
    return gsm_only(f"{where.text}: {told[:1].lower()}{told[1:]}")


def shift_text(shift: Shift, total: Sum, view: View, *, to_chart: bool = True) -> str:
    """ "Day shift 60 mL since 18:00 (no line at 07:00)."; empty where the shift has no sum yet."""
    if total.volume_ml is None or total.begin is None:
        return ""
    missing = "no_boundary_line" in total.flags or "since_first_line" in total.flags
    note = f" (no line at {view.clock(shift.start)})" if missing else ""
    if total.begin.kind == "opening":
        note = " (from the opening level)"  # the tube was put in later than the shift's start
    running = "" if to_chart else ", not to be charted"
    name = f"{formats.capital(shift.name)} shift"
    volume = formats.volume(total.volume_ml, total.at_least)
    if total.at_least and not total.volume_ml:
        volume = "volume not known"  # "at least 0 mL" says nothing, and reads as nothing drained
    told = f"{name} {volume} since {view.clock(total.begin.at)}"
    return f"{told}{note}{running}."


def fact_text(where: Where, payload: Payload, at: datetime, view: View) -> str:
    """Anything that is not a level, read back: "Bed 12, 10:15, tube removed." """
    return gsm_only(f"{where.text}, {view.clock(at)}, {row_text(payload)}.")


def fixed_text(where: Where, read: LineRead, was: Level, view: View) -> str:
    """A corrected line: what it was and whose, then what it charts now."""
    old = f"was {formats.ml(was.level_ml)}"
    if was.at != read.level.at:
        old += f" at {view.clock(was.at)}"
    told = f"{_KINDS[read.level.kind]} {formats.ml(read.level.level_ml)}"
    now = f"{where.text}, {view.clock(read.level.at)}, {told}"
    return gsm_only(f"{now} ({old}, {view.who(was.who)}). {_charted(read, view)}")


def withdrawn_text(where: Where, what: str, at: datetime, view: View, *, who: str | None = None) -> str:
    """What was taken back: "Withdrawn: bed 12, 19:00, line 1,050 mL (Amy)." """
    place_word = f"{where.text[:1].lower()}{where.text[1:]}"
    author = f" ({view.who(who)})" if who else ""
    return gsm_only(f"Withdrawn: {place_word}, {view.clock(at)}, {what}{author}.")


def fallen_text(where: Where, level: Level, before: Level, view: View) -> str:
    """A line that lies below the one before it, now that something between them was taken back."""
    head = f"{where.text}, {view.clock(level.at)}: line {formats.ml(level.level_ml)} ({view.who(level.who)})"
    below = f"is now below {formats.ml(before.level_ml)} at {view.clock(before.at)}"
    return gsm_only(f"{head} {below}: no volume to chart up to it. If the canister was changed, say when.")


def former_text(where: Where, left: bool, at: datetime, view: View) -> str:
    """Said with a late line of a drain that is closed: whose it is."""
    whose = "the patient who left" if left else "the tube that was removed"
    return gsm_only(f"That is {whose} at {view.clock(at)}, not what is in bed {where.bed} now.")


def sent_text(sent_at: datetime, now: datetime, view: View) -> str:
    """Said when a message was long on its way."""
    return f"Sent {view.clock(sent_at)}, arrived {view.clock(now)}."


def waits_text(what: str) -> str:
    """What was said after a doubtful reading and waits for the same answer."""
    return gsm_only(f"Waits for that answer: {what}.")


def not_recorded_text(*readings: str) -> str:
    """The end of every reply while questions are open: "Not recorded yet: bed 12 1,050 mL; bed 14 90 mL." """
    return gsm_only(f"Not recorded yet: {'; '.join(readings)}.")


def not_read_text(stretches: Sequence[str]) -> str:
    """What of a message was left out as nobody knows what it is: 'Not read: "hcg 12".'"""
    quoted = "; ".join(f'"{each}"' for each in stretches)
    return gsm_only(f"Not read: {quoted}.")


def dropped_text(what: str) -> str:
    """A reading that its nurse did not bear out: "Not recorded: bed 12 350 mL at 19:00." """
    return gsm_only(f"Not recorded: {what}." if what else "Not recorded.")


def no_longer_asked_text(what: str, asked_at: datetime, view: View) -> str:
    """A reading that lacked its bed and was told again with it: "No longer asked: 500 mL (08:00)." """
    return gsm_only(f"No longer asked: {what} ({view.clock(asked_at)}).")


def first_stays_text(level: Level | None, view: View) -> str:
    """Of two levels at one minute the one that counts: "The first line stays: 305 mL at 19:00 (Amy)." """
    if level is None:
        return "The first line stays."
    told = f"{formats.ml(level.level_ml)} at {view.clock(level.at)}"
    return gsm_only(f"The first line stays: {told} ({view.who(level.who)}).")


def pending_text(what: str, asked_at: datetime, who: str, view: View) -> str:
    """A reading that another nurse was asked about: "Not recorded yet: bed 12 90 mL (asked 19:02, Amy)." """
    return not_recorded_text(f"{what} (asked {view.clock(asked_at)}, {view.who(who)})")


def settle_text(bed: str | None, offered: Mapping[str, str]) -> str:
    """How an unconfirmed reading of the bed is settled, by what its question offered to say.

    What it means is told too, as the question that said so is far back: but for a yes to "is it right?".
    """
    if bed is None:
        return NO_BED
    if offered.get("yes") == IS_RIGHT:
        return gsm_only(f'Say "{bed} yes", "{bed} no" or the right line.')
    for one, other in (("first", "second"), ("yes", "no")):
        if one in offered and other in offered:
            told = (f'"{bed} {word}": {offered[word]}' for word in (one, other))
            return gsm_only(f"Say {', '.join(told)}; or tell what is right.")
    return "Send the right line."


def unconfirmed_text(what: str, asked_at: datetime, who: str, view: View, settle: str) -> str:
    """A reading whose question was never answered, shown in every reply about its bed; how to settle it."""
    head = f"Unconfirmed: {what} (asked {view.clock(asked_at)}, {view.who(who)}), not counted."
    return gsm_only(f"{head} {settle}".rstrip())
