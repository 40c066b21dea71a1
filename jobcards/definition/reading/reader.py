"""Nodes of YAML read into models. It walks the fields of a model and knows nothing of what they mean."""

import re
from dataclasses import MISSING, Field, dataclass, field, fields
from typing import Any, TypeVar

from jobcards.definition import kinds
from jobcards.definition.expression import Expression, parse
from jobcards.definition.model import Mark, Model
from jobcards.definition.problem import MOST_PROBLEMS, Problem, ProblemsFound, advise, found, listed, nearest
from jobcards.definition.reading.scalars import SCALARS, WANTED, choice, name, size_name
from jobcards.definition.reading.yaml_nodes import Mapping, Node, Scalar, Sequence
from jobcards.definition.size import StatedSize, read_deviations, read_stated

M = TypeVar("M", bound=Model)
ONE_LINE_EACH = "write a line “name: value” for each"


class TooManyProblems(Exception):
    """So much is wrong that reading has stopped."""


@dataclass(frozen=True)
class Asked:
    """An expression that was read, and the kind of value that must come of it."""

    expression: Expression
    kind: kinds.Kind


@dataclass(frozen=True)
class Fields:
    """The fields of a model as far as they could be read, and where their values stand."""

    values: dict[str, Any]
    marks: dict[str, Mark]
    complete: bool


