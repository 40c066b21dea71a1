"""A sawn blank shaped square on all its faces, held as at the mill."""

from jobcards.definition import shop as kit
from jobcards.definition.job import SetUp
from jobcards.planning import rates
from jobcards.planning.card import Cut, HoldPlan, SetUpPlan
from jobcards.planning.grind import size_to_leave
from jobcards.planning.mill.square import face_words, held_for, hold_for, reason, taken_off
from jobcards.planning.mill.zero import OPPOSITE
from jobcards.planning.number import Number
from jobcards.planning.orientation import Lie, lie
from jobcards.planning.route import Route, finished
from jobcards.planning.shaper.cut import plan_ram, ram_words, shaping_time
from jobcards.planning.words import Words, line
from jobcards.planning.work import slug
from jobcards.trade.setups import FACES


def shaper_square(route: Route, set_up: SetUp, set_up_id: str, shaper: kit.Shaper) -> SetUpPlan:
    """One cut for each face in the order given."""
    work = route.work
    assert set_up.square_up is not None
    done: list[str] = []
    off: dict[str, Number] = {}
    cuts: list[Cut] = []
    for face in set_up.square_up.order:
        cut_id = f"{set_up_id}-{slug(face)}"
        end = FACES[face][0] == 0
        up, jaw = held_for(face, done, end, route.shape)
        lying = lie(up, jaw, route.shape)
        second = OPPOSITE[face] in done
        sizes = {"leave": size_to_leave(work, cut_id, route.shape, face, route.ground)} if second else {}
        sizes["take off"] = taken_off(work, cut_id, face, route.blank, route.ground.get(face))
        sizes.update({"for grinding": route.ground[face]} if face in route.ground else {})
        hold = hold_for(work, cut_id, set_up, up, jaw, lying, off, route.shape, route.blank, sizes["take off"], end)
        cuts.append(shaped_face(route, set_up, shaper, cut_id, face, end, second, sizes, lying, hold, done))
        done.append(face)
        off[face] = sizes["take off"]
    route.standing = {face: route.ground[face] for face in set_up.square_up.order if face in route.ground}
    return finished(route, set_up, set_up_id, "square", None, (), tuple(cuts))


def shaped_face(
    route: Route,
    set_up: SetUp,
    shaper: kit.Shaper,
    cut_id: str,
    face: str,
    end: bool,
    second: bool,
    sizes: dict[str, Number],
    lying: Lie,
    hold: HoldPlan,
    done: list[str],
) -> Cut:
    """One face, the ram stroking away from you; an end is fed down with the tool slide."""
    work, asked = route.work, set_up.square_up
    assert asked is not None
    name = asked.end_cutter if end and asked.end_cutter else asked.cutter
    if work.shop.cutters[name].kind != "shaper tool":
        work.problem(asked.place("cutter"), f"“{name}” is no tool of a shaper", "take a shaper tool")
    ram = plan_ram(route, set_up, cut_id, name, lying.along("y"), shaper)
    passes = rates.plan_depths(work, cut_id, route.part.material, sizes["take off"], "shaping", None)
    feed = work.rule("shaper down feed" if end else "shaping feed")
    width = lying.along("z" if end else "x")
    time = shaping_time(work, cut_id, width, feed, ram["strokes"], passes["all passes"])
    if end:
        sizes["overhang"] = work.rule("overhang")
    words = [
        *face_words(face, end, second, hold, sizes, passes, done),
        *ram_words(ram, name),
    ]
    if end:
        words.append(line("Feed down {feed} each stroke with the tool slide, the head upright.", feed=feed))
    else:
        words.append(line("Feed the table {feed} each stroke.", feed=feed))
    return Cut(
        cut_id,
        "end" if end else "face",
        f"{face} face",
        line("Shape the {face} {how}", face=face, how="with the tool fed down" if end else "level"),
        rates.plan_cutter(work, name, work.shop.cutters[name]),
        (),
        sizes,
        {**ram, **passes, "table feed": feed, "time": time},
        tuple(words),
        (Words(reason(face, end, done, lying.shape)),),
        hold=hold,
        face=face,
    )
