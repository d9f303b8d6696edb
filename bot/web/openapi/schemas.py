"""The schemas of the description: the message, the answer object and its parts, problems, notices.

Closed: an answer with a key that is not here is a mistake, and a test holds real answers against them.
"""

from __future__ import annotations

from typing import Any, TypeAlias

from bot.engine.values import Severity
from bot.intake.incoming import LONGEST_TEXT
from bot.web.bodies import LONGEST_SENDER, MOST_ALTERNATIVES
from bot.wording.caution_bodies import BODIES

Schema: TypeAlias = dict[str, Any]

_TEXT: Schema = {"type": "string"}
_WORD_OR_NONE: Schema = {"type": ["string", "null"]}
_FLAG: Schema = {"type": "boolean"}
_ML: Schema = {"type": "integer", "minimum": 0, "description": "mL"}
_MOMENT: Schema = {"type": "string", "format": "date-time", "description": "Ward time, with its offset."}
_SEVERITY: Schema = {"enum": [severity.value for severity in Severity]}


def reference(name: str) -> Schema:
    """Points at a schema of the description."""
    return {"$ref": f"#/components/schemas/{name}"}


def _closed(description: str, optional: tuple[str, ...] = (), **members: Schema) -> Schema:
    """An object with these members and no others; a trailing underscore keeps off a word of the language."""
    properties = {name.rstrip("_"): schema for name, schema in members.items()}
    return {
        "type": "object",
        "description": description,
        "additionalProperties": False,
        "required": [name for name in properties if name not in optional],
        "properties": properties,
    }


def _list(of: Schema, description: str = "", most: int | None = None) -> Schema:
    found: Schema = {"type": "array", "items": of}
    if description:
        found["description"] = description
    return found if most is None else {**found, "maxItems": most}


def _described(schema: Schema, description: str) -> Schema:
    return {**schema, "description": description}


WORDS: Schema = {
    "type": "string",
    "minLength": 1,
    "maxLength": LONGEST_TEXT,
    "allOf": [{"pattern": r"\S"}, {"pattern": r"^(?:[^\u0000-\u001f\u007f-\u009f]|\t|\r?\n)*$"}],
    "description": "What was said: counted after Unicode normalisation (NFC); no control characters but line "
    "ends and tabs.",
}

HYPOTHESIS: Schema = _closed(
    "What a recogniser also heard.",
    text=reference("Words"),
    confidence={"type": "number", "minimum": 0, "maximum": 1},
)

MESSAGE: Schema = _closed(
    "One message of a nurse.",
    ("sent_at", "channel", "alternatives"),
    sender={
        "type": "string",
        "minLength": 1,
        "maxLength": LONGEST_SENDER,
        "description": "Who sent it, as the unit's list names them; printable.",
    },
    text=reference("Words"),
    sent_at={
        "type": ["string", "null"],
        "format": "date-time",
        "description": "When it was sent; at most 5 minutes ahead and 7 days back.",
    },
    channel={"enum": ["text", "voice"], "default": "text"},
    alternatives=_list(
        reference("Hypothesis"), "A recogniser's other hypotheses, best first.", MOST_ALTERNATIVES
    ),
)

STATUS: Schema = {
    "enum": ["recorded", "told", "question", "refused"],
    "description": "question: the message left one; recorded: something was; told: a query, help, small "
    "talk; refused: not allowed, or not kept.",
}

RESULT: Schema = _closed(
    "What became of one statement.",
    status=reference("Status"),
    bed=_WORD_OR_NONE,
    tube=_WORD_OR_NONE,
    kind=_described(_TEXT, "What was said: mark, drained, placed, exchanged, asked, answered ..."),
    entries=_list({"type": "string", "pattern": "^[0-9a-f]{16}-[1-9][0-9]*$"}, "Ids of its entries."),
)

STRETCH: Schema = _closed("A volume as it was charted before.", from_=_MOMENT, to=_MOMENT, volume_ml=_ML)

