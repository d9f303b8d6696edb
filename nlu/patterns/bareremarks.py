"""Words of remarks without a number or a subject: "pleasantly confused", "on sips", "heparin given".

Never put here: what a drain is, holds, shows or does, whoever may order or doubt something, and a word that
may be of a line.
"""

from __future__ import annotations

from .otherfigures import COLLECTORS, DRUGS, FILMS, FOOD

_REMARKED = """
sputum phlegm secretions cough coughing breathing exercises inhalation inhaler diet sips npo nbm nil urinal
commode bedpan sheets sheet gown gowns linen paper book magazine crossword door curtain curtains lights
light power break tele telemetry pvcs pacs ectopics skin heels areas position mouthcare care wash bath
sponge shower teeth hair nails socks blanket blankets pillow glasses dentures diabetic cardiac vegetarian
soft puree pleasantly alert oriented drowsy sleepy rousable cheerful chatty settled restless tearful grumpy
lonely bored nauseous nausea itchy thirsty hungry appetite weather raining isolation precautions drops eye
cream lotion mouthwash ointment scds stockings teds spirometry physio therapy thirst constipated bowels
bowel bm bms bnor redness phone tv music radio nap bedtime toileted toileting voiding using refusing wearing
"""
REMARKED = (frozenset(_REMARKED.split()) | DRUGS | FILMS | FOOD | COLLECTORS) - {"catheter", "bottle"}
"""One of these says of what a remark is."""
_REFUSED = """
out off wants want wanted says said say ordered orders order asked asks asking need needs needed reports
should would could must can will told ready due stop stopped start started hold held open opened close
closed from via through into with again than only instead back home left right gone
"""
REFUSED = frozenset(_REFUSED.split())
"""With one of these it may be of the drain, or of what was told."""
BESIDE = {
    "reading": frozenset({"paper", "book", "magazine", "bible", "news"}),
    "changed": frozenset({"position", "linen", "sheets", "gown", "socks", "pad", "pads"}),
    "change": frozenset({"position", "linen", "sheets", "gown", "socks", "pad", "pads"}),
    "clear": frozenset({"fluids", "diet"}),
    "fluids": frozenset({"clear", "thin", "thickened", "oral"}),
    "room": frozenset({"side", "isolation"}),
    "side": frozenset({"room"}),
    "closed": frozenset({"door", "curtain", "curtains"}),
    "ordered": frozenset({"diet", "dinner", "lunch", "breakfast", "meal"}),
    "breathing": frozenset({"deep", "exercises"}),
    "coughing": frozenset({"deep", "exercises", "sputum", "phlegm"}),
    "cough": frozenset({"strong", "weak", "good", "productive", "dry", "wet"}),
    "with": frozenset({"physio"}),
    "still": frozenset({"asleep", "sleeping"}),
    "pressure": frozenset({"areas"}),
    "catheter": frozenset({"care"}),
    "back": frozenset({"care"}),
    "wants": frozenset({"dinner", "lunch", "breakfast", "tea", "coffee", "food"}),
    "drops": frozenset({"eye", "ear"}),
    "light": frozenset({"bathroom", "corridor", "toilet"}),
    "out": frozenset({"light", "lights"}),
    "charted": DRUGS,
    "started": DRUGS,
    "held": DRUGS,
    "due": DRUGS,
    "dry": frozenset({"cough", "skin", "mouth"}),
    "midnight": frozenset({"npo", "nbm", "fasting", "fasted"}),
    "it": frozenset({"pca"}),
}
"""Words that are of no drain beside one of these in the same clause."""
DENIED = frozenset({"no", "nil"})
"""Right before what is remarked these deny nothing of a drain."""

POLITE = frozenset({("thanking", "you"), ("g'day",), ("gday",), ("g'day", "all")})
"""Whole remarks of whoever writes."""
WISHING = frozenset(
    {"hoping", "hopeful", "hopes", "keen", "wants", "wanting", "excited", "eager", "desperate"}
)
_WISHED = """
for to go home soon going be getting get about discharge tomorrow today very so really asap back tonight
"""
WISHED = WISHING | frozenset(_WISHED.split())
"""Who hopes to go home has not gone."""
BUSY = frozenset({"busy", "swamped", "slammed"})
AMID = {
    "another": frozenset({"with", "helping"}),
    "other": frozenset({"with", "helping"}),
    "charging": frozenset({"phone"}),
    "held": frozenset({"up"}),
    "tied": frozenset({"up"}),
    "caught": frozenset({"up"}),
    "stuck": frozenset({"in", "with", "helping"}),
}
"""With one of these behind it, each says why a message comes late; "was the other pt" may say of whom."""
_EXCUSES = """
sorry apologies was were been got i i've ive i'm just with pt pts patient patients up in an a the my phone
helping admission code for late
"""
EXCUSES = BUSY | AMID.keys() | frozenset(_EXCUSES.split())
"""Why a message comes late."""
