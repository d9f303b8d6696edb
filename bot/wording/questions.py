"""What the bot asks back when it will not guess, and the short answers that it offers.

Each text is such that a bare answer is natural; `choices` are what to say (words that the reader knows) and
what that means. A danger, where the reading would mean one, is put before the question by the dialogue.
"""

from __future__ import annotations

from dataclasses import dataclass
from datetime import datetime

from bot.engine.values import Doubt, Level
from bot.wording import formats
from bot.wording.gsm import gsm_only
from bot.wording.queries.view import View, place
from bot.wording.readback import IS_RIGHT, Where

MISREAD = ("misread", "it was misread")
NEW_CANISTER = ("new canister", "the canister was changed in between")
YES = ("yes", IS_RIGHT)
NO = ("no", "it is not right")
WHEN_CHANGED = "Tell the exchange again, with its time."
LINE_BY_LINE = 'Send each line on its own, as in "bed 12 mark 1050 at 1900".'


@dataclass(frozen=True, slots=True)
class Wording:
    """A question's text, and the answers offered: what to say, and what it means."""

    text: str
    choices: tuple[tuple[str, str], ...] = ()


@dataclass(frozen=True, slots=True, kw_only=True)
class Doubted:
    """A reading that is asked about: where, when, which level."""

    where: Where
    at: datetime
    level_ml: int
    final: bool = False
    since: Level | None = None
    """The line that was read after it, which may be another nurse's."""

    def head(self, view: View) -> str:
        """ "Bed 7, 19:00" """
        return f"{self.where.text}, {view.clock(self.at)}"


def fell(read: Doubted, doubt: Doubt, view: View) -> Wording:
    """A level below the line before it, or above the line after it, on one canister."""
    if doubt.before is None and doubt.after is not None:
        return _above_later(read, doubt.after, view)
    before = doubt.before
    assert before is not None
    name = "final level " if read.final else ""
    text = (
        f"{read.head(view)}: {name}{formats.ml(read.level_ml)} is below {formats.ml(before.level_ml)} at "
        f"{view.clock(before.at)}{_since(read, view)}. Misread, new canister, or was the earlier line wrong? "
        "(yes: it is right)"
    )
    wrong = ("earlier wrong", f"the line at {view.clock(before.at)} was wrong")
    return Wording(gsm_only(text), (MISREAD, NEW_CANISTER, wrong, YES))


def _since(read: Doubted, view: View) -> str:
    if read.since is None:
        return ""
    told = f"{formats.ml(read.since.level_ml)} was read at {view.clock(read.since.at)}"
    return f", and {told} ({view.who(read.since.who)})"


def _above_later(read: Doubted, after: Level, view: View) -> Wording:
    text = (
        f"{read.head(view)}: {formats.ml(read.level_ml)} is above {formats.ml(after.level_ml)} at "
        f"{view.clock(after.at)}. Misread, new canister since, or was the other line wrong? "
        "(yes: it is right)"
    )
    wrong = ("earlier wrong", f"the line at {view.clock(after.at)} was wrong")
    return Wording(gsm_only(text), (MISREAD, NEW_CANISTER, wrong, YES))


def over(read: Doubted, doubts: tuple[Doubt, ...], view: View) -> Wording:
    """A level over the capacity, or far above the line before: is it right?"""
    why = " and ".join(_why(doubt, read, view) for doubt in doubts)
    text = (
        f"{read.head(view)}: {formats.ml(read.level_ml)} {why}. Is {formats.number(read.level_ml, 0)} right?"
    )
    return Wording(gsm_only(text), (YES, ("no", "it was misread"), NEW_CANISTER))


def _why(doubt: Doubt, read: Doubted, view: View) -> str:
    if doubt.code == "over_capacity":
        return f"is over the canister's {formats.ml(doubt.limit or 0)}"
    if doubt.before is None:
        return "is a large step"
    rise = read.level_ml - doubt.before.level_ml
    return (
        f"is {formats.ml(rise)} above the line at {view.clock(doubt.before.at)}"
        if rise > 0
        else "is a large step"
    )


def conflict(read: Doubted, other: Level, view: View) -> Wording:
    """Two different levels at one minute: which holds?"""
    here, there = formats.ml(read.level_ml), formats.ml(other.level_ml)
    text = (
        f"{read.head(view)}: {there} is marked already ({view.who(other.who)}), now {here}. "
        f"First ({formats.number(other.level_ml, 0)}) or second ({formats.number(read.level_ml, 0)})? "
        "Or another time?"
    )
    return Wording(gsm_only(text), (("first", f"{there} stays"), ("second", f"{here} is right")))


