"""Authored texts: emphasis and sizes, and nothing else."""

import pytest
from hypothesis import given
from hypothesis import strategies as st

from jobcards.definition.text import plain, sizes_meant

SIZES = {"length": 1, "pin length": 2}


@pytest.mark.parametrize(
    ("text", "pieces"),
    [
        ("", []),
        ("Plain.", [("words", "Plain.")]),
        ("*Both* ends", [("emphasis", "Both"), ("words", " ends")]),
        ("Keep *both ends* free", [("words", "Keep "), ("emphasis", "both ends"), ("words", " free")]),
        ("{pin length}", [("size", "pin length")]),
        ("{length}{pin length}", [("size", "length"), ("size", "pin length")]),
        ("3 * 4 * 5", [("words", "3 * 4 * 5")]),
        ("**bold**", [("words", "*"), ("emphasis", "bold"), ("words", "*")]),
        ("{width} {length", [("words", "{width} {length")]),
        ("{{length}}", [("words", "{{length}}")]),
        ("*{length}*", [("words", "*"), ("size", "length"), ("words", "*")]),
        ("*a", [("words", "*a")]),
    ],
)
def test_a_text_is_cut_into_pieces(text: str, pieces: list[tuple[str, str]]) -> None:
    assert plain(text, SIZES) == pieces


HOSTILE = [
    "```python exec\nimport os\n```",
    "<script>alert(1)</script>",
    "<img src=x onerror=alert(1)>",
    "{{ config.items() }}",
    "{% raw %}",
    "${HOME}",
    "[a link](javascript:alert(1))",
    "![](http://example.org/x.png)",
    "<!-- -->",
    "&lt;b&gt;",
    '=== "tab"',
    '--8<-- "file"',
    "# heading",
    "{: onclick=alert(1)}",
    "`{length.__class__}`",
]


@pytest.mark.parametrize("text", HOSTILE)
def test_markup_and_code_stay_characters(text: str) -> None:
    assert plain(text, SIZES) == [("words", text)]


@given(st.text("ab *{}length", max_size=60))
def test_no_character_is_lost(text: str) -> None:
    marks = {"words": "{}", "emphasis": "*{}*", "size": "{{{}}}"}
    assert (
        "".join(
            marks[kind].replace("{}", piece, 1) if kind != "size" else f"{{{piece}}}"
            for kind, piece in plain(text, SIZES)
        )
        == text
    )


@given(st.text(max_size=80))
def test_any_text_is_cut_and_put_together_again(text: str) -> None:
    back = {"words": "", "emphasis": "*", "size": ""}
    assert "".join(back[kind] + piece + back[kind] for kind, piece in plain(text, {})) == text


@pytest.mark.parametrize(
    ("text", "meant"),
    [
        ("at {pin lenght}", [("pin lenght", 4)]), ("{ length }", [(" length ", 1)]),
        ("{pin-length}", [("pin-length", 1)]),
        ("{{x}} {% y %} ${HOME}", []), ("{3 mm}", []), ("{a} and {b}", [("a", 1), ("b", 9)]),
    ],
)  # fmt: skip
def test_a_misspelt_size_is_noticed_and_a_template_is_not(text: str, meant: list[tuple[str, int]]) -> None:
    assert list(sizes_meant(text)) == meant
