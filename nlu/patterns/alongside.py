"""Closed words of clauses that have a subject of their own beside a whole line: "he's not keen on lunch".

What such a clause denies, rates or points at is its own. Never put here: what a drain is, holds, shows or
does, and in no list what may be said of a reading.
"""

from __future__ import annotations

from .asides import PATIENTS, RELATIVES
from .ownclauses import BROKEN, HIMSELF, PATIENT, ROOM, THINGS

CUTS = frozenset(
    {"but", "because", "cos", "coz", "cuz", "so", "though", "although", "while", "whilst", "who"}
)
"""Between these a clause begins with a subject of its own, beside the joints of a list."""
HOMELY = (
    HIMSELF | PATIENT | PATIENTS | RELATIVES | frozenset({"grandson", "uncle", "aunt", "aunts", "cousin"})
)
"""Whoever reads no line."""
HOMELY -= {"present", "someone", "somebody", "carer"}
HOUSE = (ROOM | BROKEN | THINGS | frozenset({"alarm", "lifts", "bells", "wheel"})) - {
    "bulb",
    "lock",
    "jug",
    "tray",
    "urine",
    "sputum",
    "battery",
    "batteries",
    "dressing",
    "dressings",
    "pad",
    "pads",
}
"""What breaks, falls or is stuck in a house and is no drain."""
_SEEN = """
see saw sees look looked looking read reads check checked count counted show shows notice noticed trust
believe agree agrees one ones mine his hers ours theirs yours him her us here there in person patient pt
same that this it matter mind bother true so yet working done finished know knows tell remember recall sure
think certain idea clue swear promise say guarantee time write note record measure get do did look happen
"""
SEEN = frozenset(_SEEN.split())
"""With one of these a denial may be of the reading, or of whose it is."""
_RATING = """
call calls called calling rate rates rated rating score scores scored like likes liked love loves loved hate
hates hated enjoy enjoys enjoyed gave gives
"""
RATING = frozenset(_RATING.split())
"""What somebody thinks of "it" is no number of it."""
_SOFT = """
ago another different earlier hear heard midday midnight noon more others previous previously prior
question report reported reports said saw shift template training testing trial similar worried died dead
passed arrest turn twisted hold fix example would should would've let's stopped stops stop dropped drop
drops stuck loose change test falls fall increased decreased higher goal limit target discharge plan planned
weighed practice hr second last per crash
"""
SOFT = frozenset(_SOFT.split())
"""Beside a subject that is no drain these doubt nothing: "reg said he can eat", "2 more sleeps"."""
_MINDED = """
think thinks thought reckon reckons believe believes sure guess guesses suppose certain confused worried says
"""
MINDED = frozenset(_MINDED.split())
"""What a patient or a visitor thinks is of no line."""
_DOES = """
put make made turn turned changed dropped emptied removed lifted raised pulled knocked read moved stopped
replaced poured filled spilled spilt wrote fixed held tipped flushed checked swapped lost switched twisted
measured weighed opened closed
"""
DOES = frozenset(_DOES.split())
"""What is done to somebody, or to what is "his" or "her" and has a name of its own."""
OWNING = frozenset({"his", "her", "their", "my", "our", "your"})
_NO_NOUN = """
wants want wanted says say said reads shows has had have got gave gives made makes needs need needed set sets
put asked asks ordered orders told tells thinks feels seems looks goes still yesterday today tonight tomorrow
morning evening afternoon night overnight currently fine good ok nice nicely stable better happy please thanks
"""
NO_NOUN = frozenset(_NO_NOUN.split())
"""None of these says of what a number is."""
WHOM_IF = frozenset({"you", "u", "anyone", "anybody", "needed", "possible", "he", "she", "they", "i", "we"})
"""Behind "if" these make no condition of a line."""
LITTLE_MORE = frozenset(
    {"bit", "little", "few", "something", "some", "odd", "lot", "tad", "touch", "hair", "change"}
)
"""Behind "and" these are of the number before."""
POINTING = frozenset({"that", "this", "these", "those", "the"})
_NOT_OURS = """
time times place person room side column sheet page shift day patient pt pts way end unit chart record order
hour date name names label spot size side sides drain number
"""
NOT_OF_OURS = frozenset(_NOT_OURS.split())
"""What may be wrong about a line."""
_NO_ADJECTIVE = """
at on in of to by for from with per and or is was are were has had have up down out off over now then today
tonight since until till before after again left right total so came come went goes
"""
NO_ADJECTIVE = frozenset(_NO_ADJECTIVE.split())
"""None of these stands between a number and what it counts."""
AMONG = frozenset({"us", "them", "you", "the", "his", "her", "our", "my", "your", "their", "these", "those"})
"""Behind "1 of"."""
FEET = frozenset({"ft", "foot", "feet", "'", "st", "stone"})
LAB_BLOOD = frozenset(
    {"bank", "bags", "bag", "test", "tests", "sugar", "sugars", "pressure", "cultures", "culture", "gas"}
    | {"count", "results", "work", "transfusion", "form", "forms", "fridge"}
)
"""Behind "blood": none of these is of the fluid."""
IMAGED = frozenset(
    {
        "scan",
        "head",
        "booked",
        "done",
        "report",
        "reported",
        "showed",
        "shows",
        "abdo",
        "brain",
        "angio",
        "list",
    }
)
"""Behind "CT" these are of a film."""
SENT = frozenset({"sent", "given", "taken", "gone", "done", "ordered"})
