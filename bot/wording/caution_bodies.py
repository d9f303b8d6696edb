"""What each caution says was measured, one function a code; `cautions` puts severity and source around it.

A sentence says what was measured or told and what rule it meets. It never says how to treat: equipment
is looked at, the patient is assessed, the provider is told per unit policy.
"""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass, replace
from datetime import datetime, timedelta, tzinfo

from bot.engine.values import Caution
from bot.wording import formats

_COMPARED = {
    "over": "over",
    "at_least": "at or over",
    "under": "under",
    "at_most": "at or under",
    "": "against",
}
_WORDS = {
    "sanguineous": "bloody",
    "bright_red": "bright red",
    "dark_red": "dark red",
    "chylous": "chylous (milky)",
}

_SHORTEST_HOUR = timedelta(minutes=45)
_HOUR = timedelta(hours=1)


def compared(caution: Caution) -> str:
    """How the value stands to the limit: "over", "at or over"."""
    return _COMPARED[caution.comparison]


@dataclass(frozen=True, slots=True)
class Told:
    """A caution with the clock that its times are told by."""

    caution: Caution
    zone: tzinfo
    now: datetime

    @property
    def value(self) -> str:
        """What was measured, with its unit; empty when the caution has no number."""
        return self.measured(self.caution.unit)

    def measured(self, unit: str) -> str:
        """What was measured, under that unit."""
        value, limit = self.caution.value, self.caution.limit
        if value is None or limit is None:
            return "" if value is None else formats.quantity(value, unit)
        return formats.beyond(value, unit, limit, self.caution.comparison)

    @property
    def limit(self) -> str:
        """The rule's number, with its unit; empty when the rule has none."""
        return "" if self.caution.limit is None else formats.quantity(self.caution.limit, self.caution.unit)

    @property
    def against(self) -> str:
        """The comparison and the rule's number: ", over 100 mL/h"."""
        return f", {compared(self.caution)} {self.limit}" if self.limit else ""

    @property
    def when(self) -> str:
        """The stretch measured: " 18:00-19:00"; its end alone where it has no start; else empty."""
        begin, end = self.caution.begin, self.caution.end
        if begin and end:
            return f" {formats.stretch(begin, end, self.zone, self.now)}"
        return f" at {self.clock(end)}" if end else ""

    @property
    def since(self) -> str:
        """The start of what lasts: " since 14:05"; empty where it has none."""
        begin = self.caution.begin
        return f" since {self.clock(begin)}" if begin else ""

    @property
    def lasting(self) -> str:
        """How long the stretch is: " in 60 min"; empty without both ends."""
        begin, end = self.caution.begin, self.caution.end
        return f" in {formats.elapsed(begin, end)}" if begin and end else ""

    def clock(self, moment: datetime) -> str:
        """The moment on the unit's clock."""
        return formats.clock(moment, self.zone, self.now)

    def detail(self, before: str = " (", after: str = ")") -> str:
        """The sentence's own word with something around it; empty without one."""
        word = _WORDS.get(self.caution.detail, self.caution.detail.replace("_", " "))
        return f"{before}{word}{after}" if word else ""


def _rate(told: Told) -> str:
    hours = told.caution.hours or 1
    if told.caution.average:
        window = "hour" if hours == 1 else f"{hours} h"
        return f"at least {told.value} in some {window} of{told.when}{told.against}"
    if told.caution.unit in {"mL", "mL/kg"}:
        return _amount(told, timedelta(hours=hours))
    if hours > 1:
        return _each_hour(told)
    if _is_a_whole_hour(told.caution):
        return _amount(replace(told, caution=replace(told.caution, unit="mL")), _HOUR)
    return f"{_already(told) or told.value + told.when}{told.against}"


def _is_a_whole_hour(caution: Caution) -> bool:
    """The first rung is told in the words of the amount rule that it is, so that a reply says it once."""
    begin, end = caution.begin, caution.end
    return caution.code == "ladder" and begin is not None and end is not None and end - begin >= _HOUR


def _already(told: Told) -> str:
    """What came within much less than an hour, as the amount that it is; it can only grow."""
    begin, end, value = told.caution.begin, told.caution.end, told.caution.value
    if begin is None or end is None or value is None or end - begin >= _SHORTEST_HOUR:
        return ""
    return f"{told.measured(told.caution.unit.removesuffix('/h'))}{told.lasting}"


def _per_kg(told: Told) -> str:
    return _rate(told) if told.value else "no weight is known, so no rate rule can be checked"


def _each_hour(told: Told) -> str:
    lowest = f", the lowest {told.value}" if told.value else ""
    hours = f"each hour of{told.when}" if told.when else f"each of {told.caution.hours} hours"
    return f"{compared(told.caution)} {told.limit} in {hours}{lowest}"


def _amount(told: Told, window: timedelta) -> str:
    """What was measured; over a little more than the window, both that and what it makes in the window."""
    begin, end, value = told.caution.begin, told.caution.end, told.caution.value
    if begin is None or end is None or value is None or end - begin <= window:
        return f"{told.value}{told.lasting}{told.against}"
    measured = formats.quantity(value * ((end - begin) / window), told.caution.unit)
    return f"{measured}{told.lasting} ({told.value} in {formats.length(window)}){told.against}"


