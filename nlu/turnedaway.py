"""Words that look like a tube, an event or a correction, and turn out to be another thing beside a line.

Called by `recast` for each cue.
"""

from __future__ import annotations

from itertools import pairwise

from .asbefore import of_nothing
from .begun import is_all_the_way, is_what_is_so
from .neighbours import begins_at, number_follows, phrase_of
from .numbers import Toks, is_digits, starts_number, word
from .patterns.asides import PATIENTS, RELATIVES, STAFF
from .patterns.leads import LINES
from .pipeline import Cue

EXACTLY = frozenset({"at", "on", "around", "about", "by", "near"})
BEING = frozenset(
    {"is", "'s", "s", "it's", "its", "we're", "are", "was", "sitting", "sits", "still", "reads"}
)
BEING |= {"reading", "now", "he's", "she's", "that's", "showing", "measures", "up"}
LOOKED_AT = frozenset(
    {"suction", "sxn", "sx", "seal", "wall", "dial", "leak", "al", "swing", "swinging", "tidaling"}
    | {"bubbling", "bubble", "bubbles", "tidal", "gauge", "vacuum"}
)
"""Words for what is looked at, before "back"."""
SPOT = frozenset({"dot", "money", "nose", "mark", "line", "number"})
"""Right on these is exactly there."""
RETURNING = frozenset({"came", "come", "gone", "went", "has", "all"})
OF_BED = frozenset({"on", "in", "for", "of", "bed", "room", "rm"})
COUNTED = frozenset({"one", "two", "only", "single", "both", "1", "2", "three"})
READ = frozenset({"read", "taken", "checked", "measured", "at", "as", "done", "seen", "just", "noted"})
READ_ALOUD = frozenset({("read", "me"), ("read", "us"), ("read", "out"), ("reads", "me")})
ASKED = frozenset({"when", "when's", "whens", "how", "what", "which", "am", "do", "does", "who", "?"})
UNSEEN = frozenset({"no", "nil", "not", "none", "never"})
JOINED = frozenset({"and", "which"})
DONE = frozenset(
    {"found", "did", "saw", "noticed", "put", "changed", "swapped", "replaced", "clamped", "unclamped"}
)
DONE |= {"opened", "stopped", "started", "moved", "took", "pulled", "removed", "fixed", "reconnected"}
STANDING = frozenset({("in", "front"), ("next", "to"), ("beside", "it"), ("by", "it")})
LEFT_IN = frozenset({"for", "place", "situ", "until", "till", "overnight", "by", "as", "per", "and", ",", ""})

CHARTS = frozenset({"the", "his", "her", "their", "my"})
AMID = frozenset({"of", "in", "after", "during", "from", "since", "giving", "doing", "getting", "finish"})
MYSELF = frozenset({"i", "we"})
UNTIL = frozenset({"before", "until", "till", "til"})
MINUTES = 60
SENTENCE = frozenset({".", ";", "!", "but"})
DENIED = frozenset({"no", "nil", "without"})
HAPPENED = frozenset({"and", "then", "was", "is", "got", "has", "had"})
DENIED_WITHIN = 4
"""Words from a "no" to the last thing that is not there."""
AWAITING = frozenset(
    {"needs", "need", "needing", "until", "till", "til", "before", "awaiting", "owe", "owes"}
)
HAS_DONE = frozenset({"and", "all", "already", "been", "is", "are", "was", "got", "i", "we", "just", "i've"})
DENYING = frozenset({"don't", "dont", "never", "didn't", "didnt", "won't", "wont"})
LOOKED = frozenset({"looked", "checked", "heard", "knew", "saw"})
WEIGHING = frozenset({"weigh", "weighs", "weighed", "weight"})
WEIGHED_WITHIN = 8
"""Words from "how much" to what is weighed."""
TOLD_OF = frozenset({"is", "was", "has", "had", "means", "makes", "i", "he", "she", "we", "seems", "looks"})
WHOM = PATIENTS | RELATIVES | STAFF
TO_DO = frozenset(
    {"pull", "remove", "change", "swap", "empty", "clamp", "replace"}
    | {"exchange", "call", "take", "stop", "bin"}
)
ROUGHLY = frozenset(
    {
        "about",
        "around",
        "roughly",
        "approx",
        "approximately",
        "circa",
        "somewhere",
        "near",
        "sitting",
        "nearing",
    }
)
EXPECTED_WITHIN = 6
NOT_SO = frozenset({"not", "instead", "wrong", "sorry", "mistake", "typo", "meant"})
WALKED = frozenset(
    {
        "window",
        "corridor",
        "hall",
        "hallway",
        "bathroom",
        "toilet",
        "loo",
        "door",
        "desk",
        "station",
        "shower",
    }
    | {"chair", "commode", "sink", "kitchen", "lounge", "end", "lift", "elevator"}
)
"""A walk that far "and back" is no return to the ward."""
DROPPED = frozenset({"off", "fell", "out", "over", "stopped", "disconnected", "apart"})
"""Before "when" these tell what happened then."""
CANISTERS = frozenset({"box", "bottle", "canister", "cannister", "chamber", "drain", "collector", "unit"})
LIFTED = frozenset(
    {"above", "up", "lifted", "raised", "hung", "hanging", "onto", "tipped", "over", "knocked"}
)
MADE_OUT = frozenset(
    {"make", "making", "made", "figure", "work", "read", "reads", "called", "calls", "shouted"}
)


