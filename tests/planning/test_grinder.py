"""On the surface grinder only whole faces are ground; what else is asked of it is told, or done in words."""

from pathlib import Path

import pytest

from jobcards.definition import ProblemsFound, load_job, load_shop
from jobcards.planning import plan_card
from tests.planning.cards import SHOP

VEE = (Path(__file__).parents[1] / "jobs" / "shaped-vee.yml").read_text(encoding="utf-8")
OTHERS = VEE[: VEE.index("      - set-up: top\n")]
ON_THE_GRINDER = """      - set-up: vees
        machine: surface grinder
        operations:
          - {cut: square V, with: grinding wheel}
          - {cut: wide V, with: grinding wheel}
          - {cut: keyway, with: grinding wheel}
"""


@pytest.mark.parametrize(
    ("machine", "says"),
    [
        ("surface grinder", "“{name}” is not ground here: only whole faces of a block are, flat on the magnetic chuck"),
        ("power saw", "nothing is cut to a drawing's shape on the power saw"),
        ("furnace", "nothing is cut to a drawing's shape on the furnace"),
    ],
)
def test_a_shape_that_is_not_ground_here_is_told_at_each_cut(tmp_path: Path, machine: str, says: str) -> None:
    path = tmp_path / "vees.yml"
    path.write_text(OTHERS + ON_THE_GRINDER.replace("surface grinder", machine), encoding="utf-8")
    with pytest.raises(ProblemsFound) as found:
        plan_card(load_job(path), load_shop(SHOP))
    first = OTHERS.count("\n") + 4
    told = {problem.mark.line: problem.wrong for problem in found.value.problems}
    assert told == {
        first + count: says.format(name=name) for count, name in enumerate(("square V", "wide V", "keyway"))
    }


def test_a_v_that_is_told_in_words_is_ground_in_words(tmp_path: Path) -> None:
    path = tmp_path / "vees.yml"
    drawn = [row for row in OTHERS.splitlines() if "wide V" not in row and "keyway" not in row]
    words = "      square V: {shape: note, text: Set it on the sine plate., check: Try a pin in it.}"
    rows = [words if "square V" in row else row for row in drawn] + ON_THE_GRINDER.splitlines()[:4]
    path.write_text("\n".join(rows), encoding="utf-8")
    card = plan_card(load_job(path), load_shop(SHOP))
    assert [(s.kind, cut.kind, cut.feature) for s in card.set_ups[1:] for cut in s.cuts] == [
        ("grind", "hand", "square V")
    ]
