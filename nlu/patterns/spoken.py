"""Words that open or close a spoken report and say nothing of it; phrases as in `cues`."""

from __future__ import annotations

_ME = "(i'm|im|i am|we're|we are)"

SPOKEN: tuple[str, ...] = (
    _ME,
    f"{_ME} (in|at|with|over in|over at|over by|standing at|standing in|standing by)",
    f"{_ME} (checking|reporting|calling|texting) (on|in on|in|in with|with|about|for|in for)",
    "(just|) (checking|reporting|calling|texting|checked) (on|in on|in|in with|about|for|in for)",
    "(here's|heres|here is|here comes|next is|next up is|next one|next one is|last one is|first one is)",
    "here we go", "(okay|ok|) ready", "line check", "reporting in", "(just|) calling in",
    "last but not least", "moving on to", "moving on", "i'll give you", "i will give you",
    "let me give you", "giving you", "(quick|an|just an|a quick|small|short|latest) update",
    "update for", "(just|) updating (on|)", "hourly (check|reading|) (for|on)",
    "(the|our|my) (guy|lady|man|woman|gentleman|boy|girl|gent|chap|fella|fellow|person|one) (in|over in)",
    "i've", "ive", "we've", "weve", "i've got", "we've got", "everything at", "all of these", "these",
    "this was",
    "no (worries|stress|rush|biggie|hurry|sweat)",
    "(family|wife|husband|mom|mum|daughter|son|visitors) (is|are|) (at|by) (the|) (bedside|bed side)",
    f"{_ME} (heading|headed|going|moving|off) (on|over|) (to|into) (the|my|) next (room|bed|patient|pt|one)",
    "(he|she|he's|she's|patient|pt) (is|) doing (fine|well|ok|okay|good|great|better)",
    "(he is|she is|he's|she's|patient is|pt is) (comfortable|resting|asleep|sleeping)",
    "you know what", "(numbers|marks|lines|readings|levels) are",
    "call me if (you|) (need|needed) (me|anything|) (else|)",
    "(i'll|will|i will|we will|we'll) keep an eye on (it|him|her|that|things|them)",
    "end of report", "end of message", "over in",
    "over and out", "that's all", "that's it", "(yeah|yep|yes) so",
    "(that's|thats) (it|all) (for now|for tonight|for today|for me|from me)",
    "(thank you|thanks) (so much|very much|a lot|again)",
    "lah", "leh", "lor", "sia", "alr", "aiyo", "aiyoh", "aiyah", "aiya", "alamak", "wah", "ja", "yoh", "eish",
    "ag", "shame", "shem", "(ay|hay|) naku", "arre", "acha", "accha", "arrah", "ah sure", "now now",
    "(kindly|please|pls) (note|be informed) (that|)", "(this is|just) to inform (you|) (that|)",
    "for your (kind|) information", "be informed (that|)",
    "(the|our) (poor|wee|) (divil|craythur|lad|lass|dote) in",
)  # fmt: skip
