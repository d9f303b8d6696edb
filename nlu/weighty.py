"""Events that close or change a drain: told whole, or asked.

A tube that is out, a patient who left, a canister that was changed: what follows is counted
differently. A word that was not understood right beside a short phrase for one of them may say that
it is of something else ("passed gas", "nj tube out"), so the message is asked.
"""

from __future__ import annotations

from collections.abc import Iterator
from itertools import pairwise

from .items import AMOUNTS, Item
from .neighbours import phrase_of
from .numbers import Toks, starts_number, word
from .patterns.asides import STAFF
from .patterns.leads import BED_WORDS
from .patterns.nouns import CAN, TUBE
from .patterns.ownclauses import HIMSELF
from .whose import HOLDING

CLOSING = frozenset({"removed", "left", "exchanged", "moved", "placed"})
STAYS = frozenset({"still", "stays", "stay", "stayed", "staying", "remains", "remain", "remaining", "kept"})
NOT_PERSONS = frozenset({"canister", "tubeword", "fluid", "amount", "output", "leak"})
NOUNS = frozenset(w for p in (CAN, TUBE) for phrase in p.strip("()").split("|") for w in phrase.split())
HAPPENING = frozenset({"got", "gotten", "getting"})
MEANWHILE = frozenset({"while", "whilst", "when"})
OF_TUBE = frozenset({"but", "is", "it", "it's", "its", "tube", "drain", "though", ","})
OF_PLACE = frozenset({"", ",", ".", ";", "place", "situ", "there", "position"})
SHIFTED = frozenset({"moved", "left", "tipped", "damaged", "disconnected", "raised"})
FURNITURE = frozenset(
    {"chair", "table", "bedside", "recliner", "wheelchair", "walker", "frame", "locker", "trolley", "cart"}
    | {"monitor", "pump", "pole", "stand", "tv", "lamp", "tray", "cup", "jug", "vase", "commode", "fan"}
    | {"phone", "bag", "bags", "belongings", "mattress", "hoist", "curtain", "screen", "scales", "machine"}
    | {"rail", "rails", "bedrail", "siderail", "cotside", "lamp", "light", "bell", "drawer"}
)
RAISED = frozenset(
    {"pillow", "pillows", "arm", "arms", "hand", "hands", "leg", "legs", "foot", "feet", "head"}
)
"""What stands around a bed, is moved and falls as patients and drains do."""
BESIDE_VERBS = frozenset(
    {"has", "had", "have", "is", "was", "were", "been", "be", "just", "also", "then", "got", "now", "that"}
    | {"which", "already", "being", "nearly", "almost"}
)
ARTICLES = frozenset({"the", "a", "an", "his", "her", "their"})
OF_CHEST = frozenset({"pleural", "chest", "pigtail", "thoracic", "intercostal", "left", "right", "drain"})
OWNING = frozenset({"'s", "s"})
WHO = frozenset({"patient", "pt", "bed", "lady", "man", "gentleman", "drain", "tube", "tubes", "drains"})
WHO |= {"and", "to", "box", "canister", "bottle", "from", "over", "up", "down"}
POINTING = frozenset({"the", "his", "her", "that", "was", "it's", "its", "thats", "that's", "i", "mean"})
POINTING |= {"actually", "sorry", "only", "just", "meaning", "ie", "(", "this", "is"}
OTHERS = frozenset({"other", "last", "each", "every", "no", "any", "which", "some", "someone", "only"})
"""Before "one" these name no other tube."""
ASIDE = frozenset(
    {
        "him",
        "them",
        "without",
        "today",
        "ok",
        "fine",
        "well",
        "successfully",
        "uneventfully",
        "easily",
        "peacefully",
        "again",
        "emergency",
        "urgent",
        "emergent",
        "surgical",
        "request",
    }
)


TOWARDS = frozenset({"across", "over", "up", "down", "through", "along", "upstairs", "downstairs"})


