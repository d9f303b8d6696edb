"""What is put otherwise in other countries: "today morning 6:30", "hour 22:00", "same has been changed".

Each is put as it is said at home, where the words around leave nothing else. Called by `pipeline`.
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence

from .tokens import Token, text_at

PAIRS = {
    ("today", "morning"): ("this", "morning"),
    ("today", "evening"): ("this", "evening"),
    ("today", "afternoon"): ("this", "afternoon"),
    ("today", "night"): ("", "tonight"),
    ("yesterday", "night"): ("last", "night"),
    ("drain", "nothing"): ("drained", "nothing"),
    ("actual", "is"): ("it", "is"),
    ("red", "bright"): ("bright", "red"),
    ("red", "dark"): ("dark", "red"),
    ("yellow", "clear"): ("clear", "yellow"),
}
CONTAINERS = frozenset({"container", "containers"})
OF_OTHERS = frozenset({"urine", "urinary", "specimen", "sharps", "sharp", "sputum", "stool", "food", "waste"})
OF_OTHERS |= {"linen", "bile", "gastric", "vomit", "pot", "sample", "ngt", "ng"}
TOPPED = frozenset({"topped", "top", "topping"})
"""Whoever fills a seal tops it off, or up."""
STOPS = frozenset({",", ".", ";", "-", ""})
CLOCK = frozenset({"clock", "o'clock", "oclock"})
HALVES = frozenset({"am", "pm", "hrs", "h", "hours"})
SAME = "same"
FINDING = frozenset({"little", "small", "some", "has", "have", "few", "big", "with", "still", "much", "tiny"})
OF_BREATHING = frozenset({"cpap", "study", "wrap", "bath", "test", "echo", "in"})
POLITE = frozenset({"po", "lang", "ang", "opo"})
"""With one of these a message is partly in Tagalog."""
PARTICLES = frozenset({"po", "na", "lang", "ang", "pa", "opo", "naman", "ba"})
AROUND = frozenset({"khalas", "wallah", "yalla", "habibi", "abeg", "yaar"})
"""Said around a message in Arabic, Pidgin and Hindi; none of them denies or doubts."""
WARDS = frozenset({"picu", "nicu", "pcicu", "cicu", "cvicu", "pccu"})
"""At the very start, before a number, the ward of that bed."""
FOUND = frozenset(
    {"leak", "bubbling", "bubbles", "bubble", "swing", "swinging", "fluctuation", "oscillation"}
)
FOUND |= {"movement", "tidaling", "clots", "airleak", "leakage"}
ASKING = frozenset({"?", "what", "which", "why", "how", "when", "where", "who", "if", "whether"})
FLUIDS = frozenset({"fluid", "drainage", "output", "drain"})
SKIN = frozenset(
    {"skin", "warm", "perfused", "well", "lips", "perfusion", "pt", "patient", "he", "she", "baby"}
)
SOMEBODY = frozenset(
    {"somebody", "someone", "they", "transport", "porter", "porters", "physio", "days", "tech"}
)
CONFUSED = frozenset(
    {"patient", "pt", "he", "she", "he's", "she's", "is", "very", "bit", "still", "more", "lady"}
)
MYSELF = frozenset({"i", "i'm", "im", "we", "me", "beds", "lines", "numbers", "got", "it"})
TAKEN_OFF = frozenset({"off", "away"})
BOXED = frozenset({"the", "old", "his", "her", "full"})
DENIED = frozenset({"not", "no", "was", "were"})
"""Before a pair: denied, or how it was."""
WAYS = frozenset({"to", "for", "down", "up", "over", "across"})
"""Behind "is gone" somebody went somewhere; a leak only "is gone"."""
BEING = frozenset({"is", "was", "are", "has", "been"})
IDLE = frozenset({"kept", "getting", "already"})
LOOKING = ("ous", "lent", "bloody", "milky", "cloudy", "clear", "red")
_WORDS = """
nothing told left actual confused aspect pink there took off away write document bright dark clear bubble
gone casing kindly can same today yesterday hour clock only
"""
WORDS = IDLE | AROUND | POLITE | WARDS | TOPPED | CONTAINERS | frozenset(_WORDS.split())
"""What else is looked at begins or ends with one of these."""
LONG = 4
"""Digits of a whole time."""


def plain(toks: Sequence[Token]) -> Sequence[Token]:
    """The tokens, each of these as it is said at home."""
    if WORDS.isdisjoint([t.text for t in toks]):
        return toks
    return list(_put(toks))


def _put(toks: Sequence[Token]) -> Iterator[Token]:
    for k, token in enumerate(toks):
        day = PAIRS.get((token.text, text_at(toks, k + 1)))
        day = None if text_at(toks, k - 1) in DENIED else day
        second = PAIRS.get((text_at(toks, k - 1), token.text))
        second = None if text_at(toks, k - 2) in DENIED else second
        if day and day[0]:
            yield token._replace(text=day[0])
        elif second:
            yield token._replace(text=second[1], start=toks[k - 1].start if not second[0] else token.start)
        elif other := _otherwise(toks, k):
            yield token._replace(text=other)
        elif not (day or _is_idle(toks, k)):
            yield token


def _otherwise(toks: Sequence[Token], k: int) -> str:
    """The word that is said for it at home; none where it is the same."""
    said, before, behind = toks[k].text, text_at(toks, k - 1), text_at(toks, k + 1)
    if said == "off":
        return "up" if before in TOPPED else ""
    if said == "hour":
        return "time" if _ends_line(toks, k) and _is_clock(toks, k + 1) else ""
    if said == "is":
        return "has" if behind == "gone" and text_at(toks, k + 2) in WAYS else ""
    if said == "casing":
        return "canister" if before in {"the", "its", "drain", "tube", "unit"} else ""
    if said == "can":
        return "canister" if before in BOXED else ""
    if said in CONTAINERS:
        return "" if before in OF_OTHERS else "canister"
    if said == "bubble":
        return "bubbles" if before in FINDING and behind not in OF_BREATHING else ""
    if said == "aspect":
        return "fluid" if before.endswith(LOOKING) else ""
    if said in WARDS:
        return "bed" if k == 0 and behind.isdecimal() and not toks[k + 1].glued else ""
    if said in {"write", "document"} and behind != "down":
        return "record" if before in {"", "please", ","} or before.isdecimal() else ""
    if said == "there":
        return "present" if _is_present(toks, k) else ""
    if said == "took":
        by = (behind, text_at(toks, k + 2)) == ("out", "by")
        return "taken" if by else "removed" if _is_taken_off(toks, k + 1) else ""
    if said == "told":
        return "said" if behind.isdecimal() else ""
    if said == "left":
        return "had" if before in SOMEBODY and behind.isdecimal() and text_at(toks, k + 2) == "off" else ""
    if said == "confused":
        return "agitated" if _is_of_patient(toks, k) else ""
    if said == "pink":
        return "serosanguineous" if _is_look(toks, k) else ""
    if said == SAME:
        return "it" if _is_it(toks, k) else ""
    return "please" if said == "kindly" else ""


def _ends_line(toks: Sequence[Token], k: int) -> bool:
    """Whether a clause or its line ends before that word: "455 ml hour 22:00", and not "last 2 hour"."""
    before = text_at(toks, k - 1)
    return before in STOPS or before == "ml" or (before.isdecimal() and LONG > len(before) > len("99"))


def _is_clock(toks: Sequence[Token], k: int) -> bool:
    """Whether a whole time begins there: "22:00", "2200", "22h"."""
    said, behind = text_at(toks, k), text_at(toks, k + 1)
    return said.isdecimal() and (len(said) == LONG or behind in {":", "h"})


def _is_look(toks: Sequence[Token], k: int) -> bool:
    """ "410 @ 2000, pink, swing good": how it looks, and nobody's skin."""
    alone = text_at(toks, k - 1) in STOPS - {""} and text_at(toks, k + 1) in STOPS
    of_fluid = text_at(toks, k - 1) in FLUIDS
    skin = not SKIN.isdisjoint([t.text for t in toks])
    return (of_fluid or (alone and any(t.is_digits for t in toks[:k]))) and not skin


