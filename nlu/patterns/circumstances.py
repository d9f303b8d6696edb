"""Words that open why, what for or amid what something happened, and words that make that doubtful."""

from __future__ import annotations

from .numerals import FRACTIONS, NUMERALS
from .ownclauses import AHEAD as DAYS
from .ownclauses import DENIALS, DRAINS, HAPPENS
from .remarks import DIRE

_BECAUSE = """
because becuase becasue beacuse bc bcos bcoz bcz bcs becoz coz cos cuz cause since as so given owing due
thanks seeing
"""
BECAUSE = frozenset(_BECAUSE.split())
"""What follows says why: a clause or a cause of its own, which may deny or plan something else."""
ONSET = BECAUSE - {"as", "since", "due", "given", "thanks", "seeing", "owing", "cause"}
"""Within another such phrase these begin the next one."""
BY = frozenset({"by", "per", "via"})
FOR = frozenset({"for", "to"})
AHEAD = frozenset({"before", "pre", "prior", "ahead"})
"""Behind these a time may be that of what was still to come."""
BEHIND = frozenset({"after", "post", "following"})
AMID = AHEAD | BEHIND | {"during", "while", "whilst", "when", "once"}
WITH = frozenset({"with", "w", "accompanied", "escorted"})
ON = frozenset({"on", "at", "in", "under", "over", "through"})
"""These open one only where the next words name on whose word it was, or which occasion."""
OPENERS = BECAUSE | BY | FOR | AMID | WITH | ON
OCCASIONS = frozenset(
    {"advice", "request", "requests", "order", "orders", "instruction", "instructions", "recommendation"}
    | {"recommendations", "suggestion", "word", "say", "verbal", "authority", "guidance", "direction"}
    | {"supervision", "care", "admission", "arrival", "round", "rounds", "view", "preparation", "prep"}
    | {"readiness", "anticipation", "phone", "telephone", "behalf", "end", "start"}
)
NO_AS = frozenset(
    {"of", "if", "though", "well", "before", "above", "below", "previously", "follows", "at", "for", "yet"}
    | {"opposed", "usual", "charted", "documented", "written", "follow", "normal", "needed", "required"}
    | {"in", "noted", "reported", "recorded", "said", "seen", "shown", "stated", "marked", "logged", "handed"}
    | {"necessary", "appropriate", "tolerated", "able", "possible", "far", "best", "they", "you"}
)
"""Behind "as" these give no reason."""
NO_PURPOSE = frozenset(
    {
        "be",
        "follow",
        "come",
        "the",
        "a",
        "an",
        "his",
        "her",
        "their",
        "my",
        "this",
        "that",
        "it",
        "him",
        "them",
    }
    | {"which", "no", "all", "each", "both", "for", "to", "at", "in", "on", "by", "with", "from", "of", "and"}
)
"""Behind "to" these say no more that something was done in order to do something else."""
ADVERBS = frozenset({"just", "straight", "early", "only", "mainly", "mostly", "partly", "purely", "simply"})
"""These may stand before what opens one."""
ENDS = frozenset({".", ",", ";", "!", "?", ":", "(", ")"})
CONTRARY = frozenset(
    {"but", "though", "although", "however", "except", "instead", "then", "yet", "until", "till", "til"}
    | {"unless", "or", "nor", "otherwise", "else", "rather", "whether", "if"}
)
"""What goes on so may take the event back, end it or leave it open."""
SEEING = frozenset({"see", "seeing", "check", "know"})
"""Behind these "if" doubts nothing."""
_DOUBTED = """
maybe perhaps probably possibly apparently supposedly supposed allegedly reportedly think thought guess
reckon assume assumed presumably meant planned plan plans planning tomorrow tonight later wrong mistake
mistaken error wait sorry oops actually correction ignore cancel cancelled canceled cancels aborted abandoned
postponed deferred delayed denied decided against hopefully hoping theory principle paper rehearsal drill
practise example joke pending awaiting may might likely unsure sure doubt claims claimed heard
mix mixup misread confuse muddled neighbour neighbours neighbor neighbors roommate opposite
"""
DOUBTED = frozenset(_DOUBTED.split()) | DAYS
RECORDS = frozenset(
    {"chart", "charts", "notes", "note", "record", "records", "log", "board", "sheet", "app", "paper", "look"}
    | {"looks", "sound", "sounds", "account", "accounts", "opinion"}
)
"""By these something is only told or seems so."""
SAYING = frozenset(
    {
        "said",
        "says",
        "say",
        "wrote",
        "written",
        "writes",
        "told",
        "tells",
        "reports",
        "reported",
        "documented",
    }
    | {"charted", "thinks", "thought", "believes", "reckons"}
)
"""At the end of a reason, or before "it" or "so", these make it somebody's word that it happened."""
ONCE = frozenset({"once", "when", "soon"})
"""Behind these something may be still to come, unless it is told as past."""
PAST = frozenset(
    {
        "was",
        "were",
        "had",
        "did",
        "came",
        "went",
        "got",
        "sat",
        "took",
        "left",
        "fell",
        "gave",
        "began",
        "woke",
    }
    | {"stood", "ran", "broke", "rang", "hit", "caught", "felt", "said", "lay", "put", "cut", "shot", "rose"}
)
LEFT_OPEN = frozenset(
    {"was", "is", "were", "are", "reads", "sat", "hit", "to", "for", "a", "the", "and", "with"}
)
"""A phrase that ends with one of these before an "at" goes on behind it: "because the line was at 340"."""
ALARMING = DIRE | frozenset(
    {"pouring", "poured", "gushing", "gushed", "gush", "dumping", "dumped", "bled", "overflowing", "bloody"}
)
"""What is told of the drain or its patient so is for whoever answers."""
MODALS = frozenset(
    {"will", "won't", "wont", "would", "wouldn't", "should", "going", "gonna", "must", "needs", "need", "due"}
    | {"next"}
)
"""With one of these a time behind it may be of what is still to come."""
DENYING = DENIALS | {"weren't", "werent", "aren't", "arent", "nor", "none"}
REFUSING = frozenset({"refused", "refuses", "declined", "declines", "refusing", "declining"})
COUNTING = (NUMERALS | FRACTIONS.keys()) - {"o", "oh", "one"}
OTHER_ONES = frozenset({"other", "another", "second", "both", "neither", "which"})
ASKING = frozenset(
    {
        "why",
        "is",
        "are",
        "was",
        "were",
        "should",
        "shall",
        "do",
        "does",
        "did",
        "what",
        "when",
        "where",
        "how",
    }
    | {"who", "which", "am", "has", "have"}
)
"""Behind "so" these ask."""
PARTS = frozenset(
    {
        "lung",
        "lungs",
        "sats",
        "output",
        "drainage",
        "suture",
        "sutures",
        "stitch",
        "stitches",
        "tape",
        "tapes",
    }
    | {"dressing", "hook", "hooks", "strap", "stand", "hanger", "clip", "bed", "bp"}
)
"""What falls, breaks or comes loose so is no drain."""
TYPES = frozenset(
    {"type", "types", "model", "style", "version", "unit", "system", "control", "chamber", "dial"}
)
ENABLING = frozenset(
    {"can", "can't", "cant", "could", "couldn't", "will", "won't", "wont", "would", "wouldn't", "that", "to"}
    | {"doesn't", "doesnt", "don't", "dont"}
)
"""With one of these "so" says what for; "so the doctor wants it open" says what came of it."""
WHICH = frozenset(
    {
        "larger",
        "large",
        "big",
        "bigger",
        "smaller",
        "full",
        "old",
        "last",
        "previous",
        "current",
        "this",
        "that",
        "no",
    }
)
"""Before "one" these name no other thing."""
DEVICES = OTHER_ONES | frozenset(
    {"feed", "feeds", "feeding", "meds", "med", "medication", "medications", "tablets", "pills", "tablet"}
    | {"nausea", "nauseous", "nauseated", "vomiting", "vomited", "sick", "stomach", "bladder", "void"}
    | {"voided", "voiding", "urine", "urology", "bowel", "bowels", "wee", "pee", "flush", "gi", "gastro"}
    | {"colorectal", "dietitian", "dietician", "dialysis", "cannula", "bag", "balloon", "stoma"}
    | {
        "swallow",
        "eat",
        "eating",
        "eats",
        "diet",
        "mouth",
        "oral",
        "throat",
        "airway",
        "secretions",
        "sputum",
    }
    | {
        "distension",
        "distended",
        "abdomen",
        "abdominal",
        "abdo",
        "belly",
        "ascites",
        "glove",
        "gloves",
        "sharps",
    }
    | {"tissue", "tissues", "water", "humidifier", "juice", "milk", "drink", "soap", "sanitiser", "sanitizer"}
    | {"nose", "nasal", "gastrostomy", "yankauer", "bile", "wound"}
)
"""With one of these a tube or a canister may be another one."""
THINGS = DRAINS | {"tube", "tubes", "drains", "pigtail"}
_BY_CHANCE = """
failed gave caught broke rolled turned slipped accident suture sutures tape stitch confused agitated delirious
"""
_OTHER_TUBES = (
    "breathing breathes breathe tolerating tolerates tolerated fluids drinking drinks awake extubated"
)
_UNMOVED = """
stopped stops changed clear draining increased decreased full empty blocked leak leaks leaking leaked flushed
flush worse worsening inserted placed connected patent flowing purulent milky cloudy red pink oozing
soaked filled
"""
UNMOVED = frozenset(_UNMOVED.split())
BY_CHANCE = (HAPPENS - UNMOVED) | frozenset(_BY_CHANCE.split()) | frozenset(_OTHER_TUBES.split())
"""With one of these a tube that is out was perhaps not taken out, or is another one."""
DESTINATIONS = frozenset(
    {
        "home",
        "rehab",
        "rehabilitation",
        "hospice",
        "hospital",
        "unit",
        "ward",
        "facility",
        "icu",
        "hdu",
        "snf",
    }
    | {
        "nursing",
        "centre",
        "center",
        "community",
        "residential",
        "respite",
        "stepdown",
        "step",
        "care",
        "team",
    }
)
"""Where somebody goes for good."""
OUTINGS = frozenset(
    {
        "smoke",
        "smoking",
        "vape",
        "walk",
        "stroll",
        "coffee",
        "cafe",
        "shop",
        "garden",
        "fresh",
        "gym",
        "chapel",
    }
)
"""Whoever is out for one of these comes back."""
