"""What is put as by whoever has learnt English later: "it falled", "was make a kink", "it was other patient".

Each is put as it is said at home, where the words around leave nothing else; `bareverbs` gives the verbs
their endings. Here too what is said in more words than needed: "suction was found off", "i had written 840".
Called by `pipeline`, for typed messages.
"""

from __future__ import annotations

from collections.abc import Sequence

from .described import SAME, said_so, shortly
from .tokens import Token

PAST = {
    "falled": "fell",
    "felled": "fell",
    "comed": "came",
    "goed": "went",
    "breaked": "broke",
    "taked": "took",
    "putted": "put",
    "maked": "made",
    "gived": "gave",
    "losed": "lost",
    "writed": "wrote",
    "slided": "slid",
    "standed": "stood",
    "getted": "got",
    "finded": "found",
    "sended": "sent",
    "bringed": "brought",
    "keeped": "kept",
    "sleeped": "slept",
}
"""Verbs that are irregular at home."""
DRAIN = r"(?:drain|tube|tubing|box|canister|bottle|chamber|system)"
BED = r"(?:(?:bed|room|rm) )?\d+(?: ?[a-z])?"
MADE = r"(?:make|makes|made|making|get|gets|got|form|formed|forms)"
GIVES = r"(?:make|makes|made|give|gives|gave|drain|drains|drained|produce|produces|produced|did|put out)"
BY_ITSELF = r"(?<! i )(?<!^i )(?<! we )(?<!^we )(?<!they )(?<!nurse )"
"""Whoever gives is no drain."""
LAST = r"last (?:time|check|line|one|reading|mark|control|round|hour)"
AMOUNT = r"\d+ (?:ml|mls|cc)"
WROTE = r"(?:written|put|said|typed|entered|charted|recorded|sent|reported|noted)"
SWINGS = r"(?:swing|swinging|tidaling|tidalling|oscillating|fluctuating|swings|tidals)"
PLACE = r"(?:pleural|apical|basal|upper|lower|anterior|posterior|mediastinal)"
SERVICE = (
    r"(?:maintenance|engineering|biomed|estates|facilities|surgeon|doctor|team|provider|registrar|thoracics)"
)
CALLED = r"(?:called|paged|informed|notified|bleeped|alerted|aware)"
NOT_TO = r"(?:range|on|off|leak|swinging|over|out|\d|kinked|clamped|tipped|dislodged|disconnected|cracked) "
"""What may stand before whoever was called, so that a clause begins there."""
OF_BED = r"(?:patient|pt|he|she|the|drain|canister|his|her)"
STAYS = r"(?:remains|stays|still)(?: in(?: place| situ)?)?"
THEN = r"(?:(?:[,;/.]|and|or|but|not|no|is|still) )"
WHERE = r"(?:under|at|in|by|behind|near|with|when|where|around)"
STOP = r"(?= [,.;!)-](?: |$)| and | now |$)"
NO_LEAK = (
    said_so(rf"(?:^|[,.;!/-] |\d+ |ml |and )(?P<x>not leaking)(?= {THEN}*{SWINGS}(?: |$))", "no", "leak"),
    said_so(rf"{SWINGS} (?:[,;/.] |and |but )*(?P<x>not leaking){STOP}", "no", "leak"),
)
"""A drain that is not leaking beside whether it swings; a dressing or a box may be meant elsewhere."""
KINKED = (
    said_so(
        rf"(?:{DRAIN}|it|\d+) (?P<x>(?:(?:was|has|is|had|have|did) )?{MADE} (?:a |one |some )?"
        rf"(?:small |little |big )?kink)(?= {WHERE}(?: |$)|{STOP[3:]}",
        "kinked",
    ),
)
TOLD = (
    said_so(
        rf"{DRAIN} (?:(?:of|from|in|on) {BED} )?(?P<x>it)(?= (?:fell|came|went|was|is|has|broke|tipped))"
    ),
    said_so(
        rf"{BY_ITSELF}(?P<x>{GIVES}) {AMOUNT} (?:(?:more|extra) )?(?:from|since) (?:the |my )?{LAST}{STOP}",
        "drained",
    ),
    said_so(rf"drained {AMOUNT} (?P<x>(?:(?:more|extra) )?(?:from|since)(?: the| my)?)(?= {LAST})", "since"),
    said_so(
        r"(?:was|is|of|for|from) (?P<x>other)(?= (?:patient|pt|person|room|man|lady|woman)(?: |$))", "another"
    ),
    said_so(
        r"(?:\w+n't|\w+nt|not|never|cannot|unable to) (?:get|make it)(?: round)? (?P<x>to)"
        r"(?= \d+ (?:at|for|by) \d)",
        "to",
        "bed",
    ),
    said_so(rf"^{BED} (?P<x>-)(?= {OF_BED} )"),
    said_so(
        rf"(?:removed|pulled|out) .{{,80}}(?:left|right|other) (?P<x>(?:{PLACE} )?{DRAIN} {STAYS}){STOP}",
        "stays",
    ),
    said_so(
        rf"{NOT_TO}(?P<x>{SERVICE})(?= {CALLED}(?: [,.;!]|$))",
        ",",
        SAME,
    ),
    said_so(
        r"(?:dislodged|out|disconnected|off) (?P<x>holding|applying)(?= (?:gauze|pressure|a dressing))",
        ",",
        SAME,
    ),
    said_so(r"(?P<x>strait) (?:away|after)", "straight"),
    said_so(r"since (?P<x>the|his|her|its)(?= (?:placement|insertion)(?: |$))"),
    said_so(
        rf"(?:^|[,.;!-] )(?P<x>(?:i|we) (?:fix|fixed|repair|straighten|adjust)(?: it| this| that)?){STOP}",
        "fixed",
    ),
    said_so(
        rf"(?:i|we|\d+) (?P<x>fix)(?= (?:the|his|her|a) (?:{DRAIN}|kink|dressing|clamp|tape|suction)(?: |$))",
        "fixed",
    ),
    said_so(r"(?P<x>after (?:this|that))(?= (?:it|now|swing\w*|drain\w*))"),
    said_so(
        r"suction (?P<x>(?:was |is |has been )?(?:found|noticed|seen|discovered)(?: to be)?)(?= off(?: |$))"
    ),
    said_so(rf"(?:i|we) (?P<x>had {WROTE})(?= (?:down )?\d)", "wrote"),
    said_so(
        r"\d+ or (?P<x>(?:was it|is it|maybe|perhaps|possibly|was that|it was|it may be)(?: at)?)(?= \d)"
    ),
    said_so(rf"no change (?P<x>on)(?= {BED} since (?:the |my )?(?:{LAST}(?: |$)|last(?: [,.;!]|$)))", "bed"),
)
_STARTS = """
it to - remains stays still called paged informed notified bleeped alerted aware holding applying kink more
from other placement insertion fix fixed repair straighten adjust after found noticed seen discovered had or
leaking change strait
"""
STARTS = frozenset(_STARTS.split())
"""Where none of these words is, there is nothing to look for."""
DOUBTING = frozenset(
    {"if", "whether", "unless", "case", "?", "might", "may", "could", "would", "will", "when"}
)


_LEAKING = """
dressing dressings dsg dsgs site sites wound wounds skin suture sutures stitch stitches iv cannula port
canister canisters box boxes bottle chamber container valve bag foley catheter urine stoma upright intact
"""
LEAKING = frozenset(_LEAKING.split())
"""What else is not leaking."""


def plain(toks: Sequence[Token]) -> Sequence[Token]:
    """The tokens, each of these as it is said at home."""
    said = {t.text for t in toks}
    if not said.isdisjoint(PAST):
        toks = [t._replace(text=PAST.get(t.text, t.text)) for t in toks]
    if STARTS.isdisjoint(said):
        return toks
    rules = [*TOLD, *(KINKED * said.isdisjoint(DOUBTING)), *(NO_LEAK * said.isdisjoint(LEAKING))]
    return shortly(toks, rules)
