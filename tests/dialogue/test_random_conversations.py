"""Random conversations of nurses of two units, through the real intake, with what must always hold."""

from __future__ import annotations

from dataclasses import replace
from datetime import timedelta

from hypothesis import HealthCheck, settings
from hypothesis import strategies as st
from hypothesis.stateful import RuleBasedStateMachine, initialize, invariant, rule

from bot.dialogue.pending import Pending
from bot.dialogue.said import Report
from bot.dialogue.said_json import loaded
from bot.engine.entries import (
    Away,
    Back,
    Checked,
    Correction,
    Described,
    Entry,
    Exchanged,
    FinalLevel,
    Incident,
    Line,
    Moved,
    Ordered,
    Placed,
    Removed,
    Withdrawal,
)
from bot.engine.volumes import intervals
from bot.store import Question
from bot.unit import Role, Unit, demo_unit
from bot.wording.formats import ml
from bot.wording.gsm import is_gsm
from bot.wording.queries.rows import row_text
from tests.dialogue.ward import Heard, Ward, nurse

BEDS = ("1", "2", "3")
OTHER_BEDS = ("CT4", "CT5")
NURSES = ("Amy", "Ben", "Carla")


def _units() -> tuple[Unit, Unit]:
    here = replace(
        demo_unit(),
        beds=BEDS,
        people=(nurse("Amy"), nurse("Ben"), nurse("Carla", Role.CHARGE)),
    )
    there = replace(here, id="other", name="Other Unit", beds=OTHER_BEDS, people=(nurse("Zoe"),))
    return here, there


EVENTS = (
    "seal 2 suction 20 no leak",
    "ordered suction 10",
    "bright red",
    "tipped over",
    "clamped",
    "unclamped",
    "off to CT",
    "back from CT",
    "is a post op heart",
)
QUERIES = (
    "last {bed}", "chart {bed}", "total {bed}", "rate {bed}", "trend {bed}", "due {bed}", "handoff {bed}",
    "capacity {bed}", "checks {bed}", "history {bed}", "open", "beds", "due", "who am i", "say again",
)  # fmt: skip

nurses = st.sampled_from(NURSES)
beds = st.sampled_from(BEDS)
levels = st.one_of(st.integers(0, 2100), st.integers(0, 30).map(lambda ten: ten * 10))
steps = st.integers(0, 120)
tubes = st.sampled_from(("", "", " left", " right"))
answers = st.one_of(
    st.sampled_from(("yes", "no", "misread", "new canister", "earlier wrong", "first", "second")),
    levels.map(lambda level: f"misread, {level}"),
    levels.map(lambda level: f"earlier wrong, {level}"),
    levels.map(str),
)


