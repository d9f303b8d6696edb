"""Phrases that tell nothing wherever they stand: "tube out at last", "shout if I am doing it wrong".

How the writer gets on, that nothing else is to be said beside a line, and where on the ward a bed is, in
brackets behind it. A doubt of the number itself ("tell me if this is wrong") is none of these. Called by
`pipeline`.
"""

from __future__ import annotations

import re
from collections.abc import Sequence

from .tokens import Token

OWN = r"(?:i am|i'm|im|i ?'? m)"
STOP = r"(?= [,.;!)-](?: |$)| and | then |$)"
QUIET = r"(?: (?:it's|its|it is) (?:been )?a quiet (?:one|night|shift|day|evening))"
LEARNING = (
    r"(?:getting (?:the hang of|used to) (?:this|it|things|texting)|learning|new (?:here|to this|at this)"
    r"|finding my feet)"
)
TELL = r"(?:shout|yell|holler|scream|tell me|let me know|correct me|say)"
STAFF = r"(?:nurse|rn|aide|tech|sitter|cna|hca|student)"
PLACE = r"(?:step ?-? ?down|hdu|end|window|door|corner|isolation|iso|side room|far side|near side)"
TEACHER = r"(?:preceptor|mentor|instructor|charge(?: nurse)?|senior|educator|teacher|buddy)"
TO_REPORT = r"(?:report|chart|text|send|add|give|write|record|log|tell you|let you know)(?: that)?"
SAYS_TO = (
    r"(?:(?:says|said|thinks) (?:that )?i (?:should|must|have to|need to)"
    r"|(?:told|asked|wants|reminded) me to)"
)
TRAINEES = r"(?:med |medical |nursing )?(?:students|residents|juniors|trainees|interns|fellows)"
PHRASES = (
    rf"(?:my|the|our) {TEACHER} {SAYS_TO} (?:also )?{TO_REPORT}(?= :)",
    rf"with (?:\d|two|three|four|five|six|his|her|the|some) {TRAINEES}"
    r"(?: (?:trailing|following|in tow|behind|watching))?(?: (?:him|her|them))?",
    rf"with my {TEACHER} (?:watching|there|beside me|next to me|supervising|helping)",
    rf"(?:all )?safe and sound{STOP}",
    r"(?<!.)(?:a |another )?(?:quick |few |some |couple of )*(?:questions?|queries|query|qs)"
    r"(?: for you)? [:-](?: ;)?(?= )",
    r"(?:i|we) (?:just )?(?:did|made|performed|completed) (?:my|a|the|our)(?: (?:very )?first)?"
    r"(?= (?:canister|box|bottle|chamber|drain) change(?: |$))",
    rf"(?<=change )ever{STOP}",
    rf"(?:(?:so|please|pls|and) )*{TELL} if {OWN} doing (?:it|this|that|things) (?:all )?wrong{STOP}",
    rf"(?:(?:and|but|so) )?(?:i think )?{OWN} (?:finally |slowly |still |just )?{LEARNING}(?: : [)])?{STOP}",
    r"(?:(?<=stood it )|(?<=set it )|(?<=propped it )|(?<=picked it )|(?<=put it ))right"
    r"(?= (?:back )?up(?! to )(?: |$))",
    rf"at (?:long )?last{STOP}",
    rf"(?:that's |thats |this is )?(?:the |my )?last one from me(?: for)?(?: (?:today|tonight|now))?{STOP}",
    rf"(?:^|(?<=[!.,;:] ))(?:{OWN} )?back for (?:another|more)(?: (?:one|round|shift|night))?{STOP}",
    rf"(?:post ?-? ?op|postop) (?:hour|hr)s? \d{{1,2}}{STOP}",
    rf"(?:- )?(?:just )?found (?:it|this|that) (?:on|in) my (?:paper|notes|pocket|sheet|list){STOP}",
    rf"(?:fyi )?(?:the |our )?(?:float )?{STAFF} (?:was|got) (?:pulled|floated) to (?:the )?[a-z]+"
    r"(?: before (?:she|he|they) could \w+(?: \w+)?)?(?= [,.;:])",
    r"(?:(?:i'm|i am) )?(?:not sure|unsure)(?: if| whether)?(?: (?:it's|its|it is))?"
    r"(?= \d{2,4} or \d{2,4}\b)",
    r"(?<!\w )(?:i )?(?:just )?(?:went|popped|walked|looked) (?:in ?to|in|over to)(?: see)?(?= bed \d)",
    rf"(?<=\d )[(](?: (?:the|by|near|in|at))* {PLACE}(?: (?:bed|room|one))? [)](?= \d| is | was | line |$)",
)
OH = (
    r"(?:oh|ah|aw|ugh|argh|omg|wow|gosh|goodness|goodness me|god|jeez|jesus|blimey|crikey|sigh|honestly"
    r"|seriously|typical|come on|good grief|good lord|my god|my goodness|for goodness sake|for goodness' sake"
    r"|for god's sake|for heaven's sake|for crying out loud|guess what|you won't believe (?:it|this)|i swear"
    r"|you wouldn't believe it|would you believe(?: it)?|unbelievable|what a (?:night|day|shift|mess))"
)
SOMEBODY = r"(?:someone|somebody|some|that|his|her|the|this|a|one of|my|our|bed \d|room \d)"
EXCLAIMED = rf"(?<!.){OH}(?: [,.!]| {OH})*(?= {SOMEBODY} )"
"""At the very start, before somebody or a bed is named."""
SAY = r"(?:say|report|add|note|tell|mention)"
NOTHING = rf"(?:(?:and|there is|there's|got) )*nothing (?:else|more|further|new) to {SAY}"


