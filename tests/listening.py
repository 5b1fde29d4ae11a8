"""Rules and puzzles from words alone, as a solver hears them: shares nothing with what reads manifests or says marks.

In: a rule's title, its sentence and its marks in words; or the whole text edition. Out: `Rule` values, built straight
from cells; puzzles with the rows of their keys.
"""

from __future__ import annotations

import re
from collections.abc import Callable, Iterator, Sequence
from dataclasses import dataclass, fields, is_dataclass, replace
from functools import partial
from typing import Any

from bookmaker.puzzle.grid import SYMBOLS, Grid, boxed_grid, irregular_grid
from bookmaker.puzzle.holed import holed_grid
from bookmaker.puzzle.overlapping import LETTERS, overlapping_grids
from bookmaker.puzzle.puzzle import Puzzle
from bookmaker.rules import kinds
from bookmaker.rules.arithmetic_cage import Result
from bookmaker.rules.arrow import Arrows
from bookmaker.rules.border_values import Worth
from bookmaker.rules.common.arrowreading import arrow_on
from bookmaker.rules.common.clue import Clue, Side
from bookmaker.rules.common.contract import Rule
from bookmaker.rules.common.nearest import NearRule
from bookmaker.rules.counting_area import Tally
from bookmaker.rules.diagonal_sum import Diagonal
from bookmaker.rules.limits import Limit
from bookmaker.rules.quadruple import Ring

_PLACE = r"rows? (?P<rows>[\d, toand]+?) columns? (?P<columns>[\d, toand]+)"
_WORDS = {"one": 1, "two": 2, "three": 3, "four": 4, "five": 5, "six": 6, "seven": 7, "eight": 8, "nine": 9}
_SIDES: dict[str, Side] = {"on the left": "left", "on the right": "right", "above": "top", "below": "bottom"}


def numbers(text: str) -> list[int]:
    """“1 to 3 and 5” → 1, 2, 3, 5; “4 to 2” → 4, 3, 2."""
    found: list[int] = []
    for piece in re.split(r", | and ", text.strip()):
        ends = [int(end) for end in piece.split(" to ")]
        step = 1 if ends[0] <= ends[-1] else -1
        found += range(ends[0], ends[-1] + step, step)
    return found


def cells(grid: Grid, text: str) -> tuple[int, ...]:
    """All cells of a text, a line's in its order."""
    found: list[int] = []
    for piece in re.split(r"[;,] (?=rows? \d)", text):
        if " diagonally to " in piece:
            (first,), (last,) = (cells(grid, end) for end in piece.split(" diagonally to "))
            (row, column), (end, side) = grid.place(first), grid.place(last)
            down, across = (end > row) * 2 - 1, (side > column) * 2 - 1
            found += (_at(grid, row + at * down, column + at * across) for at in range(abs(end - row) + 1))
            continue
        match = re.fullmatch(_PLACE, piece)
        assert match, piece
        found += (
            _at(grid, row - 1, column - 1) for row in numbers(match["rows"]) for column in numbers(match["columns"])
        )
    return tuple(found)


def _at(grid: Grid, row: int, column: int) -> int:
    cell = grid.at(row, column)
    assert cell is not None
    return cell


def borders(grid: Grid, text: str) -> Iterator[tuple[int, ...]]:
    """The pairs of cells of “… in row 1 between columns 1 and 2, 4 and 5”."""
    match = re.search(r" in (row|column) (\d+) between (?:rows|columns) ([\d, and]+)$", text)
    assert match, text
    for pair in match[3].split(", "):
        one, other = (int(number) - 1 for number in pair.split(" and "))
        line = int(match[2]) - 1
        yield tuple(_at(grid, line, at) if match[1] == "row" else _at(grid, at, line) for at in (one, other))


def digits(grid: Grid, text: str) -> list[int]:
    """“1, 2 and A” → 1, 2, 10 where the grid's digits begin with 1."""
    return [grid.symbols.index(symbol) + 1 for symbol in re.split(r", | and | or ", text)]


def clues(marks: Sequence[str], value: Callable[[str], list[int]], grid: Grid) -> tuple[Clue, ...]:
    """The clues of “… on the left: row 2 has 12; row 5 has 0”."""
    found = []
    for mark in marks:
        head, _, said = mark.partition(": ")
        side = next(side for words, side in _SIDES.items() if re.search(rf" {words}(?:,|$)", head))
        for piece in said.split("; "):
            line, _, figures = piece.partition(" has ")
            assert line.startswith("row" if side in ("left", "right") else "column"), mark
            before = grid.place(grid.cells[0])[side in ("top", "bottom")] + 1
            found += [Clue(side, int(line.split()[1]) - before, one) for one in value(figures)]
    return tuple(found)


