"""Acting on an answer: the question is settled, its statement taken again on the ledger as it is now."""

from __future__ import annotations

from dataclasses import replace

from bot.dialogue import verdicts
from bot.dialogue.answers import verdict
from bot.dialogue.bedside import About, Bedside
from bot.dialogue.canisters import ask_final, moment_of_exchange, recorded_part, take_final
from bot.dialogue.corrections import ask_right_level, record_fix
from bot.dialogue.doubts import admitted, admitted_correction, ask_doubt
from bot.dialogue.locate import Spot
from bot.dialogue.moves import clear, move_of, swap
from bot.dialogue.part import Part
from bot.dialogue.pending import Ask, Grant, Pending
from bot.dialogue.said import Amount, Answered, Fix, NotSure, Report, Said
from bot.dialogue.said_json import loaded
from bot.dialogue.take import take
from bot.dialogue.targets import Target, may_change, too_old
from bot.dialogue.undo import withdraw_line
from bot.dialogue.unsure import ask_slot
from bot.dialogue.verdicts import Retake, Verdict
from bot.engine.entries import Correction, Described, Entry, Exchanged, FinalLevel, Line
from bot.store.questions import Outcome, Question
from bot.wording import questions


def settle(
    bedside: Bedside, question: Question, answer: Answered
) -> tuple[list[Part], tuple[Said | NotSure, ...]]:
    """What the answer came to, and what waited behind the question and can be taken now."""
    pending = loaded(question.said_json, Pending)
    found = verdict(bedside, pending, _without_its_bed(bedside, question, answer))
    if isinstance(found, verdicts.NoAnswer):
        again = Part(
            status="question", kind="answered", bed=question.bed, text=question.text, question=question
        )
        return [again], ()
    rest = _rest(pending, found)
    bedside.waiting = rest
    parts = _act(bedside, pending, found)
    bedside.waiting = ()
    if question in bedside.book.unsettled():  # the answer may have taken back the message that asked
        bedside.book.settle(question.id, _outcome(found, parts))
    return parts, () if bedside.holds_back(parts) else rest


def _without_its_bed(bedside: Bedside, question: Question, answer: Answered) -> Answered:
    """A bed that only says which question is answered is no part of the answer."""
    now_at = bedside.ledger(question.drain).bed if question.drain else None
    its_own = answer.bed is not None and answer.bed in (question.bed, now_at)
    return replace(answer, bed=None) if its_own and question.slot not in ("bed", "to_bed") else answer


def _outcome(found: Verdict, parts: list[Part]) -> Outcome:
    if isinstance(found, verdicts.Dropped):
        return "dropped"
    return "recorded" if any(part.entries for part in parts) else "answered"


def _rest(pending: Pending, found: Verdict) -> tuple[Said | NotSure, ...]:
    """What waited is taken once its turn comes; a dictated message that was not right is dropped whole."""
    if pending.ask is Ask.HEARD and isinstance(found, verdicts.Dropped):
        return ()
    return pending.rest


def _act(bedside: Bedside, pending: Pending, found: Verdict) -> list[Part]:
    match found:
        case Retake(said, grant):
            return _retake(bedside, pending, said, grant)
        case verdicts.AskLevel():
            return [_ask_level(bedside, pending)]
        case verdicts.NewCanister(final_ml):
            return _new_canister(bedside, pending, final_ml)
        case verdicts.OtherWrong():
            return _other_wrong(bedside, pending, found)
        case verdicts.FinalTold(level_ml):
            return [_final(bedside, pending, level_ml)]
        case verdicts.Swap():
            assert isinstance(pending.said, Report)
            return list(swap(bedside, move_of(bedside, pending.said)))
        case verdicts.StillLacks(slots, slot):
            return [ask_slot(bedside, slots, slot)]
        case verdicts.Dropped(text):
            return [Part(status="told", kind="answered", bed=getattr(pending.said, "bed", None), text=text)]
        case verdicts.NoAnswer():
            raise AssertionError("handled before")


def _retake(bedside: Bedside, pending: Pending, said: Said, grant: Grant) -> list[Part]:
    if pending.ask is Ask.OTHER_TUBE and grant.drain is not None:
        _name_tube(bedside, said, grant.drain)
    if pending.ask is Ask.OCCUPIED:
        assert isinstance(said, Report)
        return [clear(bedside, move_of(bedside, said)), take(bedside, said, grant)]
    return [take(bedside, said, grant)]


def _name_tube(bedside: Bedside, said: Said, drain: str) -> None:
    """A drain whose tube had no name has one from here on, and is not asked about again."""
    if isinstance(said, Report | Amount) and said.tube is not None and bedside.ledger(drain).tube is None:
        bedside.record(drain, bedside.moment(said.at), Described(tube=said.tube))


def _ask_level(bedside: Bedside, pending: Pending) -> Part:
    """Misread, and the right level was not said."""
    said = pending.said
    assert isinstance(said, Report | Fix)
    bed, drain = said.bed or "", pending.drains[0] if pending.drains else None
    tube = bedside.ledger(drain).tube if drain else said.tube
    at = bedside.view.clock(bedside.moment(said.at))
    where = Spot(bed=bed, tube=tube, at=bedside.moment(said.at), ledger=None).where()
    held = Pending(
        ask=Ask.LEVEL,
        said=said,
        grant=replace(pending.grant, accepted=()),
        drains=pending.drains,
        brief=f"{where.text[:1].lower()}{where.text[1:]} line at {at}",
    )
    return bedside.ask(
        held,
        questions.level(where, at),
        About(
            bed=said.bed,
            tube=tube,
            drain=drain,
            slot="level_ml",
            kind="corrected" if isinstance(said, Fix) else said.fact.kind,
        ),
    )


