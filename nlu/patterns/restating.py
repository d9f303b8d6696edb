"""How it is put in other words where a patient went, who left and that nothing drained, clause by clause.

Used by `restated`; the capitals are those of `patterns.rewording`.
"""

from __future__ import annotations

# fmt: off

WORDS: dict[str, str] = {
    "WENT": (
        "(?:moved|shifted|transferred|relocated|rehoused|tfrd|trf'd|tx'd|mv'd|mvd|went|gone|going "
        "on the move|got moved|got shifted|was moved|was shifted|has moved|has been moved|has been "
        "shifted|has gone|is moved|is shifted|been moved|been shifted|switched)"
    ),
    "PATIENT": "(?:the |our )?(?:patient|pt|patients|pts)",
    "THERE": "(?:to|into|in|in to|- >|>|=)",
    "NIL": "(?:zero|nil|no|nothing|none|0|not any)",
    "OUT": (
        "(?:output|drainage|outflow|out|new drainage|more|increase|movement|drained|further "
        "drainage|fresh drainage)"
    ),
    "NOT": (
        "(?:hasn't|has not|hasnt|didn't|did not|didnt|have not|haven't|has n't|is not|isn't|hardly|"
        "not|never)"
    ),
    "RISEN": (
        "(?:budged|moved|changed|gone up|shifted|risen|increased|drained|budge|move|change|rise|"
        "increase|drain|move up)"
    ),
    "OUTSIDE": (
        "(?:home|stepdown|step down|step - down|the stepdown unit|rehab|hospice|snf|a nursing home|"
        "nursing home|another hospital|other hospital|another ward|other ward|another unit|the "
        "other hospital|(?:the )?(?:surgical |medical |cardiac |thoracic |respiratory )?(?:hdu|icu|"
        "itu|ccu|high dependency)|the mortuary|mortuary|the morgue|morgue|a care home|care home|a "
        "rehab facility|rehab facility|a facility|ltac|ltach|his house|her house|the (?:district|"
        "referring) hospital|his family|palliative care|the ward upstairs)"
    ),
    "PLACE": (
        "(?:(?:a |an |the |his |her )?(?:ct|cat|mri|theatre|theater|or|ot|operating room|cath lab|"
        "cathlab|x - ray|xray|radiology|scan|ct scan|endoscopy|ultrasound|echo|ir|dialysis|"
        "bronchoscopy|bronch|angio|angiogram|imaging|surgery|interventional|nuclear medicine)(?: "
        "scan| dept| department)?)"
    ),
}

