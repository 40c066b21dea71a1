"""The build: what it makes, and that a fault of any kind stops it."""

import filecmp
import json
import re
import socket
import subprocess
import sys
import time
import urllib.request
from contextlib import nullcontext
from pathlib import Path

import pytest
from playwright.sync_api import Page

from jobcards.pages import build
from tests.site.house import House

CARD_FILES = ["index.html", "job.yml", "numbers.json", "record/index.html", "wall/index.html"]
OUTSIDE = re.compile(r"""(?:src|href|action|poster|data)\s*=\s*["']?\s*((?:https?:)?//[^"'\s>]+)""", re.IGNORECASE)
STYLE_OUTSIDE = re.compile(r"""(?:@import\s+|url\()\s*["']?((?:https?:)?//[^"')\s]+)""", re.IGNORECASE)


def files_in(folder: Path) -> list[str]:
    return sorted(str(path.relative_to(folder)) for path in folder.rglob("*") if path.is_file())


@pytest.fixture
def house(tmp_path: Path) -> House:
    (tmp_path / "house").mkdir()
    return House(tmp_path / "house")


# A small house --------------------------------------------------------------------------------------------------------


def test_both_engines_make_the_same_files(house: House, tmp_path: Path) -> None:
    """mkdocs has an end date; properdocs must be able to take over."""
    for engine in ("mkdocs", "properdocs"):
        build.run_engine(engine, tmp_path / engine, config=house.config)
    made = files_in(tmp_path / "mkdocs")
    assert made == files_in(tmp_path / "properdocs")
    assert {f"jobs/{slug}/{name}" for slug in ("one", "two") for name in CARD_FILES} <= set(made)
    assert (tmp_path / "mkdocs/jobs/two/job.yml").read_text(encoding="utf-8") == "title: invented\n"
    assert (tmp_path / "mkdocs/jobs/two/numbers.json").read_bytes() == b"[]\n"


def test_one_job_alone(house: House, tmp_path: Path) -> None:
    build.run_engine("mkdocs", tmp_path / "out", only="two", config=house.config)
    made = files_in(tmp_path / "out")
    assert "jobs/two/index.html" in made
    assert "jobs/index.html" in made
    assert not [name for name in made if name.startswith("jobs/one/")]


def test_a_wrong_definition_stops_the_engine(house: House, tmp_path: Path, capfd: pytest.CaptureFixture[str]) -> None:
    text = house.pages.read_text(encoding="utf-8")
    raising = "\nfrom jobcards.definition import ProblemsFound\n\n"
    raising += "def site_files(site_url, only, shop, forgiving):\n    raise ProblemsFound\n"
    house.pages.write_text(text + raising, encoding="utf-8")
    with pytest.raises(build.BuildFailed):
        build.run_engine("mkdocs", tmp_path / "out", config=house.config)
    assert "jobs/one.yml:3:9: no such size; write one" in capfd.readouterr().err


@pytest.mark.parametrize("fence", ["```", "~~~"])
def test_a_fence_from_a_definition_is_not_run(house: House, tmp_path: Path, fence: str) -> None:
    trace = tmp_path / "it-ran"
    house.write(f'\\n\\n{fence}python exec=\\"1\\"\\nopen({str(trace)!r}, \\"w\\")\\n{fence}\\n')
    with pytest.raises(build.BuildFailed):
        build.run_engine("mkdocs", tmp_path / "out", config=house.config)
    assert not trace.exists()


def test_a_failing_block_in_a_page_of_ours_stops_the_build(house: House, tmp_path: Path) -> None:
    house.home.write_text('# Home\n\n```python exec="1" id="home"\nprint(1 / 0)\n```\n', encoding="utf-8")
    with pytest.raises(build.BuildFailed):
        build.run_engine("mkdocs", tmp_path / "strict", config=house.config)
    build.run_engine("mkdocs", tmp_path / "lax", only="one", config=house.config)
    assert build.pages_with_tracebacks(tmp_path / "lax") == ["index.html"]


@pytest.mark.parametrize("words", ["[no such page](nowhere.md)", "[no such place](wall/index.md#nowhere)"])
def test_a_broken_link_stops_the_build(house: House, tmp_path: Path, words: str) -> None:
    house.write(words)
    with pytest.raises(build.BuildFailed):
        build.run_engine("mkdocs", tmp_path / "out", config=house.config)


@pytest.mark.parametrize("only", ["", "one"])
def test_an_edit_shows_while_serving(house: House, only: str) -> None:
    with socket.socket() as free:
        free.bind(("127.0.0.1", 0))
        port = free.getsockname()[1]
    program = "import sys, pathlib; from jobcards.pages.build import serve; "
    program += "serve(int(sys.argv[1]), sys.argv[3], config=pathlib.Path(sys.argv[2]))"
    command = [sys.executable, "-c", program, str(port), str(house.config), only]
    server = subprocess.Popen(command, cwd=build.ROOT)
    try:
        assert wait_for(port, "worked out")
        house.write("worked out afresh")
        assert wait_for(port, "worked out afresh")
    finally:
        server.terminate()
        server.wait()
    assert left(port), "the engine must stop with it"


def left(port: int) -> bool:
    """Whether nobody listens there any more; on a busy machine the engine may need a moment to go."""
    for _ in range(100):
        if not build.port_taken(port):
            return True
        time.sleep(0.1)
    return False


