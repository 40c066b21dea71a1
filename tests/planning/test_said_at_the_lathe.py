"""What a card tells at the lathe, no more and no less than the work asks.

Common practice, no source: a hole is begun with a centre drill where none is open in that end; a drill that follows
another is brought up to the mouth of the hole; a die wants a chamfer; the cross slide's dial is set where it is used;
a wheel is never driven against an end.
"""

from dataclasses import replace

from jobcards.definition import load_job
from jobcards.planning import plan_card
from jobcards.planning.card import Card, Cut, SetUpPlan
from jobcards.planning.words import as_text
from tests.planning.cards import CLAMP, kit_for, shipped
from tests.planning.lathe_cards import PLUG, SPINDLE, lathe_card

ROLLER = CLAMP.parents[2] / "tests" / "jobs" / "lathe-steady-rest.yml"
JOB = load_job(CLAMP.with_name("tapping-handle.yml"))
HANDLE = plan_card(JOB, kit_for(JOB))
FIRST = next(set_up for set_up in JOB.parts["arm"].route if set_up.title == "thread end")


def set_up(card: Card, set_up_id: str) -> SetUpPlan:
    """A set-up of a card."""
    return next(plan for plan in card.set_ups if plan.id == set_up_id)


def steps(card: Card, set_up_id: str, kind: str, shape: str) -> str:
    """What is said of the first cut of a kind on a shape."""
    cut: Cut = next(c for c in set_up(card, set_up_id).cuts if c.kind == kind and c.feature == shape)
    return " ".join(map(as_text, cut.steps))


def test_a_centre_hole_in_the_other_end_starts_no_drill() -> None:
    assert "Start it with a centre drill" in steps(lathe_card(SPINDLE), "spindle-tail-end", "lathe drill", "tail bore")


def test_a_drill_that_goes_into_a_bore_is_brought_to_its_mouth() -> None:
    """The die seat's drill, 7/8, meets the guide bore of 0.6255: its tip finds no metal, and no centre drill fits."""
    said = steps(shipped("die-holder"), "body-die-end", "lathe drill", "die seat")
    assert "centre drill" not in said
    assert "Bring its lips up to the mouth of the hole" in said
    assert "the tip then stands 0.188" in said  # 0.6255 / 2 / tan 59°


def test_the_first_drill_is_still_started() -> None:
    said = steps(shipped("die-holder"), "body-die-end", "lathe drill", "guide bore")
    assert said.startswith("Start it with a centre drill")


def test_a_chamfer_that_is_cut_is_not_asked_for_again() -> None:
    """The plug's stud is bevelled before its die; a stem with its corner chamfered too."""
    assert "Chamfer" not in steps(lathe_card(PLUG), "stud-stud", "thread", "thread")
    assert "Chamfer" not in steps(HANDLE, "arm-thread-end", "thread", "thread")
    bare = replace(FIRST, operations=tuple(o for o in FIRST.operations if o.cut != "stem corner"))
    arm = replace(JOB.parts["arm"], route=tuple(bare if s is FIRST else s for s in JOB.parts["arm"].route))
    without = plan_card(replace(JOB, parts={**JOB.parts, "arm": arm}), kit_for(JOB))
    assert "Chamfer the end first" in steps(without, "arm-thread-end", "thread", "thread")


def test_the_dial_is_set_only_where_something_is_brought_to_it() -> None:
    """To face an end, centre it and chamfer its corner no setting of the cross slide is used."""
    card = shipped("die-holder")
    for set_up_id in ("arbor-taper-end-centre", "body-back-end"):
        assert [touch.axis for touch in set_up(card, set_up_id).zero] == ["z"]
    assert [touch.axis for touch in set_up(card, "arbor-guide").zero] == ["x", "z"]


def test_a_wheel_is_not_touched_against_an_end() -> None:
    told = as_text(set_up(shipped("drill-bushings"), "bushing-grind-the-outside").zero[1].instruction)
    assert "level with the right end, beside it and not against it" in told


def test_a_piece_faced_at_both_ends_is_as_long_as_the_drawing() -> None:
    """The jack's screw, 2-1/4 long, held by 0.6 of its head: 1.65 stands out, with nothing more to face off."""
    hold = set_up(shipped("screw-jack"), "screw-thread").hold
    assert hold is not None
    assert hold.sizes["stick-out"].shown == "1.6500"
    assert hold.sizes["grip"].shown == "0.6000"


def test_slender_work_is_told_of_where_it_is_only_faced() -> None:
    """The roller, 1-1/4 thick, held by 3/4 of it: 6.75 / 1.25 = 5.4 diameters stand out, and are faced."""
    told = [as_text(warning) for warning in lathe_card(ROLLER).warnings]
    assert [text for text in told if "stands out 5.4 diameters" in text and "steady rest" in text]
    assert not shipped("die-holder").warnings


def test_a_minus_is_explained_only_where_there_is_one() -> None:
    """The locking screw's thread begins behind its dog: three pitches before 5 mm is 0.5 mm from the faced end."""
    lock = load_job(CLAMP.with_name("hex-locking-screw.yml"))
    behind = steps(plan_card(lock, kit_for(lock)), "screw-shank-end", "thread", "thread")
    assert "with the tool 0.500\u00a0mm from the faced end; the tool comes to rest" in behind
    assert "where a minus is off the work" in steps(shipped("screw-jack"), "screw-thread", "thread", "thread")
