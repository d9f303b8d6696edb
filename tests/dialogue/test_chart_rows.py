"""What the answer object says of the volumes that a message charts or strikes out."""

from __future__ import annotations

from tests.dialogue.ward import Ward


def test_a_volume_that_is_at_least_so_much_is_listed_with_that_caution() -> None:
    ward = Ward()
    ward.says("Amy", "bed 8 mark 1820 at 0300", at="03:00")
    ward.says("Amy", "changed the canister bed 8 at 0330", at="03:31")
    answer = ward.says("Amy", "bed 8 mark 60 at 0400", at="04:00")
    assert answer.json["chart"][0]["at_least"] is True
    assert "at_least" in answer.codes


def test_a_volume_that_is_struck_out_is_not_to_be_charted() -> None:
    ward = Ward()
    ward.says("Amy", "bed 8 mark 100 at 0300", at="03:00")
    ward.says("Amy", "bed 8 mark 160 at 0400", at="04:00")
    (row,) = ward.says("Amy", "scratch that", at="04:01").json["chart"]
    assert row["replaces"][0]["volume_ml"] == 60
    assert row["to_chart"] is False
