"""The commands as a host types them: what is printed, what is written, and the code each ends with."""

from __future__ import annotations

import json
from pathlib import Path

import click
import pytest
from click.testing import CliRunner, Result
from pypdf import PdfReader

from bookmaker.cli import main
from bookmaker.rules import kinds
from tests.published import MISPRINT, MISPRINT_SOLUTIONS, SEVENTEEN

BOOK = """\
book:
  title: A Small Book
  permission: ours
puzzles:
  - id: six
    title: Six by Six
    setter: Wick
    size: 6
    givens: |
      5 . .  . 4 6
      . . .  1 . .
      . 1 .  . . .
      . . .  . 3 .
      . . 2  . . .
      1 6 .  . . 2
"""


def run(*words: object) -> Result:
    return CliRunner().invoke(main, [str(word) for word in words])


@pytest.fixture
def book(tmp_path: Path) -> Path:
    (tmp_path / "book.yaml").write_text(BOOK, encoding="utf-8")
    return tmp_path


def test_proof_prints_a_line_a_puzzle(book: Path) -> None:
    result = run("proof", book)
    assert result.exit_code == 0, result.output
    head, row = result.stdout.splitlines()
    assert head.split() == ["no.", "title", "setter", "rules", "verdict", "band", "difficulty", "hardest", "step"]
    assert row.startswith("  1  Six by Six  Wick    classic  unique   Stroll")


@pytest.mark.parametrize(
    ("fields", "called"),
    [
        (["rules: {king: yes}"], "king"),
        (["boxes: none"], "Latin square"),
        (["regions: aaaabb aabbbb ccdddd ccccdd eeefff eeefff"], "irregular"),
        (
            ["regions: aaaabb aabbbb ccdddd ccccdd eeefff eeefff", "rules: {king: yes, knight: yes}"],
            "irregular, king, knight",
        ),
    ],
)
def test_proof_says_what_a_puzzle_is(book: Path, fields: list[str], called: str) -> None:
    (book / "book.yaml").write_text(BOOK.replace("size: 6\n", "\n    ".join(["size: 6", *fields]) + "\n"))
    _, row = run("proof", book).stdout.splitlines()
    assert row.split("Wick")[1].split("  ")[2] == called


def test_proof_counts_exactly_what_a_misprint_leaves(tmp_path: Path) -> None:
    (tmp_path / "list.txt").write_text(f"# two\n{SEVENTEEN} sound\n{MISPRINT} misprint\n")
    report = tmp_path / "report.json"
    result = run("proof", tmp_path / "list.txt", "--count", 20_000, "--json", report)
    assert result.exit_code == 1
    by_title = {p["title"]: p for p in json.loads(report.read_text())["puzzles"]}
    assert by_title["sound"]["verdict"] == "unique"
    assert by_title["sound"]["solutions_counted"] == 1
    assert by_title["sound"]["other_solution"] is None
    assert by_title["misprint"]["verdict"] == "several"
    assert by_title["misprint"]["solutions_counted"] == MISPRINT_SOLUTIONS
    assert by_title["misprint"]["solution"] != by_title["misprint"]["other_solution"]
    assert by_title["misprint"]["effort"] is None
    assert "9,734 solutions" in result.stderr


def test_proof_writes_json_with_the_fields_promised(book: Path) -> None:
    result = run("proof", book, "--json", "-")
    report = json.loads(result.stdout)
    assert report["book"] == "A Small Book"
    (puzzle,) = report["puzzles"]
    assert {
        "id", "title", "size", "grid", "givens", "rules", "verdict", "solution", "other_solution", "solutions_counted",
        "band", "band_name", "difficulty", "effort", "hardest", "singles_only", "reached_by_logic", "steps", "seconds",
        "chapter", "permission", "shown",
    } <= set(puzzle)  # fmt: skip
    assert puzzle["size"] == 6
    assert puzzle["grid"] == "classic"
    assert puzzle["givens"].startswith("5...46...1..")
    placed = [cell for step in puzzle["steps"] for cell, _ in step["placed"]]
    assert len(placed) == len(set(placed)) == puzzle["givens"].count(".")


def test_typeset_refuses_what_is_not_proven_unless_a_draft(book: Path) -> None:
    text = (book / "book.yaml").read_text().replace("5 . .  . 4 6", ". . .  . . .")
    (book / "book.yaml").write_text(text)
    refused = run("typeset", book, "--out", book / "out")
    assert refused.exit_code == 1
    assert "book.yaml:5:" in refused.stderr
    assert not (book / "out").exists()
    draft = run("typeset", book, "--out", book / "out", "--draft")
    assert draft.exit_code == 0, draft.output
    assert sorted(path.name for path in (book / "out").iterdir()) == ["book.pdf", "key.pdf"]


def test_typeset_writes_the_same_bytes_twice(book: Path) -> None:
    for out in ("one", "two"):
        assert run("typeset", book, "--out", book / out).exit_code == 0
    for name in ("book.pdf", "key.pdf"):
        assert (book / "one" / name).read_bytes() == (book / "two" / name).read_bytes()
        assert (book / "one" / name).read_bytes().startswith(b"%PDF-")


