"""Mistakes mended as their messages say, or what they stand in left out, so that what stands behind them is seen too.

Nothing of it is ever made into a card: it only lets all mistakes be told at once.
"""

import copy
import re
from collections.abc import Iterable, Iterator
from dataclasses import dataclass, field
from pathlib import Path

from jobcards.definition.job import Job
from jobcards.definition.loading import contents, job_of, opened
from jobcards.definition.problem import Problem, ProblemsFound
from jobcards.definition.reading.reader import Reader
from jobcards.definition.reading.yaml_nodes import Mapping, Node, Scalar, Sequence

ROUNDS = 6  # so often may a mistake stand behind another
SAYS = re.compile(r"write “([^”]+)”")
UNUSED = re.compile(r"the size “([^”]+)” is never used")
UNCUT = re.compile(r"the feature “([^”]+)” of .* is never cut to size")
EMPTIED = re.compile(r"the list is empty|nothing is named here|nothing is done in the set-up|nothing is cut here")
LOST = re.compile(r"“([^”]+)” is not a (?:feature|part|size|set-up)|no requirement is called “([^”]+)”")
NEEDED = {  # what may stand for a text or word of the head that cannot be read
    "title": "A job",
    "scenario": "Invented.",
    "summary": "A part.",
    "level": "beginner",
    "units": "inch",
    "material": "low-carbon steel, cold drawn",
}
ISSUE = {"letter": "A", "date": "2026-01-01", "change": "First issue."}
NO_MEASURE = ("shape", "with", "ends with", "machine", "in", "on", "by", "cut", "material", "thread", "set-up")
DOING = ("operations", "square up", "saw", "heat", "grind", "assemble", "inspect", "lay out")
KEY, GUESSED = re.compile(r"there is no key|the key “[^”]+” is missing"), "cannot stand here"
NEAR = 4  # lines
TEXTS = ("why", "check", "caution", "after", "note", "stopping point")  # nothing rests on these
SHAPING = ("block", "turned", "blank", "features", "route")  # without these a part is nothing


def all_told(path: Path) -> tuple[list[Problem], "Rest | None"]:
    """Every problem of a job's file by itself, and what is left that can still be planned, if anything is."""
    try:
        root, reader = opened(path, contents(path))
    except ProblemsFound as error:
        return error.problems, None
    told: list[Problem] = []
    rest = Rest(copy.deepcopy(root))
    for _ in range(ROUNDS):
        try:
            job_of(copy.deepcopy(rest.root), reader, path, "")
        except ProblemsFound as error:
            new = [problem for problem in error.problems if is_new(problem, told, root)]
            told += new
            if all(UNUSED.fullmatch(problem.wrong) for problem in error.problems):
                return told, rest.to_plan()
            rest.mend(error.problems)
            reader = Reader(reader.unit)
            if not new or not rest.parts():
                break
        else:
            return told, rest.to_plan()
    return told, None


def is_new(problem: Problem, told: list[Problem], root: Mapping) -> bool:
    """Whether a problem is of its own: not told yet, and not there only because something was left out of the root."""
    if any(other.mark == problem.mark for other in told):
        return False
    if not told:
        return True
    if KEY.search(problem.wrong) and any(GUESSED in other.wrong and near(other, problem) for other in told):
        return False
    unused, uncut = UNUSED.fullmatch(problem.wrong), UNCUT.search(problem.wrong)
    if unused:
        return not any(names(scalar.text, unused[1]) for scalar in measures(root))
    if uncut:
        return uncut[1] not in {text_of(at(mapping, "cut")) for mapping in mappings(root)}
    if EMPTIED.search(problem.wrong):
        return False
    lost = LOST.search(problem.wrong)
    return lost is None or all((lost[1] or lost[2]) not in mapping.entries for mapping in mappings(root))


def near(one: Problem, other: Problem) -> bool:
    """Whether two problems are of one shape or set-up, as far as their lines tell."""
    return abs(one.mark.line - other.mark.line) < NEAR


def names(text: str, size: str) -> bool:
    """Whether a text names a size."""
    return re.search(rf"(?<!\w){re.escape(size)}(?!\w)", text) is not None


def scalars(node: Node | None) -> Iterator[Scalar]:
    """Every single value below a node."""
    if isinstance(node, Scalar):
        yield node
    for below in children(node):
        yield from scalars(below[1])


def measures(node: Node | None) -> Iterator[Scalar]:
    """Every value below a node in which a size may be named."""
    if isinstance(node, Scalar):
        yield node
    for key, below in children(node):
        if key not in NO_MEASURE:
            yield from measures(below)


def mappings(node: Node | None) -> Iterator[Mapping]:
    """Every mapping at and below a node."""
    if isinstance(node, Mapping):
        yield node
    for _, below in children(node):
        yield from mappings(below)


def children(node: Node | None) -> list[tuple[str, Node]]:
    """What stands below a node, by key or by number."""
    if isinstance(node, Mapping):
        return list(node.entries.items())
    return [(str(number), item) for number, item in enumerate(node.items)] if isinstance(node, Sequence) else []


