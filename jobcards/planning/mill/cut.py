"""What an operation at the mill is given to work with."""

from collections.abc import Callable
from dataclasses import dataclass

from jobcards.definition import shop as kit
from jobcards.definition.job import Operation, SetUp
from jobcards.planning.authored import authored
from jobcards.planning.card import Cut, CutterPlan, FeaturePlan
from jobcards.planning.mill.zero import Zeros
from jobcards.planning.number import Number
from jobcards.planning.orientation import Lie
from jobcards.planning.rates import milling_feed, plan_cutter, spindle_speed
from jobcards.planning.route import Route
from jobcards.planning.words import Line
from jobcards.planning.work import Work


@dataclass(frozen=True)
class MillCut:
    """One operation at the mill in the making: what is cut, with what, how the work lies and where zero is."""

    route: Route
    set_up: SetUp
    id: str
    operation: Operation
    feature: FeaturePlan
    lying: Lie
    zeros: Zeros
    mill: kit.Mill

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

    @property
    def step(self) -> Number:
        """The smallest step of the readout."""
        return self.work.shop_length("shop-readout-step", self.mill.readout_step, "smallest step of the readout")

    def speed(self, operation: str, diameter: Number) -> dict[str, Number]:
        """Cutting speed, the spindle speed it asks for at a diameter, and the machine's step."""
        steps = self.mill.spindle_steps
        return spindle_speed(
            self.work, self.id, self.material, self.cutter, operation, diameter, steps, self.set_up.machine
        )

    def feed(self, speed: Number) -> dict[str, Number]:
        """Chip load and table feed of a milling cutter."""
        return milling_feed(self.work, self.id, self.material, self.tool, speed)

    def text(self, name: str) -> Line:
        """The author's `why`, `check` or `caution`."""
        return authored(getattr(self.operation, name), self.work.sizes)


MillCutter = Callable[[MillCut], Cut | None]
