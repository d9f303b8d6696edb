"""Words of times and days. Phrases are tuples of tokens, longest first where one begins another."""

from __future__ import annotations

AMPM = {
    "am": "am",
    "pm": "pm",
}
PARTS: tuple[tuple[tuple[str, ...], str], ...] = (
    (("early", "in", "the", "morning"), "morning"),
    (("in", "in", "the", "morning"), "morning"),
    (("in", "the", "early", "morning"), "morning"),
    (("in", "the", "morning"), "morning"),
    (("in", "in", "morning"), "morning"),
    (("in", "morning"), "morning"),
    (("in", "the", "afternoon"), "afternoon"),
    (("in", "afternoon"), "afternoon"),
    (("in", "the", "evening"), "evening"),
    (("in", "evening"), "evening"),
    (("in", "the", "am"), "am"),
    (("in", "the", "pm"), "pm"),
    (("early", "morning"), "morning"),
    (("early", "afternoon"), "afternoon"),
    (("early", "evening"), "evening"),
    (("at", "night"), "night"),
    (("morning",), "morning"),
    (("afternoon",), "afternoon"),
    (("evening",), "evening"),
)
DAYS: tuple[tuple[tuple[str, ...], str, str], ...] = (
    (("early", "this", "morning"), "today", "morning"),
    (("earlier", "this", "morning"), "today", "morning"),
    (("this", "morning"), "today", "morning"),
    (("this", "am"), "today", "morning"),
    (("this", "afternoon"), "today", "afternoon"),
    (("this", "pm"), "today", "pm"),
    (("this", "evening"), "today", "evening"),
    (("last", "night"), "last", "night"),
    (("last", "evening"), "yesterday", "evening"),
    (("last", "nite"), "last", "night"),
    (("yesterday", "morning"), "yesterday", "morning"),
    (("yesterday", "afternoon"), "yesterday", "afternoon"),
    (("yesterday", "evening"), "yesterday", "evening"),
    (("yesterday", "night"), "last", "night"),
    (("earlier", "today"), "today", ""),
    (("yesterday",), "yesterday", ""),
    (("yest",), "yesterday", ""),
    (("today",), "today", ""),
    (("tonight",), "tonight", "night"),
    (("tonite",), "tonight", "night"),
)
WEEKDAYS = {
    "monday": 0,
    "mon": 0,
    "tuesday": 1,
    "tues": 1,
    "tue": 1,
    "wednesday": 2,
    "wed": 2,
    "thursday": 3,
    "thurs": 3,
    "thu": 3,
    "friday": 4,
    "fri": 4,
    "saturday": 5,
    "sunday": 6,
}
MONTHS = {
    "january": 1,
    "jan": 1,
    "february": 2,
    "feb": 2,
    "march": 3,
    "mar": 3,
    "april": 4,
    "apr": 4,
    "may": 5,
    "june": 6,
    "jun": 6,
    "july": 7,
    "jul": 7,
    "august": 8,
    "aug": 8,
    "september": 9,
    "sept": 9,
    "sep": 9,
    "october": 10,
    "oct": 10,
    "november": 11,
    "nov": 11,
    "december": 12,
    "dec": 12,
}
NOW: tuple[tuple[str, ...], ...] = (
    ("at", "the", "present", "time"),
    ("at", "the", "present", "moment"),
    ("at", "the", "moment"),
    ("at", "the", "minute"),
    ("at", "this", "moment"),
    ("at", "this", "time"),
    ("at", "present"),
    ("this", "minute"),
    ("right", "now"),
    ("just", "now"),
    ("as", "of", "now"),
    ("presently",),
    ("currently",),
    ("now",),
    ("atm",),
)
NOON = {"noon": 12, "midday": 12, "noontime": 12, "midnight": 0, "midnite": 0}
MINUTE_WORDS = frozenset({"minute", "minutes", "min", "mins", "m"})
HOUR_WORDS = frozenset({"hour", "hours", "hr", "hrs", "h"})
PAST = frozenset({"past", "after"})
TO = frozenset({"to", "till", "til", "before", "of"})
AGO = frozenset({"ago", "earlier", "back", "before", "prior"})
AT = frozenset({"at", "@", "around", "about", "approximately", "approx", "exactly", ",", "circa", "~"})
