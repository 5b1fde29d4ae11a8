"""Published puzzles and counts that tests of several rooms check against. The source stands beside each.

What is “counted here” has no publication behind it: it was found by OR-Tools CP-SAT, which has no part in the engine.
"""

from __future__ import annotations

from pathlib import Path

# From memory of the literature on puzzles with 17 givens. Its reference: G. McGuire, B. Tugemann, G. Civario, “There is
# no 16-clue sudoku”, Exp. Math. 23 (2014) 190–217, arXiv 1201.0749. That it has one solution: counted here.
SEVENTEEN = "000801000000000043500000000000070800000000100020030000600000075003400000000200600"
SEVENTEEN_SOLVED = "237841569186795243594326718315674892469582137728139456642918375853467921971253684"

MISPRINT = SEVENTEEN.replace("000000043", "000000430")
"""The same with a slip in its second row."""

MISPRINT_SOLUTIONS = 9_734
"""Counted here."""

# PuLP 2.9.0 (sdist), examples/Sudoku1.py: its worked example and the solution it prints.
PULP = "53..7....6..195....98....6.8...6...34..8.3..17...2...6.6....28....419..5....8..7."
PULP_SOLVED = "534678912672195348198342567859761423426853791713924856961537284287419635345286179"

# PuLP 2.9.0 (sdist), examples/Sudoku2.py: the same without the givens r5c9, r6c9 and r8c9; it prints all solutions.
PULP_SISTER = "53..7....6..195....98....6.8...6...34..8.3...7...2.....6....28....419.......8..7."
PULP_SISTER_SOLUTIONS = 12
"""Counted here."""

WORKED = PULP[:-1] + "9"
"""The same with its last digit given too."""

APART_GRIDS, APART_WITH_A_GIVEN = 72, 8
"""Grids of 9×9 in which no cells a king's or a knight's move apart are equal and no neighbours are consecutive; and
those of them with any one digit given. The 72 are from memory of the trade; both are counted here."""

_HERE = Path(__file__).parent


def published_lines(name: str) -> list[str]:
    """The lines of one of the files beside this one, without its notice."""
    return [line for line in (_HERE / name).read_text(encoding="utf-8").splitlines() if not line.startswith("#")]


def shared_lines(name: str) -> list[str]:
    """The lines of a longer published list beside the checkout, without its notice; none where there is none."""
    path = _HERE.parents[2] / "shared" / "data" / name
    lines = path.read_text(encoding="utf-8").splitlines() if path.exists() else []
    return [line for line in lines if not line.startswith("#")]