def turned_away(cue: Cue, toks: Toks) -> Cue:
    """The cue, with nothing said where its word is of something else."""
    if cue.value in {"clamped", "unclamped"} and _is_at_a_line(cue, toks):
        return cue._replace(label="plan", value="")
    if cue.label == "what" and _is_denied_too(cue, toks):
        return cue._replace(label="filler", value="")
    if cue.value in {"left", "back"} and _is_of_trial(cue, toks):
        waits = word(toks, cue.start - 1) in WAITING
        return cue._replace(label="plan" if waits else "word", value="" if waits else word(toks, cue.start))
    if cue.label == "closing" and _is_to_come(cue, toks):
        return cue._replace(label="filler", value="")
    if cue.value == "capacity" and _is_need(cue, toks):
        return cue._replace(label="word", value="need")
    if cue.value == "acknowledged" and _is_seen_otherwise(cue, toks):
        return cue._replace(label="word", value="seen")
    if _is_of_other_sense(cue, toks) or _is_how_it_was(cue, toks):
        label, value = ("filler", "") if cue.label == "question" else ("word", word(toks, cue.start))
        return cue._replace(label=label, value=value)
    if cue.label in {"levelat", "opens", "since"} and (turned := _of_line(cue, toks)) is not None:
        return turned
    if cue.label in {"amount", "out"} and (start := of_nothing(cue, toks)) < cue.start:
        return Cue("same", "", start, cue.end)  # "nothing has come out since 2000"
    if _is_rule(cue, toks) or (cue.value == "corrected" and _is_expected(cue, toks)):
        return cue._replace(label="plan", value="")  # "we pull it at 150", "should be about 700 by now"
    if cue.label == "level" and toks.said[cue.start : cue.end + 1] in READ_ALOUD:
        return cue._replace(label="question", value="")  # "read me the handover for bed nine"
    if cue.label == "filler" and toks.said[cue.end - 1 : cue.end + 1] == ("with", "me"):
        return cue._replace(end=cue.end + 1)  # "bank nurse did the 1600 line with me: 410"
    if cue.label == "filler" and phrase_of(cue, toks) == "time now" and not number_follows(toks, cue.end):
        return cue._replace(end=cue.end - 1)  # "mark 640, time now": when
    did = cue.label == "question" and toks.said[cue.start : cue.end + 1] == ("did", "the")
    told = ":" in toks.words and "?" not in toks.words
    if (did and told) or _is_of_a_line(cue, toks) or _is_to_seal(cue, toks):
        return cue._replace(label="filler", value="")
    if cue.value == "back" and _is_of_finding(cue, toks):  # nobody came back
        to = word(toks, cue.end) in {"to", "at", "on"} and number_follows(toks, cue.end + 1)
        return Cue("filler", "", cue.start, cue.end + to)
    if _is_exactly(cue, toks) or _counts_tubes(cue, toks) or _tells_when(cue, toks) or _is_left_in(cue, toks):
        return cue._replace(label="filler", value="")
    return cue


def _is_seen_otherwise(cue: Cue, toks: Toks) -> bool:
    """ "no clot seen", "seen by surgeon": no notice that somebody has seen."""
    return word(toks, cue.end) == "by" or bool(UNSEEN & {*toks.said[max(0, cue.start - 3) : cue.start]})


