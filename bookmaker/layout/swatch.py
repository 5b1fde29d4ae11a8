"""A sample of a mark, as it stands in the key to the marks beside the sentence that explains it.

In: a rule's sample and the size of a cell in points. Out: a few cells with the mark on them.
"""

from __future__ import annotations

from functools import lru_cache

from bookmaker.display.items import Group, Item, Line, Rect, Stroke
from bookmaker.layout.gridart import frame_for
from bookmaker.rules.common.contract import Sample
from bookmaker.rules.common.frame import Layer, Margins

_CELL_LINE = Stroke(0.3, 0.45)


def swatch_size(sample: Sample, cell: float) -> tuple[float, float]:
    """Width and height in points, with the room for clues outside the cells."""
    claim = _outside(sample)
    return (sample.columns + claim.left + claim.right) * cell, (sample.rows + claim.top + claim.bottom) * cell


@lru_cache(maxsize=256)
def swatch(sample: Sample, cell: float) -> Group:
    """The sample, clipped to its window; the window is open where the grid goes on."""
    claim = _outside(sample)
    frame = frame_for(sample.grid, cell)
    marks = sorted(sample.rule.marks(frame), key=lambda mark: mark.layer)
    under: list[Item] = [mark.item for mark in marks if mark.layer < Layer.GRID]
    over: list[Item] = [mark.item for mark in marks if mark.layer > Layer.GRID]
    wide, high = sample.columns * cell, sample.rows * cell
    lines: list[Item] = [Line((at * cell, 0.0), (at * cell, high), _CELL_LINE) for at in range(sample.columns + 1)]
    lines += [Line((0.0, at * cell), (wide, at * cell), _CELL_LINE) for at in range(sample.rows + 1)]
    window = Rect(
        -claim.left * cell - 1.0,
        -claim.top * cell - 1.0,
        wide + (claim.left + claim.right) * cell + 2.0,
        high + (claim.top + claim.bottom) * cell + 2.0,
    )
    inner = Group((*under, *lines, *over), claim.left * cell, claim.top * cell, clip=window)
    return Group((inner,), name=f"sample {sample.rule.kind}")


def _outside(sample: Sample) -> Margins:
    """The room outside that the window shows: only sides at which the window meets the grid's edge."""
    claim = sample.rule.margins(sample.grid)
    whole_width, whole_height = sample.columns == sample.grid.size, sample.rows == sample.grid.size
    return Margins(claim.top, claim.right if whole_width else 0.0, claim.bottom if whole_height else 0.0, claim.left)
