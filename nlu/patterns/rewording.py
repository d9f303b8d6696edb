"""How corrections and withdrawals are put in other words, clause by clause.

Used by `reworded`. Capitals stand for what was said: B a bed with its word or letter, N a bare number, L one
in mL, T a whole time, S a side, X any of them; longer ones are words of `WORDS`. What a clause makes of its
values stands before it: `was` is wrong, `now` is right, `told` and `is` may be, `pointed` may be the time of
the line, and the rest says which line.
"""

from __future__ import annotations

# fmt: off

WORDS: dict[str, str] = {
    "WHO": (
        "(?:i|we|i'd|i've|she|he|they|someone|somebody|the student|my student|the tech|the nurse)"
    ),
    "ADV": (
        "(?:just|had|have|first|accidentally|mistakenly|wrongly|stupidly|apparently|already)"
    ),
    "ENT": (
        "(?:said|told you|wrote down|charted it as|had it as|marked|reported it as|called|called "
        "it|labelled|labelled it|filed it as|put it down as|put it as|sent it as|logged it as|"
        "entered it as|typed it as|sent through|sent it for|forwarded|passed on|fed in|inputted|"
        "input|clicked|registered|put|typed|type|wrote|entered|keyed|hit|sent|logged|charted|"
        "recorded|texted|punched|tapped|pressed|selected|picked|submitted|posted|filed|messaged|"
        "reported|gave you|noted|documented|saved)(?: (?:in|down|up|it as|it in as|that as|it|you|"
        "under))?"
    ),
    "INF": (
        "(?:put|type|write|enter|key|hit|send|log|chart|record|text|punch in|tap|press|select|pick|"
        "say|put in|put down|give|note|document)"
    ),
    "SLIP": (
        "(?:in haste|by my error|due to typing error|due to a typo|in a hurry|inadvertently|"
        "erroneously|by oversight|incorrectly|unintentionally|through error|via typo|in confusion|"
        "while tired|by mistake|by accident|by error|in error|mistakenly|wrongly|in mistake|"
        "accidentally|from my side|by my mistake|out of habit|without looking)"
    ),
    "FALSE": (
        "(?:off|inaccurate|a wrong one|a wrong reading|a mistyped one|a misreading|mistaken|bogus|"
        "a bad reading|a fat finger|entered in error|sent in error|an incorrect entry|invalid|not "
        "valid|wrongly entered|wrongly sent|wrongly typed|wrongly charted|charted wrong|charted "
        "wrongly|a keying error|a data entry error|a clerical error|a mistake of mine|my mistake|"
        "my error|my typo|my slip|wrong|incorrect|an error|in error|a mistake|a typo|typo|a slip|"
        "mistyped|misread|a misread|not correct|a misprint|mis-typed|a wrong entry|entered wrongly|"
        "typed wrongly|erroneous|false|a typing error|a typing mistake|not right)"
    ),
    "TRUE": "(?:true|real|actual|correct|proper|accurate|corrected|genuine|exact)",
    "FIG": (
        "(?:reading|level|line|value|figure|number|one|mark|entry|measurement|record|message|text)"
    ),
    "BE": (
        "(?:should've read|should've said|ought to read|ought to say|must read|has to read|needs "
        "to read|shud be|shoud be|shld read|should in fact be|should actually be|should really be|"
        "should now be|should only be|was supposed to read|was supposed to say|is supposed to be|"
        "was to be|ought to have been|should show|should have shown|should have been put as|should "
        "have been entered as|should be read as|should be entered as|should be put as|is to be|is "
        "to read|is meant to be|should be|should read|should say|should have been|should have read|"
        "should have said|should've been|should of been|must be|has to be|needs to be|ought to be|"
        "was supposed to be|was meant to be|was meant to say|supposed to be|s / b|sb|shd be|shld "
        "be|to be)"
    ),
    "IS": (
        "(?:is|was|reads|read|shows|showed|says|said|is really|was really|is actually|was actually|"
        "is in fact|was in fact|is at|was at)"
    ),
    "IT": (
        "(?:this one|that one|it really|it actually|the reading|the mark|the figure|the number|"
        "actual|the value|the entry|correct|it|that|this|which|the canister|the box|the chamber|"
        "the drain|the line|the level|it's|its|that's)"
    ),
    "INSTEAD": (
        "(?:in the place of|and not|as opposed to|on behalf of|instead off|opposed to|instead of|"
        "in place of|rather than|in lieu of|insted of|in stead of)"
    ),
    "TO": "(?:to|by|with|for|into|as|- >|>|=)",
    "FIX": (
        "(?:alter|redo|put right|reset|convert|relabel|re - label|retag|overwrite|adjust|mend|"
        "change|replace|correct|amend|fix|update|edit|modify|rectify|revise|alter|adjust|swap|"
        "switch|substitute)"
    ),
    "POL": "(?:please|pls|plz|kindly|pl|do|can you|could you|would you|can u|may you)",
    "MACHINE": (
        "(?:auto - correct|the app|the screen|my screen|touchscreen|the touchscreen|t9|my keyboard|"
        "swipe|autofilled|voice to text|my fingers|fat fingers|my finger|my glasses|the recogniser|"
        "autocorrect|auto correct|autofill|my phone|phone|the phone|predictive text|spellcheck|my "
        "thumb|thumb|the keyboard|keyboard|siri|dictation)"
    ),
    "MADE": (
        "(?:changed that to|changed to|turned it to|came out as|came out|made that|made it into|"
        "wrote down|logged|swapped it for|switched it to|inserted|picked|filled in|gave you|gave|"
        "changed it to|made it|turned it into|put|sent|sent you|wrote|typed|made that|entered)"
    ),
    "TUBE": (
        "(?:chest tube|chest drain|tube|drain|side|one|ct|icc|pleural|canister|box|side tube|side "
        "drain)"
    ),
    "DEL": (
        "(?:nix|kill|chuck|purge|expunge|reverse|omit|reject|forget|forget about|lose|trash|dump|"
        "rescind|revoke|eliminate|exclude|blank|blank out|strike off|cross off|take back|do away "
        "with|pull back|cancel out|drop out|unsave|unrecord|please don't count|delete|remove|void|"
        "clear|cancel|erase|scrap|scratch|withdraw|retract|strike|strike out|take out|take off|"
        "take down|wipe|bin|drop|discard|undo|get rid of|pull|disregard|ignore|do not count|don't "
        "count|dont count|do not use|don't use|dont use|leave out|throw out|dismiss|nullify|cross "
        "out|take away|rub out|remove from record|remove from the record|delete from record|take "
        "off the record|don't keep|dont keep)"
    ),
    "GONE": (
        "(?:is not valid|not valid|is invalid|invalid|is void|is not to be counted|should not be "
        "there|shouldn't be there|should not count|should be deleted|should be removed|to be "
        "deleted|to be removed|needs to go|needs deleting|needs removing|needs to be deleted|needs "
        "to be removed|can be deleted|can go|is a duplicate|was a duplicate|was a test|is a test)"
    ),
}

