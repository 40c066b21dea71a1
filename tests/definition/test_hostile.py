"""A stranger's file: whatever is in it, nothing runs, nothing hangs, and what is text stays text."""

import resource
import subprocess
import sys
import tempfile
from pathlib import Path

import pytest
from hypothesis import HealthCheck, given, settings
from hypothesis import strategies as st

from jobcards.definition import ProblemsFound, load_job
from tests.definition.write import SPACER, loaded, problems, written

ROOT = Path(__file__).resolve().parents[2]
TEXTS = [
    "```python exec print(1) ```",
    "<script>alert(1)</script> <img src=x onerror=alert(1)>",
    "{{ config.items() }} {% import os %} ${HOME} #{1+1}",
    "[link](javascript:alert(1)) ![](data:text/html,x)",
    "</data></td></table> &quot; &#x3c;",
    "__import__('os').system('true')",
]


@pytest.mark.parametrize("text", TEXTS)
@pytest.mark.parametrize("place", ["summary: A block with a hole in the middle.", "why: A thinner wall bends."])
def test_text_comes_through_as_it_was_written(tmp_path: Path, text: str, place: str) -> None:
    key = place.split(":")[0]
    quoted = "'" + text.replace("'", "''") + "'"
    job = loaded(tmp_path, (place, f"{key}: {quoted}"))
    assert text in (job.summary, job.requirements["wall"].why)


@pytest.mark.parametrize(
    "tag",
    [
        "!!python/object/apply:os.system",
        "!!python/name:os.system",
        "!!python/module:os",
        "!!map",
        "!!str",
        "!local",
        "!<tag:x>",
    ],
)
def test_tags_are_refused_and_nothing_is_made_of_them(tmp_path: Path, tag: str) -> None:
    said = problems(tmp_path, ("summary: A block", f"summary: {tag} A block"))
    assert said == ["3:10: a text beginning with ! is a tag to YAML; put the text in quotes, or leave the tag out"]


@pytest.mark.parametrize(
    ("character", "name"),
    [
        ("\u202e", "U+202E"), ("\u2066", "U+2066"), ("\u200b", "U+200B"), ("\u200d", "U+200D"), ("\ue000", "U+E000"),
        ("\x07", "U+0007"), ("\x7f", "U+007F"), ("\u00a0", "U+00A0"), ("\u2028", "U+2028"), ("\u0085", "U+0085"),
        ("\u0301", "U+0301"), ("\ufeff", "U+FEFF"), ("\U000e0041", "U+E0041"), ("\x00", "U+0000"), ("\r", "U+000D"),
    ],
)  # fmt: skip
def test_characters_that_cannot_be_seen_are_refused(tmp_path: Path, character: str, name: str) -> None:
    path = tmp_path / "job.yml"
    path.write_bytes(SPACER.replace("A block", f"A{character}block").encode())
    with pytest.raises(ProblemsFound) as caught:
        load_job(path)
    assert [str(problem) for problem in caught.value.problems] == [
        f"{path.as_posix()}:3:11: the character {name} cannot be seen; delete it and type it anew"
    ]


def test_the_characters_of_the_trade_are_welcome(tmp_path: Path) -> None:
    text = "±0.005 × 3° – — … é ü ″ ′ “quoted” ½ Ø µm €"
    assert loaded(tmp_path, ("A block with a hole in the middle.", text)).summary == text


def test_line_ends_and_a_mark_at_the_start_of_other_systems_are_read(tmp_path: Path) -> None:
    path = tmp_path / "job.yml"
    path.write_bytes(b"\xef\xbb\xbf" + SPACER.replace("\n", "\r\n").encode())
    assert load_job(path).title == "Spacer block"


def test_what_is_no_text_is_refused(tmp_path: Path) -> None:
    path = tmp_path / "job.yml"
    path.write_bytes(b"title: Clamp\nscenario: \xff\xfe\n")
    with pytest.raises(ProblemsFound, match=r":2:1: this is not UTF-8 text; save the file as UTF-8"):
        load_job(path)


def test_a_file_that_is_not_there_is_told(tmp_path: Path) -> None:
    with pytest.raises(ProblemsFound, match="the file cannot be read"):
        load_job(tmp_path / "nothing.yml")


@pytest.mark.parametrize(
    "name", ["Clamp.yml", "my clamp.yml", "clamp_2.yml", "-clamp.yml", "clamp.yaml", "clamp--2.yml", "é.yml"]
)
def test_a_file_name_is_also_an_address(tmp_path: Path, name: str) -> None:
    path = tmp_path / name
    path.write_text(SPACER, encoding="utf-8")
    with pytest.raises(ProblemsFound, match="use lower-case letters, digits and hyphens"):
        load_job(path)


