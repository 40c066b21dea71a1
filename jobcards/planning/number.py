"""A worked number and the ledger that holds all of a card's numbers."""

from collections.abc import Callable, Iterator
from dataclasses import dataclass

from jobcards import quantity
from jobcards.source import Source
from jobcards.trade.formula import formula_of

PLACES = {"in": 4, "mm": 3, "deg": 2, "rpm": 0, "in/min": 1, "mm/min": 0, "min": 0, "lb": 2, "kg": 2, "1": 0}


@dataclass(frozen=True)
class Number:
    """One published number: what it is, how it is shown, and where it comes from.

    `value` is in `unit` and unrounded; `shown` is what is read at the machine, without the unit.
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

    @property
    def published(self) -> float:
        """The value as a person reads it off the page."""
        return quantity.parse_shown(self.shown)


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
            raise ValueError(f"two different numbers are called {number.id}")
        self._numbers[number.id] = number
        return number

    def given(
        self, number_id: str, value: float, unit: str, label: str, source: Source | str, *, formula: str = "as given", **how: object
    ) -> Number:
        """A number that is not worked out: a size of the drawing, of the shop, of a table, or a rule."""
        return self._make(number_id, value, unit, label, formula, (), str(source), **how)

    def work(
        self, number_id: str, function: Callable[..., float], label: str, unit: str, *, how: dict[str, object] | None = None, **inputs: "Number | float"
    ) -> Number:
        """A number from a formula of the trade. Plain floats among the inputs become numbers of their own."""
        entry = formula_of(function)
        meanings = {p.name: p for p in entry.parameters}
        numbers = {
            name: given if isinstance(given, Number) else self.given(f"{number_id}.{name}", float(given), "1", meanings[name].meaning, "this set-up")
            for name, given in inputs.items()
        }
        value = function(**{name: number.value for name, number in numbers.items()})
        ids = tuple(number.id for number in numbers.values())
        return self._make(number_id, float(value), unit, label, entry.text, ids, str(entry.source), **(how or {}))

    def _make(
        self, number_id: str, value: float, unit: str, label: str, formula: str, inputs: tuple[str, ...], source: str, **how: object
    ) -> Number:
        shown = how.get("shown")
        places = how.get("places", PLACES.get(unit, 3))
        step = how.get("step")
        if isinstance(step, float):
            value_shown = quantity.round_to_step(value, step)
        else:
            value_shown = value
        if not isinstance(shown, str):
            shown = quantity.show(value_shown, unit, places if isinstance(places, int) else None)
        tolerance = how.get("tolerance")
        kept = tolerance if isinstance(tolerance, tuple) else None
        return self.enter(Number(number_id, value, unit, shown, label, formula, inputs, source, kept))