def _new_canister(bedside: Bedside, pending: Pending, final_ml: int | None) -> list[Part]:
    """The exchange between the two lines, at the later one's time; then the line, then its final level."""
    said, drain = pending.said, pending.drains[0] if pending.drains else None
    assert isinstance(said, Report | Fix)
    if drain is None or not isinstance(said, Report) or not isinstance(said.fact, Line):
        return [_ask_level(bedside, pending)]
    ledger = bedside.ledger(drain)
    if _is_overtaken(bedside, pending, said, said.fact):
        return [take(bedside, said, replace(pending.grant, drain=drain))]
    other = ledger.level_of(pending.targets[0]) if pending.targets else None
    at = bedside.moment(said.at)
    changed = moment_of_exchange(at, other.at if other else at)
    spot = Spot(bed=said.bed, tube=ledger.tube, at=changed, ledger=ledger)
    changes: list[Entry] = []
    if final_ml is not None:
        final, open_doubts = admitted(bedside, ledger, FinalLevel(level_ml=final_ml), changed, Grant())
        if open_doubts:
            held = Report(bed=said.bed, tube=said.tube, at=changed, fact=Exchanged(), final_ml=final_ml)
            return [ask_doubt(bedside, spot, held, final, open_doubts, Grant(drain=drain))]
        changes = [bedside.record(drain, changed, final)]
    exchange = bedside.record(drain, changed, Exchanged())
    told = recorded_part(spot, drain, Exchanged.kind, (*changes, exchange))
    line = take(bedside, said, replace(pending.grant, drain=drain, heard=True))
    if exchange.id not in bedside.ledger(drain).final_missing:
        return [told, line]
    asked = ask_final(bedside, spot, drain, exchange)
    return [replace(told, question=asked.question, text=asked.text, first=True), line]


def _is_overtaken(bedside: Bedside, pending: Pending, said: Report, line: Line) -> bool:
    """Whether another line has come since the question: a new canister would now be before that one too."""
    asked = replace(pending.grant, accepted=(*pending.grant.accepted, *pending.asked))
    _, left = admitted(bedside, bedside.ledger(pending.drains[0]), line, bedside.moment(said.at), asked)
    return bool(left)


def _other_wrong(bedside: Bedside, pending: Pending, found: verdicts.OtherWrong) -> list[Part]:
    """The other line put right (or withdrawn), then the reading that was waiting."""
    drain = found.entry.rpartition("-")[0]
    ledger = bedside.ledger(drain)
    level = ledger.level_of(found.entry)
    if level is None:
        return [_again(bedside, pending, drain)] if pending.said else []
    target = Target(ledger=ledger, level=level)
    if not may_change(bedside, level.at):
        return [too_old(bedside, target, "corrected"), *_ask_same(bedside, pending)]
    if found.unknown:
        return [withdraw_line(bedside, target), *_waiting(bedside, pending, drain)]
    if found.level_ml is None:
        return [_ask_other(bedside, pending, target)]
    return _put_right(bedside, pending, target, found.level_ml)


def _put_right(bedside: Bedside, pending: Pending, target: Target, level_ml: int) -> list[Part]:
    """The other line's new level is judged as any other correction is."""
    level, drain = target.level, target.ledger.drain
    correction = Correction(target=level.entry, level_ml=level_ml)
    correction, open_doubts = admitted_correction(bedside, target.ledger, correction, level_ml, pending.grant)
    if open_doubts:
        fix = Fix(bed=target.spot().bed, tube=target.ledger.tube, at=level.at, level_ml=level_ml)
        grant = Grant(drain=drain, target=level.entry, heard=True)
        told = Line(level_ml=level_ml)
        asked = ask_doubt(bedside, target.spot(), fix, told, open_doubts, grant)
        return [asked, *_ask_same(bedside, pending)]
    return [record_fix(bedside, target, correction), *_waiting(bedside, pending, drain)]


def _waiting(bedside: Bedside, pending: Pending, drain: str) -> list[Part]:
    """The reading that waited for the other line; none when the question was about that line alone."""
    if pending.ask is Ask.CONFLICT or not isinstance(pending.said, Report):
        return []
    return [_again(bedside, pending, drain)]


def _again(bedside: Bedside, pending: Pending, drain: str) -> Part:
    assert isinstance(pending.said, Report | Fix | Amount)
    return take(bedside, pending.said, replace(pending.grant, drain=drain, heard=True))


def _ask_same(bedside: Bedside, pending: Pending) -> list[Part]:
    """The reading is asked about again: the other line could not be put right yet."""
    if not isinstance(pending.said, Report):
        return []
    return [take(bedside, pending.said, replace(pending.grant, heard=True))]


def _ask_other(bedside: Bedside, pending: Pending, target: Target) -> Part:
    """What the other line was; the reading that waits for it is held back with the question."""
    grant = replace(pending.grant, drain=target.ledger.drain)
    said = pending.said if isinstance(pending.said, Report) else None
    return ask_right_level(bedside, said, target, grant)


def _final(bedside: Bedside, pending: Pending, level_ml: int) -> Part:
    event = bedside.book.entry(pending.targets[0])
    assert event is not None
    return take_final(bedside, pending.drains[0], event, level_ml, Grant(drain=pending.drains[0]))
