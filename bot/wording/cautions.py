"""A caution as one line that a nurse reads: how serious, what was measured, which rule and whose.

Severity is a word, never a colour alone. Called by dialogue for replies, by notices for what is sent to
others, and by the command line.
"""

from __future__ import annotations

import re
from collections.abc import Collection, Iterable
from datetime import datetime, tzinfo

from bot.engine.values import Caution, Severity
from bot.wording import formats
from bot.wording.caution_bodies import BODIES, Told, compared
from bot.wording.gsm import gsm_only

PREFIX = {Severity.HIGH: "URGENT", Severity.MODERATE: "CAUTION", Severity.LOW: "NOTE"}
ASSESS = "Assess the patient; tell the provider per unit policy."
ASSESS_IF_RIGHT = "Assess the patient now."
MOST_OTHERS = 3
"""Every URGENT is told; of the others at most so many, and the rest is counted."""

_ORDER = {Severity.HIGH: 0, Severity.MODERATE: 1, Severity.LOW: 2}
_SOURCELESS = frozenset(
    {"line_fell", "no_boundary_line", "average_only", "at_least", "duplicate", "time_conflict", "amended"}
    | {"unconfirmed", "jump", "over_capacity", "overdue", "dial_suction"}
)
"""What the ledger says of itself: no published rule stands behind it, so none is named."""

_SUMMED = frozenset({"rate_high", "rate_sustained", "ladder", "amount_at_once", "amount_24h", "per_kg"})
"""Judged on the sum of a bed's open drains too; then no single tube is named."""

_OWN_LIMIT = frozenset({"sudden_rise", "sudden_stop", "line_fell"})
"""Their limit alone says little: a multiple, a part of the rule, the line before."""


def caution_text(
    caution: Caution, zone: tzinfo, now: datetime, *, bed: str | None = None, still: bool = False
) -> str:
    """The caution in one line: "URGENT: 620 mL in 60 min, over 500 mL (ATLS). Assess the patient; ..."

    `bed` names the bed where a reply is about several; `still` is a caution that stood before.
    """
    body = BODIES[caution.code](Told(caution, zone, now))
    average = ", an average" if _needs_average(caution) else ""
    return gsm_only(f"{_head(caution, bed, still)}: {body}{average}{_source(caution)}.{_assess(caution)}")


def cleared_text(caution: Caution, *, bed: str | None = None) -> str:
    """What is said once when a caution no longer stands: "Cleared: rate high, over 100 mL/h."."""
    limit = ""
    if caution.limit is not None and caution.comparison and caution.code not in _OWN_LIMIT:
        limit = f", {compared(caution)} {formats.quantity(caution.limit, caution.unit)}"
    name = caution.detail if caution.detail == "no_weight" else caution.code
    return gsm_only(f"Cleared{_subject(caution, bed)}: {name.replace('_', ' ')}{limit}.")


def told_once(cautions: Iterable[Caution]) -> tuple[Caution, ...]:
    """The cautions, of which those that say the same number of the same source are one sentence.

    The first rung of the ladder after heart surgery and the amount within an hour are one rule's two rows.
    """
    found: dict[tuple[object, ...], Caution] = {}
    for each in cautions:
        measured = (each.severity, each.drain, each.begin, each.end, each.value, each.limit, each.source)
        held = found.setdefault((each.key,) if each.value is None else measured, each)
        if held.unit != "mL" and each.unit == "mL":
            found[measured] = each
    return tuple(found.values())


def by_severity(cautions: Iterable[Caution]) -> tuple[Caution, ...]:
    """The cautions, most serious first; within one severity as they came."""
    return tuple(sorted(cautions, key=lambda caution: _ORDER[caution.severity]))


def short_source(source: str) -> str:
    """Whose rule it is, short enough for a text: the name before the first comma, and a year.

    "Christensen et al., J Cardiothorac Vasc Anesth 2012;26:46-51" is "Christensen et al. 2012".
    """
    if source.casefold().startswith("common practice"):
        return "common practice"
    name, _, rest = source.replace(";", ",").partition(",")
    year = re.search(r"\b(?:19|20)\d\d\b", rest)
    return f"{name} {year[0]}" if year and "et al" in name else name


def _head(caution: Caution, bed: str | None, still: bool) -> str:
    state = f"{' if right' if caution.if_right else ''}{' still' if still else ''}"
    subject = _subject(caution, bed)
    return f"{PREFIX[caution.severity]}{state}{',' if state and subject else ''}{subject}"


def _subject(caution: Caution, bed: str | None) -> str:
    together = "all tubes" if caution.drain is None and caution.code in _SUMMED else ""
    words = (f"bed {bed}" if bed else "", caution.tube or together)
    named = " ".join(word for word in words if word)
    return f" {named}" if named else ""


def _needs_average(caution: Caution) -> bool:
    return caution.average and caution.code != "average_only"


def _source(caution: Caution) -> str:
    if caution.code in _SOURCELESS or not caution.source:
        return ""
    return f" ({short_source(caution.source)})"


def _assess(caution: Caution) -> str:
    if caution.severity is not Severity.HIGH:
        return ""
    return f" {ASSESS_IF_RIGHT if caution.if_right else ASSESS}"


def more_text(more: int, beds: Collection[str]) -> str:
    """How many cautions are not spelled out, and what shows them: `4 more: say "handoff 12".`"""
    named = formats.listed(tuple(f'"handoff {bed}"' for bed in sorted(beds))) or '"handoff" with the bed'
    return gsm_only(f"{more} more: say {named}.")
