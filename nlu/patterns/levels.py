"""What a number of millilitres is: levels, amounts, units; phrases as in `cues`."""

from __future__ import annotations

# fmt: off

LEVELS: dict[str, tuple[str, ...]] = {
    "level": (
        "mark", "marks", "marked", "marking", "mark is", "mark of", "line", "line is", "level", "level is",
        "level of", "reading", "reading is", "reading of", "reads", "read", "measures", "measured",
        "measuring", "fluid level", "drain level", "drainage level", "chest tube level", "tube level",
        "canister level", "canister reads", "canister reading", "marked it", "markd", "mk", "mrk", "lvl",
        "meniscus", "penned", "pen line", "pen mark", "drain reads", "box reads", "chamber reads",
        "chest tube reads", "tube reads", "drain reading", "canister is", "reads as", "reading at the line",
        "ct reads", "ct level", "ct reading", "line reads", "marked level", "ct mark", "chest tube mark",
        "chest tube reading", "tube mark", "tube reading", "drain mark", "canister mark", "shows",
        "showing", "canister shows", "drain shows", "line reading", "mark level", "mark line",
        "reading level", "chest tube line", "tube line", "canister line", "drain line", "line marked",
        "marker", "remarked",
    ),
    "levelat": (
        "is at", "sitting at", "now at", "up to", "it's at", "its at", "sits at", "currently at",
        "is now at", "standing at", "stands at", "we are at", "we're at", "are at", "now up to", "is up to",
        "at the", "'s at", "hit", "is sitting at", "is currently at", "still at", "is still at",
        "canister at", "box at", "chamber at", "has reached", "reached", "filled to", "came up to",
        "got to", "gotten to", "he's at", "she's at", "'s up to", "fluid at", "up at", "is up at", "was at",
        "'s now at",
    ),
    "amount": (
        "drained", "put out", "putting out", "dumped", "another", "drainage of", "drained another",
        "has drained", "has put out", "drained out", "puts out", "came out", "lost", "dumping",
        "draining another", "out another", "additional", "an additional", "another additional", "produced",
        "put out another", "an extra", "extra", "drained about", "output of another", "amount",
        "amount drained", "amount out", "volume", "volume drained", "volume out", "hourly output",
        "hourly drainage", "output this hour", "output for the hour", "output last hour",
        "output in the last hour", "output over the last hour", "hourly output of", "drained a total of",
        "put out a total of", "drained total", "drainage this hour", "output since last",
        "output since last mark", "output since the last", "output since the last mark", "drained only",
        "only drained", "gave", "gave out",
    ),
    "out": (
        "out", "more", "ml more", "of output", "of drainage", "of drainage out", "in output",
    ),
    "output": (
        "output", "outputs", "drainage", "draining", "drain output", "chest tube output", "ct output",
        "tube output", "o/p", "chest tube drainage", "ct drainage", "out put", "total output", "output is",
        "output of", "output was", "total", "total drainage",
    ),
    "same": (
        "same", "no change", "nil out", "unchanged", "no output", "no drainage", "nothing out",
        "nil output", "nil drainage", "no new output", "no new drainage", "zero output", "zero drainage",
        "no further drainage", "no further output", "same as before", "same as last", "same as last time",
        "same as last hour", "no more out", "same level", "same mark", "same line", "level unchanged",
        "no change in level", "no change since last", "no change since last mark", "no change in output",
        "no change in drainage", "nothing new", "no additional output", "no additional drainage",
        "nothing drained", "still the same", "line unchanged", "mark unchanged", "level the same",
        "line the same", "no additional", "nil", "nothing more", "no increase", "has not changed",
        "hasn't changed", "hasn't moved", "has not moved", "level same", "mark same", "mark is the same",
        "same reading", "line is the same", "level is the same", "line has not moved", "no movement",
        "nil since last", "none out", "nothing since last", "nothing since", "no drainage since last",
        "no output since last", "no new fluid", "line hasn't moved", "zero out", "no change to level",
        "no change from last", "same as previous", "same as earlier",
    ),
    "ml": (
        "ml", "mls", "cc", "ccs", "mil", "mils", "milliliter", "milliliters", "millilitre", "millilitres",
        "c c", "m l", "cc's", "ml's", "millilitres", "mills", "mill", "m l s", "cubic centimeters",
        "cubic centimetres",
    ),
    "litre": ("l", "liter", "liters", "litre", "litres", "ltr", "ltrs", "lit"),
    "badunit": (
        "oz", "ounce", "ounces", "cup", "cups", "pint", "pints", "quart", "quarts", "gallon", "gallons",
        "dl", "cl", "deciliters", "g", "grams", "gram", "drops", "teaspoon", "teaspoons", "tablespoons",
        "inches", "inch", "units", "percent", "%", "mg", "mcg", "meq", "fl oz", "fl", "fluid ounces", "tsp",
        "tbsp", "deciliter", "deciliters", "psi",
    ),
    "about": (
        "about", "approx", "approximately", "around", "roughly", "maybe", "almost", "nearly", "just under",
        "just over", "abt", "~", "close to", "ish", "give or take", "or so", "estimate", "estimated", "est",
        "circa", "somewhere around", "approximate", "appx", "aprox", "apprx", "i'd say", "about a",
        "just about",
    ),
    "closing": (
        "end of shift", "closing", "end of shift mark", "end of shift line", "closing line", "closing mark",
        "eos", "shift end", "end shift", "close of shift", "final mark of the shift",
        "last mark of the shift", "final for shift", "last line of the shift", "end of my shift",
        "final mark for the shift", "(final|last) (mark|line|reading|level) (of|for) (my|this) shift",
        "closing out", "closing level", "final line for shift", "end of shift level",
        "end of shift reading", "shift change", "change of shift", "for end of shift", "at end of shift",
        "shift closing", "closing reading", "last mark of my shift", "end-of-shift",
        "final mark of my shift", "last for the shift", "at shift change", "at change of shift",
        "final for the shift", "final mark of shift", "last mark of shift", "last mark for the shift",
        "closing my shift", "end of day shift", "end of night shift", "end of the shift",
        "at the end of shift", "at the end of my shift", "at the end of the shift", "at end of my shift",
        "closing shift", "last of shift", "last of the shift", "final of shift", "shift close",
        "end-of-shift mark", "end-of-shift line", "for the end of shift", "closing the shift",
        "end of shift closing",
    ),
}
# fmt: on
