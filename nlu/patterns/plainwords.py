"""Everyday words that are near a number word, or as short as a letter, and are heard for what they are."""

from __future__ import annotations

_WORDS = """
and but so or as if it its it's is was are were be been am has had have having he she his her him hers
they them their theirs we us our you your i me my the this that these those there here where when while
who in on at by of off up out over under with from into onto just let look looks looked looking see sees
saw seen no yes not now new old my own one's do does did done doing go goes going gone get gets got
getting hi hey hello ok okay well good kind lady man guy boy girl lad son mom mum dad wife some same such
still since after before again very more most much many less lot lots bit little quite rather came come
comes made make says said say told tell want wants wanted need needs know knows knew think thing things
side sides line lines like likes time turn turned turns tube tubes resting rest rested room rooms nurse
nurses noise notes noted name names near nearly next than thank thanks there's here's that's what's who's
let's he's she's they're we're i'm i've we've family's patient's heart sitting sits sat set settled sleep
sleeping asleep awake finally every evening fever give gives gave given leave leaves having
"""
PLAIN_WORDS = frozenset(_WORDS.split())
