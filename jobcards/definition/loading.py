"""Files read into a Job or a Shop, with every problem told at once."""

import re
from collections.abc import Mapping
from pathlib import Path

from jobcards.definition import kinds
from jobcards.definition.dimension import Functions
from jobcards.definition.job import Job
from jobcards.definition.model import Mark
from jobcards.definition.problem import Problem, ProblemsFound
from jobcards.definition.reader import Asked, Reader
from jobcards.definition.shop import Shop
from jobcards.definition.sizes import SizeWork
from jobcards.definition.trade_tables import formulas, tables
from jobcards.definition.yaml_nodes import Mapping as MappingNode
from jobcards.definition.yaml_nodes import Scalar, read_nodes

PACKAGE = Path(__file__).resolve().parents[1]
UNITS = {"inch": "in", "mm": "mm"}
SLUG = re.compile(r"[a-z0-9]+(?:-[a-z0-9]+)*")


def job_paths() -> list[Path]:
    """The job definitions there are."""
    return sorted((PACKAGE / "jobs").glob("*.yml"))


def shop_paths() -> list[Path]:
    """The shop files there are."""
    return sorted((PACKAGE / "shops").glob("*.yml"))


def load_job(path: Path) -> Job:
    """A job definition, its sizes worked out. Raises ProblemsFound with all there is to mend."""
    root, reader = opened(path)
    job = reader.model(root, Job)
    stated = job.sizes if job else {}
    functions = formulas()
    work = SizeWork(stated, reader.unit, job.general_tolerance if job else "medium", tables(), functions)  # type: ignore[arg-type]
    sizes = work.all()
    reader.problems += work.problems
    if job:
        kinds_of = {name: size.kind for name, size in sizes.items()}
        reader.problems += wrong_kinds(reader.asked, kinds_of, set(stated), functions)
    if reader.problems or job is None:
        raise ProblemsFound(reader.problems)
    job.slug, job.sizes = path.stem, sizes
    return job


def load_shop(path: Path) -> Shop:
    """A shop file. Raises ProblemsFound with all there is to mend."""
    root, reader = opened(path)
    shop = reader.model(root, Shop)
    reader.problems += wrong_kinds(reader.asked, {}, set(), {})
    if reader.problems or shop is None:
        raise ProblemsFound(reader.problems)
    shop.slug = path.stem
    return shop


def opened(path: Path) -> tuple[MappingNode, Reader]:
    """The nodes of a file and a reader for its unit. Raises ProblemsFound."""
    file = shown(path)
    try:
        data = path.read_bytes()
    except OSError:
        raise ProblemsFound(
            [Problem(Mark(file, 1, 1), "the file cannot be read", "look at its name and place")]
        ) from None
    root, problems = read_nodes(data, file)
    units = root.entries.get("units")
    unit = UNITS.get(units.text, "in") if isinstance(units, Scalar) else "in"
    reader = Reader(unit, problems)
    if not SLUG.fullmatch(path.stem) or path.suffix != ".yml":
        wrong = f"the file is called “{path.name[:60]}”"
        reader.problems.append(
            Problem(Mark(file, 1, 1), wrong, "use lower-case letters, digits and hyphens, then .yml")
        )
    return root, reader


def shown(path: Path) -> str:
    """A file as it is named in a problem: from the repository's top if it stands there."""
    top = PACKAGE.parent
    return path.relative_to(top).as_posix() if path.is_absolute() and path.is_relative_to(top) else path.as_posix()


def wrong_kinds(
    asked: list[Asked], kinds_of: Mapping[str, str], stated: set[str], functions: Functions
) -> list[Problem]:
    """A problem for each expression with an unknown name or of the wrong kind."""
    problems: list[Problem] = []
    for one in asked:
        expression = one.expression
        unknown = expression.unknown([*stated], functions)
        problems += unknown
        if unknown or any(name not in kinds_of for name in expression.names):
            continue
        try:
            kind = expression.kind(kinds_of, functions)
            bare = expression.is_bare(kinds_of, functions)
        except ProblemsFound as error:
            problems += error.problems
            continue
        problem = unfit(one, kind, bare)
        problems += [problem] if problem else []
    return problems


def unfit(asked: Asked, kind: str, bare: bool) -> Problem | None:
    """The problem when an expression does not give what its place wants."""
    mark = asked.expression.mark
    if isinstance(asked.kind, kinds.Value):
        return None
    if isinstance(asked.kind, kinds.Angle):
        if kind == "angle":
            return None
        return Problem(
            mark,
            f"“{asked.expression.text}” is a {kind}, and an angle is wanted",
            "write an angle with its °, as in 45°",
        )
    if kind == "length" or bare:
        return None
    wanted = "a length is wanted"
    return Problem(
        mark,
        f"“{asked.expression.text}” is {'an' if kind == 'angle' else 'a'} {kind}, and {wanted}",
        "write a length, as in 1-1/4",
    )
