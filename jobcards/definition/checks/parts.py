"""A part is a block or turned, comes out of its blank, and its features stand on the faces they enter."""

from collections.abc import Iterator

from jobcards.definition.checks.holes import check_count, check_placed
from jobcards.definition.checks.known import Known
from jobcards.definition.checks.milled import check_milled
from jobcards.definition.checks.round_work import check_round_work
from jobcards.definition.checks.serrated import check_serrated
from jobcards.definition.expression import Expression
from jobcards.definition.features import Bevel, Feature, Placed, Serrations, TurnedChamfer, TurnedDiameter, bored, lathe
from jobcards.definition.job import Blank, Part
from jobcards.definition.problem import Problem

BARS = {"flat bar": ("width", "thickness"), "round bar": ("diameter",)}
TURNED_SHAPES = (TurnedDiameter, TurnedChamfer, *lathe.MODELS, *bored.MODELS)
MILLED_SHAPES = (Serrations, Bevel)


def check_part(part: Part, known: Known) -> Iterator[Problem]:
    """The problems of a part's shape and stock."""
    if (part.block is None) == (part.turned is None):
        wrong = "a part is either a block or turned, not both" if part.block else "the part has no finished size"
        yield Problem(
            part.place("turned") if part.block else part.mark, wrong, "write one of the keys block and turned"
        )
        return
    bar_problems = list(check_bar(part.blank))
    yield from bar_problems
    if not bar_problems:
        yield from check_blank(part, known)
    yield from check_count(part.features)
    for feature in part.features.values():
        yield from check_feature(feature, part)


def check_bar(blank: Blank) -> Iterator[Problem]:
    """Each section of bar has its own measures."""
    for name in ("width", "thickness", "diameter"):
        given, wanted = getattr(blank, name) is not None, name in BARS[blank.shape]
        if given and not wanted:
            measures = " and ".join(BARS[blank.shape])
            yield Problem(blank.place(name), f"{blank.shape} has no {name}", f"give its {measures}")
        if wanted and not given:
            yield Problem(blank.mark, f"the blank's {name} is missing", f"write {name}: and the {name} of the bar")


def check_blank(part: Part, known: Known) -> Iterator[Problem]:
    """The finished part must be inside its blank."""
    blank = part.blank
    wanted = "flat bar" if part.block else "round bar"
    if blank.shape != wanted:
        made = "a block is milled" if part.block else "a turned part is made"
        yield Problem(blank.place("shape"), f"{made} from {wanted} here", f"write shape: {wanted}")
        return
    pairs: list[tuple[str, Expression, Expression | None]] = []
    if part.block:
        block = part.block
        pairs = [("length", block.length, blank.length), ("height", block.height, blank.width)]
        pairs.append(("thickness", block.thickness, blank.thickness))
    elif part.turned:
        pairs = [("length", part.turned.length, blank.length), ("diameter", part.turned.diameter, blank.diameter)]
    for name, finished, stock in pairs:
        need, have = known.value(finished), known.value(stock)
        if stock and need is not None and have is not None and have < need - 1e-9:
            wrong = f"the blank is {have:.6g} where the finished {name} is {need:.6g}"
            yield Problem(stock.mark, wrong, "write a larger blank")


def as_bought(part: Part, known: Known) -> frozenset[str]:
    """The diameters that stay as the bar comes: as large as the bar, so that nothing is turned off them."""
    bar = known.value(part.blank.diameter)
    if not part.turned or bar is None:
        return frozenset()
    turned = {name: known.value(f.diameter) for name, f in part.features.items() if isinstance(f, TurnedDiameter)}
    return frozenset(name for name, across in turned.items() if across is not None and abs(across - bar) < 1e-9)


def check_feature(feature: Feature, part: Part) -> Iterator[Problem]:
    """A feature suits the part and is placed on its face."""
    if isinstance(feature, Serrations):
        yield from check_serrated(feature)
    yield from check_round_work(feature, part)
    if isinstance(feature, TURNED_SHAPES) and not part.turned:
        yield Problem(feature.place("shape"), f"a block has no {feature.shape}", "use it on a turned part")
    if isinstance(feature, MILLED_SHAPES) and not part.block:
        yield Problem(
            feature.place("shape"), f"{feature.shape} are not cut on a turned part here", "use them on a block"
        )
    yield from check_milled(feature, part)
    if isinstance(feature, Placed):
        yield from check_placed(feature)
