"""What a definition may say, told key by key: made from the models that read it."""

from collections.abc import Iterator
from dataclasses import MISSING, Field, fields
from typing import Any

from jobcards.definition import job_paths, kinds
from jobcards.definition.features import FEATURE
from jobcards.definition.job import Job
from jobcards.definition.shop import Shop
from jobcards.pages.html import Html, element, join, table

TOPS = {"job": Job, "shop": Shop}


def reference(top: str) -> Html:
    """All keys of a "job" or a "shop" file, one table for each mapping in it."""
    return join(section(name, model) for name, model in models(TOPS[top]))


def models(top: type) -> list[tuple[str, type]]:
    """The models that can stand in a file, each under the words it is found by, in the order they are met."""
    found: dict[type, str] = {top: "At the top of the file"}
    waiting = [top]
    while waiting:
        model = waiting.pop(0)
        for each in keyed(model):
            for name, inner in inside(each.metadata["kind"], written(each)):
                if inner not in found:
                    found[inner] = name
                    waiting.append(inner)
    return [(name, model) for model, name in found.items()]


def inside(kind: kinds.Kind, name: str) -> Iterator[tuple[str, type]]:
    """The models that a kind leads to."""
    if isinstance(kind, kinds.Nested):
        yield f"Under {name}", kind.model
    elif isinstance(kind, kinds.OneOf):
        for word, model in kind.models:
            yield f"{kind.key.capitalize()}: {word}", model
    elif isinstance(kind, kinds.Many | kinds.Named):
        yield from inside(kind.of, name)


def keyed(model: type) -> list[Field[Any]]:
    """The fields of a model that can be written in a file."""
    return [each for each in fields(model) if "kind" in each.metadata]


def written(each: Field[Any]) -> str:
    """The key as it is written."""
    return str(each.metadata["yaml"] or each.name.replace("_", " "))


def section(name: str, model: type) -> Html:
    """The table of one mapping."""
    rows = (
        (
            element("b", written(each)),
            each.metadata["doc"] + may_be(each.metadata["kind"]),
            element("span", example_of(each, name), class_="as-written"),
            "must be there" if needed(each) else "may be left out",
        )
        for each in keyed(model)
    )
    told = (model.__doc__ or "").splitlines()[0]
    heads = ("Key", "What it says", "For example", "Needed?")
    return element("div", element("h3", name), element("p", told), table(heads, rows, class_="keys stack"))


def may_be(kind: kinds.Kind) -> str:
    """The words to choose from, where only some may stand."""
    if isinstance(kind, kinds.Many):
        return may_be(kind.of)
    if isinstance(kind, kinds.Through):
        return "; or the word through"
    if isinstance(kind, kinds.Choice) and len(kind.words) > 1:
        return f": {', '.join(kind.words[:-1])} or {kind.words[-1]}"
    return ""


def example_of(each: Field[Any], name: str) -> str:
    """What the key may be written as; the word that tells a shape or a kind is that of its own table."""
    table_of, _, word = name.partition(": ")
    return word if word and table_of.lower() == written(each) else str(each.metadata["example"])


def needed(each: Field[Any]) -> bool:
    """Must the key be there?"""
    return each.default is MISSING and each.default_factory is MISSING


def shapes() -> Html:
    """The shapes a feature may have, in one table."""
    assert isinstance(FEATURE, kinds.OneOf)
    rows = ((element("b", word), (model.__doc__ or "").splitlines()[0]) for word, model in FEATURE.models)
    return table(("Shape", "What it is"), rows, class_="keys stack")


def example() -> Html:
    """The first job's file as it stands, to read and to copy."""
    lines = job_paths()[0].read_text(encoding="utf-8").splitlines()
    return element("div", *(element("div", line.replace(" ", "\u00a0")) for line in lines), class_="definition")
