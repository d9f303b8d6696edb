"""What a word beside a number or an event turns it into: a count, a side of something else, not yet so.

Each is read as told only without that word; with it, it is asked. Called by `leftovers`, and `was_so` by
`subjects`.
"""

from __future__ import annotations

from collections.abc import Iterator
from itertools import pairwise, takewhile

from .items import AMOUNTS, Item
from .numbers import Toks, starts_number, word
from .patterns.leads import BED_WORDS
from .patterns.levels import LITRES
from .patterns.numerals import ONES
from .roles import is_event
from .rules import Rule
from .tokens import is_shortened

CHANGES = frozenset({"up", "down", "gained", "lost", "increased", "decreased"})
FEW = 4
"""Nobody has more tubes. Common practice, no source."""
MOST_ON = 300
"""No wall suction is set to more mmHg. Common practice, no source."""
MOST_OF_BED = 200
"""Nor is one told of a bed that "is on" more."""
MOST_OF_DRAIN = 40
"""A drain that "is on" more is on no dial: cmH2O. Common practice, no source."""
SETTINGS = frozenset({"suction", "wall", "sxn", "vacuum", "mmhg", "dial", "cmh2o"})
DRAINS = frozenset(
    {"drain", "tube", "one", "line", "level", "left", "right", "apical", "basal", "anterior", "posterior"}
    | {"mediastinal", "pleural", "upper", "lower", "box", "canister", "bottle", "chamber"}
)
OLDEST = 105
"""Years: so old a patient may be."""
OF_SEVERAL = frozenset({"old", "new", "other", "last", "first", "second", "next", "previous", "another"})
UNSAID = frozenset({"something", "somethin", "summat", "odd", "change", "some", "counting", "whatever"})
"""Behind a number these stand for the rest of it."""
ONE = frozenset({"1", "one"})
DONE = frozenset({"done", "performed", "started", "successful", "carried", "possible", "completed"})
LASTING = frozenset({"leak", "tidal", "waterseal", "suction"})
HAVING = frozenset(
    {"for", "on", "covering", "cover", "have", "has", "having", "taking", "take", "got", "with", "after"}
    | {"minding", "doing", "i'm", "im", "i've", "ive", "my", "mine", "nurse", "rn"}
)
"""Before a row of beds these say whose they are."""
PAUSED = frozenset({"suction_off"})
READ_AS = frozenset({"is", "reads"})
BEEN = frozenset({"was", "is", "were"})
BODY = frozenset(
    {"pain", "pains", "ache", "aches", "aching", "sore", "soreness", "tender", "tenderness", "weakness"}
    | {"arm", "leg", "shoulder", "hip", "eye", "hand", "foot", "breast", "knee", "flank", "ear", "numbness"}
)


def counted_aloud(items: tuple[Item, ...], toks: Toks) -> Iterator[str]:
    """ "two on 8B: apical 20", "into 8, one mediastinal tube": a few in a word is how many, and no level."""
    for item in items:
        few = item.amount is not None and 0 < item.amount <= FEW and word(toks, item.end - 1) in ONES
        if item.role == "level" and few and not (item.lead or item.unit):
            yield "how many, or a level"


def one_of_several(items: tuple[Item, ...], toks: Toks) -> Iterator[str]:
    """ "forgot to read the old 1", "another one 210": that one, or 1 mL?"""
    for item in items:
        one = item.role in {"level", "volume"} and word(toks, item.start) in ONE and not item.unit
        if one and item.end - item.start == 1 and word(toks, item.start - 1) in OF_SEVERAL:
            yield "that one, or 1 mL"


def and_more(items: tuple[Item, ...], toks: Toks) -> Iterator[str]:
    """ "six hundred and something": the rest of the number was not said."""
    for item in items:
        k = item.end + (word(toks, item.end) in {"and", "-", "plus", "or"})
        more = word(toks, k) in UNSAID or (word(toks, k) == "a" and word(toks, k + 1) in {"bit", "little"})
        if item.role in AMOUNTS and more:
            yield "the rest of the number was not said"


def on_a_number(items: tuple[Item, ...], toks: Toks) -> Iterator[str]:
    """ "cont air leak still, on 20": a bed, or what the suction is set to, and no level."""
    for item in items:
        litres = item.role == "level" and word(toks, item.end - 1) in LITRES and not item.lead
        if litres and word(toks, item.start - 1) in {"on", "to"}:
            yield "oxygen, or a level"
        small = _may_be_set(item, toks)
        bare = item.loose_time or (item.role == "level" and not (item.lead or item.unit))
        if bare and small and word(toks, item.start - 1) == "on":
            yield "on a number says a bed or a setting"


