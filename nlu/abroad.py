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
BOXED = frozenset({"the", "old", "his", "her", "full"})
DENIED = frozenset({"not", "no", "was", "were"})
"""Before a pair: denied, or how it was."""
BEING = frozenset({"is", "was", "are", "has", "been"})
IDLE = frozenset({"kept", "getting", "already"})
LOOKING = ("ous", "lent", "bloody", "milky", "cloudy", "clear", "red")
WORDS = IDLE | AROUND | POLITE | {"nothing", "aspect", "bright", "dark", "clear", "bubble", "kindly", "can"}
WORDS |= TOPPED | frozenset({SAME, "today", "yesterday", "hour", "clock", "only", *CONTAINERS})
LONG = 4
"""Digits of a whole time."""


def plain(toks: Sequence[Token]) -> Sequence[Token]:
    """The tokens, each of these as it is said at home."""
    if WORDS.isdisjoint(t.text for t in toks):
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
    if said == "can":
        return "canister" if before in BOXED else ""
    if said in CONTAINERS:
        return "" if before in OF_OTHERS else "canister"
    if said == "bubble":
        return "bubbles" if before in FINDING and behind not in OF_BREATHING else ""
    if said == "aspect":
        return "fluid" if before.endswith(LOOKING) else ""
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
    whole = k > 1 and toks[k - 1].is_digits and (text_at(toks, k - 2) == ":" or len(before) == LONG)
    return said in CLOCK and whole
