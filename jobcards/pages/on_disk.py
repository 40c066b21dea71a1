"""Dry runs and drawings kept from one build to the next, in the folder .cache beside the sources.

What is kept goes by a name made of all that it was made from: the definition, the shop, every file of this package,
and the versions of what draws. So nothing in the folder can be out of date, and it may be deleted at any time. A file
is written under another name first and then renamed: nobody ever finds half of one.
"""

import hashlib
import json
import os
import platform
import tempfile
from importlib.metadata import version
from pathlib import Path
from typing import Any

PACKAGE = Path(__file__).resolve().parents[1]
BY_THEMSELVES = {"jobs", "shops", "__pycache__"}  # told apart card by card, or no source
DRAWN_WITH = ("numpy", "matplotlib", "manifold3d", "PyYAML")
MOST = 150  # files; the oldest are dropped


def folder() -> Path:
    """Where it is kept; JOBCARDS_CACHE names another place."""
    return Path(os.environ.get("JOBCARDS_CACHE") or PACKAGE.parent / ".cache" / "jobcards")


def sources(package: Path = PACKAGE) -> str:
    """A mark of everything but the definition that a card is made from."""
    files = (path for path in sorted(package.rglob("*")) if not BY_THEMSELVES & {*path.relative_to(package).parts})
    pieces = [piece for path in files if path.is_file() for piece in (path.name.encode(), path.read_bytes())]
    made_with = [f"{name} {version(name)}".encode() for name in DRAWN_WITH]
    return name_of(platform.python_version().encode(), platform.machine().encode(), *made_with, *pieces)


def name_of(*pieces: bytes) -> str:
    """One name for all the pieces; another for any others.

    >>> name_of(b"ab", b"c") == name_of(b"a", b"bc")
    False
    """
    digest = hashlib.sha256()
    for piece in pieces:
        digest.update(len(piece).to_bytes(8, "big") + piece)
    return digest.hexdigest()[:40]


AS_LOADED = sources()


def found(name: str) -> Any:  # noqa: ANN401 - whatever was kept
    """What was kept under a name; None when there is nothing, or nothing that can be read."""
    try:
        return json.loads((folder() / f"{name}.json").read_text(encoding="utf-8"))
    except (OSError, ValueError):
        return None


def keep(name: str, content: Any) -> None:  # noqa: ANN401 - anything that JSON can say
    """Keep something for the next build. Where that cannot be, or a source was edited meanwhile, nothing happens.

    Nor does it while the site is shown and built again and again: then much is left from the build before.
    """
    if sources() != AS_LOADED or os.environ.get("JOBCARDS_FORGIVING"):
        return
    try:
        folder().mkdir(parents=True, exist_ok=True)
        with tempfile.NamedTemporaryFile("w", encoding="utf-8", dir=folder(), suffix=".part", delete=False) as part:
            json.dump(content, part, ensure_ascii=False)
        Path(part.name).replace(folder() / f"{name}.json")
        drop_oldest()
    except OSError:
        return


def drop_oldest() -> None:
    """Let the folder grow no further."""
    ages = sorted(((path.stat().st_mtime_ns, path) for path in folder().iterdir()), reverse=True)
    for _, path in ages[MOST:]:
        path.unlink(missing_ok=True)
