"""What is measured of a patient and is no drain's, and the largest value that each can have.

Common practice, no source: a value beyond it is of something else.
"""

from __future__ import annotations

_MOST = {
    10: "pain",
    15: "gcs",
    20: "news mews pews ews",
    50: "cvp",
    60: "peep",
    80: "rr resp resps respirations",
    100: "sats sat spo2 sao2 fio2 svo2 scvo2 o2 saturation saturations",
    110: "temp temperature tmax",
    200: "map",
    300: "hr pulse nibp abp sbp dbp systolic diastolic bp",
}
MOST = {name: most for most, names in _MOST.items() for name in names.split()}
"""Names behind which a bare number is their value."""
LEAST = {
    "bp": 40,
    "hr": 20,
    "pulse": 20,
    "map": 20,
    "sats": 40,
    "sat": 40,
    "spo2": 40,
    "sao2": 40,
    "o2": 40,
    "temp": 30,
}
"""A smaller number behind these may be a bed: "bp 9 120, 10 130"."""
_DECIMAL = """
k mag mg phos ca ica cl na hb hgb hct inr lac lactate lact trop troponin creat cr creatinine bun urea
wbc wcc ph hco3 bicarb glucose gluc sugar bg bgl bm bms cbg bsl ketones crp t
afebrile febrile potassium magnesium sodium calcium phosphate albumin alb ci svr procal
bili bilirubin aptt ptt fib fibrinogen haemoglobin hemoglobin norepi norad levo levophed epi vaso vasopressin
dilaudid dopamine dobutamine milrinone precedex hydromorphone ativan lorazepam
"""
DECIMAL = frozenset(_DECIMAL.split())
"""Names behind which a number with a point is their value: no line has one."""
SALTS = {"k": (2, 8), "na": (110, 170), "cl": (80, 130), "mg": (1, 4), "ca": (1, 12), "hb": (4, 190)}
"""Blood values without a point, told beside one another: "k 4 na 140"; alone each may be another word."""
RATIO = frozenset({"vent", "abg", "vbg", "gas", "hfnc", "hfno", "bipap", "cpap", "settings"})
"""Names of values that are told one behind the other: "vent 16/450/5/40"."""
PUPILS = frozenset({"pupils", "pupil", "perrl", "perrla", "perla", "perl", "pearl"})
LOOKS = frozenset(
    {
        "equal",
        "eq",
        "and",
        "reactive",
        "brisk",
        "sluggish",
        "both",
        "bilat",
        "are",
        "round",
        "fixed",
        "at",
        "=",
    }
)
"""Between pupils and how wide they are."""
BREATHED = frozenset(
    {"sats", "sat", "spo2", "sao2", "o2", "oxygen", "rr", "resps", "desatted", "desatting", "weaned", "hfnc"}
    | {"hfno", "bipap", "nrb"}
)
"""In the clause of one of these a few litres are of oxygen."""
DEVICES = frozenset(
    {"nc", "nrb", "nrm", "nrbm", "hfnc", "hfno", "mask", "o2", "oxygen", "cannula", "venturi"}
)
"""Behind litres these say that they are of oxygen."""
MOST_OXYGEN = 80
"""Litres in a minute."""
LINKS = frozenset(
    {"=", ":", "of", "is", "was", "at", "now", "in", "the", "up", "down", "to", "dropped", "+", "score"}
    | {"are", "still", "currently", "running", "sitting", "about", "around"}
)
UNITS = frozenset({"%", "bpm", "mmhg", "s"})
