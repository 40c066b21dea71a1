"""Parts put together, and sizes measured before going on."""

from jobcards.definition.job import SetUp
from jobcards.definition.problem import advise
from jobcards.planning.authored import authored
from jobcards.planning.card import Cut, RequirementPlan, SetUpPlan, ShapePlan
from jobcards.planning.inspection import choose_instrument, whole_tolerance
from jobcards.planning.measured import feature_measured
from jobcards.planning.number import Number
from jobcards.planning.rates import time_by_rule
from jobcards.planning.requirements import plan_requirement
from jobcards.planning.route import Route, finished
from jobcards.planning.words import Line, line
from jobcards.planning.work import from_job, from_shop, slug
from jobcards.trade import times


def assemble_set_up(route: Route, set_up: SetUp, set_up_id: str) -> SetUpPlan:
    """Each step in the author's words with a box to tick; then the requirements that must hold."""
    assert set_up.assemble is not None
    work = route.work
    each = work.rule("assembly time")
    cut_id = f"{set_up_id}-together"
    steps = work.ledger.counted(f"{cut_id}.steps", len(set_up.assemble.steps), "steps")
    together = Cut(
        cut_id,
        "assemble",
        "",
        line("Put together"),
        None,
        (),
        {},
        {"time": work.of(cut_id).time(times.time_of_each, count=steps, each=each)},
        tuple(authored(step, work.sizes) for step in set_up.assemble.steps),
    )
    checks: list[Cut] = []
    for name in set_up.assemble.check:
        if name not in work.job.requirements:
            work.problem(
                set_up.assemble.place("check"),
                f"no requirement is called “{name}”",
                advise(name, work.job.requirements),
            )
            continue
        wanted = plan_requirement(work, name, work.job.requirements[name])
        checks.append(check_cut(f"{set_up_id}-{slug(name)}", wanted))
    return finished(route, set_up, set_up_id, "assemble", None, (), (together, *checks))


def check_cut(cut_id: str, wanted: RequirementPlan) -> Cut:
    """One requirement to check on the parts as made."""
    said: list[Line] = []
    if wanted.at_least is not None:
        said.append(line("At least {limit}.", limit=wanted.at_least))
    if wanted.at_most is not None:
        said.append(line("At most {limit}.", limit=wanted.at_most))
    return Cut(
        cut_id, "measure", "", line("Check {what}", what=wanted.name), None, (), {"aim": wanted.value}, {}, tuple(said),
        why=wanted.why,
    )  # fmt: skip


def inspect_set_up(route: Route, set_up: SetUp, set_up_id: str) -> SetUpPlan:
    """The named sizes, each with its limits and an instrument, before anything more is cut."""
    cuts = [
        cut
        for name in set_up.inspect
        if (cut := measured_cut(route, set_up, f"{set_up_id}-{slug(name)}", name)) is not None
    ]
    after = [line("What is out of its limits is mended now, or the part is given up; nothing later brings it back.")]
    return finished(route, set_up, set_up_id, "inspect", None, (), tuple(cuts), after=after)


def measured_cut(route: Route, set_up: SetUp, cut_id: str, name: str) -> Cut | None:
    """One size to measure."""
    work = route.work
    if name not in work.sizes:
        work.problem(set_up.place("inspect"), f"no size is called “{name}”", advise(name, work.sizes))
        return None
    size = work.sizes[name]
    if f"{size.id}.lower" not in work.ledger:
        work.problem(
            set_up.place("inspect"), f"the size “{name}” has no limits to measure to", "give it a tolerance: ±0.005"
        )
        return None
    lower, upper = work.ledger[f"{size.id}.lower"], work.ledger[f"{size.id}.upper"]
    return Cut(
        cut_id,
        "measure",
        "",
        line("Measure {name}", name=from_job(name)),
        None,
        (),
        {"least": lower, "aim": size, "most": upper},
        {"time": time_by_rule(work, cut_id, "measuring time")},
        instrument_words(route, size, lower, upper),
    )


def instrument_words(route: Route, size: Number, lower: Number, upper: Number) -> tuple[Line, ...]:
    """What to measure it with."""
    work = route.work
    tolerance = whole_tolerance(work, size, lower, upper)
    how = how_measured(route.shape, size)
    chosen = choose_instrument(work, size, how, tolerance)
    if chosen is None:
        return (line("No instrument of the shop measures this; make a gauge, or compare with a part that fits."),)
    said = line(
        "With the {tool}; one reading may be off by {uncertainty}.", tool=from_shop(chosen[0]), uncertainty=chosen[1]
    )
    return (said, line("Between {least} and {most} it is good.", least=lower, most=upper))


def how_measured(shape: ShapePlan, size: Number) -> str:
    """In which way a size of the part is measured; one that is no size of this part, from outside."""
    for feature in shape.features:
        for measured in feature_measured(feature, shape.sizes.get("diameter", size).id):
            if measured.size.id == size.id:
                return measured.how
    return "angle" if size.unit == "deg" else "outside"
