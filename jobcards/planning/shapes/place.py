"""Where things stand on a part: its axes, its sizes, and what a planner of a feature is given."""

from collections.abc import Callable, Mapping

from jobcards.definition.features import Feature
from jobcards.planning.card import FeaturePlan
from jobcards.planning.number import Number
from jobcards.planning.work import Work

AXES = ("x", "y", "z")
BLOCK = ("length", "height", "thickness")
ALONG = {"x": "from the left end", "y": "from the bottom", "z": "from the back"}

# work, id of the feature, its name, the feature as written, the sizes of the part
Planner = Callable[[Work, str, str, Feature, Mapping[str, Number]], FeaturePlan]