def _any_of(*phrases: str) -> re.Pattern[str]:
    return re.compile(rf"(?<![^ ])(?:{'|'.join(phrases)})(?![^ ])")


LEFT_OUT, BESIDE_LINES = (
    _any_of(*PHRASES, EXCLAIMED),
    _any_of(*PHRASES, EXCLAIMED, f"{NOTHING}{QUIET}?{STOP}"),
)
STARTS = frozenset(
    {"if", "not", "right", "unsure", "getting", "learning", "new", "finding", "nothing", "last", "("}
    | {"back", "post", "postop", "found", "pulled", "floated", "went", "popped", "walked", "looked"}
)
STARTS |= frozenset(
    {"oh", "ah", "aw", "ugh", "argh", "omg", "wow", "gosh", "goodness", "god", "jeez", "jesus"}
)
STARTS |= {"blimey", "crikey", "sigh", "honestly", "seriously", "typical", "come", "good", "guess", "believe"}
STARTS |= {"preceptor", "mentor", "instructor", "charge", "senior", "educator", "teacher", "buddy"}
STARTS |= {"students", "residents", "juniors", "trainees", "interns", "fellows", "safe", "change", "ever"}
STARTS |= {"questions", "question", "queries", "query", "qs"}
STARTS |= {"swear", "unbelievable", "what", "sake", "crying"}
A_LINE = 2
"""Numbers of a line: its bed and its level."""


def without(toks: Sequence[Token]) -> Sequence[Token]:
    """The tokens without these phrases, where something else is left."""
    if STARTS.isdisjoint([t.text for t in toks]):
        return toks
    text = " ".join(t.text for t in toks)
    phrases = BESIDE_LINES if sum(t.is_digits for t in toks) >= A_LINE else LEFT_OUT
    left: set[int] = set()
    for found in phrases.finditer(text):
        first = text[: found.start()].count(" ")
        left.update(range(first, first + found.group().count(" ") + 1))
    kept = [t for k, t in enumerate(toks) if k not in left]
    return kept if any(t.is_word or t.is_digits for t in kept) else toks