def weighty(items: tuple[Item, ...], toks: Toks) -> Iterator[str]:
    """One line for each such event with a word beside it that was not understood."""
    for before, item in pairwise(items):
        if before.end != item.start:
            continue
        if _is_unread(before) and is_closing(item) and _starts_open(item, toks):
            doer = word(toks, before.start) in STAFF or word(toks, before.start - 1) in STAFF
            yield from () if doer else (f"{before.name!r} may say what was {item.name}",)
        if before.value == "choice" and before.role == "cue" and is_closing(item):
            yield "which of several"  # "first tube out"
        if not is_closing(before):
            continue
        across = before.name in {"moved", "left"} and item.name in TOWARDS
        if _is_unread(item) and _ends_open(before, toks) and not across:
            yield f"{item.name!r} may say what was {before.name}"
        if _is_of_a_thing(before, item):
            yield "an event that is of a thing"
        if item.role == "cue" and item.value == "order":
            yield "an order for an event is no event"

    yield from _pulled(items, toks)
    yield from _of_furniture(items, toks)
    yield from _thrown(items, toks)
    yield from _staying(items, toks)


def named_behind(items: tuple[Item, ...], toks: Toks) -> Iterator[str]:
    """ "tube out at 0630, the NG one", "drain out, bile one", "tube clamped, the PEG": which it was."""
    event = next((k for k, i in enumerate(items) if i.role == "cue" and i.value in {"kind", "what"}), None)
    stop = next((i.end for i in items[event or 0 :] if i.role == "sep"), None)
    if event is None or stop is None:
        return
    start = next((k for k in range(stop, len(toks)) if word(toks, k) not in POINTING), stop)
    named = next((i for i in items if i.start == start and (i.unread or i.role == "foreign")), None)
    if named is None or word(toks, named.start) in OTHERS:
        return
    ends = word(toks, named.end) in {"", ",", ".", ";", "!", "not", ")"}
    pointed = start > stop or phrase_of(named, toks) in HOLDING
    mended = toks.said[named.end : named.end + 2] == ("i", "mean")
    if (
        "one" in toks.said[named.end : named.end + 2]
        or mended
        or (named.role == "foreign" and ends and pointed)
    ):
        yield f"{word(toks, named.start)!r} may be what that happened to"


def _pulled(items: tuple[Item, ...], toks: Toks) -> Iterator[str]:
    """ "the tube got pulled out": by whom, or by what? Taken out, or dislodged."""
    for item in items:
        if item.name != "removed" or not is_closing(item):
            continue
        said = {t.text for t in toks[max(0, item.start - 1) : item.end + 1]}
        if _catheter(item, toks):
            yield "a catheter may be of the bladder"
        if "out" in said and said & HAPPENING:
            yield "taken out, or dislodged"
        past_out = item.end + (word(toks, item.end) == "out")
        by_chance = word(toks, item.end - 1) in {"pulled", "out"} and is_meanwhile(toks, past_out)
        if by_chance or _is_still_in(toks):
            yield "pulled, and perhaps not out"  # "tube pulled when he rolled", "but still in"


def is_meanwhile(toks: Toks, k: int) -> bool:
    """Whether what happened at the same time is told there: "when he rolled", "as he sat up"."""
    return word(toks, k) in MEANWHILE or (word(toks, k) == "as" and word(toks, k + 1) in HIMSELF)


def _of_furniture(items: tuple[Item, ...], toks: Toks) -> Iterator[str]:
    """ "bed 7's chair moved to bed 9", "it was the table that fell over": what happened to something else."""
    for item in items:
        event = item.role == "cue" and item.value in {"kind", "what"}
        if not event or item.name not in SHIFTED:
            continue
        before = item.start - 1
        while word(toks, before) in BESIDE_VERBS:
            before -= 1
        before = _before_its_bed(toks, before)
        owner = next((k for k in range(before, max(0, before - 2), -1) if word(toks, k) in OWNING), 0)
        behind = item.end
        while word(toks, behind) in ARTICLES | OWNING:
            behind += 1
        moved = item.name == "moved"
        owned = moved and owner and toks[before].text.isalpha() and not _is_patient(toks, before)
        theirs = moved and _owned_behind(toks, item.end)
        strikes = starts_number(toks, behind) or word(toks, behind) in BED_WORDS | NOUNS
        things = {word(toks, behind)} if moved else set()
        things |= set() if strikes and not moved else {word(toks, before)}  # "his bag knocked over 7's box"
        if owned or theirs or things & (RAISED if item.name == "raised" else FURNITURE):
            yield f"something else than a patient or a drain may have {item.name}"


