"""How fast it answers, and how it says that it cannot: `python -m tests.load`."""
