"""Verbs told without their ending, as by whoever has English as a second language: "drain is remove".

Each is put as it would be told at home: "was having 1950" as had, "consultant say" as says, "no have bubbles"
as no bubbles. A question, a wish, a condition or a plan in its clause leaves it as it was said: "if doctor
remove the drain". Called by `pipeline`.
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence

from .tokens import Token

DONE = {
    "remove": "removed",
    "change": "changed",
    "replace": "replaced",
    "exchange": "exchanged",
    "disconnect": "disconnected",
    "reconnect": "reconnected",
    "discharge": "discharged",
    "transfer": "transferred",
    "insert": "inserted",
    "clamp": "clamped",
    "unclamp": "unclamped",
    "kink": "kinked",
    "tip": "tipped",
    "crack": "cracked",
    "break": "broken",
    "dislodge": "dislodged",
    "pull": "pulled",
    "knock": "knocked",
    "swing": "swinging",
    "bubble": "bubbling",
    "oscillate": "oscillating",
    "fluctuate": "fluctuating",
    "connect": "connected",
    "stop": "stopped",
    "start": "started",
    "block": "blocked",
}
"""What is done to a drain, and what it does: behind "is"."""
TOLD = {
    **{base: told for base, told in DONE.items() if told.endswith("ed")},
    "break": "broke",
    "lose": "lost",
    "fall": "fell",
    "come": "came",
    "go": "went",
    "take": "took",
    "write": "wrote",
}
"""The same behind whoever did it."""
ENDED = {"fall": "fell", "come": "came", "go": "went"}
"""Behind "is" these were done by the drain or the patient itself: "is fall down" as fell down."""
OWNING = frozenset({"has", "have", "had", "got", "gets"})
HELPERS = OWNING | {"is", "was", "are", "were", "been", "it's", "being"}
NOUNS = frozenset(
    {"discharge", "transfer", "change", "break", "swing", "bubble", "clamp", "kink", "pull", "stop", "start"}
    | {"block", "crack", "tip", "knock", "exchange"}
)
"""Behind "has" these are what somebody has: "has discharge today"."""
ITSELF = frozenset({"the", "his", "her", "it", "bottle", "box", "canister", "bag", "this", "that"})
BESIDE = frozenset({"already", "now", "just", "also", "again", "all", "not", "fully", "accidentally"})
"""Between the helper and its verb."""
NAMING = frozenset({"of", "in", "trial", "test", "order", "orders", "over", "needed", "due", "pus"})
"""Behind a verb these leave it a noun: "is change in colour", "is clamp trial"."""
WISHED = frozenset(
    {"plan", "plans", "order", "orders", "goal", "aim", "need", "task", "idea", "advice", "next", "job"}
    | {"there", "there's", "what", "what's", "where", "when", "which", "who", "how", "why", "thing", "if"}
    | {"instruction", "instructions", "decision", "wish", "suggestion", "request", "best", "better", "no"}
)
"""Before the helper: what is so is no event."""
DOERS = frozenset(
    {"i", "we", "he", "she", "they", "doctor", "dr", "doc", "consultant", "surgeon", "registrar", "nurse"}
    | {"patient", "pt", "physio", "colleague", "resident", "fellow", "team", "sister", "somebody", "someone"}
    | {"baby", "kid", "boy", "girl", "intensivist", "md", "doctors"}
)
DRAINS = frozenset({"drain", "tube", "bottle", "box", "canister", "bag", "chamber"})
BY_ITSELF = frozenset({"fall", "come", "stop", "break"})
"""What a drain does; a "drain change" is no deed of it."""
WRITERS = frozenset({"i", "we", "they"})
"""Behind these the bare verb is right at home, for what is done every day: a time must be told."""
UNREAL = frozenset(
    {"if", "unless", "until", "till", "before", "when", "whenever", "once", "while", "let", "lets", "let's"}
    | {"do", "does", "did", "don't", "dont", "doesn't", "didn't", "can", "can't", "cannot", "could"}
    | {"will", "won't", "would", "should", "shall", "may", "might", "must", "to", "please", "pls", "kindly"}
    | {"not", "never", "no", "want", "wants", "wanted", "need", "needs", "needed", "going", "gonna", "plan"}
    | {"tomorrow", "later", "soon", "every", "always", "usually", "normally", "each", "daily", "make", "made"}
    | {"help", "helped", "saw", "see", "watch", "watched", "have", "has", "had", "having", "about", "maybe"}
    | {"what", "where", "which", "who", "how", "why", "whether", "ask", "asks", "asked", "said", "says"}
    | {"expect", "suggest", "recommend", "order", "orders", "or", "perhaps", "probably", "think"}
)
"""In the clause of a bare verb, before it: it may be no event."""
LATER = frozenset(
    {"tomorrow", "later", "soon", "?", "every", "if", "unless", "when", "until", "once", "always", "each"}
    | {"needed", "required", "necessary", "usually", "or", "maybe", "next", "hourly", "daily", "after"}
)
"""Behind it."""
SPEAKERS = frozenset(
    {"consultant", "doctor", "dr", "doc", "surgeon", "registrar", "fellow", "resident", "intensivist"}
    | {"he", "she", "md", "reg", "attending", "professor", "prof", "anaesthetist"}
)
SAYS = {"say": "says", "want": "wants", "ask": "asks", "order": "ordered", "tell": "told", "know": "knows"}
FLUIDS = frozenset(
    {"fluid", "drainage", "drain", "liquid", "output", "colour", "color", "it", "secretion", "effluent"}
)
LOOKS = {"look": "looks", "seem": "seems", "become": "became", "turn": "turned", "appear": "appears"}
STOPS = frozenset({",", ".", ";", ":", "-", "!", "?", "but", "so", "then", "because"})
NEW = frozenset({"new", "one"})
BEGINS = frozenset({"begin", "begins", "start"})
STARTS = frozenset({*DONE, *TOLD, *SAYS, *LOOKS, *BEGINS, "having"})
LACKING = frozenset({"no", "have"})
FULL_HOUR = 4
MINUTES = 2


def plain(toks: Sequence[Token]) -> Sequence[Token]:
    """The tokens, each bare verb with its ending."""
    said = {t.text for t in toks}
    if STARTS.isdisjoint(said) and not said >= LACKING:
        return toks
    return list(_ended(toks))


def _ended(toks: Sequence[Token]) -> Iterator[Token]:
    texts = [t.text for t in toks]
    for k, token in enumerate(toks):
        if _is_said_twice(texts, k) or _is_lack(texts, k):
            continue
        helped = _helper(texts, k)
        said = _of_doer(texts, k) if helped < 0 else _behind_helper(texts, helped, k)
        yield token if said == token.text else token._replace(text=said)


def _helper(texts: Sequence[str], k: int) -> int:
    """The place of the helper before the verb there; -1 where none is."""
    j = k - 1
    while j >= 0 and texts[j] in BESIDE:
        j -= 1
    return j if j >= 0 and texts[j] in HELPERS else -1


def _is_said_twice(texts: Sequence[str], k: int) -> bool:
    """The "is" of "is fall down", the "was" of "it was having 1950": the verb alone says both."""
    verb = texts[k + 1] if texts[k] in HELPERS and k + 1 < len(texts) else ""
    return verb == "having" or (verb in ENDED and _behind_helper(texts, k, k + 1) != verb)


def _behind_helper(texts: Sequence[str], helped: int, k: int) -> str:
    """ "is remove" as removed, "was having" as had."""
    verb, beside = texts[k], k == helped + 1
    if verb == "having" and beside:
        return "had" if texts[helped] in {"was", "were", "had"} else "has"
    told = DONE.get(verb) or (ENDED.get(verb) if beside else None)
    if told is None or not _is_told(texts, helped, k):
        return verb
    owned = texts[helped] in OWNING
    noun = verb in NOUNS and texts[k + 1 : k + 2] and texts[k + 1] not in ITSELF
    return verb if owned and (noun or verb in ENDED.keys() - {"fall"}) else told


def _is_told(texts: Sequence[str], helped: int, k: int) -> bool:
    """Whether something is said to be so, and the verb is no noun: not "plan is remove drain"."""
    before = texts[_clause(texts, helped) : helped]
    named = texts[k + 1 : k + 2] != [] and texts[k + 1] in NAMING
    return bool(before) and WISHED.isdisjoint(before) and not named and "?" not in texts[k:]


def _clause(texts: Sequence[str], k: int) -> int:
    """Where the clause begins in which this place is."""
    return next((j + 1 for j in range(k - 1, -1, -1) if texts[j] in STOPS), 0)


def _is_lack(texts: Sequence[str], k: int) -> bool:
    """The "have" of "no have bubbles"."""
    return texts[k] == "have" and k > 0 and texts[k - 1] == "no" and k + 1 < len(texts)


def _of_doer(texts: Sequence[str], k: int) -> str:
    """ "doctor remove the drain" as removed, "consultant say" as says, "fluid look milky" as looks."""
    verb = texts[k]
    before = texts[k - 1] if k and verb in STARTS else ""
    if not before or before in STOPS:
        return verb
    clause = texts[_clause(texts, k) : k - 1]
    if not UNREAL.isdisjoint(clause) or not LATER.isdisjoint(texts[k:]):
        return verb
    if before in SPEAKERS and verb in SAYS:
        return SAYS[verb]
    if before in FLUIDS and verb in LOOKS:
        return LOOKS[verb]
    if before in NEW and verb in BEGINS:
        return "starts"  # "new begin from 0"
    if before in DRAINS:
        return TOLD[verb] if verb in BY_ITSELF else verb
    if before in WRITERS and verb in ENDED:
        return verb  # "last marks b4 i go"
    timed = _is_timed(texts, whole=verb == "go") or (before not in WRITERS and verb != "go")
    return TOLD[verb] if before in DOERS and verb in TOLD and timed else verb


def _is_timed(texts: Sequence[str], *, whole: bool) -> bool:
    """Whether a time or what was before is told: then what I do is what I did. "We change it at 1800" is a
    rule, and 1800 a level; a patient who goes home has a `whole` time."""
    minutes = (t for t, before in zip(texts[1:], texts, strict=False) if before == ":")
    timed = any(len(t) == MINUTES and t.isdecimal() for t in minutes)
    hours = (k for k, t in enumerate(texts) if whole and len(t) == FULL_HOUR and t.isdecimal())
    return timed or not OF_TIME.isdisjoint(texts) or any(texts[k + 1 : k + 2] != ["ml"] for k in hours)


OF_TIME = frozenset({"old", "before", "now", "already", "ago", "am", "pm", "h", "just"})
