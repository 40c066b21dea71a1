"""What an operation on the shaper is given, and how the ram is set for it."""

from collections.abc import Callable
from dataclasses import dataclass

from jobcards.definition import shop as kit
from jobcards.definition.job import SetUp
from jobcards.planning.card import Cut
from jobcards.planning.mill.zero import Zeros
from jobcards.planning.number import WHOLE, Number, Show
from jobcards.planning.operation import Asked
from jobcards.planning.orientation import Lie, reading
from jobcards.planning.rates import speed_units
from jobcards.planning.route import Route
from jobcards.planning.words import Line, line
from jobcards.planning.work import Work, from_shop
from jobcards.trade import cutting, shaping, speeds_table, times

TENTHS = Show(places=1)
PER_MINUTE = "strokes/min"


@dataclass(frozen=True)
class ShaperCut(Asked):
    """One operation on the shaper in the making. The ram strokes along y, the table feeds along x."""

    lying: Lie
    zeros: Zeros
    shaper: kit.Shaper

    @property
    def step(self) -> Number:
        """One mark of the shaper's dials."""
        return dial_step(self.work, self.shaper)

    def ram(self) -> dict[str, Number]:
        """Stroke and strokes a minute for this work."""
        return plan_ram(self.route, self.set_up, self.id, self.operation.cutter, self.lying.along("y"), self.shaper)

    def reading(self, name: str, label: str, place: Number) -> Number:
        """The table's dial at a place of the drawing along x."""
        return reading(
            self.work, f"{self.id}{name}", label, self.lying, "x", place, self.zeros.places["x"], self.step.value
        )


Shaped = Callable[[ShaperCut], Cut | None]


def dial_step(work: Work, shaper: kit.Shaper) -> Number:
    """One mark of the shaper's dials."""
    return work.shop_length("shop-shaper.division", shaper.division, "one mark of the shaper's dials")


def plan_ram(
    route: Route, set_up: SetUp, cut_id: str, cutter: str, length: Number, shaper: kit.Shaper
) -> dict[str, Number]:
    """Stroke, the strokes a minute that the cutting speed asks for, and the machine's step not above them."""
    work, of = route.work, route.work.of(cut_id)
    per_minute, _, _ = speed_units(work)
    stroke = of.length(
        "stroke",
        shaping.stroke_length,
        "length of stroke",
        work=length,
        run_in=work.rule("shaper run-in"),
        run_out=work.rule("shaper run-out"),
    )
    longest = work.shop_length("shop-shaper.stroke", shaper.stroke, "longest stroke of the shaper")
    if stroke.value > longest.value + 1e-9:
        work.problem(
            set_up.place("hold"),
            f"the shaper strokes {longest.shown} and this wants {stroke.shown}",
            "turn the work so that it is shaped across",
        )
    material = work.shop.cutters[cutter].material
    found = speeds_table.cutting_speed(route.part.material, material, "shaping", per_minute)
    speed = work.looked_up(f"{cut_id}.cutting-speed", found, "cutting speed, shaping", WHOLE)
    ratio = work.ledger.given(
        "shop-shaper.ratio",
        shaper.ratio.value({}),
        "1",
        "time of the cutting stroke over that of the return",
        "the shop file",
        formula="as there is",
        show=TENTHS,
    )
    formula = shaping.strokes_inch if work.unit == "in" else shaping.strokes_metric
    wanted = of.rate(
        "wanted", formula, "strokes asked for", PER_MINUTE, cutting_speed=speed, stroke=stroke, ratio=ratio, show=WHOLE
    )
    strokes = work.ledger.given(
        f"{cut_id}.strokes",
        cutting.lower_step(shaper.strokes, wanted.value),
        PER_MINUTE,
        "strokes a minute: the machine's step not above it",
        f"the shop file, {set_up.machine}",
        formula="the nearest lower step of the shaper",
        inputs=(wanted.id,),
        show=WHOLE,
    )
    return {"stroke": stroke, "cutting speed": speed, "wanted speed": wanted, "strokes": strokes}


def ram_words(ram: dict[str, Number], tool: str) -> list[Line]:
    """How the ram is set, in order."""
    return [
        line(
            "Set the stroke {stroke}: two thirds of what is over lies before the work, so that the clapper drops.",
            stroke=ram["stroke"],
        ),
        line(
            "Clamp the {tool} short, turn the machine through one stroke by hand, then start it slow.",
            tool=from_shop(tool),
        ),
    ]


def shaping_time(work: Work, cut_id: str, width: Number, feed: Number, strokes: Number, rounds: Number) -> Number:
    """The time of all passes over a width."""
    each = work.of(cut_id).rate(
        "one-pass", shaping.shaping_time, "one pass", "min", width=width, feed=feed, strokes=strokes, show=TENTHS
    )
    handling, change = work.rule("handling"), work.rule("tool change time")
    return work.of(cut_id).time(
        times.time_of_passes, show=TENTHS, passes=rounds, each=each, handling=handling, change=change
    )


def needs_kind(asked: ShaperCut, kind: str = "shaper tool") -> bool:
    """The tool is one for the shaper; if not, that is a problem."""
    if asked.tool.kind == kind:
        return True
    asked.work.problem(
        asked.operation.place("cutter"), f"“{asked.operation.cutter}” is no tool of a shaper", "take a shaper tool"
    )
    return False
