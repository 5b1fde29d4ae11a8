"""A new rule kind is three files and nothing else: one that no book has is proved, graded, told, hinted, printed and
keyed, and keeps the contract of all kinds, without a line about it anywhere else."""

from __future__ import annotations

import json
import os
import subprocess
import sys
from pathlib import Path

import pytest
from pypdf import PdfReader

ROOT = Path(__file__).resolve().parents[2]

_GROW = """
import tests.made_up
from random import Random
from bookmaker.puzzle.grid import CLASSIC
from bookmaker.puzzle.puzzle import Puzzle
from bookmaker.rules import problem_of
from bookmaker.solve import prove
from bookmaker.solve.verdict import Unique
from tests.rules.harness import instances
rng = Random("tide")
((solution, rule),) = instances("tide-line", CLASSIC, rng, 1)
givens = list(solution)
for cell in rng.sample(CLASSIC.cells, 56):
    kept, givens[cell] = givens[cell], 0
    if not isinstance(prove(problem_of(Puzzle(CLASSIC, tuple(givens), (rule,)))), Unique):
        givens[cell] = kept
print("book: {title: Tides, permission: mine, hints: yes}")
print("puzzles:\\n  - id: ebb\\n    rules:\\n      tide-line:")
for chain in rule.chains:
    print("        - " + " ".join(map(CLASSIC.name, chain)))
print("    givens: |")
for row in range(9):
    print("      " + "".join(str(d or ".") for d in givens[9 * row : 9 * row + 9]))
"""

_CLI = "import tests.made_up\nfrom bookmaker.cli import main\nmain(prog_name='bookmaker')\n"


def python(folder: Path, *arguments: object) -> str:
    """What Python prints, run at the top of the checkout with a cache of proofs of its own."""
    environment = {**os.environ, "PYTHONPATH": str(ROOT), "BOOKMAKER_CACHE": str(folder)}
    done = subprocess.run(
        [sys.executable, *map(str, arguments)], cwd=ROOT, env=environment, capture_output=True, text=True, check=False
    )
    assert done.returncode == 0, done.stdout + done.stderr
    return done.stdout


@pytest.fixture(scope="module")
def book(tmp_path_factory: pytest.TempPathFactory) -> Path:
    file = tmp_path_factory.mktemp("tides") / "book.yaml"
    file.write_text(python(file.parent, "-c", _GROW), encoding="utf-8")
    return file


def test_it_is_proved_and_its_reasons_are_data(book: Path) -> None:
    (puzzle,) = json.loads(python(book.parent, "-c", _CLI, "proof", book, "--json", "-"))["puzzles"]
    assert (puzzle["verdict"], puzzle["rules"]) == ("unique", ["tide-line"])
    reasons = [step["reason"] for step in puzzle["steps"] if step["reason"]["kind"] == "tide-line"]
    assert reasons
    assert {reason["technique"] for reason in reasons} == {"mark"}


def test_its_steps_are_told_by_the_mark_they_come_from(book: Path) -> None:
    assert "he tide line from r" in python(book.parent, "-c", _CLI, "explain", book, "ebb")


def test_it_is_printed_hinted_and_keyed(book: Path) -> None:
    out = book.parent / "out"
    python(book.parent, "-c", _CLI, "typeset", book, "--out", out)
    text = {
        file.stem: " ".join(word for page in PdfReader(file).pages for word in page.extract_text().split())
        for file in out.glob("*.pdf")
    }
    assert "tide line, digits rise and fall" in text["book"]
    assert "Hints" in text["book"]
    assert "Answer key" in text["key"]


def test_it_keeps_the_contract_of_all_kinds(tmp_path: Path) -> None:
    files = ("tests/rules/test_kinds.py", "tests/phrases/test_phrases.py", "tests/tell/test_rule_kinds.py")
    said = python(tmp_path, "-m", "pytest", "-o", "addopts=", "-p", "tests.made_up", *files, "-k", "tide-line")
    assert " passed" in said
    assert "failed" not in said
