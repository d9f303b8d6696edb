"""Cues of what a canister ended at, told in sentences: "the old one ended up at 1240", "it was on 560".

Also why it was changed, and that the new one went up. Part of `narrated`, which calls these.
"""

from __future__ import annotations

from collections.abc import Iterator

from .clock import clocks
from .goings import Rule, past
from .numbers import is_digits, numbers, starts_number, word
from .oldones import OF_BED, Message, is_timed
from .patterns.leads import LINES
from .patterns.levels import MILLILITRES
from .patterns.narrated import CANISTERS, SHOWED, WHOSE
from .pipeline import Cue

NEARLY = frozenset(
    {"nearly", "almost", "completely", "totally", "pretty", "about", "getting", "just", "very"}
)
NEARLY |= {"so", "too", "practically", "basically", "quite", "all"}
HAVING = frozenset({"is", "was", "were", "are", "it's", "its", "that's", "been", "had", "'s"})
BECAUSE = frozenset({"because", "cause", "cos", "cuz", "coz", "as", "since", "but", "so", "and"})
ENDED = SHOWED | {
    "said",
    "says",
    "ended",
    "finished",
    "closed",
    "stopped",
    "stood",
    "sat",
    "measured",
    "reading",
}
ENDED |= {"topped", "totalled", "totaled", "maxed", "peaked", "got", "reached"}
AT_MOST = frozenset({("topped", "out"), ("topped", "off"), ("maxed", "out"), ("got", "to"), ("got", "up")})
OUT_AT = frozenset({"up", "off", "out", "in"})
LINKS = frozenset({"at", "on", "with", "about", "around", "to", "a", "roughly"})
OF_THE_OLD = frozenset({"on", "for", "in", "of", "from", "off"})
THAT = frozenset(
    {"that", "it", "this", "him", "her", "the", "old", "one", "canister", "box", "bottle", "drain"}
)
THAT |= {"left", "right", "chamber"}
VOLUMES = frozenset({"volume", "vol", "total", "amount"})
IT = frozenset({"it", "that", "which", "line", "level"})
HELD = frozenset({"was", "had", "read", "held"})
CHANGING = frozenset({"change", "swap", "replace", "switch", "exchange"})
PARTS = frozenset({"quarters", "quarter", "thirds", "third"})
FAR = 7
"""Words between what was done and the canister: "bed twenty one's left bottle"."""
NOUNS = frozenset({"swap", "exchange", "change", "changeover"})
DIAL = 40
"""Centimetres of water: no suction dial is set higher."""
OF_BOX = (
    OF_BED | HAVING | NEARLY | {"full", "that", "it", "and", ",", "up", "we", "'", "s", "has", "have", "at"}
)
ENDS = MILLILITRES | {"", ",", ".", ";", "in", "when", "and", "so", "total", "by"}
FRESH = frozenset({"new", "fresh", "clean", "replacement"})
HUNG = frozenset(
    {"put", "hung", "hooked", "connected", "popped", "set", "stuck", "attached", "started", "applied"}
)
HUNG |= {"fitted", "placed"}
PLANS = frozenset({"to", "will", "i'll", "we'll", "please", "can", "should", "not", "didn't", "be"})
BOXES = frozenset({"boxes", "bottles", "canisters", "chambers", "drains"})
CHANGED = frozenset({"changed", "swapped", "replaced", "switched", "exchanged"})
ONES = frozenset({"one", "side", "box", "bottle", "canister", "chamber", "old", "drain"})


