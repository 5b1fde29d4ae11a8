"""Outlines and hatching of areas, against figures counted by hand and cells tried one by one."""

from __future__ import annotations

from random import Random

import pytest

from bookmaker.display.items import Move, Point, Straight, Stroke
from bookmaker.puzzle.grid import CLASSIC
from bookmaker.rules.common.area import hatching, is_picture, loops
from bookmaker.rules.common.drawing.frame import Frame
from bookmaker.source.diagnostics import Place
from bookmaker.source.placed import Word


def _cells(picture: str) -> tuple[int, ...]:
    rows = [line.strip() for line in picture.strip().splitlines()]
    return tuple(9 * row + column for row, line in enumerate(rows) for column, mark in enumerate(line) if mark == "#")


def _surface(corners: tuple[Point, ...]) -> float:
    """Shoelace formula; positive where the corners go clockwise, y pointing down."""
    return sum(a[0] * b[1] - b[0] * a[1] for a, b in zip(corners, corners[1:] + corners[:1], strict=True)) / 2


@pytest.mark.parametrize(
    ("picture", "corners", "surface"),
    [
        ("#", [4], 1),
        ("##\n#.", [6], 3),
        ("###\n#.#\n###", [4, 4], 8),
        ("#.\n.#", [4, 4], 2),
        (".#\n#.", [4, 4], 2),
        ("##.\n#.#\n.##", [6, 6], 6),
        ("##.\n###\n.##", [8], 7),
        # Two cells of a ring touch only at a corner: the outline passes between them into the hole.
        ("###\n#.#\n##.", [10], 7),
    ],
)
def test_outlines_go_once_around_each_piece_and_each_hole(picture: str, corners: list[int], surface: int) -> None:
    found = loops(CLASSIC, _cells(picture), 0.0)
    assert sorted(map(len, found)) == sorted(corners)
    assert sum(map(_surface, found)) == surface
    for loop in loops(CLASSIC, _cells(picture), 0.1):
        assert len(set(loop)) == len(loop)


def test_an_inset_outline_stays_inside_by_that_much() -> None:
    assert loops(CLASSIC, (0,), 0.1) == ((((0.1, 0.1), (0.9, 0.1), (0.9, 0.9), (0.1, 0.9))),)
    (bend,) = loops(CLASSIC, _cells("##\n#."), 0.1)
    assert (0.9, 0.9) in [(round(x, 9), round(y, 9)) for x, y in bend]
    hole = next(loop for loop in loops(CLASSIC, _cells("###\n#.#\n###"), 0.1) if _surface(loop) < 0)
    assert _surface(hole) == pytest.approx(-1.44)


def test_hatching_covers_the_area_and_nothing_else() -> None:
    """Along each hatch line the middle of every stretch lies in the area, and its length adds up to what it should."""
    rng, frame = Random(4), Frame(CLASSIC, 10.0)
    for _ in range(40):
        cells = {rng.randrange(81) for _ in range(rng.randint(1, 30))}
        path = hatching(frame, cells, 0.1, Stroke(0.3))
        ends = [segment.to for segment in path.segments if isinstance(segment, Move | Straight)]
        drawn = 0.0
        for (x1, y1), (x2, y2) in zip(ends[::2], ends[1::2], strict=True):
            assert x2 > x1
            assert y2 < y1
            for share in (0.001, 0.5, 0.999):
                x, y = x1 + share * (x2 - x1), y1 + share * (y2 - y1)
                assert int(y // 10) * 9 + int(x // 10) in cells
            drawn += x2 - x1
        surface = sum(map(_surface, loops(CLASSIC, cells, 0.1))) * 100
        # Lines a quarter of a cell apart (measured along x + y) stand for that much surface each.
        assert drawn * 2.5 == pytest.approx(surface, rel=0.06)


@pytest.mark.parametrize(
    ("text", "drawn"),
    [("r1c1-r1c3 r2c2", False), ("r1c1", False), ("rubbish", False), ("aa.\n..b", True), ("." * 80 + "a", True)],
)
def test_pictures_are_told_from_cells(text: str, drawn: bool) -> None:
    assert is_picture(Word(Place("book.yaml", 1, 1), text), CLASSIC) is drawn
