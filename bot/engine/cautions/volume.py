"""The checks on rates and amounts: on each drain, and on the sum of the patient's open drains."""

from __future__ import annotations

from collections.abc import Iterator
from datetime import datetime, timedelta

from bot.engine.cautions.scene import Scene, Subject, clamped_spells, raised
from bot.engine.entries import Line
from bot.engine.ledger import Ledger
from bot.engine.policy import Rule
from bot.engine.rates import (
    HOUR,
    LONGEST,
    Inside,
    Rate,
    anywhere,
    higher,
    highest_amount,
    highest_hour,
    sustained,
)
from bot.engine.values import Caution, Level

PAUSE = timedelta(minutes=15)
"""A clamped spell this long is the pause after which an effusion is counted afresh (NSW ACI s.3)."""
_RECENT_PLACEMENT = timedelta(hours=6)


def rate_high(scene: Scene) -> Iterator[Caution]:
    """Over the unit's rate in any one hour."""
    return _met(scene, "rate_high")


def rate_sustained(scene: Scene) -> Iterator[Caution]:
    """Over the rate in each of several hours; averages claim nothing."""
    return _met(scene, "rate_sustained")


def ladder(scene: Scene) -> Iterator[Caution]:
    """The rungs after heart surgery: each hour, not the mean."""
    return _met(scene, "ladder")


def amount_at_once(scene: Scene) -> Iterator[Caution]:
    """A large amount within an hour, or within an hour of placement."""
    return _met(scene, "amount_at_once")


def amount_24h(scene: Scene) -> Iterator[Caution]:
    """A large amount within 24 h."""
    return _met(scene, "amount_24h")


def per_kg(scene: Scene) -> Iterator[Caution]:
    """The rules by weight; and that none can be checked on a child whose weight was not told."""
    yield from _met(scene, "per_kg")
    if scene.patient.weight_kg is None:
        for rule, drain in scene.met("per_kg"):
            if rule.measure == "told" and drain.levels:
                yield raised(rule, drain, detail="no_weight")


def effusion_limit(scene: Scene) -> Iterator[Caution]:
    """The amount at one time: since placement, or since the last clamped pause. Each drain alone."""
    return (caution for caution in _met(scene, "effusion_limit") if caution.drain is not None)


def average_only(scene: Scene) -> Iterator[Caution]:
    """The last stretch is too long to know its hours, and its mean would meet a rule of single hours."""
    rules = [
        rule for code in ("ladder", "rate_sustained", "per_kg", "rate_high") for rule in scene.rules(code)
    ]
    for note, drain in scene.met("average_only"):
        mean = _long_mean(drain)
        if mean is not None and any(_mean_meets(scene, rule, drain, mean) for rule in rules):
            yield raised(
                note, drain, value=mean.value, unit="mL/h", begin=mean.begin, end=mean.end, average=True
            )


def _long_mean(drain: Ledger) -> Rate | None:
    """The mean of the last stretch between two lines, in mL/h, where it is longer than an hour can be."""
    if len(drain.levels) < 2:
        return None
    begin, end = drain.levels[-2:]
    span = end.at - begin.at
    if span <= LONGEST:
        return None
    return Rate(begin=begin.at, end=end.at, value=(end.total_ml - begin.total_ml) * HOUR / span)


def _mean_meets(scene: Scene, rule: Rule, drain: Ledger, mean: Rate) -> bool:
    if rule.measure not in ("rate", "each_hour") or drain not in scene.covered(rule):
        return False
    limit = _limit(rule, scene.patient.weight_kg)
    return limit is not None and rule.met_by(mean.value, limit)


def _met(scene: Scene, code: str) -> Iterator[Caution]:
    """The cautions of that code: of each row on each drain, and on the sum if no drain meets it alone."""
    for rule in scene.rules(code):
        alone = False
        for subject in scene.subjects(rule):
            rate = _measured(rule, subject)
            if rate is not None and not (alone and subject.drain is None):
                alone = True
                yield _caution(rule, subject, rate)


def _limit(rule: Rule, weight_kg: float | None) -> float | None:
    """The row's value in mL or mL/h for this patient; none where it is per kg and the weight is not known."""
    if not rule.per_kg:
        return rule.value
    return None if weight_kg is None else round(rule.value * weight_kg, 6)