def the_next_tube(items: tuple[Item, ...], toks: Toks) -> Iterator[str]:
    """ "bed 7 tube one's 310, two's 420": the second tube, or bed two?"""
    named = {int(i.name) for i in items if i.role == "tube" and i.name.isdecimal()}
    for item in items:
        label = item.label or ""
        bare = item.role == "bed" and word(toks, item.start - 1) not in BED_WORDS
        if bare and label.isdecimal() and int(label) - 1 in named:
            yield "the next tube, or a bed"


def of_suction(items: tuple[Item, ...], toks: Toks) -> Iterator[str]:
    """ "the drain is at 90 of suction": more than a dial shows, and yet no line."""
    for item in items:
        behind = toks.said[item.end : item.end + 2]
        if item.role == "level" and not item.unit and behind[0] == "of" and behind[1] in SETTINGS:
            yield "so much suction, or a level"


def _may_be_set(item: Item, toks: Toks) -> bool:
    """Whether what is "on" a number may be set to it, or a bed; "the drain's on 80" tells a line."""
    amount = item.amount or 0
    if not SETTINGS.isdisjoint(toks.said[item.end : item.end + len(("of", "wall", "suction"))]):
        return amount <= MOST_ON  # "the drain's on 90 at the wall"
    k = item.start - 2
    told = word(toks, k) in {"is", "s", "was"} or is_shortened(toks, k)
    k -= word(toks, k) in {"is", "s", "was"}
    k -= word(toks, k) == "'"
    if told and word(toks, k) in DRAINS and word(toks, k - 1) not in BED_WORDS:
        return amount <= MOST_OF_DRAIN
    return item.label is not None or amount <= (MOST_OF_BED if told and starts_number(toks, k) else MOST_ON)


def put_in(items: tuple[Item, ...], toks: Toks) -> Iterator[str]:
    """ "second unit of blood up at 0310, 300 in": what went in."""
    for item in items:
        ends = word(toks, item.end + 1) in {"", ",", ".", ";"}
        bare = item.loose_time or (item.role == "level" and not item.lead)
        if bare and word(toks, item.end) == "in" and ends:
            yield "what went in, or a level"


def side_of_another(items: tuple[Item, ...], toks: Toks) -> Iterator[str]:
    """ "6 left sided pain, chest tube 340": the side of the pain."""
    for item in items:
        k = item.end + (word(toks, item.end) in {"sided", "side", "chest"})
        if item.role == "tube" and word(toks, k) in BODY:
            yield "the side of something else"


def not_yet(items: tuple[Item, ...], toks: Toks) -> Iterator[str]:
    """ "got a new box for 21, not hooked up yet": what is not yet so."""
    denied = [i for i in items if i.role == "cue" and i.value == "neg"]
    if denied and "yet" in toks.words and any(t == "yet" for t in toks.said[denied[0].end :]):
        yield from ("what is not yet so" for i in items if is_event(i) and i.start < denied[0].start)


def not_done(items: tuple[Item, ...], toks: Toks) -> Iterator[str]:
    """ "chest tube insertion bed 2 not done, pt refused": no event."""
    for k, item in enumerate(items):
        if item.role == "cue" and item.value == "neg" and word(toks, item.end) in DONE:
            near = takewhile(lambda i: not (i.unread or i.role in AMOUNTS), reversed(items[:k]))
            yield from ("what was not done" for i in near if is_event(i))


def numbered_tube(items: tuple[Item, ...], toks: Toks) -> Iterator[str]:
    """ "bed 15 chest tube #1 out, #2 stays at 340": which tube, and no bed 2."""
    named = [i for i in items if i.role == "bed" and word(toks, i.start - 1) in BED_WORDS]
    for item in items:
        signed = item.role == "bed" and word(toks, item.start - 1) == "#"
        if signed and word(toks, item.start - 2) not in BED_WORDS and named:
            yield "a tube, or a bed"


def of_two_beds(items: tuple[Item, ...], toks: Toks) -> Iterator[str]:
    """ "bed 12 mark 870 at 1100 for bed 14": of which of the two?"""
    moved = any(is_event(i) and i.name == "moved" for i in items)
    named = [i for i in items if i.role == "bed" and not moved]
    for before, bed in pairwise(named):
        k = bed.start - 1 - (word(toks, bed.start - 1) in BED_WORDS)
        levels = [i for i in items if i.role in AMOUNTS]
        between = [i for i in levels if before.start < i.start < bed.start]
        behind = [i for i in levels if i.start > bed.start]
        if word(toks, k) == "for" and between and not behind and before.label != bed.label:
            yield "of which of two beds"