def _of_line(cue: Cue, toks: Toks) -> Cue | None:
    """A cue of a line as something else: when, or an order."""
    if cue.label == "since":  # "no leak since, 330 at 0630"
        return cue._replace(label="filler", value="") if word(toks, cue.end) in {",", ".", ";"} else None
    if cue.label == "opens":  # "bed 3 to start on suction 10"
        ordered = toks.said[cue.start : cue.end + 1] == ("to", "start", "on")
        return cue._replace(label="order", value="") if ordered else None
    if word(toks, cue.start) == "it" and word(toks, cue.start - 1) in DONE:
        return cue._replace(label="word", value="it")  # "suction was off, found it at six": when
    if _is_now_then(cue, toks):
        return cue._replace(label="timeword", value="")  # "reads 345 now at 1850"
    return None


def _is_to_seal(cue: Cue, toks: Toks) -> bool:
    """ "back to seal": the drain, and nobody came back."""
    return cue.value == "back" and word(toks, cue.end) == "to" and word(toks, cue.end + 1) in SEALED


def _is_of_trial(cue: Cue, toks: Toks) -> bool:
    """ "clamp trial passed", "unclamp when back", "be back at 7": nobody died, or came back."""
    before = word(toks, cue.start - 1)
    if cue.value == "back":
        up = (
            word(toks, cue.end) == "up"
            and word(toks, cue.end + 1) == "to"
            and LOOKED_AT.isdisjoint(toks.words)
        )
        return up or before in WAITING
    return word(toks, cue.start) in {"passed", "expired"} and before in TRIED


WAITING = frozenset({"when", "once", "be"})
TRIED = frozenset({"trial", "trials", "test", "swallow", "order", "orders"}) | CANISTERS
SEALED = frozenset({"seal", "water", "waterseal", "gravity", "ws", "h2o", "wall"})
OF_SENSES = frozenset(
    {"handoff", "chart", "last", "clamped", "rate", "trend", "total", "away", "back", "withdrawn"}
)


def _is_of_other_sense(cue: Cue, toks: Toks) -> bool:
    """Whether a cue of a question, an order or an outing is only part of what is told: "out of report"."""
    if cue.value not in OF_SENSES and cue.label not in {"out", "question"}:
        return False
    before, behind = word(toks, cue.start - 1), word(toks, cue.end)
    told = ASKED.isdisjoint(toks.said[: cue.start])
    if cue.value == "handoff":  # "when i get out of report", "what is due before I hand over to days"
        ahead = before in UNTIL or (before in MYSELF and word(toks, cue.start - 2) in UNTIL)
        return before in AMID or ahead or (before in MYSELF and told)
    if cue.value == "chart":  # "dont chart 6B for me", "obs all done and charted"
        done = word(toks, cue.start) == "charted" and before in HAS_DONE | {",", ".", "-"}
        return told and (before in DENYING or done or _is_written_there(cue, toks))
    if cue.value == "last":  # "310 last I looked"
        return behind in MYSELF and word(toks, cue.end + 1) in LOOKED
    if cue.value == "clamped":
        return before == "removed" or (behind in {"at", "by"} and word(toks, cue.end + 1) == "bedside")
    if cue.value in {"rate", "trend"} and told and ASKED.isdisjoint(toks.said[cue.start : cue.end]):
        return "?" not in toks.words and not {"is", "was"}.isdisjoint(
            {before, behind}
        )  # "the rate is slowing"
    if cue.value == "total":  # "asking how much he weighs"
        return behind != "?" and not WEIGHING.isdisjoint(toks.said[cue.end : cue.end + WEIGHED_WITHIN])
    if cue.label == "out" or (cue.value == "away" and word(toks, cue.start) == "out"):
        return before in MADE_OUT or (before == "it" and word(toks, cue.start - 2) in MADE_OUT)
    if cue.label == "question":
        return "?" not in toks.words and _is_no_question(word(toks, cue.start), before, behind)
    if cue.value == "back":
        walked = before if before != "and" else word(toks, cue.start - 2)
        return walked in WALKED or _is_put_back(cue, toks)
    if cue.value == "withdrawn":  # "ignore what xray said"
        if before in MYSELF and not told and word(toks, cue.start - 2) in {",", ".", ";", "as", "because"}:
            return True  # "can you repeat what you said, i deleted it"
        return cue.end - cue.start == 1 and behind == "what" and word(toks, cue.end + 1) not in MYSELF
    return False


