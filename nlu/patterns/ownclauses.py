"""Words by which a clause beside what is told is known as one of its own, or as doubtful."""

from __future__ import annotations

from .asides import LOADED, THINGS
from .chatter import DOUBTFUL as OF_DRAINS

BECAUSE = frozenset({"because", "cos", "coz", "cuz", "bc", "cause", "until", "till", "til"})
"""What stands behind these only says why, or till when."""
AMOUNTS = frozenset({"more", "less", "much"})
"""A reason may say these: "clamped because it was too much"."""
JOINING = BECAUSE | {"and", "&", "so", "but", "as", "while", "whilst", "when", "once", "before", "after"}
JOINING |= {"then", "since", "although", "though", "who"}
"""With these a clause begins, without a stop before it."""
_ADVERBS = """
now also then just meanwhile thankfully luckily still currently today tonight again later yes yeah ok okay oh
hi hello hey and so but
"""
BEFORE_SUBJECT = JOINING | frozenset(_ADVERBS.split())
_SELVES = """
i i'm im i've ive i'll i'd we we're we've weve we'll we'd he he's hes he'll he'd she she's shes she'll she'd
they they're theyre they've they'll they'd you everyone everybody nobody
"""
SELVES = frozenset(_SELVES.split())
OWNERS = frozenset({"the", "his", "her", "their", "our", "my", "a", "an", "this", "both", "mr", "mrs", "dr"})
_ASIDE_THINGS = """
xray xrays ray film films cxr scan bloods labs abg ecg ekg echo notes note consent family vitals obs meds
analgesia antibiotics report handover dressing pad pads monitor chair lunch breakfast dinner tea
"""
ASIDE_THINGS = frozenset(_ASIDE_THINGS.split())
"""What else is ordered, done or brought: "chest x-ray ordered", "notes went with him"."""
_DESCRIBING = """
chest x - repeat portable post check follow up new day night charge senior junior surgical float staff
"""
DESCRIBING = frozenset(_DESCRIBING.split())
DEVICES = frozenset(
    {"monitor", "bed", "window", "tv", "toilet", "sink", "door", "lift", "light", "radiator", "buzzer"}
)
"""What else breaks, and is why somebody was moved."""
OF_DAY = frozenset({"morning", "afternoon", "evening", "night", "week", "weekend", "shift", "arvo"})
"""Behind "this" these make it no drain."""
WAITED_FOR = frozenset({"regulator", "new", "suction", "pump", "supplies", "pharmacy"})
NOT_PERSONS = frozenset(
    {"ct", "cts", "ed", "er", "rt", "charge", "they", "he", "she", "present", "thoracic", "respiratory"}
)
"""Words of the staff that are something else too, or whose person may be the patient."""
DRAINS = frozenset({"drain", "box", "canister", "bottle", "unit", "system", "chamber", "collector", "tubing"})
_STANDS = """
kept keeping upright hanging hung below under lower secured secure stays staying stayed went goes going taped
finished safe hooked travelling with
"""
STANDS = frozenset(_STANDS.split())
"""Of a drain these say that it is where it should be."""
_SETTLED = """
is was the chest level of bed side at on his her him he she them their trolley stretcher to in place hook
frame rail floor stand there here all well low down than beneath waist heart it its chair wheelchair still
remains now ok good fine nicely times time
"""
SETTLED = STANDS | frozenset(_SETTLED.split())
WANTING = frozenset({"wants", "wanted", "want", "asked"})
"""Behind "and" these go on with whoever was named before, where something else is wanted: an x-ray."""
GOING_ON = WANTING | frozenset({"will", "feels", "felt", "says", "said", "seems", "hopes"})
"""Behind "and" these go on with whoever was named before."""
HAS_VERB = frozenset({"is", "was", "are", "were", "has", "had", "been", "be", "isn't", "wasn't", "will"})
"""One of these behind a thing makes a clause of it: "his obs are fine"."""
OBJECTS = frozenset({"it", "its", "it's", "that", "that's", "thats", "this", "them", "these", "those", "one"})
OBJECTS |= {"ones", "itself", "everything", "something", "anything", "stuff", "thing", "things"}
"""These may be the drain, or its line."""
DENIALS = frozenset(
    {"not", "no", "never", "don't", "dont", "didn't", "didnt", "doesn't", "doesnt", "isn't", "isnt", "nobody"}
    | {"wasn't", "wasnt", "hasn't", "hasnt", "haven't", "havent", "can't", "cant", "cannot", "couldn't"}
    | {"couldnt", "won't", "wont", "wouldn't", "wouldnt", "without", "unable", "refused", "denies", "nothing"}
)
REPORTING = frozenset(
    {"said", "says", "say", "told", "tells", "reported", "reports", "reckons", "thinks", "thought", "asked"}
    | {"wants", "wanted", "ordered", "noticed", "found", "saw", "called", "texted", "wrote", "charted"}
)
"""A clause that ends with one of these goes on behind it."""
OPENING = frozenset({"of", "to", "for", "from", "at", "the", "a", "his", "her", "with"})
SMALL = frozenset({"a", "an", "oh", "to", "for", "o", "and", "second", "point"})
"""Number words that mostly are none."""
_HARMLESS = """
he she shes hes it's its was were be been i home died gone moved off out since again so far new side been
left right should clot clots
"""
_MORE = """
perhaps possibly probably guess guessed might could estimated eyeballed misread mistyped typo mistake mixed
wrong wrongly mixup instead rather meant mean unsure reckon supposed supposedly apparently seemingly unless
whether if either neither each next both another different swap swaps swapping replace replaces remove
removes pull pulls take takes clamp clamps unclamp unclamps empty empties disconnect reconnect reconnecting
order orders ordered pump pumps test testing example hypothetically bed's bled hole kink gush gushed
poured pouring dump sprang spurted flowing flow flows flowed slowed slower faster jug measured measure
measuring weighed scale catheter pigtail icc icd suction vacuum regulator dial seal bubble bubbles bubbling
swing swings swinging tidaling leak leaks air trial draining drainage fluid forgot missed skipped late
transfer transferring discharge discharging die dying passed expired
"""
DOUBTFUL = (OF_DRAINS | LOADED | THINGS | frozenset(_MORE.split())) - frozenset(_HARMLESS.split())
"""Of a drain, or what happens to one, or a doubt."""
DOUBTFUL -= OBJECTS | DENIALS
