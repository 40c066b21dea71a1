"""Files read into a Job or a Shop, with every problem told at once."""

import re
from collections.abc import Iterator
from functools import cache
from pathlib import Path
from typing import Any

from jobcards.definition import kinds
from jobcards.definition.checks.expressions import check_expressions, check_texts, check_used
from jobcards.definition.checks.job import check_picture, check_requirement, check_revisions
from jobcards.definition.checks.known import Known
from jobcards.definition.checks.parts import as_bought, check_part
from jobcards.definition.checks.routes import check_route
from jobcards.definition.checks.variants import address, check_variants
from jobcards.definition.job import Job
from jobcards.definition.model import Mark
from jobcards.definition.problem import Problem, ProblemsFound, found
from jobcards.definition.reading.reader import Asked, Reader, TooManyProblems
from jobcards.definition.reading.yaml_nodes import LARGEST, Mapping, Node, Scalar, read_nodes
from jobcards.definition.shop import Shop
from jobcards.definition.size import StatedSize
from jobcards.definition.sizes import SizeWork, Tables
from jobcards.trade import every_formula
from jobcards.trade.fits import general_tolerance, limits
from jobcards.trade.formula import formula_of

PACKAGE = Path(__file__).resolve().parents[1]
UNITS = {"inch": "in", "mm": "mm"}
SLUG = re.compile(r"[a-z0-9]+(?:-[a-z0-9]+)*")


def job_paths() -> list[Path]:
    """The job definitions there are."""
    return sorted((PACKAGE / "jobs").glob("*.yml"))


def shop_paths() -> list[Path]:
    """The shop files there are."""
    return sorted((PACKAGE / "shops").glob("*.yml"))


def shop_for(job: Job) -> Path:
    """The shop file that a job's card is worked out for unless another is named: the first with the job's units."""
    paths = shop_paths()
    return next((path for path in paths if load_shop(path).units == job.units), paths[0])


def load_family(path: Path) -> list[Job]:
    """A job and its variants, one job for each card. Raises ProblemsFound with all there is to mend."""
    job = load_job(path)
    return [job, *(load_job(path, variant) for variant in job.variants)]


def load_job(path: Path, variant: str = "") -> Job:
    """A job definition, its sizes worked out; a variant has some sizes changed.

    Raises ProblemsFound with all there is to mend, and KeyError when there is no such variant.
    """
    root, reader = opened(path, contents(path))
    return job_of(root, reader, path, variant)


def job_of(root: Mapping, reader: Reader, path: Path, variant: str, strict: bool = True) -> Job:
    """The job that stands in the nodes of a file. Raises ProblemsFound. Unless `strict` a size may be without use."""
    try:
        read = reader.fields(root, Job)
    except TooManyProblems:
        raise ProblemsFound(reader.problems) from None
    variants: dict[str, dict[str, StatedSize]] = read.values.get("variants") or {}
    stated = {**(read.values.get("sizes") or {}), **(variants[variant] if variant else {})}
    tables = Tables(limits, general_tolerance, formula_of(general_tolerance).source)
    work = SizeWork(stated, reader.unit, read.values.get("general_tolerance") or "medium", tables, every_formula())
    sizes = work.all()
    reader.problems += work.problems
    known = Known(sizes, keys_of(root, "sizes"), every_formula())
    reader.problems += list(check(read.values, reader, known))
    if "picture" in read.marks:
        reader.problems += check_picture(read.values["picture"], read.marks["picture"], keys_of(root, "parts"))
    names = keys_of(root, "variants")
    places = {name: keys_of(root, "variants", name) for name in names}
    reader.problems += check_variants(variants, names, places, keys_of(root, "sizes"), path)
    if strict and not variant and not reader.problems:
        changed = [Asked(size.size, kinds.Value()) for sizes in variants.values() for size in sizes.values()]
        reader.problems += check_used(stated, keys_of(root, "sizes"), [*reader.asked, *changed], reader.texts)
    if reader.problems:
        raise ProblemsFound(in_variant(problem, variant) for problem in reader.problems)
    titles = {name: f"{read.values['title']}, {name}" if name else read.values["title"] for name in ("", *variants)}
    return Job(
        **{**read.values, "sizes": sizes, "title": titles[variant]},
        slug=address(path.stem, variant),
        variant=variant,
        family=tuple((address(path.stem, name), title) for name, title in titles.items()),
        mark=root.mark,
        marks=read.marks,
    )


def in_variant(problem: Problem, variant: str) -> Problem:
    """A problem, with the variant it comes up in if it is one of a variant."""
    wrong = f"in the variant “{variant}”: {problem.wrong}" if variant else problem.wrong
    return Problem(problem.mark, wrong, problem.instead)


def keys_of(root: Mapping, *path: str) -> dict[str, Mark]:
    """The names below a key, or a key of a key, and where they stand, even of what could not be read."""
    below: Node | None = root
    for key in path:
        below = below.entries.get(key) if isinstance(below, Mapping) else None
    return {name: scalar.mark for name, scalar in below.keys.items()} if isinstance(below, Mapping) else {}


def check(values: dict[str, Any], reader: Reader, known: Known) -> Iterator[Problem]:
    """The problems between what was read, as far as it was read."""
    yield from check_expressions(reader.asked, known)
    yield from check_texts(reader.texts, known)
    yield from check_revisions(values.get("revisions") or [])
    for name, part in (values.get("parts") or {}).items():
        yield from check_part(part, known)
        if bool(part.block) != bool(part.turned):
            yield from check_route(name, part, as_bought(part, known))
    for requirement in (values.get("requirements") or {}).values():
        yield from check_requirement(requirement, known)


def load_shop(path: Path) -> Shop:
    """A shop file, read anew only when it has changed. Raises ProblemsFound with all there is to mend."""
    return read_shop(path, contents(path))


@cache
def read_shop(path: Path, data: bytes) -> Shop:
    """A shop of what stands in its file. Raises ProblemsFound."""
    root, reader = opened(path, data)
    try:
        shop = reader.model(root, Shop)
    except TooManyProblems:
        raise ProblemsFound(reader.problems) from None
    reader.problems += check_expressions(reader.asked, Known({}, (), {}))
    if reader.problems or shop is None:
        raise ProblemsFound(reader.problems)
    shop.slug = path.stem
    return shop


def contents(path: Path) -> bytes:
    """What stands in a file, as far as a definition may be long. Raises ProblemsFound."""
    try:
        with path.open("rb") as opened_file:
            return opened_file.read(LARGEST + 1)
    except OSError:
        raise found(Mark(shown(path), 1, 1), "the file cannot be read", "look at its name and place") from None


def opened(path: Path, data: bytes) -> tuple[Mapping, Reader]:
    """The nodes of a file and a reader for its unit. Raises ProblemsFound."""
    file = shown(path)
    root, problems = read_nodes(data, file)
    units = root.entries.get("units")
    reader = Reader(UNITS.get(units.text, "in") if isinstance(units, Scalar) else "in", problems)
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
