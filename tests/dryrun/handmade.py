"""Small cards written by hand, so that the dry run is tested on sizes that no planning worked out."""

from collections.abc import Mapping
from pathlib import Path
from typing import Any, cast

from jobcards import quantity
from jobcards.definition import load_shop
from jobcards.definition.job import Job
from jobcards.planning.card import (
    BlankPlan,
    Card,
    Cut,
    CutterPlan,
    FeaturePlan,
    HoldPlan,
    PartPlan,
    Position,
    SetUpPlan,
    ShapePlan,
    Touch,
)
from jobcards.planning.number import Ledger, Number
from jobcards.planning.words import Authored

SHOP_FILE = Path(__file__).parents[2] / "jobcards" / "shops" / "evening-workshop.yml"
SHOP = load_shop(SHOP_FILE)


def words(text: str) -> Authored:
    return Authored(text, "job")


class Bench:
    """Makes numbers and puts them in one ledger."""

    def __init__(self) -> None:
        self.ledger = Ledger("in")

    def number(self, value: float, unit: str = "in", tolerance: tuple[float, float] | None = None) -> Number:
        shown = quantity.show(value, unit, 4)
        return self.ledger.enter(
            Number(f"n{len(self.ledger)}", value, unit, shown, "", "as given", (), "made up", tolerance)
        )

    def sizes(self, **values: float) -> dict[str, Number]:
        """Sizes by name; an underscore is a space."""
        named = {name.replace("_", " ").strip(): self.number(value) for name, value in values.items()}
        return {"stick-out" if name == "stick out" else name: number for name, number in named.items()}

    def vise(self, up: str, fixed_jaw: str, stop: str = "", stop_side: int = 0, **more: float) -> HoldPlan:
        values = {
            "jaw_width": 6.0,
            "jaw_depth": 1.75,
            "jaw_thickness": 0.75,
            "parallel_height": 1.0,
            "parallel_thickness": 0.125,
            "parallel_length": 6.0,
            "stop_thickness": 0.375,
            "stop_reach": 0.375,
        }
        return HoldPlan("vise", words("vise"), self.sizes(**(values | more)), up, fixed_jaw, stop, stop_side)

    def touch(
        self, axis: str, kind: str, face: str, side: int, preset: float, finder: str = "", distance: float | None = None
    ) -> Touch:
        found = words(finder) if finder else None
        far = self.number(distance) if distance is not None else None
        return Touch(axis, kind, face, side, self.number(preset), found, None, (), far)

    def on_paper(self, face: str, kind: str = "surface") -> Touch:
        """The cutter's end on the upper face with paper between: the face then reads nothing."""
        return self.touch("z", kind, face, 1, 0.0035, "paper")

    def at(self, x: float | None = None, y: float | None = None, z: float | None = None) -> Position:
        got = {axis: self.number(value) for axis, value in (("x", x), ("y", y), ("z", z)) if value is not None}
        return Position((), **got)

    def cutter(self, kind: str = "end mill", **values: float) -> CutterPlan:
        return CutterPlan(words(kind), kind, self.sizes(**values))

    def cut(
        self,
        kind: str,
        *positions: Position,
        cutter: CutterPlan | None = None,
        feature: str = "",
        rough: bool = False,
        hold: HoldPlan | None = None,
        face: str = "",
        **values: float,
    ) -> Cut:
        return Cut(
            f"cut-{len(self.ledger)}",
            kind,
            feature,
            (),
            cutter,
            positions,
            self.sizes(**values),
            rough=rough,
            hold=hold,
            face=face,
        )

    def set_up(self, kind: str, hold: HoldPlan | None, zero: tuple[Touch, ...], *cuts: Cut) -> SetUpPlan:
        machine = {"lathe": "lathe", "bench": "bench"}.get(kind, "knee mill")
        name = f"set-up-{len(self.ledger)}"
        return SetUpPlan(name, self.number(1, "1"), kind, "part", words(name), words(machine), (), hold, zero, cuts)

    def feature(
        self,
        shape: str,
        enters: str,
        places: tuple[Mapping[str, float], ...] = (),
        through: bool = False,
        toward: str = "",
        name: str = "",
        **values: float,
    ) -> FeaturePlan:
        at = tuple({axis: self.number(value) for axis, value in place.items()} for place in places)
        return FeaturePlan(name or shape, shape, enters, self.sizes(**values), at, through, toward)

    def block(self, length: float, height: float, thickness: float, *features: FeaturePlan) -> ShapePlan:
        return ShapePlan("block", self.sizes(length=length, height=height, thickness=thickness), features)

    def bar_blank(
        self, length: float, width: float, thickness: float, left: float = 0, bottom: float = 0, back: float = 0
    ) -> BlankPlan:
        outside = {name: self.number(value) for name, value in (("left end", left), ("bottom", bottom), ("back", back))}
        return BlankPlan(
            "flat bar", self.sizes(length=length, width=width, thickness=thickness), outside, self.number(1), ()
        )

    def round_blank(self, diameter: float, length: float, right: float) -> BlankPlan:
        return BlankPlan(
            "round bar",
            self.sizes(diameter=diameter, length=length),
            {"right end": self.number(right)},
            self.number(1),
            (),
        )

    def part(self, shape: ShapePlan, blank: BlankPlan, *set_ups: SetUpPlan) -> PartPlan:
        return PartPlan("part", words("part"), (), self.number(1, "1"), words("steel"), shape, blank, set_ups)

    def card(self, part: PartPlan, shop: Any = SHOP) -> Card:  # noqa: ANN401
        nothing_else: tuple[Any, ...] = ()
        return Card(
            slug="handmade",
            title=words("Handmade"),
            scenario=(),
            summary=(),
            level=words("beginner"),
            unit="in",
            job=cast(Job, None),
            shop=shop,
            shop_title=words("shop"),
            ledger=self.ledger,
            fingerprint="",
            learn=(),
            parts=(part,),
            cautions=nothing_else,
            gather=nothing_else,
            cut_list=nothing_else,
            requirements=nothing_else,
            inspection=nothing_else,
            warnings=(),
            time=self.number(0, "min"),
            revisions=nothing_else,
            picture="part",
        )
