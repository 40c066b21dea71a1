"""The pages of formulas: one a topic, made from the registered functions themselves."""

import ast
import inspect
import re
from collections.abc import Mapping, Sequence
from doctest import DocTestParser, Example
from types import MappingProxyType

from jobcards import quantity
from jobcards.pages.formula_text import laid_out, put_in
from jobcards.pages.html import Html, element, heading, join, link, page, table
from jobcards.pages.pictures import figure
from jobcards.trade import every_formula
from jobcards.trade.formula import FORMULAS, Formula

UNIT_WORDS = {"1": "number", "deg": "°", "force": "lb or N"}
UNITS = (("in", "lb"), ("mm", "N"))
MINUS = "−"


def topics() -> dict[str, list[Formula]]:
    """The formulas by topic, both in alphabetical order of the topic and as written within it."""
    every_formula()
    sorted_topics = sorted({entry.topic for entry in FORMULAS.values()})
    return {topic: [entry for entry in FORMULAS.values() if entry.topic == topic] for topic in sorted_topics}


def spoken(topic: str) -> str:
    """A topic as it is said.

    >>> spoken("partial_bores")
    'Partial bores'
    """
    return topic.replace("_", " ").capitalize()


def place(topic: str) -> str:
    """The folder of a topic's page."""
    return topic.replace("_", "-")


def anchor(entry: Formula) -> str:
    """The place of a formula on the page of its topic."""
    return f"formula-{place(entry.function.__name__)}"


def topic_page(topic: str, entries: Sequence[Formula], used_on: Mapping[str, Html] = MappingProxyType({})) -> str:
    """The page of one topic: each figure once, above the formulas it explains.

    `used_on` tells, by the key of a formula, which cards use it.
    """
    from jobcards.drawing.figures import every_figure

    figures, blocks = every_figure(), [heading(1, spoken(topic))]
    seen: set[str] = set()
    for entry in together(entries, {key: one.id for key, one in figures.items()}):
        one = figures.get(entry.key)
        if one is not None and one.id not in seen:
            seen.add(one.id)
            blocks.append(figure(one.drawing.svg, "formula-figure", one.title))
        blocks += [heading(2, entry.title), formula_block(entry, used_on.get(entry.key, Html("")))]
    return page(blocks)


def together(entries: Sequence[Formula], figures: Mapping[str, str]) -> list[Formula]:
    """The formulas as written, those that one figure explains after one another. `figures`: key -> the figure's id."""
    kept: dict[str, list[Formula]] = {}
    for entry in entries:
        kept.setdefault(figures.get(entry.key, entry.key), []).append(entry)
    return [entry for group in kept.values() for entry in group]


def formula_block(entry: Formula, used_on: Html = Html("")) -> Html:  # noqa: B008
    """One formula: the sentence, the formula, its symbols, an example, where it comes from and where it is used."""
    symbols = [(element("b", spaced(q.name)), unit_words(q.unit), minus(q.meaning)) for q in entry.parameters]
    symbols.append(
        (element("b", result_name(entry)), unit_words(entry.result.unit), f"result: {minus(entry.result.meaning)}")
    )
    shown = [worked_line(entry, each) for each in worked_examples(entry)]
    example = element("p", element("b", "Example: "), join(shown, "; "), class_="example") if shown else Html("")
    return element(
        "div",
        element("p", entry.summary),
        element("p", entry.text if entry.worded else laid_out(entry.text), class_="formula-text"),
        table(("Symbol", "Unit", "Meaning"), symbols, class_="symbols"),
        example,
        element("p", element("b", "Source: "), str(entry.source), class_="source"),
        element("p", "In a job definition: ", element("b", entry.function.__name__), class_="call-name"),
        used_on,
        class_="formula",
        id=anchor(entry),
    )


def spaced(name: str) -> str:
    """A name as words."""
    return name.replace("_", " ")


