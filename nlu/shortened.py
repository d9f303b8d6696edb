"""A letter typed for a word, where the words around leave no other: the "n" of "17 290 at 0200 n 18 is 60".

Alone, or behind a bed, an "n" is a no; a "u" behind "can" is you. The "s" of "0300s" says that all are of
that time, "w/" is with, and "shoulda" is typed as it is said. Called by `pipeline`, for typed messages.
"""

from __future__ import annotations

from collections.abc import Callable, Iterator, Sequence

from .patterns.leads import BED_WORDS
from .tokens import Token

HAPPENED = frozenset(
    {"fell", "tipped", "spilled", "spilt", "cracked", "broke", "leaked", "came", "went", "pulled", "changed"}
    | {"swapped", "now", "it's", "its", "is", "was", "got", "landed", "split", "disconnected", "gone"}
)
"""Before what happened an "n" is no no."""
NAMED = frozenset({":", "="})
SIDES = frozenset({"l", "r", "lt", "rt", "left", "right"})
SHORT = frozenset({"sl", "mod", "sm", "lg", "cont", "int", "intermit", "interm", "approx", "temp", "occ"})
LABEL_DIGITS = 2
SHORT_LABEL = 3
FULL_HOUR = 4
SIGNS = {"sw": "swing", "osc": "oscillation", "fluct": "fluctuation", "bub": "bubbling", "lk": "leak"}
"""Signs cut short, beside a plus or a minus."""
LEAKS = frozenset({"leak", "bubbling", "bubbles", "bubble", "al"})
FIELDS = frozenset({"/", "-", ",", ";", "|", "+", "@", "at", "=", ">", "\u00b7"})
DIALLED = frozenset({"5", "10", "15", "20", "25", "30", "40"})
"""cmH2O that a suction is set to. Common practice, no source."""
OUT = frozenset(
    {
        "ct",
        "ot",
        "or",
        "mri",
        "xray",
        "xr",
        "cxr",
        "us",
        "ir",
        "theatre",
        "theater",
        "scan",
        "scanner",
        "radiology",
        "surgery",
    }
    | {"dialysis", "cath", "echo", "endo", "endoscopy", "angio", "icu", "hdu", "itu", "ward", "recovery"}
)
"""Behind a bed and an arrow the patient went there."""
ARROWS = frozenset({">", "\u2192", "\u27a1"})
RETURNING = frozenset({"<", "\u2190"})
"""Behind an arrow that leads out the patient came back."""
MOVED = frozenset({"moved", "transferred", "xferred", "trf", "tx", "xfer"})
"""Before an arrow these lead to the next bed."""
PAUSED = {("suction", "off"): "on", ("suction", "on"): "off", ("clamp", "on"): "off", ("clamp", "off"): "on"}
"""What was switched, and what undoes it without its name: "suction off 1840, on again 1855"."""
SUCTION = frozenset({"suction", "sxn", "sx"})
UNDOING = {"off": "unclamped", "on": "clamped"}
SWITCHED = frozenset({"on", "off", "back"})
BEFORE_SWITCH = frozenset({",", ".", ";", "-", "/", "|", ">", "then"})
SHOWN = frozenset({"tidal", "tidaling", "tidalling", "swing", "swinging", "leak", "al", "fluct"})
MARKED = frozenset({"+", "-"})
COMPANY = frozenset({"drain", "drains", "tube", "tubes", "chest", "ct", "icd", "pigtail", "both"})
"""Behind a "w" these come along."""
ONE_LINE = 2
"""Numbers of a line: its bed and its level."""
BEFORE_YOU = frozenset(
    {"can", "could", "would", "will", "did", "do", "if", "when", "thank", "see", "tell", "for"}
)
ASKING = frozenset({"which", "what", "who", "how", "where", "when", "any", "whose"})
MANY = frozenset(
    {"beds", "bays", "rooms", "ones", "pts", "patients", "drains", "tubes", "who", "marks", "lines"}
)
"""Before an "r" that is no side, but are."""
NEARLY_BED = frozenset({"bde", "ebd", "ned", "bwd", "bef", "bec", "bsd", "brd", "hed", "ved", "bedd", "beed"})
"""Typed with a finger beside the key, or two letters swapped."""
UNSIGNED = {"whats": "what's", "wats": "what's", "hows": "how's", "whos": "who's", "whens": "when's"}
UNSIGNED |= {"hasnt": "hasn't", "havent": "haven't"}
SHOULD_HAVE = frozenset({"shoulda", "shouldve", "shuda", "shudve", "shouldof", "should'a", "should've"})


