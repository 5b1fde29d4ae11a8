"""Numbers, points, texts and paths as the content of a page has them (ISO 32000-1, 7.3 and 8.5.2).

In: values of display items, in points, y down. Out: operands and operators as text, y up, one operator a line.
"""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from functools import lru_cache
from typing import assert_never

from bookmaker.display.items import Close, Curve, Move, Point, Rect, Segment, Straight
from bookmaker.geometry import Matrix, outline


@lru_cache(maxsize=16_384)  # the grids of a book share most of theirs
def number(value: float) -> str:
    """A number as PDF writes it, to 0.001: never with an exponent."""
    return repr(round(value, 3) + 0.0).removesuffix(".0")


def at(point: Point) -> str:
    """A point, y negated."""
    return f"{number(point[0])} {number(-point[1])}"


def placed(matrix: Matrix) -> str:
    """The operator that takes what follows through a matrix, y down."""
    a, b, c, d, e, f = matrix
    if (a, b, c, d) == (1.0, 0.0, 0.0, 1.0):
        return f"1 0 0 1 {at((e, f))} cm"
    return f"{a:.6f} {-b:.6f} {-c:.6f} {d:.6f} {e:.6f} {-f:.6f} cm"


def hexadecimal(text: str) -> str:
    """A text as PDF keeps it outside pages: UTF-16, the greater byte first, after a byte order mark; in hexadecimal."""
    return ("\ufeff" + text).encode("utf-16-be").hex()


def rectangle(rect: Rect) -> str:
    """The operators that make a rectangle the path."""
    if rect.radius > 0:
        return path_of(outline(rect))
    return f"{at((rect.x, rect.y + rect.height))} {number(rect.width)} {number(rect.height)} re"


def path_of(segments: Iterable[Segment]) -> str:
    """The operators that make these segments the path. Straight ones, of which outlines have a hundred in a row, are
    written together, with zeros at the end of their numbers: where these are new, that takes a third of the time."""
    operators: list[str] = []
    ends: list[float] = []
    for segment in segments:
        if isinstance(segment, Straight):
            x, y = segment.to
            ends += (x, -y)
            continue
        if ends:
            operators.append(_straight(ends))
            ends.clear()
        match segment:
            case Move(to):
                operators.append(f"{at(to)} m")
            case Curve(first, second, to):
                operators.append(f"{at(first)} {at(second)} {at(to)} c")
            case Close():
                operators.append("h")
            case _ as never:
                assert_never(never)
    if ends:
        operators.append(_straight(ends))
    return "\n".join(operators)


def _straight(ends: Sequence[float]) -> str:
    return "\n".join(["%.3f %.3f l"] * (len(ends) // 2)) % tuple(ends)
