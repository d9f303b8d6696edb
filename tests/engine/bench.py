"""How many entries a second the engine folds and reckons, at several sizes: `python -m tests.engine.bench`.

Linear means: the figures of a column stay about the same as the ledger grows.
"""

from __future__ import annotations

from collections.abc import Callable
from datetime import UTC, datetime, timedelta
from time import perf_counter

from bot.engine.cautions import cautions
from bot.engine.entries import Entry, Exchanged, FinalLevel, Line, Payload
from bot.engine.ledger import Ledger, fold
from bot.engine.patient import Patient
from bot.engine.volumes import intervals
from tests.engine.sheet import ADULT, SCHEDULE

SIZES = (1_000, 4_000, 16_000, 64_000)
_START = datetime(2026, 1, 1, tzinfo=UTC)


def entries(count: int) -> list[Entry]:
    """Half-hourly lines of a drain that is exchanged now and then, with a correction to no entry."""
    made: list[Entry] = []
    level = 0
    while len(made) < count:
        level += 20
        payload: Payload = Line(level_ml=level)
        if level > 1500:
            _add(made, FinalLevel(level_ml=level))
            payload, level = Exchanged(), 0
        _add(made, payload)
    return made


def _add(made: list[Entry], payload: Payload) -> None:
    moment = _START + len(made) * timedelta(minutes=30)
    made.append(
        Entry(
            drain="b" * 16,
            position=len(made) + 1,
            at=moment,
            entered=moment,
            who="rn-1",
            message="m",
            payload=payload,
        )
    )


def best_of(work: Callable[[], object], times: int = 3) -> float:
    """The shortest time that the work took, in seconds."""
    taken = []
    for _ in range(times):
        begin = perf_counter()
        work()
        taken.append(perf_counter() - begin)
    return min(taken)


def reckoned(ledger: Ledger) -> object:
    """The cautions of a bed with this drain."""
    last = ledger.levels[-1].at
    return cautions(Patient(bed="12", drains=(ledger,)), last, ADULT)


def main() -> None:
    """Print the table."""
    print(f"{'entries':>8}  {'folded/s':>10}  {'charted/s':>10}  {'cautions/s':>10}")
    for size in SIZES:
        told = entries(size)
        ledger = fold(told)
        rates = (
            size / best_of(lambda told=told: fold(told)),  # type: ignore[misc]
            size / best_of(lambda ledger=ledger: intervals(ledger, SCHEDULE)),  # type: ignore[misc]
            size / best_of(lambda ledger=ledger: reckoned(ledger)),  # type: ignore[misc]
        )
        print(f"{size:>8}  " + "  ".join(f"{rate:>10,.0f}" for rate in rates))


if __name__ == "__main__":
    main()
