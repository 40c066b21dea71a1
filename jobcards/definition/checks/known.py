"""What the checks look things up in: the sizes of a job and the formulas of the trade."""

from collections.abc import Collection, Mapping
from dataclasses import dataclass

from jobcards.definition.expression import Expression
from jobcards.definition.problem import Problem, ProblemsFound
from jobcards.definition.size import Size
from jobcards.definition.syntax.dimension import Functions


@dataclass(frozen=True)
class Known:
    """The sizes that could be worked out, the names of all that are stated, and the formulas."""

    sizes: Mapping[str, Size]
    stated: Collection[str]
    functions: Functions

    @property
    def kinds(self) -> dict[str, str]:
        return {name: size.kind for name, size in self.sizes.items()}

    @property
    def aims(self) -> dict[str, float]:
        return {name: size.aim for name, size in self.sizes.items()}

    def ready(self, expression: Expression) -> bool:
        """Whether every name in it has a value; if not, that is told elsewhere."""
        called = all(name in self.functions for name in expression.calls)
        return called and all(name in self.sizes for name in expression.names)

    def value(self, expression: Expression | str | None) -> float | None:
        """What it comes to when every size is as aimed at; None when that is not to be had, which is told elsewhere."""
        if not isinstance(expression, Expression) or not self.ready(expression):
            return None
        try:
            return expression.value(self.aims, self.functions)
        except ProblemsFound:
            return None


def told(expression: Expression, wrong: str, instead: str) -> Problem:
    """A problem of an expression."""
    return Problem(expression.mark, f"“{expression.text}” {wrong}", instead)
