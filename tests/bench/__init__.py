"""How fast it is beside what its parts allow: `python -m tests.bench`. Figures and ratios, no assertions."""
