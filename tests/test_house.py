"""The order of the house: what lies where, who may import whom, and that the code is clean."""

import ast
import re
import subprocess
import sys
from pathlib import Path

import pytest

ROOT = Path(__file__).resolve().parents[1]
PACKAGE = ROOT / "jobcards"
TOP_LEVEL = {"README.md", "DEVELOPERS.md", "mkdocs.yml", "docs", "jobcards", "scripts", "tests", "pyproject.toml"}
# Each layer may import the ones listed for it and itself; all may import source.
LAYERS = {
    "source": set(),
    "quantity": set(),
    "tables": {"quantity"},
    "trade": {"quantity", "tables"},
    "definition": {"quantity", "tables", "trade"},
    "planning": {"quantity", "tables", "trade", "definition"},
    "dryrun": {"quantity", "tables", "trade", "definition", "planning"},
    "drawing": {"quantity", "tables", "trade", "definition", "planning", "dryrun"},
    "pages": {"quantity", "tables", "trade", "definition", "planning", "dryrun", "drawing"},
}
# These must one day run in a reader's browser: Python itself and PyYAML, nothing else.
PURE = ("source", "quantity", "tables", "trade", "definition", "planning")
LONGEST = 400
MACHINE_PATHS = re.compile(r"(?<![\w.])/(?:root|home|work|tmp|opt|Users)/")


def tracked(pattern: str = "") -> list[Path]:
    """Files that belong to the project: those git knows, and new ones that it does not ignore."""
    command = ["git", "ls-files", "--cached", "--others", "--exclude-standard", "--", pattern or "."]
    listed = subprocess.run(command, cwd=ROOT, capture_output=True, text=True, check=True).stdout.splitlines()
    return [ROOT / name for name in listed if (ROOT / name).is_file()]


def layer_of(module: str) -> str:
    """jobcards.trade.fits -> trade"""
    return module.split(".")[1] if "." in module else ""


def imports(path: Path) -> set[str]:
    """All modules that a file imports, wherever in it."""
    found: set[str] = set()
    for node in ast.walk(ast.parse(path.read_text(encoding="utf-8"))):
        if isinstance(node, ast.Import):
            found |= {alias.name for alias in node.names}
        elif isinstance(node, ast.ImportFrom):
            assert node.level == 0, f"{path}: write the import out in full"
            module = node.module or ""
            found |= {f"{module}.{alias.name}" for alias in node.names} if module == "jobcards" else {module}
    return found


def sources(layer: str) -> list[Path]:
    """The files of a layer: a folder of modules, or one module."""
    return sorted((PACKAGE / layer).rglob("*.py")) or [PACKAGE / f"{layer}.py"]


def test_the_top_level_holds_nothing_else() -> None:
    found = {path.relative_to(ROOT).parts[0] for path in tracked()}
    assert {name for name in found if not name.startswith(".")} - TOP_LEVEL == set()


def test_every_part_of_the_package_is_a_known_layer() -> None:
    parts = {path.relative_to(PACKAGE).parts[0].removesuffix(".py") for path in tracked("jobcards/*.py")}
    assert parts - {"__init__"} <= set(LAYERS)


@pytest.mark.parametrize("layer", LAYERS)
def test_layers_look_one_way(layer: str) -> None:
    allowed = LAYERS[layer] | {layer, "source"}
    for path in sources(layer):
        used = {layer_of(module) for module in imports(path) if module.split(".")[0] == "jobcards"}
        assert used <= allowed, f"{path.relative_to(ROOT)} imports {used - allowed}"


@pytest.mark.parametrize("layer", PURE)
def test_the_pure_layers_need_only_python_and_yaml(layer: str) -> None:
    allowed = set(sys.stdlib_module_names) | {"jobcards", "yaml"}
    for path in sources(layer):
        used = {module.split(".")[0] for module in imports(path)}
        assert used <= allowed, f"{path.relative_to(ROOT)} imports {used - allowed}"


