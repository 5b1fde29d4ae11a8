"""Puzzles written as a person would type them into a manifest. What is written reads back as the same puzzle."""

from __future__ import annotations

import textwrap
from collections.abc import Callable, Iterable, Sequence
from typing import Any

from bookmaker.puzzle.grid import SYMBOLS, Grid
from bookmaker.puzzle.puzzle import digits_text
from bookmaker.rules.common.contract import Rule
from tests.makers.draw import Drawn
from tests.makers.shapes import as_runs

LETTERS = "abcdefghijklmnopqrstuvwxyzABCDEFGHIJKLMNOPQRSTUVWXYZ"


def typed_puzzle(drawn: Drawn) -> str:
    """One item of a manifest's list of puzzles."""
    recipe, grid = drawn.recipe, drawn.puzzle.grid
    lines = [f"- id: {recipe.id}", f"  title: {recipe.title}", f"  setter: {recipe.setter}"]
    lines += [f"  shown: {recipe.shown}"] if recipe.shown else []
    lines += [f"  note: {recipe.note}"] if recipe.note else []
    lines += [f"  size: {grid.size}"] if grid.size != 9 else []
    if recipe.regions:
        lines += ["  regions: |", textwrap.indent(recipe.regions.strip(), "    ")]
    lines += ["  givens: |", textwrap.indent(picture(grid, drawn.puzzle.givens), "    ")]
    if drawn.puzzle.rules:
        written = recipe.rules.strip() + "\n" if recipe.rules.strip() else ""
        written += "".join(typed_rule(rule, grid) for rule in drawn.laid)
        lines += ["  rules:", textwrap.indent(written.rstrip(), "    ")]
    return "\n".join(lines) + "\n"


def picture(grid: Grid, digits: Sequence[int]) -> str:
    """Rows of digits with a gap between boxes and an empty line between bands."""
    text = digits_text(tuple(digits))
    down, across = grid.box or (grid.size, grid.size)
    rows = []
    for row in range(grid.size):
        if row and row % down == 0:
            rows.append("")
        line = text[row * grid.size : (row + 1) * grid.size]
        rows.append("  ".join(" ".join(line[i : i + across]) for i in range(0, grid.size, across)))
    return "\n".join(rows)


def typed_rule(rule: Rule, grid: Grid) -> str:
    """The manifest entry of a rule whose marks were read off a solution."""
    return WRITERS[rule.kind](rule, grid)


def _cage(rule: Any, grid: Grid) -> str:
    cells = ["."] * len(grid.cells)
    totals = []
    for letter, (area, total) in zip(LETTERS, rule.cages, strict=False):
        for cell in area:
            cells[cell] = letter
        totals += [f"{letter}: {total}"] if total else []
    rows = ["".join(cells[i : i + grid.size]) for i in range(0, len(cells), grid.size)]
    drawn = textwrap.indent("\n".join(rows), "    ")
    wrapped = textwrap.fill("{" + ", ".join(totals) + "}", 96, initial_indent="  totals: ", subsequent_indent="    ")
    return f"cage:\n  picture: |\n{drawn}\n{wrapped}\n"


def _pairs(grid: Grid, pairs: Iterable[tuple[int, int]]) -> str:
    return "[" + ", ".join(as_runs(grid, pair) for pair in pairs) + "]"


def _fields(kind: str, fields: dict[str, str]) -> str:
    lines = [f"{name}: {value}" for name, value in fields.items() if value not in ("", "[]")]
    return f"{kind}:\n" + "".join(
        textwrap.fill(line, 100, initial_indent="  ", subsequent_indent="    ") + "\n" for line in lines
    )


def _dots(rule: Any, grid: Grid) -> str:
    marked = "yes" if rule.all_marked else ""
    return _fields("dots", {"white": _pairs(grid, rule.white), "black": _pairs(grid, rule.black), "all-marked": marked})


def _sum_marks(rule: Any, grid: Grid) -> str:
    marked = "yes" if rule.all_marked else ""
    return _fields("sum-marks", {"V": _pairs(grid, rule.five), "X": _pairs(grid, rule.ten), "all-marked": marked})


def _inequality(rule: Any, grid: Grid) -> str:
    return "inequality:\n" + "".join(f"  - {grid.name(a)} > {grid.name(b)}\n" for a, b in rule.pairs)


def _bars(rule: Any, grid: Grid) -> str:
    return textwrap.fill("consecutive-bars: " + _pairs(grid, rule.bars), 100, subsequent_indent="  ") + "\n"


def _by_side(kind: str, rule: Any, grid: Grid) -> str:
    rows: dict[str, list[str]] = {}
    for clue in rule.clues:
        row = rows.setdefault(clue.side, ["."] * grid.size)
        value = SYMBOLS[clue.value - 1] if kind in ("first-seen", "numbered-room") else str(clue.value)
        row[clue.line] = value if row[clue.line] == "." else row[clue.line] + value
    return f"{kind}:\n" + "".join(f"  {side}: {' '.join(row)}\n" for side, row in rows.items())


def _diagonal_sums(rule: Any, grid: Grid) -> str:
    lines = [f"  - {d.total} from {grid.name(d.start)} {d.way}\n" for d in rule.diagonals]
    return "diagonal-sum:\n" + "".join(lines)


def _quadruples(rule: Any, grid: Grid) -> str:
    lines = [
        f"  {grid.name(ring.cells[0])}-{grid.name(ring.cells[-1])}: {' '.join(SYMBOLS[d - 1] for d in ring.digits)}\n"
        for ring in rule.rings
    ]
    return "quadruple:\n" + "".join(lines)


def _limits(rule: Any, grid: Grid) -> str:
    cells_of: dict[str, list[str]] = {}
    for limit in rule.limits:
        digits = " ".join(SYMBOLS[d - 1] for d in grid.digits if limit.digits >> (d - 1) & 1)
        cells_of.setdefault(("not " if limit.forbidden else "") + digits, []).append(grid.name(limit.cell))
    return "limits:\n" + "".join(f"  {' '.join(cells)}: {digits}\n" for digits, cells in cells_of.items())


def _cell_lists(kind: str, *names: str) -> Callable[[Any, Grid], str]:
    return lambda rule, grid: _fields(
        kind, {name: " ".join(grid.name(cell) for cell in getattr(rule, name)) for name in names}
    )


def _sided(kind: str) -> Callable[[Any, Grid], str]:
    return lambda rule, grid: _by_side(kind, rule, grid)


WRITERS: dict[str, Callable[[Any, Grid], str]] = {
    "cage": _cage,
    "dots": _dots,
    "sum-marks": _sum_marks,
    "inequality": _inequality,
    "consecutive-bars": _bars,
    "diagonal-sum": _diagonal_sums,
    "quadruple": _quadruples,
    "limits": _limits,
    "parity": _cell_lists("parity", "even", "odd"),
    "peaks": _cell_lists("peaks", "greater", "smaller"),
    **{kind: _sided(kind) for kind in ("sandwich", "skyscraper", "x-sum", "first-seen", "numbered-room")},
}
