"""What a check of the system finds, and reasons and weights; phrases as in `cues`."""

from __future__ import annotations

# fmt: off

CHECKS: dict[str, tuple[str, ...]] = {
    "seal": (
        "(topped|refilled|topped it) to", "(water's|waters|water is) at",
        "(topped|filled|refilled|topped it|filled it) (up|off|back|back up) to",
        (
            "(seal|water seal|waterseal|seal chamber|ws|seal level|water seal level|water level) (is|"
            "was|) (low|high|up|"
            "now|topped|topped up|filled|refilled|filled up) (at|to|)"
        ),
        "(seal|water seal|seal chamber|water level) (is|was|) (down|dropped|gone down) (at|to)",
        "seal water (down|low) (to|at)", "water in the seal", "seal", "water seal",
        "waterseal", "water-seal", "seal chamber", "water seal chamber", "seal level",
        "water seal level", "ws", "seal is", "water seal is", "underwater seal", "water level", "h2o seal",
        "seal at", "water seal at", "seal water", "waterseal at", "water seal at the", "seal column",
    ),
    "waterseal": (
        "then (on|to|onto|) (ws|water seal|waterseal|gravity)",
        "on water seal", "to water seal", "water seal only", "gravity", "to gravity", "on gravity",
        "on free drainage", "to free drainage",
        "on waterseal", "to waterseal", "water sealed", "no suction", "off suction", "not on suction",
        "to gravity drainage", "without suction", "straight drain", "waterseal only",
        "placed to water seal", "changed to water seal", "put to water seal", "gravity drainage", "on ws",
        "to ws", "ws only", "suction none", "suction zero", "placed on water seal", "now on water seal",
        "to underwater seal", "down to water seal", "back to water seal", "off of suction", "nil suction",
        "dependent drainage", "water seal no suction", "no suction water seal only", "suction gravity",
        "gravity only", "gravity seal", "on water seal only", "on water seal alone",
        "just on water seal", "on h2o seal", "to h2o seal",
    ),
    "suction": (
        "suction (increased|decreased|changed|up|down|reduced|raised|lowered|turned down|turned up) (to|"
        "from)",
        "suction (turned|put) (up|down) to", "dial (turned|put|up|down) (up|down|) (to|at)",
        "(suction|dial) (dialed|dialled|bumped|cranked|weaned|titrated|dropped|lowered) (up|down|) to",
        "suction", "sxn", "suct", "suction at", "suction set at", "suction dial", "dial", "suction is",
        "suction set to", "suction to", "suction dial at", "sx", "on suction", "suction level",
        "suction of", "to suction", "lws", "lcs", "dial at", "dial on", "dialed to", "dialled to",
        "dialed up to", "dialed down to", "dialled up to", "dialled down to", "dialed back to",
        "dialled back to",
        "dial suction", "suction control", "sux", "suction chamber", "suction pressure", "suction set",
        "dial set at", "dial set to", "suction regulator dial", "cont suction", "continuous suction",
        "low suction", "to suction at", "dry suction", "suction dial set to",
        "suction now", "suction now at", "suction currently", "suction remains at", "suction remains",
        "(suction|sxn) (dial|gauge|regulator|) (reads|reading|shows|showing|says|sits|measures) (at|)",
        "(gentle|gently|) (bubbling|bubbles|bubble) (away|nicely|well|gently|) (in|on|at) (the|) suction "
        "(control|chamber|side|column)",
        "suction (control|) (chamber|column) (is|) (gently|) (bubbling|bubbles)",
    ),
    "wall": (
        "(wall|suction|vacuum) reg (is|was|) (at|on|set at|set to|reads|reading|only|down to|)",
        (
            "(wall|wall suction|wall vacuum|wall gauge|regulator|vacuum) (is|was|has|) (now|only|still|) "
            "(down|up|dropped|drops|fell|fallen|sitting|sits|turned up|turned down|gone up|gone down) "
            "(at|to)"
        ),
        "wall", "wall suction", "wall vacuum", "vacuum", "regulator", "wall at", "wall suction at",
        "wall currently",
        "wall regulator", "wall gauge", "wall is", "wall set at", "wall pressure", "wall suction is",
        "wall vac", "vac", "vacuum at", "regulator at", "gauge", "source suction", "suction source",
        "wall source", "wall set to", "wall suction set to", "wall suction set at", "wall outlet",
        "wall sxn", "wall reading", "suction regulator", "vacuum regulator", "gauge at",
    ),
    "leakgrade": (
        "al",
        "leak grade", "air leak grade", "grade", "leak score", "leak of", "air leak of", "leak level",
        "air leak level", "leak scale", "air leak score", "leak at", "air leak at", "leak chamber",
        "air leak meter", "leak meter", "al grade", "leak is grade", "air leak is grade", "leak column",
        "air leak column", "leak stage",
    ),
    "leak:none": (
        "none leaking", "none are leaking", "none of them leaking", "neither leaking", "neither is leaking",
        "none bubbling", "neither bubbling", "none of them bubbling",
        "stopped bubbling", "has stopped bubbling", "stopped leaking air", "not bubbling any more",
        "(topped|refilled|topped it) to",
        (
            "(al|a/l|air leak|leak|airleak|bubbling|bubbles|bub) (is|was|:|-|=|) (neg|negative|nil|none|no|"
            "absent|gone|stopped|ceased)"
        ),
        (
            "(air leak|leak|bubbling|bubbles) (has|have|had|) (now|) (gone|stopped|ceased|resolved|"
            "settled|sealed)"
        ),
        "(no|nil|neg|negative) (al|a/l|bub|airleaks)",
        "no (leak|air leak|bubbling|bubbles|al) even (with|w|on) (cough|coughing)",
        "nil (bubbling|bubbles|bubble|airleak)",
        "no leak", "no air leak", "without leak", "without air leak",
        "no bubbling", "no bubbles", "nothing bubbling", "none bubbling", "neg leak", "negative leak",
        "nil leak", "nil air leak", "leak free", "no leaks", "no air leaks", "negative for air leak",
        "negative for leak", "no leak noted",
        "no airleak", "not bubbling", "not leaking air",
        "no leak seen", "no leak present", "no air leak noted", "no air leak present", "no air leak seen",
        "zero leak", "zero air leak",
        "no more leak", "no longer leaking", "neg air leak", "negative air leak", "no obvious leak",
        "no obvious air leak", "no visible air leak", "no evidence of air leak", "denies leak",
        "no sign of leak", "no new leak",
        "no further leak", "no further air leak", "no bubbling noted", "no bubble",
        "no active leak", "no active air leak", "no leak today", "leak none noted",
        "isn't leaking air", "is not leaking air", "isn't bubbling", "is not bubbling",
    ),
    "leak:intermittent": (
        "(al|a/l) (with cough|on cough|intermittent|int|occasional)",
        "(intermittent|int|occasional) (al|a/l)",
        (
            "(intermittent|occasional|int|intermit|on and off|off and on|sporadic) (air|) (leak|bubbling|"
            "bubbles)"
        ),
        (
            "(air leak|leak|bubbling|bubbles|airleak) (is|) (intermittent|intermittently|occasional|"
            "occasionally|on and off|with cough|on cough|with coughing|on coughing|on expiration|with "
            "expiration|on exhalation|only with cough|when coughing|when he coughs|when she coughs|only on "
            "coughing|only when coughing|with cough only|on cough only|with deep breath|on forced expiration|"
            "sporadic|comes and goes|off and on)"
        ),
        "(bubbles|leaks|bubbling|leaking) (with|on|when) (cough|coughing|expiration|exhalation)",
        "(leak|air leak|bubbling|bubbles|leaks) (only|) when (coughs|coughing)",
    ),
    "leak:continuous": (
        "(al|a/l) (continuous|constant|cont)", "(continuous|constant|cont) (al|a/l)",
        "bubbling in (the|) (water seal|seal|chamber|seal chamber) (constantly|continuously)",
        (
            "(continuous|constant|continual|cont|persistent|steady|nonstop|non-stop) (air|) (leak|bubbling|"
            "bubbles)"
        ),
        (
            "(air leak|leak|bubbling|airleak) (is|) (continuous|constant|continual|continuously|constantly|"
            "cont|persistent|steady|nonstop|non-stop)"
        ),
        "bubbles continuously", "constantly bubbling", "(constant|continuous|steady) stream of bubbles",
        "continuously bubbling", "leaking continuously",
    ),
    "leakhow:continuous": (
        "constantly", "continuously", "nonstop", "non-stop", "all the time", "constant", "continuous",
    ),
    "leakhow:intermittent": (
        (
            "(only|just|) (with|w|on|when|during) (the|a|deep|forced|) (cough|coughing|coughs|"
            "expiration|exhalation|exhale|exhaling|breath|"
            "inspiration) (only|)"
        ),
        "when (he|she|pt|patient) coughs", "intermittently", "occasionally", "on and off", "off and on",
        "now and then", "comes and goes", "intermittent", "occasional",
    ),
    "leak:present": (
        "al", "a/l", "+ (al|a/l)", "(leak|air leak|bubbling|bubbles) (is|) pos",
        "(small|large|new|continuous) (al|a/l)",
        "(al|a/l|bub) (pos|positive|present|yes|+)", "bub", "bubbling away",
        "air leak", "leak", "leak present", "air leak present", "has a leak", "has an air leak",
        "positive leak", "new leak", "new air leak", "bubbling", "bubbles", "small leak", "small air leak",
        "large leak", "large air leak", "positive air leak", "leak noted", "air leak noted", "airleak",
        "pos leak", "pos air leak", "moderate air leak", "moderate leak", "leak yes", "air leak yes",
        "leak positive", "air leak positive", "big air leak", "tiny air leak", "slight air leak",
        "slight leak", "still has a leak", "still has an air leak", "leaking air", "leak is present",
        "air leak is present", "with air leak", "has leak", "has air leak", "big leak", "+ leak",
        "+ air leak", "leak +", "air leak +", "minimal air leak", "mild air leak",
    ),
    "tidal:yes": (
        "tid +", "+ tid", "tid yes",
        "(tidaling|tidalling|swinging|swing|oscillation|fluctuation|tid) (is|) (positive|pos)",
        "(positive|pos) (tidaling|tidalling|swinging|swing|oscillation|fluctuation|tid)",
        "(tidaling|tidalling|fluctuating|oscillating) (nicely|gently)", "swinging away",
        "tidaling", "tidalling", "swinging", "swing", "oscillating", "fluctuating", "tidaling present",
        "tidaling well", "swinging well", "is tidaling", "still tidaling", "still swinging",
        "good tidaling", "good swing", "tidal", "tidaling noted", "swing present", "tidals", "fluctuation",
        "fluctuation present", "tidaling yes", "swinging nicely", "tidaling good",
        "oscillation present", "swings", "fluctuates", "tidaling with breathing",
        "tidaling with respirations", "tidaling ok", "oscillation", "oscillates",
        "swinging with respirations", "respiratory swing", "swinging yes", "swing yes", "tidling",
        "tideling", "tidaling +", "+ tidaling", "tidaling is present", "seal tidaling",
        "water seal tidaling", "tidaling in seal",
        "(column|water column|water level) (is|) (moving|oscillating|swinging|fluctuating) (well|nicely|)",
    ),
    "tidal:no": (
        "tid -", "- tid", "no tid", "column (is|) (not|isn't|isnt) moving",
        "(tidaling|tidalling|swinging|swing|oscillation|fluctuation|tid) (is|) (negative|neg)",
        "(negative|neg) (tidaling|tidalling|swinging|swing|oscillation|fluctuation|tid)",
        (
            "(tidaling|tidalling|swing|swinging|oscillation|fluctuation) (has|is|) (absent|stopped|"
            "lost|gone|none|nil)"
        ),
        "no tidaling", "no tidalling", "not tidaling", "not swinging", "no swing",
        "stopped tidaling", "stopped swinging", "no swinging", "no oscillation",
        "no fluctuation", "not fluctuating", "not oscillating",
        "no longer tidaling", "no longer swinging", "isn't tidaling", "isn't swinging", "is not tidaling",
        "lost tidaling", "without tidaling", "tidaling no",
        "not tidalling", "no tidal", "not tidaling anymore",
        "has stopped tidaling", "has stopped swinging", "is not swinging",
        "nil tidaling", "nil swing",
        "ceased tidaling", "no more tidaling", "no more swinging",
        "no fluctuations",
    ),
    "fluid:serous": (
        "serous", "straw colored", "straw coloured", "straw", "straw-colored", "serious fluid",
        "clear yellow", "serous fluid", "sero",
    ),
    "fluid:serosanguineous": (
        "serosanguineous", "serosanguinous", "serosang", "sero sang", "serosanginous", "sero-sanguineous",
        "serosanguinious", "haemoserous", "hemoserous", "ss", "ss drainage", "serosanguinos", "sero-sang",
        "sero sanguineous", "sero sanguinous", "serosangineous", "serosanguenous", "sero-sanguinous",
        "serous sanguineous", "serous sanguinous", "serosanguineus", "serosanguineious", "blood tinged",
        "blood-tinged",
    ),
    "fluid:sanguineous": (
        "sanguineous", "sanguinous", "sanguin", "sang", "bloody", "frank blood", "frankly bloody", "blood",
        "sanguinious", "blood stained", "bloodstained", "blood-stained", "hemorrhagic", "haemorrhagic",
        "grossly bloody", "bloody drainage", "bloody fluid",
    ),
    "fluid:purulent": (
        "purulent", "pus", "haemopurulent", "hemopurulent", "puss", "purulant", "seropurulent", "pus like",
        "purulent fluid",
    ),
    "fluid:chylous": (
        "chylous", "milky", "chyle", "milky white", "chylus", "milky fluid", "milky drainage", "chyle leak",
        "chylous leak",
    ),
    "fluid:bright_red": (
        "bright red", "bright red blood", "bright red bloody", "bright-red", "brb", "bright blood",
        "cherry red", "cherry red blood",
    ),
    "fluid:dark_red": (
        "dark red", "dk red", "dk blood", "dk bloody", "maroon", "burgundy",
        "old blood", "dark red blood", "dark blood", "dark bloody", "dark-red",
        "dark red bloody", "dark old blood",
    ),
    "indicator:in_range": (
        "suction indicator in range", "indicator in range", "bellows expanded", "indicator ok",
        "indicator good", "suction indicator ok", "indicator up", "float up", "float in range", "in range",
        "bellows up", "bellows out", "suction indicator good", "bellows expanded to the mark",
        "indicator expanded", "bellow expanded", "indicator is in range", "bellows are expanded",
        "suction indicator is in range", "suction float up", "suction indicator up",
        "suction indicator expanded", "bellows is expanded", "bellows in range", "bellows ok",
        "bellows inflated", "indicator showing", "indicator visible", "suction indicator visible",
        "float visible", "(suction indicator|indicator|bellows|float) (is|) in (the|) window",
    ),
    "indicator:not_in_range": (
        "suction indicator not in range", "indicator not in range", "bellows not expanded",
        "indicator down", "indicator out of range", "not in range", "suction indicator down",
        "bellows down", "bellows collapsed", "out of range", "indicator not up", "float down",
        "suction indicator out of range", "indicator not expanded", "bellows not out", "bellows not up",
        "bellow not expanded", "indicator is not in range", "bellows are not expanded",
        "suction indicator is not in range", "suction indicator not expanded", "float not up",
        "bellows flat", "(suction|) indicator (isn't|isnt) in range",
        "(indicator|bellows|float) (is not|isn't|isnt|not) in (the|) window",
        "bellows aren't expanded", "bellows is not expanded", "bellows isn't expanded",
        "bellows not inflated", "indicator low", "suction indicator low", "indicator off",
        "bellows not in range", "float not in range", "suction float down", "indicator not visible",
    ),
    "kg": ("kg", "kgs", "kilos", "kilo", "kilograms", "kilogram"),
    "weight": ("weight", "weighs", "wt", "weighing", "weight is", "weighed"),
    "lb": ("lb", "lbs", "pounds", "pound"),
    "cm": (
        "cm", "cms", "centimeters", "centimetres", "cmh2o", "cm h2o", "cm of water", "centimeters of water",
        "cm water", "centimetres of water", "centimeter", "centimetre", "cm of h2o", "centimeters h2o",
        "cmh20", "cm h20",
    ),
    "mmhg": (
        "mmhg", "mm hg", "millimeters of mercury", "mm", "millimetres of mercury", "mm of mercury",
        "millimeters mercury", "torr",
    ),
    "reason:cardiac": (
        "(after|post|post op|) open heart surgery",
        "cabg", "heart surgery", "post op heart", "post-op heart", "postop heart", "valve", "open heart",
        "cardiac surgery", "cardiac", "bypass", "valve replacement", "avr", "mvr", "sternotomy",
        "post cabg", "post heart", "heart", "post op cabg", "s/p cabg", "post op valve", "bypass surgery",
        "post cardiac surgery", "post op cardiac", "valve surgery", "heart bypass", "valve repair",
        "fresh (post op|post-op|postop|open|) (heart|cabg|valve|avr|mvr)",
        "after heart surgery", "aortic valve", "mitral valve",
        "coronary bypass", "open-heart", "after cabg", "post-cabg", "post-op cabg", "vsd repair", "cabbage",
        "postop cabg", "mitral valve repair", "aortic valve replacement", "post open heart",
        "heart transplant",
    ),
    "reason:lung": (
        (
            "(removed|resected|took out|taken out) (a|the|one|part of the|part of a|his|her|) "
            "(left|right|upper|lower|middle|) (lobe|lung|segment)"
        ),
        "lobectomy", "lung surgery", "post op lung", "vats", "thoracotomy", "wedge resection",
        "pneumonectomy", "lung resection", "post lobectomy", "lung", "wedge", "decortication",
        "post op lobectomy", "segmentectomy", "s/p lobectomy", "post vats", "lung biopsy", "post-op lung",
        "postop lung", "thoracic surgery", "post-op lobectomy", "post thoracotomy", "after lobectomy",
        "bullectomy", "s/p vats", "lung volume reduction", "after lung surgery", "post lung surgery",
        "postop lobectomy", "post op vats",
    ),
    "reason:trauma": (
        "(stab|penetrating|blunt|crush|thoracic|gunshot|blast) injury",
        "hemothorax", "haemothorax", "htx", "trauma", "injury", "stab wound", "gsw", "stabbing", "mva", "mvc",
        "rib fractures", "gunshot", "hemo", "stab", "gunshot wound", "rib fracture", "hemopneumothorax",
        "haemopneumothorax", "chest trauma", "blunt trauma", "car accident", "fall with rib fractures",
        "hemothorx", "rta", "rtc", "road traffic accident", "penetrating trauma", "chest injury", "stabbed",
        "hemo pneumo",
        "motor vehicle accident", "traumatic",
    ),
    "reason:effusion": (
        "effusion", "pleural effusion", "empyema", "malignant effusion", "effusions",
        "parapneumonic effusion", "pleural fluid", "malignant pleural effusion", "pleural effusions",
        "parapneumonic",
    ),
    "reason:air": (
        "pneumothorax", "pneumo", "ptx", "collapsed lung", "spontaneous pneumothorax",
        "tension pneumothorax", "air", "spontaneous pneumo", "pnuemothorax", "pneumothorx",
        "tension pneumo", "spont pneumo", "spontaneous ptx",
    ),
}
# fmt: on
