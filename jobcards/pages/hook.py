"""Hands the finished pages of all jobs to the site engine. The only file that knows the engine.

Works the same under mkdocs and properdocs. All that a page says is decided elsewhere: see `jobcards.pages`.
"""

import os
import re
import sys
import time
from importlib import import_module
from pathlib import Path
from typing import Any

from mkdocs.exceptions import PluginError
from mkdocs.structure.files import File, Files

ROOT = str(Path(__file__).resolve().parents[2])
FENCE = re.compile("```|~~~")


def on_pre_build(config: Any) -> None:  # noqa: ANN401 - mkdocs' or properdocs' own
    """Forget our modules when one of them or a table was edited, so that the edit takes effect while serving.

    Otherwise they are kept, and with them the dry runs and drawings of what has not changed.
    """
    made_from = stamp(Path(config.config_file_path).parent / "jobcards")
    if getattr(sys.modules.get("jobcards"), "made_from", "") != made_from:
        forget()
    if ROOT not in sys.path:
        sys.path.insert(0, ROOT)
    import_module("jobcards").made_from = made_from  # type: ignore[attr-defined]


def stamp(package: Path) -> str:
    """Changes with any module or table."""
    files = sorted([*package.rglob("*.py"), *package.glob("tables/*.yml")])
    return " ".join(f"{path.name} {path.stat().st_mtime_ns}" for path in files)


def on_post_build(config: Any) -> None:  # noqa: ANN401
    """While one card is being written the engine is quiet: tell that its page is there."""
    if "JOBCARDS_BELL" in os.environ:
        print(time.strftime("%H:%M:%S  The page is made."), flush=True)


def forget() -> None:
    """Drop our modules, and the process that draws with them."""
    if beside := sys.modules.get("jobcards.pages.meanwhile"):
        beside.stop()
    for name in [name for name in sys.modules if name.partition(".")[0] == "jobcards"]:
        del sys.modules[name]


def on_files(files: Files, config: Any) -> Files:  # noqa: ANN401
    """Add the pages of every job, or of the one named by JOBCARDS_ONLY, worked out for the shop JOBCARDS_SHOP.

    Raises PluginError, which stops any build: with one line a problem when a definition is wrong, or when a page
    carries a fence, since the engine runs what stands in one and a definition comes from a stranger.
    """
    from jobcards.definition import ProblemsFound
    from jobcards.pages import site_files

    only, shop, forgiving = (os.environ.get(f"JOBCARDS_{word}", "") for word in ("ONLY", "SHOP", "FORGIVING"))
    try:
        for page in site_files(config.site_url or "", only, shop, bool(forgiving)):
            if page.told:
                print(page.told, file=sys.stderr, flush=True)
            if isinstance(page.content, str) and page.path.endswith(".md") and FENCE.search(page.content):
                raise PluginError(f"{page.path}: a page made from a definition may hold no ``` and no ~~~")
            files.append(File.generated(config, page.path, content=page.content))
    except ProblemsFound as found:
        raise PluginError("\n".join(map(str, found.problems))) from None
    return files
