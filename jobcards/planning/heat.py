"""Heat treatment: heats, colours, soaks, and what must not be left half done."""

from jobcards.definition import processes as asked
from jobcards.definition import shop as kit
from jobcards.definition.job import SetUp
from jobcards.definition.model import Mark
from jobcards.definition.problem import advise
from jobcards.planning.authored import authored
from jobcards.planning.card import Cut, SetUpPlan
from jobcards.planning.number import WHOLE, Number, Show
from jobcards.planning.route import Route, finished
from jobcards.planning.words import Authored, Line, line
from jobcards.planning.work import Work
from jobcards.source import Source
from jobcards.tables import table
from jobcards.trade import heat, heat_tables, times
from jobcards.trade.formula import CannotBeDone
from jobcards.trade.heat_tables import Hardening
from jobcards.trade.materials import material
from jobcards.trade.speeds_table import TableValue

TENTHS = Show(places=1)


def heat_set_up(route: Route, set_up: SetUp, set_up_id: str, furnace: kit.Furnace) -> SetUpPlan | None:
    """Hardening or case hardening, and tempering."""
    assert set_up.heat is not None
    work, treat = route.work, set_up.heat
    try:
        known = heat_tables.hardening(route.part.material)
    except CannotBeDone as error:
        work.problem(set_up.place("heat"), str(error), "write another material, or leave the heat treatment out")
        return None
    suits(work, treat, route.part.material)
    cuts: list[Cut] = []
    if treat.harden:
        cuts.append(harden(route, f"{set_up_id}-harden", treat.harden, known))
    if treat.case_harden:
        cuts.append(case_harden(route, f"{set_up_id}-case", treat.case_harden, known))
    if treat.temper:
        made = temper(route, f"{set_up_id}-temper", treat.temper, known)
        cuts += [made] if made else []
    for cut in cuts:
        check_furnace(work, set_up.place("machine"), furnace, cut.sizes["temperature"])
    quenched = treat.harden or treat.case_harden
    after = [line("Go straight on to tempering: as quenched the work is as brittle as glass.")]
    return finished(
        route, set_up, set_up_id, "heat", None, (), tuple(cuts), after=after if quenched and not treat.temper else []
    )


def suits(work: Work, treat: asked.Heat, called: str) -> None:
    """Low-carbon steel hardens in a case only, the others right through."""
    known = material(called)
    if treat.harden and known.hardening == "case":
        work.problem(treat.place("harden"), f"{known.name} does not harden through", "write case harden:")
    if treat.case_harden and known.hardening != "case":
        work.problem(treat.place("case_harden"), f"{known.name} takes no case: it hardens through", "write harden:")


def degrees(work: Work) -> str:
    """The unit of heat in this job."""
    return "°F" if work.unit == "in" else "°C"


def given_heat(work: Work, number_id: str, value: float, label: str, source: Source | str, formula: str) -> Number:
    """A heat in the job's unit: as the definition has it, or a table's in °F turned over."""
    return work.ledger.given(number_id, value, degrees(work), label, source, formula=formula, show=WHOLE)


def table_heat(work: Work, number_id: str, fahrenheit: float, label: str, source: Source | str) -> Number:
    """A heat of a table, which is in °F."""
    value = heat_tables.heat_shown(fahrenheit, degrees(work))
    return given_heat(work, number_id, value, label, source, "from the table")


def in_fahrenheit(work: Work, temperature: Number) -> float:
    """A heat as the tables of colours want it."""
    return temperature.value if work.unit == "in" else heat.fahrenheit_from_celsius(temperature.value)


def wanted_heat(work: Work, cut_id: str, to: float, known: Hardening) -> Number:
    """The heat the definition asks for, or the middle of the material's range."""
    label = f"heat for {known.material}"
    if to:
        return given_heat(work, f"{cut_id}.heat", to, label, "the job's definition", "as drawn")
    return table_heat(work, f"{cut_id}.heat", known.middle, label, known.source)


