"""A word or sign that is no cue, number, time or label: what it leaves on a way."""

from __future__ import annotations

from .items import Item
from .labels import tube_label
from .neighbours import is_initial, is_past_length
from .numbers import Toks, is_digits, starts_number, word
from .patterns.clockwords import HOUR_WORDS, MINUTE_WORDS
from .patterns.leads import BED_WORDS, BREAKS, KEEPS_LEAD
from .patterns.levels import MILLILITRES
from .prefaced import is_request
from .ways import Way
from .weighty import STAYS

_THANKS = "thank you thanks thx ty cheers ta kindly please so very much many in advance . ! ,"
THANKS = frozenset(_THANKS.split())
"""Behind the sign of question of a request these are no question, either."""
TUBE_WORDS = frozenset({"tube", "drain", "ct", "chest", "pigtail"})
SHORT_PLACES = {
    "ant": ("anterior", frozenset({"post", "posterior"})),
    "post": ("posterior", frozenset({"ant", "anterior"})),
}
"""Short names of places, each with those of which one must be said too: "ant 870 post 340"."""
LEADING = frozenset({":", "=", "is", "was", "line", "mark", "level"})
STILL = frozenset(
    {"still", "now", "only", "about", "reads", "reading", "should", "be", "been", "stays", "up", "to"}
)
"""Between a tube and its line: "med level still 445", "med should be 66"."""
FIELD_SIGNS = frozenset({",", ";", "/", "|", "-", ""})
"""Between two of these, or at the end, a word is a field of its own: "4B, med, 450"."""
MED_TUBES = frozenset({"tube", "tubes", "drain", "drains", "ct", "chest"})
POURS = frozenset({"dumped", "drained", "draining", "put", "putting", "poured", "bled", "gave", "gushed"})
"""Behind the word for a tube these say what came of it: "med dumped 300"; nobody pours a med."""


MEDICINE = frozenset(
    {"given", "due", "held", "round", "rounds", "list", "rec", "trolley", "error", "student", "surg", "team"}
    | {"consult", "pass", "cart", "refused", "taken", "pump", "floor", "reg", "room", "chart", "review", "pt"}
    | {"patient", "overflow", "admission", "surgery", "staff", "change", "changes", "order", "orders", "late"}
)
"""Behind "med" one of these says that it is a medicine, or a field."""
DONE = frozenset(
    {"unclamped", "clamped", "removed", "pulled", "out", "kinked", "stripped", "milked", "tidaling"}
)
DONE |= {"swinging", "bubbling", "clotted", "dislodged", "disconnected"}
"""What is done to a tube or seen of it, and never to a medicine."""


def _is_behind_side(i: int, way: Way) -> bool:
    """ "left chest 340": the side is named, and this is no more of it."""
    side = way.items[-1] if way.items else None
    return side is not None and side.role == "tube" and side.end == i


def _numbered(toks: Toks, i: int, way: Way) -> Item | None:
    """ "9 #1 340 #2 120": behind the bed, or behind another such one, which of the tubes."""
    found = tube_label(toks, i)
    if found is not None and word(toks, found[0]) in TUBE_WORDS and not toks.words.isdisjoint(BED_WORDS):
        return Item("tube", i, found[0], name=found[1])  # "#1 tube in bed 4"
    before = way.items[-1] if way.items else None
    line = found[0] + (word(toks, found[0]) in {"at", "@", "is"}) if found is not None else i
    if found is None or before is None or not starts_number(toks, line):
        return None
    of_bed = before.end == i and (before.role == "bed" or (before.role == "num" and before.label is not None))
    another = any(item.role == "tube" and word(toks, item.start) == "#" for item in way.items)
    return Item("tube", i, found[0], name=found[1]) if of_bed or another else None


def _is_of_drain(toks: Toks, i: int, way: Way) -> bool:
    """ "L 340 med 85", "10 med: 225", "4B, 1850, med, 450": behind another tube, the bed or a number, and
    before its line or a field of its own."""
    before = i
    while before and word(toks, before - 1) in FIELD_SIGNS | LEADING:
        before -= 1
    last = next((item for item in reversed(way.items) if item.role != "sep"), None)
    behind = (
        last is not None
        and last.end == before
        and (last.role in {"bed", "time", "num"} or last.value == "closing")
    )
    if before < i and behind and word(toks, i + 1) in FIELD_SIGNS:
        return True
    after = i + 1
    while word(toks, after) in LEADING | STILL:
        after += 1
    if not starts_number(toks, after):
        return False
    return behind or any(item.role == "tube" for item in way.items)


