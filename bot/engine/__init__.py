"""The shared delta and caution engine: pure functions from a drain's entries to what can be said of them.

No I/O, no clock: the moment and the policy are arguments.
"""
