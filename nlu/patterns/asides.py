"""Words of a remark that never change what an event is of: people, places on the way, how it went.

A word that is not here and is no cue, in the same clause as an event or a check, makes the message a
question: it may say what fell, that it is only planned, or who said so. Never put here: a thing that can
fall, break or come out; a word of saying, asking, denying or planning.
"""

from __future__ import annotations

from .remarks import ALARMS
from .smalltalk import ROUND_AN_EVENT

_STAFF = """
dr drs doctor doctors doc docs md mds pa np rn rns reg spr registrar consultant surgeon surgeons resident
residents intern fellow attending team provider providers physio physiotherapist anaesthetist anesthetist
anesthesia anaesthetics cardiothoracic thoracics thoracic thora cts ct respiratory rt porter porters transport
transporter tech techs technician aide aides hca cna cnas orderly student students nurse nurses sister
surg surgery pulm hospitalist intensivist prof professor spr sho rmo hmo smo
sr snr jr senior junior sn charge colleague cleaner cleaners housekeeping staff they he she ed er
"""
_RELATIVES = """
visitor visitors family member members fam
wife husband son daughter mum mom dad mother father relative relatives friend
bystander bystanders attender carer
friends partner brother sister present grandson kid kids child toddler someone somebody
"""
_PATIENT = """
man men lady gentleman woman guy boy girl baby infant gent chap bloke himself herself him them us own pts
"""
_HOW = """
isolation iso
coughed sneezed coughing stood sat walked ambulated righted but cos cuz coz because bc
today tonight ok fine well successfully uneventfully easily peacefully accidentally unexpectedly
finally already briefly safely too also again overnight earlier sorted fixed
straightened repositioned resolved informed notified updated aware called paged paging documented tolerated
way hairline rounded rounding reviewed laying slept sleeping snagged dragged reopened
along across chest assist
topped refilled found maam sir noticed saw sitting hanging hung lying full fresh uwsd uwd turning stable
comfortable settled unwell agitated delirious sore bedside
emergency transfer transferring transferred tripped tripping stumbled sob dyspneic dyspnoeic
breathless distressed desatted desatting cheerful hungry drowsy teary anxious chat chats natter chatting
transport transporting moving move mobilising mobilizing turned
rolling rolled repositioning walking physiotherapy ambulating bathing mistake
accident error purpose while whilst during when just then now this that round rounds w via
per post op day morning afternoon evening night nightshift dayshift shift done complete completed swiftly
ta thanks thank thx ty cheers tks
asap quick slightly bit little very really quite bad badly
heads up transit route urgent urgently stat alert as same site sited side sided single double both two
trial came forgot forgotten po opo reconnected reattached rejoined retaped resecured
"""
_WHERE = """
theatre theater recovery xray scan ward unit floor corridor bathroom toilet commode shower loo chair rail
rails siderail bedrail pole stand trolley stretcher wheelchair gurney icu itu hdu picu nicu ccu hospital
facility rehab resus suite window door ground hook nail connector adapter adaptor joint junction port
connection bottom top side corner base seam edge back front lid handle under underneath beneath into onto
behind beside next between around
"""
PLACES = frozenset(_WHERE.split())
_LOOKS = """
clots clot clotty only strands few liquid minimal mild slight small tiny moderate large big some good nice
nicely normal gentle vigorous brisk frank frankly cloudy clear thick thin free remains remained remaining
stayed drainage draining output noted seen present visible ongoing continues continuing only still currently
resp resps respiration respirations respiratory breath breaths breathing cough coughs coughing inspiration
expiration w with usual changed changing turned went gone become became followed unchanged level levels
column chamber chambers reading crepitus emphysema dressing dsg dressings drsg cdi intact dry clean orange
looked low
"""

