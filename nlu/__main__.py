"""`python -m nlu`: read one message, or JSON lines with `--batch`."""

from __future__ import annotations

import argparse
import json
import sys
from collections.abc import Sequence
from datetime import datetime, time
from typing import Any

from dateutil import tz

from .explaining import explained
from .forms import parsed_form
from .read import parse

SHIFTS = ("07:00", "19:00")
CAPACITY_ML = 2000


def main(argv: Sequence[str] | None = None) -> int:
    """Exit code 0, or 2 for a wrong command line."""
    parser = _parser()
    args = parser.parse_args(argv)
    if args.batch:
        return _batch()
    if args.text is None or args.arrived is None:
        parser.error("TEXT and --arrived are needed without --batch")
    message = {"text": args.text, "arrived": args.arrived, "zone": args.zone, "channel": args.channel}
    if args.beds:
        message["beds"] = labels(args.beds)
    try:
        asked = _asked(message)
    except (KeyError, TypeError, ValueError) as problem:
        parser.error(str(problem))
    if args.explain:
        print(
            explained(
                asked["text"], arrived=asked["arrived"], beds=asked["beds"], voice=args.channel == "voice"
            )
        )
    print(json.dumps(parsed_form(parse(**asked)), ensure_ascii=False))
    return 0


def _parser() -> argparse.ArgumentParser:
    parser = argparse.ArgumentParser(
        prog="python -m nlu", description="Read a message about a chest-drain canister."
    )
    parser.add_argument("text", nargs="?", metavar="TEXT")
    parser.add_argument("--arrived", help="when it arrived, ISO 8601, with or without offset")
    parser.add_argument("--zone", default="UTC", help="the unit's time zone")
    parser.add_argument("--beds", help="labels: 1-24 or 1,2,12A")
    parser.add_argument("--channel", choices=("text", "voice"), default="text")
    parser.add_argument("--explain", action="store_true", help="print the candidates and what became of each")
    parser.add_argument(
        "--batch", action="store_true", help="JSON lines on stdin, one JSON line each on stdout"
    )
    return parser


def labels(said: str) -> list[str]:
    """The labels that a list such as "1-24,CT4" stands for."""
    found: list[str] = []
    for part in said.split(","):
        low, dash, high = part.strip().partition("-")
        if dash and low.isdecimal() and high.isdecimal():
            found += [str(n) for n in range(int(low), int(high) + 1)]
        elif part.strip():
            found.append(part.strip())
    return found


def _batch() -> int:
    for line in sys.stdin:
        if line.strip():
            print(json.dumps(_answer(line), ensure_ascii=False), flush=True)
    return 0


def _answer(line: str) -> dict[str, Any]:
    """The reading of one JSON line, or what is wrong with the line."""
    try:
        asked = _asked(json.loads(line))
    except (AttributeError, KeyError, TypeError, ValueError, RecursionError) as problem:
        return {"error": f"{type(problem).__name__}: {problem}", "statements": [], "unclear": []}
    return parsed_form(parse(**asked))


def _asked(message: dict[str, Any]) -> dict[str, Any]:
    if not isinstance(message["text"], str):
        raise TypeError("text is not a string")
    beds = message.get("beds")
    return {
        "text": message["text"],
        "arrived": arrival(message["arrived"], message.get("zone") or "UTC"),
        "beds": None if beds is None else tuple(str(b) for b in beds),
        "shifts": tuple(time.fromisoformat(s) for s in message.get("shifts") or SHIFTS),
        "capacity_ml": int(message.get("capacity_ml") or CAPACITY_ML),
        "alternatives": tuple(_alternative(a) for a in message.get("alternatives") or ()),
        "channel": "voice" if message.get("channel") == "voice" else "text",
    }


def _alternative(given: Any) -> tuple[str, float]:
    if isinstance(given, dict):
        return str(given["text"]), float(given.get("confidence") or 0)
    if isinstance(given, str):
        return given, 0.0
    return str(given[0]), float(given[1])


def arrival(said: str, zone_name: str) -> datetime:
    """The moment in the unit's zone; without an offset it is the ward's wall clock."""
    zone = tz.gettz(zone_name)
    if zone is None:
        raise ValueError(f"no such zone: {zone_name}")
    at = datetime.fromisoformat(said)
    return at.replace(tzinfo=zone) if at.tzinfo is None else at.astimezone(zone)


if __name__ == "__main__":
    sys.exit(main())
