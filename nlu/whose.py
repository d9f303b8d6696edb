"""Whose a number is: what stands in its clause may name another device, another line or a count.

A cue that leads a number ("put out", "up to") says what sort of number it is, and not of which device.
Called by `leftovers`, by way of `inclause`.
"""

from __future__ import annotations

from collections.abc import Iterator
from itertools import pairwise

from .items import AMOUNTS, FINDINGS, Item
from .neighbours import phrase_of
from .numbers import Toks, word
from .patterns.asides import PATIENTS, PERSONS, RELATIVES, STAFF, THINGS
from .patterns.hearsay import READING
from .patterns.remarks import REMARKS
from .rules import Rule, Rules
from .signing import closing

OURS = frozenset({"level", "tubeword", "canister", "old", "new", "opens"})
SEVERAL = frozenset({"tubes", "drains", "canisters", "boxes", "chambers", "bottles", "cts"})
PLACING = frozenset({"on", "in", "of", "for", "from"})
PEOPLE = PERSONS | PATIENTS | RELATIVES | STAFF | REMARKS
POINTING = frozenset({"that", "it"})
COMPARING = frozenset({"more", "less", "higher", "lower", "extra", "above", "below", "up", "over"})
HOLDING = frozenset(
    {"urine", "foley", "foley catheter", "urinal", "bedpan", "catheter output", "jp", "jp drain", "j p", "ng"}
    | {"ngt", "ng tube", "og", "og tube", "nasogastric", "peg", "peg tube", "g tube", "j tube", "gj tube"}
    | {"evd", "lumbar drain", "external ventricular drain", "wound vac", "penrose", "biliary drain", "t tube"}
    | {"nephrostomy", "abdominal drain", "ostomy", "ileostomy", "colostomy", "rectal tube", "surgical drain"}
    | {"chole tube", "cholecystostomy", "accordion drain", "wound drain", "hip drain", "abd drain"}
    | {"knee drain", "neck drain", "breast drain", "back drain", "bile drain", "pancreatic drain"}
    | {"perc drain", "pelvic drain", "liver drain", "spinal drain", "condom cath", "emesis", "vomit"}
)
"""Devices, and what comes of a patient, that are measured in millilitres as ours are."""
OF_CHEST = frozenset({"pleural", "chest", "pigtail", "thoracic", "intercostal", "left", "right"})
INSTILLING = frozenset(
    {
        "flushed",
        "flush",
        "flushes",
        "flushing",
        "irrigated",
        "irrigate",
        "irrigation",
        "instilled",
        "injected",
    }
    | {"lavage", "lavaged", "tpa", "alteplase", "urokinase", "streptokinase", "dornase", "talc", "instill"}
)
BAGS = frozenset({"bag", "bags", "pouch", "pouches", "stoma", "urostomy", "jug", "basin", "bowl"})
"""What is emptied and changed as a canister is: "changed the stoma bag bed 4, 200 in it"."""
SUCTION_CANS = frozenset({"canister", "cannister", "liner", "yankauer", "yank", "jar", "bottle"})
"""In the name of another device these say that it holds something."""
OTHER_HEADS = frozenset(
    {"mr", "mrs", "ms", "miss", "also", "but", "yes", "and", "then", "sorry", "next", "last"}
)
VERBAL = ("ed", "ing", "ly")
SUCKED = frozenset({"suction_off", "suction_on"})
MACHINES = frozenset(
    {"hoover", "hoovering", "vacuum", "vac", "cleaner", "cleaners", "machine", "dental", "dentist"}
)
MACHINES |= {
    "oral",
    "mouth",
    "yankauer",
    "sucker",
    "fan",
    "saliva",
    "trach",
    "trachy",
    "airway",
    "secretions",
}
"""What else sucks, or is unplugged."""
STANDING = PLACING | {
    "beside",
    "by",
    "near",
    "next",
    "under",
    "behind",
    "above",
    "to",
    "at",
    "with",
    "off",
    "against",
}
LEADS = frozenset({"level", "levelat"})
SHOWING = frozenset({"shows", "showing", "reads", "read", "says", "measures", "measured", "measuring"})
SPEAKERS = frozenset({"i", "we", "he", "she", "they", "who"})
SEEING = READING | {"noticed", "found", "notice", "see", "spotted", "made", "make"}
PAIR = 2
NEAR = 3
"""Words behind "of" among which the fluid may be named: "of thin straw fluid"."""


def behind_another(clause: tuple[Item, ...], toks: Toks) -> Iterator[str]:
    """ "ng put out 250", "o2 up to 4 L": another device was named, and none of ours behind it."""
    device: Item | None = None
    for item in clause:
        if item.role == "foreign":
            device = item
        elif item.role in AMOUNTS and device is not None and item.lead != "inside":
            yield f"{word(toks, device.start)!r} may be what the number is of"
        elif item.role == "tube" or (item.role == "cue" and item.value in OURS):
            device = device if device is not None and device.end == item.start else None


