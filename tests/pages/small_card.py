"""A card made by hand: a plate with one hole. Enough of everything for the pages to be tried on."""

from types import SimpleNamespace
from typing import Any, cast

from jobcards.planning.card import (
    BlankPlan,
    Card,
    Caution,
    Contribution,
    Cut,
    CutListRow,
    CutterPlan,
    FeaturePlan,
    GatherGroup,
    HoldPlan,
    InspectionRow,
    PartPlan,
    Position,
    RequirementPlan,
    SetUpPlan,
    ShapePlan,
    Touch,
)
from jobcards.planning.number import AS_UNIT, WHOLE, Ledger, Number, Show
from jobcards.planning.words import Authored, line
from jobcards.trade.locating import preset_at_touch


class Maker:
    """Makes the card with `said` wherever an author may write something."""

    def __init__(self, said: str = "") -> None:
        self.said = said
        self.ledger = Ledger("in")

    def own(self, text: str, owner: str = "job") -> Authored:
        """Authored text, with what was said added."""
        return Authored(f"{text} {self.said}".strip(), owner)

    def size(self, name: str, value: float, unit: str = "in", show: Show = AS_UNIT) -> Number:
        """A size of the drawing."""
        return self.ledger.given(name, value, unit, f"{name} {self.said}".strip(), "drawing", show=show)

    def hold(self) -> HoldPlan:
        sizes = {
            "jaw width": self.size("vise.jaw-width", 6.0),
            "jaw depth": self.size("vise.jaw-depth", 1.75),
            "parallel height": self.size("vise.parallel-height", 0.875),
            "parallel thickness": self.size("vise.parallel-thickness", 0.125),
            "grip": self.size("vise.grip", 0.875),
        }
        instruction = line("Stand the work on parallels {height} high.", height=sizes["parallel height"])
        return HoldPlan(
            "vise",
            self.own("vise", "shop"),
            sizes,
            up="top",
            fixed_jaw="back",
            stop="left end",
            stop_side=-1,
            instructions=(instruction,),
        )

    def zero(self) -> tuple[Touch, ...]:
        tip = self.size("finder.tip", 0.200)
        edge = self.size("left-edge", 0.0)
        side = self.size("side", -1.0, "1", show=WHOLE)
        back = self.size("other-side", 1.0, "1", show=WHOLE)
        x = self.ledger.work("zero.x", preset_at_touch, "preset x", "in", edge=edge, tip=tip, side=side)
        y = self.ledger.work("zero.y", preset_at_touch, "preset y", "in", edge=edge, tip=tip, side=back)
        finder = self.own("edge finder", "shop")
        return (
            Touch("x", "edge", "left end", -1, x, finder, tip, line("Touch the left end.")),
            Touch("y", "edge", "back", 1, y, finder, tip, line("Touch the back.")),
        )

    def drill(self) -> Cut:
        at = Position(line("hole"), self.size("hole.x", 1.25), self.size("hole.y", -0.375))
        cutter = CutterPlan(self.own("1/4 drill", "shop"), "drill", {"diameter": self.size("drill.diameter", 0.25)})
        return Cut(
            id="hole",
            kind="drill",
            feature="hole",
            title=line("drill the {feature}", feature=self.own("hole")),
            cutter=cutter,
            positions=(at,),
            sizes={"depth": self.size("hole.depth", 0.58)},
            rates={"speed": self.size("hole.speed", 1115.0, "rpm"), "feed": self.size("hole.feed", 2.5, "in/min")},
            steps=(line("Back out every {peck}.", peck=self.size("hole.peck", 0.25)),),
            why=(self.own("It is only a hole."),),
            check=(self.own("Try a 1/4 pin."),),
            caution=(self.own("The drill grabs as it breaks through."),),
            through=True,
        )

    def set_up(self) -> SetUpPlan:
        return SetUpPlan(
            id="plate.holes",
            number=self.size("plate.holes.number", 1.0, "1", show=WHOLE),
            kind="mill",
            part="plate",
            title=self.own("holes"),
            machine=self.own("knee mill", "shop"),
            why=(self.own("There is nothing else to do."),),
            hold=self.hold(),
            zero=self.zero(),
            cuts=(self.drill(),),
            after=((self.own("Brush the vise."),),),
            stopping_point=(self.own("Stop here if it is late."),),
            notes=(line("Backlash is {lost}.", lost=self.size("mill.backlash", 0.012)),),
            time=self.size("plate.holes.time", 12.0, "min"),
        )

    def part(self) -> PartPlan:
        sizes = {
            "length": self.size("length", 4.0),
            "height": self.size("height", 2.0),
            "thickness": self.size("thickness", 0.5),
        }
        hole = FeaturePlan(
            "hole",
            "hole",
            "top",
            {"diameter": self.size("hole.diameter", 0.25), "depth": sizes["thickness"]},
            ({"x": self.size("hole.from-left", 1.25), "z": self.size("hole.from-back", 1.625)},),
            through=True,
        )
        blank = BlankPlan(
            "flat bar",
            {"width": sizes["height"], "thickness": sizes["thickness"], "length": self.size("blank.length", 4.0)},
            {},
            self.size("plate.weight", 1.13, "lb"),
            (self.own("1/2 × 2 flat"),),
        )
        shape = ShapePlan("block", sizes, (hole,))
        note = (self.own("A plate."),)
        many = self.size("plate.quantity", 1.0, "1", show=WHOLE)
        return PartPlan("plate", self.own("plate"), note, many, self.own("mild steel"), shape, blank, (self.set_up(),))

    def requirement(self) -> RequirementPlan:
        value = self.size("wall", 0.9)
        low, high = self.size("wall.low", 0.88), self.size("wall.high", 0.92)
        moved = Contribution(
            self.own("thickness"), self.size("wall.by-thickness", 1.0, "1"), self.size("wall.spread", 0.02)
        )
        least = self.size("wall.least", 0.85)
        return RequirementPlan(
            self.own("wall beside the hole"),
            value,
            least,
            None,
            low,
            high,
            low,
            high,
            (moved,),
            True,
            line("It holds."),
            (self.own("Or it breaks."),),
        )

    def card(self) -> Card:
        part = self.part()
        lower, upper = self.size("hole.least", 0.249), self.size("hole.most", 0.254)
        sure = self.size("caliper.sure", 0.001)
        measured = InspectionRow(
            part.name,
            line("hole"),
            self.ledger["hole.diameter"],
            lower,
            upper,
            self.own("caliper", "shop"),
            sure,
            self.size("hole.ratio", 5.0, "1"),
        )
        bar = self.size("bar.needed", 4.1)
        job = SimpleNamespace(units="inch", sizes={}, scenario=self.said, title=self.said, family=())
        return Card(
            slug="small-plate",
            title=self.own("Plate with 1 hole"),
            scenario=(self.own("Invented for practice."),),
            summary=(self.own("A plate with a hole in it."),),
            level=self.own("beginner"),
            unit="in",
            job=cast(Any, job),
            shop=cast(Any, SimpleNamespace(title="evening workshop")),
            shop_title=self.own("The evening workshop", "shop"),
            ledger=self.ledger,
            fingerprint="0a1b2c3d",
            learn=((self.own("Drill 1 hole."),),),
            parts=(part,),
            cautions=(
                Caution("eyes", (self.own("Cover your eyes.", "table"),)),
                Caution("chips", (self.own("Chips are sharp.", "table"),), ("plate.holes",)),
            ),
            gather=(GatherGroup("Cutters", ((self.own("1/4 drill", "shop"),),)),),
            cut_list=(
                CutListRow((self.own("1/2 × 2 flat"),), ((self.own("1 plate"),),), bar, self.ledger["plate.weight"]),
            ),
            requirements=(self.requirement(),),
            inspection=(measured,),
            warnings=((self.own("The drill is long."),),),
            time=self.size("time", 20.0, "min"),
            revisions=((self.own("A"), self.own("2026-11-24"), (self.own("First issue."),)),),
            picture="plate",
        )


def small_card(said: str = "") -> Card:
    """The plate; `said` is added wherever an author, a shop or a table may write."""
    return Maker(said).card()
