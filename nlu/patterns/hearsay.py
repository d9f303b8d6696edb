"""Words by which somebody else vouches for a number, and who or what the subject of such a word can be."""

from __future__ import annotations

from .asides import PATIENTS, RELATIVES, STAFF
from .asides import THINGS as DRAINS
from .smalltalk import NAMES

SHOWING = frozenset({"says", "said", "say"})
"""A bed that "says" is its canister; one that "reckons" is whoever lies in it."""
_SAYING = """
says said say saying tells told tell thinks think thought reckons reckon reckoned believe claims
claimed claiming states stated stating mentions mentioned believes believed swears swore insists insisted
estimates guesses
guessed assumes assumed suspects reports reported texted phoned rang
"""
HEARING = frozenset({"heard", "overheard", "hearing", "hear"})
GIVEN = frozenset({"informed", "handed", "given", "shown"})
PASSIVE = GIVEN | {"told"}
BEEN = frozenset({"was", "were", "been", "being", "got", "is", "are", "am", "i'm", "im"})
WITNESSING = frozenset({"report", "reporting", "noticed", "notices", "saw", "sees", "spotted"})
"""Of whoever is at the bed these say that the nurse has not read it herself."""
WRITTEN = frozenset({"shows", "showed", "has", "had", "reads", "gives", "is", "was"})
"""Of a paper or of what is rumoured these do."""
PAPERS = frozenset(
    {"chart", "board", "whiteboard", "sheet", "flowsheet", "computer", "records", "notes", "handover"}
    | {"report", "word", "rumour", "rumor", "note", "letter", "summary", "printout", "form", "system", "log"}
)
COPIED = frozenset({"off", "from"})
SHEETS = frozenset({"sheet", "chart", "board", "whiteboard", "flowsheet", "computer", "records", "notes"})
RELAYED = frozenset({"relayed", "secondhand", "hearsay"})
TURNED = frozenset({"says", "said", "say", "reckons", "thinks", "claims", "swears"})
"""Before whoever it is, behind what was said: "310 says the wife"."""
NAMING = frozenset({"according", "per"}) | COPIED | RELAYED
"""Whoever is named behind these vouches for it."""
SOURCES = frozenset(_SAYING.split()) | HEARING | PASSIVE | NAMING | WITNESSING
_WHO = """
he he's she she's they they're pt pt's pts patient patient's patients nights days handover report rumour rumor
word everyone everybody people parents visitor nobody whoever girlfriend boyfriend fiance neighbour neighbor
roommate chart board whiteboard sheet flowsheet computer records notes
"""
AT_THE_BED = (
    (RELATIVES - {"someone", "somebody"}) | PATIENTS | {"he", "she", "pt", "patient", "family", "parents"}
)
SOMEBODY = (
    frozenset(_WHO.split()) | RELATIVES | PATIENTS | NAMES | (STAFF - {"ct", "ed", "er", "thoracic", "or"})
)
MYSELF = frozenset({"i", "i've", "ive", "we", "we've", "weve", "i'd", "we'd", "i'll", "we'll", "me", "us"})
_OURS = """
scale meniscus gauge dial label marking markings level mark reading number figure display screen readout
monitor tape marker pen ruler left right apical basal mediastinal anterior posterior side one this that which
these those there here now window column fluid new old next bed room drain's box's
"""
OURS = DRAINS | frozenset(_OURS.split())
"""What a nurse reads: when one of these "says 310", she has read it."""
_RULES = """
plan plans protocol policy order orders schedule guideline guidelines scale line lines marking markings
meniscus box canister bottle chamber drain weight procedure me myself instructions care clock watch
"""
RULES = frozenset(_RULES.split())
"""According to these nothing is second-hand."""
READING = frozenset(
    {"marked", "mark", "drew", "draw", "checked", "confirmed", "confirm", "agree", "agreed", "looked", "see"}
    | {"saw", "read", "measured", "verified", "concur", "charted", "recorded", "initialled"}
)
"""Of the nurse these say that she has seen it herself."""
NOT_YET = frozenset({"before", "until", "till", "once", "if", "unless", "when", "whether", "so"})
ADVERBS = frozenset(
    {"just", "also", "have", "then", "both", "all", "did", "now", "only", "had", "has", "so", "or", "and"}
    | {"actually", "really", "still", "always", "apparently", "the", "a", "an", "can", "do", "hi", "hey"}
)
ARTICLES = frozenset({"the", "a", "an", "his", "her", "our", "my", "their"})
AS_TOLD = frozenset({"that's", "thats", "that", "this", "it's", "its", "it", "is", "was", "as", "all", "one"})
AS_TOLD |= {"copied", "taken", "read", "lifted", "straight", "number", "reading", "level", "line", "figure"}
LEADING = frozenset({"that", "me", "us", "it", "it's", "its", "to", "you"})
"""Words of saying may stand before these, and what is said behind a stop."""
TRAILING = LEADING | {"so", "anyway", "though", "tho", "lol", "today", "earlier", "just", "now", "this", "at"}
TRAILING |= {"less", "lower", "higher", "otherwise", "different", "differently", "wrong"}
JOINTS = frozenset({"but", "and", "&", "because", "cos", "cuz", "coz", "since", "while", "although"})
JOINTS |= {"as", "when", "after", "before", "until", "till", "then"}
"""With these a clause begins."""
