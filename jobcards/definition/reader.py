"""Nodes of YAML read into models. It walks the fields of a model and knows nothing of what they mean."""

import re
from collections.abc import Callable
from dataclasses import MISSING, Field, dataclass, field, fields
from datetime import date
from typing import Any, TypeVar

from jobcards.definition import kinds
from jobcards.definition.expression import Expression, parse
from jobcards.definition.model import Mark, Model
from jobcards.definition.problem import Problem, ProblemsFound, advise, found, listed, nearest
from jobcards.definition.size import FIT_CLASS, StatedSize, read_deviations, read_stated
from jobcards.definition.yaml_nodes import Mapping, Node, Scalar, Sequence
from jobcards.quantity import MOST

M = TypeVar("M", bound=Model)
NAME = re.compile(r"[^\W_](?:[^\W_]|[ \-/.,'’×°])*")
SIZE_NAME = re.compile(r"[^\W\d_][^\W_]*(?: [^\W_]+)*")
LONGEST_NAME = 60
RESERVED = ("in", "mm", "deg", "pi", "sqrt", "sin", "cos", "tan", "asin", "acos", "atan", "min", "max", "abs")


@dataclass(frozen=True)
class Asked:
    """An expression that was read, and the kind of value that must come of it."""

    expression: Expression
    kind: kinds.Kind


