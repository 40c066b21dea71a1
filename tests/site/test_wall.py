"""The wall sheet on paper: one page of either size, nothing cut off, large enough to read from a step away."""

import pytest
from playwright.sync_api import Page

from jobcards.pages.build import slugs
from tests.site.paper import Paper, print_pages

pytestmark = pytest.mark.browser
PX = 96 / 25.4  # CSS pixels in a millimetre
# Inside the margins of paper.css, mm.
ROOM: dict[Paper, tuple[float, float]] = {"A4": (190.0, 275.0), "Letter": (195.9, 257.4)}


@pytest.mark.parametrize("slug", slugs())
def test_it_is_one_page_with_nothing_cut_off_to_be_read_from_a_step_away(served: str, page: Page, slug: str) -> None:
    """One opening of the page for all of it, on both papers: there are many sheets."""
    page.goto(f"{served}/jobs/{slug}/wall/index.html")
    for size in ROOM:
        carries_its_marks(page, size)
    page.emulate_media(media="print")
    for width, height in ROOM.values():
        is_whole(page, width, height)
    is_large_enough(page)


def carries_its_marks(page: Page, size: Paper) -> None:
    """It is one page, with the fingerprint and every set-up's title."""
    fingerprint = page.locator("[data-card]").get_attribute("data-fingerprint") or ""
    pages = print_pages(page, size).pages
    assert len(pages) == 1, size
    text = pages[0].extract_text()
    assert fingerprint in text
    for title in page.locator(".wall-title").all_inner_texts():
        assert title.split()[0] in text


def is_whole(page: Page, width: float, height: float) -> None:
    """No box is too small for what stands in it, and the last one ends on the page; width and height in mm."""
    page.set_viewport_size({"width": round(width * PX), "height": round(height * PX)})
    over = page.locator(".wall, .wall-column, .wall-block, .wall-block p").evaluate_all(
        "all => all.filter(e => e.scrollWidth > e.clientWidth + 1 || e.scrollHeight > e.clientHeight + 2).length"
    )
    assert over == 0
    bottom = page.locator(".wall").evaluate(
        "e => e.getBoundingClientRect().bottom - document.querySelector('h1').getBoundingClientRect().top"
    )
    assert bottom <= height * PX


def is_large_enough(page: Page) -> None:
    """Text of 8 points and more, figures of 11 to 13 and bold."""
    points = "all => all.map(e => parseFloat(getComputedStyle(e).fontSize) * 72 / 96)"
    text = page.locator(".wall-block p, .wall-block span").evaluate_all(points)
    figures = page.locator(".wall .figure data").evaluate_all(points)
    weights = page.locator(".wall .figure data").evaluate_all("all => all.map(e => +getComputedStyle(e).fontWeight)")
    assert min(text) >= 7.99
    assert min(figures) >= 10.99 and max(figures) <= 13.01
    assert min(weights) >= 700
