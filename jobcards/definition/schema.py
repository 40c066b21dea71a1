"""A JSON Schema of job and shop files, made from the models, so that an editor can help while one is written.

It is looser than the reader: an editor sees `4` as a number where the reader sees the text of a length.
"""

from dataclasses import fields
from typing import Any

from jobcards.definition import kinds
from jobcards.definition.job import Job
from jobcards.definition.model import Model
from jobcards.definition.reading.reader import is_required, key_of
from jobcards.definition.reading.scalars import LONGEST_NAME
from jobcards.definition.shop import Shop
from jobcards.definition.size import StatedSize
from jobcards.definition.syntax.grammar import LONGEST

DIALECT = "https://json-schema.org/draft/2020-12/schema"
Schema = dict[str, Any]
SPOKEN: Schema = {"type": ["string", "number"], "maxLength": LONGEST, "minLength": 1}


def job_schema() -> Schema:
    """The schema of a job definition."""
    return schema_of(Job, "A job definition")


def shop_schema() -> Schema:
    """The schema of a shop file."""
    return schema_of(Shop, "A shop file")


def schema_of(model: type[Model], title: str) -> Schema:
    """The schema of a file: its root and a definition for every model below."""
    writer = Writer()
    reference = writer.model(model)
    return {"$schema": DIALECT, "title": title, **reference, "$defs": dict(sorted(writer.models.items()))}


class Writer:
    """Walks the models and keeps the schema of each under its name."""

    def __init__(self) -> None:
        self.models: dict[str, Schema] = {}

    def model(self, model: type[Model], given: tuple[str, str] | None = None) -> Schema:
        """A reference to the schema of a model; `given` is the key and word that chose it."""
        name = model.__name__ + (f" ({given[1]})" if given else "")
        if name not in self.models:
            self.models[name] = {}  # so that a model may hold itself
            entries = {key_of(entry): entry for entry in fields(model) if "kind" in entry.metadata}
            properties = {key: self.field(entry.metadata) for key, entry in entries.items()}
            if given:
                properties[given[0]] = {"const": given[1]}
            self.models[name] = {
                "type": "object",
                "description": (model.__doc__ or "").strip(),
                "properties": properties,
                "required": [key for key, entry in entries.items() if is_required(entry)],
                "additionalProperties": False,
            }
        return {"$ref": f"#/$defs/{name.replace(' ', '%20')}"}

    def field(self, metadata: Any) -> Schema:  # noqa: ANN401
        """The schema of a key, with its line of the reference and its example."""
        return {"description": metadata["doc"], "examples": [metadata["example"]], **self.kind(metadata["kind"])}

    def kind(self, kind: kinds.Kind) -> Schema:
        """The schema of a kind of value."""
        match kind:
            case kinds.Nested():
                return self.model(kind.model)
            case kinds.OneOf():
                return self.one_of(kind)
            case kinds.Many():
                return self.many(kind)
            case kinds.Named():
                values = self.kind(kind.of)
                return {
                    "type": "object",
                    "additionalProperties": values,
                    "minProperties": 1,
                    "maxProperties": kind.most,
                }
            case kinds.Toleranced():
                return {"anyOf": [SPOKEN, self.model(StatedSize)]}
            case kinds.Text():
                return {"type": ["string", "number"], "maxLength": kind.most, "minLength": 1}
            case kinds.Name():
                return {"type": ["string", "number"], "maxLength": LONGEST_NAME, "minLength": 1}
            case kinds.Choice():
                return {"enum": list(kind.words)} if kind.words else {"type": "string"}
            case kinds.Flag():
                return {"type": "boolean"}
            case kinds.Whole():
                return {"type": "integer", "minimum": kind.least, "maximum": kind.most}
            case kinds.Number():
                return {"type": "number", "minimum": kind.least, "maximum": kind.most}
            case kinds.Date():
                return {"type": "string", "pattern": "^20[0-9]{2}-[0-9]{2}-[0-9]{2}$"}
        return dict(SPOKEN)

    def many(self, kind: kinds.Many) -> Schema:
        """A list, or one value alone where that will do."""
        items = self.kind(kind.of)
        whole = {"type": "array", "items": items, "minItems": 1, "maxItems": kind.most}
        return {"anyOf": [whole, items]} if kind.single else whole

    def one_of(self, kind: kinds.OneOf) -> Schema:
        """A mapping whose key tells which model it is."""
        chosen = [
            {
                "if": {"properties": {kind.key: {"const": word}}, "required": [kind.key]},
                "then": self.model(model, given=(kind.key, word)),
            }
            for word, model in kind.models
        ]
        words = [word for word, _ in kind.models]
        return {"type": "object", "properties": {kind.key: {"enum": words}}, "required": [kind.key], "allOf": chosen}
