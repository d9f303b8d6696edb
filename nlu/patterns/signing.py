"""Words that open and close a message, and tell nothing of what stands between."""

from __future__ import annotations

from .levels import VOLUMES
from .smalltalk import NAMES

_BEFORE_UPDATE = """
a an the quick just small short hourly routine chest tube drain drains line lines box canister ct icd bed
okay ok so hi hey hello um uh er erm yes yeah right well good morning evening afternoon , . - ! here's heres
another my our team everyone
"""
BEFORE_UPDATE = frozenset(_BEFORE_UPDATE.split())
NOUNS = frozenset({"drain", "canister", "box", "chest", "bottle", "tube", "chamber", "patient"})
"""Behind "update the" these are what is reported on."""
NO_HEADING = frozenset({"that", "it", "my", "this", "last", "the", "on", "me", "us", "him", "her", "them"})
"""Behind an update: what is put right, or who wants to hear it."""
AFTER_YES = frozenset(
    {
        "hi",
        "hello",
        "hey",
        "so",
        "good",
        "there's",
        "theres",
        "i",
        "i've",
        "hourly",
        "took",
        "taking",
        "fluid",
    }
)

CLOSINGS = frozenset(
    {
        "thanks", "thank you", "thanks bye", "many thanks", "thanks a lot", "thanks so much", "thank you bye",
        "thank you so much", "thank you very much", "much appreciated", "bye", "bye bye", "goodbye", "cheers",
        "over and out", "end of message", "end of report", "message ends", "end message",
        "that's it", "thats it", "that is it", "that's all", "thats all", "that is all",
        "all good", "all set", "okay", "ok", "please", "ta", "copy that", "you got it", "okay great", "great",
        "alright", "all right", "talk later", "talk to you later",
        "more later", "got to run", "gotta run", "got to go", "gotta go", "please and thanks",
        "that's everything", "that's me done", "that's me", "that's all i have", "that's all i've got",
        "that is everything", "off to my break now", "off to my break", "going on break", "read back please",
        "did you get that", "appreciate it", "okay bye", "he's doing fine", "she's doing fine",
        "talk soon", "speak soon", "for now", "over to you", "that's me for now",
    }
)  # fmt: skip
AGAIN = (
    "again that's", "i repeat", "so that's", "that's", "again", "repeat", "repeating", "i say again",
    "that is",
)  # fmt: skip
"""Before a number or a bed that was said before these say it once more."""
BEHIND_A_NUMBER = frozenset({"over", "done", "all done", "got it", "send", "send it", "go ahead", "out"})
"""These close a message behind a number alone; behind anything else they say what happened."""
GOING_ON = frozenset({"to", "at", "and", "is", "of", "not", "no", "be", "was", "it", "the", "a", "for"})
"""Before what closes a message these say that something was lost, or that it goes on."""
UNITS = VOLUMES - {"l"}
HALVES = frozenset({"am", "pm", "m", "o'clock", "hours", "morning", "evening", "afternoon", "ago", "now"})
_HINTS = """
update updates right yes yeah yep yup here speaking can could would will put putting again repeat repeating
that's that belongs those these they both
"""
HINTS = (
    frozenset(_HINTS.split())
    | NAMES
    | frozenset(phrase.rsplit(" ", 1)[-1] for phrase in CLOSINGS | BEHIND_A_NUMBER)
)
"""Without one of these a message neither opens nor closes with more than its line."""
