"""The conversation: what one message does to the ledger, what is asked back, and what an answer settles.

Called by `bot.intake`, once a message, inside one transaction. Decides; the sentences are in `bot.wording`,
the arithmetic in `bot.engine`.
"""
