"""What went wrong with a drain; phrases as in `cues`."""

from __future__ import annotations

from .nouns import BOX, THE, TUBE

# fmt: off

INCIDENTS: dict[str, tuple[str, ...]] = {
    "what:tipped": (
        f"{BOX} (fell|fallen|dropped|knocked) off (the|) (bed|bed rail|rail|bedrail|hook|stand|pole|chair)",
        (
            "(fell|fallen|dropped|knocked|got knocked|was knocked) off (the|its|) "
            "(hook|stand|hanger|bed rail|bedrail|rail|pole)"
        ),
        "(lying|laying|found|ended up|over) on the floor",
        "(was|is|lying|laying|found|landed|ended up|knocked|) (flat|) on (its|it's|the) side",
        f"(kicked|knocked|tipped|pushed|turned|tripped|flipped) {THE} {BOX} (over|down|sideways|on its side)",
        f"{BOX} went over", "went over on its side",
        "tipped", "tipped over", "knocked over", "kicked over", "fell over", "toppled",
        "tipped on its side", "spilled", "knocked down", "fell on its side", "toppled over",
        "tipped it", "got knocked over", "got kicked over", "knocked", "kicked", "overturned",
        "turned over", "tip over", "was knocked over", "was kicked over", "got tipped",
        "(got|been|is|was|has been) (tipped|pushed|bumped|toppled|flipped|turned) over",
        "fallen over", "upside down", "knocked it over",
        "kicked it over", "tipped sideways", "flipped over", "tripped over", "fell to the floor", "dropped",
        "fell", "spilt",
    ),
    "what:damaged": (
        "cracked", "broken", "damaged", "smashed", "crack in", "leaking fluid", "broke", "crack",
        "has a crack", "is cracked", "punctured", "shattered", "leaking from canister",
        "leaking on the floor", "split", "canister leaking", "canister is leaking", "box leaking",
        "box is leaking", "busted", "defective",
    ),
    "what:disconnected": (
        "(blown|pushed) apart", "connector (came|popped|fell|slipped|has come) (off|apart|undone)",
        (
            "(came|come|popped|slipped|slid|fell|pulled) off (the|) (connector|connection|adapter|adaptor|"
            "canister|drain|box|unit|chest drain)"
        ),
        f"{TUBE} (was|got|is|has|) (pulled|kicked|knocked|yanked|tugged|come|came) (apart|loose)",
        (
            "(kicked|pulled|came|knocked|yanked|popped|slipped|fell|tugged|got pulled|got yanked|has "
            "come|come|coming) (apart|loose)"
        ),
        "disconnected", "tubing off", "tubing came off", "disconnection",
        "popped off", "came disconnected", "came unhooked", "unhooked", "tubing disconnected",
        "got disconnected", "tubing came apart", "tube disconnected", "tubing popped off",
        "tubing came loose", "tube came off the canister", "tube came off the drain", "separated",
        "connection came apart", "tubing is off", "became disconnected", "tube came off",
        "became unhooked", "tubing fell off", "detached", "unattached",
        "come disconnected",
    ),
    "what:dislodged": (
        f"{TUBE} (has|is|) (coming|come|came|slid|slipped) out "
        "(a bit|a little|slightly|partly|some|a few cm)",
        "(it|its|it's) (come|came|slid|slipped) out (a bit|a little|slightly|a few cm)",
        f"{TUBE} (has|just|has just|) (come|came|fell|fallen|slid|slipped|popped) "
        "(right|all the way|completely|clean|totally|straight|fully) out",
        "(tube|chest tube|drain|chest drain|pigtail) (just|has|has just) (come|came|fallen|fell|slid) out",
        "(tube|chest tube|ct|drain|chest drain|pigtail) (has|just|) (come|came|fell|slid|slipped|popped) "
        "(right|all the way|completely|straight|fully|) out of (his|her|the) (chest|side)",
        "(tube|drain|it) (is|was|came|) out by accident",
        "(tube|drain|it) (got|was) (pulled|yanked) (out|) (by accident|by mistake|accidentally)",
        f"{TUBE} (is|was|) (completely|all the way|fully|totally) out",
        "dislodged", "fell out", "(tube|chest tube|drain|chest drain|pigtail) fallen out",
        f"(pulled|yanked|ripped|took|pulling|pulls|tore) (his|her|their|) own {TUBE} (out|)",
        f"(pulled|yanked|ripped|took|tore) out (his|her|their|) own {TUBE}",
        f"(yanked|ripped|tore) {THE} {TUBE} out",
        "pulled the tube out", "tube fell out",
        "pulled (his|her) (chest tube|chest drain|drain|tube|pigtail) (out|)",
        "chest tube fell out", "pulled it out", "accidentally pulled", "accidentally removed",
        "(got|was|been|) (pulled|ripped|yanked|knocked|dragged) out by "
        "(accident|mistake|himself|herself|pt|patient)",
        "(tube|chest tube|ct|drain|chest drain) (got|was|been|) (pulled|ripped|yanked) out by "
        "(accident|mistake)",
        "accidentally came out", "tube slipped out", "slipped out", "pulled out",
        "pulled out (his|her) (chest drain|drain|pigtail)", "patient pulled", "pt pulled",
        "patient pulled out", "pt pulled out", "pulled own",
        "removed his own drain", "removed her own drain", "removed his own tube", "removed her own tube",
        "removed his own chest tube", "removed her own chest tube", "removed own drain", "removed own tube",
        "removed his own chest drain", "removed her own chest drain", "self removed", "yanked", "yanked out",
        "came out accidentally", "accidental removal", "tube came out", "migrated", "chest tube came out",
        "(partway|part way|part of the way) out",
        "partially out", "halfway out", "half out", "coming out", "partly out", "drain fell out",
        "accidentally dislodged", "accidentally pulled out", "pulled by patient", "got pulled out",
        "drain came out", "patient removed", "pt removed", "ripped out", "slid out",
        "patient pulled out chest tube", "pulled out his chest tube", "pulled out her chest tube",
        "pulled out his tube", "pulled out her tube", "pulled out the chest tube", "pulled out the tube",
        "patient pulled the tube", "patient pulled tube", "pt pulled tube", "popped out",
    ),
    "what:raised": (
        (
            "(hang|hung|put|lifted|held|carried) (the|his|her|) (drain|box|canister|it) (above|higher than) "
            "(the|his|her|) chest"
        ),
        "(hanging|hung|hangs|hooked|up|) (up|) (on|from|off) (the|his|her|an|) (iv|drip|) (pole|stand)",
        "(above|higher than) (the|his|her|their|patient's|pt's|pts|) (chest|heart) (level|height|)",
        "lifted", "raised",
        "above the patient", "lifted above", "raised above the chest",
        "lifted above the chest", "above the level of the chest", "raised above chest",
        "lifted above chest", "above bed level",
        "raised above chest level", "up on the bed", "lifted up", "on top of the bed",
        "was above the chest", "put on the bed", "hung up high",
    ),
    "what:clamped": (
        (
            "(clamped|tube clamped|drain clamped) for (transfer|transport|the transfer|theatre|theater|"
            "ct|mri|xray|the move)"
        ),
        "clamped", "clamp on", "clamp trial", "clamp applied", "clamping", "tube clamped",
        "clamp trial (started|start|begun|commenced)",
        "clamped the tube", "clamped off", "clamped for", "clamp", "is clamped",
        "now clamped", "clamp closed", "clamped tube", "clamp the tube", "on a clamp trial",
        "clamp trial on",
    ),
    "what:unclamped": (
        "(open|opened|opening) (the|) clamp", "clamp (was|is|) (opened|open)",
        "unclamped", "clamp off", "clamp removed", "clamp released", "un clamped", "un-clamped",
        "clamp trial over", "clamp opened", "clamp is off", "no longer clamped", "released the clamp",
        "removed the clamp", "took the clamp off", "clamp open", "clamp taken off", "took off the clamp",
        "opened the clamp", "unclamp", "unclamping", "clamp trial ended", "clamp trial done",
        "released clamp", "clamp came off", "clamp has been removed", "off clamp", "clamp trial finished",
    ),
    "what:kinked": (
        "kink", "kinked", "kinked tubing", "tubing kinked", "bent tubing", "kinks", "twisted", "kinking",
        "pinched", "tubing bent", "tube kinked", "kink in tubing", "dependent loop", "tubing was kinked",
        "kink in the tubing", "a kink in the tubing", "tubing pinched", "bent tube",
    ),
    "what:suction_off": (
        "suction had been (switched|turned) off",
        "(came|got|was|been|is|) (unplugged|unhooked) from (the|) (suction|wall suction|wall)",
        "(unplugged|unhooked|disconnected|pulled out) (the|) (wall|) suction",
        "wall suction (got|was|) (unplugged|disconnected)",
        "(suction|sxn) (came|got|was|has come|is) (unplugged|unhooked|disconnected)",
        (
            "(suction|wall|suction regulator|wall regulator|regulator|wall suction) "
            "(is|was|been|got|found|has been) (turned|switched|knocked|accidentally|) off"
        ),
        "suction (tubing|tube|hose|line) (fell|came|popped|is|was|) off (the|) (wall|regulator|)",
        "(suction|wall suction|sxn) (turned|switched|knocked|accidentally|) off",
        "sxn (is|was|been|got|found|has been) (turned|switched|knocked|accidentally|) off",
        "regulator turned off", "regulator switched off", "wall turned off", "wall suction turned off",
        "vacuum turned off", "regulator knocked off",
        "(suction|sxn) (dc'd|d/c'd|d/c|discontinued)",
        "suction came off", "found off suction", "found suction off", "turned off suction",
        "suction disconnected", "turned suction off", "turned the suction off", "turned off the suction",
        "suction stopped", "suction lost", "lost (the|his|her|its|) suction",
        "taken off suction", "took off suction",
        "suction had been turned off",
        "suction went off", "suction shut off", "suction tubing disconnected", "taken off of suction",
        "suction not working", "suction unplugged", "came off suction",
        "shut off suction", "suction failed", "suction not on",
    ),
    "what:suction_on": (
        "(hooked|connected|plugged) (back|) up to (wall|) suction",
        "(hooked|connected) back (up|) to (wall|) suction",
        "(started on|attached to) suction", "connected to wall suction",
        "(turned|switched|put|hooked|plugged|) back on", "(restarted|resumed|reconnected) again",
        "suction on", "suction back on", "suction turned on", "turned on suction", "suction is on",
        "suction is back on", "back (on|to) (the|) (wall|) suction", "suction restarted",
        "put back on suction",
        "turned suction on", "turned the suction on", "turned suction back on", "turned on the suction",
        "suction turned back on", "suction resumed", "resumed suction", "suction reconnected",
        "placed back on suction", "suction restored", "returned to suction", "suction now on",
        "suction was turned back on", "reconnected suction", "suction working again", "suction started",
        "started suction", "placed on suction", "put on suction", "connected to suction",
        "hooked up to suction", "hooked to suction", "reconnected to suction",
    ),
    "nothing": (
        "nothing (new|else|) to report",
        "dressing (is|looks|remains|) (clean|dry|intact|clean and dry|dry and intact|clean dry and intact)",
        "(up|sat|sitting|back|) in (a|the|his|her|) (shower|commode|bath|toilet) chair",
        "(no|without|nil|w/o) (any|) (issues|issue|problems|problem|probs|concerns|complications|incident)",
        "(raised|lifted) (the|his|her) (bed|head of bed|head of the bed|hob|bed rails|legs)",
        "(disconnected|unhooked) (the|from the|from|) (monitor|iv|pump|foley|feed|ventilator|telemetry)",
        "nothing (is|was|got|) (kinked|clamped|disconnected|tipped|loose|damaged)",
        "no kinks", "not kinked", "not clamped", "no kink", "not tipped", "not disconnected",
        "not dislodged", "no kinks or clots", "intact", "no dependent loops", "upright", "secure",
        "no clamps", "unkinked", "no kinking", "patent", "not damaged", "not broken", "not leaking",
        "no clots", "no kinks noted", "below chest", "below the chest", "below chest level",
        "without kinks", "kink fixed", "kink free", "free of kinks",
        "clean dry and intact", "dry and intact", "isn't kinked", "isn't clamped",
        "wasn't clamped", "wasn't tipped", "hasn't tipped", "never tipped",
    ),
}
# fmt: on
