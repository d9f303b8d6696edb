"""Corrections and withdrawals in other words, told again in plain ones where each word is accounted for.

"*600 ml, bed 16. autocorrect gave you 403", "kindly correct timing for bed 22, 6:27pm in place of 5:05pm",
"bed 7 0605h reading is not valid, take it off". Every clause must be one of `patterns.rewording`, which
says what of it was wrong and what is right; what is then told is read as any other correction, and must
come out the same. Called by `read` for typed messages that would be asked.
"""

from __future__ import annotations

from .again import Again, Span, Told
from .entered import ENTERED
from .knownclauses import HUNDRED, Said, Value, digits, label_of, ml, scanned, time_of, where
from .misgivings import doubted
from .otherfigures import takes_any, their_clauses
from .patterns.rewording import CLAUSES
from .statements import Corrected, Mark, Unclear, Withdrawn
from .verdict import Outcome

SLIPS = frozenset({"slip", "of level", "of bed", "of side", "of time"})
"""Flags that say that something went wrong."""
PLACES = {"S": "tube", "B": "bed", "N": "bed", "T": "at"}
REFILED = frozenset({"reassign", "reallocate", "relabel", "refile"})
STRANGE = 2
"""Words of a correction that may be left over."""
PLACED = frozenset({"bed", "tube"})
BY_HAND = frozenset(
    {"remove", "clear", "take", "pull", "discard", "bin", "drop", "get", "wipe", "cancel", "leave"}
)
"""What may be done to a tube, a canister or a booking as well as to its entry."""
ENTRIES = frozenset(
    {"reading", "mark", "entry", "record", "value", "number", "figure", "message", "level", "text"}
)


def reworded(again: Again, asked: Outcome) -> Told:
    """What is put right or taken back; nothing where a word is left over or a number may be of two sorts.

    Nor where a line is asked about that came with the words that mend it: "bed 9 left 640, I meant right".
    """
    line = any(isinstance(u, Unclear) and u.slot in PLACED and isinstance(u.statement, Mark) for u in asked)
    if line and (ENTERED | REFILED).isdisjoint(again.toks.words):
        return ()
    said = scanned(again, CLAUSES, strange=STRANGE)
    bed = said.one("bed") if said is not None else None
    if said is None or (bed is not None and label_of(again, bed) is None):
        return ()
    if {"taken back", "strange"} <= said.flags:
        return ()
    if "taken back" in said.flags and {"line", "now", "is"} - said.found.keys() not in ({"now"}, {"is"}):
        return _taken_back(again, said)
    if "taken back" in said.flags:  # "disregard 640 ml for bed 9, the canister shows 460 ml"
        said.found["was"] = said.found.pop("line")
    told = _put_right(again, _with_place(said))
    if "strange" in said.flags and (
        doubted(told, again.read, again.meant.cues) != told or takes_any(again, told, their_clauses(again))
    ):
        return ()
    return told


def _put_right(again: Again, said: Said) -> Told:
    """What was wrong, and what is right."""
    was, now = said.one("was") or said.one("pointed"), said.one("now")
    if {"was", "pointed"} <= said.found.keys():
        return ()  # "9 1730h should be 1820 not 270"
    if now is None or not {"bare", "to", "told", "is", "either"}.isdisjoint(said.found):
        return ()
    if was is not None:
        sort = _sort(again, said, was, now)
        return _righted(again, said, was, now, sort) if sort else ()
    if "of bed" in said.flags and said.found.keys() == {"now"} and label_of(again, now):
        return _righted(again, said, None, now, "bed")
    return _righted(again, said, None, now, "level") if _is_whole(said, now) else ()


