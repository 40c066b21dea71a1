"""The sizes of a job worked out: nominal, limits and aim, from tolerances, fits, the general class or other sizes."""

from collections.abc import Callable, Mapping
from dataclasses import dataclass, field, replace
from typing import TypeVar

from jobcards.definition.model import Mark
from jobcards.definition.problem import MOST_PROBLEMS, Problem, ProblemsFound, article, found
from jobcards.definition.size import Size, StatedSize
from jobcards.definition.syntax.dimension import Functions
from jobcards.quantity import NotAQuantity
from jobcards.source import ARITHMETIC, Source
from jobcards.trade.fits import Limits

Result = TypeVar("Result")
STATED = Source("definition", "stated on the drawing")


@dataclass(frozen=True)
class Tables:
    """The tables that sizes are looked up in; they are handed in."""

    fit: Callable[[float, str, str], Limits]
    general: Callable[[float, str, str], float]
    general_source: Source


@dataclass
class SizeWork:
    """Works the sizes of one job out, each after those it is made of."""

    stated: Mapping[str, StatedSize]
    unit: str
    grade: str
    tables: Tables
    functions: Functions
    sizes: dict[str, Size] = field(default_factory=dict)
    problems: list[Problem] = field(default_factory=list)
    open: list[str] = field(default_factory=list)
    failed: set[str] = field(default_factory=set)
    slopes: dict[str, dict[str, float]] = field(default_factory=dict)

    def all(self) -> dict[str, Size]:
        """Every size that can be worked out, in the order written; the problems of the others are noted."""
        for name in self.stated:
            self.need(name)
        return {name: self.sizes[name] for name in self.stated if name in self.sizes}

    def need(self, name: str) -> bool:
        """Work out one size and what it is made of; whether that was possible."""
        if name in self.sizes or name in self.failed:
            return name in self.sizes
        stated = self.stated[name]
        if name in self.open:
            circle = " → ".join([*self.open[self.open.index(name) :], name])
            self.fail(
                name, found(stated.size.mark, f"the sizes go round in a circle: {circle}", "give one of them a number")
            )
            return False
        if len(self.problems) > MOST_PROBLEMS:
            return False
        unknown = stated.size.unknown(self.stated, self.functions)
        if unknown:
            self.fail(name, ProblemsFound(unknown))
            return False
        self.open.append(name)
        ready = [self.need(other) for other in stated.size.names]
        self.open.pop()
        if not all(ready):
            self.failed.add(name)
            return False
        try:
            self.sizes[name] = self.work(name, stated)
        except ProblemsFound as error:
            self.fail(name, error)
        return name in self.sizes

    def fail(self, name: str, error: ProblemsFound) -> None:
        self.failed.add(name)
        self.problems.extend(error.problems)

    def work(self, name: str, stated: StatedSize) -> Size:
        """One size whose parts are known. Raises ProblemsFound."""
        kinds = {other: self.sizes[other].kind for other in stated.size.names}
        kind = stated.size.kind(kinds, self.functions)
        if kind == "number" and stated.size.is_bare(kinds, self.functions):
            kind = "length"
        nominal = stated.size.value({other: self.sizes[other].nominal for other in kinds}, self.functions)
        size = Size(
            name, stated.size.text, stated.mark, stated.size, nominal, nominal, nominal, nominal, kind,
            "", "", "reference", ARITHMETIC, stated.note,
        )  # fmt: skip
        if stated.reference:
            return self.reference(size, stated)
        return self.with_limits(size, stated)

    def with_limits(self, size: Size, stated: StatedSize) -> Size:
        """A size with limits of its own: a tolerance, a fit or the general class."""
        if stated.tolerance and stated.fit:
            raise found(stated.place("fit"), "a size has a tolerance and a fit", "leave one of them out")
        if stated.tolerance:
            deviations = stated.tolerance
            if (deviations.shape == "angle") != (size.kind == "angle"):
                raise found(
                    stated.place("tolerance"),
                    f"“{deviations.text}” is no tolerance of {article(size.kind)}",
                    written(size.kind),
                )
            return limited(size, deviations.lower, deviations.upper, deviations.text, "stated", STATED)
        if stated.fit:
            return self.fitted(size, stated)
        if size.kind == "number":
            return replace(size, origin="stated", source=STATED)
        if size.kind == "angle":
            wrong = "an angle's general tolerance goes by its shorter side, which is not known here"
            raise found(stated.mark, wrong, f"write its tolerance, as in {size.text} ±0.5°")
        general = attempt(lambda: self.tables.general(size.nominal, self.grade[0], self.unit), stated.mark)
        return limited(size, -general, general, "", "general", self.tables.general_source)

    def fitted(self, size: Size, stated: StatedSize) -> Size:
        """A size whose limits come from a table of fits."""
        mark = stated.place("fit")
        if size.kind != "length":
            raise found(mark, f"“{stated.fit}” is no fit of {article(size.kind)}", written(size.kind))
        limits = attempt(lambda: self.tables.fit(size.nominal, stated.fit, self.unit), mark)
        fitted = limited(size, limits.lower_deviation, limits.upper_deviation, stated.fit, "fit", limits.source)
        return replace(fitted, fit=stated.fit)

    def reference(self, size: Size, stated: StatedSize) -> Size:
        """A size that follows from others: the worst of what they may be."""
        if stated.tolerance or stated.fit:
            place = stated.place("tolerance" if stated.tolerance else "fit")
            raise found(place, "a reference size has no tolerance of its own", "leave it out, or leave reference out")
        slopes = self.slopes_of(stated)
        self.slopes[size.name] = slopes
        low, high = {}, {}
        for leaf, slope in slopes.items():
            one, other = self.sizes[leaf].lower, self.sizes[leaf].upper
            low[leaf], high[leaf] = (one, other) if slope >= 0 else (other, one)
        lower, upper = self.at(stated, low), self.at(stated, high)
        return limited(size, lower - size.nominal, upper - size.nominal, "", "reference", ARITHMETIC)

    def slopes_of(self, stated: StatedSize) -> dict[str, float]:
        """How a size rises with each size of its own limits that it comes down to, between that one's limits."""
        slopes: dict[str, float] = {}
        aims = {name: self.sizes[name].aim for name in stated.size.names}
        for name in stated.size.names:
            one, other = self.sizes[name].lower, self.sizes[name].upper
            rise = self.value(stated, {**aims, name: other}) - self.value(stated, {**aims, name: one})
            slope = rise / (other - one) if other > one else 0.0
            for leaf, below in self.slopes.get(name, {name: 1.0}).items():
                slopes[leaf] = slopes.get(leaf, 0.0) + slope * below
        return slopes

    def at(self, stated: StatedSize, leaves: Mapping[str, float]) -> float:
        """What a size comes to when the sizes it comes down to have these values."""
        values = dict(leaves)

        def fill(size: StatedSize) -> float:
            for name in size.size.names:
                if name not in values:
                    values[name] = fill(self.stated[name])
            return self.value(size, values)

        return fill(stated)

    def value(self, stated: StatedSize, values: Mapping[str, float]) -> float:
        return stated.size.value(values, self.functions)


def limited(size: Size, lower: float, upper: float, text: str, origin: str, source: Source) -> Size:
    """The size between its limits, given as deviations from the nominal."""
    low, high = round(size.nominal + lower, 10), round(size.nominal + upper, 10)
    return replace(
        size, lower=low, upper=high, aim=round((low + high) / 2, 10), tolerance_text=text, origin=origin, source=source
    )


def attempt(look_up: Callable[[], Result], mark: Mark) -> Result:
    """What a table gives; what it cannot give becomes a problem."""
    try:
        return look_up()
    except (ValueError, NotAQuantity) as error:
        wrong, _, instead = str(error).partition("; ")
        raise found(mark, wrong, instead or "write the tolerance, as in ±0.005") from None


def written(kind: str) -> str:
    """How the tolerance of a kind is written."""
    return "write it in degrees, as in ±0.5°" if kind == "angle" else "write it without °, as in ±0.005"