def test_handout_and_explain(book: Path) -> None:
    result = run("handout", book, "--pick", "six", "--out", book / "sheet.pdf")
    assert result.exit_code == 0, result.output
    assert (book / "sheet.pdf").read_bytes().startswith(b"%PDF-")
    told = run("explain", book, "six")
    assert told.exit_code == 0
    assert told.stdout.startswith("Six by Six, set by Wick\n")


def test_an_unknown_id_is_answered_with_the_nearest(book: Path) -> None:
    for words in (("explain", book, "sixx"), ("handout", book, "--pick", "sixx", "--out", book / "x.pdf")):
        result = run(*words)
        assert result.exit_code == 1
        assert (
            result.stderr
            == f"{book / 'book.yaml'}: the book has no puzzle “sixx” [unknown-id]\n    did you mean “six”?\n"
        )


def test_every_trouble_is_said_at_once(book: Path) -> None:
    text = (book / "book.yaml").read_text().replace("setter:", "seter:").replace("5 . .  . 4 6", "5 . .  . 5 6")
    (book / "book.yaml").write_text(text)
    result = run("proof", book)
    assert result.exit_code == 1
    assert "did you mean “setter”?" in result.stderr
    assert "5 twice (r1c1 and r1c5)" in result.stderr
    assert "Traceback" not in result.output


def test_an_unknown_layout_is_shown_where_it_was_asked_for(book: Path) -> None:
    (book / "book.yaml").write_text(BOOK.replace("  permission", "  layout: a5-bok\n  permission"))
    result = run("typeset", book, "--out", book / "out")
    assert result.exit_code == 1
    assert "book.yaml:3:11: there is no layout “a5-bok”" in result.stderr
    assert "did you mean “a5-book”?" in result.stderr
    result = run("typeset", book, "--out", book / "out", "--layout", "a6-book")
    assert "--layout: there is no layout “a6-book”" in result.stderr


@pytest.mark.parametrize(
    "words", [("proof",), ("proof", "nowhere"), ("typeset", "."), ("rules", "thermometr"), ("prove",)]
)
def test_wrong_usage_ends_with_2(words: tuple[str, ...]) -> None:
    assert run(*words).exit_code == 2


@pytest.mark.parametrize(
    "words",
    [
        ("proof", ".", "--json", "--fresh"),
        ("typeset", ".", "--out", "--contact"),
        ("rules", "--chart", "--all"),
    ],
)
def test_an_option_is_not_taken_for_a_name(
    words: tuple[str, ...], tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    """Else a file called “--fresh” would lie in the folder, and the book would not be proved afresh."""
    monkeypatch.chdir(tmp_path)
    result = run(*words)
    assert result.exit_code == 2
    assert f"“{words[-1]}” is an option, so a name is missing before it" in result.stderr
    assert not list(tmp_path.iterdir())


@pytest.mark.parametrize(
    ("word", "said"), [("typset", "did you mean “typeset”?"), ("Proof", "“proof”"), ("xyz", "known here: archive, ")]
)
def test_a_command_that_there_is_not_is_answered_with_the_nearest(word: str, said: str) -> None:
    result = run(word, "book")
    assert result.exit_code == 2
    assert f"there is no command “{word}”: " in result.stderr and said in result.stderr


def test_each_command_explains_itself() -> None:
    listed = run("--help").stdout
    names = main.list_commands(click.Context(main))
    assert len(names) > 20
    for name in names:
        assert name in listed
        page = run(name, "--help")
        assert page.exit_code == 0
        assert len(page.stdout.splitlines()) > 5


def test_rules_and_layouts_list_what_there_is() -> None:
    listed = run("rules").stdout
    for kind, rule in kinds().items():
        assert kind in listed
        shown = run("rules", kind).stdout
        assert rule.title in shown
        for line in rule.example.splitlines():
            assert line in shown
    layouts = run("layouts")
    assert layouts.exit_code == 0
    for name in ("a4-book", "letter-book", "a5-book", "a4-handout", "letter-handout"):
        assert name in layouts.stdout


def test_the_chart_names_every_kind(tmp_path: Path) -> None:
    assert run("rules", "--chart", tmp_path / "chart.pdf").exit_code == 0
    text = " ".join(page.extract_text() for page in PdfReader(tmp_path / "chart.pdf").pages)
    for rule in kinds().values():
        assert rule.title.replace("'", "’") in text


def test_start_makes_a_book_that_prints_at_once(tmp_path: Path) -> None:
    folder = tmp_path / "mein büchlein"
    assert run("start", folder).exit_code == 0
    assert run("proof", folder).exit_code == 0
    assert run("typeset", folder, "--out", folder / "printed").exit_code == 0
    again = run("start", folder)
    assert again.exit_code == 1
    assert "Traceback" not in again.output


def test_a_full_disk_is_said_and_old_files_stay(book: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    assert run("typeset", book, "--out", book / "out").exit_code == 0
    before = (book / "out" / "book.pdf").read_bytes()

    def full(handle: int) -> None:
        raise OSError(28, "No space left on device", "book.pdf")

    monkeypatch.setattr("bookmaker.files.os.fsync", full)
    result = run("typeset", book, "--out", book / "out")
    assert result.exit_code == 1
    assert "No space left on device" in result.stderr
    assert (book / "out" / "book.pdf").read_bytes() == before
