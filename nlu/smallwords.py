"""Cues of small words beside a line or an event that say nothing of it: "sorry fat thumbs", "bed 6 only 15".

Also who knocked a drain over, in words that nobody lists: "the tea trolley knocked 15's bottle over". Part
of `narrated`, which calls these.
"""

from __future__ import annotations

from collections.abc import Iterator

from .goings import Rule, bed_ends, past
from .neighbours import begins_at
from .numbers import is_digits, starts_number, word
from .oldones import Message, is_timed
from .patterns.leads import BED_WORDS
from .patterns.levels import MILLILITRES
from .patterns.narrated import WHOSE
from .pipeline import Cue

STOPS = frozenset({",", ";", ".", "!", "-", "(", ")", ":"})
ENDS = STOPS | {"", "at", "@"}
SORRY = frozenset({"sorry", "apologies", "soz", "excuse", "pardon", "oops", "forgive"})
CLUMSY = frozenset({"fat", "big", "clumsy", "butter", "cold", "sore", "gloved", "the", "my", "wet"})
FINGERS = frozenset({"thumb", "thumbs", "finger", "fingers", "gloves", "hands"})
SO_LITTLE = frozenset({"only", "still", "just", "merely"})
OBSERVED = frozenset({"obs", "observations", "checks", "rounding"})
SETTINGS = frozenset({"suction", "seal", "wall"})
KNOCKING = frozenset(
    {"knocked", "kicked", "bumped", "clipped", "tipped", "nudged", "bashed", "whacked", "ran"}
)
SETTING = frozenset(
    {"weaned", "switched", "dropped", "popped", "stepped", "moved", "transitioned", "converted"}
)
SETTING |= {"brought", "bumped", "trialled", "trialed"}
DOERS = frozenset(
    {"", ",", ".", ";", "i", "we", "just", "and", "then", "surgery", "team", "reg", "i've", "so"}
)
DONE = frozenset({"changed", "swapped", "replaced", "emptied", "read", "marked", "checked"})
TIMELY = frozenset({"o'clock", "clock", "early", "late", "first", "earlier", "later", "am", "pm", "hours"})
SUCTION = frozenset({"suction", "sxn", "sx"})
UNITS = frozenset({"cm", "cmh2o", "cms"})
ASKED = frozenset({"ordered", "wanted", "requested", "please", "now", "is", "was", "asked"})
LONGEST_LABEL = 3
ARTICLES = frozenset({"the", "a", "an", "another", "some", "one"})
MOST_OF_AGENT = 4
_NO_AGENT = """
who what which why when where how if whether nobody noone none nothing not no never nearly almost about to may
might could would should will can must do does did is are was were has have had be been being say says said
think thinks thought guess maybe perhaps possibly probably likely heard told hear hearing claims claim reckon
unless until before after because as while since so then and or but nor than that this these those there here
it its he she they we i you me him her them us sure unsure seems seem looks like if's got get getting just
"""
NO_AGENT = frozenset(_NO_AGENT.split())
"""With one of these before the verb it may not have happened, or somebody only says so."""


def _only_so_little(said: Message) -> Iterator[Cue]:
    """ "2 am: bed 12 670, bed 6 only 15": a low line, as "just 15" is; "only 15 this hour" is none."""
    toks = said.toks
    for k in range(2, len(toks) - 1):
        if word(toks, k) not in SO_LITTLE or not is_digits(toks, k + 1):
            continue
        first = k
        while word(toks, first - 1) in SO_LITTLE:
            first -= 1
        named = bed_ends(said, first) and word(toks, first - 2) in BED_WORDS | STOPS | {"", "and"}
        if named and word(toks, k + 2) in ENDS:
            yield Cue("filler", "", first, k + 1)


def _fat_thumbs(said: Message) -> Iterator[Cue]:
    """ "sorry fat thumbs", "apologies, gloves": why it is typed so, at the end of what it says."""
    toks = said.toks
    for k, text in enumerate(toks.said):
        end = past(toks, k + 1, CLUMSY | {","})
        if text in SORRY and word(toks, end) in FINGERS and word(toks, end + 1) in STOPS | {""}:
            yield Cue("filler", "", k, end + 1)


def _so_much_more(said: Message) -> Iterator[Cue]:
    """ "drained 120 mL more at 2300": more than before, and no more behind it."""
    toks = said.toks
    for k in range(2, len(toks)):
        more = word(toks, k) == "more" and word(toks, k - 1) in MILLILITRES and is_digits(toks, k - 2)
        led = any(c.label == "amount" and c.end == k - 2 for c in said.cues)
        if more and led and word(toks, k + 1) in ENDS:
            yield Cue("ml", "", k - 1, k)
            yield Cue("filler", "", k, k + 1)


