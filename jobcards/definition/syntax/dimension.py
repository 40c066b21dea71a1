"""Whether an expression gives a length, an angle or a plain number; a length and an angle cannot be added."""

import inspect
from collections.abc import Callable, Mapping
from dataclasses import dataclass, replace
from fractions import Fraction

from jobcards.definition.problem import article
from jobcards.definition.syntax.tokens import Misread
from jobcards.definition.syntax.tree import Amount, Call, Name, Negative, Pair, Tree

Functions = Mapping[str, Callable[..., float]]


@dataclass(frozen=True)
class Dimension:
    """Powers of length and angle. A bare number, written without a unit, takes on the other side's length in a sum."""

    length: Fraction = Fraction(0)
    angle: Fraction = Fraction(0)
    bare: bool = False

    def __str__(self) -> str:
        return NAMES.get((self.length, self.angle), "something that is no length, angle or number")


LENGTH, ANGLE, NUMBER = Dimension(Fraction(1)), Dimension(angle=Fraction(1)), Dimension()
BARE = Dimension(bare=True)
NAMES = {
    (Fraction(1), Fraction(0)): "length",
    (Fraction(0), Fraction(1)): "angle",
    (Fraction(0), Fraction(0)): "number",
}
BY_NAME = {"length": LENGTH, "angle": ANGLE, "number": NUMBER}
BY_UNIT = {"length": LENGTH, "in": LENGTH, "mm": LENGTH, "deg": ANGLE, "1": NUMBER}
FROM_ANGLE, TO_ANGLE, ALIKE = ("sin", "cos", "tan"), ("asin", "acos", "atan"), ("min", "max")
BUILT_IN = (*FROM_ANGLE, *TO_ANGLE, *ALIKE, "abs", "sqrt")


def dimension(tree: Tree, kinds: Mapping[str, str], functions: Functions) -> Dimension:
    """The dimension of a tree, given the kinds of the sizes in it. Raises Misread where it makes no sense."""
    match tree:
        case Amount():
            return {"bare": BARE, "length": LENGTH, "angle": ANGLE}[tree.shape]
        case Name():
            return NUMBER if tree.name == "pi" else BY_NAME[kinds[tree.name]]
        case Negative():
            return dimension(tree.of, kinds, functions)
        case Pair():
            left, right = (dimension(side, kinds, functions) for side in (tree.left, tree.right))
            if tree.sign in "+-":
                return alike(left, right, tree.offset)
            return product(left, right, 1 if tree.sign == "*" else -1)
        case Call():
            arguments = [dimension(argument, kinds, functions) for argument in tree.arguments]
            return built_in(tree, arguments) if tree.name in BUILT_IN else formula(tree, arguments, functions)


def alike(left: Dimension, right: Dimension, offset: int) -> Dimension:
    """Two sides of a sum must be of one kind; a bare number counts as a length beside a length."""
    for one, other in ((left, right), (right, left)):
        if one.bare and other.angle == 0:
            return other
        if one.bare:
            raise Misread(offset, "a number without ° meets an angle", "write the angle's °, as in 45°")
    if left != right:
        raise Misread(
            offset,
            f"{article(str(left))} and {article(str(right))} are put together",
            "add, take away or compare like with like",
        )
    return left


def product(left: Dimension, right: Dimension, power: int) -> Dimension:
    """Powers add in a product and take away in a quotient."""
    return Dimension(left.length + power * right.length, left.angle + power * right.angle, left.bare and right.bare)


def need(given: Dimension, wanted: Dimension, name: str, offset: int) -> None:
    """Raise Misread when a formula is given the wrong kind of thing."""
    if given.bare and wanted.angle == 0:
        return
    if replace(given, bare=False) != wanted:
        written = "a number without °" if given.bare else article(str(given))
        instead = "write the angle's °, as in 45°" if given.bare else f"give {name} {article(str(wanted))}"
        raise Misread(offset, f"{name} takes {article(str(wanted))}, not {written}", instead)


def count(call: Call, wanted: int) -> None:
    """Raise Misread when a formula is given too few or too many things."""
    if len(call.arguments) != wanted:
        things = "one value" if wanted == 1 else f"{wanted} values"
        raise Misread(call.offset, f"{call.name} takes {things}, not {len(call.arguments)}", f"write {things} in ( )")


def built_in(call: Call, arguments: list[Dimension]) -> Dimension:
    """The result of sqrt, sin and the like."""
    if call.name in ALIKE:
        if len(arguments) < 2:
            count(call, 2)
        result = arguments[0]
        for other in arguments[1:]:
            result = alike(result, other, call.offset)
        return result
    count(call, 1)
    given = arguments[0]
    if call.name in FROM_ANGLE:
        need(given, ANGLE, call.name, call.offset)
        return NUMBER
    if call.name in TO_ANGLE:
        need(given, NUMBER, call.name, call.offset)
        return ANGLE
    return given if call.name == "abs" else Dimension(given.length / 2, given.angle / 2, given.bare)


def formula(call: Call, arguments: list[Dimension], functions: Functions) -> Dimension:
    """The result of a formula of the trade, from the units its register tells."""
    function = functions[call.name]
    entry = getattr(function, "formula", None)
    if entry is None:
        count(call, len(inspect.signature(function).parameters))
        return NUMBER
    count(call, len(entry.parameters))
    for given, parameter in zip(arguments, entry.parameters, strict=True):
        if parameter.unit in BY_UNIT:
            need(given, BY_UNIT[parameter.unit], f"{parameter.name} of {call.name}", call.offset)
    if entry.result.unit not in BY_UNIT:
        raise Misread(
            call.offset, f"{call.name} gives {entry.result.unit}", "use a formula that gives a length or angle"
        )
    return BY_UNIT[entry.result.unit]
