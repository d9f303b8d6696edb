"""Cues of what the old canister ended with, around its change: "150 ml in the first", "threw out 961 ml".

Told before or behind its number, or told as not known. Part of `narrated`, which calls these.
"""

from __future__ import annotations

from collections.abc import Iterator
from fractions import Fraction

from .goings import Rule, past
from .numbers import Toks, is_digits, numbers, starts_number, word
from .oldones import OF_BED, Message, is_timed
from .patterns.levels import MILLILITRES
from .patterns.narrated import CANISTERS, WHOSE
from .pipeline import Cue

NOUNS = CANISTERS | {"can", "container"}
FRESH = frozenset({"new", "fresh"})
FORMER = frozenset(
    {"old", "first", "1st", "last", "previous", "prev", "prior", "outgoing", "spent", "discarded"}
)
STOPS = frozenset({"", ",", ";", ".", "!", "-", "and", "then", "(", ")"})
WHEN = (
    STOPS | OF_BED | {"at", "@", "by", "today", "overnight", "yesterday", "this", "last", "around", "about"}
)
"""Behind what was done these say when, where and by whom."""
THROWN = frozenset({"threw", "thrown", "chucked", "tossed", "dumped", "disposed", "discarded", "binned"})
THROWING = frozenset({"throwing", "binning", "chucking", "tossing", "disposing", "discarding", "dumping"})
AWAY = frozenset({"out", "away", "off", "of", "it", "the", "old", "one", "with", "at", "that"}) | NOUNS
NOTED = frozenset({"noted", "read", "saw", "marked", "recorded", "measured", "wrote", "had", "was", "it"})
NOTED |= {"i", "we", ",", "at"}
SHOWING = frozenset({"had", "has", "was", "at", "held", "contained", "measured", "read", "is", "=", ":"})
SHOWING |= {
    "showed",
    "on",
    "of",
    "ended",
    "up",
    "finished",
    "stopped",
    "closed",
    "content",
    "contents",
    "with",
}
SHOWING |= {"volume", "total", "output", "level", "reading", "final", "drainage"}
TOOK = frozenset({"took", "taken", "take"})
DOWN = frozenset({"down", "off"})
CAME = frozenset({"that", "which", "we", "i", "came", "took", "threw", "binned", "was", "taken"})
HELD = frozenset({"had", "held", "contained", "measured", "read", "showed", "was"})
GONE = frozenset({"off", "down", "removed", "came", "taken", "with"})
ENDING = frozenset({"end", "final", "amount", "amt", "level", "reading", "volume", "vol"})
LEFT = frozenset(
    {
        "out",
        "documented",
        "noted",
        "recorded",
        "final",
        "amt",
        "amount",
        "left",
        "remaining",
        "remained",
        "was",
        "were",
    }
)
WITHIN = frozenset({"in", "on", "from", "of"})
ENOUGH = 60
"""mL: less without its unit may be another thing."""
_UNTOLD = """
the a old last previous first one was is were not no idea what had level final amount reading measured noted
read recorded known unknown know didn't didnt wasn't wasnt did don't dont i we forgot to seen see note write
down in it on never
"""
UNTOLD = frozenset(_UNTOLD.split()) | NOUNS
DENYING = frozenset({"not", "no", "unknown", "didn't", "didnt", "wasn't", "wasnt", "don't", "dont", "forgot"})
DENYING |= {"never"}


def volume_at(toks: Toks, k: int) -> tuple[int | Fraction, int, bool]:
    """The number that stands here, where it ends with its unit, and whether it has one."""
    value, end = max(((n.value, n.end) for n in numbers(toks, k)), key=lambda n: n[1], default=(-1, k))
    unit = past(toks, end, MILLILITRES)
    return value, unit, unit > end


def is_volume(toks: Toks, k: int, *, bare: bool = False, held: bool = False) -> bool:
    """Whether a volume stands here that nothing makes another: "threw out 961 ml", not "20 ml of flush"."""
    _, end, unit = volume_at(toks, k)
    ends = word(toks, end) in WHEN - {"of", "by"} or is_digits(toks, end)
    return end > k and ends and (unit or held or (bare and not is_timed(toks, k)))


def ends_told(toks: Toks, k: int) -> bool:
    """Whether nothing else is named here: "renewed the canister order"."""
    return word(toks, k) in WHEN or is_digits(toks, k)


