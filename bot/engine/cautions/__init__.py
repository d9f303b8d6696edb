"""Cautions: what the numbers of a bed say, by the rows of the unit's policy.

`cautions` gives those that stand, `entry_cautions` what an entry changes, `cautions_if` what a reading would
raise if it were right. Pure functions; the moment and the policy are arguments.
"""

from bot.engine.cautions.checks import CHECKS, all_cautions, cautions
from bot.engine.cautions.news import CautionNews, cautions_if, entry_cautions
from bot.engine.patient import Patient

__all__ = [
    "CHECKS",
    "CautionNews",
    "Patient",
    "all_cautions",
    "cautions",
    "cautions_if",
    "entry_cautions",
]
