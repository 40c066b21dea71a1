"""A card in the browser: working on a tap, ticks that stay, nothing that runs sideways, and on paper."""

import re
from pathlib import Path
from typing import Literal

import pytest
from playwright.sync_api import Page

from tests.site.paper import print_pages

pytestmark = pytest.mark.browser
SLUG = "equalising-clamp"
PHONE = {"width": 390, "height": 844}
THUMB = 44
PAGES = ("index.html", "wall/index.html", "record/index.html")


@pytest.fixture
def card(served: str, page: Page) -> Page:
    """The first card on a phone."""
    page.set_viewport_size({"width": 390, "height": 844})
    page.goto(f"{served}/jobs/{SLUG}/index.html")
    return page


def test_a_tap_on_a_number_shows_its_working(card: Page) -> None:
    number = card.locator(".readings data").first
    shown, row = number.inner_text(), card.locator(f'[id="w-{number_id(card, ".readings data")}"]')
    number.click()
    panel = card.locator(".working-panel")
    assert panel.is_visible()
    told = panel.inner_text()
    by = row.locator("xpath=../tr[1]")
    for cell in (row.locator("td").nth(1), by.locator("[data-formula]"), by.locator("[data-source]")):
        assert (cell.text_content() or "").strip() in told
    assert shown in told
    card.keyboard.press("Escape")
    assert panel.is_hidden()


def number_id(card: Page, place: str) -> str:
    """The id of the number there, whether it stands there first or is repeated."""
    return str(card.locator(place).first.evaluate("each => each.id || each.dataset.id"))


def test_an_input_in_the_panel_can_be_tapped_in_turn_and_a_tap_away_closes(card: Page) -> None:
    card.locator(".zero .large data").first.click()
    card.wait_for_timeout(400)  # longer than the hover waits: what was tapped stays
    panel = card.locator(".working-panel")
    inner = panel.locator(".panel-inputs data").first
    wanted = inner.inner_text()
    inner.click()
    assert wanted in panel.locator(".panel-number").inner_text()
    assert "#" not in card.url
    card.locator("h1").click()
    assert panel.is_hidden()


def test_the_keyboard_reaches_a_number(card: Page) -> None:
    number = card.locator(".readings data").first
    number.focus()
    assert card.locator(".working-panel").is_visible()
    assert number.get_attribute("aria-describedby") == "working-panel"


def test_the_working_works_from_a_folder_and_runs_no_text(site: Path, page: Page) -> None:
    page.goto((site / "jobs" / SLUG / "index.html").as_uri())
    page.locator(".readings data").first.click()
    assert page.locator(".working-panel").is_visible()
    script = (site / "assets" / "cards.js").read_text(encoding="utf-8")
    assert not re.search(r"innerHTML|insertAdjacentHTML|eval\(|Function\(|document\.write", script)


def test_without_script_the_numbers_and_the_sheet_are_there(served: str, page: Page) -> None:
    browser = page.context.browser
    assert browser is not None
    context = browser.new_context(java_script_enabled=False)
    plain = context.new_page()
    plain.goto(f"{served}/jobs/{SLUG}/index.html")
    assert plain.locator(".readings data").first.is_visible()
    plain.locator(".working-sheet summary").click()
    assert plain.locator(".working tr").nth(3).is_visible()
    context.close()


def test_ticks_stay_for_this_issue_and_can_be_cleared(card: Page) -> None:
    first = card.locator("input[data-tick]").first
    first.check()
    card.reload()
    assert card.locator("input[data-tick]").first.is_checked()
    card.locator("[data-clear-ticks]").click()
    assert not card.locator("input[data-tick]").first.is_checked()
    card.reload()
    assert not card.locator("input[data-tick]").first.is_checked()


def test_ticks_of_an_earlier_issue_are_put_aside_and_the_reader_is_told(card: Page) -> None:
    """The fingerprint of the stored ticks is changed, as if the card's numbers had been."""
    card.locator("input[data-tick]").first.check()
    card.evaluate(
        """() => {
          const key = Object.keys(localStorage).find(each => each.startsWith("jobcard:"));
          localStorage.setItem(key.replace(/:[^:]*$/, ":0000-0000"), localStorage.getItem(key));
          localStorage.removeItem(key);
        }"""
    )
    card.reload()
    told = card.locator(".ticks-put-aside")
    assert "have changed since" in told.inner_text()
    assert not card.locator("input[data-tick]").first.is_checked()
    told.locator("button").click()
    assert told.count() == 0
    card.reload()
    assert card.locator(".ticks-put-aside").count() == 0


def test_an_old_sheet_is_told_from_the_current_one(card: Page) -> None:
    fingerprint = card.locator("[data-card]").first.get_attribute("data-fingerprint")
    at = card.url
    for printed, words in ((fingerprint, "is the current one"), ("0000-0000", "not the current one")):
        card.goto(f"{at}?print={printed}")
        assert words in card.locator("[data-stale]").inner_text()


