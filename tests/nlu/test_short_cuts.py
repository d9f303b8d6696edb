"""What is not looked for, because it cannot be there, is not there: the reader is the same without."""

from __future__ import annotations

import random
from collections.abc import Iterable, Iterator
from concurrent.futures import ThreadPoolExecutor
from datetime import UTC, date, datetime, time, timedelta
from itertools import chain, pairwise, product
from typing import Literal
from zoneinfo import ZoneInfo

import pytest
from dateutil import tz
from hypothesis import given
from hypothesis import strategies as st

from nlu import parse
from nlu.bridging import bridged
from nlu.clock import clocks
from nlu.clockface import Clock, Style
from nlu.context import in_context
from nlu.cutting import cuts
from nlu.doubtwords import doubts_in
from nlu.items import Item
from nlu.labels import bed_index, beds
from nlu.lattice import Lattice
from nlu.leftovers import leftovers
from nlu.lengths import length
from nlu.measures import measured
from nlu.moments import BARE_REACH, LIST_REACH, REACH, SKEW, Moment, moment
from nlu.ofreading import doubts_of_reading
from nlu.patterns.misgivings import PLAIN
from nlu.phrasebook import phrases, stretches
from nlu.pipeline import Pipeline, pipeline
from nlu.recast import with_cues
from nlu.roles import assignments
from nlu.scope import scoped
from nlu.subjects import TELLING as TELLING_CUES
from nlu.subjects import subjects
from nlu.tokens import Words, tokens
from nlu.verdict import Reading
from tests.nlu.corpus import cases
from tests.nlu.saying import ARRIVED, BEDS, CHANNELS
from tests.nlu.test_any_text import MESSAGES, mutated

EVERYTHING = frozenset({"minute", "hour", "past", "to", "march", "/", "-", "ml", "liter"})
"""A word of each kind without which something is not looked for."""
TELLING = (
    *EVERYTHING, *("min", "h", "ago", "after", "of", "half", "quarter", "an", "a", "now", "minus"),
    *("seven", "twelve", "thirty", "fifty", "oh", "hundred", "noon", "third", "may", "last", "night"),
    *("7", "07", "12", "15", "1050", "1900", "0730", "2026", ".", ",", ":", "l", "in", "the", "bed", "mark"),
)  # fmt: skip
BESIDE = frozenset({"(", "from", "again"})
CHANGES = (date(2026, 3, 8), date(2026, 11, 1), date(2026, 3, 29), date(2026, 10, 25), date(2026, 7, 1))
"""Days on which clocks are put forward or back, and one on which none is."""
READER = pipeline()
ZONES = ("America/New_York", "Europe/London", "Australia/Lord_Howe", "Asia/Kolkata")


def _wide(toks: Words, words: frozenset[str]) -> Words:
    """The same tokens, in which every rule that needs one of these words is asked."""
    wide = Words(toks)
    wide.words |= words
    return wide


def _same(text: str) -> None:
    near = READER.read(text).tokens
    wide = _wide(near, EVERYTHING)
    for i in range(len(near)):
        assert clocks(near, i) == clocks(wide, i)
        assert length(near, i) == length(wide, i)
        for voice in (False, True):
            assert list(measured(near, i, voice=voice)) == list(measured(wide, i, voice=voice))


@given(st.lists(st.sampled_from(TELLING), max_size=9).map(" ".join))
def test_what_needs_a_word_that_was_not_said_is_not_there(text: str) -> None:
    _same(text)


@pytest.mark.parametrize("name", ["corpus_typed", "corpus_dictated"])
def test_no_message_of_the_corpora_is_read_otherwise_when_all_is_looked_for(name: str) -> None:
    for case in cases(name):
        _same(case.line["text"])


class Anything(frozenset[str]):
    """What no word is missing from."""

    def __contains__(self, word: object) -> bool:
        return True


def _found(texts: Iterable[str]) -> list[object]:
    """All that can be read at each place of some messages."""
    index = bed_index(("1", "2", "2B", "3-B", "4", "12", "CT1", "ICU 3"))
    found: list[object] = []
    for text, voice in product(texts, (False, True)):
        toks = READER.read(text, voice=voice).tokens
        for i in range(len(toks)):
            found += [clocks(toks, i), list(measured(toks, i, voice=voice))]
            found += [list(beds(toks, i, index, voice=voice, cued=cued)) for cued in (False, True)]
    return found


def _days() -> Iterator[str]:
    """Days and dates, said before a time and behind it."""
    for day in (
        *("the third of march", "on the 3rd of may", "may 3", "3/4", "last monday", "on tuesday night"),
        *("yesterday", "last night", "early this morning", "2026-03-04"),
    ):
        yield from (f"{day} at 1900", f"7 {day}", f"half past seven {day}")


def _soups() -> Iterator[str]:
    """Telling words in any order."""
    rng = random.Random(5)
    for _ in range(1500):
        yield " ".join(rng.choices(TELLING, k=rng.randint(2, 6)))


