"""A sample of a mark, as it stands in the key to the marks beside the sentence that explains it, or in the primer.

In: a rule's sample, for the primer with digits in its cells, and the size of a cell in points. Out: a few cells with
the mark on them.
"""

from __future__ import annotations

from collections.abc import Iterator
from functools import lru_cache

from bookmaker.book.model import WorkedFigure
from bookmaker.display.items import Group, Item, Line, Rect
from bookmaker.layout.art.gridart import DIGIT, cell_pen, frame_for
from bookmaker.puzzle.grid import SYMBOLS
from bookmaker.rules.common.contract import Sample
from bookmaker.rules.common.frame import Frame, Layer, Margins


def swatch_size(sample: Sample, cell: float) -> tuple[float, float]:
    """Width and height in points, with the room for clues outside the cells."""
    return figure_size(_bare(sample), cell)


def figure_size(figure: WorkedFigure, cell: float) -> tuple[float, float]:
    """The same for a figure of the primer."""
    claim = _outside(figure)
    return (figure.columns + claim.left + claim.right) * cell, (figure.rows + claim.top + claim.bottom) * cell


def swatch(sample: Sample, cell: float) -> Group:
    """The sample, clipped to its window; the window is open where the grid goes on."""
    return worked_figure(_bare(sample), cell)


@lru_cache(maxsize=256)
def worked_figure(figure: WorkedFigure, cell: float) -> Group:
    """The sample in the window of a figure, with the figure's digits."""
    claim, sample = _outside(figure), figure.sample
    frame = frame_for(sample.grid, cell)
    marks = sorted(sample.rule.marks(frame), key=lambda mark: mark.layer)
    under: list[Item] = [mark.item for mark in marks if mark.layer < Layer.GRID]
    over: list[Item] = [mark.item for mark in marks if mark.layer > Layer.GRID]
    wide, high = figure.columns * cell, figure.rows * cell
    pen = cell_pen(cell)
    lines: list[Item] = [Line((at * cell, 0.0), (at * cell, high), pen) for at in range(figure.columns + 1)]
    lines += [Line((0.0, at * cell), (wide, at * cell), pen) for at in range(figure.rows + 1)]
    window = Rect(
        -claim.left * cell - 1.0,
        -claim.top * cell - 1.0,
        wide + (claim.left + claim.right) * cell + 2.0,
        high + (claim.top + claim.bottom) * cell + 2.0,
    )
    digits = _digits(figure, frame)
    inner = Group((*under, *lines, *over, *digits), claim.left * cell, claim.top * cell, clip=window)
    return Group((inner,), name=f"sample {sample.rule.kind}")


def _digits(figure: WorkedFigure, frame: Frame) -> Iterator[Item]:
    if figure.digits:
        for row in range(figure.rows):
            for column in range(figure.columns):
                at = figure.sample.grid.cell(row, column)
                yield frame.figures(frame.centre(at), SYMBOLS[figure.digits[at] - 1], DIGIT)


def _bare(sample: Sample) -> WorkedFigure:
    return WorkedFigure(sample, (), sample.rows, sample.columns)


def _outside(figure: WorkedFigure) -> Margins:
    """The room outside that the window shows: only sides at which the window meets the grid's edge."""
    sample = figure.sample
    claim = sample.rule.margins(sample.grid)
    whole_width, whole_height = figure.columns == sample.grid.size, figure.rows == sample.grid.size
    return Margins(claim.top, claim.right if whole_width else 0.0, claim.bottom if whole_height else 0.0, claim.left)