def came_in(items: tuple[Item, ...], toks: Toks) -> Iterator[str]:
    """ "2 new admits and bed 4": how many came, and no bed."""
    named = any(i.role == "bed" and word(toks, i.start - 1) in BED_WORDS for i in items)
    for before, item in pairwise(items):
        came = item.role == "cue" and item.value == "arrival" and before.end == item.start
        bare = before.role == "bed" and word(toks, before.start - 1) not in BED_WORDS
        if came and bare and named:
            yield "how many came, or which bed"


def before_now(items: tuple[Item, ...], toks: Toks) -> Iterator[str]:
    """ "the pt who was in 21, hes in 2 now": the bed where somebody was is not where the line is."""
    moved = any(i.role == "cue" and i.value == "kind" and i.name == "moved" for i in items)
    for item in items:
        k = item.start - 1
        while word(toks, k) in BED_WORDS:
            k -= 1
        was = word(toks, k) == "in" and word(toks, k - 1) in {"was", "were", "been"}
        if item.role == "bed" and was and not moved:
            yield "where somebody was, or where the line is"


def was_so(items: tuple[Item, ...], toks: Toks) -> Iterator[str]:
    """ "was off suction for xray": how it was, with no time, and not how it is."""
    if any(i.role == "time" and i.start > 0 and word(toks, i.start - 1) == "at" for i in items):
        return
    for item in items:
        turned = item.value == "fluid" and "now" in toks.said[item.end :]  # "was clear now is pink"
        turned &= not any(i.value == "fluid" and i.start > item.end for i in items)
        found = item.role == "cue" and (turned or item.value in LASTING or item.name in PAUSED)
        if found and word(toks, item.start - 1) in {"was", "were"}:
            yield "how it was, and not how it is"


WEIGHED = frozenset({"dressing", "dressings", "nappy", "nappies", "diaper", "pad", "pads", "bag", "stoma"})
FAR = 5


def weight_change(items: tuple[Item, ...], toks: Toks) -> Iterator[str]:
    """ "weight up 2 kg", "gained 2 kg": by how much, and no weight."""
    for item in items:
        before = toks.said[max(0, item.start - 2) : item.start]
        if item.role == "weight" and not CHANGES.isdisjoint(before):
            yield "by how much, or the weight"
        weighed = toks.said[max(0, item.start - FAR) : item.start]
        if item.role == "weight" and not WEIGHED.isdisjoint(weighed):
            yield "what was weighed is no patient"


def read_or_when(items: tuple[Item, ...], toks: Toks) -> Iterator[str]:
    """ "21 is 340 this morning, bloody": where no line is told, what something "is" may be one."""
    if any(i.role in AMOUNTS for i in items):
        return
    for item in items:
        bare = item.role == "time" and toks[item.start].is_digits and not (item.lead or item.at)
        plain = bare and not any(c.colon for c in item.clocks)
        if plain and word(toks, item.start - 1) in READ_AS:
            yield "what was read, or when"


def said_of_it(items: tuple[Item, ...], toks: Toks) -> Iterator[str]:
    """ "looked at it at 1300 and it was 115", "3 was 1830": behind "was" stands what was read, and no bare
    time; before it perhaps the bed."""
    last: Item | None = None
    for item in items:
        last = item if item.role in AMOUNTS else last
        if last is None or item.role != "time" or item.amount is None:
            continue
        of_bed = last.label is not None and not (last.lead or last.unit) and not (item.at or item.lead)
        spirometer = word(toks, item.start - 1) == "is" and word(toks, item.start - 2) not in {"time", "it"}
        bare = item.loose_time or of_bed or (spirometer and not item.at)  # "cough strong, IS 1250"
        if bare and word(toks, item.start - 1) in BEEN:
            yield "what was read, or when"


