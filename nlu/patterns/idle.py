"""Words of remarks in which a word of ours asks, answers or puts right nothing."""

from __future__ import annotations

from .asides import THINGS
from .leads import LINES, MANY_LINES

WEAK = frozenset(
    {"change", "correct", "wrong", "actually", "really", "error", "update", "edit", "fix", "amend"}
    | {"make it", "make the", "change the", "fix the", "has to be", "correct the", "is wrong", "was wrong"}
    | {"should be", "corrected", "correcting"}
)
"""What is put right must be said beside these."""
_LITTLE = """
a an the of for on in to at is are was were be it's and or please pls plz sorry ok okay so just um uh er
well oh now then with by from thanks thank you ta cheers hi hey hello right also too one i we my up down
noon midday midnight am pm hours hrs hundred ml mls mils cc ccs milliliters millilitres
"""
LITTLE = frozenset(_LITTLE.split())
"""Words that say nothing of what is told."""
_OBJECTS = """
it that this one ones these those number numbers value figure figures time times bed room side tube entry
entries message msg text something patient pt person drain canister box chamber bottle typo mistake error
earlier last previous before again twice chart charted sent put wrote typed entered should meant not
checked checking log record note enter
"""
OBJECTS = LINES | MANY_LINES | frozenset(_OBJECTS.split())
"""What is put right, or who and how: with one of these a correction may be told."""
_ASKING = """
what what's whats how how's hows which who who's when when's where where's why any anything anyone give
show get send tell read list remind check need want can could please pls would should may repeat see look
pull let's lets
"""
ASKING = frozenset(_ASKING.split())
AUXILIARY = frozenset({"is", "are", "was", "were", "does", "did", "do", "has", "have", "am"})
_SUBJECTS = """
i you he she it we they the his her my our their this that there any anyone anything bed room rm we've
your these those a an anybody everything someone 's s
"""
SUBJECTS = frozenset(_SUBJECTS.split())
"""Behind an auxiliary at the start these make it a question."""
TURNING = frozenset({"into", "of", "round", "around", "places", "shift", "channel", "channels", "clothes"})
"""Behind "change" these are no part of a line."""
LISTS = frozenset(
    {"list", "window", "form", "forms", "papers", "paperwork", "request", "letter", "summary", "documents"}
    | {"checklist", "team", "of", "lounge", "meds", "planning", "board", "belt", "slide", "sheet"}
)
"""Behind the word for a move these make it a thing."""
MINE = frozenset({"my", "our", "your"})
OF_TUBES = THINGS | {
    "side", "sided", "lung", "anterior", "posterior", "lower", "upper", "lateral", "flank", "apical", "basal",
    "mediastinal", "front", "back", "apex", "base", "hemithorax", "that's", "thats", "it's", "its", "patient",
    "pt",
}  # fmt: skip
"""With one of these a side may be that of a tube, and an event that of a drain."""
LISTED = frozenset({"list", "papers", "paperwork", "form", "forms", "letter"})
LEAKING = frozenset(
    {"roof", "ceiling", "staff", "sink", "tap", "kitchen", "bathroom", "toilet", "window", "fridge", "shower"}
    | {"sluice", "radiator", "corridor", "office", "bath", "pipes", "washer", "dishwasher"}
)
"""What leaks and is no drain."""
NEEDING = frozenset({"due", "needs", "need", "needing", "wants", "getting"})
"""Before "a change" these say that a canister is to be changed."""
OF_A_LAST = LINES | MANY_LINES | {"check", "checks", "shift", "night", "handover", "round", "rounds", "count"}
WANTING = frozenset({"it", "know", "asking", "asks", "wondering", "wants", "needs"})
"""With these somebody may ask: "doctor wants to know the rate", "not charting it"."""
OF_TIME = frozenset(
    {"hour", "hours", "hr", "hrs", "half", "few", "couple", "shift", "night", "day", "h", "min", "mins"}
    | {"minutes", "minute", "24h", "12h", "two", "three", "four", "six", "eight", "twelve"}
)
OPENING = frozenset(
    {"hang", "hold", "just", "nice", "nothing", "happy", "there", "there's", "theres", "what"}
)
_IDIOMS = """
out for the count
nil by mouth
for now
well off
knocked for six
fell out with
fell about
fell asleep
in full swing
at any rate
at this rate
first rate
all the same
same old
no change there
out and about
back on board
on the board
across the board
wrong side of bed
wrong side of the bed
go wrong
level best
last straw
milky way
bad blood
straw for
straw poll
swings and roundabouts
bubbling over
split second
time out
gone wrong
correct and proper
politically correct
confirm you
yeah nah
right you are
wrong number rang
"""
_BY_WORDS = [tuple(idiom.split()) for idiom in _IDIOMS.strip().splitlines()]
IDIOMS = {first: [idiom for idiom in _BY_WORDS if idiom[0] == first] for first, *_ in _BY_WORDS}
"""What everybody says and of no drain, by its first word."""
HURTS = frozenset(
    {"hurts", "aches", "ache", "pain", "sore", "hurting", "aching", "killing", "stiff", "itchy", "playing"}
)
SORE = frozenset({"is", "hurts", "aches", "ache", "pain", "killing", "sore", "was", "feels", "rub"})
OF_SOMEBODY = frozenset(
    {"his", "her", "my", "your", "their", "with", "tonight", "today", "here", "preceptor", "this"}
)
_OTHER_THINGS = """
arrest diet diets rehab clinic function functions conditioning con mattress monitor monitors monitoring meds
nurse nurses ward floor exercises exercise step of monitored
"""
OTHER_THINGS = frozenset(_OTHER_THINGS.split())
"""Behind a field of medicine these are what it is of, and no reason for a drain."""
_INTENSIFIED = """
hell freezing awful typical computer computers marvellous marvelous nightmare brilliant busy cold hot
tired starving phone phones parking lovely good great late early long night shift joke mess rain weather
thing
"""
INTENSIFIED = frozenset(_INTENSIFIED.split())
"""Behind "bloody" these make it an oath."""
TAKEN = frozenset({"taken", "sent", "drawn", "results", "test", "tests", "sugar", "sugars", "gas", "gases"})
SPEAKING = frozenset({"that's", "thats", "folks", "guys", "mate", "love", "lads", "ladies", "let's"})
"""Behind "right" these make it a word to speak with, and no side."""
SAME_THINGS = frozenset(
    {
        "story",
        "tube",
        "drain",
        "box",
        "canister",
        "bottle",
        "chamber",
        "side",
        "place",
        "site",
        "patient",
        "bed",
        "spot",
    }
    | {"nurse", "room", "tubing", "chest", "pigtail", "time", "plan", "team"}
)
OTHERS_BEHIND_LEFT = frozenset(
    {"my", "his", "her", "our", "their", "me", "him", "them", "us", "a", "an", "it", "some", "early", "work"}
)
LEFT_OPEN = frozenset(
    {
        "window",
        "door",
        "light",
        "lights",
        "tv",
        "telly",
        "phone",
        "charger",
        "glasses",
        "bag",
        "shoes",
        "note",
    }
    | {
        "keys",
        "curtain",
        "curtains",
        "bell",
        "teeth",
        "dentures",
        "tray",
        "room",
        "ward",
        "building",
        "message",
    }
)
"""What somebody left, and no tube."""
LOOKING = frozenset({"look", "check", "see", "read", "recheck", "confirm", "measure", "mark", "count"})
ON_AGAIN = frozenset({"back on", "put back on", "hooked back on"})
SUCTION = frozenset({"suction", "sxn", "suct", "wall", "lws", "vacuum", "vac", "sx"})
"""With one of these that is what is back on."""
