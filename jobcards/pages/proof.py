"""What holds a card up: the inspection, the requirements with what upsets them, and the dry run."""

from collections.abc import Iterable, Sequence

from jobcards.pages.alternatives import name_of
from jobcards.pages.html import Html, element, heading, join, link, table
from jobcards.pages.rehearsal import Rehearsal
from jobcards.pages.writing import Writer, owned
from jobcards.planning.card import Card, InspectionRow, RequirementPlan
from jobcards.planning.number import Number


def inspection(writer: Writer, card: Card) -> list[Html]:
    """What to measure, with limits and a suitable instrument."""
    if not card.inspection and not card.tried:
        return []
    heads = ("Part", "Measure", "Aim", "Least", "Most", "With", "Finer than the limits by")
    rows = (inspection_row(writer, row) for row in card.inspection)
    to_record = element(
        "p",
        link("record/index.html", "The inspection record"),
        " is a sheet to write the measured sizes on.",
        class_="screen-only",
    )
    measured = table(heads, rows, class_="inspection stack") if card.inspection else Html("")
    tries = (
        (writer.authored(t.part), writer.line(t.what), writer.line(t.how), writer.line(t.tool)) for t in card.tried
    )
    tried = table(("Part", "Try", "How", "With"), tries, class_="tried stack") if card.tried else Html("")
    return [heading(2, "Inspection"), to_record, measured, tried]


def inspection_row(writer: Writer, row: InspectionRow) -> Sequence[Html]:
    """One line of the inspection."""
    what = join([writer.line(row.what), element("small", " ", writer.line(row.note)) if row.note else Html("")])
    ratio = join([writer.number(row.ratio), " times"]) if row.ratio else Html("")
    return (
        writer.authored(row.part),
        what,
        element("b", writer.number(row.aim)),
        writer.number(row.lower),
        writer.number(row.upper),
        writer.authored(row.instrument) if row.instrument else Html(""),
        ratio,
    )


def requirements(writer: Writer, card: Card) -> list[Html]:
    """What must come out right, its limits, and which sizes move it most."""
    if not card.requirements:
        return []
    return [
        heading(2, "What must come out right"),
        element("div", *(requirement(writer, each) for each in card.requirements), class_="requirements"),
    ]


def requirement(writer: Writer, plan: RequirementPlan) -> Html:
    """One requirement: the number, the limits, the verdict, and what upsets it."""
    rows = [
        ("Worst", span(writer, plan.worst_low, plan.worst_high)),
        ("Likely", span(writer, plan.likely_low, plan.likely_high)),
    ]
    rows = [("Wanted", wanted(writer, plan)), *rows] if plan.at_least or plan.at_most else rows
    return element(
        "section",
        element("h3", writer.authored(plan.name)),
        element(
            "p",
            writer.large(plan.value, unit=True),
            " ",
            element("span", writer.line(plan.verdict), class_="verdict" if plan.holds else "verdict fails"),
        ),
        element(
            "dl", *(element("div", element("dt", name), element("dd", what)) for name, what in rows), class_="facts"
        ),
        writer.labelled("Why:", plan.why, "why"),
        contributions(writer, plan),
        class_="requirement",
    )


def wanted(writer: Writer, plan: RequirementPlan) -> Html:
    """The limits."""
    told = [
        join([word, " ", writer.number(limit)])
        for word, limit in (("at least", plan.at_least), ("at most", plan.at_most))
        if limit is not None
    ]
    return join(told, ", ")


def span(writer: Writer, low: Number, high: Number) -> Html:
    """From a number to a number."""
    return join([writer.number(low), " to ", writer.number(high)])


def contributions(writer: Writer, plan: RequirementPlan) -> Html:
    """How much each size moves it."""
    if not plan.contributions:
        return Html("")
    rows = (
        (
            writer.authored(each.size),
            join(["× ", writer.number(each.sensitivity)]),
            join(["± ", writer.number(each.spread)]),
        )
        for each in plan.contributions
    )
    return table(("What upsets it", "Moves it", "Its tolerance adds"), rows, class_="contributions")


def dry_run_section(writer: Writer, card: Card, rehearsals: Iterable[Rehearsal]) -> list[Html]:
    """What came of cutting each part out of a solid with the numbers of this card."""
    rows = [rehearsal_row(writer, card, each) for each in rehearsals]
    if not rows:
        return []
    told = (
        "Each part was cut out of a solid with the numbers printed here, rounded as you read them, "
        "and held against the drawing."
    )
    heads = ("Part", "Off the drawing by at most", "The readout allows", "Volume that differs", "Result")
    return [heading(2, "Dry run"), element("p", told), table(heads, rows, class_="dry-run stack")]


def stop_notice(rehearsals: Sequence[Rehearsal]) -> Html:
    """At the head of a card whose dry run does not agree with its drawing; nothing when all is well."""
    if all(each.passed for each in rehearsals):
        return Html("")
    told = (
        "The dry run of this card does not agree with its drawing. Do not cut to it; its reasons stand under Dry run."
    )
    return element("div", element("p", told), class_="caution", role="alert")


def rehearsal_row(writer: Writer, card: Card, rehearsal: Rehearsal) -> Sequence[Html]:
    """The dry run of one part."""
    titles = {cut.id: cut.title for set_up in card.every_set_up for cut in set_up.cuts}
    skipped = [
        element("div", "Not dry-run: ", writer.line(titles[each]), class_="not-dry-run")
        for each in rehearsal.skipped
        if each in titles
    ]
    troubles = [element("div", owned(each, "dry run")) for each in rehearsal.troubles]
    verdict = "agrees; nothing was hit" if rehearsal.passed else "does not agree: do not cut to this card"
    return (
        name_of(writer, card, rehearsal.part_id),
        element("b", writer.number(rehearsal.deviation)),
        writer.number(rehearsal.allowed),
        writer.number(rehearsal.difference),
        join(
            [element("span", verdict, class_="verdict" if rehearsal.passed else "verdict fails"), *troubles, *skipped]
        ),
    )
