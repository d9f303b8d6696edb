"""Cues of what happened to a drain, recounted: how it came, how far, and that it is over again.

"suction off at 1720 for physio and back on at 1750", "slid out about three centimetres", "it tipped right on
its side". Part of `narrated`, which calls these.
"""

from __future__ import annotations

from collections.abc import Iterator

from .clock import clocks
from .goings import Rule, past
from .numbers import Toks, numbers, starts_number, word
from .oldones import Message, is_timed
from .patterns.leads import TUBE_NAMES
from .patterns.narrated import CANISTERS, WHOSE
from .pipeline import Cue

PAUSING = frozenset(
    {"put", "went", "popped", "he", "she", "him", "her", "it", "came", "going", "straight", "was"}
)
WAY = frozenset({"over", "on", "off", "out", "down", "through", "onto", "apart", "up"})
MISHAPS = frozenset({"tipped", "dislodged", "disconnected", "damaged"})
FULLY = frozenset({"right", "straight", "clean", "completely", "totally"})
LENGTHS = frozenset({"cm", "cms", "centimetre", "centimetres", "centimeter", "centimeters", "inch", "inches"})
ROUGHLY = frozenset(
    {"about", "around", "by", "a", "an", "some", "maybe", "roughly", "couple", "few", "of", "half"}
)
ROUGHLY |= {"another", "good", "only", "just", "like", "approximately"}
BEHIND_ON = frozenset(
    {"", ",", ".", ";", "at", "@", "and", "now", "again", "about", "around", "by", "since", "when"}
)
BEHIND_ON |= {"after", "once", "as", "for", "until", "ok", "okay", "fine"}
NEARER = frozenset({"over", "across", "along", "closer", "nearer", "round", "back"})
TURNED = frozenset({"turned", "put", "set", "cranked", "bumped", "dialed", "dialled", "dropped", "brought"})
WHO_WILL = frozenset({"they're", "we're", "i'm", "im", "they", "we", "are", "surgery", "surgeons", "team"})
DOING = frozenset({"taking", "pulling", "removing", "changing", "swapping", "clamping", "moving", "sending"})
PURPOSES = frozenset(
    {"go", "get", "have", "use", "let", "walk", "sit", "help", "mobilise", "mobilize", "shower"}
)
BEFORE_ON = frozenset({"at", "and", "then", "am", "pm", "h", "hr", "hrs"})
PARTS = frozenset({"bottom", "side", "base", "corner", "back", "top", "seam", "lid"})
DRAGGED = frozenset({"dragged", "pulled", "yanked", "bumped", "toppled"})
TUBE = frozenset({"chest", "tube", "drain", "pigtail", "icc", "catheter"})
WHOLLY = frozenset(
    {"completely", "all", "the", "way", "fully", "totally", "right", "been", "come", "now", "is"}
)
LOWERED = frozenset({"lowered", "raised", "moved", "moving", "lowering", "down", "up", "put", "turned"})
CHANGING = frozenset({"change", "swap", "replace", "switch", "exchange"})
DIAL = 40
"""Centimetres of water: no suction dial is set higher."""


def _back_on(said: Message) -> Iterator[Cue]:
    """ "off suction at 1720 for physio and put him back on at 1750": on suction again, and no line."""
    toks = said.toks
    off = next((c for c in said.cues if _is_off(c, toks)), None)
    if off is None:
        return
    for k in range(off.end + 1, len(toks) - 1):
        if word(toks, k) != "back" or word(toks, k + 1) != "on":
            continue
        end = past(toks, k + 2, frozenset({"it", "suction", "the", "wall"}))
        if word(toks, end) not in BEHIND_ON or word(toks, k - 1) in {"i'm", "im", "i"}:
            continue  # "he was back on the ward"
        on = (c.start for c in said.cues if c.value == "suction_on" and off.end <= c.start <= k < c.end)
        start = min(on, default=k)  # "suction back on"
        while word(toks, start - 1) in PAUSING:
            start -= 1
        if not any(c.value == "placed" for c in said.cues if start <= c.start < end):
            yield Cue("what", "suction_off", off.start, off.end)
            yield Cue("what", "suction_on", start, end)


