"""What is left below a blind hole: the point of its drill must not come out of the far side."""

from jobcards.definition.job import Operation
from jobcards.planning.card import FeaturePlan
from jobcards.planning.number import Number
from jobcards.planning.words import line
from jobcards.planning.work import Work, from_job
from jobcards.trade import milling


def check_metal_under(
    work: Work, operation: Operation, feature: FeaturePlan, tip: Number, thick: Number, cut_id: str
) -> None:
    """A problem when a drill's point comes out of the work, a caution when next to nothing is left below it."""
    least = work.rule("metal under a hole")
    if tip.value >= thick.value:
        work.problem(
            operation.place("cutter"),
            f"the tip of “{operation.cutter}” goes {tip.shown} deep and comes out of the far side: the work is "
            f"{thick.shown} thick",
            "finish the thread with a bottoming tap, or make it shallower"
            if feature.thread
            else "make the hole shallower, or write depth: through",
        )
    elif thick.value - tip.value < least.value - 1e-9:
        left = work.of(cut_id).length(
            "under", milling.left_to_take, "metal left below the drill's point", full=thick, taken=tip
        )
        work.warnings.append(
            line(
                "Only {left} is left below the drill's point in {feature}; less than {least} bulges or breaks out. "
                "Set the depth with care.",
                left=left,
                least=least,
                feature=from_job(feature.name),
            )
        )
