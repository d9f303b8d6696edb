"""What is typed with fewer letters, and no misspelling: the word that it stands for."""

from __future__ import annotations

_NOUNS = """
mark line level reading tube drain canister box chamber bottle seal suction leak output drainage left right
side tubing system
"""
"""With an 's that is an "is": "the line's at 540"."""
SHORTHAND = {
    "frm": "from",
    "chnged": "changed",
    "chged": "changed",
    "cahnged": "changed",
    "shd": "should",
    "drane": "drain",
    "drian": "drain",
    "shld": "should",
    "xfer": "transfer",
    "xferred": "transferred",
    "xfered": "transferred",
    "xferd": "transferred",
    "tfr": "transfer",
    "tfrd": "transferred",
    "trfd": "transferred",
    "txfr": "transfer",
    "txfrd": "transferred",
    "chgd": "changed",
    "chngd": "changed",
    "swpd": "swapped",
    "rmvd": "removed",
    "clmpd": "clamped",
    "unclmpd": "unclamped",
    "canstr": "canister",
    "cnstr": "canister",
    "yday": "yesterday",
    "yest": "yesterday",
    "bout": "about",
    "ystrday": "yesterday",
    "btwn": "between",
    "thru": "through",
    "dislgd": "dislodged",
    "wtr": "water",
    "lk": "leak",
    "lks": "leaks",
    "clmp": "clamp",
    "chng": "change",
    "chg": "change",
    "drn": "drain",
    "drnd": "drained",
    "drng": "draining",
    "sctn": "suction",
    "shft": "shift",
    "mrk": "mark",
    "mrkd": "marked",
    "lvl": "level",
    "intmt": "intermittent",
    **{f"{noun}'s": noun for noun in _NOUNS.split()},
}
