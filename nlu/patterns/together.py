"""Words that ask for one topic when they stand in the same question, in any order and with others between."""

from __future__ import annotations

_DRAIN = frozenset({"drain", "drains", "tube", "tubes", "chest", "ct", "cts"})
_FULL = frozenset({"full", "fill", "fills", "filled", "filling", "capacity"})
_HOUR = frozenset({"hr", "hour", "hourly", "hrly"})
_DID = frozenset({"is", "was", "did", "has", "when", "when's", "whens", "who", "have", "anyone", "anybody"})
_WHEN = frozenset({"when", "when's", "whens", "long", "soon", "will", "before", "until", "till", "til"})
_READ = frozenset(
    {"mark", "marks", "marking", "read", "reading", "readings", "check", "checking", "line", "lines"}
    | {"hourlies", "hourly"}
)
_WHICH = frozenset(
    {
        "who's",
        "whos",
        "which",
        "what",
        "what's",
        "whats",
        "who",
        "whose",
        "any",
        "anyone",
        "anybody",
        "anything",
    }
)
_CHART = frozenset({"flowsheet", "flowsheets", "chart", "charting", "sheet", "io"})
_ME = frozenset({"i", "i'm", "im", "my", "me"})
_ANSWER = frozenset({"answer", "answered", "answering", "unanswered", "unconfirmed", "confirming", "reply"})

_HAS = frozenset({"did", "has", "have", "who"})
_SOMEBODY = frozenset({"anyone", "anybody", "someone", "somebody", "who", "you", "they", "we", "i"})
_GAVE = frozenset({"give", "gave", "given", "do", "done", "tell", "told", "send", "sent", "mark", "marked"})

_SINCE = frozenset({"since"})
_HOW_IS = frozenset({"how", "how's", "hows"})
_GOING = frozenset({"going", "doing", "trending", "behaving", "tracking", "progressing"})