CLAUSES: dict[str, tuple[str, ...]] = {
    "from to": (
        "(?:PATIENT )?(?:from )?(?:B|N) WENT(?: over| across| down| up)? THERE (?:B|N)",
        (
            "(?:PATIENT )?(?:mv|mvd|moved|shifted|shifting done|transferred|tfr|trf|relocated)(?: "
            "from)? (?:B|N) THERE (?:B|N)"
        ),
        (
            "(?:PATIENT )?(?:room|bed) (?:change|move|swap|transfer|shift)(?: for| from| of)? (?:B|"
            "N) THERE (?:B|N)"
        ),
        "PATIENT (?:from|in|of|out of) (?:B|N) (?:WENT) THERE (?:B|N)",
    ),
    "from": (
        (
            "(?:had us|made us|asked us to|got us to|told us to|had me|made me) (?:move|shift|"
            "transfer) (?:PATIENT in )?(?:B|N)"
        ),
        "(?:we |i )?(?:moved|shifted|transferred|relocated) (?:PATIENT (?:in|from|of) )?(?:B|N)",
    ),
    "to": (
        "(?:he|she|they|PATIENT)(?: is|'s| are)? (?:now )?in (?:B|N)",
        "(?:he's|she's|they're) (?:now )?in (?:B|N)", "(?:is )?now in (?:B|N)",
        "new (?:bed|room) (?:is )?N", "now (?:B|N)",
    ),
    "at": (
        "(?:at |@ )?T", "(?:at|@) N", "gone (?:at )?T", "left (?:at )?T",
    ),
    "bare": ("N",),
    "left": (
        (
            "(?:discharge|discharging|dc|d / c|transfer out) (?:done|completed|complete|is done)(?: "
            "for| of)? (?:PATIENT (?:in|of) )?(?:B|N)"
        ),
        (
            "(?:PATIENT )?(?:B|N)(?: has| was| is| 's| just| been| got)* (?:dc|d / c|dc'd|dcd|"
            "discharged|sent|went|gone|transferred|tfrd|shifted)(?: out| off)* (?:to |- > |> )?"
            "OUTSIDE"
        ),
        (
            "(?:B|N)(?: has| was| is| just)* (?:went|gone|left|discharged|dc|dama|lama|ama)(?: lama| "
            "dama| ama| against medical advice)"
        ),
        "(?:transfer|transferred|tfr|shifted|sent) out (?:B|N) (?:to |- > |> )OUTSIDE",
        "(?:moved|transferred|shifted|went) from (?:B|N) to OUTSIDE",
        (
            "(?:PATIENT )?(?:in |from )?(?:B|N)(?: has| was| is| just| sadly| unfortunately)* (?"
            ":died|expired|passed away|deceased|rip)"
        ),
        (
            "(?:discharged|dc'd|dcd|d / c'd) (?:PATIENT (?:in|from|of) )?(?:B|N)(?: (?:to |- > )?"
            "OUTSIDE)?"
        ),
        "(?:B|N)(?: has| was| is| just| been)* (?:discharged|dc'd|dcd|dced)",
        "(?:death|demise) (?:of|in) (?:B|N)",
    ),
    "nil": (
        (
            "(?:the )?(?:line|level|mark|drain|drainage|output|reading|fluid|it) NOT RISEN(?: at "
            "all)?(?: on| in| for| of) (?:B|N)"
        ),
        (
            "NIL OUT(?: at all)? (?:from|in|on|for|of) (?:the )?(?:B|N)(?: 's)?(?: (?:chest tube|"
            "chest drain|drain|tube))?"
        ),
        (
            "(?:B|N)(?: 's)? (?:line|level|mark|drain|drainage|chest tube|chest drain|tube) NOT "
            "RISEN(?: at all)?"
        ),
        (
            "(?:it is |its |it's )?(?:still |again |the )*same(?: only| as before| level| line| "
            "reading)* (?:in|on|for) (?:B|N)"
        ),
        "(?:B|N) (?:is |it is |its )?(?:still |again )*(?:the )?same(?: only)",
        "(?:B|N)(?: has| had)? (?:put|drained|given|gave|made) (?:nothing|nil|zero)(?: out)?",
        (
            "(?:B|N)(?: has| had| 's)? (?:hasn't|has not|hasnt|didn't|did not|not) (?:put|drained|"
            "given|put out|drain|moved|budged|risen|changed)(?: out)?(?: anything| any| any more| a "
            "drop| one ml)?(?: out)?"
        ),
        (
            "(?:nothing|zero|nil|no fresh|no new)(?: new| more| further| drainage| output)*(?: in "
            "the (?:box|canister|chamber|bottle))? (?:for|from|in|on) (?:the )?(?:B|N)(?: 's)?(?: (?"
            ":chest tube|chest drain|drain|tube|box|canister))?"
        ),
        (
            "(?:B|N) (?:line|level|mark|reading) (?:is |still |at |the )*(?:unchanged|same as before|"
            "same as last|same)"
        ),
    ),
    "nil both": (
        (
            "neither (?:B|N) nor (?:B|N)(?: has| have)? (?:put|drained|gave|given|made|had|shown|"
            "showed) (?:anything|any|any drainage|any output)(?: out)?"
        ),
        (
            "(?:nothing|nil|zero|no output|no drainage) (?:out )?(?:from|in|on|for) (?:either )?(?:B|"
            "N) (?:or|nor) (?:B|N)"
        ),
        "neither (?:B|N) nor (?:B|N)(?: has| have)? (?:drained|moved|budged|risen)",
    ),
    "unmoved": (
        "no increase", "no change", "no rise", "nothing more", "nothing new", "no more", "still the same",
        "not moved",
    ),
    "gone": (
        "not our (?:unit|ward|patient)(?: any more| anymore)?",
        "no longer (?:ours|on our (?:unit|ward|list))", "gone", "left", "off our (?:list|unit|ward|census)",
        "report (?:called|given|done)", "hand ?over (?:given|done)",
        (
            "(?:the )?(?:drain|chest tube|tube|chest drain|it) went (?:with|along with|home with) (?"
            ":him|her|them|the patient|pt)"
        ),
        (
            "(?:w /|with) (?:a |the |his |her |their )?(?:mini |small |portable |pigtail )?(?:drain|"
            "chest tube|chest drain|tube)(?: in situ| in place| in)?"
        ),
        "(?:family|wife|husband|son|daughter) with (?:him|her|them)",
        "report (?:to|with) (?:them|the nurse|receiving nurse)",
        "(?:all )?(?:paperwork|papers|summary) (?:done|given)",
        (
            "with (?:the )?(?:porter|porters|transport|nurse|escort|monitor|oxygen|drain|chest drain|"
            "tube)"
        ),
        "on (?:water seal|portable suction|a stretcher|stretcher|trolley)",
        "(?:drain|box|canister|tube) (?:with|goes with|sent with) (?:him|her|them|pt|patient)",
    ),
    "moving": (
        "swapped (?:beds|rooms)", "(?:bed|room) (?:change|move|swap)",
        "(?:bed|site|charge|flow) (?:management|manager|managers|nurse|control)", "bed board",
        "(?:admissions|infection control|isolation)", "(?:done|moved|shifted)",
        "same (?:drain|tube|patient|box)",
        (
            "(?:drain|tube|box|chest drain|ct) (?:with|went with|moved with|came with|goes with) (?"
            ":him|her|them|pt|it)"
        ),
        "with (?:the |his |her )?(?:drain|tube|chest tube|chest drain|box)", "for isolation",
        "(?:for )?(?:private room|side room|isolation room|closer obs|a bed closer)",
    ),
    "": (
        "hi", "hello", "fyi", "thanks", "and", "all done", "ok", "so", "just", "now",
        "update",
    ),
    "away": (
        (
            "(?:PATIENT )?(?:(?:in|of|from) )?(?:B|N)(?: has| is| was| just| been| 's| got)* (?:left|"
            "gone|went|taken|down|off|wheeled|headed|sent|out|away|wheeled off|collected|shifted)(?: "
            "off| down| over| out| away)* (?:to|in|at) PLACE"
        ),
        (
            "(?:PATIENT )?(?:(?:in|of|from) )?(?:B|N)(?: has| just| 's)* (?:left|gone|went|taken|"
            "wheeled off|collected)(?: off| down| over| out)* for PLACE"
        ),
        (
            "(?:PLACE|porter|porters|the porter|transport|transporters|orderly|ward boy)(?: have| "
            "has| team| staff| just)* (?:picked up|collected|took|fetched|taken|came for|came and "
            "took|come for|got) (?:PATIENT (?:in|from|of) )?(?:B|N)(?: (?:to|for) PLACE)?"
        ),
        (
            "(?:WHO )?(?:sent|took|shifted|wheeled) (?:PATIENT (?:in|from|of) )?(?:B|N)(?: down| "
            "over| off)* (?:to|for) PLACE"
        ),
        "(?:off|gone|out) (?:to|for) PLACE (?::|-|is|=)? ?(?:B|N)",
    ),
    "back": (
        (
            "(?:PATIENT )?(?:(?:in|of|from) )?(?:B|N)(?: has| is| was| just| been| 's| got| now| "
            "come| came| safely)* (?:back|returned|back again|arrived back)(?: now| here| again| "
            "safely)*(?: from PLACE)?(?: (?:on|in|to|with) (?:the |our )?(?:ward|unit|floor|bed|room|"
            "his room|her room|us))?"
        ),
        (
            "(?:back|returned|just back|received back|received|arrived back) from PLACE(?: :| -| is| "
            ",)? (?:PATIENT (?:in|from|of) )?(?:B|N)"
        ),
        "(?:got|received) (?:PATIENT (?:in|from|of) )?(?:B|N) back(?: from PLACE)?",
    ),
}
# fmt: on