CLAUSES: dict[str, tuple[str, ...]] = {
    "was": (
        "WHO (?:ADV )*ENT X(?: SLIP)+", "ENT X SLIP", "SLIP (?:WHO )?ENT X", "SLIP X was sent(?: SLIP)?",
        "X was (?:ENT|sent) SLIP(?: SLIP)?", "(?:it is |it was |is |was |and |it's |its )?not X",
        "(?:it )?never (?:read|was|said) X", "IT (?:isn't|isnt|wasn't|wasnt) X", "(?:is|was) not X",
        "MACHINE MADE X", "(?:when|where|but|though|although|because) WHO (?:ADV )*ENT X",
        "not (?:at|for|on|in) X", "WHO misread(?: it)? as X", "WHO read it as X",
        (
            "(?:SLIP |was |got |it was |that was |been |had been )+(?:given|entered|sent|put|typed|"
            "recorded|charted|logged|saved|keyed|noted)(?: in| down)?(?: as| to| under| for| at) X"
        ),
        "(?:and|then|but) (?:ADV )*ENT X",
        (
            "(?:you have|you've got|you've|system has|it has|the log has|the log says|log shows|it "
            "shows up|it went in|it went through)(?: it| that| this)?(?: as| at| under| down as) X"
        ),
        "what WHO (?:called|labelled|named|said was) X", "WHO (?:read|looked at|saw)(?: it)? wrongly as X",
    ),
    "told": (
        "(?:and |as )?WHO (?:ADV )*ENT X", "you have X", "you've got X",
    ),
    "pointed": (
        "(?:(?:the|my|that|of|FIG) )*X (?:FIG )?(?:was|is) FALSE", "X FALSE", "FALSE X",
    ),
    "now": (
        "(?:IT )?BE X",
        (
            "(?:but |and )?(?:WHO )?(?:really |actually )?(?:meant|mean|intended|wanted|tried)(?: to "
            "INF)?(?: it)?(?: for)? X"
        ),
        "X is what WHO (?:meant|wanted|intended)", "X is (?:correct|the correct one|the real one)",
        "(?:but |and )?(?:the )?TRUE FIG (?:IS |BE |: |= )?X", "(?:but |and )?TRUE (?:is|was|:|=) X",
        "(?:POL )?(?:take|use|make it|make that|consider) (?:it as )?X",
        "(?:POL )?FIX (?:it |that |this )?(?:to|as) X", r"\* X", "(?:actually|really|in fact|rather) X",
        "X actually", "but X",
        "it was X WHO (?:was|were) (?:looking at|reading|at|in|with|checking|seeing)",
        "(?:belongs to|goes to|goes with|should go to|should be under|was meant for) X",
        "(?:was |is )?(?:seen|taken|read|done|measured|drawn|noted|marked|checked|really) at X", "TRUE X",
        "(?:but |and )?(?:the )?TRUE (?:time|bed|room|side|tube|one)(?: is| was| =| :)? X",
        (
            "(?:WHO )?(?:took|read|did|marked|checked|drew|saw|measured) (?:it|that|this|the line|"
            "the reading)(?: in fact| actually| really)? at X"
        ),
        "(?:POL )?put X as the (?:time|bed|reading|level)(?: for| of| on)?",
        "(?:POL )?(?:make|call|count) (?:it|that|this)(?: as)? X", "is X really",
        "(?:it |that |this )?(?:was|is) (?:really|actually|in fact|truly|in reality|correctly) X",
        "in reality X", "in fact it (?:is|was) X",
        "(?:POL )?(?:correct|change|amend|fix|set) (?:it |that )?(?:back )?to X",
    ),
    "is": (
        "(?:but |and )?IT (?:IS )?X", "(?:IS|was for|is for|was from|came from) X", "it is X only",
        "(?:but |and )?IT (?:IS )?X only", "(?:is|are) (?:only )?X",
        "(?:POL )?(?:put|read|mark) (?:it as )?X",
    ),
    "to": (
        "(?:to|under|onto|on to|against|over to|into) (?:the )?(?:B|N)", "to T",
    ),
    "was now": (
        "for X (?:read|put|take|use) X", "(?:WHO )?(?:ADV )*ENT X INSTEAD X",
        "ENT X (?:meaning|meant|but meant|, meant|, should be|s / b) X", "not X (?:but|, but|,|-|;) X",
        r"\b(?:from )X - > X",
    ),
    "pointed now": (
        "(?:POL )?FIX (?:the |my )?X TO X", "(?:POL )?FIX from X TO X",
        "(?:(?:the|my|that|of|FIG) )*X (?:FIG )?BE X", "X (?:is|was) (?:really|actually|in fact) X",
        "(?:the |my |that )?X (?:that |which )?WHO (?:ADV )*ENT(?: before| earlier)? BE X",
        "X is (?:a )?(?:typo|mistake|error|misprint) for X",
        (
            "X (?:FIG )?(?:needs changing|needs to change|to change|to be changed|to be corrected|"
            "needs correcting|to be amended) to X"
        ),
    ),
    "now was": (
        "X INSTEAD X", "X (?:, |and )?not X",
        "should (?:have|'ve) (?:ENT|been|said) X (?:not|, not|INSTEAD) X",
        "(?:meant|mean|BE|IT) X (?:, |and )?(?:not|INSTEAD) X",
    ),
    "bed": (
        "(?:for|on|in|of|from) (?:the )?(?:B|N)(?: 's| s)?", "B(?: 's| s| :)?", "^N(?: 's| s| :)?", "N 's",
        "(?:this is|re|regarding|about) (?:B|N)", "(?<= for )N", "(?<= on )N", "(?<= in )N", "(?<= of )N",
        "(?<= from )N",
    ),
    "bare": ("N(?: 's)?",),
    "at": (
        "(?:for |on |of |from |at |@ |at the )?(?:the |my |our |that )?T(?: FIG)?",
        "(?:at|@|timed|from|of the) N",
        "(?:that (?:was|is) )?(?:the |for the |my )?FIG (?:timed|at|from|of|for) T",
        "that (?:was|is) (?:the |for the |my )?T(?: FIG)?", "as of T", "for the T",
        "(?:from )?the T(?: hrs)? FIG(?: on| for| in| of)?", "T FIG(?: on| for| in| of)?", "timed T",
        "done at T", "taken at T", "dated T", "(?:that (?:was|is) )?(?:the |for the |my )?FIG timed N",
    ),
    "named": ("(?:for |of |on )?(?:the |my |our |that )?N FIG",),
    "line": (
        "(?:for |of |on |the |my |that |with |was |is )*L(?: FIG)?",
        (
            "(?:the |my |that )L (?:FIG )?(?:that |which )?WHO (?:ADV )*(?:ENT|sent|gave)(?: before| "
            "earlier| just now)?"
        ),
    ),
    "tube": ("(?:for |on |of |in )?(?:the |my )?S(?: TUBE)*(?: 's)?",),
    "": (
        "POL", "hi", "hello", "thanks", "thank you", "thx", "ta", "actually", "ah", "and", "the", "a",
        "(?:the |my )?(?:last |previous |earlier |same )?FIG",
        "(?:for |on |in |of |with )(?:the |my )?(?:last |previous |earlier )?FIG",
        "(?:POL )?(?:correct|amend|fix|update|rectify|edit)(?: the| my)?(?: FIG)?", "what WHO (?:ADV )*ENT",
        "wait", "no", "no no",
    ),
    "of amount": ("(?:the |my )?(?:canister|box|chamber|bottle)(?: in| on| of| for)?",),
    "of level": (
        (
            "(?:WHO )?(?:have )?(?:swapped|transposed|mixed up|jumbled|reversed|flipped|inverted|"
            "switched|scrambled)(?: the| my)? (?:digits|numbers|figures)"
        ),
        (
            "(?:digits|numbers|figures) (?:were |got |are )?(?:swapped|transposed|mixed up|jumbled|"
            "reversed|flipped|switched|back to front)"
        ),
        (
            "WHO (?:fat - fingered|fat fingered|mistyped|mis - typed|misread|mis - read|miskeyed|"
            "mistapped|messed up|got wrong|fluffed|botched)(?: the| my)?(?: FIG)?(?: on| for| of)?"
        ),
        (
            "(?:fat fingers|fat fingered|fat finger|finger slipped|my finger slipped|butterfingers|"
            "clumsy thumbs)"
        ),
    ),
    "pointing": (
        "(?:the |my |that )?FIG (?:which |that )?WHO (?:ADV )*(?:ENT|gave)(?: for| on| to)?",
        "(?:the|that|my) FIG",
    ),
    "moves": (
        (
            "(?:POL )?(?:reassign|reallocate|re - assign|relabel|refile)(?: the| my)?(?: FIG)?(?: of|"
            " from| for)?"
        ),
        "(?:POL )?(?:move|transfer|shift|switch) (?:the|my|that) FIG(?: of| from| for)?",
    ),
    "slip": (
        "sorry", "so sorry", "apologies", "my apologies", "pardon", "oops", "whoops", "my bad",
        "my mistake", "my error", "my fault", "correction", "corr", "error", "typo", "a typo",
        "typing error", "typing mistake", "mistake", "slip of the finger", "wrong FIG(?: sorry)?", "SLIP",
        "(?:made |there is |there was )(?:a |an )?(?:mistake|error|typo)",
        "(?:WHO )?(?:wrote|put|entered|typed|sent|gave|have given|have sent) (?:the )?wrong FIG",
        "mea culpa", "entered in error", "entered wrong", "entered wrongly", "typed wrong", "typed wrongly",
        "misentered", "mis - entered", "mischarted", "my typo", "my slip", "wrong entry",
        "wrong FIG (?:sent|given|entered|put|typed)", "(?:a )?small correction",
        "need(?:s)? (?:a )?correct(?:ion|ing)", "correction (?:for|on|to|of)", "correction please",
        "need to correct", "want to correct", "WHO (?:need|want|have) to correct(?: the| my)?(?: FIG)?",
        "WHO made (?:a |an )?(?:mistake|error|typo)(?: on| with| in| for)?",
        "(?:embarrassing|silly me|stupid me|duh|doh|argh|ugh|eek|ops|ooops|opps|soz|sry|sori)",
        "wrong FIG(?: on| for| in)?", "kindly note", "please note", "note",
    ),
    "of bed": (
        (
            "(?:POL )?FIX (?:the |my )?(?:bed|room)(?: number| no)?(?: on| of| for)?(?: the| my)?(?: "
            "last)?(?: FIG)?"
        ),
        "wrong (?:bed|room|patient)(?: number| no| num)?",
        "(?:beds|rooms) (?:mixed up|swapped|got mixed up)(?: on| for)?",
        (
            "(?:wrote|put|typed|entered|sent|have) (?:it )?(?:the |on the |under the |in the )?wrong "
            "(?:bed|room)(?: number)?"
        ),
        "(?:mixed|mixing) up (?:the |my )?(?:beds|rooms)",
        "(?:bed|room) (?:number )?(?:mix up|mix - up|error|mistake|typo)",
        "(?:wrong|incorrect) (?:bed|room)(?: chosen| selected| picked| entered| typed)?",
        "(?:wrong|incorrect) (?:bed|room|pt|patient) (?:on|for)",
        "(?:the )?(?:bed|room)(?: number)? (?:is|was) wrong", "got the (?:bed|room)(?: number)? wrong",
        "WHO got the (?:bed|room)(?: number)? wrong", "under the wrong (?:bed|room|patient)",
        (
            "(?:put|sent|logged|entered|charted|went)(?: it| that)? (?:under|on|to|in|for|against) "
            "the wrong (?:bed|room|patient)"
        ),
        "next door", "neighbour", "neighbor",
    ),
    "of side": (
        (
            "(?:sides|tubes|drains|lines) (?:are |were |got |have been )?(?:mixed up|swapped|"
            "reversed|switched|the wrong way round|back to front)(?: on| for)?"
        ),
        "wrong (?:side|tube|drain)",
        (
            "(?:WHO )?(?:mixed up|swapped|confused|switched)(?: the| my| his| her)? (?:sides|tubes|"
            "drains)"
        ),
        "(?:side|tube) (?:mix up|mix - up|error|mistake)",
        "(?:got )?(?:the )?sides (?:wrong|confused|crossed)", "wrong (?:side|tube|drain)(?: on| for| in)?",
        (
            "(?:right and left|left and right|l and r|r and l) (?:confused|swapped|mixed up|reversed|"
            "crossed)"
        ),
    ),
    "of time": (
        (
            "(?:POL )?(?:FIX )?(?:the |my )?(?:time|timing|timings|clock time)(?: stamp)?(?: of| for|"
            " on)?(?: the| my)?(?: last)?(?: FIG)?"
        ),
        "wrong time", "(?:time|timing) (?:error|mistake|typo|wrong|is wrong|was wrong)", "timed wrong",
        "timed wrongly", "mistimed", "(?:WHO )?got the time wrong",
        "WHO (?:wrote|put|entered|logged) (?:it|that)(?: up| in)? late",
        "(?:POL )?(?:backdate|back date|back - date|retime|re - time)",
        "(?:the )?clock (?:was|is) (?:wrong|off|slow|fast)", "(?:correct|right) time", "time (?:is )?off",
        "time on(?: the)?", "with (?:the )?wrong time", "wrong (?:time|hour|timing) (?:on|for)?",
    ),
    "taken back": (
        (
            "(?:POL |so |so please |then )?DEL(?: the| my| that| it)?(?: FIG)?(?: from record| from "
            "the record)?(?: of)?"
        ),
        "(?:IT )?GONE", "(?:so )?(?:POL )?(?:take|wipe|get|strike|cross) (?:it|that) (?:off|out|away)",
        "(?:never|did not|didn't|didnt) happen(?:ed)?",
        (
            "(?:POL )?(?:take|get|pull|wipe|cross) (?:it|that|this|this one|that one) (?:off|out|"
            "away|down)(?: the (?:record|chart|log))?"
        ),
        "(?:POL )?DEL (?:it|that|this|that one|this one|one|one of them)",
        "(?:for|needs|requires|wants) (?:deletion|deleting|removal|removing|cancelling)",
        (
            "(?:should|must|has to|needs to) be (?:deleted|removed|cancelled|voided|struck|withdrawn|"
            "taken out|taken off)"
        ),
        "(?:should|must) (?:not be|never have been) (?:there|in there|sent|entered|charted)",
        "(?:POL )?(?:DEL) (?:the )?FIG (?:of|for|from|at|on)", "off the (?:record|chart|log)",
        "out of the (?:record|chart|log)", "WHO (?:want|need|would like) (?:to )?DEL(?: the| my)?(?: FIG)?",
    ),
    "why taken back": (
        (
            "(?:that|it|this)(?: one)? (?:was|is) (?:only |just )?(?:a |an |the |my |from )?(?:test|"
            "practice|practise|training|duplicate|double|mistake|error|typo|wrong patient|wrong bed|"
            "urine bag|foley|catheter bag|ng|stoma|other drain|jp|vac)(?: WHO (?:read|looked at|"
            "measured))?(?: (?:, )?not (?:the |his |her )?(?:chest drain|chest tube|drain|canister))?"
        ),
        "(?:only|just) (?:a |an )?(?:test|practice|practise|training)",
        (
            "(?:duplicate|double entry|sent twice|wrong patient|test only|entered twice|its a "
            "duplicate)"
        ),
        (
            "WHO (?:read|looked at|measured) (?:the )?(?:urine bag|foley|catheter bag|wrong (?:bag|"
            "box|drain|canister))"
        ),
        (
            "(?:it|that|this)(?: one)? (?:was|is) (?:sent|entered|typed|put|charted|logged|read) (?"
            ":by mistake|in error|twice|wrongly|by accident|for the wrong (?:patient|pt|bed)|from "
            "the wrong (?:box|bag|drain|canister|patient))"
        ),
        (
            "(?:was )?(?:sent|entered|typed|put|charted|logged|read|recorded) (?:by mistake|in error|"
            "twice|wrongly|by accident|for the wrong (?:patient|pt|bed|room)|from the wrong (?:box|"
            "bag|drain|canister|patient|bed)|on the wrong (?:patient|pt|bed|room))"
        ),
        (
            "(?:the |a |my )?(?:student|orientee|trainee|intern|float|tech|aide) (?:entered|sent|put|"
            "typed) it"
        ),
        (
            "(?:it|that) was (?:the |for the |from the )?wrong (?:pt|patient|bed|box|drain|bag|one|"
            "canister|room|tube)"
        ),
        "(?:wrong|another|other) (?:pt|patient|box|drain|bag|canister)",
        "WHO (?:did not|didn't|never) (?:mean|meant) to send(?: it| that)?",
        "(?:because|as|since) (?:it|that) (?:was|is) (?:wrong|a mistake|an error|a duplicate)",
        "not (?:a )?real(?: reading| one)?", "(?:bogus|junk|rubbish|garbage|nonsense)",
        "WHO (?:was|am) (?:only |just )?(?:testing|practising|practicing|training)", "FALSE",
    ),
    "pointed bed now": (
        (
            "(?:the |my |that )?X (?:that |which )?WHO (?:ADV )*ENT (?:for|on|in|under) (?:B|N)(?: "
            "before| earlier)? BE X"
        ),
    ),
    "either": ("(?:that (?:was|is) )?(?:the |for the |my )?FIG (?:at|from|of|for|@) N",),
}
# fmt: on
