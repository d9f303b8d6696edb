"""Words of remarks that never say what a number beside them is."""

from __future__ import annotations

from .smalltalk import TALK

_WORDS = """
today tonight ok fine well good thanks thank comfortable resting
sleeping stable family visiting wife husband daughter son mom dad hi hey hello evening
morning afternoon night again finally late slow steady steadily yet ago only exactly exact total sharp
when came fresh these those forgot forgotten missed catching catchup catch up backlog behind charting round
cheerful hungry drowsy anxious
xx xxx xoxo ta slammed swamped because bc cos cuz coz
rounds teatime lunchtime bedtime handover number value my me us our they them team nurse charge shift report
nights hourlies ones settled sore eating alert oriented obs vss entry
initials
gnite nite gn ttyl thx ty tks cheers bye nope
"""
DIRE = frozenset(
    {"bleeding", "bleed", "bleeds", "haemorrhaging", "hemorrhaging", "haemorrhage", "hemorrhage", "crashing"}
    | {"crash", "arrest", "arrested", "arresting", "collapsed"}
)
_CALLS = """
unresponsive unstable hypotensive tachycardic tachy clammy shocked met rrt rapid response code team
emergency urgent urgently asap stat paged bleeped
"""
ALARMS = DIRE | frozenset(_CALLS.split())
"""Words of alarm: who calls for help still tells the line."""
REMARKS = TALK | ALARMS | frozenset(_WORDS.split())
_GREETINGS = """
good morning afternoon evening night day hi hey hello all everyone everybody crew team folks guys ladies
merry happy xmas christmas new year holidays easter thanksgiving goodnight goodnite nite bye cheers you
lol lmao haha hahaha hehe year's yall y'all birthday diwali eid hanukkah friday
too to and have a great shift one there ! . , :
ta nice mate love hun
"""
GREETINGS = frozenset(_GREETINGS.split())
"""Words of a greeting: alone they tell and ask nothing."""
GREETING_HEADS = frozenset(
    {
        "morning",
        "evening",
        "afternoon",
        "night",
        "goodnight",
        "goodnite",
        "hi",
        "hey",
        "hello",
        "merry",
        "happy",
    }
    | {"bye", "cheers", "ta", "nice", "nite", "lol", "lmao", "haha", "hahaha", "hehe"}
)
