"""Nothing that was acknowledged is lost, nothing is counted twice: a real server, killed again and again.

`python -m tests.durability` runs it at any length; the marked tests run a few cuts of each kind.
"""