def _out_of_chest(said: Message) -> Iterator[Cue]:
    """ "tube halfway out of his chest": where it came out of."""
    toks = said.toks
    for cue in said.cues:
        side = past(toks, cue.end + 1, WHOSE)
        out = cue.value == "dislodged" and word(toks, cue.end) in {"of", "from"}
        if out and word(toks, side) in {"chest", "side"}:
            yield cue._replace(end=side + 1)


def _found_so(said: Message) -> Iterator[Cue]:
    """ "found drain on its side bed 7": found so, and no tube of that name."""
    toks = said.toks
    for k, text in enumerate(toks.said):
        if text != "found" or word(toks, k - 1) not in {"", ",", ".", "just", "i", "we"}:
            continue
        drain = next((c for c in said.cues if c.start == k + 1 and c.label in {"tubeword", "canister"}), None)
        if drain is not None and any(c.start == drain.end and c.label == "what" for c in said.cues):
            yield Cue("filler", "", k, k + 1)


def _observed(said: Message) -> Iterator[Cue]:
    """ "obs bed 22 at 1600 drain swinging": it heads what was found; with other figures it is they."""
    toks = said.toks
    start = past(toks, 1, frozenset({"on", "for", "of", "in", "done"}))
    named = word(toks, start) in BED_WORDS or is_digits(toks, start) or start in said.beds
    if word(toks, 0) not in OBSERVED or not named or "/" in toks.words:
        return
    bed = start + (word(toks, start) in BED_WORDS)
    settings = {c.end for c in said.cues if c.label in SETTINGS}
    figures = [k for k in range(bed + 1, len(toks)) if is_digits(toks, k)]
    told = {c.label for c in said.cues}
    found = told & (SETTINGS | {"leak", "tidal", "fluid", "waterseal"}) and not told & {
        "same",
        "ask",
        "question",
    }
    if found and all(k in settings or word(toks, k - 1) in {"at", "@"} for k in figures):
        yield Cue("filler", "", 0, 1)


def _knocked_by(said: Message) -> Iterator[Cue]:
    """ "the tea trolley knocked bed 15's bottle over", "mop guy knocked 12s drain over": who or what did."""
    toks = said.toks
    for k, text in enumerate(toks.said):
        start = begins_at(STOPS, toks, k)
        agent = toks.said[start:k]
        plain = 0 < len(agent) <= MOST_OF_AGENT and all(w.isalpha() and not w.endswith("ly") for w in agent)
        named = len(agent) <= len(("mop", "guy")) or agent[0] in ARTICLES
        if text not in KNOCKING or not (plain and named) or not NO_AGENT.isdisjoint(agent):
            continue
        if not any(c.start < k and c.end > start and c.label not in {"filler", "word"} for c in said.cues):
            yield Cue("filler", "", start, k)


def _of_suction(said: Message) -> Iterator[Cue]:
    """ "ordered 10 of suction for 14", "20 of suction on 14": so much suction, and that bed."""
    toks = said.toks
    for k in range(2, len(toks) - 1):
        unit = k - 2 - (word(toks, k - 2) in UNITS)
        amount = word(toks, k - 1) == "of" and is_digits(toks, unit)
        behind = past(toks, k + 1, ASKED)
        bed = behind + 1 + (word(toks, behind + 1) in BED_WORDS)
        label = is_digits(toks, bed) and len(word(toks, bed)) <= LONGEST_LABEL
        ends = word(toks, bed + 1) in ENDS | {"per", "by", "and", "now"}
        said_so = amount and word(toks, k) in SUCTION
        if said_so and word(toks, k + 1) == "at" and is_timed(toks, k + 2):
            yield Cue("suction", "", k, k + 1)  # "20 of suction at 1800": that is when
            yield Cue("filler", "", k + 1, k + 2)
        if (
            word(toks, k) in SUCTION
            and amount
            and word(toks, behind) in {"for", "on", "in"}
            and label
            and ends
        ):
            orders = (c for c in said.cues if c.label == "order" and k <= c.start < behind)
            yield from (Cue("order", "suction", max(c.start, k + 1), min(c.end, behind)) for c in orders)
            yield Cue("suction", "", k, k + 1)
            yield Cue("bed", "", behind, bed)