def _measured(rule: Rule, subject: Subject) -> Rate | None:
    """What was measured by the row, when it meets it."""
    limit = _limit(rule, subject.weight_kg)
    if limit is None or rule.measure == "told":
        return None
    rate = _by_measure(rule, subject, limit)
    return rate if rate is not None and rule.met_by(round(rate.value, 6), limit) else None


def _by_measure(rule: Rule, subject: Subject, limit: float) -> Rate | None:
    inside = _inside(rule, subject)
    hours = int(rule.window_h or 1)
    match rule.measure:
        case "rate":
            return _once(subject, None, inside)
        case "each_hour" if hours == 1 and not rule.longer:
            return _once(subject, None, inside)
        case "each_hour":
            return sustained(
                subject.series,
                hours,
                lambda value: rule.met_by(round(value, 6), limit),
                longer=rule.longer,
                inside=inside,
            )
        case "amount":
            return _once(subject, timedelta(hours=rule.window_h or 1), inside)
        case "since_placement" if subject.drain is not None:
            return _since_placement(subject.drain, rule)
        case _:
            return None


def _once(subject: Subject, window: timedelta | None, inside: Inside) -> Rate | None:
    """The same, measured once for all the rows that look at any time."""
    if inside is not anywhere:
        return _highest(subject, window, inside)
    if window not in subject.measured:
        subject.measured[window] = _highest(subject, window, inside)
    return subject.measured[window]


def _highest(subject: Subject, window: timedelta | None, inside: Inside) -> Rate | None:
    """The highest amount within the window; with none, the most that is proven of any one hour, in mL/h."""
    if window is not None:
        return highest_amount(subject.series, window, inside)
    return higher(highest_hour(subject.series, inside), _once(subject, HOUR, inside))


def _inside(rule: Rule, subject: Subject) -> Inside:
    """Where the row looks; a row of any time is not asked of each stretch."""
    if not rule.after_h and rule.within_h is None:
        return anywhere
    return lambda begin, end: subject.inside(rule, begin, end)


def _since_placement(drain: Ledger, rule: Rule) -> Rate | None:
    """What drained within the window of the placement; with no window, since it or the last pause."""
    if not drain.levels:
        return None
    if rule.window_h is None:
        return _at_one_time(drain)
    if drain.placed_at is None or drain.levels[-1].at - drain.placed_at > _RECENT_PLACEMENT:
        return None
    until = drain.placed_at + timedelta(hours=rule.window_h)
    within = [level for level in drain.levels if level.at <= until]
    return _drained(drain, drain.placed_at, within[-1]) if within else None


def _drained(drain: Ledger, placed_at: datetime, level: Level) -> Rate:
    """All that came up to that level since the placement, the first line's own reading included where it was
    read within an hour of it: nothing else can have been in a canister that opened so lately."""
    first = drain.levels[0]
    fresh = isinstance(_payload(drain, first), Line) and first.at - placed_at <= HOUR
    opening = first.level_ml if fresh or first is level else 0
    return Rate(begin=placed_at, end=level.at, value=level.total_ml + opening)


def _payload(drain: Ledger, level: Level) -> object:
    entry = drain.effective(level.entry)
    return entry.payload if entry else None


def _at_one_time(drain: Ledger) -> Rate:
    """What drained since placement (or first line), or since the last clamped pause of 15 min or more."""
    last = drain.levels[-1]
    ends = [end for begin, end in clamped_spells(drain) if end is not None and end - begin >= PAUSE]
    before = [level for level in drain.levels if ends and level.at <= ends[-1]]
    if before:
        base = before[-1]
        return Rate(begin=base.at, end=last.at, value=last.total_ml - base.total_ml)
    if drain.placed_at is not None and drain.levels[0].kind == "mark":
        return _drained(drain, drain.placed_at, last)
    return Rate(begin=drain.levels[0].at, end=last.at, value=last.total_ml)


def _caution(rule: Rule, subject: Subject, rate: Rate) -> Caution:
    hourly = rule.measure in ("rate", "each_hour")
    share = subject.weight_kg if rule.per_kg and subject.weight_kg else 1
    return raised(
        rule,
        subject.drain,
        value=rate.value / share,
        limit=rule.value,
        unit=f"mL{'/kg' if rule.per_kg else ''}{'/h' if hourly else ''}",
        comparison=rule.comparison,
        hours=int(rule.window_h) if rule.window_h else rate.hours if hourly else None,
        begin=rate.begin,
        end=rate.end,
        average=rate.average,
    )
