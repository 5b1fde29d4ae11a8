"""What makes the commands pleasant at the keyboard: names, help, completion, a narrow window, Ctrl-C."""

from __future__ import annotations

import shlex
import subprocess
import sys
from pathlib import Path
from typing import Any

import click
import pytest
from click.shell_completion import ShellComplete

import bookmaker.proof as room
from bookmaker.cli import main
from bookmaker.cli.table import GAP, proof_table
from bookmaker.layout import layout_names, load_layout
from bookmaker.manifest import load
from bookmaker.proof.record import Findings
from bookmaker.rules import kinds
from bookmaker.rules.common.contract import RuledPuzzle
from tests.cli.running import run
from tests.layout.sample_book import sample_manifest, sample_proofs
from tests.published import WORKED

# The same with rows exchanged within bands, which leaves it unique.
TURNED = WORKED[9:18] + WORKED[:9] + WORKED[18:]
THIRD = WORKED[18:27] + WORKED[9:18] + WORKED[:9] + WORKED[27:]


@pytest.fixture
def three(tmp_path: Path) -> Path:
    """A list of three classics."""
    file = tmp_path / "list.txt"
    file.write_text("\n".join((WORKED, TURNED, THIRD)) + "\n")
    return file


# -- names


def test_the_command_that_start_prints_can_be_pasted(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.chdir(tmp_path)
    printed = run("start", "my first book").stdout.splitlines()[-1].removeprefix("now try: ")
    program, *words = shlex.split(printed)
    assert program == "bookmaker"
    assert run(*words).exit_code == 0
    assert (tmp_path / "my first book" / "printed" / "book.pdf").exists()


def test_start_takes_no_folder_that_holds_a_book_yml(tmp_path: Path) -> None:
    (tmp_path / "book.yml").write_text("mine")
    result = run("start", tmp_path)
    assert result.exit_code == 1 and "a book is already there" in result.stderr
    assert [path.name for path in tmp_path.iterdir()] == ["book.yml"]


def test_python_m_bookmaker_is_the_same_program() -> None:
    ran = subprocess.run([sys.executable, "-m", "bookmaker", "rules"], capture_output=True, text=True, check=True)
    assert ran.stdout == run("rules").stdout


FOR_FEW = ("segno", "barcode", "pypdfium2", "ssl", "bookmaker.ebook", "pysat", "ortools")
"""What draws codes and pictures, makes e-books and proves what is hard; and what such libraries bring along."""


def test_a_book_begins_without_reading_what_few_books_ask_for() -> None:
    """How long a command takes to begin is mostly what it reads."""
    read = f"import sys, bookmaker.cli.commands.typeset; print([name for name in {FOR_FEW} if name in sys.modules])"
    assert subprocess.run([sys.executable, "-c", read], capture_output=True, text=True, check=True).stdout == "[]\n"


def test_a_pdf_gets_its_ending(folder: Path, tmp_path: Path) -> None:
    assert run("handout", folder, "--pick", "worked", "--out", tmp_path / "sheet", "--contest").exit_code == 0
    assert run("crib", folder, "worked", "--out", tmp_path / "crib").exit_code == 0
    assert run("rules", "--chart", tmp_path / "chart").exit_code == 0
    names = ["chart.pdf", "crib.pdf", "sheet-marker.pdf", "sheet.pdf"]
    assert sorted(path.name for path in tmp_path.iterdir()) == names


def test_a_pdf_with_another_ending_is_refused(folder: Path, tmp_path: Path) -> None:
    result = run("handout", folder, "--pick", "worked", "--out", tmp_path / "sheet.png")
    assert result.exit_code == 2 and "its name should end in .pdf" in result.stderr
    assert not list(tmp_path.iterdir())


# -- a layout for something else


@pytest.mark.parametrize("command", [("proof",), ("typeset", "--out", "out")])
def test_a_layout_for_something_else_is_told_at_its_line(
    command: tuple[str, ...], tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    monkeypatch.chdir(tmp_path)
    Path("book.yaml").write_text(f"book:\n  title: T\n  layout: a4-handout\npuzzles:\n- id: a\n  givens: {WORKED}\n")
    name, *options = command
    result = run(name, "book.yaml", *options)
    assert result.exit_code == 1
    assert "book.yaml:3:11: “a4-handout” is a layout for a handout, not for a book" in result.stderr
    assert "layouts for a book: 6x9-book, 6x9-book-two, " in result.stderr
    assert not (tmp_path / "out").exists()


def test_so_is_one_of_the_command_line(folder: Path, tmp_path: Path) -> None:
    result = run("handout", folder, "--pick", "worked", "--out", tmp_path / "x.pdf", "--layout", "a4-book")
    assert result.exit_code == 1
    assert "--layout: “a4-book” is a layout for a book, not for a handout" in result.stderr
    assert "layouts for a handout: a4-handout, letter-handout" in result.stderr


# -- help


def test_no_summary_is_cut_short(monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setenv("COLUMNS", "60")
    listed = " ".join(run("--help").stdout.split())
    for name in main.list_commands(click.Context(main)):
        command = main.get_command(click.Context(main), name)
        first = (command.help or "").split("\n\n")[0].replace("\n", " ")
        assert first.endswith(".") and f"{name} {first}" in listed


def test_every_option_says_what_it_is_for() -> None:
    for name in main.list_commands(click.Context(main)):
        command = main.get_command(click.Context(main), name)
        for param in command.params:
            assert param.param_type_name == "argument" or getattr(param, "help", None), (command.name, param.name)


# -- completion


def offered(*words: object) -> list[str]:
    """What the tab key brings up after the last word."""
    *args, typed = map(str, words)
    return [item.value for item in ShellComplete(main, {}, "bookmaker", "").get_completions(args, typed)]


def test_ids_are_completed(folder: Path, tmp_path: Path) -> None:
    (tmp_path / "two.yaml").write_text(f"- id: tide\n  givens: {WORKED}\n- id: tide-race\n  givens: {TURNED}\n")
    for command in ("explain", "crib", "picture"):
        assert offered(command, folder, "") == ["worked"]
        assert offered(command, tmp_path / "two.yaml", "tide") == ["tide", "tide-race"]
    assert offered("explain", tmp_path / "no.yaml", "") == []
    assert offered("handout", folder, "--pick", "wo") == ["worked"]
    assert offered("handout", tmp_path / "two.yaml", "--pick", "tide-race,t") == ["tide-race,tide"]


def test_layouts_and_kinds_are_completed(folder: Path) -> None:
    assert offered("rules", "") == list(kinds())
    assert offered("start", "new", "--kind", "hin") == ["hinge-line"]
    books = [name for name in layout_names() if load_layout(name).use == "book"]
    assert offered("typeset", folder, "--layout", "") == offered("crib", folder, "x", "--layout", "") == books
    assert offered("handout", folder, "--layout", "letter") == ["letter-handout"]
    assert offered("layouts", "a4-") == [
        name for name in layout_names() if name.startswith("a4-") and name in books
    ] + ["a4-handout"]


def test_own_layouts_are_completed(tmp_path: Path) -> None:
    (tmp_path / "mine.yaml").write_text("based-on: a5-book\n")
    (tmp_path / "sheet.yaml").write_text("based-on: a4-handout\n")
    (tmp_path / "book.yaml").write_text("book: {title: One}\n")
    assert offered("typeset", tmp_path, "--layout", f"{tmp_path}/") == [f"{tmp_path}/mine.yaml"]
    assert offered("handout", tmp_path, "--layout", f"{tmp_path}/s") == [f"{tmp_path}/sheet.yaml"]


# -- a narrow window


@pytest.mark.parametrize("columns", [60, 80, 100, 200])
def test_the_table_keeps_to_its_window(columns: int) -> None:
    table = proof_table(sample_manifest(), sample_proofs(), columns).splitlines()
    whole = proof_table(sample_manifest(), sample_proofs()).splitlines()
    assert max(map(len, table)) <= columns
    assert len(table) == len(whole)
    if max(map(len, whole)) <= columns:
        assert table == whole
    for head in ("title", "verdict", "band", "diff", "hardest step"):
        assert head in table[0]
    starts = [table[0].index(head) for head in ("title", "verdict", "band")]
    assert all(line[start - len(GAP) : start] == GAP for line in table for start in starts)


# -- Ctrl-C


@pytest.fixture
def stopped(monkeypatch: pytest.MonkeyPatch) -> list[str]:
    """Ctrl-C at the third proof; the list has the puzzles that were looked at."""
    met: list[str] = []
    honest = room.find_out

    def interrupted(puzzle: RuledPuzzle, *asked: Any) -> Findings:
        met.append(puzzle.givens_text)
        if len(met) == 3:
            raise KeyboardInterrupt
        return honest(puzzle, *asked)

    monkeypatch.setattr(room, "find_out", interrupted)
    return met


def test_a_stopped_proof_says_what_is_kept_and_how_to_go_on(
    three: Path, stopped: list[str], monkeypatch: pytest.MonkeyPatch, tmp_path: Path
) -> None:
    monkeypatch.setenv("BOOKMAKER_CACHE", str(tmp_path / "cache"))
    result = run("proof", three, "--json", tmp_path / "report.json")
    assert result.exit_code == 130
    said = "stopped: nothing was written; what was proved so far is kept, and the same command goes on from there"
    assert result.stderr.splitlines()[-1] == said
    assert not (tmp_path / "report.json").exists()
    assert run("proof", three).exit_code == 0
    assert stopped == [*(load(three).entries[at].puzzle.givens_text for at in (0, 1, 2)), stopped[2]]


def test_with_fresh_it_says_so(three: Path, stopped: list[str], monkeypatch: pytest.MonkeyPatch) -> None:
    result = run("proof", three, "--fresh")
    assert result.exit_code == 130 and "the same command without --fresh goes on from there" in result.stderr


def test_a_stopped_screening_keeps_its_lines(three: Path, stopped: list[str], tmp_path: Path) -> None:
    report = tmp_path / "report.jsonl"
    result = run("screen", three, "--out", report)
    assert result.exit_code == 130
    assert f"stopped: the lines in {report} are kept" in result.stderr
    assert len(report.read_text().splitlines()) == 2
    assert run("screen", three, "--out", report).exit_code == 0
    assert len(report.read_text().splitlines()) == 3
