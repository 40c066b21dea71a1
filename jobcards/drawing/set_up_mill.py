"""The picture of a milled set-up: from above as you stand at the machine, and from in front."""

import numpy as np

from jobcards.drawing.paper import (
    EM,
    Sheet,
)
from jobcards.drawing.set_up_above import plan_picture
from jobcards.drawing.set_up_clamped import is_clamped
from jobcards.drawing.set_up_front import front_picture
from jobcards.drawing.set_up_work import (
    INNER,
    TALL,
    OnMachine,
    extent_of,
    on_machine,
    zero_of,
)
from jobcards.dryrun.results import PartRun
from jobcards.planning.card import Card, SetUpPlan


def mill_picture(card: Card, set_up: SetUpPlan, run: PartRun) -> Sheet:
    """Both views, one above the other, x in line."""
    it = on_machine(run, set_up)
    wide, deep = room_of(it)
    scale = float(min(INNER / wide, TALL / deep))
    front = front_picture(set_up, it, scale)
    above = plan_picture(set_up, it, scale, zero_of(card, run, set_up))
    above.moved(0.0, front.bounds().high + 1.5 * EM - above.bounds().low)
    above.strokes += front.strokes
    above.letters += front.letters
    above.measured += front.measured
    return above


def room_of(it: OnMachine) -> tuple[float, float]:
    """How wide and how deep what holds the work is, with the work, as seen from above."""
    if not is_clamped(it):
        jaw, moving = it.fixtures["fixed jaw"], it.fixtures["moving jaw"]
        return float(jaw.high[0] - jaw.low[0]), float(jaw.high[1] - moving.low[1])
    low, high = extent_of(it.before)
    for name, box in it.fixtures.items():
        if name != "table":
            low, high = np.minimum(low, box.low), np.maximum(high, box.high)
    return float(high[0] - low[0]), float(high[1] - low[1])
