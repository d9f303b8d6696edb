"""What is sent: the JSON of one notice to one person, as a gateway takes it to their phone."""

from __future__ import annotations

import json

from bot.notices.plan import REMINDERS, Letter


def body_of(letter: Letter, text: str, say: str | None) -> bytes:
    """The request's body: `type`, `timestamp` and `data`, as Standard Webhooks 1.0.0 recommends.

    `text` is the whole sentence; `say` what acknowledges it, None where no bed is known.
    """
    notice = letter.filed.notice
    data = {
        "to": letter.person,
        "unit": notice.unit,
        "bed": notice.bed,
        "code": notice.code,
        "severity": "moderate" if notice.code in REMINDERS else "high",
        "unconfirmed": notice.unconfirmed,
        "rung": letter.rung,
        "text": text,
        "say": say,
    }
    sent = {"type": "notice", "timestamp": notice.queued_at.isoformat(), "data": data}
    return json.dumps(sent, ensure_ascii=False, separators=(",", ":")).encode()