class Conversations(RuleBasedStateMachine):
    """What nurses say in any order; what they were told is kept as a chart."""

    @initialize()
    def open_the_ward(self) -> None:
        """An empty ward at eight in the morning."""
        self.ward = Ward(*_units())
        self.charted_ml = 0
        self.told: list[tuple[str, Heard]] = []
        self.known: set[str] = set()
        self.last_level = dict.fromkeys(BEDS, 0)
        self.say("Zoe", "bed CT4 mark 9876 at 0758", "07:58")
        self.say("Zoe", "yes", "07:59")

    def say(self, who: str, text: str, at: str | None = None, *, voice: bool = False) -> None:
        """Send it, and hold what it recorded against its reply."""
        heard = self.ward.says(who, text, at=at, channel="voice" if voice else "text")
        self.told.append((who, heard))
        self._chart(heard)
        self._read_back(text, heard)

    def _chart(self, heard: Heard) -> None:
        if heard.json["id"] in ("msg-1", "msg-2"):
            return
        struck = {
            (row["bed"], row["tube"], old["from"], old["to"], old["volume_ml"])
            for row in heard.json["chart"]
            for old in row["replaces"]
        }
        self.charted_ml += sum(row["volume_ml"] for row in heard.json["chart"])
        self.charted_ml -= sum(volume for *_, volume in struck)

    def _read_back(self, text: str, heard: Heard) -> None:
        fresh = [entry for entry in self.ward.entries() if entry.id not in self.known]
        self.known |= {entry.id for entry in fresh}
        for entry in fresh:
            assert _words(entry).casefold() in heard.reply.casefold(), (text, entry.payload, heard.reply)

    def _clock(self, back: int) -> str:
        local = (self.ward.now - timedelta(minutes=back)).astimezone(self.ward.unit.zone)
        return f"{local:%H%M}"

    @rule(who=nurses, bed=beds, step=steps, back=st.integers(0, 60))
    def reads_a_rising_line(self, who: str, bed: str, step: int, back: int) -> None:
        """What happens most: the line of the hour."""
        self.last_level[bed] += step
        self.say(who, f"bed {bed} mark {self.last_level[bed]} at {self._clock(back)}")

    @rule(who=nurses, bed=beds, step=steps, tube=tubes)
    def dictates_a_line(self, who: str, bed: str, step: int, tube: str) -> None:
        """A line by voice, of a tube or of none."""
        self.last_level[bed] += step
        self.say(who, f"bed {bed}{tube} mark {self.last_level[bed]}", voice=True)

    @rule(who=nurses, answer=st.sampled_from(("yes", "no", "yes", "first")))
    def answers_by_voice(self, who: str, answer: str) -> None:
        """A word, which without a question may undo."""
        self.say(who, answer, voice=True)

    @rule(who=nurses, bed=beds, tube=tubes, back=st.integers(0, 60))
    def places_a_tube(self, who: str, bed: str, tube: str, back: int) -> None:
        """A placement, live or told late, on a bed that has a drain or none."""
        self.say(who, f"new chest tube bed {bed}{tube} at {self._clock(back)}")

    @rule(who=nurses, bed=beds, final=st.one_of(st.none(), levels))
    def takes_a_tube_out(self, who: str, bed: str, final: int | None) -> None:
        """A removal, with or without the final level."""
        self.say(who, f"tube out bed {bed}" + (f", final {final}" if final is not None else ""))

    @rule(who=nurses, bed=beds, first=steps, second=steps)
    def tells_two_tubes(self, who: str, bed: str, first: int, second: int) -> None:
        """Two tubes of one bed in one message."""
        now = self._clock(0)
        self.say(who, f"bed {bed} left mark {first} at {now}; bed {bed} right mark {second} at {now}")

    @rule(who=nurses, bed=beds, back=st.integers(0, 60), to_bed=beds)
    def says_it_was_another_bed(self, who: str, bed: str, back: int, to_bed: str) -> None:
        """A line on the wrong bed, if there was one at that time."""
        if bed != to_bed:
            self.say(who, f"correct bed {bed} {self._clock(back)} to bed {to_bed}")

    @rule(who=nurses, bed=beds, level=levels, back=st.integers(0, 60))
    def reads_any_line(self, who: str, bed: str, level: int, back: int) -> None:
        """A misreading, a line long forgotten, a fall."""
        self.say(who, f"bed {bed} mark {level} at {self._clock(back)}")

    @rule(who=nurses, answer=answers)
    def answers_barely(self, who: str, answer: str) -> None:
        """An answer, whether or not anything was asked."""
        self.say(who, answer)

    @rule(who=nurses, bed=beds, answer=st.sampled_from(("yes", "no")))
    def answers_for_a_bed(self, who: str, bed: str, answer: str) -> None:
        """An answer that says which bed it is for."""
        self.say(who, f"{bed} {answer}")

    @rule(who=nurses, bed=beds, final=st.one_of(st.none(), levels))
    def changes_the_canister(self, who: str, bed: str, final: int | None) -> None:
        """An exchange, with or without the final level."""
        self.last_level[bed] = 0
        told = f", old one {final}" if final is not None else ""
        self.say(who, f"changed the canister bed {bed}{told}")

    @rule(who=nurses, bed=beds, volume=st.integers(1, 200))
    def tells_an_amount(self, who: str, bed: str, volume: int) -> None:
        """An amount instead of a line."""
        self.say(who, f"bed {bed} drained {volume} since last")

    @rule(who=nurses)
    def scratches_that(self, who: str) -> None:
        """Undo, whatever it was."""
        self.say(who, "scratch that")

    @rule(who=nurses, bed=beds, back=st.integers(0, 60), level=levels)
    def corrects(self, who: str, bed: str, back: int, level: int) -> None:
        """A correction of a line that may or may not be there."""
        self.say(who, f"correct bed {bed} {self._clock(back)} to {level}")

    @rule(who=nurses, bed=beds, to_bed=beds)
    def moves(self, who: str, bed: str, to_bed: str) -> None:
        """A patient goes to another bed, occupied or not."""
        if bed != to_bed:
            self.say(who, f"bed {bed} moved to bed {to_bed}")

    @rule(who=nurses, bed=beds, told=st.sampled_from(EVENTS))
    def tells_what_is_no_level(self, who: str, bed: str, told: str) -> None:
        """A check, an order, an incident, a patient who is away: all of it is read back too."""
        self.say(who, f"bed {bed} {told}")

    @rule(who=nurses, bed=beds, query=st.sampled_from(QUERIES))
    def asks(self, who: str, bed: str, query: str) -> None:
        """A query records nothing and shows nothing of the other unit."""
        before = len(self.ward.entries())
        self.say(who, query.format(bed=bed))
        assert len(self.ward.entries()) == before

    @rule(minutes=st.integers(1, 90))
    def time_goes_on(self, minutes: int) -> None:
        """Questions lapse and lines grow old, within the day."""
        later = self.ward.now + timedelta(minutes=minutes)
        if later.astimezone(self.ward.unit.zone).hour >= self.ward.now.astimezone(self.ward.unit.zone).hour:
            self.ward.now = later

    @invariant()
    def what_was_charted_adds_up(self) -> None:
        """The chart that the nurses kept from the replies is what the ledgers hold, to the millilitre."""
        schedule = self.ward.unit.policy.schedule
        ledgers = {ledger.drain: ledger for bed in BEDS for ledger in self.ward.ledgers(bed)}
        held = sum(each.volume_ml for ledger in ledgers.values() for each in intervals(ledger, schedule))
        assert self.charted_ml == held

    @invariant()
    def nothing_is_recorded_while_it_is_asked(self) -> None:
        """The reading of an unsettled question, a line or a final level, is on no ledger."""
        entries = self.ward.entries()
        for question in self.ward.unsettled():
            said = loaded(question.said_json, Pending).said
            if isinstance(said, Report):
                assert not any(_is_that(entry, question, said) for entry in entries), (question, said)

    @invariant()
    def every_reply_can_be_sent_and_shows_nothing_of_another_unit(self) -> None:
        """The alphabet of a text message, and no bed, name or level of the other unit."""
        for who, heard in self.told[-1:]:
            assert is_gsm(heard.reply)
            foreign = ("1, 2", "Amy") if who == "Zoe" else ("CT4", "Zoe", "9,876", "Other")
            assert not any(word in heard.reply for word in foreign)


