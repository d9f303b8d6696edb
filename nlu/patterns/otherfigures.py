"""Words whose number is another thing's: drugs, scores, vital signs, food, telephones, films, who is how old.

Never put here: what a drain is, holds or shows, and no word that may be said of its line.
"""

from __future__ import annotations

from .chatter import DRUGS as MORE_DRUGS
from .measured import BREATHED, DECIMAL, DEVICES
from .measured import MOST as MEASURED

_DRUGS = """
tylenol apap paracetamol panadol acetaminophen percocet oxy oxycodone oxycontin endone norco vicodin
tramadol tram ultram codeine morphine morph mso4 dilaudid fentanyl fent ketamine toradol ketorolac ibuprofen
brufen advil motrin naproxen celebrex diclofenac voltarol aspirin asa plavix clopidogrel ticagrelor eliquis
apixaban xarelto warfarin coumadin lovenox enoxaparin clexane fragmin heparin metop lopressor bisoprolol
carvedilol coreg diltiazem dilt cardizem norvasc hydralazine amio amiodarone digoxin dig adenosine lidocaine
lignocaine lasix bumex bumetanide spironolactone metolazone diamox statin lipitor insulin lantus glargine
novolog humalog lispro aspart novorapid actrapid levemir detemir metformin gliclazide prednisone pred
prednisolone hydrocortisone dexamethasone dex decadron solumedrol zofran reglan metoclopramide maxolon
compazine phenergan promethazine benadryl diphenhydramine pepcid cyclizine pantop protonix nexium senna
sennakot colace docusate miralax movicol lactulose dulcolax bisacodyl macrogol laxative suppository enema
ativan valium diazepam versed midaz xanax zopiclone ambien melatonin haldol haloperidol seroquel quetiapine
olanzapine zyprexa trazodone sertraline gabapentin gaba pregabalin lyrica keppra levetiracetam phenytoin
robaxin baclofen flexeril ancef cefazolin kefzol rocephin ceftriaxone cefepime cefuroxime keflex cephalexin
augmentin coamoxiclav unasyn zosyn tazocin piptaz meropenem mero ertapenem vanc vanco gent amox levaquin
cipro clinda flagyl bactrim linezolid fluconazole abx antibiotic antibiotics albuterol salbutamol ventolin
xopenex duoneb atrovent ipratropium neb nebs nebuliser nebulizer mucomyst pulmicort inhaler kcl potassium
kphos mag magnesium calcium phosphate iron vitamin thiamine folate bicarb albumin prbc prbcs rbc ffp cryo
txa tpa alteplase dornase pca bolus boluses gtt infusion propofol precedex norepi norad levo levophed
noradrenaline adrenaline epi epinephrine vaso vasopressin dobutamine milrinone phenyl nitro gtn ntg
cleviprex tpn lipids ns lr hartmanns plasmalyte saline ringers dextrose maintenance mivf ivf nicotine dose
doses analgesia painkiller painkillers pill pills tablet tablets capsule meds premed clevi nicardipine
cardene levo tf trough peak xa
"""
DRUGS = (frozenset(_DRUGS.split()) | MORE_DRUGS) - {"juice", "water"}
"""What is given: the number behind it is how much, or when."""
_ENDINGS = """
cillin mycin micin floxacin cycline azole prazole statin sartan dipine pril olol parin xaban setron zepam
zolam codone morphone profen coxib gliptin gliflozin glutide semide thiazide oxetine triptan tidine caine
"""
DRUG_ENDINGS = tuple(_ENDINGS.split())
"""What the names of drugs end with."""
_SCORES = """
pain flacc rass morse braden cpot bps nips norton waterlow gcs news mews pews ews ewss news2 nihss sofa
qsofa apache aldrete ramsay sas riker icdsc nvps nrs vas sedation poss ciwa cows bradenq score scores borg
apgar mmse hendrich itch aox oriented bmi ef risk
"""
SCORES = frozenset(_SCORES.split())
_VITALS = """
hr pulse bp nibp abp sbp dbp map cvp rr resp resps respirations sat sats spo2 sao2 o2 temp temperature tmax
afebrile febrile etco2 fio2 peep crt icp cpp bis svo2 scvo2 svr pawp paced pacer pacing refill desatted
satting desatting tachy brady iabp cpap bipap hfnc hfno vent edema oedema pulses fio spo
"""
VITALS = (frozenset(_VITALS.split()) | BREATHED | DEVICES | MEASURED.keys()) - {"sat"}
_LABS = """
hgb hct plt plts platelets wbc wcc crp pct lactate trop troponin creat creatinine bun urea egfr inr ptt aptt
pco2 po2 hco3 glucose gluc sugar sugars bgl bsl cbg fsbs accucheck bnp ddimer fibrinogen bili amylase lipase
ketones fs
"""
_SHORT = {"k", "na", "mg", "ca", "cl", "hb", "ph", "t", "ci", "cr", "lac", "phos"}
LABS = (frozenset(_LABS.split()) | DECIMAL) - _SHORT
REPLACED = frozenset(
    {"k", "mg", "ca", "phos", "potassium", "magnesium", "calcium", "phosphate", "mag", "kphos"}
)
"""Behind one of these "replaced" is said of it."""
RANGES = {
    **dict.fromkeys(("call", "reach", "text", "ring", "buzz", "page", "phone"), (100, 9999999)),
    "k": (1, 9),
    "na": (100, 180),
    "mg": (0, 9),
    "ca": (0, 15),
    "cl": (70, 140),
    "hb": (4, 200),
    "ph": (6, 8),
    "t": (33, 43),
    "p": (30, 220),
    "ci": (1, 6),
    "cr": (0, 900),
    "lac": (0, 20),
    "phos": (0, 5),
    "vt": (100, 800),
    "ht": (100, 220),
    "height": (100, 220),
    "ett": (10, 30),
    "picc": (5, 60),
    "cuff": (5, 60),
    "staples": (1, 60),
    "trach": (3, 12),
}
"""Short names, and between which values a number behind them is theirs; common practice, no source."""
_COLLECTORS = """
urine uop uo foley void voided urinary catheter idc ng ngt og peg emesis vomit vomited stool ostomy
ileostomy colostomy jp cath threw evd penrose urinal residual residuals
"""
COLLECTORS = frozenset(_COLLECTORS.split())
"""What else holds or gives millilitres."""
VESSELS = COLLECTORS | {"iv", "ivs", "picc", "cannula", "cannulas", "trach", "epidural", "pca", "drip"}
"""What else is clamped, changed or removed."""
SEXES = frozenset({"f", "male", "female", "man", "woman", "lady", "gentleman", "girl", "boy"})
_PHONES = """
ext extn extension pager page phone phones bleep dect mobile cell tel callback fax
landline desk call reach text ring buzz
"""
PHONES = frozenset(_PHONES.split())
_FOOD = """
ate eaten eating eats drank drunk drinking slice slices toast biscuit biscuits cookie cookies cracker
crackers sandwich sandwiches juice milk tea coffee soup jello jelly pudding yogurt yoghurt egg eggs banana
apple dinner lunch breakfast supper brunch snack snacks tray meal meals chips popsicle popsicles feed feeds
feeding ensure boost fortisip intake sips carbs cereal rice pasta pizza spoonfuls spoons bites mouthfuls
cups nuggets fries formula fed breastfed
"""
FOOD = frozenset(_FOOD.split())
_FILMS = """
cxr xray xrays cxrs scan mri echo tte tee ecg ekg ultrasound uss doppler ctpa film films bronch bronchoscopy
endoscopy angio angiogram eeg abg vbg labs lab bloods cultures culture swab swabs biopsy
"""
FILMS = frozenset(_FILMS.split())
_CARE = """
crying awake npo nbm fasting fasted turned turn turns repositioned reposition walked walk walking amb
ambulated ambulating ambulation mobilised mobilized mobilising oob chair recliner slept asleep sleeping
napped nap bath bathed bathing washed wash shower showered dressing dressings mouthcare physio ot rounds
round visitors visitor visiting visit family wife husband son sons daughter daughters mum mom dad sister
sisters brother brothers friends bowels bowel bo bm bms pu pued commode toilet spirometer spirometry ics
incentive doctor dr surgeon ortho renal cardiology medics dietitian pharmacist chaplain meeting break shift
consult dialysis iv ivs cannula cannulas piv pivs trach lip steps stairs laps lap tv attempts puffs pillows
blankets epidural ventilator alarm speed dangled nursed scds scd sitter sitters eval care linen linens mouth
hygiene brief briefs diaper nappy thermostat heater drill rapid agency zone staples extubated intubated
reintubated medicated sedated weighed
"""
CARE = frozenset(_CARE.split())
"""What is done with a patient, who comes, what else is in them: it has times, counts and sizes."""
NAMES = DRUGS | SCORES | VITALS | LABS | COLLECTORS | PHONES | FOOD | FILMS | CARE
MOST = {
    **dict.fromkeys(VITALS, 300),
    **dict.fromkeys(SCORES, 160),
    **MEASURED,
    **dict.fromkeys(LABS, 2000),
    **dict.fromkeys(("spirometer", "spirometry", "incentive", "ics", *FOOD, *COLLECTORS), 5000),
    **dict.fromkeys(DRUGS, 50000),
    **dict.fromkeys(PHONES, 9999999),
    **dict.fromkeys(("walked", "ambulated", "mobilised", "mobilized", "amb"), 1000),
    "speed": 20000,
    "thermostat": 100,
    "vent": 60,
    "zone": 9,
}
"""The largest value that may stand behind a name."""
_UNITS = """
mg mgs mcg mcgs ug g gm gms grams gram meq mmol units iu % percent bpm mmhg kpa kcal cal cals calories lb
lbs pounds oz ounce ounces degrees deg inches ft feet foot yards yds fr french ga gauge tabs tab tablets
caps puffs puff drops sprays tbsp tsp steps laps lap beats breaths joules
"""
UNITS = frozenset(_UNITS.split())
"""Behind a number: none of these is of a drain's line."""
DURATIONS = frozenset(
    {"h", "hr", "hrs", "hour", "hours", "min", "mins", "minutes", "sec", "secs", "seconds", "days", "day"}
)
_COUNTED = """
slices toast biscuits cookies crackers sandwiches eggs bites sips spoonfuls mouthfuls cups visitors sons
daughters sisters brothers kids children friends nurses staff people persons person assist laps lap steps
stairs flights walks attempts demands shocks doses dose tabs tab tablets pills puffs nebs stools vomits
episodes pillows blankets ivs pivs cannulas piv relatives grandkids popsicles popsicle chips juices teas
coffees coughs breaths reps sets sessions patients pts admissions short nappies diapers times rings family
drs doctors students orientees staples sitters admits admit admission shift
"""
DONE_TO = frozenset(
    {
        "walked",
        "walk",
        "ambulated",
        "amb",
        "mobilised",
        "mobilized",
        "fed",
        "breastfed",
        "call",
        "reach",
        "text",
    }
    | {"ring", "buzz", "page", "phone", "bleep", "ate", "drank", "eating", "turned", "given"}
)
"""Behind these a number may be somebody's bed."""
COUNTED = frozenset(_COUNTED.split())
"""Behind a small number: what it counts."""
NUMBERED = frozenset(
    {"type", "grade", "stage", "size", "day", "pod", "channel", "class", "phase", "x", "q"} | {"every"}
)
"""Before a small number: which one, or how often."""
ORDINALS = frozenset({"st", "nd", "rd", "th"})
GLUED = frozenset(
    {"o", "q", "co", "spo", "sao", "etco", "po", "pco", "fio", "svo", "scvo", "hco", "t", "d"}
    | {"e", "v", "aox", "ox", "x", "k"}
)
"""Letters that a digit stands right behind: "o2", "q2h", "d5", "t4"."""
RATED = frozenset({"hr", "h", "hour", "hrs", "min", "minute", "kg", "day", "dose"})
PER = frozenset({"/", "per", "an"})
_LINKS = """
at of is was = : now still are were in on to up down running infusing sitting around currently a an no
number going set remains iv po sc im pr bolus drip gtt infusion score + weaned titrated given patch me us my
only goes under
"""
LINKS = frozenset(_LINKS.split())
"""Between a name and its number."""
TIMES = frozenset(
    {"at", "@", "since", "till", "til", "until", "by", "due", "from", "before", "after", "around", "again"}
)
BOOKED = frozenset({"booked", "due", "scheduled", "planned", "down"})
"""With one of these "for 2" says when something will be."""
HALVES = frozenset({"am", "pm", "h", "hrs", "a", "p"})
ASLEEP = frozenset({"slept", "asleep", "napped", "nap", "break", "visiting", "dialysis", "physio", "lunch"})
"""These last "2 to 5"."""
CHAINS = frozenset({"to", "then", "now", "from", "back", "up", "down", "and", "&", "was", "-"})
"""Between two values of one thing, or two times of it: "88 then back to 94", "6 and 8"."""
CENTIMETRES = frozenset({"cm", "mm", "inch"})
WALKED = frozenset({"walked", "walk", "walking", "amb", "ambulated", "mobilised", "mobilized"})
FLUIDS = frozenset({"fluid", "fluids"})
GIVEN = frozenset({"iv", "maintenance", "ns", "lr", "ivf", "mivf", "saline", "oral"})
GAVE = frozenset({"gave", "given", "give", "got", "had", "took", "diuresed", "with"})
CHANGED = frozenset({"changed", "change", "changes"})
CHANGED_THINGS = frozenset(
    {
        "ostomy",
        "linen",
        "linens",
        "brief",
        "briefs",
        "diaper",
        "nappy",
        "gown",
        "sheets",
        "dressing",
        "dressings",
    }
)
PAIRS = frozenset(
    {("ct", "scan"), ("ct", "head"), ("ct", "brain"), ("ct", "angio"), ("ct", "abdo"), ("bladder", "scan")}
    | {("tube", "feeds"), ("tube", "feed"), ("tube", "feeding"), ("vanc", "level")}
)
"""Two words that name another thing, where one alone may be ours."""
ON = frozenset({"on", "with", "at", "after", "when", "during"})
"""Behind the second value of a score: "0 at rest 5 on coughing"."""
SUBJECTS = frozenset(
    {
        "he",
        "she",
        "he's",
        "she's",
        "hes",
        "shes",
        "pt",
        "patient",
        "man",
        "lady",
        "woman",
        "gentleman",
        "girl",
    }
    | {"boy", "baby", "guy"}
)
UNNAMED = frozenset(
    {"he", "she", "hes", "shes", "pt", "patient", "man", "lady", "woman", "girl", "boy", "baby"}
)
"""Behind these alone a number may be a bed or a level: "pt 12"."""
AGED = frozenset({"is", "was", "aged", "age", "only", "just", "turned", "a", "an"})
YEARS = frozenset(
    {"yo", "yr", "yrs", "year", "years", "y", "months", "month", "weeks", "wks", "old", "/", "o"}
    | {"days", "wk", "mo", "mos"}
)
SAY_AGE = YEARS - {"/", "o", "days"}
HAVING = frozenset({"have", "got", "has", "are", "had"})
_REFUSED = """
no nope not nah never or but if sorry make made actually rather versus vs either instead it it's its that
this these those them same above below both i'm think maybe
"""
REFUSED = frozenset(_REFUSED.split())
"""With one of these the number of a clause may be what was told, or put right."""
_FREE = """
hr hrs hour hourly rate per increased decreased increase decrease before after previous last risk noon
midday midnight higher raised held second breathing coughing coughs breathes given due open fall falls
"""
FREE = frozenset(_FREE.split())
"""Words that in such a clause are of the other thing."""
BODY = frozenset(
    {
        "hand",
        "arm",
        "forearm",
        "leg",
        "foot",
        "wrist",
        "ac",
        "antecub",
        "hip",
        "knee",
        "shoulder",
        "eye",
        "ear",
    }
    | {
        "fa",
        "ij",
        "subclavian",
        "femoral",
        "radial",
        "antecubital",
        "elbow",
        "groin",
        "heel",
        "ankle",
        "thigh",
        "calf",
        "thumb",
        "finger",
        "toe",
    }
)
"""Behind a side: whose it is, and no tube's."""
