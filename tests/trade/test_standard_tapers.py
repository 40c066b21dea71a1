"""Standard tapers by name."""

from collections.abc import Callable

import pytest

from jobcards.tables import number, table
from jobcards.trade import standard_tapers as topic
from jobcards.trade.formula import CannotBeDone

REFUSED = [
    (topic.per_foot, {"name": "Morse 9"}, "no taper is called 'Morse 9'; write one of Morse 0, Morse 1"),
    (topic.large_end, {"name": "Morse"}, "no taper is called 'Morse'"),
    (
        topic.large_end,
        {"name": "Steep 7 in 24"},
        "Steep 7 in 24 is a rate of taper at any size; give the diameters of the job",
    ),
]


@pytest.mark.parametrize(("function", "given_sizes", "says"), REFUSED)
def test_it_refuses_and_says_why(function: Callable[..., float], given_sizes: dict[str, float], says: str) -> None:
    with pytest.raises(CannotBeDone) as refusal:
        function(**given_sizes)
    assert says in str(refusal.value)


def test_every_taper_with_two_ends_runs_from_large_to_small() -> None:
    for row in table("tapers").rows:
        if "large" in row:
            assert topic.large_end(row["name"]) > number(row, "small")
        assert 0 < topic.per_foot(row["name"]) <= 3.5