def test_the_pure_layers_load_where_nothing_else_is_installed() -> None:
    modules = [
        ".".join(path.relative_to(ROOT).with_suffix("").parts).removesuffix(".__init__")
        for layer in PURE
        for path in sources(layer)
    ]
    program = f"""
import importlib, sys
for name in ("numpy", "matplotlib", "manifold3d", "scipy", "shapely", "pint", "mkdocs", "segno", "PIL"):
    sys.modules[name] = None
for name in {modules!r}:
    importlib.import_module(name)
"""
    run = subprocess.run([sys.executable, "-c", program], cwd=ROOT, capture_output=True, text=True, check=False)
    assert run.returncode == 0, run.stderr


def test_only_the_hook_knows_the_site_engine() -> None:
    for path in tracked("jobcards/*.py"):
        if path != PACKAGE / "pages" / "hook.py":
            assert not {"mkdocs", "properdocs", "material"} & {name.split(".")[0] for name in imports(path)}, path


def test_no_file_outgrows_its_topic() -> None:
    long = {
        str(path.relative_to(ROOT)): lines
        for path in tracked("*.py")
        if (lines := len(path.read_text(encoding="utf-8").splitlines())) > LONGEST
    }
    assert long == {}


@pytest.mark.parametrize("script", sorted((ROOT / "scripts").glob("*.py")), ids=lambda path: path.name)
def test_an_old_python_can_read_the_scripts(script: Path) -> None:
    """It has to get as far as saying which Python is needed."""
    text = script.read_text(encoding="utf-8")
    ast.parse(text, feature_version=(3, 8))
    assert "from __future__ import annotations" in text


def test_the_locks_name_no_address_and_every_package_has_its_hash() -> None:
    for path in tracked("scripts/lock"):
        text = path.read_text(encoding="utf-8")
        assert "//" not in text, path
        if path.suffix == ".txt":
            packages = re.split(r"^(?=[a-z0-9])", text, flags=re.MULTILINE)[1:]
            assert packages and all("--hash=sha256:" in package for package in packages), path


def test_the_test_lock_holds_the_site_lock() -> None:
    """scripts/test.py installs one on top of the other."""
    site, test = (
        set(re.findall(r"^[a-z0-9-]+==\S+", (ROOT / f"scripts/lock/{name}.txt").read_text(), re.MULTILINE))
        for name in ("site", "test")
    )
    assert site and site <= test


def test_no_path_of_one_machine_is_written_down() -> None:
    for path in tracked():
        if path == Path(__file__).resolve() or path.suffix in {".png", ".ttf", ".woff", ".woff2", ".ico"}:
            continue
        found = MACHINE_PATHS.search(path.read_text(encoding="utf-8"))
        assert not found, f"{path.relative_to(ROOT)}: {found}"


@pytest.mark.parametrize(
    "command", [["ruff", "check"], ["ruff", "format", "--check", "--diff"], ["mypy"]], ids=["lint", "format", "types"]
)
def test_the_code_is_clean(command: list[str]) -> None:
    run = subprocess.run([sys.executable, "-m", *command], cwd=ROOT, capture_output=True, text=True, check=False)
    assert run.returncode == 0, run.stdout + run.stderr


def test_no_code_knows_a_job() -> None:
    """What a card says comes from its definition alone: no job's name stands in code, scripts or the site's assets."""
    names = set()
    for path in (ROOT / "jobcards" / "jobs").glob("*.yml"):
        title = re.search(r"^title: *(.+)$", path.read_text(encoding="utf-8"), re.MULTILINE)
        names |= {path.stem.lower()} | ({title[1].strip().lower()} if title else set())
    for path in tracked():
        inside = path.relative_to(ROOT).as_posix()
        if inside.startswith(("jobcards/", "scripts/", "docs/assets/")) and path.suffix in {".py", ".js", ".css"}:
            told = path.read_text(encoding="utf-8").lower()
            assert not [name for name in names if name in told], inside