TOGETHER: tuple[tuple[str, tuple[frozenset[str], ...]], ...] = (
    (
        "me",
        (
            frozenset({"who", "which", "what", "what's", "whats", "am"}),
            _ME,
            frozenset({"logged", "signed", "registered", "role", "login", "account", "listed", "name"}),
        ),
    ),
    ("me", (frozenset({"who"}), frozenset({"think", "thinks"}), frozenset({"am", "i'm", "im"}))),
    (
        "open",
        (_ANSWER, frozenset({"what", "what's", "whats", "any", "anything", "which", "still", "did", "have"})),
    ),
    ("checks", (frozenset({"is", "does", "was", "are", "still"}), frozenset({"leaking", "leaks"}))),
    ("capacity", (_WHEN, _FULL)),
    ("capacity", (frozenset({"how", "is", "are", "isn't"}), frozenset({"full"}))),
    ("history", (_DID, frozenset({"changed", "swapped", "replaced", "clamped", "unclamped", "moved"}))),
    (
        "capacity",
        (
            frozenset({"do", "does", "should"}),
            frozenset({"swap", "swapping", "change", "changing", "replace", "replacing", "new"}),
            frozenset({"box", "canister", "chamber", "bottle"}),
        ),
    ),
    ("history", (frozenset({"whole", "full", "entire"}), frozenset({"log", "history", "record", "list"}))),
    (
        "due",
        (
            frozenset({"when", "what", "what's", "whats", "which", "who", "anyone", "anything", "any"}),
            frozenset({"next", "still"}),
            frozenset({"mark", "marks", "marking", "check", "checking", "read"}),
        ),
    ),
    (
        "history",
        (
            frozenset({"everything", "every", "all", "anything"}),
            frozenset({"entered", "recorded", "logged", "marked", "charted", "sent", "written", "marks"})
            | {"entries", "lines", "readings"},
        ),
    ),
    (
        "beds",
        (
            frozenset({"which", "what", "list", "every", "all", "whose", "who", "who's", "many", "any"}),
            frozenset({"beds", "rooms", "patients", "pts", "ones", "who", "who's", "whose"})
            | {"everyone", "everybody", "anyone", "anybody"},
            _DRAIN,
        ),
    ),
    ("beds", (frozenset({"every", "each", "all", "any"}), frozenset({"bed", "room", "one"}), _DRAIN)),
    ("rate", (frozenset({"how", "what", "what's", "whats"}), _HOUR | {"average"})),
    ("beds", (frozenset({"which", "what"}), frozenset({"patients", "pts"}), _ME | {"we"})),
    (
        "due",
        (
            frozenset({"when", "when's", "whens", "time", "long", "soon"}),
            frozenset(
                {"need", "needs", "have", "should", "supposed", "gotta", "got", "must", "next", "again"}
            ),
            _READ | {"look", "marked"},
        ),
    ),
    (
        "due",
        (
            _WHICH | {"am", "which's"},
            frozenset({"need", "needs", "needing", "late", "behind", "havent", "haven't", "hasn't", "hasnt"}),
            _READ | {"marked"},
        ),
    ),
    (
        "due",
        (
            frozenset({"is", "do", "who", "who's", "whos"}),
            frozenset({"time", "need", "next"}),
            frozenset({"do", "up", "mark"}),
            frozenset({"i", "it", "who", "who's", "whos"}),
        ),
    ),
    (
        "due",
        (
            _WHICH | {"who's", "whos"},
            frozenset({"still", "left"}),
            frozenset({"got", "have", "left", "gotta"}),
            frozenset({"do", "read", "mark", "check"}),
        ),
    ),
    (
        "history",
        (
            frozenset({"what", "show", "list"}),
            frozenset({"i", "we"}),
            frozenset({"sent", "charted", "entered", "recorded", "given"}),
        ),
    ),
    ("history", (frozenset({"did"}), frozenset({"my"}), frozenset({"get", "go", "through"}))),
    ("last", (frozenset({"how", "hows", "how's"}), frozenset({"looking", "doing"}))),
    ("checks", (_HAS, _SOMEBODY, frozenset({"check", "checked", "checks"}))),
    ("checks", (frozenset({"has", "have", "was", "were"}), frozenset({"checked"}))),
    ("trend", (frozenset({"how", "how's", "hows"}), frozenset({"gone", "went"}), _SINCE | {"over"})),
    ("trend", (_HOW_IS, frozenset({"been"}), _GOING, _SINCE | {"over", "past", "last"})),
    ("trend", (frozenset({"has", "have", "did", "is"}), frozenset({"slowed", "eased", "tapered", "slow"}))),
    (
        "trend",
        (
            frozenset({"has", "have", "did", "is"}),
            frozenset({"dropped", "fallen", "tailed", "risen", "climbed", "increased", "decreased"}),
            frozenset({"output", "drainage", "draining"}),
        ),
    ),
    ("due", (_WHICH, frozenset({"needs", "need", "missing"}), frozenset({"their", "its"}))),
    (
        "history",
        (frozenset({"anything", "what", "what's", "whats"}), frozenset({"on", "for", "happened"}), _SINCE),
    ),
    (
        "total",
        (
            frozenset({"what"}),
            frozenset({"did", "has", "have"}),
            frozenset({"days", "nights", "day", "night"}),
            frozenset({"get", "got", "make", "drain"}),
        ),
    ),
    ("last", (_HAS, frozenset({"i", "we"}), _GAVE, frozenset({"yet", "already", "you"}))),
    (
        "last",
        (
            frozenset({"what", "whats", "what's", "list"}),
            frozenset({"have", "had", "leave"}),
            frozenset({"you", "nights", "days", "they", "does", "did"}),
        ),
    ),
    ("last", (frozenset({"can", "could", "please", "pls"}), frozenset({"pull"}), frozenset({"up"}))),
    ("due", (frozenset({"am"}), frozenset({"late", "behind", "overdue"}))),
    (
        "chart",
        (_WHICH | {"how"}, _CHART, frozenset({"put", "goes", "go", "enter", "write", "number", "down"})),
    ),
)
"""Each with one word at least of every set; the first that is said whole counts."""
LONE_AGAIN = frozenset({"again"})
"""Beside a bed or another topic it only says that it is asked once more: "what was bed 4 again"."""
_ASKING = """
what what's whats which who who's whos when when's whens where where's how how's hows any anything anyone
show list give is does can could
"""
ASKING = frozenset(_ASKING.split())
"""A phrase that begins with one of these asks without another word."""
_POLITE = "kindly please pls plz quick question quickly so but then also now ok btw"
POLITE = frozenset(_POLITE.split())
"""Words before a question that say nothing of it."""