@dataclass
class Reader:
    """Reads one file; problems are noted and reading goes on.

    `asked` and `texts` gather every expression and text, wherever it stands, for the checks that follow.
    """

    unit: str
    problems: list[Problem] = field(default_factory=list)
    asked: list[Asked] = field(default_factory=list)
    texts: list[tuple[str, Mark]] = field(default_factory=list)

    def note(self, error: ProblemsFound) -> None:
        """Keep what is wrong. Raises TooManyProblems when there is no use in reading on."""
        self.problems.extend(error.problems)
        if len(self.problems) > MOST_PROBLEMS:
            raise TooManyProblems

    def model(self, node: Node, model: type[M], given: str = "") -> M | None:
        """A mapping read into a model; None when a key is missing or cannot be read. `given` was read already."""
        if not isinstance(node, Mapping):
            self.note(found(node.mark, f"keys and values are wanted here, not {what(node)}", f"write {example(model)}"))
            return None
        read = self.fields(node, model, given)
        return model(**read.values, mark=node.mark, marks=read.marks) if read.complete else None

    def fields(self, node: Mapping, model: type[Model], given: str = "") -> Fields:
        """Every field of a model that the mapping has; what is strange or missing is noted."""
        known = {key_of(entry): entry for entry in fields(model) if "kind" in entry.metadata}
        strange = [key for key in node.keys if key not in known]
        for key in strange:
            wrong = f"there is no key “{key[:60]}” here"
            self.note(
                found(node.keys[key].mark, wrong, advise(key, [other for other in known if other not in node.keys]))
            )
        read = Fields({}, {}, True)
        complete = True
        for key, entry in known.items():
            if key in node.entries:
                value = (
                    choice_text(node.entries[key])
                    if key == given
                    else self.value(node.entries[key], entry.metadata["kind"])
                )
                read.values[entry.name] = value
                read.marks[entry.name] = node.entries[key].mark
                complete &= value is not None and not (
                    isinstance(value, dict) and len(value) < entries_of(node.entries[key])
                )
            elif is_required(entry):
                complete = False
                if not node.spoilt and not any(nearest(other, [key]) for other in strange):
                    wrong = f"the key “{key}” is missing ({entry.metadata['doc']})"
                    self.note(found(node.mark, wrong, f"write {key}: {entry.metadata['example']}"))
        return Fields(read.values, read.marks, complete)

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
                case kinds.Toleranced() if isinstance(node, Mapping):
                    return self.model(node, StatedSize)
            if not isinstance(node, Scalar):
                raise found(node.mark, f"{WANTED[type(kind)]} is wanted here, not {what(node)}", in_quotes(node))
            if not node.text.strip():
                instead = f"write {WANTED[type(kind)]}, or leave the key out"
                raise found(node.mark, "nothing is written here", instead)
            return self.scalar(node, kind)
        except ProblemsFound as error:
            self.note(error)
            return None

    def scalar(self, node: Scalar, kind: kinds.Kind) -> object:
        """A single value. Raises ProblemsFound."""
        if isinstance(kind, kinds.Text):
            return self.text(node, kind)
        if node.lines > 1 or "\n" in node.text:
            raise found(node.mark, f"{WANTED[type(kind)]} stands on one line", "join the lines")
        match kind:
            case kinds.Through() if node.text == "through":
                return "through"
            case kinds.Length() | kinds.Angle() | kinds.Value() | kinds.Through():
                expression = parse(node.text, node.words, self.unit)
                self.asked.append(Asked(expression, kind))
                return expression
            case kinds.Toleranced():
                return read_stated(node.text, node.words, self.unit)
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
        models = dict(kind.models)
        if not isinstance(node, Mapping):
            instead = f"write {{{kind.key}: {next(iter(models))}, …}}"
            raise found(node.mark, f"keys and values are wanted here, not {what(node)}", instead)
        if kind.key not in node.entries:
            raise found(node.mark, f"the key “{kind.key}” is missing", f"write {kind.key}: and {listed(models)}")
        told = node.entries[kind.key]
        if not isinstance(told, Scalar):
            raise found(told.mark, f"one word is wanted here, not {what(told)}", f"write {listed(models)}")
        return self.model(node, models[choice(told, tuple(models))], given=kind.key)

    def many(self, node: Node, kind: kinds.Many) -> list[object] | None:
        """A list; None when one of its entries cannot be read."""
        if kind.single and not isinstance(node, Sequence):
            only = self.value(node, kind.of)
            return None if only is None else [only]
        if not isinstance(node, Sequence):
            instead = "write [one, another], or a line with a dash for each"
            raise found(node.mark, f"a list is wanted here, not {what(node)}", instead)
        if len(node.items) > kind.most:
            raise found(node.mark, f"the list has {len(node.items)} entries", f"write at most {kind.most}")
        if not node.items:
            raise found(node.mark, "the list is empty", "write an entry, or leave the key out")
        read = [self.value(item, kind.of) for item in node.items]
        return None if any(item is None for item in read) else read

    def named(self, node: Node, kind: kinds.Named) -> dict[str, object]:
        """Values by name, as many as can be read."""
        if not isinstance(node, Mapping):
            raise found(node.mark, f"names and values are wanted here, not {what(node)}", ONE_LINE_EACH)
        if len(node.entries) > kind.most:
            raise found(node.mark, f"there are {len(node.entries)} entries", f"write at most {kind.most}")
        if not node.entries:
            raise found(node.mark, "nothing is named here", ONE_LINE_EACH)
        read_name = size_name if isinstance(kind.of, kinds.Toleranced) else name
        read: dict[str, object] = {}
        alike: dict[str, str] = {}
        for key, item in node.entries.items():
            scalar = node.keys[key]
            try:
                read_name(scalar, kind)
                other = alike.setdefault(re.sub(r"[\W_]+", "-", key.casefold()), key)
                if other != key:
                    raise found(
                        scalar.mark, f"“{key}” is too like “{other}” above", "give it a name that cannot be mistaken"
                    )
            except ProblemsFound as error:
                self.note(error)
            value = self.value(item, kind.of)
            if value is not None:
                read[key] = value
        return read


def key_of(entry: Field[Any]) -> str:
    """The key of a field as written in the file."""
    return str(entry.metadata["yaml"] or entry.name.replace("_", " "))


def is_required(entry: Field[Any]) -> bool:
    """Whether a key must be written."""
    return entry.default is MISSING and entry.default_factory is MISSING


def example(model: type[Model]) -> str:
    """The first keys of a model that must be written, as an example."""
    needed = [entry for entry in fields(model) if "kind" in entry.metadata and is_required(entry)]
    return "{" + ", ".join(f"{key_of(entry)}: {entry.metadata['example']}" for entry in needed[:3]) + "}"


def entries_of(node: Node) -> int:
    return len(node.entries) if isinstance(node, Mapping) else 0


def choice_text(node: Node) -> str:
    """A word that was looked at before."""
    assert isinstance(node, Scalar)
    return node.text


def what(node: Node) -> str:
    return {Scalar: "a single value", Sequence: "a list", Mapping: "keys and values"}[type(node)]


def in_quotes(node: Node) -> str:
    opening = "{" if isinstance(node, Mapping) else "["
    return f"write one value, and put a text that begins with {opening} in quotes"
