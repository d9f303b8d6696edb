"""What is counted and is none of ours: "asleep after 2 stories", "walked 3 laps". Called by `recast`."""

from __future__ import annotations

from collections.abc import Iterator

from .numbers import Toks, numbers, word

_THINGS = """
story stories book books lap laps length lengths step steps stairs flight flights popsicle popsicles biscuit
biscuits cookie cookies cracker crackers bite bites sip sips sandwich sandwiches nap naps cartoon cartoons
episode episodes song songs game games visitor visitors pillow pillows blanket blankets puzzle puzzles joke
jokes walk walks dose doses tablet tablets nebs nebulisers nebulizers vomits stools nappies diapers feeds
puffs spoonfuls mouthfuls friends relatives kids children sisters brothers daughters sons
"""
THINGS = frozenset(_THINGS.split())
BEFORE = frozenset({"after", "for", "since"})
"""Before what is counted these tell no time."""
FEW = 20


def tallies(toks: Toks) -> Iterator[tuple[int, int]]:
    """Where each begins and ends, with an "after" before it; one that begins the message may be a bed."""
    for k in range(1, len(toks)) if not THINGS.isdisjoint(toks.words) else ():
        ends = [n.end for n in numbers(toks, k) if n.style == "plain" and n.value <= FEW]
        end = next((end for end in ends if word(toks, end) in THINGS), 0)
        if end:
            yield k - (word(toks, k - 1) in BEFORE), end + 1