def of_device_before(items: tuple[Item, ...], toks: Toks) -> Iterator[str]:
    """ "emptied the foley on bed 5, 30 ml at 1450": a device was named that holds something, no number of it,
    and behind the stop nothing says that the number is of another."""
    device: Item | None = None
    for item in items:
        if (item.role == "foreign" and _is_of_suction(item, toks)) or _is_bag(item, toks):
            device = item
            continue
        if item.lead == "inside" and item.role in AMOUNTS and device is not None:
            yield f"{word(toks, device.start)!r} may be what the number is in"
        ours = item.role in {"bed", "tube"} or (item.role == "cue" and item.value in OURS)
        if item.role == "foreign":
            device = item if phrase_of(item, toks) in HOLDING else device
        elif item.role == "sep" or item.unread:
            continue
        elif item.role in AMOUNTS and device is not None and item.lead in {"", "at", "amount", "output"}:
            if any(i.role == "sep" and device.end <= i.start < item.start for i in items):
                yield f"{word(toks, device.start)!r} may be what the number is of"
            device = None
        elif item.role == "claimed" or (ours and _is_behind_stop(item, device, items)):
            device = None


def _is_bag(item: Item, toks: Toks) -> bool:
    return (item.unread or item.role == "foreign") and word(toks, item.end - 1) in BAGS


def told_twice(items: tuple[Item, ...], _: Toks) -> Iterator[str]:
    """ "got a litre of saline, 1000 at 1630": the amount of something else again, and no line?"""
    for other, item in pairwise(i for i in items if i.amount is not None and i.role in AMOUNTS | {"claimed"}):
        bare = item.role in AMOUNTS and item.lead in {"", "at"}
        if other.role == "claimed" and bare and item.amount == other.amount:
            yield "the amount of something else may be told again"


def _is_of_suction(item: Item, toks: Toks) -> bool:
    """ "suction canister", "yankauer canister": what the wall or a mouth is emptied into."""
    return not SUCTION_CANS.isdisjoint(toks.said[item.start : item.end])


def _is_behind_stop(item: Item, device: Item | None, items: tuple[Item, ...]) -> bool:
    """Whether a stop stands between a device and a piece behind it."""
    return device is not None and any(i.role == "sep" and device.end <= i.start < item.start for i in items)


def out_of_that(items: tuple[Item, ...], toks: Toks) -> Iterator[str]:
    """ "6 has a bulb drain too, 12 out of that": of what was named before and not understood."""
    for k, item in enumerate(items):
        said = toks.said[item.end : item.end + 3]
        named = any(i.role == "cue" and i.value in OURS for i in items[:k])
        strange = any(_is_strange(i) for i in items[:k])
        if item.role in AMOUNTS and POINTING & set(said) and "of" in said and strange and not named:
            yield "out of what was not understood"


def of_catheter(clause: tuple[Item, ...], toks: Toks) -> Iterator[str]:
    """ "bed 13 catheter drained 500": whose catheter, where nothing says that it is of the chest."""
    named = any(i.role == "cue" and i.value in OURS for i in clause)
    for item in clause:
        bare = (
            item.unread and item.name in {"catheter", "cath"} and word(toks, item.start - 1) not in OF_CHEST
        )
        if bare and not named and any(i.role in AMOUNTS for i in clause):
            yield "a catheter may be of the bladder"


def of_another(clause: tuple[Item, ...], toks: Toks) -> Iterator[str]:
    """ "gave 5 of oxy": an amount of something that was not understood."""
    for item in clause:
        if item.role in AMOUNTS and word(toks, item.end) == "of":
            behind = [i for i in clause if item.end < i.start <= item.end + NEAR]
            if any(_is_strange(i) for i in behind) and not any(_is_fluid(i) for i in behind):
                yield "the amount may be of something else"


def on_a_bed(clause: tuple[Item, ...], toks: Toks) -> Iterator[str]:
    """ "biliary on 10 drained 90", "sink in 21 has a leak": what is at the bed was named, not understood."""
    told = any(i.role in AMOUNTS or (i.role == "cue" and i.value in FINDINGS) for i in clause)
    for before, item in pairwise(i for i in clause if not (i.role == "cue" and i.value == "bed")):
        placed = word(toks, before.end) in PLACING and item.role == "bed"
        of_ours = word(toks, before.start - 1) in THINGS  # "box full on bed 12"
        if told and placed and not of_ours and _is_strange(before):
            yield f"{before.name!r} may be what the number is of"


