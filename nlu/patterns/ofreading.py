"""Words of a clause beside a line that is of the reading itself: how it was seen, on what it stands, by whom.

Unlike words of doubt alone these say by themselves that the clause is of the line. Never put in `OTHERS` what
a nurse reads a line on, by or with, nor in `TROUBLE` what says that all was as it should be.
"""

from __future__ import annotations

from .asides import PATIENTS, RELATIVES, STAFF
from .ownclauses import HIMSELF, ROOM
from .ownclauses import THINGS as CLOTHES
from .smalltalk import NAMES

_READ = """
read reading readings readout number numbers num figure figures digit digits scale scales markings meniscus
gradations graduations canister box bottle chamber collector foam froth bubbles fluid handwriting writing
scribble scribbles scrawl pen marker ink typo drain drains
"""
READ = frozenset(_READ.split())
"""What a line is read on, by or with."""
_TROUBLE = """
off dark dim wet worn rubbed smudged smudge smeared scratched faded fading peeling peeled torn missing
hidden covered covering blocked fogged misted steamed dirty stopped ran forgot forgotten without moving
moved walking sloshing sloshed swinging wobbling wobbly tilted tilting leaning leaned slope slant slanted
sloping angle crooked sideways upside unhooked half different differing weird odd strange funny dodgy wonky
wrong mixed swapped switched shuffled confused confusing rushed rushing tired quick quickly glance glanced
passing distance far doorway door worse terrible awful crackly tape lap stuck awkward bad poor barely hardly
thick crusted clots clot dried scruffy messy illegible blurry blurred unclear fuzzy cracked iffy
"""
TROUBLE = frozenset(_TROUBLE.split())
"""Beside one of those these make the line doubtful."""
_LIFE = """
pain sleep slept asleep night day shift break breaks lunch tea dinner breakfast supper food meal meals
eating ate eat drink drinks drinking appetite toast meds med medication medications tablets tablet pills
dose insulin heparin warfarin morphine antibiotics antibiotic paracetamol potassium bloods labs lab results
result xray cxr scan discharge discharged home rehab transport ambulance theatre review round rounds
rounding meeting consent allergy allergic weight temp temperature bp sats obs vitals pulse fever rash nausea
nauseous vomiting dizzy faint vision hearing wound dressing catheter cannula urine bowels bowel stool
mobility shower wash chair toilet commode falls rails diet dietician swallow swallowing dentures ipad
charger tv remote bell manager roster rota weather traffic car parking uniform stethoscope mask masks
isolation swab swabs covid flu cough coughing sputum breathing sedation sedated drowsy aphasic disoriented
mood anxious upset tearful mattress pillow blanket heating noise chilly cold hot warm busy hectic his her
him hers he'll she'll who's mum's wife's family family's wants wanting tomorrow later kin relatives surgery
op procedure plan plans infection uti sepsis clinic upstairs downstairs phone updated leg legs arm arms hand
hands back hip knee foot feet skin mole hair teeth ear ears nose throat tummy interpreter language english
bag bags coat keys visitors visiting visit
"""
LIFE = frozenset(_LIFE.split())
"""What a patient, a visitor or a nurse has to do with beside a drain."""
OTHERS = (
    (LIFE | PATIENTS | RELATIVES | STAFF | HIMSELF | ROOM | CLOTHES | NAMES)
    - READ
    - frozenset({"someone", "somebody", "present", "they", "charge", "mo", "kit"})
)
"""Of these a doubt is, and not of the line."""
SHORT = {
    "<a word>": r"(?: \w+)?",
    "<two>": r"(?: \w+){0,2}",
    "<any>": r"(?: \w+){0,3}",
    "<more>": r"(?: \w+){0,5}",
    "<hope>": r"(?:hope|hoping|hopefully|fingers crossed|pray|praying)",
    "<it>": r"(?:it|that|this)",
    "<it is>": r"(?:that's|thats|that is|it's|its|it is|it was|this is)",
    "<not>": r"(?:not|nt|no|never|hardly|nobody|none|isn't|isnt|ain't|wasn't|wasnt|hasn't|hasnt)",
    "<cannot>": r"(?:can't|cant|cannot|couldn't|couldnt|wouldn't|wouldnt|would not|won't|wont)",
    "<did not>": r"(?:didn't|didnt|doesn't|doesnt|does not|don't|dont|do not|never|not)",
    "<may>": r"(?:may|might|could|may've|might've|mightve|could've|couldve)(?: have| of|ve| well)?",
    "<somebody>": r"(?:charge|someone|somebody|anyone|anybody|you|they|we|i|one of you)",
    "<look>": r"(?:look|check|see|read|confirm|verify|recheck|clarify)(?: at)?",
    "<should>": r"(?:should|ought to|needs? to|must|better|may want to|might want to)",
    "<glance>": r"(?:look|pair|set|check|opinion|reading)",
    "<barely>": r"(?:barely|scarcely|only|only half|just about|never|didn't|<cannot>)",
    "<seems>": r"(?:seems?|seemed|looks?|looked|sounds?|feels?)",
    "<another>": r"(?:second|another|fresh)",
    "<its one>": r"(?:line|one|mark|bed|box|canister|patient|pt|person|number|tube|drain|reading|room)",
    "<other>": r"(?:old|previous|wrong|other|next|neighbour|neighbor|last|earlier)(?:'s|s)?",
    "<hard>": r"(?:hard|tough|tricky|difficult|awkward|impossible)",
    "<sure>": r"(?:sure|certain|confident|convinced|positive)",
    "<off>": r"(?:off|out|wrong|mistaken|misread|not right)",
    "<called>": r"(?:shouted|yelled|hollered|called|texted|messaged|rang|phoned|relayed|passed)",
    "<source>": r"(?:(?:white)?board|sheet|notes?|handover|report|paper|shift(?:'?s)?|nurse|glove|chart)",
    "<the>": r"(?: (?:the|a|my|his|her|our|last|day|night|old|previous|ward|handover|other))*",
    "<written>": r"(?:scribbled|scrawled|written|jotted|noted|put|left|wrote|recorded|charted|on)",
    "<odd>": r"(?:weird|odd|strange|funny|wonky|fishy|dodgy|suspicious|suss?|sketchy|shady|shaky|unlikely)",
    "<who>": r"(?:he|she|they|pt|patient|physio|aide|student|orientee|float|handover|days|nights|tech)",
}
OUTRIGHT = r"""
<hope><more> right <its one>|<hope>(?: <it is>| i)+<two> (?:right|correct|accurate)
<somebody>(?: really)? <should><a word> <look> (?:<it>|me|again)
(?:needs?|deserves|worth|wants?|could do with|wouldn't mind|like)<any> <another> <glance>
<another> <glance><any> (?:needed|please|pls|wanted)
<another> (?:look|pair of eyes|set of eyes)(?: at <it>(?: one)?)?$
(?:can|could|would) <somebody><two> <look> (?:<it>|me)
<look>(?: <it>)? again(?: to be (?:safe|sure))?$|re ?-? ?read(?:ing)?(?: it| that| and \w+)?
id like<any> recheck
(?:pending|awaiting|until|till|til|needs?|for|please|pls|after|without|to)<two> re ?-? ?check<a word>$
(?:double|dbl) ?-?check (?:me|my)|check (?:me|my (?:maths?|numbers?|reading))<a word>$
<not> (?:\w+ ){0,3}(?:witnessed|checked|verified|confirmed|countersigned|cosigned)<any>
(?:not|never) (?:\w+ )?seen by me|not seen (?:myself|personally)|un(?:witnessed|checked|verified|confirmed)
(?:\w+ )?<called>(?: <it>| the number)(?: out| across| over| through)?<any>
(?:believe|trust|credit) (?:<it>|my eyes)<a word>|(?:makes?|making) (?:no|little|zero) sense|mistaken$
(?:confirm|check|verify|clarify|compare) (?:<it> )?with<more>
before (?:you|u|we|anyone) (?:put|log|chart|enter|add|record|use|save)<any>
(?!100|hundred)(?:\w+|\d+) ?(?:%|per ?cent|pct) <sure>|(?:want|wanna|like|going) to say<more>
(?:as )?per(?: the| our)?<a word> (?:tech|aide|handover|student|<source>)
(?:get|have|ask|getting|find)<two> (?:else|charge|colleague|another)<a word> to <look><a word>
(?:will|to|ill|i'll|gonna|need to|want to) re ?-?(?:read|measure)(?: it| that)?$
(?:box|canister|bottle|pt|he|she)<any> (?:in|on) (?:his|her|the) (?:lap|legs?|knees?)$
(?:box|canister|bottle|it)<any> (?:was )?on the bed$
light(?:s|ing)? (?:was|were) (?:off|out|down|low|dim|bad|poor)|(?:in|was|so|too|pitch) (?:the )?dark$
(?:between|in between) (?:the |two )?(?:lines|marks)<more>
(?:tape|sticker|label|clamp|blanket) (?:over|covers|across)<more>
(?:my |the )?(?:watch|clock)<two>(?: is| was| has| had)? (?:slow|fast|wrong|dead|died|broken|off)
my watch stopped
(?:forgot|didn't|didnt|failed) to (?:look|note|check|see|write)<more> (?:time|clock|watch|when)
(?:eyes|eyesight|vision) (?:are|is)<a word> (?:gone|bad|tired|going|shot|blurry)
(?:bit|little|very|so|looks)? ?(?:flaky|sketch|questionable|<odd>)(?: (?:tho|though|this|that|to me|one))?$
^looks like$
^prob\w{0,3}ly$
(?:not|<hard>|<barely>|half|had to|tried to)<two> (?:see|saw|seen|squint)<more>
<barely><two> (?:read|look|looked|make out|view)<more>
<hard><two> (?:read|see|judge|tell|gauge|spot|make out|call|say)<two>
(?:reads?|saw|got|had|makes|made|sees)<two> (?:different(?:ly)?|something else|another number|otherwise)
(?:best|closest|nearest) (?:i|we|that i|one) (?:could|can|had|got)<two>|best (?:effort|estimate|attempt)
(?:best|near|far|close|well|good)(?: as)? (?:i|we) (?:can|could) (?:see|tell|make out|judge|get|gauge|do)
(?:from|by) what i (?:can|could|remember|recall|saw|heard)<two>|to the best of my
(?:what|as|if|all) i (?:can )?(?:recall|remember)
(?:confidence|certainty)(?: is| was)? (?:low|poor|shaky)|low confidence|second thoughts?
(?:<cannot>|<did not>) (?:quite |really )?agree on|different (?:numbers|figures|readings|levels)
unless (?:i|i'm|im|i've|ive|my|it|it's|the|that|thats|that's)\b<more>|overheard<more>
(?:winged|winging|fudged|fudging) it
<may><a word> (?:fat fingered|transposed|mistyped|typoed|misjudged|confus\w+|mix\w+|muddl\w+)
(?:possible|maybe a|might be a|could be a|probable|likely) (?:typo|misread|error|mistake|mix ?-?up)
\? ?(?:accurate|correct|right|time|bed|wrong|pt|patient|level|number|reading|misread|typo|error|true)\b
<not><two> <sure> (?:abt|about|of|on|with|by|if|which|whose|that|it)<two>(?: <it>| one)?$
<not>(?: (?:too|very|v|vry|much|that|so|really|rly|all|quite|entirely|totally|sister|still))* <sure><a word>$
(?:i )?(?:wanna|want to|gonna|going to|would|'d) say(?: so)?$|(?:lets|let's) (?:say|call it)<a word>
<cannot><a word> (?:put my|stake|bet|swear|vouch|sign)<more> (?:<it>|one)$
(?:got|taken|took|copied|going|go|lifted|pulled|straight|read|had|have)<two> (?:off|from|by)<the> <source>
(?:over|down|on) the phone|in passing|second ?hand|(?:told|said|heard)<any> (?:phone|passing|corridor)
(?:<it is>|what) (?:what )?<who><a word> (?:said|says|told|told me|reckons|thinks|had|got|wrote)
(?:reckons?|says|said|thinks?|claims?|swears)<a word> (?:<it is>|that was) (?:what|the)
(?<!does that )(?<!does it )<seems>(?: (?:like|a|very|too|so|such|quite|bit))* (?:big|huge|lot|jump|drop|leap)
<seems>(?: (?:like|a|very|too|so|quite|bit))* (?:good to be true|strange|different|unlikely|<off>)
<odd><a word> (?:number|reading|figure|value|one|level|line|result|if you|tho|though|i know)
(?:<did not>)<a word> (?:add up|tally|match|fit|make sense|feel right|sound right|look right)<more>
<it> <cannot> be(?: right| true| correct)?$|(?:more|less|higher|lower) than i (?:expected|thought)
does <it> (?:sound|look|seem) (?:right|ok|correct|plausible)
is (?:that|it) (?:right|correct|even possible|possible)
(?:or|maybe|perhaps|possibly) (?:maybe )?(?:<it is>|the) (?:the )?(?:one above|one below|<other>)<two>
<may>(?: be| been)<two> <other> <its one><any>
(?:whose|which)<any> (?:<its one>|it) (?:<it>|is|was)<a word>
(?:somewhere|something|someplace) (?:round|around|about|near|like) (?:there|that|it|here|then)$
for what it'?s? ?(?:is )?worth|fwiw|(?:god|goodness|lord|heaven|who) knows(?! why)<any>$
(?:not|never|without|no)(?: a)?<a word> (?:clue|idea) (?:if|whether)<any>
only (?:saw|glanced|looked|caught)<more>
(?:saw|looked|glanced|read)<any> (?:from|in) (?:the )?(?:door(?:way)?|distance|far|above|across|below|mirror)
(?:not|wasn't|wasnt|never)(?: at| on)? eye level
without (?:my |any )?(?:glasses|specs|contacts|lenses|readers)<two>
(?:forgot|lost|left|no|broke|need)(?: my| the| any)? (?:glasses|specs|contacts|readers)<a word>
(?:rushing|in a rush|in a hurry|half asleep|so tired|dead on my feet)<more>
(?:hold|leave|keep|park)(?: off)?(?: on)? (?:<it>|off)(?: one)?(?: (?:til|till|until|for)<any>)?$
(?:think+|thnk|thik)(?: anyway| tho| though| so)?$|(?:prolly|probs|mayb|mebbe|praps|poss)$
<did not> trust<any>
(?:didn't|didnt|never|<cannot>|hard to)<a word> get (?:a |any )?(?:\w+ )?(?:look|view|close|near|torch)<more>
(?:facing|turned|pushed)<a word> (?:the wall|away|backwards|under)<any>
(?:blanket|curtain|sheet|gown|towel) (?:was |is )?(?:over|on|across|in front of) (?:it|the)<a word>
lost track of (?:the )?time
times?(?: is| are| was)? (?:a |an |only )?(?:approx\w*|guess\w*|estimate\w*|iffy|ish|rough|off)
(?:it's|its|that's|thats|this is|it was) what (?:was|is|they|someone|somebody)<a word> <written><more>
(?:his|her|their|pts?|patient's|the) (?:left|right) or (?:mine|yours|my|our|his|hers)<a word>
(?:which|what|where|how)<more> (?:do|should) (?:i|we|you) (?:read|use|take|go by)<any>
i question (?:it|that|this)<a word>
(?:a|my|best|wild|quick) (?:stab|punt|flyer)(?: (?:at|in|on)<two>)?
(?:out of|from) (?:the |thin )*air|up in the air|(?:by|from) heart
(?:<not>|<cannot>)<two> (?:(?:spot|bang|dead) on|hand on heart)
^(?:i think |think |i reckon )?<may> (?:be|been)? ?(?:his|her|their|the|from)(?: \w+){1,2}$
^(?:or )?(?:maybe|probably|possibly|perhaps) (?:his|her|the|from|in|at|during|pre|post|before)(?: \w+){1,2}$
(?:know|sure|idea|clue) who (?:he|she) is$
(?:mask|visor|goggles)<two> (?:fog\w*|steam\w*|mist\w*|in the way)
(?:jotted|scribbled|scrawled|squiggles?) (?:it )?(?:down )?on (?:a|the|his|her|my)<two>
going by<more>
no clock in (?:there|here)|was it (?:before|after|the|his|her|left|right|a|bed)\b<more>
(?:that|it) or (?:near|nearly|about|almost|more|less)<more>
whenever <it> was|(?:unless|always|keep)<two> mix(?:ing|ed)?<any>
mix(?:ing|ed)(?: up)? (?:my|the) (?:patients|pts|beds)
<not><a word> label(?:led|ed|s)?<any>
labels? (?:fell|came|has come|have come|is|are)<a word> (?:off|missing|gone|swapped)
(?:way|miles|bit|little) (?:off|out|too (?:high|low|much))(?: i think)?$
<not> (?:what i )?expect(?:ed|ing)?<any>
(?:correct|tell|shout|shoot|sorry|apologies|apols|forgive)(?: me)? if (?:(?:i'm|im|i|<it is>) )?<off><a word>
(?:may|might|could) need (?:correcting|amending|fixing|adjusting)
subject to (?:change|correction|checking|confirmation)
(?:keyed|punched|pressed)(?: in)? \d+
placeholder|prelim(?:inary)?|for now (?:at least|anyway)?$|to be (?:updated|amended|corrected)
(?:damn |bloody |stupid )?auto ?-?correct<any>|(?:typing|typed)<any> (?:typos|one hand|gloves|dark)<a word>
(?:brain|head)(?: is|'s)?<a word> (?:fried|mush|gone|dead|foggy)|not with it (?:today|tonight)
"""
"""Whatever else it says, a clause with one of these puts the line in doubt."""
SURE = r"""
(?:but|and|so)(?: i know| i'm sure)? (?:<it is>|is|was)<a word> (?:right|correct|fine|true|accurate)
(?:without|no|not a|beyond)(?: a| any)? (?:doubt|question|mistake|error)s?
(?:double|triple|dbl|re) ?-?check(?:ed|d)|so i know|i'd swear|certain(?:ly)?$|that's (?:it|all)$
thats (?:it|all)$
"""
"""With one of these it is sure after all."""
_STRICT = """
number numbers num figure figures digit digits reading readings readout scale markings gradations graduations
scribble scribbles scrawl foam froth
"""
STRICT = frozenset(_STRICT.split())
"""What a line is read on or by, and nothing else."""
_SOUND = """
checked verified witnessed inked initialled initialed initials clear clearly exact good right correct same
matches match confirmed marked dated timed signed charted written wrote eye twice fine ok sure fresh legible
visible labelled phone tel telephone next last hourly due new settled gone none no recorded taken myself own
swear positive trust accurate straight certain definitely really true stand standing secure safe below
upright hanging hung triple double level
"""
SOUND = frozenset(_SOUND.split())
"""With one of these what it is read on is as it should be, or it is not of this reading."""
_PLAIN = """
bed b rm room mark line level at is @ ml mls cc the of on reads reading was now and with no leak suction seal
tidaling swinging up to left right : , = - # canister old new changed final out tube in ct ago min pm am hrs h
"""
PLAIN = frozenset(_PLAIN.split())
"""Beside numbers these alone put nothing in doubt."""
COVERS = frozenset({"foam", "froth", "bubbles", "smear", "smudge", "glare", "condensation", "tape", "label"})
"""What hides a line, until it is gone."""
