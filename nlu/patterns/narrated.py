"""Words of events that are told in sentences: what was pulled, who fetches patients, where a tube lay."""

from __future__ import annotations

from .nouns import CAN
from .places import PLACES as NAMES

_WHOSE = "the a an his her their my our this that some"
WHOSE = frozenset(_WHOSE.split())
CANISTERS = frozenset(NAMES["canister"])
THINGS = frozenset(w for phrase in CAN.strip("()").split("|") for w in phrase.split()) | {
    "tube", "tubes", "chest", "ct", "icd", "icc", "catheter", "pigtail", "intercostal", "pleural", "bottle",
    "clamp", "clamps",
}  # fmt: skip
_OF_DRAINS = """
output drainage level line volume amount fluid leak swing bubbling suction seal colour color mark reading rate
flow numbers number total column drains lines levels wall
"""
OF_DRAINS = frozenset(_OF_DRAINS.split())
COUNTING = frozenset({"last", "first", "second", "other", "old", "new", "remaining", "whole", "lot", "one"})
COUNTING |= {"third", "next", "rest"}
FURNITURE = frozenset(
    {"bed", "trolley", "stretcher", "chair", "frame", "wheelchair", "cot", "gurney", "rail"}
)
NEEDING = frozenset({"needs", "need", "needing", "wants", "needed", "requires", "require"})
FASTING = frozenset({"npo", "nbm", "fasting", "fasted", "nil", "starved"})
OUTINGS = frozenset({"walk", "shower", "bathroom", "toilet", "loo", "commode", "washroom", "stroll"})
PLACES = frozenset(
    {"ot", "or", "ct", "theatre", "theater", "mri", "xray", "ir", "dialysis", "surgery", "echo"}
)
PLACES |= {"endo", "endoscopy", "radiology", "angio", "imaging", "scan", "ultrasound", "cathlab", "cath"}
TAKING = frozenset({"taken", "took", "collected", "fetched", "taking"})
PUT_IN = frozenset({"put", "placed", "inserted", "sited", "went", "popped"})
FITTING = frozenset({"hooked", "connected", "attached", "fitted", "applied", "primed", "hung", "put", "set"})
SHOWED = frozenset({"showed", "showing", "shows", "read", "reads", "contained", "held"})
HANDLED = frozenset({"took", "changed", "swapped", "pulled", "removed", "disconnected", "replaced"})
_BODY = """
hip leg arm back shoulder bum bottom thigh knee elbow hand foot body head neck pillow heel calf side blanket
weight
"""
BODY = frozenset(_BODY.split())
BY_CHANCE = frozenset({"accidentally", "accident", "mistake", "himself", "herself", "itself", "own", "oops"})
BY_CHANCE |= {"turning", "rolling", "moving", "pulled", "caught", "snagged", "confused", "help", "stat"}
STOPS = frozenset({"", ",", ";", ".", "!"})
