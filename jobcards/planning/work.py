"""What every step of planning shares: the job, the shop, the ledger, and how sizes and rules become numbers."""

import re
from collections.abc import Callable, Mapping, Sequence
from dataclasses import dataclass, field

from jobcards import quantity
from jobcards.definition import Problem
from jobcards.definition.expression import Expression
from jobcards.definition.job import Job
from jobcards.definition.model import Mark, Model
from jobcards.definition.shop import Shop
from jobcards.planning.number import AS_UNIT, HOW_IT_LIES, WHOLE, Ledger, Number, Show
from jobcards.planning.words import Authored, Line
from jobcards.tables import number, table
from jobcards.trade import every_formula
from jobcards.trade.formula import CannotBeDone
from jobcards.trade.speeds_table import TableValue

PLAIN = re.compile(r"\d+(?:[- ]\d+/\d+|/\d+|\.\d+)?|\.\d+")
Formula = Callable[..., float]
UNIT = {"inch": "in", "mm": "mm"}
THERE = ("the shop file", "as there is")
NOT_THERE = ("the job's definition; the shop has none", "as it is usually sold")


def slug(name: str) -> str:
    """A name as part of a number's id: lower case, hyphens for all else.

    >>> slug("pin seat, other side")
    'pin-seat-other-side'
    """
    return re.sub(r"[^a-z0-9]+", "-", name.lower()).strip("-")


@dataclass
class Work:
    """One card in the making."""

    job: Job
    shop: Shop
    unit: str
    ledger: Ledger
    sizes: dict[str, Number] = field(default_factory=dict)
    problems: list[Problem] = field(default_factory=list)
    warnings: list[Line] = field(default_factory=list)

    def of(self, thing_id: str) -> "Numbers":
        """The numbers of one thing on the card."""
        return Numbers(self.ledger, self.unit, thing_id)

    def problem(self, mark: Mark, wrong: str, instead: str) -> None:
        """Note a problem of the definition; all are told at once."""
        self.problems.append(Problem(mark, wrong, instead))

    def attempt(self, mark: Mark, instead: str, make: Callable[[], Number]) -> Number | None:
        """A number, or a problem at `mark` when the trade says that it cannot be done."""
        try:
            return make()
        except CannotBeDone as error:
            self.problem(mark, str(error), instead)
            return None

    def expression(
        self, number_id: str, written: Expression, label: str, unit: str | None = None, show: Show = AS_UNIT
    ) -> Number:
        """The number of an expression of the definition: the size itself where it is only a name."""
        if written.text.strip() in self.sizes:
            return self.sizes[written.text.strip()]
        value = written.value(self.env, every_formula())
        names = tuple(self.sizes[name].id for name in written.names)
        formula = written.text if names else "as drawn"
        if show is AS_UNIT and not names:
            show = Show(text_as_written=as_written(written))
        return self.ledger.given(
            number_id, value, unit or self.unit, label, "the job's definition", formula=formula, inputs=names, show=show
        )

    @property
    def env(self) -> dict[str, float]:
        """The middle of the limits of every size, by name."""
        return {name: number.value for name, number in self.sizes.items()}

    def rule(self, name: str) -> Number:
        """A rule of practice from the table of allowances."""
        chart = table("allowances")
        row = next(r for r in chart.rows if r["name"] == name)
        unit = self.unit if row["unit"] == "length" else row["unit"]
        value = number(row, "inch" if self.unit == "in" else "mm")
        places = (
            0 if unit == "1" and value == int(value) else 2 if unit in ("1", "min") and value != int(value) else None
        )
        return self.ledger.given(
            f"rule-{slug(name)}", value, unit, row["meaning"], chart.source_of(row), show=Show(places=places)
        )

    def nothing(self, number_id: str, label: str, source: str = HOW_IT_LIES) -> Number:
        """A length of nothing: where a reading begins, what is left where all is taken off."""
        return self.ledger.given(number_id, 0.0, self.unit, label, source)

    def looked_up(self, number_id: str, found: TableValue, label: str, show: Show = AS_UNIT) -> Number:
        """A number from a table of the trade."""
        return self.ledger.given(
            number_id, found.value, found.unit, label, found.source, formula="from the table", show=show
        )

    def shop_length(
        self,
        number_id: str,
        written: Expression,
        label: str,
        show: Show = AS_UNIT,
        source: str = THERE[0],
        formula: str = THERE[1],
    ) -> Number:
        """A length of the shop file, in the job's unit."""
        value = quantity.convert(written.value({}), UNIT[self.shop.units], self.unit)
        if show is AS_UNIT and UNIT[self.shop.units] == self.unit:
            show = Show(text_as_written=as_written(written))
        return self.ledger.given(number_id, value, self.unit, label, source, formula=formula, show=show)

    def shop_angle(self, number_id: str, written: Expression, label: str) -> Number:
        """An angle of the shop file."""
        return self.ledger.given(number_id, written.value({}), "deg", label, "the shop file", formula="as there is")

    def shop_lengths(self, prefix: str, thing: Model, names: Mapping[str, str]) -> dict[str, Number]:
        """Those of some lengths that a thing of the shop has, by their words: {"flute length": "flute_length"}."""
        source, formula = NOT_THERE if getattr(thing, "assumed", False) else THERE
        return {
            words: self.shop_length(
                f"{prefix}.{slug(words)}", getattr(thing, attribute), words, source=source, formula=formula
            )
            for words, attribute in names.items()
            if getattr(thing, attribute, None) is not None
        }


