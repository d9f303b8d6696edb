"""Common English words that spelling repair would turn into a cue word of another meaning."""

from __future__ import annotations

_WORDS = """
abode abort abound absentee according accounts acre activate actuality addicted additions admin advise
affirmation aiding airing albert alice alien alike alive allotted almighty alone alpine alter angie anglo
annually appalled appeals appeared apron archived arming arteries ascended ascending assure assuring
attacked attacker attained attendant attended attracted atypical augusta augustus avert await awaiting awake
award baden baked ballroom bard basel basil batter battle beads beard beast become believers bends beside
bible bitter blacked blair blight blond bloom blow blows bogus bolts bonus booth brake branch brazen breach
breadth breaking brent brighten brighton broaden brood brooke brown brunch brunt bubbly bustling butter
calamity camel cameo camp camped camping camps cancer cannon capacitor carbs cardigan cardinal cares cart
carts carve caste casually cause cease cello chain champ champs chance chant chanting char charged chargers
charging charm charmed charming chartered charters chase chased chat chatted chatting cheat cheating
checkers cheek cheeks chess chick chicks chile chloe chlorine choir choke choosing chore chose chuck
churning claiming clair clam clams clan clap clapped clapping clare clasp click climbing clinging clinical
clipping cloak clone cloning closet cloth clothing coaching cock codex coding cole collected collecting
collective collects colon colorado coloring colts combs comet comets commanded commander commanders commando
comments conception concerted condo condos conducted conducting conductor cones conferred confined conform
congested congestion consented constance constraint consultancy consulting consumer contacted contacting
contention contestant contested contesting contiguous continue continued continues continuum convection
convention converted converting convicted conviction coping cords cores corrective correlated correlation
corrupted corruption couch count counting coupling courting crackers crafting cramped cramps crank cream
crept crest criminal crossing crushing cultured currency dairy daisy dank dante daring dawn deceptive
defendant defensive defining delegate denis denise denny depended dependence depending depleted depressed
depressing derailed deranged despised detailed detained detected detective detectives devised differed
difference differing diner directive disabled disbanded donor donut doves drafting dragging drama drawings
draws dreaming dredging drink drinking drone drown drowning drugged drumming drunk earliest ease eater edict
edith effected electing elise emery eminence enchanted enchanting energies entities erection escalation
esther eternal ether event examines excavation excise executed executing exhaustion expansion expelled
expert exploded exploration exported exporting extended extensive faced faked famed farmer farther fatality
fated fats feast features feds feeling feelings fees fewer fielding filed files filmed films fined fired
fist flank fleeting flesh flood follow folly fond forge forged formed fran franc franklin franz freed
freezing fund furnished furthest gage gain gentry gents gland gong grabs grace grady grant grape grass grate
grave greatest greet greeting greta grieving grind guest guests hallway hallways handling hangover hanks
hanover hans hardcover harding hart haunt haunting healed hears hearth heated hell hemorrhage hints historic
hoarding honoring hooded hopping huang hugged hunger ideal illusion imagine imagined imagines imagining
inception inclusion indebted indicate indicated indicates indication inducing infected infection inferred
infested inflamed inflation inflicted infrared ingested inherited initiate injected injection injure
injuring inserting insiders insights insisted inspected inspection instructing instructional instructors
insulated insulation insulted insulting intensify intensity intention interact interest internet intro
intrusion intrusive invasion invented invention inventive inversion inverted invested isolated isolating
juicy kicking kicks kills kinds kings kneel lager lambs lanes laser latent latex latte lauded launch layer
leading leads leafs leaning leans leaping leaps learning lease leash leasing legged lest letter levers lien
lies linear linger links listed lister literal litter locked locking locks lodged looming looms loosing
looting loser loses lover lumber lynch mach mails mains making malls mandy manly marc marching marco
marketed marketing marrying mars marsh masked masking masks massage match maturing meade media medial medic
medicaid medicare medicinal medieval megan melting messed messing meteor meyer midway mined mines minsk
mislead misleading misled missions moaning moderator moist momentum monument moor moore morse mounting
mourning movie nasa natal naval nearby neatly nelly nerds newer nigh norse nosed noticing noting oblivious
occasions odor older operation operations operative opinions outset ovens overdose overhaul oversight overt
overweight owens pace paced packed packing packs paige paint paints palace panicked panicking pans pants
paper parent parting partying pasta paterson patience pats pavement payer payments peace pearson pelvis
penetration perch periphery persisted persistence persona peterson phony pickering picket pickled picky
pictured pierce pills pines pinned pins pinto pitched pitching pits plain plains planes plank planks
planners plant planted planting plants plated played plays pleading pleasure plotting plugs plump plunged
plural plush points polled polling polls pond ponds poole portions position possible potent potion pots
pounding precious predictor presence president prevent prevents previews priced print prints prized probable
procedural producers products projector prompted prone proposed prosecuted protected protested provided
pryor punched punished punitive purse pursuant puzzling quartet quartz rage raided raids rained rains rally
reaching react reacted reacting reaction readiness realty rearing recalled receivers reception recital
recorders recovered recovers reelection refining reflection reformed refunded regarded regarding regent
regiment register registry regulate regulated regulates regulation reich reilly reindeer rejection relating
relaxing relegated relieved remainder remained remanded reminded reminding remote removable renovated rental
repaid repairing reparations repeal repealed repeated repeating repent replicated replying reported reps
resent reserved residence residency residing residues resilient resolving resort resorted restrict resulted
retained retaining retains retarded retention revealed reversed revive reviving revolver revolves revolving
rewarded rewarding rewind reworked roach roads rolex roofs roots rounding rover rower ruining sabine sage
salts sanction sands scalp scanned scanning scant scare scaring scattered scent scope scorn scrapped seams
seated seating seats seduction seeding seeds seeks sees separately settling sewing shade
shading shaft shake shaking shale shalt shame shaming shane shape shaping shark sharpe shave shaving shawl
shedding sheen sheep sheer shelf sheltered shifting shipped shipping shire shirt shit shits shitting
shocking shoes shooting shopping shops shore shots shout shouting shoving showed showering shutting sidewalk
sidewalks sighting singing sings sized skill skilled skipping slang slapped slapping slashed slave slept
slide sling slippers slippery slipping slit slower slows smart smell snag snapped snapping snare snatched
snitch snowing soaring solid sounding spade spanking spanning spare sparring speaking spelled spelling spelt
spend spending spent spice spill spinning spiral spit spite spitting splitting spoilt spoon sport sporting
spot spotting spout spreading stacking staffing staining stake stale stalking stall stalling stamping stare
stared stares staring stark starlight starr starred starring stars starters startled startling startups
starved starving stat stated states stating stationed stats statue statues statutes steadily steal steep
steering stems stepping sterling sting stings stint stirling stirring stitch stitched stitches stitching
stomp stoop stopping storming straighten strained strand stranded strands strangers strangest strangled
strap strapped stray stricken stride strife strikers stripe stripped strive stroke stronger stuart stunning
stunt sturgeon submarine suing suited suits summaries sunlight supplied supported surge survival sustained
swamp swearing sweating sweeping sweet swell swept swift swimming swine swirling swore swung symbolic
systemic tables tackling tagged tagging tampering tank tanks taping tapped taxed taxing teach temperate
tempo tempt tend tending tends tents tess texts thanking thick thine thinks threaten throw throwing throws
thugs thus tingling tinted tiring token totaling tours towering trace track tracking tract tracy trail
trailing transform transpose transposed transposing trapped trash tread treating trent triad tribal
trimming truce tumbling tuned tunes
tuning turing tweaking typed uncharted unclear underrated understated undertaker undertook underwood unfit
unites unlocked unsolved unstable usable usher vague vale vast ventilation verses visibly voiced wafer wager
wailing waist waiter walter wanting ware wasting watts weighted weights weirdo wheat whereas whine whore
whores widow width wired witch withdrawing withdrew wong wording wore worrying worst writing writings wrote
yankee yeast
"""
ENGLISH = frozenset(_WORDS.split())
