"""A part on its way through its set-ups, and what every set-up ends with: number, texts and time."""

from collections.abc import Mapping
from dataclasses import dataclass, field

from jobcards.definition.job import Operation, Part, SetUp
from jobcards.planning.authored import authored
from jobcards.planning.card import BlankPlan, Cut, FeaturePlan, HoldPlan, SetUpPlan, ShapePlan, Touch
from jobcards.planning.lathe.outline import Turned
from jobcards.planning.mill.zero import Zeros
from jobcards.planning.number import WHOLE, Number
from jobcards.planning.rates import time_of
from jobcards.planning.words import Line
from jobcards.planning.work import Work, from_job, from_shop


@dataclass
class Route:
    """A part on its way through the set-ups: what is cut so far, and the zero of the set-up before."""

    work: Work
    part_id: str
    part: Part
    shape: ShapePlan
    blank: BlankPlan
    count: int
    zeros: Zeros | None = None
    parallels: Number | None = None  # height of the pair in the set-up before
    opened: dict[str, Number] = field(default_factory=dict)  # a hole's diameter after the last cut on it
    marked: dict[str, tuple[Mapping[str, Number], ...]] = field(default_factory=dict)  # heights of the lines laid out
    turned: list[Turned] = field(default_factory=list)  # how far a turned part has been turned down
    done: list[str] = field(default_factory=list)  # at the lathe: features cut and ends faced, in order
    parted: bool = False  # cut off the bar
    ground: Mapping[str, Number] = field(default_factory=dict)  # what is left for grinding on each face that is ground
    standing: dict[str, Number] = field(default_factory=dict)  # of these, what stands on the faces as they are now
    begun: set[str] = field(default_factory=set)  # the cuts planned so far, by id
    own: Mapping[str, str] = field(default_factory=dict)  # what the ids of an alternative's set-ups begin with

    def feature(self, operation: Operation) -> FeaturePlan | None:
        """The feature an operation cuts."""
        return next((f for f in self.shape.features if f.name == operation.cut), None)


def finished(
    route: Route,
    set_up: SetUp,
    set_up_id: str,
    kind: str,
    hold: HoldPlan | None,
    zero: tuple[Touch, ...],
    cuts: tuple[Cut, ...],
    notes: list[Line] | None = None,
    after: list[Line] | None = None,
    sizes: dict[str, Number] | None = None,
) -> SetUpPlan:
    """The set-up with its number, texts and time."""
    work = route.work
    number = work.ledger.given(
        f"{set_up_id}.number", float(route.count), "1", "set-up", "counted", formula="counted", show=WHOLE
    )
    times = tuple(cut.rates["time"] for cut in cuts if "time" in cut.rates)
    setting = work.rule("set-up time")
    total = time_of(
        work,
        set_up_id,
        setting.value + sum(t.value for t in times),
        (setting, *times),
        "set-up time + time of each operation",
    )
    said = list(after or [])
    if set_up.after:
        said.insert(0, authored(set_up.after, work.sizes))
    return SetUpPlan(
        set_up_id,
        number,
        kind,
        route.part_id,
        from_job(set_up.title),
        from_shop(set_up.machine),
        authored(set_up.why, work.sizes),
        hold,
        zero,
        cuts,
        tuple(said),
        authored(set_up.stopping_point, work.sizes),
        tuple(notes or ()),
        sizes or {},
        total,
    )
