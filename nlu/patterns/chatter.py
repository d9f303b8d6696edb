"""Words of what is told beside lines and is of no drain: orders to call, activities, who has which beds.

A clause of these is left out only where a message would be asked and the rest is whole lines. Never put here:
what a drain does, or shows, or holds.
"""

from __future__ import annotations

CALLS = frozenset({"call", "page", "notify", "inform", "ring", "bleep", "alert", "contact", "escalate"})
WHEN = frozenset({"if", "when", "once", ">"})
STARTS = CALLS | {"handing", "finishing", "doc", "dr", "md", "surgeon", "reg", "team", "does"}
"""Behind a number these begin a clause without a stop before it."""
UNTIL = frozenset({"till", "til", "until", "at", "@", "by", "from", "since", "around", "before", "after"})
_ACTIVE = """
rounds round rounding rounded abx antibiotics antibiotic meds med dose due xray cxr scan mri echo physio pt ot
turned repositioned mouthcare wash washed bath bathed shower walked mobilised ambulated chair up oob dressing
dressings surgery theatre theater procedure bronch family visitors visiting meeting break lunch dinner tea
coffee covering covers cover has have watching minding see back on given gave giving started hung bolus
report handover handing nurse shift labs bloods cultures transfusion feeds feed fed ate slept nap dialysis
"""
ACTIVE = frozenset(_ACTIVE.split())
"""With one of these the time of a clause is of that, and of no line."""
UNITS = frozenset(
    {"mg", "mcg", "g", "gm", "meq", "units", "unit", "iu", "%", "ft", "feet", "fr", "french", "ga", "gauge"}
    | {"mmol", "kcal", "steps", "laps", "visitors", "people", "times", "x", "tabs", "tab", "kg"}
    | {"yo", "yrs", "years", "y", "percent", "bm", "bms", "staples", "pillows", "pillow"}
)
"""Behind a number these say that it counts no millilitres of ours."""
_DRUGS = """
propofol norepi norad levo levophed epi vaso heparin insulin morphine oxy oxycodone oxynorm dilaudid fentanyl
ketamine midaz midazolam lasix furosemide frusemide paracetamol tylenol acetaminophen tramadol codeine zofran
ondansetron precedex dex amio amiodarone cardizem dilt diltiazem metoprolol labetalol hydralazine kcl
potassium magnesium
ativan lorazepam haldol seroquel toradol ketorolac ibuprofen gabapentin cefazolin ancef vanc zosyn
milrinone dobutamine dopamine ns lr maintenance tpn juice water
"""
DRUGS = frozenset(_DRUGS.split())
_SCORES = """
ewss ews mews rass cam braden pain gcs hr sinus nsr afib sats incentive pacer paced cpot pacing desatting
desatted satting bm bg map temp ext phone hfnc nrb nc peg ng jp foley uop urine news
"""
SCORES = frozenset(_SCORES.split())
"""Before a number these say that it is none of ours."""
_DOUBTFUL = """
full overflowing pouring bleeding bleed blood bloody clot clots dry nothing nil none zero empty stopped
increasing increased worse more less minimal scant barely hardly little loads dumped dumping gushing urgent
stat arrest crashing chest drain drains tube tubes drained draining dumps put out output canister box bottle
chamber pleural side left right l r lt rt apical basal med mediastinal level line mark reading it was were be
been i think maybe should correction correct corrected fix wrong earlier later previous old new another other
total so far since same again unchanged change changed swapped pulled removed clamped off home died gone
transferred discharged moved goal target he she shes hes its
"""
DOUBTFUL = frozenset(_DOUBTFUL.split())
"""With one of these a clause may be about a line, or say what happened to a drain."""
HANDING = frozenset(
    {"handing", "handover", "handed", "finishing", "finished", "report", "relieved", "taking"}
)
LOTS = frozenset({"lot", "much", "high", "normal", "loads"})
COVERS = frozenset({"has", "have", "covering", "covers", "cover", "watching", "minding", "got", "taking"})
RESTS = frozenset({"break", "lunch", "dinner", "tea", "coffee", "supper"})
_RESTING = "just back from my on off to going now i im was were had got am after for the a"
RESTING = frozenset(_RESTING.split())
