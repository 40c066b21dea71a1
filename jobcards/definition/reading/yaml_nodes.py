"""A YAML file as plain nodes: every scalar is text, every node knows its place; what is clever in YAML is refused."""

import unicodedata
from collections.abc import Iterator
from dataclasses import dataclass, field

import yaml
from yaml import events

from jobcards.definition.model import Mark
from jobcards.definition.problem import MOST_PROBLEMS, Problem, ProblemsFound, found
from jobcards.definition.reading.yaml_errors import explained

LARGEST, DEEPEST, MOST_NODES = 100_000, 12, 8_000


@dataclass
class Scalar:
    """A single value, as text. `words` is where the text itself starts, after a quote."""

    text: str
    mark: Mark
    words: Mark
    lines: int = 1


@dataclass
class Sequence:
    """A list."""

    mark: Mark
    items: list["Node"] = field(default_factory=list)


@dataclass
class Mapping:
    """Keys and values, in the order written; a key stands once."""

    mark: Mark
    entries: dict[str, "Node"] = field(default_factory=dict)
    spoilt: bool = False
    keys: dict[str, Scalar] = field(default_factory=dict)


Node = Scalar | Sequence | Mapping


def read_nodes(data: bytes, file: str) -> tuple[Mapping, list[Problem]]:
    """The mapping a definition consists of, and what was refused on the way. Raises ProblemsFound if it is none."""
    text = decoded(data, file)
    composer = Composer(text, file)
    try:
        root = composer.document()
    except yaml.MarkedYAMLError as error:
        problem = explained(error, file)
        told = any(other.mark.line == problem.mark.line for other in composer.problems)
        raise ProblemsFound(composer.problems + ([] if told else [problem])) from None
    if not isinstance(root, Mapping):
        raise ProblemsFound(
            [
                *composer.problems,
                Problem(root.mark, "this is no definition", "write keys and values, as in title: Clamp"),
            ]
        )
    return root, composer.problems


def decoded(data: bytes, file: str) -> str:
    """The text of a file. Raises ProblemsFound when it is too large, no text, or has characters that mislead."""
    start = Mark(file, 1, 1)
    if len(data) > LARGEST:
        raise found(start, f"the file is larger than {LARGEST // 1000} kB", "split the job up")
    try:
        text = data.decode("utf-8-sig").replace("\r\n", "\n")
    except UnicodeDecodeError as error:
        line = data.count(b"\n", 0, error.start) + 1
        raise found(Mark(file, line, 1), "this is not UTF-8 text", "save the file as UTF-8") from None
    problems = list(odd_characters(text, file))
    if problems:
        raise ProblemsFound(problems[:MOST_PROBLEMS])
    return text


def odd_characters(text: str, file: str) -> Iterator[Problem]:
    """Characters that cannot be seen or that turn text round."""
    for number, line in enumerate(text.split("\n"), 1):
        if line.isascii() and line.isprintable():
            continue
        for column, character in enumerate(line, 1):
            if character == "\t":
                yield Problem(Mark(file, number, column), "a tab stands here", "write spaces")
            elif character != " " and unicodedata.category(character)[0] in "CMZ":
                name = f"U+{ord(character):04X}"
                yield Problem(
                    Mark(file, number, column), f"the character {name} cannot be seen", "delete it and type it anew"
                )


