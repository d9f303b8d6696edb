"""Stops that a recogniser writes within a sentence: "no. leak", "don't. chart bed 9", "80 since. Last mark".

Left out behind a word that ends no sentence, and before one that begins none, so that what denies or bounds a
number stays with it. Dictation only. Called by `heard`.
"""

from __future__ import annotations

from collections.abc import Sequence

from .patterns.asides import STAFF
from .patterns.clockwords import AMPM, HOUR_WORDS, MINUTE_WORDS
from .patterns.leads import BED_SAID, LINES
from .patterns.levels import MILLILITRES
from .patterns.numerals import TEENS, TENS, is_number
from .tokens import Token, text_at

STOPS = frozenset({".", ";"})
ENDS = frozenset({"", ".", ";", ",", "!"})
_NEVER_LAST = """
a an the my his her their our your another every at @ of with from by and or but per than what's whats who's
into will would should could might must shall almost nearly barely hardly been being half says
"""
NEVER_LAST = frozenset(_NEVER_LAST.split())
"""No sentence ends with these; "at. bed 14" has lost its time."""
AT = frozenset({"at", "@", "and"})
IF = frozenset({"if", "when", "unless", "until", "till", "whether", "because", "once"})
IS = frozenset({"it's", "its", "that's", "is", "was", "are", "were", "be", "has", "have", "reads"})
_SUBJECTS = """
he she they i we it he's she's it's i'm we're there the this that my his her patient what how when please
thanks
"""
SUBJECTS = BED_SAID | frozenset(_SUBJECTS.split())
"""These begin a sentence behind "that's how it is"."""
ASKING = frozenset(
    {"is", "are", "was", "did", "does", "do", "has", "have", "what", "when", "how", "who", "why"}
)
"""At the very start these ask."""
_FOUND = """
air leak leaks leaking bubble bubbles bubbling swing swings swinging tidaling tidal tidalling oscillation
oscillating fluctuation fluctuating output drainage change changes clots clot kinks more further visible
active obvious new additional crepitus suction
"""
FOUND = frozenset(_FOUND.split())
"""Behind "no" these are what there is none of, where none of them stands before: "swing no. leak yes"."""
BEFORE_IS = LINES | FOUND | {"left", "right", "tube", "drain", "canister", "fluid", "seal", "wall"}
"""What "is" tells of: it begins a question only elsewhere."""
FALLS = frozenset(
    {"tipped", "knocked", "kicked", "fell", "fallen", "pushed", "turned", "handed", "hand", "tip"}
)
"""Behind these "over" ends a sentence."""
OTHERS = frozenset(
    {"jp", "wound", "catheter", "urine", "foley", "blood", "heart", "ng", "bulb", "respiratory"}
)
THEIRS = frozenset({"drain", "drains", "vac", "bag", "pressure", "rate", "output", "tube", "sugar", "gas"})
LATER = frozenset({"tomorrow", "yet", "soon", "later", "again", "anymore"})
"""At the end of a message these begin nothing."""
BOUNDS = frozenset({"under", "below", "above", "less", "than", "least", "most", "between"})
GOALS = frozenset(
    {"goal", "goals", "target", "aim", "limit", "plan", "hoping", "aiming", "expect", "expecting"}
)
"""What the number behind is, or what bounds it: "goal. under 200"."""
NO = frozenset({"no", "nil", "zero"})
MORE = frozenset({"longer", "more", "further", "new", "visible", "obvious", "active", "large", "small"})
"""Behind "no" these go on: "no more. Bubbling"."""
OVER = frozenset({"gone", "resolved", "stopped", "ceased", "sealed"})
"""What became of a leak: "leak. Resolved at 1850"."""
SIZES = frozenset({"small", "large", "big", "tiny", "slight", "intermittent", "continuous", "constant"})
SAID_OF = frozenset({"no", "none", "nil", "absent", "yes"})
DENYING = frozenset({"never", "without", "cannot", "dont", "didnt", "isnt", "wasnt", "doesnt", "not"})
TELLING = frozenset({"tell", "told", "telling", "ask", "asked", "let", "inform", "remind", "notify", "page"})
TOLD = frozenset({"the", "a", "my", "his", "her", "dr", "doctor", "him", "them", "me", "us", "day", "night"})
ORDINALS = frozenset({"first", "last", "next", "previous", "final", "closing", "opening"})
AMOUNTS = frozenset({"drain", "drained", "draining", "dumped", "produced"})
COMPARED = frozenset({"less", "more", "higher", "lower", "fewer"})
TAKING = frozenset({"pulled", "took", "keeps", "kept", "wants", "needs", "lost", "had", "has"})
SOMEBODY = frozenset({"he", "she", "they", "who", "pt", "patient"})
OCCASIONS = frozenset({"one", "time", "hour"})
SINCE = frozenset({"last", "the", "midnight", "noon", "this", "yesterday", "my"})
PAIRS = frozenset(
    {("air", "leak"), ("chest", "tube"), ("chest", "drain"), ("old", "one"), ("new", "one")}
    | {
        ("in", "the"),
        ("new", "drain"),
        ("new", "tube"),
        ("new", "chest"),
        ("any", "more"),
        ("clamp", "trial"),
        ("clamping", "trial"),
        ("seal", "trial"),
    }
    | {
        ("suction", "turned"),
        ("turned", "off"),
        ("turned", "on"),
        ("fell", "out"),
        ("came", "out"),
        ("fell", "over"),
        ("tipped", "over"),
        ("knocked", "over"),
    }
    | {(age, box) for age in ("old", "new") for box in ("canister", "box", "bottle", "chamber")}
)
"""Two words of one name."""
NUMBERED = frozenset({"past", "ward", "bay", "floor"})
TO_BE_DONE = frozenset(
    {"drain", "change", "clamp", "unclamp", "pull", "remove", "be", "go", "come", "have", "put"}
)
PARTED = frozenset({"past", "to", "of", "after", "till", "til"})
UNITS = MILLILITRES | AMPM.keys() | {"o'clock", "oclock", "hours", "hrs", "minutes", "mins"}
"""Behind a number these begin nothing."""


