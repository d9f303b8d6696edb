"""Nouns and little words in all their variants, to be built into phrases."""

from __future__ import annotations

CAN = (
    "(canister|cannister|box|chamber|bottle|system|drain|collector|unit|canisters|cannisters|"
    "collection chamber|drainage system|drainage unit|drainage box|drain box|collection box|collection "
    "unit|collection canister|drain canister|drainage canister|chest drain|pleural drain|can)"
)
TUBE = (
    "(tube|chest tube|ct|drain|chest drain|chesttube|pigtail|catheter|tubes|chest tubes|icd|intercostal "
    "drain)"
)
THE = "(the|her|his|their|this|that|a|my|our|)"
BE = "(is|was|are|has been|been|were|)"
