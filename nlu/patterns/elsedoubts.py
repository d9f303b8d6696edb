"""Words of a doubt, a hope or a question of something of a ward that is no drain and no line.

Never put in `NAMED` what a nurse reads a line on, by or with, what may hide it or what a canister may stand
on; nor in `LIFTED` what a drain or its fluid does.
"""

from __future__ import annotations

from .asides import PATIENTS, RELATIVES, STAFF
from .leads import LINES, MANY_LINES
from .ofreading import LIFE, READ
from .ownclauses import DRAINS

_LIFTED = """
think thinks thought maybe perhaps probably possibly might sure unsure certain doubt doubtful confirm
confirmed verify wrong mistake mistaken error mixed mix question either if whether or nor none another more
less different supposed plan planned reckon believe assume assuming assumed suppose mean means meant wait
actually worried rather unless except instead stopped target trial goal limit last later passed says said
"""
LIFTED = frozenset(_LIFTED.split())
"""Of something else these change nothing of a line."""
_NAMED = """
stethoscope roster rota operation script prescription coffee curry sluice smell dietician letter referral
appointment chaplain interview payslip wages canteen manager parking diabetes asthma glucometer stool
"""
_OF_ALL = """
sleep slept asleep night day shift round rounds rounding home review results result his her him hers he'll
she'll who's wants wanting tomorrow later back hand hands leg legs arm arms hip foot feet scan busy cold hot
warm noise chair toilet rails bell bag bags weather lab labs bloods updated bed up language english blanket
pillow mattress vision hearing sats obs vitals temp theatre transport ambulance clinic upstairs downstairs
surgery op procedure ipad tv charger mask masks isolation urine catheter stool language
"""
NAMED = (LIFE | frozenset(_NAMED.split())) - frozenset(_OF_ALL.split())
"""With one of these a clause is of that, where nothing of a line is named."""
_OURS = """
tube tubes side sides left right time times clock watch one ones other bed beds bay amount amounts volume
total totals output outputs eyes eye eyesight vision torch light lights lighting lamp dark mirror doorway
distance angle glare memory head brain copied copy wrote written typed charted documented documentation
board whiteboard sheet sheets page paper notes handover report shift nights days glasses specs lenses squint
squinted door curtain curtains window lap floor lifted label labels band bands wristband sticker name names
tape taped blanket pillow gown towel stand by from per via pole hook holder tubing connector clamp valve
suction seal leak air fluid blood drained draining level levels number numbers figure figures digit digits
value values count counted mine yours theirs rounded roughly include includes included including mostly
contains ish approx exactly exact off photo photos pic pics picture screenshot phone phoned called rang
heard told tell hearsay word verbal verbally recheck rechecked recheckd check checked trust bet quote swear
promise promises hold record chart log enter save pencil provisional draft before after earlier yesterday
yesterday's previous remember recall forgot forgotten forget missed late
"""
OURS = READ | LINES | MANY_LINES | DRAINS | frozenset(_OURS.split())
"""With one of these it may be of the line after all, or of how, when and by whom it was read."""
_HEDGED = """
not no know idk dunno idea wondering wonder unsure sure clue knows unclear asking hope hoping guess
"""
HEDGED = frozenset(_HEDGED.split())
ASKING = frozenset({"if", "when", "whether", "who", "why", "where", "how"})
_SOMEBODY = """
doctors doctor team consultant surgeon physio pharmacy porter porters transport family wife husband daughter
son mum dad dietician chaplain interpreter he she they we we'll i'm who is
"""
SOMEBODY = frozenset(_SOMEBODY.split())
WHO_COMES = (RELATIVES | STAFF | frozenset(_SOMEBODY.split())) - frozenset(
    {"ct", "rt", "ed", "er", "we", "i'm", "who", "is", "someone", "somebody", "present", "they", "he", "she"}
)
"""Who may come to a ward, or not."""
CHECKING = frozenset({"check", "checked", "recheck", "verify", "confirm", "double", "second"})
"""Before another thing these are of that: "double check his insulin"."""
MAY = frozenset({"might", "may", "probably", "possibly", "allegedly", "hopefully", "apparently", "maybe"})
MAY |= {"supposedly", "should", "could", "prob", "perhaps", "presumably"}
_AHEAD = """
rounding coming visiting tomorrow on we'll they'll booked visit come arriving arrives call way
"""
AHEAD = frozenset(_AHEAD.split())
PARTS = frozenset({"morning", "afternoon", "evening", "arvo", "week", "weekend", "am", "pm"})
UNSURE = frozenset({"unsure", "sure", "certain", "doubtful", "worried", "idea", "clue", "upset", "confused"})
"""With "of" or "about" behind them these say of what somebody is unsure."""
_LITTLE = """
a an the his her their my our or and not no i we to of in at on for from with during pre post before after
be been is was were are have has had it's that's that just only about re or but so he she him was
"""
LITTLE = frozenset(_LITTLE.split())
"""Words that tell nothing of a thing."""
_TAKEN_FOR = """
urine catheter sputum stoma vomit bag bags feed feeds cup jug basin urinal bedpan commode wound transfusion
lunch tea breakfast dinner supper theatre recovery rehab transport pharmacy ambulance roommate
"""
TAKEN_FOR = STAFF | PATIENTS | frozenset(_TAKEN_FOR.split())
"""What a number may be of, when it may have been read, and by whom: "maybe his stoma", "i think pharmacy"."""
