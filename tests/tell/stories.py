"""Puzzles whose paths the tests tell, and what a well-formed sentence is."""

from __future__ import annotations

import re
from functools import cache
from pathlib import Path

from bookmaker.manifest import load
from bookmaker.manifest.entries import Entry
from bookmaker.proof import prove_entry
from bookmaker.proof.findings import Proof
from bookmaker.puzzle.grid import CLASSIC, boxed_grid
from bookmaker.puzzle.puzzle import Puzzle
from bookmaker.rules.common.contract import Rule
from bookmaker.rules.knight import Knight
from bookmaker.rules.thermometer import Thermometer
from bookmaker.source.diagnostics import Place
from tests.digits import digits_from

# Grown by this project's makers. KNIGHTS has the knight's rule and needs many what-ifs; MIRRORED turns into itself by a
# half turn with each digit taken from 10.
EASY = ".89..41...4...63..3....5.4.87...2..4...6.8...2..5...87.2.9....6..74...1...82..59."
HARDER = "4...3......8...64..21..8.....7.9..86.6.127.3.54..8.7.....7..86..94...1......1...3"
KNIGHTS = "...6.1..5..7............3..........9.9..........2...4.25..................4...5.."
MIRRORED = "65..1.8........24..913.....7..9....2....5....8....1..3.....791..68........2.9..54"


def on_six(givens: str, *chains: str) -> Proof:
    """A 6×6 puzzle “Ebb” with thermometers through the cells named."""
    grid = boxed_grid(6, 2, 3)
    cells = {grid.name(cell): cell for cell in grid.cells}
    rule = Thermometer(tuple(tuple(cells[name] for name in chain.split()) for chain in chains))
    puzzle = Puzzle(grid, digits_from(givens), (rule,) if chains else ())
    return prove_entry(Entry("x", puzzle, Place("book.yaml"), "Ebb", "Mudlark"))


_STARTS_BADLY = re.compile(r"(?:^|[.!?] )(?:[rR]\d+c\d+|\d|[a-z])")
_DOUBLED = re.compile(r"  |,,|\.\.|;;| [,.;:]|: *[,.;]|None|\(\)|\{|\}")


def proof_of(givens: str, *rules: Rule) -> Proof:
    puzzle = Puzzle(CLASSIC, digits_from(givens), rules)
    return prove_entry(Entry("x", puzzle, Place("book.yaml"), "Ebb", "Mudlark"))


@cache
def many_what_ifs() -> Proof:
    """A puzzle with the knight's rule whose story has more what-ifs in a row than are told at once."""
    return proof_of(KNIGHTS, Knight())


@cache
def demo_entries() -> dict[str, Entry]:
    """All puzzles of the demo book: nearly every rule kind, from the gentlest band to the hardest."""
    return {entry.id: entry for entry in load(Path(__file__).parents[2] / "demo_book").entries}


@cache
def demo_proof(name: str) -> Proof:
    return prove_entry(demo_entries()[name])


def faults(text: str) -> list[str]:
    """What is wrong with the form of some sentences."""
    found = [match[0] for pattern in (_STARTS_BADLY, _DOUBLED) for match in pattern.finditer(text)]
    if not text.endswith("."):
        found.append("no full stop")
    return found