def plain(toks: Sequence[Token]) -> Sequence[Token]:
    """The tokens, with an "n" between a whole line and the next bed as "and", and "0300s" as the time."""
    said = {t.text for t in toks}
    if "." in said and not SHORT.isdisjoint(said):
        toks = [t for k, t in enumerate(toks) if not (t.text == "." and _is_of_short(toks, k))]
    if "s" in said:
        toks = [t._replace(text="suction") if _is_suction(toks, k) else t for k, t in enumerate(toks)]
        toks = list(_without_plurals(toks))
    if not said.isdisjoint(UNSIGNED):
        toks = [t._replace(text=UNSIGNED.get(t.text, t.text)) for t in toks]
    for short, (means, meant) in SHORTENED.items():
        if short in said:
            found = {k for k, t in enumerate(toks) if t.text == short and meant(toks, k)}
            toks = [t._replace(text=means) if k in found else t for k, t in enumerate(toks)]
    if not said.isdisjoint(NEARLY_BED):
        toks = [t._replace(text="bed") if _is_nearly_bed(toks, k) else t for k, t in enumerate(toks)]
    if not said.isdisjoint(SHOULD_HAVE) or {"should", "of"} <= said:
        toks = list(_should_have(toks))
    if "w" in said and "/" in said:
        toks = list(_with_with(toks))
    if "w" in said:
        toks = [
            t._replace(text="with") if t.text == "w" and _is_with(toks, k) else t for k, t in enumerate(toks)
        ]
    if not said.isdisjoint(ARROWS):
        toks = list(_without_arrows(toks))
    if "tx" in said:
        toks = list(_with_transfers(toks))
    if not said.isdisjoint(SUCTION | {"clamp"}) and {"on", "off"} <= said:
        toks = list(_switched_again(toks))
    if "ot" in said and "to" in {t.text for t in toks}:
        toks = [t._replace(text="theatre") if _is_theatre(toks, k) else t for k, t in enumerate(toks)]
    if not said.isdisjoint(SIGNS) and not said.isdisjoint(MARKED):
        toks = [t._replace(text=SIGNS[t.text]) if _is_marked(toks, k) else t for k, t in enumerate(toks)]
    if "n" not in said:
        return toks
    return [t._replace(text="and") if t.text == "n" and _joins(toks, k) else t for k, t in enumerate(toks)]


def _is_nearly_bed(toks: Sequence[Token], k: int) -> bool:
    """ "bde 14 590", "ned 22A 66": at the head of a clause, before a number."""
    opens = k == 0 or toks[k - 1].text in FIELDS
    return toks[k].text in NEARLY_BED and opens and k + 1 < len(toks) and toks[k + 1].is_digits


def _is_suction(toks: Sequence[Token], k: int) -> bool:
    """ "12A/42/1000/serosang/S10", "seal ok / S -20": a field of its own with what suction is set to."""
    if not 0 < k < len(toks) - 1 or toks[k].text != "s":
        return False
    if toks[k].glued and toks[k - 1].text not in FIELDS:
        return False
    field = toks[k - 1].text in FIELDS or toks[k + 1].glued or _is_whole_clock(toks[k - 1])
    value = k + 1 + (field and toks[k + 1].text == "-")
    set_to = field and value < len(toks) and toks[value].text in DIALLED
    return set_to and (value + 1 == len(toks) or not toks[value + 1].is_digits)


def _is_left(toks: Sequence[Token], k: int) -> bool:
    """ "5 L: 780 R: 90": behind the bed that opens a clause it is the left tube, and no litre."""
    if toks[k].text != "l" or not 0 < k < len(toks) - 2 or toks[k + 1].text not in NAMED:
        return False
    opens = k == 1 or toks[k - 2].text in BED_WORDS | FIELDS | {"#"}
    return opens and toks[k - 1].is_digits and toks[k + 2].is_digits


