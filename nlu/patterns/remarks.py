"""Words of remarks that never say what a number beside them is."""

from __future__ import annotations

_WORDS = """
today tonight ok okay fine well good nice great thanks thank you busy quiet comfy comfortable resting
sleeping asleep awake stable family visiting wife husband daughter son mom dad hi hey hello evening
morning afternoon night again finally late slow slowly steady steadily yet ago only exactly total sharp
when came fresh these those forgot forgotten missed catching catchup catch up behind charting round
rounds my me us our they them team nurse charge shift report
"""
REMARKS = frozenset(_WORDS.split())