def bed_again(items: tuple[Item, ...], _: Toks) -> Iterator[str]:
    """ "12 chart 1840 for bed 12": the bed once more, and no level; 1840 is the line, or when."""
    beds = [i for i in items if i.role == "bed"]
    for item in items:
        bare = item.role == "level" and item.label is not None and not (item.lead or item.unit)
        if bare and any(bed.label == item.label and bed.start > item.start for bed in beds):
            yield "the bed once more, or a level"
    said = [i for i in items if i.role != "cue"] if len(beds) > 1 else []
    for bed, item, again in zip(said, said[1:], said[2:], strict=False):
        twice = bed.role == again.role == "bed" and bed.label == again.label
        clock = any(c.style == "24" for c in item.clocks)
        if twice and item.role == "level" and clock and not item.lead:
            yield "the bed twice, and a line or a time"


def gave_report(items: tuple[Item, ...], toks: Toks) -> Iterator[str]:
    """ "12 gave report on 14": who gave it, and no amount."""
    for item, asked in pairwise(items):
        gave = word(toks, item.end) == "gave" and asked.start == item.end + 1
        if gave and item.role == "volume" and asked.role == "cue" and asked.value == "ask":
            yield "who gave a report, and no amount"


def age_or_level(items: tuple[Item, ...], _: Toks) -> Iterator[str]:
    """ "12 is 65, post op heart": how old the patient is, or the line, where why the drain is in follows."""
    for k, item in enumerate(items):
        bare = item.role == "level" and not (item.lead or item.unit or item.at)
        before = next((i.role for i in reversed(items[:k]) if i.role != "sep"), "")
        beside = before == "bed" and 0 < (item.amount or 0) <= OLDEST
        told = [i.value if i.role == "cue" else i.role for i in items[k + 1 :] if i.role != "sep"][:1]
        if bare and beside and told == ["reason"]:
            yield "an age, or a level"


def whether_it_has(items: tuple[Item, ...], toks: Toks) -> Iterator[str]:
    """ "has bed 12 got a line for 1900": asked, and no level; "has 9 been checked since?" has no number."""
    if "?" in toks.words and not any(i.role in AMOUNTS | {"num"} for i in items):
        return
    first = next((i for i in items if i.role != "cue" or i.value != "bed"), None)
    begins = word(toks, 0) == "has" and first is not None and first.role == "bed"
    if begins and first is not None and first.start <= 1 + (word(toks, 1) in BED_WORDS):
        yield "whether it has, or that it has"


def from_bed_to_bed(items: tuple[Item, ...], toks: Toks) -> Iterator[str]:
    """ "Jen here for 8A to 9B", "covering 8A to 9B": which beds somebody has, and nobody moved."""
    if any(i.role == "cue" and i.value == "kind" for i in items):
        return
    for bed, other in pairwise(i for i in items if i.role == "bed"):
        k = bed.start - 1
        while word(toks, k) in BED_WORDS | {"beds", "rooms"}:
            k -= 1
        row = all(w == "to" or w in BED_WORDS for w in toks.said[bed.end : other.start])
        if row and other.link == "to" and word(toks, k) in HAVING:
            yield "whose beds these are, or who moved"


TURNED = (
    Rule(whether_it_has, frozenset({"bed"}), frozenset({"has"})),
    Rule(from_bed_to_bed, frozenset({"bed"}), frozenset({"to"})),
    Rule(age_or_level, frozenset({"reason"})),
    Rule(weight_change, frozenset({"weight"}), CHANGES | WEIGHED),
    Rule(read_or_when, frozenset({"time"}), READ_AS),
    Rule(said_of_it, frozenset({"time"}), BEEN),
    Rule(bed_again, frozenset({"level"})),
    Rule(gave_report, frozenset({"ask"}), frozenset({"gave"})),
    Rule(came_in, frozenset({"arrival"})),
    Rule(before_now, frozenset({"bed"}), frozenset({"in"})),
    Rule(one_of_several, frozenset({"level", "volume"}), OF_SEVERAL),
    Rule(and_more, AMOUNTS, UNSAID | {"a"}),
    Rule(put_in, frozenset({"level", "time"}), frozenset({"in"})),
    Rule(on_a_number, frozenset({"level", "time"}), frozenset({"on", "to"})),
    Rule(the_next_tube, frozenset({"tube"})),
    Rule(of_suction, frozenset({"level"}), SETTINGS),
    Rule(side_of_another, frozenset({"tube"}), BODY),
    Rule(not_yet, frozenset({"neg"}), frozenset({"yet"})),
    Rule(of_two_beds, frozenset({"bed"}), frozenset({"for"})),
    Rule(not_done, frozenset({"neg"}), DONE),
    Rule(numbered_tube, frozenset({"bed"}), frozenset({"#"})),
)
