"""Short answers; phrases as in `cues`."""

from __future__ import annotations

# fmt: off

ANSWERS: dict[str, tuple[str, ...]] = {
    "yes": (
        "(it's|its|it is|it was|was|) not (a|) (misread|misreading|mistake|typo)",
        "(it's|its|it is) (really|actually|definitely) (that|this) (low|high|much|little|full)",
        "(this|the new|the current) (one's|ones|one is|mark is|line is|reading is) "
        "(right|correct|the right one)",
        "(yes|yep|yeah|yup|) (that's|thats|that is) what (it|the box|the canister|the drain|the chamber) "
        "(says|reads|shows|said)",
        "(yes|yep|yeah|yup|) (that's|thats|that is) what i (see|saw|read|meant)",
        "yes", "yep", "yeah", "yup", "y", "correct yes", "that's right", "thats right", "right yes",
        "affirmative", "confirmed", "confirm", "that is right", "yes please", "sure", "true", "it is right",
        "yes it is", "that is correct", "that's correct", "thats correct", "it's right", "its right",
        "yes correct", "correct as is", "ok yes", "yes that's right", "yes (that|it) is right", "yea", "ye",
        "yes thats right", "is correct",
        "it is correct", "it's correct", "yes it does", "it does", "is right",
        "all correct", "absolutely", "yess",
    ),
    "no": (
        "no", "no no", "no no no", "nope", "nah", "n", "negative", "not right", "that's wrong",
        "thats wrong", "incorrect",
        "not correct", "that is wrong", "no it's not", "no it isn't", "it's not right", "false", "it isn't",
        "it is not", "no it is not", "that's not right", "that is not right", "thats not right",
        "that is incorrect", "that's incorrect", "it doesn't", "no it doesn't", "no that's wrong",
        "(that|that's|thats|it) (isn't|isnt|ain't|aint) (right|correct|true)",
        "not really", "naw", "(that's|thats|that is|it's|its) not (it|the one|what it says|what i see)",
    ),
    "okay": (
        "(it's|its|it is|) (the|) same (patient|pt|person)","ok", "okay", "k", "okey", "okie", "kk"),
    "choice:misread": (
        "misread", "i misread", "misread it", "read it wrong", "misreading", "was misread", "misread that",
        "i misread it", "read wrong", "my misread", "i read it wrong", "misread by me", "i misread that",
        "mis-read", "miss read",
    ),
    "choice:new_canister": (
        "it's a new canister", "its a new canister", "that's a new canister", "that is a new canister",
        "it is a new canister", "it's the new canister", "thats a new canister", "there's a new canister",
        "it was a new canister",
    ),
    "choice:earlier_wrong": (
        "(the|) (earlier|previous|last|first|old) (one|mark|line|reading) (was|is) wrong (, not|not) "
        "(this|the new|the last|that) (one|mark|line|reading)",
        "earlier one was wrong", "earlier was wrong", "earlier wrong", "earlier one wrong",
        "the earlier one was wrong", "earlier mark was wrong", "previous was wrong",
        "previous one was wrong", "last one was wrong", "the last one was wrong", "earlier line was wrong",
        "the earlier mark was wrong", "the earlier line was wrong", "the earlier was wrong",
        "earlier reading was wrong", "the earlier reading was wrong", "prior one was wrong",
        "the previous one was wrong", "earlier mark wrong", "earlier line wrong", "earlier one is wrong",
        "the earlier one is wrong", "earlier is wrong", "old mark was wrong", "the first mark was wrong",
        "previous mark was wrong", "the previous mark was wrong", "last mark was wrong",
        "the last mark was wrong", "earlier entry was wrong", "previous wrong", "the one before was wrong",
        "previous reading was wrong",
        "(the|) (earlier|previous|prior|old|first|last) (one|mark|line|reading|entry|level) (was|is) "
        "(the wrong one|incorrect|a mistake|a typo|an error|not right|a misread)",
        "(the|) (earlier|previous|prior|old|first) (one|mark|line|reading|entry|level) (was|is) (off|bad)",
    ),
    "choice:first": (
        "(the|) (1st|first|former) (one|) you (said|listed|gave|wrote)",
        "first", "the first", "the first one", "option one", "1st", "the former", "former", "choice one",
        "first one please", "number one", "the 1st", "option 1st",
        "first one", "1st one", "the 1st one", "(the|) (first|1st) (choice|option|answer|reading)",
        "(option|choice|answer) 1",
    ),
    "choice:second": (
        "(the|) (2nd|second|latter) (one|) you (said|listed|gave|wrote)",
        "second", "the second", "the second one", "second one", "option two", "2nd", "the latter", "latter",
        "choice two", "number two", "the 2nd",
        "2nd one", "the 2nd one", "(the|) (second|2nd) (choice|option|answer|reading)",
        "(option|choice|answer) 2",
    ),
}
# fmt: on