def _set_it(said: Message) -> Iterator[Cue]:
    """ "weaned bed 12 to water seal", "dropped 12 to 10 of suction": how it was set, and nothing fell."""
    toks = said.toks
    settings = {c.start for c in said.cues if c.label in {"waterseal", "suction"}}
    for k, text in enumerate(toks.said):
        told = k - (word(toks, k - 1) in {"was", "been", "just", "now", "has"})
        down = past(toks, k + 1, frozenset({"down", "back"}))
        start = next((c for c in range(k + 1, down + 1) if c in settings), 0)
        to = "to" in toks.said[k + 1 : start + 2]  # "weaned off suction, now ws" may be either
        if text in SETTING and bed_ends(said, told) and start and to:
            yield Cue("filler", "", told, start)  # "bed 12 weaned to water seal"
        if text not in SETTING or word(toks, k - 1) not in DOERS:
            continue
        bed = past(toks, k + 1, BED_WORDS | {"the"})
        end = said.beds[bed][0] if bed in said.beds else bed + is_digits(toks, bed)
        way = past(toks, end, frozenset({"'s", "'", "s", "down", "up", "back", "over"}))
        amount = way + 1 if word(toks, way) == "to" and is_digits(toks, way + 1) else len(toks)
        of = past(toks, amount + 1, UNITS | {"of"})
        if bed < end and (way in settings or (of > amount + 1 and word(toks, of) in SUCTION)):
            yield Cue("filler", "", k, k + 1)


def _last_changed(said: Message) -> Iterator[Cue]:
    """ "when was 9's canister last changed": when that was, and not how long it lasts."""
    for cue in said.cues:
        last = cue.value == "capacity" and word(said.toks, cue.end - 1) == "last"
        if last and word(said.toks, cue.end) in DONE and cue.end - cue.start > 1:
            yield Cue("canister", "", cue.start, cue.start + 1)


def _in_the_morning(said: Message) -> Iterator[Cue]:
    """ "suction off in the morning", "tube out in am": what lies ahead; "6 in the morning" is when."""
    toks = said.toks
    for k in range(1, len(toks) - 1):
        end = past(toks, k + 1, frozenset({"the"}))
        morning = word(toks, k) == "in" and word(toks, end) in {"morning", "am", "afternoon", "evening"}
        timed = is_digits(toks, k - 1) or word(toks, k - 1) in TIMELY or starts_number(toks, k - 1)
        if morning and not timed and (end > k + 1 or word(toks, end) == "am"):
            yield Cue("plan", "", k, end + 1)


def _right_this_time(said: Message) -> Iterator[Cue]:
    """ "right this time: bed 2 380", "right beds now": that they are no mistake, and no side."""
    toks = said.toks
    for cue in said.cues:
        end = past(toks, cue.end, frozenset({"beds", "ones", "numbers", "this", "time", "now"}))
        side = cue.label == "side" and toks.said[cue.start : cue.end] == ("right",)
        if side and end > cue.end and word(toks, cue.start - 1) in STOPS | {""} and word(toks, end) in STOPS:
            yield Cue("filler", "", cue.start, end)


def _this_hour(said: Message) -> Iterator[Cue]:
    """ "bed 9 15 ml this hour": how much came; "340 this hour" may be the line."""
    toks = said.toks
    for k in range(2, len(toks) - 1):
        number = k - 1 - (word(toks, k - 1) in MILLILITRES)
        hour = word(toks, k) == "this" and word(toks, k + 1) in {"hour", "hr"} and word(toks, k + 2) in ENDS
        little = is_digits(toks, number) and len(word(toks, number)) < LONGEST_LABEL and number > 0
        first = number
        while word(toks, first - 1) in SO_LITTLE:
            first -= 1
        last = not any(is_digits(toks, j) for j in range(k + 2, len(toks)))
        if hour and little and last and bed_ends(said, first):
            yield Cue("out", "", k, k + 2)
            yield from [Cue("filler", "", first, number)] * (first < number)


def _there_is(said: Message) -> Iterator[Cue]:
    """ "theres 340 in 9": so much is in it."""
    toks = said.toks
    for k, text in enumerate(toks.said):
        end = k + 1 + (text == "there" and word(toks, k + 1) == "is")
        there = text in {"theres", "there's"} or end > k + 1
        if there and is_digits(toks, end) and word(toks, k - 1) in STOPS | {"", "and"}:
            behind = end + 1 + (word(toks, end + 1) in MILLILITRES)
            yield from [Cue("filler", "", k, end)] * (word(toks, behind) in {"in", "on"})


SMALL_WORDS: tuple[tuple[frozenset[str], Rule], ...] = (
    (SO_LITTLE, _only_so_little),
    (FINGERS, _fat_thumbs),
    (frozenset({"more"}), _so_much_more),
    (frozenset({"chest", "side"}), _out_of_chest),
    (frozenset({"found"}), _found_so),
    (OBSERVED, _observed),
    (KNOCKING, _knocked_by),
    (SUCTION, _of_suction),
    (SETTING, _set_it),
    (frozenset({"this"}), _this_hour),
    (frozenset({"theres", "there's", "there"}), _there_is),
    (frozenset({"right"}), _right_this_time),
    (frozenset({"morning", "am", "afternoon", "evening"}), _in_the_morning),
    (DONE, _last_changed),
)
"""Each rule with the words of which it needs one."""