def heard(title: str, sentence: str, marks: Sequence[str], grid: Grid) -> Rule:
    """The rule under this title that asks what the sentence says of these marks."""
    kind: Any
    (kind,) = (rule for rule in kinds().values() if rule.title.replace("'", "’") == title.replace("'", "’"))
    after = [mark.partition(": ")[2] for mark in marks]
    match kind.kind:
        case "arrow":
            arrows: dict[tuple[int, ...], list[tuple[int, ...]]] = {}
            for mark, shaft in zip(marks, after, strict=True):
                start = re.match(r"Arrow from the (?:circle|oval) at ([^:]+?)(, read .*)?:", mark)
                arrows.setdefault(cells(grid, start[1]), []).append(cells(grid, shaft))
            return Arrows(tuple(arrow_on(grid, circle, shafts) for circle, shafts in arrows.items()))
        case "cage":
            totals = [re.match(r"Cage of (\d+):", mark) for mark in marks]
            cages = tuple((cells(grid, t), int(n[1]) if n else 0) for t, n in zip(after, totals, strict=True))
            return kind(cages, "may repeat" in sentence)
        case "arithmetic-cage":
            results = []
            for mark, text in zip(marks, after, strict=True):
                made = re.match(r"Arithmetic cage with (?:the (\w+) )?(\d+)", mark)
                sign = {"sum": "+", "product": "×", "difference": "−", "quotient": "÷", None: ""}[made[1]]
                results.append((cells(grid, text), Result(int(made[2]), sign)))
            return kind(tuple(results), "digits differ" in sentence)
        case "open-cage":
            open_totals = [re.match(r"Open cage with (?:an (even|odd) total|the total (\w)):", mark) for mark in marks]
            return kind(tuple((cells(grid, t), n[1] or n[2]) for t, n in zip(after, open_totals, strict=True)))
        case "counting-area":
            tallies = []
            for mark, text in zip(marks, after, strict=True):
                said = re.match(r"Counting area with (?:exactly ([^:]+)|(\d+) different (?:digit|letter)s?):", mark)
                tally = Tally(tuple(digits(grid, said[1]))) if said[1] else Tally((), int(said[2]))
                tallies.append((cells(grid, text), tally))
            return kind(tuple(tallies))
        case "square-block":
            sort = {"Magic block": "magic", "Block with equal rows": "rows", "Block with equal columns": "columns"}
            heads = (mark.partition(": ")[0] for mark in marks)
            return kind(tuple((cells(grid, text), sort[head]) for text, head in zip(after, heads, strict=True)))
        case "clone":
            groups = [[cells(grid, piece.replace(" with ", ", ")) for piece in text.split("; ")] for text in after]
            letters = tuple(re.match(r"Clones (\w+),", mark)[1] for mark in marks)
            return kind(tuple(tuple(zip(*group, strict=True)) for group in groups), letters)
        case "extra-region":
            return kind(tuple(cells(grid, text) for text in after), grid.size)
        case "diagonals":
            lines = [cells(grid, text) for text in after]
            falling = [grid.row(line[0]) < grid.row(line[-1]) for line in lines]
            return kind(True in falling, False in falling)
        case "diagonal-sum":
            return kind(
                tuple(_diagonal(grid, mark, cells(grid, text)) for mark, text in zip(marks, after, strict=True))
            )
        case "parity" | "peaks":
            first = [m for m in marks if m.startswith(("Even", "Peak"))]
            found = (
                tuple(c for m in some for c in cells(grid, m.partition(": ")[2]))
                for some in (first, [m for m in marks if m not in first])
            )
            return kind(*found)
        case "limits":
            limits = []
            for mark, text in zip(marks, after, strict=True):
                head = mark.partition(": ")[0]
                mask = sum(1 << (digit - 1) for digit in digits(grid, head.partition(" ")[2]))
                limits += [Limit(cell, mask, head.startswith("Not ")) for cell in cells(grid, text)]
            return kind(tuple(limits))
        case "pointing":
            pointed = {
                mark.split(":")[0].split()[-1]: cells(grid, text) for mark, text in zip(marks, after, strict=True)
            }
            digit = digits(grid, re.search(r"the (\w) stands", sentence)[1])[0]
            return kind(**pointed, digit=digit, symbols=grid.symbols)
        case "fortress":
            return kind(tuple(sorted(cell for text in after for cell in cells(grid, text))))
        case "quadruple":
            rings = [re.fullmatch(r"Ring with (.+) at the corner of (.+)", mark) for mark in marks]
            return kind(tuple(Ring(cells(grid, ring[2]), tuple(digits(grid, ring[1]))) for ring in rings))
        case "inequality":
            signed: list[tuple[int, ...]] = []
            for mark in marks:
                line, _, signs = mark.partition(": ")
                for sign in signs.split("; "):
                    sides = sign.split(" is greater than ")
                    signed.append(
                        tuple(cells(grid, " ".join(sorted((line.lower(), s), reverse=True)))[0] for s in sides)
                    )
            return kind(tuple(signed))
        case "border-values":
            worths = [re.match(r"(Sum|Difference|Product|Quotient)s? (\d+) in ", mark) for mark in marks]
            return kind(
                tuple(
                    (pair, Worth(head[1].lower(), int(head[2])))
                    for head, mark in zip(worths, marks, strict=True)
                    for pair in borders(grid, mark)
                ),
                "neighbours without" in sentence,
            )
        case "consecutive-bars":
            return kind(tuple(pair for mark in marks for pair in borders(grid, mark)))
        case "dots" | "sum-marks":
            first = [m for m in marks if m.startswith(("White", "Letter V", "Letters V"))]
            pairs = (
                tuple(p for m in some for p in borders(grid, m))
                for some in (first, [m for m in marks if m not in first])
            )
            return kind(*pairs, "neighbours without" in sentence or not marks)
        case "first-seen":
            firsts = clues(marks, partial(digits, grid), grid)
            seen = {
                side: word
                for mark in marks
                for side, word in re.findall(r"(on the left|on the right|above|below), beside (\w+)", mark)
            }
            in_row, in_column = (
                next((_WORDS[seen[side]] for side in sides if side in seen), 0)
                for sides in (("on the left", "on the right"), ("above", "below"))
            )
            return kind(firsts, in_row or in_column, in_column or in_row)
        case "rise-or-fall":
            count = _WORDS[re.search(r"the first (\w+) digits of", sentence)[1]]
            slopes = clues(marks, lambda text: [["falling bars", "rising bars"].index(text)], grid)
            return kind(slopes, count, count, "neither" in sentence or not marks)
        case "frame-product" | "frame-sum":
            looked = re.findall(r"the first (\w+) (?:digits )?of its", sentence)
            return kind(clues(marks, lambda text: [int(text)], grid), _WORDS[looked[0]], _WORDS[looked[-1]])
        case "numbered-room":
            return kind(clues(marks, partial(digits, grid), grid))
        case "parity-run" | "rising-run" | "sandwich" | "skyscraper" | "x-sum":
            return kind(clues(marks, lambda text: [int(text)], grid))
        case "equal-part-line":
            parts = [re.sub(r"; part \d+, ", ", ", text).removeprefix("part 1, ") for text in after]
            return kind(tuple(cells(grid, text) for text in parts), "box" if "inside a box" in sentence else "region")
        case "same-sum-line":
            stretch = _WORDS[re.search(r"any (\w+) cells", sentence)[1]]
            return kind(tuple(cells(grid, text) for text in after), stretch)
        case "low-high-line":
            return kind(tuple(cells(grid, text) for text in after), grid.symbols)
        case "difference-line":
            return kind(tuple(cells(grid, t) for t in after), int(re.search(r"at least (\d+)", sentence)[1]))
        case "even-step-line":
            step = re.search(r"exactly (\d+)", sentence)
            return kind(tuple(cells(grid, text) for text in after), int(step[1]) if step else 0)
        case "non-consecutive" | "no-doubles":
            return kind("corner" in sentence)
        case "barred-sums":
            return kind("corner" in sentence, frozenset(map(int, re.findall(r"\d+", sentence))))
        case "windows" | "king" | "knight" | "disjoint-groups":
            return kind()
        case _:
            return kind(tuple(cells(grid, text) for text in after))