def former(toks: Toks, k: int) -> int:
    """Where "the old one", "1st bottle", "the first" ends that begins here, or 0."""
    start = past(toks, k, WHOSE)
    first = toks.said[start : start + 2] == ("1", "st")
    end = start + 1 + first
    end += word(toks, end) == "drain" and word(toks, end + 1) in NOUNS
    came = past(toks, start + 1, CAME)
    if word(toks, start) == "one" and came > start + 1 and word(toks, came) in DOWN | {"out", "away"}:
        return came + 1  # "the one that came off"
    if word(toks, start) not in FORMER and not first:
        return 0
    named = end + 1 if word(toks, end) in NOUNS | {"one"} else end
    alone = word(toks, start) == "old" or (
        start > k and (first or word(toks, start) in {"first", "previous"})
    )
    return named if named > start + 1 + first or alone else 0


def _thrown(said: Message) -> Iterator[Cue]:
    """ "threw out 961 ml", "disposed 1930cc": what the old one ended with, beside its change."""
    toks = said.toks
    if not said.tells("exchanged"):
        return
    old = any(c.label == "old" for c in said.cues)
    for k, text in enumerate(toks.said):
        end = past(toks, k + 1, AWAY)
        if text in THROWN and not old and is_volume(toks, end):
            yield Cue("old", "", k, end)
        elif text in THROWN and old and word(toks, end) in STOPS and word(toks, k - 1) in STOPS:
            yield Cue("filler", "", k, end)


def _took_down(said: Message) -> Iterator[Cue]:
    """ "took down canister on 4 at 1820 ml, new one up", "discarded old canister bed 4 with 1820 ml"."""
    toks = said.toks
    if not said.tells("exchanged"):
        return
    for k in range(len(toks)):
        down = word(toks, k) in TOOK and word(toks, k + 1) in DOWN
        box = past(toks, k + 1 + down, WHOSE | {"old", "first", "full"})
        if not (down or word(toks, k) in THROWN) or word(toks, box) not in NOUNS:
            continue
        end = behind_bed(said, box + 1)
        if end > box + 1 and any(
            word(toks, j) in OF_BED and is_digits(toks, j + 1) for j in range(end, len(toks))
        ):
            continue
        if (
            word(toks, end) in {"at", "with", "on"}
            and is_volume(toks, end + 1)
            and volume_at(toks, end + 1)[2]
        ):
            yield Cue("filler", "", k, box + 1)
            yield Cue("old", "", end, end + 1)


def _when_changed(said: Message) -> Iterator[Cue]:
    """ "bed 4 1820 ml when canister changed at 1840": what it held then."""
    toks = said.toks
    for k in range(2, len(toks) if "?" not in toks.words else 0):
        done = past(toks, k + 1, WHOSE | {"i", "we", "it"})
        changed = any(c.value == "exchanged" and c.start in {k + 1, done} for c in said.cues)
        if word(toks, k) == "when" and word(toks, k - 1) in MILLILITRES and changed:
            yield Cue("old", "ended", k, done)


def _before_throwing(said: Message) -> Iterator[Cue]:
    """ "before throwing i noted 1320": the last level of what was changed."""
    toks = said.toks
    for k in range(len(toks) if said.tells("exchanged") else 0):
        end = past(toks, k + 2, AWAY)
        noted = past(toks, end, NOTED)
        if word(toks, k) == "before" and word(toks, k + 1) in THROWING:
            if noted > end and is_volume(toks, noted, bare=True) and word(toks, noted - 1) != "at":
                yield Cue("old", "", k, noted)
            elif noted == end and word(toks, end) in STOPS and word(toks, k - 1) in MILLILITRES:
                yield Cue("old", "ended", k, end)


def _former_held(said: Message) -> Iterator[Cue]:
    """ "1st bottle had 1053", "790 ml amt in old bottle", "end of old 430 mL", "150 ml in the first"."""
    toks = said.toks
    if not said.tells("exchanged"):
        return
    for k in range(len(toks)):
        value, end, unit = volume_at(toks, k) if not toks[k].glued else (0, k, False)
        inside = past(toks, end, LEFT)
        bare = (
            end > k
            and value >= ENOUGH
            and word(toks, k - 1) not in {"at", "@", "bed"}
            and starts_number(toks, k)
        )
        last = former(toks, inside + 1) if (unit or bare) and word(toks, inside) in WITHIN else 0
        last *= unit or word(toks, last - 1) in NOUNS | {"one", "old"}
        ends = word(toks, last) in WHEN | {"one's"} or is_digits(toks, last)
        ends |= word(toks, last) in FRESH | {"when", "so", "before", "total"}
        if last and ends:
            yield Cue("old", "ended", end + (word(toks, end) in {"in", "on", "of"}), last)
            yield from _left_it(said, k)
            yield from [Cue("filler", "", k - 1, k)] * (word(toks, k - 1) in ENDING | {"output", "total"})
            return
    for k in range(len(toks)):
        last = former(toks, k)
        if not last or word(toks, k - 1) in (WITHIN - {"of"}) | WHOSE or last >= len(toks):
            continue
        shown = past(toks, behind_bed(said, last), SHOWING | GONE)
        start = k
        if word(toks, k - 1) == "of" and word(toks, k - 2) in ENDING:
            start = k - 2
        if shown > last and behind_bed(said, last) > last:
            start = max(behind_bed(said, last), shown - 1)
        at = word(toks, shown - 1) == "at" and is_timed(toks, shown)
        held = word(toks, shown - 1) in HELD and shown > last
        if is_volume(toks, shown, bare=not at, held=held):
            yield Cue("old", "", start, shown)
            return