def _effusion_limit(told: Told) -> str:
    return f"{told.value} at one time{told.since}{told.against}"


def _sudden_rise(told: Told) -> str:
    return f"sudden rise, {told.value}{told.when}{told.detail(', ', '')}"


def _sudden_stop(told: Told) -> str:
    return f"sudden stop, {told.value}{told.lasting}{told.detail(' after ', '')}; look for a kink or a clot"


def _line_fell(told: Told) -> str:
    before = f" of {told.limit}" if told.limit else ""
    return f"line {told.value} is below the line{before} before it; no volume is counted across the fall"


def _over_capacity(told: Told) -> str:
    return f"line {told.value} is over the canister's {told.limit}"


def _filling(told: Told) -> str:
    return f"canister at {told.value}{told.against}; plan the exchange"


def _tipped(told: Told) -> str:
    return f"tipped over{told.since}: no volume can be measured on this canister"


def _damaged(told: Told) -> str:
    return f"canister damaged{told.since}: an exchange is due per unit policy"


def _off(words: str) -> Callable[[Told], str]:
    def body(told: Told) -> str:
        return f"{words}{told.since}. Call for help now; clamping only per unit policy"

    return body


def _raised(told: Told) -> str:
    return f"canister above the chest{told.since}; it belongs below the chest, upright"


def _kinked(told: Told) -> str:
    return f"tubing kinked{told.since}; look whether it drains again"


def _clamped(told: Told) -> str:
    lasting = f", {told.value}" if told.value else ""
    leak = f" with an air leak{told.detail()}" if told.caution.detail else ""
    return f"clamped{told.since}{lasting}{told.against}{leak}; clamping only for a stated purpose"


def _seal(told: Told) -> str:
    return f"water seal {told.value}{told.against}"


def _wall(told: Told) -> str:
    return f"wall suction {told.value}{told.against}"


def _dial(told: Told) -> str:
    against = told.against if told.caution.comparison else f", ordered {told.limit}"
    return f"suction {told.value}{against}"


def _suction_off(told: Told) -> str:
    return f"suction off{told.since}"


def _indicator(_: Told) -> str:
    return "suction indicator not in range; look at the wall suction first"


def _leak(told: Told) -> str:
    return f"air leak{told.detail(' ', '')}; look along the tubing and connections"


def _tidaling(_: Told) -> str:
    return "no tidaling: perhaps blocked, or lung up; check off suction, per unit policy"


def _fluid(told: Told) -> str:
    return f"fluid is now {told.detail('', '') or 'changed'}"


def _overdue(told: Told) -> str:
    what, begin, end = told.detail("", "") or "line", told.caution.begin, told.caution.end
    due = f", due at {told.clock(end)}" if end else ""
    late = begin is not None and end is not None and begin > end
    last = f", the last at {told.clock(begin)}" if begin and not late else ""
    return f"{what} overdue{due}{last}"


def _no_boundary(told: Told) -> str:
    begin = told.caution.begin
    counted = f"; the shift is counted from the line at {told.clock(begin)}" if begin else ""
    return f"no line at the shift's start{counted}"


def _jump(told: Told) -> str:
    return f"a large step, {told.value}{told.lasting}{told.against}; kept as confirmed"


def _average_only(told: Told) -> str:
    return f"average only, {told.value}{told.when}; single hours are not known. Hourly marks would show them"


def _at_least(_: Told) -> str:
    return 'an old canister has no final level; sums across it are "at least"'


def _duplicate(told: Told) -> str:
    return f"already marked{told.when}; counted once"


def _time_conflict(told: Told) -> str:
    return f"two different levels{told.when}"


def _amended(_: Told) -> str:
    return "volumes given out before have changed; see Amend"


def _unconfirmed(told: Told) -> str:
    return f"{told.value or 'a reading'}{told.when} is not confirmed and not counted"


def _identifiers(_: Told) -> str:
    return "a bed is not a patient: check two identifiers at the bedside"


BODIES: dict[str, Callable[[Told], str]] = {
    "rate_high": _rate,
    "rate_sustained": _each_hour,
    "ladder": _rate,
    "amount_at_once": _rate,
    "amount_24h": _rate,
    "per_kg": _per_kg,
    "effusion_limit": _effusion_limit,
    "sudden_rise": _sudden_rise,
    "sudden_stop": _sudden_stop,
    "line_fell": _line_fell,
    "over_capacity": _over_capacity,
    "three_quarters_full": _filling,
    "full": _filling,
    "tipped": _tipped,
    "damaged": _damaged,
    "disconnected": _off("tubing off the canister"),
    "dislodged": _off("tube out of place"),
    "raised": _raised,
    "kinked": _kinked,
    "clamped": _clamped,
    "seal": _seal,
    "wall_suction": _wall,
    "dial_suction": _dial,
    "suction_off": _suction_off,
    "suction_indicator": _indicator,
    "leak": _leak,
    "tidaling_lost": _tidaling,
    "fluid_changed": _fluid,
    "overdue": _overdue,
    "no_boundary_line": _no_boundary,
    "jump": _jump,
    "average_only": _average_only,
    "at_least": _at_least,
    "duplicate": _duplicate,
    "time_conflict": _time_conflict,
    "amended": _amended,
    "unconfirmed": _unconfirmed,
    "two_identifiers": _identifiers,
}
