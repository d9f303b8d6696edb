"""Who is sent which notice when: first, next, again, never."""

from __future__ import annotations

from dataclasses import replace
from datetime import UTC, datetime, timedelta

import pytest
from hypothesis import given
from hypothesis import strategies as st

from bot.notices.plan import LASTS, NOBODY, Round, dead, is_repeat, letter_id, sends
from bot.store.notices import Attempt, Filed, Notice, Outcome
from bot.unit import Notify

NOON = datetime(2026, 3, 4, 12, tzinfo=UTC)
NOTIFY = Notify(people=("carla", "ben", "amy"))


def after(minutes: float) -> datetime:
    """So many minutes after the notice was queued."""
    return NOON + timedelta(minutes=minutes)


def notice(code: str = "ladder", text: str = "URGENT: 620 mL", queued: float = 0) -> Notice:
    """A notice about bed 12."""
    return Notice(
        unit="ward", bed="12", drain="d1", code=code, text=text, queued_at=after(queued), message="m1"
    )


def tried(person: str, minutes: float, outcome: Outcome = "failed") -> Attempt:
    """An attempt to reach the person."""
    return Attempt(notice=1, person=person, at=after(minutes), outcome=outcome)


def filed(*attempts: Attempt, number: int = 1, of: Notice | None = None) -> Filed:
    """The notice with its attempts."""
    return Filed(number=number, notice=of or notice(), attempts=attempts)


def at(minutes: float, *people: str) -> Round:
    """A look at the outbox so many minutes later."""
    return Round(
        people=people or NOTIFY.people, notify=NOTIFY, first_wait=timedelta(seconds=5), now=after(minutes)
    )


def told(minutes: float, *outbox: Filed) -> list[str]:
    """Who is sent something then."""
    return [letter.person for letter in sends(outbox, at(minutes))]


def test_a_notice_goes_to_the_first_person_at_once() -> None:
    assert told(0, filed()) == ["carla"]


@pytest.mark.parametrize(("minutes", "people"), [(9.9, []), (10, ["ben"])])
def test_the_next_person_is_told_when_nobody_has_seen_it(minutes: float, people: list[str]) -> None:
    assert told(minutes, filed(tried("carla", 0, "delivered"))) == people


@pytest.mark.parametrize(("minutes", "people"), [(29.9, []), (30, ["ben"])])
def test_a_reminder_waits_longer_before_it_is_passed_on(minutes: float, people: list[str]) -> None:
    outbox = filed(tried("carla", 0, "delivered"), of=notice("overdue"))
    assert told(minutes, outbox) == people


def test_the_list_is_gone_down_to_its_end_and_no_further() -> None:
    outbox = filed(tried("carla", 0, "delivered"), tried("ben", 10, "delivered"))
    assert told(19, outbox) == []
    assert told(20, outbox) == ["amy"]
    everyone = filed(*outbox.attempts, tried("amy", 20, "delivered"))
    assert told(500, everyone) == []


@pytest.mark.parametrize("done", [{"seen_at": after(3)}, {"over": True}])
def test_what_was_seen_or_is_over_goes_to_nobody_else(done: dict[str, object]) -> None:
    outbox = replace(filed(tried("carla", 0, "delivered")), **done)  # type: ignore[arg-type]
    assert told(60, outbox) == []


@pytest.mark.parametrize(
    ("failures", "wait_s"), [(1, 5), (2, 15), (3, 30), (4, 60), (5, 120), (6, 300), (11, 14_400)]
)
def test_each_failure_is_waited_after_for_longer(failures: int, wait_s: int) -> None:
    outbox = filed(*(tried("carla", number / 1000) for number in range(failures)))
    last = outbox.attempts[-1].at - NOON
    early, due = (last + timedelta(seconds=wait_s + off) for off in (-1, 0))
    assert "carla" not in told(early / timedelta(minutes=1), outbox)
    assert "carla" in told(due / timedelta(minutes=1), outbox)


def test_while_one_person_is_tried_again_the_next_is_told() -> None:
    outbox = filed(*(tried("carla", minutes) for minutes in (0, 1, 2, 3, 5)))
    assert told(10, outbox) == ["carla", "ben"]


def test_when_one_person_cannot_be_reached_the_next_is_told_at_once() -> None:
    assert told(0.1, filed(tried("carla", 0, "refused"))) == ["ben"]


