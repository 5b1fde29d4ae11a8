"""Numbers, points, texts and paths as the content of a page has them (ISO 32000-1, 7.3 and 8.5.2).

In: values of display items, in points, y down. Out: operands and operators as text, y up, one operator a line.
"""

from __future__ import annotations

from collections.abc import Iterable
from functools import lru_cache
from typing import assert_never

from bookmaker.display.items import Close, Curve, Move, Point, Rect, Segment, Straight
from bookmaker.geometry import outline


@lru_cache(maxsize=16_384)  # the grids of a book share most of theirs
def number(value: float) -> str:
    """A number as PDF writes it, to 0.001: never with an exponent."""
    return repr(round(value, 3) + 0.0).removesuffix(".0")


def at(point: Point) -> str:
    """A point, y negated."""
    return f"{number(point[0])} {number(-point[1])}"


def hexadecimal(text: str) -> str:
    """A text as PDF keeps it outside pages: UTF-16, the greater byte first, after a byte order mark; in hexadecimal."""
    return ("\ufeff" + text).encode("utf-16-be").hex()


def rectangle(rect: Rect) -> str:
    """The operators that make a rectangle the path."""
    if rect.radius > 0:
        return path_of(outline(rect))
    return f"{at((rect.x, rect.y + rect.height))} {number(rect.width)} {number(rect.height)} re"


def path_of(segments: Iterable[Segment]) -> str:
    """The operators that make these segments the path."""
    operators = []
    for segment in segments:
        if isinstance(segment, Straight):  # as most are: this takes half as long as to match it
            x, y = segment.to
            operators.append(f"{number(x)} {number(-y)} l")
            continue
        match segment:
            case Move(to):
                operators.append(f"{at(to)} m")
            case Curve(first, second, to):
                operators.append(f"{at(first)} {at(second)} {at(to)} c")
            case Close():
                operators.append("h")
            case _ as never:
                assert_never(never)
    return "\n".join(operators)