def colour_of(work: Work, temperature: Number) -> Authored:
    """The colour of steel at a heat."""
    return Authored(heat_tables.heat_colour(in_fahrenheit(work, temperature)), "table")


def section(route: Route) -> Number:
    """The section that decides the soak: a block's least size, a bar's diameter."""
    sizes = route.shape.sizes
    if route.shape.kind == "turned":
        return sizes["diameter"]
    return min((sizes[name] for name in ("length", "height", "thickness")), key=lambda n: n.value)


def soak(route: Route, cut_id: str, minutes: float, known: Hardening) -> Number:
    """Minutes at heat: as written, or by the section."""
    work = route.work
    if minutes:
        return work.ledger.given(
            f"{cut_id}.soak", minutes, "min", "soak at heat", "the job's definition", formula="as drawn", show=WHOLE
        )
    each = TableValue(known.soak_for_each(work.unit), f"min/{work.unit}", known.source)
    by_section = work.looked_up(f"{cut_id}.for-each", each, "soak for each unit of section", TENTHS)
    shortest = TableValue(known.least, "min", known.source)
    least = work.looked_up(f"{cut_id}.least", shortest, "shortest soak", WHOLE)
    return work.of(cut_id).rate(
        "soak",
        heat.soak_time,
        "soak at heat",
        "min",
        section=section(route),
        for_each=by_section,
        least=least,
        show=WHOLE,
    )


def quench_words(work: Work, written: str, known: Hardening) -> Line:
    """What it is quenched in."""
    return authored(written, work.sizes) if written else (Authored(known.quench, "table"),)


def timed(route: Route, cut_id: str, held: Number) -> dict[str, Number]:
    """The time of a heat: the soak and getting there."""
    work = route.work
    return {"time": work.of(cut_id).time(times.time_of_heat, held=held, setting=work.rule("set-up time"))}


def harden(route: Route, cut_id: str, written: asked.Harden, known: Hardening) -> Cut:
    """Heated through, soaked, quenched."""
    work = route.work
    temperature = wanted_heat(work, cut_id, written.to, known)
    held = soak(route, cut_id, written.soak, known)
    colour = colour_of(work, temperature)
    steps = (
        line("Wrap or coat the work against scale. Put it in cold, or let the furnace fall, so that it heats slowly."),
        line("Bring it to {heat}, {colour} in a dim light.", heat=temperature, colour=colour),
        line(
            "From when it glows like the furnace hold it {soak}; its thickest section is {section}.",
            soak=held,
            section=section(route),
        ),
        line("Quench in {quench}, straight down, without a pause.", quench=quench_words(work, written.quench, known)),
        (Authored(known.note[:1].upper() + known.note[1:] + ".", "table"),),
    )
    return Cut(
        cut_id,
        "harden",
        "",
        line("Harden"),
        None,
        (),
        {"temperature": temperature, "soak": held},
        timed(route, cut_id, held),
        steps,
        check=line(
            "Before the quench try a magnet: while it still holds, the steel is too cold; it lets go below the "
            "hardening heat, so go on to {heat}. After it, a file slides and does not bite.",
            heat=temperature,
        ),
    )