def _back_on_suction(said: Message) -> Iterator[Cue]:
    """ "760 at 1400 and back on suction at 1330": what was put on again, and nobody came back."""
    toks = said.toks
    for cue in said.cues:
        suction = word(toks, cue.end) == "on" and word(toks, cue.end + 1) in {"suction", "sxn", "sx"}
        if cue.value == "back" and word(toks, cue.end - 1) == "back" and suction:
            yield Cue("what", "suction_on", cue.end - 1, cue.end + 2)


def _on_again(said: Message) -> Iterator[Cue]:
    """ "suction off 1055, on 1057": behind when it was off, the same on, and no line."""
    toks = said.toks
    off = next((c for c in said.cues if c.value == "suction_off"), None)
    for k in range(off.end + 1 if off is not None else len(toks), len(toks) - 1):
        at = k + 1 + (word(toks, k + 1) in {"at", "@"})
        if word(toks, k) == "on" and is_timed(toks, at):
            yield Cue("what", "suction_on", k, k + 1)
        if word(toks, k).isalpha() and word(toks, k) not in BEFORE_ON:
            return


def _is_off(cue: Cue, toks: Toks) -> bool:
    off = cue.label == "waterseal" and toks.said[cue.start : cue.end] in {
        ("off", "suction"),
        ("suction", "off"),
    }
    return off or cue.value == "suction_off"


def _right_over(said: Message) -> Iterator[Cue]:
    """ "tipped right over", "tipped right on its side": how far, and no tube on the right."""
    toks = said.toks
    for cue in said.cues:
        way = cue.end + 1
        far = cue.label == "what" and cue.value in MISHAPS and word(toks, cue.end) in FULLY
        if far and word(toks, way) in WAY and not starts_number(toks, way + 1):
            side = past(toks, way + 1, frozenset({"its", "the", "his", "her", "side"}))
            ends = side if word(toks, side - 1) == "side" else way + 1
            if ends > way + 1 or word(toks, way) not in {"on", "up"}:
                yield cue._replace(end=ends)


def _so_far(said: Message) -> Iterator[Cue]:
    """ "slid out about three centimetres", "slipped out by an inch or so": how far it came."""
    toks = said.toks
    for cue in said.cues:
        start = past(toks, past(toks, cue.end, frozenset({"out"})), ROUGHLY)
        ends = {n.end for n in numbers(toks, start)} | {start}
        unit = max((end for end in ends if word(toks, past(toks, end, ROUGHLY)) in LENGTHS), default=0)
        if cue.value == "dislodged" and unit:
            end = past(toks, unit, ROUGHLY) + 1
            yield cue._replace(end=past(toks, end, frozenset({"or", "so", "too"})))


def _apical_out(said: Message) -> Iterator[Cue]:
    """ "right apical came out this morning at 0920": a tube that is only called by its name."""
    toks = said.toks
    for k in range(1, len(toks) - 1):
        name = k - 1 - (word(toks, k - 1) in {"one", "has", "just"})
        out = toks.said[k : k + 2] in {("came", "out"), ("come", "out")} and word(toks, name) in TUBE_NAMES
        if out and not any(c.start <= k < c.end and c.label != "amount" for c in said.cues):
            behind = past(toks, k + 2, frozenset({"this", "morning", "today", "afternoon", "evening"}))
            timed = word(toks, behind) == "at" or bool(clocks(toks, behind))
            yield Cue("kind", "removed", k, k + 2) if timed else Cue("what", "dislodged", k, k + 2)


def _come_out(said: Message) -> Iterator[Cue]:
    """ "the drain in bed 19 has come out a few centimetres": how far, where the bed stands between."""
    toks = said.toks
    for k in range(len(toks) - 1):
        start = past(toks, k + 1, ROUGHLY)
        ends = {n.end for n in numbers(toks, start)} | ({start} if start > k + 1 else set())
        unit = max((end for end in ends if word(toks, end) in LENGTHS), default=0)
        out = word(toks, k) == "out" and word(toks, k - 1) in {
            "come",
            "came",
            "slipped",
            "slid",
            "moved",
            "worked",
        }
        if out and unit and not any(c.start <= k < c.end and c.value == "dislodged" for c in said.cues):
            yield Cue("filler", "", k + 1, unit + 1)


