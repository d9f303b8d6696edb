"""Messages mangled at random, many of them, through reader, dialogue and engine: `python -m tests.fuzz`."""