CHART_ROW: Schema = _closed(
    "A volume that this message makes chartable.",
    bed=_TEXT,
    tube=_WORD_OR_NONE,
    volume_ml=_ML,
    from_=_MOMENT,
    to=_MOMENT,
    shift=_TEXT,
    to_chart=_described(_FLAG, "False: only told, or struck out."),
    at_least=_described(_FLAG, "More may have drained, unseen."),
    replaces=_list(reference("Stretch"), "What was charted before, and is to be amended."),
)

CAUTION: Schema = _closed(
    "Something that the reply tells the nurse to look at.",
    code={"enum": sorted(BODIES)},
    severity=_described(_SEVERITY, "As FHIR DetectedIssue; shown as URGENT, CAUTION, NOTE."),
    bed=_WORD_OR_NONE,
    tube=_WORD_OR_NONE,
    text=_TEXT,
    rule=_described(_TEXT, "The row of the unit's policy."),
    source=_described(_TEXT, "Whose rule it is."),
    if_right=_described(_FLAG, "The reading that it rests on is still asked about."),
)

CHOICE: Schema = _closed("One of the answers.", say=_TEXT, label=_TEXT)

QUESTION: Schema = _closed(
    "A question that this message left open.",
    id=_TEXT,
    bed=_WORD_OR_NONE,
    tube=_WORD_OR_NONE,
    slot=_described(_TEXT, "What lacks or is in doubt: bed, tube, at, level_ml, final_ml, kind, who ..."),
    text=_TEXT,
    choices=_list(reference("Choice")),
)

ANSWER: Schema = _closed(
    "What became of a message. It is committed.",
    id=_described(_TEXT, "The webhook-id."),
    status=reference("Status"),
    reply=_described(_TEXT, "What the nurse reads, in the GSM 7-bit alphabet."),
    speech=_described(_TEXT, "The same for a voice, numbers in words."),
    segments={"type": "integer", "minimum": 1, "description": "SMS parts of the reply."},
    results=_list(reference("Result")),
    chart=_list(reference("ChartRow")),
    cautions=_list(reference("Caution")),
    questions=_list(reference("Question")),
)

FLAW: Schema = _closed(
    "One wrong field.", pointer=_described(_TEXT, "A JSON pointer into the body."), detail=_TEXT
)

PROBLEM: Schema = _closed(
    "What is wrong with the request (RFC 9457).",
    ("errors",),
    type={"const": "about:blank"},
    title=_TEXT,
    status={"type": "integer", "minimum": 400, "maximum": 599},
    detail=_TEXT,
    errors=_list(reference("Flaw")),
)

NOTICE: Schema = _closed(
    "Something for a person who did not ask. It may come more than once: know it by its webhook-id.",
    type={"const": "notice"},
    timestamp=_described(_MOMENT, "When it was queued."),
    data=_closed(
        "The notice.",
        to=_described(_TEXT, "A person of the unit's list."),
        unit=_TEXT,
        bed=_WORD_OR_NONE,
        code={"enum": sorted(BODIES)},
        severity=_SEVERITY,
        unconfirmed=_FLAG,
        rung={"type": "integer", "minimum": 1, "description": "1: the first who is told; 2: the next."},
        text=_TEXT,
        say=_described(_WORD_OR_NONE, "What acknowledges it; null where no bed is known."),
    ),
)

SCHEMAS: dict[str, Schema] = {
    "Words": WORDS,
    "Hypothesis": HYPOTHESIS,
    "Message": MESSAGE,
    "Status": STATUS,
    "Result": RESULT,
    "Stretch": STRETCH,
    "ChartRow": CHART_ROW,
    "Caution": CAUTION,
    "Choice": CHOICE,
    "Question": QUESTION,
    "Answer": ANSWER,
    "Flaw": FLAW,
    "Problem": PROBLEM,
    "Notice": NOTICE,
    "Alive": _closed("The process lives.", status={"const": "ok"}),
    "Ready": _closed("It can take messages.", status={"const": "ready"}),
}
