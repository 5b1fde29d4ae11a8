"""The book's own words: headings, the page on how to read it, and what a draft says of a flawed puzzle.

In: plain facts about the book. Out: sentences, ready to set.
"""

from __future__ import annotations

import re
from collections.abc import Iterable, Sequence
from datetime import date
from typing import assert_never

from bookmaker.book.contents import BookPuzzle
from bookmaker.book.smart_quotes import smart_quotes
from bookmaker.manifest.dates import When
from bookmaker.manifest.entries import HiddenWord, Manifest
from bookmaker.puzzle.grid import Grid
from bookmaker.rules.common.contract import RuledPuzzle
from bookmaker.rules.common.words.wording import listed, sentence_case
from bookmaker.solve.verdict import NoSolution, Several, Undecided, Unique, Verdict

CONTENTS = "Contents"
FOREWORD = "Foreword"
GUIDE = "How to read this book"
TEXT_GUIDE = "How to read this edition"
PRIMER = "Primer: the rules, one by one"
HINTS = "Hints"
CELL_NAMES = "Cells are named by row and column: r5c2 is in row 5, column 2."
HINTS_NOTE = (
    "There are three hints for every puzzle, about the first sticking point. Each gives away more than the one before "
    f"it, and the next is never in sight. {CELL_NAMES}"
)
SHEET_HINTS_NOTE = (
    "There are three hints for every puzzle, about the first sticking point. Each gives away more than the one before "
    f"it: cover those below with a sheet of paper. {CELL_NAMES}"
)
TEXT_HINTS_NOTE = (
    "There are three hints for every puzzle, about the first sticking point. Each gives away more than the one before "
    "it. Open only the one you want."
)
HINT_LEVELS = ("Where to look", "What to look for", "The next step")
KEYS = "Solution keys"
CREDITS = "Credits"
INDEX = "Index"
INDEX_NOTE = "Figures are puzzle numbers."
BY_SETTER = "By setter"
BY_RULE = "By rule"
NOTES = "Notes"
ANSWER_KEY = "Answer key"

_MONTHS = (
    *("January", "February", "March", "April", "May", "June"),
    *("July", "August", "September", "October", "November", "December"),
)
"""Not strftime's, which differ from machine to machine."""


def date_in_words(day: date | When) -> str:
    """“14 March 2026”, “March 2026” or “2026”, as exact as it is known."""
    month = _MONTHS[day.month - 1] if day.month else ""
    return " ".join(str(part) for part in (day.day, month, day.year) if part)


def as_sentence(text: str) -> str:
    """What an editor typed, with a capital and a full stop, so that it can stand beside other sentences."""
    return sentence_case(text) + ("." if text[-1:].isalnum() or text[-1:] == ")" else "")


def shared_permission(puzzles: Sequence[BookPuzzle]) -> str:
    """The permission that holds for all puzzles and so is printed once; "" where they differ."""
    permissions = {puzzle.permission for puzzle in puzzles}
    return permissions.pop() if len(permissions) == 1 else ""


CREDITED = " After the keys come the credits: when puzzles were first shown, and who gave permission."


def with_credits_of_their_own(puzzles: Sequence[BookPuzzle]) -> tuple[BookPuzzle, ...]:
    """The puzzles that were shown before, spell a word or have a permission that is not that of all."""
    shared = shared_permission(puzzles)
    return tuple(puzzle for puzzle in puzzles if puzzle.shown or puzzle.word or (puzzle.permission and not shared))


def houses_said(grids: Iterable[Grid]) -> str:
    """What a house is on these grids."""
    divided = {grid.divided for grid in grids}
    areas = ", a box or region" if "boxes" in divided else ", a region" if "regions" in divided else ""
    return f"A house is a row, a column{areas}, or any other set of cells in which no digit repeats."


LATIN = "Latin squares"
LATIN_PRIMER = (
    "In a Latin square only rows and columns count: each holds every digit once, and nothing else is asked of the "
    "grid. So every digit stands in each row once, and no two of its places share a column. Where a digit is missing "
    "from two rows, and has its places there in the same two columns, it goes nowhere else in these columns. Then see "
    "what the marks add."
)


def without_boxes(text: str) -> str:
    """What is taught of a kind of rule, for readers whose grids have no boxes: rows take their part, and sentences that
    are about boxes alone are left out."""
    for found, said in _BOXLESS:
        text = found.sub(said, text)
    return " ".join(one for one in _SENTENCE.findall(text) if not _OF_BOXES.search(one))


_SENTENCE = re.compile(r"\S.*?(?:[.?!](?= |$)|$)")
_OF_BOXES = re.compile(r"(?<!small )\bbox(?:es)?\b", re.IGNORECASE)
_BOXLESS = tuple(
    (re.compile(found), said)
    for found, said in (
        ("rows, columns and boxes", "rows and columns"),
        ("(row|column), column (and|or) box", r"\1 \2 column"),
        ("a row, a column and a box", "a row and a column"),
        ("two rows, two columns and two boxes", "two rows and two columns"),
        ("row or box", "row"),
        (", even where [a-z ]+ runs through several boxes,?", ""),
        (", on a 9×9 grid usually the three in the nearest box", ", usually three of them"),
        ("Cells of one box hold different digits; others may repeat, so .*? the same digit", "Digits on it may repeat"),
        (", most of them outside its box", ""),
        ("[Ll]ook for boxes", "Look for rows"),
        (r"\b(one more|one|a) box\b(?!es)(?! on a border)(?! adds| rules)", r"\1 row"),
    )
)
"""What is said of rows and columns alone, in place of rows, columns and boxes."""


