"""Words that are no statement and want no correction: a greeting, a thank-you."""

from __future__ import annotations

import re
from typing import Final

REPLY = 'Nothing to record in that. Say "help" for how to write a line.'

_WORDS: Final = re.compile(
    r"\b(?:ok(?:ay)?|thanks?(?: you)?|ta|ty|thx|tks|tnx|cheers|great|good|perfect|nice(?: one)?|lovely"
    r"|brilliant|grand|got it|will do|no (?:worries|problem|bother)|np|hi|hello|hey|bye|sorry|please|so much"
    r"|a lot|very much|morning|afternoon|evening|night|all|mate|love|hun|bot|penline)\b"
)


def answered(text: str) -> bool:
    """Whether the words are nothing but small talk."""
    left, words = _WORDS.subn(" ", text.casefold())
    return words > 0 and not re.search(r"\w", left)
