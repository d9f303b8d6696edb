"""The pictures that the README points at are of the pages as they are."""

from __future__ import annotations

import pytest
from playwright.sync_api import Browser

from tests.web.pages.shots import DOCUMENT, FOLDER, SCENES, document, seal, seal_of, sealed, shots

LARGEST = 120_000
"""Bytes of a picture: the repository keeps every one for ever."""
AGAIN = "python -m tests.web.pages.shots takes them again: look at each"

pytestmark = [pytest.mark.real_time, pytest.mark.filterwarnings("default::DeprecationWarning")]


def test_what_stands_beneath_the_pictures_is_what_the_pages_say(browser: Browser) -> None:
    told = document({shot.scene.name: shot.words for shot in shots(browser)})
    assert DOCUMENT.read_text("utf-8") == told, AGAIN


@pytest.mark.parametrize("name", [scene.name for scene in SCENES])
def test_a_picture_was_taken_of_the_words_beneath_it_in_the_style_of_now(name: str) -> None:
    png = (FOLDER / f"{name}.png").read_bytes()
    beneath = (
        DOCUMENT.read_text("utf-8").partition(f"](pages/{name}.png)\n\n```text\n")[2].partition("```")[0]
    )
    assert seal_of(png) == seal(beneath), AGAIN
    assert len(png) < LARGEST


def test_there_are_no_other_pictures() -> None:
    assert {path.stem for path in FOLDER.iterdir()} == {scene.name for scene in SCENES}


def test_a_picture_of_other_words_would_be_found() -> None:
    png = (FOLDER / f"{SCENES[0].name}.png").read_bytes()
    bare = png.replace(b"tEXt", b"xxxx")
    assert seal_of(bare) == b""
    assert seal_of(sealed(bare, "other words")) == seal("other words") != seal_of(png)