def _is_of_side(toks: Sequence[Token], k: int) -> bool:
    """ "L pl 85", "med 210 pl 85": behind a side or another tube the pleural one; alone it is please."""
    behind = k > 0 and toks[k - 1].text in SIDES
    tubes = any(t.text in {"med", "mediastinal"} for t in toks[:k]) and toks[k + 1 : k + 2] != []
    return toks[k].text == "pl" and (behind or (tubes and toks[k + 1].is_digits))


def _is_from(toks: Sequence[Token], k: int) -> bool:
    """ "back fr OR 1850"; beside a number it is the size of a tube."""
    beside = (*toks[max(k - 1, 0) : k], *toks[k + 1 : k + 2])
    return toks[k].text == "fr" and len(beside) > 1 and not any(t.is_digits for t in beside)


def _is_how(toks: Sequence[Token], k: int) -> bool:
    """ "leak int": how it goes on."""
    return toks[k].text == "int" and k > 0 and toks[k - 1].text in LEAKS


def _ends_field(toks: Sequence[Token], k: int) -> bool:
    """ "AL grade 3 cont": at the end of its field beside a leak; "cont to observe" is none of it."""
    leak = not LEAKS.isdisjoint(t.text for t in toks[:k])
    return leak and (k == len(toks) - 1 or not toks[k + 1].text[0].isalnum())


def _with_with(toks: Sequence[Token]) -> Iterator[Token]:
    """ "340 w/ bubbling" as with, "w/o leak" as without; not "w/c", which has wheels."""
    skipped = -1
    for k, token in enumerate(toks):
        slash = token.text == "w" and k + 1 < len(toks) and toks[k + 1].text == "/" and toks[k + 1].glued
        behind = toks[k + 2] if slash and k + 2 < len(toks) and toks[k + 2].glued else None
        if k <= skipped:
            continue
        if slash and behind is not None and behind.text == "o":
            skipped = k + 2
            yield token._replace(text="without", end=behind.end)
        elif slash and (behind is None or len(behind.text) > 1 or behind.is_digits):
            skipped = k + 1
            yield token._replace(text="with", end=toks[k + 1].end)
        else:
            yield token


def _without_arrows(toks: Sequence[Token]) -> Iterator[Token]:
    """ "211 -> CT" as "211 to CT", "5 moved > 6" as "moved to 6", "1915 480 -> 2000 610" with a stop; behind
    one that leads out, "< 0635" is back."""
    start, out = 0, False
    for k, token in enumerate(toks):
        start = start if token.text in ARROWS | {"-"} else k + 1
        after = toks[k + 1].text if k + 1 < len(toks) else ""
        means = _arrow(toks, start, k) if token.text in ARROWS and start else ""
        out |= means == "to" and after in OUT
        if means:
            yield token._replace(text=means, start=toks[start].start, glued=False)
        elif out and token.text in RETURNING and after.isdecimal():
            yield token._replace(text="back", glued=False)
        elif out and token.text in {"xr", "us"} and toks[k - 1].text in ARROWS:
            yield token._replace(text="xray")
        elif token.text in ARROWS and _is_line_of_bed(toks, start, k):
            yield token._replace(start=toks[start].start, glued=toks[start].glued)
        elif not (token.text == "-" and _leads_on(toks, start, k)):
            yield token


def _arrow(toks: Sequence[Token], start: int, k: int) -> str:
    """The word that an arrow stands for, with the dashes before it; none where it may tell of a change."""
    before, after = toks[start - 1], [t.text for t in toks[k + 1 : k + 3]]
    if after and (after[0] in OUT or (before.text in MOVED and after[0] in BED_WORDS | {"#"})):
        return "to"
    if after and before.text in MOVED and after[0].isdecimal():
        return "to"
    pairs = start > 1 and len(after) > 1 and _is_whole_clock(toks[start - 2]) and _is_whole_clock(toks[k + 1])
    return "," if pairs and before.is_digits and toks[k + 2].is_digits else ""


def _leads_on(toks: Sequence[Token], start: int, k: int) -> bool:
    """Whether a dash goes on to an arrow that stands for a word."""
    end = next((j for j in range(k, len(toks)) if toks[j].text != "-"), len(toks))
    arrow = start > 0 and end < len(toks) and toks[end].text in ARROWS
    return arrow and (bool(_arrow(toks, start, end)) or _is_line_of_bed(toks, start, end))