def flowing(toks: Sequence[Token]) -> Sequence[Token]:
    """The tokens without each stop that parts what was said in one breath."""
    if STOPS.isdisjoint([t.text for t in toks]) and "," not in [t.text for t in toks]:
        return toks
    kept = [t._replace(text=".") if t.text == ";" else t for t in toks]
    k = 1
    while k < len(kept) - 1:
        if _parts_nothing(kept, k):
            del kept[k]
        else:
            k += 1
    return kept


def _beyond(toks: Sequence[Token], k: int) -> str:
    """The second word behind a sign: "than" behind the first of "340, less; than last time"."""
    return text_at(toks, k + 2 + (text_at(toks, k + 2) in STOPS | {","}))


def _parts_nothing(toks: Sequence[Token], k: int) -> bool:
    sign, before, behind = toks[k].text, text_at(toks, k - 1), text_at(toks, k + 1)
    said = {t.text for t in toks[:k]}
    if sign not in STOPS | {","} or behind in ENDS or before in ENDS or toks[k + 1].glued:
        return False
    if _denies(toks, k) or _is_name(before, behind) or _is_goal(toks, k) or _is_put_off(toks, k):
        return True
    if (
        (before in NEVER_LAST and not (before in AT and behind in BED_SAID))
        or before in IF
        or (k == 1 and before in ASKING)
    ):
        return True
    if _is_next_word(toks, k) or (before == "back" and behind in {"on", "off"} and "suction" in said):
        return True
    return _ends_number(toks, k)


def _is_put_off(toks: Sequence[Token], k: int) -> bool:
    """ "tube out. tomorrow", "clamp trial. At 0800 tomorrow"."""
    behind = text_at(toks, k + 1)
    if (behind, _beyond(toks, k)) in {("out", "of"), ("in", "the"), ("came", "out")}:
        return is_number(text_at(toks, k - 1))  # "pain 7. Out of 10", "drained 120. In the last hour"
    if behind in LATER:
        return text_at(toks, k + 2) in ENDS
    return behind == "at" and "tomorrow" in [t.text for t in toks[k + 2 : k + 5]]


