"""Marks read back from a finished file: one that is removed, covered, moved or added is named, and all are counted."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass
from functools import cache
from io import BytesIO
from typing import Any

import pikepdf
import pytest

from bookmaker.display.items import Document, Group, Item, Page
from bookmaker.ink.pdf import pdf_bytes
from bookmaker.layout.art.gridart import draw_grid, painted
from bookmaker.manifest.entries import Entry
from bookmaker.preflight import Report, inspect
from bookmaker.proof import Proof
from bookmaker.puzzle.grid import CLASSIC
from bookmaker.puzzle.puzzle import Puzzle
from bookmaker.rules import kinds
from bookmaker.rules.common.contract import RuledPuzzle
from bookmaker.rules.common.drawing.frame import Mark
from bookmaker.sight import shapes
from bookmaker.solve.verdict import Undecided
from bookmaker.source.diagnostics import Place
from tests.rules.stacks import stacked

SIDE, CELL, LEFT, TOP = 400.0, 26.0, 60.0, 70.0

GIVENS = tuple(at % 9 + 1 if at in (40, 41, 60) else 0 for at in CLASSIC.cells)

DRAWN = [kind for kind, rule in kinds().items() if rule.sample() is not None]

PAINTING = ("S", "s", "f", "F", "f*", "B", "B*", "b", "b*", "Tj", "TJ")

Instructions = list[Any]


@dataclass(frozen=True)
class Printed:
    """A grid on a page, as a finished file; `items` are what it is drawn with, in order, each with its mark."""

    puzzle: RuledPuzzle
    file: bytes
    items: tuple[tuple[Item, Mark | None], ...]


@cache
def printed(kind: str) -> Printed:
    puzzle = Puzzle(CLASSIC, GIVENS, (stacked(kind),))
    page = Page(SIDE, SIDE, (Group((draw_grid(puzzle, CELL, "grid one"),), LEFT, TOP),), "1")
    items = tuple((item, owned[1] if owned else None) for item, owned in painted(puzzle, CELL))
    return Printed(puzzle, pdf_bytes(Document("t", "", "", (page,))), items)


def read(file: bytes, puzzle: RuledPuzzle) -> Report:
    return inspect(file, "one.pdf", [Proof(Entry("one", puzzle, Place("b")), Undecided(0), None)])


def told(report: Report) -> list[str]:
    """What is said of marks."""
    return [one.text for one in report.diagnostics if one.code.startswith(("mark", "lines"))]


def changed(file: bytes, change: Callable[[Instructions], bytes]) -> bytes:
    """The file with the content of its page rewritten."""
    out = BytesIO()
    with pikepdf.open(BytesIO(file)) as pdf:
        (page,) = pdf.pages
        page.Contents = pdf.make_stream(change([*pikepdf.parse_content_stream(page)]))
        pdf.save(out)
    return out.getvalue()


def without(numbers: set[int]) -> Callable[[Instructions], bytes]:
    """Leave these paintings unpainted; each item of a grid is painted by one operator."""

    def change(instructions: Instructions) -> bytes:
        done, count = [], 0
        for one in instructions:
            operator = str(one.operator)
            if operator in PAINTING:
                if count in numbers:
                    count += 1
                    if not operator.startswith("T"):
                        done.append(pikepdf.ContentStreamInstruction([], pikepdf.Operator("n")))
                    continue
                count += 1
            done.append(one)
        return pikepdf.unparse_content_stream(done)

    return change


def added(code: bytes) -> Callable[[Instructions], bytes]:
    """Paint something at the end of the page."""
    return lambda instructions: b"q\n%b\nQ\n%b" % (pikepdf.unparse_content_stream(instructions), code)


def within_grid(code: bytes) -> Callable[[Instructions], bytes]:
    """Paint something as the last of the grid, before its marked content ends; the origin there is its corner."""

    def change(instructions: Instructions) -> bytes:
        end = max(at for at, one in enumerate(instructions) if str(one.operator) == "EMC")
        before, after = map(pikepdf.unparse_content_stream, (instructions[:end], instructions[end:]))
        return b"%b\n%b\n%b" % (before, code, after)

    return change


def box_on_page(item: Item) -> tuple[float, float, float, float]:
    """Left, bottom, right, top of an item of the grid on the page, y up."""
    boxes = [shape.box for shape in shapes((item,))]
    left, top = min(box[0] for box in boxes), min(box[1] for box in boxes)
    right, bottom = max(box[2] for box in boxes), max(box[3] for box in boxes)
    return LEFT + left, SIDE - TOP - bottom, LEFT + right, SIDE - TOP - top


def white_over(items: list[Item]) -> bytes:
    boxes = [box_on_page(item) for item in items]
    left, bottom = min(box[0] for box in boxes) - 1, min(box[1] for box in boxes) - 1
    right, top = max(box[2] for box in boxes) + 1, max(box[3] for box in boxes) + 1
    return f"q 1 g {left:.2f} {bottom:.2f} {right - left:.2f} {top - bottom:.2f} re f Q".encode()


def some_mark(kind: str) -> tuple[tuple[str, ...], list[int]]:
    """A mark of the kind, and the numbers of its items."""
    one = printed(kind)
    of = next(mark.of for _, mark in one.items if mark)
    return of, [number for number, (_, mark) in enumerate(one.items) if mark and mark.of == of]


@pytest.mark.parametrize("kind", DRAWN)
def test_a_sound_file_has_all_its_marks(kind: str) -> None:
    one = printed(kind)
    report = read(one.file, one.puzzle)
    assert told(report) == []
    names = {name for _, mark in one.items if mark for name in mark.of}
    assert report.marks == {kinds()[kind].noun: len(names)}


@pytest.mark.parametrize("kind", DRAWN)
def test_a_mark_that_is_removed_is_named(kind: str) -> None:
    one, (of, numbers) = printed(kind), some_mark(kind)
    report = read(changed(one.file, without(set(numbers))), one.puzzle)
    assert told(report) == [f"page 1: the grid of “one” lacks {' and '.join(of)}"]
    assert sum(report.marks.values()) == sum(read(one.file, one.puzzle).marks.values()) - len(of)


@pytest.mark.parametrize("kind", DRAWN)
def test_a_mark_that_is_covered_is_named(kind: str) -> None:
    one, (of, numbers) = printed(kind), some_mark(kind)
    cover = white_over([one.items[number][0] for number in numbers])
    for change in (added(cover), within_grid(b"q 1 0 0 1 %.2f %.2f cm %b Q" % (-LEFT, TOP - SIDE, cover))):
        said = told(read(changed(one.file, change), one.puzzle))
        assert any(of[0] in text and "is covered by something" in text for text in said), said


def test_a_part_of_a_mark_that_is_removed_is_named() -> None:
    """The head of an arrow."""
    one = printed("arrow")
    (number,) = (number for number, (_, mark) in enumerate(one.items) if mark and mark.part == "head")
    (said,) = told(read(changed(one.file, without({number})), one.puzzle))
    assert said.startswith("page 1: the grid of “one” shows only a part of the arrow from r2c2")


def test_marks_that_have_changed_places_are_named() -> None:
    """The two dots of a puzzle whose book has a white and a black one the other way round."""
    one = printed("dots")
    rule: Any = stacked("dots")
    turned = Puzzle(CLASSIC, GIVENS, (type(rule)(rule.black, rule.white),))
    said = told(read(one.file, turned))
    assert any("the white dot" in text for text in said)
    assert any("the black dot" in text for text in said)


def test_a_sign_that_points_the_other_way_is_named() -> None:
    one = printed("inequality")
    rule: Any = stacked("inequality")
    turned = Puzzle(CLASSIC, GIVENS, (type(rule)((rule.pairs[0][::-1], *rule.pairs[1:])),))
    said = told(read(one.file, turned))
    assert any("the sign between" in text for text in said) and "in r2c3" in said[-1]


def test_a_dot_too_many_is_named_with_its_cell() -> None:
    one = printed("dots")
    x, y = 5.5 * CELL, -6.5 * CELL  # the middle of row 7, column 6, in the grid's own measure
    dot = f"0 g {x - 2} {y - 2} m {x + 2} {y - 2} l {x} {y + 2} l h f".encode()
    said = told(read(changed(one.file, within_grid(dot)), one.puzzle))
    assert said == ["page 1: the grid of “one” has something that the book does not have: in r7c6"]


def test_a_digit_that_is_covered_is_named() -> None:
    one = printed("thermometer")
    digit = [item for item, mark in one.items if mark is None][-1]
    said = told(read(changed(one.file, added(white_over([digit]))), one.puzzle))
    assert said == [
        "page 1: the grid of “one”: the digit in r7c7 is covered by something else on the page: 0% of it is left"
    ]


def test_lines_of_the_grid_that_are_removed_are_told() -> None:
    """The region borders, the second thing of a grid without marks below its lines."""
    one = printed("dots")
    first = next(number for number, (_, mark) in enumerate(one.items) if mark is None)
    said = told(read(changed(one.file, without({first + 1})), one.puzzle))
    assert said == ["page 1: the grid of “one” lacks lines between its cells or regions"]


def test_a_page_that_is_turned_and_made_smaller_is_read_as_well() -> None:
    """As a booklet has it: the whole page as a group, a quarter turn, at two thirds."""
    one = printed("quadruple")
    grid = Group((draw_grid(one.puzzle, CELL, "grid one"),), LEFT, TOP)
    page = Page(SIDE, SIDE, (Group((grid,), 350.0, 20.0, 2 / 3, 90.0),), "1")
    report = read(pdf_bytes(Document("t", "", "", (page,))), one.puzzle)
    assert told(report) == [] and report.marks == {"corner quadruple": 2}
