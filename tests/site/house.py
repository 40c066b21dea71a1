"""A small house with two invented jobs, to try the build on without the real ones."""

import shutil
from pathlib import Path

from jobcards.pages.build import ROOT

DEFINITION = "class ProblemsFound(Exception):\n    problems = ['jobs/one.yml:3:9: no such size; write one']\n"
HAND_WRITTEN = ["index.md", *(f"{name}/index.md" for name in ("reading", "adding", "formulas", "tables", "safety"))]
PAGES = """
from collections import namedtuple

SiteFile = namedtuple("SiteFile", "path content told", defaults=[""])


def site_files(site_url, only, shop="", forgiving=False):
    yield SiteFile("jobs/index.md", "# Job cards\\n")
    for slug in ("one", "two") if not only else (only,):
        yield SiteFile(f"jobs/{slug}/index.md", f"# Job {slug}\\n\\n[wall](wall/index.md) WORDS\\n")
        yield SiteFile(f"jobs/{slug}/wall/index.md", "# Wall\\n")
        yield SiteFile(f"jobs/{slug}/record/index.md", "# Record\\n")
        yield SiteFile(f"jobs/{slug}/numbers.json", b"[]\\n")
        yield SiteFile(f"jobs/{slug}/job.yml", "title: invented\\n")
"""


class House:
    """A folder laid out like this one: its own mkdocs.yml, docs and hook, and stand-ins for the jobs."""

    def __init__(self, folder: Path) -> None:
        self.config = folder / "mkdocs.yml"
        self.pages = folder / "jobcards" / "pages" / "__init__.py"
        self.home = folder / "docs" / "index.md"
        shutil.copy(ROOT / "mkdocs.yml", self.config)
        shutil.copytree(ROOT / "docs" / "assets", folder / "docs" / "assets")
        for name in HAND_WRITTEN:
            (folder / "docs" / name).parent.mkdir(exist_ok=True)
            (folder / "docs" / name).write_text("# A page\n", encoding="utf-8")
        for name in ("definition", "pages"):
            (folder / "jobcards" / name).mkdir(parents=True)
        shutil.copy(ROOT / "jobcards" / "pages" / "hook.py", self.pages.parent)
        (folder / "jobcards" / "__init__.py").touch()
        (folder / "jobcards" / "definition" / "__init__.py").write_text(DEFINITION, encoding="utf-8")
        self.write("worked out")

    def write(self, words: str) -> None:
        """Let the job pages carry these words."""
        self.pages.write_text(PAGES.replace("WORDS", words), encoding="utf-8")
