"""The pages in a real browser: by keyboard, by button, by voice, at 320 pixels, in the dark."""

from __future__ import annotations

import re
from collections.abc import Callable
from typing import Literal

import pytest
from axe_playwright_python.sync_playwright import Axe
from playwright.sync_api import Browser, Page, Route, expect

from bot.links import Links
from tests.web.client import SECRET, real_now

pytestmark = [pytest.mark.real_time, pytest.mark.filterwarnings("default::DeprecationWarning")]

RULES = ["wcag2a", "wcag2aa", "wcag21a", "wcag21aa", "wcag22aa", "best-practice"]
"""WCAG 2.2 at level AA, as far as a program can check it, and what axe-core advises besides."""

RECOGNISER = """
class Stub {
  static async available(asked) { return asked.processLocally ? "%s" : "unavailable"; }
  get processLocally() { return this.local; }
  set processLocally(local) { this.local = local; }
  start() { window.started = { local: this.local, most: this.maxAlternatives }; }
  stop() {
    const result = [
      { transcript: "bed eighteen mark four ten", confidence: 0.8 },
      { transcript: "bed eighty mark four ten", confidence: 0.3 },
    ];
    result.isFinal = true;
    this.onresult({ resultIndex: 0, results: [result] });
    this.onend();
  }
}
window.SpeechRecognition = Stub;
"""


def opened(page: Page, who: str = "Amy", path: str = "/handset") -> None:
    page.goto("/")
    page.get_by_role("button", name=who).click()
    page.wait_for_url("**/handset")
    if path != "/handset":
        page.goto(path)


def says(page: Page, words: str) -> str:
    """The reply to what is typed, sent by the Enter key."""
    before = page.locator(".reply").count()
    page.get_by_label("Line, question or answer").fill(words)
    page.keyboard.press("Enter")
    return newest(page, before)


def newest(page: Page, before: int) -> str:
    reply = page.locator(".reply").nth(before)
    reply.wait_for()
    return reply.inner_text()


def violations(page: Page) -> list[str]:
    """What axe-core finds wrong with the page as it stands."""
    found = Axe().run(page, options={"runOnly": {"type": "tag", "values": RULES}})
    assert found.response["passes"], "axe-core looked at nothing"
    return [
        f"{each['id']}: {[node['target'] for node in each['nodes']]}" for each in found.response["violations"]
    ]


def tab_to(page: Page, key: str, what: str) -> None:
    """Go on by that key until the focus is on such an element."""
    for _ in range(40):
        page.keyboard.press(key)
        if page.evaluate("what => document.activeElement.matches(what)", what):
            return
    raise AssertionError(f"no {what} is reached by {key}")


def wide(page: Page) -> int:
    """How wide the page's content is."""
    found: int = page.evaluate("document.documentElement.scrollWidth")
    return found


def test_a_line_is_typed_and_answered_by_keyboard_alone(page: Page) -> None:
    page.goto("/")
    page.keyboard.press("Tab")
    page.keyboard.press("Tab")
    page.keyboard.press("Enter")
    page.wait_for_url("**/handset")
    expect(page.get_by_label("Line, question or answer")).to_be_focused()
    page.keyboard.type("bed 18 mark 395")
    page.keyboard.press("Enter")
    assert "line 395 mL" in newest(page, 0)
    expect(page.get_by_label("Line, question or answer")).to_be_focused()


def test_a_question_is_answered_by_a_button(page: Page) -> None:
    opened(page)
    says(page, "bed 3 mark 60")
    asked = says(page, "bed 3 mark 2")
    assert "2 mL" in asked
    before = page.locator(".reply").count()
    button = page.locator(".asked button").first
    said = button.inner_text().split("\n")[0]
    button.click()
    newest(page, before)
    expect(page.locator(".mine").last).to_have_text(f"3 {said}")
    expect(page.locator(".asked").first.get_by_role("button").first).to_be_disabled()


def test_a_question_is_answered_and_a_picture_opened_by_keyboard_alone(page: Page) -> None:
    opened(page)
    says(page, "bed 7 mark 1500")
    before = page.locator(".reply").count()
    tab_to(page, "Shift+Tab", ".asked button")
    page.keyboard.press("Enter")
    newest(page, before)
    expect(page.get_by_label("Line, question or answer")).to_be_focused()
    page.goto("/beds")
    tab_to(page, "Tab", ".small")
    page.keyboard.press("Enter")
    page.wait_for_url("**/trend/*")


