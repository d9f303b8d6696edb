"""The patient in a bed, as far as drains go: the open drains of that bed together."""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import dataclass

from bot.engine.ledger import Ledger


@dataclass(frozen=True, slots=True, kw_only=True)
class Patient:
    """The bed's open drains. A bed is not a patient: who lies in it is whose drains are open there."""

    bed: str
    drains: tuple[Ledger, ...] = ()

    @property
    def weight_kg(self) -> float | None:
        """The weight told with any of the drains; none when it was not told."""
        return next((drain.weight_kg for drain in self.drains if drain.weight_kg), None)


def patient_in(bed: str, ledgers: Iterable[Ledger]) -> Patient:
    """The bed's open drains of these, in the order of their tubes."""
    here = (each for each in ledgers if each.bed == bed and each.is_open())
    return Patient(bed=bed, drains=tuple(sorted(here, key=lambda each: (each.tube or "", each.drain))))