def _is_of_bed(toks: Toks, i: int, way: Way) -> bool:
    """ "rate on CT12 med?", "CT1 med was kinked": right behind the bed, where no word says a medicine."""
    last = way.items[-1] if way.items else None
    of_bed = last is not None and last.end == i and (last.role == "bed" or last.label is not None)
    return of_bed and word(toks, i + 1) not in MEDICINE


def other_word(toks: Toks, i: int, way: Way, *, voice: bool) -> tuple[int, Way]:
    """The place behind it, and the way with what it leaves: a tube, a stop, a sign, an unread word."""
    text = word(toks, i)
    if is_past_length(toks, i) or (text == "chest" and _is_behind_side(i, way)):
        return i + 1, way
    if text == "#" and way.lead != "bed" and (numbered := _numbered(toks, i, way)):
        return numbered.end, way.with_item(numbered)
    if tube := _tube(toks, i, way):
        return i + 1, way.with_item(Item("tube", i, i + 1, name=tube), way.lead, at=way.at)
    if text in {"hundred", "thousand"}:
        return i + 1, way.with_item(Item("bad", i, i + 1, lead=way.lead))
    if text == "ago" or (text == "before" and word(toks, i - 1) in MINUTE_WORDS | HOUR_WORDS):
        return i + 1, way.with_item(Item("bad", i, i + 1, lead="at"))
    if text == "one":
        return i + 1, way
    owned = word(toks, i - 1) == "'" or (i > 0 and toks[i].glued and toks[i - 1].is_digits)
    if text == "s" and owned:
        return i + 1, way
    if text == "@":
        return i + 1, way.after_at()
    if text == "?":
        return i + 1, _questioned(toks, i, way)
    if text in KEEPS_LEAD and (way.lead or (way.about and voice)):
        kept = way._replace(items=(*way.items, Item("sep", i, i + 1, text))) if text == "," else way
        return i + 1, kept
    if text == "." and i + 1 < len(toks) and (way.about or (way.lead and voice)):
        return i + 1, way
    if text in BREAKS:
        return i + 1, way.with_item(Item("sep", i, i + 1, text))
    if not text[0].isalnum():
        return i + 1, way
    return i + 1, way.with_item(Item("cue", i, i + 1, "word", text))


def _tube(toks: Toks, i: int, way: Way) -> str | None:
    """The tube that a letter or a short word names here: "m 340", "med tube", "r"."""
    text = word(toks, i)
    if text == "m" and starts_number(toks, i + 1):
        return "mediastinal"
    med = text == "med" and (word(toks, i + 1) in MED_TUBES | STAYS | POURS | DONE or _is_where(toks, i))
    if med or (text == "med" and (_is_of_drain(toks, i, way) or _is_of_bed(toks, i, way))):
        return "mediastinal"
    short = SHORT_PLACES.get(text)
    if short and not toks.words.isdisjoint(short[1]) and _is_of_drain(toks, i, way):
        return short[0]
    return "right" if text == "r" and not is_initial(toks, i) else None


def _is_where(toks: Toks, i: int) -> bool:
    """ "180 in med since 2000", "180 in the med": where so much came; "340 in med room" is elsewhere."""
    before = i - 1 - (word(toks, i - 1) == "the")
    unit = word(toks, before - 1) in MILLILITRES
    return (
        word(toks, before) == "in"
        and is_digits(toks, before - 1 - unit)
        and word(toks, i + 1) in {"", ",", ".", ";", "since", "at", "now", "and"}
    )


def _questioned(toks: Toks, i: int, way: Way) -> Way:
    """What a sign of question says: that it is asked, or a digit that could not be read."""
    if _is_in_number(toks, i):
        return way.with_item(Item("bad", i, i + 1))
    if word(toks, i + 1).isalpha() and toks[i + 1].glued:
        return way
    if THANKS.issuperset(toks.said[i + 1 : len(toks)]) and is_request(toks):
        return way.with_item(Item("sep", i, i + 1, "."))
    return way.with_item(Item("cue", i, i + 1, "mark_of_question"))


def _is_in_number(toks: Toks, i: int) -> bool:
    """ "8?5": a digit that could not be read."""
    between = is_digits(toks, i - 1) and is_digits(toks, i + 1)
    return between and toks[i].glued and toks[i + 1].glued
