"""What says that a line is not put right, taken back or confirmed: thought of, refused, done, compared.

Regular expressions over the words of a message with one blank between them. Called for by `notrighted`.
"""

from __future__ import annotations

import re

from .spelt import alternatives

_SHORT = {
    "<mend>": r"(?:correct|change|fix|amend|edit|update|alter|replace|swap|delete|remove|scrap|scratch|strike"
    r"|withdraw|cancel|undo|void|erase|bin|drop|move|put)",
    "<mended>": r"(?:corrected|changed|fixed|amended|edited|updated|altered|replaced|deleted|removed|scrapped"
    r"|struck|withdrawn|cancelled|canceled|voided|erased|sorted|redone)",
    "<of>": r"(?:about|my|the|that|this|last|\d+|: \d+|hrs|h|am|pm|bed \w+|'s|s)",
    "<made>": r"(?:corrections?|amendments?|edits?|fix)",
    "<fix>": r"(?:correct|fix|amend|change|edit|update|alter|revise)",
    "<isnt>": r"(?:shouldn't|shouldnt|should not|can't|cant|cannot|couldn't|couldnt|isn't|isnt|wasn't|wasnt)",
    "<wrongly>": r"(?:in error|by mistake|wrong|wrongly|incorrectly)",
    "<who>": r"(?:i|we|she|he|they|charge|dr|doctor|team|nurse|colleague|boss|manager|sister|somebody|someone"
    r"|nights?|days?)",
}


def _words(lines: str) -> re.Pattern[str]:
    return re.compile(rf"(?<![\w'])(?:{alternatives(lines, _SHORT)})(?![\w'])")


UNDONE = _words(r"""
(?:would|could|might|should)(?:'ve| have| of|ve) (?:\w+ )?<mended>
(?:would|might) (?!you|u |it |there)(?:\w+ )?<mend>
wouldve|would've|i'd have|id have|i'd of
(?:was|were) (?:going|about|meaning|tempted|planning) to|(?:nearly|almost) (?:<mend>|<mended>)
but (?:<who> )?(?:won't|wont|didn't|didnt|refuse\w*|changed my mind|decided (?:not|against)|thought better)
but (?:then )?<who> (?:says?|said|told|wants?|wanted|thinks?|thought|prefers?|insists?|asked)
(?:leave|leaving|keep|keeping|left) (?:it|that|this|them|everything|things|well alone|(?:it )?as (?:it )?is)
as it is|as it was|as they are|stays? (?:as|put|the same|how)|let it (?:stand|be)
(?:has|have|had|was|were|is|got|been)(?: already| just| since)*(?: been)? <mended>
already <mended>|<mended>(?: (?:it|that|this|on \w+))? already
(?:someone|somebody|they|she|he|charge|nights|days|nurse) (?:already |has |have |had |just )*<mended>
(?:i'll|ill|we'll|i will|we will|she'll|he'll|they'll|gonna|going to) (?:\w+ )?<mend>
(?:will|to) <mend> (?:\w+ ){0,4}(?:later|tomorrow|after|tonight|when|once)
if (?!(?:you|u|possible|poss|thats|that's|that is|it's|its|ok|okay|needed|i|anyone))
once <who>|unless|whether
(?:tell|remind|ask|let) (?:me|him|her|them|us|\d+)
no need to|(?:dont|don't|do not|never|didn't|didnt) <mend>
""")
"""A correction or a withdrawal that nobody makes, or that somebody else has made."""
COMPARED = _words(r"""
(?:as|like|than) (?:before|earlier|last time|last hour|yesterday|we thought|expected|usual|always)
(?:the )?usual(?:ly)?|(?:more|less|higher|lower) than|more or less
or so|ish|by now|by then|by (?:the )?(?:end|morning|tonight|lunch|midnight|noon)|by \d\d ?:? ?\d\d
(?<!i )(?<!we )gave(?! you| u)|output|put out|drained|flush(?:ed)?|saline|latest
still \d+ (?:ml |mls )?(?:,|and)? ?not|\d+ (?:ml |mls )?(?:an|1|2|two) hours? ago
(?:more|less) (?:since|in)|what we expected|on the (?:board|whiteboard|label|sticker|tape)
""")
"""A line beside another one, a rough one or one hoped for: nothing was wrong."""
OF_OTHER_TIME = _words(r"""
next|due|meds?|dose|went in|came|arrived|placed|inserted|bed \w+ for \d+|theatre|physio|scan
""")
"""Beside two times these say of what they are: of no line that was read."""
ASKED_FIRST = frozenset({"is", "are", "did", "does", "has", "do"})
"""First in a message these ask."""
OF_CORRECTION = _words(r"""
(?:cancel|scrap|undo|ignore|never ?mind|forget|scratch|delete|disregard|withdraw|reverse) (?:<of> )*<made>
""")
"""What is taken back is no line."""
UNSURE = _words(r"""
maybe|perhaps|possibly|probably|i guess|i think|i suppose|not sure|unsure|dunno|idk|no idea|either|neither
both|if (?:charge|the|dr|she|he|they)|unless|(?:some ?where|some ?time) (?:round|around|about|near|between)
""")
"""Beside a yes, a choice or a bare value it is no answer."""
PUT_WRONG = _words(r"""
ought to|should of|shd|shld|shoud|retimed?|(?:i|we) (?:told|gave) (?:you|u)
transposed|autocorrect\w*|mistyped|(?<!not a )(?<!no )typos?
(?:the |that |my )last (?:one|line|mark|reading|text|entry) (?:is|was)|by mistake|in error
wants? (?:changing|fixing|correcting|taking)
(?:forget|ignore|disregard|scrap|scratch|bin) (?:the |my |that )?\d+
(?:proper|real|true|actual) (?:one|reading|level|number|figure|line) (?:is|was)
swapped the digits|fat finger\w*|finger slipped|wrong (?:column|colum|row|scale|key)|a row out
""")
"""Beside a line these may put one right that was sent before."""
SEVERAL = _words(r"""
last (?:two|2|three|3|few|couple)|both|(?:two|2|three|3) of (?:them|mine)
""")
"""More than one line is taken back."""
RIGHT_ONE = _words(r"""
right (?:one|is|was)|the right
""")
"""The one that is right, or the one on that side."""
WRONG_ONE = _words(r"""
<fix> (?:the |that |my |this |those )?#(?= (?:on|for|in|under|at|bed))
<fix> (?:the |that |my |this )#(?! (?:to|into|with|should|ml to|mls to))
<isnt>(?: be| have been)? #
misread (?:[\w']+ ){0,4}as #
# (?:\S+ ){0,4}(?:entered|sent|typed|put|charted|written|logged) <wrongly>
""")
"""The number is the one that was wrong, and what is right is not told."""
