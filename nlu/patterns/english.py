"""Common English words that spelling repair would turn into a cue word of another meaning."""

from __future__ import annotations

_WORDS = """
abase abode abort abound absentee absolutest abut accounts acme acre acridest activate actuality
addicted addition additions admin admittedly advise adware affirmation agave aground aiding ailing airheads
airing airtight albert albs albumen alice alien alight alike alive allaying allotted alloyed almighty alone
alpine alter amending amperage angie anglo annually anointment anteroom anther antlered appalled appeals
appeared appeasers appeases appended appending apprised apprized apron apter archived aright arming arteries
ascended ascending ashed askew assaying assent assuaging assure assuring aster attacked attacker attained
attendant attended attesting attracted attuning atypical augusta augustus avert await awaiting awake award
babble babblers babbles babbling badder baden baked balked ballroom banal banked banned bard barked basel
basil basked baste basted bathrobe batter battle beaching beading beads beard bearding beast beater becalmed
become believers bellboys bellhops bending bends berating berthing beside bested betiding bettered bettor
bible bidding bilge billow billows binged bitter blacked blair blander bleaching bleating bleeding blending
blent blight blond bloom blow blows blurt bobble bobbles bobbling bogus bolas bolls bolts bonus booth botch
brake branch brazen breach breaching breading breadth breadths breaking breasting breeding brent brighten
brighton broach broaching broaden broadens bronco brooch brood brooke brown brunch brunt bubblier bubbliest
bubbly bucked buckling budding buddings bumble bumblers bumbles bumbling bundling bungling bunt bunted burble
burbles burbling burgling bursted bushed busied bussed bustling butted butter cadre cads calamity camber
camel cameo camp camped camping camps cancer cannon capacitor carbs cardigan cardinal cares carjacked
caroming carps cart carted carting carts carve cashback caste casually cause cease ceded cello centiliter
centiliters chaffing chain chaining chairing chalking champ champed champing champs chance chanced chancel
chancels chancing changeling chant chanted chanting chapping chapt char charged chargers charging charm
charmed charming charred charring chartered chartering charters chary chase chased chat chatted chatting
cheat cheaters cheating checkered checkers checkups cheek cheeked cheeks cheeps cheery chess chick chicks
chile chinking chinning chirping chloe chlorine chock chocked chocks choicest choir choke chomping choosing
chore chortled chortling chose christens chroming chuck chucked chuckled chucks chugging churning clack
clacked clacking claiming clair clam clamber clambers clammed clamming clamored clamoring clams clan clanged
clanging clanking clap clapped clapping claps clare clashing clasp clasped clasping clasps classing cleansed
cleat click climbing clinging clinical clipping clits cloak cloaking clods clogging clogs cloister
cloisters clomp clomped clomping clomps clone cloned cloning clopping clops closet closeted closeting cloth
clothing clotting clouding clouting clouts clove clowning cloyed cloying cloys cluck clump clumped clumping
clumps coaching coasting cock codex coding coed coked cokes coking cole collared collated collation collected
collecting collective collects collocation colluded colon colorado coloreds coloring colts combs comet comets
commanded commander commanders commando commends comments communes completest conceited conception concerted
concerting conciser concocted concocting concoction condo condor condos conducted conducting conduction
conductor cones confection confections conferred confided confides confined conform conformed conforms
congaing congested congesting congestion conjured connective conniver connoted connoting consented consenting
considered consonant constance constancy constraint consultancy consulting consumer contacted contacting
contented contenting contention contestant contested contesting contiguous continue continued continues
continuum continuums contoured contrail convection convention converted converting convertor convicted
convicting conviction cooed cooing coots coped copes coping corded cords cored cores coring corollary
coroners correctest correctional corrective corrector correlated correlating correlation corrupted corrupting
corruption corseted corseting cortical cotes cots couch couching count counting coupling coups coursing
courting coves cowed cowhands cowing crackers crafting cramming cramp cramped cramping cramps crank cranked
cranking crapping creak cream creased crest cribbage crick cricked criminal crimping cringing crock
crocked crossing crouching crushing cubit cultured curds currant currants currency cusp cusps dairy daisy
dally damasked damped damping dank dante daring dawn debauched deceases deceasing decedent deceiver
deceptive decreeing deductive defecting defection defendant defensive defies defining delegate delimiter
delimiters denis denise denizens denny dependance dependant dependants depended dependence depending deplete
depleted depletes depressed depressing derailed derailing deranged descendent desisted despised despondency
despondent detailed detained detaining detected detective detectives detracted devised diabolic dialyzes
diced differed difference differing diffident digressing dimpling diner dinker dinnered dint directive
disabled disarmed disbanded disbarred discerned disclosed disconcerted disconnectedly disconnecting
discontented discorded diseased disgorged dispensed dispersed disported disposal disproved disputed disrobed
divining doctoral doily donor donut douse douses doves dowse dowses drafting dragging drama drawings drawl
drawling draws drays dreading dreaming dredging drily drink drinking dripped drone droop drooped droops
dropsy dross drown drowning drowsing drugged drumming drunk duding dunner duped duping earliest earthier
earthlier ease easier easterly eastern eater eateries edict edith eery effected effecting effusive ejecting
electing elise emending emery eminence emptiest enchanted enchanting endeared energies entities
entrails entrées entwines epidermal eras erecting erection escalation ester esther estimable estimator
eternal ether event evermore evincing exacting exaltation examines excavation excepted excepting excise
excitation executed executing exerting exhaustion exhumation expanses expansion expectant expedited
expediting expelled expelling expended expending expert expiated expiating expiation explication exploded
exploration exportation exported exporting expounded expunged expurgation extended extensional extensive
extirpation extrusion fabled faced faked fallow fallowed famed famished fared farmer farther fatality fated
fats faxed fazed feast features feds feeling feelings fees felled fending fends feuding feuds fewer fielding
filed files fillet filleted filliped filmed films fined finessed fired firmer firs fist flailed flank flapped
flawed fleecing fleeting flesh flippest flood flopped flout flowered fogey foiled folds folksy folly
fond forded forge forged forger forges forked forks formed formerly foully foxed frack fragility fran franc
franklin franz freed freezing frill frills fulled fulls fund furnished furthered furthest futility gage gain
gallants galleon galleons gallop gallops gallows gashed gauze gazetting gentile gentiles gentlest gentling
gentry gents gestating gibing gillions glade gland glutting gong goody gouge grabs grace grad grady grant
grape grass grate grater gratuity grave grays graze greasier greatest greet greeting greta grieving grind
gritting grown guest guesting guests gusted gutting haemorrhage haemorrhaged haemorrhages haemorrhaging
haggling hags hallway hallways halve hampered handcuff handling handsomer handy hangover hangovers hanks
hanover hans hardcover hardened harding harkened harpy hart hastened hatefully haunt haunting heady healed
heaped hears hearth heartily heated heave heaved heavenly heeded heighten hell hemorrhage hemorrhaged
hemorrhages hemorrhaging heralded herded hilts hinging hings hints hippy historic hither hoarding hocked
hocking hoeing holdover holing homilies homing honing honked honking honoring hooded hooding hoofed hoofing
hookey hooped hooping hooted hooting hopping hosing hospitable hospitably hounding huang hugged
hungover hyphened hyping ideal illusion imagine imagined imagines imagining immigrated immolation impaling
incensed incensing inception incising incisive inclusion increasingly incursion indebted indecision indented
indicate indicated indicates indication inducing inertial infected infection inferred infested infesting
inflamed inflames inflation inflected inflicted infrared ingested ingestion inherited inimical inimically
initiate injected injection injure injuring insanely inserting insetted insiders insights insisted inspected
inspection inspirational instigation instructing instructional instructors insulated insulation insulted
insulting insuring intensify intensity intention intently interact interdict interest interment interned
internet internist interred intro intrusion intrusive invasion invective invented invention inventive
inversion inverted invested isolated isolating itches joust juicy juts kicking kicks kills kilns kilts
kindling kinds kings kneel knuckled lacerate lacing laded lading lager lagged lambs lamer lamest laming
lanced lanes larded largo laser lasing latent latex lathe lats latte latterly lauded laxer laxest
layer layering lazing lazying leaching leading leads leafing leafs leaguing leans leaping leaps leapt
learning lease leash leashing leasing leavening leeks legged lest letter levee lever levers licit lien liens
lies lifer lifers lighters likens lilted limes linden lindens linear liners linger links linted lire
lister literal literals lithe litter littlest liven livens livers livery loaning lobotomy locked locket
locking locks lodged lodger lofted lofts loiter loitered loiters loner longed looming looms loons looping
loosing looting loots lops loser loses louse louts louvered lover lugged lumber macerate
mach magnesia magnetism mails mains making malignancy maligning malls mandy mangy manly manuring marbling
marc marching marco markedly marketed marketer marketing marred marring marry marrying mars marsh marts
masked masking masks massage massaged massages massed massing match maturing meade media medial medic
maxed medicaid medicare medicate medicinal medieval megan melting meows mercuric mercy meriting messed messing
meteor metering meting metrical meyer middy midway miens milfs mined mines minsk minuet minuets minuses
minutest minutiae miscuing misdealing misdoing mislead misleading misleads misled missions misspend misstate
misted mistimed misting mistreat mistreating mistrial misused misusing miter moaning moderator modulate moire
moist molls momentum monument mooed mooing mooning moor moore moped moping morpheme morse mounding mounting
mourning moussing movie movingly mowed mowing mulch mulls munch murks mussed mussing muter nasa natal
nauseate naval nearby neatly needy negating negation nelly nerds nether neutered newer newsy niches nigh
nonce nonmember norse nosed noshing notching noticing noting nuder numbered numbness oblivious occasion
occasioned occasions odder odes odor older omens operatic operation operations operative opined opining
opinions opposition optional orations oscillator oscillators outdoing outfoxing outgrowing outlying outposts
outset outstandingly outstaying outvoting ovations ovens overacting overawing overdoes overdone overdose
overdrew overeating overfull overgrew overhaul overkill overlies overrating overrule oversell oversight
oversights overt overture overweight ovoid owens pace paced packed packing packs paige paint paints palace
paler palled palling palls pamper panicked panicking panned panning pans pants papery parading parching
parent paroling parring parrying parsing parson partaking partiality parting partings partying passably pasta
pastiest paterson patience patientest pats patting pauper pavement payer payments peace pearling pearson
pease pecked pecking pecks peddling pelvis penalize pended penetration penetrations penetrative penlite
penlites penning pepped perch pericardium perilled perimeters periphery perking perpetrating persisted
persistence persisting persona personae personal pertly peterson petition petitions petting petulant phage
phony phosphoric physic pickaxed pickaxing pickering picket picketed picketing pickled picky pictured pierce
piked piking pilled pilling pills pinching pines pings pinked pinking pinks pinned pins pinto piper pipped
pitched pitching pits pitting placated plaguing plaice plain plains plaiting planed planes plank planked
planking planks planners plant planted planting plantings plants plated played plays pleading pleas pleasure
plonking plopped plotting ploughed plucking plugs plump plunged plunging plunking plural plush pocked pocking
pocks points polled polling polls pond ponds pone poole pooped pored portions portly posit positing
positional positron positrons possible posterity postured potent potion potions pots potting pounding pouted
pouts prancing prawning precious precisest predated predicate predicated predicates predictor prefixed
prepped prescient presence preset president pressurize preteens pretence pretense prevent prevents previews
priced pricked pricking prickled prickling pricks prided print prints prized probable procedural procured
producers products profiled projector prompted prone proposed proscribe proscribed proscribes prosecuted
prospected protected protested provable provably provender provided provident prudently pryor pucks puddling
pullet pulley pulped pulping pulps pulsed pulsing punched punctual punctuate punctuated punished punitive
punned punting punts pupped purled purling purls purplest purse pursuant purulence pussy puttering puzzling
quainter quark quarks quartered quarterly quartet quartets quartz questing rage raided raids railed rained
rains rally rangy rapped rasher ravished reaching react reacted reacting reaction readiness reallocated reals
realty reaming reams reaping reaps rearing rearming rears rebating rebelled rebind recalled recant receding
receipted receivers reception recessed recital recitals reclined reclining recoiled recollected recopied
recorders recouped recover recovered recovers recreant recurred reeds reeducation reedy reelection refining
refitted reflection refocused reformed refract refracts refraining refrains refueled refuelled refunded
refuted regaining regains regaling regally regarded regarding regent regiment register registrant registry
regulate regulated regulates regulation rehashed rehashes rehearsed reheat reheated reich reilly reindeer
rejection rejections rejoinder rejoining relapsed relating relaxing relaying relearned relegated relent
relented relieved reliving reloaded reloading remainder remainders remaking remand remanded
remanding remarking remarried rematches reminded reminding remote removable removers renaming rending rends
renovated rental repaid repainting repaints repairing reparations repaying repeal repealed repealing repeated
repeating repelled repent replayed replaying repleted repleting replicated replying reported reposing
reproving reps repulsed rereading rerunning resent reserved residence residency residing residues resilient
resolving resonated resort resorted respired restated restates restocked restorations restrict resulted
retailing retained retaining retains retaking retarded retarding retch retched retches retention reticent
retort retorted retrace retraced retracing retraining retrains returnee reused revealed revelled reversed
revile revive reviving revoking revolted revolved revolver revolves revolving rewarded rewarding rewind
reword reworded reworked roach roached roaches roads roams roiled roils rolex roods roofs rooks roots rotund
rounding rover rowelled rower ruining rumoring rusted sabine sage salience saltine saltines salts salve
sanction sanding sands sapped sapping sated sawing scabbed scabbing scalding scalp scalping scaly scanned
scanning scant scanter scantier scanting scare scarfing scaring scarring scats scattered scatting scent
scenting scone scope scorn scotched scotching scowling scows scram scrapped scrapping scrip scuttled seabed
seamed seams seared searing seated seating seats seceding sections securest sedating seduction
seeding seedling seeds seeks seeps seers sees seething sepal separately separator serge serrated servo
settling sewing sexting shade shading shadings shadowing shaft shafted shafting shafts shagging shake shaking
shale shalt shame shaming shamming shane shape shaping shark sharpe shatters shave shaving shavings shawl
shearing shedding sheen sheep sheepish sheer sheering sheers sheeting shelf sheltered sherbets shifting shill
shilled shingling shinning shipped shipping shire shirking shirring shirt shirted shirting shirts shit shits
shitting shlepped shoaling shocking shoeing shoes shooing shoon shoos shooting shopped shopping shops shore
shoring shorting shots shout shouting shoving showed showered showering showery shrift shrike shrilled shunt
shuttered shutting shuttled sidebars sidecars sidewalk sidewalks sidewall sidewalls sidle sift sifted sifting
sifts sighting signpost sill silt silted silting silts sinecure singe singeing singing singling sings sipped
sired situating sized skeet sketched sketching skill skilled skimped skinning skippered skipping skirting
skits skittered skylight slabbed slabbing slang slanting slapped slapping slashed slathered slats slave slays
sleazily sledding sleeking sleet sleeting sleets slept slewing slide sling slinging slings slinking slippers
slippery slipping slit slits slitting slogging sloping slopped slopping sloshing slotting slower slows smart
smarted smarting smarts smearing smell smelting smirched smirching smite snag snapped snapping snare snarfing
snaring snarling snatched snatching sneering sneezing snide snipped snipping snitch snitched snitches
snitching snits snore snorting snowing snows snubbing soaring solid sopped soundest sounding sower sowing
sows spacy spade spake spanking spanner spanners spanning spare sparing sparking sparring spate spats
spattered spatting spays speaking spearing speccing specious specking spelled spelling spelt spend spending
spice spieled spieling spill spindled spinning spiral spiraled spiralled spirited spit spite spited
spits spitting splashed splat splattered spline splint splitting splurged spoilt sponging spool spoon spore
sport sported sporting spot spotting spout sprained spreading spreeing sprightly springing spurious spurned
spurred spurting sputtered squaring squashed squealed squirted stabled stabling stacking staffing staid
staining stake stale staled stalking stall stalling stamping stanching standbys stapling starched starching
stare stared stares staring stark starlets starlight starling starlings starr starred starring stars starters
startled startling startups starved starving starvings stashed stashing stat stated states stating stationed
stats statue statues statutes stave stead steal steamy steeling steep steeped steeping steering
stems stepping sterling stile stilled stilt sting stinging stings stinking stint stinting stippled stirling
stirring stitch stitched stitches stitching stomp stomped stoop stooped stoppered stopping storming stowing
stows strafing straggle straighten strained strainer strand stranded stranding strands strangers strangest
strangle strangled strangler strangles strap strapped strapping stratums strawing stray straying strep strew
stricken stride striding strife strikers stringed stringer stringing stripe stripped strive stroke stronger
strop stropped stuart stubbed stubbing studding stunning stunt stunting sturdily sturgeon sturgeons stuttered
suave submarine sued sugaring suing suited suits summaries summarily summery summitry sundae sundry sunlight
supplied supported survival sustained swabbed swabbing swagging swamp swamped swamping swanking
swarming swashed swashing swatch swatches swathing swats swattered swatting sways swearing sweating sweeping
sweet sweets swell swept swift swifts swig swigging swigs swill swilled swilling swimming swindling swine
swines swingers swirling swishing swoon swooping swopped swopping swore swung symbolic syringing systemic
tableaus tables tacking tackling tagged tagging tallying tamed taming tamped tampering tank tanking tanks
taping tapped tared taring tasering tasking tats tattering taxed taxing teach teats telemeter telemeters
temperate tempering tempo tempt tend tending tends tents tess texts thanking thaws thick thine thinks
thirsted thoraces thralling threading threaten threefold threshed throw throwing throws thuds thugs thumbing
thunk thunks thus tickling tidying tieing tiling tilled tilling timberline timelier timezone tingling
tinkling tinned tinny tinseling tinted tippling tiring titled toady toddling toddy toggling toiled
toiler toileted toiletry toilette token toking tonal torte totaling totality totalling tours toweling
towering trace track tracking tract tracy trail trailing traipsed trammeling trammelling trampling transferal
transfix transfixed transform transmuted transpire transpose transposed trapped trash traumata
traumatize travailing travelog traversing trawling tread treading treadling treads treating trebling trekking
trenching trendy trent triad trialing tribal trifling trill trilling trimming tripled tripling troweling
trowelling truce trudging trundling trunking tumbling tuned tunes tuning turfed turfing turing tuxes tweaking
twiddling twigging twill twinged twink twirling twitted udder uncharted unclaimed unclasp unclasped
unclasping unclasps unclear uncooked uncorked underhand underrate underrated underrates undershoot undersold
understate understated undertaker undertook underwood underwriter unfit unfits unhanded unhinged unhorsed
unites unkinder unlocked unloosed unpinned unplumbed unreserved unsolved unstable untie unusable uptight
urethrae urethras usable usher vague vale vast vasts veer ventilate ventilated ventilates ventilation
ventricle verses vesicle vesicles vials victuals visibly voiced wader wafer wafting wafts wager wailing waist
waiter waiving walter waltzing wands wanks wanting ware warts waster wasting watery wattling watts waver
wedgie weer weighted weights weirdo welching welshing wens whams wheat wheedled wheedles wheezed whereas
whets whine whither whiting whitings whits whore whores widow width wiled wined winnow wired witch withdrawal
withdrawing withdrew wong wording wordings wore worming worrying worst worsting wrens wring writhe writhing
writing writings wrung yacked yacking yakked yakking yankee yeast
"""
ENGLISH = frozenset(_WORDS.split())
