"""Words beside a value that say that it was wrong, or that it is what is right; and words around them.

Regular expressions over the words of a message with one blank between them, where `#` stands for a value of
the sort that is looked at and those of other sorts are left out. Never put here what a number is of.
"""

from __future__ import annotations

import re

from .spelt import alternatives

_SHORT = {
    "<entered>": r"(?:put|sent|send|wrote|typed|type|keyed|entered|said|texted|charted|logged|recorded"
    r"|called|posted|reported|had|did send|did put|gave you|told you|gave u|told u)",
    "<the>": r"(?:(?:the|my|an?|that|this|old|earlier|first|previous|last|wrong|it|mark|line|level|reading"
    r"|entry|number|figure|value|one|at|as|for|on|in|under|was|is|were|bed|tube|drain|side|time|down"
    r"|up|,|:|like|patients?|just) )*",
    "<be>": r"(?:be|been|read|say|go|gone to|gone on|go to|go on|go under|have been|have read|have gone to)",
    "<should>": r"(?:should(?:'ve|ve| of| have| a)?|shd|shoud|shouldve|shld|ought to(?: have)?|needs? to"
    r"|wants? to|has to|supposed to|meant to|must)",
    "<teller>": r"(?:i|we|it|you|and|,|\.|-|\(|!|:|when|where|phone|i've|ive|student|accidentally|wrongly"
    r"|sorry|oops|but)",
    "<verb>": r"(?:change|replace|correct|amend|edit|alter|swap|switch|update|swap out|take out|fix|retime"
    r"|shift|move|replaced)",
    "<is>": r"(?:it's|its|it is|it was|is|was|reads?|says?|shows?|be|makes?|make|taken|that's|thats|theyre)",
    "<named>": r"(?:<entered>|line|mark|entry|reading|level|one)",
    "<wrong>": r"(?:wrong|incorrect|a typo|typo|a mistake|mistake|a slip|an error|error|misread|a misread"
    r"|out|bad|rubbish|nonsense|mistyped|in error|by mistake|off)",
}


def _over(lines: str) -> re.Pattern[str]:
    return re.compile(rf"(?<![\w'])(?:{alternatives(lines, _SHORT)})")