def _his_own(said: Message) -> Iterator[Cue]:
    """ "patient pulled his own tube out, it's completely out": one mishap, told as whole as it was."""
    toks = said.toks
    slipped = [c for c in said.cues if c.value == "dislodged"]
    for cue in slipped:
        own = past(toks, cue.end, WHOSE)
        tube = past(toks, own + 1, TUBE)
        if (
            word(toks, cue.end - 1) in {"pulled", "took", "removed"}
            and word(toks, own) == "own"
            and tube > own + 1
        ):
            yield cue._replace(end=tube + (word(toks, tube) == "out"))
    for k in range(slipped[0].end if slipped else len(toks), len(toks)):
        it = k + 1 + (toks.said[k + 1 : k + 3] == ("'", "s")) * 2 + (word(toks, k + 1) == "is")
        again = past(toks, it, WHOLLY)
        if word(toks, k) not in {"it", "it's", "its"} or word(toks, again) not in {"out", "dislodged"}:
            continue
        if word(toks, again + 1) in {"", ",", "."}:
            yield Cue("filler", "", k, again + 1)


def _own_drain(said: Message) -> Iterator[Cue]:
    """ "knocked her own drain over getting up": whose it was, and no name of it; the over is of the fall."""
    toks = said.toks
    for k, text in enumerate(toks.said):
        end = past(toks, k + 1, TUBE | CANISTERS)
        whose = text == "own" and word(toks, k - 1) in {"his", "her", "their"} and end > k + 1
        if whose and not any(c.start <= k < c.end for c in said.cues):
            yield Cue("filler", "", k, k + 1)
    for cue in said.cues:
        thing = past(toks, past(toks, cue.end, WHOSE | {"own"}), TUBE | CANISTERS)
        over = cue.value == "tipped" and word(toks, thing) == "over" and thing > cue.end
        if over and not starts_number(toks, thing + 1):
            yield Cue("filler", "", thing, thing + 1)


def _dragged_over(said: Message) -> Iterator[Cue]:
    """ "dragged the drain over": it fell; "tube's worked its way out": it has come out."""
    toks = said.toks
    for k, text in enumerate(toks.said):
        own = past(toks, k + 1, WHOSE)
        thing = past(toks, own, TUBE | CANISTERS)
        over = text in DRAGGED and thing > own > k + 1 and word(toks, thing) == "over"
        over &= word(toks, thing + 1) in {
            "",
            ",",
            ".",
            "in",
            "on",
            "at",
            "and",
            "when",
            "while",
            "bed",
            "with",
        }
        if over:
            yield Cue("what", "tipped", k, k + 1)
            yield Cue("filler", "", thing, thing + 1)
        if text == "pulled" and thing > own > k + 1 and word(toks, thing) in NEARER and not over:
            yield Cue("word", "nearer", k, thing + 1)  # "pulled the drain over a bit"
        part = past(toks, k + 2, WHOSE)
        if text == "leaking" and word(toks, k + 1) == "from" and part > k + 2 and word(toks, part) in PARTS:
            yield Cue("what", "damaged", k, part + 1)
        if text == "worked" and toks.said[k + 1 : k + 4] == ("its", "way", "out"):
            yield Cue("what", "dislodged", k, past(toks, k + 4, frozenset({"a", "bit", "little"})))


def _up_on(said: Message) -> Iterator[Cue]:
    """ "had his drain up on the pillow", "drain on the locker above him": above the chest."""
    toks = said.toks
    for k in range(1, len(toks) - 2):
        thing = word(toks, k) in TUBE | CANISTERS
        on = past(
            toks,
            k + 1,
            frozenset({"was", "is", "sitting", "lying", "up", "hanging", "right", "left", "there"}),
        )
        noun = past(toks, on + 1, WHOSE)
        up = "up" in toks.said[k + 1 : on]
        above = past(toks, noun + 1, frozenset({"above", "over"})) > noun + 1
        above &= word(toks, noun + 2) in {"him", "her", "his", "the"}
        floor = word(toks, noun) in {"floor", "ground", "suction", "wall", "ward", "left", "right", "bed"}
        if thing and word(toks, on) in {"on", "onto"} and noun > on + 1 and (up or above) and not floor:
            end = noun + 1 if not above else noun + 3 + (word(toks, noun + 3) in {"head", "chest", "bed"})
            start = k + 1 + toks.said[k + 1 : on + 1].index("up") if up else on
            if not any(c.value == "raised" for c in said.cues):
                yield Cue("what", "raised", start, end)


