"""Where: beds, tubes by side and place, canisters; phrases as in `cues`."""

from __future__ import annotations

# fmt: off

PLACES: dict[str, tuple[str, ...]] = {
    "bed": (
        "bed", "beds", "bed number", "bed no", "room", "rm", "bay", "room number", "rooms", "pt in bed",
        "bed #", "bd",
    ),
    "tubeword": (
        "(drain|tube) in (the|his|her) bed (with|beside|next)",
        "tube", "chest tube", "ct", "drain", "chest drain", "tube number", "drain number", "tubes",
        "pigtail", "chest tubes", "icd", "intercostal drain", "drains", "tube #", "drain #",
        "chest drains", "pigtails", "intercostal drains",
    ),
    "side:left": ("left", "lt", "left side", "left sided", "left-sided", "left hand", "l sided"),
    "side:right": ("right", "rt", "right side", "right sided", "right-sided", "right hand", "wright", "rite"),
    "place:mediastinal": ("mediastinal", "mediastinum", "medi", "mediastinals"),
    "place:apical": ("apical", "apex"),
    "place:basal": ("basal", "basilar"),
    "place:pleural": ("pleural",),
    "place:anterior": ("anterior",),
    "place:posterior": ("posterior",),
    "place:pericardial": ("pericardial",),
    "place:upper": ("upper",),
    "place:lower": ("lower",),
    "place:lateral": ("lateral",),
    "join": (
        "joined", "y connected", "y-connected", "yed together", "y'd together", "connected together", "y'd",
        "yed", "to one canister", "into one canister", "to the same canister", "into the same canister",
        "to one box", "into one box", "to the same box", "sharing a canister", "sharing one canister",
        "joined together", "joined to one canister", "joined into one canister", "y'd into one", "y site",
        "y (tube|tubing|connector|piece)",
        "both to one canister", "on one canister", "in one canister", "share a canister",
        "share one canister", "on one box", "to one drain", "to one system", "into one system",
        "joined to one box", "joined in one canister", "one canister", "same canister", "the same canister",
    ),
    "canister": (
        "canister", "cannister", "box", "chamber", "bottle", "system", "collector", "canisters",
        "collection chamber", "collection box", "collection unit",
        "drainage system", "collection canister", "reservoir", "drainage unit",
        "drainage box", "drain box", "drain canister", "drainage canister",
    ),
}
# fmt: on