def silence(read: Doubted, before: Level, view: View) -> Wording:
    """A line long after the last: the same patient and drain?"""
    text = (
        f"{read.head(view)}, {formats.ml(read.level_ml)}: the last line was {formats.ml(before.level_ml)} at "
        f"{view.clock(before.at)}, {formats.elapsed(before.at, read.at)} before. Same patient and drain?"
    )
    return Wording(gsm_only(text), (("yes", "the same drain"), ("no", "a new patient or drain")))


def gone(where: Where, what: str, how: str, view_at: str, now_bed: str | None) -> Wording:
    """Something about a bed whose drain was closed or moved away: a new drain? `now_bed`: where it is."""
    text = f"{where.text}, {what}: the drain here {how} at {view_at}. Is this a new drain?"
    choices = [("yes", "a new drain"), ("no", "nothing is recorded")]
    if now_bed is not None:
        text = f'{text} If it is that one, say "bed {now_bed}".'
        choices.insert(0, (f"bed {now_bed}", "the drain that moved there"))
    return Wording(gsm_only(text), tuple(choices))


def not_yet(where: Where, what: str, placed: str) -> Wording:
    """A time before the drain was placed."""
    return Wording(gsm_only(f"{where.text}, {what}: the drain was placed at {placed}. What time was it?"))


def came(where: Where, what: str, from_bed: str, until: str) -> Wording:
    """A time at which the drain that is here now was in another bed."""
    text = f"{where.text}, {what}: the drain here now was in bed {from_bed} until {until}. Is it that drain?"
    yes = ("yes", f"that drain, in bed {from_bed} then")
    return Wording(gsm_only(text), (yes, ("no", "nothing is recorded")))


def amount(where: Where, volume_ml: int, level_ml: int, since: str) -> Wording:
    """An amount told instead of a level; `since`: when the line was read that it is added to."""
    text = (
        f"{where.text}, {formats.ml(volume_ml)} drained: that makes the line {formats.ml(level_ml)} "
        f"({formats.number(level_ml - volume_ml, 0)}{since}). Does the canister read that?"
    )
    return Wording(gsm_only(text), (YES, ("no", "the canister reads something else")))


def amount_without_line(where: Where, volume_ml: int) -> Wording:
    """An amount with no line to add it to."""
    told = f"{where.text}, {formats.ml(volume_ml)} drained"
    return Wording(gsm_only(f"{told}: there is no line to add it to. What does the canister read?"))


def level(where: Where, at: str) -> Wording:
    """The level itself."""
    return Wording(gsm_only(f"{where.text}, {at}: what does the line read?"))


def other_level(where: Where, at: str, was_ml: int) -> Wording:
    """The right level of a line that was wrong."""
    text = (
        f"{where.text}: what was the line at {at}, not {formats.ml(was_ml)}? (no: not known, it is withdrawn)"
    )
    return Wording(gsm_only(text), (("no", "not known"),))


def final_level(where: Where) -> Wording:
    """The old canister's last level, before it is thrown away."""
    text = f"Final level of the old canister? Read it before disposal. ({where.text})"
    return Wording(gsm_only(text), (("no", "it was not read"),))


def last_level(where: Where) -> Wording:
    """The last level of a canister whose tube came out."""
    return Wording(gsm_only(f"{where.text}: final level of the canister?"), (("no", "it was not read"),))


def opening(where: Where) -> Wording:
    """What a canister holds that was placed elsewhere or some time ago."""
    return Wording(gsm_only(f"{where.text}: what does the canister read now?"))


def unknown_bed(bed: str, what: str, unit: str) -> Wording:
    """A bed that the unit does not have."""
    return Wording(gsm_only(f"There is no bed {bed} on {unit} ({what}). Which bed?"))


def which_tube(bed: str, what: str, tubes: tuple[str, ...]) -> Wording:
    """A bed with several drains: which tube?"""
    named = formats.listed(tubes, "or")
    text = f"{place(bed, None)}, {what}: which tube, {named}?"
    return Wording(gsm_only(text), tuple((tube, f"the {tube} tube") for tube in tubes))


def other_tube(where: Where, what: str, have: str | None) -> Wording:
    """A tube that this bed has not had: the same drain under another name, or a second one?"""
    known = f"the {have} tube" if have else "one drain, its tube not named"
    text = f"{where.text}, {what}: bed {where.bed} has {known}. First: that drain. Second: another drain."
    return Wording(gsm_only(text), (("first", "that drain"), ("second", "another drain")))


def on_open(where: Where, have: str) -> Wording:
    """A placement at a bed whose drain is open."""
    text = f"{where.text}: it has an open drain ({have}). New drain in its place? (yes closes the old one)"
    return Wording(gsm_only(text), (("yes", "a new drain, the old one is closed"), ("no", "the same drain")))


