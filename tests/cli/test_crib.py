"""`bookmaker crib` and `bookmaker explain`: a path told on paper and on the screen."""

from __future__ import annotations

import json
import re
from pathlib import Path

import pytest
from pypdf import PdfReader

from tests.cli.running import run


def words(file: Path) -> str:
    return " ".join(" ".join(page.extract_text().split()) for page in PdfReader(file).pages)


def test_a_crib_has_the_story_the_setter_and_the_rules(tmp_path: Path) -> None:
    demo = Path(__file__).parents[2] / "demo_book"
    file = tmp_path / "crib.pdf"
    result = run("crib", demo, "spring-tide", "--out", file)
    assert result.exit_code == 0, result.output
    assert f"{file}: " in result.stdout
    said = words(file)
    assert "Old Heron" in said and "Fill the grid so that every row, column and box" in said
    story = json.loads(run("explain", demo, "spring-tide", "--format", "json").stdout)
    for passage in story["passages"]:
        assert passage["text"].split(". ")[-1].replace(" ", "") in said.replace(" ", "")


@pytest.mark.parametrize("layout", ["letter-book", "a5-book", "a4-large-print"])
def test_it_is_printed_in_any_book_layout(folder: Path, tmp_path: Path, layout: str) -> None:
    file = tmp_path / "crib.pdf"
    result = run("crib", folder, "worked", "--out", file, "--layout", layout)
    assert result.exit_code == 0, result.output
    assert "The solution" in words(file)


def test_the_same_crib_is_the_same_file(folder: Path, tmp_path: Path) -> None:
    one, other = tmp_path / "one.pdf", tmp_path / "other.pdf"
    assert run("crib", folder, "worked", "--out", one).exit_code == 0
    assert run("crib", folder, "worked", "--out", other).exit_code == 0
    assert one.read_bytes() == other.read_bytes()


@pytest.mark.parametrize(
    ("arguments", "code", "said"),
    [
        (("crib", "worked"), 2, "--out"),
        (("crib", "wroked", "--out", "a.pdf"), 1, "did you mean “worked”?"),
        (("explain", "wroked"), 1, "did you mean “worked”?"),
        (("explain", "worked", "--format", "pdf"), 2, "markdown"),
    ],
)
def test_wrong_usage(folder: Path, arguments: tuple[str, ...], code: int, said: str) -> None:
    command, *rest = arguments
    result = run(command, folder, *rest)
    assert (result.exit_code, said in result.stderr) == (code, True)


def test_explain_in_three_formats(folder: Path) -> None:
    text, markdown = (run("explain", folder, "worked", "--format", form).stdout for form in ("text", "markdown"))
    data = json.loads(run("explain", folder, "worked", "--format", "json").stdout)
    assert text.startswith("Worked\n\n") and markdown.startswith("# Worked\n\n")
    for passage in data["passages"]:
        assert passage["text"] in " ".join(text.split()) and passage["text"] in markdown


def test_a_crib_and_the_screen_number_the_steps_alike(tmp_path: Path) -> None:
    """Every letter over the profile has its picture, and pictures stand at steps that the screen numbers, too."""
    demo = Path(__file__).parents[2] / "demo_book"
    file = tmp_path / "crib.pdf"
    assert run("crib", demo, "soundings", "--out", file).exit_code == 0
    said = words(file)
    pictures = re.findall(r"\b([A-Z]{1,2}) steps? (\d+)(?:–\d+)? ·", said)
    letters = [letter for letter, _ in pictures]
    assert len(letters) > 10 and letters == sorted(letters, key=lambda letter: (len(letter), letter))
    assert letters == [*map(label, range(len(letters)))]
    data = json.loads(run("explain", demo, "soundings", "--full", "--format", "json").stdout)
    numbered = {sentence["steps"][0] for p in data["passages"] for sentence in p["sentences"] if sentence["steps"]}
    assert {int(step) for _, step in pictures} <= numbered


def label(at: int) -> str:
    return chr(ord("A") + at) if at < 26 else label(at // 26 - 1) + label(at % 26)


def test_steps_are_numbered_on_request(folder: Path) -> None:
    plain, numbered = (run("explain", folder, "worked", *more).stdout for more in ((), ("--steps",)))
    assert re.search(r"(?m)^1[ –]", numbered) and not re.search(r"(?m)^1[ –]", plain)
    assert re.search(r"(?m)^(\d+–)?51 ", numbered)
