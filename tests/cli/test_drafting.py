"""draft, mend and tune as they are typed."""

from __future__ import annotations

from pathlib import Path

import pytest
import yaml

from bookmaker.manifest import load
from tests.cli.running import run

ROOT = Path(__file__).resolve().parents[2]

SMALL = """\
# the small ones
- id: calm
  title: Calm
  size: 6
  givens: |  # typed from paper
    . . .  . 3 .
    . . .  2 1 .

    . 2 .  . . .
    . 1 4  5 6 .

    . 6 2  3 . .
    . 4 .  . . .
"""
SOLVED = "251436436215625143314562162354543621"


@pytest.fixture
def book(tmp_path: Path) -> Path:
    file = tmp_path / "small.yaml"
    file.write_text(SMALL, encoding="utf-8")
    return file


def test_mend_has_nothing_to_do(book: Path) -> None:
    result = run("mend", book, "calm")
    assert result.exit_code == 0, result.output
    assert "has one solution: there is nothing to mend" in result.output


def test_mend_finds_the_slip_and_leaves_the_book_alone(book: Path, tmp_path: Path) -> None:
    """Few digits leave many cures; the setter's solution tells which is the true one."""
    broken = SMALL.replace(". . .  2 1 .", ". . .  2 4 .") + f"  solution: {SOLVED}\n"
    book.write_text(broken, encoding="utf-8")
    result = run("mend", book, "calm", "--write", tmp_path / "mended.yaml")
    assert result.exit_code == 0, result.output
    assert book.read_text(encoding="utf-8") == broken
    assert f"{book}:7\n     - . . .  2 4 .\n     + . . .  2 1 ." in result.output
    mended = (tmp_path / "mended.yaml").read_text(encoding="utf-8")
    assert "# typed from paper" in mended
    assert run("proof", tmp_path / "mended.yaml").exit_code == 0


def test_mend_of_several_solutions_says_what_to_add(book: Path) -> None:
    book.write_text(SMALL.replace(". 2 .  . . .", ". . .  . . .").replace(". 4 .  . . .", ". . .  . . ."), "utf-8")
    result = run("mend", book, "calm")
    assert "has several solutions" in result.output
    assert "Fewest givens to add:" in result.output


def test_mend_of_an_unknown_puzzle(book: Path) -> None:
    result = run("mend", book, "clam")
    assert result.exit_code == 1
    assert "the book has no puzzle “clam”" in result.stderr
    assert "calm" in result.stderr


def test_tune_to_fewer_givens(book: Path, tmp_path: Path) -> None:
    loose = SMALL.replace(". . .  . 3 .", ". . .  . 3 6").replace("    . 4 .  . . .", "    5 4 .  . . .")
    book.write_text(loose, encoding="utf-8")
    result = run("tune", book, "calm", "--fewer-givens", "--show", "1", "--write", tmp_path / "tuned.yaml")
    assert result.exit_code == 0, result.output
    assert result.output.startswith("1. one change: ")
    (before,), (after,) = load(book).entries, load(tmp_path / "tuned.yaml").entries
    assert after.puzzle.given_count < before.puzzle.given_count
    assert book.read_text(encoding="utf-8") == loose
    assert run("proof", tmp_path / "tuned.yaml").exit_code == 0


def test_tune_says_what_is_out_of_reach_and_what_is_missing(book: Path) -> None:
    nothing = run("tune", book, "calm", "--band", "Summit", "--for", "1s")
    assert nothing.exit_code == 1
    assert "reaches the wish." in nothing.output
    assert run("tune", book, "calm").exit_code == 2
    unknown = run("tune", book, "calm", "--no", "guessing")
    assert unknown.exit_code == 1
    assert "“guessing”" in unknown.stderr


def test_draft_from_a_wish(tmp_path: Path) -> None:
    (tmp_path / "wish.yaml").write_text("wish: {puzzles: 2, size: 6, rules: cage, tags: [new]}\n", "utf-8")
    result = run("draft", tmp_path / "wish.yaml", "--out", tmp_path / "out.yaml")
    assert result.exit_code == 0, result.output
    assert result.output.count("hardest step") == 2
    assert run("proof", tmp_path / "out.yaml").exit_code == 0
    other = run("draft", tmp_path / "wish.yaml", "--out", tmp_path / "other.yaml", "--against", tmp_path / "out.yaml")
    assert other.exit_code == 0, other.output
    assert run("twins", tmp_path / "other.yaml", "--against", tmp_path / "out.yaml", "--exact").exit_code == 0


def test_draft_says_what_would_widen_a_wish(tmp_path: Path) -> None:
    (tmp_path / "wish.yaml").write_text("wish: {size: 4, band: Summit}\n", "utf-8")
    result = run("draft", tmp_path / "wish.yaml", "--out", tmp_path / "out.yaml", "--for", "1s")
    assert result.exit_code == 1
    assert "widen the span: “band: " in result.stderr


def test_draft_wants_a_wish_or_a_brief(tmp_path: Path) -> None:
    assert run("draft", "--out", tmp_path / "out.yaml").exit_code == 2
    assert run("draft", "--out", tmp_path / "out.yaml", "--for", "soon").exit_code == 2


def test_draft_in_another_dress(book: Path, tmp_path: Path) -> None:
    result = run("draft", "--force", book, "calm", "--out", tmp_path / "dressed.yaml")
    assert result.exit_code == 0, result.output
    assert "proven equal" in result.output
    assert run("proof", tmp_path / "dressed.yaml").exit_code == 0


BRIEF = """\
archive: archive
brief:
  title: Few
  puzzles: 2
  kinds: {cage: at least 1}
  sizes: {6: 2}
"""


def test_what_a_brief_lacks_is_drafted_and_then_assembled(book: Path, tmp_path: Path) -> None:
    (tmp_path / "archive").mkdir()
    book.rename(tmp_path / "archive" / "small.yaml")
    (tmp_path / "brief.yaml").write_text(BRIEF, encoding="utf-8")
    refused = run("assemble", tmp_path / "brief.yaml", "--out", tmp_path / "mine")
    assert refused.exit_code == 1
    assert "draft --for" in refused.stderr
    new = tmp_path / "archive" / "new.yaml"
    result = run("draft", "--for", tmp_path / "brief.yaml", "--out", new)
    assert result.exit_code == 0, result.output
    assert "one cage puzzle" in result.output
    assert [len(item.get("rules", ())) for item in yaml.safe_load(new.read_text(encoding="utf-8"))] == [1]
    assembled = run("assemble", tmp_path / "brief.yaml", "--out", tmp_path / "mine")
    assert assembled.exit_code == 0, assembled.output
    again = run("draft", "--for", tmp_path / "brief.yaml", "--out", tmp_path / "none.yaml")
    assert "lacks nothing" in again.output


def test_what_came_of_the_readme_s_wish(tmp_path: Path) -> None:
    """The wish shown is the file's, and what is shown under it is what comes of it."""
    readme = (ROOT / "README.md").read_text(encoding="utf-8")
    wish = ROOT / "demo_book" / "wishes" / "slack-water.yaml"
    shown = wish.read_text(encoding="utf-8").partition("\n\n")[2]
    assert f"```yaml\n{shown}```" in readme
    result = run("draft", wish, "--out", tmp_path / "slack-water.yaml")
    assert result.exit_code == 0, result.output
    lines = [line for line in result.stdout.splitlines() if ": Ramble, " in line]
    assert len(lines) == 3
    assert "\n".join(lines) in readme
