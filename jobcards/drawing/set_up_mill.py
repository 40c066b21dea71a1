"""The picture of a milled set-up: from above as you stand at the machine, and from in front."""

from jobcards.drawing.paper import (
    EM,
    Sheet,
)
from jobcards.drawing.set_up_above import plan_picture
from jobcards.drawing.set_up_front import front_picture
from jobcards.drawing.set_up_work import (
    INNER,
    TALL,
    on_machine,
    zero_of,
)
from jobcards.dryrun.results import PartRun
from jobcards.planning.card import Card, SetUpPlan


def mill_picture(card: Card, set_up: SetUpPlan, run: PartRun) -> Sheet:
    """Both views, one above the other, x in line."""
    it = on_machine(run, set_up)
    wide = it.fixtures["fixed jaw"].high - it.fixtures["fixed jaw"].low
    deep = it.fixtures["fixed jaw"].high[1] - it.fixtures["moving jaw"].low[1]
    scale = float(min(INNER / wide[0], TALL / deep))
    front = front_picture(set_up, it, scale)
    above = plan_picture(set_up, it, scale, zero_of(card, run, set_up))
    above.moved(0.0, front.bounds().high + 1.5 * EM - above.bounds().low)
    above.strokes += front.strokes
    above.letters += front.letters
    above.measured += front.measured
    return above
