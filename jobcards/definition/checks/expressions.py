"""Every expression names sizes that exist, gives the kind of value its place wants, and can be worked out."""

from collections.abc import Iterable, Iterator
from dataclasses import replace

from jobcards.definition import kinds
from jobcards.definition.checks.known import Known, told
from jobcards.definition.model import Mark
from jobcards.definition.problem import MOST_PROBLEMS, Problem, ProblemsFound, advise, article
from jobcards.definition.reading.reader import Asked
from jobcards.definition.size import StatedSize
from jobcards.definition.text import sizes_meant
from jobcards.quantity import MOST

WRITTEN = {"length": "write a length, as in 1-1/4", "angle": "write an angle with its °, as in 45°"}


def check_expressions(asked: Iterable[Asked], known: Known) -> Iterator[Problem]:
    """The problems of all expressions; names are looked up no more when very many are unknown."""
    strangers = 0
    for one in asked:
        if not known.ready(one.expression):
            unknown = one.expression.unknown(known.stated, known.functions) if strangers < MOST_PROBLEMS else []
            strangers += len(unknown)
            instead = one.kind.instead if isinstance(one.kind, kinds.Length) else ""
            yield from (replace(problem, instead=instead) if instead else problem for problem in unknown)
            continue
        try:
            yield from wrong_kind(one, known)
            yield from out_of_reach(one, known)
        except ProblemsFound as error:
            yield from error.problems


def wrong_kind(asked: Asked, known: Known) -> Iterator[Problem]:
    """A length where an angle is wanted, and the like. A bare number passes for a length. Raises ProblemsFound."""
    kind = asked.expression.kind(known.kinds, known.functions)
    wanted = "angle" if isinstance(asked.kind, kinds.Angle) else "length"
    bare = asked.expression.is_bare(known.kinds, known.functions)
    if isinstance(asked.kind, kinds.Value) or kind == wanted or (bare and wanted == "length"):
        return
    given = "number without °" if bare else kind
    yield told(asked.expression, f"is {article(given)}, and {article(wanted)} is wanted", WRITTEN[wanted])


def out_of_reach(asked: Asked, known: Known) -> Iterator[Problem]:
    """Nothing or less where there must be something; more than there can be. Raises ProblemsFound."""
    value = asked.expression.value(known.aims, known.functions)
    kind = asked.kind
    positive = isinstance(kind, kinds.Through) or (isinstance(kind, kinds.Length | kinds.Angle) and kind.positive)
    if positive and not value > 0:
        yield told(asked.expression, f"comes to {value:.6g}", "write something more than nothing")
    elif isinstance(kind, kinds.Angle) and not abs(value) < kind.below:
        yield told(asked.expression, f"comes to {value:.6g}°", f"write an angle of less than {kind.below:g}°")
    elif abs(value) > MOST:
        yield told(asked.expression, f"comes to {value:.6g}", f"write at most {MOST:.0f}")


def check_texts(texts: Iterable[tuple[str, Mark]], known: Known) -> Iterator[Problem]:
    """A size shown in a text must exist."""
    for text, mark in texts:
        for name, offset in sizes_meant(text):
            if name not in known.stated:
                place = Mark(mark.file, mark.line, mark.column + offset)
                yield Problem(place, f"“{name.strip()}” in the text is not a size", advise(name.strip(), known.stated))


def check_used(
    stated: dict[str, StatedSize], places: dict[str, Mark], asked: Iterable[Asked], texts: Iterable[tuple[str, Mark]]
) -> Iterator[Problem]:
    """A size that nothing is made with is a slip, or was forgotten."""
    used = {name for one in asked for name in one.expression.names}
    used |= {name for size in stated.values() for name in size.size.names}
    used |= {name for text, _ in texts for name, _ in sizes_meant(text)}
    for name in stated:
        if name not in used:
            yield Problem(places[name], f"the size “{name}” is never used", "use it in a part, or leave it out")
