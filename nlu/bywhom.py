"""Cues of orders told by whose they are: "Dr: 5 suction 20", "at rounds they decided 8 water seal".

Part of `narrated`. What is found is told before the setting; `bidden` reads orders that are whole sentences.
"""

from __future__ import annotations

from collections.abc import Iterator

from .beside import PROVIDERS
from .goings import Rule, past
from .numbers import is_digits, starts_number, word
from .oldones import OF_BED, Message
from .patterns.asides import RELATIVES
from .pipeline import Cue
from .shortened import DIALLED

WHO = PROVIDERS | {"dr", "md", "pa", "np", "doc", "surgeon", "consultant", "registrar", "reg", "attending"}
WHO |= {"fellow", "resident", "team", "thoracics", "surgeons", "doctor", "surgery"}
STOPPED = frozenset({"discontinued", "stopped", "dc'd", "dcd", "d/c'd"})
DECIDED = frozenset({"decided", "says", "said", "told", "advised", "advises", "decides"})
STOPS = frozenset({"", ",", ";", ".", "!", "and", "then", "-", ":"})
ROUNDS = frozenset({"round", "rounds"})
WANTS = frozenset({"wants", "want", "wanted", "ordered", "orders"})
WAYS = frozenset({"down", "up", "back", "turned", "put", "set", "dialled", "to", "at"})
TITLES = frozenset({"dr", "prof", "mr", "ms", "mrs", "doctor"})
TOLD = DECIDED | {
    "wants",
    "want",
    "happy",
    "okayed",
    "okays",
    "okay",
    "instructed",
    "agreed",
    "asked",
    "approved",
}
TOLD |= {"ordered", "okd", "would", "like", "wanted", "requested"}
BIDDING = frozenset(
    {"can", "may", "to", "should", "continue", "keep", "kept", "stay", "stays", "remain", "okayed"}
)
BIDDING |= {"okays", "leave", "go", "for", "ok", "okay"}
DIRECT = BIDDING | {
    "put",
    "place",
    "on",
    "in",
    "under",
    "at",
    "be",
    "come",
    "back",
    "now",
    "placed",
    "get",
    "take",
    "allowed",
}
DOUBTED = frozenset(
    {"?", "if", "when", "once", "tomorrow", "later", "unless", "not", "maybe", "might", "after"}
)
DOUBTED |= {
    "could",
    "before",
    "or",
    "until",
    "till",
    "then",
    "asking",
    "ask",
    "why",
    "who",
    "does",
    "was",
    "were",
}
"""With one of these it is no order for now, or nobody's."""
SETTINGS = frozenset({"waterseal", "suction", "seal"})


def _headed(said: Message) -> Iterator[Cue]:
    """ "Dr: 5 suction 20, 24 water seal": whose orders they are."""
    toks = said.toks
    set_to = any(c.label in {"suction", "waterseal"} for c in said.cues)
    told = any(c.label == "order" for c in said.cues)
    told |= not toks.words.isdisjoint({"was", "were", "is", "at", "found", "noted", "now"})
    named = 1 + (word(toks, 0) in TITLES and word(toks, 1).isalpha())  # "Dr Patel: bed 12 suction 10"
    if set_to and not told and word(toks, 0) in WHO | TITLES and word(toks, named) == ":":
        yield Cue("order", "", 0, named + 1)


def _wants_it_at(said: Message) -> Iterator[Cue]:
    """ "team wants bed 12 down to -10", "reg wants 12 up to 20": the suction that is ordered, and no line."""
    toks = said.toks
    for k in range(1, len(toks)):
        bed = past(toks, k + 1, OF_BED)
        end = said.beds[bed][0] if bed in said.beds else bed + is_digits(toks, bed)
        to = past(toks, end, WAYS)
        number = to + (word(toks, to) == "-")
        wants = word(toks, k) in WANTS and word(toks, k - 1) in WHO and bed < end < to
        dialled = word(toks, to - 1) in {"to", "at"} and word(toks, number) in DIALLED
        if wants and dialled and word(toks, number + 1) in STOPS | {"cm", "please"}:
            yield Cue("order", "", k - 1, k + 1)
            yield Cue("suction", "", end, to)
        elif word(toks, k) in WANTS and bed < end < to and word(toks, to - 1) == "to":
            if not starts_number(toks, number):
                continue  # "ordered 12A down to suction -10"
            yield Cue("plan", "", end, to)  # "team want bed 12 up to 200"


def _placed_to(said: Message) -> Iterator[Cue]:
    """ "NP order: 16 place to H2O seal": what is to be done to it is its setting."""
    toks = said.toks
    orders = [c.end for c in said.cues if c.label == "order"]
    for cue in said.cues if orders else ():
        start = cue.start - (word(toks, cue.start - 1) in {"on", "to"})
        led = word(toks, start - 1) in {"place", "put", "switch", "change", "keep", "back"}
        if cue.label == "waterseal" and led and orders[0] <= start - 1:
            yield Cue("filler", "", start - 1, cue.start)


