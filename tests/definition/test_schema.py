"""The schema that editors use agrees with the reader on every shipped definition, and refuses plain slips."""

import json
import re
from pathlib import Path
from typing import Any, ClassVar

import jsonschema
import pytest
import yaml

from jobcards.definition import job_paths, shop_paths
from jobcards.definition.schema import job_schema, shop_schema
from tests.definition.write import GOOD, SPACER

JOBS = [*job_paths(), *sorted((GOOD.parents[1] / "jobs").glob("*.yml")), GOOD / "spacer.yml", GOOD / "pin.yml"]
BAD = GOOD.parent / "bad"
SHOPS = [*shop_paths(), GOOD / "shop-small.yml"]
JOB = jsonschema.Draft202012Validator(job_schema())
SHOP = jsonschema.Draft202012Validator(shop_schema())


class CoreLoader(yaml.SafeLoader):
    """Plain values as YAML 1.2 takes them (its core schema, section 10.3.2), which is what editors do."""

    yaml_implicit_resolvers: ClassVar[dict[str, Any]] = {}


for tag, pattern, first in (
    ("null", r"~|null|", "~n"),
    ("bool", r"true|false", "tf"),
    ("int", r"[-+]?[0-9]+", "-+0123456789"),
    ("float", r"[-+]?(\.[0-9]+|[0-9]+(\.[0-9]*)?)([eE][-+]?[0-9]+)?", "-+0123456789."),
):
    CoreLoader.add_implicit_resolver(f"tag:yaml.org,2002:{tag}", re.compile(rf"(?:{pattern})\Z"), [*first])


def as_an_editor_sees(text: str) -> Any:  # noqa: ANN401
    """What an editor makes of a file."""
    return yaml.load(text, Loader=CoreLoader)


@pytest.mark.parametrize("validator", [JOB, SHOP], ids=["job", "shop"])
def test_it_is_a_schema(validator: jsonschema.Draft202012Validator) -> None:
    validator.check_schema(validator.schema)


@pytest.mark.parametrize("path", JOBS, ids=lambda path: path.stem)
def test_the_jobs_suit_it(path: Path) -> None:
    JOB.validate(as_an_editor_sees(path.read_text(encoding="utf-8")))


@pytest.mark.parametrize("path", SHOPS, ids=lambda path: path.stem)
def test_the_shops_suit_it(path: Path) -> None:
    SHOP.validate(as_an_editor_sees(path.read_text(encoding="utf-8")))


@pytest.mark.parametrize(
    ("old", "new", "said"),
    [
        ("level: beginner", "level: begginer", "'begginer' is not one of"),
        ("summary:", "sumary:", "'sumary' was unexpected"),
        ("level: beginner\n", "", "'level' is a required property"),
        ("shape: hole", "shape: hoel", "'hoel' is not one of"),
        ("diameter: bore, at", "pitch: bore, at", "'pitch' was unexpected"),
        ("[front, top, bottom, back, left end, right end]", "front", "is not of type 'array'"),
        ("date: 2026-11-24", "date: 24.11.2026", "does not match"),
        ("    material:", "    quantity: 0\n    material:", "0 is less than the minimum of 1"),
        ("with: 17/64 drill", "with: 17/64 drill\n            rough: sure", "is not of type 'boolean'"),
    ],
)
def test_a_slip_is_seen_while_writing(old: str, new: str, said: str) -> None:
    assert old in SPACER
    errors = list(JOB.iter_errors(as_an_editor_sees(SPACER.replace(old, new, 1))))
    assert any(said in error.message for error in errors)


def test_every_key_carries_its_line_of_the_reference_and_an_example() -> None:
    for schema in (job_schema(), shop_schema()):
        for model in [schema, *schema["$defs"].values()]:
            for key, entry in model.get("properties", {}).items():
                assert entry.get("const") or (entry["description"] and entry["examples"]), key


def test_the_same_schema_every_time() -> None:
    assert json.dumps(job_schema()) == json.dumps(job_schema())


STRUCTURAL = {
    "unknown-key": "'author' was unexpected",
    "ten-in-a-block": "'begginer' is not one of",
    "ten-in-a-pin": "'inches' is not one of",
    "ten-in-a-clamp": "'yes' is not of type 'boolean'",
}


@pytest.mark.parametrize("name", STRUCTURAL)
def test_a_bad_definition_with_a_slip_of_structure_is_seen_by_an_editor(name: str) -> None:
    text = (BAD / f"{name}.yml").read_text(encoding="utf-8")
    said = [error.message for error in JOB.iter_errors(as_an_editor_sees(text))]
    assert any(STRUCTURAL[name] in message for message in said), said


def told_of_structure() -> list[Path]:
    """The bad jobs whose lines tell of a wrong or missing key or word, which an editor has to see as well."""
    signs = ("there is no key", "cannot stand here", "is wanted here, not")
    skipped = ("shop-", "Capital", "tag", "alias", "anchor", "several-at-once-yaml")
    return [
        path
        for path in sorted(BAD.glob("*.yml"))
        if not path.name.startswith(skipped)
        and any(sign in path.with_suffix(".txt").read_text(encoding="utf-8") for sign in signs)
    ]


@pytest.mark.parametrize("path", told_of_structure(), ids=lambda path: path.stem)
def test_no_slip_of_structure_passes_the_editor(path: Path) -> None:
    try:
        seen = as_an_editor_sees(path.read_text(encoding="utf-8"))
    except yaml.YAMLError:
        return
    assert list(JOB.iter_errors(seen))
