"""The tree of an expression: what it is made of, after reading."""

from collections.abc import Iterator
from dataclasses import dataclass
from typing import Literal as Word

Shape = Word["bare", "length", "angle"]


@dataclass(frozen=True)
class Amount:
    """A number as written: in the job's unit when a length, degrees when an angle; `bare` when no unit was written."""

    value: float
    shape: Shape
    offset: int = 0


@dataclass(frozen=True)
class Name:
    """The name of a size."""

    name: str
    offset: int = 0


@dataclass(frozen=True)
class Negative:
    """A minus before something."""

    of: "Tree"
    offset: int = 0


@dataclass(frozen=True)
class Pair:
    """Two things with + - * / between them."""

    sign: str
    left: "Tree"
    right: "Tree"
    offset: int = 0


@dataclass(frozen=True)
class Call:
    """A formula called by its name."""

    name: str
    arguments: tuple["Tree", ...]
    offset: int = 0


Tree = Amount | Name | Negative | Pair | Call


def walk(tree: Tree) -> Iterator[Tree]:
    """Every piece of a tree, from left to right."""
    yield tree
    match tree:
        case Negative():
            yield from walk(tree.of)
        case Pair():
            yield from walk(tree.left)
            yield from walk(tree.right)
        case Call():
            for argument in tree.arguments:
                yield from walk(argument)