def _is_now_then(cue: Cue, toks: Toks) -> bool:
    """Whether a line is told right before "now at", and a whole time behind it."""
    now = cue.end - 2
    told = toks.said[now : cue.end] == ("now", "at") and word(toks, now - 2) in READS
    return told and is_digits(toks, now - 1) and is_digits(toks, cue.end) and len(word(toks, cue.end)) > 3


def _is_how_it_was(cue: Cue, toks: Toks) -> bool:
    """ "i read the 960 upside down", "600 already out": how it was read, and how much came."""
    if cue.value == "tipped":
        return not {"read", "misread"}.isdisjoint(toks.said[max(0, cue.start - UPSIDE_WITHIN) : cue.start])
    return cue.label == "filler" and toks.said[cue.start : cue.end + 1] == ("already", "out")


READS = frozenset({"reads", "read", "reading", "shows", "showing", "says"})
UPSIDE_WITHIN = 4


def _is_written_there(cue: Cue, toks: Toks) -> bool:
    """ "bed 5 640, on the chart": where a line stands that was told before it, and nothing asked."""
    k = cue.start - 1
    while word(toks, k) in CHARTS:
        k -= 1
    lined = sum(starts_number(toks, j) for j in range(k)) > 1 and "?" not in toks.words
    return lined and word(toks, k) in {"on", "in", "into"}


def _is_rule(cue: Cue, toks: Toks) -> bool:
    if cue.label != "levelat":
        return False
    before = word(toks, cue.start - 1)
    return before in {"once", "until", "till", "unless"} or (
        word(toks, cue.start) == "it" and before in TO_DO
    )


def _is_expected(cue: Cue, toks: Toks) -> bool:
    """ "should be about 700", "has to be 700 by now": what is expected there, and nothing put right."""
    behind = toks.said[cue.end : cue.end + EXPECTED_WITHIN]
    expects = word(toks, cue.start) in {"should", "has", "must", "ought"}
    return expects and (word(toks, cue.end) in ROUGHLY or ("by", "now") in pairwise(behind))


def _is_of_a_line(cue: Cue, toks: Toks) -> bool:
    """ "another line: 545", "it really was 1240": no amount, and nothing put right."""
    behind = word(toks, cue.end)
    if cue.label == "amount":
        return phrase_of(cue, toks) == "another" and behind in LINES
    really = cue.value == "corrected" and phrase_of(cue, toks) == "really"
    return really and behind in {"was", "is"} and NOT_SO.isdisjoint(toks.words)


def _is_put_back(cue: Cue, toks: Toks) -> bool:
    """ "bottle was up on the bed, back on floor now": the canister, and no patient."""
    floor = word(toks, cue.end - 1) in {"floor", "ground"}
    named = any(word(toks, k) in CANISTERS for k in range(cue.start))
    return floor and named and not LIFTED.isdisjoint(toks.said[: cue.start])


def _is_no_question(said: str, before: str, behind: str) -> bool:
    """ "which is over the top mark", "her mother who is upset", "when i get out", "ignore what xray said"."""
    if said == "what":
        return before in {"ignore", "disregard", "despite", "exactly", "like", "than", "forgot", "forgotten"}
    of_it = (said == "which" and before == ",") or (said == "who" and before.removesuffix("'s") in WHOM)
    when = said == "when" and bool(before) and (behind in MYSELF or before in DROPPED)
    return (of_it and behind in TOLD_OF) or when


def _is_of_finding(cue: Cue, toks: Toks) -> bool:
    """ "suction back to 20", "leak is back": of what is looked at, and nobody came back."""
    set_to = word(toks, cue.end + (word(toks, cue.end) == "up")) in {"to", "on"}
    between = BEING | RETURNING | (OF_BED if set_to else frozenset())  # "suction on 9 back up to 20"
    k = cue.start - 1
    while word(toks, k) in between or (set_to and word(toks, k).isdecimal()):
        k -= 1
    returned = word(toks, cue.end - 1) in {"back", "returned"}
    back = returned and BEING.issuperset(toks.said[cue.start : cue.end - 1])
    return back and word(toks, k) in LOOKED_AT