def test_an_urgent_caution_is_an_alert_and_says_so_in_words(page: Page) -> None:
    opened(page)
    says(page, "bed 7 mark 1500")
    alert = page.locator(".log").get_by_role("alert")
    expect(alert).to_contain_text("URGENT if right")
    expect(alert).to_contain_text("Assess the patient")


def test_on_a_small_phone_the_danger_is_seen_first_and_a_button_leads_to_the_answer(page: Page) -> None:
    opened(page)
    says(page, "bed 7 mark 1500")
    question = page.locator(".asked button").first
    expect(page.locator(".urgent-lines p").first).to_be_in_viewport(ratio=1)
    expect(question).not_to_be_in_viewport()
    more = page.get_by_role("button", name="Answer below")
    for _ in range(5):
        if not more.is_visible():
            break
        more.click()
        page.wait_for_timeout(400)
    expect(question).to_be_in_viewport()
    expect(page.locator("#more")).to_be_hidden()


def test_nothing_moves_under_the_finger_that_holds_the_talk_button(page: Page) -> None:
    page.add_init_script(RECOGNISER % "available")
    opened(page)
    talk = page.get_by_role("button", name="Hold to talk")
    talk.hover()
    before = talk.bounding_box()
    page.mouse.down()
    expect(page.get_by_role("status")).to_have_text("Listening. Let go to send.")
    assert talk.bounding_box() == before
    page.mouse.up()
    newest(page, 0)


def test_what_is_said_is_sent_with_its_alternatives_and_audio_stays_here(page: Page) -> None:
    page.add_init_script(RECOGNISER % "available")
    opened(page)
    talk = page.get_by_role("button", name="Hold to talk")
    expect(talk).to_be_visible()
    with page.expect_request("**/handset/messages") as sent:
        talk.hover()
        page.mouse.down()
        expect(talk).to_have_attribute("aria-pressed", "true")
        page.mouse.up()
    assert page.evaluate("window.started") == {"local": True, "most": 5}
    body = sent.value.post_data_json or {}
    assert (body["text"], body["channel"]) == ("bed eighteen mark four ten", "voice")
    assert body["alternatives"] == [{"text": "bed eighty mark four ten", "confidence": 0.3}]
    assert "410" in newest(page, 0)
    expect(talk).to_have_attribute("aria-pressed", "false")


@pytest.mark.parametrize("key", ["Space", "Enter"])
def test_the_talk_button_is_held_by_key_too(page: Page, key: str) -> None:
    page.add_init_script(RECOGNISER % "available")
    opened(page)
    talk = page.get_by_role("button", name="Hold to talk")
    talk.focus()
    page.keyboard.down(key)
    expect(talk).to_have_attribute("aria-pressed", "true")
    page.keyboard.up(key)
    assert "410" in newest(page, 0)


@pytest.mark.parametrize(
    "script",
    ["delete window.SpeechRecognition", "window.SpeechRecognition = class {}", RECOGNISER % "downloadable"],
    ids=["no recogniser", "one that cannot stay on the device", "one that is not on the device"],
)
def test_the_talk_button_is_not_there_where_audio_would_leave_the_device(page: Page, script: str) -> None:
    page.add_init_script(script)
    opened(page)
    says(page, "beds")
    expect(page.locator("#talk")).to_be_hidden()


SPEAKER = """
window.spoken = [];
Object.defineProperty(window, "speechSynthesis", { value: {
  getVoices: () => [{ localService: %s, lang: "en-US", name: "v" }],
  addEventListener() {}, cancel() {}, speak(said) { window.spoken.push(said.text); },
} });
window.SpeechSynthesisUtterance = class { constructor(text) { this.text = text; } };
"""


def test_a_reply_is_spoken_in_words_once_that_is_chosen(page: Page) -> None:
    page.add_init_script(SPEAKER % "true")
    opened(page)
    says(page, "last 12 left")
    page.get_by_label("Speak replies").check()
    says(page, "last 12 left")
    [said] = page.evaluate("window.spoken")
    assert "milliliters" in said
    assert not re.search(r"\d", said)


