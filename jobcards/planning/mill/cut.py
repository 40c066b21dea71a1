"""What an operation at the mill is given to work with."""

from collections.abc import Callable
from dataclasses import dataclass

from jobcards.definition import shop as kit
from jobcards.planning.card import Cut
from jobcards.planning.mill.zero import Zeros
from jobcards.planning.number import Number
from jobcards.planning.operation import Asked
from jobcards.planning.orientation import Lie
from jobcards.planning.rates import milling_feed, spindle_speed


@dataclass(frozen=True)
class MillCut(Asked):
    """One operation at the mill in the making: what is cut, with what, how the work lies and where zero is."""

    lying: Lie
    zeros: Zeros
    mill: kit.Mill

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


MillCutter = Callable[[MillCut], Cut | None]
