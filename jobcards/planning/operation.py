"""One operation in the making: what it is given at every machine, and whether its face is up."""

from dataclasses import dataclass

from jobcards.definition import shop as kit
from jobcards.definition.job import Operation, SetUp
from jobcards.planning.authored import authored
from jobcards.planning.card import CutterPlan, FeaturePlan
from jobcards.planning.rates import plan_cutter
from jobcards.planning.route import Route
from jobcards.planning.words import Line
from jobcards.planning.work import Work


@dataclass(frozen=True)
class Asked:
    """One operation of a set-up: the feature it cuts, and with what."""

    route: Route
    set_up: SetUp
    id: str
    operation: Operation
    feature: FeaturePlan

    @property
    def work(self) -> Work:
        """The card in the making."""
        return self.route.work

    @property
    def material(self) -> str:
        """The part's material."""
        return self.route.part.material

    @property
    def cutter(self) -> kit.Cutter:
        """The cutter as the shop file has it."""
        return self.work.shop.cutters[self.operation.cutter]

    @property
    def tool(self) -> CutterPlan:
        """The cutter as numbers."""
        return plan_cutter(self.work, self.operation.cutter, self.cutter)

    def text(self, name: str) -> Line:
        """The author's `why`, `check` or `caution`."""
        return authored(getattr(self.operation, name), self.work.sizes)


def face_is_up(work: Work, set_up: SetUp, operation: Operation, feature: FeaturePlan) -> bool:
    """The face that a feature is cut into is up; if not, that is a problem."""
    assert set_up.hold is not None
    if feature.enters == set_up.hold.up:
        return True
    up, instead = set_up.hold.up, f"hold the part with its {feature.enters} up"
    if feature.shape == "chamfer":
        instead += f"; or, if it is the edge of the two, write from: {up} and edges: [{feature.enters}]"
    wrong = f"“{feature.name}” is cut from the {feature.enters}, and the {up} is up"
    work.problem(operation.place("cut"), wrong, instead)
    return False
