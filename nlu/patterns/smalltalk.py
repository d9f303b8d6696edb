"""Small talk: words that never say what a number is, nor change what an event is of.

Never put here: a word that hedges, doubts, denies, plans, corrects or asks, that says who said so or how
often it is so; a thing that is measured, drunk, worn or holds a fluid, a look of a fluid; a verb that takes
an amount.
"""

from __future__ import annotations

_CRIES = """
ah aha aw aww ugh argh aargh agh gah bah meh pff pfft sigh wow yikes whoa woah eek gosh gee golly jeez jeeze
geez omg omfg wtf ffs damn dammit damnit dang darn heck sheesh phew yay yo woohoo hooray hurrah yippee alas
lol lmao lmfao rofl haha hehe fyi btw tbh pls plz please alright alrighty okie okey okeydokey kk blimey
crikey congrats congratulations welcome yum eww ew yuck
"""
_CALLED = """
love hun darling dear dearie sweetie sweetheart babe mate matey boss chief buddy pal bud bro dude duckie
lovelies lads lass lasses gang peeps folks guys gals sis hon
"""
_MANNER = """
basically obviously clearly thankfully luckily sadly annoyingly interestingly strangely weirdly amazingly
nicely smoothly calmly gently properly happily soundly definitely certainly precisely indeed meanwhile
anyway anyways anyhow besides though although tho however therefore hence thus sooo soooo so nevertheless
nonetheless unfortunately fortunately surprisingly understandably naturally literally truly seriously
honestly personally simply merely especially particularly suddenly eventually quickly slowly quietly
carefully immediately recently lately together extremely totally entirely completely fully terribly awfully
fairly pretty super
"""
_SELVES = """
you your u ur ya you're youre you've youve yourself yours i've ive i'm im myself mine ours ourselves
themselves theirs itself he's hes she's shes they're theyre we're it's there's theres here's heres thats
that's
"""
_FEELING = """
nice lovely great awesome amazing wonderful beautiful cool funny crazy happy sad tired busy sleepy poor
sweet cute brave cranky grumpy upset worried glad proud bored angry calm quiet loud noisy excited nervous
lonely confused awake asleep okay tough rough easy horrible terrible awful ridiculous insane silly stupid
dumb lucky unlucky unfortunate annoying annoyed painful grateful thankful interesting hectic bonkers manic
chaotic knackered exhausted worn starving freezing thirsty
fasting groggy miserable cheery tearful fed relaxed rude
fussy pleasant polite delightful friendly chatty talkative grouchy crabby moody restless embarrassed scared
frightened surprised impressed disappointed frustrated concerned homesick lazy clumsy careful smiling
laughing crying smiley giggly cosy cozy comfy snug
"""
_NAMES = """
aaron abby abigail adam adele aiden aisha alan alana albert alejandra alejandro alex alexander alexandra
alexis alfie alfred alicia alison allan allison alyssa amanda amara amelia amina amir amit amy ana andre
andrea andreas andrew andy angela angelica angie anita anjali ann anna anne annette annie anthony antonio
anya archie ariana arjun arthur asha ashley audrey ava barbara beatrice becca becky ben benjamin bernadette
bernard beth bethany betty beverly brandon breanna brenda brett brian briana bridget brittany bruce bruno
bryan callum cameron camila camille carla carlos carly carmen carol caroline carolyn cassandra cassie
catherine cathy cecilia charles charlie charlotte chelsea cheryl chloe chris christina christine christopher
cindy claire clara claudia colin colleen connie connor corey courtney craig cristina cynthia daisy dan dana
daniel daniela danielle danny darren dave david deb debbie deborah debra denise dennis derek diana diane
diego dmitri dolores dominic donna doris dorothy doug douglas dylan ed eddie edgar edith eduardo edward
eileen elaine eleanor elena eli elijah eliza elizabeth ella ellen ellie elsie emily emma enrique eric erica
erik erin ernest esther ethan eugene eva evan evelyn farah fatima felicia felix fernando fiona florence
francesca francis francisco fred freddie gabriel gabriela gail gareth gary gavin gemma geoff geoffrey george
georgia georgina gerald gina giovanni gladys gloria gordon graham greg gregory greta gwen hannah harold
harriet harry harvey hassan heather hector helen henry hilary holly howard hugh hugo ian ibrahim ines ingrid
irene isaac isabel isabella isla ivan jackie jacob jake jamal james jamie jan jane janet janice jared
jasmine jason javier jeff jeffrey jen jenna jennifer jenny jeremy jerome jess jesse jessica jessie jill jim
jimmy joan joanna joanne joe joel johan johanna john johnny jonas jonathan jordan jorge jose joseph josh
joshua joyce juan juanita judith judy julia julian juliana julie juliet justin kaitlyn karen karina karl
karla kate katherine kathleen kathryn kathy katie katrina kayla keith kelsey ken kenneth kerry kevin khadija
kim kimberly kirsty kristen kristina kurt kyle laila lara larry latoya laura lauren laurie lawrence layla
leah leanne lena leo leon leonard leroy leslie lewis liam lillian linda lindsay lisa liz lizzie logan lois
lola lorena lorenzo lori lorraine louis louise lucas lucia luciana lucy luis luke luna lydia lynn mackenzie
madison maggie malik mandeep manuel marcus margaret maria marian mariana marie marilyn marina mario marisol
marjorie marlene martha martin mary mason mateo matt matthew maureen maurice megan mehmet meera mei melanie
melissa mercedes meredith mia michael michelle miguel mike mila mildred milan mindy miranda miriam mitchell
mohamed mohammed molly mona monica monique morgan muhammad muriel myra nancy naomi natalia natalie natasha
nathan neha neil nia nicholas nicola nicole nigel nina noah noel nora norma norman olga oliver olivia omar
oscar owen pablo pam pamela paola patricia patrick paul paula pauline pedro peggy peter phil philip philippa
phoebe phyllis polly precious priscilla priya rachel rafael rahul raj rajesh ralph ramon randy raquel raul
ravi raymond rebecca regina renee ricardo richard rick rita roberta roberto robin rodney roger roland ronald
rosa rosalind rosemary rosie roxanne roy russell ruth ryan sabrina sally salma sam samantha samira samuel
sandra santiago sara sarah sasha saul sean sebastian selena serena shannon sharon shaun shauna sheila
shelley sherry shirley sienna simon simone sofia sonia sonya sophia sophie stacey stacy stan stanley stella
stephanie stephen steve steven stuart sue susan susana susie suzanne sylvia tamara tammy tania tanya tara
tasha taylor ted teresa terry tessa theo theresa thomas tiffany tim timothy tina tom tommy toni tony tracey
tracy travis trevor trisha tyler tyrone uma valerie vanessa vera veronica vicky victoria vijay vincent viola
virginia vivian walter wanda wayne wendy wesley whitney winifred yasmin yolanda yusuf yvonne zach zachary
zainab zara zoe
lin dee jo tess bea mo kit val fay roz gus abe hal mitch len stu gil herb ollie freya finn niall aoife
siobhan ciara sinead declan eoin roisin grainne maeve orla padraig conor cormac fergus deirdre bronagh thabo
sipho zanele nomsa lerato naledi themba bongani ayanda pieter anneke riaan jun rowena jocelyn maricel lorna
imelda rodel arnel jericho analyn rosalie sunita kavita deepa lakshmi pooja nisha divya anjana suresh ramesh
sanjay vikram arun manoj kiran wei ling xiu hana yuki kenji akira minh linh thao tuan fatou amadou ngozi
chidi emeka adaeze kwame ama kofi efua rui joao tiago mateus
"""
"""First names that are no other word: "thanks, Priya", "Maria in 4"."""
_AROUND = """
people person everyone everybody nobody lot lots kinda sorta stuff foot feet leg legs toe toes hand hands
elbow sock socks slipper slippers shoe shoes blanket blankets sheet sheets pillow pillows mattress recliner
couch sofa desk table tray sink curtain stairs stairwell hallway hall lounge dayroom lobby elevator doorway
entrance garden cafe canteen chapel gym car ambulance ran run running stepped stepping bumped bumping caught
catching catch hit hitting grabbed grabbing rushed rushing hurried reached reaching jumped climbing climbed
woke waking wandered wandering pushed pushing shoved tangled helping helped washing washed shaved shaving
scratching fidgeting fiddling playing played eating ate visited watching watched waiting waited yelling
screaming fighting pacing praying backing wheeled wheeling wheels cart buggy pram walker crutches frame
stick attempting unsupervised unattended unwitnessed witnessed standing minute minutes moment second hours
month weekend christmas easter holiday young elderly older frail strong weak heavy clumsily roughly
forcefully abruptly sudden
"""
NAMES = frozenset(_NAMES.split())
"""First names."""
TALK = frozenset(" ".join((_CRIES, _CALLED, _MANNER, _SELVES, _FEELING, _NAMES)).split())
ROUND_AN_EVENT = TALK | frozenset(_AROUND.split())
"""Whom and what an event happened among: none of these is a drain, nor can fall or come out for one."""
