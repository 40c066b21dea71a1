"""Work at the bench, by hand."""

from jobcards.definition.job import SetUp
from jobcards.planning.authored import authored
from jobcards.planning.bench_holes import bench_hole, is_hole
from jobcards.planning.by_hand import HAND, hand_cut
from jobcards.planning.card import Cut, HoldPlan, SetUpPlan
from jobcards.planning.rates import plan_cutter, time_by_rule
from jobcards.planning.route import Route, finished
from jobcards.planning.stated import stated_cut
from jobcards.planning.words import line
from jobcards.planning.work import from_job, from_shop, slug


def bench_set_up(route: Route, set_up: SetUp, set_up_id: str) -> SetUpPlan:
    """Work at the bench, by hand."""
    work = route.work
    cuts = []
    for operation in set_up.operations:
        feature = route.feature(operation)
        if feature is None or not operation.cut:
            work.problem(
                operation.mark, "an operation at the bench names a feature", "write `cut:` with a feature of the part"
            )
            continue
        if feature.shape == "note":
            cuts.append(stated_cut(route, set_up_id, operation))
            continue
        if is_hole(feature, work.shop.cutters[operation.cutter].kind):
            hole = bench_hole(route, set_up, set_up_id, operation, feature)
            cuts += [hole] if hole else []
            continue
        if feature.shape != "broken corners" and work.shop.cutters[operation.cutter].kind in HAND:
            made = hand_cut(route, set_up_id, operation, feature)
            cuts += [made] if made else []
            continue
        cut_id = f"{set_up_id}-{slug(operation.cut)}"
        time = time_by_rule(work, cut_id, "hand time")
        steps = (line("About {size} wide, all round.", size=feature.sizes["size"]),) if "size" in feature.sizes else ()
        tool = plan_cutter(work, operation.cutter, work.shop.cutters[operation.cutter])
        sizes = work.sizes
        cuts.append(
            Cut(
                cut_id,
                "hand",
                feature.name,
                line("Break {feature}", feature=from_job(feature.name)),
                tool,
                (),
                dict(feature.sizes),
                {"time": time},
                steps,
                authored(operation.why, sizes),
                authored(operation.check, sizes),
                authored(operation.caution, sizes),
            )
        )
    return finished(route, set_up, set_up_id, "bench", by_hand_in(set_up), (), tuple(cuts))


def by_hand_in(set_up: SetUp) -> HoldPlan | None:
    """How the work is held for hand work, where the definition says so."""
    hold = set_up.hold
    if hold is None:
        return None
    faces = {"{up} up": hold.up, "{jaw} toward the fixed jaw": hold.against_fixed_jaw, "{out} out": hold.out}
    lies = ", ".join(f"the {said}" for said, face in faces.items() if face)
    said = line(
        f"In the {{holder}}, {lies}; thin soft sheet between it and the jaws."
        if lies
        else "In the {holder}; thin soft sheet between it and the jaws.",
        holder=from_shop(hold.holder),
        up=hold.up,
        jaw=hold.against_fixed_jaw,
        out=hold.out,
    )
    return HoldPlan("hand", from_shop(hold.holder), {}, hold.up, hold.against_fixed_jaw, instructions=(said,))