def _with_place(said: Said) -> Said:
    """ "the line for 7B right is the left's", "reassign 20 1130 ml to bed 3": where the line is, is wrong."""
    found = dict(said.found)
    if "moves" in said.flags and "bare" in found and "bed" not in found:
        found["bed"] = found.pop("bare")
    if "to" in found and "now" not in found and _goes(said):
        found["now"] = found.pop("to")
    sides = {each.sort for role in ("told", "is") for each in found.get(role, ())} <= {"S", "B", "T"}
    sure = bool({"was", "now", "pointed"} & found.keys()) and not {"told", "is"} <= found.keys()
    slip = SLIPS if "at" not in found else SLIPS - {"slip"}  # "sorry, 9 is 640, I put 600 at 1800"
    if sides or sure or not slip.isdisjoint(said.flags):
        for weak, strong in (("told", "was"), ("is", "now")):
            if weak in found and strong not in found:
                found[strong] = found.pop(weak)
    if "now" in found and not {"was", "pointed"} & found.keys():
        sort = found["now"][0].sort
        role = PLACES.get(sort, "")
        pointed = bool({"pointing", "moves"} & said.flags) if sort in {"S", "B"} else _goes(said)
        if role in found and pointed:
            found["was"] = found.pop(role)
    return Said(found, said.flags)


def _goes(said: Said) -> bool:
    """Whether a line is told to belong to another bed or time, and no patient goes there."""
    line = "line" in said.found or "of bed" in said.flags
    return ("moves" in said.flags and line) or bool({"of bed", "of time"} & said.flags)


def _is_whole(said: Said, now: Value) -> bool:
    """Whether the level of one line of a bed and a time is told to be misread or mistyped, and how it is."""
    placed = {"bed", "at"} <= said.found.keys() <= {"bed", "at", "now", "tube"}
    return placed and "of level" in said.flags and now.sort == "L"


def _sort(again: Again, said: Said, was: Value, now: Value) -> str:
    """Of what sort the wrong and the right value are, where that is certain; else nothing."""
    sorts = {was.sort, now.sort}
    if sorts == {"S"}:
        return "side"
    if "S" in sorts:
        return ""
    if sorts == {"T"} or ("T" in sorts and sorts == {"T", "N"} and was.is_clock and now.is_clock):
        return "time"
    if "T" in sorts:
        return ""
    beds = [label_of(again, value) for value in (was, now)]
    if None not in beds and beds[0] != beds[1]:
        if any(value.sort == "N" and value.number >= HUNDRED for value in (was, now)):
            return ""  # "the 1720 line of 222 belongs to 223"
        told = (
            (sorts == {"B"} and "pointed" not in said.found)
            or "of bed" in said.flags
            or said.one("line") is not None
        )
        return "bed" if told else ""
    return "level" if "B" not in sorts and _are_levels(again, said, was, now) else ""


def _are_levels(again: Again, said: Said, was: Value, now: Value) -> bool:
    """Whether both are lines: one in mL, or one that is no time and no bed."""
    if {"of bed", "of time", "of side"} & said.flags or was.number == now.number:
        return False
    bare = [value for value in (was, now) if value.sort == "N"]
    if any(label_of(again, value) for value in bare):
        return False
    if "pointed" in said.found and was.sort == "N" and was.is_clock:
        return False  # "change 1220 to 80": the line of then, or of so much?
    if "of amount" in said.flags:
        return True
    if any(value.is_clock for value in bare) and "N" in {was.sort} & {now.sort}:
        return not (was.is_clock and now.is_clock)
    return True


def _righted(again: Again, said: Said, was: Value | None, now: Value, sort: str) -> Told:
    """The correction in plain words, where it is read as it was meant."""
    if not _is_of_one_line(said, sort):
        return ()
    place = where(again, said.one("bed") if sort != "bed" else was)
    told: list[str | Span]
    if sort == "level":
        wrong: list[str | Span] = [" from ", was.at, ml(was)] if was is not None else []
        told = ["correct", *place, *_side(said), *_line(said), *wrong, " to ", now.at, ml(now)]
    elif sort == "time" and was is not None:
        amount = _line(said) if said.one("line") is not None else [" line"]
        told = [
            "change time of",
            *place,
            *_side(said),
            *amount,
            " from ",
            *time_of(was),
            " to ",
            *time_of(now),
        ]
    elif sort == "bed":
        told = ["the", *_line(said), *_of(place), *_side(said), " should be bed ", digits(again, now)]
    elif was is not None:
        told = [*place, *_line(said), " ", was.at, " should be ", now.at]
    made = _as_meant(again.outcome_of(told), again, (sort, was, now))
    return made if _is_placed(made, again, said, sort) else ()