def _before_its_bed(toks: Toks, k: int) -> int:
    """ "his frame in bed 7 tipped over": what stands before the bed that it is at."""
    bed = k - 1 - (word(toks, k - 1) in BED_WORDS) if toks[k].is_digits else k
    return bed - 1 if bed < k and word(toks, bed) in {"in", "on", "at", "by"} else k


def _is_patient(toks: Toks, k: int) -> bool:
    return word(toks, k) in WHO or word(toks, k) in OWNING


def _owned_behind(toks: Toks, k: int) -> bool:
    """ "moved bed 7's walker to bed 9": what belongs to a bed that is named behind the verb."""
    owner = next((j for j in range(k, min(len(toks), k + 4)) if word(toks, j) in OWNING), 0)
    return owner > 0 and word(toks, owner + 1).isalpha() and word(toks, owner + 1) not in WHO


def _catheter(item: Item, toks: Toks) -> bool:
    """ "catheter pulled out": of the bladder, perhaps."""
    k = next((k for k in range(item.start, item.end) if word(toks, k) == "catheter"), 0)
    return k > 0 and word(toks, k - 1) not in OF_CHEST


def _is_still_in(toks: Toks) -> bool:
    """ "pulled but still in, sutures ok": not "stitch still in"."""
    pairs = [k for k in range(1, len(toks)) if toks.said[k : k + 2] == ("still", "in")]
    return any(word(toks, k - 1) in OF_TUBE and word(toks, k + 2) in OF_PLACE for k in pairs)


def stays_with(toks: Toks, k: int) -> bool:
    """ "to HDU at 0600, drain still in": what stays with who goes; only a removal is denied by it."""
    return toks.said[k : k + 2] == ("still", "in") and word(toks, k - 1) in {"tube", "drain", "ct", "icd"}


def _thrown(items: tuple[Item, ...], toks: Toks) -> Iterator[str]:
    """ "threw the old canister away": a lone "away" is of a patient only right behind a bed, tube or time."""
    for before, item in pairwise(items):
        lone = item.role == "cue" and item.name == "away"
        if lone and word(toks, item.start) == "away" and before.role == "cue" and before.value != "bed":
            yield "something else may have gone away"
        place = item.role == "cue" and item.name == "away" and word(toks, item.start) == "in"
        if place and before.role in AMOUNTS:
            yield "where something was lost is no going away"


def _staying(items: tuple[Item, ...], toks: Toks) -> Iterator[str]:
    """ "left tube out, right stays": not every tube that is named is out."""
    if not any(i.name == "removed" and is_closing(i) for i in items):
        return
    ends = {i.end for i in items if i.role == "tube"}
    named = {i.name for i in items if i.role == "tube" and i.start not in ends}  # "left pleural" is one
    tubes = [i for i in items if i.role == "tube"]
    behind = [i for i in items if tubes[1:] and i.start > tubes[-1].start]
    lined = {"level", "time"} <= {i.role for i in behind}  # "right's still in at 260 as of 1720"
    if len(named) > 1 and not lined and any(t.text in STAYS for t in toks):
        yield "one tube is out and another stays"
    told = any(i.role == "cue" and i.value == "suction" for i in behind)
    if told and not any(map(is_closing, behind)):
        yield "one tube is out and another is told of"  # "l drain d/c r to sxn"


def _is_of_a_thing(event: Item, after: Item) -> bool:
    """ "expired canister", "discharged 60 from the tube": nobody left."""
    return event.name == "left" and after.role == "cue" and after.value in NOT_PERSONS


def is_closing(item: Item) -> bool:
    """Whether it is an event that closes or changes a drain."""
    return item.role == "cue" and item.value == "kind" and item.name in CLOSING


def _is_unread(item: Item) -> bool:
    return item.unread and item.name not in ASIDE


def _starts_open(item: Item, toks: Toks) -> bool:
    """Whether the phrase begins with the noun or is a lone verb: the word before may qualify it."""
    return item.end - item.start == 1 or word(toks, item.start) in NOUNS


def _ends_open(item: Item, toks: Toks) -> bool:
    """Whether the phrase ends with the noun or is a lone verb: the word behind may be what it is of."""
    short = 2 if item.name == "left" else 1
    return item.end - item.start <= short or word(toks, item.end - 1) in NOUNS