def of_what_a_bed_has(clause: tuple[Item, ...], toks: Toks) -> Iterator[str]:
    """ "11's pouch is at 200": what is there was named, and not understood."""
    for before, item in pairwise(clause):
        owned = before.role == "bed" and word(toks, item.start - 1) in {"'s", "s"} and _is_thing(item)
        if owned and _is_led(clause, item.end):
            yield f"{item.name!r} may be what the number is of"


def named_before_bed(clause: tuple[Item, ...], _: Toks) -> Iterator[str]:
    """ "urometer 11 hit 200": the same before the bed; dictated it may be a misheard word for a bed."""
    said = [i for i in clause if not (i.role == "cue" and i.value == "bed")][:2]
    heads = len(said) == PAIR and said[1].role == "bed" and said[1].start == said[0].end
    if heads and _is_thing(said[0]) and _is_led(clause, said[1].end) and not said[0].name.endswith(VERBAL):
        yield f"{said[0].name!r} may be what the number is of"


def of_its_subject(clause: tuple[Item, ...], toks: Toks) -> Iterator[str]:
    """ "blinds stuck at 300", "his watch shows 1830", "I dreamed it was at 1800": what a number is said of
    was named and not understood, and no word for the drain stands in its place."""
    for k, item in enumerate(clause):
        verb = k
        while verb and clause[verb - 1].role == "cue" and clause[verb - 1].value in LEADS:
            verb -= 1
        if item.role in AMOUNTS and any(_is_verb(i, toks) for i in clause[verb:k]):
            head = _head(clause[:verb], toks)
            led = any(i.value == "level" for i in clause[verb:k])  # else `behind_another` has found it
            if head is not None and head.role == "foreign" and not led:
                continue
            if head is not None and (_may_own(head) or _is_in_mind(clause[:verb], clause[verb], toks)):
                yield f"{word(toks, head.start)!r} may be what the number is of"


def in_an_old_one(clause: tuple[Item, ...], _: Toks) -> Iterator[str]:
    """ "old box from 21 is in the dirty utility with 1400 in it": no line of the canister that is there."""
    old = next((i.end for i in clause if i.role == "cue" and i.value == "old"), 0)
    changed = any(i.role == "cue" and i.value == "kind" for i in clause)
    for item in clause if old and not changed else ():
        new = any(i.value == "new" and i.end <= item.start for i in clause)
        if (
            item.role == "level"
            and item.lead in {"", "at", "levelat", "inside"}
            and item.start > old
            and not new
        ):
            yield "what an old canister holds is no line"


def other_suction(items: tuple[Item, ...], toks: Toks) -> Iterator[str]:
    """ "suction off for the hoover", "suction on for the oral sucker": of another machine on that wall."""
    for k, item in enumerate(items):
        if item.role == "cue" and item.name in SUCKED:
            stop = next((i.start for i in items[k:] if i.role == "sep"), len(toks))
            if not MACHINES.isdisjoint(toks.said[item.end : stop]):
                yield "the suction may be of another machine"


def _is_verb(cue: Item, toks: Toks) -> bool:
    return cue.value == "levelat" or word(toks, cue.start) in SHOWING


def _head(before: tuple[Item, ...], toks: Toks) -> Item | None:
    """What the words between the bed and the verb are about: "stopcock" in "stopcock for the art line"."""
    named: Item | None = None
    for item in before:
        if item.role in {"bed", "sep", "time"} or (item.role == "cue" and item.value == "bed"):
            named = None
        elif named is not None and word(toks, item.start) in STANDING:
            break
        elif named is None or STANDING.isdisjoint(toks.said[named.end : item.start]):
            named = item
        else:
            break
    return named


def _may_own(head: Item) -> bool:
    return head.role == "foreign" or (_is_thing(head) and not head.name.endswith(VERBAL))


def _is_in_mind(before: tuple[Item, ...], verb: Item, toks: Toks) -> bool:
    """ "I promised him it was at 200"; "I noticed it was at 350" was seen."""
    told = (i for i in before if i.unread and word(toks, i.start - 1) in SPEAKERS and i.name not in SEEING)
    return any(not POINTING.isdisjoint(toks.said[i.end : verb.end]) for i in told)


def _is_led(clause: tuple[Item, ...], end: int) -> bool:
    return any(i.role in AMOUNTS and i.lead in {"level", "levelat"} for i in clause if i.start >= end)


def _is_thing(item: Item) -> bool:
    return item.unread and item.name not in PEOPLE | OTHER_HEADS and item.name.isalpha()


def in_another_place(clause: tuple[Item, ...], toks: Toks) -> Iterator[str]:
    """ "3's pigtail in the liver gave 90": a tube of another place than the chest."""
    told = any(i.role in AMOUNTS for i in clause)
    for tube, item in pairwise(clause):
        k = item.start - 1 - (word(toks, item.start - 1) in {"the", "his", "her", "their"})
        placed = k == tube.end and word(toks, k) == "in" and item.name != "chest"
        if told and tube.value == "tubeword" and placed and _is_strange(item):
            yield f"the tube is in {item.name!r}"