def told(rule: Rule) -> object:
    """What a rule says, whatever the order of its marks: two that ask the same of a grid are equal."""
    match rule:
        case Arrows():
            return {(arrow.circle, shaft) for arrow in rule.arrows for shaft in arrow.shafts}
        case NearRule():
            return {(clue, rule.seen(clue)) for clue in rule.clues}
    values = [getattr(rule, field.name) for field in fields(rule)] if is_dataclass(rule) else []
    return [frozenset(value) if isinstance(value, tuple) else value for value in values]


@dataclass(frozen=True)
class Heard:
    """A puzzle of the text edition, and the rows of its key."""

    number: int
    puzzle: Puzzle[Rule]
    key: tuple[int, ...]


def listen(text: str) -> Iterator[Heard]:
    """The puzzles of a text edition."""
    keys = {}
    for block in re.split(r"\n\n\n(?=Key to puzzle )", text)[1:]:
        keys[int(re.match(r"Key to puzzle (\d+): ", block)[1])] = block.split("\n\n\n")[0]
    for block in re.split(r"\n\n\n(?=Puzzle \d)", text)[1:]:
        number = int(re.match(r"Puzzle (\d+): ", block)[1])
        lines = block.split("\n\n\n")[0].splitlines()
        symbols, first = _signs(block)
        givens = _rows("\n".join(lines), symbols)
        grid = replace(_grid(round(len(givens) ** 0.5), "\n".join(lines)), symbols=symbols, first=first)
        rules = tuple(_rules(lines, grid))
        yield Heard(number, Puzzle(grid, givens, rules), _rows(keys[number], symbols))


