"""What a process holds, against the published grades."""

import pytest

from jobcards.trade.formula import CannotBeDone
from jobcards.trade.processes import held_by, process_of


@pytest.mark.parametrize(
    ("cut", "size", "micrometres"),
    [("grind", 19.05, 9), ("ream", 10.0, 9), ("turn", 19.05, 21), ("bore", 19.05, 33), ("drill", 8.0, 58)],
)
def test_widths_of_the_grades(cut: str, size: float, micrometres: float) -> None:
    """ISO 286-1:2010, table 1: IT5 and IT7 and IT8 over 18 to 30, IT6 and IT10 over 6 to 10."""
    process = process_of(cut)
    assert process is not None
    assert held_by(process, size, "mm").value == pytest.approx(micrometres / 1000)
    assert held_by(process, size / 25.4, "in").value == pytest.approx(micrometres / 25400)


def test_the_order_of_fineness() -> None:
    """Grinding is finer than turning, turning than boring, boring than milling. Common practice."""
    found = [process_of(cut) for cut in ("lap", "grind", "ream", "turn", "bore", "plunge")]
    finest = [process.finest for process in found if process is not None]
    assert len(finest) == 6 and finest == sorted(finest)
    assert all(process.finest <= process.usual for process in found if process is not None)


def test_past_the_end_of_the_grades() -> None:
    process = process_of("turn")
    assert process is not None
    with pytest.raises(CannotBeDone):
        held_by(process, 900.0, "mm")
    with pytest.raises(CannotBeDone):
        held_by(process, 1.0, "deg")
