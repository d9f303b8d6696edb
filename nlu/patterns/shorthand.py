"""What is typed with fewer letters, and no misspelling: the word that it stands for."""

from __future__ import annotations

SHORTHAND = {
    "frm": "from",
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
    "ystrday": "yesterday",
    "btwn": "between",
    "thru": "through",
    "dislgd": "dislodged",
}