def _was_full(said: Message) -> Iterator[Cue]:
    """ "changed it because it was full", "canister is full so I changed it": why, and no level."""
    toks = said.toks
    for k, text in enumerate(toks.said) if said.tells("exchanged") else ():
        adverb = k - 1
        while word(toks, adverb) in NEARLY:
            adverb -= 1
        whole = text == "full" and word(toks, adverb) in HAVING and not starts_number(toks, k + 1)
        if not whole or (word(toks, k + 1) in LINKS | {"-", ":", "="} and starts_number(toks, k + 2)):
            continue
        begins = adverb - (word(toks, adverb - 1) in IT | {"box"})
        begins -= begins < adverb and word(toks, begins - 1) in BECAUSE
        inside = [c for c in said.cues if c.start < k + 1 and c.end > begins]
        if any(c.label not in {"filler", "level", "levelat", "old", "word"} for c in inside):
            continue
        first = min((c.start for c in inside), default=begins)
        if word(toks, first) in CANISTERS:
            yield Cue("canister", "", first, first + 1)
            begins = first + 1
        yield Cue("filler", "", begins, k + 1)


def _part_full(said: Message) -> Iterator[Cue]:
    """ "bottle changed at 0520 as 3/4 full", "was two thirds full": why, and neither a level nor a day."""
    toks = said.toks
    changed = next((c.end for c in said.cues if c.value == "exchanged"), len(toks))
    for k in range(changed + 1, len(toks)):
        signs = toks.said[k - 3 : k] in {(a, "/", b) for a, b in (("3", "4"), ("2", "3"), ("1", "2"))}
        words = word(toks, k - 2) in {"three", "two", "one", "a"} and word(toks, k - 1) in PARTS
        words |= word(toks, k - 1) == "half"
        if word(toks, k) == "full" and (signs or words):
            start = k - 3 if signs else k - 2 + (word(toks, k - 1) == "half")
            while word(toks, start - 1) in NEARLY | HAVING | BECAUSE | {"it", "only", "over"}:
                start -= 1
            yield Cue("filler", "", start, k + 1)


def _filled_up(said: Message) -> Iterator[Cue]:
    """ "the box filled up at two pm and I hung a new one": when, and no line."""
    toks = said.toks
    for k in range(1, len(toks) - 1) if said.tells("exchanged") else ():
        if toks.said[k : k + 2] == ("filled", "up"):
            yield Cue("filler", "", k, k + 2 + (word(toks, k + 2) == "at" and bool(clocks(toks, k + 3))))


def _new_drain(said: Message) -> Iterator[Cue]:
    """ "new chest drain on the right", "new drain on bed 7 for an effusion": a tube, and no canister."""
    toks = said.toks
    reason = any(c.label == "reason" for c in said.cues)
    for cue in said.cues:
        drain = cue.value == "exchanged" and toks.said[cue.end - 2 : cue.end] == ("drain", "on")
        side = word(toks, past(toks, cue.end, WHOSE)) in {"left", "right"}
        if drain and (side or reason) and word(toks, cue.start) in {"new", "fresh"}:
            yield cue._replace(value="placed", end=cue.end - 1)
            yield Cue("filler", "", cue.end - 1, cue.end)


def _been_changed(said: Message) -> Iterator[Cue]:
    """ "canister was full so that's been changed at 0930", "swap on bed 12, old canister 1100"."""
    toks = said.toks
    told = said.tells("exchanged", "placed", "removed")
    old = any(c.label == "old" and LINES.isdisjoint(toks.said[c.start : c.end]) for c in said.cues)
    for k, text in enumerate(toks.said):
        passive = text in CHANGED and word(toks, k - 1) in {"been", "got", "was"}
        box = k - 2
        while box > 0 and (word(toks, box) in OF_BOX or is_digits(toks, box) or starts_number(toks, box)):
            box -= 1
        behind = word(toks, k + 1) in {
            "at",
            ",",
            ".",
            "",
            "by",
            "about",
            "around",
            "because",
            "just",
            "out",
            "over",
        }
        if (
            passive
            and word(toks, box) in CANISTERS
            and behind
            and not any(c.start <= k < c.end for c in said.cues)
        ):
            yield Cue("kind", "exchanged", k - 1, k + 1)
        noun = text in NOUNS and k < 2 and word(toks, k + 1) in {"on", "for", "of", "in", "done"}
        if noun and old and not told and "with" not in toks.words:
            yield Cue("kind", "exchanged", k, k + 1)
        both = text in CHANGED and word(toks, k + 1) in {"both", "all"}
        boxes = past(toks, k + 2, WHOSE | {"of"})
        if both and word(toks, boxes) in BOXES:
            yield Cue("kind", "exchanged", k, boxes + 1)