@dataclass
class Reader:
    """Reads one file; problems are noted and reading goes on."""

    unit: str
    problems: list[Problem] = field(default_factory=list)
    asked: list[Asked] = field(default_factory=list)
    texts: list[tuple[str, Mark]] = field(default_factory=list)

    def model(self, node: Node, model: type[M], given: str = "") -> M | None:
        """A mapping read into a model; None when a key is missing or cannot be read. `given` was read already."""
        if not isinstance(node, Mapping):
            self.note(found(node.mark, "keys and values are wanted here", f"write {example_of(model)}"))
            return None
        known = {key_of(entry): entry for entry in fields(model) if "kind" in entry.metadata}
        for key, scalar in node.keys.items():
            if key not in known:
                self.note(found(scalar.mark, f"there is no key “{key[:60]}” here", advise(key, known)))
        values: dict[str, Any] = {}
        marks: dict[str, Mark] = {}
        complete = True
        for key, entry in known.items():
            if key == given:
                values[entry.name] = scalar_text(node.entries[key])
            elif key in node.entries:
                values[entry.name] = self.value(node.entries[key], entry.metadata["kind"])
                complete &= values[entry.name] is not None
            elif is_required(entry):
                complete = False
                self.missing(node, key, entry)
                continue
            if key in node.entries:
                marks[entry.name] = node.entries[key].mark
        return model(**values, mark=node.mark, marks=marks) if complete else None

    def missing(self, node: Mapping, key: str, entry: Field[Any]) -> None:
        """Note a missing key, unless a misspelt one stands for it."""
        strange = [other for other in node.keys if nearest(other, [key])]
        if not strange or any(other == key for other in strange):
            self.note(
                found(
                    node.mark,
                    f"the key “{key}” is missing ({entry.metadata['doc']})",
                    f"write {key}: {entry.metadata['example']}",
                )
            )

    def value(self, node: Node, kind: kinds.Kind) -> object:
        """A value of a kind, or None when it cannot be read."""
        try:
            match kind:
                case kinds.Nested():
                    return self.model(node, kind.model)
                case kinds.OneOf():
                    return self.one_of(node, kind)
                case kinds.Many():
                    return self.many(node, kind)
                case kinds.Named():
                    return self.named(node, kind)
                case kinds.Toleranced():
                    return self.toleranced(node)
            if not isinstance(node, Scalar):
                raise found(node.mark, f"{WANTED[type(kind)]} is wanted here, not {what(node)}", in_quotes(node))
            if not node.text.strip():
                raise found(node.mark, "nothing is written here", f"write {WANTED[type(kind)]}, or leave the key out")
            return self.scalar(node, kind)
        except ProblemsFound as error:
            self.note(error)
            return None

    def scalar(self, node: Scalar, kind: kinds.Kind) -> object:
        """A single value. Raises ProblemsFound."""
        if isinstance(kind, kinds.Text):
            return self.text(node, kind)
        if node.lines > 1:
            raise found(node.mark, f"{WANTED[type(kind)]} stands on one line", "join the lines")
        match kind:
            case kinds.Through() if node.text == "through":
                return "through"
            case kinds.Length() | kinds.Angle() | kinds.Value() | kinds.Through():
                expression = parse(node.text, node.words, self.unit)
                self.asked.append(Asked(expression, kind))
                return expression
            case kinds.Tolerance():
                return read_deviations(node.text, node.words, self.unit)
            case kinds.Choice():
                return choice(node, kind.words)
        return SCALARS[type(kind)](node, kind)

    def text(self, node: Scalar, kind: kinds.Text) -> str:
        """A text, its lines joined."""
        text = " ".join(node.text.split())
        if len(text) > kind.most:
            raise found(node.mark, f"the text has {len(text)} characters", f"write at most {kind.most}")
        self.texts.append((text, node.words))
        return text

    def one_of(self, node: Node, kind: kinds.OneOf) -> Model | None:
        """A mapping whose key tells the model."""
        if not isinstance(node, Mapping) or kind.key not in node.entries:
            words = listed([word for word, _ in kind.models])
            raise found(node.mark, f"the key “{kind.key}” is missing", f"write {kind.key}: and {words}")
        models = dict(kind.models)
        node_of_key = node.entries[kind.key]
        if not isinstance(node_of_key, Scalar):
            raise found(
                node_of_key.mark, f"one word is wanted here, not {what(node_of_key)}", f"write {listed(models)}"
            )
        word = choice(node_of_key, tuple(models))
        return self.model(node, models[word], given=kind.key)

    def many(self, node: Node, kind: kinds.Many) -> list[object] | None:
        """A list."""
        if kind.single and not isinstance(node, Sequence):
            only = self.value(node, kind.of)
            return None if only is None else [only]
        if not isinstance(node, Sequence):
            raise found(
                node.mark,
                f"a list is wanted here, not {what(node)}",
                "write [one, another], or a line with a dash for each",
            )
        if len(node.items) > kind.most:
            raise found(node.mark, f"the list has {len(node.items)} entries", f"write at most {kind.most}")
        if not node.items:
            raise found(node.mark, "the list is empty", "write an entry, or leave the key out")
        read = [self.value(item, kind.of) for item in node.items]
        return None if any(item is None for item in read) else read

    def named(self, node: Node, kind: kinds.Named) -> dict[str, object] | None:
        """Values by name."""
        if not isinstance(node, Mapping):
            raise found(
                node.mark, f"names and values are wanted here, not {what(node)}", "write a line “name: value” for each"
            )
        if len(node.entries) > kind.most:
            raise found(node.mark, f"there are {len(node.entries)} entries", f"write at most {kind.most}")
        if not node.entries:
            raise found(node.mark, "nothing is named here", "write a line “name: value”, or leave the key out")
        read: dict[str, object] = {}
        complete = True
        for key, item in node.entries.items():
            try:
                (size_name if isinstance(kind.of, kinds.Toleranced) else name)(node.keys[key], kind)
            except ProblemsFound as error:
                self.note(error)
                complete = False
            value = self.value(item, kind.of)
            complete &= value is not None
            if value is not None:
                read[key] = value
        return read if complete or isinstance(kind.of, kinds.Toleranced) else None

    def toleranced(self, node: Node) -> StatedSize | None:
        """A size, in one text or with keys."""
        if isinstance(node, Mapping):
            return self.model(node, StatedSize)
        if not isinstance(node, Scalar):
            raise found(node.mark, f"a size is wanted here, not {what(node)}", "write it as 4-1/2 ±0.005")
        if not node.text.strip():
            raise found(node.mark, "the size is missing", "write it as 4-1/2 ±0.005")
        return read_stated(node.text, node.words, self.unit)

    def note(self, error: ProblemsFound) -> None:
        self.problems.extend(error.problems)


def key_of(entry: Field[Any]) -> str:
    """The key of a field as written in the file."""
    return entry.metadata["yaml"] or entry.name.replace("_", " ")


def is_required(entry: Field[Any]) -> bool:
    """Whether a key must be written."""
    return entry.default is MISSING and entry.default_factory is MISSING


def example_of(model: type[Model]) -> str:
    """The keys of a model that must be written, as an example."""
    needed = [entry for entry in fields(model) if "kind" in entry.metadata and is_required(entry)]
    return "{" + ", ".join(f"{key_of(entry)}: {entry.metadata['example']}" for entry in needed[:3]) + "}"


def scalar_text(node: Node) -> str:
    assert isinstance(node, Scalar)
    return node.text


