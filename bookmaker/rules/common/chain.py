"""Chains: lines through neighbouring cells, as many rule kinds use them. Reading and drawing."""

from __future__ import annotations

from bookmaker.placed import Node, Word
from bookmaker.puzzle.cells import read_cells
from bookmaker.puzzle.grid import Grid
from bookmaker.trouble import Desk


def read_chain(node: Node, what: str, grid: Grid, desk: Desk, least: int = 2) -> tuple[int, ...] | None:
    """Cells of a chain in order; a jump, a second visit or too few cells is a trouble at its place."""
    if not isinstance(node, Word):
        desk.error(node.place, "not-a-chain", f"{what} should be a list of cells such as r1c1-r1c4 r2c5")
        return None
    cells = read_cells(node, grid, desk)
    if cells is None:
        return None
    sound = True
    for before, after in zip(cells, cells[1:], strict=False):
        if before != after and not grid.touching(before, after):
            text = f"{what} jumps from {grid.name(before)} to {grid.name(after)}, which do not touch"
            desk.error(node.place, "chain-jumps", text, "each cell of a chain touches the next, by a side or a corner")
            sound = False
    twice = next((cell for i, cell in enumerate(cells) if cell in cells[:i]), None)
    if twice is not None:
        desk.error(node.place, "chain-returns", f"{what} visits {grid.name(twice)} twice")
        sound = False
    if sound and len(cells) < least:
        desk.error(node.place, "chain-short", f"{what} has {len(cells)} cell(s) and needs at least {least}")
        sound = False
    return cells if sound else None
