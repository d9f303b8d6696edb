"""What a sentence says before or behind its line and tells nothing of it, as `prefaced` looks for it.

Patterns over the words of a message, each with a blank between them; signs are words too.
"""

from __future__ import annotations

from .leads import LINES
from .numerals import NUMERALS
from .ownclauses import DRAINS

_FIRST = """
according again asked back beds call can chair coming commode could draining dressing first firstly flowing
forgot forgotten have hope it kind let like may meant me mind must need nothing opened ordered promised put
recliner remembered reopened requested right suction running second secondly should supposed tell then things
told trial updates valve want wanted were clamping would
"""
FIRST = frozenset(_FIRST.split())
"""Without one of these there is no such preface."""
_DO = "(?:(?:please|kindly|just|also) )*"
_WRITE = (
    _DO + r"(?:(?:write|note|put|jot|mark)(?: (?:it )?(?:down|in|up))?|record|report|log|enter|chart|"
    r"document|send|text|mention|add|say|register|tell (?:you|u|them|us)|let (?:you|u) know|"
    r"inform (?:you|u)|pass on|give (?:you|u))(?: that)?"
)
_SAW = "(?:noticed|saw|found|realised|realized|discovered)"
_SENT = "(?:send|sent|text|texted|write|written|report|reported)"
_BOX = "(?:canister|box|bottle|chamber|unit|drain)"
_HOLDER = "(?:box|bottle|canister|chamber|drain|unit|level|line|reading|fluid|it)"
_CALL = "(?:call (?:it|that|this)|put (?:it|that) down as)"
_LINES, _NUMERALS = "|".join(sorted(LINES)), "|".join(sorted(NUMERALS))
PREFACES = (
    rf"(?:i|we)(?: have)?(?: been| was| were| am| are)? (?:asked|told)(?: by [a-z ]{{2,20}}?)? to {_WRITE}",
    rf"(?:i'm|im|i've been|ive been|we've been|we're) (?:asked|told|supposed|meant) to {_WRITE}",
    r"(?:the )?(?:team|doctors?|surgeons?|registrar|consultant|physio) "
    rf"(?:asked|told|want|wanted) (?:me|us) to {_WRITE}",
    rf"(?:i'd|we'd|(?:i|we)(?: would|'d)) (?:just )?like to {_WRITE}",
    rf"(?:i|we) (?:just |only )?(?:want|wanted|need|have) to {_WRITE}",
    rf"(?<!what )(?<!all )(?:i|we) (?:can|must) {_WRITE}",
    r"(?<!what )(?<!how )(?:may|can) i (?:report|record|inform (?:you|u)|tell (?:you|u)|let (?:you|u) know)"
    r"(?: that)?",
    rf"let me {_WRITE}",
    r"(?:(?:the )?[a-z]+ (?:nurse|girl|shift)|i|we|he|she|they|nights|days) (?:only just |just )?"
    r"(?:forgot|forgotten|remembered) to "
    r"(?:mention|say|tell (?:you|u|us|me)|pass on|report|write|note) that",
    r"according to (?:my|our) (?:sums?|maths?|calculations?|notes|sheet|count|own notes)",
    rf"(?:i|we) (?:(?:have )?(?:only|just) )+{_SAW}(?: (?:it|this|that|out))*(?: only| just)? now",
    rf"(?:i|we) {_SAW} (?:it|this|that) (?:only|just) now",
    r"back (?:in|into|on|onto|to) (?:the|his|her|a) (?:chair|recliner|commode)",
    r"(?:onto|on|off) (?:his|her|their) back",
    rf"(?:i|we) (?:promised|meant|wanted|intended|were? going|was going|should have)(?: to)? {_SENT}(?: you)?"
    rf" (?:this|it)(?: (?:an|one|half an|two|\d+) (?:hours?|minutes?|mins?) ago| earlier| sooner| before)",
    r"nothing (?:was |is |has been )?(?:spilled|spilt|broke|broken|damaged|cracked)",
    r"(?:i|we)(?: have)?(?: already| just| also)? (?:ordered|asked for|requested|sent for) (?:a|another|the) "
    rf"(?:new|fresh|spare) (?:one|{_BOX})(?: from [a-z]+| for (?:him|her|later))?",
    rf"(?:new|fresh|spare) {_BOX} (?:is |has been )?(?:already )?(?:ordered|requested)",
    r"(?:and )?(?:he|she|they|the student) (?:read|checked) it with me",
    r"(?:i )?hope (?:that|this) is (?:what you (?:needed|wanted|need|want)|ok|okay|alright|enough|helpful)",
    r"(?:the |his |her )?(?:clamp |clamping )?trial (?:went|was) (?:fine|well|ok|okay|good|smoothly)",
    r"(?:(?:the|one|two|\d+) )?(?:(?:hours? )?of )?clamping went (?:fine|well|ok|okay|smoothly)",
    r"(?:(?:occlusive|sterile|new|pressure|dry|clean|gauze|airtight|fresh) )*dressing (?:is |was )?"
    r"(?:on|applied|in place|intact|secure|secured|clean|dry|dry and intact|clean and dry|clean dry and "
    r"intact)(?= [.,;!]|$)",
    rf"(?:i'm|im|we're|let's|lets|i'll|we'll|i|we) (?:gonna |going to |just )*{_CALL}"
    rf"(?= (?:(?:uh|um|er|a|at|{_LINES}) )*(?:\d|(?:{_NUMERALS}) ))",
)
"""Whoever is asked to write something, or says so first, tells it; who sits in a chair again is not back."""
NOTHING_IN = (
    r"(?<![\w'])(?:mark|line|level|at|is|on|reads|reading) (?:zero|0|nought) "
    r"((?:, |and |still |there's |with )*nothing (?:at all )?in (?:it|there)"
    r"(?: yet| so far| still)?)(?![\w'])"
)
"""Behind a line of nothing this says it once more."""
MEANT_WELL = (
    r"^[^\d]*?(?<![\w'])((?:so |and |but )*(?:please |pls )?(?:tell me|let me know|forgive me|sorry) if "
    r"(?:i|i'm|im|this|it|that)(?: [a-z']+){0,5}?)(?= [.!,])"
)
"""Before all numbers, a new nurse asks to be told how to write."""
ASKED = (
    rf"(?:(?:(?:could|can|would|will) (?:you|u|someone|somebody)|(?:please )?be so kind as to) {_WRITE}|"
    rf"(?:could|can|may) (?:i|we) ask (?:you|u|someone|somebody) to {_WRITE}|"
    r"(?:would|do) you mind (?:writing|noting|putting|recording|charting)(?: down| in)?)"
    r"(?! (?:my|the|a) (?!level |line |reading |mark ))"
)
MUCH_THE_SAME = (
    r", ((?:which is |that is |that's |it is |it's )?(?:hardly any|not much|not very|barely any|much|about)"
    r" (?:different|the same|change|changed) (?:from|than|as|to|since) (?:this morning|yesterday|last night|"
    r"earlier|before|at handover|the last (?:one|line|hour)|when i (?:started|came on|took over)))"
)
"""How it goes, behind a line."""
BACK_LATER = (
    r"(?:, |and )((?:he |she |they )?(?:should|will|is due to|is expected to) be back"
    r"(?: (?:soon|shortly|later|within the hour|in (?:an|half an|about an) hour|before [a-z]+|for [a-z]+))?)"
    r"(?= [.!,]|$)"
)
GONE = frozenset({"gone", "went", "off", "taken", "away"})
RIGHT_DOWN = (
    r"(?:slowed|slowing|eased|settled|tailed|dropped|calmed|quietened) (right)"
    r"(?= (?:down|off|up|away|back))"
)
ON_VALVE = r"(?:with|on|to) (?:a|the|his|her) (valve)(?! [a-z])"
SET_BACK = r"it(?:'s| is| was) (back (?:to|at|on))(?= \d)"
BACK_ON = r"(?:i|we|he|she|they|and|then) ((?:turned|switched|put) it (?:back )?on(?: again)?)"
"""Behind a suction that was off."""
BY_WHEN = (
    r"((?:before|by|until|till) (?:\d{1,2}|one|two|three|four|five|six|seven|eight|nine|ten|eleven|twelve))"
    r"(?= [?.!]|$)"
)
THEN = rf"{_HOLDER} (then (?:showed|shows|read|reads|was|said|had))(?= \d)"
COMING = (
    r"(?:blood|pus|fluid|bloody|chyle|drainage|stuff|smelly) "
    r"((?:coming|running|flowing|draining|going) (?:down|through|into|in|out of))"
    r"(?= (?:the|his|her) (?:tube|tubing|drain|chest|box|bottle|chamber|canister|left|right))"
)
"""Where a fluid runs says no more than that it does."""
IT_ROSE = r"it (?:has |then |has now )?((?:went|jumped|shot|gone|climbed)(?: up)? to)(?= \d{2,4})"
NUMBERED = r"(?:^|[.;:!,] )((?:first|second|third|lastly|firstly|secondly|thirdly)(?: of all)? ,)"
HEADING = (
    r"^(?:hi , |hello , |hi |hello )?((?:just )?(?:two|three|a couple of|a few|couple of|few|2|3|some)"
    r"(?: quick)? (?:things|updates|points|bits) (?:about|on|for|regarding|from|re) )"
    r"(?:the patient in )?(?:bed|room|rm) \d"
)
OPEN_AGAIN = (
    r"(?:it(?:'s| is| was)|is|was|now|and|,) (?:now |then )?"
    r"((?:opened|open|unclamped)(?: up)? again|reopened|opened)(?! (?:at|to) \d{3} )|"
    r"(?:i|we|he|she|they) (opened (?:it|him|her)(?: up)? again)"
)
_FINE = ("fine", "ok", "okay", "right", "correct", "good", "accurate")
FINE = frozenset(_FINE)
PUTS_RIGHT = frozenset({"not", "should", "wrong", "instead", "meant", "mistyped", "misread"})
"""With one of these beside it, what is fine is told only to say what is not."""
_NAMED = r"(?:one|line|mark|reading|level|number|entry)"
STANDS = (
    rf"(?:^|[,.;] |and |but |\d )((?:(?:the|my) (?:\d{{4}}|\d\d? : \d\d|others?|rest|first|second)|"
    rf"(?:the )?(?:left|right))(?: {_NAMED})? "
    rf"(?:is|was|are|were) (?:{'|'.join(_FINE)})(?: (?:and|but))?)(?= |$)|"
    r"(?<=\d )((?:is|was) the right (?:bed|patient|pt|room|one)(?: but| ,))(?= )"
)
RIGHTING = frozenset({"instead", "not", "wrong", "correct", "rather", "or", "from"})
"""With one of these more is asked than to write a line down."""
_OF_OTHERS = """
bag bp catheter cvp drip foley gauge glucose hb heparin hr k lactate map ng o2 oxygen pain potassium pressure
pump rate rr sats score seal spo2 stoma suction sugar temp urine wall weight
"""
OF_OTHERS = frozenset(_OF_OTHERS.split())
"""With one of these "it went to 120" may be of that."""
OURS = DRAINS | LINES | {"fluid", "tube", "drainage", "drained", "draining", "bled", "serous"}
