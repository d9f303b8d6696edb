"""What is not ours, is denied, planned or hoped for, and the words that say nothing; phrases as in `cues`."""

from __future__ import annotations

OTHER: dict[str, tuple[str, ...]] = {
    "other": (
        "urine", "foley", "urine output", "uop", "u/o", "uo", "void", "voided", "urinary", "jp", "jp drain", "ng", "ngt", "ng tube",
        "ng output", "og", "og tube", "peg", "peg tube", "gastric", "emesis", "vomit", "vomited", "stool", "ostomy", "ileostomy", "colostomy", "rectal tube", "evd",
        "lumbar drain", "wound vac", "penrose", "biliary drain", "t tube", "nephrostomy", "abdominal drain", "feeding tube", "dobhoff", "et tube",
        "ett", "trach", "intake", "po intake", "oral intake", "iv", "iv fluid", "ivf", "bolus", "tube feed", "tube feeds", "tube feeding", "paracentesis", "thoracentesis",
        "catheter output", "foley catheter", "cbi", "dialysis removed", "ultrafiltration", "ns", "saline", "fluid bolus", "dialysis output", "chole tube", "surgical drain",
        "bp", "blood pressure", "hr", "heart rate", "pulse", "sats", "sat", "spo2", "o2", "oxygen", "temp", "temperature", "rr", "resp rate", "respiratory rate", "map",
        "cvp", "systolic", "diastolic", "pressure", "pain", "pain score", "pain level", "glucose", "sugar", "bg", "blood sugar", "fsbs", "accucheck", "hgb", "hemoglobin",
        "haemoglobin", "hct", "hematocrit", "inr", "potassium", "sodium", "na", "creatinine", "creat", "bun", "lactate", "wbc", "platelets", "plt", "troponin", "ph",
        "pco2", "po2", "abg", "fio2", "peep", "tidal volume", "magnesium", "calcium", "gcs", "inr", "ptt", "insulin", "heparin", "lasix", "drip rate", "pump", "morphine",
        "fentanyl", "tylenol", "phone", "ext", "extension", "pager", "page", "call me at", "call back", "callback", "reach me at", "mrn", "phone number", "pager number",
        "central line", "art line", "arterial line", "picc", "picc line", "a line", "a-line", "drain care", "weight loss", "dressing", "dressing changed", "dressing change",
        "bmp", "cbc", "nasogastric", "aline", "cell", "text me at", "room air", "nasal cannula", "liters of oxygen", "liters nc", "l nc", "l o2", "lpm", "age", "yo", "years old",
        "year old", "y/o", "braden", "residual", "residuals", "gastric residual", "platelet", "albumin", "bilirubin", "ca", "mag", "phosphorus", "inspiratory", "is volume",
        "incentive spirometer", "incentive spirometry", "lumbar", "ventric", "external ventricular drain", "epidural", "pca", "blood loss", "ebl", "transfused", "units of blood",
        "prbc", "prbcs", "urinal", "bedpan", "condom cath", "purewick", "straight cath", "bladder scan", "drank", "ate", "lunch", "dinner", "breakfast", "juice", "water intake",
        "accordion drain", "davol", "cholecystostomy", "j tube", "g tube", "gj tube", "ultrasound", "vent", "ventilator", "dose", "doses", "tablets", "vitals", "nausea",
        "peripheral iv", "cc/hr of", "infusing", "infusion", "infused", "running at", "drip", "gtt", "antibiotic", "antibiotics", "fever", "febrile", "tmax", "co2", "etco2", "lab",
        "labs", "parking", "locker", "door code", "code is", "fax", "zip", "room temp", "bair hugger", "icp", "cpp", "sao2", "osat", "o2 sat", "o2 sats", "bicarb", "chloride",
        "chest xray", "cxr", "appointment", "meeting", "lumbar puncture", "drsg", "wound drain", "wound", "incision", "hip drain", "abd drain", "knee drain", "neck drain", "breast drain",
        "back drain", "surgical site drain", "bile", "bile drain", "pancreatic drain", "perc drain", "pelvic drain", "liver drain", "spinal drain", "urine out", "ureteral stent",
    ),
    "plan": (
        "goal", "target", "will be", "should reach", "expect", "expecting", "expected", "if it", "if the", "if he", "if she", "when it reaches", "when it hits", "when it gets to",
        "call if", "notify if", "plan to", "plan is", "planning", "going to", "aim", "aiming", "hoping", "hope", "want it under", "wants it under", "let me know if", "let me know when", "tell me when", "unless",
        "until it", "once it", "once the", "limit", "threshold", "parameters", "will change", "will mark", "will remove", "will pull", "gonna", "would be", "might be", "might", "could be", "may be",
        "anticipate", "anticipated", "supposed to", "will", "tomorrow", "due to be", "to be removed", "to be pulled", "to be changed", "later", "next hour", "if output", "if drainage", "call md if", "call md for",
        "call for", "report if", "report over", "notify md if", "notify md for", "notify for", "call surgeon if", "scheduled", "in case", "for removal", "remove when", "pull when", "pull if", "remove if",
        "can be removed", "can come out", "needs to be changed", "needs changing", "need to change", "needs to come out", "ready to come out", "change it at", "change at", "change when", "want", "wants to", "i'll",
        "remind me", "reminder", "i think", "guess", "probably", "assume", "assuming", "hopefully", "if", "suppose", "needs to be", "about to", "ready to", "ready for", "soon", "should drain", "might need", "want to", "planned", "we'll", "we will", "would like", "alert me", "warn me", "aiming for", "keep under", "keep it under", "keep below", "no more than", "less than", "more than", "greater than", "at least", "at most", "over", "under", "below", "not more than", "max", "maximum", "minimum", "min of",
        "plans", "plan", "possibly", "perhaps", "not sure", "unsure", "i believe", "supposedly", "looks like maybe", "could have been", "hypothetically", "what if", "pretend", "for example", "e.g.", "example", "test message", "should be under", "should be at", "should be around",
        "predicted", "projected", "estimate by", "to come out", "consider", "considering",
    ),
    "neg": (
        "not", "don't", "didn't", "did not", "do not", "hasn't", "haven't", "has not", "have not", "wasn't", "isn't", "is not", "was not", "never", "don't chart", "do not chart", "won't",
        "without", "didnt", "dont", "cannot", "can't", "couldn't", "unable", "unable to", "nobody", "hasnt", "havent", "doesnt", "wasnt", "isnt", "wont", "cant", "doesn't", "neither", "none of", "did'nt", "weren't", "aren't", "not yet", "no one", "not been", "refused", "denies", "deny",
    ),
    "repair": (
        "i mean", "sorry", "wait", "rather", "no wait", "or rather", "oops", "no sorry", "no i mean", "wait no", "sorry no", "actually no", "whoops", "no actually", "no make that",
        "my bad", "excuse me", "no no", "no scratch that", "hang on", "hold on", "no correction", "er no", "check that", "no strike that", "uh no", "um no",
    ),
    "or": ("or", "either", "versus", "vs"),
    "negative": ("minus", "negative"),
    "filler": (
        "same time", "at the same time", "as of", "tubing", "the tubing", "both", "each", "time now",
        "uh", "um", "okay so", "er", "ah", "please", "hey", "hi", "so", "well", "like", "hello", "hmm", "uhm", "erm", "thanks", "thank you", "good morning", "good evening", "good afternoon",
        "um so", "you know", "yo", "thx", "ty", "pls", "plz", "mm", "mmm", "eh", "uhh", "umm", "hm", "alright", "all right", "let's see", "lets see", "let me see", "just", "got", "have", "has", "had", "i", "we", "it", "he", "she",
        "its", "it's", "that's", "fyi", "hiya", "penline", "bot", "note", "log", "record", "enter", "put", "add", "save", "chart please", "the", "a", "an", "my", "his", "her", "their", "pt", "patient", "pts", "patients", "this", "that",
        "is", "was", "are", "were", "be", "been", "of", "with", "in", "on", "for", "from", "to", "currently", "side", "and", "good", "great", "some", "new patient", "also", "here", "there", "there's", "now showing", "still", "at", "by",
        "mr", "mrs", "ms", "the patient in", "patient's", "set", "setting", "fluid", "fluids", "color", "colour", "looks", "looking", "drainage color", "appears", "noted", "per nurse", "recorded", "taken", "checked", "check",
    ),
}
