"""The published numbers of a card, as numbers.json and as the list kept under tests/published."""

import json
from collections.abc import Iterable

from jobcards.planning.number import Number


def as_json(numbers: Iterable[Number]) -> str:
    """numbers.json: one number a line."""
    return listed(
        {
            "id": number.id,
            "value": float(number.value),
            "unit": number.unit,
            "shown": number.shown,
            "label": number.label,
            "formula": number.formula,
            "inputs": list(number.inputs),
            "source": number.source,
        }
        for number in numbers
    )


def as_record(numbers: Iterable[Number]) -> str:
    """What is kept to see a change: what each number is, as it is read at the machine."""
    return listed({"id": n.id, "label": n.label, "shown": n.shown, "unit": n.unit} for n in numbers)


def listed(objects: Iterable[dict[str, object]]) -> str:
    """A JSON list with one object a line, so that a change shows as the lines that changed."""
    lines = ",\n".join(json.dumps(each, ensure_ascii=False) for each in objects)
    return f"[\n{lines}\n]\n" if lines else "[]\n"


def changes(old: Iterable[dict[str, str]], new: Iterable[dict[str, str]]) -> list[tuple[str, str, str, str]]:
    """What differs between two records, in the new one's order: id, label, old, new; an empty text for none."""
    before = {each["id"]: each for each in old}
    after = {each["id"]: each for each in new}
    ids = [*after, *(name for name in before if name not in after)]
    return [
        (name, (after.get(name) or before[name])["label"], read(before.get(name)), read(after.get(name)))
        for name in ids
        if read(before.get(name)) != read(after.get(name))
    ]


def read(entry: dict[str, str] | None) -> str:
    """A number of a record as it is read.

    >>> read({"shown": "0.2500", "unit": "in"})
    '0.2500 in'
    """
    if entry is None:
        return ""
    return entry["shown"] if entry["unit"] == "1" else f"{entry['shown']} {entry['unit']}"
