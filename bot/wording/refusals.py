"""What is said to a message that is not taken: its sender is on no list, or it may name a patient."""

from __future__ import annotations

from bot.wording.gsm import gsm_only


def not_on_a_list() -> str:
    """To a stranger: nothing about any unit, not even that there is one."""
    return "This number is not on a unit's list, so nothing was recorded. The charge nurse can add it."


def holds_identifier() -> str:
    """To a message with a long number or an e-mail address in it."""
    return (
        "Nothing was recorded or kept: that message held a long number or an e-mail address. "
        "Please send it again without names or record numbers: bed, line and time are enough."
    )


def which_unit(names: tuple[str, ...]) -> str:
    """To someone who is on several lists and named a bed that more than one may mean."""
    return gsm_only(
        f"Nothing was recorded: you are on the lists of {' and '.join(names)}. "
        f"Begin with the unit, for example: {names[0]} bed 12 mark 1050 at 1900."
    )