def _is_name(before: str, behind: str) -> bool:
    """ "air. leak", "old. one", "JP. drain", "blood. pressure", "end. of shift"."""
    parts = (before == "quarter" and behind in PARTED) or (before in NUMBERED and is_number(behind))
    parts |= (before in {"had", "has", "have"} and behind in {"a", "an", "no", "any"}) or (
        before == "to" and behind in TO_BE_DONE
    )
    parts |= (before in SIZES and behind in FOUND) or (before in FOUND and behind in OVER)
    parts |= before == "said" and is_number(behind)
    return (before, behind) in PAIRS or (before in OTHERS and behind in THEIRS) or behind == "of" or parts


def _denies(toks: Sequence[Token], k: int) -> bool:
    """ "no. leak", "not. swinging", "don't, chart bed 9", "no longer. clamped", "leak. no."."""
    before, behind, further = text_at(toks, k - 1), text_at(toks, k + 1), text_at(toks, k - 2)
    if before in NO:
        return behind == "longer" or (behind in FOUND and _found_before(toks, k - 2) not in FOUND)
    if before in FOUND and behind in SAID_OF:
        return text_at(toks, k + 2) in ENDS and further not in NO | FOUND
    if (before in AMOUNTS or (further, before) == ("put", "out")) and is_number(behind):
        verb = text_at(toks, k - 2 - (before == "out"))
        return verb in {"not", "to"} or verb.endswith("n't")
    more = further in NO and before in MORE
    denied = before in DENYING or before.endswith("n't") or more
    return denied and behind not in BED_SAID and further != "or" and behind != "it"


def _found_before(toks: Sequence[Token], k: int) -> str:
    """The word before a place and its signs: "swing, no. leak yes" says "no" of the swing."""
    while k >= 0 and toks[k].text in {",", "?", ".", ";", ":"}:
        k -= 1
    return text_at(toks, k)


def _is_goal(toks: Sequence[Token], k: int) -> bool:
    """ "goal. under 200", "goal is under. 200", "less than. 200", "if it is over. 200"."""
    before, behind = text_at(toks, k - 1), text_at(toks, k + 1)
    if before == "over":
        return is_number(behind) and text_at(toks, k - 2) not in FALLS
    if before in GOALS:
        return is_number(behind) or behind in BOUNDS | IS
    return before in BOUNDS and (is_number(behind) or behind in BOUNDS)


def _is_next_word(toks: Sequence[Token], k: int) -> bool:
    """ "tell. the doctor", "80 since. Last mark", "first. Line.", "he pulled. His mask off"."""
    before, behind = text_at(toks, k - 1), text_at(toks, k + 1)
    named = before in ORDINALS and behind in LINES and text_at(toks, k + 2) in ENDS | {"of", "for"}
    since = before == "since" and (behind in SINCE or is_number(behind))
    to = before == "to" and is_number(behind) and text_at(toks, k - 2) not in BED_SAID
    told = (before in TELLING and behind in TOLD) or (behind in {"says", "wants"} and before in STAFF)
    so = before in IS and behind not in SUBJECTS
    is_so = before in BEFORE_IS and behind in IS and _beyond(toks, k) not in SUBJECTS
    than = is_number(before) and behind in COMPARED and _beyond(toks, k) == "than"
    occasion = before == "last" and behind in OCCASIONS
    took = before in TAKING and behind in {"his", "her", "their"} and text_at(toks, k - 2) in SOMEBODY
    return named or since or told or to or so or is_so or than or occasion or took


def _ends_number(toks: Sequence[Token], k: int) -> bool:
    """ "1,140. Milliliters", "at 9. pm", "twenty. minutes ago", "twenty minutes. ago"."""
    before, behind = text_at(toks, k - 1), text_at(toks, k + 1)
    if behind == "ago":
        return before in MINUTE_WORDS | HOUR_WORDS
    if before in TEENS.keys() | {"twenty"} and behind in TENS:
        return text_at(toks, k - 2) in {"at", "@"}  # "at eighteen, thirty"
    return is_number(before) and behind in UNITS and text_at(toks, k + 2) not in {"i", "we"}