def _turned_up(said: Message) -> Iterator[Cue]:
    """ "suction was off so I turned it up to 20": what it is set to, and no line."""
    toks = said.toks
    first = next((k for k, text in enumerate(toks.said) if text in {"suction", "sxn"}), len(toks))
    for k in range(first + 1, len(toks) - 2):
        to = past(toks, k + 2, frozenset({"up", "down", "back", "to", "at", "on"}))
        turned = word(toks, k) in TURNED and word(toks, k + 1) == "it" and to > k + 2
        values = [n.value for n in numbers(toks, to)] if turned else []
        if values and max(values) <= DIAL and word(toks, to - 1) in {"to", "at", "on"}:
            yield Cue("suction", "", k, to)


def _in_the_morning(said: Message) -> Iterator[Cue]:
    """ "they're taking bed 37's tube out in the morning": what lies ahead."""
    toks = said.toks
    ahead = next((k for k in range(len(toks)) if _lies_ahead(toks, k)), 0)
    for k in range(max(0, ahead - 1)):
        if word(toks, k) in WHO_WILL and word(toks, k + 1) in DOING:
            yield Cue("plan", "", k, k + 2)
            return


def _lies_ahead(toks: Toks, k: int) -> bool:
    return word(toks, k) in {"tomorrow", "later", "soon", "shortly"} or (
        toks.said[k : k + 3] == ("in", "the", "morning")
    )


def _released(said: Message) -> Iterator[Cue]:
    """ "clamped at 1430 and released at 1440", "suction disconnected at 1400, reconnected at 1430"."""
    toks = said.toks
    happened = {c.value: c.end for c in said.cues if c.label == "what"}
    for k, text in enumerate(toks.said):
        before = word(toks, k - 1) in {"and", ",", "then", "was", "i", "we", "it"}
        timed = any(clocks(toks, j) for j in (k + 1, k + 2, k + 3))
        if text == "released" and "clamped" in happened and before and timed and k >= happened["clamped"]:
            yield Cue("what", "unclamped", k, k + 1)
        off = "suction_off" in happened or ("disconnected" in happened and "suction" in toks.words)
        if text == "reconnected" and off and before and timed:
            yield Cue("what", "suction_on", k, k + 1)


def _to_see(said: Message) -> Iterator[Cue]:
    """ "clamped since noon to see if the lung stays up": what for, and nothing that lies ahead."""
    toks = said.toks
    happened = next((c.end for c in said.cues if c.label in {"what", "waterseal"}), len(toks))
    for k in range(happened, len(toks) - 2):
        see = word(toks, k + 1) == "see" and word(toks, k + 2) in {"if", "how", "whether"}
        if word(toks, k) != "to" or not (see or word(toks, k + 1) in PURPOSES):
            continue
        end = next((j for j in range(k, len(toks)) if word(toks, j) in {",", ".", ";"}), len(toks))
        if not any(starts_number(toks, j) for j in range(k + 2, end)):
            yield Cue("filler", "", k, end)


def _sat_up(said: Message) -> Iterator[Cue]:
    """ "fell out when we sat him up at 1505": how it came, and no oxygen."""
    toks = said.toks
    for k in range(1, len(toks) - 1):
        sat = word(toks, k) == "sat" and word(toks, k + 1) in {"him", "her", "them"}
        when = k - 1
        while word(toks, when) in {"we", "i", "they", "physio", "just"}:
            when -= 1
        if sat and word(toks, when) in {"when", "as", "while", "after"}:
            end = past(toks, k + 2, frozenset({"up", "out", "in", "the", "chair", "bed", "over", "forward"}))
            yield Cue("filler", "", when, end + (word(toks, end) == "at"))