def test_what_stands_behind_a_number_begins_with_one_of_the_words_that_are_looked_for(
    monkeypatch: pytest.MonkeyPatch,
) -> None:
    texts = [*_soups(), *_days(), *MESSAGES]
    near = _found(texts)
    for first_words in ("numbers._GOES_ON", "suffixes._HOURS", "days._DATES", "measures._UNITS"):
        monkeypatch.setattr(f"nlu.{first_words}", Anything())
    monkeypatch.setattr("nlu.labels._may_go_on", lambda _: True)
    assert _found(texts) == near


def _by_every_day(clock: Clock, hours: list[int], arrived: datetime, reach: timedelta) -> Moment:
    """The same rule, with every day of four looked at whole."""
    past: list[tuple[timedelta, datetime]] = []
    for back in (-1, 0, 1, 2):
        for hour in hours:
            day = arrived.date() - timedelta(days=back - hour // 24)
            first = datetime.combine(day, time(hour % 24, clock.minute), arrived.tzinfo)
            shown = [first, first.replace(fold=1)] if tz.datetime_ambiguous(first) else [first]
            ago = [arrived.astimezone(UTC) - at.astimezone(UTC) for at in shown]
            if ago[0] >= -SKEW and not tz.datetime_exists(first):
                if (
                    arrived.date() - timedelta(days=back) >= arrived.date() - timedelta(days=1)
                    and ago[0] < reach
                ):
                    return Moment()
            elif ago[0] >= -SKEW:
                past += [pair for pair in zip(ago, shown, strict=True) if pair[0] >= -SKEW]
    past.sort(key=lambda pair: pair[0])
    bare = clock.style != "24"
    near = [at for ago, at in past if ago <= (BARE_REACH if bare else reach)]
    if not near and bare and clock.colon and clock.hour >= 10:
        near = [at for ago, at in past if ago <= reach and at.hour == clock.hour]
    if not near:
        return Moment((), tuple(at for _, at in past[: 2 if bare else 1]))
    shown_first = near[0].replace(tzinfo=None, fold=0)
    twice = [at for at in near if at.replace(tzinfo=None, fold=0) == shown_first]
    return Moment(tuple(sorted(twice, key=lambda at: at.astimezone(UTC))))


@given(
    hour=st.integers(0, 23),
    minute=st.sampled_from((0, 1, 15, 30, 59)),
    style=st.sampled_from(("24", "12", "hour")),
    colon=st.booleans(),
    day=st.sampled_from(CHANGES),
    shift=st.integers(-36 * 60, 36 * 60),
    zone=st.sampled_from(ZONES),
    reach=st.sampled_from((REACH, LIST_REACH)),
)
def test_a_time_is_the_moment_that_a_look_at_every_day_finds(  # noqa: PLR0913 - what a time depends on
    hour: int,
    minute: int,
    style: Style,
    colon: bool,
    day: date,
    shift: int,
    zone: str,
    reach: timedelta,
) -> None:
    arrived = (datetime.combine(day, time(12), UTC) + timedelta(minutes=shift)).astimezone(ZoneInfo(zone))
    clock = Clock(hour=hour, minute=minute, style=style, colon=colon)
    hours = [hour] if style == "24" else [hour % 12, hour % 12 + 12]
    found, wanted = moment(clock, arrived, reach), _by_every_day(clock, hours, arrived, reach)
    assert found == wanted
    assert [at.fold for at in found.values] == [at.fold for at in wanted.values]


def test_no_event_is_told_around_a_bed_unless_its_words_stand_side_by_side_in_a_phrase() -> None:
    """What the reader takes for a reason not to look holds for every phrase that has an event."""
    for label, patterns in phrases():
        if label.partition(":")[0] in {"what", "kind"}:
            for pattern in patterns:
                for said in product(*stretches(pattern)):
                    assert READER.book.joints.issuperset(pairwise(chain.from_iterable(said)))


@pytest.mark.parametrize("name", ["corpus_typed", "corpus_dictated"])
def test_no_cue_is_missed_where_the_words_around_a_bed_are_no_phrase(
    name: str, monkeypatch: pytest.MonkeyPatch
) -> None:
    reads = [READER.read(case.line["text"], voice="dictated" in name) for case in cases(name)]
    near = [bridged(read.cues, read.tokens, {}) for read in reads]
    monkeypatch.setattr("nlu.bridging._joins", lambda *_: True)
    assert [bridged(read.cues, read.tokens, {}) for read in reads] == near


def _readings(name: str) -> Iterator[tuple[tuple[Item, ...], Words]]:
    """The pieces of every reading of a corpus, before and after each number has its role."""
    for case in cases(name):
        index = bed_index(tuple(case.line["beds"]))
        read = with_cues(READER.read(case.line["text"], voice="dictated" in name), index)
        for way in Lattice(read, index, voice="dictated" in name).ways():
            whole = in_context(scoped(way, read.tokens), read.tokens)
            for items in (way, *assignments(whole, ARRIVED)[0]):
                yield items, read.tokens


@pytest.mark.parametrize("name", ["corpus_typed", "corpus_dictated"])
def test_a_rule_that_is_not_asked_had_nothing_to_say(name: str, monkeypatch: pytest.MonkeyPatch) -> None:
    readings = list(_readings(name))
    both = (False, True)
    near = [leftovers(items, toks, voice=voice) for items, toks in readings for voice in both]
    monkeypatch.setattr("nlu.rules.asked", lambda rules, *_: list(rules))
    monkeypatch.setattr("nlu.clauses.asked", lambda rules, *_: list(rules))
    assert [leftovers(items, toks, voice=voice) for items, toks in readings for voice in both] == near


@pytest.mark.parametrize("name", ["corpus_typed", "corpus_dictated"])
def test_a_piece_that_ends_as_far_as_anything_there_can_is_not_cut_in_two(
    name: str, monkeypatch: pytest.MonkeyPatch
) -> None:
    readings = list(_readings(name))
    near = [cuts(items, toks, voice) for items, toks in readings for voice in (False, True)]
    monkeypatch.setattr("nlu.cutting._furthest", lambda toks, _: len(toks) + 1)
    assert [cuts(items, toks, voice) for items, toks in readings for voice in (False, True)] == near


@pytest.mark.parametrize("name", ["corpus_typed", "corpus_dictated"])
def test_what_stands_beside_a_number_is_not_looked_for_only_where_it_is_not(
    name: str, monkeypatch: pytest.MonkeyPatch
) -> None:
    readings = list(_readings(name))
    near = [(in_context(items, toks), list(subjects(items, toks))) for items, toks in readings]
    monkeypatch.setattr("nlu.context.there", lambda _: frozenset({"ask", "question", "fluid"}))
    monkeypatch.setattr("nlu.subjects.there", lambda _: TELLING_CUES)
    wide = [(items, _wide(toks, BESIDE)) for items, toks in readings]
    assert [(in_context(items, toks), list(subjects(items, toks))) for items, toks in wide] == near


@pytest.mark.parametrize("name", ["corpus_typed", "corpus_dictated"])
def test_a_message_without_an_s_has_no_owner(name: str) -> None:
    for case in cases(name):
        index = bed_index(tuple(case.line["beds"]))
        read = with_cues(READER.read(case.line["text"]), index)
        wide = read._replace(tokens=_wide(read.tokens, frozenset({"s"})))
        assert Lattice(read, index, voice=False).ways() == Lattice(wide, index, voice=False).ways()


def test_a_reading_that_is_judged_no_further_could_not_have_stood(monkeypatch: pytest.MonkeyPatch) -> None:
    rng = random.Random(8)
    texts = [*MESSAGES, *_soups()][::3]
    texts += [mutated(rng) for _ in range(300)]
    asked = [(text, channel) for text in texts for channel in CHANNELS]
    near = [parse(text, arrived=ARRIVED, beds=BEDS, channel=channel) for text, channel in asked]
    monkeypatch.setattr("nlu.verdict._least", lambda each: each.rank[0] if isinstance(each, Reading) else 0)
    assert [parse(text, arrived=ARRIVED, beds=BEDS, channel=channel) for text, channel in asked] == near


def test_a_phrase_is_found_by_whoever_says_its_first_word_first() -> None:
    """What one thread has the matcher learn while others look is learnt once, and whole."""
    fresh, texts = Pipeline(), [case.line["text"] for case in cases("corpus_typed")][:200]
    with ThreadPoolExecutor(8) as pool:
        found = list(pool.map(fresh.read, [*texts, *reversed(texts)]))
    assert found == [READER.read(text) for text in (*texts, *reversed(texts))]


@given(st.lists(st.sampled_from([*sorted(PLAIN), "2", "12", "100", "1900"]), max_size=9).map(" ".join))
def test_plain_words_doubt_nothing(text: str) -> None:
    toks = tokens(text)
    assert not list(doubts_in(toks))
    assert not list(doubts_of_reading(toks, frozenset(), ()))


@pytest.mark.parametrize(("name", "channel"), [("corpus_typed", "text"), ("corpus_dictated", "voice")])
def test_nothing_of_a_plain_message_is_doubted_when_all_is_looked_for(
    name: str, channel: Literal["text", "voice"], monkeypatch: pytest.MonkeyPatch
) -> None:
    texts = [case.line["text"] for case in cases(name)]
    near = [parse(text, arrived=ARRIVED, beds=BEDS, channel=channel) for text in texts]
    monkeypatch.setattr("nlu.patterns.misgivings.PLAIN", frozenset())
    assert [parse(text, arrived=ARRIVED, beds=BEDS, channel=channel) for text in texts] == near