def unit_words(unit: str) -> str:
    """A unit as it is told; a formula of lengths works in inches and in millimetres alike.

    >>> unit_words("length"), unit_words("length/min"), unit_words("1"), unit_words("rpm")
    ('in or mm', 'in/min or mm/min', 'number', 'rpm')
    """
    if "length" in unit:
        return " or ".join(unit.replace("length", one).replace("force", pull) for one, pull in UNITS)
    return UNIT_WORDS.get(unit, unit)


def result_name(entry: Formula) -> str:
    """What the formula gives, as its text names it."""
    return "result" if entry.worded else spaced(entry.text.partition("=")[0].strip())


def minus(text: str) -> str:
    """A text with a true minus before its numbers.

    >>> minus("-1 on the minus side")
    '−1 on the minus side'
    """
    return re.sub(r"(?<!\w)-(?=\d)", MINUS, text)


def worked_line(entry: Formula, told: str) -> Html:
    """An example with its numbers put into the formula: `edge 0, tip 0.2: edge = 0 + 0.2 / 2 = 0.1`."""
    given, _, result = told.partition(" gives ")
    if entry.worded:
        return join([told])
    names = [spaced(q.name) for q in entry.parameters]
    numbers = {name: each.removeprefix(f"{name} ") for name, each in zip(names, given.split(", "), strict=False)}
    return join([given, ": ", put_in(entry.text, numbers), f" = {result}", "°" if entry.result.unit == "deg" else ""])


def worked_examples(entry: Formula) -> list[str]:
    """The examples of the docstring that call the formula and give a number, as a sentence each."""
    examples = DocTestParser().get_examples(inspect.getdoc(entry.function) or "")
    return [told for each in examples if (told := example_text(entry, each))]


def example_text(entry: Formula, example: Example) -> str:
    """An example in words, as `edge 0, tip 0.2, side −1: gives −0.1`; nothing for one that is no plain call."""
    calls = [node for node in ast.walk(ast.parse(example.source)) if is_call_of(node, entry.function.__name__)]
    try:
        result = float(example.want)
    except ValueError:
        return ""
    if len(calls) != 1 or not isinstance(calls[0], ast.Call):
        return ""
    names = [q.name for q in entry.parameters]
    given = [*zip(names, calls[0].args, strict=False), *((str(k.arg), k.value) for k in calls[0].keywords)]
    told = ", ".join(f"{name.replace('_', ' ')} {ast.unparse(value)}" for name, value in given)
    amount = f"{result:g}" if abs(result) >= 1e-4 or not result else f"{result:.8f}".rstrip("0")
    return f"{told} gives {amount}".replace("-", MINUS)


def is_call_of(node: ast.AST, name: str) -> bool:
    """Is this a call of that function?"""
    return isinstance(node, ast.Call) and isinstance(node.func, ast.Name) and node.func.id == name


def index() -> str:
    """The list of topics, for the page that a person wrote."""
    items = (
        element(
            "li", link(f"{place(topic)}/index.html", spoken(topic)), ": ", ", ".join(entry.title for entry in entries)
        )
        for topic, entries in topics().items()
    )
    return element("ul", *items, class_="index")


def worked(key: str, unit: str, **inputs: float) -> str:
    """A formula with numbers put in, for the pages that a person wrote.

    >>> worked("locating.preset_at_touch", "in", edge=0.0, tip=0.2, side=-1)
    'preset = edge + side * tip / 2, with edge 0.0000, tip 0.2000, side −1: −0.1000 in'
    """
    every_formula()
    entry = FORMULAS[key]
    given = ", ".join(
        f"{q.name.replace('_', ' ')} {quantity.show(inputs[q.name], *how_shown(q.unit, unit))}"
        for q in entry.parameters
    )
    return f"{entry.text}, with {given}: {quantity.show(entry.function(**inputs), unit)} {unit}"


def how_shown(unit: str, length_unit: str) -> tuple[str, int | None]:
    """The unit of an input and its decimals: lengths as on the page, counts and signs without decimals."""
    return (length_unit, None) if unit == "length" else (unit, 0)


def shown(key: str, unit: str, **inputs: float) -> Html:
    """`worked` as a paragraph of a page."""
    return element("p", worked(key, unit, **inputs), class_="formula-text")
