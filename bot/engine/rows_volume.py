"""The default rows about volumes: rates, amounts, rises and stops. Data only.

In order: of two rows of one code and severity that are both met on a drain, the first is told.
"""

from __future__ import annotations

from bot.engine.rules import Rule
from bot.engine.values import Severity

_HIGH, _MODERATE, _LOW = Severity.HIGH, Severity.MODERATE, Severity.LOW
_BUT_EFFUSION = ("general", "cardiac", "lung", "trauma", "air")
_BUT_CARDIAC = ("general", "lung", "trauma", "air")
_CARDIAC = ("cardiac",)
_EFFUSION = ("effusion",)

ACI = "NSW ACI, Pleural Drains in Adults s.3"
TEXTS = "Nursing review texts, which disagree"
CORONARY = "Am J Surg 1980, 10.1016/0002-9610(80)90284-6"
CHRISTENSEN = "Christensen et al., J Cardiothorac Vasc Anesth 2012;26:46-51"
HASUMI = "Hasumi et al., Open Access Surg 2024;17:95"
ATLS = "ATLS, as quoted by RCEM Learning"
LADDER = "Melanson, McGill 2001, quoted in an open ICU handbook"
EAST = "Mowery et al., EAST guideline, J Trauma 2011;70:510, from memory"
BARC = "BARC type 4, BMJ Open 2022;12:e068933 Table 3"
WONG = "Wong's Essentials of Pediatric Nursing, nursing alert (after cardiac surgery)"
BTS = "BTS pleural guidelines 2010/2023, from memory"
PRACTICE = "Common practice, no source"

_RATE_HIGH = (
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
        profiles=_CARDIAC,
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
        profiles=_CARDIAC,
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
        profiles=_CARDIAC,
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
        profiles=_CARDIAC,
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
        profiles=_BUT_EFFUSION,
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
        profiles=_BUT_EFFUSION,
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

_SUSTAINED = (
    Rule(
        id="rate_sustained.2h",
        code="rate_sustained",
        profiles=_BUT_EFFUSION,
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
        profiles=_CARDIAC,
        population="adult",
        measure="each_hour",
        comparison="over",
        value=value,
        window_h=hours,
        severity=_HIGH,
        source=LADDER,
        source_status="second-hand",
    )


_LADDER = (_rung(1, 500), _rung(2, 400), _rung(3, 300), _rung(4, 200))

_AMOUNTS = (
    Rule(
        id="amount_at_once.60min",
        code="amount_at_once",
        profiles=_BUT_EFFUSION,
        measure="amount",
        comparison="over",
        value=500,
        window_h=1,
        severity=_HIGH,
        source=LADDER,
        source_status="second-hand",
    ),
    Rule(
        id="amount_at_once.insertion",
        code="amount_at_once",
        profiles=_BUT_EFFUSION,
        measure="since_placement",
        comparison="at_least",
        value=1500,
        window_h=1,
        severity=_HIGH,
        source=ATLS,
        source_status="second-hand",
    ),
    Rule(
        id="amount_24h.any",
        code="amount_24h",
        measure="amount",
        comparison="at_least",
        value=1500,
        window_h=24,
        severity=_HIGH,
        source=EAST,
        source_status="memory",
    ),
    Rule(
        id="amount_24h.cardiac",
        code="amount_24h",
        profiles=_CARDIAC,
        measure="amount",
        comparison="at_least",
        value=2000,
        window_h=24,
        severity=_HIGH,
        source=BARC,
        source_status="seen",
    ),
)

_PER_KG = (
    Rule(
        id="per_kg.cardiac.early",
        code="per_kg",
        profiles=_CARDIAC,
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
        profiles=_BUT_EFFUSION,
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
        profiles=_BUT_EFFUSION,
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
        profiles=_BUT_EFFUSION,
        population="child",
        measure="told",
        severity=_LOW,
        source=WONG,
        source_status="derived",
    ),
)

_EFFUSION_LIMIT = (
    Rule(
        id="effusion_limit.1500",
        code="effusion_limit",
        profiles=_EFFUSION,
        measure="since_placement",
        comparison="at_least",
        value=1500,
        severity=_HIGH,
        source=ACI,
        source_status="seen",
    ),
    Rule(
        id="effusion_limit.bts",
        code="effusion_limit",
        profiles=_EFFUSION,
        measure="since_placement",
        comparison="over",
        value=1500,
        severity=_HIGH,
        source=BTS,
        source_status="memory",
    ),
    Rule(
        id="effusion_limit.1000",
        code="effusion_limit",
        profiles=_EFFUSION,
        measure="since_placement",
        comparison="at_least",
        value=1000,
        severity=_MODERATE,
        source=ACI,
        source_status="seen",
    ),
)

_SUDDEN = (
    Rule(
        id="sudden_rise",
        code="sudden_rise",
        measure="times_mean",
        comparison="at_least",
        value=3,
        window_h=2,
        floor=100,
        severity=_MODERATE,
        source=PRACTICE,
        source_status="common practice",
    ),
    Rule(
        id="sudden_stop.cardiac",
        code="sudden_stop",
        profiles=_CARDIAC,
        measure="stop",
        comparison="at_most",
        value=10,
        window_h=2,
        floor=50,
        mediastinal=True,
        severity=_HIGH,
        source="Open ICU handbook; ERAS Cardiac",
        source_status="second-hand",
    ),
    Rule(
        id="sudden_stop",
        code="sudden_stop",
        measure="stop",
        comparison="at_most",
        value=10,
        window_h=2,
        floor=50,
        severity=_MODERATE,
        source=PRACTICE,
        source_status="common practice",
    ),
    Rule(
        id="average_only",
        code="average_only",
        measure="told",
        severity=_LOW,
        source=PRACTICE,
        source_status="common practice",
    ),
)

VOLUME_ROWS = (
    *_LADDER,
    *_SUSTAINED,
    *_AMOUNTS,
    *_PER_KG,
    *_EFFUSION_LIMIT,
    *_SUDDEN,
    *_RATE_HIGH,
)
