"""Words of what is said aloud beside a line: who it is of, and what makes it doubtful.

DOUBTFUL is what counts: a clause with one of these may be of the line beside it, and is never left out.
"""

from __future__ import annotations

from .asides import RELATIVES, STAFF

_SUBJECTS = """
he she they i we you his her their my our the patient pt mr mrs ms dr everyone everybody everything someone
somebody nobody im ive ill hes shes theyre were theres its it dressing dressings gown gowns sheet sheets
linen vitals obs lungs skin bandage pads pad meds breakfast lunch dinner physio will gonna coughing
breathing resting sleeping asleep sitting lying waiting comfortable eating walking talking snoring gave give
giving tell hope hoping need needs wants looks feeling feels seems all nothing there's
"""
OPENING = frozenset(_SUBJECTS.split()) | RELATIVES | (STAFF - {"ct", "er", "ed", "rt", "present"})
"""What a clause of its own begins with."""
JOINTS = frozenset(
    {"and", "but", "so", "because", "cause", "while", "as", "though", "plus", "well", "anyway"}
)
_DOUBTFUL = """
mark marks marked marking line lines level levels reading readings read reads misread number numbers figure
figures total output amount volume drain drains drained draining drainage tube tubes tubing chest canister
canisters box boxes chamber bottle unit suction seal wall leak leaks leaking bubbling bubbles swinging
tidaling clamp clamped unclamped clot clots blood bloody bleed bleeding fluid ooze oozing oozed soaked
gravity connector connection dislodged site pulled tugged kinked fell full left right apical basal
mediastinal pleural anterior posterior both think thinks thought guess guessing guessed maybe perhaps
possibly probably might may could should would estimate estimated eyeballed unsure sure certain approx
approximately roughly ish wrong mistake correct correction corrected scratch delete undo ignore disregard
actually instead rather wait oops whoops meant mean says said say heard report reported than more less same
double verify confirm earlier yesterday previous previously last half mixed confused swapped switched if
unless goal limit until under above below call page notify drank drunk drink drinks drinking voided voids
void peed pee urine urinal foley catheter bag bags vomit vomited vomiting emesis stool transfused bolus
infused infusing iv drip lost put dumped gushed water valve suture sutures stitch stitches hole crack
cracked yanked minutes mins minute ago hour shift pm am o'clock noon hours hourly
"""
DOUBTFUL = frozenset(_DOUBTFUL.split())
MYSELF = frozenset(
    {
        "i",
        "i'll",
        "i'm",
        "i've",
        "im",
        "ive",
        "ill",
        "we",
        "we'll",
        "we're",
        "we've",
        "me",
        "it",
        "it's",
        "its",
    }
)
"""Of whoever speaks, or of what was read: a no of these may be of the line."""
OTHERS = (
    frozenset({"he", "she", "him", "her", "they", "them", "patient", "pt", "he's", "she's", "his"})
    | RELATIVES
)
AHEAD = frozenset(
    {"tomorrow", "monday", "tuesday", "wednesday", "thursday", "friday", "saturday", "sunday", "someday"}
)
"""With one of these nothing has happened yet."""
PLANS = frozenset({"i'll", "ill", "we'll", "will", "gonna", "going"})
THINGS = frozenset(
    {"dressing", "dressings", "gown", "gowns", "sheet", "sheets", "linen", "linens", "bandage", "bandages"}
    | {"pad", "pads", "pillow", "pillowcase", "pillows", "blanket", "socks", "pyjamas", "pajamas", "diaper"}
    | {"nappy", "clothes", "shirt", "channel", "bulb", "battery", "batteries", "gloves"}
)
"""What is changed and is no canister."""
BROKEN = frozenset(
    {
        "hoist",
        "lift",
        "computer",
        "light",
        "lamp",
        "printer",
        "phone",
        "tablet",
        "tv",
        "telly",
        "heating",
        "bell",
    }
    | {"radio", "monitor", "thermometer", "scanner", "wifi", "lock", "door", "blind", "curtain", "ac", "fan"}
)
"""What else is broken."""
COUNTED = frozenset(
    {
        "years",
        "year",
        "yrs",
        "days",
        "weeks",
        "months",
        "kids",
        "children",
        "grandkids",
        "grandchildren",
        "of",
    }
    | {"visitors", "pillows", "blankets", "times", "sons", "daughters", "sisters", "brothers", "cats", "dogs"}
    | {"people", "nurses", "doctors", "steps", "laps", "tablets", "puffs"}
)
"""Behind a number these say that it is none of ours: "he's ninety three years old"."""
CANISTERS = frozenset({"it", "one", "that", "them"})
QUIET = frozenset(
    {
        "filler",
        "word",
        "other",
        "okay",
        "claimed",
        "plan",
        "join",
        "ask",
        "question",
        "window",
        "span",
        "bed",
        "about",
    }
)
"""Labels of cues that say nothing of a drain."""
_BEFORE_LINE = """
put log record enter note mark line level reading reads canister box chamber fluid drain this is so okay ok
now right then and but could can you please pop down i i'm i've get got drew read just come out having look
add my next patient hourly update in on of for to from at the his her a by with have here one
"""
BEFORE_LINE = frozenset(_BEFORE_LINE.split())
"""What a line begins with before its bed."""
