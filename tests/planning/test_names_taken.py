"""Names that come to one when they are put together are told, with another to be given."""

from pathlib import Path

from jobcards.planning import problems_of
from tests.planning.cards import CLAMP, swapped


def test_a_set_up_named_like_a_cut_of_another(tmp_path: Path) -> None:
    """“square the blank, front” is what the cut of the front in “square the blank” comes to."""
    job = CLAMP.with_name("vise-stop.yml")
    path = swapped(job, tmp_path / job.name, (("set-up: front\n", "set-up: square the blank, front\n"),))
    told = [problem.wrong for problem in problems_of(path)]
    assert told == ["“square the blank, front” comes to the same name as another set-up together with one of its cuts"]
