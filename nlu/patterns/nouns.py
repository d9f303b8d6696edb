"""Nouns and little words in all their variants, to be built into phrases."""

from __future__ import annotations

CAN = (
    "(canister|cannister|box|chamber|bottle|system|drain|collector|reservoir|unit|canisters|cannisters|"
    "collection chamber|drainage system|drainage unit|drainage box|drain box|drain unit|collection box|"
    "collection unit|collection canister|drain canister|drainage canister|chest drain|pleural drain|can)"
)
TUBE = (
    "(tube|chest tube|ct|drain|chest drain|chesttube|pigtail|catheter|tubes|chest tubes|icd|intercostal "
    "drain)"
)
THE = "(the|her|his|their|this|that|a|my|our|)"
BE = "(is|was|are|has been|been|were|)"
BOX = "(canister|cannister|box|chamber|bottle|system|drain|unit|chest drain|collector)"
PROVIDER = (
    "(md|dr|doc|doctor|doctors|provider|pa|np|surgeon|surgeons|surgery|team|surgical team|reg|registrar|"
    "surgical reg|spr|sho|mo|consultant|resident|thoracics|ct surgery|thoracic surgery|cards|"
    "attending|fellow)"
)
"""Who orders."""
ELSEWHERE = (
    "(icu|itu|hdu|sdu|pcu|picu|nicu|ccu|cvicu|sicu|micu|cticu|stepdown|step down|step-down|the icu|the itu|"
    "the hdu|the ccu|the floor|the ward|floor|ward|telemetry|tele|medicine|med surg|"
    "intensive care|high dependency|critical care|another ward|another unit|another floor|"
    "another hospital|a different unit|the stepdown unit|stepdown unit|the surgical ward|the medical ward)"
)
"""Where a patient goes for good."""
OUT = (
    "(ct|c t|scanner|the scanner|the ct|ct scan|a ct|a ct scan|cat scan|mri|an mri|xray|x-ray|x ray|"
    "an xray|chest xray|cxr|a cxr|radiology|"
    "theatre|theater|ot|or|the or|cath lab|surgery|dialysis|ir|endo|endoscopy|echo|an echo|scan|a "
    "scan|ultrasound|"
    "imaging|procedure|a procedure|recovery|pacu|angio|bronch|bronchoscopy|a bronch|physio|nuc med|"
    "pet|test|tests|"
    "a test|a walk|walk|shower|the toilet|toilet|the bathroom)"
)
"""Where a patient goes for a while."""
