"""The picture of a set-up: what one sees at the machine."""

from jobcards.drawing.set_up_lathe import lathe_picture
from jobcards.drawing.set_up_mill import mill_picture
from jobcards.drawing.set_up_rotary import rotary_picture
from jobcards.drawing.set_up_round import round_picture
from jobcards.drawing.set_up_square import square_picture
from jobcards.drawing.set_up_work import WIDTH
from jobcards.drawing.svg import Drawing, finish
from jobcards.dryrun.results import DryRun
from jobcards.dryrun.rotary import KIND as ROTARY
from jobcards.dryrun.round_work import ROUND_HOLDS
from jobcards.planning.card import Card, SetUpPlan
from jobcards.planning.words import as_text

MARGIN = 1.0


def set_up_picture(card: Card, set_up: SetUpPlan, run: DryRun) -> Drawing | None:
    """The picture of a set-up, or nothing for work at the bench, or where the dry run did not get so far."""
    part = run.of_set_up(set_up.id, set_up.part)
    if not any(state.set_up_id == set_up.id for state in part.states):
        return None
    if set_up.kind == "mill" and set_up.hold is not None and set_up.hold.kind in ROUND_HOLDS:
        sheet = round_picture(set_up, part)
    elif set_up.kind == "mill" and set_up.hold is not None and set_up.hold.kind == ROTARY:
        sheet = rotary_picture(set_up, part)
    elif set_up.kind in ("mill", "shaper", "drill press"):
        sheet = mill_picture(card, set_up, part)
    elif set_up.kind == "square":
        sheet = square_picture(set_up, part)
    elif set_up.kind == "lathe":
        sheet = lathe_picture(set_up, part)
    else:
        return None
    sheet.width = WIDTH
    sheet.trim(MARGIN)
    return finish(sheet, f"set-up-{set_up.id}", f"Set-up: {set_up.title.text}", describe(set_up))


def describe(set_up: SetUpPlan) -> str:
    """What the picture shows, in words."""
    said = [as_text(touch.instruction) for touch in set_up.zero]
    hold = set_up.hold
    if hold is not None:
        said = [as_text(line) for line in hold.instructions] + said
    return " ".join(said) or set_up.title.text
