"""The pictures of `transcripts_demo/pages.md` and what stands on them in words.

`python -m tests.web.pages.shots` takes them of the invented ward of `penline serve --demo`, at one fixed
moment, in headless Chromium, and writes the page. `test_shots.py` holds the words to what the pages say now,
and each picture to its words and to the style sheet, so that neither goes stale.
"""

from __future__ import annotations

import hashlib
import logging
import struct
import zlib
from collections.abc import Callable, Iterator
from dataclasses import dataclass
from datetime import UTC, datetime
from pathlib import Path
from typing import Literal

from playwright.sync_api import Browser, Page, ViewportSize

from tests.web.pages.chromium import chromium
from tests.web.pages.demonstration import demonstrated

ROOT = Path(__file__).parents[3]
FOLDER = ROOT / "transcripts_demo" / "pages"
DOCUMENT = ROOT / "transcripts_demo" / "pages.md"
STYLE = ROOT / "bot" / "web" / "pages" / "static" / "penline.css"
MOMENT = datetime(2026, 3, 4, 23, 10, tzinfo=UTC)
"""18:10 on the ward."""
_SIGNATURE = b"\x89PNG\r\n\x1a\n"
_KEYWORD = b"Penline\0"


@dataclass(frozen=True, slots=True, kw_only=True)
class Scene:
    """One picture: its name and what it shows, the size of the window, and how to get there."""

    name: str
    shows: str
    width: int
    height: int
    colours: Literal["light", "dark"] = "light"
    goes: Callable[[Page], None]


@dataclass(frozen=True, slots=True)
class Shot:
    """What a scene looked like, and what stood on the page."""

    scene: Scene
    png: bytes
    words: str


def _talk(page: Page) -> None:
    for number, words in enumerate(("bed 12 left 240, right 75", "bed 7 mark 1340")):
        page.get_by_label("Line, question or answer").fill(words)
        page.keyboard.press("Enter")
        page.locator(".reply").nth(number).wait_for()


def _beds(page: Page) -> None:
    page.goto("/beds")


def _trend(page: Page) -> None:
    page.goto("/beds")
    page.locator('[data-bed="7"] a.small').click()
    page.wait_for_url("**/trend/**")


SCENES = (
    Scene(
        name="talk",
        shows="A nurse's phone: two lines in one message; a line that is asked about before it counts, and "
        "what would be urgent if it is right.",
        width=390,
        height=1150,
        goes=_talk,
    ),
    Scene(
        name="beds",
        shows="The charge nurse's desk: the beds in order of need.",
        width=1000,
        height=700,
        goes=_beds,
    ),
    Scene(
        name="beds-dark",
        shows="The same on a phone, at night.",
        width=390,
        height=844,
        colours="dark",
        goes=_beds,
    ),
    Scene(
        name="trend",
        shows="What one drain drained, as a picture and in words.",
        width=640,
        height=1150,
        goes=_trend,
    ),
)


def shots(browser: Browser) -> Iterator[Shot]:
    """Every scene, each on a ward of its own."""
    for scene in SCENES:
        with demonstrated(lambda: MOMENT) as address:
            yield _shot(browser, scene, address)


def _shot(browser: Browser, scene: Scene, address: str) -> Shot:
    size = ViewportSize(width=scene.width, height=scene.height)
    context = browser.new_context(viewport=size, base_url=address, color_scheme=scene.colours)
    page = context.new_page()
    page.clock.set_fixed_time(MOMENT)
    page.goto("/")
    page.get_by_role("button", name="Amy").click()
    page.wait_for_url("**/handset")
    scene.goes(page)
    words = "".join(f"{line.rstrip()}\n" for line in page.inner_text("main").splitlines() if line.strip())
    png = page.screenshot()
    context.close()
    return Shot(scene, png, words)


def document(words: dict[str, str]) -> str:
    """The page that shows the pictures, with the words that stand on each."""
    parts = [
        "# What the pages look like\n",
        "The invented ward of `penline serve --demo` at 18:10. Beneath each picture is what stands on that\n"
        "page, further down too. A test compares that with the running product, and pictures with words.\n",
    ]
    for scene in SCENES:
        parts.append(f"## {scene.name}\n\n{scene.shows}\n\n![{scene.shows}](pages/{scene.name}.png)\n")
        parts.append(f"```text\n{words[scene.name]}```\n")
    return "\n".join(parts)


def seal(words: str) -> bytes:
    """What a picture carries: a digest of the words on its page and of the style sheet."""
    return hashlib.sha256(words.encode() + STYLE.read_bytes()).hexdigest().encode()


def sealed(png: bytes, words: str) -> bytes:
    """The picture with its seal, as a text chunk before the end."""
    body = b"tEXt" + _KEYWORD + seal(words)
    chunk = struct.pack(">I", len(body) - 4) + body + struct.pack(">I", zlib.crc32(body))
    end = png.rindex(b"IEND") - 4
    return png[:end] + chunk + png[end:]


def seal_of(png: bytes) -> bytes:
    """The seal that a picture carries; empty without one."""
    assert png.startswith(_SIGNATURE)
    _, found, rest = png.partition(b"tEXt" + _KEYWORD)
    return rest[:64] if found else b""


def main() -> None:
    """Take every picture, and write the page."""
    logging.getLogger("werkzeug").setLevel(logging.ERROR)
    words: dict[str, str] = {}
    FOLDER.mkdir(exist_ok=True)
    with chromium() as browser:
        for shot in shots(browser):
            words[shot.scene.name] = shot.words
            (FOLDER / f"{shot.scene.name}.png").write_bytes(sealed(shot.png, shot.words))
    DOCUMENT.write_text(document(words), "utf-8")


if __name__ == "__main__":
    main()
