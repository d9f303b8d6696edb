"""The short list of trade practice that goes with a new canister. Equipment only, never the patient.

Common practice, no source, but for the suction setting (as ordered: Open RN, Nursing Advanced Skills
6.6). A unit can turn it off.
"""

from __future__ import annotations

EXCHANGE_STEPS = (
    "final level read before disposal",
    "patient tubing and its taped connection kept, parted at the in-line connector",
    "small-bore adapter moved to the new unit",
    "suction set as before",
    "clamp open",
    "suction back on",
)


def exchange_checklist() -> str:
    """The checklist of an exchange, as one line to look over."""
    return f"Exchange checklist: {'; '.join(EXCHANGE_STEPS)}."