def _was_up_to(said: Message) -> Iterator[Cue]:
    """ "the canister was up to 1900 so we put a new one on": what it held that was changed."""
    toks = said.toks
    changed = next((c.start for c in said.cues if c.value == "exchanged"), 0)
    old = any(c.label == "old" for c in said.cues)
    for k in range(1, changed - 2 if not old else 0):
        end = past(toks, k + 2, frozenset({"up", "to", "at", "on", "already"}))
        box = word(toks, k) in CANISTERS and word(toks, k + 1) == "was" and end > k + 2
        stop = max((n.end for n in numbers(toks, end) if n.value > DIAL), default=0) if box else 0
        if stop and word(toks, past(toks, stop, MILLILITRES)) in {"so", "and", ",", "then"}:
            yield Cue("canister", "", k, k + 1)
            yield Cue("old", "", k + 1, end)
            return


def _fresh_one(said: Message) -> Iterator[Cue]:
    """ "I hung a new one, the old had 2000 in it", "put a clean bottle on bed 4, the full one was 2 L"."""
    toks = said.toks
    old = any(c.label == "old" for c in said.cues)
    for k in range(1, len(toks)) if old and not said.tells("exchanged", "placed", "removed") else ():
        article = k - (word(toks, k - 1) in {"a", "an", "the", "another"})
        up = article - (word(toks, article - 1) in {"up", "on", "in"})
        noun = k + 1
        hung = word(toks, k) in FRESH and word(toks, up - 1) in HUNG and word(toks, up - 2) not in PLANS
        if hung and word(toks, noun) in CANISTERS | {"one"}:
            end = (
                noun + 1 + (word(toks, noun + 1) in {"up", "on", "in"} and word(toks, noun + 2) not in OF_BED)
            )
            yield Cue("kind", "exchanged", up - 1, end)


def _had_to(said: Message) -> Iterator[Cue]:
    """ "had to change bed 10's bottle", "changed over bed 12's left bottle": done, and no limit."""
    toks = said.toks
    for k in range(len(toks) - 2):
        had = toks.said[k : k + 2] == ("had", "to") and word(toks, k + 2) in CHANGING
        over = (
            word(toks, k) in CHANGED
            and word(toks, k + 1) == "over"
            and word(toks, past(toks, k + 2, WHOSE)) in OF_BED | CANISTERS
        )
        end = k + 2 + had
        box = (had or over) and not (CANISTERS | {"unit"}).isdisjoint(toks.said[end : end + FAR])
        if box and word(toks, k - 1) not in {"have", "would", "if"}:
            yield Cue("kind", "exchanged", k, end)


def _box_at(said: Message) -> Iterator[Cue]:
    """ "swapped bed six's box at sixteen forty": the at is of the time."""
    toks = said.toks
    swapped = next((c.end for c in said.cues if c.value == "exchanged"), len(toks))
    for cue in said.cues:
        at = cue.end - 1
        box = cue.label == "levelat" and word(toks, cue.start) in CANISTERS and word(toks, at) == "at"
        if box and swapped <= cue.start <= swapped + FAR and is_timed(toks, cue.end):
            yield Cue("canister", "", cue.start, at)
            yield Cue("filler", "", at, cue.end)


def _went_up(said: Message) -> Iterator[Cue]:
    """ "new bottle went up at 7:55": the verb is of the change."""
    toks = said.toks
    for cue in said.cues:
        verb = past(toks, cue.end, frozenset({"has", "just", "was", "been", "got", "'s"}))
        put = word(toks, verb) in {"went", "gone", "put", "hung", "placed"}
        if cue.value == "exchanged" and put and word(toks, verb + 1) in {"up", "on", "in"}:
            yield cue._replace(end=verb + 2)
            yield from [Cue("filler", "", verb + 2, verb + 3)] * (word(toks, verb + 2) == "at")


