"""The blank sawn off its bar."""

from jobcards.definition import shop as kit
from jobcards.definition.job import SetUp
from jobcards.planning.card import Cut, SetUpPlan
from jobcards.planning.number import Number
from jobcards.planning.rates import plan_cutter, time_by_rule
from jobcards.planning.route import Route, finished
from jobcards.planning.stock import BY_RULE
from jobcards.planning.words import Line, line
from jobcards.planning.work import Work


def saw_set_up(route: Route, set_up: SetUp, set_up_id: str, machine: kit.Saw | kit.Bench) -> SetUpPlan:
    """Sawn to the blank's length, at a line or against a stop."""
    assert set_up.saw is not None
    work, blank = route.work, route.blank
    section = blank.sizes["diameter" if blank.shape == "round bar" else "width"]
    if isinstance(machine, kit.Saw):
        check_section(work, set_up, section, machine)
    name = set_up.saw.cutter
    kerf = work.ledger.same(
        f"{set_up_id}-saw.kerf", work.rule("kerf"), "width of the saw cut", "as a rule tells it", BY_RULE[work.unit]
    )
    cut = Cut(
        f"{set_up_id}-saw",
        "saw",
        "",
        line("Saw the blank"),
        plan_cutter(work, name, work.shop.cutters[name]),
        (),
        {"length": blank.sizes["length"]},
        {"time": time_by_rule(work, f"{set_up_id}-saw", "sawing time")},
        tuple(saw_words(set_up.saw.to == "stop", blank.sizes["length"], kerf)),
        check=line(
            "Measure the piece; the blank may be longer than {length}, not shorter.", length=blank.sizes["length"]
        ),
    )
    return finished(route, set_up, set_up_id, "saw", None, (), (cut,))


def saw_words(stop: bool, length: Number, kerf: Number) -> list[Line]:
    """How the length is found, and what the cut eats."""
    found = (
        line("Set the stop {length} from the near side of the blade; every piece then comes alike.", length=length)
        if stop
        else line("Scribe a line {length} from the clean end, and saw outside it.", length=length)
    )
    return [
        line("Clamp the bar on the headstock side of the cut, square to the blade; support a long end."),
        found,
        line("The cut eats about {kerf}; measure the next piece from the new end.", kerf=kerf),
        line("File off the burr before the blank goes into a vise."),
    ]


def check_section(work: Work, set_up: SetUp, section: Number, saw: kit.Saw) -> None:
    """The bar goes under the saw."""
    most = work.shop_length("shop-saw.largest", saw.largest, "largest section of the saw")
    if section.value > most.value + 1e-9:
        work.problem(
            set_up.place("machine"), f"the saw takes {most.shown} and the bar is {section.shown}", "saw it by hand"
        )