_CALLED = """
here there aware called told came coming notified paged in seen visited suctioned did gave says said
"""
CALLED = frozenset(_CALLED.split())
"""Behind "rt" these are of a respiratory therapist, and the letters name no side."""
ALERTED = frozenset(
    {
        "paged",
        "aware",
        "notified",
        "called",
        "informed",
        "bleeped",
        "contacted",
        "consulted",
        "rang",
        "coming",
    }
    | {"updated", "reviewing", "phoned", "texted", "happy"}
)
"""Behind the name of a field these are of its team: "trauma paged"."""
_DONE_TO = "turned bathed fed seen up here"
DONE_TO = frozenset(_DONE_TO.split())
"""What is done to a patient, and may be all that the time behind it is of."""
PATIENTS = frozenset(
    {"lady", "man", "gentleman", "woman", "guy", "gent", "chap", "bloke", "boy", "girl", "baby", "kiddo"}
    | {
        "kiddos",
        "fella",
        "lad",
        "lass",
        "gal",
        "youngster",
        "teen",
        "teenager",
        "newborn",
        "neonate",
        "granny",
    }
    | {"grandma", "grandpa", "grandad", "granddad", "nana", "gran"}
)
"""Whoever lies in the bed."""
STAFF = frozenset(_STAFF.split())
_LOADED = """
changed changing swapped emptied replaced removed pulled out off clamped unclamped stopped started
dropped fell fallen leaking leaked gone away moved left broke broken cracked kinked tipped kicked knocked
disconnected reconnected dislodged discharged died transferred inserted placed exchanged
pulling removing swapping emptying replacing exchanging clamping unclamping stopping starting dropping
moving leaving transferring discharging inserting placing
"""
LOADED = frozenset(_LOADED.split())
"""Verbs that tell of an event; unread in the clause of a number, they may be what it is about."""
RELATIVES = frozenset(_RELATIVES.split())
ASIDES = (
    STAFF
    | RELATIVES
    | ROUND_AN_EVENT
    | ALARMS
    | frozenset(_PATIENT.split())
    | frozenset(_HOW.split())
    | frozenset(_WHERE.split())
)
CHECK_ASIDES = ASIDES | frozenset(_LOOKS.split())
TITLES = frozenset({"dr", "drs", "mr", "mrs", "ms", "miss", "prof", "sr", "nurse", "doctor", "by", "sister"})
"""The word behind these is a name."""
WITH = frozenset({"by", "with", "w", "per", "and", "for"})
_THINGS = """
tube tubes chest drain drains canister canisters cannister box boxes chamber chambers bottle bottles
system systems collector unit pigtail catheter icc icd icds ct uwsd uwd tubing tubings connector
connection line hose clamp seal pleural it its
"""
THINGS = frozenset(_THINGS.split())
"""What an everyday verb must be of to be ours."""
PERSONS = frozenset({"pt", "patient", "pts", "he", "she", "i", "we", "him", "me", "us", "they"}) | RELATIVES
FALLS = frozenset(
    {
        "fell", "fell over", "fell out", "fallen over", "fell on its side", "fell to the floor",
        "slipped out",
        "tripped over", "turned over", "dropped", "slid out", "popped out", "on the floor",
    }
)  # fmt: skip
"""What a person does too: with a person before it, nothing is said of the drain."""
EVERYDAY = FALLS | frozenset(
    {
        "kicked", "knocked", "knocked down", "spilled", "spilt", "lifted", "lifted up",
        "raised",
        "put on the bed", "up on the bed", "on top of the bed", "on the iv pole", "hung up high", "cracked",
        "broken", "broke", "crack", "crack in", "split", "damaged", "punctured", "smashed", "busted",
        "defective", "has a crack", "is cracked", "separated", "detached", "unattached", "unhooked",
        "came loose", "came apart", "popped off", "pulled apart", "pulled out", "ripped out", "coming out",
        "half out", "halfway out", "partway out",
        "part way out", "partly out", "partially out", "yanked", "yanked out", "patient pulled",
        "pt pulled", "pulled own", "self removed", "patient removed", "pt removed", "accidentally pulled",
        "accidentally removed", "accidentally pulled out", "got pulled out", "pulled it out", "twisted",
        "pinched", "migrated", "dislodged",
        "removed", "pulled", "pulled at", "was pulled", "discontinued", "dc'd", "d/c'd", "is out",
        "exchanged", "exchange", "swapped", "changed out", "swapped out", "exchange done",
    }
)  # fmt: skip
