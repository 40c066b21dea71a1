"""Expressions of sizes as a definition writes them: `length/2 - 1-1/4`, `22°30'`, `relieved_swing(a, b, c, d)`.

Nothing is handed to Python: the text is cut into words, read by a small grammar and worked out from its tree.
"""

import math
from collections.abc import Callable, Iterable, Mapping
from dataclasses import dataclass, replace

from jobcards.definition.model import Mark
from jobcards.definition.problem import Problem, ProblemsFound, advise, found
from jobcards.definition.syntax.dimension import BUILT_IN, Functions, dimension
from jobcards.definition.syntax.grammar import read
from jobcards.definition.syntax.tokens import Misread
from jobcards.definition.syntax.tree import Amount, Call, Name, Negative, Pair, Tree, walk

BEYOND = 1e12  # nothing on the way to a shop's number is larger
CONSTANTS = {"pi": math.pi}
WORKED: dict[str, Callable[..., float]] = {
    "sqrt": math.sqrt,
    "sin": lambda angle: math.sin(math.radians(angle)),
    "cos": lambda angle: math.cos(math.radians(angle)),
    "tan": lambda angle: math.tan(math.radians(angle)),
    "asin": lambda ratio: math.degrees(math.asin(ratio)),
    "acos": lambda ratio: math.degrees(math.acos(ratio)),
    "atan": lambda ratio: math.degrees(math.atan(ratio)),
    "min": min,
    "max": max,
    "abs": abs,
}


@dataclass(frozen=True)
class Expression:
    """A text, where it stands, and the tree it was read into."""

    text: str
    mark: Mark
    tree: Tree

    @property
    def names(self) -> tuple[str, ...]:
        """The sizes used, in the order written, each once."""
        used = (piece.name for piece in walk(self.tree) if isinstance(piece, Name) and piece.name not in CONSTANTS)
        return tuple(dict.fromkeys(used))

    @property
    def calls(self) -> tuple[str, ...]:
        """The formulas of the trade it calls, each once."""
        called = (piece.name for piece in walk(self.tree) if isinstance(piece, Call) and piece.name not in BUILT_IN)
        return tuple(dict.fromkeys(called))

    @property
    def is_literal(self) -> bool:
        """Whether it is a number as written, perhaps with a minus before it."""
        return isinstance(self.tree.of if isinstance(self.tree, Negative) else self.tree, Amount)

    def place(self, offset: int) -> Mark:
        """The mark of a piece of the text."""
        return replace(self.mark, column=self.mark.column + offset)

    def unknown(self, names: Iterable[str], functions: Iterable[str] = ()) -> list[Problem]:
        """A problem for each name that is no size and no formula."""
        sizes, formulas = set(names), {*BUILT_IN, *functions}
        problems = []
        for piece in walk(self.tree):
            if isinstance(piece, Name) and piece.name not in sizes and piece.name not in CONSTANTS:
                wrong = f"“{piece.name}” is not a size of this job" if sizes else f"“{piece.name}” is not a number"
                problems.append(
                    Problem(self.place(piece.offset), wrong, advise(piece.name, sizes) if sizes else "write a number")
                )
            if isinstance(piece, Call) and piece.name not in formulas:
                wrong, instead = f"“{piece.name}” is not a formula", advise(piece.name, formulas)
                if piece.name in sizes:
                    wrong = f"no sign stands between “{piece.name}” and “(”"
                    instead = "write + - * or / between them"
                problems.append(Problem(self.place(piece.offset), wrong, instead))
        return problems

    def kind(self, kinds: Mapping[str, str], functions: Functions = {}) -> str:  # noqa: B006
        """`length`, `angle` or `number`; a number without a unit counts as a number. Raises ProblemsFound."""
        self.refuse_unknown(kinds, functions)
        try:
            result = dimension(self.tree, kinds, functions)
        except Misread as error:
            raise self.problem(error) from None
        if str(result) not in ("length", "angle", "number"):
            raise found(
                self.mark, f"“{self.text}” gives neither a length, an angle nor a number", "check what is multiplied"
            )
        return str(result)

    def is_bare(self, kinds: Mapping[str, str], functions: Functions = {}) -> bool:  # noqa: B006
        """Whether it is made of numbers without a unit only, so that it may stand for a length."""
        return dimension(self.tree, kinds, functions).bare

    def value(self, sizes: Mapping[str, float], functions: Functions = {}) -> float:  # noqa: B006
        """What it comes to: lengths in the job's unit, angles in degrees. Raises ProblemsFound.

        >>> parse("length/2 - 1-1/4", Mark(), "in").value({"length": 4.5})
        1.0
        >>> parse("2*atan(1/2) + 22°30'", Mark(), "in").value({})
        75.63010235415598
        """
        self.refuse_unknown(sizes, functions)
        try:
            return worked(self.tree, sizes, functions)
        except Misread as error:
            raise self.problem(error) from None

    def refuse_unknown(self, names: Iterable[str], functions: Iterable[str]) -> None:
        """Raise ProblemsFound when a name is unknown."""
        problems = self.unknown(names, functions)
        if problems:
            raise ProblemsFound(problems)

    def problem(self, error: Misread) -> ProblemsFound:
        """What cannot be read or worked out, with its place in the file."""
        return found(self.place(error.offset), error.wrong, error.instead)


def parse(text: str, mark: Mark, unit: str) -> Expression:
    """Read an expression; a length without a unit is in `unit` ("in" or "mm"). Raises ProblemsFound.

    >>> parse("pin length + 12.7 mm", Mark(), "in").names
    ('pin length',)
    """
    try:
        return Expression(text, mark, read(text, unit))
    except Misread as error:
        raise found(replace(mark, column=mark.column + error.offset), error.wrong, error.instead) from None


def worked(tree: Tree, sizes: Mapping[str, float], functions: Functions) -> float:
    """The value of a tree. Raises Misread where it cannot be worked out."""
    match tree:
        case Amount():
            result = tree.value
        case Name():
            result = sizes[tree.name] if tree.name in sizes else CONSTANTS[tree.name]
        case Negative():
            result = -worked(tree.of, sizes, functions)
        case Pair():
            left, right = worked(tree.left, sizes, functions), worked(tree.right, sizes, functions)
            result = joined(tree, left, right)
        case Call():
            result = called(tree, [worked(argument, sizes, functions) for argument in tree.arguments], functions)
    if not abs(result) <= BEYOND:
        raise Misread(tree.offset, "this comes to a number without bound", "check what is divided and multiplied")
    return result


def joined(pair: Pair, left: float, right: float) -> float:
    """Two values put together."""
    match pair.sign:
        case "+":
            return left + right
        case "-":
            return left - right
        case "*":
            return left * right
    if abs(right) < 1 / BEYOND:
        raise Misread(pair.offset, "this divides by nothing", "check the size after the /")
    return left / right


def called(call: Call, arguments: list[float], functions: Functions) -> float:
    """What a formula gives."""
    function = WORKED.get(call.name) or functions[call.name]
    try:
        return float(function(*arguments))
    except (ValueError, ArithmeticError) as error:
        said = str(error)
        plain = said if call.name not in WORKED else f"{call.name} of {arguments[0]:.6g} does not exist"
        raise Misread(call.offset, plain, "check the sizes it is given") from None
    except TypeError:
        raise Misread(call.offset, f"{call.name} cannot be given these values", "see the page of formulas") from None
