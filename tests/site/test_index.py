"""The list of cards in the browser: sifted by tap and by keys, from a folder, and whole without the script."""

import re
from pathlib import Path

import pytest
from playwright.sync_api import Page

from jobcards.pages.build import slugs

pytestmark = pytest.mark.browser
PHONE = {"width": 390, "height": 844}
THUMB = 44
HEAD = '<!DOCTYPE html><html><head><meta charset="utf-8"></head><body><article class="md-content__inner md-typeset">'
# Three invented cards; what is asked of them stands in their rows alone.
ROWS = (
    ("plate", "mill", "aluminium", "drilling|face milling", "beginner", "inch", "45.0"),
    ("pin", "lathe", "low-carbon steel", "turning", "beginner", "metric", "80.5"),
    ("clamp", "lathe|mill", "low-carbon steel", "drilling|turning", "some practice", "inch", "500.0"),
)
KEYS = ("slug", "machine", "material", "operation", "level", "units", "minutes")


@pytest.fixture
def three(site: Path, tmp_path: Path, page: Page) -> Page:
    """Three cards in a folder of their own, opened as a file."""
    rows = "".join(
        "<tr "
        + " ".join(f'data-{key}="{said}"' for key, said in zip(KEYS, row, strict=True))
        + f"><td>{row[0]}</td></tr>"
        for row in ROWS
    )
    script = (site / "assets" / "index.js").read_text(encoding="utf-8")
    style = (site / "assets" / "index.css").read_text(encoding="utf-8")
    table = f'<table class="card-index" data-cards=""><tbody>{rows}</tbody></table>'
    file = tmp_path / "index.html"
    file.write_text(f"{HEAD}<style>{style}</style>{table}</article><script>{script}</script>", encoding="utf-8")
    page.goto(file.as_uri())
    return page


def left(page: Page) -> list[str]:
    """The cards that are seen."""
    return [text for text in page.locator("tbody tr:visible").all_inner_texts() if text]


def box(page: Page, name: str):  # noqa: ANN201 - the library's own
    return page.get_by_label(name, exact=True)


@pytest.mark.parametrize(
    ("chosen", "cards"),
    [
        ({"Machine": "mill"}, ["plate", "clamp"]),
        ({"Material": "low-carbon steel"}, ["pin", "clamp"]),
        ({"Operation": "face milling"}, ["plate"]),
        ({"Level": "some practice"}, ["clamp"]),
        ({"Units": "metric"}, ["pin"]),
        ({"Time": "an hour at most"}, ["plate"]),
        ({"Time": "two hours at most"}, ["plate", "pin"]),
        ({"Machine": "lathe", "Level": "beginner"}, ["pin"]),
    ],
)
def test_the_list_is_sifted(three: Page, chosen: dict[str, str], cards: list[str]) -> None:
    assert left(three) == ["plate", "pin", "clamp"]
    for name, word in chosen.items():
        box(three, name).select_option(label=word)
    assert left(three) == cards
    assert three.get_by_role("status").inner_text().startswith(f"{len(cards)} of 3")
    three.get_by_role("button", name="Show all").click()
    assert left(three) == ["plate", "pin", "clamp"]


def test_a_choice_that_leaves_nothing_cannot_be_made(three: Page) -> None:
    box(three, "Units").select_option(label="metric")
    machine = box(three, "Machine").locator("option")
    told = dict(zip(machine.all_inner_texts(), machine.evaluate_all("all => all.map(o => o.disabled)"), strict=True))
    assert told == {"any": False, "lathe": False, "mill": True}


def test_a_choice_that_no_card_differs_in_is_not_offered(three: Page) -> None:
    assert box(three, "Time").locator("option").all_inner_texts() == ["any", "an hour at most", "two hours at most"]


def test_it_is_worked_by_keys_alone_and_remembered_in_the_address(three: Page) -> None:
    three.keyboard.press("Tab")
    three.keyboard.press("m")  # as a list is used by its first letter
    assert left(three) == ["plate", "clamp"]
    assert three.url.endswith("#machine=mill")
    three.reload()
    assert left(three) == ["plate", "clamp"]
    assert box(three, "Machine").input_value() == "mill"


