"""What every model shares: where in the file it and each of its keys stand."""

from dataclasses import dataclass, field


@dataclass(frozen=True)
class Mark:
    """A place in a file, counted from 1."""

    file: str = ""
    line: int = 0
    column: int = 0

    def __str__(self) -> str:
        return f"{self.file}:{self.line}:{self.column}"


@dataclass(kw_only=True)
class Model:
    """A mapping of a definition, read. `marks` tells where each key's value stands; `mark` where the mapping starts."""

    mark: Mark = field(default=Mark(), compare=False, repr=False)
    marks: dict[str, Mark] = field(default_factory=dict, compare=False, repr=False)

    def place(self, name: str) -> Mark:
        """Where the value of a field stands, or the mapping itself when the field was left out."""
        return self.marks.get(name, self.mark)
