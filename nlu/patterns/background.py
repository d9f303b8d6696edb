"""Words of a clause that somebody else is the subject of: who they are, and what makes it doubtful after all.

"he's been sitting up for breakfast", "her husband has gone home", "day nurse is on her way in". Whatever
such people eat, feel or do is left out beside a whole line, unless a word here says that it may be of the
drain, of its line, or of what was told. Never take away from `DOUBTFUL` what a drain is, shows or does.
"""

from __future__ import annotations

from .asides import PATIENTS, RELATIVES, STAFF, THINGS
from .smalltalk import NAMES

HIMSELF = frozenset({"he", "he's", "hes", "he'd", "he'll", "she", "she's", "shes", "she'd", "she'll"})
PATIENT = HIMSELF | PATIENTS | frozenset({"pt", "pts", "patient", "pt's", "patient's"})
"""Whoever has the drain."""
_SPEAKER = """
i i'm im i've ive i'd i'll we we're we've we'd we'll they they're they've they'd they'll nobody everyone
everybody
"""
SPEAKER = frozenset(_SPEAKER.split())
OTHERS = (
    SPEAKER
    | (STAFF - {"ct", "thoracic", "thora", "respiratory", "ed", "er", "surg", "surgery"})
    | (RELATIVES - {"present", "someone", "somebody"})
    | NAMES
    | frozenset({"parents", "grandchildren", "dietitian", "dietician", "chaplain", "priest", "pharmacist"})
    | frozenset(
        {"phlebotomist", "phlebotomy", "interpreter", "anaesthetics", "volunteer", "midwife", "fiance"}
    )
    | frozenset({"girlfriend", "boyfriend", "cousin", "aunt", "uncle", "niece", "nephew", "neighbour"})
) - HIMSELF
"""Whoever may come, go or move without any drain."""
ARTICLES = frozenset({"the", "his", "her", "their", "my", "our", "a", "an", "this", "pt's", "patient's"})
_JOINTS = """
and & but so then because bc cos cuz coz as while whilst when before after once since though although
where who until till
"""
JOINTS = frozenset(_JOINTS.split())
"""What a clause of its own begins with, beside a comma or a stop."""
WHEN = frozenset(
    {"as", "while", "whilst", "when", "before", "after", "once", "since", "until", "till", "then"}
)
"""Behind these a clause says when it was: the line beside it must have a time of its own."""
HEDGES = frozenset({"just", "also", "now", "apparently", "meanwhile", "currently"})
_VERBS = """
is are was were isn't wasn't has have had hasn't will went came goes comes gets got looks looked feels felt
seems wants wanted needs needed says said did does likes loves keeps slept ate walked sat stood asked
given sent taken done running booked held resited arrived arrives pending coming finished started
"""
VERBS = frozenset(_VERBS.split())
"""With one of these behind a thing, it is told of the thing: "the dressing is dry"."""
_OF_THE_LINE = """
line lines level levels mark marks marked marking reading readings read number numbers figure figures value
chart charted recorded recording noted logged wrote written write entered enter measured measure measuring
estimate estimated roughly approx approximately guess guessing guessed guesses reckon believe assume assuming
assumed suppose total totals output outputs amount volume
ml mls cc ccs millilitre millilitres hourly per
"""
_OF_THE_DRAIN = """
fluid fluids drainage draining drained drains effluent blood bloody bleed bleeding bled clot clots clotted
pus red pink serous serosanguineous haemoserous sanguineous purulent chylous milky straw cloudy clear gush
gushed gushing pouring poured dump dumped dumps leak leaks leaking leaked air bubble bubbles bubbling
bubbled swing swings swinging swung tidal tidals tidaling tidalling oscillating oscillation fluctuating seal
suction wall gauge gravity regulator valve kink kinks kinked clamp clamps clamped clamping unclamped
bag pump wet soaked empty emptied full overflowing filling filled fills stuck blocked blockage patent
milked stripped flushed flush connect connected connection disconnect disconnected reconnected
plug plugged unplugged loose hole crack cracked broke broken damaged snapped tipped tip tipping toppled
knocked knock kicked kick upside spilled spilt spill dropped drop drops fell fall falls falling fallen floor
upright tangled twisted pulled pull pulling pulls tugged tug tugging yanked yank ripped rip removed remove
removing removal dislodged displaced changed change changing swapped swap swapping replaced replace
exchanged exchange insert inserted placed stitch stitches suture sutured sutures raised lifted higher above
hiss hissing whistling gurgling noise alarm alarming crepitus emphysema sob collapsed collapse worried
coughs breathes breathing worse worsening crash crashing arrest died dead death passed stopped stop stops
"""
_OF_WHAT_WAS_TOLD = """
it it's its itself that that's this these those them which wrong incorrect correct correction corrected
mistake mistaken error misread mixed mix confused sorry oops actually wait meant mean means maybe perhaps
probably possibly might think thinks thought sure unsure certain doubt doubtful confirm confirmed verify
ignore disregard scratch delete undo cancel instead rather except unless if whether or nor neither either
question same unchanged similar nothing none nil zero more less increase increased decrease decreased double
half other another others both each previous prior earlier old second yours mine theirs ours different
would've could've supposed plan planned told according copied copying
example test testing practice training format template pretend heard hear report reports reported said saw see
notice noticed
"""
DOUBTFUL = frozenset(" ".join((_OF_THE_LINE, _OF_THE_DRAIN, _OF_WHAT_WAS_TOLD)).split()) | (
    THINGS - {"unit", "ct"}
)
"""With one of these a clause may be of the drain, of its line, or of what was told."""
DID = frozenset(
    {
        "went",
        "gave",
        "had",
        "got",
        "waited",
        "came",
        "helped",
        "turned",
        "washed",
        "fed",
        "did",
        "popped",
        "walked",
        "sat",
        "repositioned",
    }
    | {"given", "medicated", "encouraged", "reassured", "assisted", "ambulated", "mobilised", "mobilized"}
)
"""A clause that begins so is of the nurse or the patient: "went in to give him his meds"."""
AMID = frozenset({"with", "during", "despite", "following", "having", "between", "amid"})
"""A message that begins so says first beside what the line was read."""
RUNNING = frozenset(
    {"slowed", "slowing", "slower", "easing", "eased", "settling", "tapering", "tailing", "quicker", "faster"}
)
_RUNNING_ON = """
so and it it's its has have is are looks like seems to be been a bit lot little down off up now nicely well
overnight this morning afternoon really quite much today drain drainage output finally
"""
RUNNING_ON = RUNNING | frozenset(_RUNNING_ON.split())
"""How it runs, in a clause of nothing but these."""