def _is_line_of_bed(toks: Sequence[Token], start: int, k: int) -> bool:
    """ "rm 16 -> 735": a longer number behind a bed; not "16 -> 17", "sx 20 -> 10"."""
    opens = start == 1 or (start > 1 and toks[start - 2].text in BED_WORDS | FIELDS | {"#"})
    numbers = opens and k + 1 < len(toks) and toks[start - 1].is_digits and toks[k + 1].is_digits
    return numbers and len(toks[start - 1].text) < len(toks[k + 1].text) > LABEL_DIGITS


def _switched_again(toks: Sequence[Token]) -> Iterator[Token]:
    """ "suction off 1840, on again 1855", "clamp on 1940 off 1958": the second names again what it is of."""
    of, undoes = "", ""
    for k, token in enumerate(toks):
        before = toks[k - 1].text if k else ""
        noun = "suction" if before in SUCTION else before
        if (noun, token.text) in PAUSED:
            of, undoes = noun, PAUSED[noun, token.text]
        elif of and token.text == undoes and _is_switch(toks, k):
            if of == "suction":
                yield token._replace(text=of, end=token.start + 1)
                token = token._replace(start=token.start + 1, glued=False)
            else:
                token = token._replace(text=UNDOING[token.text])
            of = ""
        yield token


def _is_switch(toks: Sequence[Token], k: int) -> bool:
    """Whether an on or off stands for itself, with "again" or a whole time behind it."""
    before, behind = toks[k - 1], k + 1
    while behind < len(toks) and toks[behind].text in {"at", "@"}:
        behind += 1
    before = toks[k - 2] if before.text in {"and", "&"} and k > 1 else before
    closed = behind < len(toks) and (toks[behind].text == "again" or _is_whole_clock(toks[behind]))
    return closed and (before.text in BEFORE_SWITCH or _is_whole_clock(before))


def _is_capacity(toks: Sequence[Token], k: int) -> bool:
    """ "cap b4?": asked of a bed with nothing else; elsewhere it may be one of a tube."""
    others = [t for j, t in enumerate(toks) if j != k]
    return others[-1:] != [] and others[-1].text == "?" and all(_is_of_bed(t) for t in others[:-1])


def _is_of_bed(token: Token) -> bool:
    return token.is_digits or token.text in BED_WORDS or len(token.text) == 1


def _is_leading_time(toks: Sequence[Token], k: int) -> bool:
    """ "t1415 / b11 / 640"."""
    led = k + 1 < len(toks) and toks[k + 1].glued and _is_whole_clock(toks[k + 1])
    return toks[k].text == "t" and led and not toks[k].glued


def _is_switched(toks: Sequence[Token], k: int) -> bool:
    """ "sx off": of suction; alone they are symptoms."""
    return k + 1 < len(toks) and toks[k + 1].text in SWITCHED


def _is_yes(toks: Sequence[Token], k: int) -> bool:
    """ "tidal Y": at the end of its field, behind a sign."""
    behind = toks[k + 1] if k + 1 < len(toks) else None
    shown = k > 0 and toks[k - 1].text in SHOWN and not toks[k].glued
    return shown and (behind is None or not behind.text.isalpha() or behind.text in SHOWN)


def _with_transfers(toks: Sequence[Token]) -> Iterator[Token]:
    """ "11 tx 12" as moved to."""
    for k, token in enumerate(toks):
        if token.text == "tx" and _is_moved(toks, k):
            yield token._replace(text="moved", end=token.start + 1)
            token = token._replace(text="to", start=token.start + 1, glued=False)
        yield token


def _is_moved(toks: Sequence[Token], k: int) -> bool:
    """ "11 tx 12": from bed to bed, where no more is said but when."""
    beds = 0 < k < len(toks) - 1 and toks[k - 1].is_digits and toks[k + 1].is_digits
    labels = beds and max(len(toks[k - 1].text), len(toks[k + 1].text)) <= SHORT_LABEL
    return labels and all(t.text in {"at", "@"} or _is_whole_clock(t) for t in toks[k + 2 :])


def _is_theatre(toks: Sequence[Token], k: int) -> bool:
    """ "CT8 to OT": right behind a bed that is where they operate, and no therapist."""
    bed = k > 1 and (toks[k - 2].is_digits or (len(toks[k - 2].text) == 1 and toks[k - 2].glued))
    return toks[k].text == "ot" and bed and toks[k - 1].text == "to"