LETTERS = "abcdefghijklmnopqrstuvwxyz"
BOMBS = {
    "aliases": "a: &a [x,x,x,x,x,x,x,x,x]\n" + "".join(
        f"{chr(98 + n)}: &{chr(98 + n)} [{','.join([f'*{chr(97 + n)}'] * 9)}]\n" for n in range(9)
    ),
    "brackets": "title: " + "[" * 50_000,
    "braces": "title: " + "{a: " * 20_000,
    "dashes": "- " * 30_000,
    "indents": "".join(f"{' ' * n}a:\n" for n in range(400)),
    "many values": "a: [" + "1," * 45_000 + "1]",
    "many keys": "".join(f"k{n}: 1\n" for n in range(12_000)),
    "one long word": "title: " + "a" * 90_000,
    "one long key": "a" * 90_000 + ": 1",
    "quotes": "title: " + '"' * 90_001,
    "comments": "#" * 95_000,
    "long expression": SPACER.replace("x: length/2", "x: " + "+".join(["length"] * 9_000)),
    "long nest": SPACER.replace("x: length/2", "x: " + "(" * 30_000 + "1" + ")" * 30_000),
    "digits": SPACER.replace("x: length/2", "x: " + "9" * 60_000),
    "sizes in a row": SPACER.replace("  bore:",
    "".join(f"  s{n}: s{n + 1}*1\n" for n in range(190)) + "  s190: 1\n  bore:"),
    "references of references": SPACER.replace(
        "  bore:",
        "".join(f"  s{n}: {{size: (s{n + 1} + s{n + 2})/2, reference: true}}\n" for n in range(190))
        + "  s190: 1\n  s191: 1\n  bore:",
    ),
    "unknown names": SPACER.replace(
        "  bore:",
        "".join(f"  s{n}: {'+'.join(f's1{c}{n}' for c in LETTERS * 2)}\n" for n in range(180)) + "  bore:",
    ),
    "unknown names in a part": SPACER.replace(
        "at: {x: length/2, y: height/2}",
        "at: [" + ", ".join(f"{{x: {'+'.join(f'{c}eight' for c in LETTERS)}, y: lenght{n}}}" for n in range(200)) + "]",
    ),
    "unknown keys": "".join(f"titel{n}: 1\n" for n in range(3_900)),
    "too large": "title: " + "a" * 200_000,
}  # fmt: skip


@pytest.mark.parametrize("name", BOMBS)
def test_a_file_made_to_choke_on_is_refused_within_bounds(tmp_path: Path, name: str) -> None:
    """In a process of its own that may use 300 MB, and is stopped if it hangs."""
    path = tmp_path / "bomb.yml"
    path.write_text(BOMBS[name], encoding="utf-8")
    code = (
        "import sys; from pathlib import Path; from jobcards.definition import ProblemsFound, load_job\n"
        "try: load_job(Path(sys.argv[1]))\n"
        "except ProblemsFound as told: print(len(told.problems))\n"
    )

    def bounded() -> None:
        resource.setrlimit(resource.RLIMIT_AS, (300 * 2**20, 300 * 2**20))
        resource.setrlimit(resource.RLIMIT_CPU, (10, 10))

    run = subprocess.run(
        [sys.executable, "-c", code, str(path)],
        cwd=ROOT,
        capture_output=True,
        text=True,
        preexec_fn=bounded,
        check=False,
    )
    assert run.stderr == ""
    assert run.returncode == 0
    assert 1 <= int(run.stdout) <= 600


words = st.sampled_from(
    [*"[]{}:,-#&*!|>'\"%@` \n", "\n  ", ": ", "- ", "title", "sizes", "parts", "units", "mm", "1 ±0.1", "<<", "---\n"]
)


@settings(max_examples=150, suppress_health_check=[HealthCheck.too_slow], deadline=None)
@given(st.one_of(st.lists(words, max_size=60).map("".join), st.text(max_size=80)))
def test_any_file_is_read_or_told_what_is_wrong(text: str) -> None:
    with tempfile.TemporaryDirectory() as folder:
        path = Path(folder) / "job.yml"
        path.write_bytes(text.encode("utf-8", "surrogatepass"))
        with pytest.raises(ProblemsFound) as caught:
            load_job(path)
    assert all(problem.wrong and problem.instead and problem.mark.line >= 1 for problem in caught.value.problems)


@settings(max_examples=150, suppress_health_check=[HealthCheck.too_slow], deadline=None)
@given(st.integers(0, len(SPACER) - 1), st.integers(0, 12), st.lists(words, max_size=3).map("".join))
def test_a_slip_of_the_pen_anywhere_is_read_or_told(start: int, cut: int, put: str) -> None:
    with tempfile.TemporaryDirectory() as folder:
        path = Path(folder) / "job.yml"
        path.write_text(SPACER[:start] + put + SPACER[start + cut :], encoding="utf-8")
        try:
            assert load_job(path).title
        except ProblemsFound as told:
            assert told.problems


def test_hidden_escapes_in_quotes_are_seen(tmp_path: Path) -> None:
    path = written(tmp_path, ("A block with a hole in the middle.", '"A \\u202E block"'))
    with pytest.raises(ProblemsFound, match=r"U\+202E cannot be seen"):
        load_job(path)
