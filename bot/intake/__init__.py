"""One message is one transaction: claim its id, find the unit, answer, keep the reply. Nothing is half done.

The web edge and the terminal both call `handle`; what a message means is the dialogue's.
"""

from bot.intake.handling import Deployment, Outcome, handle
from bot.intake.incoming import Incoming, TextError, clean_text
from bot.intake.roster import Roster

__all__ = ["Deployment", "Incoming", "Outcome", "Roster", "TextError", "clean_text", "handle"]
