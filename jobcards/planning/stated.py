"""A shape that is only told in words: what the author says of it, not dry-run."""

from jobcards.definition.features import Stated
from jobcards.definition.job import Operation
from jobcards.planning.authored import authored
from jobcards.planning.card import Cut
from jobcards.planning.rates import plan_cutter, time_by_rule
from jobcards.planning.route import Route
from jobcards.planning.words import line
from jobcards.planning.work import from_job, slug


def stated_cut(route: Route, set_up_id: str, operation: Operation) -> Cut:
    """The words of the feature as its step, with the check of the feature and of the operation."""
    work = route.work
    feature = route.part.features[operation.cut]
    assert isinstance(feature, Stated)
    cut_id = f"{set_up_id}-{slug(operation.cut)}"
    check = authored(feature.check, work.sizes)
    if operation.check:
        check += line(" {also}", also=authored(operation.check, work.sizes))
    return Cut(
        cut_id,
        "hand",
        operation.cut,
        (from_job(operation.cut[0].upper() + operation.cut[1:]),),
        plan_cutter(work, operation.cutter, work.shop.cutters[operation.cutter]),
        (),
        {},
        {"time": time_by_rule(work, cut_id, "hand time")},
        (
            authored(feature.text, work.sizes),
            line("It is not drawn: its check is all there is."),
        ),
        authored(operation.why, work.sizes),
        check,
        authored(operation.caution, work.sizes),
        rough=operation.rough,
    )