def case_harden(route: Route, cut_id: str, written: asked.CaseHarden, known: Hardening) -> Cut:
    """Packed in compound at heat for the time that the depth of case wants, then quenched."""
    work = route.work
    temperature = wanted_heat(work, cut_id, written.at, known)
    wanted = work.expression(f"{cut_id}.depth", written.depth, "total depth of case on the finished face")
    ground = max(route.ground.values(), key=lambda n: n.value, default=None)
    case = wanted
    if ground is not None:
        case = work.of(cut_id).length(
            "case",
            heat.case_to_make,
            "depth of case to make, with what is ground off",
            wanted=wanted,
            ground_off=ground,
        )
    formula = heat.hours_for_case if work.unit == "in" else heat.hours_for_case_metric
    hours = work.of(cut_id).rate(
        "hours", formula, "time at heat", "h", depth=case, temperature=temperature, show=TENTHS
    )
    minutes = work.of(cut_id).rate("minutes", times.minutes_of_hours, "time at heat", "min", hours=hours, show=WHOLE)
    steps = (
        line("Pack the work in compound in a closed box; stop off with copper or clay what must stay soft."),
        line("Bring the box to {heat}, {colour}.", heat=temperature, colour=colour_of(work, temperature)),
        line(
            "Hold it {hours} from when the box is hot through: that makes a total depth of case of {case}, to where "
            "the steel is as it was. The depth that is really hard is about two thirds of it.",
            hours=hours,
            case=case,
        ),
        line("Quench in {quench}.", quench=quench_words(work, written.quench, known)),
    )
    return Cut(
        cut_id,
        "case harden",
        "",
        line("Case-harden"),
        None,
        (),
        {"temperature": temperature, "case": case, "time at heat": hours},
        timed(route, cut_id, minutes),
        steps,
        check=line("Break a test piece that was packed with the work and look at the depth of the fine grain."),
    )


def temper(route: Route, cut_id: str, written: asked.Temper, known: Hardening) -> Cut | None:
    """Drawn at once to a heat or colour."""
    work = route.work
    colours = [row["colour"] for row in table("temper_colours").rows]
    plain = written.to.replace(".", "", 1)
    if plain.isdigit():
        temperature = given_heat(
            work, f"{cut_id}.heat", float(written.to), "tempering heat", "the job's definition", "as drawn"
        )
        colour = temper_colour(work, temperature)
    elif written.to in colours:
        found = heat_tables.temper_temperature(written.to)
        temperature = table_heat(work, f"{cut_id}.heat", found.value, "tempering heat", found.source)
        colour = Authored(written.to, "table")
    else:
        work.problem(
            written.place("to"), f"“{written.to}” is no heat and no temper colour", advise(written.to, colours)
        )
        return None
    held = soak(route, cut_id, written.soak, known)
    slowly = line("Bring it slowly to {heat} and hold it {soak}.", heat=temperature, soak=held)
    if colour:
        steps = [
            line("At once, within the hour: polish a face bright, so that the colour can be seen."),
            slowly,
            line("Without an oven: heat it from the thick end and quench when {colour} comes.", colour=colour),
        ]
        check = line("The colour is even from end to end; a fine file just marks it.")
    else:
        steps = [
            line("At once, within the hour. No temper colour shows this heat: go by a thermometer beside the work."),
            slowly,
        ]
        check = line("Try a fine file where it does no harm, and compare with a piece that was only quenched.")
    steps.append(line("Let it cool in still air."))
    return Cut(
        cut_id,
        "temper",
        "",
        line("Temper"),
        None,
        (),
        {"temperature": temperature, "soak": held},
        timed(route, cut_id, held),
        tuple(steps),
        why=line("As quenched the work is full of stress and may crack by itself."),
        check=check,
    )


def temper_colour(work: Work, temperature: Number) -> Authored | None:
    """The temper colour that comes at a heat, if one does."""
    try:
        return Authored(heat_tables.temper_colour(in_fahrenheit(work, temperature)), "table")
    except CannotBeDone:
        return None


def check_furnace(work: Work, mark: Mark, furnace: kit.Furnace, temperature: Number) -> None:
    """The furnace gets so hot."""
    inch_shop = work.shop.units == "inch"
    hottest = furnace.hottest
    if inch_shop != (work.unit == "in"):
        hottest = heat.celsius_from_fahrenheit(hottest) if inch_shop else heat.fahrenheit_from_celsius(hottest)
    if temperature.value > hottest + 0.5:
        work.problem(
            mark, f"the furnace gets to {hottest:.0f} and the work wants {temperature.shown} {temperature.unit}",
            "take a hotter one, or another steel",
        )  # fmt: skip