def changed_again(where: Where, at: str, who: str, final_ml: int | None) -> Wording:
    """An exchange told soon after another one; `final_ml`: a final level which that one still waits for."""
    if final_ml is not None:
        told = formats.ml(final_ml)
        text = f"{where.text}: a canister change at {at} is recorded already ({who}). "
        text += f"First: {told} is its old canister's final level. Second: changed again."
        return Wording(
            gsm_only(text), (("first", f"{told} was its final level"), ("second", "a second change"))
        )
    text = f"{where.text}: a canister change at {at} is recorded already ({who}). Changed again?"
    return Wording(gsm_only(text), (("yes", "a second change"), ("no", "the same change")))


def read_on(where: Where, changed: str, level_ml: int, read: str) -> Wording:
    """An exchange told late, with a line behind it that is no lower than the old canister stood."""
    line = f"the line {formats.ml(level_ml)} at {read}"
    text = f"{where.text}, {changed}, canister changed: was {line} read on the new canister?"
    return Wording(
        gsm_only(text), (("yes", "it was read on the new one"), ("no", "the exchange has another time"))
    )


def occupied(bed: str, to_bed: str, have: str, *, several: bool = False) -> Wording:
    """A move to a bed that has an open drain, or several."""
    held = f"open drains ({have})" if several else f"an open drain ({have})"
    text = (
        f"Bed {bed} to bed {to_bed}: bed {to_bed} has {held}. "
        f"First: they swap beds. Second: that patient left. Or say the bed they went to."
    )
    swap, left = f"beds {bed} and {to_bed} swap", f"the patient of bed {to_bed} left the unit"
    return Wording(gsm_only(text), (("first", swap), ("second", left)))


def heard(what: str) -> Wording:
    """A dictated reading, read back before it is recorded."""
    return Wording(gsm_only(f"{what}. Right?"), (YES, ("no", "nothing is recorded")))


def which_line(where: Where, lines: tuple[str, ...], *, of_one_time: bool = False) -> Wording:
    """Several lines that a correction could be about; the first two can be named so.

    `of_one_time`: they are of several tubes, read at one time.
    """
    say = "Say its tube." if of_one_time else "Say its time."
    text = f"{where.text}: which line, {formats.listed(lines, 'or')}? {say}"
    names = tuple(zip(("first", "second"), lines, strict=False))
    return Wording(gsm_only(text), names)


def sure(where: Where, line: str) -> Wording:
    """A correction that names no line: is it the last one?"""
    return Wording(gsm_only(f"{where.text}: do you mean the line {line}?"), (YES, NO))


def one_of(where: str, labels: tuple[str, ...]) -> Wording:
    """Several readings of a message: the first two by name, the others to be said again."""
    names = ("first", "second")
    told = [f"{name.capitalize()}: {label}." for name, label in zip(names, labels, strict=False)]
    if others := labels[len(names) :]:
        told.append(f"Or {formats.listed(others, 'or')}.")
    text = f"{where}Not sure what you mean. {' '.join(told)}"
    return Wording(gsm_only(text), tuple(zip(names, labels, strict=False)))


def who(told: str) -> Wording:
    """Who writes from a shared phone; what was said waits for the name."""
    about = f" ({told} is not recorded yet)" if told else ""
    return Wording(gsm_only(f"Who is writing? Say your name{about}."))


def missing(slot: str, known: str) -> Wording:
    """A slot that was not said; `known` is what was: "Bed 12, 19:00"."""
    asked = _MISSING.get(slot, "I did not understand. Say it another way?")
    about = f"{known}: {asked[:1].lower()}{asked[1:]}" if known and slot in _MISSING else asked
    return Wording(gsm_only(about))


def told_for_which_bed(right: str) -> Wording:
    """ "Wrong bed, that was 9", where no line of the last message can be meant."""
    return Wording(gsm_only(f"A line that belongs to bed {right}: which bed was it told for?"))


def not_understood(words: str, *, many: bool = False) -> str:
    """A stretch that means nothing to us, or tells too much at once (`many`); nothing was recorded."""
    quoted = f' "{words}"' if words else ""
    again = LINE_BY_LINE if many else 'Say it another way, or "help".'
    return gsm_only(f"Not understood, not recorded:{quoted}. {again}")


def beside_text(numbers: tuple[str, ...]) -> str:
    """Numbers of a message that the question about it leaves out: "Also said, not recorded: 1300, 340." """
    return gsm_only(f"Also said, not recorded: {', '.join(numbers)}. {LINE_BY_LINE}")


_MISSING = {
    "bed": "Which bed?",
    "tube": "Which tube?",
    "level_ml": "What does the line read, in mL?",
    "volume_ml": "How much drained, in mL?",
    "final_ml": "What was the old canister's final level, in mL?",
    "at": "At what time?",
    "to_bed": "To which bed?",
    "to_at": "At what time?",
    "window": "Over which time: this shift, last shift or 24 h?",
    "was_ml": "Which level was wrong?",
    "suction_cmh2o": "Which suction, in cmH2O?",
}
