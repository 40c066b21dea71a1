"""What an operation on a hole is given to work with, and which kind of cut it is."""

from dataclasses import dataclass

from jobcards.definition import shop as kit
from jobcards.planning.card import FeaturePlan, Position
from jobcards.planning.number import Number
from jobcards.planning.operation import Asked
from jobcards.planning.rates import spindle_speed
from jobcards.planning.route import Route

KIND_BY_CUTTER = {
    "spot drill": "spot",
    "drill": "drill",
    "end mill": "plunge",
    "counterbore": "counterbore",
    "boring head": "bore",
    "reamer": "ream",
    "tap": "tap",
    "countersink": "countersink",
}
KIND_BY_HAND = {
    "hand reamer": "hand ream",
    "hand tap": "hand tap",
    "tap": "hand tap",
    "countersink": "hand countersink",
}
SPEED_BY_KIND = {
    "spot": "drilling",
    "drill": "drilling",
    "plunge": "milling",
    "counterbore": "counterboring",
    "bore": "boring",
    "ream": "reaming",
    "tap": "tapping",
    "countersink": "countersinking",
}
TITLES = {
    "spot": "Spot {feature}",
    "drill": "Drill {feature}",
    "plunge": "Feed the cutter straight down: {feature}",
    "counterbore": "Counterbore {feature}",
    "bore": "Bore {feature}",
    "ream": "Ream {feature}",
    "tap": "Tap {feature}",
    "countersink": "Countersink {feature}",
    "hand ream": "Ream {feature} by hand",
    "hand tap": "Tap {feature} by hand",
    "hand countersink": "Countersink {feature} by hand",
}
# What finishes a hole of each shape, beside what only prepares it.
FINISHES = {
    "tapped hole": ("tap", "hand tap"),
    "countersink": ("countersink", "hand countersink"),
    "counterbore": ("counterbore", "plunge", "bore"),
}


@dataclass(frozen=True)
class HoleCut(Asked):
    """One operation on a hole, or on several alike, in the making."""

    steps: list[float]  # of the spindle; none by hand
    positions: tuple[Position, ...]

    @property
    def by_hand(self) -> bool:
        """Whether no spindle turns the cutter."""
        return not self.steps

    @property
    def kind(self) -> str:
        """The kind of cut, or nothing for a cutter that makes no hole here."""
        kinds = KIND_BY_HAND if self.by_hand else KIND_BY_CUTTER
        kind = kinds.get(self.cutter.kind, "")
        sinks = kind == "spot" and self.feature.shape == "countersink" and not self.operation.rough
        return "countersink" if sinks else kind

    @property
    def before(self) -> Number | None:
        """The diameter that the hole has already."""
        return self.route.opened.get(self.feature.name)

    def speed(self, diameter: Number, slowest: bool = False) -> dict[str, Number]:
        """Cutting speed, the spindle speed it asks for at a diameter, and the machine's step."""
        operation = SPEED_BY_KIND[self.kind]
        return spindle_speed(
            self.work,
            self.id,
            self.material,
            self.cutter,
            operation,
            diameter,
            self.steps,
            self.set_up.machine,
            slowest,
        )

    def problem(self, wrong: str, instead: str) -> None:
        """A problem at the cutter that is named."""
        self.work.problem(self.operation.place("cutter"), wrong, instead)


def finisher(route: Route, feature: FeaturePlan) -> kit.Cutter | None:
    """The cutter that brings a feature to size, wherever in the route."""
    for set_up in route.part.route:
        for operation in set_up.operations:
            if operation.cut == feature.name and not operation.rough:
                return route.work.shop.cutters.get(operation.cutter)
    return None


def same_places(one: FeaturePlan, other: FeaturePlan) -> bool:
    """Whether two features stand on the same axes."""
    return axes_of(one) == axes_of(other)


def axes_of(feature: FeaturePlan) -> set[tuple[tuple[str, float], ...]]:
    """The places of a feature, to compare."""
    return {tuple(sorted((axis, round(n.value, 6)) for axis, n in place.items())) for place in feature.places}


def hole_under(route: Route, feature: FeaturePlan) -> tuple[FeaturePlan, Number] | None:
    """A hole on the same axes that is there already, with its diameter: what a pilot or a countersink runs in."""
    for other in route.shape.features:
        opened = route.opened.get(other.name)
        if other.name != feature.name and opened is not None and axes_of(feature) <= axes_of(other):
            return other, opened
    return None
