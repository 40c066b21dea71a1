"""Tapered bores are measured with balls: which balls of a set lie in one, and how far below the face."""

from jobcards.planning.card import FeaturePlan
from jobcards.planning.general_limits import give_limits
from jobcards.planning.measured import Measured
from jobcards.planning.number import Number
from jobcards.planning.words import line
from jobcards.planning.work import Work, from_job
from jobcards.trade import taper_bores

ENDS = ("lower", "upper")


def ball_measures(work: Work, feature_id: str, feature: FeaturePlan) -> list[Measured]:
    """How far the tops of the largest and the smallest ball that fit lie below the face; nothing where none fits."""
    sizes, step = feature.sizes, work.rule("ball step")
    fitting = taper_bores.balls_that_fit(
        sizes["large"].value, sizes["half angle"].value, sizes["depth"].value, step.value, feature.through
    )
    chosen = {"larger": fitting[-1:], "smaller": fitting[:1] if len(fitting) > 1 else []}
    out: list[Measured] = []
    for which, numbers in chosen.items():
        for number in numbers:
            ball, top = ball_in(work, feature_id, feature, which, number, step)
            told = line("{name}, face to the top of a ball of {ball}", name=from_job(feature.name), ball=ball)
            out.append(Measured(told, top, "depth", pin=ball))
    return out


def ball_in(
    work: Work, feature_id: str, feature: FeaturePlan, which: str, number: int, step: Number
) -> tuple[Number, Number]:
    """A ball, and how far its top lies below the face: the wider the mouth, the lower."""
    of, sizes = work.of(feature_id), feature.sizes
    count = work.ledger.counted(f"{feature_id}.{which}-ball.number", number, f"{feature.name}: {which} ball of its set")
    ball = of.length(f"{which}-ball", taper_bores.ball_of_set, f"{feature.name}: {which} ball", step=step, number=count)
    label = f"{feature.name}: face to the top of the {which} ball"
    top = of.length(
        f"{which}-ball.top", taper_bores.ball_top, label, mouth=sizes["large"], ball=ball, half=sizes["half angle"]
    )
    give_limits(work, sizes["large"])
    for end in ENDS:
        limit = f"{sizes['large'].id}.{end}"
        if limit in work.ledger:
            work.of(top.id).length(
                end, taper_bores.ball_top, f"{label}, {end} limit", mouth=work.ledger[limit], ball=ball,
                half=sizes["half angle"],
            )  # fmt: skip
    return ball, top