def _words(entry: Entry) -> str:
    """What a reply must hold of an entry that it recorded."""
    match entry.payload:
        case Line(level_ml=level) | FinalLevel(level_ml=level):
            return ml(level)
        case Correction(level_ml=int(level)):
            return ml(level)
        case Exchanged():
            return "anister changed"
        case Moved(to_bed=bed):
            return f"moved to bed {bed}"
        case Placed():
            return "tube placed"
        case Removed():
            return "ube removed"
        case Withdrawal(moved_to=None):
            return "Withdrawn"
        case Checked() | Ordered() | Incident() | Away() | Back() | Described(tube=None):
            return row_text(entry.payload)
        case _:
            return ""


def _is_that(entry: Entry, question: Question, said: Report) -> bool:
    """Whether the sender of the question has recorded its reading, with the message or since."""
    own = entry.who == question.sender and entry.entered >= question.asked_at
    there = entry.drain == question.drain and entry.at == said.at
    level = _level(entry.payload)
    return own and there and level is not None and level in (_level(said.fact), said.final_ml)


def _level(payload: object) -> int | None:
    return payload.level_ml if isinstance(payload, Line | FinalLevel) else None


TestConversations = Conversations.TestCase
TestConversations.settings = settings(
    max_examples=30,
    stateful_step_count=25,
    suppress_health_check=[HealthCheck.too_slow],
)