def _is_marked(toks: Sequence[Token], k: int) -> bool:
    """ "sw + bub -"."""
    beside = {t.text for t in (*toks[max(k - 1, 0) : k], *toks[k + 1 : k + 2])}
    return toks[k].text in SIGNS and not MARKED.isdisjoint(beside)


def _is_with(toks: Sequence[Token], k: int) -> bool:
    """ "discharged to ward 6 w drain"."""
    return 0 < k < len(toks) - 1 and toks[k + 1].text in COMPANY


def _is_of_short(toks: Sequence[Token], k: int) -> bool:
    """ "sl. bloody", "approx. 780": the stop of a word cut short, and no end of a sentence."""
    short = 0 < k < len(toks) - 1 and toks[k].glued and toks[k - 1].text in SHORT
    return short and not (
        toks[k + 1].is_digits and k > 1 and len(toks[k - 2].text) > LABEL_DIGITS and toks[k - 2].is_digits
    )


def _joins(toks: Sequence[Token], k: int) -> bool:
    """Whether a line stands before, and behind it a bed with what is said of it."""
    numbers = sum(t.is_digits for t in toks[:k])
    after = [t.text for t in toks[k + 1 :]]
    if k and numbers and after and after[0] in HAPPENED:
        return True  # "drain knocked off its hook n fell 1312"
    bed = bool(after) and (after[0].isdecimal() or after[0] in BED_WORDS)
    return numbers >= ONE_LINE and bed and sum(text.isdecimal() for text in after) >= ONE_LINE


def _is_you(toks: Sequence[Token], k: int) -> bool:
    """ "can u put 420 down for bed 7"."""
    return toks[k].text == "u" and k > 0 and toks[k - 1].text in BEFORE_YOU


def _is_are(toks: Sequence[Token], k: int) -> bool:
    """ "which bays r overdue", "what r we at": in a question, before no number."""
    if k == 0 and len(toks) > 1:
        return toks[1].text in BED_WORDS | {"we", "you", "u", "they", "there", "any"}  # "r there any due"
    asks = bool(ASKING & {t.text for t in toks[:k]}) and k < len(toks) - 1
    many = asks and (toks[k - 1].text in MANY or toks[k + 1].text in {"we", "you", "u", "they", "the"})
    return many and not toks[k + 1].is_digits and toks[k + 1].text not in {"tube", "side", "drain", "pleural"}


def _should_have(toks: Sequence[Token]) -> Iterator[Token]:
    """ "shoulda been 402", "should of been 402": in two words."""
    for before, token in zip((None, *toks), toks, strict=False):
        if token.text in SHOULD_HAVE:
            yield token._replace(text="should", end=token.start + 1)
            yield token._replace(text="have", start=token.start + 1, glued=False)
        elif token.text == "of" and before is not None and before.text == "should":
            yield token._replace(text="have")
        else:
            yield token


def _without_plurals(toks: Sequence[Token]) -> Iterator[Token]:
    """ "0300s: 2 470, 6 850"."""
    for k, token in enumerate(toks):
        before = toks[k - 1] if k else None
        if token.text == "s" and token.glued and before is not None and _is_whole_clock(before):
            continue
        after = toks[k + 1] if k + 1 < len(toks) else None
        plural = after is not None and after.text == "s" and after.glued and _is_whole_clock(token)
        yield token._replace(end=after.end) if plural and after is not None else token


def _is_whole_clock(token: Token) -> bool:
    return token.is_digits and len(token.text) == FULL_HOUR and token.text < "2400" and token.text[2] < "6"


SHORTENED: dict[str, tuple[str, Callable[[Sequence[Token], int], bool]]] = {
    "l": ("left", _is_left),
    "pl": ("pleural", _is_of_side),
    "fr": ("from", _is_from),
    "int": ("intermittent", _is_how),
    "cont": ("continuous", _ends_field),
    "u": ("you", _is_you),
    "r": ("are", _is_are),
    "t": ("time", _is_leading_time),
    "sx": ("suction", _is_switched),
    "sxn": ("suction", _is_switched),
    "y": ("yes", _is_yes),
    "cap": ("capacity", _is_capacity),
}
"""What is typed for a word, the word, and where it stands for it."""
