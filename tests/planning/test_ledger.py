"""The ledger: one number an id, every digit owned."""

import pytest

from jobcards.planning.number import Ledger, NameTaken, Show
from jobcards.planning.words import Words, as_text, line
from jobcards.source import COMMON
from jobcards.tables import table
from jobcards.trade import locating
from jobcards.trade.formula import FORMULAS
from tests.planning.cards import clamp


def test_the_same_id_twice_must_be_the_same_number() -> None:
    ledger = Ledger("in")
    first = ledger.given("tip", 0.2, "in", "tip", COMMON)
    assert ledger.given("tip", 0.2, "in", "tip", COMMON) == first
    with pytest.raises(NameTaken):
        ledger.given("tip", 0.25, "in", "tip", COMMON)


def test_a_worked_number_carries_formula_inputs_and_source() -> None:
    """Tip 0.200, edge at zero, touched from the minus side: -0.100. Common practice, no source."""
    ledger = Ledger("in")
    tip = ledger.given("tip", 0.2, "in", "tip", COMMON)
    preset = ledger.work(
        "x", locating.preset_at_touch, "preset", "in", edge=0.0, tip=tip, side=-1, show=Show(step=0.0005)
    )
    assert (preset.shown, preset.published) == ("−0.1000", -0.1)
    assert preset.inputs == ("x.edge", "tip", "x.side")
    assert "tip" in preset.formula
    assert (preset.key, preset.table, tip.key) == ("locating.preset_at_touch", "", "")


def test_a_number_from_a_table_says_which() -> None:
    chart = table("cutting_speeds")
    found = Ledger("in").given("speed", 80.0, "ft/min", "cutting speed", chart.source_of(chart.rows[0]))
    assert (found.table, found.key) == ("cutting_speeds", "")
    assert found.source == str(chart.source)


def test_every_formula_and_table_of_a_card_is_known() -> None:
    worked, looked_up = ({getattr(n, what) for n in clamp().ledger} - {""} for what in ("key", "table"))
    assert {"locating.preset_at_touch", "partial_bores.relieved_swing"} <= worked <= set(FORMULAS)
    assert {"cutting_speeds", "allowances", "fits_ansi_clearance"} <= looked_up
    assert all(table(name).rows for name in looked_up)


def test_our_own_words_hold_no_digit() -> None:
    with pytest.raises(ValueError, match="unowned"):
        Words("about 3 turns")
    with pytest.raises(ValueError, match="unowned"):
        line("go {where}", where="2 left")


def test_a_line_reads_with_its_units() -> None:
    ledger = Ledger("in")
    written = line(
        "Set {x} at {a}.", x=ledger.given("x", 0.5, "in", "x", COMMON), a=ledger.given("a", 30, "deg", "a", COMMON)
    )
    assert as_text(written) == "Set 0.5000\u00a0in at 30°."


def test_a_whole_angle_is_shown_as_one() -> None:
    """45° as it is written and 90° less 45° too; a half and a near miss keep two places, a sine bar three."""
    ledger = Ledger("in")
    shown = [
        ledger.given(f"angle-{count}", value, "deg", "an angle", "the job's definition", show=Show(places=places)).shown
        for count, (value, places) in enumerate(((45.0, None), (22.5, None), (44.999, None), (45.0, 3)))
    ]
    assert shown == ["45", "22.50", "45.00", "45.000"]
