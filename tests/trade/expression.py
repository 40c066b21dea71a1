"""The text of a formula, evaluated as it stands: arithmetic and the trade's functions only, angles in degrees."""

import ast
import math
import operator
from collections.abc import Callable, Mapping

OPERATORS: dict[type[ast.AST], Callable[..., float]] = {
    ast.Add: operator.add,
    ast.Sub: operator.sub,
    ast.Mult: operator.mul,
    ast.Div: operator.truediv,
    ast.Pow: operator.pow,
    ast.USub: operator.neg,
    ast.UAdd: operator.pos,
}
FUNCTIONS: dict[str, Callable[..., float]] = {
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
    "floor": math.floor,
    "ceil": math.ceil,
}


def evaluate(text: str, values: Mapping[str, float]) -> float:
    """The value of `name = expression` for the arguments given."""
    name, _, expression = text.partition("=")
    assert name.strip().isidentifier(), f"{text!r} does not begin with the name of its result"
    return _value(ast.parse(expression.strip(), mode="eval").body, values)


def _value(node: ast.AST, values: Mapping[str, float]) -> float:
    match node:
        case ast.Constant(value=int() | float() as number):
            return number
        case ast.Name(id="pi"):
            return math.pi
        case ast.Name(id=name):
            return values[name]
        case ast.BinOp(left=left, op=op, right=right):
            return OPERATORS[type(op)](_value(left, values), _value(right, values))
        case ast.UnaryOp(op=op, operand=operand):
            return OPERATORS[type(op)](_value(operand, values))
        case ast.Call(func=ast.Name(id=name), args=arguments, keywords=[]):
            return FUNCTIONS[name](*(_value(argument, values) for argument in arguments))
    raise AssertionError(f"a formula's text may not hold {ast.dump(node)}")