def _stopped(said: Message) -> Iterator[Cue]:
    """ "MD d/c'd suction on 12, straight drain": an order; with nobody named it is off."""
    toks = said.toks
    for k in range(len(toks) - 1):
        slashed = toks.said[k : k + 2] == ("d", "/") and toks.said[k + 2] in {"c'd", "cd", "c"}
        end = next((c.end for c in said.cues if c.start == k and c.value == "removed"), k + 1)
        stopped = word(toks, k) in STOPPED or slashed or end > k + 1
        behind = word(toks, end + 1) in STOPS | {"on", "for", "in", "at", "per", "by", "bed", "@", "today"}
        if not stopped or word(toks, end) not in {"suction", "sxn"} or not behind:
            continue
        by = word(toks, k - 1) in WHO
        yield from [Cue("order", "", k - 1, k)] * by
        yield Cue("waterseal", "", k, end + 1) if by else Cue("what", "suction_off", k, end + 1)


def _says(said: Message) -> Iterator[Cue]:
    """ "Dr saw bed 4, says gravity drainage", "Dr has told no suction for bed 11": whoever may order it."""
    toks = said.toks
    who = next((k for k in range(len(toks)) if word(toks, k) in WHO), len(toks))
    who += word(toks, who) in TITLES and word(toks, who + 1).isalpha() and word(toks, who + 2) in DECIDED
    rounds = next((k for k in range(len(toks)) if word(toks, k) in ROUNDS), len(toks))
    starts = {c.start: c for c in said.cues}
    for k in range(min(who, rounds) + 1, len(toks)):
        end = past(toks, k + 1, frozenset({"us", "me", "to", "on", "for"}))
        setting = starts.get(end)
        turned = setting is not None and setting.label == "suction" and word(toks, setting.end - 1) == "to"
        of_setting = turned or (setting is not None and setting.label == "waterseal")  # "suction down to 10"
        saying = word(toks, k) in DECIDED and of_setting
        before = past(toks, who + 1, frozenset({"has", "have", "just", "now", "also"})) == k
        saw = word(toks, who + 1) in {"saw", "seen", "reviewed", "rounded"} and word(toks, k - 1) in STOPS
        if saying and (before or saw):
            start = who if before else k
            yield Cue("order", "", start, end)
            return


def _on_rounds(said: Message) -> Iterator[Cue]:
    """ "as per ward round", "at rounds they decided 218 water seal": whose order it is."""
    toks = said.toks
    if not any(c.label in SETTINGS for c in said.cues) or any(c.value == "suction_on" for c in said.cues):
        return
    for k in range(len(toks)):
        end = past(toks, k + 1, frozenset({"the", "ward", "am", "pm", "morning"}))
        if word(toks, end) not in ROUNDS or word(toks, k) not in {"per", "at", "on"}:
            continue
        who = past(toks, end + 1, frozenset({"they", "team", "we", "the", "have", "has"}))
        start = k - (word(toks, k - 1) == "as")
        if word(toks, who) in {"decided", "agreed", "said"} and word(toks, start - 1) in STOPS:
            yield Cue("order", "", start, who + 1)
            return
        if word(toks, k) == "per":
            yield Cue("order", "", start, end + 1)
            return


def _in_chart(said: Message) -> Iterator[Cue]:
    """ "order in chart", "orders are in": where it stands, and nothing is asked."""
    toks = said.toks
    for k in range(1, len(toks)):
        end = past(toks, k + 1, frozenset({"is", "are", "in", "the", "now"}))
        told = word(toks, end) in {"chart", "emr"} and word(toks, end - 1) in {"in", "the"}
        if (
            word(toks, k) in {"order", "orders"}
            and told
            and {word(toks, k - 1), word(toks, end + 1)} <= STOPS
        ):
            yield Cue("filler", "", k, end + 1)


def _off(said: Message) -> Iterator[Cue]:
    """ "order for bed 10: suction off until further notice": what is ordered, for how long is not told."""
    toks = said.toks
    orders = [c for c in said.cues if c.label == "order"]
    for k in range(len(toks) - 2 if orders else 0):
        if toks.said[k : k + 3] == ("until", "further", "notice"):
            yield Cue("filler", "", k, k + 3)
    for cue in said.cues:
        led = bool(orders) and orders[0].end <= cue.start and word(toks, cue.start - 1) in {":", ",", "is"}
        if cue.value == "suction_off" and led and word(toks, cue.end) in STOPS | {"until", "per"}:
            yield Cue("waterseal", "", cue.start, cue.end)