def _is_taken_off(toks: Sequence[Token], k: int) -> bool:
    """ "took off the drain": the tube itself, and no clamp or dressing."""
    thing = k + 1 + (text_at(toks, k + 1) in {"the", "his", "her"})
    ends = text_at(toks, thing + 1) not in {"clamp", "dressing", "suture", "sutures", "tape", "bag", "box"}
    return text_at(toks, k) in TAKEN_OFF and text_at(toks, thing) in {"drain", "tube"} and ends


def _is_of_patient(toks: Sequence[Token], k: int) -> bool:
    """ "3 confused, tugging": the patient, and no mix-up of whoever writes."""
    before = text_at(toks, k - 1)
    named = before.isdecimal() or before in CONFUSED
    return named and MYSELF.isdisjoint([t.text for t in toks])


def _is_present(toks: Sequence[Token], k: int) -> bool:
    """The "there" of "no fluctuation is there", where nothing is asked."""
    texts = [t.text for t in toks]
    ends = text_at(toks, k + 1) in STOPS | {"and", "but", "also", "now", "at"}
    found = k > 1 and texts[k - 1] == "is" and texts[k - 2] in FOUND
    return found and ends and ASKING.isdisjoint(texts)


def _is_it(toks: Sequence[Token], k: int) -> bool:
    """ "so same has been changed": what was named before."""
    helper, verb = text_at(toks, k + 1), text_at(toks, k + 2)
    return k > 0 and helper in {"has", "was", "is"} and (verb == "been" or verb.endswith("ed"))


def _is_idle(toks: Sequence[Token], k: int) -> bool:
    """The "clock" of "at 22:00 clock", the "only" of "at 6:30 am only", the "kept" of "is kept at 20"."""
    said, before, behind = toks[k].text, text_at(toks, k - 1), text_at(toks, k + 1)
    if said == "only":
        return before in HALVES and behind in STOPS
    if said == "kept":
        return before in BEING and behind in {"at", "on", "in", "to"}
    if said == "getting":
        return before in BEING and behind.endswith("ed")
    if said == "already":
        return behind[:1].isdecimal() or (before in BEING and behind.endswith("ed"))
    if said in PARTICLES:
        return not (before[:1].isdecimal() or behind[:1].isdecimal()) and not POLITE.isdisjoint(
            t.text for t in toks
        )
    if said in AROUND:
        return True
    if said == "left":
        return before in BEING and behind == "off"
    if said in TAKEN_OFF:
        return before == "took" and _is_taken_off(toks, k)
    whole = k > 1 and toks[k - 1].is_digits and (text_at(toks, k - 2) == ":" or len(before) == LONG)
    return said in CLOCK and whole