def what(node: Node) -> str:
    return {Scalar: "a single value", Sequence: "a list", Mapping: "keys and values"}[type(node)]


def in_quotes(node: Node) -> str:
    if isinstance(node, Mapping):
        return "write one value; a text that begins with { must stand in quotes"
    return "write one value; a text that begins with [ must stand in quotes"


def choice(node: Scalar, words: tuple[str, ...]) -> str:
    """One of a few words."""
    if node.text not in words:
        raise found(node.words, f"“{node.text[:60]}” cannot stand here", advise(node.text, words))
    return node.text


def name(node: Scalar, kind: kinds.Kind) -> str:
    """A short name."""
    text = node.text
    if len(text) > LONGEST_NAME:
        raise found(node.words, f"the name has {len(text)} characters", f"write at most {LONGEST_NAME}")
    if not NAME.fullmatch(text) or text != " ".join(text.split()) or ".." in text or "//" in text or text[-1] in "/.,-":
        raise found(
            node.words, f"“{text}” is no name", "use letters, digits, spaces and - / . , ' as in “3/4 end mill”"
        )
    return text


def size_name(node: Scalar, kind: kinds.Kind) -> str:
    """The name of a size: it must be readable inside an expression."""
    text = node.text
    if len(text) > LONGEST_NAME or not SIZE_NAME.fullmatch(text):
        raise found(
            node.words,
            f"“{text[:60]}” is no name for a size",
            "use letters, digits and single spaces, as in “pin length 2”",
        )
    if text in RESERVED:
        raise found(node.words, f"“{text}” has a meaning of its own in expressions", "give the size a longer name")
    return text


def fit(node: Scalar, kind: kinds.Kind) -> str:
    """A class of fit."""
    if not re.fullmatch(FIT_CLASS, node.text):
        raise found(node.words, f"“{node.text[:20]}” is no class of fit", "write it as RC5 hole, RC5 shaft, H7 or g6")
    return node.text


def whole(node: Scalar, kind: kinds.Kind) -> int:
    """A whole number between limits."""
    assert isinstance(kind, kinds.Whole)
    if not re.fullmatch(r"[0-9]{1,9}", node.text) or not kind.least <= int(node.text) <= kind.most:
        raise found(
            node.words,
            f"“{node.text[:20]}” cannot stand here",
            f"write a whole number from {kind.least} to {kind.most}",
        )
    return int(node.text)


def number(node: Scalar, kind: kinds.Kind) -> float:
    """A plain number between limits."""
    assert isinstance(kind, kinds.Number)
    if (
        not re.fullmatch(r"[0-9]{1,9}(?:\.[0-9]{1,9})?|\.[0-9]{1,9}", node.text)
        or not kind.least <= float(node.text) <= kind.most
    ):
        most = min(kind.most, MOST)
        raise found(
            node.words, f"“{node.text[:20]}” cannot stand here", f"write a number from {kind.least:g} to {most:.0f}"
        )
    return float(node.text)


def flag(node: Scalar, kind: kinds.Kind) -> bool:
    """true or false."""
    return choice(node, ("true", "false")) == "true"


def day(node: Scalar, kind: kinds.Kind) -> str:
    """A date, year first."""
    try:
        if not re.fullmatch(r"20[0-9]{2}-[0-9]{2}-[0-9]{2}", node.text):
            raise ValueError
        date.fromisoformat(node.text)
    except ValueError:
        raise found(node.words, f"“{node.text[:20]}” is no date", "write it year first, as in 2026-11-24") from None
    return node.text


SCALARS: dict[type[kinds.Kind], Callable[[Scalar, kinds.Kind], object]] = {
    kinds.Name: name,
    kinds.Fit: fit,
    kinds.Whole: whole,
    kinds.Number: number,
    kinds.Flag: flag,
    kinds.Date: day,
}
WANTED: dict[type[kinds.Kind], str] = {
    kinds.Text: "a text",
    kinds.Name: "a name",
    kinds.Length: "a length",
    kinds.Angle: "an angle",
    kinds.Value: "a number or an expression",
    kinds.Tolerance: "a tolerance",
    kinds.Fit: "a class of fit",
    kinds.Number: "a number",
    kinds.Whole: "a whole number",
    kinds.Flag: "true or false",
    kinds.Date: "a date",
    kinds.Choice: "one word",
    kinds.Through: "a depth or the word through",
}
