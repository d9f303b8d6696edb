"""Words of clauses beside what is told: whom or what they are of, and what makes them doubtful after all.

"he's been sitting up for breakfast", "her husband has gone home", "the wifi keeps dropping". Whatever such
people and things eat, feel or do is left out beside what is whole, unless a word here says that it may be of
the drain, of its line, or of what was told. Never take away from `DOUBTFUL` what a drain is, shows or does.
"""

from __future__ import annotations

from .asides import PATIENTS, RELATIVES, STAFF
from .asides import THINGS as OF_DRAINS
from .smalltalk import NAMES

HIMSELF = frozenset({"he", "he's", "hes", "he'd", "he'll", "she", "she's", "shes", "she'd", "she'll"})
PATIENT = HIMSELF | PATIENTS | frozenset({"pt", "pts", "patient", "pt's", "patient's"})
"""Whoever has the drain."""
_SPEAKER = """
i i'm im i've ive i'd i'll we we're we've we'd we'll they they're they've they'd they'll nobody everyone
everybody
"""
SPEAKER = frozenset(_SPEAKER.split())
_VISITING = """
parents grandchildren dietitian dietician chaplain priest pharmacist phlebotomist phlebotomy interpreter
anaesthetics volunteer midwife fiance you you're girlfriend boyfriend cousin aunt uncle niece nephew neighbour
"""
OTHERS = (
    SPEAKER
    | (STAFF - {"ct", "thoracic", "thora", "respiratory", "ed", "er", "surg", "surgery"})
    | (RELATIVES - {"present"})
    | NAMES
    | frozenset(_VISITING.split())
) - HIMSELF
"""Whoever may come, go or move without any drain."""
ARTICLES = frozenset({"the", "his", "her", "their", "my", "our", "a", "an", "this", "pt's", "patient's"})
PLANS = frozenset({"i'll", "ill", "we'll", "will", "gonna", "going"})
_OPENING = """
all asleep bandage breakfast breathing comfortable coughing dinner dressing dressings eating everything
feeling gave give giving gonna gown gowns hope hoping ill it its linen lunch lungs lying meds mr mrs ms need
nothing obs pad pads present respiratory resting sheet sheets sitting skin sleeping snoring somebody someone
surg surgery talking tell there's theres theyre thora thoracic vitals waiting walking you
"""
OPENING = PATIENT | OTHERS | (ARTICLES - {"a", "an", "this"}) | PLANS | frozenset(_OPENING.split())
"""What a dictated clause begins with behind a line."""
BECAUSE = frozenset({"because", "cos", "coz", "cuz", "bc", "cause", "until", "till", "til"})
"""What stands behind these only says why, or till when."""
WHEN = frozenset(
    {"as", "while", "whilst", "when", "before", "after", "once", "since", "until", "till", "then"}
)
"""Behind these a clause says when it was: the line beside it must have a time of its own."""
JOINTS = BECAUSE | WHEN | {"and", "&", "but", "so", "though", "although", "where", "who"}
"""What a clause of its own begins with, beside a comma or a stop."""
HEDGES = frozenset({"just", "also", "now", "apparently", "meanwhile", "currently"})
_VERBS = """
is are was were isn't wasn't has have had hasn't will went came goes comes gets got looks looked feels felt
seems wants wanted needs needed says said did does likes loves keeps slept ate walked sat stood asked given
extubated intubated reintubated sedated
sent taken done running booked held resited arrived arrives pending coming finished started be ordered
"""
VERBS = frozenset(_VERBS.split())
"""With one of these behind a thing, it is told of the thing: "the dressing is dry"."""
_OF_THE_LINE = """
rate
line lines level levels mark marks marked marking reading readings read number numbers figure figures value
charted recorded recording noted logged wrote written write entered enter measured measure measuring estimate
estimated roughly approx approximately guess guessing guessed guesses reckon believe assume assuming assumed
suppose total totals output outputs amount volume ml mls cc ccs millilitre millilitres hourly per
"""
_OF_THE_DRAIN = """
fluid fluids drainage draining drained drains effluent blood bloody bleed bleeding bled clot clots clotted
pus red pink serous serosanguineous haemoserous sanguineous purulent chylous milky straw cloudy clear gush
gushed gushing pouring poured dump dumped dumps leak leaks leaking leaked air bubble bubbles bubbling bubbled
swing swings swinging swung tidal tidals tidaling tidalling oscillating oscillation fluctuating seal suction
wall gauge gravity regulator valve kink kinks kinked clamp clamps clamped clamping unclamped bag pump soaked
empty emptied full overflowing filling filled fills stuck blocked blockage patent milked stripped flushed
flush connect connected connection disconnect disconnected reconnected plug plugged unplugged loose hole
crack cracked snapped tipped tip tipping toppled knocked knock kicked kick upside spilled spilt spill dropped
drop drops fell fall falls falling fallen upright tangled twisted pulled pull pulls tugged tug tugging yanked
yank ripped rip removed remove removing removal dislodged displaced changed change changing swapped swap
swapping replaced replace exchanged exchange insert inserted placed stitch stitches suture sutured sutures
raised lifted higher above hiss hissing whistling gurgling crepitus emphysema sob collapsed collapse worried
coughs breathes breathing worse worsening crash crashing arrest died dead death passed stopped stops ago
anterior apical barely basal bulb dial discharge discharged discharging dumping dying empties emptying evd
exchanging expired fix flow flowed flowing flows foley goal hardly hour hr icc icd inserting jp jug
last limit mediastinal midday midnight mistyped mixup ng ngt noon ooze oozed oozing penrose placing posterior
previously reconnect reconnecting removes replaces replacing scant shift swaps switched target trial
typo unclamp unclamping unclamps vac vacuum weighed whoops
"""
_OF_WHAT_WAS_TOLD = """
wrong incorrect correct correction corrected mistake mistaken error misread mixed mix oops actually wait
meant mean means maybe perhaps probably possibly might think thinks thought sure unsure certain doubt
doubtful confirm confirmed verify ignore disregard scratch delete undo cancel instead rather except unless if
whether or nor neither either question same unchanged similar none nil zero more less increase increased
decrease decreased double another others both each previous prior earlier second yours mine theirs ours
different would've could've supposed plan planned according copied copying example test testing practice
training format template pretend heard hear report reports reported said saw notice noticed
"""
OF_WHAT_WAS_TOLD = frozenset(_OF_WHAT_WAS_TOLD.split())
DOUBTFUL = frozenset(" ".join((_OF_THE_LINE, _OF_THE_DRAIN, _OF_WHAT_WAS_TOLD)).split()) | (
    OF_DRAINS - {"unit", "ct", "it"}
)
"""With one of these a clause may be of the drain, of its line, or of what was told."""
OBJECTS = frozenset({"it", "it's", "its", "itself", "that", "that's", "this", "these", "those", "them"})
"""These may be the drain, or its line."""
AMOUNTS = frozenset({"more", "less", "much", "increased", "double"})
"""A reason may say these: "clamped because it was too much"."""
_DENIALS = """
can't cannot cant confused couldn't couldnt denies didn't didnt doesn't doesnt don't dont hasn't hasnt
haven't havent isn't isnt never no nobody not nothing refused unable wasn't wasnt without won't wont wouldn't
wouldnt
"""
DENIALS = frozenset(_DENIALS.split())
_DID = """
ambulated assisted came did encouraged fed gave given got had helped medicated mobilised mobilized popped
reassured repositioned sat turned waited walked washed went
"""
DID = frozenset(_DID.split())
"""A clause that begins so is of the nurse or the patient: "went in to give him his meds"."""
WANTING = frozenset({"wants", "wanted", "want", "asked"})
WANTED = frozenset(
    {"xray", "xrays", "ray", "rays", "film", "cxr", "scan", "bloods", "labs", "abg", "ecg", "echo"}
)
"""What else is wanted: "clamped at 1715 and wants an x-ray"."""
GOING_ON = frozenset({"will", "feels", "felt", "says", "said", "seems", "hopes"})
"""Behind "and" these go on with whoever was named before."""
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
AHEAD = frozenset(
    {"tomorrow", "monday", "tuesday", "wednesday", "thursday", "friday", "saturday", "sunday", "someday"}
)
"""With one of these nothing has happened yet."""
_THINGS = """
bandage bandages batteries battery blanket bulb channel clothes diaper dressing dressings gloves gown gowns
linen linens nappy pad pads pajamas pillow pillowcase pillows pyjamas sheet sheets shirt socks
"""
THINGS = frozenset(_THINGS.split())
"""What is changed and is no canister."""
_BROKEN = """
ac bell blind buzzer computer curtain door fan heating hoist lamp lift light lock monitor phone printer
radiator radio scanner sink tablet telly thermometer toilet tv wifi window
"""
BROKEN = frozenset(_BROKEN.split())
"""What else is broken."""
_ROOM = """
aircon bin ceiling chair clock commode cupboard cushion fridge glasses heater jug keyboard kettle mattress mug
rail remote roof screen shower stool table thermostat tray trolley urinal walker wheelchair basin cannula cup
cannulas cutlery drink feed feeds food plate spectacles tea vase zimmer pharmacy kitchen theatre switchboard
laundry sputum urine
"""
ROOM = frozenset(_ROOM.split()) | (BROKEN - {"lock"})
"""What there is in a room or on a ward and is no drain: it falls, breaks, leaks or is moved."""
PARTS = frozenset(
    {"line", "drain", "tube", "tubing", "bag", "pump", "site", "port", "cover", "pole", "stand"}
)
"""Right behind another thing these are of it: "iv pump", "sink drain"."""
_VAGUE = """
pump suction day site air pressure running bolus canister liner pleural wound incision dressing dressings drsg
battery batteries vent surgical
"""
VAGUE = frozenset(_VAGUE.split())
"""With one of these it may be of a chest drain after all."""
MOVERS = frozenset({"hoist", "trolley", "wheelchair", "walker", "rail", "rails", "door", "chair", "zimmer"})
STRIKES = frozenset({"pulled", "tugged", "caught", "kinked", "disconnected", "dislodged", "hit", "snagged"})
"""What such a thing may have done to the tubing."""
NEXT_TO = frozenset({"to", "beside", "near", "by", "behind", "opposite", "above", "below"})
_HAPPENS = """
clamp clamped clamping unclamped kinked leak leaks leaking leaked blocked cracked crack snapped tipped tipping
toppled knocked kicked spilled spilt spill dropped drops drop fell fall falls fallen falling tangled twisted
pulled pulling pull removed removing displaced dislodged changed changing swapped replaced exchanged inserted
placed disconnected reconnected connected unplugged plugged loose stuck stopped stops empty full
overflowing filled filling raised lifted higher flushed flush patent draining bleeding oozing expired
died dead collapsed crash crashing worse worsening passed tugged yanked ripped resited increased decreased
soaked clear red pink flowing bloody purulent milky cloudy disconnect
"""
HAPPENS = frozenset(_HAPPENS.split())
"""What may happen to any thing."""
_COUNTED = """
blankets brothers cats children daughters days doctors dogs grandchildren grandkids kids laps months nurses
of people pillows puffs sisters sons steps tablets times visitors weeks year years yrs
"""
COUNTED = frozenset(_COUNTED.split())
"""Behind a number these say that it is none of ours: "he's ninety three years old"."""
DRAINS = frozenset({"drain", "box", "canister", "bottle", "unit", "system", "chamber", "collector", "tubing"})
_STANDS = """
kept keeping upright hanging hung below under lower secured secure stays staying stayed went goes going taped
finished safe hooked travelling with along working connected attached intact patent functioning
"""
STANDS = frozenset(_STANDS.split())
"""Of a drain these say that it is where it should be."""
_SETTLED = """
is was the chest level of bed side at on his her him he she them their trolley stretcher to in place hook
frame rail floor stand there here all well low down than beneath waist heart it its chair wheelchair still
remains now ok good fine nicely times time everything properly
"""
SETTLED = STANDS | frozenset(_SETTLED.split())
_BEFORE_LINE = """
put log record enter note mark line level reading reads canister box chamber fluid drain this is so okay ok
now right then and but could can you please pop down i i'm i've get got drew read just come out having look
add my next patient hourly update in on of for to from at the his her a by with have here one
"""
BEFORE_LINE = frozenset(_BEFORE_LINE.split())
"""What a line begins with before its bed."""
PAST = frozenset({"been", "took", "kept", "slipped"})
LATENESS = frozenset({"this", "it's", "it", "is", "a", "bit", "so", "very", "late", "delayed", "overdue"})
"""Of the message itself these say nothing but that it comes late."""
NO_BARE = DENIALS | {"off", "home"}
"""Of whom or what is this, where nobody is named?"""
LABS = frozenset(
    {"sent", "taken", "drawn", "done", "gas", "gases", "results", "pressure", "sugar", "sugars", "test"}
    | {"tests", "work", "cultures", "glucose", "were", "are"}
)
NAMED_BY = {
    "this": frozenset({"morning", "afternoon", "evening", "week", "weekend", "am", "pm"}),
    "nothing": frozenset({"else"}),
    "chest": frozenset({"x", "xray", "film", "physio", "physiotherapy", "ct", "infection", "pain"}),
}
"""Words that are of no drain before these."""
NAMING = {
    "if": frozenset({"see", "know", "check"}),
    "whether": frozenset({"see", "know", "check"}),
    "shift": frozenset({"this"}),
    "rate": frozenset({"heart", "pulse", "resp", "respiratory", "breathing"}),
}
"""Words that are of no drain behind these."""
DRESSINGS = frozenset({"dressing", "dressings", "dsg"})
OF_DRESSINGS = frozenset(
    {"changed", "change", "changing", "dry", "wet", "soaked", "clear", "clean", "replaced"}
)
"""Of a dressing these say nothing of the drain."""
WHOM = frozenset({"him", "her", "pt", "patient", "them"}) | HIMSELF
_TAKING = """
took taken taking collected collecting fetched picked brought wheeled sent came come coming called
"""
TAKING = frozenset(_TAKING.split())
LEAVING = frozenset(
    {"leaving", "leaves", "leave", "departing", "heading", "transferring", "discharging", "dc"}
)
LATER = frozenset({"later", "tomorrow", "soon", "afternoon", "tonight", "evening"})
GONE = frozenset(
    {"gone", "went", "left", "taken", "took", "moved", "came", "come", "returned", "transferred"}
)
HIMSELF_MOVED = frozenset({"himself", "herself", "themselves", "around", "about", "well", "freely", "chair"})
"""Behind "moved" these leave a patient in the bed."""
REST = frozenset(
    {"chair", "recliner", "sleep", "asleep", "rest", "normal", "himself", "herself", "usual", "baseline"}
)
"""Behind "back to" these are no place that a patient comes back from."""
GOING = frozenset({"away", "back", "left", "moved", "acknowledged"})
"""Events that are nothing of a drain where it is no patient who goes."""
_OPEN = """
said says say told tells reported reports reckons thinks thought asked wants wanted ordered noticed found saw
called texted wrote charted of to for from at the a his her with like taking pulling removing clamping sending
"""
OPEN = frozenset(_OPEN.split())
"""A clause that ends with one of these goes on behind it."""
LOOKING = frozenset({"look", "looked", "looking", "check", "checked", "checking", "glanced", "inspected"})
_TODO = """
change changed changing swap swapped swapping replace replaced replacing remove removed removing exchange
exchanged pull pulled pulling clamp clamped clamping unclamp out taken removal need needs
"""
TODO = frozenset(_TODO.split())
"""What will be done with a drain, in a clause that says so."""
