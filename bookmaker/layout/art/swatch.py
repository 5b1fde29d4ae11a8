"""A sample of a mark, as it stands in the key to the marks beside the sentence that explains it, or in the primer.

In: a rule's sample, for the primer with digits in its cells, and the size of a cell in points. Out: a few cells with
the mark on them.
"""

from __future__ import annotations

from collections.abc import Iterator
from functools import lru_cache

from bookmaker.book.contents import WorkedFigure
from bookmaker.display.items import Group, Item, Line, Rect, Text
from bookmaker.layout.art.gridart import DIGIT, cell_pen, frame_for
from bookmaker.rules.common.contract import Sample
from bookmaker.rules.common.drawing.frame import Frame, Layer, Margins

BESIDE, ON = 2, 0.4
"""Behind a clue outside the grid stand so many cells, and the row goes on for this part of another."""


def swatch_size(sample: Sample, cell: float) -> tuple[float, float]:
    """Width and height in points, with the room for clues outside the cells."""
    wide, high = figure_size(_bare(sample), cell)
    return wide + _on(sample) * cell, high


def figure_size(figure: WorkedFigure, cell: float) -> tuple[float, float]:
    """The same for a figure of the primer."""
    claim = _outside(figure)
    return (figure.columns + claim.left + claim.right) * cell, (figure.rows + claim.top + claim.bottom) * cell


@lru_cache(maxsize=256)
def legible_cell(sample: Sample, least: float) -> float:
    """The smallest cell at which no figure of the sample is set smaller than `least` points; 0 where it has none."""
    marks = sample.rule.marks(frame_for(sample.grid, 1.0))
    sizes = [mark.item.size for mark in marks if isinstance(mark.item, Text)]
    return least / min(sizes) if sizes else 0.0


def swatch(sample: Sample, cell: float) -> Group:
    """The sample, clipped to its window; a row behind a clue goes on."""
    return worked_figure(_bare(sample), cell, _on(sample))


@lru_cache(maxsize=256)
def worked_figure(figure: WorkedFigure, cell: float, on: float = 0.0) -> Group:
    """The sample in the window of a figure, with the figure's digits; its rows go `on` by a part of a cell."""
    claim, sample = _outside(figure), figure.sample
    frame = frame_for(sample.grid, cell)
    marks = sorted(sample.rule.marks(frame), key=lambda mark: mark.layer)
    under: list[Item] = [mark.item for mark in marks if mark.layer < Layer.GRID]
    over: list[Item] = [mark.item for mark in marks if mark.layer > Layer.GRID]
    wide, high = figure.columns * cell, figure.rows * cell
    pen = cell_pen(cell)
    far = wide + on * cell
    lines: list[Item] = [Line((at * cell, 0.0), (at * cell, high), pen) for at in range(figure.columns + 1)]
    lines += [Line((0.0, at * cell), (far, at * cell), pen) for at in range(figure.rows + 1)]
    window = Rect(
        -claim.left * cell - 1.0,
        -claim.top * cell - 1.0,
        far + (claim.left + claim.right) * cell + 2.0,
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
                yield frame.figures(frame.centre(at), figure.sample.grid.symbol(figure.digits[at]), DIGIT)


def _bare(sample: Sample) -> WorkedFigure:
    """The cells of the sample; of a row with a clue before it only the first, so that the clue comes out large."""
    return WorkedFigure(sample, (), sample.rows, BESIDE if _on(sample) else sample.columns)


def _on(sample: Sample) -> float:
    """How far the row behind a clue goes on beyond its cells."""
    return ON if sample.rows == 1 and sample.columns > BESIDE and sample.rule.margins(sample.grid).left > 0 else 0.0


def _outside(figure: WorkedFigure) -> Margins:
    """The room outside that the window shows: only sides at which the window meets the grid's edge."""
    sample = figure.sample
    claim = sample.rule.margins(sample.grid)
    whole_width, whole_height = figure.columns == sample.grid.size, figure.rows == sample.grid.size
    return Margins(claim.top, claim.right if whole_width else 0.0, claim.bottom if whole_height else 0.0, claim.left)