class Composer:
    """Puts nodes together from the events of a YAML text."""

    def __init__(self, text: str, file: str) -> None:
        self.events: Iterator[events.Event] = yaml.parse(text, Loader=yaml.BaseLoader)
        self.file = file
        self.count = 0
        self.problems: list[Problem] = []

    def mark(self, event: events.Event) -> Mark:
        place = event.start_mark
        assert place is not None
        return Mark(self.file, place.line + 1, place.column + 1)

    def refuse(self, mark: Mark, wrong: str, instead: str) -> None:
        """Note a problem that does not keep the rest from being read."""
        self.problems.append(Problem(mark, wrong, instead))
        if len(self.problems) > MOST_PROBLEMS:
            raise ProblemsFound(self.problems)

    def document(self) -> Node:
        """The one document of the file."""
        next(self.events)
        start = next(self.events)
        if isinstance(start, events.StreamEndEvent):
            raise found(Mark(self.file, 1, 1), "the file is empty", "begin a definition with scripts/new_job.py")
        assert isinstance(start, events.DocumentStartEvent)
        if start.version or start.tags:
            self.refuse(self.mark(start), "a YAML directive stands here", "leave the line with % out")
        root = self.node(next(self.events), 1)
        next(self.events)
        after = next(self.events)
        if isinstance(after, events.DocumentStartEvent):
            self.refuse(self.mark(after), "a second document begins here", "write one job in one file, without ---")
        return root

    def node(self, event: events.Event, depth: int) -> Node:
        """The node an event begins."""
        mark = self.mark(event)
        self.count += 1
        if self.count > MOST_NODES:
            raise ProblemsFound(
                [*self.problems, Problem(mark, f"the file has more than {MOST_NODES} values", "split the job up")]
            )
        if depth > DEEPEST:
            raise ProblemsFound(
                [*self.problems, Problem(mark, "this is nested too deep", "look at the brackets and the indentation")]
            )
        if isinstance(event, events.AliasEvent):
            self.refuse(mark, "a text beginning with * is an alias to YAML", "put the text in quotes, or write it out")
            return Scalar("?", mark, mark)
        assert isinstance(event, events.NodeEvent)
        if event.anchor:
            self.refuse(mark, "a text beginning with & is an anchor to YAML", "put the text in quotes, or leave & out")
        if getattr(event, "tag", None):
            self.refuse(
                mark, "a text beginning with ! is a tag to YAML", "put the text in quotes, or leave the tag out"
            )
        if isinstance(event, events.ScalarEvent):
            return self.scalar(event, mark)
        if isinstance(event, events.SequenceStartEvent):
            return self.sequence(mark, depth)
        return self.mapping(mark, depth)

    def scalar(self, event: events.ScalarEvent, mark: Mark) -> Scalar:
        """A scalar, as text."""
        quoted = event.style in ("'", '"')
        lines = 1 + (event.end_mark.line + 1 - mark.line if event.end_mark else 0)
        self.look_into(event.value, mark)
        return Scalar(event.value, mark, Mark(self.file, mark.line, mark.column + quoted), lines)

    def look_into(self, text: str, mark: Mark) -> None:
        """Refuse what an escape in a quoted text brings in."""
        if not text.isprintable() and (bad := next(odd_characters(text, self.file), None)):
            self.refuse(mark, bad.wrong, bad.instead)

    def sequence(self, mark: Mark, depth: int) -> Sequence:
        """A list, to its end."""
        found = Sequence(mark)
        while not isinstance(event := next(self.events), events.SequenceEndEvent):
            found.items.append(self.node(event, depth + 1))
        return found

    def mapping(self, mark: Mark, depth: int) -> Mapping:
        """Keys and values, to their end."""
        found = Mapping(mark)
        while not isinstance(event := next(self.events), events.MappingEndEvent):
            key = self.node(event, depth + 1)
            value = self.node(next(self.events), depth + 1)
            if not isinstance(key, Scalar) or key.text == "<<":
                found.spoilt = True
            if not isinstance(key, Scalar):
                self.refuse(key.mark, "a key must be a word", "put the text in quotes if it begins with { or [")
            elif key.text == "<<":
                self.refuse(key.mark, "<< copies from elsewhere, which is not read", "write the keys out")
            elif key.text in found.entries:
                first = found.keys[key.text].mark.line
                self.refuse(
                    key.mark,
                    f"“{key.text[:40]}” stands here a second time (first in line {first})",
                    "leave one of the two out",
                )
            else:
                found.entries[key.text] = value
                found.keys[key.text] = key
        return found
