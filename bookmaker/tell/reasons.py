"""Why a placement is forced, in full, for the places where a listener would miss it.

In: a told placement. Out: a clause.
"""

from __future__ import annotations

from bookmaker.grade.singles import Kind
from bookmaker.puzzle.grid import Grid
from bookmaker.rules.common.wording import cells_listed, digits_listed, listed, symbol
from bookmaker.tell.context import Context
from bookmaker.tell.trail import Told
from bookmaker.tell.voice import called, clauses_listed, several


def seen(grid: Grid, told: Told, context: Context) -> str:
    """Why a placement is forced, in full: which digits look into its house, or what the houses of its cell hold."""
    cell, digit = grid.name(told.cell), symbol(told.digit)
    if told.kind is Kind.NAKED:
        return _held(grid, told, context)
    house = told.area.name if told.area else ""
    if told.kind is Kind.LAST:
        return f"{house} lacks only {digit}, which goes to {cell}"
    return f"{lookers(grid, told)} {house} only {cell} for {digit}"


def lookers(grid: Grid, told: Told) -> str:
    """“the 3s in r2c2 and r9c9 leave”: what keeps a digit from the rest of its house, as subject and verb."""
    cells = told.view.lookers
    why = []
    if cells:
        digits = symbol(told.digit) if len(cells) == 1 else several(told.digit)
        why.append(f"the {digits} in {cells_listed(grid, cells)}")
    if told.view.marked:
        why.append("the marks")
    if told.view.struck or not why:
        why.append("what was struck before")
    alone = len(why) == 1 and len(cells) < 2 and not told.view.marked
    return f"{listed(why)} leave{'s' if alone else ''}"


def _held(grid: Grid, told: Told, context: Context) -> str:
    """What the houses of a cell hold, and what was struck from it, until one digit is left."""
    held = []
    for at, (house, digits) in enumerate(told.view.holders):
        verb = "holds" if at == 0 else "adds"
        held.append(f"{house} {verb} {digits_listed(digits)}" if house else f"other cells add {digits_listed(digits)}")
    for name, digits in told.view.strikers:
        gone = digits_listed(digits)
        held.append(f"{gone} went with {called(name, context.nouns)}" if name else f"its mark rules out {gone}")
    return f"{clauses_listed(held)}, so {grid.name(told.cell)} can only be {symbol(told.digit)}"