def another_line(clause: tuple[Item, ...], toks: Toks) -> Iterator[str]:
    """ "fem line at 90", "line placed at 1830": a line that is not drawn on a canister."""
    for before, item in pairwise(clause):
        if before.end != item.start:
            continue
        if word(toks, item.start) == "line" and item.value == "level" and _is_strange(before):
            yield f"{before.name!r} may be another line"
        event = item.role == "cue" and item.value == "kind" and item.name in {"placed", "removed"}
        event |= item.role == "cue" and word(toks, item.start) == "out"  # "line out at 1800"
        if event and before.value == "level" and word(toks, before.end - 1) in {"line", "lines"}:
            yield "another line may have been placed or removed"


def counted(clause: tuple[Item, ...], toks: Toks) -> Iterator[str]:
    """ "back with 2 tubes joined": how many there are is no level."""
    for item in clause:
        behind = {word(toks, item.end), word(toks, item.end + 1) if word(toks, item.end) == "chest" else ""}
        if item.role == "level" and not item.lead and not item.unit and behind & SEVERAL:
            yield "how many there are is no level"


def compared(clause: tuple[Item, ...], toks: Toks) -> Iterator[str]:
    """ "a hundred more than last time": a difference, and no level."""
    for item in clause:
        compares = word(toks, item.end) in COMPARING and word(toks, item.end + 1) != "or"
        compares &= item.end < closing(toks)  # "at 1500 over"
        if item.role == "level" and compares:
            yield "how much more is no level"


def weighed(clause: tuple[Item, ...], _: Toks) -> Iterator[str]:
    """ "canister weighs 1.4 kg": of what stands on the scale, and not of the patient."""
    said = [i for i in clause if not (i.role == "cue" and i.value in {"weight", "filler"}) and not i.unread]
    for before, item in pairwise(said):
        ours = before.role == "cue" and before.value in {"canister", "tubeword"}
        if item.role == "weight" and ours:
            yield "the weight may be of the canister"


def instilled(clause: tuple[Item, ...], _: Toks) -> Iterator[str]:
    """ "flushed the pigtail in bed 4 with 20 ml": what went in, where no word calls it a line."""
    for item in clause:
        bare = item.role in {"level", "volume"} and item.lead in {"", "at"}
        if bare and any(i.unread and i.name in INSTILLING for i in clause):
            yield "what went in is no level"


def out_of_a_tube(clause: tuple[Item, ...], toks: Toks) -> Iterator[str]:
    """ "nil from left, 40 from right": what came from a tube is an amount, where no word calls it a line."""
    for item, tube in pairwise(clause):
        came = word(toks, item.end) == "from" and tube.role == "tube" and tube.start <= item.end + 2
        if item.role == "level" and item.lead in {"", "at", "from"} and came:
            yield "what came from a tube is an amount"


def _is_strange(item: Item) -> bool:
    return item.role == "foreign" or (item.unread and item.name not in PEOPLE)


def _is_fluid(item: Item) -> bool:
    return item.role == "check" or (item.role == "cue" and item.value in {"fluid", "output", "tubeword"})


DEVICE_BEFORE = (
    Rule(other_suction, frozenset({"what"}), MACHINES),
    Rule(of_device_before, frozenset({"foreign"})),
    Rule(of_device_before, frozenset({"word"}), BAGS),
    Rule(told_twice, frozenset({"claimed"})),
    Rule(out_of_that, frozenset({"word", "foreign"}), frozenset({"of"})),
)
WHOSE = Rules(
    (
        Rule(behind_another, frozenset({"foreign"})),
        Rule(of_catheter, frozenset({"word"})),
        Rule(of_what_a_bed_has, frozenset({"word"})),
        Rule(of_its_subject, LEADS),
        Rule(in_an_old_one, frozenset({"old"})),
        Rule(on_a_bed, frozenset({"word", "foreign"}), PLACING),
        Rule(of_another, frozenset({"word", "foreign"}), frozenset({"of"})),
        Rule(in_another_place, frozenset({"word", "foreign"}), frozenset({"in"})),
        Rule(instilled, frozenset({"word"}), INSTILLING),
        Rule(another_line, frozenset({"level"}), frozenset({"line", "lines"})),
        Rule(compared, frozenset({"level"}), COMPARING),
        Rule(out_of_a_tube, frozenset({"tube"}), frozenset({"from"})),
        Rule(weighed, frozenset({"weight"})),
        Rule(counted, frozenset({"tubeword", "canister"}), SEVERAL),
    )
)
