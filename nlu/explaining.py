"""Why a message was read as it was: every way, the roles of every number, and what spoke against each."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from datetime import datetime

from .items import Item
from .judging import standing
from .kept import dropped
from .labels import bed_index
from .lattice import Lattice
from .pipeline import Read, pipeline
from .recast import with_cues
from .roles import assignments
from .sentence import Sentence, Ward, pieces
from .sharing import gathered
from .subjects import subjects


def explained(text: str, *, arrived: datetime, beds: Sequence[str] | None, voice: bool = False) -> str:
    """The evidence for and against each reading of a message, in plain lines."""
    index = bed_index(tuple(beds)) if beds is not None else None
    read = with_cues(pipeline().read(text, voice=voice), index, voice=voice)
    ways = Lattice(read, index, voice=voice).ways()
    return "\n".join(_lines(read, ways, Ward(arrived, index, voice)))


def _lines(read: Read, ways: list[tuple[Item, ...]], ward: Ward) -> Iterator[str]:
    for cue in read.cues:
        yield f"cue {cue.label}{':' + cue.value if cue.value else ''} {_said(read, cue.start, cue.end)}"
    for number, way in enumerate(ways, 1):
        yield f"way {number}: " + " | ".join(_piece(read, item) for item in way)
        sentence = Sentence(read, ward, pieces(way, read.tokens, ward.arrived))
        found, overfull = assignments(sentence.items, ward.arrived)
        for items in found:
            drafts = gathered(items, read.tokens)
            unread = [*sentence.unread(items), *sentence.unread_question(sentence.question)]
            unread += subjects(items, read.tokens)
            stands = standing(drafts, ward.arrived).with_faults([*unread, *dropped(items, drafts)])
            against = "; ".join((*stands.faults, *stands.doubts)) or "nothing against it"
            roles = ", ".join(
                f"{_said(read, i.start, i.end)} = {i.role}" for i in items if i.role not in {"cue", "sep"}
            )
            yield f"  {roles}: {against}"
        if overfull:
            yield "  too many readings to follow: asked"


def _piece(read: Read, item: Item) -> str:
    said = _said(read, item.start, item.end)
    return f"{said} {item.value or item.role}" if item.role == "cue" else f"{said} {item.role}"


def _said(read: Read, start: int, end: int) -> str:
    first, last = read.tokens[start].start, read.tokens[end - 1].end
    return f"{read.text[first:last]!r}[{first}:{last}]"
