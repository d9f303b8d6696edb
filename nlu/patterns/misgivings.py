"""What a nurse says who doubts or takes back what is told beside it, and how far such words reach.

Each line of a group is a regular expression over the words of a message with one blank between them. Behind
and before it may stand what goes on about the line; a word that is not here makes it a doubt of something
else: "not sure if he wants lunch". Never put here what a patient eats, feels or does.
"""

from __future__ import annotations

import re

from .numerals import NUMERALS
from .spelt import alternatives

_SHORT = {
    "<not>": r"(?:not|isn't|isnt|wasn't|wasnt|ain't|aint|don't|dont|can't|cant|cannot|never)",
    "<did not>": r"(?:didn't|didnt|did not|never|hasn't|hasnt|haven't|havent|have not|not)",
    "<cannot>": r"(?:can't|cant|cannot|couldn't|couldnt|can not|could not|didn't"
    r"|didnt|unable to|not able to)",
    "<may>": r"(?:may|might|could|must|would|will)(?: well)?(?: (?:just|only|also|even))?",
    "<quite>": r"(?: (?:a|an|the|too|very|so|quite|rather|pretty|awfully|really|bit|little|that|all|100|%"
    r"|hundred|entirely|totally|completely|fully|particularly|terribly|super|overly|percent|per|cent))*",
    "<will>": r"(?:i'll|ill|we'll|will|gonna|gotta|let me|must|should|needs?"
    r"|(?:going|have|got|needs?|want)? ?to)",
    "<who>": r"(?:you|someone|somebody|anyone)",
    "<ordinal>": r"(?:(?:the|last|final|first|middle|next|second|third|end|other|one) )*",
    "<of it>": r"(?: of (?:it|the \w+))?",
    "<any>": r"(?: \w+){0,2}",
    "<waiting>": r"(?:awaiting|pending|waiting (?:for|on))",
    "<is>": r"(?:that's|thats|it's|its|(?:that |it |this )?(?:was|is))",
    "<neg>": r"(?:didn't(?! like)|didnt(?! like)|did not|wasn't|wasnt|couldn't|couldnt|wouldn't|wouldnt"
    r"|hasn't|hasnt|isn't|isnt|hadn't|haven't|havent|won't|wont|doesn't|doesnt)",
    "<strange>": r"(?:wrong|odd|weird|strange|funny|fishy|dodgy|unlikely|suspicious|suspect|inaccurate"
    r"|implausible|inflated|unreliable|suss|incorrect|mad|crazy|impossible)",
}


def _any_of(lines: str) -> str:
    return alternatives(lines, _SHORT)


_PLAIN = """
bed room rm bay b mark line level reads at @ ml mls cc tube drain ct chest right left r l rt lt basal apical
nil leak air suction sxn seal tidaling serous serosang bloody clear cm h2o with closing now , . : ; a p m am
pm h hrs
"""
PLAIN = NUMERALS | {"", *_PLAIN.split()}
"""A message of nothing else, and digits, doubts nothing, denies nothing and takes nothing back."""

