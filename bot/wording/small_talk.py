"""Words that are no statement and want no correction: a greeting, a thank-you."""

from __future__ import annotations

import re
from typing import Final

REPLY = 'Nothing to record in that. Say "help" for how to write a line.'

_WORDS: Final = re.compile(
    r"(?:ok(?:ay)?|thanks?(?: you)?|ty|thx|cheers|great|good|perfect|nice|got it|will do|hi|hello|hey|bye"
    r"|sorry|please|so much|a lot|very much|morning|afternoon|evening|night|all|bot|penline)"
)


def answered(text: str) -> bool:
    """Whether the words are nothing but small talk."""
    left, words = _WORDS.subn(" ", text.casefold())
    return words > 0 and not re.search(r"\w", left)