def _for_xray(said: Message) -> Iterator[Cue]:
    """ "clamped for the x-ray at 1430": what for."""
    toks = said.toks
    happened = any(c.label == "what" for c in said.cues)
    for k in range(1, len(toks) if happened else 0):
        first = past(toks, k + 1, WHOSE | {"chest"})
        end = first + 3 * (toks.said[first : first + 3] == ("x", "-", "ray")) + (word(toks, first) == "xray")
        ends = word(toks, end) in {"", ",", ".", "and", "at"}
        ends &= not any(c.start < end and c.end > first for c in said.cues)
        if word(toks, k) == "for" and end > first and ends:
            inside = any(c.start <= k < c.end for c in said.cues)  # "clamped for"
            yield Cue("filler", "", k + inside, end)


def _lowered(said: Message) -> Iterator[Cue]:
    """ "tipped when the bed was lowered, I'll change it": how it came, and what is only to be done."""
    toks = said.toks
    happened = next((c.end for c in said.cues if c.label == "what"), len(toks))
    for k in range(happened, len(toks) - 1):
        bed = past(toks, k + 1, WHOSE)
        verb = past(toks, bed + 1, frozenset({"was", "got", "is", "being", "came", "went", "were", "had"}))
        when = word(toks, k) in {"when", "while", "as"} and word(toks, bed) == "bed" and bed > k + 1
        if when and verb > bed + 1 and word(toks, verb) in LOWERED:
            yield Cue("filler", "", k, verb + 1 + (word(toks, verb) in {"put", "being"}))
        will = word(toks, k) in {"i'll", "we'll", "ill", "will", "gonna"} or (
            toks.said[k - 1 : k + 1] == ("going", "to") and word(toks, k - 2) in {"i'm", "we're", "im", "am"}
        )
        thing = past(toks, k + 2, frozenset({"the", "his", "her"}))
        ends = word(toks, thing + 1) in {"", ",", ".", "now", "soon", "shortly"}
        if (
            will
            and word(toks, k + 1) in CHANGING
            and word(toks, thing) in {*CANISTERS, "it", "them"}
            and ends
        ):
            start = k - (word(toks, k) == "to") * 2 - (word(toks, k) in {"will", "gonna"})
            yield Cue("filler", "", start, thing + 1)


def _off_the_wall(said: Message) -> Iterator[Cue]:
    """ "suction off the wall is minus twenty": how much it is, and nothing came off."""
    toks = said.toks
    for k in range(1, len(toks) - 3):
        wall = toks.said[k : k + 3] in {("off", "the", "wall"), ("from", "the", "wall")}
        end = past(toks, k + 3, frozenset({"is", "at", "on", "was", "reading", "-", "minus", "of"}))
        values = [n.value for n in numbers(toks, end)]
        if wall and word(toks, k - 1) in {"suction", "sxn"} and end > k + 3 and values:
            past_minus = end
            while word(toks, past_minus - 1) in {"-", "minus"}:
                past_minus -= 1
            timed = word(toks, k + 3) == "at"
            if not timed:
                yield Cue("suction" if max(values) <= DIAL else "wall", "", k - 1, past_minus)


RECOUNTED: tuple[tuple[frozenset[str], Rule], ...] = (
    (frozenset({"back"}), _back_on),
    (frozenset({"on"}), _on_again),
    (frozenset({"back"}), _back_on_suction),
    (FULLY, _right_over),
    (LENGTHS, _so_far),
    (LENGTHS, _come_out),
    (frozenset({"came", "come"}), _apical_out),
    (frozenset({"own", "it", "it's", "its"}), _his_own),
    (frozenset({"own", "over"}), _own_drain),
    (DRAGGED | {"worked", "leaking"}, _dragged_over),
    (frozenset({"on", "onto"}), _up_on),
    (frozenset({"suction", "sxn"}), _turned_up),
    (DOING, _in_the_morning),
    (frozenset({"released", "reconnected"}), _released),
    (PURPOSES | {"see"}, _to_see),
    (frozenset({"sat"}), _sat_up),
    (frozenset({"ray", "xray"}), _for_xray),
    (LOWERED | {"i'll", "we'll", "ill", "will", "gonna", "going"}, _lowered),
    (frozenset({"wall"}), _off_the_wall),
)
"""Each rule with the words of which it needs one."""