def behind_bed(said: Message, k: int) -> int:
    """Where the bed ends that is told here: "old canister bed 4 finished with", or the same place."""
    start = past(said.toks, k, OF_BED | {"off", "for"})
    if start in said.beds:
        return said.beds[start][0]
    return start + 1 if start > k and is_digits(said.toks, start) else k


def _left_it(said: Message, k: int) -> Iterator[Cue]:
    """ "they left 1146 ml on the old": what was in it, and no left tube."""
    toks = said.toks
    if word(toks, k - 1) == "left" and word(toks, k - 2) in {"they", "we", "i", "he", "she"}:
        yield Cue("filler", "", k - 2, k)


def _closed_out(said: Message) -> Iterator[Cue]:
    """ "canister swap 1840, closed out at 1820", "Out with 1820, in with 0": what the one held that went."""
    toks = said.toks
    if any(c.label == "old" for c in said.cues):
        return
    swapped = next((c.end for c in said.cues if c.value == "exchanged"), len(toks))
    for k in range(swapped, len(toks)):
        closed = word(toks, k) in {"closed", "finished", "topped", "maxed", "ended"}
        out = k + closed
        end = past(toks, out + 1, frozenset({"at", "with", "on", "@", ":"}))
        if word(toks, out) not in {"out", "off"} or end == out + 1 or word(toks, k - 1) not in STOPS:
            continue
        timed = any(is_timed(toks, j) for j in range(swapped, k)) or not is_timed(toks, end)
        if is_volume(toks, end, held=timed and (closed or word(toks, end - 1) == "with")):
            yield Cue("old", "", k, end)
            return


def _full_up(said: Message) -> Iterator[Cue]:
    """ "full up @ 830 ml, changed over at 1839": what it held when it was full."""
    toks = said.toks
    for k in range(len(toks) if said.tells("exchanged") else 0):
        end = past(toks, k + 1, frozenset({"up", "at", "@", "with", "on", "to"}))
        if toks.said[k : k + 2] == ("full", "(") and word(toks, volume_at(toks, k + 2)[1]) == ")":
            yield Cue("old", "", k, k + 2)
        elif word(toks, k) == "full" and end > k + 1 and volume_at(toks, end)[2] and is_volume(toks, end):
            yield Cue("old", "", k, end)


def _untold(said: Message) -> Iterator[Cue]:
    """ "old canister not measured", "no idea what the last one had": nothing is said of the old one."""
    toks = said.toks
    for start in range(len(toks) if said.tells("exchanged") else 0):
        if word(toks, start - 1) not in STOPS:
            continue
        end = past(toks, start, UNTOLD)
        told = set(toks.said[start:end])
        if word(toks, end) in STOPS and told & DENYING and told & (FORMER | {"what"}):
            yield Cue("filler", "", start, end)


def _out_and_new(said: Message) -> Iterator[Cue]:
    """ "canister 1900 out, new in at 1830": what was in the one that came off, and that one is on again."""
    toks = said.toks
    for k in range(2, len(toks)):
        level = k - 1 - (word(toks, k - 1) in MILLILITRES)
        box = level - 1 - (word(toks, level - 1) in {"at", "was", "is"})
        led = is_digits(toks, level) and word(toks, box) in NOUNS
        new = past(toks, k + 1, frozenset({",", "and", "then", ";", "&", "a", "the"}))
        up = past(toks, new + 1, NOUNS | {"one"})
        fresh = word(toks, new) in FRESH and word(toks, up) in {"in", "on", "up", "hung", "connected"}
        if word(toks, k) == "out" and led and fresh and not said.tells("exchanged", "placed", "removed"):
            yield Cue("old", "ended", k, k + 1)
            yield Cue("kind", "exchanged", new, up + 1)


HELD_BEFORE: tuple[tuple[frozenset[str], Rule], ...] = (
    (FRESH, _out_and_new),
    (THROWN, _thrown),
    (TOOK | THROWN, _took_down),
    (frozenset({"when"}), _when_changed),
    (THROWING, _before_throwing),
    (FORMER | {"1"}, _former_held),
    (frozenset({"full"}), _full_up),
    (frozenset({"out", "off"}), _closed_out),
    (DENYING, _untold),
)
"""Each rule with the words of which it needs one."""