def _only_under(said: Message) -> Iterator[Cue]:
    """ "no suction, only under water seal": the same, told again."""
    toks = said.toks
    known = any(c.label == "waterseal" for c in said.cues)
    for cue in said.cues if known else ():
        start = cue.start
        while word(toks, start - 1) in {"only", "under", "just", "on"}:
            start -= 1
        bare = cue.label in {"seal", "waterseal"} and word(toks, cue.end) in STOPS - {":"}
        if bare and start < cue.start and word(toks, start - 1) in STOPS and "only" in toks.said[start:]:
            yield Cue("filler", "", start, cue.end)


def _by(said: Message) -> Cue | None:
    """ "as per Dr", "by surgeons", "consultant happy for": the words that say whose order it is."""
    toks = said.toks
    for k in range(len(toks)):
        if word(toks, k) not in WHO:
            continue
        named = (
            k
            + 1
            + (word(toks, k) in TITLES and word(toks, k + 1).isalpha() and word(toks, k + 1) not in TOLD)
        )
        saying = past(toks, named, frozenset({"has", "have", "is", "are", "just", "also"}))
        if word(toks, k - 1) in {"per", "by"}:
            return Cue("order", "", k - 1 - (word(toks, k - 2) == "as"), named)
        if word(toks, saying) in TOLD:
            return Cue("order", "", k, past(toks, saying + 1, frozenset({"that", "us", "me"})))
        if k == 0 and word(toks, named) == ":":
            return Cue("order", "", 0, named + 1)
    return None


def _directed(said: Message) -> Iterator[Cue]:
    """ "Dr says bed 4 can go to water seal", "continue suction 20 on 4 per Dr": what it is to be set to."""
    toks = said.toks
    if not toks.words.isdisjoint(DOUBTED | RELATIVES | {"patient", "pt"}):
        return
    order = next((c for c in said.cues if c.label == "order"), None)
    by = order or _by(said)
    found = [c for cue in said.cues for c in _bidden_to(said, cue)] if by else []
    if by and found:
        yield from [by] * (order is None)
        yield from (c for c in found if not by.start <= c.start < by.end)


def _bidden_to(said: Message, cue: Cue) -> Iterator[Cue]:
    """The words that bid before a setting, on either side of its bed, and the setting."""
    toks = said.toks
    off = cue.value == "suction_off"
    seal = cue.label == "seal" and not starts_number(toks, cue.end)
    if not (cue.label in {"suction", "waterseal"} or off or seal):
        return
    start = cue.start
    while word(toks, start - 1) in DIRECT:
        start -= 1
    bed = start - 1 if is_digits(toks, start - 1) else start
    bed = next((begin for begin, (end, _) in said.beds.items() if end == start), bed)
    bed -= bed < start and word(toks, bed - 1) in OF_BED
    first = bed
    while bed < start and word(toks, first - 1) in DIRECT:
        first -= 1
    end = past(toks, cue.end, DIRECT - {"on"}) if cue.label == "suction" else cue.end
    end = end if starts_number(toks, end) else cue.end
    words = {*toks.said[start : cue.start], *toks.said[first:bed], *toks.said[cue.end : end]}
    if BIDDING.isdisjoint(words):
        return
    yield from [Cue("filler", "", first, bed)] * (first < bed)
    yield from [Cue("filler", "", start, cue.start)] * (start < cue.start)
    if off or seal:
        yield Cue("waterseal", "", cue.start, cue.end)
    elif end > cue.end:
        yield cue._replace(end=end)


def _which_order(said: Message) -> Iterator[Cue]:
    """ "new suction order 4: 15": a bed, or centimetres; "changed suction order bed 4 to 15"."""
    toks = said.toks
    for cue in said.cues:
        either = is_digits(toks, cue.end) and word(toks, cue.end + 1) == ":"
        if cue.label == "order" and cue.value == "suction" and either:
            yield cue._replace(value="")
        to = past(toks, cue.end, OF_BED | {"changed", "increased", "decreased"})
        to += is_digits(toks, to)
        if cue.label == "order" and word(toks, to) == "to" and starts_number(toks, to + 1) and to > cue.end:
            yield Cue("suction", "", to, to + 1)


BY_WHOM: tuple[tuple[frozenset[str], Rule], ...] = (
    (frozenset({":"}), _headed),
    (WANTS, _wants_it_at),
    (frozenset({"place", "put", "switch", "change", "keep", "back"}), _placed_to),
    (frozenset({"suction", "sxn"}), _stopped),
    (frozenset({"chart", "emr"}), _in_chart),
    (DECIDED, _says),
    (ROUNDS, _on_rounds),
    (frozenset({"off", "until"}), _off),
    (frozenset({"only"}), _only_under),
    (frozenset({"order", "orders"}), _which_order),
    (BIDDING, _directed),
)
"""Each rule with the words of which it needs one."""
