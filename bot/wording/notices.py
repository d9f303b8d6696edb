"""A notice as it reads on the phone of someone who did not ask."""

from __future__ import annotations

from bot.wording.gsm import gsm_only

NOT_CONFIRMED = "Not confirmed yet."


def notice_text(unit: str, bed: str | None, text: str, *, unconfirmed: bool, say: str | None) -> str:
    """Where, what, and how to say that it was seen: "Ward 4, bed 7. URGENT: ... Reply: seen 7"."""
    where = f"{unit}, bed {bed}." if bed else f"{unit}."
    doubt = f" {NOT_CONFIRMED}" if unconfirmed else ""
    reply = f" Reply: {say}" if say else ""
    return gsm_only(f"{where} {text}{doubt}{reply}")


def seen_words(unit: str, bed: str | None, *, several: bool) -> str | None:
    """What acknowledges a notice; with the unit's name for someone on the lists of several."""
    if bed is None:
        return None
    return gsm_only(f"{unit} seen {bed}" if several else f"seen {bed}")


def unconfirmed_notice(told: str) -> str:
    """A reading whose question nobody answered, as a reminder."""
    return gsm_only(f"CAUTION: {told[:1].lower()}{told[1:]}")
