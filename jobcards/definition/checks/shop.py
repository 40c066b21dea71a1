"""A job held against a shop: what the route asks for is there, and is used on the right machine."""

from collections.abc import Iterator, Mapping

from jobcards.definition.checks.clamped import check_clamped_in
from jobcards.definition.checks.process_machines import check_process_in, process_cutters
from jobcards.definition.checks.processes import every_setup
from jobcards.definition.cutter_names import read_cutter
from jobcards.definition.features.holes import REAMER_DRILL, TAP_DRILL
from jobcards.definition.job import Hold, Job, SetUp
from jobcards.definition.model import Mark
from jobcards.definition.problem import Problem, advise
from jobcards.definition.shop import AngleGauge, Bench, Lathe, Mill, Shop, SineBar, VBlock
from jobcards.definition.shop_clamping import AnglePlate, TableClamps
from jobcards.definition.shop_dividing import Indexer


def check_shop(job: Job, shop: Shop) -> list[Problem]:
    """Every problem of doing a job in a shop that can be seen without working anything out."""
    return [
        problem for part in job.parts.values() for setup in every_setup(part) for problem in check_setup_in(setup, shop)
    ]


def check_setup_in(setup: SetUp, shop: Shop) -> Iterator[Problem]:
    """The problems of one set-up in a shop."""
    yield from missing(setup.machine, shop.machines, "a machine", setup.place("machine"))
    if setup.square_up:
        yield from missing_cutter(setup.square_up.cutter, shop, setup.square_up.place("cutter"))
        if setup.square_up.end_cutter:
            yield from missing_cutter(setup.square_up.end_cutter, shop, setup.square_up.place("end_cutter"))
    for operation in setup.operations:
        yield from missing_cutter(operation.cutter, shop, operation.place("cutter"))
    for name, mark, _ in process_cutters(setup):
        yield from missing_cutter(name, shop, mark)
    yield from check_process_in(setup, shop)
    if setup.hold and setup.square_up and isinstance(shop.holding.get(setup.hold.holder), TableClamps | AnglePlate):
        yield Problem(setup.hold.place("holder"), "a block is squared in the vise", "write in: vise")
    elif setup.hold:
        yield from check_hold_in(setup.hold, shop)
    machine = shop.machines.get(setup.machine)
    if isinstance(machine, Mill | Lathe) and not setup.hold:
        yield Problem(setup.mark, "how the work is held is missing", "write hold: {in: vise, …}")
    if isinstance(machine, Mill) and setup.hold and setup.hold.out and not lies_level(setup.hold, shop):
        yield Problem(setup.hold.place("out"), f"the {setup.machine} is no lathe", "say which face is up")
    if isinstance(machine, Lathe) and setup.hold and setup.hold.up:
        yield Problem(setup.hold.place("up"), f"the {setup.machine} is a lathe", "say which end stands out")
    if isinstance(machine, Bench | Lathe) and (setup.zero or setup.square_up):
        name = "zero" if setup.zero else "square_up"
        yield Problem(setup.place(name), f"this is done on a mill, not on the {setup.machine}", "choose a mill")


def check_hold_in(hold: Hold, shop: Shop) -> Iterator[Problem]:
    """What holds the work is in the shop; a sine bar needs its high end."""
    yield from missing(hold.holder, shop.holding, "in the shop's holding list", hold.place("holder"))
    if hold.nearest and hold.holder in shop.holding and not isinstance(shop.holding[hold.holder], Indexer):
        yield Problem(hold.place("nearest"), f"nothing is divided in “{hold.holder}”", "leave nearest out")
    holder, stands = shop.holding.get(hold.holder), shop.holding.get(hold.on)
    yield from check_clamped_in(hold, holder, stands, bool(hold.out))
    if hold.trued_by:
        yield from missing(hold.trued_by, shop.holding, "in the shop's holding list", hold.place("trued_by"))
    if not hold.on:
        return
    yield from missing(hold.on, shop.holding, "in the shop's holding list", hold.place("on"))
    tilts = isinstance(shop.holding.get(hold.on), SineBar | AngleGauge)
    if tilts and not hold.high_end:
        yield Problem(hold.mark, f"the end that stands higher on the {hold.on} is missing", "write high end: left end")
    if hold.high_end and hold.on in shop.holding and not tilts:
        yield Problem(hold.place("high_end"), f"nothing stands higher on {hold.on}", "leave high end out")


def lies_level(hold: Hold, shop: Shop) -> bool:
    """Round work that lies with its axis level: in a V-block, or in the chuck of a dividing head."""
    held, stands = shop.holding.get(hold.holder), shop.holding.get(hold.on)
    return isinstance(held, Indexer) or isinstance(stands, VBlock)


def missing_cutter(name: str, shop: Shop, mark: Mark) -> Iterator[Problem]:
    """A cutter that is not there and that its name does not tell; one named by size and kind is only warned of."""
    if name not in (TAP_DRILL, REAMER_DRILL) and read_cutter(name, shop.unit) is None:
        yield from missing(name, shop.cutters, "a cutter", mark)


def missing(name: str, there: Mapping[str, object], what: str, mark: Mark) -> Iterator[Problem]:
    """A name that the shop does not have."""
    if name not in there:
        said = f"“{name}” is not {what}" + ("" if what.startswith("in ") else " of the shop")
        yield Problem(mark, said, advise(name, there))
