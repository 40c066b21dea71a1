"""A worked number and the ledger that holds all of a card's numbers."""

from collections.abc import Callable, Iterator, Sequence
from dataclasses import dataclass, replace

from jobcards import quantity
from jobcards.source import Source
from jobcards.trade.formula import Formula, formula_of

WHOLE_DEGREE = 1e-9  # an angle no farther from a whole one is shown as one
HOW_IT_LIES = "how this set-up lies"
COUNTED = "counted"
PLACES = {
    "in": 4,
    "mm": 3,
    "deg": 2,
    "rpm": 0,
    "in/min": 1,
    "mm/min": 0,
    "min": 0,
    "lb": 2,
    "kg": 2,
    "1": 0,
    "in³": 2,
    "mm³": 0,
    "lb/in³": 4,
    "g/cm³": 2,
}


@dataclass(frozen=True)
class Number:
    """One published number: what it is, how it is shown, and where it comes from.

    `value` is in `unit` and unrounded; `shown` is what is read at the machine, without the unit. `key` is that of the
    registered formula that gave it, `table` the name of the table it was read from; each empty where there is none.
    """

    id: str
    value: float
    unit: str
    shown: str
    label: str
    formula: str
    inputs: tuple[str, ...]
    source: str
    tolerance: tuple[float, float] | None = None
    key: str = ""
    table: str = ""

    @property
    def published(self) -> float:
        """The value as a person reads it off the page."""
        return quantity.parse_shown(self.shown)


@dataclass(frozen=True)
class Show:
    """How a number is shown: to a step of a readout or dial, with so many places, or as a text of its own."""

    step: float | None = None
    places: int | None = None
    minutes: bool = False
    tolerance: tuple[float, float] | None = None
    text_as_written: str | None = None

    def text(self, value: float, unit: str) -> str:
        """The amount as it is read at the machine, without the unit."""
        if self.text_as_written is not None:
            return self.text_as_written
        if self.step is not None:
            value = quantity.round_to_step(value, self.step)
        if self.minutes:
            return quantity.show_angle(value, minutes=True)
        if unit == "deg" and self.places is None and min(value % 1, -value % 1) < WHOLE_DEGREE:
            return quantity.show(value, unit, 0)  # 45° and not 45.00°
        return quantity.show(value, unit, PLACES.get(unit, 3) if self.places is None else self.places)


AS_UNIT = Show()
WHOLE = Show(places=0)


class NameTaken(ValueError):
    """Two different numbers would have one name: two things of the job come to the same one."""


class Ledger:
    """All numbers of one card, by id, in the order they were worked out.

    Nothing reaches a page but through here, so every number has a formula, inputs and a source.
    """

    def __init__(self, unit: str) -> None:
        self.unit = unit
        self._numbers: dict[str, Number] = {}

    def __getitem__(self, number_id: str) -> Number:
        return self._numbers[number_id]

    def __contains__(self, number_id: str) -> bool:
        return number_id in self._numbers

    def __iter__(self) -> Iterator[Number]:
        return iter(self._numbers.values())

    def __len__(self) -> int:
        return len(self._numbers)

    def enter(self, number: Number) -> Number:
        """Put a finished number in. The same id twice must be the same number."""
        known = self._numbers.get(number.id)
        if known is not None and known != number:
            raise NameTaken(number.id)
        self._numbers[number.id] = number
        return number

    def given(
        self,
        number_id: str,
        value: float,
        unit: str,
        label: str,
        source: Source | str,
        *,
        formula: str = "as given",
        inputs: tuple[str, ...] = (),
        show: Show = AS_UNIT,
        key: str = "",
    ) -> Number:
        """A number that no formula of the trade gives: a size of the drawing, of the shop, of a table, a rule of
        practice.
        """
        shown = show.text(value, unit)
        table = source.table if isinstance(source, Source) else ""
        return self.enter(
            Number(number_id, value, unit, shown, label, formula, inputs, str(source), show.tolerance, key, table)
        )

    def counted(
        self,
        number_id: str,
        count: int,
        label: str,
        source: Source | str = COUNTED,
        formula: str = COUNTED,
        inputs: tuple[str, ...] = (),
    ) -> Number:
        """How many there are of something that stands on the card or on the drawing."""
        return self.given(number_id, float(count), "1", label, source, formula=formula, inputs=inputs, show=WHOLE)

    def same(self, number_id: str, number: Number, label: str, formula: str, show: Show = AS_UNIT) -> Number:
        """A number over again under another id: the time of an operation that a rule of practice says."""
        shown = show.text(number.value, number.unit)
        return self.enter(replace(number, id=number_id, shown=shown, label=label, formula=formula, inputs=(number.id,)))

    def work(
        self,
        number_id: str,
        function: Callable[..., float],
        label: str,
        unit: str,
        *,
        show: Show = AS_UNIT,
        **inputs: "Number | float | Sequence[Number]",
    ) -> Number:
        """A number from a formula of the trade. Plain floats among the inputs become numbers of their own."""
        entry = formula_of(function)
        numbers = {name: self._input(number_id, entry, name, value) for name, value in inputs.items()}
        values = {name: [n.value for n in v] if isinstance(v, tuple) else v.value for name, v in numbers.items()}
        ids = tuple(n.id for v in numbers.values() for n in (v if isinstance(v, tuple) else (v,)))
        value = float(function(**values))
        return self.given(
            number_id, value, unit, label, entry.source, formula=entry.text, inputs=ids, show=show, key=entry.key
        )

    def told(
        self,
        number_id: str,
        function: Callable[..., float],
        label: str,
        unit: str,
        *words: float | str,
        show: Show = AS_UNIT,
        made_for: str = "",
    ) -> Number:
        """A number from a formula of the trade that goes by words (a thread, a screw, a drill): a table or a series.

        A length is turned into `unit` where the formula is written for one unit only, or gives it in `made_for`.
        """
        entry = formula_of(function)
        value = float(function(*words))
        if (made_for or entry.result.unit) in ("in", "mm"):
            value = quantity.convert(value, made_for or entry.result.unit, unit)
        return self.given(number_id, value, unit, label, entry.source, formula=entry.text, show=show, key=entry.key)

    def _input(
        self, number_id: str, entry: Formula, name: str, value: "Number | float | Sequence[Number]"
    ) -> "Number | tuple[Number, ...]":
        """An input as a number: a plain float is entered as one, named after the result and the argument."""
        if isinstance(value, Number):
            return value
        if not isinstance(value, int | float):
            return tuple(value)
        meaning = next(p.meaning for p in entry.parameters if p.name == name)
        return self.given(f"{number_id}.{name}", float(value), "1", meaning, HOW_IT_LIES, show=Show(places=0))


class Draft(Ledger):
    """A copy of a ledger to try a route on: a number may come out anew without being an error."""

    def __init__(self, of: Ledger) -> None:
        super().__init__(of.unit)
        self._numbers = {number.id: number for number in of}

    def enter(self, number: Number) -> Number:
        """Put a finished number in, in the place of another with its id."""
        self._numbers[number.id] = number
        return number