def at(node: Node | None, *keys: str) -> Node | None:
    """A node below another."""
    for key in keys:
        node = dict(children(node)).get(key)
    return node


def text_of(node: Node | None) -> str:
    return node.text if isinstance(node, Scalar) else ""


@dataclass
class Rest:
    """What is left of a definition; `unplanned` are the parts that planning could no longer judge."""

    root: Mapping
    unplanned: set[str] = field(default_factory=set)

    def parts(self) -> list[str]:
        """The names of the parts there still are."""
        return [name for name, _ in children(at(self.root, "parts"))]

    def mend(self, problems: Iterable[Problem]) -> None:
        """Write what each message says; where it says nothing to write, leave out what the mistake stands in."""
        left_out = []
        for problem in problems:
            if not self.follows(problem):
                left_out.append(tuple(self.place_of(problem)))
        for place in sorted(set(left_out), reverse=True):
            self.leave_out(*place)
        self.tidy()

    def tidy(self) -> None:
        """Nothing may stand empty for what was left out of it."""
        for name in self.parts():
            part = at(self.root, "parts", name)
            for number, set_up in reversed(children(at(part, "route"))):
                for key in ("operations", "inspect", "lay out"):
                    if isinstance(at(set_up, key), Sequence) and not children(at(set_up, key)):
                        remove(set_up, key)
                        self.unplanned.add(name)
                if not any(at(set_up, key) is not None for key in DOING):
                    remove(at(part, "route"), number)
            if any(at(part, key) is not None and not children(at(part, key)) for key in ("features", "route")):
                remove(at(self.root, "parts"), name)
        for key in ("requirements", "variants", "learn"):
            if not children(at(self.root, key)):
                remove(self.root, key)
        for key, text in NEEDED.items():
            if key not in self.root.entries and key != "material":
                self.put(self.root, key, Scalar(text, self.root.mark, self.root.mark))
        if not children(at(self.root, "revisions")):
            issue = Mapping(self.root.mark)
            for key, text in ISSUE.items():
                self.put(issue, key, Scalar(text, self.root.mark, self.root.mark))
            self.put(self.root, "revisions", Sequence(self.root.mark, [issue]))

    def put(self, mapping: Mapping, key: str, node: Node) -> None:
        """Add a key that is wanted."""
        mapping.entries[key] = node
        mapping.keys[key] = Scalar(key, mapping.mark, mapping.mark)

    def follow(self, problems: Iterable[Problem]) -> int:
        """Do what messages say, as far as they say “write” and one word; how many do."""
        return sum([self.follows(problem) for problem in problems])

    def follows(self, problem: Problem) -> bool:
        """The same for one message."""
        said, wrong = SAYS.fullmatch(problem.instead), re.search("“([^”]+)”", problem.wrong)
        return bool(said and wrong and self.write(problem, wrong[1], said[1]))

    def write(self, problem: Problem, wrong: str, instead: str) -> bool:
        """Put a word in the place of another; whether that was possible."""
        for mapping in mappings(self.root):
            key = mapping.keys.get(wrong)
            if key is not None and key.mark == problem.mark and wrong in mapping.entries:
                if instead in mapping.entries:
                    return False
                mapping.entries = {instead if name == wrong else name: it for name, it in mapping.entries.items()}
                mapping.keys = {instead if name == wrong else name: it for name, it in mapping.keys.items()}
                return True
        for scalar in scalars(self.root):
            before = problem.mark.column - scalar.words.column
            here = scalar.words.line == problem.mark.line and before >= 0
            if here and scalar.text[before:].startswith(wrong):
                scalar.text = scalar.text[:before] + instead + scalar.text[before + len(wrong) :]
                return True
        return False

    def place_of(self, problem: Problem) -> list[str]:
        """The keys that lead to what a problem stands in: the last that begins before it."""
        place: list[str] = []
        node: Node | None = self.root
        here = (problem.mark.line, problem.mark.column)
        while node is not None:
            begun = [
                (key, below)
                for key, below in children(node)
                if (start := (node.keys[key] if isinstance(node, Mapping) else below).mark)
                and (start.line, start.column) <= here
            ]
            if not begun or (problem.mark == node.mark and place):
                break
            key, node = begun[-1]
            place.append(key)
        return place

    def leave_out(self, head: str = "", name: str = "", within: str = "", what: str = "", *deeper: str) -> None:
        """Leave out what a mistake stands in, and all that rests on it."""
        if head == "parts" and name:
            self.leave_out_of_part(name, within, what, deeper)
        elif head == "sizes" and name:
            self.without_size(name)
        elif head in ("requirements", "variants", "revisions", "learn") and name:
            remove(at(self.root, head), name)
        elif head:
            remove(self.root, head)

    def leave_out_of_part(self, name: str, within: str, what: str, deeper: tuple[str, ...]) -> None:
        """The same in a part."""
        part = at(self.root, "parts", name)
        place = [key for key in (within, what, *deeper) if key]
        if place and place[-1] in TEXTS:
            remove(at(part, *place[:-1]), place[-1])
        elif within == "features" and what:
            self.without_feature(name, what)
        elif within == "route" and deeper[:1] == ("operations",) and len(deeper) > 1:
            cut = text_of(at(part, "route", what, "operations", deeper[1], "cut"))
            if cut and at(part, "features", cut) is not None:
                self.without_feature(name, cut)
            else:
                remove(at(part, "route", what, "operations"), deeper[1])
                self.unplanned.add(name)
        elif within == "route" and what:
            self.without_set_up(name, what)
        elif within == "material" and isinstance(part, Mapping):
            part.entries[within] = Scalar(NEEDED[within], part.mark, part.mark)
        elif within and within not in SHAPING:
            remove(part, within)
        else:
            remove(at(self.root, "parts"), name)

    def without_feature(self, name: str, feature: str) -> None:
        """Leave a shape out, and every cut on it. What stands at the same place may rest on it: not planned."""
        part = at(self.root, "parts", name)
        place = written(at(part, "features", feature, "at"))
        remove(at(part, "features"), feature)
        if at(part, "turned") is not None or not children(at(part, "features")):
            self.unplanned.add(name)
        alike = (other for _, other in children(at(part, "features")) if place and written(at(other, "at")) == place)
        if next(alike, None) is not None:
            self.unplanned.add(name)
        remove(part, "alternatives")
        for number, set_up in reversed(children(at(part, "route"))):
            held = text_of(at(set_up, "hold", "by")) == feature
            done = children(at(set_up, "operations"))
            cuts = [each for each, operation in done if text_of(at(operation, "cut")) == feature]
            for each in reversed(cuts):
                remove(at(set_up, "operations"), each)
            if held or (cuts and not children(at(set_up, "operations"))):
                self.without_set_up(name, number)
            for key in ("lay out", "inspect"):
                listed = at(set_up, key)
                if isinstance(listed, Sequence) and feature in map(text_of, listed.items):
                    remove(set_up, key)

    def without_set_up(self, name: str, number: str) -> None:
        """Leave a set-up out, what is cut in it, and the next one if it keeps its zero."""
        route = at(self.root, "parts", name, "route")
        set_up = at(route, number)
        if set_up is None:
            return
        keeps = text_of(at(route, str(int(number) + 1), "keep zero")) == "true"
        cut = [text_of(at(operation, "cut")) for _, operation in children(at(set_up, "operations"))]
        if at(set_up, "square up") is not None or at(set_up, "operations") is None or keeps:
            self.unplanned.add(name)
        remove(route, number)
        for feature in cut:
            if at(self.root, "parts", name, "features", feature) is not None:
                self.without_feature(name, feature)

    def without_size(self, size: str) -> None:
        """Leave a size out, and all that is made with it."""
        remove(at(self.root, "sizes"), size)
        users: list[tuple[str, ...]] = [
            (head, name) for head in ("sizes", "requirements") for name in self.users(size, head)
        ]
        for part in self.parts():
            for key in ("features", "route"):
                users += [("parts", part, key, what) for what in self.users(size, "parts", part, key)]
            users += [("parts", part, key) for key in SHAPING[:3] if self.uses(size, "parts", part, key)]
        users += [("variants", name) for name in self.users(size, "variants")]
        for place in reversed(users):
            if at(self.root, *place) is not None:
                self.leave_out(*place)

    def users(self, size: str, *place: str) -> list[str]:
        """What below a place names a size."""
        return [name for name, _ in children(at(self.root, *place)) if self.uses(size, *place, name)]

    def uses(self, size: str, *place: str) -> bool:
        """Whether anything at a place names a size."""
        return any(names(scalar.text, size) for scalar in measures(at(self.root, *place)))

    def to_plan(self) -> "Rest | None":
        """The parts that can still be planned, and what planning needs beside them."""
        for name in self.unplanned:
            remove(at(self.root, "parts"), name)
        for key in ("picture", "variants"):
            remove(self.root, key)
        return self if self.parts() else None

    def job(self, path: Path) -> Job | None:
        """What is left as a job, if it is one."""
        unit = "mm" if text_of(self.root.entries.get("units")) == "mm" else "in"
        try:
            return job_of(copy.deepcopy(self.root), Reader(unit), path, "", strict=False)
        except ProblemsFound:
            return None


def remove(node: Node | None, key: str) -> None:
    """Take a key or an entry out, if it is there."""
    if isinstance(node, Mapping):
        node.entries.pop(key, None)
        node.keys.pop(key, None)
    elif isinstance(node, Sequence) and key.isdigit() and int(key) < len(node.items):
        del node.items[int(key)]


def written(node: Node | None) -> str:
    """A piece of a definition as one text."""
    return " ".join(scalar.text for scalar in scalars(node))