def test_an_address_that_asks_for_what_is_not_there_shows_all(three: Page) -> None:
    three.goto(three.url + "#machine=<b>&level=&nothing=1")
    three.reload()
    assert left(three) == ["plate", "pin", "clamp"]


def test_what_is_tapped_is_as_high_as_a_thumb(three: Page) -> None:
    three.set_viewport_size(PHONE)
    box(three, "Machine").select_option(label="mill")
    heights = three.locator("select, .card-sift button").evaluate_all(
        "all => all.map(e => e.getBoundingClientRect().height)"
    )
    assert len(heights) == 7 and min(heights) >= THUMB


def test_the_script_makes_no_markup_of_text(site: Path) -> None:
    script = (site / "assets" / "index.js").read_text(encoding="utf-8")
    assert not re.search(
        r"innerHTML|insertAdjacentHTML|outerHTML|eval\(|Function\(|document\.write|fetch\(|XMLHttp", script
    )


# The real site --------------------------------------------------------------------------------------------------------


@pytest.mark.parametrize("place", ["index.html", "jobs/index.html"])
def test_every_job_is_in_the_list_without_the_script(site: Path, page: Page, place: str) -> None:
    assert page.context.browser is not None
    context = page.context.browser.new_context(java_script_enabled=False)
    plain = context.new_page()
    plain.goto((site / place).as_uri())
    listed = plain.locator("tr[data-slug]:visible").evaluate_all("all => all.map(row => row.dataset.slug)")
    assert set(slugs()) <= set(listed) and len(listed) == len(set(listed))
    assert plain.locator("select").count() == 0
    context.close()


@pytest.mark.parametrize("place", ["index.html", "jobs/index.html"])
def test_on_a_phone_rows_are_cards_and_nothing_runs_sideways(site: Path, page: Page, place: str) -> None:
    page.set_viewport_size(PHONE)
    page.goto((site / place).as_uri())
    assert page.evaluate("document.documentElement.scrollWidth") <= PHONE["width"]
    row = page.locator("tr[data-slug]").first
    assert row.evaluate("e => getComputedStyle(e).display") == "block"
    heights = page.locator("tr[data-slug] a").evaluate_all("all => all.map(e => e.getBoundingClientRect().height)")
    assert heights and min(heights) >= THUMB
    row.locator("a").first.click()
    page.locator("[data-card]").first.wait_for(state="attached")
    assert page.locator("[data-card]").count() == 1


def test_the_time_leads_to_its_working_on_the_card(site: Path, page: Page) -> None:
    page.goto((site / "jobs" / "index.html").as_uri())
    link = page.locator("tr[data-slug] a:has(data)").first
    shown = link.inner_text().split()[0]
    link.click()
    working = page.locator("tr:target")
    working.wait_for()
    assert working.locator("data").first.inner_text() == shown


def test_a_formula_of_a_card_is_found_and_leads_back(site: Path, page: Page) -> None:
    page.goto((site / "jobs" / slugs()[0] / "index.html").as_uri())
    page.locator("ul.used a").first.click()
    formula = page.locator(".formula:target")
    formula.wait_for()
    formula.locator(".used-on a").first.click()
    page.locator("tr:target").wait_for()


def test_every_place_that_a_page_links_to_is_there(site: Path) -> None:
    """The site engine looks after links written in Markdown only."""
    text = {path: path.read_text(encoding="utf-8") for path in site.rglob("*.html") if path.name != "404.html"}
    ids = {path: set(re.findall(r'\sid="([^"]+)"', page)) for path, page in text.items()}
    for path, page in text.items():
        for place, name in set(re.findall(r'<a\b[^>]*\shref="([^"#:]*)#([^"]+)"', page)):
            target = (path.parent / place).resolve() if place else path
            if name != "__skip":
                assert name in ids[target], (path.relative_to(site), place, name)
