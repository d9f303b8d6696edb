"""The default rows about amounts, rises and stops, and all rows about volumes in their order. Data only.

In order: of two rows of one code and severity that are both met on a drain, the first is told.
"""

from __future__ import annotations

from bot.engine.rows_rates import BUT_EFFUSION, CARDIAC, LADDER_ROWS, PER_KG, RATE_HIGH, SUSTAINED
from bot.engine.rules import Rule
from bot.engine.sources import ACI, ATLS, BARC, BTS, EAST, LADDER, PRACTICE
from bot.engine.values import Severity

_HIGH, _MODERATE, _LOW = Severity.HIGH, Severity.MODERATE, Severity.LOW
_EFFUSION = ("effusion",)

_AMOUNTS = (
    Rule(
        id="amount_at_once.60min",
        code="amount_at_once",
        profiles=BUT_EFFUSION,
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
        profiles=BUT_EFFUSION,
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
        profiles=CARDIAC,
        measure="amount",
        comparison="at_least",
        value=2000,
        window_h=24,
        severity=_HIGH,
        source=BARC,
        source_status="seen",
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
        profiles=CARDIAC,
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
    *LADDER_ROWS,
    *SUSTAINED,
    *_AMOUNTS,
    *PER_KG,
    *_EFFUSION_LIMIT,
    *_SUDDEN,
    *RATE_HIGH,
)
