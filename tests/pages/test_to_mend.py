"""While the site is shown, a definition that is wrong has a page that says so; a build stops at it."""

import re
import shutil
from pathlib import Path

import pytest

from jobcards.definition import ProblemsFound
from jobcards.pages import site
from jobcards.pages.to_mend import to_mend_page
from tests.planning.cards import CLAMP

HOSTILE = "title: '<script>alert(1)</script> ```python exec'\nsumary: x\n"


@pytest.fixture
def broken(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> Path:
    """A folder of jobs with one that cannot be made."""
    path = tmp_path / "broken.yml"
    path.write_text(HOSTILE, encoding="utf-8")
    monkeypatch.setattr(site, "job_paths", lambda: [path])
    return path


def test_the_page_tells_each_problem_beside_its_line(broken: Path) -> None:
    files = list(site.site_files(only="broken", forgiving=True))
    page = next(file for file in files if file.path == "jobs/broken/index.md")
    assert "there is no key “sumary” here" in str(page.content)
    assert "write “summary”" in str(page.content)
    assert any(
        line.endswith("use letters, digits, spaces and - / . , ' as in “3/4 end mill”")
        for line in page.told.splitlines()
    )
    assert "<script" not in str(page.content) and "```" not in str(page.content)
    made = [file.path for file in files if file.path.startswith("jobs/")]
    assert made == ["jobs/broken/index.md", "jobs/index.md"], "no half-made card"


def test_a_build_stops_at_it(broken: Path) -> None:
    with pytest.raises(ProblemsFound):
        list(site.site_files())


def test_any_bytes_can_be_shown(tmp_path: Path) -> None:
    path = tmp_path / "bytes.yml"
    path.write_bytes(b"\xff\xfe\x00```\n" * 3)
    with pytest.raises(ProblemsFound) as found:
        from jobcards.definition import load_job

        load_job(path)
    assert "```" not in to_mend_page(path, found.value.problems)


def test_a_variant_has_its_own_files_and_points_to_its_sisters(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    guide = Path(__file__).resolve().parents[1] / "jobs" / "metric-guide.yml"
    path = tmp_path / guide.name
    shutil.copy(guide, path)
    monkeypatch.setattr(site, "job_paths", lambda: [path])
    files = {file.path: str(file.content) for file in site.site_files(only="metric-guide")}
    for slug in ("metric-guide", "metric-guide-80-mm-long"):
        for name in ("index.md", "wall/index.md", "record/index.md", "numbers.json", "job.yml"):
            assert f"jobs/{slug}/{name}" in files
    assert '<a href="../metric-guide-80-mm-long/index.html">' in files["jobs/metric-guide/index.md"]
    assert '<a href="../metric-guide/index.html">' in files["jobs/metric-guide-80-mm-long/index.md"]
    assert files["jobs/metric-guide/numbers.json"] != files["jobs/metric-guide-80-mm-long/numbers.json"]
    assert CLAMP.stem not in files["jobs/index.md"]
    links = r'<a href="../../((?:formulas|tables)/[^"#]*)index.html'
    wanted = set(re.findall(links, files["jobs/metric-guide/index.md"]))
    assert wanted  # a card by itself leads to its formulas and tables too
    assert {f"{place}index.md" for place in wanted} <= set(files)
