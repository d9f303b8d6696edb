"""Words of `ofwhat`: what says of what a number is, and what does not."""

from __future__ import annotations

from .ownclauses import ROOM

NAMING = frozenset({"level", "levelat", "amount", "output", "out", "canister", "tubeword"})
"""Cues that say what a number is, behind a word that may say of what."""
ENDING = frozenset({"old", "new", "opens"})
FINALS = frozenset({"final", "last", "closing"})
DONE = ("ed", "ing", "ly", "est")
"""So a word ends that says what was done, or how: "rechecked level 340", "actually level 340"."""
_HOW = """
saw took got had gave drew drawn read reread wrote put made did do see seen take get give write chart post
record log enter add note mark send sent texted next current actual true real right correct proper final
official usual present same evening midnight noon shift hour hours hourly daily nightly early late old
second third fourth catheter drain former prior initial baseline starting end ending start todays
today's tonights tonight's yesterdays yesterday's mornings morning's nights night's days day's overnight fresh
"""
HOW = frozenset(_HOW.split())
"""Words before "level" and "line" that say which, when or by whom it was told, and not of what."""
OF_BLOOD = frozenset({"k", "na", "ca", "cl", "mg", "mag", "phos", "gent", "feed", "be", "hb", "lithium"})
HEADS = frozenset({"level", "levels", "reading", "readings", "output"})
THEM = frozenset({"them", "those", "these", "which", "whom", "em"})
HAVING = frozenset({"has", "have", "had", "got", "wants", "likes", "needs", "takes", "hes", "he's", "she's"})
BESIDE = frozenset(
    ["by", "beside", "near", "to", "under", "behind", "at", "on", "below", "from", "for", "in", "with"]
)
"""Before a thing these say where or what for something is."""
THINGS = (ROOM - {"theatre", "pharmacy", "kitchen", "switchboard", "laundry"}) | frozenset(
    {"blanket", "blankets", "pillow", "pillows", "sheet", "sheets", "gown", "towel", "floor", "bedrail"}
    | {"siderail", "couch", "sofa", "recliner", "gurney", "stretcher", "crutches", "cart", "desk", "frame"}
)
"""What stands or lies there and is no drain."""
IS = frozenset({"is", "was", "are", "got", "has", "been", "just", "a", "the", "his", "her", "my", "looks"})
HIT = frozenset({"canister", "tubeword"})
JOINING = frozenset({"on", "till", "but", "the", "found", "finds", "of", "for", "in", "so", "then", "re"})
"""Right before a bed these are no thing that has a number."""
LEADING = frozenset({"on", "in", "for", "at", "of", "the", "my", "mark", "line", "level"})
ZONES = frozenset({"utc", "gmt", "zulu"})
OTHER = {"left": "right", "right": "left"}
RIGHT = frozenset({"right", "r", "rt"})
NIL = frozenset({"nothing", "none", "nil", "dry", "zero", "zilch"})
ENDS = frozenset({"", ",", ".", ";", "!", "yet", "still", "today", "tonight", "so"})
PATIENT = frozenset({"pt", "patient", "pts"})
_GAINED = "by gain gained loss lost positive negative off up down plus minus over"
GAINED = frozenset(_GAINED.split())
"""Before kilograms these say how much more or less somebody weighs."""
GAIN_REACH = 3
HOLDERS = frozenset({"canister", "canisters", "box", "boxes", "bottle", "bottles", "unit", "chamber"})
SIZES = frozenset({"size", "sized", "capacity", "model", "type"})
SEEN = frozenset({"bubbles", "clots", "leaks", "kinks", "loops", "connections", "swings"})
FEW = 30
"""Of these more are not counted."""
SHORT = 2
"""Digits of the number of a theatre or a floor."""
PLACED = frozenset({"away", "back", "left", "moved"})