def test_what_was_tried_twelve_times_is_given_up_and_listed() -> None:
    outbox = filed(*(tried("carla", 0) for _ in range(12)))
    assert "carla" not in told(1000, outbox)
    assert [letter.person for letter in dead([outbox], at(1))] == ["carla"]
    assert dead([filed(*outbox.attempts[:11])], at(1)) == ()


def test_what_is_a_day_old_goes_to_nobody_and_is_listed_for_all_who_never_got_it() -> None:
    day = LASTS / timedelta(minutes=1)
    outbox = filed(tried("carla", 0, "delivered"))
    assert told(day, filed()) == ["carla"]
    assert told(day + 0.1, filed()) == []
    assert [letter.person for letter in dead([outbox], at(day + 0.1))] == ["ben", "amy"]


def test_what_grew_old_while_there_was_nobody_to_tell_is_listed_to_nobody() -> None:
    alone = Round(people=(), notify=NOTIFY, first_wait=timedelta(seconds=5), now=after(LASTS.total_seconds()))
    young = replace(alone, now=after(1))
    assert sends([filed()], young) == dead([filed()], young) == ()
    assert [letter.person for letter in dead([filed()], alone)] == [NOBODY]
    assert dead([replace(filed(), over=True)], alone) == ()


def test_someone_no_longer_on_the_list_is_passed_over() -> None:
    assert [letter.person for letter in sends([filed()], at(0, "ben"))] == ["ben"]


def test_dangers_go_before_reminders() -> None:
    outbox = (filed(of=notice("overdue", "late")), filed(number=2))
    assert [letter.filed.number for letter in sends(outbox, at(0))] == [2, 1]


@pytest.mark.parametrize(("minutes", "count"), [(59.9, 1), (60, 2)])
def test_the_same_again_within_the_hour_is_not_sent_again(minutes: float, count: int) -> None:
    outbox = (filed(), filed(number=2, of=notice(queued=minutes)))
    assert len(told(minutes, *outbox)) == count


@pytest.mark.parametrize(
    ("other", "count"),
    [({"code": "amount_at_once"}, 1), ({"drain": None}, 1), ({"drain": "d2"}, 2), ({"bed": "14"}, 2)],
)
def test_the_same_words_by_another_rule_are_sent_once(other: dict[str, str | None], count: int) -> None:
    outbox = (filed(), filed(number=2, of=replace(notice(), **other)))  # type: ignore[arg-type]
    assert len(told(0, *outbox)) == count


def test_repeats_are_quiet_for_an_hour_and_not_for_ever() -> None:
    outbox = tuple(filed(number=n, of=notice(queued=50 * n)) for n in range(4))
    assert [letter.filed.number for letter in sends(outbox, at(200))] == [0, 2]


def test_another_number_of_the_same_rule_is_no_repeat() -> None:
    assert told(5, filed(), filed(number=2, of=notice(text="URGENT: 900 mL", queued=5))) == ["carla"] * 2


def test_a_danger_is_told_again_when_the_first_was_a_misreading() -> None:
    outbox = (replace(filed(), over=True), filed(number=2, of=notice(queued=5)))
    assert [letter.filed.number for letter in sends(outbox, at(5))] == [2]


def test_what_was_asked_and_then_confirmed_is_told_twice() -> None:
    asked = replace(notice(), unconfirmed=True)
    assert not is_repeat(notice(queued=1), [asked], NOTIFY)


def test_a_letter_keeps_its_id_and_no_two_share_one() -> None:
    first, again = filed(), filed(tried("carla", 0))
    assert letter_id(first, "carla") == letter_id(again, "carla")
    ids = {letter_id(each, who) for each in (first, filed(number=2)) for who in NOTIFY.people}
    assert len(ids) == 6


@given(st.lists(st.sampled_from(["delivered", "failed", "refused"]), max_size=60), st.integers(1, 4))
def test_everyone_gets_a_danger_or_is_listed_whatever_the_gateway_answers(
    answers: list[Outcome], people: int
) -> None:
    """A whole day of looks: nobody is sent what they have, and nobody on the list is forgotten."""
    names = tuple(f"p{number}" for number in range(people))
    outbox, coming = filed(), iter(answers)
    for minute in range(0, 24 * 60, 7):
        for letter in sends([outbox], at(minute, *names)):
            assert not letter.delivered
            attempt = tried(letter.person, minute, next(coming, "delivered"))
            outbox = replace(outbox, attempts=(*outbox.attempts, attempt))
    lost = {letter.person for letter in dead([outbox], at(24 * 60, *names))}
    got = {each.person for each in outbox.attempts if each.outcome == "delivered"}
    assert got | lost == set(names)
    assert not got & lost