def wait_for(port: int, words: str) -> bool:
    """Does the page of job one come to carry these words?"""
    for _ in range(120):
        try:
            with urllib.request.urlopen(f"http://127.0.0.1:{port}/jobs/one/index.html", timeout=5) as answer:
                if words in answer.read().decode():
                    return True
        except OSError:
            pass
        time.sleep(0.5)
    return False


# The swap -------------------------------------------------------------------------------------------------------------


def test_the_old_site_stays_when_a_definition_is_wrong(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    target = old_site(tmp_path)
    monkeypatch.setattr(build, "check_all", lambda only=None: ["jobs/one.yml:3:9: no such size; write one"])
    with pytest.raises(build.BuildFailed, match=r"one\.yml:3:9"):
        build.build_site(target)
    assert files_in(tmp_path) == ["site/index.html"]


@pytest.mark.parametrize(
    ("page", "left"),
    [
        ("<p>sound</p>", ["site/fresh.html"]),
        ('<p>Traceback (most recent call last):\n  File "x.py", line 1</p>', ["site/index.html"]),
    ],
)
def test_only_a_sound_site_takes_the_place_of_the_old_one(
    tmp_path: Path, monkeypatch: pytest.MonkeyPatch, page: str, left: list[str]
) -> None:
    def engine(name: str, folder: Path, only: str | None) -> None:
        folder.mkdir()
        (folder / "fresh.html").write_text(page, encoding="utf-8")

    monkeypatch.setattr(build, "check_all", lambda only=None: [])
    monkeypatch.setattr(build, "run_engine", engine)
    with pytest.raises(build.BuildFailed, match=r"fresh\.html") if "Traceback" in page else nullcontext():
        build.build_site(old_site(tmp_path))
    assert files_in(tmp_path) == left


def old_site(folder: Path) -> Path:
    (folder / "site").mkdir()
    (folder / "site" / "index.html").write_text("old", encoding="utf-8")
    return folder / "site"


# The real site --------------------------------------------------------------------------------------------------------


def test_each_job_has_its_card_wall_sheet_record_numbers_and_definition(site: Path) -> None:
    assert build.slugs()
    for slug in build.slugs():
        assert set(CARD_FILES) <= set(files_in(site / "jobs" / slug)), slug
        json.loads((site / "jobs" / slug / "numbers.json").read_text(encoding="utf-8"))
        definition = (build.JOBS / f"{slug}.yml").read_bytes()
        assert (site / "jobs" / slug / "job.yml").read_bytes() == definition


def test_nothing_points_outside(site: Path) -> None:
    found = [(page.name, OUTSIDE.findall(page.read_text(encoding="utf-8"))) for page in site.rglob("*.html")]
    found += [(style.name, STYLE_OUTSIDE.findall(style.read_text(encoding="utf-8"))) for style in site.rglob("*.css")]
    assert [(name, addresses) for name, addresses in found if addresses] == []


def test_no_link_needs_a_server(site: Path) -> None:
    """From a folder on disk, a link to a folder shows a list of files instead of the page."""
    for page in site.rglob("*.html"):
        if page.name != "404.html":
            links = re.findall(r'<a\b[^>]*\shref="([^"#]+)', page.read_text(encoding="utf-8"))
            assert [link for link in links if not (page.parent / link).is_file()] == [], page


@pytest.mark.parametrize("slug", ["equalising-clamp", "pivot-stud"])
def test_the_same_input_gives_the_same_bytes(
    site: Path, tmp_path: Path, monkeypatch: pytest.MonkeyPatch, slug: str
) -> None:
    """With what the build of the whole site has kept, and where nothing is kept; for a milled and a turned job."""
    assert (site / "jobs" / slug / "index.html").is_file()
    build.run_engine("mkdocs", tmp_path / "first", only=slug)
    monkeypatch.setenv("JOBCARDS_CACHE", str(tmp_path / "nothing kept"))
    build.run_engine("mkdocs", tmp_path / "again", only=slug)
    names = files_in(tmp_path / "first")
    assert names == files_in(tmp_path / "again")
    _, different, unreadable = filecmp.cmpfiles(tmp_path / "first", tmp_path / "again", names, shallow=False)
    assert different == [] and unreadable == []


@pytest.mark.browser
def test_the_search_works_from_a_folder(site: Path, page: Page) -> None:
    """Opened as a file there is no server and, in a shop, no network."""
    slug = build.slugs()[0]
    page.goto((site / "index.html").as_uri())
    page.locator("input.md-search__input").fill(slug.replace("-", " "))
    page.locator(".md-search-result__link").first.wait_for(timeout=30_000)
    found = page.locator(".md-search-result__link").evaluate_all("links => links.map(link => link.href)")
    assert any(f"/jobs/{slug}/index.html" in address for address in found), found


@pytest.mark.browser
def test_every_page_of_the_menu_opens_without_a_fault(served: str, page: Page) -> None:
    faults: list[str] = []
    page.on("pageerror", lambda error: faults.append(str(error)))
    page.on("console", lambda message: faults.append(message.text) if message.type == "error" else None)
    page.goto(f"{served}/index.html")
    addresses = page.locator(".md-tabs__link").evaluate_all("links => links.map(link => link.href)")
    assert len(addresses) == 7
    for address in addresses:
        answer = page.goto(address)
        assert answer is not None and answer.ok, address
    assert faults == []