def _old_ended(said: Message) -> Iterator[Cue]:
    """ "old one ended up at 1240", "the old one said 1,980": what it held."""
    toks = said.toks
    for cue in said.cues:
        if cue.label == "old" and word(toks, cue.end) in VOLUMES and said.tells("exchanged"):
            yield cue._replace(end=past(toks, cue.end + 1, LINKS | HAVING))  # "old volume 1800"
            continue
        if cue.label == "old" and toks.said[cue.start - 2 : cue.start] == ("that", "one"):
            yield cue._replace(start=cue.start - 2)  # "that one ended on 900": no one o'clock
            continue
        verb = past(toks, cue.end, frozenset({"was", "had", "is", "just", "it"}))
        on = past(toks, verb, frozenset({"on", "at", "up", "to"}))
        last = cue.value == "last" and word(toks, cue.end - 1) == "one" and said.tells("exchanged")
        if last and verb > cue.end and starts_number(toks, on):
            yield Cue("old", "", cue.start, on)  # "new bottle at 2130, ..., last one was on 1770"
            continue
        if cue.label != "old" or word(toks, verb) not in ENDED:
            continue
        end = past(toks, past(toks, verb + 1, OUT_AT), LINKS)
        most = toks.said[verb : verb + 2] in AT_MOST or word(toks, verb) in {"reached", "peaked"}
        if starts_number(toks, end) and (most or word(toks, end - 1) != "at" or not is_timed(toks, end)):
            yield cue._replace(end=end)  # "finished at 1830" may say when; "topped out at 1940" does not


def _final_of_that(said: Message) -> Iterator[Cue]:
    """ "final on that was 415", "final for the old canister was 980": of what was told before."""
    toks = said.toks
    for cue in said.cues:
        of = word(toks, cue.end) in OF_THE_OLD
        verb = past(toks, cue.end + 1, THAT) if of else cue.end
        if cue.label == "old" and verb > cue.end + 1 and word(toks, verb) in {"was", "is"}:
            end = past(toks, verb + 1, LINKS)
            named = [c.value for c in said.cues if c.label == "old" and cue.start < c.start < end and c.value]
            if starts_number(toks, end):
                yield cue._replace(end=end, value=cue.value or next(iter(named), ""))


def _closed_at(said: Message) -> Iterator[Cue]:
    """ "canister change at 0430, closing level 1,640, new one had 60": of the old one, and of no shift."""
    toks = said.toks
    labels = {c.label for c in said.cues}
    if not said.tells("exchanged") or "new" not in labels or "old" in labels or "shift" in toks.words:
        return
    for cue in said.cues:
        if cue.label == "closing" and starts_number(
            toks, past(toks, cue.end, frozenset({"was", "at", "of", "on"}))
        ):
            yield cue._replace(label="old", value="")


def _each_ended(said: Message) -> Iterator[Cue]:
    """ "both canisters changed at 1800, left one was 1230 and right one 980": what each of them held."""
    toks = said.toks
    for k, text in enumerate(toks.said):
        if text in BOXES:
            verb = past(toks, k + 1, frozenset({"were", "are", "have", "been", "got", "both", "all", "just"}))
            end = verb + 1 + (word(toks, verb + 1) in {"out", "over"})
            if word(toks, verb) in CHANGED:
                yield Cue("kind", "exchanged", k, end)
                said = said._replace(cues=(*said.cues, Cue("kind", "exchanged", k, end)))
        one = past(toks, k + 1, ONES)
        done = past(toks, one, frozenset({"was", "got", "has", "been", "just", "also"}))
        also = text in {"left", "right"} and done > one > k + 1 and word(toks, done) in CHANGED
        if also and said.tells("exchanged"):  # "and the left one got changed at 1900"
            yield Cue("kind", "exchanged", k + 1, done + 1)
    several = "both" in toks.words or not BOXES.isdisjoint(toks.words)
    for k, text in enumerate(toks.said) if several and said.tells("exchanged") else ():
        verb = past(toks, k + 1, ONES)
        end = past(toks, past(toks, verb + 1, OUT_AT), LINKS)
        if text in {"left", "right"} and word(toks, verb) in HELD | ENDED and starts_number(toks, end):
            yield Cue("old", "", k + 1, end)