DENIED_BEFORE = re.compile(
    _over(
        r"""
(?:not|than|instead of|in place of|rather than|never|wasn't|wasnt|isn't|isnt) (?:be |been )?<the>
(?:digits?|zero|nought|figure) (?:in|on|too many in|to) <the>
(?:entered|charted|put|went|typed|written)(?: in| down)? (?:wrong|wrongly|in error|by mistake) as <the>
"""
    ).pattern
    + r"$"
)
ENTERED_BEFORE = re.compile(
    _over(r"""
(?:^|<teller> )<entered> <the>
(?:like )?(?:it|chart|log) says <the>
""").pattern
    + r"$"
)
WRONG_BEHIND = _over(
    r"""
(?:is |was |are |were |'s )?(?:just |clearly |all |my )*<wrong>(?![\w'])
(?:that )?(?:i|we) (?:<entered>|did)(?![\w'])(?! <the>#)
(?:mark |line |level |reading |entry |one )*(?:is |was )?(?:<should>)(?: <be>)?(?![\w'])
(?:like|as) it says
wants? (?:taking|removing|pulling|changing|fixing)
"""
)
TYPED_BEFORE = re.compile(
    r"(?:(?:digits?|zero|nought|figure) (?:in|on|too many in|to) (?:the |my )?|wrong as )$"
)
MISTYPED_BEHIND = re.compile(r"(?:is |was )?(?:just |only )?a? ?(?:typo|slip)(?![\w'])")
"""What was typed is a level, and no time."""
PUT_BEFORE = re.compile(
    _over(
        r"""
from <the>
<verb> <the>
"""
    ).pattern
    + r"$"
)
"""With what it is put to behind them these say that a value is wrong."""
MEANT_BEFORE = re.compile(
    _over(
        r"""
<should> <be> <the>
(?:belongs?|goes|go) (?:to|under|on|in|with) <the>
(?:i )?(?:meant|mean)(?: to)?(?: (?:put|send|say|write|type|have))?(?: <the>)?
(?:true|real|right|correct|actual|proper) (?:<the>)?(?:is|was|at|=|:) <the>
"""
    ).pattern
    + r"$"
)
PUT_TO = re.compile(
    _over(
        r"""
(?:to|into|with|w|be) <the>
"""
    ).pattern
    + r"$"
)
LIKELY_RIGHT = re.compile(
    _over(r"""
<is> (?:at |on )?(?:really |actually |clearly |definitely |now )*<the>
(?:really|actually|clearly|definitely) (?:taken |read |at )*<the>
(?:pen line|line|level|canister|box) (?:is )?(?:on|at) <the>
""").pattern
    + r"$"
)
GIVEN_BEFORE = re.compile(
    _over(r"""
(?:belongs?|goes|go) (?:to|under|on|in|with) <the>
""").pattern
    + r"$"
)
POINTED = re.compile(
    _over(r"""
(?:the|my|that|what|whatever|one)(?: i)?(?: <named>)*(?: (?:on|in|under|for|from|at|as))*(?: bed)?
""").pattern
    + r" $"
)
"""With what is right behind them these name the bed, the tube or the time of the line that is wrong."""
RIGHT_BEHIND = _over(
    r"""
(?:is|was) (?:right|correct|what it is|the right|the correct)(?![\w'])
(?:@ )?(?:, )?(?:and )?(?:instead of|rather than|not) <the>#
"""
)
_MENDING = """
change correct fix amend edit alter update replace replaced swap make correction amendment retime shift move
mend wrong switch
"""
MENDING = frozenset(_MENDING.split())
"""With one of these "to" and "from" are of a line that is put right."""
SLIPS = re.compile(
    r"(?<![\w'])(?:transposed|mistyped|typos?|misread|autocorrect\w*|fat finger\w*|finger slipped|in error"
    r"|wrong (?:colum\w*|line|side|scale|row|key|number|figure|level|reading)"
    r"|(?:extra|missed a|missing a) digit|swapped the digits|digits swapped|by mistake"
    r"|(?:proper|real|true|actual) (?:reading|level|number|figure|line|one))(?![\w'])"
)
_NEUTRAL = """
the a an my that this it its it's i we he she they you u me us him her our your there here one ones thing
what who thats that's theyre they're line lines level levels mark marks reading readings entry entries
number numbers figure value values canister box chamber bottle drain tube tubes drains side closing final
opening last previous first earlier text message msg recheck mixed up bed beds room rm rms time times column
colum phone paper is was were are be been being has have had does do did 's put sent send wrote typed type
entered said gave told texted charted logged keyed recorded reported called posted read reads says say
saying shows showed show looked checked rechecked reread measured marked counted taken took went got makes
change correct fix amend edit update alter make replace replaced swap revise switch redo retime shift move
mend swapped corrected amended moved using use correction amendment mistake typo error slip wrong right
incorrect true real actual proper meant mean out misread mistyped digit digits extra zero bad off actually
really clearly definitely just only again properly plainly obviously not never instead rather than please
pls plz plese thanks thx ta sorry oops can could somebody someone may so but and when where as for on in at
of to from with w into by under like which cos because also no yes , charge nurse nurses tech student
colleague day night buddy should shd shoud shouldve should've shld ought needs need wants want supposed ve
belongs belong goes go fine tho though taking standing stood patient patients pt wrongly chart way round
labels lol idiot down hi hello ps re too whatever anything mls hrs h hr
"""
NEUTRAL = frozenset(_NEUTRAL.split())
"""Words of a clause with a value that say what was wrong, what is right, and no more."""
SENT_AT = re.compile(r"(?:sent|send|texted|charted|logged|recorded|reported|posted)(?: it| this)?(?: at)? $")
"""Before a time it is when that was done, and not what was told."""
BY_OTHERS = re.compile(
    r"(?<![\w'])(?:she|he|they|nurse|tech|student|charge) (?:typed|put|said|wrote|sent|entered|charted)"
)
BY_ME = re.compile(r"(?<![\w'])(?:i|we) (?:typed|put|said|wrote|sent|entered|charted|had)(?![\w'])")
DOUBTFUL = re.compile(
    _over(r"""
(?:if|whether|or|would|wouldve|would've|wouldn't|wouldnt|i'd|id|might|may|maybe|perhaps|unless|until|till)<end>
(?:could(?! (?:you|u|we|someone|somebody|i|yo))|once(?! more)|will(?! do(?: |$))|i'll|ill|we'll|gonna)<end>
(?:going to|tomorrow|tonight|next|about|around|roughly|approx\w*|ish|circa|~|usual|usually|normally)<end>
(?:yesterday|hour|hours|hourly|goal|target|limit|(?<!any )(?<!once )more|less|leave|leaving|keep|keeping)<end>
(?:stays?|already|think|guess|suppose|reckon|sure|unsure|idea|clue|dunno|idk|either|neither|wait|hang)<end>
(?:hold|nearly|almost|won't|wont|refused?|disagrees?|why|how|did (?:i|you|we)|was it|is it|is that)<end>
(?:not at \d+|(?:did not|didn't|didnt) (?!say|tell|mean)|not a typo|no typo)
(?:know|tell|ask|which is|check(?! it| with)|earlier(?! \d| (?:line|mark|one|reading|entry))|previously)<end>
(?:last|previous) (?:time|hour|shift)<end>|(?:should|shall) (?:i|we|you)<end>
(?:both|drained|output|out of|gone from|went from|up from|down from|before(?! you)|compared|expected)<end>
(?:said that|not sure|for now|hopefully|again\?|by now|still|somehow|came on|hand(?:ed)? ?(?:over|off))<end>
(?:handover|had \d+ (?:ml |(?:for|on) (?:bed )?\w+ )*at|(?<!just )now)<end>
(?:urine|foley|catheter|ng|bp|hr|hb|sats|dose|weight|suction|seal|wall|kg|order|ordered|(?<!when )i say)<end>
(?:dont|don't|do not|never|no need to|not to|not going to|asked me to|told me to|wants me to) <verb><end>
(?:dont|don't|do not|never|no need to|not to|asked me to|told me to|wants me to) (?:delete|scrap|put)<end>
""").pattern.replace("<end>", r"(?![\w'])")
)
"""With one of these nothing may be put right, or it is asked."""