OFTEN = 16
"""Grids up to this size have no letter that anyone would miss."""

LARGE = (
    " In the largest grids letters follow the digit 9: A stands for 10, B for 11 and so on. I and O are left out, "
    "since they look like 1 and 0."
)


def word_said(word: HiddenWord, grid: Grid) -> str:
    """What a solution spells, and where: “row 5 spells QUAY”, “r1c1, r2c2 and r3c3 spell TAR”."""
    for house in grid.rows + grid.columns:
        if word.cells == house.cells:
            return f"{house.name} spells {word.text}"
    first, last = grid.name(word.cells[0]), grid.name(word.cells[-1])
    return f"the cells from {first} to {last} spell {word.text}"


def set_by(setters: Sequence[str]) -> str:
    """Who set the puzzles of a book."""
    return as_sentence(f"Puzzles by {listed(setters)}")


def kinds(puzzle: RuledPuzzle) -> tuple[str, ...]:
    """What a puzzle is: its grid, unless that is the usual one and rules say more, and its rules (“Thermometers”)."""
    titles = tuple(smart_quotes(rule.title) for rule in puzzle.rules)
    return titles if puzzle.grid.box and titles else (sentence_case(puzzle.grid.called), *titles)


def title_of(puzzle: RuledPuzzle) -> str:
    """What an untitled puzzle goes by: “Cages, Arrows”, “Latin square with inequalities”."""
    grid, *rules = kinds(puzzle)
    if puzzle.grid.regions or not rules:
        return ", ".join((grid, *rules))
    return f"{grid} with {listed(title[:1].lower() + title[1:] if title[1:2].islower() else title for title in rules)}"


def proved(draft: bool) -> str:
    """What is known of the puzzles of a book."""
    if draft:
        return "This is a draft: a puzzle in it may have no solution, or several."
    return (
        "Every puzzle has exactly one solution: each was checked exhaustively before printing, and its solution was "
        "then checked against the rules."
    )


def guide(manifest: Manifest, grids: Iterable[Grid], draft: bool, hinted: bool, credited: bool) -> tuple[str, ...]:
    """How to read the book with these grids, a paragraph each; `hinted` if it has hints, `credited` if it has a page of
    credits."""
    first, last = manifest.band_names[0], manifest.band_names[-1]
    as_listed = any(chapter.listed for chapter in manifest.chapters)
    order = {
        "difficulty": "The puzzles are in order of difficulty, gentlest first.",
        "listed": "The puzzles are in the order the editor chose.",
        "chapters": "The puzzles are grouped in chapters, each with the gentlest first.",
    }["listed" if as_listed else manifest.order]
    hints = (
        " If you get stuck, turn to the three hints for each puzzle, before the keys: where to look, what to look for, "
        "and the next step."
        if hinted
        else ""
    )
    large = any(grid.size > OFTEN and not grid.lettered for grid in grids)
    return (
        "Beside each title a ridge of five peaks shows how hard the puzzle is. It fills from the left, peak by peak, "
        f"from {first} to {last}. The figure with it is the difficulty: the digit before the point counts the peaks, "
        f"the digit after it shows how close the next one is. {order}",
        "The rules given with a grid are complete, and all apply at once. Each kind of mark is drawn again beside the "
        "sentence that explains it. The grids are made for pencil: you can write over every mark.",
        f"{CELL_NAMES} {houses_said(grids)}{LARGE if large else ''}",
        f"{proved(draft)}{hints} The solution keys are at the back, with the givens in bold. The line under each key "
        "charts the solve, rising where a step takes more searching; arrowheads mark the sticking points."
        f"{CREDITED if credited else ''}",
    )


IN_A_PAD = (
    ("for each puzzle, before the keys:", "for each puzzle, after the last sheet:"),
    ("The solution keys are at the back,", "The solution keys are on the backs of their sheets,"),
    ("After the keys come the credits:", "At the end come the credits:"),
)
"""What the guide says otherwise where each key stands on the back of its puzzle."""


def text_guide(band_names: Sequence[str], draft: bool, pictured: bool) -> tuple[str, ...]:
    """The same for an edition without pages, which tells marks in words; `pictured` if it has pictures as well."""
    first, last = band_names[0], band_names[-1]
    where = (
        "Below its picture each grid is told once more, in words and as a table, to be unfolded."
        if pictured
        else "Below each rule stand its marks."
    )
    return (
        proved(draft),
        "Rows are numbered from top to bottom, columns from left to right, and a blank is a cell to fill. Where rows "
        "and columns are named together, all cells are meant in which they meet; the cells of a line are named in its "
        f"order, so that its columns or rows may run backwards. {where}",
        f"The band of a puzzle, from {first} to {last}, says how hard it is. Its difficulty is a figure: the digit "
        "before the point counts the bands, the digit after it shows how close the next one is.",
    )


def flaw(verdict: Verdict) -> str:
    """What a draft prints in place of a key; nothing for a proven puzzle."""
    match verdict:
        case Unique():
            return ""
        case NoSolution():
            return "No solution"
        case Several():
            return "More than one solution"
        case Undecided():
            return "Not decided"
        case _ as never:
            assert_never(never)