DOUBTING = _any_of(r"""
maybe|perhaps|possibly|probably|presumably|supposedly|allegedly|reportedly|apparently|seemingly
unsure|uncertain|questionable|dubious|doubtful|iffy|tentative(?:ly)?|provisional(?:ly)?|dodgy
(?:a |the |my |just |best |rough |wild |at a )*guess(?:ing|ed|work|timate|timated|es)?
i(?:'m| am)? (?:think|thought|believe|reckon|suppose|assume|assumed|assuming|suspect|presume)
(?:i|we|i'd|we'd) (?:would )?(?:say|imagine)
think(?:ing)?(?: so)?|reckon|assuming|pretty sure|fairly sure
<not><quite> (?:sure|certain|confident|convinced|positive|know|knows|clear|remember|trust)
no (?:idea|clue)|who knows|dunno|idk|not (?:100|a hundred|one hundred)(?: ?%| percent| per cent)?
<cannot> be<quite> (?:sure|certain|positive)
<cannot> (?:remember|recall|swear|confirm|vouch|say for sure|verify|guarantee)
if (?:i|we|i've|ive|we've) (?:remember|recall|read|heard|got|saw|counted|have|seen)
if memory serves|from memory
(?:don't|dont|do not) (?:quote|hold|trust|rely|bank|take)|(?:wife|husband|mum|mom|dad|family|he|she) told me
(?:nights?|days?|night staff|day staff|someone|somebody) (?:said|says|told me|reckoned|had it)
<is> (?:from )?(?:the |an |a )?(?:old|previous|wrong|other) \w+|<is> (?:from )?yesterday'?s \w+
(?:take|taken) (?:it |that |this )?with a (?:pinch|grain)(?: of salt)?|treat with caution
tbc|tba|unconfirmed|unverified|unchecked|not (?:yet )?(?:confirmed|verified|checked|double checked)
to be (?:confirmed|verified|checked)|needs? (?:to be )?(?:confirm|verif|double check|check)\w*
<did not> (?:\w+ )?(?:check|checked|verif\w+|confirm\w*|double check\w*)
(?:please|pls|plz|(?:can|could) <who>|someone)(?: please| pls)? (?:verify|confirm|double check|check|recheck)
(?:was|were|been|so i'm|i'm|im) told|hearsay|second hand|secondhand|by the sounds? of it|rumou?r
told (?:to )?(?:me|us)(?: by(?: \w+){1,3})?|<may>(?: have)? (?:mean|meant)
<did not> (?:actually |really )?(?:see|seen|read|look\w*|witness|do)(?: \w+){0,2} (?:myself|personally)
<did not> (?:\w+ )?(?:looked|seen it|been in to (?:look|check|see))|last (?:time )?(?:i|we) (?:heard|knew|saw)
<may>(?:'ve| have| of|a)? (?:mis\w+|mix\w*|muddl\w*|confus\w*|got|gotten|read|written|swapped|been|transposed)
or (?:was|is|were) (?:it|that)(?! not)|or (?:maybe|perhaps)|(?:may|might|could) (?:well )?be
doubt|doubts|in doubt|have my doubts|would double check
(?:they|he|she|so it|or so it|apparently it|so they|or so they|apparently they) (?:say|says)
heard (?:it |this |that )?(?:at|in|from) \w+
in (?:theory|principle)|technically|loosely|so to speak|if you like|unclear (?:which|when|what)
i(?:'d|'ll| would| will| should)? (?:double )?check (?:it|that|this)(?: \w+){0,4}
(?:give it |needs )?(?:a )?(?:second|another) look|second opinion
(?:(?:hang|hold) on |wait )?let me (?:re|double |just )?-?check(?: \w+)?
let me (?:have|take) (?:a|another) (?:\w+ )?look|let me look again
wrong (?:one|bed|room|chart|drain|tube|side|patient|pt|person|line|number|figure|time)
next door|mea culpa|someone else (?:read|got|had|said|saw)
(?:some ?time )?(?:around|about) then|or (?:right |just |shortly )?(?:after|before)(?: (?:that|then))?
(?:not|didn't|wasn't|without) look(?:ing|ed)? at (?:the|my|a) (?:clock|watch)
times? (?:is |was )?(?:approx\w*|estimated|rough)
(?:don't|dont|do not|pls don't) (?:record|chart|log|save|count|enter|write|use|include|put)
(?:bit of )?a stab in the dark|afaik|iirc|idk|imo|imho|as far as i know|kind of|sort of|kinda|sorta
verbal(?: only)?
(?:only |fairly |mostly |half |nearly |almost |reasonably |relatively |quite ){1,2}(?:sure|certain)
(?!100 )\d+ % (?:sure|certain)
(?:or )?something(?: like (?:that|it))?|or whatever|am i (?:mad|right|wrong)|is that right|or am i
(?:i )?(?:hope|hopefully|fingers crossed)(?: (?:it's|its|that's|thats|it is|that is))? (?:right|correct|ok)
if (?:correct|accurate|true|right|possible|that's|thats|it's|reliable)(?: \w+){0,3}
(?:student|hca|tech|aide|wife|husband|mum|he|she|someone|nurse) (?:read|measured|eyeballed) (?:it|that)
(?:check|confirm|verify) (?:it |that |this )?with \w+|ask (?:the )?(?:day|night|other|next) \w+
<will>(?: go)? (?:double check|confirm|verify|confirming|verifying)
(?:will|gonna|need to|have to|gotta|going to) (?:go )?(?:check|eyeball|look at) (?:it|that|this)
<did not> (?:\w+ )?(?:laid|clapped|set) eyes|(?:someone|somebody) else's \w+|no (?:promises|guarantees?)
(?:wouldn't|wouldnt|would not) (?:bet|swear|put money|stake|trust|rely|quote)
hold (?:fire|off)(?: on)? (?:charting|logging|recording|(?:until|till)(?: \w+){0,3})
before (?:you|u|we) (?:log|chart|record|save|enter|write|put)(?: \w+){0,2}
colleagues? disagrees?
other (?:bed|guy|patient|room)|other (?:side|tube|drain|one)$|(?:neighbour|neighbor|roommate)'s
belongs to(?: \w+){0,3}|meant bed
(?:time|when)(?: exactly)? (?:is )?unknown|earlier or later|some ?time (?:after|before|around) \w+
(?:clock|watch)(?: is| was)? (?:off|wrong|fast|slow|broken|dead)|told by phone|(?:not |un)witnessed
before my time
must have been(?: \w+){0,3}
(?:bed|patient|pt|one|lady|man|guy|gent) (?:that|who|which|what) (?:was|used to be)
used to be (?:in|bed)|ex bed
(?:hard|difficult|struggle|struggling) to (?:believe|accept|credit|imagine)
(?:can't|cant|cannot|don't|dont) believe
(?:before|since|when) (?:we|they) (?:renumber|rearrang|reshuffl)\w+|formerly (?:in|bed)|previously (?:in|bed)
(?:quiz|riddle)(?: \w+){0,3}|hypothetical(?:ly)?
(?:i |we )?(?:made|making) (?:it|that|this|(?:that |this |the )?(?:number|one|figure|level|reading)) up
(?:made up|invented|fudged|fabricated)(?: (?:it|that|this|the \w+))?
(?:i |we |just )?copied (?:it |that |over |forward |down )?(?:forward|from|off|across|over)(?: \w+){0,4}
(?:training|teaching|drill|exercise|exam|made up|dummy) (?:question|only|example)
""")
"""The value, the bed, the tube or the time, as the words beside it say; else all that is told."""
ANOTHER = _any_of(r"""
<is> (?:from )?(?:the |his |her )?(?:jp|foley|urine|catheter|ng|bulb|pee|wee|vac|stoma)(?: bag)?
<is> (?:from |for )?(?:(?:the |his |her )(?:\w+ )?)?(?:ngt|peg|evd|pump|monitor|drip|feed|vent|iv)
""")
"""What was told is of another device."""
ELSEWHERE = _any_of(r"""
(?:in|at|down in) (?:the )?(?:ed|er|a & e|resus|or|theatre|theater|recovery|pacu|ambulance|cath lab|icu)
(?:at|in) (?:the |an )?(?:other|outside|referring|previous|last) (?:hospital|unit|ward)
before (?:our|the new) canister|before (?:arrival|admission|he came|she came|coming|transfer|we got)
on admission|prior to (?:arrival|admission|transfer)
""")
"""An amount that came before the drain was here."""
SEEING = _any_of(r"""
<cannot> (?:really |quite |even |properly |actually |clearly )*(?:see|read|tell|make|look|visuali[sz]e|get at)
<cannot> get an? (?:good|clear|proper|decent|accurate) (?:look|view|reading|read)
(?:hard|difficult|tricky|tough|impossible|awkward|not easy|a pain|struggled|struggling) to (?:see|read|tell)
(?:hard|difficult|tricky|tough|impossible|awkward|not easy|struggled) to (?:make|judge|gauge|get|visuali[sz]e)
(?:hard|difficult|tricky|tough|impossible|not easy) to be (?:sure|exact|precise|accurate)
mis(?:read|reading|judged|counted|typed|heard)
(?:i was |was )?(?:read|reading|seen|looking|looked) (?:it )?(?:from|through|across|upside|over)(?: \w+){0,4}
blurry|blurred|illegible|unreadable|smudged|smeared|(?:a )?(?:smear|smudge)|faded|obscured|murky
(?:at )?an angle|tilted|crooked|slanted|lopsided
(?:fogged|misted|steamed)(?: up)?
<ordinal>(?:figure|digit|number|rest)<of it>(?: is| are|'s)? (?:under|behind|covered|hidden)(?: [\w']+){0,4}
<ordinal>(?:figure|digit|number|rest)<of it>(?: is| are|'s)? (?:missing|cut off|torn|worn|rubbed|not visible)
(?:scale|label|markings?|numbers?|figures?|window|front|level|tape)<any> (?:covered|hidden|worn|in the way)
(?:scale|label|markings?|numbers?|figures?|window|front|line|level|tape)<any> (?:blocked|dirty|not clear)
(?:lots of |a lot of |some |much )?(?:foam|froth|glare|condensation)(?: [\w']+){0,4}
(?:it|fluid|bubbles|surface) (?:has |is )?(?:still|not|hasn't|hasnt|haven't|havent) (?:settl|clear)(?:ed|ing)
(?:bad|poor|low|no|dim) (?:light|lighting|angle|view)
my (?:eyes|eyesight|glasses)(?: [\w']+){0,3}|without my glasses
(?:i )?(?:squinted|squinting)|<cannot> get (?:close|near)(?: enough)?|(?:too|very) dark to \w+|hazy
(?:torch|flashlight) \w+ \w+
(?:cap|tape|sticker|blanket|curtain|label)<any> (?:in the way|over the (?:numbers|scale|window|markings))
readings?(?: are| is| was)? (?:all over(?: the place)?|jumping|unstable)|sloshing(?: about)?
not on a (?:flat|level|even) \w+|stand was crooked|wore no specs|no specs|something like that
""")
"""The level that was read."""
SEEMING = _any_of(r"""
(?:seems?|seemed|looks?|looked|feels?|felt|sounds?|sounded|strikes me as)<quite> (?:high|low|off|lot|much|out)
(?:seems?|seemed|looks?|looked|feels?|felt|sounds?|sounded|strikes me as)<quite> <strange>
(?:is|was|'s|that's|thats|it's|its)<quite> <strange>
(?:<not>|won't|doesn't|doesnt|<cannot>)(?: \w+)? (?:right|correct|accurate|true|reliable|precise)
(?:<not>|<cannot>)(?: \w+)? (?:exact|possible)
(?:<not>|doesn't|doesnt|does not)(?: \w+)? (?:good reading|add up|make sense)
<may> be<quite> (?:off|out|wrong|inaccurate|incorrect|false|unreliable|different)
<may> be<quite> (?:less|more|higher|lower)
<strange>(?: (?:number|reading|figure|value|one|level))?|surely not|(?:makes|making) no sense|no way
(?:can't|cant|cannot|can not|couldn't) be<quite> (?:much|many|high|low|lot|less|more)?
(?:does not|doesn't|doesnt|don't|not) (?:quite |really )?(?:match|fit|tally|agree|correspond)(?: \w+){0,4}
not (?:quite |really )?what i (?:expected|thought)
(?:seems?|looks?|sounds?)<quite> (?:excessive|alarming|huge|massive|tiny)|alarming if \w+
""")
"""What was read is not believed."""
TILTED = (
    r"(?:box|canister|bottle|chamber|collector|drain|unit|system|it|it's|its|that)(?: \w+){0,2} "
    r"(?:swaying|sloshing|moving|rocking|tilted|tilting|leaning|slanted|slanting"
    r"|lopsided|wonky|crooked|squint|sloping|skewed|angled"
    r"|(?:not|wasn't|isn't|wasnt|isnt) (?:level|upright|flat|straight)|(?:at|on) an angle"
    r"|(?:on|onto) its side|uneven)(?! with)"
    r"|(?:box|canister|bottle|chamber|collector|unit|system|that)(?: \w+){0,2} swinging(?! with)"
    r"|(?:drain|it|it's|its)(?: \w+){0,2} swinging (?:about|around|off|from|under|back|loose|in mid"
    r"|when|while|as|so|because|on(?! suction| \d)|like)"
    r"|(?:it|box|canister|bottle) (?:was|got) (?:knocked|bumped|kicked|nudged)(?! over)"
    r"|(?:moving|shaking|rocking|swinging|carrying|holding) (?:the |his |her )?(?:box|canister|bottle|drain)"
)
"""How the canister stood when it was read."""
CANCELLED = _any_of(r"""
cancel(?:led|ed|s)?|called (?:it |that )?off|decided (?:against|not to|otherwise)|decision reversed
(?:said|says|say|saying) (?:no|not to|nope|otherwise|to hold off|to wait|to leave it|wait|leave it|don't)
changed (?:his|her|their|my|our|its) minds?
<did not> (?:actually |yet |even |really )?(?:happen|happened|happening|go ahead|went ahead|going ahead)
<did not> (?:actually |yet |even |really )?(?:go through|take place|proceed|done|do it|did it|occur)
no longer (?:happening|going ahead|needed|required|going)|not (?:needed|required|going to happen)
postponed|deferred|put off|on hold|aborted|abandoned|vetoed|refused|declined|overruled|rescheduled
fell through|backed out|stood down
<neg>(?: (?:do|did|done|it|that|this|them|to|have|let|allow|able|keen|go|be|work|agree|want|manage))*
(?:attempt |attempts |it |they |try )?(?:failed|fails)|unsuccessful(?:ly)?
tried(?: it| to)?(?: but)?|no luck|false alarm
reversed(?: (?:it|the decision|that))?
turned (?:back|around|round)|came straight back|never left|back in again|still (?:in|here)
(?:wants?|wanted|prefers?)(?: (?:it|them|us))?(?: to)?(?: be)? (?:wait|left|leave|hold|stay)(?: in| it| off)?
if (?:\w+ ){1,2}(?:agrees?|goes?|ok|okay|allows?|happy|permits?|says?|approves?|works?|possible)(?: \w+){0,2}
<waiting>(?: [\w']+){0,3} (?:confirm|confirmation|ok|okay|review|approval|decision|consent)
due to be(?: done)?|(?<!as )planned(?: anyway)?|meant to be|supposed to be
should be (?:done|out|over|finished)
not (?:yet|for real|really|quite yet)
(?:will|gonna|to) (?:do|be done)(?: it| that)?(?: \w+)?
(?:then |we |they )*(?:stopped|changed) (?:us|the plan|halfway)|then stopped
plan (?:has |was )?(?:changed|dropped)
(?:surgeon|team|doctor|dr|reg|boss|consultant) (?:stopped us|not happy|said (?:leave|hold|wait))
(?:surgeon|team|doctor|dr|reg|boss|consultant) wants? it (?:in|left|kept)
(?:team|surgeons) want it (?:in|left|kept)|not today|another day|next week|tomorrow instead
in an hour or so|about to
half ?way|half done|incomplete|not (?:finished|complete|completed|by us)|unfinished|in progress|objected
no consent|consent (?:withdrawn|refused|not given)|never got (?:done|there|finished)|nobody did(?: it)?
""")
"""It was not done."""
TAKING_BACK = _any_of(r"""
(?:no,? )?wait(?: no)?|hang on|hold on|hold up|actually no|no actually|never ?mind|nvm|(?:just )?kidding
jk|oops|scratch|ignore|disregard|forget|discard|strike|delete|as you were|belay|no no|nope
hold that|undo|cancel that|(?:just |only )?(?:a )?(?:test|testing)
this is (?:just |only )?a test(?: \w+)?|practi[cs]e|example|fake
(?:only |just )?(?:joking|a joke)|april fools?|not$|psych|sike
sorry no|sorry scrap(?: that)?|scrap that|bin (?:that|it|this)|void|null|pretend i didn't(?: \w+){0,2}
""")
"""Said behind what is told these take it back."""
ROUGH = _any_of(r"""
roughly|approx|approximately|approximate|give or take|more or less|near enough|ish|or so|or thereabouts
thereabouts|ball ?park|(?:a |an )?(?:rough )?(?:estimate|estimated|estimation|eyeballed|eyeballing)|rounded
or near(?:est)?(?: enough)?|nearly|roundabout|plus or minus|a rough (?:figure|reading|one)|rough(?! [a-z])
rough(?= (?:at|as|on|in|of|for|because|cos|bc|since|now|only|sorry|and|but)(?![\w']))
rough(?= (?:line|level|mark|number|guess|count|idea|value)(?![\w']))
circa|ca|c(?= \d)|est|by eye|at a (?:push|stretch)|eyeballing(?: it)?|almost|rounded(?: (?:up|down|off))?
eyeballed(?: (?:it|that))?(?: from(?: \w+){1,3})?
(?:a |just |only )?(?:touch|hair|bit|tad|slightly|little|just|fraction) (?:under|over|less|more|below)
(?:plus|minus) a (?:bit|little|few)|give or take(?: \w+){0,2}
""")
"""The level is told as approximate."""
SAID = frozenset(
    re.findall(
        r"(?<!\\)\b[a-z]{4,}",
        " ".join((DOUBTING, ANOTHER, SEEING, SEEMING, TILTED, CANCELLED, TAKING_BACK, ROUGH)),
    )
)
"""The words of all these: none is another word misspelt, as "tape over the numbers" is not "taped"."""
OF_TIME = frozenset({"ish", "or so", "or thereabouts", "thereabouts"})
"""Right behind a time these are of it."""
_LIGHT = """
anything it it's its it'll that that's thats this these those them so tho though but if whether i i'm im
i've ive we me my you to be is was were been the a an of about on in at for with by from as well clearly
properly exactly
really very much quite bit little too right correct accurate precise now then here again all any anyhow honest
honestly tbh sorry myself what which how when one ones and or no not also just have has had got did do done
does would could can may might must will should need needs ought find lol haha hmm
um uh er eh pls please someone somebody anyone
there personally only even 100 % percent say said otherwise wrong off out sure certain either way side
like still yet oh ok okay yes yeah yep nah nope actually true good fully entirely absolutely up read down
"""
LIGHT = frozenset(_LIGHT.split())
"""Words that go on about what is told, or say nothing."""
_LINE = """
read reading readings number numbers figure figures value values amount volume total level levels line lines
mark marks meniscus scale mls ml mils cc ccs result entry message text last previous above quote hold trust
accuracy accurately misread
"""
_PLACE = "bed beds bay room bedspace"
_TUBE = "tube tubes side drain left right apical basal anterior posterior mediastinal pleural other"
_TIME = "time times when minute minutes hour hours mins min oclock o'clock clock timing"
_VALUE = "reading readings number numbers figure figures value level meniscus line amount volume"
OF_VALUE, OF_PLACE = frozenset(_VALUE.split()), frozenset(_PLACE.split())
OF_TUBE, OF_CLOCK = frozenset(_TUBE.split()), frozenset(_TIME.split())
OF_LINE = frozenset(_LINE.split()) | OF_PLACE | OF_TUBE | OF_CLOCK
STRONG = frozenset({"reading", "readings", "meniscus", "figure", "figures", "misread", "accurate", "number"})
STRONG |= {"accuracy", "marked", "charted", "mixed", "muddled", "swapped"}
"""One of these in the clause: it is of the line, whatever else is said."""
_CANISTER = """
canister box bottle chamber collector drain fluid markings marking scale window front panel foam
froth bubbles condensation glare gauge numbers level line meniscus
"""
CANISTER = frozenset(_CANISTER.split())
"""What could not be seen well."""
THROUGH = frozenset(
    {"with", "through", "in", "due", "under", "behind", "from", "without", "because", "past", "for"}
)
_TEAM = """
dr dr's drs doctor doctors doc docs team teams surgeon surgeons surgery surgical consultant reg registrar they
they've theyve they'd he she he's she's he'd md mds np pa rn rns nurse nurses charge cardiothoracic thoracic
resident resp student students hca hcas cna tech attending fellow boss pt patient nobody nothing everyone
mum mom dad wife husband family son daughter
procedure removal pull insertion exchange change swap clamping trial transfer move trip event plan ended
"""
TEAM = frozenset(_TEAM.split())
"""Who may have decided otherwise or may doubt, and what may be called off."""
PERSONS = frozenset(
    {"he", "she", "he's", "she's", "hes", "shes", "his", "her", "him", "pt", "patient", "family"}
)
PERSONS |= {
    "wife",
    "husband",
    "mum",
    "mom",
    "dad",
    "son",
    "daughter",
    "they",
    "their",
    "pt's",
    "doctor",
    "dr",
}
NOBODY = frozenset({"nobody", "nothing"})
GONE = frozenset({"settled", "cleared", "gone", "wiped", "cleaned", "peeled", "moved", "lifted", "removed"})
GONE |= {"redrew", "redrawn", "replaced", "fixed", "retaped", "dried", "dispersed"}
"""With one of these what hid the line hides it no more."""
NOT_GONE = frozenset({"not", "no", "never", "until", "till", "still", "hasn't", "hasnt", "isn't", "isnt"})
NOT_GONE |= {"haven't", "havent", "wasn't", "wasnt", "didn't", "didnt", "if", "needs", "be", "yet"}
IN_THE_END = frozenset(
    {
        "end",
        "last",
        "moment",
        "second",
        "minute",
        "today",
        "now",
        "until",
        "till",
        "tomorrow",
        "tonight",
        "later",
    }
    | {"after", "because", "anymore", "more", "again", "instead", "us", "ward", "hold", "for", "time", "yet"}
)
"""What is said behind something that was called off."""
NO_MORE = frozenset({"that's it", "thats it", "that's all", "thats all", "that is it", "that is all"})
COMPARED = frozenset({"to", "for", "compared", "considering", "given", "from", "than"})
"""Behind what seems odd these say for whom, or beside what."""
SIDES = OF_TUBE - {"tube", "tubes", "drain"}
OFF = frozenset({"cancelled", "canceled", "postponed", "deferred", "aborted", "abandoned"})
"""Before what is told these take it back, too: "cancelled: bed 7 off to CT"."""
WENT_WRONG = frozenset({"wrong", "misread", "misheard", "mistyped", "miscounted", "misjudged", "transposed"})
WENT_WRONG |= {
    "old",
    "previous",
    "meant",
    "culpa",
    "else",
    "else's",
    "mixed",
    "muddled",
    "swapped",
    "mistake",
}
WENT_WRONG |= {"typo", "error", "belongs", "yesterday's", "next"}
"""Of a line that is put right these say how it came to be wrong."""
WHY = frozenset({"why", "who", "how", "since"})
"""Of these nothing that is told is in doubt: "not sure why"."""
BECAUSE = frozenset({"as", "because", "cos", "coz", "bc", "since"})
NEEDED = frozenset({"required", "needed"})
JOINTS = frozenset(
    {"but", "although", "though", "and", "because", "cos", "coz", "bc", "as", "since", "while"}
)
JOINTS |= {"so", "until", "till", "after", "before", "unless", "then", "once"}
"""With these a clause begins."""