def _it_held(said: Message) -> Iterator[Cue]:
    """ "drain removed at ten to six, it was on 560", "changed at 1700, it was up to 1940": its last level."""
    toks = said.toks
    ended = [c for c in said.cues if c.value in {"removed", "exchanged"}]
    others = {c.label for c in said.cues} & {"old", "new", "opens"}
    if len(ended) != 1 or others or not {"new", "fresh"}.isdisjoint(toks.words):
        return
    for k in range(ended[0].end + 1, len(toks) - 1):
        after = word(toks, k - 1) in {",", "."} | IT or word(toks, k - 2) in {",", "."}
        if word(toks, k) not in HELD or word(toks, k - 1) not in IT or not after:
            continue
        end = past(toks, k + 1, frozenset({"on", "up", "to", "at", "reading"}))
        led = end > k + 1 or word(toks, k) in {"had", "held", "read"}
        timed = any(is_timed(toks, j) for j in range(ended[0].end, k)) and not is_timed(toks, end)
        led |= timed and word(toks, k - 1) in {"that", "which"}
        stop = max((n.end for n in numbers(toks, end)), default=0)
        if stop and led and word(toks, end - 1) != "at" and word(toks, stop) in ENDS:
            yield Cue("old", "", k - 1, end)  # but not "it was on 20 of suction"


def _whole_name(said: Message) -> Iterator[Cue]:
    """ "replaced chest drain unit": the unit is the drain that was replaced."""
    for cue in said.cues:
        named = cue.value == "exchanged" and word(said.toks, cue.end - 1) in CANISTERS | {"drain"}
        if named and word(said.toks, cue.end) in {"unit", "system", "set"}:
            yield cue._replace(end=cue.end + 1)


def _new_tubes(said: Message) -> Iterator[Cue]:
    """ "new tubes from the OR at 0245": they were put in there, and nothing is left open by the "or"."""
    toks = said.toks
    for k in range(len(toks) - 1):
        tubes = k + 1 + (word(toks, k + 1) == "chest")
        if (
            word(toks, k) in {"new", "fresh"}
            and word(toks, tubes) == "tubes"
            and word(toks, tubes + 1) != "of"
        ):
            yield Cue("kind", "placed", k, tubes + 1)
            if toks.said[tubes + 1 : tubes + 4] == ("from", "the", "or"):
                yield Cue("filler", "", tubes + 1, tubes + 4)


OLD_ENDED: tuple[tuple[frozenset[str], Rule], ...] = (
    (frozenset({"full"}), _was_full),
    (frozenset({"full"}), _part_full),
    (CHANGED | {"had"}, _had_to),
    (frozenset({"at"}), _box_at),
    (FRESH, _fresh_one),
    (CHANGED | NOUNS, _been_changed),
    (frozenset({"was"}), _was_up_to),
    (frozenset({"filled"}), _filled_up),
    (frozenset({"drain"}), _new_drain),
    (frozenset({"went", "gone", "put", "hung", "placed"}), _went_up),
    (ENDED | VOLUMES | {"one"}, _old_ended),
    (OF_THE_OLD, _final_of_that),
    (BOXES | {"both", "left", "right"}, _each_ended),
    (HELD, _it_held),
    (frozenset({"closing"}), _closed_at),
    (frozenset({"tubes"}), _new_tubes),
    (frozenset({"unit", "system", "set"}), _whole_name),
)
"""Each rule with the words of which it needs one."""
