"""When the canister reaches three quarters and full, at the recent rate. A reckoning, not a measurement."""

from __future__ import annotations

from datetime import datetime, timedelta
from math import ceil

from bot.engine.ledger import Ledger
from bot.engine.policy import Policy
from bot.engine.rates import Rate, recent_rate
from bot.engine.values import Forecast, Level

THREE_QUARTERS = 0.75
_FARTHEST = timedelta(days=30)


def forecasts(ledger: Ledger, now: datetime, policy: Policy) -> tuple[Forecast, ...]:
    """Three quarters of the capacity and all of it, each with the moment at the rate of the newest hour.

    `at` is none with no rate, at a rate of 0, on a tipped canister, or over 30 days ahead; a level that is
    already reached is at the last line. Nothing without a line.
    """
    last = ledger.last
    if last is None:
        return ()
    rate = None if ledger.canisters[-1].tipped else recent_rate(ledger, now)
    targets = (ceil(policy.capacity_ml * THREE_QUARTERS), policy.capacity_ml)
    return tuple(_forecast(target, level_in_use(ledger), last, rate) for target in targets)


def level_in_use(ledger: Ledger) -> int:
    """The level of the canister in use, in mL: its last line, or what it opened at when none was read."""
    last, canister = ledger.levels[-1], ledger.canisters[-1]
    return last.level_ml if last.canister == canister.index else canister.opening_ml or 0


def _forecast(target_ml: int, level_ml: int, last: Level, rate: Rate | None) -> Forecast:
    value = rate.value if rate else None
    if level_ml >= target_ml:
        return Forecast(level_ml=target_ml, rate_ml_h=value, at=last.at)
    hours = (target_ml - level_ml) / value if value else None
    ahead = hours is not None and hours <= _FARTHEST / timedelta(hours=1)
    at = last.at + timedelta(hours=hours) if ahead and hours is not None else None
    return Forecast(level_ml=target_ml, rate_ml_h=value, at=at)
