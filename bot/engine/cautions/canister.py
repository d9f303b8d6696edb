"""The checks on how full the canister is."""

from __future__ import annotations

from collections.abc import Iterator

from bot.engine.cautions.scene import Scene, raised
from bot.engine.ledger import Ledger
from bot.engine.policy import Rule
from bot.engine.values import Caution


def over_capacity(scene: Scene) -> Iterator[Caution]:
    """A level over what the canister can hold."""
    return _filled(scene, "over_capacity")


def full(scene: Scene) -> Iterator[Caution]:
    """The canister is full."""
    return _filled(scene, "full")


def three_quarters_full(scene: Scene) -> Iterator[Caution]:
    """Three quarters full, not yet full: the exchange is to be planned (Royal Marsden Manual, ch. 12)."""
    fuller = {caution.drain for caution in full(scene)}
    return (one for one in _filled(scene, "three_quarters_full") if one.drain not in fuller)


def _filled(scene: Scene, code: str) -> Iterator[Caution]:
    for rule, drain in scene.met(code):
        limit = _limit_ml(rule, scene.policy.capacity_ml)
        last = drain.last
        # After an exchange the last level is on the old canister: it says nothing of the one in use.
        if last and last.canister == drain.canisters[-1].index and rule.met_by(last.level_ml, limit):
            yield raised(
                rule,
                drain,
                value=last.level_ml,
                limit=limit,
                unit="mL",
                comparison=rule.comparison,
                begin=_since(rule, drain, limit),
                end=last.at,
            )


def _since(rule: Rule, drain: Ledger, limit: float) -> object:
    """The first line of this canister that met the row, of those that met it up to now."""
    since = None
    for level in reversed(drain.levels):
        if level.canister != drain.canisters[-1].index or not rule.met_by(level.level_ml, limit):
            break
        since = level.at
    return since


def _limit_ml(rule: Rule, capacity_ml: int) -> float:
    return rule.value * capacity_ml if rule.measure == "fraction" else rule.value
