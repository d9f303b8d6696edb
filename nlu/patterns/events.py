"""What happened to a drain, and what is said of a message; phrases as in `cues`."""

from __future__ import annotations

from .nouns import BE, BOX, CAN, ELSEWHERE, OUT, PROVIDER, THE, TUBE

# fmt: off

EVENTS: dict[str, tuple[str, ...]] = {
    "kind:placed": (
        "did (a|an|another) (new|) (left|right|) (chest tube|chest drain|pigtail|tube|drain|icd) (on|in|for)",
        f"{TUBE} {BE} (just|) sited", f"sited {THE} {TUBE}", "(new|fresh) (chest |)drains",
        (
            f"(put|placed|inserted|popped) (a|an|in a|) (new|second|) (left|right|mediastinal|apical|basal|"
            f"pleural|) {TUBE} in"
        ),
        f"(put|placed|popped) in (a|) (left|right|mediastinal|apical|basal|pleural) {TUBE}",
        f"new {TUBE}", f"(new|) {TUBE} (was|is|has been|just|been|) (placed|inserted|put in|going in)",
        f"(placed|inserted) {THE} (new|) {TUBE}", "inserted",
        "tube placement", "chest tube placement", "chest tube insertion", f"fresh {TUBE}",
        f"(got|has|have) a new {TUBE}", "placed", f"put in a (new|) {TUBE}", "insertion",
        "got a chest tube", f"had a {TUBE} (placed|inserted|put in)",
        "(tube|chest tube|drain|chest drain|pigtail|icd) went (in|into)",
        "insertion of chest tube", f"(another|second|2nd) {TUBE}", f"a second {TUBE}",
        "came back with a chest tube", "came with a chest tube", "newly placed", "reinserted",
        "(icd|icc|chest tube|chest drain|intercostal drain) put (for|in)",
        "drain placement", f"started {THE} new {TUBE}", f"{TUBE} just went in",
    ),
    "kind:exchanged": (
        "(changed|swapped|replaced|switched|exchanged) it (out|over|)",
        "(change|exchange|swap) of (canister|box|chamber|bottle|drain)",
        (
            f"(changed|swapped|exchanged|replaced|switched|change|swap|swapping|changing|switch|replacing|"
            f"exchange|exchanging|switching|changed over) (out|) {THE} (old|full|new|) "
            f"{CAN}"
        ),
        f"(changed|swapped|exchanged|replaced|switched) (the|) (left|right|mediastinal) {BOX}",
        f"(changed|swapped|switched|change|swap|swapping|changing) (out|over|) to {THE} (new|fresh) {CAN}",
        (
            f"{CAN} {BE} (just|) (changed|swapped|exchanged|replaced|switched|changed out|swapped out|"
            f"switched out|exchange|change|swap|replacement|changeout)"
        ),
        (
            f"(new|fresh) {CAN} (was|) (on|up|hung|connected|hooked up|applied|placed|set up|in place|"
            f"started|attached|at|)"
        ),
        (
            f"{BOX} (was|is|has been|got|) (swapped|changed|exchanged|replaced|switched) (out|) "
            "(for|with) a (new|fresh) (one|canister|box)"
        ),
        "(new|fresh) one (on|up|connected|hooked up|attached)",
        (
            "(hung|hooked|hooked up|connected|put on|put up|set up|started|attached|applied|got) (a|"
            "the|) (new|fresh) "
            f"{BOX} (up|on|)"
        ),
        "(changed|switched|swapped) to a (new|fresh) one",
        f"(changed|swapped|switched) {THE} {CAN} (over|out)",
        "so changed it", "changed it at", "exchanged", "exchange",
        "exchange done", "swap done", "swapped out", "changed out", "swapped",
    ),
    "kind:removed": (
        (
            f"{TUBE} {BE} (now|just|) (out|removed|pulled|discontinued|dc'd|dcd|d/c'd|d/cd|dc'ed|taken out|"
            f"d / c'd|dced|dc|d/c)"
        ),
        (
            f"(removed|pulled|discontinued|dc'd|dcd|d/c'd|took out|taking out|removing|pulling) {THE} (left|"
            f"right|mediastinal|) {TUBE}"
        ),
        f"removal of {THE} {TUBE}", f"{TUBE} removal", f"{TUBE} came out at", "removed", "discontinued",
        "dc'd", "d/c'd", f"{TUBE} (got|was|has been) pulled", "pulled at", "is out", "was pulled",
        f"{TUBE} got (removed|taken out)",
        "tube's out", "pulled", "extubated chest tube",
        (
            f"(md|doc|doctor|surgeon|pa|np|team|resident|provider|dr|surgery) (removed|pulled|took out|"
            f"discontinued|dc'd) (the|) (left|right|mediastinal|) {TUBE}"
        ),
    ),
    "kind:moved": (
        "now in", "(gone|taken|sent) over to (bed|room)",
        "(tx|trf|trf'd|tx'd) to",
        "moved to", "moved from", "moved into", "moved over to", "transferred to bed", "is now in bed",
        "now in bed", "moved", "relocated to", "went to bed", "is now bed", "now bed", "is now in",
        "is now in room", "now in room", "moving to", "swapped beds to", "changed beds to",
        "transferred to room", "moved to bed", "moved to room", "is moving to", "has moved to",
        "has been moved to", "was moved to", "got moved to", "been moved to", "went to room",
        "transferred to", "relocated", "switched to bed",
        "transferred from", "moved from bed", "transferred over to", "moving into",
        "moving over to", "transferred into",
        "(move|shift|transfer|moved|shifted|transferred) (beds|rooms)", "shifted", "transferred",
        "move", "transfer",
        "(changed|swapped|switched) (beds|rooms)", "(move|shift|transfer|shifted) to (bed|room|)",
        "(now|gone|went) over to (bed|room)",
    ),
    "kind:away": (
        f"(off|went|gone|going|taken|sent|down|up|over|out) (down|up|over|off|) (for|to) {OUT}",
        f"(down|up|over|now|currently|is|still|) in {OUT}",
        f"(down|up|over|out|off|still|currently) at {OUT}",
        (
            "(off|gone|went|going|down|taken|headed|sent|shifted) (to|for) (the|) (ot|or|procedure room|"
            "endoscopy|angio|angiogram)"
        ),
        "at ct", "to ct",
        "to ct scan", "off the unit", "off unit", "off the floor", "off floor",
        "off ward", "off the ward",
        (
            "(off|gone|went|going|down|taken|headed|left|sent|on the way|out|back|) to (the|) (or|theatre|"
            "theater|mri|xray|x-ray|x ray|radiology|cath lab|surgery|dialysis|ir|endo|echo|scan|ultrasound|"
            "imaging|procedure|pet|nuclear medicine|operating room|bronch|bronchoscopy|ir suite|angio|nuc "
            "med)"
        ),
        "in (the|) (or|theatre|theater|mri|xray|radiology|cath lab|surgery|dialysis|ir|operating room)",
        "for (a|) (scan|ct scan|procedure|mri|xray|x-ray|chest xray|cxr|bronch|echo|ct)", "away",
        "headed to ct",
        "left for ct", "on the way to ct", "off to", "gone to", "gone down to", "down for",
        "travelling", "traveling", "on a road trip", "road trip", "left for or", "left to ct",
        "out of the unit for", "out of unit", "left for the or",
        "left for (theatre|theater|mri|surgery|dialysis|ir|cath lab|radiology|xray|a scan|scan|procedure)",
        "off for", "leaving for ct", "leaving for", "out for", "away at", "away to", "away in",
        "to (the|) cat scan",
    ),
    "kind:back": (
        (
            "(back|is back|returned|has returned|came back|come back|has come back|just back|now back|"
            f"got back|'s back|back up|just come back|has just come back|arrived back|home) from {OUT}"
        ),
        "back",
        (
            "(back|returned|'s back|is back|now back|just back|came back|got back|home) (up|) from (the|) "
            "(or|theatre|theater|ot|ct|mri|xray|x-ray|radiology|surgery|ir|cath lab|dialysis|procedure|scan|"
            "endo|endoscopy|echo|angio|ultrasound|imaging|test)"
        ),
        "back (upstairs|downstairs|up here|with us|in his room|in her room)",
        "back from", "back on unit", "back on the unit", "is back", "returned", "back in bed",
        "back in room", "is back from", "returned from", "back to unit", "back to the unit",
        "back on the floor", "back to floor", "now back", "came back from", "came back", "back on the ward",
        "back on ward", "back to bed", "back to the floor", "back now", "back to room", "returned to unit",
        "returned to the unit", "back on floor", "just got back", "got back", "back to ward",
        "returned to bed", "is back on the unit", "is back on unit", "back to the ward", "arrived back",
        "has returned", "is back in", "'s back", "back up from", "is back in bed",
        "'s back from", "has come back", "returned to room", "got back from", "is now back", "just back",
        "just back from", "and back",
    ),
    "kind:left": (
        "(transferred|moved|gone|went|sent|shifted|taken|stepped|wheeled) (out|over|down|up|off|) to "
        f"{ELSEWHERE}",
        "left for (rehab|hospice|a nursing home|the nursing home|a care home|another hospital)",
        "signed out (ama|against medical advice)",
        "(discharged|dc'd|dcd|d/c'd|sent|went|gone) (back|) to (a|the|) "
        "(rehab|snf|nursing home|care home|hospice|home|facility)",
        "rip", "r.i.p", "died", "discharged against (medical|) advice", "dama", "self discharged",
        (
            "(transferred|moved|gone|went|sent) (to|over to) (picu|nicu|ccu|cvicu|sicu|micu|cticu|the "
            "picu|the hdu|the itu)"
        ),
        "(shifted|transferred|moved) out (to|)",
        (
            "(transferred|moved|gone|went|sent|stepped down|stepped up) (to|to the|over to) (icu|itu|"
            "hdu|intensive care|"
            "high dependency|critical care|stepdown|another ward|another unit)"
        ),
        "(pt |patient |)left (ama|against medical advice)",
        f"(tx|tx'd|txd|trf|trf'd) (out|) to {ELSEWHERE}", f"(tx|trf) {ELSEWHERE}",
        "discharged", "went home", "passed away", "expired", "deceased",
        "left the unit", "gone home", "has left", "has died", "has passed", "discharged home", "passed",
        "transferred off", "transferred off the unit", "transferred off unit", "left for home",
        "left the hospital", "is gone", "was discharged", "dc'd home",
        "d/c'd home", "dcd home", "dc'ed home", "sent home", "has gone home", "transferred to rehab",
        "to (icu|itu|hdu|sdu|picu|ccu)", "left the ward",
        "patient left", "pt left", "coded and died", "transferred elsewhere", "transferred to hospice",
        "stepped down to ward", "stepped down to level", "transferred to level", "gone to level",
        "sent to level", "moved to level", "gone to unit", "transferred to unit", "moved to unit",
        "discharged to ward",
        "sent to the other hospital", "transferred to the other hospital", "gone to the other hospital",
        "absconded", "eloped", "lama", "l a m a", "d a m a", "signed himself out", "signed herself out",
        "going home", "moved off unit", "moved off the unit", "transfer out",
        "discharged today", "left the floor", "was transferred out", "demised",
        "(discharge|dc|d/c) (home|to home|to rehab)",
        "(transferred|moved|sent|discharged|gone|went) (out|) to another (hospital|facility|floor|unit|ward)",
        "has been discharged", "(was|is|got|been) discharged home",
    ),
    "kind:corrected": (
        "correct", "correction", "corr", "fix", "should be", "s/b", "should have been",
        "should have (put|said|gone to|gone on|gone in)",
        "should read", "should say",
        "instead of", "rather than", "make the", "correct that", "correct the", "amend the", "make that",
        "make it", "i meant",
        "meant", "change the", "change that", "was wrong", "is wrong", "corrected", "correcting", "wrong",
        "(was|is) a (typo|mistake)",
        "actually was", "was actually", "is actually", "was supposed to be", "typo", "wrong mark",
        "digits swapped", "digits transposed", "digits reversed", "digits mixed up", "digits back to front",
        "swapped the digits", "transposed the digits", "mixed up the digits",
        "fat fingered", "fat fingers", "fat finger", "finger slipped", "a slip of the finger",
        "mark was wrong", "fix that", "fix the", "change", "correct to", "should've been", "amend",
        "to correct", "edit", "update", "revise", "wrong bed", "wrong time", "wrong tube", "was really",
        "need to correct", "please correct", "that was", "should have read", "that should be",
        "it should be", "that should have been", "wrong number", "error", "in error", "mistyped",
        "supposed to be", "(was|) supposed to (say|read)",
        "entered wrong", "charted wrong",
        "that should read", "i need to correct",
        "has to be", "my mistake", "actually", "really", "amendment", "rectify",
    ),
    "kind:withdrawn": (
        "(dont|don't|do not) (chart|record|log) (my|the|that) last (line|mark|reading)",
        "(line|mark|reading|entry|it|that|this|one) (never|didn't|didnt|did not) happen(ed|)",
        "(never|didn't|didnt|did not) happen(ed|) (delete|remove|cancel|void|scrap|scratch) (it|that|)",
        (
            "(delete|cancel|void|remove|undo|scratch|disregard|ignore|erase|drop|withdraw|bin) (my|"
            "the|that|) last "
            "(msg|message|text|entry|line|mark|reading|one)"
        ), "(remove|delete|bin|scrap) it",
        "(wipe|wiped|take|rub) (out|off) (the|that|my)", "scratch that", "delete", "cancel", "undo", "strike",
        "take back", "ignore", "disregard", "void",
        "scrap", "erase", "forget that", "delete that", "cancel that", "ignore that", "disregard that",
        "undo that", "strike that", "never mind", "nevermind", "take that back", "scratch the",
        "delete the", "cancel the", "remove the", "withdraw", "retract", "ignore the", "disregard the",
        "scratch", "scrap that", "withdraw that", "undo the", "undo last", "delete last", "cancel last",
        "scratch last", "forget the", "forget it", "nvm", "remove that", "remove last", "erase that",
        "erase the", "take back the",
        "(take|pull) (out|back) (my|the|that) last (entry|line|mark|reading|one|message|msg)",
        "strike the", "void the", "void that", "withdraw the",
        "retract that", "retract the", "scrap the", "remove my last", "delete my last", "cancel my last",
        "(take|pull) out what",
        "get rid of", "disregard last", "ignore last", "ignore my last", "disregard my last",
        "undo my last", "scratch my last", "take it back",
    ),
    "kind:acknowledged": (
        "(saw|seen|got|read) (the|that|your|this) (alert|message|msg|warning|notice|caution)",
        "chart (fixed|updated|put right)",
        "seen", "noted", "(thanks|ta|cheers|ok thanks) noted", "noted (thanks|ta|cheers|thank you)",
        "acknowledged", "ack", "acknowledge", "amended", "got it", "chart amended",
        "i amended", "ok seen", "roger", "copy that", "amended the chart", "amendment made",
        "amended chart", "saw it", "chart corrected", "ackd", "understood", "will do", "seen it",
        "saw that", "copy", "seen that", "i have amended", "have amended", "ack'd", "ok noted",
        "chart has been amended", "i've amended", "amend done", "amended in chart", "i saw it",
        "i saw that", "aware",
    ),
    "kind:help": (
        "what (kind|kinds|sort|sorts|type|types) of (things|stuff|messages|questions|texts) (can|could|do) "
        "(you|u|i|we) (do|send|ask|say|text|understand|take|)",
        "what commands (are there|do you have|can i use)",
        "help", "how does this work", "what can you do", "commands", "instructions", "how do i use this",
        "help me", "what can i say", "what can i text", "how do you work", "how to use", "how do i use you",
        "menu", "options", "what can i ask", "(what|wat) can i ask (you|u)", "help please",
        "how does it work", "what do i text",
        "how do i do this", "examples", "what do i say", "how do i text you", "how do i log a mark",
        "how do i enter a mark", "how do i correct a mark", "need help", "i need help",
        "what do you understand", "how can i use this", "how do i send a mark", "how should i text",
        "what are the commands",
    ),
    "howto": (
        (
            "how (do|can|should|would) (i|we|you) (chart|log|enter|record|report|text|mark|correct|delete|"
            "undo|fix|change|tell|write|send|say|put)"
        ),
        "how to (chart|log|enter|record|report|text|mark|correct|delete|undo|fix|change|tell|write|send|say)",
    ),
    "order": (
        (
            "(reg|registrar|spr|sho|consultant|surgical reg|surgical team|surgeons|thoracics|ct surgery|"
            "thoracic surgery|cards|attending|fellow) (wants|want|ordered|said|says|asked for)"
        ),
        (
            f"{PROVIDER} (has|have|is|are|just|now|) (requested|requesting|asking for|asked for|wanting|"
            "wants|wanted|ordered|prescribed)"
        ),
        f"{PROVIDER} (would like|would prefer)",
        "orders say", "order says",
        "ordered", "order", "orders", "verbal order", "verbal orders", "phone order", "telephone order",
        "per md", "per order", "new order", "order for", "order is", "new orders",
        "order changed to", "orders for", "provider order", "order changed",
        "per provider",
        "per doctor", "per surgeon", "order to", "prescribed", "md order", "doctor's order",
        "provider's order", "md says", "surgeon says", "orders to", "ordered to",
        "per surgery",
    ),
    "order:suction": (
        "(new|) suction (order|orders) (is|for|of|at|changed to|)",
        "suction (is|was|) ordered (at|as|to be|)",
    ),
    "old:canister": (
        "prev (canister|box|chamber|bottle|drain|unit) (total|level|final|)",
        f"(final|last|) (level|reading) (of|on|in) (the|) old {CAN}",
        f"(old|previous) {CAN} (final|level|)",
        f"old {CAN} (was|at|read|had|finished at|finished on|was at)",
        "(final level of the old one|old one finished at|old one ended at|old one closed at|old one final)",
    ),
    "old": (
        "full at", "was full at", "was full", "it was full",
        "(prev|previous) (was|one|one was|at|)",
        "out of old",
        "old one", "old canister", "old", "final", "final level", "old one at", "old box", "last level",
        "closed at", "old was", "old one was", "final mark", "final reading", "final output", "old level",
        "final was", "the old one", "old one had", "old one read", "old canister at", "old one final",
        "old final", "final line", "last reading on old", "final at", "old at", "old system", "old chamber",
        "old unit", "old bottle", "old drain", "at removal", "final of", "old canister final",
        "at (the|) time of removal",
        "old canister level", "final level of old", "previous canister", "old one ended at",
        "ended at", "old one reads", "old read", "old had", "old canister read", "old canister had",
        "old canister was", "last level was", "final volume", "final total", "finished at", "finished on",
        "full one", "full canister", "old one finished at", "old one closed at", "old canister closed at",
        "final drainage", "final level of the old", "final level of the old one", "discarded at",
        "ended on", "old canister reading", "last line", "final level in old", "final in old",
        "old one marked", "old mark", "old reading", "old line", "level at removal", "with a final of",
        "(dumped|tossed|discarded|binned|emptied|outgoing|disposed|spent|used) (one|canister|box) "
        "(was|had|at|read|is|)",
        "(one|canister|box) (i|we|that i|that we|that was|that got|) (dumped|tossed|discarded|binned|"
        "threw out|thrown out|took down|took off) (was|had|at|read)",
        "with final", "left off at", "stopped at",
    ),
    "new": (
        "new one", "new one at", "new canister at", "new at", "new", "new one is at", "new mark",
        "new level", "new one reads", "new one now at", "new is at", "new box at", "new one now",
        "the new one", "new one marked", "new reading", "new line", "fresh one", "fresh one at",
        "the new one is at", "replacement", "new one is", "new canister is at", "new canister reads",
        "new canister now at", "new canister mark", "new canister marked", "new chamber at",
        "new system at",
    ),
    "opens": (
        "(new|new one|new canister|new box|new chamber|new bottle|) (opened|opens) with",
        "starts at", "starts", "new starts", "new one starts", "new (canister|box|chamber) starts",
        "opened at", "starting at", "opening", "opening level", "started at", "opens at",
        "(new|new one|new canister|new box|new chamber|new bottle) start (at|)",
        "start at", "new one starts at", "new one starting at", "new starts at", "new one opened at",
        "(prefilled|pre filled|primed) (to|with|) (water|saline|)",
        "opening at", "starting level", "new opens at",
        "new canister starts at", "new one opens at", "new canister opened at", "new canister starting at",
        "new opened at", "starts with", "came with", "started with", "primed with", "opening mark",
        "opening line", "starting mark", "starting line",
        "init", "already had", "new one started at", "new started at", "new canister started at", "initial",
        "initial level", "initial output", "initial drainage",
        "initially",
        "already in (it|there|the box|the canister|the new one)", "initial mark",
        "new starting at", "new (one|) starting", "restarted at", "reset to", "primed at",
        "new box starts at",
        "new box opened at", "new box starting at", "initial reading", "with opening", "opening reading",
        "starting from", "fresh one starts at", "fresh one opened at", "beginning at", "begins at",
        "new one begins at", "start level", "new box started at", "new chamber starts at",
    ),
    "opens:behind": (
        "before (connecting|connecting it|hooking up|hooking it up)", "on insertion", "at insertion",
        "to (start|begin) (with|)", "at the (start|beginning)",
    ),
    "change": ("swapped out", "replaced", "changeout", "change out"),
    "empty": ("empty", "is empty", "starts empty", "new and empty"),
    "timeword": (
        "t =", "t :", "as of", "as at", "timed", "timed at",
        "time", "the time", "time was", "time is", "time to", "timing", "hour was",
        "(the|) time (of|for) (the|this|that|) (reading|mark|line|level|check) (is|was|)",
        "(the|) time (read|marked|measured|taken|checked) (is|was|)",
    ),
}
# fmt: on
