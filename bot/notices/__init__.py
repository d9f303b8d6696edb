"""What must reach someone who did not ask: urgent cautions, overdue lines, unconfirmed readings.

`plan` decides what is to be sent to whom now, from the outbox alone; `letters` is what is sent; `gateway`
sends it, signed. The command line runs them.
"""
