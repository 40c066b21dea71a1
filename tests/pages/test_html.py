"""Text stays text: nothing that an author can write becomes an element, an attribute, a link or a program."""

from pathlib import Path

import pytest
from hypothesis import given
from hypothesis import strategies as st

from jobcards.pages.card import card_page
from jobcards.pages.html import Html, drawing, element, escape, heading, link, page, plain, table
from jobcards.pages.record import record_page
from jobcards.pages.wall import wall_page
from tests.pages.engine import to_html
from tests.pages.reading import PageReader
from tests.pages.small_card import small_card

HOSTILE = [
    '```python exec="1"\nopen({trace!r}, "w")\n```',
    '~~~python exec="1"\nopen({trace!r}, "w")\n~~~',
    "<script>alert(1)</script>",
    '<img src=x onerror="alert(1)">',
    "</div></section><iframe src=//example.org></iframe>",
    "{{ config.site_url }} {% include 'x' %}",
    "{: onclick=alert(1) .x #y }",
    "[x](javascript:alert(1)) ![y](http://example.org/z.png)",
    "<http://example.org> http://example.org www.example.org a@example.org",
    '--8<-- "mkdocs.yml"',
    "::: module.name",
    "<!-- <b> --> <? x ?> <![CDATA[ y ]]>",
    "&lt;b&gt; &#60;i&#62; &amp;lt;",
    "# heading\n\n- list\n> quote | a | b |\n|---|---|",
    "**bold** _em_ `code` ~~del~~ ^^ins^^ ==mark== :smile: [^1] \\* $x$",
    '!!! note "x"\n    y\n??? z',
    "\" ' onmouseover=alert(1) x=",
]


@pytest.fixture(params=HOSTILE)
def said(request: pytest.FixtureRequest, tmp_path: Path) -> str:
    return str(request.param).replace("{trace!r}", repr(str(tmp_path / "it-ran")))


@pytest.mark.parametrize("write", [card_page, wall_page, record_page])
def test_a_hostile_definition_shows_as_it_was_typed(write, said: str, tmp_path: Path) -> None:  # noqa: ANN001
    harmless, hostile = (PageReader(to_html(without_head(write(small_card(words)))), True) for words in ("words", said))
    assert hostile.elements == harmless.elements
    assert hostile.attributes == harmless.attributes
    assert leading_out(hostile) == leading_out(harmless)
    assert len(hostile.links) == len(harmless.links)
    assert hostile.ids == harmless.ids or {*hostile.ids} - {*harmless.ids} <= heading_ids(hostile)
    assert " ".join(said.split()) in hostile.text
    assert not (tmp_path / "it-ran").exists()


def leading_out(reader: PageReader) -> list[str]:
    """Links, less those that the engine hangs on each heading."""
    return [place for place in reader.links if not place.startswith("#") or place.startswith("#w-")]


def without_head(written: str) -> str:
    """The page without the front matter, which the engine takes off first."""
    return written.split("---\n\n", 1)[-1] if written.startswith("---\n") else written


def heading_ids(reader: PageReader) -> set[str]:
    """Ids that the engine gives to headings: letters, digits and hyphens from their words."""
    return {each for each in reader.ids if all(c.isalnum() or c in "-_" for c in each)}


@given(st.text(max_size=60))
def test_any_text_in_a_page_comes_out_as_it_went_in(text: str) -> None:
    written = page([heading(2, "x ", element("b", text)), element("div", element("p", text, data_said=text))])
    read = PageReader(to_html(written), True)
    assert read.elements <= {"h2", "b", "a", "div", "p"}
    wanted = " ".join("".join(c for c in text if c.isprintable() or c.isspace()).split())
    assert read.text.count(wanted) >= 2


@given(st.text(max_size=60))
def test_plain_is_the_inverse_of_escape(text: str) -> None:
    kept = "".join(c for c in text if c.isprintable() or c.isspace())
    assert "".join(plain(Html(escape(text))).split()) == "".join(kept.split())


@pytest.mark.parametrize(
    "place", ["javascript:alert(1)", "http://example.org", "//example.org", "data:text/html,x", 'x" onclick="y', "a b"]
)
def test_only_places_on_this_site_can_be_linked(place: str) -> None:
    with pytest.raises(ValueError, match="no place on this site"):
        link(place, "x")


def test_only_known_elements_and_attributes() -> None:
    with pytest.raises(ValueError, match="script"):
        element("script", "x")
    with pytest.raises(ValueError, match="onclick"):
        element("p", "x", onclick="y")
    with pytest.raises(ValueError, match="style"):
        element("p", "x", style="y")


@pytest.mark.parametrize(
    "inner", ["<script>x</script>", "<a href='x'>y</a>", "<g onload='x'/>", "<style>x</style>", "<image href='x'/>"]
)
def test_a_drawing_holds_nothing_but_a_drawing(inner: str) -> None:
    with pytest.raises(ValueError, match="more than a drawing"):
        drawing(f"<svg xmlns='http://www.w3.org/2000/svg'>{inner}</svg>")


def test_cells_are_labelled_with_their_heads() -> None:
    assert table(("a & b",), [("x",)], class_="t") == (
        '<table class="t"><thead><tr><th scope="col">a &#38; b</th></tr></thead>'
        '<tbody><tr><td data-label="a &#38; b">x</td></tr></tbody></table>'
    )
