"""The wall sheet on paper: one page of either size, nothing cut off, large enough to read from a step away."""

from typing import Literal

import pytest
from playwright.sync_api import Page

from jobcards.pages.build import slugs
from tests.site.paper import print_pages

pytestmark = pytest.mark.browser
PX = 96 / 25.4  # CSS pixels in a millimetre
ROOM = {"A4": (190.0, 275.0), "Letter": (195.9, 257.4)}  # inside the margins of paper.css, mm
both_papers = pytest.mark.parametrize("size", ["A4", "Letter"])
each_job = pytest.mark.parametrize("slug", slugs())


@each_job
@both_papers
def test_it_is_one_page_and_carries_its_marks(
    served: str, page: Page, slug: str, size: Literal["A4", "Letter"]
) -> None:
    page.goto(f"{served}/jobs/{slug}/wall/index.html")
    fingerprint = page.locator("[data-card]").get_attribute("data-fingerprint") or ""
    pages = print_pages(page, size).pages
    assert len(pages) == 1
    text = pages[0].extract_text()
    assert fingerprint in text
    for title in page.locator(".wall-title").all_inner_texts():
        assert title.split()[0] in text


@each_job
@both_papers
def test_nothing_is_cut_off(served: str, page: Page, slug: str, size: str) -> None:
    width, height = ROOM[size]
    page.set_viewport_size({"width": round(width * PX), "height": round(height * PX)})
    page.emulate_media(media="print")
    page.goto(f"{served}/jobs/{slug}/wall/index.html")
    over = page.locator(".wall, .wall-column, .wall-block, .wall-block p").evaluate_all(
        "all => all.filter(e => e.scrollWidth > e.clientWidth + 1 || e.scrollHeight > e.clientHeight + 2).length"
    )
    assert over == 0
    bottom = page.locator(".wall").evaluate(
        "e => e.getBoundingClientRect().bottom - document.querySelector('h1').getBoundingClientRect().top"
    )
    assert bottom <= height * PX


@each_job
def test_it_can_be_read_from_a_step_away(served: str, page: Page, slug: str) -> None:
    page.emulate_media(media="print")
    page.goto(f"{served}/jobs/{slug}/wall/index.html")
    points = "all => all.map(e => parseFloat(getComputedStyle(e).fontSize) * 72 / 96)"
    text = page.locator(".wall-block p, .wall-block span").evaluate_all(points)
    figures = page.locator(".wall .figure data").evaluate_all(points)
    weights = page.locator(".wall .figure data").evaluate_all("all => all.map(e => +getComputedStyle(e).fontWeight)")
    assert min(text) >= 7.99
    assert min(figures) >= 10.99 and max(figures) <= 13.01
    assert min(weights) >= 700