def test_no_reply_is_spoken_by_a_voice_that_is_not_on_the_device(page: Page) -> None:
    page.add_init_script(SPEAKER % "false")
    opened(page)
    says(page, "beds")
    expect(page.get_by_label("Speak replies")).to_be_hidden()


@pytest.mark.goes_wrong
def test_what_could_not_be_sent_is_sent_again_under_the_same_id(page: Page) -> None:
    opened(page)
    ids: list[str | None] = []

    def lost(route: Route) -> None:
        """The message arrives, the first answer does not."""
        ids.append(route.request.headers.get("x-message-id"))
        if len(ids) == 1:
            route.fetch()
            route.abort()
        else:
            route.continue_()

    page.route("**/handset/messages", lost)
    page.get_by_label("Line, question or answer").fill("bed 21 mark 70")
    page.keyboard.press("Enter")
    expect(page.locator(".failed").get_by_role("alert")).to_contain_text("Not recorded as far as is known")
    page.get_by_role("button", name="Send again").click()
    assert "Bed 21" in newest(page, 0)
    assert (len(ids), len(set(ids))) == (2, 1)
    assert says(page, "history 21").count("line 70 mL") == 1


@pytest.mark.goes_wrong
def test_the_beds_say_so_when_they_are_not_up_to_date(page: Page) -> None:
    page.clock.install()
    opened(page, "Carla", "/beds")
    page.route("**/beds/now", lambda route: route.abort())
    page.clock.run_for(16_000)
    expect(page.locator("#stale")).to_contain_text("Not up to date: there is no connection. As of")
    expect(page.locator("#stale")).to_have_attribute("role", "alert")
    page.unroute("**/beds/now")
    page.clock.run_for(16_000)
    expect(page.locator("#stale")).to_be_hidden()


def test_the_beds_show_by_themselves_what_is_new_and_tell_what_is_urgent(
    page: Page, browser: Browser
) -> None:
    page.clock.install()
    opened(page, "Carla", "/beds")
    context = browser.new_context(base_url=page.url.removesuffix("/beds"))
    other = context.new_page()
    opened(other, "Ben")
    says(other, "bed 22 mark 100")
    says(other, "bed 22 disconnected")
    context.close()
    page.clock.run_for(16_000)
    expect(page.locator('[data-bed="22"]')).to_have_attribute("data-need", "urgent")
    expect(page.locator("#news")).to_have_text("Urgent: bed 22.")
    expect(page.locator('[data-bed="22"] .caution.high')).to_contain_text("URGENT")


def talk(page: Page) -> None:
    page.add_init_script(RECOGNISER % "available")
    page.add_init_script(SPEAKER % "true")
    opened(page)
    says(page, "bed 12 left mark 5")
    says(page, "trend 7")
    says(page, "bed 7 mark 1500")


def enter(page: Page) -> None:
    page.goto("/")
    link = Links(page.url.rstrip("/"), (SECRET,)).door("harbour-ward", "amy", real_now())
    page.goto(link.url)
    expect(page.get_by_role("button", name="Open as Amy")).to_be_visible()


def beds(page: Page) -> None:
    opened(page, "Carla", "/beds")


def trend(page: Page) -> None:
    beds(page)
    page.locator(".small").first.click()
    page.wait_for_url("**/trend/*")


def closed(page: Page) -> None:
    page.goto("/enter/x")


def over(page: Page) -> None:
    page.goto("/trend/x")


@pytest.mark.goes_wrong
@pytest.mark.parametrize("scheme", ["light", "dark"])
@pytest.mark.parametrize("show", [talk, enter, beds, trend, closed, over, lambda page: page.goto("/")])
def test_no_page_has_a_violation_and_none_is_wider_than_a_small_phone(
    page: Page, show: Callable[[Page], object], scheme: Literal["light", "dark"]
) -> None:
    page.emulate_media(color_scheme=scheme)
    show(page)
    assert violations(page) == []
    assert wide(page) == 320


def test_axe_core_would_find_what_is_wrong(page: Page) -> None:
    page.goto("/")
    page.evaluate("document.querySelector('button').replaceChildren()")
    assert any(each.startswith("button-name") for each in violations(page))
