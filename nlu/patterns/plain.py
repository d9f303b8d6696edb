"""Ordinary words that are near to a cue word and are not it: left alone by spelling repair."""

from __future__ import annotations

from .english import ENGLISH

_WORDS = """
hoist hoists hoisted upped
hemithorax hemidiaphragm updated mist trans
horse horses typed types typing topped topping decreased decrease increased increase released leased ceased
about above after again also area back been before being best better book both bread break bring
broth call came care cars case cases clear clean close cold come coming cool couple date dates deal
dear doing done door down each early east easy eats else even every face fact fair fall fast feel
feels felt find fine fire five floor foot form fort forth free fresh friend full fully game gave
girl give given goes gone half hall hand hands hard head hear heard heat help here high hold home
hope hour hours huge idea into items just keep kept kind king know last late later lead leave leaves
leaving left less life lift light like liked liner lines link lips list lives load loan local lock
long look looks lose lots loud love lung lungs made mail main make makes male many march mare market
maybe meal mean meat meet mile miles milk mind mine more morning most move much must name near neck
need news next nice night nose note nurse once only open order other over page paid pain pair part
party pass past path pick pink place plan plate play please poor post pull push quick quiet quite quote
rain rang rather ready real rest rice rich ride right ring rise road role roll roof room root rope
rose round rule safe said sale salt same sand says seat seem seen self sell send sent shall share
shift ship shoe shop short shot should show shown shut sick side sign silk since sing site size skin
slow small smile snow soft sold some song soon sore sort soup spoke stable stand stands star start
state stay step stop store street such sure swim table take taken takes talk tall task team tear
tell test testing than thank that their them then there these they thin thing think this those three time
times tiny told tone took tool touch town tree trip true truth turn twice type under unit until upon
used user very view wait wake walk want warm wash water week well went were what when where which
while white whole wide wife will wind window wing wish with wood word words work world would year
your yours station calling comfortable family bedside doctor weather today lunch coffee thanks
alert oriented resting sleeping asleep visitor visitors daughter mother father husband
brother sister bath meds turned repositioned ambulated walked chair sitting standing bedded plane
stays stayed staying remains remain live lived living liver reds redone eight dark park bark mask
tide tied tidy shell steel sealed
connector connectors connected connects
followed follow follows allowed slowed
wallet walls ball leaf lean leap least latest bacon faster fasten
"""
PLAIN = frozenset(_WORDS.split()) | ENGLISH
