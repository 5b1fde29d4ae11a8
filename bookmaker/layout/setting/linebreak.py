"""Where to break a paragraph set flush left: all its lines are weighed together, not one after the other.

In: the widths of the words, or of the pieces they may be split into, of the space between words, of a hyphen and of
the column, in points. Out: how many pieces stand on each line. After D. E. Knuth and M. F. Plass, "Breaking Paragraphs
into Lines", Software: Practice and Experience 11 (1981) 1119–1184: the best set of breaks is found by dynamic
programming over a cost that grows with the cube of a line's gap; a hyphenated word has a cost of its own. The fewest
ladders come first, whatever they cost: a ladder is a line that ends in a hyphen under two that do.

All spaces are as wide as the font has them, so there are no rivers; what a bad break makes is a short line.
"""

from __future__ import annotations

from collections.abc import Sequence
from typing import TypeAlias

RUNT = 0.25
"""A last line shorter than this share of the column looks like a leftover."""


LINE, LEFTOVER = 0.01, 0.3
"""What a line costs that is full, and a last one that is a leftover; with the cube of its gap, an empty one costs 1."""

PARTING = 0.03
"""What a hyphenated word costs: as much as a line with three tenths of it empty."""

IN_A_ROW = 2
"""So many lines in a row may end in a hyphen (common practice); more only where no other breaks fit the column."""

_Way: TypeAlias = tuple[tuple[int, float], int, int]
"""Ladders and cost of the lines up to a break, where its last line starts, and the hyphens in a row before that."""


def line_lengths(
    widths: Sequence[float], space: float, measure: float, joined: Sequence[bool] = (), hyphen: float = 0.0
) -> list[int]:
    """Pieces on each line, first to last, at the least total cost. A piece wider than the column stands alone.

    A `joined` piece belongs to the word of the piece before it; without them every piece is a word.
    """
    count = len(widths)
    spaces = [0.0 if joined and joined[at] else space for at in range(count)]
    # the best ways to each break, by how many hyphens in a row they end with: cost, and the way before
    ways: list[dict[int, _Way]] = [{0: ((0, 0.0), 0, 0)}]
    for end in range(1, count + 1):
        parted = end < count and bool(joined) and joined[end]
        here: dict[int, _Way] = {}
        length = hyphen if parted else 0.0
        for start in range(end - 1, -1, -1):
            length += widths[start] + (spaces[start + 1] if start < end - 1 else 0.0)
            if length > measure and start < end - 1:
                break
            if end < count:
                gap = (measure - length) / measure if length < measure else 0.0
                line = gap**3 + LINE + (PARTING if parted else 0.0)
            else:
                line = LEFTOVER if length < RUNT * measure and start else LINE
            for hyphens, ((ladders, cost), _, _) in ways[start].items():
                then = min(hyphens + 1, IN_A_ROW) if parted else 0
                total = (ladders + (parted and hyphens == IN_A_ROW), cost + line)
                if then not in here or total < here[then][0]:
                    here[then] = total, start, hyphens
        ways.append(here)
    lengths = []
    end, hyphens = count, 0
    while end:
        _, start, hyphens = ways[end][hyphens]
        lengths.append(end - start)
        end = start
    return lengths[::-1]