@dataclass(frozen=True)
class Numbers:
    """The numbers of one thing on the card: their ids begin with its own, as in `work.of("rocker-seat")`."""

    ledger: Ledger
    unit: str
    id: str

    def length(
        self,
        name: str,
        function: Formula,
        label: str,
        /,
        *,
        show: Show = AS_UNIT,
        **inputs: Number | float | Sequence[Number],
    ) -> Number:
        """A length by a formula of the trade, in the job's unit."""
        return self.ledger.work(f"{self.id}.{name}", function, label, self.unit, show=show, **inputs)

    def angle(
        self,
        name: str,
        function: Formula,
        label: str,
        /,
        *,
        show: Show = AS_UNIT,
        **inputs: Number | float | Sequence[Number],
    ) -> Number:
        """An angle by a formula of the trade, in degrees."""
        return self.ledger.work(f"{self.id}.{name}", function, label, "deg", show=show, **inputs)

    def time(self, function: Formula, /, *, show: Show = WHOLE, **inputs: Number | float | Sequence[Number]) -> Number:
        """How long it takes, by a formula of the trade."""
        return self.ledger.work(f"{self.id}.time", function, "time", "min", show=show, **inputs)

    def count(self, name: str, function: Formula, label: str, /, **inputs: Number | float | Sequence[Number]) -> Number:
        """A whole number by a formula of the trade."""
        return self.ledger.work(f"{self.id}.{name}", function, label, "1", show=WHOLE, **inputs)

    def rate(
        self,
        name: str,
        function: Formula,
        label: str,
        unit: str,
        /,
        *,
        show: Show = AS_UNIT,
        **inputs: Number | float | Sequence[Number],
    ) -> Number:
        """Anything else by a formula of the trade, with its unit."""
        return self.ledger.work(f"{self.id}.{name}", function, label, unit, show=show, **inputs)


def as_written(written: Expression) -> str | None:
    """A plain size as the file writes it, `1-1/8` or `0.200`; nothing for one with a unit or a sum."""
    text = written.text.strip()
    return text if PLAIN.fullmatch(text) else None


def from_job(text: str) -> Authored:
    """A text or name of the job's definition."""
    return Authored(text, "job")


def from_shop(text: str) -> Authored:
    """A name of the shop file."""
    return Authored(text, "shop")
