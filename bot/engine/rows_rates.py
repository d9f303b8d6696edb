"""The default rows about rates: an hour, several hours, the ladder, by weight. Data only.

In order: of two rows of one code and severity that are both met on a drain, the first is told.
"""

from __future__ import annotations

from bot.engine.rules import Rule
from bot.engine.sources import ACI, ATLS, CHRISTENSEN, CORONARY, HASUMI, LADDER, TEXTS, WONG
from bot.engine.values import Severity

_HIGH, _MODERATE, _LOW = Severity.HIGH, Severity.MODERATE, Severity.LOW
BUT_EFFUSION = ("general", "cardiac", "lung", "trauma", "air")
_BUT_CARDIAC = ("general", "lung", "trauma", "air")
CARDIAC = ("cardiac",)

RATE_HIGH = (
    Rule(
        id="rate_high.general",
        code="rate_high",
        profiles=_BUT_CARDIAC,
        population="adult",
        measure="rate",
        comparison="over",
        value=100,
        severity=_MODERATE,
        source=ACI,
        source_status="seen",
    ),
    Rule(
        id="rate_high.lung.bloody",
        code="rate_high",
        profiles=("lung",),
        population="adult",
        measure="each_hour",
        comparison="at_least",
        value=100,
        window_h=2,
        bloody=True,
        severity=_MODERATE,
        source=HASUMI,
        source_status="seen",
    ),
    Rule(
        id="rate_high.cardiac.hour1",
        code="rate_high",
        profiles=CARDIAC,
        population="adult",
        measure="rate",
        comparison="over",
        value=300,
        within_h=1,
        severity=_MODERATE,
        source=CORONARY,
        source_status="seen",
    ),
    Rule(
        id="rate_high.cardiac.hour2",
        code="rate_high",
        profiles=CARDIAC,
        population="adult",
        measure="rate",
        comparison="over",
        value=250,
        after_h=1,
        within_h=2,
        severity=_MODERATE,
        source=CORONARY,
        source_status="seen",
    ),
    Rule(
        id="rate_high.cardiac.later",
        code="rate_high",
        profiles=CARDIAC,
        population="adult",
        measure="rate",
        comparison="over",
        value=150,
        after_h=2,
        severity=_MODERATE,
        source=CORONARY,
        source_status="seen",
    ),
    Rule(
        id="rate_high.cardiac.early",
        code="rate_high",
        profiles=CARDIAC,
        population="adult",
        measure="amount",
        comparison="at_least",
        value=200,
        window_h=1,
        within_h=6,
        severity=_MODERATE,
        source=CHRISTENSEN,
        source_status="seen",
    ),
    Rule(
        id="rate_high.texts.70",
        code="rate_high",
        profiles=_BUT_CARDIAC,
        population="adult",
        measure="rate",
        comparison="over",
        value=70,
        severity=_MODERATE,
        source=TEXTS,
        source_status="second-hand",
        on=False,
    ),
    Rule(
        id="rate_high.texts.first_2h",
        code="rate_high",
        profiles=BUT_EFFUSION,
        population="adult",
        measure="rate",
        comparison="over",
        value=150,
        within_h=2,
        severity=_MODERATE,
        source=TEXTS,
        source_status="second-hand",
        on=False,
    ),
    Rule(
        id="rate_high.texts.after_2h",
        code="rate_high",
        profiles=BUT_EFFUSION,
        population="adult",
        measure="rate",
        comparison="over",
        value=100,
        after_h=2,
        severity=_MODERATE,
        source=TEXTS,
        source_status="second-hand",
        on=False,
    ),
)

SUSTAINED = (
    Rule(
        id="rate_sustained.2h",
        code="rate_sustained",
        profiles=BUT_EFFUSION,
        population="adult",
        measure="each_hour",
        comparison="over",
        value=200,
        window_h=2,
        severity=_HIGH,
        source=ATLS,
        source_status="second-hand",
    ),
)


def _rung(hours: int, value: float) -> Rule:
    return Rule(
        id=f"ladder.cardiac.{hours}h",
        code="ladder",
        profiles=CARDIAC,
        population="adult",
        measure="each_hour",
        comparison="over",
        value=value,
        window_h=hours,
        severity=_HIGH,
        source=LADDER,
        source_status="second-hand",
    )


LADDER_ROWS = (_rung(1, 500), _rung(2, 400), _rung(3, 300), _rung(4, 200))

PER_KG = (
    Rule(
        id="per_kg.cardiac.early",
        code="per_kg",
        profiles=CARDIAC,
        population="adult",
        measure="each_hour",
        comparison="at_least",
        value=2,
        window_h=2,
        per_kg=True,
        within_h=6,
        severity=_HIGH,
        source=CHRISTENSEN,
        source_status="seen",
    ),
    Rule(
        id="per_kg.child.1h",
        code="per_kg",
        profiles=BUT_EFFUSION,
        population="child",
        measure="amount",
        comparison="at_least",
        value=5,
        window_h=1,
        per_kg=True,
        severity=_HIGH,
        source=WONG,
        source_status="seen",
    ),
    Rule(
        id="per_kg.child.3h",
        code="per_kg",
        profiles=BUT_EFFUSION,
        population="child",
        measure="each_hour",
        comparison="over",
        value=3,
        window_h=3,
        longer=True,
        per_kg=True,
        severity=_HIGH,
        source=WONG,
        source_status="seen",
    ),
    Rule(
        id="per_kg.no_weight",
        code="per_kg",
        profiles=BUT_EFFUSION,
        population="child",
        measure="told",
        severity=_LOW,
        source=WONG,
        source_status="derived",
    ),
)