def _rules(lines: list[str], grid: Grid) -> Iterator[Rule]:
    titles = {rule.title.replace("'", "’") for rule in kinds().values()}
    for at, line in enumerate(lines):
        title, colon, sentence = line.partition(": ")
        if colon and title in titles:
            marks = []
            for mark in lines[at + 1 :]:
                if not mark.startswith("  "):
                    break
                marks.append(mark.strip())
            named = re.match(r"Grids? ([A-E](?:, [A-E])*(?: and [A-E])?): ", sentence)
            letters = re.findall("[A-E]", named[1]) if named else LETTERS[: len(grid.squares)]
            (kind,) = (each for each in kinds().values() if each.title.replace("'", "’") == title)
            if not grid.overlaps or not kind.in_one_square():
                yield heard(title, sentence, marks, grid)
            else:
                share = len(marks) // len(letters)
                for number, letter in enumerate(letters):
                    own = marks[number * share : (number + 1) * share]
                    yield replace(heard(title, sentence, own, grid.square(letter)), square=letter)


def _signs(text: str) -> tuple[str, int | None]:
    """What a grid is filled with, and what the first of these is worth."""
    if found := re.search(r" holds the letters ((?:[A-Z], )+[A-Z] and [A-Z]) once each", text):
        return "".join(re.findall("[A-Z]", found[1].replace(" and ", " "))), None
    found = re.search(r" holds? the digits (\d) to (\d)(?: and the letters? A(?: (?:to|and) ([A-Z]))?)?", text)
    signs = [str(digit) for digit in range(int(found[1]), int(found[2]) + 1)]
    if "letter" in found[0]:
        signs += [chr(c) for c in range(ord("A"), ord(found[3] or "A") + 1) if chr(c) not in "IO"]
    return "".join(signs), int(found[1])


def _rows(text: str, symbols: str = SYMBOLS) -> tuple[int, ...]:
    rows = re.findall(r"^Row \d+: ((?:(?:blank|no cell|[0-9A-Z])(?:, |$))+)$", text, re.MULTILINE)
    cells = [cell for row in rows for cell in row.split(", ") if cell != "no cell"]
    return tuple(0 if cell == "blank" else symbols.index(cell) + 1 for cell in cells)


def _grid(size: int, text: str) -> Grid:
    grids = re.findall(r"^  grid [A-E]: rows (\d+) to \d+, columns (\d+) to \d+$", text, re.MULTILINE)
    boxes = re.search(r"The boxes have (\w+) rows? and (\w+) columns?", text)
    if boxes:
        high, wide = (_WORDS[word] for word in boxes.groups())
        corners = [(int(row) - 1, int(column) - 1) for row, column in grids]
        return overlapping_grids(high * wide, (high, wide), corners) if corners else boxed_grid(size, high, wide)
    rows = re.findall(r"^Row \d+: (.+)$", text, re.MULTILINE)
    holes = [(r, c) for r, row in enumerate(rows) for c, cell in enumerate(row.split(", ")) if cell == "no cell"]
    if holes:
        return holed_grid(len(rows) - len(holes) // len(rows), len(rows), holes)
    regions = re.findall(r"^  Region \d+: (.+)$", text, re.MULTILINE)
    latin = Grid(size, ())
    home = {cell: number for number, region in enumerate(regions) for cell in cells(latin, region)}
    return irregular_grid(size, [home[cell] for cell in latin.cells]) if regions else latin


def _diagonal(grid: Grid, mark: str, line: tuple[int, ...]) -> Diagonal:
    down, across = (at(line[1]) > at(line[0]) for at in (grid.row, grid.column))
    total = re.match(r"Diagonal sum (\d+):", mark)[1]
    return Diagonal(int(total), line[0], f"{'down' if down else 'up'}-{'right' if across else 'left'}")