def _is_exactly(cue: Cue, toks: Toks) -> bool:
    """ "the line is right at a thousand": no right tube; "right is at 800" has one."""
    if (
        cue.label == "side"
        and word(toks, cue.end) == "of"
        and word(toks, cue.start - 1) in {"just", "is", "bit"}
    ):
        return number_follows(toks, cue.end + 1)  # "just right of four hundred"
    right = cue.label in {"side", "yes"} and word(toks, cue.end - 1) == "right"
    if right and toks.said[cue.end : cue.end + 2] in STANDING:
        return True  # "I was standing right in front of it"
    if right and word(toks, cue.end) == "on" and word(toks, cue.end + 2) in SPOT:
        return True
    if right and (is_what_is_so(cue, toks) or is_all_the_way(cue, toks)):
        return True
    if not right or word(toks, cue.end) not in EXACTLY or word(toks, cue.end - 2) not in BEING:
        return False
    k = cue.end + 1
    while word(toks, k) in {"a", "the", "about", "around", "at"}:
        k += 1
    return number_follows(toks, k) or number_follows(toks, k - 1)


def _is_at_a_line(cue: Cue, toks: Toks) -> bool:
    """ "clamp at 480": no time of day, so from which line on it is to be done."""
    bidden = word(toks, cue.end - 1) in {"clamp", "unclamp"} and word(toks, cue.end) in {"at", "@"}
    number = word(toks, cue.end + 1)
    return bidden and number.isdecimal() and int(number[-2:]) >= MINUTES


def _is_denied_too(cue: Cue, toks: Toks) -> bool:
    """ "no leak or kinks", "no clots, kinks or loops": the no is of each."""
    if word(toks, cue.start - 1) not in {"or", "nor", ",", "/"}:
        return False
    begins = begins_at(SENTENCE, toks, cue.start)
    no = next((k for k in range(cue.start - 1, begins - 1, -1) if word(toks, k) in DENIED), -1)
    between = toks.said[no + 1 : cue.start - 1]
    plain = no >= 0 and len(between) <= DENIED_WITHIN and all(w.isalpha() or w == "," for w in between)
    joined = word(toks, cue.start - 1) in {"or", "nor"} or word(toks, cue.end) in {"or", "nor"}
    return plain and joined and HAPPENED.isdisjoint(between)


def _is_to_come(cue: Cue, toks: Toks) -> bool:
    """ "closing line to follow", "needs its closing line", "till shift change": not this line."""
    before = cue.start - 1 - (word(toks, cue.start - 1) in CHARTS | {"its", "a"})
    follows = word(toks, cue.end) == "to" and word(toks, cue.end + 1) in {"follow", "come", "do", "be"}
    return follows or word(toks, cue.end) in {"later", "pending"} or word(toks, before) in AWAITING


def _counts_tubes(cue: Cue, toks: Toks) -> bool:
    """ "just the one tube in this one": how many, and none that was placed; not "bed 2 new tubes at 1845"."""
    placed = cue.value == "placed" and word(toks, cue.end - 1) in {"tube", "drain", "tubes", "in"}
    one = cue.start - 1 - (placed and word(toks, cue.start - 1) in {"chest", "drain"})
    return placed and word(toks, one) in COUNTED and word(toks, cue.start - 2) not in {"bed", "room", "rm"}


def _is_left_in(cue: Cue, toks: Toks) -> bool:
    """ "drain left in for coroner": it stays where it is; "tube left in bed 5" has a side."""
    left = cue.label == "side" and word(toks, cue.end - 1) == "left" and word(toks, cue.end) == "in"
    return left and word(toks, cue.end + 1) in LEFT_IN


def _tells_when(cue: Cue, toks: Toks) -> bool:
    """ "it's come up to 510 and that was read at 2000": when the line was read, and nothing put right."""
    said = cue.value == "corrected" and cue.end - cue.start == 2 and word(toks, cue.start) == "that"
    return said and word(toks, cue.end) in READ and word(toks, cue.start - 1) in JOINED


def _is_need(cue: Cue, toks: Toks) -> bool:
    """ "12 will need a new box tonight": told beside a question, and not asked itself."""
    needed = word(toks, cue.start) in {"need", "needs"} and word(toks, cue.start - 1) in {
        "will",
        "to",
        "ll",
        "gonna",
    }
    return needed and ASKED.isdisjoint(toks.said[: cue.start])