def _is_of_one_line(said: Said, sort: str) -> bool:
    """Whether no second bed, tube, time or level is told beside the two of that sort."""
    if sort == "side" and "bed" not in said.found:
        return False  # "oops left not right"
    other = {"bed": {"bed"}, "side": {"tube"}, "level": {"line"}, "time": {"at", "named"}}[sort]
    when = {"at", "named"} <= said.found.keys() or "to" in said.found
    return other.isdisjoint(said.found) and not when


def _line(said: Said) -> list[str | Span]:
    """The line that is meant: its time, or how much it was."""
    at, named, line = (said.one(role) for role in ("at", "named", "line"))
    amount: list[str | Span] = [" ", line.at] if line is not None else []
    if at is not None:
        return [*amount, " line at ", *time_of(at)]
    return [*amount, " ", named.at, " line"] if named is not None else [*amount, " line"]


def _side(said: Said) -> list[str | Span]:
    tube = said.one("tube")
    return [" ", tube.at] if tube is not None else []


def _of(place: list[str | Span]) -> list[str | Span]:
    return [" of", *place] if place else []


def _is_placed(made: Told, again: Again, said: Said, sort: str) -> bool:
    """Whether what is read has the bed and the time that were said, and no other."""
    bed = said.one("bed")
    placed = all(sort == "bed" or s.bed == (label_of(again, bed) if bed else None) for s in made)
    timed = sort == "time" or not {"at", "named"}.isdisjoint(said.found)
    return placed and all((s.at is not None) == timed for s in made)


def _as_meant(made: Outcome, again: Again, meant: tuple[str, Value | None, Value]) -> Told:
    """The one correction that was told, if it says what was meant."""
    only = made[0] if len(made) == 1 else None
    if not isinstance(only, Corrected):
        return ()
    sort, was, now = meant
    wrong = was.number if was is not None else None
    beds = label_of(again, was) if was is not None else None, label_of(again, now)
    so = {
        "level": (only.was_ml, only.level_ml) == (wrong, now.number) and only.to_bed is None,
        "bed": (only.bed, only.to_bed) == beds,
        "side": None not in (only.tube, only.to_tube) and only.tube != only.to_tube,
        "time": None not in (only.at, only.to_at),
    }
    return (only,) if so[sort] else ()


def _taken_back(again: Again, said: Said) -> Told:
    """The withdrawal in plain words: of a bed and a time that were said."""
    at, bed = said.one("at") or said.one("pointed"), said.one("bed")
    if at is not None and "pointed" in said.found:
        said.found["at"] = said.found.pop("pointed")
    named = said.one("named")
    at = at or (named if named is None or label_of(again, named) is None else None)
    entry = ENTRIES if not BY_HAND.isdisjoint(again.toks.words) else ENTRIES | {"line", "one"}
    if "of amount" in said.flags or ("line" not in said.found and entry.isdisjoint(again.toks.words)):
        return ()  # "remove the left drain of bed 9 at 1800h"
    if at is None or bed is None or not said.found.keys() <= {"at", "named", "bed", "tube", "line"}:
        return ()
    line = said._replace(found={role: found for role, found in said.found.items() if role != "line"})
    made = again.outcome_of(["delete", *where(again, bed), *_side(said), *_line(line)])
    only = made[0] if len(made) == 1 else None
    whole = isinstance(only, Withdrawn) and _is_placed((only,), again, said, "withdrawn")
    return (only,) if isinstance(only, Withdrawn) and whole else ()