@pytest.mark.parametrize("name", PAGES)
@pytest.mark.parametrize("width", [390, 820, 1440])
def test_nothing_runs_sideways(served: str, page: Page, name: str, width: int) -> None:
    page.set_viewport_size({"width": width, "height": 900})
    page.goto(f"{served}/jobs/{SLUG}/{name}")
    wide = page.evaluate("document.documentElement.scrollWidth")
    assert wide <= width
    tables = page.locator("article table").evaluate_all(
        "all => all.filter(t => t.scrollWidth > t.clientWidth + 1).length"
    )
    assert tables == 0


def test_what_is_tapped_is_as_wide_as_a_thumb(card: Page) -> None:
    places = "label.tick, [data-clear-ticks], .sheets a, table.readings:not(.contributions) tbody tr"
    boxes = card.locator(places).evaluate_all(
        "all => all.map(e => e.getBoundingClientRect()).map(b => [b.width, b.height])"
    )
    assert boxes
    assert all(width >= THUMB and height >= THUMB for width, height in boxes)


@pytest.mark.parametrize("scheme", ["light", "dark"])
def test_text_can_be_told_from_its_ground(served: str, page: Page, scheme: Literal["light", "dark"]) -> None:
    page.emulate_media(color_scheme=scheme)
    page.goto(f"{served}/jobs/{SLUG}/index.html")
    for place in (".large data", ".why", ".caution li", ".check", ".where", "table.order th"):
        ratio = page.locator(place).first.evaluate(CONTRAST)
        assert ratio >= 4.5, (place, ratio)


# WCAG 2.1: relative luminance and contrast ratio, of the text's colour on the page's own ground.
CONTRAST = """element => {
  const canvas = document.createElement("canvas").getContext("2d", { willReadFrequently: true });
  const over = (colour, ground) => {
    canvas.fillStyle = ground; canvas.fillRect(0, 0, 1, 1);
    canvas.fillStyle = colour; canvas.fillRect(0, 0, 1, 1);
    return Array.from(canvas.getImageData(0, 0, 1, 1).data).slice(0, 3);
  };
  const light = rgb => {
    const [r, g, b] = rgb.map(v => v / 255).map(v => v <= 0.04045 ? v / 12.92 : ((v + 0.055) / 1.055) ** 2.4);
    return 0.2126 * r + 0.7152 * g + 0.0722 * b;
  };
  const ground = getComputedStyle(document.body).backgroundColor;
  const [a, b] = [light(over(getComputedStyle(element).color, ground)), light(over(ground, ground))];
  return (Math.max(a, b) + 0.05) / (Math.min(a, b) + 0.05);
}"""


@pytest.mark.parametrize("size", ["A4", "Letter"])
def test_the_printed_card_carries_its_marks_and_its_working(card: Page, size: Literal["A4", "Letter"]) -> None:
    fingerprint = card.locator("[data-card]").first.get_attribute("data-fingerprint") or ""
    sheets = [sheet.extract_text() for sheet in print_pages(card, size).pages]
    assert fingerprint and all(fingerprint in sheet for sheet in sheets)
    assert "Clear all ticks" not in " ".join(sheets)
    assert "arithmetic" in sheets[-2]
    assert all(f"{number} / {len(sheets)}" in sheet for number, sheet in enumerate(sheets, 1))


@pytest.mark.parametrize("size", ["A4", "Letter"])
def test_the_printed_record_repeats_its_head(served: str, page: Page, size: Literal["A4", "Letter"]) -> None:
    page.goto(f"{served}/jobs/{SLUG}/record/index.html")
    fingerprint = page.locator("[data-card]").first.get_attribute("data-fingerprint") or ""
    rows = page.locator(".record-table tbody tr").count()
    sheets = [sheet.extract_text() for sheet in print_pages(page, size).pages]
    assert rows
    assert all(fingerprint in sheet and "Measured" in sheet for sheet in sheets)


def test_a_drawing_that_is_small_on_a_phone_opens_large_and_moves_with_the_keys(card: Page) -> None:
    figure = card.locator("figure.part-drawing").first
    figure.locator(".drawing-open").click()
    scroller = card.locator(".drawing-scroller")
    letters = scroller.locator("text").first.evaluate("e => e.getBoundingClientRect().height")
    assert letters >= 11
    assert scroller.evaluate("e => e.scrollWidth > e.clientWidth")  # all of it can be reached, nothing is cut off
    card.keyboard.press("ArrowRight")
    card.wait_for_function("document.querySelector('.drawing-scroller').scrollLeft > 0")
    ids = card.locator("[id]").evaluate_all("all => all.map(e => e.id)")
    assert len(ids) == len(set(ids))
    card.keyboard.press("Escape")
    assert card.locator(".drawing-large").is_hidden()
    assert figure.locator(".drawing-open").evaluate("e => e === document.activeElement")


def test_a_drawing_is_not_offered_larger_where_it_can_be_read(served: str, page: Page) -> None:
    page.set_viewport_size({"width": 1440, "height": 900})
    page.goto(f"{served}/jobs/{SLUG}/index.html")
    assert page.locator("figure.part-drawing .drawing-open:visible").count() == 0
    page.emulate_media(media="print")
    assert page.locator(".drawing-open:visible").count() == 0
