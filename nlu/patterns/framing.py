"""Words of what stands around lines and tells nothing of them: who writes, why so late, that they go home.

A whole clause of these, without a number, is left out where a message would be asked. Never put here: a word
that doubts, denies, puts right or hopes, that says of what a number is, or which line ends a shift.
"""

from __future__ import annotations

from .remarks import GREETINGS
from .smalltalk import TALK

_WHO = """
i me we us my our the a an it its this these that there here is are am
was been be being and for from of in on with to at all every
nights days evenings lates earlies nightshift dayshift shift shifts nurse rn charge agency float floating
bank student orientee preceptor incoming outgoing oncoming relief relieving covering cover coming checking
ward floor unit's team's take takes over taking start starting top down before run because her him
them order back whole pod side unit wing
hall section assignment rest ready ok pen logging lateness one by walking rounding
"""
_WHY = """
late delay delayed wait waiting behind catching catch catchup caught up code codes crash arrest
admission admissions admit admits rapid rapids break breaks lunch dinner supper tea coffee meeting huddle
slow long short staffed understaffed shortstaffed wild nuts chaos mad slammed swamped
computer computers wifi network phone phones tablet battery died dead frozen crashed finally
morning afternoon evening night tonight today day
"""
_WHAT = """
numbers number readings lines marks lot report
reports handover handoff handing hand giving doing done finished finish finishing wrapping complete update
updates round rounds hourly hourlies hrly hour hours hr tubes drains beds patients pts everything way
goes go going quick endorse endorsing endorsed endorsement arvo
"""
_FAREWELL = """
bye cheers thanks thank ta ty thx see seeya later soon tomorrow monday tuesday wednesday thursday friday
saturday sunday week weekend home off out now duty work signing heading headed clocking clocked logging
leaving leave until till what luck hope call text page if any issues questions problems
drive safe sleep peace laters knock knocking touch touching wood fingers crossed
clock clocks went back forward ahead changed change dst daylight saving savings time can have great
"""
_LOADED = """
total only ago same when again approx exactly value nope easily literally truly right left together slowly
quickly suddenly strong weak dude easy
"""
AROUND = frozenset(" ".join((_WHO, _WHY, _WHAT)).split()) | TALK | GREETINGS
HEAD_ONLY = frozenset({"sorry", "apologies"})
"""Behind a line they may take it back."""
AROUND -= frozenset(_LOADED.split()) | HEAD_ONLY | frozenset({"!", ".", ":", ","})
FAREWELL = frozenset(_FAREWELL.split())
"""Only behind the last number: before it they may say when that is."""
SELF = frozenset(
    {"i", "i'm", "im", "i've", "ive", "i'll", "me", "my", "we", "we're", "nights", "days", "we'll"}
)
"""With one of these it is the nurse who goes, and nobody in a bed."""
DAYS = frozenset(
    {"tomorrow", "monday", "tuesday", "wednesday", "thursday", "friday", "saturday", "sunday", "weekend"}
)
BREAKS = frozenset({"break", "lunch", "dinner", "supper", "tea", "coffee", "huddle", "meeting", "report"})
MOVING = {
    "off": SELF | {"duty", "shift", "signing", "clocking", "logging", "work", "home"},
    "before": SELF | BREAKS,
    "side": frozenset({"my", "our"}),
    "what": frozenset({"night", "day", "shift", "evening", "week"}),
    "one": frozenset({"by", "go"}),
    "by": frozenset({"one"}),
    "if": frozenset({"call", "text", "page"}),
    "leave": SELF,
    "until": DAYS,
    "till": DAYS,
    "order": frozenset({"in"}),
    "out": SELF | {"peace", "signing", "clocking", "logging"},
    "now": SELF | BREAKS | {"yours", "home", "bye", "handover", "handoff", "over", "taking"},
    "back": SELF | DAYS | BREAKS | {"clock", "clocks"},
    "forward": frozenset({"clock", "clocks"}),
    "ahead": frozenset({"clock", "clocks"}),
    "changed": frozenset({"clock", "clocks", "time"}),
    "change": frozenset({"clock", "clocks", "time"}),
    "went": frozenset({"clock", "clocks"}),
    "down": frozenset({"computer", "computers", "wifi", "network", "phone", "phones"}),
    "up": frozenset({"catching", "catch", "caught", "wrapping", "finishing"}),
    "top": frozenset({"from"}),
    "over": frozenset({"handing", "taking", "take", "takes", "hand", "shift"}),
    "going": SELF | BREAKS | {"here"},
    "leaving": SELF,
    "heading": SELF | {"home", "off"},
    "headed": SELF | {"home", "off"},
    "go": SELF | {"here", "one", "ok", "ready"},
    "died": frozenset({"phone", "battery", "wifi", "tablet", "computer", "network"}),
    "dead": frozenset({"phone", "battery", "tablet"}),
    "crashed": frozenset({"computer", "computers", "tablet", "phone"}),
    "coming": frozenset({"here"}),
    "from": BREAKS - {"report"}
    | {"me", "my", "top", "start", "here", "i'm", "im", "its", "it's", "hi", "hello"},
}
"""Words that could be of a patient or a drain, and what in the same clause says that they are not."""
GOES_HOME = frozenset({"home", "leaving", "heading", "headed"})
PARTS_OF_DAY = frozenset({"morning", "afternoon", "arvo", "evening", "night", "tonight", "today", "day"})
COUNTS = {
    **{word: n for n, word in enumerate(("two", "three", "four", "five", "six", "seven", "eight"), 2)},
    **{str(n): n for n in range(2, 13)},
    "both": 2,
}
BEFORE_COUNT = frozenset(
    {
        "last",
        "remaining",
        "sending",
        "on",
        "other",
        "my",
        "our",
        "the",
        "all",
        "these",
        "got",
        "have",
        "with",
        "your",
        "just",
        "her",
        "next",
    }
)
COUNTED = frozenset(
    {"beds", "patients", "pts", "drains", "lines", "marks", "readings", "updates", "numbers", "rooms"}
    | {"tubes", "ones", "quick", "for", "of", "folks", "more", "others", "to", "log", "send"}
    | {"today", "now"}
)
LEADING = frozenset(
    {"for", "in", "of", "from", "on", "when", "if", "once", "unless", "until", "till", "whether", "because"}
)
"""At the end of a remark these lead to the bed behind it: "let me know when | bed 3 is 340"."""
