"""How to talk to the bot, and what is said to someone who writes for the first time."""

from __future__ import annotations

from bot.wording.queries.view import tube_to_say

FIRST = 'First time here? Say "help" for how to write a line.'

HELP = (
    "Lines: bed 12 mark 1050 at 1900. Also: drained 60, new canister old one 1980, tube out final 340, "
    "seal 2 suction 20 no leak.\n"
    "Ask: last 12, chart 12, total 12, due 12, handoff 12, beds.\n"
    "Put right: correct bed 12 1900 to 1005, or: scratch that."
)

READS_ONLY = "You can read here, not write: nothing was recorded."


def nothing_open(bed: str | None, maybe: str | None = None, right: str | None = None) -> str:
    """An answer that no question waits for; `bed`: the one that was said with it, `maybe`: one that the
    number alone may be, `right`: the correction that it may be meant for."""
    if maybe is not None:
        return f'No question is open, so nothing was recorded. For the bed say "last {maybe}".'
    if bed is not None:
        again = f' To put its last line right say "{right}".' if right is not None else ""
        return f"No question about bed {bed} is open, so nothing was recorded.{again}"
    return "No question is open, so nothing was recorded. Say the bed with it."


def correction_to_say(bed: str, tube: str | None, level_ml: int) -> str:
    """The words that put the last line of a tube right: "correct bed 3 right to 130"."""
    words = (f"correct bed {bed}", tube_to_say(tube), f"to {level_ml}")
    return " ".join(word for word in words if word)


SEND_EARLIER = "Send that line with its bed and time, as in: bed 7 mark 500 at 0700."

NO_EARLIER = "Then nothing is charted before your first line."

SENT_BEFORE = "That was sent before the question was asked, so it was not taken as its answer."


def several_open(briefs: tuple[str, ...], beds: tuple[str, ...]) -> str:
    """Which of several open questions an answer is for."""
    told = f"Several questions are open: {'; '.join(briefs)}."
    if len(set(beds)) < len(beds):
        return f"{told} Say what is right whole, with its bed."
    example = f', as in "{beds[0]} yes"' if beds else ""
    return f"{told} Say the bed with the answer{example}."
