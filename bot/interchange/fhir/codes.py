"""The codes that are used, and where a text stands instead because no code fits.

LOINC 9129-8 and 9168-6: LOINC; MIMIC-on-FHIR mapping table. SNOMED CT 251843005: HL7 Belgium
patient-monitoring guide. Units: UCUM 2.2. LOINC's timed forms are rates and are not used.
"""

from __future__ import annotations

from typing import Any

from bot.engine.entries import Reason

LOINC = "http://loinc.org"
SNOMED = "http://snomed.info/sct"
UCUM = "http://unitsofmeasure.org"

_PLEURAL = {"system": LOINC, "code": "9129-8", "display": "Fluid output chest tube"}
_PERICARDIAL = {"system": LOINC, "code": "9168-6"}
_ANY_DRAIN = {"system": SNOMED, "code": "251843005", "display": "Fluid output from drain"}

_PLEURAL_WORDS = frozenset({"left", "right", "pleural", "apical", "basal"})


def volume_code(tube: str | None, joined: tuple[str, ...], reason: Reason) -> dict[str, Any]:
    """The code of a volume to chart.

    A tube on a side, and one with no name, is a chest tube (9129-8); a mediastinal one has no LOINC code.
    Where the words leave it open (no name after heart surgery, where it is as likely mediastinal; tubes
    of two kinds joined) the general code stands.
    """
    kinds = [_kind(name, reason) for name in (joined or (tube,))]
    coding = kinds[0] if all(kind is kinds[0] for kind in kinds) else _ANY_DRAIN
    return {"coding": [dict(coding)], "text": "Volume drained between two lines"}


def site(tube: str | None, joined: tuple[str, ...]) -> dict[str, Any]:
    """The body site, in the words of the ward: `{"bodySite": ...}`, or nothing for a tube with no name."""
    named = ", ".join(joined) or tube
    return {"bodySite": {"text": named}} if named else {}


def quantity_ml(volume_ml: int, *, at_least: bool = False) -> dict[str, Any]:
    """A volume in mL; "at least" as R4's comparator."""
    value: dict[str, Any] = {"value": volume_ml, "unit": "mL", "system": UCUM, "code": "mL"}
    return {**value, "comparator": ">="} if at_least else value


def _kind(tube: str | None, reason: Reason) -> dict[str, str]:
    words = frozenset((tube or "").split())
    if "pericardial" in words:
        return _PERICARDIAL
    if "mediastinal" in words:
        return _ANY_DRAIN
    if reason is Reason.CARDIAC and not words & _PLEURAL_WORDS:
        return _ANY_DRAIN
    return _PLEURAL
